"""What can be printed, in one PDF or as pages on the screen: the kinds, and the pages of an order for them.

Pages are made one by one as they are asked for. Out of scope: writing the file (``jobs``), choosing (``room``).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from namewright.classbook import BookChild
from namewright.classwork import Work
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.pages.class_progress import ClassRow
from namewright.pages.group_sheet import GroupSettings, group_page
from namewright.pages.name_card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.plan.sentences import NOTHING_FORMED, Formed
from namewright.pages.press import Press
from namewright.pages.summary import drawable
from namewright.practice.groups import shared_letters
from namewright.practice.ordering import Order, Placed
from namewright.practice.weeks import letter_weeks
from namewright.roster.children import Roster
from namewright.web.class_settings import card_of_child, sheet_of_child, sheet_of_class, tiles_of_class
from namewright.web.year import year_pages

FOR_CHILDREN, FOR_ADULT = ("sheets", "cards", "tiles", "groups"), ("adult", "plan", "year")
KINDS = (*FOR_CHILDREN, *FOR_ADULT)
PLANNED = (Order.PRACTICE, Order.NEED, Order.FAMILY)  # the orders that a plan can explain
_ONE_STEP = frozenset({"groups", *FOR_ADULT})  # of the progress bar


@dataclass(frozen=True, slots=True)
class Wanted:
    """An order: kinds of pages, for these children in this order, with the class's settings as text.

    ``rows`` are the year of these children, where that was asked for; ``formed`` is what stood when letters were
    looked at last, by the line of a child, for the plan.
    """

    kinds: tuple[str, ...]
    children: tuple[tuple[BookChild, Placed], ...]
    settings: Mapping[str, str]
    roster: Roster
    rows: tuple[ClassRow, ...] = ()
    formed: Formed = field(default_factory=lambda: NOTHING_FORMED)

    @property
    def steps(self) -> int:
        """Return how many steps the progress bar takes."""
        return max(1, sum(1 if kind in _ONE_STEP else len(self.children) for kind in self.kinds))


@dataclass
class Making:
    """An order being made: ``step`` is told of each child that is done.

    ``missed`` gathers (label, reason); ``remarks`` tells of children who are made, but not wholly as the list says.
    """

    wanted: Wanted
    press: Press = field(default_factory=Press)
    step: Callable[[], None] = lambda: None
    missed: list[tuple[str, str]] = field(default_factory=list)
    remarks: list[tuple[str, str]] = field(default_factory=list)
    made: list[Placed] = field(default_factory=list)

    def pages(self) -> Iterator[Page]:
        """Yield the pages of every kind."""
        makers = {"sheets": self._sheets, "cards": self._cards, "tiles": self._tiles, "groups": self._groups,
                  "adult": self._adult, "plan": self._plan, "year": self._year}
        for kind in sorted(self.wanted.kinds, key=list(makers).index):
            yield from makers[kind]()

    def _sheets(self) -> Iterator[Page]:
        for one, placed in self.wanted.children:
            work = Work(self.press)
            yield from work.sheets([placed], sheet_of_child(one, self.wanted.settings))
            self._note(work)
            self.step()

    def _note(self, work: Work) -> None:
        self.made += work.made
        self.missed += [(each.child.label, each.reason) for each in work.not_made]
        self.remarks += [(each.child.label, each.reason) for each in work.remarks]

    def _cards(self) -> Iterator[Page]:
        for one, _ in self.wanted.children:
            try:
                yield card_of(self.press, one, self.wanted.settings, None)
            except (MissingLetters, DoesNotFit) as error:
                self.missed.append((one.child.label, sentence(error)))
            self.step()

    def _tiles(self) -> Iterator[Page]:
        work = Work(self.press)
        yield from work.tiles(self._stepping(), tiles_of_class(self.wanted.settings))
        self.missed += [(each.child.label, each.reason) for each in work.not_made]

    def _stepping(self) -> Iterator[Placed]:
        for _, placed in self.wanted.children:
            yield placed
            self.step()

    def _groups(self) -> Iterator[Page]:
        sheet = sheet_of_class(self.wanted.settings)
        settings = GroupSettings(sheet.ruling, sheet.paper, sheet.binding, sheet.language, sheet.letters)
        for number in sorted({one.group for _, one in self.wanted.children if one.group is not None}):
            children = [one.child for _, one in self.wanted.children if one.group == number]
            shared = [letter for letter in shared_letters([child.practice for child in children])
                      if not self.press.alphabet.missing(letter)]
            named = [(drawable(self.press, child.label), child.practice) for child in children]
            yield group_page(self.press, number, named, shared, settings)
        self.step()

    def _adult(self) -> Iterator[Page]:
        work = Work(self.press)
        work.made = list(self.made) if "sheets" in self.wanted.kinds else [one for _, one in self.wanted.children]
        yield from work.summary(self.wanted.roster, sheet_of_class(self.wanted.settings))
        self.step()

    def _plan(self) -> Iterator[Page]:
        placed, sheet = [one for _, one in self.wanted.children], sheet_of_class(self.wanted.settings)
        by = Order(self.wanted.settings.get("order", Order.PRACTICE))
        settings = PlanSettings(sheet.paper, sheet.binding, by if by in PLANNED else Order.PRACTICE, sheet.language)
        weeks = letter_weeks([one.child.practice for one in placed])
        yield from plan_pages(self.press, placed, weeks, settings, self.wanted.formed)
        self.step()

    def _year(self) -> Iterator[Page]:
        yield from year_pages(self.press, self.wanted.rows, self.wanted.settings)
        self.step()


def card_of(press: Press, one: BookChild, settings: Mapping[str, str], size: CardSize | None) -> Page:
    """Return a child's card: of a size of its own, or (None) a sheet of the class's paper filled with cards.

    Raises MissingLetters or DoesNotFit.
    """
    card = card_of_child(one, settings, size or CardSize.INDEX_4X6)
    return card_for(press, one.child.practice, one.child.label, card, settings, size)


def card_for(press: Press, name: str, label: str, card: CardSettings, settings: Mapping[str, str],
             size: CardSize | None) -> Page:
    """Return a card for a name. Raises MissingLetters or DoesNotFit."""
    if size is None:
        return card_sheet(press, name, drawable(press, label), card, Paper(settings.get("paper", Paper.LETTER)))
    return card_page(press, name, drawable(press, label), card)


def sentence(error: Exception) -> str:
    """Return what an error says as a sentence."""
    words = str(error)
    return words[:1].upper() + words[1:] + "."


def of_ids(members: Sequence[tuple[BookChild, Placed]], ids: frozenset[int] | None,
           ) -> tuple[tuple[BookChild, Placed], ...]:
    """Return those members whose ids were chosen; None chooses all."""
    return tuple(pair for pair in members if ids is None or pair[0].id in ids)
