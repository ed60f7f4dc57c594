"""A child's own pages, of each kind but those to know names by. What one kind needs is imported where it is made."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from namewright.making.account import Account, NothingNoted
from namewright.making.naming import label_of, owner_of, with_letters
from namewright.making.request import Kind, Member, Request
from namewright.message import message
from namewright.pages.drawable import as_far_as, letters_shown
from namewright.pages.ladder import ORDERED
from namewright.pages.page import Page
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter

if TYPE_CHECKING:
    from namewright.pages.child_progress import ProgressSettings
    from namewright.pages.growth import Growth

_TO_FILL_IN = "……………………"  # where a family reads a name that we cannot show: for an adult to write it


class OwnPages:
    """The pages of single children; what could not be heeded is set down in the account."""

    def __init__(self, setter: Typesetter, request: Request, account: Account) -> None:
        self.setter, self.request, self.account = setter, request, account

    def maker(self, kind: Kind) -> Callable[[Member], tuple[Page, ...]] | None:
        """Return what makes a child's pages of a kind, None for a kind that is made elsewhere."""
        makers = {Kind.SHEETS: self._sheet, Kind.CARDS: self._card, Kind.SIZES: self._sizes, Kind.GROWTH: self._growth,
                  Kind.TALK: self._talk, Kind.RECORD: self._record}
        return makers.get(kind)

    def _holds_for_sheet(self, one: Member) -> SheetSettings:
        """Return what holds for a child's sheet: a school's font tells no order of strokes, so no row may show one."""
        holds = self.request.settings_of(one)
        rungs = holds.ladder.rungs
        if self.setter.school_font is None or not any(part in ORDERED for part in rungs or ()):
            return holds
        self.account.remark(one.placed.child, message("account.font_order"))
        rest = tuple(part for part in rungs or () if part not in ORDERED)
        return holds._replace(ladder=holds.ladder._replace(rungs=rest or None))

    def _sheet(self, one: Member) -> tuple[Page, ...]:
        holds = self._holds_for_sheet(one)
        if holds.sleeve:
            from namewright.pages.sleeve import MIN_X_HEIGHT_MM, for_marker, sleeve_pages

            asked, height = holds.ruling.line_height_mm, for_marker(holds.ruling).line_height_mm
            if height > asked:
                self.account.note(message("account.sleeve_taller", height=height, asked=asked, least=MIN_X_HEIGHT_MM))
            return sleeve_pages(self.setter, one.placed.child.practice, owner_of(self.setter, one), holds)
        name, whose = one.placed.child.practice, owner_of(self.setter, one)
        return self.setter.sheets.get((name, whose, holds), lambda: practice_pages(self.setter, name, whose, holds))

    def _card(self, one: Member) -> tuple[Page, ...]:
        from namewright.making import page_settings
        from namewright.pages.name_card import card_page, card_sheet, has_room_beside

        name, whose, holds = one.placed.child.practice, owner_of(self.setter, one), self.request.settings_of(one)
        card = page_settings.for_card(holds, self.request.card)
        several = len(self.request.members) > 1
        beside = has_room_beside(card.size, holds.paper)
        if self.request.fill and not beside:
            self.account.note(message("page.cards_caution"))
        if several and one.whose and not (self.request.fill and beside):
            self.account.remark(one.placed.child, message("account.cards_alike"))
        if self.request.fill:
            return (card_sheet(self.setter, name, whose, card, holds.paper),)
        return (card_page(self.setter, name, whose, card),)

    def _sizes(self, one: Member) -> tuple[Page, ...]:
        from namewright.making import page_settings
        from namewright.pages.size_finder import size_pages

        settings = page_settings.for_ruled_page(self.request.settings_of(one))
        return size_pages(self.setter, one.placed.child.practice, owner_of(self.setter, one), settings)

    def _growth(self, one: Member) -> tuple[Page, ...]:
        from namewright.pages.child_progress import progress_page

        known = one.placed.child.label
        called = known if not self.setter.alphabet.missing(known) else as_far_as(self.setter, known) or _TO_FILL_IN
        page = progress_page(self.setter, with_letters(self.setter, self._noted(one), called), self._for_family(one))
        return (page._replace(outline=label_of(self.setter, self.request, one)),)

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
        shown = replace(record, label=label_of(self.setter, self.request, one),
                        letters=letters_shown(self.setter, record.letters))
        return record_pages(self.setter, shown, page_settings.for_progress(self.request.settings_of(one)))
