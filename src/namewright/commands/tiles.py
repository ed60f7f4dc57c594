"""``namewright tiles``: letter tiles to cut."""

from __future__ import annotations

import argparse

from namewright.classwork import Work
from namewright.commands.common import (
    closing,
    font_option,
    letter_options,
    letters_of,
    page_options,
    press_of,
    roster_of,
    roster_options,
)
from namewright.commands.talk import Commands
from namewright.commands.writing import progress, write
from namewright.lines.tile_boxes import LARGE_TILE_MM, TILE_MM
from namewright.pages.paper import Paper
from namewright.pages.tile_sheet import TileSettings
from namewright.practice.ordering import Order, order_class


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("tiles", help="letter tiles to cut, a strip for every child")
    roster_options(parser)
    page_options(parser)
    font_option(parser)
    letter_options(parser)
    parser.add_argument("--tile", choices=["25", "38"], default="25", metavar="MM",
                        help="the side of a tile: 25 mm, or 38 mm for the youngest (%(default)s)")
    for word in ("--ruling", "--line-height", "--support", "--hand"):
        parser.add_argument(word, help=argparse.SUPPRESS)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    roster, work = roster_of(options), Work(press_of(options))
    placed = order_class(roster.children, Order(options.order))
    settings = TileSettings(LARGE_TILE_MM if options.tile == "38" else TILE_MM, Paper(options.paper),
                            options.landscape, options.binding, options.captions, letters_of(options))
    write(progress(work.tiles(placed, settings), None), options)
    return closing(work, roster)
