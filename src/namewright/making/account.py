"""What became of a request: who was made, who was not, and what could not be heeded; data, worded at the edges."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from namewright.making.request import Kind, Member
from namewright.message import Message, Problem, message, together
from namewright.named_tuples import NamedTuple
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Placed
from namewright.roster.children import Child


class FontTooLarge(Problem):
    """The letters of a school's font reach out of the page."""

    def __init__(self) -> None:
        super().__init__("fit.font")


class TooLarge(Problem):
    """A name reaches out of the page."""

    def __init__(self) -> None:
        super().__init__("fit.out")


class NothingNoted(Problem):
    """A page of progress was asked for, and no day was noted."""

    def __init__(self, label: str) -> None:
        super().__init__("account.nothing_noted", label=label)


class NothingToWrite(Problem):
    """A page to know a name by was asked for, and there is no letter or figure in the name."""

    def __init__(self, label: str) -> None:
        super().__init__("account.nothing_to_write", label=label)


class NoFriends(Problem):
    """Names of friends were asked for, and nobody in the class has another name that fits."""

    def __init__(self, label: str) -> None:
        super().__init__("account.no_friends", label=label)


class NotMade(NamedTuple):
    """A child whose page of a kind could not be made, and why: ``MissingLetters``, ``DoesNotFit`` or one of those here.

    A page that stands for a whole group names each of its children. No kind: the child has no place in the order.
    """

    kind: Kind | None
    child: Child
    cause: Problem


class Remark(NamedTuple):
    """A child who is made, but without something that was chosen: what could not be heeded, and what holds instead."""

    child: Child
    told: Message


class Account:
    """Filled as pages are asked for; ``step`` is told of every child of every kind that is done with.

    ``notes`` are about all of a kind's pages together.
    """

    def __init__(self, step: Callable[[], None] = lambda: None, *, made: Iterable[tuple[Kind, Member]] = (),
                 not_made: Iterable[NotMade] = (), notes: Iterable[Message] = ()) -> None:
        self.step = step
        self.made = list(made)
        self.not_made = list(not_made)
        self.remarks: list[Remark] = []
        self.notes = list(notes)

    def remark(self, child: Child, told: Message) -> None:
        """Set a remark of a child down once."""
        remark = Remark(child, told)
        if remark not in self.remarks:
            self.remarks.append(remark)

    def note(self, told: Message) -> None:
        """Set down once what holds for all pages of a kind."""
        if told not in self.notes:
            self.notes.append(told)

    def of(self, kind: Kind) -> list[Member]:
        """Return the children of whom there are pages of a kind, in their order."""
        return [one for made, one in self.made if made is kind]


def account_in(setter: Typesetter) -> Account:
    """Return an account for pages in these letters; a variable font of which nobody chose a form is told."""
    font = setter.school_font
    others = font.font.others if font else ()
    return Account(notes=[message("account.font_default", font=font.name, known=others)] if font and others else [])


def account_of_order(placed: Iterable[Placed]) -> Account:
    """Return the account of an order: a child whose name cannot be written has no place in it."""
    without = [one for one in placed if one.band is None]
    return Account(not_made=[NotMade(None, one.child, Problem(together(*one.reason))) for one in without])
