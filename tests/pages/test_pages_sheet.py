"""A practice sheet, over a grid of names, rulings, supports, hands and papers: what every page promises."""

from __future__ import annotations

import random
from collections.abc import Iterator
from itertools import pairwise, product

import pytest

from namewright.letters.strokes import Bounds, join_bounds
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import DARK, Fragment, Ink, Piece, Style, line
from namewright.lines.ruling import PRESETS, Line, preset
from namewright.lines.setting import pen_width_mm
from namewright.pages.page import Furniture, Guide, Page, PageError, Row, Tile, checked, leaves
from namewright.pages.paper import Paper
from namewright.pages.press import Press
from namewright.pages.sheet import SheetSettings, practice_pages
from namewright.settings import Hand, Support

NAMES = ("Bo", "Christopherson", "Íñigo", "Ana María", "Peggy", "Mary-Kate", "ẤỘ", "Jörg")
SMALL = {name for name, ruling in PRESETS.items() if ruling.x_height_mm <= 10}

Case = tuple[str, SheetSettings]


def grid() -> list[Case]:
    """Return a sample of all combinations, the same on every machine; every value of every choice is in it."""
    full = list(product(NAMES, PRESETS, Support, Hand, Paper, (False, True), (False, True)))
    sample = random.Random(7).sample(full, 260)  # 4 % of them
    for at, kinds in enumerate((NAMES, PRESETS, Support, Hand, Paper)):
        assert {case[at] for case in sample} == set(kinds)
    return [(name, SheetSettings(PRESETS[ruling], paper, landscape, binding, support, hand))
            for name, ruling, support, hand, paper, landscape, binding in sample]


CASES = grid()
_MADE: dict[Case, tuple[Page, ...]] = {}


def made(press: Press, case: Case) -> tuple[Page, ...]:
    """Return the pages of a case, made once; every name of the grid fits on every ruling."""
    if case not in _MADE:
        _MADE[case] = practice_pages(press, case[0], f"{case[0]} T.", case[1])
    return _MADE[case]


def told(case: Case) -> str:
    name, settings = case
    return f"{name} {settings.ruling.name} {settings.paper} {settings.support} {settings.hand}"


def rows(pages: tuple[Page, ...], form: Form | None = None) -> list[Row]:
    return [item for page in pages for item in page.items
            if isinstance(item, Row) and (form is None or item.form == form)]


def ink_of(row: Row) -> list[Ink]:
    return [item for item in row.items if isinstance(item, Ink)]


def box_of(row: Row) -> Bounds:
    """Return the box of a row's letters and guide lines."""
    return join_bounds(item.bounds() for item in row.items)


def test_nothing_comes_near_the_edge(press: Press) -> None:
    """All ink keeps 10 mm from every edge of the sheet, told from each item's own box."""
    for case in CASES:
        for page in made(press, case):
            for item in leaves(page.items):
                x0, y0, x1, y1 = item.bounds()
                assert min(x0, y0, page.width_mm - x1, page.height_mm - y1) >= 10, told(case)


def test_the_binding_edge_stays_white(press: Press) -> None:
    """With a binding edge nothing stands in its first 20 mm, where the holes go.

    ISO 838 holes end 15.5 mm from the edge at the outermost (12 ± 1 mm to the centre, 6 ± 0.5 mm wide).
    """
    seen = 0
    for case in CASES:
        if case[1].binding:
            for page in made(press, case):
                left, top, *_ = join_bounds(item.bounds() for item in leaves(page.items))
                turned = page.width_mm > page.height_mm
                assert (top if turned else left) >= 20, told(case)
                seen += 1
    assert seen > 50


def test_tracing_never_outweighs_writing(press: Press) -> None:
    """There are at most two rows of dots to a name's row, and never more than rows to copy and to write from memory."""
    for case in CASES:
        pages = made(press, case)
        dotted, blank = rows(pages, Form.DOTTED), rows(pages, Form.BLANK)
        halves = len({row.name for row in rows(pages)})
        assert len(dotted) <= 2 * halves, told(case)
        assert len(dotted) <= len(blank), told(case)
        if case[1].support in (Support.LIGHT, Support.INDEPENDENT):
            assert dotted == [], told(case)
        else:
            assert dotted, told(case)


