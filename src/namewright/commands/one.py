"""What the commands for one child share: reading the name, and a page that is made or refused in a sentence."""

from __future__ import annotations

import argparse
import re
from collections.abc import Callable

from namewright.classwork import FONT_TOO_LARGE
from namewright.commands.common import font_option, line_options, page_options
from namewright.commands.talk import ALL_MADE, Parser, Refusal, complain, worded
from namewright.commands.writing import write
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.message import message, together
from namewright.names.casing import mend_case
from namewright.pages.page import Page, PageError
from namewright.pages.press import Press
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.rows import odd_marks
from namewright.roster.tidy import tidy
from namewright.settings import NamePart

_PLAIN = re.compile(r"(?:[^\W\d_]|[\u0300-\u036f .\-‐‑'’ʻʼ·])+")
"""A name with nothing beside it: no comma, figure, bracket or quotation mark."""


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
    """Read a name as a roster of one line, so that both clean a name alike, and say what was changed.

    Every word of a plain name is written, a middle name too. Raises Refusal or RosterError.
    """
    shown = " ".join(text.split())
    try:
        roster = read_roster(text, message("roster.name"), NamePart.BOTH)
    except RosterError as error:
        notes = [note for report in error.lines for note in report.notes]
        if not notes:
            raise
        raise Refusal(f"“{shown[:40]}” cannot be read as a name. {worded(together(*notes))}") from None
    if len(roster.children) != 1:
        raise Refusal(f"this is for one child, and “{shown[:40]}” reads as {len(roster.children)}")
    if _PLAIN.fullmatch(clean := tidy(text).text):
        notes, name = list(tidy(text).notes), mend_case(clean)
        notes += [message("roster.case", typed=clean, written=name)] * (name != clean)
        notes += odd_marks(name)
    else:
        notes, name = [note for report in roster.lines for note in report.notes], roster.children[0].practice
    for note in notes:
        complain(note)
    return name
