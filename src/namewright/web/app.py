"""The application: its rules, its words, its pages, and what is said when something goes wrong.

``create_app(config)`` takes CLASS (the path of the class's file), HOSTS (the addresses that are ours, each with its
port), to share the class PASSPHRASE, KEY (what lets in otherwise; drawn where none is given), SPOKEN (the language of
what is said on stderr), and IN_BROWSER where Python itself runs inside a browser: no threads, no processes, nobody else
to keep out, and the screens stand in a frame. Nothing about a child is written to a log: of an error only its kind and
its place in the code are told.
"""

from __future__ import annotations

import secrets
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from flask import Flask, Response, current_app, g, render_template, request
from werkzeug.exceptions import HTTPException, TooManyRequests

from namewright.message import Problem, message, together
from namewright.web import (
    aide,
    clapping,
    classes,
    copies,
    double,
    erase,
    family,
    gate,
    guard,
    home,
    key,
    lines,
    next_month,
    printing,
    room,
    screen_language,
    week,
    year,
)
from namewright.web import list_review as roster
from namewright.web import notes as seen
from namewright.web.class_files import listed
from namewright.web.desk import KEY, Desk, book, class_mark, close_book, desk
from namewright.web.jobs import BusyError, where
from namewright.web.key import KNOWN
from namewright.wording import FIRST, languages, wording

MAX_BYTES = 3_000_000  # a class's spreadsheet is a hundredth of it
MAX_FORM_BYTES = 400_000
MAX_FIELDS = 1000
_TYPED = ("text", "line", "letters", "note")  # what somebody would not like to type again
_SAID = {400: "failed", 403: "refused", 404: "gone", 405: "method", 413: "large", 429: "wait"}


class Answer(Response):
    """An answer in UTF-8, whatever it tells: the name of a file may hold bytes that are no text."""

    def set_data(self, value: bytes | str) -> None:
        """Take what is to be sent."""
        super().set_data(value.encode("utf-8", "backslashreplace") if isinstance(value, str) else value)


class QuietFlask(Flask):
    """Flask that tells of an error only its kind and place: the message and the request may hold a name."""

    response_class = Answer

    def log_exception(self, exc_info: Any) -> None:
        """Say on stderr that something failed, and where in the code."""
        told = wording(self.config["SPOKEN"]).say("command.open.page_failed", where=where(exc_info[1]))
        print(f"namewright: {told}", file=sys.stderr)


def create_app(config: Mapping[str, Any]) -> Flask:
    """Return the application for one class. Raises KeyError where CLASS or HOSTS is missing."""
    app = QuietFlask("namewright.web")
    app.config.update(MAX_CONTENT_LENGTH=MAX_BYTES, MAX_FORM_MEMORY_SIZE=MAX_FORM_BYTES,
                      MAX_FORM_PARTS=MAX_FIELDS, PASSPHRASE="", KEY="", SPOKEN=FIRST, IN_BROWSER=False)
    app.config.from_mapping(config)
    app.extensions[KEY] = Desk(Path(app.config["CLASS"]))
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    app.teardown_request(close_book)
    app.config["KEY"] = app.config["KEY"] or secrets.token_urlsafe(32)
    guard.install(app, app.config["HOSTS"])
    if app.config["PASSPHRASE"]:
        gate.install(app, app.config["PASSPHRASE"], app.config["KEY"])
    elif not app.config["IN_BROWSER"]:
        key.install(app, app.config["KEY"])
    guard.install_forms(app, guard.Seal(), class_mark)
    for pages in (home, roster, room, printing, aide, lines, seen, year, family, erase, double, week, clapping,
                  next_month, copies, classes):
        app.register_blueprint(pages.pages)
    app.context_processor(_shell)
    _say_errors(app)
    return app


def _shell() -> dict[str, Any]:
    """Return what every page needs: its language, its words, its menu."""
    spoken, inside = screen_language.language_of(request), current_app.config["IN_BROWSER"]
    notices = desk().told(request.args.get("told", ""))
    names = {one: wording(one).say("web.name") for one in screen_language.screen_languages()}
    of_paper = {one: wording(one).say("page.language") for one in languages()}
    return {"shared": bool(current_app.config["PASSPHRASE"]), "known": inside or g.get(KNOWN, False),
            "in_browser": inside, "notices": notices, "saved_list": _saved_list, "classes": listed,
            "t": wording(spoken).say,
            "together": together, "screen_language": spoken, "screen_languages": names, "paper_languages": of_paper,
            "told": wording(spoken).sentence}


def _saved_list() -> int:
    """Return the number of the list that was saved just before this page, 0 where none was or it cannot go back."""
    return book().roster_id() if "undo" in request.args and book().roster_saved() else 0


def _say_errors(app: Flask) -> None:
    app.register_error_handler(HTTPException, _http_problem)
    app.register_error_handler(Problem, _problem)
    app.register_error_handler(BusyError, lambda _: _http_problem(TooManyRequests()))
    app.register_error_handler(guard.StaleForm, _send_again)
    app.register_error_handler(guard.OtherClass, _other_class)
    app.register_error_handler(500, _http_problem)


def _http_problem(error: HTTPException) -> Any:
    if error.response is not None:
        return error.response
    code = error.code or 500
    return render_template("problem.html", problem=message(f"web.problem.{_SAID.get(code, 'failed')}")), code


def _problem(error: Problem) -> tuple[str, int]:
    return render_template("problem.html", problem=error), 409


def _send_again(_: guard.StaleForm) -> tuple[str, int]:
    """Show what an older form held, ready to be sent once more: only our own pages come so far."""
    return render_template("stale.html", fields=_fields(), had_file=bool(request.files)), 403


def _fields() -> list[tuple[str, str]]:
    ours = (guard.TOKEN_FIELD, guard.CLASS_FIELD)
    return [(key, text) for key, text in request.form.items(multi=True) if key not in ours]


def _other_class(_: guard.OtherClass) -> tuple[str, int]:
    """Say that a form belongs to another class, and keep what was typed for it on the page."""
    typed = [text for key, text in _fields() if key in _TYPED and text.strip()]
    return render_template("other.html", fields=_fields(), typed="\n".join(typed), file=desk().path.name,
                           of=request.form.get(guard.CLASS_FIELD, "")), 409
