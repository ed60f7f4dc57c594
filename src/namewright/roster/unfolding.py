"""A text as it was pasted into lines of one child each: what was wrapped about it off, what stood together apart.

Every line knows which line of the source it was on. Unfolding again changes nothing, so that a list that is kept
is read again as it was read first.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.roster.beside import strip_numbering
from namewright.roster.columns import lay_out, split_cells, stray_cells
from namewright.roster.header_words import SOLO_HEADERS
from namewright.roster.headings import heading_reason
from namewright.roster.known import lean
from namewright.roster.pasted import Line, unwrapped
from namewright.roster.several import Several, family_first_by_comma, several_in
from namewright.roster.vocabulary import fold

_SPLIT = message("roster.split")
_MOST_ROUNDS = 3
_FEW = 2  # lines tell little of how a list is written
_MOST_ASKED = 2_000
"""Characters of a line that are looked through for several children: a longer one is no list of names but a text."""


def unfold(lines: Sequence[str]) -> list[Line]:
    """Return the lines of a text, one child in each where that is sure."""
    found = unwrapped(lines)
    for _ in range(_MOST_ROUNDS):  # what is found apart may tell more of the rest
        size, found = len(found), _unfolded(found)
        if len(found) == size:
            break
    return found


def _unfolded(found: list[Line]) -> list[Line]:
    texts = [line.text for line in found]
    table = lay_out(texts)
    if table.grid:
        return [each for line in found for each in _cells_of(line, table.delimiter)]
    if table.delimiter:
        return found
    judge = Judge(texts)
    return [each for line in found for each in _apart(line, judge)]


class Judge:
    """Judges the lines of one list without columns: how it writes a comma, and whether a line is all there is."""

    def __init__(self, texts: Sequence[str]) -> None:
        filled = [text for text in texts if text.strip() and not is_title(text)]
        self._alone = len(filled) < 2
        self._family_first = family_first_by_comma(filled)
        single = sum(" " not in strip_numbering(text) for text in filled)
        self._givens = len(filled) > _FEW and 2 * single > len(filled)

    def several(self, text: str) -> Several | None:
        """Return the children of a line, None where it is one child or none."""
        if text.isalpha() or len(text) > _MOST_ASKED or is_title(text):
            return None
        cells = stray_cells(text)
        if len(cells) > 1:
            given = all(" " not in cell and lean(cell) > 0 for cell in cells)
            return Several(tuple(cells), len(cells) > 2) if given else None
        return several_in(text, family_first=self._family_first, alone=self._alone, givens=self._givens)


def _cells_of(line: Line, delimiter: str) -> Iterator[Line]:
    """Yield a line for every filled cell."""
    cells = [cell for cell in split_cells(line.text, delimiter) or [line.text] if cell]
    if len(cells) < 2:
        yield line
        return
    for cell in cells:
        yield replace(line, text=cell, notes=(*line.notes, _SPLIT))


def _apart(line: Line, judge: Judge) -> Iterator[Line]:
    """Yield the line, or a line for every child in it where it surely holds several, its label first."""
    several = judge.several(line.text)
    if several is None or not several.sure:
        yield line
        return
    if several.label:
        yield replace(line, text=several.label)
    for part in several.parts:
        yield replace(line, text=part, notes=(*line.notes, _SPLIT))


def is_title(text: str) -> bool:
    """Say whether a line is about the class and no child."""
    return not any(map(is_letter, text)) or fold(text) in SOLO_HEADERS or heading_reason(text) is not None
