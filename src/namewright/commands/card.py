"""``namewright card``: a name card for one child, now."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_one
from namewright.commands.common import name_options, unused_options, write_one
from namewright.commands.talk import Commands, explained
from namewright.making.request import Kind
from namewright.pages.paper import CardSize


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("card", help=explained("card.help"))
    name_options(parser)
    unused_options(parser, "--hand", "--order")
    parser.add_argument("--size", choices=list(CardSize), default=CardSize.INDEX_4X6,
                        help=explained("card.size", usual=str(CardSize.INDEX_4X6)))
    parser.add_argument("--fill-sheet", action="store_true", help=explained("card.fill"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    asked = asked_for_one(options, Kind.CARDS)
    return write_one(asked.request._replace(card=CardSize(options.size), fill=options.fill_sheet), options)
