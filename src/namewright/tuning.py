"""What a specialist may set for one child: each setting with its range and its unit.

A setting that is None means "as the class and the ruling have it". These are settings to try with the child's
licensed therapist, not advice. What holds where one is not set, and why one would set it, are words
(``setting.usual`` and ``setting.why``). Out of scope: where settings are kept (``classbook``) and what they change
(``pages``).
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from namewright.message import Message, Problem, message
from namewright.named_tuples import NamedTuple
from namewright.units import parse_length_mm

Kind = Literal["length", "number", "count", "switch"]
Unit = Literal["mm", "share", "times", "rows", ""]
"""Of a setting’s value; a share is one of the line height, and ``times`` is times the usual."""


class Tuning(NamedTuple):
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
        return below._replace(**{key: value for key, value in self._asdict().items() if value is not None})


class Knob(NamedTuple):
    """One setting as it is shown and read, with the range of its value."""

    key: str
    kind: Kind
    unit: Unit
    least: float
    greatest: float


KNOBS: tuple[Knob, ...] = (
    Knob("line_height", "length", "mm", 8, 80),
    Knob("midline", "number", "share", 0.3, 0.8),
    Knob("row_gap", "length", "mm", 0, 40),
    Knob("letter_spacing", "length", "mm", 0, 20),
    Knob("model_pen", "length", "mm", 0.3, 6),
    Knob("dot_size", "length", "mm", 0.3, 4),
    Knob("dot_pitch", "length", "mm", 0.8, 12),
    Knob("line_weight", "number", "times", 0.5, 4),
    Knob("bold_baseline", "switch", "", 0, 1),
    Knob("shaded_band", "switch", "", 0, 1),
    Knob("rows", "count", "rows", 1, 12),
    Knob("unlined", "switch", "", 0, 1),
)
_BY_KEY: Mapping[str, Knob] = {knob.key: knob for knob in KNOBS}
_YES = frozenset({"1", "on", "yes", "true", "sí", "si"})
_NO = frozenset({"0", "off", "no", "false"})


def knob(key: str) -> Knob:
    """Return the setting of this name. Raises Problem, naming those there are, for another."""
    if key not in _BY_KEY:
        raise Problem("setting.unknown", key=key, known=tuple(_BY_KEY))
    return _BY_KEY[key]


def read_setting(key: str, text: str) -> float | int | bool | None:
    """Read a setting's value as typed; empty text is None, "as the class".

    Raises Problem, with the range, for what cannot be set.
    """
    setting = knob(key)
    if not text.strip():
        return None
    if setting.kind == "switch":
        return _read_switch(setting, text)
    value = _read_number(setting, text)
    if not setting.least <= value <= setting.greatest:
        raise Problem(_out_of_range(setting, text))
    return round(value) if setting.kind == "count" else value


def _read_switch(setting: Knob, text: str) -> bool:
    word = text.strip().lower()
    if word not in _YES | _NO:
        raise Problem("setting.switch", text=text, what=called(setting.key))
    return word in _YES


def _read_number(setting: Knob, text: str) -> float:
    try:
        return parse_length_mm(text) if setting.kind == "length" else float(text.strip().replace(",", "."))
    except ValueError:
        raise Problem(_out_of_range(setting, text)) from None


def _out_of_range(setting: Knob, text: str) -> Message:
    return message("setting.range", text=text, what=called(setting.key), least=setting.least, most=setting.greatest,
                   unit=message(f"setting.unit.{setting.unit}"))


def called(key: str) -> Message:
    """Return what a setting is called inside a sentence."""
    return message(f"setting.name.{key}")


def tuning_of(settings: Mapping[str, str]) -> Tuning:
    """Return the tuning among settings of all kinds, as text by key."""
    return tuning_from({key: text for key, text in settings.items() if key in _BY_KEY})


def tuning_from(settings: Mapping[str, str]) -> Tuning:
    """Return the tuning for settings as typed, by key. Raises Problem as ``read_setting`` does."""
    return Tuning(**{key: read_setting(key, text) for key, text in settings.items()})  # type: ignore[arg-type]
