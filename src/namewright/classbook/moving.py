"""Next month's level of support for each child, as the notes bear it out; the adult may refuse every change.

One level at a time, by ``suggest``, on notes made since the last change that was made or refused here: what has led to
one change never leads to a second. A level that an adult set for a child in the class's file is that adult's choice and
is not changed, nor is a child's for whom rows were chosen one by one (``ladder``); the level in the list is where a
child begins. Changes are kept as any other setting, by ``WHO``, so that they show in the browser and can be taken back
there. Out of scope: the sheets themselves.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from namewright.classbook.database import Classbook
from namewright.classbook.records import BookChild, Save
from namewright.classbook.suggest import suggest
from namewright.message import Message, message
from namewright.settings import Support

WHO = "namewright next"
KEY = "support"


class Kind(StrEnum):
    """What becomes of a child's level."""

    CHANGED = "changed"
    STAYS = "stays"
    CHOSEN = "chosen"  # by an adult, who goes before the notes
    ROWS = "rows"      # chosen one by one, so that no level holds


@dataclass(frozen=True, slots=True)
class Move:
    """A child's level now and next, and why."""

    one: BookChild
    kind: Kind
    before: Support
    after: Support
    reason: Message

    @property
    def lacks_notes(self) -> bool:
        """Say whether the level stays because there are too few notes to say anything."""
        return self.kind is Kind.STAYS and self.reason.key == "suggest.few"

    @property
    def told(self) -> Message:
        """Return the whole of it as one message."""
        return message(f"next.{self.kind}", who=self.one.child.label, before=self.before, after=self.after,
                       reason=self.reason)


def moves(book: Classbook, children: Sequence[BookChild]) -> tuple[Move, ...]:
    """Return what the notes bear out for each child; nothing is changed. Raises ClassbookError."""
    settings = book.class_settings
    usual = Support(settings.get(KEY, Support.FULL))
    return tuple(_move(book, one, one.child.support or usual, rows="ladder" in {**settings, **one.settings})
                 for one in children)


def _move(book: Classbook, one: BookChild, now: Support, *, rows: bool) -> Move:
    saves = [save for save in book.history(one.id) if any(change.key == KEY for change in save.changes)]
    since = _last_change(saves)
    notes = [note for note in book.observations(one.id) if note.date > since]
    found = suggest(now, notes, one.child.practice)
    if found.support is now:
        return Move(one, Kind.STAYS, now, now, found.reason)
    if rows:
        return Move(one, Kind.ROWS, now, now, found.reason)
    if _set_by_an_adult(saves):
        return Move(one, Kind.CHOSEN, now, now, found.reason)
    return Move(one, Kind.CHANGED, now, found.support, found.seen or found.reason)


def _last_change(saves: Sequence[Save]) -> str:
    """Return the day of the newest change made here, taken back or not; empty where there is none."""
    return next((save.when[:10] for save in saves if save.who == WHO and save.undoes is None), "")


def _set_by_an_adult(saves: Sequence[Save]) -> bool:
    standing = next((save for save in saves if save.undoes is None and not save.undone), None)
    return standing is not None and standing.who != WHO


def take_back(book: Classbook, one: BookChild) -> None:
    """Take back the change made here last, if it is the newest of this child's settings. Raises ClassbookError."""
    newest = next(iter(book.history(one.id)), None)
    if newest and newest.who == WHO and newest.undoes is None:
        book.undo(one.id, who=WHO)


def keep(book: Classbook, move: Move, *, refused: bool = False, when: str | None = None) -> None:
    """Keep a change; one that is ``refused`` is kept and taken back, so that the same notes do not lead to it again.

    Raises ClassbookError.
    """
    with book.changing():
        book.set_settings(move.one.id, {KEY: move.after}, who=WHO, when=when)
        if refused:
            book.undo(move.one.id, who=WHO, when=when)
