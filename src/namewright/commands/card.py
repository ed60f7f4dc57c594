"""``namewright card``: a name card for one child, now."""

from __future__ import annotations

import argparse

from namewright.commands.common import letters_of, press_of, ruling_of, tuning_of
from namewright.commands.one import name_options, one_name, write_one
from namewright.commands.talk import Commands
from namewright.lines.tuned import tuned
from namewright.pages.name_card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.settings import Hand, Support


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("card", help="a name card for one child")
    name_options(parser)
    parser.add_argument("--hand", choices=list(Hand), default=Hand.RIGHT, help=argparse.SUPPRESS)
    parser.add_argument("--order", choices=list(Order), default=Order.PRACTICE, help=argparse.SUPPRESS)
    parser.add_argument("--size", choices=list(CardSize), default=CardSize.INDEX_4X6,
                        help="the card: an index card in inches, or A6 (%(default)s)")
    parser.add_argument("--fill-sheet", action="store_true",
                        help="fill a whole sheet with cards, with lines to cut along")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    name = one_name(options.name)
    settings = CardSettings(tuned(ruling_of(options), tuning_of(options)), CardSize(options.size),
                            Support(options.support), options.captions, letters_of(options))
    press = press_of(options)
    return write_one(name, lambda: (card_sheet(press, name, name, settings, Paper(options.paper)) if options.fill_sheet
                                    else card_page(press, name, name, settings)), press, options)
