"""Path data as operators of PDF: hundredths of a millimetre, y up, compared with what fontTools reads of it."""

from __future__ import annotations

import pytest
from fontTools.pens.recordingPen import RecordingPen
from fontTools.svgLib.path import parse_path
from hypothesis import given
from hypothesis import strategies as st

from namewright.letters.strokes import parse_stroke, polyline_stroke
from namewright.lines.ink import outline_fragment, stroke_fragment
from namewright.output.pdf.paths import operators, unit, units


@pytest.mark.parametrize(("strokes", "drawn"), [
    (["M1 2H4V-2"], "100 -200 m 400 -200 l 400 200 l"),                      # level and upright; y turned over
    (["M0 0L3 4C4 4 5 5 5 6"], "0 0 m 300 -400 l 400 -400 500 -500 500 -600 c"),
    (["M0 0H5", "M6 1H8"], "0 0 m 500 0 l 600 -100 m 800 -100 l"),           # a second stroke
])
def test_fragments_are_commands_of_the_page(strokes: list[str], drawn: str) -> None:
    """Absolute, in hundredths."""
    assert operators(stroke_fragment(map(parse_stroke, strokes))) == drawn.encode()


def test_a_contour_is_closed() -> None:
    """Each by itself."""
    contours = [parse_stroke("M0 0H5V5"), parse_stroke("M1 1H5")]
    assert operators(outline_fragment(contours)) == b"0 0 m 500 0 l 500 -500 l h 100 -100 m 500 -100 l h"


def test_what_has_three_decimals_keeps_them() -> None:
    """A tenth of a hundredth."""
    assert operators(stroke_fragment([parse_stroke("M0 0L1.234 5")], 3)) == b"0 0 m 123.4 -500 l"


@pytest.mark.parametrize(("path", "lifted"), [("M0 0V5V0", True), ("M0 0V5L0.01 0", True), ("M0 0V5H-5", False),
                                              ("M0 0V5L1 0", False)])
def test_the_pen_is_lifted_where_a_stroke_turns_back(path: str, lifted: bool) -> None:
    """To about a degree; a closed contour is filled and never lifted."""
    assert (operators(stroke_fragment([parse_stroke(path)])).count(b" m") == 2) is lifted
    assert operators(outline_fragment([parse_stroke(path)])).count(b" m") == 1


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), min_size=2, max_size=12, unique=True))
def test_any_polyline_goes_through_the_same_points(points: list[tuple[int, int]]) -> None:
    """As fontTools reads the same path data, in hundredths and turned over."""
    fragment = stroke_fragment([polyline_stroke([(float(x), float(y)) for x, y in points])])
    data = fragment.data
    pen = RecordingPen()
    parse_path("M0 0" + data if not data.startswith(("m", "M")) else data.replace("m", "M", 1), pen)
    wanted = [at[0] for command, at in pen.value if command in ("moveTo", "lineTo")]
    words = operators(fragment).decode().split()
    places = [(float(words[at]) / 100, -float(words[at + 1]) / 100) for at in range(0, len(words), 3)]
    kept = [place for at, place in enumerate(places) if words[3 * at + 2] != "m" or at == 0]
    assert kept == pytest.approx([pytest.approx(each) for each in wanted])


@pytest.mark.parametrize(("mm", "written"), [(1.0, "100"), (0.123, "12.3"), (0.1234, "12.3"), (-2.5, "-250"),
                                             (0.0, "0"), (279.4, "27940")])
def test_a_length_has_one_decimal_at_the_most(mm: float, written: str) -> None:
    """Of a hundredth of a millimetre, and none where it needs none."""
    assert unit(mm) == written
    assert units(mm, 1.0) == f"{written} 100"
