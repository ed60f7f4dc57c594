"""A label before names, with brackets or without, is practised by nobody, whatever sign ends it."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.labelled import labelled
from namewright.roster.parsing import read_roster

KNOWN = ["Mia Vost", "Leo Tarn", "Ava Rey", "Noah Quill"]
UNKNOWN = ["Xobrel Vank", "Zuthe Menk", "Rin Tovel", "Kwamou Dil"]
DATED = ["Chess (Mon) Art (Tue) Music (Wed) Chess (Thu)", "Schach (Mo) Kunst (Di) Musik (Mi) Schach (Do)",
         "Échecs (lun) Dessin (mar) Musique (mer) Échecs (jeu)", "Ajedrez (lun) Arte (mar) Música (mié) Ajedrez (jue)",
         "Scacchi (lun) Arte (mar) Musica (mer) Scacchi (gio)", "Xadrez (seg) Arte (ter) Música (qua) Xadrez (qui)"]


def practised(text: str) -> list[str]:
    try:
        return [child.practice for child in read_roster(text).children]
    except RosterError:
        return []


@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
@pytest.mark.parametrize("labels", DATED)
def test_a_day_in_the_brackets_of_a_label(labels: str, names: list[str]) -> None:
    words = labels.split()
    pairs = zip(words[::2], words[1::2], names, strict=True)
    assert practised("\n".join(f"{what} {day}: {name}" for what, day, name in pairs)) == [
        name.split()[0] for name in names]


@pytest.mark.parametrize("label", ["Chess (Mon)", "Schach (Mo)", "Échecs (lun)", "Ajedrez (lun)", "Scacchi (lun)",
                                   "Xadrez (seg)"])
def test_one_such_label_among_whole_names_is_asked_about(label: str) -> None:
    roster = read_roster("\n".join((*KNOWN, f"{label}: Ben Moss")))
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT
    assert practised("\n".join((*KNOWN, f"{label} Ben, Zoe, Mira")))[:4] == ["Mia", "Leo", "Ava", "Noah"]


@pytest.mark.parametrize("label", ["Line leader", "Reihenführer", "Chef de rang", "Ayudante de fila", "Apri fila",
                                   "Ajudante (fila)"])
def test_a_label_before_a_child_of_the_list_asks_nothing(label: str) -> None:
    roster = read_roster("\n".join((*KNOWN, f"{label}: Leo Tarn")))
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]
    assert roster.lines[-1].outcome is Outcome.HEADING


GROUPS = [
    ("Music (Tue) Mia, Leo, Ava", "Mia Leo Ava"), ("Mon/Wed (3 pm) Mia, Leo", "Mia Leo"),
    ("Chess (Mon) Mia, Leo\nMusic (Tue) Ava, Noah, Ben", "Mia Leo Ava Noah Ben"),
    ("Bluebirds - Mia, Leo, Ava\nRobins - Noah, Ben", "Mia Leo Ava Noah Ben"),
    ("Monday/Wednesday: Mia Vost, Leo Tarn\nTuesday/Thursday: Ava Rey, Noah Quill", "Mia Leo Ava Noah"),
    ("Montag/Mittwoch: Mia Vost, Leo Tarn\nDienstag/Donnerstag: Ava Rey, Noah Quill", "Mia Leo Ava Noah"),
    ("Level A - Mia V., Leo T.\nLevel B - Noah Q., Ben M., Ava M.\nLevel C - Zoe H.",
     "Mia V.,Leo T.,Noah Q.,Ben M.,Ava M.,Zoe H."),
    ("Group 1 Mia Leo Ava\nGroup 2 Noah Ben Zoe", "Mia Leo Ava Noah Ben Zoe"),
    ("My students: Mia, Leo, Ava, Noah, Ben and Zoe", "Mia Leo Ava Noah Ben Zoe"),
]


@pytest.mark.parametrize(("text", "names"), GROUPS)
def test_names_behind_a_label_of_any_kind(text: str, names: str) -> None:
    made = [child.given if "." in names else child.practice for child in read_roster(text).children]
    assert made == [name.split()[0] for name in (names.split(",") if "," in names else names.split())]


@pytest.mark.parametrize("text", ["Peg 1 Mia James\nPeg 2 Leo James\nPeg 3 Ava James", "Mia (Tue) Vost, Leo, Ava",
                                  "Mia (Mon): Peanuts\nLeo (Tue): Eggs\nAva (Wed): Milk"])
def test_what_may_be_a_whole_name_is_no_group(text: str) -> None:
    assert not {"Vost", "James", "Peanuts"} & set(practised(text))


def test_the_first_sign_ends_a_label_and_brackets_belong_to_it() -> None:
    assert labelled("Chess (Mon 3:15): Mia – nuts") == ("Chess (Mon 3:15)", "Chess", "Mia – nuts")
    assert labelled("Mill Lane - Mia: nuts") == ("Mill Lane", "Mill Lane", "Mia: nuts")
    assert labelled("7:05 Mill Lane") is None
    assert labelled("(Mon): Mia") is None
