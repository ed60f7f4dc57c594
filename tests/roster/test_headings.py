"""A line about the class is told from a line that is a child."""

from __future__ import annotations

import pytest

from namewright.roster.headings import heading_reason

HEADINGS = [
    ("Children:", "it ends in a colon"), ("Ms. Ferrow", "a title in front"), ("Sra. Quill", "in Spanish"),
    ("Ms. Ferrow’s class", "a class that is named"), ("The Alder class", "the … class"),
    ("Class list", "a list"), ("Page 2", "a page number"), ("Room 6", "a place and its number"),
    ("Teacher: Oda Vost", "a label for somebody else"), ("Grade: K", "a label for something else"),
    ("September 2026", "a month and a year"), ("3. Room 6", "numbered or not"), ("Roster", "a word of headings alone"),
]
CHILDREN = [
    ("Mira Vost", "a plain name"), ("Name: Mira Vost", "the label of a name"),
    ("April", "a month alone may be a child"),
    ("Summer Vost", "so may a season"), ("Grace Ms", "a title behind a name"), ("Paige", "a name that sounds like one"),
    ("Mira", "one word"), ("1. Mira", "numbered"), ("De la Brae, Mira", "a comma"), ("", "nothing at all"),
]


@pytest.mark.parametrize(("line", "why"), HEADINGS, ids=[row[1] for row in HEADINGS])
def test_a_line_about_the_class(line: str, why: str) -> None:
    assert heading_reason(line), why


@pytest.mark.parametrize(("line", "why"), CHILDREN, ids=[row[1] for row in CHILDREN])
def test_a_line_that_is_a_child(line: str, why: str) -> None:
    assert not heading_reason(line), why
