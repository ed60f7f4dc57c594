"""The pages of the next month: sheets at the levels that the notes bear out, and what changes, told to the adult."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from namewright.classbook import BookChild, Classbook, moving
from namewright.classbook.moving import Kind as Become
from namewright.classbook.moving import Move
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of, roster_of
from namewright.making.request import Kind, Request
from namewright.message import Message, message
from namewright.pages.drawable import drawable
from namewright.pages.page import Page
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, order_class
from namewright.settings import Support
from namewright.wording import wording

_PARTS = {"next.all_changed": (Become.CHANGED,), "next.all_chosen": (Become.CHOSEN, Become.ROWS),
          "next.all_stays": (Become.STAYS,)}
"""The headings of the page for the adult, and what stands under each."""


def told_of(move: Move, refused: Collection[int] = ()) -> Message:
    """Return what becomes of a child's level, as it was found or, for a child (id) among ``refused``, as it stays."""
    if move.kind is Become.CHANGED and move.one.id in refused:
        return message("next.refused", who=move.one.child.label, before=move.before)
    return move.told


def told_in_turn(moves: Sequence[Move], refused: Collection[int] = ()) -> tuple[Message, ...]:
    """Return what becomes of each level, and last, as one message, for whom there are not enough notes yet."""
    waiting = [move for move in moves if move.lacks_notes]
    told = tuple(told_of(move, refused) for move in moves if not move.lacks_notes)
    if not waiting:
        return told
    return (*told, message("next.few", who=tuple(move.one.child.label for move in waiting), reason=waiting[0].reason))


def keep_moves(book: Classbook, moves: Sequence[Move], refused: Collection[int]) -> None:
    """Keep every change, those of ``refused`` children as taken back at once. Raises ClassbookError."""
    with book.changing():
        for move in moves:
            if move.kind is Become.CHANGED:
                moving.keep(book, move, refused=move.one.id in refused)


def sheets_request(book: Classbook, children: Sequence[BookChild]) -> Request:
    """Return what is to be made: everyone's sheets, as is kept for the class and for each child."""
    everyone = read_choices(book.class_settings)
    placed = order_class([one.child for one in children], everyone.order or Order.PRACTICE,
                         everyone.support or Support.FULL)
    return Request((Kind.SHEETS,), members_of(book, children, placed), everyone, roster=roster_of(book))


def changes_pages(setter: Typesetter, moves: Sequence[Move], refused: Collection[int], settings: SheetSettings,
                  ) -> tuple[Page, ...]:
    """Return the pages for the adult: each child's level and the reason, changes first, too few notes last."""
    words = wording(settings.language)
    entries = [Entry(words.say("next.title"), (words.say("next.lead"),), title=True)]
    for heading, kinds in _PARTS.items():
        told = told_in_turn([move for move in moves if move.kind in kinds], refused)
        some = [drawable(setter, words.say(each)) for each in told]
        entries += [Entry(words.say(heading) if at == 0 else "", (said,)) for at, said in enumerate(some)]
    return summary_pages(setter, entries, settings.paper, binding=settings.binding)
