"""One week with the class on the screen: who sits with the adult when, at which table, and what the adult wishes.

Wishes, the number of tables and of letters a week are kept in the class's file. Making the plan keeps what it says,
too: the tables, so that children stay together, and the letters of the week, so that later weeks come back to them.
"""

from __future__ import annotations

from collections.abc import Sequence

from flask import Blueprint, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError, grouping
from namewright.making.planning import timetable_of
from namewright.making.request import Kind
from namewright.message import Message, Problem, message
from namewright.pages.growth import day_said
from namewright.pages.plan.sentences import letters_said, next_week_said, table_said, this_week_said
from namewright.practice.ordering import unmet
from namewright.practice.timetable import Progress, Timetable
from namewright.practice.weeks import MAX_A_WEEK
from namewright.web.class_pdf import begin, request_for, this_monday
from namewright.web.desk import Member, book, class_settings, desk, members
from namewright.web.finding import by_alphabet
from namewright.web.sent_number import sent_number

pages = Blueprint("week", __name__)
_KEPT = ("tables", "letters_per_week")
_SEATS = {"together": True, "apart": False, "either": None}


@pages.get("/class/week")
def show() -> str | BaseResponse:
    """Show the week, the tables and the wishes."""
    return _page()


def _page(problem: Problem | None = None) -> str | BaseResponse:
    everyone = members()
    if not everyone:
        return redirect(url_for("roster.show"))
    plan = timetable_of(request_for((Kind.PLAN,), everyone))
    weeks = plan.weeks.weeks
    return render_template(
        "week.html", plan=plan, problem=problem, settings=class_settings(), everyone=by_alphabet(everyone),
        monday=day_said(this_monday()), paces=range(1, MAX_A_WEEK + 1), most=len(everyone),
        now=this_week_said(weeks[0]) if weeks else message("page.plan.monday_all_formed"),
        review=letters_said(weeks[0].review) if weeks else (),
        coming=next_week_said(plan, weeks[1]) if weeks[1:] else None,
        tables=[table_said(plan, table) for table in plan.tables] if plan.tables[1:] else [], letters_of=letters_of,
        seats=_seats(everyone), unmet=_unmet(plan))


def letters_of(child: Progress) -> Message | str:
    """Return a child's letters of this week; the whole name from memory where all of them stand."""
    if child.next:
        return "  ".join(child.next)
    return message("page.plan.whole_name" if child.letters else "page.plan.no_letters")


def _seats(everyone: Sequence[Member]) -> list[tuple[int, int, Message]]:
    """Return what was said of two children: their numbers, and the wish in words."""
    labels = {one.id: one.label for one in everyone}
    return [(one, other, message(f"web.week.{'together' if both else 'apart'}_said", one=labels[one],
                                 other=labels[other])) for one, other, both in book().seats()]


def _unmet(plan: Timetable) -> list[Message]:
    wishes = grouping.wishes(book(), book().children())
    return [message("command.plan.not_met", one=one, other=other)
            for one, other in unmet([each.placed for each in plan.children], wishes)]


@pages.post("/class/week")
def keep() -> str | tuple[str, int] | BaseResponse:
    """Keep how many tables there are, and how many letters a week takes up."""
    try:
        book().set_class_settings({key: request.form.get(key, "") for key in _KEPT})
    except ClassbookError as error:
        return str(_page(error)), 422
    return _back(message("web.week.kept"))


@pages.post("/class/week/seats")
def seat() -> str | tuple[str, int] | BaseResponse:
    """Keep that two children shall sit together, or apart, or as the plan finds best."""
    one, other = (sent_number(request.form.get(field, "")) for field in ("one", "other"))
    wish = request.form.get("wish", "")
    try:
        if wish not in _SEATS or one is None or other is None:
            raise Problem("web.week.choose_two")
        book().seat(one, other, _SEATS[wish])
    except Problem as error:
        return str(_page(error)), 422
    return _back(message("web.week.seat_kept"))


@pages.post("/class/week/plan")
def make() -> BaseResponse:
    """Keep the tables and the letters of this week, and begin to make the plan."""
    kinds = (Kind.GROUPS, Kind.PLAN) if "sheets" in request.form else (Kind.PLAN,)
    return redirect(url_for("printing.job", key=begin(request_for(kinds, members())).id))


def _back(told: Message) -> BaseResponse:
    return redirect(url_for("week.show", told=desk().tell([told])))
