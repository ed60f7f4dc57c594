"""``namewright next``: every child's sheets for the next month, at the level that the notes bear out."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from namewright.classbook import BookChild, Classbook, moving
from namewright.classbook.find import find_child
from namewright.classbook.moving import Kind as Become
from namewright.classbook.moving import Move
from namewright.commands.asking import nobody_in
from namewright.commands.book import opened
from namewright.commands.common import closing
from namewright.commands.talk import ALL_MADE, Commands, explained, place, tell
from namewright.commands.writing import write
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of, roster_of
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.message import Message, message
from namewright.pages.summary import Entry, drawable, summary_pages
from namewright.practice.ordering import Order, order_class
from namewright.settings import Support
from namewright.wording import Wording, wording


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser(
        "next", help=explained("next.help"), description=explained("next.about"))
    parser.add_argument("file", metavar=place("file"), help=explained("class.file"))
    parser.add_argument("-o", "--output", metavar=place("file"), help=explained("next.output"))
    parser.add_argument("--refuse", action="append", default=[], metavar=place("child"), help=explained("next.refuse"))
    parser.add_argument("--changes", metavar=place("file"), help=explained("next.changes"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with opened(options.file) as book:
        children = book.children()
        if not children:
            raise nobody_in(options.file)
        words = wording(book.class_settings.get("language", "en"))
        refused = {find_child(children, name).id for name in options.refuse}
        moves = moving.moves(book, children)
        _tell_moves(moves, refused)
        if not options.output:
            tell("command.next.nothing_yet")
            return ALL_MADE
        with book.changing():  # where the pages cannot be written, nothing is changed either
            for move in moves:
                if move.kind is Become.CHANGED:
                    moving.keep(book, move, refused=move.one.id in refused)
                elif move.one.id in refused:
                    moving.take_back(book, move.one)
            making = Making(_request(book, book.children()))
            write(making.pages(), options, words.language)
            if options.changes:
                _write_changes(making, moves, refused, words, options)
        return closing(making.account, making.request.roster)


def _tell_moves(moves: Sequence[Move], refused: set[int]) -> None:
    """Tell what changes, then what would have and does not, then how many stay."""
    for move in moves:
        if move.kind is not Become.STAYS:
            tell(_told(move, refused))
    tell("next.others", count=sum(move.kind is Become.STAYS for move in moves))


def _told(move: Move, refused: set[int]) -> Message:
    """Return what becomes of a child's level, as it was found or as it was refused."""
    if move.kind is Become.CHANGED and move.one.id in refused:
        return message("next.refused", who=move.one.child.label, before=move.before)
    return move.told


def _request(book: Classbook, children: Sequence[BookChild]) -> Request:
    everyone = read_choices(book.class_settings)
    placed = order_class([one.child for one in children], everyone.order or Order.PRACTICE,
                         everyone.support or Support.FULL)
    return Request((Kind.SHEETS,), members_of(book, children, placed), everyone, roster=roster_of(book))


def _write_changes(making: Making, moves: Sequence[Move], refused: set[int], words: Wording,
                   options: argparse.Namespace) -> None:
    """Write the page for the adult: every child with its level and the reason, changes first."""
    settings, setter = making.request.settings, making.setter
    entries = [Entry(words.say("next.title"), (words.say("next.lead"),), title=True)]
    for move in sorted(moves, key=lambda each: list(Become).index(each.kind)):
        entries.append(Entry("", (drawable(setter, words.say(_told(move, refused))),)))
    pages = summary_pages(setter, entries, settings.paper, binding=settings.binding)
    write(iter(pages), options, words.language, options.changes)
