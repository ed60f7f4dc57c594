"""What a specialist may set for one child: each setting with its range, its unit, its default and a sentence why.

A setting that is None means "as the class and the ruling have it". These are settings to try with the child's
licensed therapist, not advice. Out of scope: where settings are kept (``classbook``) and what they change
(``pages``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields, replace
from typing import Literal

from namewright.units import number, parse_length_mm

Kind = Literal["length", "number", "count", "switch"]


@dataclass(frozen=True, slots=True)
class Tuning:
    """A child's own settings; lengths in mm."""

    line_height: float | None = None
    midline: float | None = None
    row_gap: float | None = None
    letter_spacing: float | None = None
    model_pen: float | None = None
    dot_size: float | None = None
    dot_pitch: float | None = None
    line_weight: float | None = None
    bold_baseline: bool | None = None
    shaded_band: bool | None = None
    rows: int | None = None
    unlined: bool | None = None

    def over(self, below: Tuning) -> Tuning:
        """Return these settings laid over others: where one is not set here, the other's holds."""
        mine = {field.name: getattr(self, field.name) for field in fields(self)}
        return replace(below, **{key: value for key, value in mine.items() if value is not None})


@dataclass(frozen=True, slots=True)
class Knob:
    """One setting as it is shown and read. ``usual`` says in words what holds where it is not set."""

    key: str
    kind: Kind
    unit: str
    least: float
    greatest: float
    usual: str
    why: str


KNOBS: tuple[Knob, ...] = (
    Knob("line_height", "length", "mm", 8, 80, "the ruling’s",
         "Taller lines let a hand that moves from the shoulder or the wrist write without shrinking its letters."),
    Knob("midline", "number", "of the line height", 0.3, 0.8, "the ruling’s",
         "A higher midline gives the small letters more room where they come out too large."),
    Knob("row_gap", "length", "mm", 0, 40, "the ruling’s",
         "White between rows keeps tails and tall letters apart and shows where one row ends."),
    Knob("letter_spacing", "length", "mm", 0, 20, "0 mm",
         "Wider gaps leave room for a thick pencil, and for eyes that crowd letters together."),
    Knob("model_pen", "length", "mm", 0.3, 6, "a ninth of the x-height",
         "A bolder model is easier to see; a finer one shows the path more exactly."),
    Knob("dot_size", "length", "mm", 0.3, 4, "a twelfth of the x-height",
         "Larger dots are easier to see and to aim at."),
    Knob("dot_pitch", "length", "mm", 0.8, 12, "about twice the dot",
         "Dots further apart leave more of the letter to the child."),
    Knob("line_weight", "number", "times the usual", 0.5, 4, "1",
         "Heavier guide lines are easier to see and to stop at; lighter ones distract less."),
    Knob("bold_baseline", "switch", "", 0, 1, "off",
         "One line that is bolder than the others shows where letters stand."),
    Knob("shaded_band", "switch", "", 0, 1, "off",
         "A light grey band between midline and baseline shows where the small letters live."),
    Knob("rows", "count", "rows to write on", 1, 12, "as many as fit",
         "Fewer rows make a page that can be finished."),
    Knob("unlined", "switch", "", 0, 1, "off",
         "In one study younger children wrote more legibly without lines (Lindsay & McLennan 1983, abstract)."),
)
_BY_KEY: Mapping[str, Knob] = {knob.key: knob for knob in KNOBS}
_YES = frozenset({"1", "on", "yes", "true", "sí", "si"})
_NO = frozenset({"0", "off", "no", "false"})


def knob(key: str) -> Knob:
    """Return the setting of this name. Raises ValueError, naming those there are, for another."""
    if key not in _BY_KEY:
        raise ValueError(f"there is no setting called “{key}”; choose one of {', '.join(_BY_KEY)}")
    return _BY_KEY[key]


def read_setting(key: str, text: str) -> float | int | bool | None:
    """Read a setting's value as typed; empty text is None, "as the class".

    Raises ValueError, in a sentence with the range, for what cannot be set.
    """
    setting = knob(key)
    if not text.strip():
        return None
    if setting.kind == "switch":
        return _read_switch(setting, text)
    value = _read_number(setting, text)
    if not setting.least <= value <= setting.greatest:
        raise ValueError(_range(setting, text))
    return round(value) if setting.kind == "count" else value


def _read_switch(setting: Knob, text: str) -> bool:
    word = text.strip().lower()
    if word not in _YES | _NO:
        raise ValueError(f"“{text}” does not say whether {_words(setting)} is on or off")
    return word in _YES


def _read_number(setting: Knob, text: str) -> float:
    try:
        return parse_length_mm(text) if setting.kind == "length" else float(text.strip().replace(",", "."))
    except ValueError:
        raise ValueError(_range(setting, text)) from None


def _range(setting: Knob, text: str) -> str:
    return (f"“{text}” cannot be set as {_words(setting)}; choose from {number(setting.least)} to "
            f"{number(setting.greatest)} {setting.unit}").rstrip()


def _words(setting: Knob) -> str:
    return setting.key.replace("_", " ")


def tuning_from(settings: Mapping[str, str]) -> Tuning:
    """Return the tuning for settings as typed, by key. Raises ValueError as ``read_setting`` does."""
    return Tuning(**{key: read_setting(key, text) for key, text in settings.items()})  # type: ignore[arg-type]
