"""The page of the class: its order with reasons, how its pages look, what to print."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from flask import redirect, render_template, request, url_for
from markupsafe import Markup
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook.connect import stamp_of
from namewright.lines.ruling import DEFAULT_RULING, PRESETS, Ruling
from namewright.making.request import TO_KNOW
from namewright.message import Message, message
from namewright.pages.hue import COLOURS
from namewright.pages.ladder import MAX_TRACED
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.settings import Hand, Support
from namewright.web import screen_language
from namewright.web.desk import Member, class_settings, desk, members
from namewright.web.letter_forms import LETTERS, RUNGS, fields_of, shapes_of
from namewright.web.requests import FOR_ADULT, FOR_CHILDREN
from namewright.wording import languages

CHOICES: Mapping[str, tuple[str, ...]] = {
    "paper": tuple(Paper), "support": tuple(Support), "hand": tuple(Hand), "order": tuple(Order),
    "colour": tuple(COLOURS),
}


def again(problem: Message | Exception) -> tuple[str, int]:
    """Show the class with all that a form held, and what is wrong with it."""
    return str(page({**class_settings(), **fields_of(request.form)}, problem)), 422


def page(settings: Mapping[str, str], problem: Message | Exception | None = None) -> str | BaseResponse:
    """Show the class; where there is none yet, the place to paste one."""
    everyone = members()
    if not everyone:
        return redirect(url_for("roster.show"))
    first = next((one for one in everyone if str(one.id) == request.args.get("look")), everyone[0])
    ticked = frozenset(request.form.getlist("child"))
    return render_template(
        "class.html", member_list=_member_list(everyone, first, ticked), looked=first, settings=settings,
        problem=problem,
        choices={**CHOICES, "language": languages()},
        rulings=_rulings(), usual_ruling=DEFAULT_RULING, for_children=FOR_CHILDREN, to_know=TO_KNOW,
        for_adult=FOR_ADULT,
        groups=_groups(everyone),
        shapes=shapes_of(settings), letters=LETTERS, rungs=RUNGS, most_rungs=MAX_TRACED, wanted=_wanted(),
        in_doubt=sum(not one.placed.beats_known for one in everyone),
        ticked=ticked)


def _member_list(everyone: Sequence[Member], looked: Member, ticked: frozenset[str]) -> Markup:
    """Return the list of the children, made once for a class’s file that has not changed."""
    asked = ("members", stamp_of(desk().path), screen_language.language_of(request), looked.id, sorted(ticked))
    return Markup(desk().picture(asked, lambda _: render_template("_members.html", members=everyone, looked=looked,
                                                                   ticked=ticked)))


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
