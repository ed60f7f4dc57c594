"""Kerning: our optical spacing as OpenType class pairs, equal to the setting on the default ruling to half a unit.

A pair is moved by two lookups that add up: the first by the letters without marks, the second by what the marks
change; so both tables stay small.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from fontTools.otlLib.builder import buildPairPosClassesSubtable, buildValue

from namewright.letters.alphabet import Alphabet
from namewright.lines.ruling import Ruling
from namewright.lines.setting import RuledLetters
from namewright.truetype.characters import SPACE, UNIT, FontLetter, Repertoire

Pairs = Mapping[tuple[str, str], int]  # (left glyph, right glyph): font units


def kerning(alphabet: Alphabet, repertoire: Repertoire, ruling: Ruling) -> tuple[Pairs, Pairs]:
    """Return what every pair is moved by its letters alone, and what by their marks besides, in font units."""
    ruled = RuledLetters(alphabet, ruling)
    moved = {(one.name, two.name): _move(ruled, one, two) for one in repertoire.letters for two in repertoire.letters}
    moved |= _space_moves(ruled, repertoire)
    bare = {entry.name: entry.base for entry in repertoire.letters} | {SPACE: SPACE}
    plain = {(one, two): moved[bare[one], bare[two]] for one, two in moved}
    return plain, {pair: units - plain[pair] for pair, units in moved.items()}


def _move(ruled: RuledLetters, one: FontLetter, two: FontLetter, between: str = "") -> int:
    """Return what must be added to the advance of ``one`` before ``two``, with spaces between them or not."""
    left, right = ruled.line(one.cluster + between + two.cluster).letters
    distance = round(UNIT * (right.x - left.x) / ruled.units_to_mm)
    return distance - one.advance + one.shift - two.shift


def _space_moves(ruled: RuledLetters, repertoire: Repertoire) -> dict[tuple[str, str], int]:
    """Return how each letter is moved before and after a space.

    Words stand apart by their edges alone, so what is measured beside one letter holds beside all.
    """
    beside = repertoire.letters[0]
    space = round(UNIT * ruled.alphabet.space)
    after = (_move(ruled, beside, beside, " ") - space) // 2
    before = _move(ruled, beside, beside, " ") - space - after
    moves = {(SPACE, SPACE): 0}
    for entry in repertoire.letters:
        moves[entry.name, SPACE] = _move(ruled, entry, beside, " ") - space - after
        moves[SPACE, entry.name] = _move(ruled, beside, entry, " ") - space - before
    return moves


def pair_subtables(pairs: Pairs, blocks: Callable[[str], str], glyph_ids: Mapping[str, int]) -> list[Any]:
    """Return the subtables of a pair lookup: glyphs that are moved alike share a class.

    ``blocks`` tells which left glyphs share a subtable: few classes a subtable make a small table.
    """
    left = list(dict.fromkeys(one for one, _ in pairs))
    members: dict[str, list[str]] = {}
    for name in left:
        members.setdefault(blocks(name), []).append(name)
    tables = (_subtable(pairs, block, left, glyph_ids) for block in members.values())
    return [table for table in tables if table is not None]


def _subtable(pairs: Pairs, block: list[str], right: list[str], glyph_ids: Mapping[str, int]) -> Any:
    rows = _alike(block, lambda name: tuple(pairs[name, other] for other in right))
    columns = _alike(right, lambda name: tuple(pairs[other, name] for other in block))
    moved = {(row, column): (buildValue({"XAdvance": value}), None)
             for row in rows for column in columns if (value := pairs[row[0], column[0]])}
    return buildPairPosClassesSubtable(moved, glyph_ids) if moved else None


def _alike(glyphs: list[str], key: Callable[[str], tuple[int, ...]]) -> list[tuple[str, ...]]:
    groups: dict[tuple[int, ...], list[str]] = {}
    for name in glyphs:
        groups.setdefault(key(name), []).append(name)
    return [tuple(group) for group in groups.values()]
