"""From the words of the command line, and the list or the class's file they name, to a request.

What is typed goes before what is kept for the class. What a child has of its own, in the list or the class's file, goes
before both, unless it is said that all shall be alike (``--same-for-all``); a command for one child speaks of this very
child, so there what is typed goes first. What reads a class's file is imported where one was named, for most
lists are text.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, contextmanager, nullcontext
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from namewright.commands.talk import Refusal, complain
from namewright.commands.typed_name import one_name
from namewright.letters.alphabet import upright
from namewright.letters.choice import LetterChoice, read_choice
from namewright.lines.ruling import custom_ruling, preset
from namewright.making.choices import Choices, read_choices, settled
from namewright.making.request import Kind, Member, Request, all_listed, listed
from namewright.named_tuples import NamedTuple
from namewright.pages.hue import read_colour
from namewright.pages.ladder import ORDERED, Chain, read_rungs
from namewright.pages.paper import Paper
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, Placed, completed, order_class
from namewright.practice.wishes import NO_WISHES, Wishes
from namewright.roster.children import Child, Roster
from namewright.roster.limits import MAX_BYTES
from namewright.roster.parsing import PASTED, load_roster, roster_from_bytes
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import Tuning, tuning_from
from namewright.units import parse_length_mm

if TYPE_CHECKING:
    from namewright.classbook import BookChild, Classbook

Read = TypeVar("Read")
_SQLITE = b"SQLite format 3\x00"


class Asked(NamedTuple):
    """A request as it was asked for; ``roster`` is the list whose lines are to be told of now.

    From a class's file, how each line was read was told when the list was taken.
    """

    request: Request
    roster: Roster
    book: Classbook | None = None
    children: tuple[BookChild, ...] = ()


# --- a class ------------------------------------------------------------------------------------------


@contextmanager
def asked_for_class(options: argparse.Namespace, *kinds: Kind, grouped: bool = False, notes: bool = False,
                    ) -> Iterator[Asked]:
    """Read the list or the class's file that was named, and put together what was asked for.

    With ``grouped`` the children have their beats and groups, with ``notes`` what was noted of them. Raises Refusal,
    RosterError or OSError.
    """
    with _opened_if_class(options.roster) as book:
        children = book.children() if book else ()
        kept = _kept(options, book) if book else Choices()
        roster = _of_class(options.roster, children) if book else _of_list(options)
        typed = typed_choices(options, kept)
        everyone = typed.over(kept)
        holds = settled(everyone)
        placed: Sequence[Placed] = order_class(roster.children, everyone.order or Order.PRACTICE, holds.support,
                                              writable=_any if getattr(options, "font", None) else None)
        if grouped:
            placed = _grouped(options, placed, holds, book, children)
        members = _of_book(book, children, placed, notes=notes) if book else all_listed(placed)
        request = Request(kinds, members, everyone, typed if getattr(options, "same_for_all", False) else Choices(),
                          _list_of(book) if book else roster)
        yield Asked(request, roster, book, children)


def _opened_if_class(roster: str) -> AbstractContextManager[Classbook | None]:
    if not is_class(roster):
        return nullcontext()
    from namewright.commands.book import opened

    return opened(roster)


def is_class(roster: str) -> bool:
    """Say whether a file is a class's: by how it begins, whatever it is called."""
    path = Path(roster)
    if roster == "-" or not path.is_file():
        return False
    with path.open("rb") as file:
        return file.read(len(_SQLITE)) == _SQLITE


def roster_of_options(options: argparse.Namespace) -> Roster:
    """Read the list, or the list in the class's file, with an account of every line. Raises RosterError or OSError."""
    with _opened_if_class(options.roster) as book:
        return _list_of(book) if book else _of_list(options)


def _list_of(book: Classbook) -> Roster:
    from namewright.making.from_book import roster_of

    return roster_of(book)


def _of_book(book: Classbook, children: Sequence[BookChild], placed: Sequence[Placed], *, notes: bool = False,
             ) -> tuple[Member, ...]:
    from namewright.making.from_book import members_of

    return members_of(book, children, placed, notes=notes)


def _of_list(options: argparse.Namespace) -> Roster:
    part, sheet = NamePart(options.practise or NamePart.GIVEN), options.sheet or ""
    names_in = getattr(options, "names_in", None) or ""  # not every command asks for it
    if options.roster == "-":
        return roster_from_bytes(pasted(), PASTED, part, options.columns or "", sheet, names_in)
    return load_roster(Path(options.roster), part, options.columns or "", sheet, names_in)


def pasted() -> bytes:
    """Return what is pasted; on a terminal, say first how to end it."""
    if sys.stdin.isatty():
        complain("command.told.paste")
    return sys.stdin.buffer.read(MAX_BYTES + 1)


def _any(_: str) -> bool:
    """Take every name: what a school's font lacks is told when it is drawn."""
    return True


def nobody_in(shown: str) -> Refusal:
    """Return what is said of a class without children."""
    return Refusal("command.problem.nobody", file=shown)


def _of_class(shown: str, children: Sequence[BookChild]) -> Roster:
    if not children:
        raise nobody_in(shown)
    return Roster(tuple(one.child for one in children), ())


