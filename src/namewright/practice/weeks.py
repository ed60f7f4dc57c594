"""Letters of the week: the order of letters that makes the most names ready soonest.

A name is ready in the week in which the last of its letters has been the letter of a week; capital and small
letter, with or without marks, are one letter here. The plan minimises the sum, over all names, of the week in which
each is ready; a name that is not ready within the plan counts as the week after it. So it is exactly the area
between "everyone ready" and the staircase of names that are ready.

**Exact.** In a best plan some names are finished one after another, each with the letters it still lacks, so it is
enough to search the unions of names' letters: every union that fits into the weeks is reached once, smallest first,
at its least cost. Nothing is left out, so the least cost at the end is proved. Where a class has more unions than
``most_steps`` allows, the plan is greedy, and says so. Units: weeks, one letter each.

On random classes of 8 to 24 names and ten weeks the greedy plan costs at most 10 % more than the exact one, and less
than 3 % on the mean: ``tests/practice/test_practice_weeks.py`` holds it to that.
Out of scope: which week of the year; letters a child knows already.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from heapq import heappop, heappush

from namewright.practice.difficulty import Band, base_letter, letter_difficulty, written_signs

MOST_STEPS = 1_500_000  # unions times different names: about half a second of search; beyond it, greedy
DEFAULT_WEEKS = 10

Letters = frozenset[str]


@dataclass(frozen=True, slots=True)
class Week:
    """One week: its letter, and the places (from 0, in the class as given) of the names that become ready in it."""

    letter: str
    ready: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class WeekPlan:
    """The weeks in order, what the plan costs (see the module header), and whether that is proved the least.

    ``waiting`` are the places of names that are not ready by the end of the plan.
    """

    weeks: tuple[Week, ...]
    cost: int
    exact: bool
    waiting: tuple[int, ...]


def letters_of(name: str) -> Letters:
    """Return the letters of a name as letters of the week: small, without marks, each once."""
    return frozenset(base_letter(sign).casefold() for sign in written_signs(name))


def letter_weeks(names: Sequence[str], weeks: int = DEFAULT_WEEKS, most_steps: int = MOST_STEPS) -> WeekPlan:
    """Return the plan for a class. Names with nothing to write are left aside.

    Raises ValueError, with a sentence for the reader, for fewer than one week.
    """
    if weeks < 1:
        raise ValueError(f"a plan needs at least one week, and {weeks} was asked for")
    sets = [letters_of(name) for name in names]
    counted = Counter(filter(None, sets))
    steps = exact_steps(counted, weeks, most_steps)
    initials = Counter(base_letter(sign).casefold() for name in names for sign in written_signs(name)[:1])
    best = greedy_steps(counted, weeks) if steps is None else steps
    return _plan(sets, initials, best, weeks, exact=steps is not None)


def plan_cost(order: Sequence[str], names: Iterable[Letters], weeks: int) -> int:
    """Return the sum over the names of the week in which each is ready; ``weeks`` + 1 for one that is not."""
    when = {letter: week for week, letter in enumerate(order[:weeks], start=1)}
    return sum(max(when.get(letter, weeks + 1) for letter in name) for name in names if name)


def exact_steps(names: Counter[Letters], weeks: int, most_steps: int = MOST_STEPS) -> tuple[Letters, ...] | None:
    """Return the letters met after each finished name, in the best order; None where there are too many unions.

    A set of letters is a number with one bit a letter, and a union is reached from smaller ones only: taken by
    size, each has its greatest saving (weeks won over a name that is never ready) before it is built upon.
    """
    alphabet = sorted(frozenset().union(*names))
    kinds = sorted((_bits(each, alphabet), count) for each, count in names.items())
    best: dict[int, tuple[int, int]] = {0: (0, 0)}
    ready = {0: 0}
    queue = [(0, 0)]
    while queue:
        _, met = heappop(queue)
        for grown in sorted({met | kind for kind, _ in kinds} - {met}):
            left = weeks + 1 - grown.bit_count()
            if left < 1:
                continue
            if grown not in best:
                heappush(queue, (grown.bit_count(), grown))
                ready[grown] = sum(count for kind, count in kinds if kind | grown == grown)
            saved = best[met][0] + (ready[grown] - ready[met]) * left
            if grown not in best or saved > best[grown][0]:
                best[grown] = (saved, met)
        if len(best) * len(kinds) > most_steps:
            return None
    end = min(best, key=lambda met: (-best[met][0], met.bit_count(), met))
    return tuple(frozenset(letter for at, letter in enumerate(alphabet) if met >> at & 1) for met in _traced(best, end))


def _bits(letters: Letters, alphabet: Sequence[str]) -> int:
    return sum(1 << at for at, letter in enumerate(alphabet) if letter in letters)


def _traced(best: dict[int, tuple[int, int]], end: int) -> list[int]:
    """Return the unions on the way to ``end``, from the first."""
    steps: list[int] = []
    while end:
        steps.insert(0, end)
        end = best[end][1]
    return steps


def greedy_steps(names: Counter[Letters], weeks: int) -> tuple[Letters, ...]:
    """Return the letters met after each step, each time taking the name that makes most names ready a week."""
    met: Letters = frozenset()
    steps: list[Letters] = []
    while True:
        reachable = [met | kind for kind in names if not kind <= met and len(met | kind) <= weeks]
        if not reachable:
            return tuple(steps)
        before = met

        def worth(grown: Letters, before: Letters = before) -> tuple[float, int, list[str]]:
            ready = sum(count for kind, count in names.items() if kind <= grown and not kind <= before)
            helped = sum(count * len(kind & (grown - before)) for kind, count in names.items())
            return (-ready / len(grown - before), -helped, sorted(grown))

        met = min(reachable, key=worth)
        steps.append(met)


def _plan(sets: Sequence[Letters], initials: Counter[str], steps: Sequence[Letters], weeks: int, *,
          exact: bool) -> WeekPlan:
    order = _order(sets, initials, steps, weeks)
    met: set[str] = set()
    made: list[Week] = []
    for letter in order:
        before = frozenset(met)
        met.add(letter)
        made.append(Week(letter, tuple(at for at, each in enumerate(sets) if each and each <= met
                                       and not each <= before)))
    waiting = tuple(at for at, each in enumerate(sets) if each and not each <= met)
    return WeekPlan(tuple(made), plan_cost(order, sets, weeks), exact, waiting)


def _order(sets: Sequence[Letters], initials: Counter[str], steps: Sequence[Letters], weeks: int) -> list[str]:
    """Put the letters of each step in order, then fill what weeks are left with the letters most names still need."""
    order: list[str] = []
    everything = frozenset().union(*sets) if sets else frozenset()
    for step in (*steps, everything):
        order += sorted(step - set(order), key=lambda letter: _rank(letter, sets, initials))
    return order[:weeks]


def _rank(letter: str, sets: Sequence[Letters], initials: Counter[str]) -> tuple[int, int, int, str]:
    """Inside a step the letter of most names goes first, then of most own initials, then the easier, then by name."""
    band = list(Band).index(letter_difficulty(letter).band)
    return (-sum(letter in each for each in sets), -initials[letter], band, letter)
