"""Parts of a sheet dealt onto pages: everything that is needed stands there, in order, and nothing is overfull."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from namewright.pages.ladder import Part, in_order
from namewright.pages.paging import Block, Heights, Plan, grouped, planned

SIDES = st.floats(4, 40)
NEEDED = st.lists(st.sampled_from(Part), min_size=1, max_size=6).map(tuple)
WISHED = st.lists(st.sampled_from([Part.TILES, Part.COPY, Part.MEMORY]), max_size=3, unique=True).map(tuple)


@st.composite
def heights(draw: st.DrawFn) -> Heights:
    """Any rows that a sheet could have, on any room."""
    rise, drop = draw(SIDES), draw(SIDES)
    foot = drop + draw(st.floats(0, 10))
    least_drop, least_foot = draw(st.floats(0.2, 1)) * drop, draw(st.floats(0.2, 1)) * foot
    return Heights(draw(st.floats(60, 280)), rise, drop, foot, least_drop, least_foot, draw(SIDES), draw(st.booleans()))


def written(plans: Sequence[Plan]) -> int:
    return sum(block.part not in (Part.MODEL, Part.TILES) for plan in plans for block in plan.blocks)


@given(heights(), st.integers(1, 2), NEEDED, WISHED, st.none() | st.integers(1, 8))
def test_any_sheet_is_planned_whole_or_not_at_all(measures: Heights, rows: int, needed: tuple[Part, ...],
                                                  wished: tuple[Part, ...], most: int | None) -> None:
    """No page is higher than its room; every row of every part that is needed stands once at least, parts in order."""
    plans = planned(measures, rows, needed, wished, most)
    assume(plans is not None)
    assert plans
    for plan in plans:
        assert measures.page(plan.blocks, plan.drop, plan.foot) <= measures.room + 1e-6
        assert measures.least_foot - 1e-9 <= plan.foot <= measures.foot + 1e-9
        assert 0 <= plan.spread <= 6
        order = [list(Part).index(block.part) for block in plan.blocks]
        assert order == sorted(order)
    for part in set(needed):
        standing = [row for plan in plans for block in plan.blocks if block.part is part for row in block.rows]
        assert len(standing) >= rows * needed.count(part)
        assert set(standing) == set(range(rows))
    least = sum(part not in (Part.MODEL, Part.TILES) for part in needed) * rows
    assert most is None or written(plans) <= max(most, least)


@given(heights(), NEEDED)
def test_more_room_never_takes_more_pages(measures: Heights, needed: tuple[Part, ...]) -> None:
    tight, wide = (planned(one, 1, needed, (), None) for one in (measures, measures._replace(room=measures.room + 40)))
    assume(tight is not None)
    assert wide is not None
    assert len(wide) <= len(tight)


def test_boxes_take_the_least_air_before_they_take_a_page_more() -> None:
    """Boxes of 30 mm and their sentence need 37 mm beside the rest with its least air: building before more air."""
    rest = Heights(0, 20, 20, 22, 8, 12, 30, doubled=False)
    need = rest.page([Block(Part.MODEL, (0,)), Block(Part.COPY, (0,))], 20, 12)
    for room, pages in ((need + 36.9, 2), (need + 37.1, 1)):
        plans = planned(Heights(room, 20, 20, 22, 8, 12, 30, doubled=False), 1, (Part.MODEL, Part.COPY),
                        (Part.TILES,), 1) or ()
        assert len(plans) == pages
        assert sum(block.part is Part.TILES for plan in plans for block in plan.blocks) == 1


def test_boxes_that_fit_on_no_page_are_left_out() -> None:
    """Where boxes are higher than a page, the sheet is made without them."""
    (plan,) = planned(Heights(120, 20, 20, 22, 8, 12, 130, doubled=False), 1, (Part.MODEL, Part.COPY), (Part.TILES,),
                      1) or ()
    assert [block.part for block in plan.blocks] == [Part.MODEL, Part.COPY]


def test_under_a_row_to_write_on_a_full_page_leaves_no_room_for_printed_tails() -> None:
    """With all its air it has the white of any other part under it; with the least, less by what only tails need."""
    heights = Heights(200, 20, 20, 22, 8, 12, 30, doubled=False, tail=9)
    memory, model = [Block(Part.MEMORY, (0,))], [Block(Part.MODEL, (0,))]
    assert heights.group(Part.MEMORY, memory, 20, 22) == heights.group(Part.MODEL, model, 20, 22)
    assert heights.group(Part.MEMORY, memory, 20, 12) == heights.group(Part.MODEL, model, 20, 12) - 9
    assert heights.group(Part.COPY, [Block(Part.COPY, (0,))], 20, 12) == heights.group(Part.MODEL, model, 20, 12)


def test_rows_higher_than_a_page_are_not_planned() -> None:
    assert planned(Heights(30, 20, 20, 22, 8, 12, 30, doubled=False), 1, (Part.COPY,), (), None) is None


def test_blocks_of_one_part_are_one_group() -> None:
    blocks = [Block(Part.COPY, (0,)), Block(Part.COPY, (1,)), Block(Part.MEMORY, (0,))]
    assert [(part, len(group)) for part, group in grouped(blocks)] == [(Part.COPY, 2), (Part.MEMORY, 1)]


@pytest.mark.parametrize("needed", [(Part.MEMORY, Part.MODEL, Part.COPY)])
def test_parts_stand_in_the_order_of_the_sheet_however_they_are_asked_for(needed: tuple[Part, ...]) -> None:
    (plan,) = planned(Heights(280, 20, 20, 22, 8, 12, 30, doubled=False), 1, needed, (), 2) or ()
    assert [block.part for block in plan.blocks] == list(in_order(needed))
