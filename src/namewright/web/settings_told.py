"""A setting and its value in words, for a history and for a page to file; what a newer program set, as written."""

from __future__ import annotations

from namewright.lines.ruling import PRESETS
from namewright.message import Field, message
from namewright.pages.paper import Paper
from namewright.web.letter_forms import LETTERS
from namewright.web.ruling_words import size_said
from namewright.wording import FIRST, languages, wording

_WORDED = frozenset({"hand", "support", "practise"})
_LANGUAGES = frozenset({"names_in", "home_language"})


def called(key: str) -> Field:
    """Return what a setting is called."""
    named = (f"web.knob.{key}", f"web.lines.{key}", f"web.class.{key}", f"web.desk.{key}")
    return next((message(each) for each in named if wording(FIRST).has(each)), key)


def told_of(key: str, text: str | None) -> Field:
    """Return what a setting is or was."""
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
    return _known(f"word.{text}", text) if key in _WORDED else text


def told_of_class(key: str, text: str | None, paper: str = Paper.LETTER) -> Field:
    """Return what a setting of the whole class is or was; lines are told in the measure of its ``paper``."""
    if not text:
        return message("web.desk.usual")
    if key == "ruling" and text in PRESETS:
        return size_said(PRESETS[text].line_height_mm, paper)
    if key == "language":
        return wording(text).say("page.language") if text in languages() else text
    known = message(f"web.class.{key}_{text}")
    return known if wording(FIRST).has(known.key) else told_of(key, text)


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
