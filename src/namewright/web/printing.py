"""Printing: an order becomes one PDF made in the background, or pages on the screen that the browser prints."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from itertools import islice

from flask import Blueprint, Response, abort, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError, grouping
from namewright.making.account import Account
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of, roster_of
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.message import Message, message
from namewright.pages.page import Page
from namewright.web import answers, guard
from namewright.web.answers import to_print
from namewright.web.class_page import again
from namewright.web.desk import book, class_settings, desk, members
from namewright.web.jobs import Job
from namewright.web.requests import KINDS
from namewright.web.settings_in_forms import keep_choices

pages = Blueprint("printing", __name__)
_MAX_ON_SCREEN = 60


def wanted(form: Mapping[str, str], lists: Mapping[str, list[str]]) -> Request:
    """Return what a form asks to print, with the settings that are kept."""
    chosen = frozenset(int(one) for one in lists["child"] if one.isdecimal())
    kinds = tuple(kind for kind in KINDS if kind in lists["what"])
    only = "ticked" in (form.get("who"), form.get("only"))
    those = [one for one in members() if not only or one.id in chosen]
    noted = Kind.YEAR in kinds or Kind.PLAN in kinds
    asked = members_of(book(), [one.one for one in those], [one.placed for one in those], notes=noted)
    taught = grouping.taught_before(book(), grouping.monday_of(date.today()))
    return Request(kinds, asked, read_choices(class_settings()), roster=roster_of(book()), fill=True, taught=taught)


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
    nonce = request.form[guard.TOKEN_FIELD].partition(".")[0]
    language = asked.settings.language
    return redirect(url_for("printing.job", key=begin(nonce, asked, language).id))


def _ids(asked: Request) -> list[int]:
    on_line = {one.one.child.line: one.id for one in members()}
    return [on_line[one.placed.child.line] for one in asked.members]


def _problem(asked: Request) -> Message | None:
    if not asked.kinds:
        return message("web.class.nothing")
    return None if asked.members else message("web.class.nobody")


def begin(key: str, asked: Request, language: str) -> Job:
    """Begin a job, or return the one that this key began."""
    def make(job: Job) -> Iterator[Page]:
        def step() -> None:
            job.done += 1
        account = Account(step)
        yield from Making(asked, account=account).pages()
        job.missed += _missed(account)
        job.remarks += [message("web.job.missed", label=one.child.label, reason=one.told)
                        for one in account.remarks]

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
    return answers.pdf(found.pdf())


@pages.get("/print/pages")
def on_screen() -> str:
    """Show the pages themselves, each as large as its paper, for the browser to print."""
    asked = wanted({"who": "ticked"}, _lists())
    making = Making(asked)
    shown = [to_print(page) for page in islice(making.pages(), _MAX_ON_SCREEN)]
    return render_template("print.html", shown=shown, missed=_missed(making.account), note=None)


def _missed(account: Account) -> list[Message]:
    """Tell of every child that was not made, each reason once."""
    return list(dict.fromkeys(message("web.job.missed", label=one.child.label, reason=one.cause.message)
                              for one in account.not_made))
