"""What a line and a child have in common besides a name. All names and numbers are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.facts import facts_in_common
from namewright.roster.parsing import read_roster

HEAD = "First name,Last name,Room,Birthday,Guardian e-mail\n"
BEFORE = [HEAD.strip(), "Mira,Quill,12,3/4/2021,o@quill.example", "Tilo,Reed,12,5/6/2021,p@reed.example",
          "Bo,Reed,12,5/6/2021,p@reed.example"]


@pytest.mark.parametrize(("row", "found"), [
    ("Jory,Hale,12,3/4/2021,", {(2, 7)}),
    ("Jory,Hale,12,,O@QUILL.example", {(2, 7)}),
    ("Jory,Hale,12,5/6/2021,", set()),  # twins have one birthday
    ("Jory,Hale,12,,p@reed.example", set()),  # and one guardian
    ("Jory,Hale,12,,", set()),  # a room is everybody's
])
def test_a_fact_is_what_one_alone_has(row: str, found: set[tuple[int, int]]) -> None:
    """On the list of before and on the new one."""
    now = read_roster(f"{HEAD}{row}\nWenna,Praske,12,,\n")
    assert facts_in_common(BEFORE, {2: 7, 3: 8, 4: 9}, now) == found


def test_a_row_that_somebody_else_has_too_tells_nothing() -> None:
    """Two lines with one birthday are not told apart by it."""
    now = read_roster(f"{HEAD}Jory,Hale,12,3/4/2021,\nWenna,Praske,12,3/4/2021,\n")
    assert facts_in_common(BEFORE, {2: 7}, now) == set()
