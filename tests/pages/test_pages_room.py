"""How a child's sheet uses its room: one page where that can be, several that are full, white where asked for."""

from __future__ import annotations

from itertools import pairwise, product

import pytest

from longer import rest_long
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import TEXT_PEN, Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, GuideLine, Ruling, preset
from namewright.lines.tuned import tuned
from namewright.pages.blocks import TEXT_MM
from namewright.pages.ladder import Part
from namewright.pages.page import Furniture, Guide, Letters, Page, Row, Tile
from namewright.pages.paging import Block, Heights, planned
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from namewright.tuning import Tuning
from pages.on_page import ink_of, lines_of, rows

NAMES = ("Bo", "Őrs", "Dvořák", "Peggy", "Gbémisọ́lá", "Wilhelmina", "Maximiliana", "Christophersonia",
         "Ana-Lucía Quiroga")
GREAT = [name for name, ruling in PRESETS.items() if ruling.pitch_mm >= 33]


def captions_of(page: Page) -> list[Ink]:
    """Return the captions over parts: words in the size of captions, which stand nowhere but there."""
    return [one for item in page.items if isinstance(item, Furniture) for one in item.items
            if len(one.pieces) > 10 and one.style.width_mm == pytest.approx(TEXT_PEN * TEXT_MM)]


def lowest(page: Page) -> float:
    """Return how far down a page anything to write, trace or build stands; an empty row without lines has its mark."""
    return max(item.bounds()[3] for part in page.items if not isinstance(part, Furniture)
               for item in (part.items if isinstance(part, Row | Letters) else (part,)))


@pytest.mark.parametrize("paper", Paper)
def test_plain_paper_takes_one_page(setter: Typesetter, paper: Paper) -> None:
    """On plain paper a name of up to ten letters takes one page upright, at every level of support, for either hand.

    Boxes for tiles may need a second, which is then used for more than that. A mark over a capital makes every row
    higher: there a left-hander, whose model needs a row, may have two pages without boxes.
    Regression: every second child had a page more, with one sentence and one small mark on it.
    """
    for name, support, hand in product(("Bo", "Őrs", "Dvořák", "Gbémisọ́lá", "Wilhelmina"), Support, Hand):
        pages = practice_pages(setter, name, name, SheetSettings(preset("unlined"), paper, support=support, hand=hand))
        boxed = any(isinstance(item, Tile) for page in pages for item in page.items)
        assert len(pages) <= 1 + (boxed or (name == "Őrs" and hand is not Hand.RIGHT)), (name, support)
        assert len(pages) == 1 or sum(row.form == Form.BLANK for row in rows(pages[1])) >= 2


@pytest.mark.long
def test_each_of_several_pages_is_used(setter: Typesetter) -> None:
    """Where a name needs several pages, each of them is used down to its middle and has more than one thing to do.

    Regression: pages with one row at the top, four of them for one long name.
    """
    several = 0
    for name, ruling, paper, support, hand in product(NAMES, GREAT, Paper, Support, Hand):
        pages = practice_pages(setter, name, name, SheetSettings(preset(ruling), paper, support=support, hand=hand))
        for page in pages if len(pages) > 1 else ():
            assert lowest(page) > 0.5 * page.height_mm, (name, ruling, paper, support)
            marks = sum(isinstance(item, Ink) and [piece.fragment.data for piece in item.pieces] == ["m0 0h0"]
                        for item in page.items)
            models = sum(row.form == Form.SOLID for row in rows(page))
            assert marks + models + any(isinstance(item, Tile) for item in page.items) > 1, (name, ruling, support)
            several += 1
    assert several > 100


