"""The printed page against rulings in use, measured on PDFium's raster of our own PDF at 600 dpi.

The tables below are not taken from our code. ``SOURCED`` is typed from the sources that it names; ``FROM_MEMORY`` is
common practice as we know it, with no source that could be shown.
"""

from __future__ import annotations

import numpy as np
import pytest
from skimage.measure import label, regionprops

from namewright.lines.forms import Form
from namewright.lines.ruling import PRESETS, preset, told_of
from namewright.lines.setting import pen_width_mm
from namewright.pages.blocks import letters_at, ruled_row
from namewright.pages.page import Furniture, Page, Row
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import wording
from printed import bands, pdf_bytes, rows_of, scan

DPI = 600
INCH = 25.4
TOLERANCE_MM = 0.1


def thirds(zone: float) -> tuple[float, ...]:
    return (2 * zone, zone, 0.0, -zone)


def halves(inches: float) -> tuple[float, ...]:
    return (inches * INCH, inches * INCH / 2, 0.0)


def graded(band: float) -> tuple[float, ...]:
    return tuple(band * count for count in (3, 2, 1, 0, -1, -2))


# Heights over the base line, in mm, of every line printed in a row, top line first.
SOURCED: dict[str, tuple[float, ...]] = {
    # Germany: rulings SL, 1 and 2 of DIN 16552-1:2005-05, four lines 6, 5 and 4 mm apart,
    # as told by de.wikipedia.org/wiki/Lineatur.
    "de-6": thirds(6.0), "de-5": thirds(5.0), "de-4": thirds(4.0),
    # Switzerland: three lanes of 9 mm, then of 6 mm: haptik.ch/schule/artikel/was-bringt-die-neue-basisschrift.
    "ch-9": thirds(9.0), "ch-6": thirds(6.0),
    # France: Séyès, bands of 2 mm, and the same enlarged to 2.5 and 3 mm; small letters 1 band, tall letters 3,
    # tails 2 below: ecrituremodedemploi.fr and raforiane.fr.
    "fr-2": graded(2.0), "fr-2.5": graded(2.5), "fr-3": graded(3.0),
}
FROM_MEMORY: dict[str, tuple[float, ...]] = {
    # Australia: equal thirds named by the height of all three.
    "au-24": thirds(8.0), "au-18": thirds(6.0), "au-14": thirds(14 / 3), "au-12": thirds(4.0),
    "au-9": thirds(3.0), "au-8": thirds(8 / 3),
    # United States: head line to base line in inches, a dashed line halfway.
    "us-1-1/8": halves(1 + 1 / 8), "us-1": halves(1), "us-7/8": halves(7 / 8), "us-3/4": halves(3 / 4),
    "us-5/8": halves(5 / 8), "us-1/2": halves(1 / 2), "us-3/8": halves(3 / 8),
    # United Kingdom: two lines round a body of 6, 5 or 4 mm.
    "uk-6": (6.0, 0.0), "uk-5": (5.0, 0.0), "uk-4": (4.0, 0.0),
    # Spain: two lines that hold the small letters.
    "es-5": (5.0, 0.0), "es-4": (4.0, 0.0), "es-3.5": (3.5, 0.0), "es-3": (3.0, 0.0), "es-2.5": (2.5, 0.0),
}
LINES = SOURCED | FROM_MEMORY

# Base line to base line, in mm, where common practice fixes it: the United States leave half a line height of white
# under the base line; the United Kingdom's infant books are ruled every 15 mm. Both from memory.
PITCH_FROM_MEMORY = ({name: 1.5 * lines[0] for name, lines in LINES.items() if name.startswith("us-")}
         | {name: 15.0 for name in LINES if name.startswith("uk-")})


def test_every_preset_has_its_measures_here() -> None:
    """A ruling that is offered is checked here; one without a source says that it is common practice."""
    assert SOURCED.keys() | FROM_MEMORY.keys() | {"unlined"} == PRESETS.keys()
    assert not SOURCED.keys() & FROM_MEMORY.keys()
    source = {name: wording("en").say(told_of(name)[1]) for name in LINES}
    assert {name for name in LINES if source[name].startswith("common practice")} == FROM_MEMORY.keys()


def rows_and_folds(page: Page) -> Page:
    """Return a page without what stands beside its rows: the date, a frame, hollow letters."""
    return page._replace(items=tuple(item for item in page.items if isinstance(item, Row)
                                     or (isinstance(item, Furniture) and item.bleeds)))


def printed_lines(setter: Typesetter, ruling: str, paper: Paper, name: str = "Noa") -> list[tuple[float, float]]:
    """Return (y, thickness) in mm of the guide lines of a sheet, from two white columns near its edges.

    The left one crosses the fold line alone, so that it can be told from the guide lines.
    """
    pages = practice_pages(setter, name, name, SheetSettings(preset(ruling), paper, support=Support.LIGHT))
    data = pdf_bytes(map(rows_and_folds, pages))
    edge = 12.7  # the sheet's margin
    width = pages[0].width_mm
    fold = bands(rows_of(scan(data, dpi=DPI, left_mm=4.0, right_mm=10.0)), DPI)
    lines = bands(rows_of(scan(data, dpi=DPI, left_mm=width - edge - 6.0, right_mm=width - edge - 0.1)), DPI)
    assert len(fold) == 1
    return [line for line in lines if abs(line[0] - fold[0][0]) > 0.05]


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("ruling", LINES)
def test_printed_lines_stand_where_the_ruling_says(setter: Typesetter, ruling: str, paper: Paper) -> None:
    """Every printed line is within 0.1 mm of its distance from its base line (see above), and no other is printed."""
    lines = printed_lines(setter, ruling, paper)
    bases = [y for y, thickness in lines if thickness > 0.4]  # the base line is the thick one
    assert len(bases) >= 2
    wanted = sorted(base - height for base in bases for height in LINES[ruling])
    assert [y for y, _ in lines] == pytest.approx(wanted, abs=TOLERANCE_MM)


