"""A child with a row for each grown-up is one child, and that is told; two of one name stay two."""

from __future__ import annotations

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

TITLES = "Student ID,Student Last Name,Student First Name,Date of Birth,Contact First Name,Relationship"


def _practised(*rows: str) -> list[str]:
    return [child.practice for child in read_roster("\n".join((TITLES, *rows))).children]


def test_a_row_for_each_grown_up_makes_one_child() -> None:
    rows = ("40100,Vost,Mira,2021-01-24,Olga,Mother", "40100,Vost,Mira,2021-01-24,Rolf,Father",
            "40101,Tarn,Leo,2020-04-28,Ruth,Mother")
    assert _practised(*rows) == ["Mira", "Leo"]
    roster = read_roster("\n".join((TITLES, *rows)))
    report = roster.lines[2]
    assert report.outcome is Outcome.FURTHER
    assert report.child == roster.children[0]  # what is erased of the child takes this row along
    assert [(note.key, dict(note.fields)) for note in report.notes] == [
        ("roster.same_child", {"line": 2, "shared": "40100"})]


def test_children_of_one_name_with_numbers_of_their_own_are_two() -> None:
    assert _practised("40100,Vost,Mira,2021-01-24,Olga,Mother", "40107,Vost,Mira,2020-03-02,Ruth,Mother") == [
        "Mira", "Mira"]


def test_twins_share_a_birthday_and_are_two() -> None:
    assert _practised("40100,Vost,Mira,2021-01-24,Olga,Mother", "40101,Vost,Leo,2021-01-24,Olga,Mother") == [
        "Mira", "Leo"]


def test_a_table_about_nobody_else_keeps_every_row() -> None:
    roster = read_roster("First name\tLast name\tBirthday\nMira\tVost\t2021-01-24\nMira\tVost\t2021-01-24")
    assert len(roster.children) == 2
