"""The class as the desk lists it: a line a child, with what there is to know at a glance.

Out of scope: the order of the class (``practice.ordering``), reasons (the child's panel).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from namewright.classbook.growing import growth_of
from namewright.making.choices import choices_in_list
from namewright.making.from_book import holds_for_child
from namewright.message import Message, Problem, message
from namewright.pages.sheet_settings import SheetSettings
from namewright.settings import Hand, Support
from namewright.web.desk import Member, book
from namewright.web.finding import by_alphabet, family_of, names_of


@dataclass(frozen=True, slots=True)
class Row:
    """A child's line. ``support``, ``hand`` and ``height_mm`` are there where they are not the class's.

    ``formed`` counts letters that stand, of all in the name, each in its place. ``look`` says why something needs
    a look, where it does. ``found_by`` are the beginnings to find the child by, ``place`` is its place by alphabet.
    """

    id: int
    label: str
    support: Support | None
    hand: Hand | None
    height_mm: float | None
    formed: tuple[int, int] | None
    look: Message | None
    found_by: str
    place: int


def rows_of(everyone: Sequence[Member], settings: Mapping[str, str], usual: SheetSettings) -> list[Row]:
    """Return a line for each child, in the order given; ``usual`` is what holds for everyone."""
    place = {one.id: at for at, one in enumerate(by_alphabet(everyone))}
    return [_row(one, settings, usual, place[one.id]) for one in everyone]


def _row(member: Member, settings: Mapping[str, str], usual: SheetSettings, place: int) -> Row:
    one = member.one
    found_by = "|".join((*names_of(member), family_of(member)))
    look = look_at(member, settings)
    try:
        holds = holds_for_child(one, settings)
    except Problem:  # told by the mark
        holds = usual
    height = holds.ruling.line_height_mm
    return Row(one.id, member.label, holds.support if holds.support is not usual.support else None,
               holds.hand if holds.hand is not usual.hand else None,
               height if abs(height - usual.ruling.line_height_mm) > 0.01 else None, _formed(member), look, found_by,
               place)


def _formed(member: Member) -> tuple[int, int] | None:
    """Return how many letters stand, of how many there are to tap in the notes; None where nothing was noted."""
    notes = book().observations(member.id)
    if not notes:
        return None
    tracks = growth_of(member.label, member.one.child.practice, notes).tracks
    return sum(track.stands for track in tracks), len(tracks)


def look_at(member: Member, settings: Mapping[str, str]) -> Message | None:
    """Return why a child needs a look: a name that cannot be drawn, words that cannot be read; else None."""
    child = member.one.child
    if member.placed.band is None:
        return message("web.desk.cannot_letters", label=child.label)
    if choices_in_list(child)[1] is not None:
        return message("web.desk.cannot_read", label=child.label)
    try:
        holds_for_child(member.one, settings)
    except Problem as error:
        return error.message
    return None
