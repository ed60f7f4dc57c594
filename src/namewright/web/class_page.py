"""The desk: the class on the left, the page of one child in the middle, what may be changed beside it, a bar below.

Nothing is laid out to show it: pictures and the count of pages are asked for by the screen when it stands. Where only
the part for another child is asked for (``part=panel``), only that is made.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence, Set
from functools import partial

from flask import redirect, render_template, request, url_for
from markupsafe import Markup
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import Save
from namewright.classbook.connect import stamp_of
from namewright.lines.ruling import DEFAULT_RULING
from namewright.making.from_book import holds_for_class
from namewright.making.request import FOR_EACH_CHILD, TO_KNOW, Kind
from namewright.message import Message, message
from namewright.pages.hue import COLOURS
from namewright.pages.ladder import MAX_TRACED
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.settings import Hand, NamePart, Support
from namewright.web import panel, screen_language
from namewright.web.desk import Member, book, class_settings, desk, members
from namewright.web.letter_forms import LETTERS, RUNGS, fields_of, shapes_of
from namewright.web.requests import FOR_ADULT, FOR_CHILDREN, KINDS
from namewright.web.roster_rows import look_at, rows_of
from namewright.web.ruling_words import by_country
from namewright.web.settings_in_forms import asked_fields
from namewright.web.settings_told import called, told_of, told_of_class
from namewright.web.trial import listed_height
from namewright.wording import FIRST, languages

CHOICES: Mapping[str, tuple[str, ...]] = {
    "paper": tuple(Paper), "support": tuple(Support), "hand": tuple(Hand), "order": tuple(Order),
    "colour": tuple(COLOURS),
}
WORDED: Mapping[str, tuple[str, ...]] = {"hand": tuple(Hand), "support": tuple(Support), "practise": tuple(NamePart)}
SORT_COOKIE, BY_NAME = "sorted", "name"


def again(problem: Message | Exception, own: int | None = None) -> tuple[str, int]:
    """Show the desk with all that a form held, of everyone or of one child, and what is wrong with it."""
    typed = asked_fields(request.form) if own is None else fields_of(request.form)
    return str(page({**class_settings(), **(typed if own is None else {})}, problem, own, typed)), 422


def page(settings: Mapping[str, str], problem: Message | Exception | None = None, child: int | None = None,
         typed: Mapping[str, str] | None = None) -> str | BaseResponse:
    """Show the desk; where there is no class yet, the place to paste one."""
    everyone = members()
    if not everyone:
        return redirect(url_for("roster.show", told=request.args.get("told")))
    asked = str(child) if child is not None else request.args.get("child", "")
    chosen = next((one for one in everyone if str(one.id) == asked), everyone[0])
    kept = class_settings()
    own = typed if child is not None and typed is not None else chosen.one.settings
    context = {
        "chosen": chosen, "label": chosen.label, "settings": settings, "problem": problem,
        "opened": "child" in request.args or child is not None or request.args.get("for") == "everyone",
        "for_all": child is None and (request.args.get("for") == "everyone" or problem is not None),
        **_of_child(chosen, own, kept, unfolded=bool(request.args.get("all") or problem))}
    if request.args.get("part") == "panel":
        return render_template("_panel.html", **context)
    return render_template("desk.html", **context, **_of_everyone(everyone, chosen, settings))


def _of_child(chosen: Member, own: Mapping[str, str], settings: Mapping[str, str], unfolded: bool,
              ) -> Mapping[str, object]:
    history = book().history(chosen.id)
    return {
        "own_form": _own_form(own, settings, unfolded, listed_height(chosen.one)),
        "look": look_at(chosen, settings), "history": history,
        "newest": history[0].id if history else 0, "standing": newest_standing(history),
        "called": called, "told_of": told_of, "paper": settings.get("paper", Paper.LETTER)}


def newest_standing(history: Sequence[Save]) -> int | None:
    """Return the number of the newest change that can be taken back, newest first as given."""
    return next((save.id for save in history if save.undoes is None and not save.undone), None)


def _own_form(own: Mapping[str, str], settings: Mapping[str, str], unfolded: bool, listed_mm: float | None) -> Markup:
    """Return what may be changed for one child, made once for the same settings: no child is named in it."""
    asked = ("own", screen_language.language_of(request), tuple(sorted(own.items())), tuple(sorted(settings.items())),
             unfolded, listed_mm, request.script_root)

    def made(_: object) -> str:
        everyone = holds_for_class(settings)
        return render_template(
            "_own.html", own=own, unfolded=unfolded, own_groups=panel.OF_CHILD,
            own_controls=panel.for_child(settings, listed_mm),
            own_shapes=shapes_of(own), class_shapes=shapes_of(settings), worded=WORDED,
            class_values={"hand": everyone.hand, "support": everyone.support,
                          "practise": NamePart(settings.get("practise", NamePart.GIVEN))},
            called=called, letters=LETTERS, rungs=RUNGS, most_rungs=MAX_TRACED, rests_at=panel.rests_at,
            range_of=panel.range_of)

    return Markup(desk().picture(asked, made))


def _of_everyone(everyone: Sequence[Member], chosen: Member, settings: Mapping[str, str]) -> Mapping[str, object]:
    saves, paper = book().history(None), settings.get("paper", Paper.LETTER)
    ticked = frozenset(request.form.getlist("child"))
    by_name = request.cookies.get(SORT_COOKIE) == BY_NAME
    return {
        "rows": _rows(everyone, chosen, ticked, by_name), "count": len(everyone), "by_name": by_name, "ticked": ticked,
        "groups": _groups(everyone), "everyone_form": _everyone_form(settings),
        "class_newest": saves[0].id if saves else 0, "class_history": saves, "class_standing": newest_standing(saves),
        "class_told_of": partial(told_of_class, paper=paper), "for_children": FOR_CHILDREN, "to_know": TO_KNOW,
        "for_adult": FOR_ADULT, "for_each": FOR_EACH_CHILD, "wanted": _wanted(),
        "other_language": _other_language(settings), "in_doubt": sum(not one.placed.beats_known for one in everyone)}


def _other_language(settings: Mapping[str, str]) -> str | None:
    """Return the pages' language where that of the screens was just changed to another; asked about once."""
    of_pages = settings.get("language", FIRST)
    changed = screen_language.CHANGED in request.cookies
    return of_pages if changed and of_pages != screen_language.language_of(request) else None


