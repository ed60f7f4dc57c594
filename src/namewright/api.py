"""The door for other programs: what ``import namewright`` promises, and nothing else.

A roster's text becomes children, children become pages, pages become a PDF or drawings. Whoever cannot be made is in
``Making.account``, and all others are made. Nothing is sent or logged; ``write_pdf`` alone writes a file.
"""

from __future__ import annotations

from itertools import chain
from pathlib import Path
from typing import BinaryIO

from namewright.classbook.keys import checked_setting
from namewright.making.account import Account, NotMade, Remark
from namewright.making.choices import read_choices, settled
from namewright.making.make import Making
from namewright.making.request import Kind, Request, listed
from namewright.message import Message, Problem
from namewright.output import pdf
from namewright.output.png import page_png
from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.practice.ordering import Order, completed, order_class
from namewright.roster import parsing
from namewright.roster.children import Child, LineReport, Roster, RosterError
from namewright.settings import NamePart
from namewright.whole_files import whole_file
from namewright.wording import FIRST, wording

__all__ = ["Account", "Child", "Kind", "LineReport", "Making", "Message", "NotMade", "Page", "Problem", "Remark",
           "Roster", "RosterError", "in_words", "make", "page_png", "page_svg", "read_roster", "write_pdf"]

_GROUPED = (Kind.GROUPS, Kind.PLAN, Kind.FRIENDS)
_NOTED = (Kind.YEAR, Kind.GROWTH)


def read_roster(text: str, practise: NamePart | str = NamePart.GIVEN, columns: str = "",
                names_in: str = "") -> Roster:
    """Read a class list as it was pasted: its ``children`` in order, and an account of every line.

    ``practise`` is the part of each name to write: ``given``, ``family`` or ``both``; ``columns`` says what the columns
    hold where the text does not (``given,family``, or ``name`` and ``other``), and ``names_in`` the language of the
    names by its tag (``tr``), which the case of names in capitals follows. Raises RosterError where there is no
    child in the text or nothing tells which column holds the names, ValueError for another part, TypeError for what is
    no text.
    """
    _check_text(text=text, columns=columns, names_in=names_in)
    return parsing.read_roster(text, parsing.PASTED, NamePart(practise), columns, names_in)


def make(kind: Kind | str, roster: Roster, **settings: str) -> Making:
    """Return pages of one kind on their way; each is made when it is taken from ``Making.pages()``.

    Kinds: ``sheets``, ``cards``, ``tiles``, ``sizes``, ``groups``, ``adult``, ``plan``; and to know a name by
    ``find``, ``letters``, ``missing``, ``mixed``, ``build``, ``chant``, ``friends``, ``signin``, ``signin_week``, with
    ``answers`` for the adult. Settings are text, by the keys of a class's file: ``paper``, ``ruling``, ``line_height``
    ("20", "5/8 in"), ``support``, ``hand``, ``language``, ``letters``, ``ladder``, ``order``, ``sleeve`` ("on") and
    the others that ``namewright settings`` lists. They hold for all; what the list says of a child goes before them.
    Raises ValueError for another kind, Problem for another setting or one that cannot be, TypeError for one that is no
    text.
    """
    _check_text(**settings)
    kind = Kind(kind)
    if kind in _NOTED:
        raise ValueError(f"“{kind}” shows what was noted in a class’s file; “namewright progress” makes it")
    everyone = read_choices({key: checked_setting(key, text, of_class=True) or "" for key, text in settings.items()})
    holds = settled(everyone)
    placed = order_class(roster.children, everyone.order or Order.PRACTICE, holds.support)
    if kind in _GROUPED:
        placed = completed(placed, holds.language)
    return Making(Request((kind,), tuple(map(listed, placed)), everyone, roster=roster))


def write_pdf(making: Making, target: Path | str | BinaryIO, *, title: str | None = None) -> int:
    """Make the pages and write them as one PDF; return how many there are.

    ``target`` is a path, written whole or not at all, or an empty file open for reading and writing. ``title`` is shown
    by viewers and print queues, so keep names out of it. Nothing is written where there is no page. Raises OSError.
    """
    pages, language = making.pages(), making.request.settings.language
    first = next(pages, None)
    if first is None:
        return 0
    title = wording(language).say("page.pdf_title") if title is None else title
    if isinstance(target, Path | str):
        with whole_file(Path(target)) as file:
            return pdf.write_pdf(chain([first], pages), file, title=title, lang=language)
    return pdf.write_pdf(chain([first], pages), target, title=title, lang=language)


def _check_text(**given: object) -> None:
    """Raise TypeError for what is no text, with how it is written."""
    for name, value in given.items():
        if not isinstance(value, str):
            raise TypeError(f'{name} has to be text, not {type(value).__name__}: 20 mm is "20", a switch is "on".')


def in_words(told: Message | Problem, language: str = FIRST) -> str:
    """Return what a note, a reason or an error tells, as a sentence. Raises Problem for a language without words."""
    return wording(language).sentence(told)
