"""Path data as operators of PDF: hundredths of a millimetre, y up, compared with what fontTools reads of it."""

from __future__ import annotations

import pytest
from fontTools.pens.recordingPen import RecordingPen
from fontTools.svgLib.path import parse_path
from hypothesis import given
from hypothesis import strategies as st

from namewright.letters.strokes import polyline_stroke
from namewright.lines.ink import stroke_fragment
from namewright.output.pdf.paths import operators, unit, units


@pytest.mark.parametrize(("data", "drawn"), [
    ("m1 2h3v-4", "100 -200 m 400 -200 l 400 200 l"),                      # level and upright steps; y turned over
    ("m0 0l3 4c1 0 2 1 2 2", "0 0 m 300 -400 l 400 -400 500 -500 500 -600 c"),  # each point from the pen, not the last
    ("m0 0h5v5z", "0 0 m 500 0 l 500 -500 l h"),                           # closed
    ("m0 0h5z", "0 0 m 500 0 l h"),
    ("m0 0h5m1 1h2", "0 0 m 500 0 l 600 -100 m 800 -100 l"),               # a second stroke
])
def test_commands_are_those_of_the_page(data: str, drawn: str) -> None:
    """Relative in, absolute out."""
    assert operators(data) == drawn.encode()


@pytest.mark.parametrize(("data", "lifted"), [("m0 0v5v-5", True), ("m0 0v5l0.01 -5", True), ("m0 0v5h-5", False),
                                              ("m0 0v5l1 -5", False), ("m0 0v5v-5z", False)])
def test_the_pen_is_lifted_where_a_stroke_turns_back(data: str, lifted: bool) -> None:
    """To about a degree; a closed contour is filled and never lifted."""
    assert (operators(data).count(b" m") == 2) is lifted


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), min_size=2, max_size=12, unique=True))
def test_any_polyline_goes_through_the_same_points(points: list[tuple[int, int]]) -> None:
    """As fontTools reads the same path data, in hundredths and turned over."""
    data = stroke_fragment([polyline_stroke([(float(x), float(y)) for x, y in points])]).data
    pen = RecordingPen()
    parse_path("M0 0" + data if not data.startswith(("m", "M")) else data.replace("m", "M", 1), pen)
    wanted = [at[0] for command, at in pen.value if command in ("moveTo", "lineTo")]
    words = operators(data).decode().split()
    places = [(float(words[at]) / 100, -float(words[at + 1]) / 100) for at in range(0, len(words), 3)]
    kept = [place for at, place in enumerate(places) if words[3 * at + 2] != "m" or at == 0]
    assert kept == pytest.approx([pytest.approx(each) for each in wanted])


@pytest.mark.parametrize(("mm", "written"), [(1.0, "100"), (0.123, "12.3"), (0.1234, "12.3"), (-2.5, "-250"),
                                             (0.0, "0"), (279.4, "27940")])
def test_a_length_has_one_decimal_at_the_most(mm: float, written: str) -> None:
    """Of a hundredth of a millimetre, and none where it needs none."""
    assert unit(mm) == written
    assert units(mm, 1.0) == f"{written} 100"


def test_a_command_that_we_do_not_write_is_an_error() -> None:
    with pytest.raises(KeyError):
        operators("m0 0q1 1 2 2")