@pytest.mark.parametrize("ruling", rest_long((name for name, ruling in PRESETS.items() if ruling.lines), 3))
def test_rows_are_never_nearer_than_the_ruling_has_them(setter: Typesetter, ruling: str) -> None:
    """However little room there is, base lines are at least the ruling's own distance apart."""
    asked = preset(ruling)
    for name, support in product(NAMES, Support):
        for page in practice_pages(setter, name, name, SheetSettings(asked, support=support)):
            bases = sorted({round(lines_of(row)[GuideLine.BASE], 3) for row in rows(page)})
            assert all(below - above > asked.pitch_mm - 0.01 for above, below in pairwise(bases)), name
            for row in rows(page):
                heights = lines_of(row)
                assert heights[GuideLine.BASE] - heights[GuideLine.MID] == pytest.approx(asked.x_height_mm)
                if GuideLine.TOP in heights:
                    assert heights[GuideLine.BASE] - heights[GuideLine.TOP] == pytest.approx(asked.line_height_mm)


@pytest.mark.parametrize("ruling", rest_long(["us-3/4", "de-5", "fr-2", "us-1/2", "uk-5", *GREAT], 4))
def test_no_tail_hangs_over_a_caption(setter: Typesetter, ruling: str) -> None:
    """Between the lowest ink of a name and the words under it 2 mm or more stay white, on full pages too.

    Regression: tails ended 1 mm over the next sentence.
    """
    seen = 0
    for name, support, hand in product(("Peggy", "Christophersonia", "Gbémisọ́lá"), Support, Hand):
        for page in practice_pages(setter, name, name, SheetSettings(preset(ruling), support=support, hand=hand)):
            tops = [caption.bounds()[1] for caption in captions_of(page)]
            for row in rows(page):
                for ink in ink_of(row):
                    foot = ink.bounds()[3]
                    base = lines_of(row).get(GuideLine.BASE, foot)
                    under = [top for top in tops if top > base]
                    assert not under or min(under) - foot >= 2.0, (name, support)
                    seen += bool(under)
    assert seen > 10


@pytest.mark.parametrize("ruling", rest_long(["us-3/4", "de-4", "fr-2.5", "us-1-1/8", "uk-5", "es-3"], 3))
def test_a_caption_belongs_to_the_row_under_it(setter: Typesetter, ruling: str) -> None:
    """It is nearer to what stands under it than to the lines and boxes over it by half as much again.

    Regression: on full pages, and over letters with marks, captions hung midway between two rows.
    """
    seen = 0
    for name, support in product(("Åse", "Ömer", "Peggy", "Guadalupe", "Christopherson", "Ẹ̀bùn"), Support):
        for page in practice_pages(setter, name, name, SheetSettings(preset(ruling), support=support)):
            drawn = [part for part in page.items if isinstance(part, Row | Letters | Tile)]
            for caption in captions_of(page):
                base, top = caption.pieces[0].y, caption.bounds()[1]
                over = [foot for part in drawn if (foot := lines_foot(part)) < top]
                under = [head for part in drawn if (head := head_of(part, preset(ruling), setter, name)) > base]
                if over and under:
                    assert top - max(over) >= 1.45 * (min(under) - base), (name, support, caption.spelled)
                    seen += 1
    assert seen > 60


def lines_foot(part: Row | Letters | Tile) -> float:
    """Return how low the lines of a row or of a box stand."""
    items = (part,) if isinstance(part, Tile) else part.items
    return max([item.bounds()[3] for item in items if isinstance(item, Guide | Tile)], default=0.0)


def head_of(part: Row | Letters | Tile, ruling: Ruling, setter: Typesetter, name: str) -> float:
    """Return how high a row or a box reaches, its letters counted: those, too, that are only to be written."""
    items = (part,) if isinstance(part, Tile) else part.items
    top = min([item.bounds()[1] for item in items], default=0.0)
    if isinstance(part, Row) and part.form == Form.BLANK:
        rise = max(ruling.line_height_mm, setter.ruled(ruling).line(name).rise_mm)
        return min(top, lines_of(part)[GuideLine.BASE] - rise)
    return top


@pytest.mark.parametrize(("name", "ruling"), rest_long(product(
    ("Bo", "Bgd", "Anja", "Wilhelmina", "Ana María"), ("us-3/4", "de-5", "fr-3", "uk-5", "unlined")), 5))
