"""A request's members and choices from a class's file: what is kept for the class and for each child."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.classbook import BookChild, Classbook, Observation
from namewright.making.choices import Choices, choices_in_list, read_choices, settled
from namewright.making.request import Member
from namewright.message import Problem
from namewright.pages.record import Held
from namewright.pages.sheet_settings import SheetSettings
from namewright.practice.ordering import Placed
from namewright.roster.children import Roster
from namewright.roster.parsing import LIST, read_roster
from namewright.settings import NamePart


def own_choices(one: BookChild) -> Choices:
    """Return what a child of a class has of its own: what is set for it, over what the list says.

    Words for letters in the list that cannot be read choose nothing.
    """
    return _own(one)[0]


def _own(one: BookChild) -> tuple[Choices, Problem | None]:
    in_list, problem = choices_in_list(one.child)
    kept = read_choices({key: text for key, text in one.settings.items() if key != "letters"})
    return Choices(support=in_list.support, hand=in_list.hand, rungs=kept.rungs, chain=kept.chain,
                   keep_dots=kept.keep_dots, names_in=in_list.names_in, beats=in_list.beats, letters=in_list.letters,
                   tuning=one.own), problem


def member_of(one: BookChild, placed: Placed, book: Classbook | None = None, *, held: bool = False) -> Member:
    """Return a child of a class in its place, with what was noted of it where ``book`` is given.

    ``held`` asks for what it practised with at each note, too.
    """
    own, problem = _own(one)
    notes = book.observations(one.id) if book else ()
    return Member(placed, own, notes, problem, _held(book, one, notes) if book and held else (),
                  one.settings.get("home_language"), one.child.label if one.namesake else "")


def _held(book: Classbook, one: BookChild, notes: Sequence[Observation]) -> tuple[Held, ...]:
    """Return what a child practised with at each note: the level as noted, else all as it was set on that day."""
    then = {day: holds_for_child(*stood) for day, stood in book.on_days(one.id, (note.date for note in notes)).items()}
    return tuple(Held(note.support or then[note.date].support, note.support is not None,
                      then[note.date].ruling.line_height_mm, tuple(map(str, then[note.date].ladder.rungs or ())))
                 for note in notes)


def members_of(book: Classbook, children: Sequence[BookChild], placed: Sequence[Placed], *, notes: bool = False,
               held: bool = False) -> tuple[Member, ...]:
    """Return children of a class in the order of ``placed``, with what was noted of each where ``notes`` asks for it.

    ``held`` asks for what each practised with at each note, too. Raises ClassbookError.
    """
    on_line = {one.child.line: one for one in children}
    return tuple(member_of(on_line[each.child.line], each, book if notes else None, held=held) for each in placed)


def holds_for_class(settings: Mapping[str, str]) -> SheetSettings:
    """Return what holds for everyone in a class that keeps these settings. Raises Problem for what cannot be chosen."""
    return settled(read_choices(settings))


def holds_for_child(one: BookChild, settings: Mapping[str, str]) -> SheetSettings:
    """Return what holds for one child of a class that keeps these settings. Raises Problem for what cannot be."""
    return settled(own_choices(one).over(read_choices(settings)))


def roster_of(book: Classbook) -> Roster:
    """Return the class's list as it is read, with an account of every line. Raises RosterError or ClassbookError."""
    settings = book.class_settings
    return read_roster(book.roster_text(), LIST, NamePart(settings.get("practise", NamePart.GIVEN)),
                       names_in=settings.get("names_in", ""))
