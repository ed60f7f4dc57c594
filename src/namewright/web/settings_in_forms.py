"""The settings that a form holds, checked, and kept where they are the class's."""

from __future__ import annotations

from collections.abc import Mapping

from flask import abort
from werkzeug.datastructures import MultiDict

from namewright.classbook import ClassbookError, Save
from namewright.classbook.keys import CHILD_KEYS, WORD_KEYS, checked_setting
from namewright.making.choices import NOTHING, read_choices, settled
from namewright.message import Message, Problem, message
from namewright.practice.ordering import Order
from namewright.tuning import KNOBS
from namewright.web.desk import book, class_settings
from namewright.web.letter_forms import fields_of
from namewright.web.sent_number import sent_number

PAGE_KEYS = ("paper", "ruling", "support", "hand", "language", "landscape", "binding", "colour", "sleeve", "tile_names",
             *(knob.key for knob in KNOBS), *WORD_KEYS)
ORDER = "order"  # of the class; kept only where a form says it
OTHER = "other"
"""Chosen among the lines where the height is another: that of the field beside it, on lines drawn like ``like``."""


def asked_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the class's settings with those of a form over them; one that cannot be set raises ClassbookError.

    A form that shows a choice sends it, but a box that is not ticked sends nothing.
    """
    settings, asked = dict(class_settings()), asked_fields(form)
    for key in _keys(asked):
        text = checked_setting(key, asked.get(key, ""), of_class=True)
        settings.pop(key, None)
        if text is not None:
            settings[key] = text
    return settings


def keep_choices(form: MultiDict[str, str]) -> Save | None:
    """Keep the choices of a form for the class. Raises ClassbookError for one that cannot be, or was changed elsewhere.

    Where the form says after which save it was opened (``after``), a newer one is not overwritten. What was never set
    and is sent as usual stays not set: nobody changed it.
    """
    asked, kept = asked_fields(form), class_settings()
    texts = {key: asked.get(key, "") for key in _keys(asked)}
    said = {key: text for key, text in texts.items() if key in kept or not _is_usual(key, text)}
    return book().set_class_settings(said, who=form.get("who", ""), after_save=after(form))


def _is_usual(key: str, text: str) -> bool:
    """Say whether a setting of the class is what holds where none is set; what cannot be set is refused elsewhere."""
    if key == ORDER:
        return text in ("", Order.PRACTICE)
    try:
        return settled(read_choices({key: checked_setting(key, text, of_class=True) or ""})) == settled(NOTHING)
    except Problem:
        return False


def keep_own(child_id: int, form: MultiDict[str, str]) -> Save | None:
    """Keep a child's settings; None where they are so already. Raises ClassbookError as ``keep_choices`` does.

    What is so already needs no look at other windows: nothing would be overwritten.
    """
    wanted = {key: text for key, text in fields_of(form).items() if key in CHILD_KEYS}
    asked, kept = own_settings(form), book().settings_of(child_id)
    if all(kept.get(key) == asked.get(key) for key in wanted):
        return None
    return book().set_settings(child_id, wanted, who=form.get("who", ""), after_save=after(form))


def after(form: MultiDict[str, str]) -> int | None:
    """Return the save after which a form was opened, None where it does not say."""
    return sent_number(form.get("after", ""))


def opened_after(form: MultiDict[str, str]) -> int:
    """Return the save after which a form was opened; aborts with 400 where it does not say."""
    found = after(form)
    if found is None:
        abort(400)
    return found


def take_back(child_id: int | None, form: MultiDict[str, str]) -> Message:
    """Take back a child's newest change that still stands, or everyone's (None); return what to tell.

    A form sent twice takes back once. Aborts with 400 where it does not say after which save it was opened.
    """
    try:
        save = book().undo(child_id, who=form.get("who", ""), after_save=opened_after(form))
    except ClassbookError:
        save = None
    return message("web.lines.undid" if save else "web.lines.undid_before")


def _keys(asked: Mapping[str, str]) -> tuple[str, ...]:
    return (*PAGE_KEYS, *((ORDER,) if ORDER in asked else ()))


def asked_fields(form: MultiDict[str, str]) -> Mapping[str, str]:
    """Return a form's settings; one control says the lines: a ruling, or a height of one's own."""
    asked = fields_of(form)
    lines = asked.pop("lines", None)
    if lines is None:
        return asked
    if lines == OTHER:
        return {**asked, "ruling": asked.get("like", "")}
    return {**asked, "ruling": lines, "line_height": ""}


def own_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the child's settings in a form; one that cannot be set raises ClassbookError."""
    asked = fields_of(form)
    found = {key: checked_setting(key, asked.get(key, ""), of_class=False) for key in CHILD_KEYS}
    return {key: text for key, text in found.items() if text is not None}
