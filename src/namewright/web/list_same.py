"""Which lines of a changed list are still the child they were: a slip that was mended is the same child. Pure.

Lines that did not change are who they were. A changed line between them is the same child where a share of its letters
has stayed. In a list of which most lines are others nobody is found by likeness: it is another class.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from difflib import SequenceMatcher

_MENDED = 0.6  # of two lines, found by trying


def same_children(before: Sequence[str], on_line: Mapping[int, int], after: Sequence[str]) -> dict[int, int]:
    """Return who (an id) stands on which line of ``after``; ``on_line`` says who stood on which of ``before``.

    Lines count from 1. Nobody stands on two lines.
    """
    old, new = [line.strip() for line in before], [line.strip() for line in after]
    steps = SequenceMatcher(None, old, new, autojunk=False).get_opcodes()
    stayed = [(one, other) for tag, start, end, at, _ in steps if tag == "equal"
              for one, other in zip(range(start, end), range(at, at + end - start), strict=True) if old[one]]
    pairs = list(stayed)
    if 2 * len(stayed) >= sum(map(bool, old)):
        for tag, start, end, at, stop in steps:
            if tag == "replace":
                pairs += _mended([(n, old[n]) for n in range(start, end) if old[n] not in new],
                                 [(n, new[n]) for n in range(at, stop) if new[n] not in old])
    return {other + 1: on_line[one + 1] for one, other in pairs if one + 1 in on_line}


def _mended(old: Sequence[tuple[int, str]], new: Sequence[tuple[int, str]]) -> Iterator[tuple[int, int]]:
    """Yield places of lines that are alike, the likest first, each once."""
    alike = sorted(((_likeness(text, other), -one, -two) for one, text in old for two, other in new), reverse=True)
    taken: set[tuple[str, int]] = set()
    for share, one, two in alike:
        if share >= _MENDED and not {("old", one), ("new", two)} & taken:
            taken |= {("old", one), ("new", two)}
            yield -one, -two


def _likeness(before: str, after: str) -> float:
    return SequenceMatcher(None, before.casefold(), after.casefold()).ratio()
