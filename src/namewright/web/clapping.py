"""The beats of the names: where they are in doubt, one tap sets them right; the language of each name, and of all.

What is set here also says where a long name is broken over two rows. Out of scope: how beats are found (``names``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from flask import Blueprint, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError
from namewright.message import Message, Problem, message
from namewright.names.beats import NAMES_IN, Spoken, readings, typed
from namewright.names.clusters import clusters
from namewright.web.desk import Member, book, child_or_404, class_settings, desk, members
from namewright.wording import FIRST

pages = Blueprint("clapping", __name__)
MAX_READINGS = 4
_OWN = ("beats", "names_in")


@dataclass(frozen=True, slots=True)
class Clapped:
    """A child's name as it is clapped: its beats as typed, in doubt or not, and other ways to clap it."""

    id: int
    label: str
    beats: str
    doubtful: bool
    readings: tuple[str, ...]
    own: Mapping[str, str]


@pages.get("/class/beats")
def show() -> str | BaseResponse:
    """Show the names with their beats, those in doubt first."""
    return _page()


def _page(problem: Problem | None = None, tried: int | None = None) -> str | BaseResponse:
    everyone = members()
    if not everyone:
        return redirect(url_for("roster.show"))
    clapped = [_clapped(one) for one in everyone if one.placed.child.practice.strip()]
    return render_template("beats.html", doubtful=[one for one in clapped if one.doubtful], problem=problem,
                           tried=tried, sure=[one for one in clapped if not one.doubtful], languages=NAMES_IN,
                           names_in=class_settings().get("names_in", ""))


def _clapped(one: Member) -> Clapped:
    child, settings = one.one.child, class_settings()
    spoken = Spoken(child.names_in or settings.get("names_in"), settings.get("language", FIRST), child.beats)
    doubtful = not one.placed.beats_known
    ways = [typed(parts) for parts in readings(clusters(child.practice), spoken)] if doubtful else []
    return Clapped(one.id, one.label, typed(one.placed.beats), doubtful, tuple(ways[:MAX_READINGS]),
                   {"beats": child.beats, "names_in": child.names_in})


@pages.post("/class/beats")
def keep_language() -> BaseResponse:
    """Keep the language of the class's names."""
    book().set_class_settings({"names_in": request.form.get("names_in", "")})
    return _back(message("web.beats.language_kept"))


@pages.post("/child/<int:child_id>/beats")
def keep(child_id: int) -> str | tuple[str, int] | BaseResponse:
    """Keep a child's beats or the language of its name, whichever the form says."""
    one = child_or_404(child_id)
    try:
        book().set_settings(one.id, {key: request.form[key] for key in _OWN if key in request.form},
                            who=request.form.get("who", ""))
    except ClassbookError as error:
        return str(_page(error, child_id)), 422
    return _back(message("web.beats.kept", label=one.child.label))


def _back(told: Message) -> BaseResponse:
    return redirect(url_for("clapping.show", told=desk().tell([told])))
