"""Next month: every change of level that the notes bear out, with its reason, each to be refused; then the sheets.

A form says for each change which level it was shown; a change that is another by now is neither made nor refused.
"""

from __future__ import annotations

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import moving
from namewright.classbook.moving import Kind as Become
from namewright.classbook.moving import Move
from namewright.making.from_book import holds_for_class
from namewright.making.moves import changes_pages, keep_moves, sheets_request, told_in_turn
from namewright.web.answers import file_name, pdf, pdf_of
from namewright.web.class_pdf import begin
from namewright.web.desk import book, class_settings, desk

pages = Blueprint("month", __name__)


@pages.get("/class/next")
def show() -> str | BaseResponse:
    """Show what changes, what an adult has chosen otherwise, and what stays."""
    found = _moves()
    if not found:
        return redirect(url_for("roster.show"))
    by_kind = {kind: [move for move in found if move.kind is kind] for kind in Become}
    return render_template("next.html", changed=by_kind[Become.CHANGED], stays=by_kind[Become.STAYS],
                           staying=told_in_turn(by_kind[Become.STAYS]),
                           chosen=by_kind[Become.CHOSEN] + by_kind[Become.ROWS])


def _moves() -> tuple[Move, ...]:
    return moving.moves(book(), book().children())


@pages.get("/class/next/list.pdf")
def changes() -> Response:
    """Return the changes as pages for the adult, before any is made."""
    settings = holds_for_class(class_settings())
    with desk().lock:
        made = changes_pages(desk().setter, _moves(), (), settings)
    return pdf(pdf_of(made, settings.language), file_name(["changes"]))


@pages.post("/class/next")
def make() -> BaseResponse:
    """Keep the changes that were left ticked, refuse the others, and begin to make everyone's sheets.

    A form sent twice changes nothing the second time, since the notes have led to their changes by then.
    """
    shown, ticked = set(request.form.getlist("shown")), set(request.form.getlist("change"))
    agreed = [move for move in _moves() if f"{move.one.id}:{move.after}" in shown]
    keep_moves(book(), agreed, {move.one.id for move in agreed if str(move.one.id) not in ticked})
    return redirect(url_for("printing.job", key=begin(sheets_request(book(), book().children())).id))
