"""Requests as the screens put them together, from what is kept for the class and each child."""

from __future__ import annotations

from collections.abc import Mapping

from namewright.classbook import BookChild
from namewright.making.choices import read_choices
from namewright.making.from_book import member_of
from namewright.making.make import made_at_once
from namewright.making.request import TO_KNOW, Kind, Request, listed
from namewright.message import Problem
from namewright.pages.page import Page
from namewright.pages.paper import CardSize
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.children import Child

FOR_CHILDREN = (Kind.SHEETS, Kind.CARDS, Kind.TILES, Kind.GROUPS)
FOR_ADULT = (Kind.ADULT, Kind.PLAN, Kind.YEAR, Kind.ANSWERS)
KINDS = (*FOR_CHILDREN, *TO_KNOW, *FOR_ADULT)


class CannotDraw(Problem):
    """A page or row cannot be made; ``cause`` is what stood in the way."""

    def __init__(self, cause: Problem) -> None:
        super().__init__(cause.message)
        self.cause = cause


def of_child(kind: Kind, one: BookChild, settings: Mapping[str, str], size: CardSize | None = None) -> Request:
    """Return a request for one child of the class; without a ``size``, cards fill a sheet.

    Raises Problem for settings that cannot be.
    """
    member = member_of(one, order_class([one.child])[0])
    return Request((kind,), (member,), read_choices(settings), card=size or CardSize.INDEX_4X6, fill=size is None)


def of_visitor(kind: Kind, child: Child, settings: Mapping[str, str], size: CardSize | None = None) -> Request:
    """Return the same for a child who is not in the class."""
    return Request((kind,), (listed(order_class([child])[0]),), read_choices(settings),
                   card=size or CardSize.INDEX_4X6, fill=size is None)


def drawn(setter: Typesetter, request: Request) -> tuple[Page, ...]:
    """Return the pages of a request. Raises CannotDraw."""
    try:
        return made_at_once(request, setter)
    except Problem as error:
        raise CannotDraw(error) from error
