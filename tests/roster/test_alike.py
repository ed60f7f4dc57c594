"""What most lines of a list say alike is no name, and each line tells what was taken from it."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.alike import from_a_program, without_shared
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


def texts(*lines: str) -> list[str]:
    return [line.text for line in without_shared([Line(text, at) for at, text in enumerate(lines)])]


TAKEN = [
    (("Peg 1 – Mira Vost", "Peg 2 – Bo Tarn", "Peg 3 – Oda Quill"), ["Mira Vost", "Bo Tarn", "Oda Quill"]),
    (("Reihe 1: Mira, Bo, Oda", "Reihe 2: Tilo, Una, Jo"), ["Mira, Bo, Oda", "Tilo, Una, Jo"]),
    (("Line leader: Xanti", "Door holder: Obrel", "Lights: Vemka"), ["Xanti", "Obrel", "Vemka"]),
    (("Mira Vost – yes", "Bo Tarn – no", "Oda Quill – yes", "Una Vale – yes", "Jo Elm – no", "Al Fen – no"),
     ["Mira Vost", "Bo Tarn", "Oda Quill", "Una Vale", "Jo Elm", "Al Fen"]),
    (("Back row, left to right: Mira", "Middle row: Bo", "Not pictured: Oda"), ["Mira", "Bo", "Oda"]),
    (("Chef de rang: Mira", "Gardien de la porte: Bo", "En repos: Oda"), ["Mira", "Bo", "Oda"]),
    (("Türdienst: Xobrel", "Kalender: Vemka", "Blumendienst: Outhna", "Frei: Kwil"),
     ["Xobrel", "Vemka", "Outhna", "Kwil"]),
    (("Mira (elle)", "Bo (elle)", "Oda (elle)"), ["Mira", "Bo", "Oda"]),
]


@pytest.mark.parametrize(("lines", "left"), TAKEN)
def test_what_lines_share_is_taken_off(lines: tuple[str, ...], left: list[str]) -> None:
    assert texts(*lines) == left


KEPT = [
    (("Mira Vost – left", "Bo Tarn – left", "Oda Quill – left"), "a hand"),
    (("Name: Mira", "Age: 4", "Name: Bo", "Age: 5"), "a form"),
    (("Mia: peanuts", "Leo: asthma", "Noah: glasses"), "a name before its remark"),
    (("Vost, Katie", "Tarn, Katie", "Quill, Katie"), "a given name that three have"),
    (("Mira Vost – new", "Bo Tarn", "Oda Quill"), "one remark"),
    (("Room 12", "Mira", "Bo"), "a heading"),
    (("Xobrel Vost [alergia: Nuss]", "Vemka Tarn [alergia: Ei]", "Odelo Fen [alergia: Soja]"), "a remark in brackets"),
    (("Xobrel Vost takes: Ritalin", "Vemka Tarn takes: Keppra", "Odelo Fen takes: Insulin"), "a whole name before"),
    (("Xobrel alergia: Nuss", "Vemka alergia: Ei", "Odelo alergia: Soja"), "a word about the child before"),
]


@pytest.mark.parametrize(("lines", "why"), KEPT, ids=[row[1] for row in KEPT])
def test_what_may_be_of_use_stays(lines: tuple[str, ...], why: str) -> None:
    assert texts(*lines) == list(lines), why


def test_each_line_tells_what_was_taken() -> None:
    report = read_roster("Line leader: Xanti\nDoor holder: Obrel\nPlant helper: Vemka").lines[1]
    assert report.notes == (message("roster.remark", words="Door holder"),)


@pytest.mark.parametrize("text", ['["Mira Vost", "Bo Tarn", "Una Elm"]', '"Mira Vost",\n"Bo Tarn",\n"Una Elm"',
                                  "'Mira Vost',\n'Bo Tarn',\n'Una Elm',"])
def test_a_program_s_quotation_marks_come_off(text: str) -> None:
    found = from_a_program([Line(line, at) for at, line in enumerate(text.splitlines())])
    assert [line.text for line in found] == ["Mira Vost", "Bo Tarn", "Una Elm"]


def test_a_program_s_quotation_marks_leave_an_apostrophe() -> None:
    """Those of a name stand between letters."""
    names = read_roster("'Clare O'Quill',\n'Mirel Vost',\n'Katla Pruner',\n'S'fisa Dolt'").children
    assert [(one.given, one.family) for one in names][::3] == [("Clare", "O'Quill"), ("S'fisa", "Dolt")]


def test_one_name_in_quotation_marks_stays() -> None:
    assert [line.text for line in from_a_program([Line('"Mira"', 0), Line("Bo", 1), Line("[Una]", 2)])] == [
        '"Mira"', "Bo", "[Una]"]


def test_a_row_to_fill_in_stops_nobody() -> None:
    read = read_roster("Mira Vost – fruit\nBo Tarn – ____\nXobrel Quill – juice\nTilo Elm – fruit\nUna Vale – ____")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Xobrel", "Tilo", "Una"]


def test_long_lines_are_read_in_time_that_grows_with_them() -> None:
    """Lines that are a text are left as they are, whatever signs stand in them."""
    lines = ["( " * 30_000, ": " * 30_000, "a - " * 30_000, '["' * 30_000]
    assert texts(*lines) == lines


@pytest.mark.parametrize("names", [["Mira Vost", "Tilo Tarn", "Anna Berg", "Emil Koch", "Zoé Petit", "Bruno Weiss"],
                                   ["Fántain Vost", "Ámdiam Tarn", "Xairfön Berg", "Quorrik Koch", "Vexil Petit"]])
def test_labels_of_words_that_come_again_are_no_names(names: list[str]) -> None:
    """Each label is another one and ends in a day, but its words are few: what stands behind is nobody's remark."""
    labels = [f"{what} {day}" for what, day in zip(["Chess", "Choir"] * 3, ["Mon", "Tue", "Wed"] * 2, strict=True)]
    lines = "\n".join(f"{label}: {name}" for label, name in zip(labels, names, strict=False))
    made = {child.practice for child in read_roster(lines).children}
    assert len(made) >= len(names) - 1
    assert made <= {name.split()[0] for name in names}


