"""The nearest value of a setting that can be drawn, for a value that cannot.

Between a value that can be drawn and one that cannot lies the last that can; it is found by halving, down to the step
that the setting's slider moves by. Out of scope: what stands in the way (the pages say it).
"""

from __future__ import annotations

import math
from collections.abc import Callable

from namewright.message import Problem
from namewright.tuning import Knob, read_setting
from namewright.units import number


def nearest(knob: Knob, typed: str, good: float, step: float, draw: Callable[[str], object]) -> str | None:
    """Return the value nearest to what was typed that ``draw`` takes without a Problem; None where there is none.

    ``good`` is the value to go back towards: the one that is kept, or that of the class.
    """
    def can(value: float) -> bool:
        try:
            draw(number(value))
        except Problem:
            return False
        return True

    asked = min(max(typed_value(knob, typed, good), knob.least), knob.greatest)
    good = min(max(good, knob.least), knob.greatest)
    if can(asked):
        return number(asked)
    if not can(good):
        return None
    bad = asked
    while abs(bad - good) > step * 1.0001:
        middle = good + round((bad - good) / 2 / step) * step
        if middle in (good, bad):
            break
        good, bad = (middle, bad) if can(middle) else (good, middle)
    even = step * (math.floor(good / step) if bad > good else math.ceil(good / step))
    return number(even if knob.least <= even <= knob.greatest and can(even) else good)


def typed_value(knob: Knob, typed: str, otherwise: float) -> float:
    """Return what was typed, even outside the range; of what is no number, the value to go back to."""
    try:
        return float(read_setting(knob.key, typed) or otherwise)
    except Problem:
        pass
    try:
        return float(typed.strip().removesuffix("mm").replace(",", "."))
    except ValueError:
        return otherwise
