"""``namewright next``: every child's sheets for the next month, at the level that the notes bear out."""

from __future__ import annotations

import argparse
from collections.abc import Collection, Sequence

from namewright.classbook import Classbook, moving
from namewright.classbook.find import find_child
from namewright.classbook.moving import Kind as Become
from namewright.classbook.moving import Move
from namewright.commands.asking import nobody_in
from namewright.commands.book import opened
from namewright.commands.common import closing
from namewright.commands.talk import ALL_MADE, Commands, explained, place, tell
from namewright.commands.writing import write
from namewright.making.make import Making
from namewright.making.moves import changes_pages, keep_moves, sheets_request, told_of


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
        refused = {find_child(children, name).id for name in options.refuse}
        found = moving.moves(book, children)
        changes = any(move.kind is Become.CHANGED and move.one.id not in refused for move in found)
        _tell_moves(found, refused)
        if not options.output:
            tell("command.next.nothing_yet")
            if changes:
                tell("command.next.leave")
            return ALL_MADE
        making = _moved(book, found, refused, options)
        if changes:
            tell("command.next.kept")
        return closing(making.account, making.request.roster)


def _moved(book: Classbook, found: Sequence[Move], refused: Collection[int], options: argparse.Namespace) -> Making:
    """Keep the moves and write the sheets; where the pages cannot be written, nothing is changed either."""
    with book.changing():
        keep_moves(book, found, refused)
        for move in found:
            if move.kind is not Become.CHANGED and move.one.id in refused:
                moving.take_back(book, move.one)
        making = Making(sheets_request(book, book.children()))
        settings = making.request.settings
        write(making.pages(), options, settings.language)
        if options.changes:
            pages = changes_pages(making.setter, found, refused, settings)
            write(pages, options, settings.language, options.changes)
    return making


def _tell_moves(moves: Sequence[Move], refused: Collection[int]) -> None:
    """Tell what changes, then what would have and does not, then how many stay."""
    for move in moves:
        if move.kind is not Become.STAYS:
            tell(told_of(move, refused))
    tell("next.others", count=sum(move.kind is Become.STAYS for move in moves))
