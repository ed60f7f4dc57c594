"""Who stands on which line of a changed list."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from namewright.classbook.enrol import NEW
from namewright.web.list_same import answered, answers, is_meant_anew, meant, same_children, stood, with_answer

BEFORE = ["Mira Quill", "Tilo Reed", "Bo Lindle", "Katla Pruner"]
IDS = {1: 11, 2: 12, 3: 13, 4: 14}


def test_lines_as_they_were_are_who_they_were() -> None:
    """Lines taken out, put in and sorted otherwise take nobody with them; a changed one is left to its names."""
    after = ["", "Katla Pruner", "Tilo Read", "Mira Quill"]
    assert same_children(BEFORE, IDS, after) == {2: 14, 4: 11}


def test_of_lines_that_are_alike_none_is_told_apart() -> None:
    """One of them may be gone, and only a person knows which."""
    assert same_children(["Ivo", "Ivo", "Bo"], {1: 1, 2: 2, 3: 3}, ["Ivo", "Bo"]) == {2: 3}


def test_an_answer_takes_the_place_of_another() -> None:
    """A line is one child, and a child stands on one line; that somebody is new may be said of many."""
    settled = with_answer({"aa", "bb=7", "cc=0"}, "dd", 7)
    assert settled == {"aa", "cc=0", "dd=7"}
    settled = with_answer(settled, "dd", NEW)
    assert settled == {"aa", "cc=0", "dd=0"}
    assert answered(settled | {"ee=3"}, ["x", "dd", "", "ee"], lambda text: text) == {2: NEW, 4: 3}


def test_lines_that_say_the_same_may_be_several_children() -> None:
    """Each answer is of another one of them; one more than there are lines takes the place of all."""
    settled = with_answer(with_answer(set(), "ava", 5, alike=2), "ava", 6, alike=2)
    found = answered(settled, ["ava", "bo", "ava"], lambda text: text)
    assert sorted(found) == [1, 3]
    assert set(found.values()) == {5, 6}
    assert answered(with_answer(settled, "ava", 7, alike=2), ["ava", "ava"], lambda text: text) == {1: 7}


@given(st.lists(st.sampled_from(["Mira Quill", "Mira Quil", "Tilo", "Tila", "Bo", ""]), max_size=8),
       st.lists(st.sampled_from(["Mira Quill", "Mira Quil", "Tilo", "Tila", "Bo", ""]), max_size=8))
def test_nobody_stands_on_two_lines(before: list[str], after: list[str]) -> None:
    """Whatever was changed, each child stands on one line at most, and only on a line that says the same."""
    ids = {line: 100 + line for line, text in enumerate(before, 1) if text}
    found = same_children(before, ids, after)
    assert len(set(found.values())) == len(found)
    assert all(after[line - 1] == before[child_id - 101] for line, child_id in found.items())


def test_what_was_said_of_a_name_is_found_by_its_line() -> None:
    """That it is meant as it stands, and what stood there in another script before; other answers stay beside it."""
    settled = with_answer({meant("Zoe"), stood("Xiaoming", "王 小明=~!"), "bb"}, "Zoe", 7)
    found = answers(settled, ["Zoe", "", "Xiaoming", "Bo"], lambda text: text)
    assert (found.meant, found.also) == ({1}, {3: "王 小明=~!"})
    assert not any(map(str.isspace, "".join(settled)))  # which part answers where they are kept
    assert answered(settled, ["Zoe", "Xiaoming"], lambda text: text) == {1: 7}
    assert (is_meant_anew(settled), is_meant_anew({"bb", stood("Bo", "Бо")})) == (True, False)
