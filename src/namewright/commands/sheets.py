"""``namewright sheets``: a practice sheet for every child of a class."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_class, typesetter_of
from namewright.commands.classes import Told, make_each, several
from namewright.commands.common import (
    font_option,
    hand_option,
    ladder_options,
    line_options,
    page_options,
    roster_options,
    same_for_all_option,
    status_of,
    told_at_the_end,
)
from namewright.commands.pictures import with_pictures
from namewright.commands.talk import Commands, complain, explained, place
from namewright.commands.writing import check_targets, progress, write
from namewright.making.make import Making
from namewright.making.request import Kind
from namewright.pages.typesetter import Typesetter


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sheets", help=explained("sheets.help"), conflict_handler="resolve")
    roster_options(parser, several=True)
    page_options(parser)
    parser.add_argument("-o", "--output", metavar=place("file"), required=True, help=explained("sheets.output"))
    line_options(parser)
    ladder_options(parser)
    font_option(parser)
    hand_option(parser)
    same_for_all_option(parser)
    parser.add_argument("--summary", metavar=place("file"), help=explained("sheets.summary"))
    parser.add_argument("--svg", metavar=place("folder"), help=explained("sheets.svg"))
    parser.add_argument("--png", metavar=place("folder"), help=explained("sheets.png"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    if several(options):
        setter = typesetter_of(options)
        return make_each(options, lambda one: _made(one, setter))
    (options.roster,) = options.roster
    check_targets(options)
    status, told = _made(options)
    for each in told:
        complain(each)
    return status


def _made(options: argparse.Namespace, setter: Typesetter | None = None) -> Told:
    """Write the sheets of one class; return its exit status and what is to be said of it."""
    check_targets(options)
    with asked_for_class(options, Kind.SHEETS) as asked:
        making, language = Making(asked.request, setter or typesetter_of(options)), asked.request.settings.language
        pages = progress(making.pages(), len(asked.request.members))
        write(with_pictures(pages, options), options, language)
        if options.summary and making.account.made:
            write(making.pages(Kind.ADULT), options, language, options.summary)
    return status_of(making.account, asked.roster), list(told_at_the_end(making.account, asked.roster))
