"""The size finder: six empty rows of different heights, each with its height and a small model over it."""

from __future__ import annotations

from itertools import pairwise

import pytest

from longer import rest_long
from namewright.geometry import boxes
from namewright.lines.fit import DoesNotFit
from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, GuideLine, preset
from namewright.pages.blocks import PageSettings
from namewright.pages.page import Furniture, Page
from namewright.pages.paper import Paper
from namewright.pages.size_finder import size_pages
from namewright.pages.typesetter import Typesetter
from namewright.units import number
from pages.on_page import box_of, lines_of, rows

NAMES = ("Bo", "Őrs", "Anja", "Peggy", "Marigold", "Gbémisọ́lá", "Christopherson", "Ana-Lucía Belmonte-Quiroga")
RULINGS = ("us-3/4", "de-5", "fr-3", "uk-5", "es-4", "unlined")
# The first eight, which every run tries, have each name and each ruling among them.
CASES = [(name, RULINGS[(at + turn) % len(RULINGS)]) for turn in range(len(RULINGS)) for at, name in enumerate(NAMES)]

_MADE: dict[tuple[str, str, Paper], Page] = {}


def made(setter: Typesetter, name: str, ruling: str, paper: Paper = Paper.LETTER) -> Page:
    """Return a page, made once: to find six heights takes a while."""
    if (name, ruling, paper) not in _MADE:
        _MADE[name, ruling, paper] = size_pages(setter, name, name, PageSettings(preset(ruling), paper))[0]
    return _MADE[name, ruling, paper]


def body(page: Page) -> list[Ink]:
    """Return what stands over the rows: labels and models, not the heading."""
    return [item for item in page.items if isinstance(item, Ink) and item.bounds()[3] > heading_foot(page)]


def heading_foot(page: Page) -> float:
    """Return how far down the sentence reaches that says what to do: the first of the furniture."""
    return min((one.bounds()[1], one.bounds()[3]) for item in page.items if isinstance(item, Furniture)
               for one in item.items)[1]


@pytest.mark.parametrize(("name", "ruling"), rest_long(CASES, 8))
def test_six_empty_rows_rise_in_whole_or_half_millimetres(setter: Typesetter, name: str, ruling: str) -> None:
    """All six rows are empty and as high as the label over them says, each higher than the one before, from 8 mm on."""
    page = made(setter, name, ruling)
    assert [row.form for row in rows(page)] == ["blank"] * 6
    assert not any(isinstance(item, Ink) for row in rows(page) for item in row.items)
    shape = preset(ruling)
    bodies = [lines_of(row)[GuideLine.BASE] - lines_of(row)[GuideLine.MID] for row in rows(page)]
    heights = [one * shape.line_height_mm / shape.x_height_mm for one in bodies]
    assert heights[0] == pytest.approx(8)
    assert all(above < below for above, below in pairwise(heights))
    said = [[piece.fragment for piece in ink.pieces] for ink in body(page)]
    labels = [said.index([piece.fragment for piece in setter.text(f"{number(round(2 * high) / 2)} mm", 1.9).pieces])
              for high in heights]
    assert labels == sorted(labels)
    assert all(2 * high == pytest.approx(round(2 * high), abs=1e-6) for high in heights)


@pytest.mark.parametrize(("name", "ruling"), rest_long(CASES, 8))
def test_every_row_has_its_height_and_a_small_model_over_it(setter: Typesetter, name: str, ruling: str) -> None:
    """Over each row stand a label and, beside it, the name small; nothing touches anything else or a line.

    Regression: labels such as “29.5 mm” ran into the ruling, and the larger rows were full of dots.
    """
    page = made(setter, name, ruling)
    rooms = sorted((box_of(row) for row in rows(page)), key=lambda box: box[1])
    for above, below in pairwise([(0.0, 0.0, 0.0, heading_foot(page)), *rooms]):
        here = [ink.bounds() for ink in body(page) if above[3] < ink.bounds()[3] < below[1]]
        label = min(here)
        model = boxes.joined(box for box in here if box != label)
        assert below[0] - 0.3 < label[0]
        assert model[0] - label[2] > 3
        assert model[2] < below[2]
        assert 5 < model[3] - model[1] < 12
        assert below[1] - max(label[3], model[3]) > 1
        assert min(label[1], model[1]) - above[3] > 1


@pytest.mark.parametrize("paper", [Paper.LETTER, pytest.param(Paper.A4, marks=pytest.mark.long)])
@pytest.mark.parametrize(("name", "ruling"), rest_long(CASES, 8))
def test_each_row_has_room_for_a_wide_hand(setter: Typesetter, name: str, ruling: str, paper: Paper) -> None:
    """Every row is at least a tenth wider than the name set at its height, and the rows take most of the page."""
    page = made(setter, name, ruling, paper)
    shape = preset(ruling)
    for row in rows(page):
        high = (lines_of(row)[GuideLine.BASE] - lines_of(row)[GuideLine.MID]) * shape.line_height_mm / shape.x_height_mm
        x0, _, x1, _ = box_of(row)
        assert x1 - x0 >= 1.1 * setter.ruled(shape.scaled_to(high)).line(name).width_mm - 0.1
    foot = max(box_of(row)[3] for row in rows(page))
    assert foot > 0.75 * page.height_mm
    notes = [one.bounds() for item in page.items if isinstance(item, Furniture) for one in item.items
             if one.bounds()[1] > foot]
    assert min(box[1] for box in notes) - foot > 1.5


def test_a_long_name_gets_a_turned_page(setter: Typesetter) -> None:
    """Where the turned page lets a name stand on taller lines it is turned; a short name stays upright."""
    assert made(setter, "Ana-Lucía Belmonte-Quiroga", "us-3/4").width_mm > 270
    assert made(setter, "Marigold", "us-3/4").width_mm < 220


def test_paper_without_lines_gets_some_to_choose_among(setter: Typesetter) -> None:
    """On plain paper no row could be told from another: the size finder draws all four lines."""
    for row in rows(made(setter, "Marigold", "unlined")):
        assert set(lines_of(row)) == set(GuideLine)


def test_a_name_too_long_for_six_heights_is_told(setter: Typesetter) -> None:
    """A name that does not fit even a turned page at six different heights is refused with both widths."""
    with pytest.raises(DoesNotFit, match=r"fit\.row\(.*room=254"):
        made(setter, "Maximiliana Wolframina Thornwickerly Belmonte", "us-3/4")


@pytest.mark.long
def test_every_ruling_has_its_size_finder(setter: Typesetter) -> None:
    """The page can be made on every ruling, bound or not."""
    for ruling in PRESETS.values():
        for binding in (False, True):
            assert len(rows(size_pages(setter, "Peggy", "P", PageSettings(ruling, binding=binding))[0])) == 6
