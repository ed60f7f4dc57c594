"""A child who stands in the class twice, made one: choose the two, be told what changes, say yes."""

from __future__ import annotations

from flask import Blueprint, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, ClassbookError
from namewright.classbook.records import called
from namewright.message import Message, message
from namewright.web.desk import book, desk, keep_groups
from namewright.web.finding import label_key

pages = Blueprint("double", __name__)


@pages.get("/class/double")
def show() -> str:
    """Let two be chosen, those who left too."""
    return _page()


def _page(problem: Message | None = None) -> str:
    everyone = sorted(book().children(left=True), key=lambda one: label_key(one.child.label))
    return render_template("double.html", names=called(everyone), everyone=everyone, problem=problem,
                           chosen={field: request.form.get(field, "") for field in ("child", "double")})


def _two() -> tuple[BookChild, BookChild] | None:
    """Return the child and its double, as the form says; None where these are not two of the class."""
    by_id = {str(one.id): one for one in book().children(left=True)}
    child, double = (by_id.get(request.form.get(field, "")) for field in ("child", "double"))
    return (child, double) if child and double and child.id != double.id else None


@pages.post("/class/double")
def ask() -> str | tuple[str, int]:
    """Say what would change, and ask."""
    if (two := _two()) is None:
        return _page(message("classbook.one_child")), 422
    names = called(book().children(left=True))
    return render_template("double_sure.html", child=two[0], double=two[1], names=names)


@pages.post("/class/double/yes")
def make_one() -> BaseResponse:
    """Make them one; a form sent twice finds one of them no more and says no more."""
    told: list[Message] = []
    if two := _two():
        try:
            book().make_one(two[1].id, two[0].id)
            keep_groups()
            name = called(book().children(left=True))[two[0].id]
            told = [message("web.double.done", child=name)]
        except ClassbookError as error:
            told = [error.message]
    return redirect(url_for("room.show", told=desk().tell(told) if told else None))
