"""A copy of the class to keep elsewhere, and back again: the class's own file, the same as the command line's.

A copy that is opened takes the place of the class that is here where there is one alone (inside a browser), or where
nobody is in it yet; else it stands beside the others as a class of its own, so that nothing is written over.
"""

from __future__ import annotations

import os
import re
from datetime import date
from pathlib import Path

from flask import Blueprint, Response, abort, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import Classbook, ClassbookError
from namewright.message import Message, message
from namewright.web.class_files import file_name, there_are_several
from namewright.web.desk import book, class_settings, close_book, desk

pages = Blueprint("copies", __name__)
_DAY = re.compile(r"-?\d{4}-\d\d-\d\d$")


@pages.before_request
def only_who_has_the_file() -> None:
    """Answer nothing where a class is shared: who was let in by a passphrase does not take the file away."""
    if current_app.config["PASSPHRASE"]:
        abort(404)


@pages.get("/copy/class.db")
def save() -> Response:
    """Return the class's file; its name tells the class and the day, and no child."""
    name = file_name(class_settings().get("title", "")).stem
    answer = Response(book().copy(), mimetype="application/vnd.sqlite3")
    answer.headers["Content-Disposition"] = f'attachment; filename="{name}-{date.today():%Y-%m-%d}.db"'
    return answer


@pages.get("/copy")
def choose() -> str:
    """Show the place to open a copy."""
    return _page(None)


@pages.post("/copy")
def take() -> tuple[str, int] | BaseResponse:
    """Open a copy; what is no class of ours changes nothing."""
    sent = request.files.get("file")
    if sent is None or not sent.filename:
        return _page(message("web.site.no_file")), 422
    folder = desk().path.absolute().parent
    path = file_name(_DAY.sub("", Path(sent.filename.replace("\\", "/")).stem), folder)
    try:
        _write(path, sent.read())
        Classbook.open(path, create=False).close()
    except (ClassbookError, OSError) as error:
        path.unlink(missing_ok=True)
        return _page(error.message if isinstance(error, ClassbookError) else message("web.site.no_copy")), 422
    if _takes_the_place():
        close_book()
        os.replace(path, desk().path)
        path = desk().path
    desk().turn_to(path)
    return redirect(url_for("home.first", told=desk().tell([message("web.site.opened")])))


def _takes_the_place() -> bool:
    """Say whether a copy is put in the place of the class that is open."""
    return not there_are_several() or not (book().children(left=True) or book().draft())


def _write(path: Path, data: bytes) -> None:
    """Write a new file that only its owner may read. Raises OSError."""
    with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(data)


def _page(problem: Message | None) -> str:
    return render_template("copy.html", problem=problem, count=len(book().children()) if _takes_the_place() else 0)
