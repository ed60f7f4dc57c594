"""What commands share: the words of the command line, and telling how it went.

A command is a module of this package with ``add(commands)``, which adds its words and sets ``run``. Words that choose
have no default here: what holds where nothing is typed is said once, in ``making.choices``.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator

from namewright.commands.asking import typesetter_of
from namewright.commands.talk import (
    ALL_MADE,
    NOTHING_MADE,
    SOME_NOT_MADE,
    Parser,
    Refusal,
    complain,
    explained,
    left_out_told,
    place,
)
from namewright.commands.writing import write
from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import DEFAULT_RULING, MAX_MIDLINE, MIN_MIDLINE
from namewright.making.account import Account, account_in
from namewright.making.adult import left_out
from namewright.making.make import Making
from namewright.making.request import Request
from namewright.message import Message, Problem, message
from namewright.names.beats import NAMES_IN
from namewright.names.latin_spelling import latin_spelling
from namewright.pages.hue import COLOURS
from namewright.pages.ladder import TRACED, Chain
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order, beats_that_do_not_fit
from namewright.roster.children import Child, Roster
from namewright.settings import Hand, NamePart, Support
from namewright.wording import FIRST, languages

# --- telling how it went ------------------------------------------------------------------------------


def complain_of_beats(roster: Roster) -> None:
    """Name on stderr every child whose own beats, in the list, do not join to the name."""
    for child, why in beats_that_do_not_fit(roster.children):
        complain("command.told.beats", label=child.label, line=roster.source_line(child.line), reason=why)


def write_one(request: Request, options: argparse.Namespace) -> int:
    """Make and write a child's page; return the exit status. Raises Refusal where it cannot be made."""
    setter = typesetter_of(options)
    making = Making(request, setter, account_in(setter))
    write(making.pages(), options, request.settings.language)
    for one in making.account.not_made:
        raise Refusal("command.told.child", label=one.child.label, reason=_why_not(one.child, one.cause))
    for told in (*_remarks_told(making.account, request.roster), *making.account.notes):
        complain(told)
    return ALL_MADE


def _why_not(child: Child, cause: Problem) -> Message:
    """Return what stood in the way; of letters that we lack, without their codes, and what to type in their place."""
    if type(cause) is not MissingLetters or not all(map(str.isprintable, cause.characters)):
        return cause.message
    letters = tuple(message("quoted", words=letter) for letter in cause.characters)
    return message("command.told.cannot_letters", letters=letters,
                   name=child.practice, latin=latin_spelling(child.practice) or "Mira")


def closing(account: Account, roster: Roster) -> int:
    """Name on stderr every child who was not made and every line left out; return the exit status."""
    for told in told_at_the_end(account, roster):
        complain(told)
    return status_of(account, roster)


def told_at_the_end(account: Account, roster: Roster) -> Iterator[Message]:
    """Yield what is to be said of a class once it is made; of a child each reason once, whatever kinds it lacks."""
    yield from dict.fromkeys(
        message("command.told.not_made", label=one.child.label, place=_place(one.child, roster),
                reason=one.cause.message) for one in account.not_made)
    for report in left_out(roster):
        yield left_out_told(report)
    yield from roster.notes
    if any(report.notes for report in roster.lines):
        yield message("command.told.notes")
    yield from _remarks_told(account, roster)
    yield from account.notes


def _place(child: Child, roster: Roster) -> Message:
    """Return where a child stands on a list: the line, with its words where they say more than the name."""
    line, text = roster.source_line(child.line), roster.opening(child.line)
    if text in ("", child.label, child.practice):
        return message("command.told.line", line=line)
    return message("command.told.line_text", line=line, text=text)


def status_of(account: Account, roster: Roster) -> int:
    """Return the exit status of a class that was made as far as it could be."""
    missed = len({one.child for one in account.not_made})
    if missed and missed == len(roster.children) and not account.made:
        return NOTHING_MADE
    return SOME_NOT_MADE if missed or left_out(roster) else ALL_MADE


def _remarks_told(account: Account, roster: Roster) -> Iterator[Message]:
    for remark in account.remarks:
        yield message("command.told.remark", label=remark.child.label,
                      line=roster.source_line(remark.child.line), reason=remark.told)


# --- the words ---------------------------------------------------------------------------------------


