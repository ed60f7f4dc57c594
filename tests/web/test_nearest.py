"""The nearest value that can be drawn: in the range, on the side it came from, as near as a step."""

from __future__ import annotations

import pytest

from namewright.message import Problem
from namewright.tuning import KNOBS
from namewright.web.nearest import nearest

KNOB = {knob.key: knob for knob in KNOBS}


def up_to(most: float, tried: list[float]) -> object:
    def draw(text: str) -> object:
        tried.append(float(text))
        if float(text) > most:
            raise Problem("fit.out")
        return text

    return draw


@pytest.mark.parametrize(("typed", "most", "found"), [
    ("80", 41.3, "41"), ("900", 41.3, "41"), ("900", 200, "80"), ("2", 41.3, "8"), ("30", 41.3, "30"),
    ("a lot", 41.3, "19"), ("44,5", 41.3, "41"),
])
def test_it_is_the_last_that_can_be_drawn(typed: str, most: float, found: str) -> None:
    """Down to half a millimetre of a line; what is out of the range comes into it first; no number leads back."""
    tried: list[float] = []
    value = nearest(KNOB["line_height"], typed, 19.0, 0.5, up_to(most, tried))  # type: ignore[arg-type]
    assert value is not None
    assert float(value) == pytest.approx(float(found), abs=0.5)
    assert float(value) <= most
    assert len(tried) < 12


def test_there_may_be_none() -> None:
    assert nearest(KNOB["line_height"], "80", 19.0, 0.5, up_to(3.0, [])) is None  # type: ignore[arg-type]
