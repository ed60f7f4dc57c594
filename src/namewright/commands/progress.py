"""``namewright progress``: how a child's name has grown over the year, for the family; and the class, for the adult."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from namewright.classbook.find import find_child
from namewright.commands.asking import nobody_in, typed_choices
from namewright.commands.book import opened
from namewright.commands.common import sheet_options
from namewright.commands.talk import (
    ALL_MADE,
    NOTHING_MADE,
    SOME_NOT_MADE,
    Commands,
    Refusal,
    complain,
    explained,
    place,
)
from namewright.commands.writing import write, written
from namewright.making.account import NothingNoted
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of
from namewright.making.make import Making
from namewright.making.noted import record_of_member
from namewright.making.request import Kind, Member, Request
from namewright.message import message, together
from namewright.output.record_csv import records_csv
from namewright.practice.ordering import Order, order_class

_PAGES = {"year": Kind.GROWTH, "talk": Kind.TALK, "record": Kind.RECORD}


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
    parser.add_argument("--page", choices=list(_PAGES), default="year", help=explained("progress.page", usual="year"))
    parser.add_argument("--format", choices=["pdf", "csv"], default="pdf",
                        help=explained("progress.format", usual="pdf"))
    parser.add_argument("--words", action="store_true", help=explained("progress.words"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    kind = _PAGES[options.page]
    if options.format == "csv" and kind is not Kind.RECORD:
        raise Refusal("command.progress.only_record")
    with opened(options.file) as book:
        kept = read_choices(book.class_settings)
        chosen = book.children() if options.all else (find_child(book.children(left=True), options.child),)
        if not chosen:
            raise nobody_in(options.file)
        placed = order_class([one.child for one in chosen], Order.ROSTER)
        members = members_of(book, chosen, placed, notes=True, held=True)
    if options.format == "csv":
        return _write_csv(options, members)
    kinds = (Kind.YEAR, Kind.GROWTH) if options.all and kind is Kind.GROWTH else (kind,)
    typed = typed_choices(options, kept)
    making = Making(Request(kinds, members, typed.over(kept), typed, words=options.words))
    write(making.pages(), options, making.request.settings.language)
    for one in making.account.not_made:
        complain(together(one.cause.message, message("command.progress.note_first")))
    if not making.account.not_made:
        return ALL_MADE
    return SOME_NOT_MADE if making.account.made else NOTHING_MADE


def _write_csv(options: argparse.Namespace, members: Sequence[Member]) -> int:
    """Write every look at these children's names; one of whom nothing was noted has no row, and that is said."""
    silent = [one for one in members if not one.notes]
    if len(silent) < len(members):
        with written(options.output, options) as file:
            file.write(records_csv(map(record_of_member, members)).encode())
    for one in silent:
        complain(together(NothingNoted(one.placed.child.label).message, message("command.progress.note_first")))
    return ALL_MADE if not silent else NOTHING_MADE if len(silent) == len(members) else SOME_NOT_MADE