def roster_options(parser: Parser, *, several: bool = False) -> None:
    """Add the words about the class list, or about ``several``."""
    if several:
        parser.add_argument("roster", nargs="+", metavar=place("roster"), help=explained("option.rosters"))
    else:
        parser.add_argument("roster", metavar=place("roster"), help=explained("option.roster"))
    parser.add_argument("--order", choices=list(Order), help=explained("option.order", usual=str(Order.PRACTICE)))
    parser.add_argument("--practise", choices=list(NamePart), metavar=place("part"),
                        help=explained("option.practise", usual=str(NamePart.GIVEN)))
    parser.add_argument("--columns", metavar=place("columns"), help=explained("option.columns"))
    parser.add_argument("--sheet", metavar=place("sheet"), help=explained("option.sheet"))
    parser.add_argument("--names-in", choices=list(NAMES_IN), metavar=place("language"),
                        help=explained("option.names_in", known=NAMES_IN))
    parser.epilog = f"{explained('who_wins')} {explained('how_to_read')}"


def name_options(parser: Parser) -> None:
    """Add the words of a page for one name."""
    parser.add_argument("--names-in", choices=list(NAMES_IN), metavar=place("language"),
                        help=explained("option.names_in", known=NAMES_IN))
    parser.add_argument("name", metavar=place("name"), help=explained("option.name"))
    parser.add_argument("--class", dest="class_file", metavar=place("file"), help=explained("option.class"))
    page_options(parser)
    line_options(parser)
    font_option(parser)
    parser.epilog = f"{explained('who_wins_for_one')} {explained('how_to_read')}"


def same_for_all_option(parser: Parser) -> None:
    """Add the word by which what is typed goes before what a child has of its own."""
    parser.add_argument("--same-for-all", action="store_true", help=explained("option.same_for_all"))


def unused_options(parser: Parser, *words: str) -> None:
    """Take words that other commands know and that make no difference here, so that scripts may say them everywhere."""
    for word in words:
        parser.add_argument(word, dest=f"unused{word.replace('-', '_')}", help=argparse.SUPPRESS)


def page_options(parser: Parser) -> None:
    """Add the words about the page."""
    parser.add_argument("-o", "--output", metavar=place("file"), required=True, help=explained("option.output"))
    sheet_options(parser)
    parser.add_argument("--colour", metavar=place("colour"),
                        help=explained("option.colour", known=tuple(COLOURS), usual="black"))
    parser.add_argument("--landscape", action=argparse.BooleanOptionalAction, help=explained("option.landscape"))


def sheet_options(parser: Parser) -> None:
    """Add the words about the paper and the language on it."""
    parser.add_argument("--paper", choices=list(Paper), help=explained("option.paper", usual=str(Paper.LETTER)))
    parser.add_argument("--binding", action=argparse.BooleanOptionalAction, help=explained("option.binding"))
    parser.add_argument("--captions", choices=languages(), help=explained("option.captions", usual=FIRST))


def font_option(parser: Parser) -> None:
    """Add the word for a school's own font."""
    parser.add_argument("--font", metavar=place("file"), help=explained("option.font"))
    parser.add_argument("--font-axis", metavar=place("name"), help=explained("option.font_axis"))


def line_options(parser: Parser) -> None:
    """Add the words about the lines."""
    parser.add_argument("--ruling", metavar=place("name"), help=explained("option.ruling", usual=DEFAULT_RULING))
    parser.add_argument("--line-height", metavar=place("mm"), help=explained("option.line_height"))
    parser.add_argument("--midline", type=float, metavar=place("share"),
                        help=explained("option.midline", least=MIN_MIDLINE, most=MAX_MIDLINE))
    parser.add_argument("--descender", metavar=place("mm"), help=explained("option.descender"))
    parser.add_argument("--row-gap", metavar=place("mm"), help=explained("option.row_gap"))
    parser.add_argument("--support", choices=list(Support), help=explained("option.support", usual=str(Support.FULL)))
    letter_options(parser)
    parser.add_argument("--set", action="append", default=[], metavar=place("setting"), help=explained("option.set"))


def letter_options(parser: Parser) -> None:
    """Add the word about forms of letters."""
    parser.add_argument("--letters", metavar=place("words"), help=explained("option.letters"))


def hand_option(parser: Parser) -> None:
    """Add the word for the writing hand."""
    parser.add_argument("--hand", choices=list(Hand), help=explained("option.hand", usual=str(Hand.RIGHT)))


def ladder_options(parser: Parser) -> None:
    """Add the words about the ladder of support."""
    parser.add_argument("--ladder", metavar=place("rungs"),
                        help=explained("option.ladder", known=tuple(map(str, TRACED))))
    parser.add_argument("--chain", choices=list(Chain), help=explained("option.chain", usual=str(Chain.BACKWARD)))
    parser.add_argument("--keep-dots", metavar=place("letters"), help=explained("option.keep_dots"))
