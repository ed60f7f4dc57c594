"""A copy of the class to keep elsewhere, and back again: the class's own file, the same as the command line's.

A copy that is opened takes the place of the class that is here where there is one alone (inside a browser), or where
nobody is in it yet; else it stands beside the others as a class of its own, so that nothing is written over.
"""

from __future__ import annotations

import os
from contextlib import suppress
from dataclasses import replace
from datetime import date
from pathlib import Path

from flask import Blueprint, Response, abort, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import Classbook, ClassbookError
from namewright.classbook.drafts import Draft
from namewright.message import Message, message
from namewright.patterns import pattern
from namewright.web.class_files import file_name, there_are_several
from namewright.web.desk import book, class_settings, close_book, desk

pages = Blueprint("copies", __name__)
_DAY = pattern(r"-?\d{4}-\d\d-\d\d$")


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
    try:
        path = _written(_DAY.sub("", Path(sent.filename.replace("\\", "/")).stem), sent.read())
    except OSError:
        return _page(message("web.site.no_copy")), 422
    try:
        Classbook.open(path, create=False).close()
    except ClassbookError as error:
        path.unlink(missing_ok=True)
        return _page(error.message), 422
    typed = None
    if _takes_the_place():
        typed = book().draft()
        close_book()
        os.replace(path, desk().path)
        path = desk().path
    desk().turn_to(path)
    waits = typed is not None and _waits(path, typed)
    told = [message("web.site.opened"), *([message("web.site.list_waits")] if waits else [])]
    return redirect(url_for("home.first", told=desk().tell(told)))


def _waits(path: Path, typed: Draft) -> bool:
    """Keep a list that was typed in the class that gave way as the draft of a copy that has none; say whether it is."""
    with Classbook.open(path, create=False) as copy:
        if copy.draft() is not None:
            return False
        copy.keep_draft(replace(typed, settled=frozenset(), roster=copy.roster_id(), steps=0), typed=False)
    return True


def _takes_the_place() -> bool:
    """Say whether a copy is put in the place of the class that is open."""
    return not there_are_several() or not (book().children(left=True) or book().draft())


def _written(name: str, data: bytes) -> Path:
    """Write a copy into the folder of the classes, under a name that no file has. Raises OSError.

    Two who open copies of one name at the same moment get a file each.
    """
    while True:
        path = file_name(name, desk().path.absolute().parent)
        with suppress(FileExistsError):
            _write(path, data)
            return path


def _write(path: Path, data: bytes) -> None:
    """Write a new file that only its owner may read, all of it or none. Raises OSError."""
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
    except OSError:
        path.unlink(missing_ok=True)
        raise


def _page(problem: Message | None) -> str:
    return render_template("copy.html", problem=problem, count=len(book().children()) if _takes_the_place() else 0)
