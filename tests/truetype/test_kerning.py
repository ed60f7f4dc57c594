"""Optical spacing as class pairs: the two lookups add up, and what moves alike shares a class."""

from __future__ import annotations

from typing import Any

import pytest

from namewright.letters.alphabet import Alphabet
from namewright.lines.ruling import custom_ruling
from namewright.lines.setting import RuledLetters
from namewright.truetype.characters import SPACE, UNIT, repertoire_of
from namewright.truetype.kerning import kerning, pair_subtables

IDS = {name: at for at, name in enumerate("abcd")}


def moved(tables: list[Any], one: str, two: str) -> int:
    """Return what a pair is moved by, as OpenType looks it up: the first subtable that covers the left glyph."""
    for table in tables:
        if one in table.Coverage.glyphs:
            row = table.Class1Record[table.ClassDef1.classDefs.get(one, 0)]
            value = row.Class2Record[table.ClassDef2.classDefs.get(two, 0)].Value1
            return int(getattr(value, "XAdvance", 0) or 0)
    return 0


BY_LEFT = {"a": 10, "b": 10, "c": -5, "d": 0}
PAIRS = {(one, two): by * (2 if two in "ab" else 1) for one, by in BY_LEFT.items() for two in BY_LEFT}


@pytest.mark.parametrize("blocks", [lambda name: "", lambda name: name])
def test_every_pair_is_moved_as_told_however_it_is_packed(blocks: Any) -> None:
    """In one subtable or in many."""
    tables = pair_subtables(PAIRS, blocks, IDS)
    assert {pair: moved(tables, *pair) for pair in PAIRS} == PAIRS


def test_glyphs_that_are_moved_alike_share_a_class() -> None:
    """a and b, and c: two classes of left glyphs beside that of all others; nothing moves is no table."""
    (table,) = pair_subtables(PAIRS, lambda name: "", IDS)
    assert table.ClassDef1.classDefs.get("a", 0) == table.ClassDef1.classDefs.get("b", 0)
    assert table.ClassDef1.classDefs.get("a", 0) != table.ClassDef1.classDefs.get("c", 0)
    assert pair_subtables(dict.fromkeys(PAIRS, 0), lambda name: "", IDS) == []


def test_letters_and_marks_add_up_to_the_distance_set(small: Alphabet) -> None:
    """For every pair, advance and both moves put the next letter where the setting puts it, to half a unit."""
    ruling = custom_ruling(20.0)
    repertoire = repertoire_of(small)
    letters, marks = kerning(small, repertoire, ruling)
    ruled = RuledLetters(small, ruling)
    for one in repertoire.letters[:12]:
        for two in repertoire.letters[:12]:
            left, right = ruled.line(one.cluster + two.cluster).letters
            pair = (one.name, two.name)
            typed = one.advance - one.shift + letters[pair] + marks[pair] + two.shift
            assert typed == pytest.approx(UNIT * (right.x - left.x) / ruled.units_to_mm, abs=0.51), pair


def test_marks_alone_make_the_second_part(small: Alphabet) -> None:
    """Between bare letters, or beside a space, marks change nothing."""
    letters, marks = kerning(small, repertoire_of(small), custom_ruling(20.0))
    assert marks["a", "n"] == marks["n", "a"] == marks["a", SPACE] == 0
    assert letters["aacute", "n"] == letters["a", "n"]
