"""A first line that is written as no other is asked about, though no word of it is known."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

UNKNOWN = ["Xobrel Vemka", "Pukin Drasel", "Tolvi Krenn", "Zuki Brunn"]
KNOWN = ["Mia Vost", "Leo Berg", "Ana Renn", "Ben Tarn"]
TITLES = ["Nachtlicht", "Kestrels", "Mi clase (por teléfono)", "** Dia do desporto – resultados **",
          "Rette mensa 2024/25", "Noël secret 2024/25", "APRECIAÇÕES 1.º PERÍODO", "== Klaxen ==",
          "La nostra gita nuova", "Dans le jardin"]


@pytest.mark.parametrize("names", [UNKNOWN, KNOWN, [f"{name} – bus 3" for name in UNKNOWN]])
@pytest.mark.parametrize("title", TITLES)
def test_a_title_of_any_words_is_no_child_in_silence(title: str, names: list[str]) -> None:
    roster = read_roster("\n".join([title, *names]))
    assert roster.lines[0].outcome in (Outcome.LEFT_OUT, Outcome.HEADING)
    assert roster.lines[0].notes
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("first", ["Mia", "Leo Berg", "Xobrel Vemka", "Ana de la Renn", "mia vost", "Name: Nachtlicht",
                                   "Vost, Mia", "Leo Berg - bus 3", "Ana (2024)"])
def test_a_first_child_is_one(first: str) -> None:
    assert len(read_roster("\n".join([first, "Pukin Drasel", "Tolvi Krenn", "Zuki Brunn", "Ben Tarn"])).children) == 5


@pytest.mark.parametrize("names", [["Xobrel", "Pukin", "Tolvi", "Zuki"], [f"{name} 2024/25" for name in KNOWN],
                                   [f"** {name} **" for name in UNKNOWN]])
def test_what_others_have_too_is_no_sign_of_a_title(names: list[str]) -> None:
    assert len(read_roster("\n".join(names)).children) == len(names)


@pytest.mark.parametrize("said", ["Kinder (4)", "Children: 4", "Enfants (4)", "Alunos:", "Bambini (4):", "Niños (4)"])
def test_what_stands_above_a_word_for_the_children_is_none(said: str) -> None:
    above = ["Sammelliste Nord", "Treffpunkt: hinterer Hof", ""]
    roster = read_roster("\n".join([*above, said, "Mia", "Leo", "Xobrel", "Vemka"]))
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Xobrel", "Vemka"]
