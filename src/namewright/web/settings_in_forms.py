"""The settings that a form holds, checked, and kept where they are the class's."""

from __future__ import annotations

from werkzeug.datastructures import MultiDict

from namewright.classbook.keys import CHILD_KEYS, WORD_KEYS, checked_setting
from namewright.web.desk import book, class_settings
from namewright.web.letter_forms import fields_of

PAGE_KEYS = ("paper", "ruling", "line_height", "support", "hand", "language", "landscape", "binding",
             "colour", "sleeve", "tile_names", *WORD_KEYS)


def asked_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the class's settings with those of a form over them; one that cannot be set raises ClassbookError.

    A form that shows a choice sends it, but a box that is not ticked sends nothing.
    """
    settings, asked = dict(class_settings()), fields_of(form)
    for key in PAGE_KEYS:
        text = checked_setting(key, asked.get(key, ""), of_class=True)
        settings.pop(key, None)
        if text is not None:
            settings[key] = text
    return settings


def keep_choices(form: MultiDict[str, str]) -> None:
    """Keep the choices of a form for the class. Raises ClassbookError for one that cannot be."""
    asked = fields_of(form)
    book().set_class_settings({key: asked.get(key, "") for key in PAGE_KEYS})


def own_settings(form: MultiDict[str, str]) -> dict[str, str]:
    """Return the child's settings in a form; one that cannot be set raises ClassbookError."""
    asked = fields_of(form)
    found = {key: checked_setting(key, asked.get(key, ""), of_class=False) for key in CHILD_KEYS}
    return {key: text for key, text in found.items() if text is not None}