def _kept(options: argparse.Namespace, book: Classbook) -> Choices:
    if options.practise is not None:
        raise Refusal("command.problem.practise")
    return read_choices(book.class_settings)


def _grouped(options: argparse.Namespace, placed: Sequence[Placed], holds: SheetSettings, book: Classbook | None,
             children: Sequence[BookChild]) -> tuple[Placed, ...]:
    earlier = getattr(options, "earlier_groups", None)
    wishes: Wishes = getattr(options, "wishes", NO_WISHES)
    if book:
        from namewright.classbook import grouping

        wishes = grouping.wishes(book, children, wishes.tables)
    if book and earlier is None:
        return grouping.with_groups(book, children, placed, holds.language, anew=getattr(options, "new_groups", False),
                                    wishes=wishes, usual=holds.support, names_in=holds.names_in)
    return completed(placed, holds.language, earlier, wishes, holds.support, holds.names_in)


# --- one child ----------------------------------------------------------------------------------------


def asked_for_one(options: argparse.Namespace, kind: Kind) -> Asked:
    """Put together what was asked for one child: one of the class that was named, or any name."""
    if options.class_file is None:
        name = one_name(options.name, getattr(options, "names_in", None) or "")
        roster = Roster((Child(name, name, name, "", 1),), ())
        member, kept = listed(order_class(roster.children)[0]), Choices()
    else:
        from namewright.classbook.find import find_child
        from namewright.commands.book import opened

        with opened(options.class_file) as book:
            one = find_child(book.children(left=True), options.name)
            kept = read_choices(book.class_settings)
            roster = Roster((one.child,), ())
            (member,) = _of_book(book, [one], order_class(roster.children))
    request = Request((kind,), (member,), kept, typed_choices(options, kept), roster)
    _ = request.settings  # lines that cannot be ruled are told before anything is made
    return Asked(request, roster)


# --- what was typed -----------------------------------------------------------------------------------


def typed_choices(options: argparse.Namespace, kept: Choices) -> Choices:
    """Return what was typed, as choices over those that are ``kept``. Raises Refusal for what cannot be chosen."""
    def word(name: str) -> str | None:
        text: str | None = getattr(options, name, None)
        return text

    def chosen(name: str, read: Callable[[str], Read]) -> Read | None:
        text = word(name)
        return None if text is None else read(text)

    ruling, height = chosen("ruling", preset), chosen("line_height", parse_length_mm)
    midline: float | None = getattr(options, "midline", None)
    descender, gap = chosen("descender", parse_length_mm), chosen("row_gap", parse_length_mm)
    if (midline, descender, gap) != (None, None, None):  # lines of one's own, as high as those beneath
        beneath = settled(Choices(ruling).over(kept)).ruling.line_height_mm
        ruling = custom_ruling(beneath if height is None else height, midline=0.5 if midline is None else midline,
                               descender_mm=descender, gap_mm=gap or 0.0)
        height = None
    return Choices(
        ruling=ruling, paper=chosen("paper", Paper), landscape=getattr(options, "landscape", None),
        binding=getattr(options, "binding", None), support=chosen("support", Support), hand=chosen("hand", Hand),
        language=word("captions"), order=chosen("order", Order), rungs=chosen("ladder", read_rungs),
        chain=chosen("chain", Chain), keep_dots=word("keep_dots"), names_in=word("names_in"),
        colour=chosen("colour", read_colour), sleeve=getattr(options, "sleeve", None),
        tile_names=getattr(options, "tile_names", None),
        letters=chosen("letters", lambda text: read_choice(text, upright())) or LetterChoice(),
        tuning=_knobs(getattr(options, "set", [])).over(Tuning(line_height=height)))


def _knobs(words: Sequence[str]) -> Tuning:
    """Return the settings of ``--set``. Raises Refusal for one without a value, ValueError for one there is not."""
    pairs = [setting.partition("=") for setting in words]
    for key, _, value in pairs:
        if not value.strip():
            raise Refusal("command.problem.set", key=key)
    return tuning_from({key.strip().replace("-", "_"): value for key, _, value in pairs})


def typesetter_of(options: argparse.Namespace) -> Typesetter:
    """Return the typesetter for a run, with the school's font where one is asked for.

    Raises FontError or OSError for a font that cannot be used, Refusal for words that do not go with one.
    """
    if options.font is None:
        if options.font_axis is not None:
            raise Refusal("font.axes_alone")
        return Typesetter()
    _refuse_beside_font(options)
    from namewright.schoolfont.reading import load_font
    from namewright.schoolfont.shaping import Lettering

    return Typesetter(school_font=Lettering(load_font(Path(options.font), options.font_axis)))


def _refuse_beside_font(options: argparse.Namespace) -> None:
    """Refuse what only our own letters can do: other forms of letters, and rows that show where strokes begin."""
    if getattr(options, "letters", None):
        raise Refusal("command.problem.letters_or_font")
    rungs = read_rungs(getattr(options, "ladder", None) or "")
    ordered = [part for part in rungs if part in ORDERED]
    if ordered:
        raise Refusal("command.problem.rows_of_font", rows=tuple(map(str, ordered)))
