"""The form in which a day's writing is noted: what stands in it when it is opened, and what is read when it is sent.

A form says which notes it was opened with, so what it is sent with stands in their place, and what was noted meanwhile
in another window stays beside it. It has a key of its own: one that is sent twice is noted once.
"""

from __future__ import annotations

import secrets
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from werkzeug.datastructures import MultiDict

from namewright.classbook import BookChild, Classbook, ClassbookError, Observation, Seen
from namewright.classbook.looks import DayNote, day_note
from namewright.classbook.records import letter_positions
from namewright.classbook.stages import Stage
from namewright.making.from_book import holds_for_child
from namewright.message import Message, Problem, message
from namewright.names.clusters import clusters
from namewright.settings import Support
from namewright.web.sent_number import sent_number


@dataclass(frozen=True, slots=True)
class Tile:
    """A letter to tap: its place in the name, what it is, whether it is on, and whether a word begins with it."""

    at: int
    letter: str
    on: bool
    begins: bool


@dataclass(frozen=True, slots=True)
class NoteForm:
    """One child's form for one day, as it is shown. ``noted`` is what stands in the class's file for that day."""

    id: int
    label: str
    name: str
    table: int
    noted: DayNote
    on: frozenset[int]
    none_yet: bool
    support: Support | None
    stage: Stage | None
    words: str
    who: str
    once: str
    problem: Problem | None = None

    @property
    def done(self) -> bool:
        """Say whether something was noted of the child on this day."""
        return bool(self.noted.notes)

    @property
    def tiles(self) -> tuple[Tile, ...]:
        """Return the letters of the name, in its order."""
        signs, places = clusters(self.name), letter_positions(self.name)
        return tuple(Tile(at, signs[at], at in self.on, bool(place) and at - places[place - 1] > 1)
                     for place, at in enumerate(places))

    @property
    def told(self) -> Message:
        """Return in a few words what was noted."""
        if self.noted.formed is None:
            return message("web.notes.noted_words")
        return message("web.notes.noted", count=len(self.noted.formed), letters=len(self.tiles))


def form_of(one: BookChild, table: int, noted: DayNote, settings: Mapping[str, str]) -> NoteForm:
    """Return a child's form with what was noted that day; the level is the child's own where none was."""
    support = noted.support or holds_for_child(one, settings).support
    return NoteForm(one.id, one.child.label, one.child.practice, table, noted, noted.formed or frozenset(),
                    noted.formed is not None and not noted.formed, support, noted.stage, noted.words, noted.who,
                    secrets.token_urlsafe(12))


def noted_on(book: Classbook, one: BookChild, day: str) -> DayNote:
    """Return what stands in the class's file for a child and a day."""
    return day_note(book.observations(one.id), day, one.child.practice)


@dataclass(frozen=True, slots=True)
class Sent:
    """What a form was sent with. ``letters`` is None where nothing was said of them."""

    day: str
    letters: tuple[int, ...] | None
    support: Support | None
    stage: Stage | None
    words: str
    who: str
    once: str
    in_place_of: tuple[int, ...]

    def keep(self, book: Classbook, child_id: int) -> Observation:
        """Keep it as a note. Raises ClassbookError where it says nothing, or something that cannot be."""
        if self.letters is None and self.stage is None and not self.words.strip():
            raise ClassbookError("web.notes.nothing")
        return book.observe(child_id, self.day, Seen(self.letters, self.support, self.stage, self.words), who=self.who,
                            token=self.once or None, in_place_of=self.in_place_of)


def read_form(form: MultiDict[str, str], name: str) -> Sent:
    """Return what a form was sent with; ``name`` is the name whose letters were tapped.

    No letter tapped says nothing of the letters, unless “none yet” was tapped: that is something else.
    """
    letters = tuple(_numbers(form, "letter"))
    if "all" in form:
        letters = letter_positions(name)
    support, stage = form.get("support", ""), form.get("stage", "")
    return Sent(form.get("day", ""), letters if letters or "none" in form else None,
                Support(support) if support in tuple(Support) else None,
                Stage(int(stage)) if stage in {str(each.value) for each in Stage} else None,
                form.get("note", ""), form.get("who", ""), form.get("once", ""), tuple(_numbers(form, "of")))


def _numbers(form: MultiDict[str, str], key: str) -> Iterator[int]:
    return (number for each in form.getlist(key) if (number := sent_number(each)) is not None)


def form_again(form: NoteForm, sent: Sent, problem: Problem) -> NoteForm:
    """Return a form as it was sent, with what is wrong with it: nothing of it has to be tapped again."""
    return replace(form, noted=replace(form.noted, notes=sent.in_place_of), on=frozenset(sent.letters or ()),
                   none_yet=sent.letters == (), support=sent.support, stage=sent.stage, words=sent.words, who=sent.who,
                   once=sent.once or form.once, problem=problem)
