"""A practice sheet, over a grid of names, rulings, supports, hands and papers: what every page promises."""

from __future__ import annotations

import random
from collections.abc import Iterator
from itertools import pairwise, product

import pytest

from longer import rest_long
from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import DARK, PALE, Ink, Role, Style, line
from namewright.lines.ruling import PRESETS, GuideLine, preset
from namewright.lines.setting import pen_width_mm
from namewright.lines.tuned import tuned
from namewright.message import Problem
from namewright.pages.blocks import CHECK_NOTE_MM
from namewright.pages.page import Furniture, Guide, Page, PageError, Row, Tile, checked, kept_off_edges, leaves
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from namewright.tuning import Tuning
from namewright.wording import wording
from pages.on_page import base_of, box_of, ink_of, is_mark, letters_of, room_of, rows_in, start_marks

NAMES = ("Bo", "Christopherson", "Íñigo", "Ana María", "Peggy", "Mary-Kate", "ẤỘ", "Jörg")
SMALL = {name for name, ruling in PRESETS.items() if ruling.x_height_mm <= 10}

FEW = 80  # of the grid, which every run tries; the long run tries the rest

Case = tuple[str, SheetSettings]


def grid() -> list[Case]:
    """Return a sample of all combinations, the same on every machine; every value of every choice is in its start."""
    full = list(product(NAMES, PRESETS, Support, Hand, Paper, (False, True), (False, True)))
    sample = random.Random(2).sample(full, 260)  # 4 % of them
    for at, kinds in enumerate((NAMES, PRESETS, Support, Hand, Paper)):
        assert {case[at] for case in sample[:FEW]} == set(kinds)
    return [(name, SheetSettings(PRESETS[ruling], paper, landscape, binding, support, hand))
            for name, ruling, support, hand, paper, landscape, binding in sample]


CASES = grid()
_MADE: dict[Case, tuple[Page, ...]] = {}


def made(setter: Typesetter, case: Case) -> tuple[Page, ...]:
    """Return the pages of a case, made once; every name of the grid fits on every ruling."""
    if case not in _MADE:
        _MADE[case] = practice_pages(setter, case[0], f"{case[0]} T.", case[1])
    return _MADE[case]


@pytest.fixture(params=rest_long((CASES[:FEW], CASES[FEW:])), ids=("few", "rest"))
def cases(request: pytest.FixtureRequest) -> list[Case]:
    """The start of the grid or, in the long run, its rest."""
    found: list[Case] = request.param
    return found


def told(case: Case) -> str:
    name, settings = case
    return f"{name} {settings.ruling.name} {settings.paper} {settings.support} {settings.hand}"


@pytest.mark.long
def test_nothing_comes_near_the_edge(setter: Typesetter, cases: list[Case]) -> None:
    """All ink keeps 10 mm from every edge of the sheet, told from each item's own box."""
    for case in cases:
        for page in made(setter, case):
            for item in leaves(kept_off_edges(page.items)):
                x0, y0, x1, y1 = item.bounds()
                assert min(x0, y0, page.width_mm - x1, page.height_mm - y1) >= 10, told(case)


def test_the_binding_edge_stays_white(setter: Typesetter, cases: list[Case]) -> None:
    """With a binding edge nothing stands in its first 20 mm, where the holes go.

    ISO 838 holes end 15.5 mm from the edge at the outermost (12 ± 1 mm to the centre, 6 ± 0.5 mm wide).
    """
    seen = 0
    for case in cases:
        if case[1].binding:
            for page in made(setter, case):
                left, top, *_ = boxes.joined(item.bounds() for item in leaves(kept_off_edges(page.items)))
                turned = page.width_mm > page.height_mm
                assert (top if turned else left) >= 20, told(case)
                seen += 1
    assert seen > len(cases) / 6


