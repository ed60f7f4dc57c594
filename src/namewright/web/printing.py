"""Printing: an order becomes one PDF made in the background, or pages on the screen that the browser prints."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import islice

from flask import Blueprint, Response, abort, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError
from namewright.making.make import Making
from namewright.making.request import Request
from namewright.message import Message, message
from namewright.web import answers
from namewright.web.answers import to_print
from namewright.web.class_page import again
from namewright.web.class_pdf import begin, missed, request_for
from namewright.web.desk import desk, members
from namewright.web.jobs import Job
from namewright.web.requests import KINDS
from namewright.web.settings_in_forms import keep_choices

pages = Blueprint("printing", __name__)
_MAX_ON_SCREEN = 60


def wanted(form: Mapping[str, str], lists: Mapping[str, list[str]]) -> Request:
    """Return what a form asks to print, with the settings that are kept."""
    chosen = frozenset(int(one) for one in lists["child"] if one.isdecimal())
    only = "ticked" in (form.get("who"), form.get("only"))
    return request_for([kind for kind in KINDS if kind in lists["what"]],
                       [one for one in members() if not only or one.id in chosen])


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
        return redirect(url_for("printing.on_screen", what=asked.kinds, child=_ids(asked)))
    return redirect(url_for("printing.job", key=begin(asked).id))


def _ids(asked: Request) -> list[int]:
    on_line = {one.one.child.line: one.id for one in members()}
    return [on_line[one.placed.child.line] for one in asked.members]


def _problem(asked: Request) -> Message | None:
    if not asked.kinds:
        return message("web.class.nothing")
    return None if asked.members else message("web.class.nobody")


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
    return answers.pdf(found.pdf(), found.file_name)


@pages.get("/print/pages")
def on_screen() -> str:
    """Show the pages themselves, each as large as its paper, for the browser to print."""
    asked = wanted({"who": "ticked"}, _lists())
    making = Making(asked)
    shown = [to_print(page) for page in islice(making.pages(), _MAX_ON_SCREEN)]
    return render_template("print.html", shown=shown, missed=missed(making.account))
