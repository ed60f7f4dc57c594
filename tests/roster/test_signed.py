"""Who wrote a list or asked for it is no child of it in silence."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.signed import signed_lines

NUMBERED = ["1) Mira Vost", "2) Tilo Tarn", "3) Anna Berg", "4) Ben Koch"]
WROTE = [
    ("On Tue, Aug 26, 2025 at 9:14 AM Jo Berg <jo@example.org> wrote:", "Could you send me the list? Thanks!"),
    ("Am 26.08.2025 um 09:14 schrieb Jo Berg <jo@example.org>:", "kannst du mir die Liste schicken?"),
    ("Le mar. 26 août 2025 à 09:14, Jo Berg <jo@example.org> a écrit :", "peux-tu m'envoyer la liste ?"),
    ("El mar, 26 ago 2025 a las 9:14, Jo Berg <jo@example.org> escribió:", "¿me pasas la lista?"),
    ("Il giorno mar 26 ago 2025 alle ore 09:14 Jo Berg <jo@example.org> ha scritto:", "mi mandi l'elenco?"),
    ("Em ter., 26 de ago. de 2025 às 09:14, Jo Berg <jo@example.org> escreveu:", "podes mandar-me a lista?"),
]


def made(lines: list[str]) -> list[str]:
    return [child.practice for child in read_roster("\n".join(lines)).children]


@pytest.mark.parametrize(("wrote", "asked"), WROTE)
@pytest.mark.parametrize("numbered", [True, False])
def test_signatures_of_a_thread_are_no_children(wrote: str, asked: str, numbered: bool) -> None:
    names = NUMBERED if numbered else [line[3:] for line in NUMBERED]
    quoted = [f"> > {name}" for name in names]
    end = ["> >", "> > Jo"] if numbered else []
    assert made(["Ida", "", wrote, f"> {asked}", ">", *quoted, *end]) == ["Mira", "Tilo", "Anna", "Ben"]


@pytest.mark.parametrize(("wrote", "asked"), WROTE)
def test_who_asked_in_the_quoted_mail_is_no_child(wrote: str, asked: str) -> None:
    names = ["Mira", "Tilo", "Anna", "Ben"]
    assert made([*names, "", wrote, f"> {asked}", "> Jo"]) == names


def test_a_name_below_the_last_number_is_asked_about() -> None:
    read = read_roster("\n".join([*NUMBERED, "", "Jo"]))
    assert [child.practice for child in read.children] == ["Mira", "Tilo", "Anna", "Ben"]
    assert [note.key for note in read.lines[-1].notes] == ["roster.unlike"]


@pytest.mark.parametrize("lines", [
    ["Mira", "Tilo", "", "Anna"], [*NUMBERED, "Emil Weiss"], ["1. Mira", "2. Tilo", "", "Anna", "Ben", "Ida", "Jo"],
    ["> Mira", "> Tilo", "> Anna"], ["2. Mira", "4. Tilo", "7. Ben", "", "Anna"], []])
def test_other_names_stay(lines: list[str]) -> None:
    assert list(signed_lines(lines)) == []