@pytest.mark.parametrize("paper", Paper)
def test_unlined_paper_has_no_lines(setter: Typesetter, paper: Paper) -> None:
    """On unlined paper the only rule is the fold line."""
    assert printed_lines(setter, "unlined", paper) == []


@pytest.mark.parametrize("ruling", PITCH_FROM_MEMORY)
def test_rows_follow_each_other_at_the_usual_pitch(setter: Typesetter, ruling: str) -> None:
    """Where a part of the sheet has two rows, their base lines are one pitch apart, to 0.1 mm."""
    wide = "N" + "o" * round(110 / (1.3 * LINES[ruling][-2]))  # too wide to write beside: copied under itself
    settings = SheetSettings(preset(ruling), Paper.A4, landscape=True, support=Support.LIGHT)
    pages = practice_pages(setter, wide, wide, settings)
    data = pdf_bytes(page._replace(items=tuple(item for item in page.items if isinstance(item, Row))) for page in pages)
    distances: list[float] = []
    for number, page in enumerate(pages):
        right = page.width_mm - 12.7
        column = scan(data, page=number, dpi=DPI, left_mm=right - 0.6, right_mm=right - 0.1)
        bases = [y for y, thickness in bands(rows_of(column), DPI) if thickness > 0.4]
        distances += list(np.diff(bases))
    assert distances
    assert min(distances) == pytest.approx(PITCH_FROM_MEMORY[ruling], abs=TOLERANCE_MM)


@pytest.mark.parametrize("ruling", ["de-6", "us-3/4", "fr-3", "uk-5", "es-2.5"])
def test_small_letters_touch_their_lines(setter: Typesetter, ruling: str) -> None:
    """Letters without ascender or tail reach from base line to midline and half a pen beyond, to 0.2 mm."""
    name = "xzvonu"
    settings = SheetSettings(preset(ruling), Paper.LETTER, landscape=True, support=Support.INDEPENDENT)
    (page, *_) = practice_pages(setter, name, name, settings)
    pixels = scan(pdf_bytes([rows_and_folds(page)]), dpi=DPI)
    white = pixels[:, round((page.width_mm - 14) / 25.4 * DPI):round((page.width_mm - 12.8) / 25.4 * DPI)]
    base = next(y for y, thickness in bands(rows_of(white), DPI) if thickness > 0.4)
    midline = base - min(height for height in LINES[ruling] if height > 0)
    boxes = [ink.bbox for ink in regionprops(label(pixels < 54))]  # 54: half cover of black over a grey line
    letters = [(top / DPI * INCH, bottom / DPI * INCH) for top, _, bottom, _ in boxes
               if top / DPI * INCH < base < bottom / DPI * INCH]
    assert len(letters) == len(name)
    half_pen = pen_width_mm(preset(ruling)) / 2
    for top_mm, bottom_mm in letters:
        assert top_mm == pytest.approx(midline - half_pen, abs=0.2)
        assert bottom_mm == pytest.approx(base + half_pen, abs=0.2)


@pytest.mark.parametrize("ruling", LINES)
def test_every_small_letter_touches_its_lines_on_every_ruling(setter: Typesetter, ruling: str) -> None:
    """All letters without ascender or tail reach from base line to midline and half a pen beyond, to 0.2 mm.

    The row is printed by itself on a page as wide as it needs, so that every ruling can be looked at.
    """
    lines = preset(ruling)
    name = "acemnorsuvwxz"
    line = setter.ruled(lines, 2.0).line(name)
    width, base = line.width_mm + 50, lines.line_height_mm + 25
    row = ruled_row(name, Form.SOLID, lines, 15, width - 12, base, letters_at(setter, line, Form.SOLID, 18, base))
    pixels = scan(pdf_bytes([Page(width, base + 25, (row,))]), dpi=DPI)
    white = pixels[:, round((width - 20) / INCH * DPI):round((width - 13) / INCH * DPI)]
    printed_base = next(y for y, thickness in bands(rows_of(white), DPI) if thickness > 0.4)
    midline = printed_base - min(height for height in LINES[ruling] if height > 0)
    boxes = [ink.bbox for ink in regionprops(label(pixels < 54))]
    letters = [(top / DPI * INCH, bottom / DPI * INCH) for top, left, bottom, right in boxes if bottom - top > 20]
    assert len(letters) == len(name)
    half_pen = pen_width_mm(lines) / 2
    for top_mm, bottom_mm in letters:
        assert top_mm == pytest.approx(midline - half_pen, abs=0.2)
        assert bottom_mm == pytest.approx(printed_base + half_pen, abs=0.2)


@pytest.mark.parametrize(("ruling", "band"), [("fr-2", 2.0), ("fr-2.5", 2.5), ("fr-3", 3.0)])
def test_graded_letters_rise_as_many_bands_as_published(setter: Typesetter, ruling: str, band: float) -> None:
    """On the graded ruling d and t rise two bands, the other ascenders and capitals three, tails go down two.

    Heights: ecrituremodedemploi.fr and raforiane.fr (see above); capitals of three bands: common practice.
    """
    ruled, half_pen = setter.ruled(preset(ruling)), pen_width_mm(preset(ruling)) / 2
    for letters, bands_up in (("dt", 2), ("bfhklADMZ", 3), ("aceo", 1)):
        rises = [ruled.line(one).rise_mm - half_pen for one in letters]
        assert rises == [pytest.approx(bands_up * band)] * len(letters)
    assert [ruled.line(one).drop_mm - half_pen for one in "gpqy"] == [pytest.approx(2 * band)] * 4
