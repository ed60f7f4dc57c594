"""Contours and the area that they fill, against closed forms."""

from __future__ import annotations

import math

import pytest

from namewright.schoolfont.contours import ContourPen, area_of
from schoolfont.outlines import circle, polygon


def test_overlapping_contours_count_once() -> None:
    """Contours that overlap, as in variable fonts, fill by nonzero winding: a slash through a ring keeps its ink."""
    ring = [circle(50, 50, 50), circle(50, 50, 36, clockwise=False)]
    slash = polygon((-5, 0), (95, 110), (105, 100), (5, -10))
    area = area_of([*ring, slash], 0.05)
    assert len(area.interiors) == 2
    assert area.covers(area_of([slash], 0.05).buffer(-0.2))


def test_quadratic_curves_are_raised_exactly() -> None:
    """A quadratic curve, as TrueType has it, passes through the same points as a cubic."""
    pen = ContourPen()
    pen.moveTo((0, 0))
    pen.qCurveTo((50, 100), (100, 0))
    pen.closePath()
    ((curve, back),) = (contour.segments for contour in pen.contours)
    assert [sum(weight * axis for weight, axis in zip((0.125, 0.375, 0.375, 0.125), column, strict=True))
            for column in zip(*curve, strict=True)] == pytest.approx([50, 50])
    assert back == ((100, 0), (0, 0))


def test_an_area_is_what_geometry_says() -> None:
    """A ring between circles of 50 and 30 covers pi (2500 - 900); a dent that winds backwards is taken out."""
    ring = area_of([circle(0, 0, 50), circle(0, 0, 30, clockwise=False)], 0.01)
    assert ring.area == pytest.approx(math.pi * 1600, rel=1e-3)
    both = area_of([circle(0, 0, 50), circle(0, 0, 30)], 0.01)
    assert both.area == pytest.approx(math.pi * 2500, rel=1e-3)


def test_nothing_encloses_nothing() -> None:
    """No contour, or one of two points, is an empty area and no error."""
    assert area_of([], 0.1).is_empty
    assert area_of([polygon((0, 0), (10, 0))], 0.1).is_empty


def test_a_contour_closes_itself() -> None:
    """What ends elsewhere gets its last side; one that goes nowhere is dropped."""
    pen = ContourPen()
    pen.moveTo((0, 0))
    pen.lineTo((10, 0))
    pen.lineTo((10, 10))
    pen.endPath()
    pen.moveTo((5, 5))
    pen.closePath()
    (contour,) = pen.contours
    assert [segment.end for segment in contour.segments] == [(10, 0), (10, 10), (0, 0)]
