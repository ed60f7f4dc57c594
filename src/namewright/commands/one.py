"""What the commands for one child share: reading the name, and a page that is made or refused in a sentence."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence

from namewright.classwork import FONT_TOO_LARGE
from namewright.commands.common import ALL_MADE, Parser, Refusal, font_option, line_options, page_options, write
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.names.model import Child
from namewright.names.roster import read_roster
from namewright.pages.page import Page, PageError
from namewright.pages.press import Press
from namewright.settings import NamePart


def name_options(parser: Parser) -> None:
    """Add the words of a page for one name."""
    parser.add_argument("name", metavar="NAME", help="the name to write; put quotes round one with spaces")
    page_options(parser)
    line_options(parser)
    font_option(parser)


def write_one(name: str, make: Callable[[], Page], press: Press, options: argparse.Namespace) -> int:
    """Make and write a child's page; return the exit status. Raises Refusal where it cannot be made."""
    try:
        page = make()
    except (MissingLetters, DoesNotFit) as error:
        raise Refusal(f"{name}: {error}.") from error
    except PageError as error:
        if press.knows_strokes:
            raise  # our own letters are known: they never reach out of a page
        raise Refusal(f"{name}: {FONT_TOO_LARGE}.") from error
    write([page], options)
    return ALL_MADE


def one_name(text: str) -> str:
    """Read a name as a roster of one line, so that both clean a name alike. Raises Refusal or RosterError."""
    children: Sequence[Child] = read_roster(text, "the name", NamePart.BOTH).children
    if len(children) != 1:
        raise Refusal(f"a card is for one child; “{text}” reads as {len(children)}")
    return children[0].practice
