"""``namewright progress``: how a child's name has grown over the year, for the family; and the class, for the adult."""

from __future__ import annotations

import argparse

from namewright.classbook.find import find_child
from namewright.commands.asking import nobody_in, typed_choices
from namewright.commands.book import opened
from namewright.commands.common import sheet_options
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, SOME_NOT_MADE, Commands, complain, explained, place
from namewright.commands.writing import write
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.message import message, together
from namewright.practice.ordering import Order, order_class


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("progress", help=explained("progress.help"))
    who = parser.add_mutually_exclusive_group(required=True)
    who.add_argument("child", metavar=place("child"), nargs="?", help=explained("option.child"))
    who.add_argument("--all", action="store_true",
                     help=explained("progress.all"))
    parser.add_argument("--class", dest="file", metavar=place("file"), required=True,
                        help=explained("option.class_file"))
    parser.add_argument("-o", "--output", metavar=place("file"), required=True, help=explained("option.output"))
    sheet_options(parser)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with opened(options.file) as book:
        kept = read_choices(book.class_settings)
        chosen = book.children() if options.all else (find_child(book.children(left=True), options.child),)
        if not chosen:
            raise nobody_in(options.file)
        placed = order_class([one.child for one in chosen], Order.ROSTER)
        members = members_of(book, chosen, placed, notes=True)
    kinds = (Kind.YEAR, Kind.GROWTH) if options.all else (Kind.GROWTH,)
    making = Making(Request(kinds, members, typed_choices(options, kept).over(kept)))
    write(making.pages(), options, making.request.settings.language)
    for one in making.account.not_made:
        complain(together(one.cause.message, message("command.progress.note_first")))
    if not making.account.not_made:
        return ALL_MADE
    return SOME_NOT_MADE if making.account.made else NOTHING_MADE
