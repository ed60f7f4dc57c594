"""What pages call a child: for the adult its label, for itself its own name, as far as our letters can show them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from namewright.making.request import Member, Request
from namewright.pages.drawable import as_far_as, drawable, letters_shown
from namewright.pages.typesetter import Typesetter
from namewright.roster.children import Roster
from namewright.wording import Wording, wording

if TYPE_CHECKING:
    from namewright.pages.growth import Growth


def called(setter: Typesetter, one: Member, roster: Roster, words: Wording) -> str:
    """Return what an adult's page calls a child: its label, or where we can show no letter of it its line."""
    child = one.placed.child
    label = drawable(setter, child.label)
    if label == child.label or as_far_as(setter, child.label):
        return label
    return words.say("page.of_list", line=roster.source_line(child.line))


def label_of(setter: Typesetter, request: Request, one: Member) -> str:
    """Return what an adult's page calls a child of a request."""
    return called(setter, one, request.roster, wording(request.settings.language))


def with_label(setter: Typesetter, request: Request, one: Member) -> Member:
    """Return a child for a page on which its label is what is shown, without beats where we can show no letter."""
    placed = one.placed
    shown = placed._replace(child=placed.child._replace(label=label_of(setter, request, one)))
    if not as_far_as(setter, placed.child.label):
        shown = shown._replace(beats=())
    return one._replace(placed=shown)


def owner_of(setter: Typesetter, one: Member) -> str:
    """Return whose page it is, as the child itself reads it: with no initial or number of another’s.

    Where the names have a school's font the page shows it in that, if our letters lack one of it.
    """
    name = one.placed.child.practice
    return name if setter.school_font else drawable(setter, name)


def with_letters(setter: Typesetter, growth: Growth, called: str) -> Growth:
    """Return what was noted for a page that names the child so, its letters as our letters can show them."""
    from dataclasses import replace  # loaded with what was noted, not with every command

    letters = letters_shown(setter, [track.letter for track in growth.tracks])
    tracks = tuple(replace(track, letter=letter) for track, letter in zip(growth.tracks, letters, strict=True))
    return replace(growth, label=called, tracks=tracks)
