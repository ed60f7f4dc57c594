"""The class: its page, its choices and order kept, and a child's page as it will print."""

from __future__ import annotations

from flask import Blueprint, Response, redirect, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError
from namewright.making.request import Kind
from namewright.message import Problem, message
from namewright.web.answers import picture_of
from namewright.web.class_page import again, page
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.requests import of_child
from namewright.web.screen_language import reason
from namewright.web.settings_in_forms import asked_settings, keep_choices, own_settings
from namewright.web.trial import tried

pages = Blueprint("room", __name__)


@pages.get("/class")
def show() -> str | BaseResponse:
    """Show the class; where there is none yet, the place to paste one."""
    return page(class_settings())


@pages.post("/class/choices")
def keep() -> tuple[str, int] | BaseResponse:
    """Keep the choices, and show the class again; where one cannot be, with what was chosen and why not."""
    try:
        keep_choices(request.form)
    except ClassbookError as error:
        return again(error)
    told = desk().tell([message("web.class.kept")])
    return redirect(url_for("room.show", told=told))


@pages.post("/class/order")
def order() -> BaseResponse:
    """Keep the order of the class."""
    book().set_class_setting("order", request.form.get("order", ""))
    return redirect(url_for("room.show"))


@pages.get("/picture/<int:child_id>/page.svg")
def picture(child_id: int) -> Response:
    """Draw a child's page; with ``trial=class`` or ``trial=own`` as if the settings in the address were kept."""
    one, settings = child_or_404(child_id), class_settings()
    try:
        if request.args.get("trial") == "class":
            settings = asked_settings(request.args)
            one = tried(one, one.settings)
        elif request.args.get("trial") == "own":
            one = tried(one, own_settings(request.args))
        return picture_of(of_child(Kind.SHEETS, one, settings))
    except Problem as error:
        return Response(reason(request, error), 422, mimetype="text/plain")
