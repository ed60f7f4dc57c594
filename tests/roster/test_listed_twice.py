"""A class that stands twice in one list is made once, and that is said; two of one name in one list stay two."""

from __future__ import annotations

from itertools import combinations

import pytest

from namewright.roster.children import Outcome, Roster
from namewright.roster.parsing import read_roster

CLASSES = (("Mira Vost", "Leo Tarn", "Anna Kell", "Zoe Brandt"),
           ("Mira Xobrel", "Leo Kestri", "Anna Pelgun"),
           ("Lucía Gil", "Hugo Ruiz", "Vera Soler"),
           ("Jürgen Fuchs", "Élodie Moreau", "Tomás Pinho", "Chiara Galli", "Fynn Ötker"))


def _by_comma(name: str) -> str:
    given, _, family = name.partition(" ")
    return f"{family}, {given}"


def _called(roster: Roster) -> list[str]:
    return [f"{child.given} {child.family}" for child in roster.children]


def _said(roster: Roster) -> list[str]:
    return [note.key for note in roster.notes if note.key == "roster.listed_twice"]


@pytest.mark.parametrize("names", CLASSES)
def test_a_class_in_two_orders_is_made_once(names: tuple[str, ...]) -> None:
    turned = list(map(_by_comma, names))
    for first, second in ((list(names), turned), (turned, list(names)), (list(names), sorted(names)),
                          (turned, sorted(turned)), (list(names), list(reversed(names)))):
        for gap in ([""], []):
            roster = read_roster("\n".join((*first, *gap, *second)))
            assert sorted(_called(roster)) == sorted(names), (first, second)
            assert _said(roster) == ["roster.listed_twice"]
            assert "roster.repeat" not in [note.key for report in roster.lines for note in report.notes]


def test_the_second_row_stays_with_its_child_so_that_erasing_finds_it() -> None:
    roster = read_roster("Mira Vost\nLeo Tarn\nAnna Kell\n\nKell, Anna\nTarn, Leo\nVost, Mira")
    further = [report for report in roster.lines if report.outcome is Outcome.FURTHER]
    assert [report.child and report.child.line for report in further] == [3, 2, 1]


def test_by_groups_and_then_sorted_is_one_class() -> None:
    names = "Group 1\nMira Vost\nLeo Tarn\nGroup 2\nZoe Brandt\nAnna Kell\n\nAnna Kell\nLeo Tarn\nMira Vost\nZoe Brandt"
    assert len(read_roster(names).children) == 4


def test_two_of_one_name_in_one_list_stay_two() -> None:
    names = ["Mira Vost", "Leo Tarn", "Anna Kell", "Mira Vost", "Zoe Brandt"]
    once = read_roster("\n".join(names))
    assert len(once.children) == 5
    assert not _said(once)
    twice = read_roster("\n".join((*names, "", *map(_by_comma, names))))
    assert sorted(_called(twice)) == sorted(names)
    below = read_roster("\n".join((*names, "", *map(_by_comma, dict.fromkeys(names)))))
    assert sorted(_called(below)) == sorted(names)


def test_who_is_new_in_the_second_list_is_made() -> None:
    names = ("Mira Vost", "Leo Tarn", "Anna Kell", "Zoe Brandt", "Fynn Adler")
    roster = read_roster("\n".join((*names, "", *map(_by_comma, names), "Berg, Jonas")))
    assert sorted(_called(roster)) == sorted((*names, "Jonas Berg"))


def test_some_of_the_class_again_below_are_the_same_children() -> None:
    names = CLASSES[3]
    for again in combinations(names, 3):
        assert sorted(_called(read_roster("\n".join((*names, "", *again))))) == sorted(names)


def test_few_that_come_again_stay_children() -> None:
    roster = read_roster("Mira Vost\nLeo Tarn\nAnna Kell\n\nVost, Mira\nTarn, Leo")
    assert len(roster.children) == 5
    assert not _said(roster)


def test_given_names_that_come_again_stay_children() -> None:
    assert len(read_roster("Mira\nLeo\nAnna\n\nAnna\nLeo\nMira").children) == 6


def test_a_row_that_asks_for_something_of_its_own_stays() -> None:
    roster = read_roster("Mira Vost\nLeo Tarn\nAnna Kell\nZoe Brandt\n\nVost, Mira (left-handed)\nTarn, Leo\n"
                         "Kell, Anna\nBrandt, Zoe")
    assert len(roster.children) == 5
    numbered = "Number,First name,Last name\n" + "\n".join(
        f"{4010 + at},{name}" for at, name in enumerate(["Mira,Vost", "Leo,Tarn", "Anna,Kell"] * 2))
    assert len(read_roster(numbered).children) == 6
