"""Lines that fit one hand: a child's own settings beside the class's, seen at true size, kept with their history.

The form is made from the list of knobs, so a new knob shows up by itself. Lengths are millimetres.
Out of scope: what a setting means (``tuning``) and how it is kept (``classbook``).
"""

from __future__ import annotations

from collections.abc import Mapping

from flask import Blueprint, Response, abort, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, ClassbookError
from namewright.classbook.keys import CHILD_KEYS, tuning_of
from namewright.making.from_book import holds_for_child, holds_for_class
from namewright.making.request import Kind
from namewright.message import Field, Problem, message
from namewright.pages.ladder import MAX_TRACED
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import KNOBS
from namewright.web.answers import file_name, pdf, pdf_of, svg
from namewright.web.desk import book, child_or_404, class_settings, desk, members
from namewright.web.finding import family_of, names_of
from namewright.web.letter_forms import LETTERS, RUNGS, fields_of, shapes_of
from namewright.web.requests import drawn, of_child
from namewright.web.row_pictures import row_svg
from namewright.web.screen_language import reason
from namewright.web.settings_in_forms import own_settings
from namewright.web.trial import control, tried
from namewright.wording import FIRST, wording

pages = Blueprint("lines", __name__)
_LANGUAGES = ("names_in", "home_language")
WORDED: Mapping[str, tuple[str, ...]] = {"hand": tuple(Hand), "support": tuple(Support), "practise": tuple(NamePart)}


@pages.get("/lines")
def choose() -> str:
    """Ask whose lines shall fit better."""
    return render_template("choose.html", members=members(), where="lines.show", section="lines",
                           names_of=names_of, family_of=family_of)


@pages.get("/child/<int:child_id>/lines")
def show(child_id: int) -> str:
    """Show a child's settings beside the class's."""
    return _page(child_or_404(child_id))


def _page(one: BookChild, typed: Mapping[str, str] | None = None, problem: Exception | None = None) -> str:
    settings = class_settings()
    everyone = holds_for_class(settings)
    class_tuning = tuning_of(settings)
    history = book().history(one.id)
    return render_template(
        "lines.html", child=one, label=one.child.label, typed=one.settings if typed is None else typed,
        problem=problem, controls=[control(knob, everyone, class_tuning) for knob in KNOBS], worded=WORDED,
        shapes=shapes_of(one.settings if typed is None else typed), letters=LETTERS, rungs=RUNGS,
        most_rungs=MAX_TRACED, class_shapes=shapes_of(settings),
        class_values={"hand": everyone.hand, "support": everyone.support,
                      "practise": NamePart(settings.get("practise", NamePart.GIVEN))},
        settings=settings, history=history, newest=history[0].id if history else 0,
        standing=next((save.id for save in history if save.undoes is None and not save.undone), None),
        called=_called, told_of=_told)


def _called(key: str) -> Field:
    """Return what a setting is called."""
    named = (f"web.knob.{key}", f"web.lines.{key}")
    return next((message(each) for each in named if wording(FIRST).has(each)), key)


def _told(key: str, text: str | None) -> Field:
    """Return what a setting is or was; what a newer program set is told as it was written."""
    if not text:
        return message("web.lines.usual")
    if key == "letters":
        return tuple(_form_told(word) for word in text.split())
    if key == "ladder":
        return tuple(_known(f"web.rung.{rung}", rung) for rung in text.split())
    if text in ("on", "off"):
        return message(f"web.lines.{text}")
    if key in _LANGUAGES:
        return _known(f"web.spoken.{text}", text)
    return _known(f"word.{text}", text) if key in WORDED else text


def _form_told(word: str) -> Field:
    letter, _, form = word.partition("=")
    if letter == "slant":
        return message("web.forms.slanted", degrees=form)
    if letter in LETTERS:
        return message("web.forms.letter", letter=letter, form=_known(f"web.form.{form}", form))
    if word in ("exit-strokes=no", "crossbars=right"):
        return message("web.forms.not", form=_known(f"web.forms.{letter}", letter))
    return _known(f"web.forms.{letter}", word)


def _known(key: str, otherwise: str) -> Field:
    return message(key) if wording(FIRST).has(key) else otherwise


@pages.post("/child/<int:child_id>/lines")
def keep(child_id: int) -> str | tuple[str, int] | BaseResponse:
    """Keep the settings, and go on to the sheet where that shall be printed: what the page shows is what is printed.

    Settings that are as they should be already are kept without a word in the history.
    """
    one = child_or_404(child_id)
    wanted = {key: text for key, text in fields_of(request.form).items() if key in CHILD_KEYS}
    try:
        asked = own_settings(request.form)
        same = all(one.settings.get(key) == asked.get(key) for key in wanted)
        save = None if same else book().set_settings(one.id, wanted, who=request.form.get("who", ""),
                                                     after_save=_number("after"))
    except Problem as error:
        return _page(child_or_404(child_id), wanted, error), 409
    if "print" in request.form:
        return redirect(url_for("aide.sheet", child_id=child_id))
    return _back(child_id, "lines.kept" if save else "lines.unchanged", label=one.child.label)


def _number(field: str) -> int:
    text = request.form.get(field, "")
    if not text.isdecimal():
        abort(400)
    return int(text)


def _back(child_id: int, key: str, **fields: Field) -> BaseResponse:
    told = desk().tell([message(f"web.{key}", **fields)])
    return redirect(url_for("lines.show", child_id=child_id, told=told))


@pages.post("/child/<int:child_id>/lines/undo")
def undo(child_id: int) -> BaseResponse:
    """Take back the newest change that still stands; a form sent twice takes back once."""
    child_or_404(child_id)
    try:
        save = book().undo(child_id, who=request.form.get("who", ""), after_save=_number("after"))
    except ClassbookError:
        save = None
    return _back(child_id, "lines.undid" if save else "lines.undid_before")


@pages.get("/picture/<int:child_id>/row.svg")
def row(child_id: int) -> Response:
    """Draw a row of a child's name: as the settings in the address would have it, or (``side=class``) the class's."""
    one, settings = child_or_404(child_id), class_settings()
    try:
        if request.args.get("side") == "class":
            chosen, name = holds_for_class(settings), one.child.practice
        else:
            trial = tried(one, own_settings(request.args)) if request.args else one
            chosen, name = holds_for_child(trial, settings), trial.child.practice
        return svg(desk().picture(("row", name, chosen), lambda setter: row_svg(setter, name, chosen)))
    except Problem as error:
        return Response(reason(request, error), 422, mimetype="text/plain")


@pages.get("/child/<int:child_id>/sizes.pdf")
def sizes(child_id: int) -> Response:
    """Return the page with the child's name at six line heights. Raises CannotDraw."""
    asked = of_child(Kind.SIZES, child_or_404(child_id), class_settings())
    with desk().lock:
        made = drawn(desk().setter, asked)
    return pdf(pdf_of(made, asked.settings.language), file_name(["sizes"]))


@pages.get("/screen")
def screen() -> str:
    """Measure the screen with a bank card."""
    back = request.args.get("child", "")
    return render_template("screen.html", child_id=int(back) if back.isdecimal() else None)
