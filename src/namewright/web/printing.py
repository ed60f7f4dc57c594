"""Printing: an order becomes one PDF made in the background, or pages on the screen that the browser prints."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import islice

from flask import Blueprint, Response, abort, redirect, render_template, request, url_for
from markupsafe import Markup
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError
from namewright.classbook.growing import class_formed
from namewright.message import Message, message
from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.pages.plan.sentences import NOTHING_FORMED
from namewright.roster.children import Roster
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.web import guard
from namewright.web.desk import book, class_settings, desk, members
from namewright.web.jobs import Job
from namewright.web.room import again, keep_choices
from namewright.web.said import in_tongue
from namewright.web.tongue import reason, tongue_of
from namewright.web.what import KINDS, Making, Wanted, of_ids
from namewright.web.year import class_rows
from namewright.wording import FIRST, wording

pages = Blueprint("printing", __name__)
_MOST_ON_SCREEN = 60


def wanted(form: Mapping[str, str], lists: Mapping[str, list[str]]) -> Wanted:
    """Return what a form asks to print, with the settings that are kept."""
    chosen = frozenset(int(one) for one in lists["child"] if one.isdecimal())
    pairs = [(one.one, one.placed) for one in members()]
    kinds = tuple(kind for kind in KINDS if kind in lists["what"])
    only = "ticked" in (form.get("who"), form.get("only"))
    children, settings = of_ids(pairs, chosen if only else None), class_settings()
    rows = class_rows([one for one, _ in children], settings) if "year" in kinds else ()
    formed = class_formed(book(), [one for one, _ in children]) if "plan" in kinds else NOTHING_FORMED
    return Wanted(kinds, children, settings, _roster(), rows, formed)


def _roster() -> Roster:
    return read_roster(book().roster_text(), "the list", NamePart(class_settings().get("practise", NamePart.GIVEN)))


def _lists() -> Mapping[str, list[str]]:
    return {key: request.values.getlist(key) for key in ("child", "what")}


@pages.post("/print")
def start() -> tuple[str, int] | BaseResponse:
    """Keep the choices and begin to make the PDF; the same form sent twice makes one."""
    try:
        keep_choices(request.form)
    except ClassbookError as error:
        return again(error)
    asked = wanted(request.form, _lists())
    problem = _problem(asked)
    if problem:
        return again(problem)
    if "view" in request.form:
        return redirect(url_for("printing.on_screen", what=asked.kinds, child=[one.id for one, _ in asked.children]))
    nonce = request.form[guard.TOKEN_FIELD].partition(".")[0]
    language = class_settings().get("language", FIRST)
    return redirect(url_for("printing.job", key=begin(nonce, asked, language).id))


def _problem(asked: Wanted) -> Message | None:
    if not asked.kinds:
        return message("web.class.nothing")
    return None if asked.children else message("web.class.nobody")


def begin(key: str, asked: Wanted, language: str) -> Job:
    """Begin a job, or return the one that this key began."""
    spoken = tongue_of(request)

    def said(pairs: Sequence[tuple[str, str]]) -> list[str]:
        return list(dict.fromkeys(wording(spoken).say("web.job.missed", label=label, reason=in_tongue(why, spoken))
                                  for label, why in pairs))

    def make(job: Job) -> Iterator[Page]:
        def step() -> None:
            job.done += 1
        making = Making(asked, step=step)
        yield from making.pages()
        job.missed += said(making.missed)
        job.remarks += said(making.remarks)

    return desk().jobs.start(key, asked.steps, make, language)


@pages.get("/print/<key>")
def job(key: str) -> str | tuple[str, int]:
    """Show how far a PDF is."""
    found = desk().jobs.get(key)
    return render_template("job.html", job=found), 200 if found else 404


@pages.get("/print/<key>/state")
def state(key: str) -> str:
    """Return the part of the page that changes while the PDF is made."""
    return render_template("_job.html", job=_job(key))


def _job(key: str) -> Job:
    found = desk().jobs.get(key)
    if found is None:
        abort(404)
    return found


@pages.get("/print/<key>/pages.pdf")
def pdf(key: str) -> Response:
    """Return a finished PDF."""
    found = _job(key)
    if not found.ready:
        abort(404)
    return pdf_answer(found.pdf())


def pdf_answer(data: bytes) -> Response:
    """Return a PDF to be shown by the browser; its file name tells nothing about a child."""
    answer = Response(data, mimetype="application/pdf")
    answer.headers["Content-Disposition"] = 'inline; filename="name-practice.pdf"'
    return answer


@pages.get("/print/pages")
def on_screen() -> str:
    """Show the pages themselves, each as large as its paper, for the browser to print."""
    asked = wanted({"who": "ticked"}, _lists())
    making = Making(asked)
    shown = [drawn(page) for page in islice(making.pages(), _MOST_ON_SCREEN)]
    missed = [(label, reason(request, why)) for label, why in making.missed]
    return render_template("print.html", shown=shown, missed=missed, note=None)


def drawn(page: Page) -> tuple[str, Markup]:
    """Return a page's kind of paper, by the class name in the style sheet, and its drawing."""
    name = f"p{round(page.width_mm * 10)}x{round(page.height_mm * 10)}"
    return name, Markup(page_svg(page).partition("?>")[2] or page_svg(page))
