"""The class: its order with reasons, how its pages look, what to print, and the page itself as it will print."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.datastructures import MultiDict
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, ClassbookError
from namewright.classbook.keys import CHILD_KEYS, checked_setting
from namewright.lines.ruling import DEFAULT_RULING, PRESETS, Ruling
from namewright.message import Message, message
from namewright.pages.ladder import MOST_TRACED
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.settings import Hand, Support
from namewright.web.class_settings import PAGE_KEYS, tried
from namewright.web.desk import Member, book, child_or_404, class_settings, desk, members
from namewright.web.home import svg
from namewright.web.letter_forms import LETTERS, RUNGS, fields_of, shapes_of
from namewright.web.pictures import CannotDraw, sheet_svg
from namewright.web.tongue import reason
from namewright.web.what import FOR_ADULT, FOR_CHILDREN
from namewright.wording import languages

pages = Blueprint("room", __name__)
CHOICES: Mapping[str, tuple[str, ...]] = {
    "paper": tuple(Paper), "support": tuple(Support), "hand": tuple(Hand), "language": languages(),
    "order": tuple(Order),
}


@pages.get("/class")
def show() -> str | BaseResponse:
    """Show the class; where there is none yet, the place to paste one."""
    return _page(class_settings())


def again(problem: Message | Exception) -> tuple[str, int]:
    """Show the class with all that a form held, and what is wrong with it."""
    return str(_page({**class_settings(), **fields_of(request.form)}, problem)), 422


def _page(settings: Mapping[str, str], problem: Message | Exception | None = None) -> str | BaseResponse:
    everyone = members()
    if not everyone:
        return redirect(url_for("roster.show"))
    first = next((one for one in everyone if str(one.id) == request.args.get("look")), everyone[0])
    return render_template(
        "class.html", members=everyone, looked=first, settings=settings, choices=CHOICES, problem=problem,
        rulings=_rulings(), usual_ruling=DEFAULT_RULING, for_children=FOR_CHILDREN, for_adult=FOR_ADULT,
        groups=_groups(everyone),
        shapes=shapes_of(settings), letters=LETTERS, rungs=RUNGS, most_rungs=MOST_TRACED, wanted=_wanted(),
        ticked=frozenset(request.form.getlist("child")))


def _wanted() -> frozenset[str]:
    """Return the kinds of pages to be ticked: those of the form that was sent, or the sheets."""
    return frozenset(request.form.getlist("what") if request.method == "POST" else ("sheets",))


def _rulings() -> dict[str, list[Ruling]]:
    """Return the rulings by the country where ones like them are used: the first part of their names."""
    found: dict[str, list[Ruling]] = {}
    for one in PRESETS.values():
        found.setdefault(one.name.partition("-")[0], []).append(one)
    return found


def _groups(everyone: Sequence[Member]) -> list[tuple[Message, tuple[int, ...]]]:
    """Return what each group that shares letters is called, and who is in it; none where all stand in one."""
    found: dict[int, list[Member]] = {}
    for one in everyone:
        found.setdefault(one.placed.group, []).append(one)
    return [(message("web.class.group", number=number, names=tuple(one.label for one in some)),
             tuple(one.id for one in some)) for number, some in sorted(found.items())] if len(found) > 1 else []


def asked_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the class's settings with those of a form over them; one that cannot be set raises ClassbookError.

    A form that shows a choice sends it, but a box that is not ticked sends nothing.
    """
    settings, asked = dict(class_settings()), fields_of(form)
    for key in PAGE_KEYS:
        text = checked_setting(key, asked.get(key, ""), of_class=True)
        settings.pop(key, None)
        if text is not None:
            settings[key] = text
    return settings


def keep_choices(form: MultiDict[str, str]) -> None:
    """Keep the choices of a form for the class. Raises ClassbookError for one that cannot be."""
    asked = fields_of(form)
    book().set_class_settings({key: asked.get(key, "") for key in PAGE_KEYS})


@pages.post("/class/choices")
def keep() -> tuple[str, int] | BaseResponse:
    """Keep the choices, and show the class again; where one cannot be, with what was chosen and why not."""
    try:
        keep_choices(request.form)
    except ClassbookError as error:
        return again(error)
    told = desk().tell([message("web.class.kept")])
    return redirect(url_for("room.show", told=told))


@pages.post("/class/order")
def order() -> BaseResponse:
    """Keep the order of the class."""
    book().set_class_setting("order", request.form.get("order", ""))
    return redirect(url_for("room.show"))


@pages.get("/picture/<int:child_id>/page.svg")
def picture(child_id: int) -> Response:
    """Draw a child's page; with ``trial=class`` or ``trial=own`` as if the settings in the address were kept."""
    one, settings = child_or_404(child_id), class_settings()
    try:
        if request.args.get("trial") == "class":
            settings = asked_settings(request.args)
            one = tried(one, settings, one.settings)
        elif request.args.get("trial") == "own":
            one = tried(one, settings, own_settings(request.args))
        return drawn(one, settings)
    except (CannotDraw, ValueError) as error:
        return Response(reason(request, error), 422, mimetype="text/plain")


def own_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the child's settings in a form; one that cannot be set raises ClassbookError."""
    asked = fields_of(form)
    found = {key: checked_setting(key, asked.get(key, ""), of_class=False) for key in CHILD_KEYS}
    return {key: text for key, text in found.items() if text is not None}


def drawn(one: BookChild, settings: Mapping[str, str]) -> Response:
    """Draw a child's page with these settings. Raises CannotDraw."""
    asked = ("sheet", one.child, one.tuning, sorted(one.settings.items()), sorted(settings.items()))
    return svg(desk().picture(asked, lambda press: sheet_svg(press, one, settings)))
