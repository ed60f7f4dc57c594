"""How an adult tells children of one practised name apart: by family initial, more letters, or a number."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Sequence

from namewright.names.clusters import clusters
from namewright.roster.vocabulary import fold
from namewright.store import keeps_names

_MAX_LETTERS = 24
"""Past so many letters a number tells two children apart better than more letters do."""


def labels(children: Sequence[tuple[str, str]]) -> tuple[str, ...]:
    """Return one label a child, no two alike, for pairs of (practised name, the other name or empty).

    A name that nobody shares is its own label. Where a name is shared, as few letters of the other name
    are added as tell the child from all the rest; where these do not help, a number in roster order.
    """
    groups: defaultdict[str, list[int]] = defaultdict(list)
    for index, (practice, _) in enumerate(children):
        groups[practice.casefold()].append(index)
    result = [practice for practice, _ in children]
    for group in groups.values():
        if len(group) > 1:
            for index, label in zip(group, _tell_apart(tuple(children[i] for i in group)), strict=True):
                result[index] = label
    return _numbered(result)


def shared(practised: Sequence[str]) -> tuple[bool, ...]:
    """Say of each practised name whether another child has it too, case aside."""
    counts = Counter(map(str.casefold, practised))
    return tuple(counts[name.casefold()] > 1 for name in practised)


@keeps_names(512)
def _tell_apart(group: tuple[tuple[str, str], ...]) -> tuple[str, ...]:
    """Add to each name the shortest opening of the other name that nobody else in the group has."""
    others = [clusters(other) for _, other in group]
    longest = min(max(map(len, others)), _MAX_LETTERS)
    chosen: list[str | None] = [None] * len(group)
    waiting = set(range(len(group)))
    for size in range(1, longest + 1):
        openings = ["".join(other[:size]) for other in others]
        counts = Counter(map(fold, openings))
        for index in sorted(waiting):
            if others[index] and (counts[fold(openings[index])] == 1 or size >= len(others[index])):
                short = size < len(others[index]) - 1  # a dot in place of one last letter saves nothing
                tail = f"{openings[index].strip()}." if short else "".join(others[index])
                chosen[index] = f"{group[index][0]} {tail}"
                waiting.discard(index)
        if not waiting:
            break
    return tuple(label or practice for label, (practice, _) in zip(chosen, group, strict=True))


def _numbered(drafts: Sequence[str]) -> tuple[str, ...]:
    """Give numbers to labels that are still alike, past those that are taken: ``Ava 1``, ``Ava 2``."""
    counts = Counter(map(_heard, drafts))
    taken = {heard for heard, count in counts.items() if count == 1}
    following: Counter[str] = Counter()
    result = []
    for draft in drafts:
        label = draft
        heard = _heard(draft)
        while counts[heard] > 1:
            following[heard] += 1
            label = f"{draft} {following[heard]}"
            if _heard(label) not in taken:
                break
        taken.add(_heard(label))
        result.append(label)
    return tuple(result)


def _heard(label: str) -> str:
    """Return what a label sounds like: ``Ava T`` and ``Ava T.`` are alike."""
    return label.casefold().rstrip(".")
