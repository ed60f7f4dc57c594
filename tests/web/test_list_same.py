"""Who stands on which line of a changed list."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from namewright.web.list_same import same_children

BEFORE = ["Mira Quill", "Tilo Reed", "Bo Lindle", "Katla Pruner"]
IDS = {1: 11, 2: 12, 3: 13, 4: 14}


def test_a_slip_that_is_mended_is_the_same_child() -> None:
    """Between lines that stayed, the likest line is taken; another name is nobody we know."""
    after = ["Mira Quill", "Tilo Read", "Wenna Praske", "Katla Pruner"]
    assert same_children(BEFORE, IDS, after) == {1: 11, 2: 12, 4: 14}


def test_lines_that_move_or_go_take_nobody_with_them() -> None:
    """A line taken out shifts the rest; one that moved is not given to a line that is like it."""
    assert same_children(BEFORE, IDS, ["Tilo Reed", "Bo Lindle", "Katla Pruner"]) == {1: 12, 2: 13, 3: 14}
    after = ["Mira Quill", "Bo Lindle", "Tilo Reed", "Katla Pruner"]
    moved = same_children([*BEFORE, "Bo Lindl"], IDS | {5: 15}, after)
    assert 15 not in moved.values()


def test_in_another_class_nobody_is_found_by_likeness() -> None:
    """Names like those of before on most lines are other children, who must not have their notes."""
    assert same_children(BEFORE, IDS, ["Mara Quill", "Tila Reed", "Bo Lindle", "Karla Pruner"]) == {3: 13}


@given(st.lists(st.sampled_from(["Mira Quill", "Mira Quil", "Tilo", "Tila", "Bo", ""]), max_size=8),
       st.lists(st.sampled_from(["Mira Quill", "Mira Quil", "Tilo", "Tila", "Bo", ""]), max_size=8))
def test_nobody_stands_on_two_lines(before: list[str], after: list[str]) -> None:
    """Whatever was changed, each child stands on one line at most, and lines that did not change keep theirs."""
    ids = {line: 100 + line for line, text in enumerate(before, 1) if text}
    found = same_children(before, ids, after)
    assert len(set(found.values())) == len(found)
    assert same_children(before, ids, before) == ids