def _everyone_form(settings: Mapping[str, str]) -> Markup:
    """Return what may be changed for everyone, made once for the same settings: no child is named in it."""
    asked = ("everyone", screen_language.language_of(request), tuple(sorted(settings.items())), request.script_root)

    def made(_: object) -> str:
        return render_template(
            "_everyone.html", settings=settings, class_groups=panel.OF_CLASS,
            class_controls=panel.for_everyone(settings), class_shapes_chosen=shapes_of(settings),
            choices={**CHOICES, "language": languages()},
            usual_ruling=DEFAULT_RULING, rulings=by_country(settings.get("paper", Paper.LETTER)), called=called,
            letters=LETTERS, rungs=RUNGS, most_rungs=MAX_TRACED, rests_at=panel.rests_at, range_of=panel.range_of)

    return Markup(desk().picture(asked, made))


def _rows(everyone: Sequence[Member], chosen: Member, ticked: frozenset[str], by_name: bool) -> Markup:
    """Return the lines of the children, made once for a class’s file that has not changed."""
    asked = ("rows", stamp_of(desk().path), screen_language.language_of(request), chosen.id, sorted(ticked), by_name)

    def made(_: object) -> str:
        rows = rows_of(everyone, class_settings(), holds_for_class(class_settings()))
        shown = sorted(rows, key=lambda row: row.place) if by_name else rows
        order = {row.id: at for at, row in enumerate(rows)}
        return render_template("_rows.html", rows=shown, order=order, chosen=chosen, ticked=ticked)

    return Markup(desk().picture(asked, made))


def _wanted() -> Set[str]:
    """Return the kinds of pages to be ticked: those of the form that was sent, or the sheets."""
    return frozenset(KINDS).intersection(request.form.getlist("what")) if "what" in request.form else {Kind.SHEETS}


def _groups(everyone: Sequence[Member]) -> list[tuple[int, Message, tuple[int, ...]]]:
    """Return the number of each table, what it is called, and who sits there; none where all sit at one."""
    found: dict[int, list[Member]] = {}
    for one in everyone:
        found.setdefault(one.placed.group, []).append(one)
    return [(number, message("web.desk.table_who", number=number, names=tuple(one.label for one in some)),
             tuple(one.id for one in some)) for number, some in sorted(found.items())] if len(found) > 1 else []
