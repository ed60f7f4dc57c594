"""What may be changed beside the page, for one child and for everyone: three groups, the first of each unfolded.

A control is a key; how it is drawn is told by its kind in the template. Lengths are millimetres. Out of scope: what a
setting means (``tuning``), which of them a class and a child have (``classbook.keys``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from namewright.making.from_book import holds_for_class
from namewright.message import Field, message
from namewright.tuning import KNOBS, Tuning
from namewright.web.trial import Control, control


@dataclass(frozen=True, slots=True)
class Group:
    """A group of settings: those to be seen, and those folded away, by their keys."""

    name: str
    seen: tuple[str, ...]
    folded: tuple[str, ...]


_LINES = ("row_gap", "midline", "line_weight", "bold_baseline", "shaded_band", "unlined")
_PENS = ("model_pen", "dot_size", "dot_pitch", "letters", "keep_dots")
OF_CHILD = (
    Group("lines", ("line_height",), _LINES),
    Group("letters", ("letter_spacing",), _PENS),
    Group("page", ("support", "hand", "rows"), ("ladder", "practise")),
)
OF_CLASS = (
    Group("lines", ("ruling",), _LINES),
    Group("letters", (), ("letter_spacing", *_PENS)),
    Group("page", ("paper", "support", "hand", "order"),
          ("language", "colour", "landscape", "binding", "sleeve", "tile_names", "rows", "ladder")),
)


def for_child(settings: Mapping[str, str], listed_mm: float | None = None) -> Mapping[str, Control]:
    """Return the measures as they are shown for a child of a class with these settings; they rest where it has them.

    The line height rests at what the list says of this child, ``listed_mm``, where it says one.
    """
    everyone = holds_for_class(settings)
    tuning = everyone.tuning if listed_mm is None else everyone.tuning._replace(line_height=listed_mm)
    return {knob.key: control(knob, everyone, tuning) for knob in KNOBS}


def for_everyone(settings: Mapping[str, str]) -> Mapping[str, Control]:
    """Return the measures as they are shown for everyone; they rest where the chosen lines have them."""
    lines = holds_for_class({key: text for key, text in settings.items() if key == "ruling"})
    return {knob.key: control(knob, lines, Tuning()) for knob in KNOBS}


def rests_at(one: Control) -> Field:
    """Return what holds while a setting is empty, to stand in its empty field."""
    if one.knob.kind == "switch":
        return message(f"setting.usual.{one.knob.key}")
    if one.rest is None:
        return message("web.desk.usual")
    if one.knob.unit != "mm":
        return message("web.desk.plain", value=one.rest)
    return message("web.desk.amount", value=one.rest, unit=message("setting.unit.mm"))


def range_of(one: Control) -> Field:
    """Return from where to where a setting may be set."""
    return message("web.desk.range", least=one.knob.least, most=one.knob.greatest,
                   unit=message(f"setting.unit.{one.knob.unit}"))
