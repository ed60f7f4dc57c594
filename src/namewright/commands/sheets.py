"""``namewright sheets``: a practice sheet for every child of a class."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_class, typesetter_of
from namewright.commands.common import (
    closing,
    font_option,
    hand_option,
    ladder_options,
    line_options,
    page_options,
    roster_options,
    same_for_all_option,
)
from namewright.commands.pictures import with_pictures
from namewright.commands.talk import Commands, explained, place
from namewright.commands.writing import progress, write
from namewright.making.make import Making
from namewright.making.request import Kind


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sheets", help=explained("sheets.help"))
    roster_options(parser)
    page_options(parser)
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
    with asked_for_class(options, Kind.SHEETS) as asked:
        making, language = Making(asked.request, typesetter_of(options)), asked.request.settings.language
        pages = progress(making.pages(), len(asked.request.members))
        write(with_pictures(pages, options), options, language)
        if options.summary and making.account.made:
            write(making.pages(Kind.ADULT), options, language, options.summary)
    return closing(making.account, asked.roster)
