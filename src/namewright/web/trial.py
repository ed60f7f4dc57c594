"""Settings on trial, and how a form shows each measure. Lengths are millimetres.

Out of scope: keeping settings (``classbook``), laying one over another (``making.choices``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from namewright.classbook import BookChild
from namewright.classbook.rosters import practised
from namewright.pages.sheet_settings import SheetSettings
from namewright.roster.children import Child
from namewright.settings import Hand, Support
from namewright.tuning import Knob, Tuning, tuning_of


def tried(one: BookChild, own: Mapping[str, str]) -> BookChild:
    """Return a child as if ``own`` were what is set for it. Raises ValueError, in a sentence, as settings do."""
    own = {key: text for key, text in own.items() if text.strip()}
    mine = tuning_of(own)
    if mine.line_height is None:
        mine = mine._replace(line_height=listed_height(one))
    roster_says = _without_settings(one)
    practice = practised(own.get("practise"), one.child.given, one.child.family, one.child.practice)
    child = roster_says._replace(line_height_mm=mine.line_height, practice=practice,
                    support=Support(own["support"]) if "support" in own else roster_says.support,
                    hand=Hand(own["hand"]) if "hand" in own else roster_says.hand,
                    letters=own.get("letters", roster_says.letters))
    return replace(one, child=child, own=mine, settings=own)


def listed_height(one: BookChild) -> float | None:
    """Return the line height that the list itself says of a child; None where a setting hides what it says, if any."""
    return None if "line_height" in one.settings else one.own.line_height


def _without_settings(one: BookChild) -> Child:
    """Return the child without what was set; what the list said under a setting is not known here."""
    return one.child._replace(support=None if "support" in one.settings else one.child.support,
                   hand=None if "hand" in one.settings else one.child.hand,
                   letters="" if "letters" in one.settings else one.child.letters)


@dataclass(frozen=True, slots=True)
class Control:
    """One knob as a form shows it: the step it moves by, and what holds while it is not set, where that is known."""

    knob: Knob
    step: float
    rest: float | None


def control(knob: Knob, everyone: SheetSettings, tuning: Tuning) -> Control:
    """Return how a knob is shown for a child of a class with these settings."""
    of_class = getattr(tuning, knob.key, None)
    rest = _rests(everyone).get(knob.key) if of_class is None else float(of_class)
    return Control(knob, _step(knob), rest)


def _step(knob: Knob) -> float:
    if knob.kind == "count":
        return 1.0
    if knob.kind == "number":
        return 0.05
    return 0.5 if knob.greatest >= 20 else 0.1


def _rests(everyone: SheetSettings) -> Mapping[str, float]:
    ruling = everyone.ruling
    return {"line_height": ruling.line_height_mm, "midline": ruling.x_height_mm / ruling.line_height_mm,
            "row_gap": ruling.gap_mm, "letter_spacing": 0.0, "line_weight": 1.0}
