"""What commands share: the words of the command line, and telling how it went.

A command is a module of this package with ``add(commands)``, which adds its words and sets ``run``. Words that choose
have no default here: what holds where nothing is typed is said once, in ``making.choices``.
"""

from __future__ import annotations

import argparse

from namewright.commands.asking import typesetter_of
from namewright.commands.talk import (
    ALL_MADE,
    HOW_TO_READ,
    NOTHING_MADE,
    SOME_NOT_MADE,
    Parser,
    Refusal,
    complain,
    worded,
)
from namewright.commands.writing import write
from namewright.lines.ruling import DEFAULT_RULING
from namewright.making.account import Account
from namewright.making.adult import left_out
from namewright.making.make import Making
from namewright.making.request import Request
from namewright.message import together
from namewright.pages.ladder import TRACED, Chain
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order, beats_that_do_not_fit
from namewright.roster.children import Roster
from namewright.settings import Hand, NamePart, Support
from namewright.wording import languages

WHO_WINS = (
    "Where ROSTER is a class’s file, what is kept for the class takes the place of what stands in brackets. What you "
    "type goes before that. What a child has of its own, in the list or in the class’s file, goes before both, unless "
    "you add --same-for-all.")
WHO_WINS_FOR_ONE = (
    "With --class, what is kept for the child goes before what is kept for the class, and what you type goes before "
    "both.")

# --- telling how it went ------------------------------------------------------------------------------


def complain_of_beats(roster: Roster) -> None:
    """Name on stderr every child whose own beats, in the list, do not join to the name."""
    for child, why in beats_that_do_not_fit(roster.children):
        complain(f"beats not used: {child.label} (line {child.line}): {worded(why)}")


def write_one(request: Request, options: argparse.Namespace) -> int:
    """Make and write a child's page; return the exit status. Raises Refusal where it cannot be made."""
    making = Making(request, typesetter_of(options))
    write(making.pages(), options, request.settings.language)
    for one in making.account.not_made:
        raise Refusal(f"{one.child.label}: {worded(one.cause)}")
    _complain_of_remarks(making.account)
    return ALL_MADE


def closing(account: Account, roster: Roster) -> int:
    """Name on stderr every child who was not made and every line left out; return the exit status."""
    for one in account.not_made:
        complain(f"not made: {one.child.label} (line {one.child.line}): {worded(one.cause)}")
    for report in left_out(roster):
        complain(f"left out: line {report.line}: {worded(together(*report.notes))}")
    for note in roster.notes:
        complain(note)
    if any(report.notes for report in roster.lines):
        complain("some lines were read with a note; “namewright roster” and the same list tells how each was read")
    _complain_of_remarks(account)
    missed = len({one.child for one in account.not_made})
    if missed and missed == len(roster.children) and not account.made:
        return NOTHING_MADE
    return SOME_NOT_MADE if missed or left_out(roster) else ALL_MADE


def _complain_of_remarks(account: Account) -> None:
    for remark in account.remarks:
        complain(f"{remark.child.label} (line {remark.child.line}): {worded(remark.told)}")


# --- the words ---------------------------------------------------------------------------------------


def roster_options(parser: Parser) -> None:
    """Add the words about the class list."""
    parser.add_argument("roster", metavar="ROSTER",
                        help="your class list: a .txt, .csv, .tsv or .xlsx file, the class’s own file, or - to "
                             "paste it here")
    parser.add_argument("--order", choices=list(Order),
                        help="practice: easier names first; need: harder names first; family: by the kind of first "
                             "letter; roster: as in the list; name: by name (practice)")
    parser.add_argument("--practise", choices=list(NamePart), metavar="PART",
                        help="the name to practise: given, family or both (given)")
    parser.epilog = f"{WHO_WINS} {HOW_TO_READ}"


