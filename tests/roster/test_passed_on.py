"""Who gives to whom, line after line: everybody is a child once, whatever words stand between two names."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.passed_on import from_passed_on
from namewright.roster.pasted import Line

RINGS = (("Mia", "Leo", "Ava", "Otis"), ("Xobrel", "Vemka", "Tulmo", "Quisda"),
         ("Mira Vost", "Tilo Berg", "Xobrel Tarn", "Vemka Quill"))
WORDS = ("gives to", "regala a", "offre à", "beschenkt", "fa un regalo a", "oferece a", "sits beside")


@pytest.mark.parametrize("words", WORDS)
@pytest.mark.parametrize("names", RINGS)
@pytest.mark.parametrize("title", ["", "Secret friend\n", "** Noël secret **\n\n",
                                   "Ami secret\n", "Amigo secreto\n", "Secret friends!!\n"])
def test_each_is_a_child_once(words: str, names: tuple[str, ...], title: str) -> None:
    turns = [f"{one} {words} {two}" for one, two in zip(names, (*names[1:], names[0]), strict=True)]
    roster = read_roster(title + "\n".join(turns))
    assert [" ".join(filter(None, (child.given, child.family))) for child in roster.children] == list(names)
    assert read_roster(roster.text or title + "\n".join(turns)).children == roster.children


@pytest.mark.parametrize("text", [
    "Jan van der Meer\nPiet van der Berg\nKees van der Linden", "Mia de la Cruz\nLeo de la Vega\nAva de la Mora",
    "Mia and Leo\nAva and Otis\nNoah and Ben", "Mia Vost\nLeo Tarn\nAva Berg",
    "Mia likes Leo\nBen and Ida are away\nOtis is new", "Vost, Mia\nVost, Leo\nVost, Ava"])
def test_other_small_words_stay(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert from_passed_on(lines) == lines


def test_a_child_over_the_others_who_is_not_in_their_turn_stays() -> None:
    turns = "Leo gives to Ava\nAva gives to Otis\nOtis gives to Leo"
    assert [child.practice for child in read_roster(f"Mia Vost\n{turns}").children] == ["Mia", "Leo", "Ava", "Otis"]
