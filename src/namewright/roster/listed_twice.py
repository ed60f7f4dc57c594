"""A class that stands twice in one list, sorted or written in another way: ``Mira Vost`` first, ``Vost, Mira`` below.

Somebody pasted it twice, or by groups first and then from A to Z. Several whole names that come again, and hardly
another beside them, are the same children: two of one name there may be in a class, but not three times two. What has
settings or figures of its own stays a child, and so do two of one name that both stand in one of the two lists.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence

from namewright.message import Message, message
from namewright.patterns import pattern
from namewright.roster.children import Child, Outcome
from namewright.roster.row_drafts import Draft
from namewright.roster.setting_cells import Choice
from namewright.roster.unfolding import Unfolded
from namewright.roster.vocabulary import fold

_FEWEST = 3  # whole names that stand in both lists
_NEARLY_ALL = 0.8  # of one of the two lists
_OWN = pattern(r"[0-9]{4,}")

Name = tuple[str, str]


def once_each(drafts: Sequence[Draft], found: Unfolded) -> list[Draft]:
    """Make nobody of the second row of a child where the class stands twice; the row stays with the first."""
    rows = [draft for draft in drafts if draft.entry and draft.entry.reading.given and draft.entry.reading.family]
    texts = {draft.row.line: found.lines[draft.row.line].text for draft in rows}
    first = {rows[two].row.line: rows[one].row.line for one, two in _again(list(map(_name, rows)))
             if _adds_nothing(rows[one], rows[two]) and _OWN.findall(texts[rows[one].row.line]) == _OWN.findall(
                 texts[rows[two].row.line])}
    return [Draft(draft.row, Outcome.FURTHER, of=first[draft.row.line]) if draft.row.line in first else draft
            for draft in drafts]


def told_once(drafts: Sequence[Draft], found: Unfolded, children: dict[int, Child]) -> tuple[Message, ...]:
    """Say once of the whole list that a class stood twice in it, with the first child as an example."""
    twice = [draft for draft in drafts if draft.outcome is Outcome.FURTHER and not draft.notes]
    if not twice or twice[0].of is None:
        return ()
    child, at = children[twice[0].of], twice[0].row.line
    return (message("roster.listed_twice", count=len(twice), name=f"{child.given} {child.family}",
                    line=found.lines[twice[0].of].origin + 1, again=found.lines[at].origin + 1),)


def _name(draft: Draft) -> Name:
    return (fold(draft.entry.reading.given), fold(draft.entry.reading.family)) if draft.entry else ("", "")


def _adds_nothing(one: Draft, two: Draft) -> bool:
    """Say whether the second row of a child asks for nothing that the first does not."""
    first, second = one.entry, two.entry
    return first is not None and second is not None and second.choice in (first.choice, Choice()) and (
        second.reading.goes_by in ("", first.reading.goes_by))


def _again(names: Sequence[Name]) -> Iterator[tuple[int, int]]:
    """Yield where a name of the first list stands, and where in the second; nothing where there are no two lists."""
    below = Counter(names)
    if sum(count > 1 for count in below.values()) < _FEWEST:
        return
    above, both, shared = Counter[Name](), 0, [0]
    for name in names:
        both += (above[name] < below[name] - 1) - (above[name] >= below[name])
        above[name] += 1
        below[name] -= 1
        shared.append(both)
    most = max(shared)
    ends = [at for at, count in enumerate(shared) if count == most]
    if most < _FEWEST:
        return
    if most >= _NEARLY_ALL * (len(names) - ends[-1]):
        yield from _pairs(names, ends[-1])
    elif most >= _NEARLY_ALL * ends[0]:
        yield from _pairs(names, ends[0])


def _pairs(names: Sequence[Name], end: int) -> Iterator[tuple[int, int]]:
    places: defaultdict[Name, list[int]] = defaultdict(list)
    for at, name in enumerate(names):
        if at < end:
            places[name].append(at)
        elif places[name]:
            yield places[name].pop(0), at