def test_the_tallest_lines_are_made_or_told(setter: Typesetter, name: str, ruling: str) -> None:
    """Lines of 40 to 80 mm either have a page or are refused in a sentence: no page is broken off half-way.

    Regression: 50 mm lines for a name of ten letters stopped the whole class.
    """
    made, refused = 0, []
    for height, landscape, hand in product((40, 50, 60, 70, 80), (False, True), Hand):
        settings = SheetSettings(preset(ruling).scaled_to(height), hand=hand, landscape=landscape)
        try:
            made += len(practice_pages(setter, name, name, settings))
        except DoesNotFit as error:
            refused.append(error)
    assert all(error.message.key in ("fit.row", "fit.page") for error in refused)
    assert all(error.needed_mm > error.room_mm for error in refused)
    assert made


def test_the_white_between_rows_that_was_asked_for_stays(setter: Typesetter) -> None:
    """A specialist's white between rows is kept on a full page: it is never given up to save a page."""
    for gap, support in product((12, 25, 40), Support):
        tuning = Tuning(line_height=24, row_gap=gap)
        settings = SheetSettings(tuned(preset("de-6"), tuning), support=support, tuning=tuning)
        for page in practice_pages(setter, "Peggy", "P", settings):
            spans = sorted({(round(min(lines_of(row).values()), 2), round(max(lines_of(row).values()), 2))
                            for row in rows(page)})
            assert all(below[0] - above[1] > gap - 0.02 for above, below in pairwise(spans))


def heights(room: float, doubled: bool = False) -> Heights:
    return Heights(room=room, rise=20, drop=20, foot=22, least_drop=8, least_foot=12, tiles=30, doubled=doubled)


def parts(blocks: tuple[Block, ...]) -> list[str]:
    return [str(block.part) for block in blocks]


NEEDED = (Part.MODEL, Part.DOTS, Part.COPY, Part.MEMORY)


def test_air_is_given_up_before_a_page_is_added() -> None:
    """Four rows of 42 mm and their sentences need 200 mm, with less air 160; with less room there are two pages.

    The sum: 4 × (20 + 22) + 4 × 7 + 4 for the fold.
    """
    for room, pages in ((200, 1), (199.9, 1), (160, 1), (159.9, 2)):
        plans = planned(heights(room), 1, NEEDED, (), None)
        assert plans is not None
        assert len(plans) == pages
        for plan in plans:
            assert heights(room).page(plan.blocks, plan.drop, plan.foot) <= room + 1e-9
            assert 12 <= plan.foot <= 22
    loose, tight = planned(heights(200), 1, NEEDED, (), None), planned(heights(160), 1, NEEDED, (), None)
    assert loose is not None
    assert loose[0].foot == 22
    assert tight is not None
    assert tight[0].foot == pytest.approx(12)


def test_further_pages_fill_with_copying_and_memory() -> None:
    """What room is left on each page goes to what is wished for and to copying and memory in turn, each wish once."""
    plans = planned(heights(146), 1, NEEDED, (Part.TILES, Part.COPY), None)
    assert plans is not None
    assert [parts(plan.blocks) for plan in plans] == [["model", "dots", "tiles"], ["copy", "copy", "memory"]]
    limited = planned(heights(146), 1, NEEDED, (Part.TILES, Part.COPY), 3)
    assert limited is not None
    assert [parts(plan.blocks) for plan in limited] == [["model", "dots", "tiles"], ["copy", "memory"]]


def test_a_double_name_may_be_parted_between_its_rows() -> None:
    """Where a model and a copy of both rows of a name are higher than a page, each row has a page, and its memory."""
    plans = planned(heights(150, doubled=True), 2, (Part.MODEL, Part.COPY, Part.MEMORY), (), None)
    assert plans is not None
    assert [[(str(block.part), block.rows) for block in plan.blocks] for plan in plans] == [
        [("model", (0, 1))], [("copy", (0,)), ("memory", (0,))], [("copy", (1,)), ("memory", (1,))],
        [("memory", (0, 1))]]
    assert planned(heights(50, doubled=True), 1, NEEDED, (), None) is None
