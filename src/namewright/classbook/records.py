"""What the classbook hands out, and the checks on what it takes in.

Dates are ISO 8601 days (``2026-09-14``), moments ISO 8601 to the second. Positions of letters count from 0 in
``clusters(name)``. Out of scope: how it is kept (``schema``, ``database``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from types import MappingProxyType

import unicodedata2

from namewright.classbook.enrol import Recognised
from namewright.classbook.stages import Stage
from namewright.message import Message, Problem
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.roster.children import Child, Roster
from namewright.settings import Support
from namewright.tuning import Tuning

MAX_WHO, MAX_NOTE = 100, 500
_FIRST_YEAR = 2000  # no child who practises now was born before
NO_SETTINGS: Mapping[str, str] = MappingProxyType({})


class ClassbookError(Problem):
    """Something cannot be read or kept, and nothing was changed."""


@dataclass(frozen=True, slots=True)
class BookChild:
    """A child of the class, with an ``id`` that stays the same for good.

    ``child`` is what the rest of the house works with: its practised name, support, hand and line height already
    follow the child's own settings (None: as the class). ``own`` are the child's own measures.
    ``settings`` is what was set for this child, as text. ``left`` is the moment the child was found
    missing from the roster, None for one who is here. ``namesake`` says that another who is here practises the same
    name, so that their pages look alike.
    """

    id: int
    child: Child
    own: Tuning
    settings: Mapping[str, str]
    joined: str
    left: str | None = None
    namesake: bool = False


class By(NamedTuple):
    """Who makes a change, in any words, and at which moment; None is this computer's clock."""

    who: str = ""
    when: datetime | str | None = None


@dataclass(frozen=True, slots=True)
class Change:
    """One setting changed; None means not set."""

    key: str
    before: str | None
    after: str | None


@dataclass(frozen=True, slots=True)
class Save:
    """What was changed together: who, when, what. ``undoes`` is the save that this one took back."""

    id: int
    child_id: int | None
    who: str
    when: str
    changes: tuple[Change, ...]
    undoes: int | None = None
    undone: bool = False


class Seen(NamedTuple):
    """What somebody saw of a child's name writing, to be noted.

    ``letters`` are positions in ``clusters(child.practice)`` that the child formed, None where nobody looked;
    ``not_yet`` those that were said not to be formed yet, None for all that ``letters`` leaves out.
    """

    letters: Iterable[int] | None = None
    support: Support | None = None
    stage: Stage | None = None
    note: str = ""
    not_yet: Iterable[int] | None = None


@dataclass(frozen=True, slots=True)
class Observation:
    """What was seen of a child's name writing on one day.

    ``name`` is the name as it was practised that day, ``letters`` the positions in ``clusters(name)`` that the
    child formed (None: not looked at; empty: none yet), ``not_yet`` those that were said not to be formed yet (None:
    all that ``letters`` leaves out).
    """

    id: int
    child_id: int
    date: str
    name: str
    letters: tuple[int, ...] | None
    support: Support | None
    stage: Stage | None
    note: str
    who: str
    when: str
    not_yet: tuple[int, ...] | None = None


@dataclass(frozen=True, slots=True)
class RosterUpdate:
    """What a new roster did: ids of children by what became of them, and a note for each guess.

    ``recognised`` are lines that are, or may be, a child known under another name; ``ids`` says who of those who were
    known stands on which line of ``roster``. ``doubted`` are those who joined or left of whom ``notes`` tell that they
    may be one child; ``more`` are, by line, children of whom the class knows more than the list says, with that.
    """

    roster: Roster
    joined: tuple[int, ...] = ()
    stayed: tuple[int, ...] = ()
    returned: tuple[int, ...] = ()
    left: tuple[int, ...] = ()
    notes: tuple[Message, ...] = ()
    recognised: tuple[Recognised, ...] = ()
    ids: Mapping[int, int] = field(default_factory=dict)
    doubted: frozenset[int] = frozenset()
    more: Mapping[int, Child] = field(default_factory=dict)


def called(children: Iterable[BookChild]) -> dict[int, str]:
    """Return what an adult calls each child, by id: the label, or the whole name where one who left has that label."""
    everyone = tuple(children)
    counts = Counter(one.child.label for one in everyone)
    return {one.id: one.child.label if counts[one.child.label] < 2 else
            f"{one.child.given} {one.child.family}".strip() or one.child.label for one in everyone}


def letter_positions(name: str) -> tuple[int, ...]:
    """Return the positions in ``clusters(name)`` of what a child forms: letters and digits, no hyphens or spaces."""
    return tuple(at for at, cluster in enumerate(clusters(name)) if unicodedata2.category(cluster[0])[0] in "LN")


def checked_letters(name: str, letters: Iterable[int] | None) -> tuple[int, ...] | None:
    """Return positions sorted, each once. Raises ClassbookError for one where the name has no letter."""
    if letters is None:
        return None
    wanted = sorted(set(letters))
    there = letter_positions(name)
    wrong = [at for at in wanted if at not in there]
    if wrong:
        raise ClassbookError("classbook.no_letter_there", name=name, place=wrong[0] + 1)
    return tuple(wanted)


def checked_text(text: str, most: int, key: str) -> str:
    """Return text without what cannot be seen or kept. Raises ClassbookError of ``key`` past ``most`` characters."""
    tame = "".join(char if char in "\n\t" or char.isprintable() else " " for char in text.replace("\r\n", "\n"))
    tame = tame.strip()
    if len(tame) > most:
        raise ClassbookError(f"classbook.{key}", count=len(tame), most=most)
    return tame


def checked_day(text: str | date) -> str:
    """Return a day as ISO text. Raises ClassbookError for what is no day, or one long past.

    Of a year typed with two figures a browser makes one two thousand years ago.
    """
    if isinstance(text, date):
        return (text.date() if isinstance(text, datetime) else text).isoformat()
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        day = date.min
    if day.year < _FIRST_YEAR:
        raise ClassbookError("classbook.no_day", text=text, example="2026-09-14")
    return day.isoformat()


def checked_moment(when: datetime | str | None) -> str:
    """Return a moment as ISO text to the second; None is now, by this computer's clock."""
    try:
        moment = datetime.now().astimezone() if when is None else (
            datetime.fromisoformat(when.strip()) if isinstance(when, str) else when)
    except ValueError:
        raise ClassbookError("classbook.no_moment", text=str(when), example="2026-09-14T09:30:00") from None
    return moment.isoformat(timespec="seconds")
