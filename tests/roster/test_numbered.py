"""Lists side by side in one table, each with its own numbers, are read one after the other."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

LISTS = [
    ("\tMorning\t\t\tAfternoon\n1\tMia\t\t1\tLeo\n\t\t\t2\tAva\n\t\t\t3\tNoah", ["Mia", "Leo", "Ava", "Noah"]),
    ("\tGrupo 1\t\t\tGrupo 2\n1\tDom Paz\t\t1\tLuna Gil\n2\tIvan Rey\t\t2\tIsis Mora\n3\tHugo Cano\t\t\t",
     ["Dom", "Ivan", "Hugo", "Luna", "Isis"]),
    ("1.\tMia\tVost\t3.\tLeo\tTarn\n2.\tAva\tQuell\t4.\tNoah\tBirk", ["Mia", "Ava", "Leo", "Noah"]),  # counted on
    ("Nr;Name;Nr;Name\n1;Zorb;1;Quix\n2;Vexil;2;Rook", ["Zorb", "Vexil", "Quix", "Rook"]),
]


@pytest.mark.parametrize(("text", "names"), LISTS)
def test_each_list_is_read_whole(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


def test_the_name_of_each_list_is_told_as_a_heading() -> None:
    first, second, third, *_ = read_roster(LISTS[0][0]).lines
    assert [(one.outcome, one.text) for one in (first, third)] == [
        (Outcome.HEADING, "Morning:"), (Outcome.HEADING, "Afternoon:")]
    assert second.source_line == 2


ONE_LIST = [
    "No.\tChild\tNo.\tParent\n1\tMia Vost\t1\tRuth Vost\n2\tLeo Tarn\t2\tOlga Tarn",
    "1\tMia Vost\t1\tK\n2\tLeo Tarn\t2\tK",
    "Peg\tName\tBus\tFriend\n1\tMia Vost\t4\tRuth\n2\tLeo Tarn\t9\tOlga",
]


@pytest.mark.parametrize("text", ONE_LIST)
def test_numbers_beside_one_list_make_no_other(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mia", "Leo"]
