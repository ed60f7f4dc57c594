"""``namewright card``: a name card for one child, now."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from namewright.classwork import FONT_TOO_LARGE
from namewright.commands.common import (
    ALL_MADE,
    Commands,
    Refusal,
    font_option,
    letters_of,
    line_options,
    page_options,
    press_of,
    ruling_of,
    tuning_of,
    write,
)
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.lines.tuned import tuned
from namewright.names.model import Child
from namewright.names.roster import read_roster
from namewright.pages.card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import PageError
from namewright.pages.paper import Paper
from namewright.practice.order import Order
from namewright.settings import Hand, NamePart, Support


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("card", help="a name card for one child")
    parser.add_argument("name", metavar="NAME", help="the name to write; put quotes round one with spaces")
    page_options(parser)
    line_options(parser)
    font_option(parser)
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
    try:
        page = (card_sheet(press, name, name, settings, Paper(options.paper)) if options.fill_sheet
                else card_page(press, name, name, settings))
    except (MissingLetters, DoesNotFit) as error:
        raise Refusal(f"{name}: {error}.") from error
    except PageError as error:
        if press.knows_strokes:
            raise  # our own letters are known: they never reach out of a card
        raise Refusal(f"{name}: {FONT_TOO_LARGE}.") from error
    write([page], options)
    return ALL_MADE


def one_name(text: str) -> str:
    """Read a name as a roster of one line, so that both clean a name alike. Raises Refusal or RosterError."""
    children: Sequence[Child] = read_roster(text, "the name", NamePart.BOTH).children
    if len(children) != 1:
        raise Refusal(f"a card is for one child; “{text}” reads as {len(children)}")
    return children[0].practice
