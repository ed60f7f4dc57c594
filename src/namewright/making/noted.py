"""What was noted of a member of a request, as its pages and a spreadsheet show it."""

from __future__ import annotations

from datetime import date

from namewright.classbook.growing import formed_lately, record_of
from namewright.making.request import Member
from namewright.pages.growth import Growth
from namewright.pages.record import Record
from namewright.pages.talk_page import Talk

MAX_COMING = 2  # letters to take up next, as many as a family keeps in mind; a rule of ours


def record_of_member(one: Member) -> Record:
    """Return every look at a member's name. Raises ValueError for one whose notes have nothing practised with."""
    return record_of(one.placed.child.label, one.placed.child.practice, one.notes, one.held)


def talk_of(one: Member, growth: Growth, *, words: bool) -> Talk:
    """Return what a talk about a member is about; ``words`` asks for what was noted in words, first and latest."""
    name = one.placed.child.practice
    stands, somewhere = formed_lately(name, one.notes), {track.letter for track in growth.formed}
    lacking = [letter for letter, _ in one.placed.letters if letter not in stands]
    coming = tuple(sorted(lacking, key=lambda letter: letter in somewhere))[:MAX_COMING]  # new ones before others
    noted = [(date.fromisoformat(note.date), note.note) for note in one.notes if note.note] if words else []
    return Talk(growth, name, coming, tuple(dict.fromkeys([*noted[:1], *noted[-1:]])))
