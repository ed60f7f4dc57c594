"""Which settings a class and a child may have, and how each is checked before it is kept as text.

A child: ``support``, ``hand``, ``practise``, the knobs of ``tuning``, in words ``letters`` (chosen forms), ``ladder``
(the rungs on a sheet) and ``keep_dots`` (letters that keep their dots), and ``names_in`` (the language of the name). A
class: these as the default for all, and ``title``, ``ruling``, ``paper``, ``landscape``, ``binding``, ``language``,
``order``, ``tables`` (how many), ``letters_per_week``. A child alone: ``beats`` (the name cut for clapping) and
``home_language`` (of what its family is told). Empty text is "not set". Lengths are millimetres, kept to a thousandth.
Out of scope: what a setting does to a page.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from enum import StrEnum

from namewright.classbook.records import ClassbookError, checked_text
from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.lines.ruling import preset
from namewright.message import Problem
from namewright.names.beats import NAMES_IN, beats
from namewright.pages.hue import read_colour
from namewright.pages.ladder import read_rungs
from namewright.pages.paper import Paper
from namewright.practice.ordering import Order
from namewright.practice.weeks import MAX_A_WEEK
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import KNOBS, read_setting
from namewright.units import number
from namewright.wording import languages

MAX_TITLE = 80
_MAX_WORDS = 200
_CHOICES: Mapping[str, type[StrEnum]] = {"support": Support, "hand": Hand, "practise": NamePart}
WORD_KEYS = ("letters", "ladder", "keep_dots")
CHILD_KEYS: tuple[str, ...] = (*_CHOICES, *(knob.key for knob in KNOBS), *WORD_KEYS)
"""What a child may have of its own on its sheets."""
MAX_TABLES = 200


def _one_of(words: Iterable[str]) -> Callable[[str], str]:
    allowed = tuple(map(str, words))

    def check(text: str) -> str:
        word = text.strip().lower()
        if word not in allowed:
            raise ClassbookError("setting.choice", text=text, known=allowed)
        return word

    return check


def _knob(key: str) -> Callable[[str], str]:
    def check(text: str) -> str:
        value = read_setting(key, text)
        if isinstance(value, bool):
            return "on" if value else "off"
        return "" if value is None else number(value)

    return check


def _number_to(most: int) -> Callable[[str], str]:
    return _one_of(map(str, range(1, most + 1)))


_SHARED_CHECKS: Mapping[str, Callable[[str], str]] = {
    **{key: _one_of(choice) for key, choice in _CHOICES.items()},
    **{knob.key: _knob(knob.key) for knob in KNOBS},
    "letters": lambda text: str(read_choice(checked_text(text, _MAX_WORDS, "long_letters"), upright())),
    "ladder": lambda text: " ".join(read_rungs(checked_text(text, _MAX_WORDS, "long_ladder"))),
    "keep_dots": lambda text: checked_text(" ".join(text.split()), _MAX_WORDS, "long_keep_dots"),
    "names_in": _one_of(NAMES_IN),
}
_CHILD_CHECKS: Mapping[str, Callable[[str], str]] = {
    **_SHARED_CHECKS,
    "beats": lambda text: checked_text(" ".join(text.split()), _MAX_WORDS, "long_beats"),
    "home_language": lambda text: _one_of(languages())(text),
}
_CLASS_CHECKS: Mapping[str, Callable[[str], str]] = {
    "title": lambda text: checked_text(" ".join(text.split()), MAX_TITLE, "long_title"),
    "ruling": lambda text: preset(text.strip()).name,
    "paper": _one_of(Paper),
    "landscape": _one_of(("on", "off")),
    "binding": _one_of(("on", "off")),
    "language": lambda text: _one_of(languages())(text),
    "order": _one_of(Order),
    "colour": read_colour,
    "sleeve": _one_of(("on", "off")),
    "tile_names": _one_of(("on", "off")),
    "tables": _number_to(MAX_TABLES),
    "letters_per_week": _number_to(MAX_A_WEEK),
    **_SHARED_CHECKS,
}


def checked_setting(key: str, text: str, *, of_class: bool) -> str | None:
    """Return the text to keep, or None for "not set".

    Raises ClassbookError for a setting that there is not or a value it cannot have.
    """
    checks = _CLASS_CHECKS if of_class else _CHILD_CHECKS
    if key not in checks:
        raise ClassbookError("setting.unknown", key=key, known=tuple(checks))
    if not text.strip():
        return None
    try:
        return checks[key](text) or None
    except ClassbookError:
        raise
    except Problem as error:
        raise ClassbookError(error.message) from error


def can_be_set(key: str, text: str, *, of_class: bool) -> bool:
    """Say whether a class, or a child, can have a setting, and not only none of that key."""
    try:
        return checked_setting(key, text, of_class=of_class) is not None
    except Problem:
        return False


def check_beats(name: str, typed: str) -> None:
    """Raise ClassbookError for beats that do not join to a name; empty text is no beats."""
    try:
        if typed.strip():
            beats(name, corrected=typed)
    except Problem as error:
        raise ClassbookError(error.message) from error
