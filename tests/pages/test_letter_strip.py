"""A model has the spacing of the rows under it; its stroke marks stand on it, or in a strip of single letters."""

from __future__ import annotations

import random
from itertools import pairwise
from pathlib import Path

import pytest

from namewright.geometry import boxes
from namewright.lines.clearance import Sides
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import THIN, Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, preset
from namewright.lines.setting import pen_width_mm
from namewright.names.clusters import clusters
from namewright.pages.letter_strip import MIN_X_HEIGHT_MM, model_marks
from namewright.pages.name_card import CardSettings, card_page
from namewright.pages.page import Guide, Letters, Page, Row
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

DATA = Path(__file__).parents[1] / "data"
ODD = ("Bo", "Zoë", "Wilhelmina", "Mary-Kate", "Ẹ̀bùn", "Nguyệt", "Åse", "Æthel", "Ana María", "O’Neil", "Ťukara",
       "Łucja")
RULINGS = ("us-3/4", "de-4", "uk-5", "fr-2.5", "us-1-1/8", "es-3")


def corpus() -> list[tuple[str, str]]:
    """Return invented pairings of names of open lists with rulings, the same on every machine."""
    names: list[str] = []
    for path, column in ((DATA / "first-names-held-out.tsv", 0), (DATA / "first-names-spoken.tsv", 1)):
        rows = [line.split("\t") for line in path.read_text(encoding="utf-8").splitlines() if line and line[0] != "#"]
        names += [row[column].title() for row in random.Random(5).sample(rows, 24)]
    return [(name, RULINGS[at % len(RULINGS)]) for at, name in enumerate((*names, *ODD))]


CASES = corpus()


def advances(row: Row, *widths: float) -> list[float]:
    """Return the distances between the letters of a row that are inked with a pen of one of these widths."""
    xs = sorted({round(piece.x, 3) for item in row.items if isinstance(item, Ink) and item.style.width_mm in widths
                 and item.style.colour != "#ffffff" for piece in item.pieces})
    return [round(b - a, 2) for a, b in pairwise(xs)]


def rows_of(pages: tuple[Page, ...], form: str) -> list[Row]:
    return [item for page in pages for item in page.items if isinstance(item, Row) and item.form == form]


def strips_of(pages: tuple[Page, ...]) -> list[Letters]:
    return [item for page in pages for item in page.items if isinstance(item, Letters)]


@pytest.mark.parametrize("support", [Support.FULL, Support.LIGHT])
def test_the_model_has_the_spacing_of_the_rows(setter: Typesetter, support: Support) -> None:
    """From letter to letter the model, the rows to trace and the model to copy are alike, in every name."""
    traced = 0
    for name, ruling in CASES:
        lines = PRESETS[ruling]
        try:
            pages = practice_pages(setter, name, name, SheetSettings(lines, support=support))
        except DoesNotFit:
            continue
        pen, dot = pen_width_mm(lines), setter.inker(lines).pens.dot_mm
        solid = rows_of(pages, Form.SOLID)
        for half in {row.name for row in solid}:
            models = [advances(row, pen) for row in solid if row.name == half]
            assert len(models) >= 2, name
            assert all(model == models[0] for model in models), (name, ruling)
            for row in [row for row in rows_of(pages, Form.DOTTED) if row.name == half][:1]:  # the next runs out
                assert advances(row, dot, THIN * dot)[:len(models[0])] == models[0], (name, ruling)
                traced += 1
    assert (traced > 40) == (support is Support.FULL)


def test_marks_are_on_the_model_or_in_the_strip(setter: Typesetter) -> None:
    """Never in both: where a letter has no room, no letter of the model has marks, and a strip has each letter once."""
    where = set()
    for name, ruling in CASES:
        lines = preset(ruling)
        line = setter.ruled(lines).line(name)
        marks = model_marks(setter, [line], 180.0)
        where.add((marks.cues is None, marks.beside))
        if marks.cues:
            assert marks.strip is None
            assert all(cues.complete for cues in marks.cues[0]), name
            continue
        assert marks.strip is not None, (name, ruling)
        cells = [cell for row in marks.strip.rows for cell in row]
        assert [cell.line.text for cell in cells] == list(dict.fromkeys(c for c in clusters(name) if c.strip())), name
        assert marks.strip.maker.ruling.x_height_mm >= MIN_X_HEIGHT_MM - 1e-9
        assert marks.strip.maker.number_mm >= 2.2
        assert all(cell.cues.complete for cell in cells), (name, ruling, [c.line.text for c in cells])
    assert where == {(False, False), (True, True), (True, False)}


