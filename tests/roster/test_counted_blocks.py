"""Lines over names that are counted anew below each of them are headings."""

from __future__ import annotations

import pytest

from namewright.roster.counted_blocks import from_counted_blocks
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


@pytest.mark.parametrize(("first", "second"), [
    ("Salto", "Relevos"), ("Relay", "Long jump"), ("Staffetta", "30 metri"), ("Weitsprung", "Eierlauf")])
def test_what_was_done_is_no_child(first: str, second: str) -> None:
    text = f"{first}\n1. Mia Vost  16.3 s\n2. Leo Zell  18.8 s\n\n{second}\n1. Ava Quin  9,6 s\n2. Noah Marn  11.4 s"
    assert [child.practice for child in read_roster(text).children] == ["Mia", "Leo", "Ava", "Noah"]


def test_a_small_word_tells_of_names_on_no_list() -> None:
    text = "Salto\n1. Xamim  16.3 s\n2. Berolt  18.8 s\n\nCarrera de sacos\n1. Thouga  9.6 s\n2. Quorrik  11.4 s"
    assert [child.practice for child in read_roster(text).children] == ["Xamim", "Berolt", "Thouga", "Quorrik"]


@pytest.mark.parametrize("text", [
    "Mia\n1. Apples\n2. Rice\n\nLeo\n1. Pizza\n2. Noodles",  # what a child likes
    "Xamim\n1. Apples\n2. Rice\n\nBerolt\n1. Pizza\n2. Noodles",
    "Relay\n1. Mia\n2. Leo\nAva\nJump\n1. Noah\n2. Theo",  # a child without a number
    "Relay\n1. Mia\n2. Leo\n3. Ava",
])
def test_other_lines_stay_as_they_are(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_counted_blocks(lines) == lines
