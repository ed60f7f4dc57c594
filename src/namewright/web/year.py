"""What was noted, on paper: a child's year, a page for a talk, every look as a table; and the year of the class."""

from __future__ import annotations

from collections.abc import Sequence

from flask import Blueprint, Response, abort, request

from namewright.classbook import BookChild
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of
from namewright.making.noted import record_of_member
from namewright.making.request import Kind, Member, Request
from namewright.output.record_csv import records_csv
from namewright.practice.ordering import Order, order_class
from namewright.web.answers import file_name, pdf, pdf_of
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.requests import drawn

pages = Blueprint("year", __name__)
_FOR_FAMILY = (Kind.GROWTH, Kind.TALK)


def _noted(child_id: int) -> BookChild:
    """Return a child of whom something was noted; aborts with 404 for any other."""
    one = child_or_404(child_id)
    if not book().observations(one.id):
        abort(404)
    return one


@pages.get("/child/<int:child_id>/year.pdf")
def growth(child_id: int) -> Response:
    """Return the child's year as a page for the family."""
    return _pdf(Kind.GROWTH, [_noted(child_id)])


@pages.get("/child/<int:child_id>/talk.pdf")
def talk(child_id: int) -> Response:
    """Return a page for a talk with the child's family; with ``words`` also what was noted in words."""
    return _pdf(Kind.TALK, [_noted(child_id)])


@pages.get("/child/<int:child_id>/record.pdf")
def record(child_id: int) -> Response:
    """Return every look at the child's name as a table for a specialist."""
    return _pdf(Kind.RECORD, [_noted(child_id)])


@pages.get("/child/<int:child_id>/record.csv")
def record_csv(child_id: int) -> Response:
    """Return the same for a spreadsheet."""
    (one,) = _members([_noted(child_id)])
    answer = Response(records_csv([record_of_member(one)]), mimetype="text/csv")
    answer.headers["Content-Disposition"] = f'attachment; filename="{file_name([Kind.RECORD], "csv")}"'
    return answer


@pages.get("/class/year.pdf")
def of_class() -> Response:
    """Return the year of the class as pages for the adult."""
    children = book().children()
    if not children:
        abort(404)
    return _pdf(Kind.YEAR, children)


def _pdf(kind: Kind, children: Sequence[BookChild]) -> Response:
    asked = Request((kind,), _members(children), read_choices(class_settings()), words="words" in request.args)
    with desk().lock:
        made = drawn(desk().setter, asked)
    spoken = next((one.home for one in asked.members if kind in _FOR_FAMILY and one.home), asked.settings.language)
    return pdf(pdf_of(made, spoken), file_name([kind]))


def _members(children: Sequence[BookChild]) -> tuple[Member, ...]:
    placed = order_class([one.child for one in children], Order.ROSTER)
    return members_of(book(), children, placed, notes=True, held=True)
