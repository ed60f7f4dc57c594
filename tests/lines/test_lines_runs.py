"""The runs of a letter, and where dots have to be on them: drawings small enough to see where."""

from __future__ import annotations

import math
from collections.abc import Sequence

import pytest

from namewright.geometry.points import Point
from namewright.letters.strokes import Stroke, parse_stroke
from namewright.lines.runs import anchors, runs_of, unretraced_runs

PITCH = 2.0


def read(*data: str) -> list[Stroke]:
    return [parse_stroke(one) for one in data]


def found(points: Sequence[Point]) -> list[Point]:
    """Return places rounded, each once, in order."""
    return sorted({(round(x, 3) + 0.0, round(y, 3) + 0.0) for x, y in points})


@pytest.mark.parametrize(("strokes", "needed", "close", "why"), [
    (("M0 0 V10", "M-3 5 H3"), [(-3, 5), (0, 0), (0, 5), (0, 10), (3, 5)], [], "ends, and where a plus crosses"),
    (("M0 0 V10 V0",), [(0, 0), (0, 10)], [], "a stem gone over twice is one run"),
    (("M0 0 V10", "M0 4 H6"), [(0, 0), (0, 4), (0, 10), (6, 4)], [], "a bar that ends square on a stem"),
    (("M0 0 V10", "M0.2 4 L2.2 10"), [(0, 0), (0, 10), (2.2, 10)], [(0, 4)], "a stroke that leaves it at 18 degrees"),
    (("M0 0 V10 H5",), [(0, 0), (0, 10), (5, 10)], [], "a corner"),
    (("M0 0 V10", "M4 0 V0"), [(0, 0), (0, 10)], [], "a dot has no run"),
])
def test_where_dots_have_to_be(strokes: tuple[str, ...], needed: list[Point], close: list[Point], why: str) -> None:
    """At a pitch of 2 mm; a fork that is too narrow for all dots of both is told apart from the others."""
    sure, narrow = anchors(runs_of(read(*strokes)), PITCH)
    assert (found(sure), found(narrow)) == (needed, close), why


def test_a_bowl_has_its_extremes() -> None:
    """A circle closes smoothly: it begins at its top, and has dots at the four places where it turns back."""
    (run,) = runs_of(read("M5 0 A5 5 0 1 1 -5 0 A5 5 0 1 1 5 0"))
    assert run.points[0] == pytest.approx((0, -5), abs=1e-9)
    assert run.length == pytest.approx(2 * math.pi * 5, rel=1e-3)
    assert [(x, y) for x, y in found(anchors([run], PITCH)[0])] == [(-5, 0), (0, -5), (0, 5), (5, 0)]


def test_the_straightest_run_comes_first() -> None:
    """A stem before a bowl, whichever is drawn first."""
    runs = runs_of(read("M0 5 A5 5 0 0 1 0 -5", "M0 -5 V5"))
    assert [run.straightness for run in runs] == [1.0, 0.0]


def test_part_of_a_track_that_is_gone_over_is_left_out() -> None:
    """Down 10, up 6 and away: what is left is the whole stem and the way away; of two equal tracks the first stays."""
    (stroke,) = read("M0 0 V10 V4 H5")
    kept = list(unretraced_runs(stroke, [stroke]))
    assert [tuple(segment.end for segment in run) for run in kept] == [((0, 10),), ((5, 4),)]
    one, two = read("M0 0 V10", "M0 0 V10")
    assert [len(list(unretraced_runs(each, [one, two]))) for each in (one, two)] == [1, 0]


def test_a_run_is_found_near_a_point_once_for_each_time_it_passes() -> None:
    """A hairpin passes twice beside its middle, once at its bend; far from its box it is not looked at."""
    (run,) = runs_of(read("M0 0 C0 12 1 12 1 0"))
    assert len(run.near((0.5, 2.0), 0.8)) == 2
    assert len(run.near((0.5, 9.0), 0.8)) == 1
    assert run.near((50.0, 0.0), 0.8) == []
    (stem,) = runs_of(read("M0 0 V10"))
    assert stem.near((1.0, 4.0), 1.5) == [4.0]
    assert stem.at(2.5) == (0.0, 2.5)
    assert math.degrees(stem.heading(5.0, 2.0)) == pytest.approx(90)
