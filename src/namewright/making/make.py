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
    TooLarge,
)
from namewright.making.naming import label_of, owner_of, with_label, with_letters
from namewright.making.own_pages import OwnPages
from namewright.making.request import FOR_EACH_CHILD, OF_NOTES, SIGN_IN, TO_KNOW, WRITTEN_ON, Kind, Member, Request
from namewright.message import Problem, message, together
from namewright.pages.hue import in_hue
from namewright.pages.page import Page, PageError
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order

if TYPE_CHECKING:
    from namewright.making.knowing import Knowing
    from namewright.pages.class_progress import ClassRow
    from namewright.pages.strips import Strip
    from namewright.pages.tile_sheet import TileSettings

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
        make = OwnPages(self.setter, self.request, self.account).maker(kind) or partial(self._know, kind)
        for one in self.request.members:
            self._remark_letters(one, kind)
            pages = self._try(kind, [one], make, one) or ()
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
            self.account.remark(one.placed.child, together(one.unread.message, message("account.class_letters")))

    def _told_apart(self, one: Member, page: Page) -> Page:
        """Return a child's page told from that of another of the same name: in the outline, which the adult reads."""
        return page._replace(outline=label_of(self.setter, self.request, one)) if page.outline is not None else page

    def _know(self, kind: Kind, one: Member) -> tuple[Page, ...]:
        return self._knowing.pages(kind, one, owner_of(self.setter, one))

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

        name, label = one.placed.child.practice, label_of(self.setter, self.request, one)
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

        named = [(label_of(self.setter, self.request, one), one.placed.child.practice) for one in members]
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
        shown = request._replace(members=tuple(with_label(self.setter, request, one) for one in request.members))
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
            without = [label_of(self.setter, self.request, one) for one in in_list if one.placed.child in lacking]
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
                    self.account.remark(one.placed.child, together(told, why.message) if why and new else told)
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
        shown = with_letters(self.setter, growth, label_of(self.setter, self.request, one))
        return ClassRow(shown, holds.support, thought)


def made_at_once(request: Request, setter: Typesetter) -> tuple[Page, ...]:
    """Return all pages of a request. Raises what stood in the way where a child could not be made."""
    making = Making(request, setter)
    pages = tuple(making.pages())
    for one in making.account.not_made:
        raise one.cause
    return pages