def test_tracing_never_outweighs_writing(setter: Typesetter, cases: list[Case]) -> None:
    """There are at most two rows of dots to a name's row, and never more than rows to copy and to write from memory."""
    for case in cases:
        pages = made(setter, case)
        dotted, blank = rows_in(pages, Form.DOTTED), rows_in(pages, Form.BLANK)
        halves = len({row.name for row in rows_in(pages)})
        assert len(dotted) <= 2 * halves, told(case)
        assert len(dotted) <= len(blank), told(case)
        if case[1].support in (Support.LIGHT, Support.INDEPENDENT):
            assert dotted == [], told(case)
        else:
            assert dotted, told(case)


def test_every_sheet_has_a_model_and_room_to_write(setter: Typesetter, cases: list[Case]) -> None:
    """Whatever the support, a child sees the name whole and writes it from a model and from memory."""
    for case in cases:
        pages = made(setter, case)
        halves = len({row.name for row in rows_in(pages)})
        assert len(rows_in(pages, Form.SOLID)) >= 2 * halves, told(case)
        assert len(rows_in(pages, Form.BLANK)) >= 2 * halves, told(case)


def test_the_rows_of_a_name_say_the_name(setter: Typesetter, cases: list[Case]) -> None:
    """Rows carry the name, or its two parts where it stands in two rows; nothing is left out of it."""
    for case in cases:
        parts = list(dict.fromkeys(row.name for row in rows_in(made(setter, case))))
        assert len(parts) <= 2
        assert "".join(parts).replace(" ", "") == case[0].replace(" ", ""), told(case)


def test_the_right_hand_copies_from_its_left(setter: Typesetter, cases: list[Case]) -> None:
    """Where the model stands beside the writing, it is at the left, where the right hand does not cover it."""
    seen = 0
    for case in cases:
        for page in made(setter, case) if case[1].ruling.lines else ():
            models = {base_of(row): box_of(row) for row in rows_in((page,), Form.SOLID)}
            for room in rows_in((page,), Form.BLANK):
                if model := models.get(base_of(room)):
                    assert case[1].hand is Hand.RIGHT, told(case)
                    assert model[0] < model[2] <= box_of(room)[0] + 1, told(case)
                    seen += 1
    assert seen > len(cases) / 6


def test_tile_boxes_have_a_size_for_fingers(setter: Typesetter, cases: list[Case]) -> None:
    """Boxes are square, 26 mm for a tile of 25, one for each letter in its order; no two share more than an edge."""
    seen = 0
    for case in cases:
        tiles = [item for page in made(setter, case) for item in page.items if isinstance(item, Tile)]
        if tiles:
            assert "".join(tile.letter for tile in tiles) == case[0].replace(" ", ""), told(case)
            assert all(tile.width == tile.height == 26 for tile in tiles), told(case)
            assert_apart([tile.bounds() for tile in tiles], told(case), shared_mm=0.4)  # the edge that two boxes share
            seen += 1
    assert seen > len(cases) / 3


def assert_apart(boxes: list[Box], what: str, shared_mm: float = 0.0) -> None:
    """Assert that no two boxes share more than a strip ``shared_mm`` wide."""
    for at, a in enumerate(boxes):
        for b in boxes[:at]:
            assert max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3]) >= -shared_mm - 1e-6, what


def boxes_of(page: Page) -> Iterator[Box]:
    """Yield the boxes of a row's letters (of its guide lines where it has none), of tiles and of captions."""
    for item in page.items:
        if isinstance(item, Row) and item.items:
            yield boxes.joined(one.bounds() for one in ink_of(item) or item.items)
        elif isinstance(item, Tile):
            yield item.bounds()
        elif isinstance(item, Furniture):
            yield from (one.bounds() for one in item.items if one.spelled)
            if drawn := [one.bounds() for one in item.items if not one.spelled]:  # what belongs together is one
                yield boxes.joined(drawn)


