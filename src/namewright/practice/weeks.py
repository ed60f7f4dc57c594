"""Letters of the week: which letters the class takes up when, so that most names are complete soonest.

A name is complete in the week in which the last letter that it still lacks is taken up; capital and small letter, with
or without marks, are one letter here. The plan makes the sum, over all names, of the week in which each is complete as
small as it can find; a name that is not complete within the plan counts as the week after it. Three rules go before:

- letters that look alike, as capitals or as small letters (``sequence.look_alike``), are never taken up in the same
  week or in weeks that follow each other; where nothing else is left, a week brings an earlier letter, or none;
- a letter that nobody lacks is not taken up: what a child has formed is not taught again;
- a letter that was taken up in earlier weeks comes back as review, not as new, while there are others.

One to three letters a week: in the first school year in Norway a faster pace than one letter a week went with better
letter knowledge (Sunde, Furnes & Lundetræ 2020, abstract); for pre-K nobody has shown it. Earlier letters that somebody
still lacks are reviewed after one week, then two, four, eight: that review is spread is from Jones & Reutzel (2012,
abstract), the steps are ours.

The search keeps the ``WIDTH`` best beginnings of a plan (a beam), so a better plan may exist; how near it comes to an
integer programme's optimum is held in ``tests/outside/test_practice_programme.py``. Out of scope: which week of the
year; what a child formed and what was taught (``classbook``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from namewright.message import Problem
from namewright.practice.difficulty import Band, base_letter, letter_difficulty, written_signs
from namewright.practice.sequence import look_alike
from namewright.settings import DEFAULT_WEEKS

MAX_A_WEEK = 3
MAX_REVIEWED = 2  # earlier letters in one week; a rule of ours
WIDTH = 16
NEARNESS = 0.4  # what each letter still lacking takes from a name's promise; found by trial on random classes

Letters = frozenset[str]


@dataclass(frozen=True, slots=True)
class Week:
    """One week: the letters taken up, earlier ones to come back to, and the places of the names complete with it."""

    letters: tuple[str, ...]
    review: tuple[str, ...]
    completes: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class WeekPlan:
    """The weeks in order and what the plan costs (see the module header).

    ``waiting`` are the places (from 0, in the class as given) of names that are not complete by the end of the plan;
    ``formed`` of those that lack no letter before it begins.
    """

    weeks: tuple[Week, ...]
    cost: int
    waiting: tuple[int, ...]
    formed: tuple[int, ...] = ()


def letters_of(name: str) -> Letters:
    """Return the letters of a name as letters of the week: small, without marks, each once."""
    return frozenset(base_letter(sign).casefold() for sign in written_signs(name))


@cache
def too_alike(one: str, other: str) -> bool:
    """Say whether two letters of the week look alike, as small letters or as capitals."""
    return one != other and (look_alike(one, other) or look_alike(one.upper(), other.upper()))


def letter_weeks(names: Sequence[str], weeks: int = DEFAULT_WEEKS, a_week: int = 1, *,
                 formed: Sequence[Letters] = (), taught: Sequence[Sequence[str]] = ()) -> WeekPlan:
    """Return the plan for a class. Names with nothing to write are left aside.

    ``formed`` are the letters that each child has formed, by place; ``taught`` the letters of earlier weeks, the last
    week last. Raises Problem for fewer than one week, or letters a week out of range.
    """
    if weeks < 1:
        raise Problem("practice.weeks_range", weeks=weeks)
    if not 1 <= a_week <= MAX_A_WEEK:
        raise Problem("practice.pace_range", pace=a_week, most=MAX_A_WEEK)
    has = [letters_of(name) for name in names]
    done = [*formed, *(frozenset() for _ in has[len(formed):])]
    lacking = [each - known for each, known in zip(has, done, strict=True)]
    order = _Search(lacking, _initials(names), weeks, a_week, taught).best()
    return _plan(has, lacking, _filled(order, lacking, taught), taught)


def _initials(names: Sequence[str]) -> Counter[str]:
    return Counter(base_letter(sign).casefold() for name in names for sign in written_signs(name)[:1])


def plan_cost(order: Sequence[Sequence[str]], lacking: Sequence[Letters], weeks: int) -> int:
    """Return the sum over the names of the week in which each is complete; ``weeks`` + 1 for one that is not."""
    when = _taken_up(order[:weeks])
    return sum(max(when.get(letter, weeks + 1) for letter in each) for each in lacking if each)


def _taken_up(order: Sequence[Sequence[str]]) -> dict[str, int]:
    """Return the first week, from 1, of each letter."""
    when: dict[str, int] = {}
    for week, letters in enumerate(order, start=1):
        for letter in letters:
            when.setdefault(letter, week)
    return when


# --- the search ---------------------------------------------------------------------------------------


Kinds = tuple[tuple[int, int], ...]  # letters still to be met, one bit each, and how many names lack just these


@dataclass(frozen=True, slots=True)
class _Beginning:
    """The first letters of a plan; an empty one is a seat left free, so that look-alikes stay apart.

    ``met`` has a bit for each letter taken up, ``won`` the weeks that complete names have won over never being
    complete, ``open`` the names under way; ``worth`` is won and what those promise.
    """

    order: tuple[str, ...]
    met: int
    won: int
    open: Kinds
    worth: float = 0.0


class _Search:
    """Find a good order: letter by letter, the best beginnings are kept and each is continued in every way."""

    def __init__(self, lacking: Sequence[Letters], initials: Mapping[str, int], weeks: int, a_week: int,
                 taught: Sequence[Sequence[str]]) -> None:
        before = frozenset(letter for week in taught for letter in week)
        wanted = frozenset().union(*lacking)
        fresh = wanted - before or wanted
        letters = sorted(fresh, key=lambda letter: _rank(letter, lacking, initials))
        self.bits = {letter: 1 << at for at, letter in enumerate(letters)}
        kinds = Counter(sum(self.bits[letter] for letter in each & fresh) for each in lacking if each & fresh)
        self.kinds = tuple(sorted(kinds.items()))
        self.last_week = tuple(taught[-1]) if taught else ()
        self.seats, self.weeks, self.a_week = weeks * a_week, weeks, a_week

    def best(self) -> list[tuple[str, ...]]:
        """Return the letters of each week, some weeks perhaps with fewer or none."""
        kept = [_Beginning((), 0, 0, self.kinds)]
        for _ in range(self.seats):
            if all(len(list(filter(None, each.order))) == len(self.bits) for each in kept):
                break
            found: dict[object, _Beginning] = {}
            for each in (longer for beginning in kept for longer in self._continued(beginning)):
                same = (each.met, self._recent(each.order))
                if same not in found or each.worth > found[same].worth:
                    found[same] = each
            kept = sorted(found.values(), key=lambda each: -each.worth)[:WIDTH]
        order = kept[0].order
        while order and not order[-1]:
            order = order[:-1]
        return [tuple(filter(None, order[at:at + self.a_week])) for at in range(0, len(order), self.a_week)]

    def _continued(self, beginning: _Beginning) -> Iterator[_Beginning]:
        """Yield a beginning with one letter more, in every way that keeps look-alikes apart, or with a free seat."""
        near = self._recent(beginning.order)
        able = [letter for letter, bit in self.bits.items() if not beginning.met & bit
                and not any(too_alike(letter, other) for other in near)]
        for letter in able or [""]:
            yield self._longer(beginning, letter)

    def _recent(self, order: tuple[str, ...]) -> tuple[str, ...]:
        """Return the letters that the next one must not look like: of its own week and of the one before."""
        start = (len(order) // self.a_week - 1) * self.a_week
        return (*(self.last_week if start < 0 else ()), *filter(None, order[max(0, start):]))

    def _longer(self, beginning: _Beginning, letter: str) -> _Beginning:
        """Return a beginning with one letter more, and what it is worth.

        A name that is complete in week w wins weeks + 1 − w. One that lacks n letters is complete at the soonest when
        n more have had their seats, and promises that much, less the more it lacks.
        """
        order = (*beginning.order, letter)
        met = beginning.met | self.bits.get(letter, 0)
        won, promised, under_way = beginning.won, 0.0, []
        for kind, count in beginning.open:
            lacking = (kind & ~met).bit_count()
            soonest = -(-(len(order) + lacking) // self.a_week)
            left = max(0, self.weeks + 1 - soonest)
            if not lacking:
                won += count * left
            else:
                under_way.append((kind, count))
                promised += count * left * NEARNESS ** lacking
        return _Beginning(order, met, won, tuple(under_way), won + promised)


def _rank(letter: str, lacking: Sequence[Letters], initials: Mapping[str, int]) -> tuple[int, int, int, str]:
    """Among equals the letter that most lack goes first, then of most own initials, then the easier, then by name."""
    band = list(Band).index(letter_difficulty(letter).band)
    return (-sum(letter in each for each in lacking), -initials[letter], band, letter)


# --- weeks without a new letter, review, and what each week completes ------------------------------------


def _filled(order: Sequence[tuple[str, ...]], lacking: Sequence[Letters], taught: Sequence[Sequence[str]],
            ) -> list[tuple[str, ...]]:
    """Return the weeks; one without a letter has the earlier letter that most still lack, of those not alike."""
    weeks = list(order)
    for at, letters in enumerate(weeks):
        if not letters:
            before = [*taught, *weeks[:at]]
            beside = [letter for week in (*before[-1:], *weeks[at + 1:at + 2]) for letter in week]
            able = [letter for week in before for letter in week if not any(too_alike(letter, it) for it in beside)]
            weeks[at] = tuple(sorted(set(able), key=lambda each: (-_count(each, lacking), each))[:1])
    return weeks


def _count(letter: str, lacking: Sequence[Letters]) -> int:
    return sum(letter in each for each in lacking)


def _reviews(order: Sequence[Sequence[str]], lacking: Sequence[Letters], taught: Sequence[Sequence[str]],
             ) -> list[tuple[str, ...]]:
    """Return the earlier letters to come back to in each week: those longest due, that somebody lacks, none alike."""
    due: dict[str, tuple[int, int]] = {}  # the week in which a letter is due, and the weeks until it is due again
    for at, letters in enumerate(taught, start=1 - len(taught)):
        due |= {letter: (at + 1, 2) for letter in letters}
    found = []
    for week, letters in enumerate(order, start=1):
        able = [letter for letter in sorted(due, key=lambda each: (due[each][0], -_count(each, lacking), each))
                if due[letter][0] <= week and _count(letter, lacking) and letter not in letters
                and not any(too_alike(letter, other) for other in letters)]
        found.append(tuple(able[:MAX_REVIEWED]))
        due |= {letter: (week + due[letter][1], 2 * due[letter][1]) for letter in found[-1]}
        due |= {letter: (week + 1, 2) for letter in letters}
    return found


def _plan(has: Sequence[Letters], lacking: Sequence[Letters], order: Sequence[tuple[str, ...]],
          taught: Sequence[Sequence[str]]) -> WeekPlan:
    reviews = _reviews(order, lacking, taught)
    when = _taken_up([(*letters, *again) for letters, again in zip(order, reviews, strict=True)])
    ends = [max((when.get(letter, len(order) + 1) for letter in each), default=0) for each in lacking]
    weeks = tuple(Week(letters, again, tuple(at for at, end in enumerate(ends) if end == week))
                  for week, (letters, again) in enumerate(zip(order, reviews, strict=True), start=1))
    writers = [at for at, each in enumerate(has) if each]
    return WeekPlan(weeks, plan_cost(order, lacking, len(order)),
                    tuple(at for at in writers if ends[at] > len(order)), tuple(at for at in writers if not ends[at]))