@pytest.mark.parametrize("empty", ["()", "[]", "( )", "(.)", "–"])
def test_an_empty_bracket_among_remarks_is_no_remark(empty: str) -> None:
    """Where every line has a remark behind its name, one may have been left out."""
    lines = ["Mira (apples)", "Tilo (pears)", "Anna (apples)", "Emil (pears)", "Bruno (pears)", f"Una {empty}"]
    names = [child.practice for child in read_roster("\n".join(lines)).children]
    assert names == ["Mira", "Tilo", "Anna", "Emil", "Bruno", "Una"]


@pytest.mark.parametrize("form", ["{}. {}", "{}) {}"])
@pytest.mark.parametrize("letters", ["ABCD", "abcd"])
def test_letters_that_count_the_lines_are_no_part_of_a_name(form: str, letters: str) -> None:
    """Behind an A alone Mira was a María cut short, or an Alma."""
    names = ["Mira Vost", "Bo Tarn", "Xobrel Menk", "Mia Elm"]
    children = read_roster("\n".join(form.format(*pair) for pair in zip(letters, names, strict=True))).children
    assert [(child.given, child.family) for child in children] == [tuple(name.split()) for name in names]


def test_initials_in_another_order_stay() -> None:
    assert texts("A. Mira Vost", "C. Bo Tarn", "B. Una Elm") == ["A. Mira Vost", "C. Bo Tarn", "B. Una Elm"]


def test_days_behind_names_are_no_names_behind_labels() -> None:
    """Mar, Gio and May are given names, too."""
    days = ("Lun 1/12", "Mar 2/12", "Gio 3/12", "Lun 4/12", "Mar 5/12", "Gio 6/12")
    names = ("Xobrel", "Vemka", "Jelbru", "Pesku", "Niftam", "Trumlu")
    roster = read_roster("\n".join(f"{name} – {day}" for name, day in zip(names, days, strict=True)))
    assert [child.practice for child in roster.children] == list(names)


@pytest.mark.parametrize("days", [
    ("M-F", "MWF", "Tu W Th", "M-F", "T/Th"), ("Mo-Fr", "Mo Mi Fr", "Di Do", "Mo-Fr", "Di Do"),
    ("Tu W Th starts Nov 3", "M-F", "M-F", "Tu Th", "M-F"), ("Lun-Ven", "Lun-Ven", "Mar Mer", "Lun-Ven", "Gio Ven")])
def test_the_days_that_children_come_on_are_no_names(days: tuple[str, ...]) -> None:
    """Tu, Mi and Do are names, too."""
    names = ("Xobrel Tarn", "Vemka Quill", "Tulmo Dravis", "Ansel Morrow", "Niftam Vost")
    roster = read_roster("AM (8:15)\n" + "\n".join(f"{name} - {day}" for name, day in zip(names, days, strict=True)))
    assert [f"{child.given} {child.family}" for child in roster.children] == list(names)


@pytest.mark.parametrize("form", ["{at} {name}", "{at}. {name}", "{at} {name} |"])
def test_numbers_that_a_photo_read_as_letters(form: str) -> None:
    """With a sign behind them or none; the tenth is read right as well."""
    names = ["Petter", "Hilde", "Maria", "Erik", "Nora", "Svein", "Ada", "Jan", "Ruth", "Trond", "Terje", "Anette"]
    shown = {1: "l", 10: "1O", 11: "ll"}
    text = "\n".join(form.format(at=shown.get(at, at), name=f"{name} Vost") for at, name in enumerate(names, 1))
    assert [child.practice for child in read_roster(text).children] == names


def test_children_called_with_such_letters_stay() -> None:
    names = ["Bo", "Li", "Sol", "Lilo", "Zoi"]
    assert [child.practice for child in read_roster("\n".join(f"{name} Vost" for name in names)).children] == names
