"""Arc lengths and boxes of our strokes against svgpathtools, which reads the same path data by its own code."""

from __future__ import annotations

import math
import tomllib
from pathlib import Path

import pytest
from svgpathtools import parse_path

from namewright.letters.strokes import parse_stroke

SOURCE = Path(__file__).parents[2] / "fonts" / "upright.toml"
TABLE = tomllib.loads(SOURCE.read_text(encoding="utf-8"))
STROKES = {f"{kind[:-1]} {name} {count}": data for kind in ("glyphs", "marks")
           for name, entry in TABLE[kind].items() for count, data in enumerate(entry["strokes"], 1)}
MOVING = {name: data for name, data in STROKES.items() if not data.endswith("h0")}


def test_every_stroke_has_the_length_svgpathtools_finds() -> None:
    """The arc length of every stroke of the alphabet agrees to 0.1 %."""
    for name, data in MOVING.items():
        assert parse_stroke(data).length() == pytest.approx(parse_path(data).length(error=1e-7), rel=1e-3), name


def test_every_stroke_has_the_box_svgpathtools_finds() -> None:
    """The box of every stroke agrees to a thousandth of a unit."""
    for name, data in MOVING.items():
        x0, x1, y0, y1 = parse_path(data).bbox()
        assert parse_stroke(data).bounds() == pytest.approx((x0, y0, x1, y1), abs=1e-3), name


def test_dots_have_no_length() -> None:
    """A stroke that only touches the paper is a dot and nothing else is."""
    for name, data in STROKES.items():
        assert parse_stroke(data).is_dot == (name not in MOVING), name


@pytest.mark.parametrize("tolerance", [1e-1, 1e-2, 1e-3, 1e-4])
def test_a_length_is_as_exact_as_asked_for(tolerance: float) -> None:
    """The error of a stroke is of the order of the tolerance: at most three times it for each segment."""
    for name, data in MOVING.items():
        stroke = parse_stroke(data)
        error = abs(stroke.length(tolerance) - parse_path(data).length(error=1e-9))
        assert error < 3 * len(stroke.segments) * tolerance, name


@pytest.mark.parametrize("radius", [5.0, 50.0, 500.0])
def test_an_arc_is_as_long_as_geometry_says(radius: float) -> None:
    """A half circle is π times its radius long, to the 0.0273 % by which the best cubics stray from a circle."""
    length = parse_stroke(f"M0 0 A{radius} {radius} 0 0 1 {2 * radius} 0").length()
    assert length == pytest.approx(math.pi * radius, rel=2.73e-4)
