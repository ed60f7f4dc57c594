"""A class of twelve invented children, its timetable and its plan, for the tests of the plan's parts."""

from __future__ import annotations

from namewright.pages.page import Page
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, completed, order_class
from namewright.practice.timetable import Lookout, Timetable, timetable
from namewright.roster.children import Child

NAMES = ("Bo", "Zoë", "Ava", "Noor", "Mira", "Íñigo", "Christopherson", "Ẹ̀bun", "Mary-Kate", "deShawn", "Łucja", "AJ")


def child(name: str, line: int) -> Child:
    return Child(name, name, name, "", line)


def table_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE, **asked: object) -> Timetable:
    children = [child(name, line) for line, name in enumerate(names, start=1)]
    return timetable(completed(order_class(children, order)), Lookout(**asked))  # type: ignore[arg-type]


def plan_of(setter: Typesetter, names: tuple[str, ...] | list[str], settings: PlanSettings | None = None,
            weeks: int = 10) -> tuple[Page, ...]:
    settings = settings or PlanSettings()
    return plan_pages(setter, table_of(names, settings.order, weeks=weeks), settings)