def test_every_sheet_has_a_model_and_room_to_write(press: Press) -> None:
    """Whatever the support, a child sees the name whole and writes it from a model and from memory."""
    for case in CASES:
        pages = made(press, case)
        halves = len({row.name for row in rows(pages)})
        assert len(rows(pages, Form.SOLID)) >= 2 * halves, told(case)
        assert len(rows(pages, Form.BLANK)) >= 2 * halves, told(case)


def test_the_rows_of_a_name_say_the_name(press: Press) -> None:
    """Rows carry the name, or its two parts where it stands in two rows; nothing is left out of it."""
    for case in CASES:
        parts = list(dict.fromkeys(row.name for row in rows(made(press, case))))
        assert len(parts) <= 2
        assert "".join(parts).replace(" ", "") == case[0].replace(" ", ""), told(case)


def base_of(row: Row) -> float:
    """Return the height on the page of a row's printed base line."""
    return next(item.y for item in row.items if isinstance(item, Guide) and item.line is Line.BASE)


def test_a_left_hander_copies_from_the_right(press: Press) -> None:
    """Where the model stands beside the writing, it is at the right for the left hand, at the left for the right."""
    seen = {Hand.LEFT: 0, Hand.RIGHT: 0}
    for case in CASES:
        for page in made(press, case) if case[1].ruling.lines else ():
            models = {base_of(row): box_of(row) for row in rows((page,), Form.SOLID)}
            for room in rows((page,), Form.BLANK):
                if model := models.get(base_of(room)):
                    assert (box_of(room)[0] < model[0]) == (case[1].hand is Hand.LEFT), told(case)
                    seen[case[1].hand] += 1
    assert min(seen.values()) > 20


def test_a_left_handers_model_over_the_row_is_at_the_right(press: Press) -> None:
    """Where the name is too wide to stand beside, the left-hander's model to copy ends at the right margin."""
    settings = SheetSettings(preset("us-3/4"), hand=Hand.LEFT, support=Support.INDEPENDENT)
    copy = rows(practice_pages(press, "Christopherson", "C", settings), Form.SOLID)[-1]
    ink = join_bounds(item.bounds() for item in ink_of(copy))
    assert max(item.x1 for item in copy.items if isinstance(item, Guide)) - ink[2] < 1


def test_tile_boxes_have_a_size_for_fingers(press: Press) -> None:
    """Boxes are square, 15 to 26 mm, one for each letter in its order, and none overlaps another."""
    seen = 0
    for case in CASES:
        tiles = [item for page in made(press, case) for item in page.items if isinstance(item, Tile)]
        if tiles:
            assert "".join(tile.letter for tile in tiles) == case[0].replace(" ", ""), told(case)
            assert all(tile.width == tile.height and 15 <= tile.width <= 26 for tile in tiles), told(case)
            assert_apart([tile.bounds() for tile in tiles], told(case))
            seen += 1
    assert seen > 100


def assert_apart(boxes: list[Bounds], what: str, shared_mm: float = 0.0) -> None:
    """Assert that no two boxes share more than a strip ``shared_mm`` wide."""
    for at, a in enumerate(boxes):
        for b in boxes[:at]:
            assert max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3]) >= -shared_mm - 1e-6, what


def boxes_of(page: Page) -> Iterator[Bounds]:
    """Yield the boxes of a row's letters (of its guide lines where it has none), of tiles and of captions."""
    for item in page.items:
        if isinstance(item, Row) and item.items:
            yield join_bounds(one.bounds() for one in ink_of(item) or item.items)
        elif isinstance(item, Tile):
            yield item.bounds()
        elif isinstance(item, Furniture):
            yield from (one.bounds() for one in item.items)


def test_ink_of_different_rows_never_meets(press: Press) -> None:
    """Marks over capitals and tails stay out of the neighbours' ink, and captions out of both.

    A stroke that lies on a line reaches half a pen beyond it; where the foot of one row is the top line of the
    next, two boxes may share that much.
    """
    for case in CASES:
        for page in made(press, case):
            assert_apart(list(boxes_of(page)), told(case), shared_mm=pen_width_mm(case[1].ruling))


