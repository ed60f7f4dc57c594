"""Labels for letters, one below another: of ``To the parents of Mira Vost``, street and town, the name is a child.

An address is told by its numbers and by coming again: a line with the number of a house, and right below it one with
the code of a town. Out of scope: addresses in a row of a table, and labels beside labels (``label_sheets``).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.pasted import Line

_WORDS = r"[^\W\d_][^\d,;:\t]{2,38}"
_STREET = pattern(rf"\s*(?:\d{{1,3}}[a-d]?,?\s+{_WORDS}|{_WORDS}[ ,]\s*(?:n[º°.]\s*)?\d{{1,3}}\s?[a-d]?)\s*", re.I)
_CODE = r"(?:[A-Z]{1,2}-)?\d{4,6}(?:-\d{2,4})?"
_TOWN = pattern(rf"\s*(?:{_CODE},?\s+{_WORDS}|{_WORDS}[ ,]\s*{_CODE})\s*")
_PARENTS = pattern(
    r"\s*(?:(?:to|for)\s+)?(?:(?:the\s+)?(?:parents?|family|guardians?)(?:\s+(?:or|and|/)\s+guardians?)?\s+of"
    r"|(?:an\s+(?:die|das)\s+|die\s+)?(?:eltern|familie|erziehungsberechtigten)\s+(?:von|des\s+kindes)"
    r"|(?:aux\s+|à\s+la\s+)?(?:parents|famille)\s+(?:de\b|d['’])"
    r"|(?:(?:a|para)\s+)?(?:los\s+|la\s+)?(?:padres|familia)\s+de\b"
    r"|(?:ai\s+|alla\s+)?(?:genitori|famiglia)\s+(?:di\b|d['’])"
    r"|(?:(?:aos|à|para\s+os)\s+)?(?:pais|família)\s+d[aeo]\b)\s*(?::\s*)?", re.I)
_FEWEST = 2
_LEAST = 0.7  # of the lines with words are of such labels
_LONGEST = 120


def from_address_labels(lines: Sequence[Line]) -> list[Line]:
    """Return the lines of labels with streets and towns as headings, and without what stands before a name."""
    worded = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    texts = {at: lines[at].text if len(lines[at].text) <= _LONGEST else "" for at in worded}
    if sum(_TOWN.fullmatch(text) is not None for text in texts.values()) < _FEWEST:
        return list(lines)
    streets = [step for step, (street, town) in enumerate(pairwise(worded))
               if step and _STREET.fullmatch(texts[street]) and _TOWN.fullmatch(texts[town])
               and not _is_of_an_address(texts[worded[step - 1]])]
    phrases = [at for at in worded if _PARENTS.match(texts[at])]
    whole = 3 * len(streets) + sum(_PARENTS.fullmatch(texts[at]) is not None for at in phrases)
    if len(streets) < _FEWEST or whole < _LEAST * len(worded):
        return list(lines)
    address = {worded[at] for step in streets for at in (step, step + 1)}
    return [line.heading(line.text) if at in address else _named(line) for at, line in enumerate(lines)]


def _is_of_an_address(text: str) -> bool:
    """Say whether a line is a street or a town: what stands above an address is a name."""
    return bool(_STREET.fullmatch(text) or _TOWN.fullmatch(text))


def _named(line: Line) -> Line:
    """Return a line without words to the parents, or these as a heading where no name is with them."""
    match = _PARENTS.match(line.text)
    if match is None:
        return line
    rest = line.text[match.end():].strip()
    return line.without(match[0], rest) if rest else line.heading(line.text)
