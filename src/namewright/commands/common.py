"""What commands share: the words of the command line, reading what was asked, telling how it went.

A command is a module of this package with ``add(commands)``, which adds its words and sets ``run``.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from namewright.classwork import Work, left_out
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, SOME_NOT_MADE, Parser, Refusal, complain, worded
from namewright.letters.alphabet import upright
from namewright.letters.choice import LetterChoice, read_choice
from namewright.lines.ruling import DEFAULT_RULING, Ruling, custom_ruling, preset
from namewright.message import together
from namewright.pages.ladder import TRACED, Chain, Ladder, Part, read_rungs
from namewright.pages.paper import Paper
from namewright.pages.press import Press
from namewright.pages.sheet import SheetSettings
from namewright.practice.ordering import Order, beats_that_do_not_fit
from namewright.roster.children import Roster
from namewright.roster.parsing import PASTED, load_roster, roster_from_bytes
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import Tuning, tuning_from
from namewright.units import parse_length_mm
from namewright.wording import languages

Read = TypeVar("Read")

# --- reading what was asked --------------------------------------------------------------------------


def roster_of(options: argparse.Namespace) -> Roster:
    """Read the roster that was named, or pasted text for ``-``. Raises RosterError or OSError."""
    part = NamePart(options.practise)
    if options.roster == "-":
        return roster_from_bytes(pasted(), PASTED, part)
    return load_roster(Path(options.roster), part)


def pasted() -> bytes:
    """Return what is pasted; on a terminal, say first how to end it."""
    if sys.stdin.isatty():
        complain("paste the names, one on each line, and end with Enter and then Ctrl-D (on Windows: Ctrl-Z, Enter)")
    return sys.stdin.buffer.read()


def ruling_of(options: argparse.Namespace) -> Ruling:
    """Return the ruling asked for. Raises Refusal for one that cannot be made."""
    try:
        asked = {"midline": options.midline, "descender_mm": _length(options.descender),
                 "gap_mm": _length(options.row_gap)}
        own = {key: value for key, value in asked.items() if value is not None}
        height = _length(options.line_height)
        if own:
            return custom_ruling(height if height is not None else preset(options.ruling).line_height_mm, **own)
        ruling = preset(options.ruling)
        return ruling if height is None else ruling.scaled_to(height)
    except ValueError as error:
        raise Refusal(str(error)) from error


def _length(text: str | None) -> float | None:
    return None if text is None else parse_length_mm(text)


def press_of(options: argparse.Namespace) -> Press:
    """Return the press for a run, with the school's font where one is asked for.

    Raises FontError or OSError for a font that cannot be used, Refusal for words that do not go with one.
    """
    if options.font is None:
        return Press()
    _refuse_beside_font(options)
    from namewright.schoolfont.reading import load_font
    from namewright.schoolfont.shaping import Lettering

    return Press(school_font=Lettering(load_font(Path(options.font))))


def _refuse_beside_font(options: argparse.Namespace) -> None:
    """Refuse what only our own letters can do: other forms of letters, and rows that show where strokes begin."""
    if getattr(options, "letters", None):
        raise Refusal("--letters chooses among our own forms of letters and --font brings the school’s; "
                      "say one of them.")
    rungs = ladder_of(options).rungs if getattr(options, "ladder", None) is not None else None
    ordered = [part for part in rungs or () if part in (Part.MARKED, Part.STARTS)]
    if ordered:
        raise Refusal(f"a font tells no order of strokes, so it has no {' or '.join(ordered)}; leave them out of "
                      "--ladder, or leave out --font.")


def sheet_settings(options: argparse.Namespace) -> SheetSettings:
    """Return the class's settings as asked for."""
    return SheetSettings(ruling_of(options), Paper(options.paper), options.landscape, options.binding,
                         Support(options.support), Hand(options.hand), options.captions, letters_of(options),
                         ladder_of(options), tuning_of(options))


def letters_of(options: argparse.Namespace) -> LetterChoice:
    """Return the forms of letters asked for. Raises Refusal for forms we do not have."""
    return _or_refuse(lambda: read_choice(options.letters or "", upright()))


def ladder_of(options: argparse.Namespace) -> Ladder:
    """Return the rungs asked for. Raises Refusal for rungs there are not."""
    rungs = None if options.ladder is None else _or_refuse(lambda: read_rungs(options.ladder))
    return Ladder(rungs, Chain(options.chain), options.keep_dots)


def tuning_of(options: argparse.Namespace) -> Tuning:
    """Return the settings of ``--set``. Raises Refusal for one there is not, or out of its range."""
    pairs = [setting.partition("=") for setting in options.set]
    for key, _, value in pairs:
        if not value.strip():
            raise Refusal(f"--set {key} does not say what to set it to; write it like --set letter_spacing=2mm")
    return _or_refuse(lambda: tuning_from({key.strip().replace("-", "_"): value for key, _, value in pairs}))


