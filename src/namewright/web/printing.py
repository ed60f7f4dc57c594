"""Printing: an order becomes a PDF made in the background, or pages on the screen that the browser prints.

What children get and what is for the adult alone are two PDFs. The desk asks for parts of a page (``Accept:
text/x-part``) and shows them in its bar; without scripts the same forms lead to pages of their own.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import islice

from flask import Blueprint, Response, abort, redirect, render_template, request, url_for
from markupsafe import Markup
from werkzeug.datastructures import MultiDict
from werkzeug.wrappers import Response as BaseResponse

from namewright.making.account import Account
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.message import Message, Problem, message
from namewright.web import answers
from namewright.web.answers import to_print
from namewright.web.class_page import again
from namewright.web.class_pdf import begin, made_aloud, missed, parted, request_for
from namewright.web.counting import tally
from namewright.web.desk import Member, book, desk
from namewright.web.drafts import read_drafts
from namewright.web.jobs import Job
from namewright.web.requests import KINDS

pages = Blueprint("printing", __name__)
_MAX_ON_SCREEN = 60
_PART = "text/x-part"
Parts = list[tuple[Request, tuple[Kind, ...]]]


def wanted(form: MultiDict[str, str]) -> Parts:
    """Return what a form asks to print, of what is kept with the form's drafts over it: children's, then adult's.

    Raises Problem for settings that cannot be, and where nothing or nobody is asked for.
    """
    drafts = read_drafts(form)
    kinds = [kind for kind in KINDS if kind in form.getlist("what")]
    those = _those(form, drafts.members())
    if not kinds or not those:
        raise Problem("web.desk.nobody" if kinds else "web.desk.nothing")
    return parted(request_for(kinds, those, drafts.settings()))


def _those(form: MultiDict[str, str], everyone: Sequence[Member]) -> list[Member]:
    """Return for whom a form asks: everyone, the ticked, one child, or a table (``table-2``)."""
    who = form.get("who", "all")
    if who == "ticked":
        return [one for one in everyone if str(one.id) in form.getlist("child")]
    if who == "one":
        return [one for one in everyone if str(one.id) == form.get("one")]
    if who.startswith("table-"):
        return [one for one in everyone if f"table-{one.placed.group}" == who]
    return list(everyone)


def _for_the_bar() -> bool:
    return _PART in request.headers.get("Accept", "")


@pages.post("/print")
def start() -> str | tuple[str, int] | BaseResponse:
    """Begin to make the PDF, or the two; the same form sent twice makes them once."""
    try:
        asked = wanted(request.form)
        if "view" in request.form and not _for_the_bar():
            return redirect(url_for("printing.on_screen", what=request.form.getlist("what"), child=_ids(asked)))
        keys = [begin(*part).id for part in asked]
    except Problem as error:
        return _refused(error)
    if _for_the_bar():
        return _bar(keys)
    return redirect(url_for("printing.job", key=keys[0], and_=keys[1:]))


def _refused(error: Problem) -> tuple[str, int]:
    return (render_template("_bar_said.html", problem=error), 422) if _for_the_bar() else again(error)


def _ids(asked: Parts) -> list[int]:
    on_line = _on_line()
    return [on_line[one.placed.child.line] for one in asked[0][0].members]


def _on_line() -> Mapping[int, int]:
    return {one.child.line: one.id for one in book().children()}


@pages.post("/print/count")
def count() -> str | tuple[str, int]:
    """Tell how many pages an order has, as far as they can be counted in a moment."""
    try:
        return render_template("_count.html", tally=tally(wanted(request.form), _on_line()))
    except Problem as error:
        return render_template("_bar_said.html", problem=error), 422


@pages.get("/print/bar")
def bar() -> str:
    """Tell in the desk's bar how far the PDFs are."""
    return _bar(request.args.getlist("job"))


def _bar(keys: Sequence[str]) -> str:
    found = [each for key in keys if (each := desk().jobs.get(key)) is not None]
    return render_template("_bar_jobs.html", jobs=found, keys=keys,
                           finished=all(each.finished for each in found))


@pages.get("/print/<key>")
def job(key: str) -> str | tuple[str, int]:
    """Show how far a PDF is, and one that is made with it."""
    found = desk().jobs.get(key)
    also = [each for other in request.args.getlist("and_") if (each := desk().jobs.get(other)) is not None]
    return render_template("job.html", job=found, also=also), 200 if found else 404


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
    try:
        return answers.pdf(found.pdf(), found.file_name)
    except LookupError:  # not made yet, or gone with who was erased
        abort(404)


@pages.get("/print/pages")
def on_screen() -> str | tuple[str, int]:
    """Show the pages themselves, each as large as its paper, for the browser to print."""
    parts = wanted(MultiDict([("who", "ticked"), *request.args.items(multi=True)]))
    drawn = [_drawn(*part) for part in parts]
    return render_template("print.html", shown=[page for shown, _, _ in drawn for page in shown],
                           missed=[each for _, told, _ in drawn for each in told], most=_MAX_ON_SCREEN,
                           cut=any(cut for _, _, cut in drawn))


@pages.post("/print/sheets")
def sheets() -> str | tuple[str, int]:
    """Return an order's pages for the desk to hand to the printer: the children's, or apart from them the adult's.

    More than a screen holds are asked about first; with ``first`` in the form the first of them are returned.
    """
    try:
        parts = wanted(request.form)
        at = -1 if "adult" in request.form else 0
        shown, told, cut = _drawn(*parts[at])
    except Problem as error:
        return render_template("_bar_said.html", problem=error), 422
    if cut and "first" not in request.form:
        return render_template("_too_many.html", most=_MAX_ON_SCREEN, adult="adult" in request.form), 422
    return render_template("_sheets.html", shown=shown, missed=told, more=parts[1:] and at == 0)


def _drawn(asked: Request, silent: Sequence[Kind]) -> tuple[list[tuple[str, Markup]], list[Message], bool]:
    """Draw the pages of an order, as many as a screen holds; tell who is on none, and whether there are more."""
    making = Making(asked, account=Account())
    pages = made_aloud(making, asked.kinds, silent)
    shown = [to_print(page) for page in islice(pages, _MAX_ON_SCREEN)]
    cut = next(pages, None) is not None
    return shown, [message("web.job.missed", label=one.label, reason=one.reason)
                   for one in missed(making.account, _on_line(), asked.kinds)], cut
