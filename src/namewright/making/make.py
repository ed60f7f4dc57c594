"""The maker: the pages of a request, one by one as they are asked for, so that memory does not grow with the class.

What becomes of everyone is told in ``account``, which is whole when the last page has been taken. What only one kind
of pages needs is imported where that kind is made: a run that makes sheets does not load plans and progress.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import cached_property, partial
from itertools import accumulate
from typing import TYPE_CHECKING, ParamSpec, TypeVar

from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.making.account import (
    Account,
    FontTooLarge,
    NoFriends,
    NothingNoted,
    NothingToWrite,
    NotMade,
    Remark,
    TooLarge,
)
from namewright.making.request import FOR_EACH_CHILD, OF_NOTES, SIGN_IN, TO_KNOW, WRITTEN_ON, Kind, Member, Request
from namewright.message import Message, Problem, message, together
from namewright.pages.drawable import as_far_as, drawable, letters_shown
from namewright.pages.hue import in_hue
from namewright.pages.ladder import ORDERED
from namewright.pages.page import Page, PageError
from namewright.pages.sheet import SheetSettings, practice_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order
from namewright.wording import wording

if TYPE_CHECKING:
    from namewright.making.knowing import Knowing
    from namewright.pages.child_progress import ProgressSettings
    from namewright.pages.class_progress import ClassRow
    from namewright.pages.growth import Growth
    from namewright.pages.strips import Strip
    from namewright.pages.tile_sheet import TileSettings

_TO_FILL_IN = "……………………"  # where a family reads a name that we cannot show: for an adult to write it
Made = TypeVar("Made")
P = ParamSpec("P")


class Making:
    """A request being made, on letters kept ready by ``setter``.

    Where nobody chose lines for a school's font, its capitals reach the top line.
    """

    def __init__(self, request: Request, setter: Typesetter | None = None, account: Account | None = None) -> None:
        self.setter = setter or Typesetter()
        font, everyone = self.setter.school_font, request.everyone
        if font is not None and everyone.ruling is None:
            lines = font.own_lines(preset(DEFAULT_RULING))
            request = request._replace(everyone=everyone._replace(ruling=lines))
        self.request = request
        self.account = account or Account()
        self._sheet_pages: list[tuple[int, int]] = []
        self._know_pages: dict[tuple[Kind, int | None], range] = {}
        self._count = 0

    @cached_property
    def _knowing(self) -> Knowing:
        from namewright.making.knowing import Knowing

        return Knowing(self.request, self.setter)

    def pages(self, *kinds: Kind) -> Iterator[Page]:
        """Yield the pages of these kinds, of all that were asked for where none is named.

        Raises ValueError, in a sentence, where what is chosen for everyone cannot be ruled.
        """
        makers: Mapping[Kind, Callable[[], Iterator[Page]]] = {
            Kind.TILES: self._tiles, Kind.GROUPS: self._groups, Kind.ADULT: self._adult, Kind.PLAN: self._plan,
            Kind.YEAR: self._year, Kind.ANSWERS: self._answers,
            **{kind: partial(self._together, kind) for kind in TO_KNOW if kind not in FOR_EACH_CHILD}}
        for kind in sorted(kinds or self.request.kinds, key=list(Kind).index):
            made = makers[kind]() if kind in makers else self._each(kind)
            for page in in_hue(made, self.request.settings.colour) if kind in WRITTEN_ON else made:
                self._count += 1
                yield page
            if kind not in FOR_EACH_CHILD:
                self.account.step()

    def _try(self, kind: Kind, members: Sequence[Member], make: Callable[P, Made], *args: P.args,
             **more: P.kwargs) -> Made | None:
        """Return what is made; where it cannot be, None. Each child is set down as made or not made."""
        cause: Problem
        try:
            made = make(*args, **more)
        except (MissingLetters, DoesNotFit, NothingNoted, NothingToWrite, NoFriends) as error:
            cause = error
        except PageError:
            cause = FontTooLarge() if self.setter.school_font else TooLarge()
        else:
            self.account.made += [(kind, one) for one in members]
            return made
        self.account.not_made += [NotMade(kind, one.placed.child, cause) for one in members]
        return None

    # --- a child's own pages ------------------------------------------------------------------------------

    def _each(self, kind: Kind) -> Iterator[Page]:
        makers = {Kind.SHEETS: self._sheet, Kind.CARDS: self._card, Kind.SIZES: self._sizes, Kind.GROWTH: self._growth,
                  Kind.TALK: self._talk, Kind.RECORD: self._record}
        for one in self.request.members:
            self._remark_letters(one, kind)
            pages = self._try(kind, [one], makers.get(kind, partial(self._know, kind)), one) or ()
            if kind in WRITTEN_ON:
                pages = tuple(self._told_apart(one, page) for page in pages)
            if kind is Kind.SHEETS:
                self._sheet_pages.append((one.placed.child.line, len(pages)))
            if kind in TO_KNOW and pages:
                self._know_pages[kind, one.placed.child.line] = self._next(len(pages))
            yield from pages
            self.account.step()
        if kind in TO_KNOW:
            self.account.notes += self._knowing.notes(kind, self.account.of(kind))

    def _remark_letters(self, one: Member, kind: Kind) -> None:
        """Say of a child that its own letters could not be read, where pages show letters of its own."""
        if one.unread and kind not in OF_NOTES:
            self._remark(one, together(one.unread.message, message("account.class_letters")))

    def _remark(self, one: Member, told: Message) -> None:
        """Set a remark down once."""
        remark = Remark(one.placed.child, told)
        if remark not in self.account.remarks:
            self.account.remarks.append(remark)

    def _note(self, told: Message) -> None:
        """Set down once what holds for all pages of a kind."""
        if told not in self.account.notes:
            self.account.notes.append(told)

    def _holds_for_sheet(self, one: Member) -> SheetSettings:
        """Return what holds for a child's sheet: a school's font tells no order of strokes, so no row may show one."""
        holds = self.request.settings_of(one)
        rungs = holds.ladder.rungs
        if self.setter.school_font is None or not any(part in ORDERED for part in rungs or ()):
            return holds
        self._remark(one, message("account.font_order"))
        rest = tuple(part for part in rungs or () if part not in ORDERED)
        return holds._replace(ladder=holds.ladder._replace(rungs=rest or None))

    def _label(self, one: Member) -> str:
        """Return what an adult's page calls a child."""
        from namewright.making.adult import called

        return called(self.setter, one, self.request.roster, wording(self.request.settings.language))

    def _called(self, one: Member) -> Member:
        """Return a child for a page on which its label is what is shown, without beats where we can show no letter."""
        placed, label = one.placed, self._label(one)
        shown = placed._replace(child=placed.child._replace(label=label))
        if not as_far_as(self.setter, placed.child.label):
            shown = shown._replace(beats=())
        return one._replace(placed=shown)

    def _owner(self, one: Member) -> str:
        """Return whose page it is, as the child itself reads it: with no initial or number of another’s.

        Where the names have a school's font the page shows it in that, if our letters lack one of it.
        """
        name = one.placed.child.practice
        return name if self.setter.school_font else drawable(self.setter, name)

    def _told_apart(self, one: Member, page: Page) -> Page:
        """Return a child's page told from that of another of the same name: in the outline, which the adult reads."""
        return page._replace(outline=self._label(one)) if page.outline is not None else page

    def _sheet(self, one: Member) -> tuple[Page, ...]:
        holds = self._holds_for_sheet(one)
        if holds.sleeve:
            from namewright.pages.sleeve import MIN_X_HEIGHT_MM, for_marker, sleeve_pages

            asked, height = holds.ruling.line_height_mm, for_marker(holds.ruling).line_height_mm
            if height > asked:
                self._note(message("account.sleeve_taller", height=height, asked=asked, least=MIN_X_HEIGHT_MM))
            return sleeve_pages(self.setter, one.placed.child.practice, self._owner(one), holds)
        name, owner = one.placed.child.practice, self._owner(one)
        return self.setter.sheets.get((name, owner, holds), lambda: practice_pages(self.setter, name, owner, holds))

    def _card(self, one: Member) -> tuple[Page, ...]:
        from namewright.making import page_settings
        from namewright.pages.name_card import card_page, card_sheet, has_room_beside

        name, label, holds = one.placed.child.practice, self._owner(one), self.request.settings_of(one)
        card = page_settings.for_card(holds, self.request.card)
        several = len(self.request.members) > 1
        beside = has_room_beside(card.size, holds.paper)
        if self.request.fill and not beside:
            self._note(message("page.cards_caution"))
        if several and one.whose and not (self.request.fill and beside):
            self._remark(one, message("account.cards_alike"))
        if self.request.fill:
            return (card_sheet(self.setter, name, label, card, holds.paper),)
        return (card_page(self.setter, name, label, card),)

    def _sizes(self, one: Member) -> tuple[Page, ...]:
        from namewright.making import page_settings
        from namewright.pages.size_finder import size_pages

        settings = page_settings.for_ruled_page(self.request.settings_of(one))
        return size_pages(self.setter, one.placed.child.practice, self._owner(one), settings)

    def _growth(self, one: Member) -> tuple[Page, ...]:
        from namewright.pages.child_progress import progress_page

        label = one.placed.child.label
        called = label if not self.setter.alphabet.missing(label) else as_far_as(self.setter, label) or _TO_FILL_IN
        page = progress_page(self.setter, self._shown(self._noted(one), called), self._for_family(one))
        return (page._replace(outline=self._label(one)),)

    def _shown(self, growth: Growth, called: str) -> Growth:
        """Return the same for a page that names the child so, its letters as our letters can show them."""
        from dataclasses import replace

        letters = letters_shown(self.setter, [track.letter for track in growth.tracks])
        tracks = tuple(replace(track, letter=letter) for track, letter in zip(growth.tracks, letters, strict=True))
        return replace(growth, label=called, tracks=tracks)

    def _noted(self, one: Member) -> Growth:
        """Return what was noted of a child over time. Raises NothingNoted."""
        from namewright.classbook.growing import growth_of

        child = one.placed.child
        growth = growth_of(child.label, child.practice, one.notes, one.held)
        if not growth.days:
            raise NothingNoted(child.label)
        return growth

    def _for_family(self, one: Member) -> ProgressSettings:
        """Return how a page for a family is made: in the language that was typed, else that of its home."""
        from namewright.making import page_settings

        settings = page_settings.for_progress(self.request.settings_of(one))
        return settings._replace(language=self.request.first.language or one.home or settings.language)

    def _talk(self, one: Member) -> tuple[Page, ...]:
        from namewright.making.noted import talk_of
        from namewright.pages.talk_page import talk_pages

        talk = talk_of(one, self._noted(one), words=self.request.words)
        return talk_pages(self.setter, talk, self._for_family(one))

    def _record(self, one: Member) -> tuple[Page, ...]:
        from dataclasses import replace

        from namewright.making import page_settings
        from namewright.making.noted import record_of_member
        from namewright.pages.record_table import record_pages

        record = record_of_member(one)
        if not record.trials:
            raise NothingNoted(one.placed.child.label)
        shown = replace(record, label=self._label(one), letters=letters_shown(self.setter, record.letters))
        return record_pages(self.setter, shown, page_settings.for_progress(self.request.settings_of(one)))

    def _know(self, kind: Kind, one: Member) -> tuple[Page, ...]:
        return self._knowing.pages(kind, one, self._owner(one))

    def _tiles(self) -> Iterator[Page]:
        from namewright.making import page_settings
        from namewright.pages.tile_sheet import tile_pages

        settings = page_settings.for_tiles(self.request.settings, self.request.tile_mm)
        return tile_pages(self.setter, self._all_strips(settings), settings)

    def _all_strips(self, settings: TileSettings) -> Iterator[Strip]:
        for one in self.request.members:
            self._remark_letters(one, Kind.TILES)
            made = self._try(Kind.TILES, [one], self._strip, one, settings)
            if made:
                yield made
            self.account.step()

    def _strip(self, one: Member, settings: TileSettings) -> Strip:
        """Return a child's tiles in the forms of its letters. What cannot be drawn shows before a page begins."""
        from namewright.pages.strips import strip_of
        from namewright.pages.tile_sheet import tile_pages, tile_ruling

        name, label = one.placed.child.practice, self._label(one)
        made = strip_of(label, name, self.request.settings_of(one).letters)
        self.setter.ruled(tile_ruling(settings.side_mm)).line(name)
        if self.setter.school_font:  # how far its letters reach is not known beforehand
            list(tile_pages(self.setter, [made], settings))
        return made

    # --- pages about the class ----------------------------------------------------------------------------

    def _groups(self) -> Iterator[Page]:
        for number in sorted({one.group for one in self.request.planned}):
            members = [one for one, placed in zip(self.request.members, self.request.planned, strict=True)
                       if placed.group == number]
            page = self._try(Kind.GROUPS, members, self._group, number, members)
            if page:
                yield page

    def _group(self, number: int, members: Sequence[Member]) -> Page:
        from namewright.making import page_settings
        from namewright.pages.group_sheet import group_page
        from namewright.practice.groups import shared_letters

        named = [(self._label(one), one.placed.child.practice) for one in members]
        shared = [letter for letter in shared_letters([name for _, name in named])
                  if not self.setter.alphabet.missing(letter)]
        return group_page(self.setter, number, named, shared, page_settings.for_ruled_page(self.request.settings))

    def _adult(self) -> Iterator[Page]:
        from namewright.making.adult import adult_pages

        request, account = self.request, self.account
        made = account.of(Kind.SHEETS) if Kind.SHEETS in request.kinds else request.members
        not_made = [one for one in account.not_made if one.kind is Kind.SHEETS]
        yield from self._try(Kind.ADULT, request.members, adult_pages, self.setter, request, made, not_made) or ()

    def _plan(self) -> Iterator[Page]:
        from namewright.making import page_settings
        from namewright.making.planning import timetable_of
        from namewright.pages.plan.pages import plan_pages

        request = self.request
        settings = page_settings.for_plan(request.settings,
                                          request.first.over(request.everyone).order or Order.PRACTICE, request.monday)
        shown = request._replace(members=tuple(map(self._called, request.members)))
        yield from self._try(Kind.PLAN, request.members, plan_pages, self.setter, timetable_of(shown), settings,
                             self.numbers()) or ()

    def _together(self, kind: Kind) -> Iterator[Page]:
        """Yield pages to know names by that stand for the class; whoever cannot be on them is told, and left out."""
        in_list = sorted(self.request.members, key=lambda one: one.placed.child.line)
        if kind in SIGN_IN:
            yield from self._signing_in(kind, in_list)
            return
        there = [one for one in in_list if self._try(kind, [one], self._knowing.tried, kind, one)]
        if there:
            lacking = {one.child for one in self.account.not_made
                       if one.kind is kind and isinstance(one.cause, MissingLetters)}
            without = [self._label(one) for one in in_list if one.placed.child in lacking]
            pages = self._knowing.together(kind, there, without)
            self._know_pages[kind, None] = self._next(len(pages))
            yield from pages

    def _signing_in(self, kind: Kind, members: Sequence[Member]) -> Iterator[Page]:
        """Yield a list to sign in on, which leaves nobody out; what of a child cannot stand there is told."""
        if members:
            pages, signed = self._knowing.signing_in(kind, members)
            self.account.made += [(kind, one) for one in members]
            explained = {one.child for one in self.account.not_made}
            for one, (told, why) in zip(members, signed, strict=True):
                if told is not None:
                    new = one.placed.child not in explained
                    self._remark(one, together(told, why.message) if why and new else told)
            self._know_pages[kind, None] = self._next(len(pages))
            yield from pages

    def _next(self, pages: int) -> range:
        """Return the numbers that so many pages will have among all that were taken from here."""
        return range(self._count + 1, self._count + pages + 1)

    def _answers(self) -> Iterator[Page]:
        """Yield the adult's pages about what was made to know names by, about every kind where none was."""
        made = [each for each in self.account.made if each[0] in TO_KNOW]
        if not made:
            made = [(kind, one) for kind in TO_KNOW for one in self.request.members if one.placed.band is not None]
        if made:
            not_made = [each for each in self.account.not_made if each.kind in TO_KNOW]
            yield from self._try(Kind.ANSWERS, self.request.members, self._knowing.answers, made, self._know_pages,
                                 not_made) or ()

    def numbers(self) -> Mapping[int, tuple[int, ...]]:
        """Return the pages of each child's sheet in the class's PDF, by line; sheets come first there.

        Where no sheets are made with the plan, they are laid out to be counted.
        """
        if Kind.SHEETS not in self.request.kinds:
            counting = Making(self.request._replace(kinds=(Kind.SHEETS,)), self.setter)
            for _ in counting.pages():
                pass
            return counting.numbers()
        ends = list(accumulate((count for _, count in self._sheet_pages), initial=1))
        return {line: tuple(range(start, start + count))
                for (line, count), start in zip(self._sheet_pages, ends, strict=False)}

    def _year(self) -> Iterator[Page]:
        from namewright.making import page_settings
        from namewright.pages.class_progress import class_progress_pages

        in_list = sorted(self.request.members, key=lambda one: one.placed.child.line)
        settings = page_settings.for_progress(self.request.settings)
        yield from self._try(Kind.YEAR, in_list, class_progress_pages, self.setter, [self._row(one) for one in in_list],
                             settings) or ()

    def _row(self, one: Member) -> ClassRow:
        from namewright.classbook.growing import growth_of
        from namewright.classbook.suggest import suggest
        from namewright.pages.class_progress import ClassRow

        child, holds = one.placed.child, self.request.settings_of(one)
        thought = suggest(holds.support, one.notes, child.practice).reason
        growth = growth_of(child.label, child.practice, one.notes)
        return ClassRow(self._shown(growth, self._label(one)), holds.support, thought)


def made_at_once(request: Request, setter: Typesetter) -> tuple[Page, ...]:
    """Return all pages of a request. Raises what stood in the way where a child could not be made."""
    making = Making(request, setter)
    pages = tuple(making.pages())
    for one in making.account.not_made:
        raise one.cause
    return pages
