"""Pages to recognise and spell a name, and what the adult is told of each: answers, and names that nobody has.

Page and answer both come from what ``know_contents`` finds. Out of scope: who is made and who is not (``make``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import groupby
from typing import TYPE_CHECKING

from namewright.lines.ruling import print_ruling
from namewright.making.account import NotMade
from namewright.making.adult import not_made_said
from namewright.making.know_contents import READ_MM, Contents
from namewright.making.naming import called
from namewright.making.request import KNOW_EACH, Kind, Member, Request
from namewright.message import Message, Problem, message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages.drawable import drawable
from namewright.pages.page import Page
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.friends import HELPED
from namewright.practice.gaps import GapRow
from namewright.practice.letter_hunt import HITS
from namewright.practice.tile_set import tiles_needed
from namewright.wording import Wording, wording

if TYPE_CHECKING:
    from namewright.pages.know.chant import Chanted
    from namewright.pages.know.sign_in_place import Cell, Signer

PagesAt = Mapping[tuple[Kind, int | None], range]
"""On which pages of a file a child's pages of a kind stand, by its line of the list; those of the class by None."""


class Signed(NamedTuple):
    """What the adult is told of a child on a list to sign in on, and why its name has no model there."""

    told: Message | None
    why: Problem | None


@dataclass
class Knowing:
    """The pages of one request."""

    request: Request
    setter: Typesetter
    _with_listed: set[int] = field(default_factory=set)  # lines of the list

    @cached_property
    def _on(self) -> Contents:
        """Return what stands on each page."""
        return Contents(self.request, self.setter)

    def pages(self, kind: Kind, one: Member, label: str) -> tuple[Page, ...]:
        """Return a child's pages of a kind. Raises NothingToWrite, MissingLetters, DoesNotFit."""
        name, holds = self._on.name(one), self.request.settings_of(one)
        self.setter.ruled(print_ruling(READ_MM)).line(name)  # what cannot be drawn is told before names are compared
        match kind:
            case Kind.FIND:
                from namewright.pages.know.find import find_page

                found = self._on.found(one)
                if any(other.listed for other in found.others):
                    self._with_listed.add(one.placed.child.line)
                return (find_page(self.setter, label, found, holds),)
            case Kind.LETTERS:
                from namewright.pages.know.letters import letters_pages

                return letters_pages(self.setter, label, self._on.hunt(one), holds)
            case Kind.MISSING:
                from namewright.pages.know.missing import missing_pages

                return missing_pages(self.setter, label, self._on.gaps(one), holds)
            case Kind.MIXED:
                from namewright.pages.know.mixed import mixed_pages

                return mixed_pages(self.setter, label, name, self._on.orders(one), holds)
            case Kind.FRIENDS:
                from namewright.pages.know.friends import friends_page

                return (friends_page(self.setter, label, name, self._on.friends(one), holds),)
            case _:
                raise ValueError(f"{kind} is no page of one child to know a name by")

    # --- the class's pages -------------------------------------------------------------------------------

    def tried(self, kind: Kind, one: Member) -> bool:
        """Return True where a child has room on the class's pages of a kind. Raises as ``pages`` does."""
        name = self._on.name(one)
        if kind is Kind.CHANT:
            from namewright.pages.know.chant import named

            return bool(named(self.setter, self._chanted(one)))
        return bool(self.setter.ruled(print_ruling(READ_MM)).line(name))

    def together(self, kind: Kind, members: Sequence[Member], without: Sequence[str]) -> tuple[Page, ...]:
        """Return the class's pages of a kind for these children, each tried before.

        ``without`` is what the others are called, whose names our letters cannot draw.
        """
        settings = self.request.settings
        if kind is Kind.CHANT:
            from namewright.pages.know.chant import chant_pages

            return chant_pages(self.setter, [self._chanted(one) for one in members], settings, without)
        from namewright.pages.know.build import build_pages

        at_once = min(self.request.at_once, len(members))
        tiles = tiles_needed([self._on.name(one) for one in members], at_once)
        return build_pages(self.setter, tiles, at_once, settings, self.request.tile_mm, without)

    def signing_in(self, kind: Kind, members: Sequence[Member]) -> tuple[tuple[Page, ...], tuple[Signed, ...]]:
        """Return a list to sign in on, for a day or a week, and what became of each child on it.

        Nobody is left out: who cannot be shown or given a model there still has lines to sign on.
        """
        from namewright.pages.know.sign_in_place import place_of
        from namewright.pages.know.signin import rooms_of, sign_in_pages
        from namewright.pages.know.week_list import week_pages, week_rooms

        settings, week = self.request.settings, kind is Kind.SIGNIN_WEEK
        rooms = week_rooms(settings) if week else rooms_of(settings)
        places = [place_of(self.setter, self._signer(one), rooms) for one in members]
        pages = (week_pages if week else sign_in_pages)(self.setter, [cell for cell, _ in places], settings)
        return pages, tuple(Signed(_told_of_place(cell), why) for cell, why in places)

    def _signer(self, one: Member) -> Signer:
        from namewright.pages.know.sign_in_place import Signer

        child = one.placed.child
        alone = self._practised[child.practice] == 1
        return Signer(child.practice, child.practice if alone else child.label, self.request.settings_of(one),
                      self.request.roster.source_line(child.line))

    @cached_property
    def _practised(self) -> Mapping[str, int]:
        """Return how many children practise each name."""
        return Counter(each.practice for each in self.request.classmates)

    def _chanted(self, one: Member) -> Chanted:
        from namewright.pages.know.chant import Chanted

        return Chanted(self._on.name(one), self.request.settings_of(one))

    # --- what the adult is told --------------------------------------------------------------------------

    def answers(self, made: Sequence[tuple[Kind, Member]], at: PagesAt, not_made: Sequence[NotMade],
                ) -> tuple[Page, ...]:
        """Return the adult's pages about the pages made, in the order in which these lie: answers first, reasons last.

        ``at`` says on which pages of the file each stands, as far as that is known; ``not_made`` what is lacking there.
        """
        settings = self.request.settings
        words, kinds = wording(settings.language), tuple(dict.fromkeys(kind for kind, _ in made))
        entries = [Entry(words.say("page.answers.title"), (words.say("page.answers.lead"),), title=True)]
        for kind in kinds:
            if kind in KNOW_EACH:
                entries.append(Entry(words.say(f"page.answers.head_{kind}"), part=True))
                entries += self._told(kind, [one for other, one in made if other is kind], words, at)
        together = [kind for kind in kinds if (kind, None) in at]
        if together:
            entries.append(Entry(words.say("page.answers.head_class"), part=True))
            entries += [Entry(words.say(f"page.answers.head_{kind}"), (words.text(_on_pages(at[kind, None])),),
                              beside=True) for kind in together]
        lacking = dict.fromkeys(not_made_said(self.setter, not_made, self.request.roster, words))  # a child once
        if lacking:
            entries.append(Entry(words.say("page.answers.head_not_made"), part=True))
            entries += [Entry("", (drawable(self.setter, said),)) for said in lacking]
        entries.append(Entry(words.say("page.answers.head_why"), part=True))
        entries += [Entry("", (words.say(f"page.answers.why_{kind}"),)) for kind in kinds]
        return summary_pages(self.setter, entries, settings.paper, binding=settings.binding)

    def _told(self, kind: Kind, members: Sequence[Member], words: Wording, at: PagesAt) -> Iterator[Entry]:
        """Yield the answers to a kind's pages, child by child; what holds for all of them last."""
        for one in members:
            pages = at.get((kind, one.placed.child.line))
            told = (*([_on_pages(pages)] if pages else []), *self._answer(kind, one))
            label = called(self.setter, one, self.request.roster, words)
            yield Entry(label, (drawable(self.setter, words.text(*told)),), beside=True)
        if kind is Kind.FRIENDS and any(self.request.settings_of(one).support in HELPED for one in members):
            yield Entry("", (words.say("page.answers.black"),))
        if kind is Kind.FIND and any(part.other_face for one in members for part in self._on.found(one).parts):
            yield Entry("", (words.say("page.answers.other_face"),))

    def notes(self, kind: Kind, made: Sequence[Member]) -> Iterator[Message]:
        """Yield what the adult should know of all pages of a kind that were made, beside the answers."""
        if kind is Kind.FIND:
            count = sum(one.placed.child.line in self._with_listed for one in made)
            if count:
                yield message("account.added", count=count)

    def _answer(self, kind: Kind, one: Member) -> Iterator[Message]:
        match kind:
            case Kind.FIND:
                found = self._on.found(one)
                yield message("page.answers.find", hits=found.hits, all=len(found.shown),
                              names=tuple(other.name for other in found.others))
                added = tuple(other.name for other in found.others if other.listed)
                if added:
                    yield (message("page.answers.added_all") if 1 < len(added) == len(found.others)
                           else message("page.answers.added", names=added, count=len(added)))
            case Kind.LETTERS:
                yield message("page.answers.letters", hits=HITS, letters=self._on.hunt(one).letters)
            case Kind.MISSING:
                yield message("page.answers.missing", rows=tuple(map(_row_told, self._on.gaps(one))))
            case Kind.MIXED:
                yield message("page.answers.mixed", orders=tuple("".join(order) for order in self._on.orders(one)))
            case Kind.FRIENDS:
                yield message("page.answers.friends", names=self._on.friends(one))


def _told_of_place(cell: Cell) -> Message | None:
    """Return what an adult should know of a child's place on a list to sign in on; None where all is as asked."""
    if cell.one is None:
        return None
    if cell.line is None:
        return (message("account.signin_told", shown=cell.named.text) if cell.named
                else message("account.signin_rule", line=cell.one.line))
    height, asked = cell.ruling.line_height_mm, cell.one.settings.ruling.line_height_mm
    return message("account.signin_lower", height=height, asked=asked) if height < asked - 0.05 else None


def _on_pages(pages: range) -> Message:
    first, last = str(pages[0]), str(pages[-1])
    return message("page.answers.on_page", count=len(pages), pages=first if first == last else f"{first}–{last}")


def _row_told(row: GapRow) -> Message | str:
    """Return a row as the adult reads it: what is missing in brackets, or which letters lack their marks."""
    letters = clusters(row.name)
    if row.marks:
        return message("page.answers.missing_marks", letters=tuple(letters[at] for at in sorted(row.marks)))
    runs = groupby(range(len(letters)), key=lambda at: at in row.letters)
    told = (("".join(letters[at] for at in places), missing) for missing, places in runs)
    return "".join(f"({part})" if missing else part for part, missing in told)
