"""Which lines of a changed list are as they were, so that who stood on them still does, however they are read. Pure.

Whom a changed line is, the class tells by names (``classbook.enrol``). What somebody answered about a line goes before
both. It is kept beside the draft: the line's mark with the child's number, with a sign where the name is meant as it
stands or goes on as the class has it, or with the name in another script that stood there before it was written anew.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from urllib.parse import quote, unquote

from namewright.classbook.rosters import Answers
from namewright.web.sent_number import sent_number

_MEANT, _KEEPS, _BEFORE = "!", "^", "~"


def same_children(before: Sequence[str], on_line: Mapping[int, int], after: Sequence[str]) -> dict[int, int]:
    """Return who (an id) stands on which line of ``after``; ``on_line`` says who stood on which of ``before``.

    Lines count from 1. Of lines that are alike the class decides: one of them may be gone.
    """
    old, new = _once(before), _once(after)
    return {new[text]: on_line[line] for text, line in old.items() if text in new and line in on_line}


def _once(lines: Sequence[str]) -> dict[str, int]:
    """Return the place of each line that stands there once."""
    counts = Counter(map(str.strip, lines))
    return {line.strip(): at for at, line in enumerate(lines, 1) if line.strip() and counts[line.strip()] == 1}


def answer(mark: str, child_id: int) -> str:
    """Return what is kept of the answer that the line of a mark is this child."""
    return f"{mark}={child_id}"


def with_answer(settled: Iterable[str], mark: str, child_id: int, alike: int = 1) -> frozenset[str]:
    """Return what is settled with an answer in place of another of the same child, or about the same line.

    Of ``alike`` lines that say the same each may be another child, and which of them is which makes no difference.
    """
    answers = [one.partition("=") for one in settled if "=" in one]
    about = [f"{key}={said}" for key, _, said in answers if key == mark and said != str(child_id)]
    gone = {f"{key}={said}" for key, _, said in answers if child_id and said == str(child_id)}
    return (frozenset(settled) - gone - (set() if len(about) < alike else set(about))) | {answer(mark, child_id)}


def answered(settled: Iterable[str], lines: Sequence[str], mark: Callable[[str], str]) -> dict[int, int]:
    """Return who stands on which line by what was answered."""
    said: dict[str, list[int]] = {}
    for key, _, child_id in sorted(one.partition("=") for one in settled if "=" in one):
        if (number := sent_number(child_id)) is not None:
            said.setdefault(key, []).append(number)
    found = {}
    for at, line in enumerate(lines, 1):
        if line.strip() and (ids := said.get(mark(line))):
            found[at] = ids.pop()
    return found


def meant(mark: str) -> str:
    """Return what is kept of the answer that the name on the line of a mark is meant as it stands."""
    return mark + _MEANT


def keeps(mark: str) -> str:
    """Return what is kept of the answer that the child on the line of a mark goes on as the class writes the name."""
    return mark + _KEEPS


def stood(mark: str, name: str) -> str:
    """Return what is kept of a name that stood on the line of a mark before it was written anew."""
    return f"{mark}{_BEFORE}{quote(name, safe='')}"


def is_meant_anew(settled: Iterable[str]) -> bool:
    """Say whether some name is said to be meant as it stands: that changes a class even by the same list."""
    return any(one.endswith(_MEANT) for one in settled)


def answers(settled: frozenset[str], lines: Sequence[str], mark: Callable[[str], str]) -> Answers:
    """Return what was said of the names on lines."""
    names = {key: unquote(name) for key, sign, name in (one.partition(_BEFORE) for one in settled) if sign}
    marks = {at: mark(line) for at, line in enumerate(lines, 1) if line.strip()}
    return Answers(frozenset(at for at, key in marks.items() if meant(key) in settled),
                   frozenset(at for at, key in marks.items() if keeps(key) in settled),
                   {at: names[key] for at, key in marks.items() if key in names})