@pytest.mark.parametrize("name", ["ẤỘ", "Ẹ̀ḿ", "Ǘű"])
@pytest.mark.parametrize("ruling", ["us-3/4", "us-1/2", "uk-5", "es-4", "fr-2"])
def test_marks_over_capitals_get_white_of_their_own(press: Press, name: str, ruling: str) -> None:
    """Where marks rise over the top line, rows move apart: more than 1 mm stays white between a mark and any row above.

    Told from boxes: a row's own guide lines count as ink.
    """
    pages = practice_pages(press, name, name, SheetSettings(preset(ruling), support=Support.LIGHT))
    for page in pages:
        boxes = sorted((box_of(row) for row in rows((page,))), key=lambda box: box[3])
        for above, below in pairwise(boxes):
            if below[0] < above[2] and above[0] < below[2]:
                assert below[1] - above[3] > 1.0


def test_letters_stand_on_the_base_line(press: Press) -> None:
    """In every row with ink the letters' feet are on the printed base line: a name without tails ends there."""
    for ruling, support in product(("us-3/4", "de-6", "uk-5"), Support):
        pages = practice_pages(press, "Nomed", "N", SheetSettings(preset(ruling), support=support))
        for row in rows(pages):
            base = next(item.y for item in row.items if isinstance(item, Guide) and item.line is Line.BASE)
            letters = [one for one in ink_of(row) if one.style.width_mm > 0.3]
            if letters:
                lowest = max(piece.bounds()[3] for one in letters for piece in one.pieces)
                assert lowest == pytest.approx(base, abs=0.01)


def test_the_outline_begins_on_the_first_page(press: Press) -> None:
    """A child's first page carries the label, the others none."""
    for case in CASES:
        first, *others = made(press, case)
        assert first.outline == f"{case[0]} T."
        assert all(page.outline is None for page in others)


def test_most_rulings_take_one_page(press: Press) -> None:
    """On lines up to 20 mm high a name in one row takes a single page."""
    for case in CASES:
        pages = made(press, case)
        in_one_row = len({row.name for row in rows(pages)}) == 1
        if case[1].ruling.name in SMALL and not case[1].landscape and in_one_row:
            assert len(pages) == 1, told(case)


def test_a_name_too_wide_is_told_with_both_widths(press: Press) -> None:
    """Where nothing fits, the line height stays and the sentence gives the width needed and the width there is."""
    with pytest.raises(DoesNotFit, match=r"needs \d+ mm and the widest row has \d+ mm") as caught:
        practice_pages(press, "Maximilianwolfram", "M", SheetSettings(preset("us-3/4").scaled_to(80)))
    assert caught.value.needed_mm > caught.value.room_mm


def test_captions_we_lack_are_told(press: Press) -> None:
    """A language without captions is refused in a sentence that names those there are."""
    with pytest.raises(ValueError, match=r"choose one of .*en"):
        practice_pages(press, "Bo", "Bo", SheetSettings(preset("us-3/4"), language="xx"))


def blot(x: float, y: float) -> Ink:
    return Ink(Style(0.4, DARK), (line(x, y, x + 5, y),))


@pytest.mark.parametrize(("x", "y"), [(9.9, 50), (50, 10.1), (85.2, 50), (50, 89.9)])
def test_the_check_of_a_page_sees_every_edge(x: float, y: float) -> None:
    """Ink nearer than 10 mm to any edge is a violation; the same ink inside is none."""
    assert checked(Page(100, 100, (blot(50, 50),)))
    with pytest.raises(PageError, match="margin"):
        checked(Page(100, 100, (blot(50, 50), blot(x, y))))


def test_the_check_of_a_page_lists_all_violations() -> None:
    """Every violation is told at once, in groups too, and an empty path among them."""
    empty = Ink(Style(0.3), (Piece(50, 50, Fragment("", (0, 0, 0, 0))),))
    tile = Tile(90, 50, 20, 20, "B", Style(0.3))
    page = Page(100, 100, (blot(1, 50), Row("Bo", "solid", (blot(50, 2),)), empty, tile))
    with pytest.raises(PageError) as caught:
        checked(page)
    assert str(caught.value).count("margin") == 3
    assert "empty" in str(caught.value)
