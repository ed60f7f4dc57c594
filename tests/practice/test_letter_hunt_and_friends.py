"""Letters among letters, and friends' names: harder as support goes down, the same each time, never the own."""

from __future__ import annotations

from statistics import fmean

import pytest

from namewright.practice.evidence import load_evidence
from namewright.practice.friends import Mate, friends, is_shared
from namewright.practice.letter_hunt import HITS, MAX_ROWS, OTHERS, letter_hunt
from namewright.practice.name_likeness import letters_alike
from namewright.settings import Support

NAMES = ("Bo", "Mira", "Ẹ̀bun", "Ana María", "Mary-Kate", "Kealiʻi", "Łucja", "Zoë", "O", "Christopherson", "7b",
         "Wilhelminaconstantinamariaevax")


@pytest.mark.parametrize("support", Support)
@pytest.mark.parametrize("name", NAMES)
def test_every_row_has_the_letter_and_others(name: str, support: Support) -> None:
    hunt = letter_hunt(name, support, "seed")
    assert 0 < len(hunt.rows) <= MAX_ROWS
    for row in hunt.rows:
        assert row.letter in name
        assert row.hits == HITS
        others = [one for one in row.shown if one != row.letter]
        assert len(set(others)) == len(others) == OTHERS
        assert all(one.isupper() == row.letter[0].isupper() for one in others if row.letter[0].isalpha())


@pytest.mark.parametrize("name", NAMES)
def test_capitals_stand_over_other_small_letters(name: str) -> None:
    """Both lines hold the same letters, and none stands under its own capital."""
    hunt = letter_hunt(name, Support.FULL, "seed")
    assert sorted(one.lower() for one in hunt.capitals) == sorted(hunt.small)
    assert all(capital.lower() != small for capital, small in zip(hunt.capitals, hunt.small, strict=True))
    assert len(hunt.capitals) != 1


def test_what_is_no_riddle_is_matched_only_where_there_is_nothing_else() -> None:
    assert set(letter_hunt("Oskari", Support.FULL, "seed").capitals) == set("KARI")
    assert set(letter_hunt("Zoë", Support.FULL, "seed").capitals) == set("ZOË")
    assert letter_hunt("Oo", Support.FULL, "seed").capitals == ()


@pytest.mark.parametrize("support", Support)
@pytest.mark.parametrize(("name", "times"), [("O", 3), ("Bo", 2), ("Liv", 2), ("Mira", 1)])
def test_letters_of_a_short_name_come_again_among_others_more_alike(name: str, times: int, support: Support) -> None:
    rows = letter_hunt(name, support, "seed").rows
    assert [row.letter for row in rows] == list(name) * times
    for letter in name:
        alike = [fmean(letters_alike(letter, one) for one in row.shown if one != letter)
                 for row in rows if row.letter == letter]
        assert alike == sorted(alike)
        assert times == 1 or support is Support.INDEPENDENT or alike[0] < alike[-1]  # some have few that are rated


@pytest.mark.parametrize("name", [name for name in NAMES if name != "7b"])
def test_others_grow_more_alike(name: str) -> None:
    def alike(support: Support) -> float:
        rows = letter_hunt(name, support, "seed").rows
        return fmean(letters_alike(row.letter, one) for row in rows for one in row.shown if one != row.letter)
    levels = [alike(support) for support in Support]
    assert levels == sorted(levels)
    assert levels[0] < levels[-1]


def test_the_nearest_are_those_that_were_rated_so() -> None:
    """Of the letters beside b, at the hardest level, are the four that the table has as most like it."""
    rated = load_evidence().similarity
    best = sorted("acdefghijklmnopqrstuvwxyz", key=lambda one: rated.get(frozenset("b" + one), 0.0))[-4:]
    *_, row = [row for row in letter_hunt("Ob", Support.INDEPENDENT, "seed").rows if row.letter == "b"]
    assert set(row.shown) == {"b", *best}


def test_friends_repeat_the_own_letters_and_sit_at_the_table() -> None:
    mates = [Mate(name) for name in ("Mira", "Tilo", "Rami", "Ruby", "Ari")]
    assert friends("Mira", mates, 2) == ("Ari", "Rami")
    assert [is_shared(letter, "Mira") for letter in ("M", "m", "r", "R", "a", "á", "Á")] == [
        True, False, True, False, True, False, False]
    at_table = [Mate(one.name, one.name in ("Tilo", "Ruby")) for one in mates]
    assert friends("Mira", at_table, 3) == ("Tilo", "Ruby", "Ari")
    assert friends("Mira", [Mate("Mira"), Mate("MIRA")], 3) == ()