def test_ink_of_different_rows_never_meets(setter: Typesetter, cases: list[Case]) -> None:
    """Marks over capitals and tails stay out of the neighbours' ink, and captions out of both.

    A stroke that lies on a line reaches half a pen beyond it; where the foot of one row is the top line of the
    next, two boxes may share that much.
    """
    for case in cases:
        for page in made(setter, case):
            assert_apart(list(boxes_of(page)), told(case), shared_mm=pen_width_mm(case[1].ruling))


def test_the_outline_begins_on_the_first_page(setter: Typesetter, cases: list[Case]) -> None:
    """A child's first page carries the label, the others none."""
    for case in cases:
        first, *others = made(setter, case)
        assert first.outline == f"{case[0]} T."
        assert all(page.outline is None for page in others)


def test_most_rulings_take_one_page(setter: Typesetter, cases: list[Case]) -> None:
    """On lines up to 20 mm high a name in one row takes a single page, or two where its boxes fill one."""
    seen = 0
    for case in cases:
        pages = made(setter, case)
        in_one_row = len({row.name for row in rows_in(pages)}) == 1
        if case[1].ruling.name in SMALL and not case[1].landscape and in_one_row:
            boxed = any(isinstance(item, Tile) for page in pages for item in page.items)
            assert len(pages) == 1 or (len(pages) == 2 and boxed), told(case)
            seen += len(pages) == 1
    assert seen > len(cases) / 9


def test_a_name_too_wide_is_told_with_both_widths(setter: Typesetter) -> None:
    """Where nothing fits, the line height stays and the sentence gives the width needed and the width there is."""
    with pytest.raises(DoesNotFit, match=r"fit\.row") as caught:
        practice_pages(setter, "Maximilianwolfram", "M", SheetSettings(preset("us-3/4").scaled_to(80)))
    assert caught.value.needed_mm > caught.value.room_mm


def test_captions_we_lack_are_told(setter: Typesetter) -> None:
    """A language without captions is refused with those there are."""
    with pytest.raises(Problem) as refused:
        practice_pages(setter, "Bo", "Bo", SheetSettings(preset("us-3/4"), language="xx"))
    assert "en" in refused.value.message["known"]  # type: ignore[operator]


def blot(x: float, y: float) -> Ink:
    return Ink.of(Style(0.4, DARK), (line(x, y, x + 5, y),))


@pytest.mark.parametrize(("x", "y"), [(9.9, 50), (50, 10.1), (85.2, 50), (50, 89.9)])
def test_the_check_of_a_page_sees_every_edge(x: float, y: float) -> None:
    """Ink nearer than 10 mm to any edge is a violation; the same ink inside is none."""
    assert checked(Page(100, 100, (blot(50, 50),)))
    with pytest.raises(PageError, match="margin"):
        checked(Page(100, 100, (blot(50, 50), blot(x, y))))


def test_the_check_of_a_page_lists_all_violations() -> None:
    """Every violation is told at once, in groups too."""
    tile = Tile(90, 50, 20, 20, "B", Style(0.3))
    page = Page(100, 100, (blot(1, 50), Row("Bo", "solid", (blot(50, 2),)), tile))
    with pytest.raises(PageError) as caught:
        checked(page)
    assert str(caught.value).count("margin") == 3


def test_a_solid_dot_shows_where_each_row_starts(setter: Typesetter, cases: list[Case]) -> None:
    """Every row to trace or to write has its own dot, where the first stroke of its name begins.

    In a trace it lies on the path; a name that is written begins in the first 2 mm of its row.
    """
    for case in cases:
        for page in made(setter, case) if case[1].ruling.lines else ():
            marks = start_marks(page)
            written = rows_in((page,), Form.DOTTED) + rows_in((page,), Form.BLANK)
            assert len(marks) == len(written), told(case)
            for row in written:
                first = setter.ruled(case[1].ruling).line(row.name).letters[0]
                right, down = first.letter.strokes[0].start
                left, height = room_of(row)[0] + first.x + right, base_of(row) + down
                middles = [((box[0] + box[2]) / 2 - left, (box[1] + box[3]) / 2 - height) for box in marks]
                own = [(dx, dy) for dx, dy in middles if 3.99 < dx < 5.3 and abs(dy) < 0.01]
                assert len(own) == 1, told(case)


