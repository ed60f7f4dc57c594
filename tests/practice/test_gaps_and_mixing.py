"""Letters left out and letters mixed up: both make the name again, and each is as hard as its level says.

What a letter is is asked of the package regex (``\\X``, UAX #29), which is not ours.
"""

from __future__ import annotations

from collections import Counter
from itertools import pairwise, permutations

import pytest
import regex
import unicodedata2
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.gaps import GAP, gap_rows, without_marks
from namewright.practice.mixing import ORDERS, kept_neighbours, loose_letters, mixed
from namewright.practice.unkind import is_unkind
from namewright.settings import Support

NAMES = ("Bo", "Mira", "Ẹ̀bun", "Ana María", "Mary-Kate", "Kealiʻi", "Łucja", "Ánh", "Anna", "O", "Christopherson",
         "Wilhelminaconstantinamariaevax", "Nguyễn", "José Luis")
MADE = st.lists(st.sampled_from([*"abdegilmnoprstuzé", "ẹ̀"]), min_size=1, max_size=12).map(
    lambda letters: str(unicodedata2.normalize("NFC", "".join(letters).capitalize())))


def letters_of(name: str) -> list[str]:
    return [one for one in regex.findall(r"\X", name) if not one.isspace()]


@given(MADE, st.sampled_from(list(Support)))
def test_gaps_filled_make_the_name(name: str, support: Support) -> None:
    """Each place shows its letter, its letter without marks, or a gap; with what is missing put back it is the name."""
    whole = regex.findall(r"\X", name)
    for row in gap_rows(name, support, "seed"):
        assert len(row.shown) == len(whole)
        back = [whole[at] if one == GAP or at in row.marks else one for at, one in enumerate(row.shown)]
        assert unicodedata2.normalize("NFC", "".join(back)) == name
        hidden = {at for at, one in enumerate(row.shown) if one == GAP}
        assert hidden == (set(row.letters) if not row.is_line else {at for at, one in enumerate(whole) if one.strip()})
        for at in row.marks:
            assert row.shown[at] == without_marks(whole[at]) != whole[at]
            assert unicodedata2.normalize("NFD", whole[at]).startswith(row.shown[at])


@pytest.mark.parametrize("name", NAMES)
def test_gaps_grow(name: str) -> None:
    """More is missing at a harder level, and the hardest ends with the whole name; rows do not shrink down a page."""
    missing = {support: [len(row.letters) for row in gap_rows(name, support, "seed", marks=False)]
               for support in Support}
    for counts in missing.values():
        assert counts == sorted(counts)
        assert all(counts)
    sums = [sum(counts) for counts in missing.values()]
    assert sums == sorted(sums)
    assert missing[Support.INDEPENDENT][-1] == len([one for one in letters_of(name) if one[0].isalpha()])


@given(MADE, st.sampled_from(list(Support)))
def test_no_row_comes_twice(name: str, support: Support) -> None:
    """What a child sees differs from row to row, four rows for two letters or more; an empty line only comes last."""
    rows = gap_rows(name, support, "seed")
    assert len({(row.shown, row.is_line) for row in rows}) == len(rows)
    assert len(rows) == (2 if len(letters_of(name)) == 1 else 4)
    assert not any(row.is_line for row in rows[:-1])


def test_a_name_of_two_letters_has_four_tasks() -> None:
    rows = gap_rows("Bo", Support.FULL, "seed")
    assert [("".join(row.shown), row.is_line) for row in rows] == [
        ("B_", False), ("_o", False), ("__", False), ("__", True)]


def test_gaps_begin_where_a_letter_does_not_stand() -> None:
    first, second, *_ = gap_rows("Marek", Support.PARTIAL, "seed", {"r"})
    assert first.shown == ("M", "a", GAP, "e", "k")
    assert len(second.letters) == 2
    assert all(0 not in row.letters for row in gap_rows("Marek", Support.FULL, "seed", {"M"}))


def test_a_gap_may_be_a_mark() -> None:
    marks = [row for row in gap_rows("Íñigo", Support.FULL, "seed") if row.marks]
    assert ["".join(row.shown) for row in marks] == ["Inigo"]
    assert gap_rows("Íñigo", Support.INDEPENDENT, "seed")[0].marks  # less than a letter is missing, so it comes first
    assert not any(row.marks for row in gap_rows("Łucja", Support.FULL, "seed"))  # the stroke is no mark
    assert not any(row.marks for row in gap_rows("Íñigo", Support.FULL, "seed", marks=False))


@given(MADE, st.sampled_from(list(Support)))
def test_mixed_letters_make_the_name(name: str, support: Support) -> None:
    for order in mixed(name, "seed", ORDERS[support]):
        assert Counter(order) == Counter(letters_of(name))


@given(MADE.filter(lambda name: len(name) <= 6))
def test_as_few_neighbours_stay_as_can_be(name: str) -> None:
    """Against every order of the letters that spells nothing unkind and is not the name."""
    letters = loose_letters(name)
    others = [one for one in permutations(letters) if not is_unkind("".join(one)) and one != letters]
    (order,) = mixed(name, "seed")
    if others:
        assert kept_neighbours(letters, order) == min(kept_neighbours(letters, one) for one in others)


@pytest.mark.parametrize("name", NAMES)
def test_no_neighbours_stay_in_a_longer_name(name: str) -> None:
    """From five letters on, none repeated beside itself, an order without old neighbours is found."""
    letters = letters_of(name)
    if len(letters) >= 5 and name != "Wilhelminaconstantinamariaevax":
        for order in mixed(name, "seed", 3):
            pairs = {frozenset(pair) for pair in pairwise(letters)}
            assert not [pair for pair in pairwise(order) if frozenset(pair) in pairs], order


@pytest.mark.parametrize("name", [*NAMES, "Tad", "Dot", "Otto", "Tisa", "Fatu", "Dabo"])
def test_nothing_unkind_is_spelled(name: str) -> None:
    for seed in range(20):
        for order in mixed(name, str(seed), 3):
            assert not is_unkind("".join(order)), order


def test_another_seed_is_another_order() -> None:
    assert mixed("Marek", "1", 3) == mixed("Marek", "1", 3)
    assert len({mixed("Marek", str(seed)) for seed in range(30)}) > 5
