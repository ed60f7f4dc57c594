"""Arc lengths and boxes of our strokes against svgpathtools, which reads the same path data by its own code."""

from __future__ import annotations

import math
import tomllib
from pathlib import Path

import pytest
from svgpathtools import parse_path

from namewright.letters.alphabet import upright
from namewright.letters.strokes import parse_stroke
from namewright.lines.ink import stroke_fragment
from namewright.lines.ruling import preset
from namewright.lines.setting import ink_letter

SOURCE = Path(__file__).parents[2] / "fonts" / "upright.toml"
TABLE = tomllib.loads(SOURCE.read_text(encoding="utf-8"))
DRAWN = {f"{kind} {name}": entry["strokes"] for kind in ("glyphs", "marks", "exit_strokes")
         for name, entry in TABLE[kind].items()}
DRAWN |= {f"variants {name} {form}": entry["strokes"] for name, forms in TABLE["variants"].items()
          for form, entry in forms.items() if form != "usual"}
STROKES = {f"{name} {count}": data for name, strokes in DRAWN.items() for count, data in enumerate(strokes, 1)}
MOVING = {name: data for name, data in STROKES.items() if not data.endswith("h0")}


def test_every_drawing_is_looked_at() -> None:
    """Letters, marks, every other form of a letter, and exit strokes: whatever the alphabet can draw is measured."""
    assert len(DRAWN) == sum(map(len, (upright().marks, upright().variants, upright().exit_strokes))) + len(
        upright().glyphs) - 2  # i and j are ı and ȷ with a mark


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


@pytest.mark.parametrize("ruling", ["us-3/4", "fr-2", "es-2.5"])
def test_what_is_printed_is_as_long_as_what_was_drawn(ruling: str) -> None:
    """The path data that are written for a letter have the length of its strokes to 0.1 % or 0.03 mm."""
    for char in "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ":
        strokes = [one for one in ink_letter(upright().letter(char), preset(ruling)).strokes if not one.is_dot]
        told = sum(part.length() for part in parse_path("M0 0" + stroke_fragment(strokes).data).continuous_subpaths())
        assert told == pytest.approx(sum(stroke.length() for stroke in strokes), abs=0.03, rel=1e-3), char