def furniture_of(page: Page) -> list[Ink]:
    return [one for item in page.items if isinstance(item, Furniture) for one in item.items]


def says(setter: Typesetter, page: Page, key: str, size_mm: float = 1.9) -> bool:
    """Return whether a caption stands on a page: its own letters, one after another, at some place."""
    wanted = [piece.fragment for piece in setter.text(wording("en").say(f"page.{key}"), size_mm).pieces]
    return any([piece.fragment for piece in one.pieces] == wanted for one in furniture_of(page))


def folds(page: Page) -> list[Box]:
    """Return the boxes of the lines that run off the sheet."""
    return [one.bounds() for item in page.items if isinstance(item, Furniture) and item.bleeds for one in item.items]


def caption_at(setter: Typesetter, page: Page, key: str, size_mm: float = 1.9) -> Box | None:
    """Return the box of a caption of a page, None where it does not stand there."""
    wanted = [piece.fragment for piece in setter.text(wording("en").say(f"page.{key}"), size_mm).pieces]
    return next((one.bounds() for one in furniture_of(page)
                 if [piece.fragment for piece in one.pieces] == wanted), None)


def assert_hidden(setter: Typesetter, page: Page, what: str) -> bool:
    """Assert that one fold line parts all that shows the name from the rows of memory; return whether there are any."""
    memory = caption_at(setter, page, "memory")
    assert len(folds(page)) == (memory is not None) == says(setter, page, "fold", CHECK_NOTE_MM), what
    if memory is None:
        return False
    ((x0, y, x1, _),) = folds(page)
    shown = [one.bounds() for row in rows_in((page,)) for one in ink_of(row)]
    shown += [item.bounds() for item in page.items if isinstance(item, Tile | Ink) and not is_mark(item)]  # owner too
    assert shown, what
    assert max(box[3] for box in shown) < y < memory[1], what
    edges = [room_of(row) for row in rows_in((page,)) if any(isinstance(item, Guide) for item in row.items)]
    assert all(x0 < edge[0] and x1 > edge[2] - 1 for edge in edges), what
    return True


def test_the_fold_hides_every_model_and_no_row_to_write_from_memory(setter: Typesetter, cases: list[Case]) -> None:
    """On each page with rows to write from memory one fold line parts them from all that shows the name.

    Regression: on a second page the model to copy, or the name in its heading, stood in sight of the rows.
    """
    seen = [assert_hidden(setter, page, told(case)) for case in cases for page in made(setter, case)]
    assert sum(seen) > 2 * len(cases) / 3


@pytest.mark.parametrize("height", [40, 50, 60])
@pytest.mark.parametrize("name", ["Bgd", "Wilhelmina", "Ana-Lucía", "Ana Lucía"])
def test_the_fold_hides_the_model_on_later_pages(setter: Typesetter, name: str, height: float) -> None:
    """The same on the second and third page of tall lines and double names."""
    for hand, support in product(Hand, Support):
        settings = SheetSettings(preset("us-3/4").scaled_to(height), hand=hand, support=support)
        pages = practice_pages(setter, name, name, settings)
        assert len(pages) > 1
        assert any([assert_hidden(setter, page, name) for page in pages])


