"""What shall be made: kinds of pages, for whom, and as it was chosen. Frozen; nothing here does any work."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum
from typing import TYPE_CHECKING

from namewright.lines.tile_boxes import TILE_MM
from namewright.making.choices import NOTHING, Choices, choices_in_list, settled
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.pages.paper import CardSize
from namewright.pages.sheet_settings import SheetSettings
from namewright.practice.ordering import Placed
from namewright.roster.children import Child, Roster
from namewright.roster.labels import shared
from namewright.settings import AT_ONCE, DEFAULT_WEEKS
from namewright.store import keeps_names

if TYPE_CHECKING:
    from datetime import date

    from namewright.classbook.records import Observation
    from namewright.pages.record import Held


class Kind(StrEnum):
    """The kinds of pages, in the order in which they are made."""

    SHEETS = "sheets"
    CARDS = "cards"
    TILES = "tiles"
    SIZES = "sizes"
    GROUPS = "groups"
    ADULT = "adult"
    PLAN = "plan"
    YEAR = "year"
    GROWTH = "growth"
    TALK = "talk"
    RECORD = "record"
    FIND = "find"
    LETTERS = "letters"
    MISSING = "missing"
    MIXED = "mixed"
    BUILD = "build"
    CHANT = "chant"
    FRIENDS = "friends"
    SIGNIN = "signin"
    SIGNIN_WEEK = "signin_week"
    ANSWERS = "answers"


TO_KNOW = (Kind.FIND, Kind.LETTERS, Kind.MISSING, Kind.MIXED, Kind.BUILD, Kind.CHANT, Kind.FRIENDS, Kind.SIGNIN,
           Kind.SIGNIN_WEEK)
"""Pages to recognise, spell and build a name, in the order of their steps; the list to sign in on is one of two."""
SIGN_IN = (Kind.SIGNIN, Kind.SIGNIN_WEEK)
KNOW_EACH = (Kind.FIND, Kind.LETTERS, Kind.MISSING, Kind.MIXED, Kind.FRIENDS)
OF_NOTES = frozenset({Kind.GROWTH, Kind.TALK, Kind.RECORD})
"""Pages for each child that tell of what was noted, with what it was practised with."""
WRITTEN_ON = frozenset({Kind.SHEETS, Kind.CARDS, Kind.TILES, Kind.SIZES, Kind.GROUPS, *TO_KNOW})
"""Pages for children: those that take the colour of lines and captions."""
FOR_EACH_CHILD = frozenset({Kind.SHEETS, Kind.CARDS, Kind.TILES, Kind.SIZES, *OF_NOTES, *KNOW_EACH})


NOBODY = Roster((), ())


class Member(NamedTuple):
    """A child in its place in the class, with what it has of its own and what was noted of its writing.

    ``unread`` is what is wrong with a choice of its own that could not be read. ``held`` is what was practised with,
    one for each note, empty where nobody asked for it; ``home`` the language of its home, None where nobody said.
    ``whose`` is how an adult tells its pages from those of another who practises the same name, empty where none does.
    """

    placed: Placed
    own: Choices
    notes: tuple[Observation, ...] = ()
    unread: Problem | None = None
    held: tuple[Held, ...] = ()
    home: str | None = None
    whose: str = ""


def listed(placed: Placed) -> Member:
    """Return a child as its list has it."""
    own, problem = choices_in_list(placed.child)
    return Member(placed, own, unread=problem)


def all_listed(placed: Sequence[Placed]) -> tuple[Member, ...]:
    """Return the children of a list, those of one name told apart."""
    alike = shared([one.child.practice for one in placed])
    return tuple(listed(one)._replace(whose=one.child.label if others else "")
                 for one, others in zip(placed, alike, strict=True))


class Request(NamedTuple):
    """What shall be made.

    ``members`` stand in the order of the pages. ``everyone`` is what is chosen for all, ``first`` what goes even
    before what a child has of its own. ``roster`` accounts for the lines that became nobody. A card has a page of
    its size unless cards ``fill`` sheets. ``weeks`` are those of the plan, ``a_week`` the letters in each, ``taught``
    the letters of earlier weeks, the last week last. ``tile_mm`` is the side of a tile. Another ``shuffle`` brings
    the same names and letters in other places of the pages to know a name by; ``at_once`` children build from the
    class's loose tiles. ``words`` shows what was noted in words on the page for a talk.
    ``monday`` is that of the week that the plan is for, None where it is of any week.
    """

    kinds: tuple[Kind, ...]
    members: tuple[Member, ...]
    everyone: Choices = NOTHING
    first: Choices = NOTHING
    roster: Roster = NOBODY
    card: CardSize = CardSize.INDEX_4X6
    fill: bool = False
    tile_mm: float = TILE_MM
    weeks: int = DEFAULT_WEEKS
    a_week: int = 1
    taught: tuple[tuple[str, ...], ...] = ()
    words: bool = False
    monday: date | None = None
    shuffle: int = 0
    at_once: int = AT_ONCE

    @property
    def settings(self) -> SheetSettings:
        """Return what holds for everyone. Raises Problem for lines that cannot be ruled."""
        return settled(self.first.over(self.everyone))

    def settings_of(self, member: Member) -> SheetSettings:
        """Return what holds for one child. Raises Problem as ``settings`` does."""
        holds = _settled(self.first, member.own, self.everyone)
        return holds._replace(whose=member.whose) if member.whose else holds

    @property
    def classmates(self) -> tuple[Child, ...]:
        """Return every child of the class, also those of whom no page is asked for, each once."""
        asked = {one.placed.child.line: one.placed.child for one in self.members}
        return tuple({**{child.line: child for child in self.roster.children}, **asked}.values())

    @property
    def planned(self) -> tuple[Placed, ...]:
        """Return the children with their beats and groups. Raises ValueError for a request made without them."""
        planned = tuple(one.placed for one in self.members if one.placed.is_completed)
        if len(planned) < len(self.members):
            raise ValueError("groups were not asked for when this request was put together")
        return planned

    @property
    def steps(self) -> int:
        """Return how many steps there are to count: one a child for a child's own pages, else one a kind."""
        return max(1, sum(len(self.members) if kind in FOR_EACH_CHILD else 1 for kind in self.kinds))


@keeps_names(500)  # most children of a class have nothing of their own
def _settled(first: Choices, own: Choices, everyone: Choices) -> SheetSettings:
    return settled(first.over(own.over(everyone)))
