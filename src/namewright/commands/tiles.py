"""``namewright tiles``: letter tiles to cut."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_class, typesetter_of
from namewright.commands.common import (
    closing,
    font_option,
    letter_options,
    page_options,
    roster_options,
    same_for_all_option,
    unused_options,
)
from namewright.commands.talk import Commands, explained, place
from namewright.commands.writing import progress, write
from namewright.lines.tile_boxes import LARGE_TILE_MM, TILE_MM
from namewright.making.account import account_in
from namewright.making.make import Making
from namewright.making.request import Kind


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("tiles", help=explained("tiles.help"))
    roster_options(parser)
    page_options(parser)
    font_option(parser)
    letter_options(parser)
    parser.add_argument("--tile", choices=["25", "38"], default="25", metavar=place("mm"),
                        help=explained("tiles.tile", usual="25"))
    parser.add_argument("--tile-names", action=argparse.BooleanOptionalAction, help=explained("tiles.names"))
    same_for_all_option(parser)
    unused_options(parser, "--ruling", "--line-height", "--support", "--hand")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with asked_for_class(options, Kind.TILES) as asked:
        request = asked.request._replace(tile_mm=LARGE_TILE_MM if options.tile == "38" else TILE_MM)
        setter = typesetter_of(options)
        making = Making(request, setter, account_in(setter))
        write(progress(making.pages(), None), options, request.settings.language)
    return closing(making.account, asked.roster)