def test_captions_say_what_the_rows_are(setter: Typesetter, cases: list[Case]) -> None:
    """A child is told to write next to the name where the model stands beside, and under it where it stands above."""
    seen = {"copy_beside": 0, "copy_under": 0}
    for case in cases:
        for page in made(setter, case) if case[1].ruling.lines else ():
            blanks = {base_of(row) for row in rows_in((page,), Form.BLANK)}
            models = [base_of(row) for row in rows_in((page,), Form.SOLID)]
            copies = [base for base in models if base in blanks]
            if says(setter, page, "copy_beside"):
                assert copies, told(case)
                assert not says(setter, page, "copy_under")
                seen["copy_beside"] += 1
            elif says(setter, page, "copy_under"):
                assert not copies, told(case)
                seen["copy_under"] += 1
            if page.outline:
                independent = case[1].support is Support.INDEPENDENT
                assert says(setter, page, "model_plain" if independent else "model"), told(case)
                assert not says(setter, page, "model" if independent else "model_plain"), told(case)
    assert min(seen.values()) > 20


@pytest.mark.parametrize("count", [1, 2, 3, 5])
def test_as_many_rows_as_were_asked_for(setter: Typesetter, count: int) -> None:
    """The number of rows to write on is never more than what is asked for, but for what every sheet needs (three)."""
    for support in Support:
        settings = SheetSettings(preset("us-3/8"), support=support, tuning=Tuning(rows=count))
        (page,) = practice_pages(setter, "Wren", "Wren", settings)
        written = len(rows_in((page,), Form.BLANK)) + len(rows_in((page,), Form.DOTTED))
        least = 3 if support in (Support.FULL, Support.PARTIAL) else 2
        assert written == max(count, least)


def test_settings_reach_the_page(setter: Typesetter) -> None:
    """Line height, midline, row gap, letter spacing and pens of one child are what is measured on the child's sheet."""
    tuning = Tuning(line_height=14, midline=0.4, row_gap=9, letter_spacing=5, model_pen=1.2, dot_size=1.3, dot_pitch=4)
    plain, own = (practice_pages(setter, "Bo", "Bo", SheetSettings(tuned(preset("us-1/2"), one), tuning=one))[0]
                  for one in (Tuning(), tuning))
    copy = next(row for row in rows_in((own,), Form.SOLID)[1:])
    heights = {item.line: base_of(copy) - item.y for item in copy.items if isinstance(item, Guide)}
    assert (heights[GuideLine.TOP], heights[GuideLine.MID]) == pytest.approx((14, 5.6))
    assert {one.style.width_mm for one in ink_of(copy)} == {1.2}
    dotted = rows_in((own,), Form.DOTTED)
    dots = {one.style.width_mm for row in dotted for one in ink_of(row) if one.style.colour != PALE}
    assert dots == {1.3}
    first, second = (letter_gap(rows_in((page,), Form.DOTTED)[0]) for page in (plain, own))
    assert second > first + 4
    written = sorted(base_of(row) for row in rows_in((own,), Form.BLANK))
    assert min(b - a for a, b in pairwise(written)) == pytest.approx(14 + 5.6 + 9)


def letter_gap(row: Row) -> float:
    """Return the white between the first two letters of a dotted row."""
    one, two, *_ = letters_of(row)
    return two[0] - one[2]


def test_a_name_that_ends_in_a_point_ends_its_sentence(setter: Typesetter) -> None:
    """“This page is for Ava B.” has one point, not two; a name without one gets the sentence's own."""
    for label in ("Ava B.", "Ava"):
        (page, *_) = practice_pages(setter, "Ava", label, SheetSettings(preset("us-1/2")))
        top = [item for item in page.items
               if isinstance(item, Ink) and item.spelled and item.spelled.role is Role.TITLE]
        sentence = f"This page is for {label.removesuffix('.')}."
        assert sum(len(item.pieces) for item in top) == len(sentence.replace(" ", ""))


def test_the_check_of_a_page_counts_the_width_of_lines() -> None:
    """A line or a box whose middle is inside reaches over the margin by half its width: that is a violation too."""
    guide = Guide(GuideLine.BASE, 20, 80, 10.1, Style(0.5))
    tile = Tile(10.1, 20, 20, 20, "B", Style(0.4))
    for item in (guide, tile):
        with pytest.raises(PageError, match="margin"):
            checked(Page(100, 100, (item,)))
