"""Names with a colon and nothing behind it, among names with counts behind theirs: ``Mia: ||``, ``Leo:``.

Alone such a line is a heading; beside others that count it is a child for whom nothing was counted. Out of scope:
labels before names, of which an empty one is a group of nobody.
"""

from __future__ import annotations

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import INITIALLED, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.headings import heading_reason, perhaps_heading
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import TOTALS, fold

_LABEL = pattern(r"([^:;|\t]{2,60}?)\s?:\s*(.*)", needs=":")
_STROKES = pattern(r"(?:([Ilxo×])\1*\s*(?:\1+\s*)*)?")
_FEW, _FEWEST, _MOSTLY, _SOME, _MOST_WORDS = 2, 3, 0.6, 0.3, 4


def from_bare_labels(lines: list[Line]) -> list[Line]:
    """Return the lines with the colon off names that have nothing behind it, where counts stand behind the others."""
    ended = [at for at, line in enumerate(lines) if line.text.rstrip().endswith(":")]
    if not ended:
        return lines
    filled = {at: line.text for at, line in enumerate(lines) if line.text.strip()}
    found = {at: match for at, text in filled.items() if (match := _LABEL.fullmatch(strip_numbering(text).strip()))}
    counted = [match[1] for match in found.values() if match[2] and _counts(match[2])]
    labels = {at: found[at][1] for at in ended if at in found}
    empty = labels if _are_names([*labels.values()], counted[:-1]) else {}
    if len(counted) < (_FEW if empty else _FEWEST) or len(counted) + len(empty) < _MOSTLY * len(filled) or not all(
            map(_may_be_a_name, counted[:-1])):
        return lines
    if given_share(counted) < _SOME and not all(" " in label for label in counted):  # Bears: 3
        return lines
    words = {len(label.split()) for label in counted}
    first = next(iter(filled))
    names = {at for at, label in labels.items() if _may_be_a_name(label) and len(label.split()) in words and (
        at != first or opens_with_given(label) or INITIALLED.fullmatch(label))}
    return [line._replace(text=line.text.rstrip().rstrip(":").rstrip()) if at in names else line
            for at, line in enumerate(lines)]


def _are_names(empty: list[str], counted: list[str]) -> bool:
    """Say whether labels are whole names, or known ones, with nothing behind them as well as with counts."""
    labels = [*empty, *counted]
    return bool(counted) and all(map(_may_be_a_name, labels)) and (
        all(" " in label for label in labels) or given_share(labels) >= _MOSTLY)


def _counts(text: str) -> bool:
    """Say whether what stands behind a colon are figures, strokes or signs."""
    return not any(map(is_letter, text)) or _STROKES.fullmatch(text) is not None


def _may_be_a_name(label: str) -> bool:
    words = label.replace(",", " ").split()
    return (0 < len(words) <= _MOST_WORDS and is_titled(label) and not any(map(str.isdigit, label))
            and fold(words[0]) not in TOTALS and heading_reason(label) is None and perhaps_heading(label) is None)