def _or_refuse(read: Callable[[], Read]) -> Read:
    try:
        return read()
    except ValueError as error:
        raise Refusal(f"{error}.") from error


# --- telling how it went ------------------------------------------------------------------------------


def complain_of_beats(roster: Roster) -> None:
    """Name on stderr every child whose own beats, in the list, do not join to the name."""
    for child, sentence in beats_that_do_not_fit(roster.children):
        complain(f"beats not used: {child.label} (line {child.line}): {sentence}")


def closing(work: Work, roster: Roster) -> int:
    """Name on stderr every child who was not made and every line left out; return the exit status."""
    for one in work.not_made:
        complain(f"not made: {one.child.label} (line {one.child.line}): {one.reason}")
    for report in left_out(roster):
        complain(f"left out: line {report.line}: {worded(together(*report.notes))}")
    for note in roster.notes:
        complain(note)
    if any(report.notes for report in roster.lines):
        complain("some lines were read with a note; “namewright roster” and the same list tells how each was read")
    for one in work.remarks:
        complain(f"{one.child.label} (line {one.child.line}): {one.reason}")
    missed = len(work.not_made)
    if missed and missed == len(roster.children):
        return NOTHING_MADE
    return SOME_NOT_MADE if missed or left_out(roster) else ALL_MADE


# --- the words ---------------------------------------------------------------------------------------


def roster_options(parser: Parser) -> None:
    """Add the words about the class list."""
    parser.add_argument("roster", metavar="ROSTER",
                        help="your class list: a .txt, .csv, .tsv or .xlsx file, or - to paste it here")
    parser.add_argument("--order", choices=list(Order), default=Order.PRACTICE,
                        help="practice: easier names first; need: harder names first; family: by the kind of first "
                             "letter; roster: as in the list; name: by name (%(default)s)")
    parser.add_argument("--practise", choices=list(NamePart), default=NamePart.GIVEN, metavar="PART",
                        help="the name to practise: given, family or both (%(default)s)")


def page_options(parser: Parser) -> None:
    """Add the words about the page."""
    parser.add_argument("-o", "--output", metavar="FILE", required=True,
                        help="the file to make, a PDF, such as class.pdf; this is always needed")
    parser.add_argument("--paper", choices=list(Paper), default=Paper.LETTER,
                        help="the paper in your printer (%(default)s)")
    parser.add_argument("--landscape", action="store_true", help="turn the page on its long side")
    parser.add_argument("--binding", action="store_true", help="keep a wide margin for holes")
    parser.add_argument("--captions", choices=languages(), default="en",
                        help="the language of the sentences on the page (%(default)s)")


def font_option(parser: Parser) -> None:
    """Add the word for a school's own font."""
    parser.add_argument("--font", metavar="FILE",
                        help="set the names in your school’s own font, a .ttf or .otf file. It is sized by its small "
                             "letters and never stretched. A font tells no order of strokes, so its models carry no "
                             "stroke marks; show each letter with your own hand first")


def line_options(parser: Parser) -> None:
    """Add the words about the lines."""
    parser.add_argument("--ruling", default=DEFAULT_RULING, metavar="NAME",
                        help="the lines to write on; “namewright rulings” lists them (%(default)s)")
    parser.add_argument("--line-height", metavar="MM",
                        help="from the line that letters stand on to the line that tall ones reach, in mm or like "
                             "“5/8 in”; the other lines grow or shrink with it")
    parser.add_argument("--midline", type=float, metavar="SHARE",
                        help="your own lines: how far up the middle line stands, as a share from 0.3 to 0.8")
    parser.add_argument("--descender", metavar="MM", help="your own lines: the room for tails, as in g, below the line")
    parser.add_argument("--row-gap", metavar="MM", help="your own lines: the white between one row and the next")
    parser.add_argument("--support", choices=list(Support), default=Support.FULL,
                        help="how much help is on the page, for a child of whom the list does not say it (%(default)s)")
    letter_options(parser)
    parser.add_argument("--set", action="append", default=[], metavar="SETTING=VALUE",
                        help="a setting for motor or vision needs, such as letter_spacing=2mm; may be said again; "
                             "“namewright settings” lists them with their ranges")


def letter_options(parser: Parser) -> None:
    """Add the word about forms of letters."""
    parser.add_argument("--letters", metavar="WORDS",
                        help="your school’s forms of letters, such as “a=two-storey t=curved slant=8 exit-strokes”")


def ladder_options(parser: Parser) -> None:
    """Add the words about the ladder of support."""
    parser.add_argument("--ladder", metavar="RUNGS",
                        help=f"the rows between model and boxes, with commas: {', '.join(TRACED)} (as the level of "
                             "support asks)")
    parser.add_argument("--chain", choices=list(Chain), default=Chain.BACKWARD,
                        help="where dots run out: backward leaves the last letters to the child first, forward the "
                             "first ones (%(default)s)")
    parser.add_argument("--keep-dots", metavar="LETTERS", default="",
                        help="letters that keep their dots where others are left to the child")