def test_the_letters_of_a_strip_keep_apart(setter: Typesetter) -> None:
    """Each stands on guide lines of its own, with white to the next; a strip touches neither margin nor model."""
    for name, ruling in CASES[::3]:
        pages = practice_pages(setter, name, name, SheetSettings(PRESETS[ruling]))
        for row in strips_of(pages):
            lines = sorted({(item.x0, item.x1) for item in row.items if isinstance(item, Guide)})
            assert all(b[0] - a[1] >= 2.9 for a, b in pairwise(lines)), name
            box = boxes.joined(item.bounds() for item in row.items)
            others = [boxes.joined(item.bounds() for item in other.items) for page in pages for other in page.items
                      if isinstance(other, Row) and row in page.items]
            assert not any(boxes.overlap(box, other) for other in others), (name, ruling)


def test_a_strip_is_not_read_as_a_word(setter: Typesetter) -> None:
    """Its letters stand an x-height and more apart; nearer only where a row is as full as it can be."""
    apart = 0
    for name, ruling in CASES:
        marks = model_marks(setter, [setter.ruled(preset(ruling)).line(name)], 180.0)
        if not (strip := marks.strip):
            continue
        assert strip.width_mm <= 180.0 + 1e-6
        if strip.between_mm >= strip.maker.ruling.x_height_mm + 3.0 - 1e-6:
            apart += 1
        else:
            assert strip.between_mm >= 3.0
            assert marks.beside or strip.width_mm == pytest.approx(180.0), (name, ruling)
    assert apart >= 20


def test_rows_of_a_strip_are_even(setter: Typesetter) -> None:
    """No letter stands alone in a row of its own because it had no room in the row before."""
    ruling = preset("us-1/2")
    marks = model_marks(setter, [setter.ruled(ruling).line("Kofi-Mensah")], 136.0)
    assert marks.strip is not None
    assert [len(row) for row in marks.strip.rows] == [6, 5]


@pytest.mark.parametrize("name", ["Theodore", "Mary-Kate"])
def test_a_strip_on_a_card_keeps_off_the_row_under_it(setter: Typesetter, name: str) -> None:
    """Its lowest line and the top line of the row to write on are no double line: four millimetres are between."""
    page = card_page(setter, name, name, CardSettings(PRESETS["us-3/4"]))
    lowest = max(item.y for row in strips_of((page,)) for item in row.items if isinstance(item, Guide))
    below = min(item.y for row in page.items if isinstance(row, Row) for item in row.items
                if isinstance(item, Guide) and item.y > lowest)
    assert below - lowest >= 4.0


def test_the_letters_of_a_row_begin_in_from_its_ends(setter: Typesetter) -> None:
    """The first letter of each row stands 4 mm from the end of the lines or more, and so does the last."""
    for name, ruling in CASES[::4]:
        for row in rows_of(practice_pages(setter, name, name, SheetSettings(PRESETS[ruling])), Form.SOLID):
            inks = [item.bounds() for item in row.items if isinstance(item, Ink)
                    and item.style.width_mm == pen_width_mm(PRESETS[ruling])]
            guides = boxes.joined(item.bounds() for item in row.items if isinstance(item, Guide))
            left, _, right, _ = boxes.joined(inks)
            assert left >= guides[0] + 3.99, (name, ruling)
            assert right <= guides[2] - 3.9, (name, ruling)


def test_a_card_has_the_marks_too(setter: Typesetter) -> None:
    """On the model of a short name, else in a strip, with the model spaced as the row to trace."""
    for name, marked in (("Mira", True), ("Mary-Kate", False)):
        page = card_page(setter, name, name, CardSettings(PRESETS["us-3/4"]))
        assert bool(strips_of((page,))) != marked
        (model,), (trace,) = rows_of((page,), Form.SOLID), rows_of((page,), Form.DOTTED)
        pens = setter.inker(PRESETS["us-3/4"]).pens
        assert advances(model, pens.model_mm) == advances(trace, pens.dot_mm) != []


def test_strip_side_room_is_enough(setter: Typesetter) -> None:
    """A wide search is the exception: nearly all letters of the alphabet find their marks in the white they get."""
    ruling = preset("us-3/4")
    maker = setter.thorough_cues(ruling)
    side = 0.42 * ruling.x_height_mm
    glyphs = [char for char in setter.alphabet.glyphs if char.isalpha()]
    lost = [char for char in glyphs
            if not maker.cues(setter.ruled(ruling).line(char).letters[0].letter, Sides(side, side)).complete]
    assert len(lost) <= 3, lost


@pytest.mark.parametrize("name", ["Lebabababa", "Lenononono"])
def test_rows_of_a_single_letter_end(setter: Typesetter, name: str) -> None:
    """Regression: where the longest row of a strip was one letter, shorter rows were looked for without end."""
    assert practice_pages(setter, name, name, SheetSettings(preset("us-3/4"), support=Support.FULL))
