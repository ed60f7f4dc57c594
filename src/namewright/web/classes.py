"""Several classes: open another, begin one, name this one, remove an empty one. A file each, in one folder."""

from __future__ import annotations

from flask import Blueprint, abort, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from namewright.classbook import Classbook, ClassbookError
from namewright.message import Message, message
from namewright.web.class_files import ClassFile, file_name, listed, remove, there_are_several
from namewright.web.desk import book, desk

pages = Blueprint("classes", __name__)


@pages.before_request
def only_where_there_are_several() -> None:
    """Answer nothing where there is one class alone."""
    if not there_are_several():
        abort(404)


@pages.get("/classes")
def show() -> str:
    """Show every class of the folder, and what can be done with them."""
    return render_template("classes.html", problem=None)


def _again(problem: Message) -> tuple[str, int]:
    return render_template("classes.html", problem=problem), 422


@pages.post("/classes/open")
def turn_to() -> Response:
    """Open another class of the folder, for every window of this program."""
    wanted = _named()
    desk().turn_to(wanted.path)
    return redirect(url_for("home.first", told=desk().tell([message("web.classes.opened", name=wanted.name)])))


@pages.post("/classes/remove")
def ask_to_remove() -> str | tuple[str, int]:
    """Say what removing an empty class means, and ask."""
    one = _named()
    if not one.empty or one.here:
        return _again(message("web.classes.not_empty", name=one.name))
    return render_template("remove.html", one=one)


@pages.post("/classes/remove/yes")
def remove_it() -> tuple[str, int] | Response:
    """Remove an empty class for good; one that is not empty any more stays."""
    one = _named()
    if not remove(one):
        return _again(message("web.classes.not_empty", name=one.name))
    return redirect(url_for("classes.show", told=desk().tell([message("web.classes.removed", name=one.name)])))


def _named() -> ClassFile:
    """Return the class of the folder whose file a form names; aborts with 404 for any other file."""
    found = next((one for one in listed() if one.file == request.form.get("file")), None)
    if found is None:
        abort(404)
    return found


@pages.post("/classes/new")
def begin() -> tuple[str, int] | Response:
    """Begin a class by its name; with ``draft`` the list that is being worked on goes there."""
    draft, title = book().draft() if "draft" in request.form else None, _title()
    if not title:
        return _again(message("web.classes.no_name"))
    path = file_name(title, desk().path.absolute().parent)
    try:
        with Classbook.open(path) as fresh:
            fresh.set_class_setting("title", title)
            if draft:
                fresh.keep_draft(draft)
    except ClassbookError as error:
        path.unlink(missing_ok=True)
        return _again(error.message)
    if draft:
        book().discard_draft()
    desk().turn_to(path)
    return redirect(url_for("roster.show", told=desk().tell([message("web.classes.begun", name=title)])))


@pages.post("/classes/name")
def call() -> tuple[str, int] | Response:
    """Call the class that is open by another name; its file stays where it is."""
    title = _title()
    if not title:
        return _again(message("web.classes.no_name"))
    try:
        book().set_class_setting("title", title)
    except ClassbookError as error:
        return _again(error.message)
    return redirect(url_for("classes.show", told=desk().tell([message("web.classes.called", name=title)])))


def _title() -> str:
    return " ".join(request.form.get("title", "").split())
