"""What a register says of the day is no part of a name: it is told and left out, behind a name or before it."""

from __future__ import annotations

import pytest

from namewright.roster.attendance import without_attendance
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

SAID = [
    "Late", "Tardy", "Sick", "Excused", "Unexcused", "Left early", "Out Sick", "sick", "LATE",
    "Tarde", "Enfermo", "Enferma", "Retraso", "Faltó", "Justificada", "Ausente",
    "Malade", "En retard", "Excusée", "Pas là", "Absente",
    "Krank", "Entschuldigt", "Unentschuldigt", "Zu spät", "Verspätet", "Fehlt",
    "Malata", "Ritardo", "In ritardo", "Giustificato", "Assente",
    "Doente", "Atrasada", "Faltou", "Presente"]
NAMES = [("Mira Vost", "Leo Berg", "Ava Tarn", "Tom Hill"),
         ("Xobrel Vemka", "Tarnul Dofri", "Mogat Lenvi", "Outhna Jel")]


def _read(*lines: str) -> list[tuple[str, str]]:
    return [(child.practice, child.family) for child in read_roster("\n".join(lines)).children]


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize("said", SAID)
def test_a_word_of_the_register_behind_a_whole_name_is_told(said: str, names: tuple[str, ...]) -> None:
    """It was made a part of the family name: Mira of the family Vost Late."""
    read = read_roster("\n".join((f"{names[0]} {said}", *names[1:])))
    assert [(child.given, child.family) for child in read.children] == [tuple(name.split()) for name in names]
    assert any(note.key == "roster.remark" for note in read.lines[0].notes)


@pytest.mark.parametrize(("one", "other"), [
    ("Late", "Left"), ("Malade", "Parti"), ("Atrasado", "Saiu"), ("Sick", "Gone")])
def test_who_left_is_told_by_another_who_is_late(one: str, other: str) -> None:
    assert _read(f"Mira Vost {one}", "Leo Berg", f"Ava Tarn {other}") == [
        ("Mira", "Vost"), ("Leo", "Berg"), ("Ava", "Tarn")]


@pytest.mark.parametrize("lines", [
    ("Mira Late", "Leo", "Ava Sick"), ("Mira Late", "Leo", "Ava", "Tom"), ("Mira Present", "Leo Absent", "Ava Late")])
def test_behind_given_names_alone_it_is_told_by_the_others(lines: tuple[str, ...]) -> None:
    assert {family for _, family in _read(*lines)} == {""}


@pytest.mark.parametrize("lines", [
    ("Mira Late", "Leo Berg", "Ava Tarn"), ("Hannah Sick", "Leo Berg"), ("Mira Presente", "Leo Tarn")])
def test_one_alone_among_whole_names_may_be_a_family(lines: tuple[str, ...]) -> None:
    assert [family for _, family in _read(*lines)] == [line.split()[1] for line in lines]


def test_before_a_name_it_is_told_too() -> None:
    """Who came late was a child called Late."""
    assert _read("Present Mira Vost", "Late Leo Berg", "Absent Ava Tarn") == [
        ("Mira", "Vost"), ("Leo", "Berg"), ("Ava", "Tarn")]
    assert [child.given for child in read_roster("Mira Vost\nLate Leo Berg\nAva Tarn").children] == ["Mira", "Ava"]


@pytest.mark.parametrize("text", [
    "", "Late", "Sick", "Late:", "Mira Vost – Late", "Mira\tLate", "Mira Vost left", "Class Late", "We are late",
    "7 late", "Mia is sick"])
def test_other_lines_stay_as_they_are(text: str) -> None:
    assert [line.text for line in without_attendance([Line(text, 0)])] == [text]


def test_the_family_first_by_a_comma_keeps_its_order() -> None:
    assert _read("Vost, Mira Late", "Berg, Leo", "Tarn, Ava Sick") == [
        ("Mira", "Vost"), ("Leo", "Berg"), ("Ava", "Tarn")]


@pytest.mark.parametrize("line", ["João  Inês  Giulia malade", "1. Camila  Diego  Emma sick"])
def test_several_children_before_such_a_word_are_never_one(line: str) -> None:
    roster = read_roster("\n".join((line, *NAMES[0][1:])))
    assert not any(child.practice in line and child.family for child in roster.children)
