"""Names of files and contact cards are read as the names in them."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

NAMES = [("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anouk", "Menk")]
UNKNOWN = [("Dlunyil", "Kwapson"), ("Xairfön", "Gaskwom"), ("Tarnul", "Brevin")]
CARDS = "".join(
    f"BEGIN:VCARD\nVERSION:4.0\nN:{family};{given};;;\nFN:{given} {family}\nTEL;TYPE=cell:5550101\nEND:VCARD\n"
    for given, family in (("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anouk", "Menk")))


@pytest.mark.parametrize("form", [
    "{}_{}.jpg", "{} {}.pdf", "IMG {} {}.jpeg", "{}_{}_2.png", "{} {}.docx", "Scan_{}_{}.pdf"])
def test_the_ending_of_a_file_is_no_part_of_a_name(form: str) -> None:
    names = [("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anouk", "Menk")]
    children = read_roster("\n".join(form.format(*name) for name in names)).children
    assert [(child.given, child.family) for child in children] == names


@pytest.mark.parametrize("form", [
    "portrait_{}_{}_2024.jpg", "2024-25/{}_{}/dibujo.jpg", "{} {} - Zeichnung.pdf", "0{at}_{}_{}.png",
    "K2/{}_{}.docx", "{}_{}_retrato.pdf\t{at}26 KB\t06/01/2024", "{} {}.PNG   {at}26 KB"])
@pytest.mark.parametrize("names", [NAMES, UNKNOWN])
def test_what_all_files_share_is_no_part_of_a_name(names: list[tuple[str, str]], form: str) -> None:
    text = "\n".join([form.format(*name, at=at) for at, name in enumerate(names, 1)] + ["desktop.ini", "Thumbs.db"])
    assert [(child.given, child.family) for child in read_roster(text).children] == names


def test_family_names_before_a_comma_are_read_in_files() -> None:
    text = "\n".join(f"{family}, {given}.docx\t26 KB\t06/01/2024" for given, family in NAMES)
    assert [(child.given, child.family) for child in read_roster(text).children] == NAMES


def test_a_contact_card_is_one_child() -> None:
    """The cards of RFC 6350, section 6.2: FN is the whole name as it is said."""
    assert [(child.given, child.family) for child in read_roster(CARDS).children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anouk", "Menk")]


@pytest.mark.parametrize("text", ["Mira Vost", "J. Vost", "Mira V.", "St. Mira", "Mira.Vost"])
def test_other_dots_are_no_endings(text: str) -> None:
    assert next(report.text for report in read_roster(f"{text}\nTilo Tarn").lines) == text


@pytest.mark.parametrize("form", [
    "collage {}.pdf", "{} handprint.jpg", "póster {} listo.png", "affiche {}.jpg", "plakat {} neu.png",
    "disegno_{}.pdf", "2025_cartaz {}.jpg    41 KB"])
@pytest.mark.parametrize("names", [("Mira Vost", "Leo Tarn", "Ada Lind"), ("Xobrel Vost", "Vemka Tarn", "Outhna Lind")])
def test_a_word_that_all_files_open_or_end_with_is_no_name(form: str, names: tuple[str, ...]) -> None:
    made = read_roster("\n".join(map(form.format, names))).children
    assert [child.practice for child in made] == [name.split()[0] for name in names]


def test_a_family_name_that_all_files_share_leaves_the_given_names() -> None:
    made = read_roster("Vost Mira.jpg\nVost Leo.jpg\nVost Ada.jpg").children
    assert [child.practice for child in made] == ["Mira", "Leo", "Ada"]