def name_options(parser: Parser) -> None:
    """Add the words of a page for one name."""
    parser.add_argument("name", metavar="NAME", help="the name to write; put quotes round one with spaces")
    parser.add_argument("--class", dest="class_file", metavar="FILE",
                        help="the class’s file: NAME is a child in it, made as is kept for this child")
    page_options(parser)
    line_options(parser)
    font_option(parser)
    parser.epilog = f"{WHO_WINS_FOR_ONE} {HOW_TO_READ}"


def same_for_all_option(parser: Parser) -> None:
    """Add the word by which what is typed goes before what a child has of its own."""
    parser.add_argument("--same-for-all", action="store_true",
                        help="what you type here holds also for children who have something else of their own")


def unused_options(parser: Parser, *words: str) -> None:
    """Take words that other commands know and that make no difference here, so that scripts may say them everywhere."""
    for word in words:
        parser.add_argument(word, dest=f"unused{word.replace('-', '_')}", help=argparse.SUPPRESS)


def page_options(parser: Parser) -> None:
    """Add the words about the page."""
    parser.add_argument("-o", "--output", metavar="FILE", required=True,
                        help="the file to make, a PDF, such as class.pdf; this is always needed")
    sheet_options(parser)
    parser.add_argument("--landscape", action=argparse.BooleanOptionalAction, help="turn the page on its long side")


def sheet_options(parser: Parser) -> None:
    """Add the words about the paper and the language on it."""
    parser.add_argument("--paper", choices=list(Paper), help="the paper in your printer (letter)")
    parser.add_argument("--binding", action=argparse.BooleanOptionalAction, help="keep a wide margin for holes")
    parser.add_argument("--captions", choices=languages(), help="the language of the sentences on the page (en)")


def font_option(parser: Parser) -> None:
    """Add the word for a school's own font."""
    parser.add_argument("--font", metavar="FILE",
                        help="set the names in your school’s own font, a .ttf or .otf file. It is sized by its small "
                             "letters and never stretched. A font tells no order of strokes, so its models carry no "
                             "stroke marks; show each letter with your own hand first")


def line_options(parser: Parser) -> None:
    """Add the words about the lines."""
    parser.add_argument("--ruling", metavar="NAME",
                        help=f"the lines to write on; “namewright rulings” lists them. A ruling that you name "
                             f"brings its own line height ({DEFAULT_RULING})")
    parser.add_argument("--line-height", metavar="MM",
                        help="from the line that letters stand on to the line that tall ones reach, in mm or like "
                             "“5/8 in”; the other lines grow or shrink with it")
    parser.add_argument("--midline", type=float, metavar="SHARE",
                        help="your own lines: how far up the middle line stands, as a share from 0.3 to 0.8")
    parser.add_argument("--descender", metavar="MM", help="your own lines: the room for tails, as in g, below the line")
    parser.add_argument("--row-gap", metavar="MM", help="your own lines: the white between one row and the next")
    parser.add_argument("--support", choices=list(Support), help="how much help is on the page (full)")
    letter_options(parser)
    parser.add_argument("--set", action="append", default=[], metavar="SETTING=VALUE",
                        help="a setting for motor or vision needs, such as letter_spacing=2mm; may be said again; "
                             "“namewright settings” lists them with their ranges")


def letter_options(parser: Parser) -> None:
    """Add the word about forms of letters."""
    parser.add_argument("--letters", metavar="WORDS",
                        help="your school’s forms of letters, such as “a=two-storey t=curved slant=8 exit-strokes”")


def hand_option(parser: Parser) -> None:
    """Add the word for the writing hand."""
    parser.add_argument("--hand", choices=list(Hand), help="the writing hand (right)")


def ladder_options(parser: Parser) -> None:
    """Add the words about the ladder of support."""
    parser.add_argument("--ladder", metavar="RUNGS",
                        help=f"the rows between model and boxes, with commas: {', '.join(TRACED)} (as the level of "
                             "support asks)")
    parser.add_argument("--chain", choices=list(Chain),
                        help="where dots run out: backward leaves the last letters to the child first, forward the "
                             "first ones (backward)")
    parser.add_argument("--keep-dots", metavar="LETTERS",
                        help="letters that keep their dots where others are left to the child")
