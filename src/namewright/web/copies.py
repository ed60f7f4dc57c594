"""A class kept inside a browser: a copy to keep elsewhere, and back again. Elsewhere the file itself is at hand."""

from __future__ import annotations

import os
from datetime import date

from flask import Blueprint, Response, abort, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import Classbook, ClassbookError
from namewright.message import Message, message
from namewright.web.desk import book, close_book, desk

pages = Blueprint("copies", __name__)


@pages.before_request
def only_in_a_browser() -> None:
    """Answer nothing where the class's file lies on a disk of the user's own."""
    if not current_app.config["IN_BROWSER"]:
        abort(404)


@pages.get("/copy/class.db")
def save() -> Response:
    """Return the class's file, the same as the command line's; its name tells the day and no child."""
    book()  # makes and mends the file where need be
    close_book()
    answer = Response(desk().path.read_bytes(), mimetype="application/vnd.sqlite3")
    answer.headers["Content-Disposition"] = f'attachment; filename="class-{date.today():%Y-%m-%d}.db"'
    return answer


@pages.get("/copy")
def choose() -> str:
    """Show the place to open a copy."""
    return _page(None)


@pages.post("/copy")
def take() -> tuple[str, int] | BaseResponse:
    """Put a copy in the place of the class that is here; what is no class of ours changes nothing."""
    sent = request.files.get("file")
    if sent is None or not sent.filename:
        return _page(message("web.site.no_file")), 422
    fresh = desk().path.with_name("opened.db")
    try:
        fresh.write_bytes(sent.read())
        Classbook.open(fresh, create=False).close()
    except ClassbookError as error:
        fresh.unlink(missing_ok=True)
        return _page(error.message), 422
    close_book()
    desk().forget()
    os.replace(fresh, desk().path)
    return redirect(url_for("home.first", told=desk().tell([message("web.site.opened")])))


def _page(problem: Message | None) -> str:
    return render_template("copy.html", problem=problem, count=len(book().children()))
