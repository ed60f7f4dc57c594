"""A letter to the parents of several children: ``Dear parents of Mia Vost, Leo Berg and Ava Tarn,`` names the class.

Nothing but names stands behind the words to the parents, so each is a child. Two names are left to those who know a
child of two; one is (``address_lines``).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from namewright.patterns import pattern
from namewright.roster.names_between import names_told
from namewright.roster.pasted import Line

_OPENING = pattern(
    r"\s*(?:[^\W\d_]{1,12}\s+){0,3}?(?:parents|families|guardians|carers|eltern|familien|erziehungsberechtigte[n]?"
    r"|familles|padres|familias|familiares|genitori|famiglie|pais|famílias|encarregados)"
    r"(?:\s+(?:and|or|und|et|y|e|ou|o)\s+[^\W\d_]{3,12})?\s+(?:of|von|der|de|di|dei|des|do|da|dos)\s+(?=\S)", re.I)
_BESIDE = pattern(r"[:(=]|\s[-–—]\s")
_FEWEST = 3


def from_parents_of(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child named behind words to the parents, and these as a heading."""
    return [each for line in lines for each in _apart(line)]


def _apart(line: Line) -> Iterator[Line]:
    opening = _OPENING.match(line.text) if "," in line.text or ";" in line.text else None
    names = names_told(line.text[opening.end() :].rstrip(" ,;:!")) if opening else ()
    if opening is None or len(names) < _FEWEST or any(map(_BESIDE.search, names)):
        yield line
        return
    yield line.heading(opening[0])
    yield from map(line.part, names)
