"""One question for a list of which each line names two people, and what each answer makes of it."""

from __future__ import annotations

import pytest

from namewright.message import Message
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

_FIRST = ("Jo Vost", "Mira Tarn", "Leo Zell", "Ava de la Rue", "Noah Birk")
_SECOND = ("Ana Lind", "Petra Groß", "Karl Wick-Oster", "Rosa O’Dell", "Hugo P.")
_GIVEN, _FAMILY = ("Mira", "Leo", "Ava", "Noah", "Lina"), ("Lange", "Vost", "Tarnul", "Oskin", "Brane")


def _list(form: str, first: tuple[str, ...] = _FIRST, second: tuple[str, ...] = _SECOND) -> str:
    return "\n".join(form.format(one=one, two=two, at=at)
                     for at, (one, two) in enumerate(zip(first, second, strict=True), 1))


def _asked(text: str, columns: str = "") -> Message:
    with pytest.raises(RosterError) as error:
        read_roster(text, columns=columns)
    return error.value.message


def _whole(text: str, columns: str) -> list[str]:
    return [f"{child.given} {child.family}".strip() for child in read_roster(text, columns=columns).children]


@pytest.mark.parametrize("form", [
    "{one}: {two}", "{one} = {two}", "{at}. {one} ({two})", "{two} signed the form for {one}",
    "#12 {two}: iPad of {one} broken", "{two} ha firmato il modulo di {one}", "8:1{at} {two} rief wegen {one} an",
    "{two} hat das Formular für {one} unterschrieben",
])
def test_a_list_of_two_names_a_line_is_one_question_with_three_answers(form: str) -> None:
    text = _list(form)
    asked = _asked(text)
    turned = form.index("{two}") < form.index("{one}")
    first, second = (_SECOND, _FIRST) if turned else (_FIRST, _SECOND)
    assert (asked.key, asked["count"], asked["one"], asked["other"]) == ("roster.two_named", 5, first[0], second[0])
    assert _whole(text, str(asked["columns"])) == [*first]
    assert _whole(text, str(asked["or_columns"])) == [*second]
    both = [name for pair in zip(first, second, strict=True) for name in pair]
    assert _whole(text, str(asked["all_columns"])) == both


@pytest.mark.parametrize("columns", ["name,other", "other,name", "name,name"])
def test_what_is_kept_of_an_answered_list_is_read_alike_and_asks_no_more(columns: str) -> None:
    roster = read_roster(_list("{at}. {one}: {two}"), columns=columns)
    again = read_roster(roster.text)
    assert [child[:4] for child in again.children] == [child[:4] for child in roster.children]
    assert not [line for line in again.lines if line.outcome is Outcome.LEFT_OUT]


def test_what_stands_beside_a_child_is_told_on_its_line() -> None:
    roster = read_roster(_list("8:1{at} {two} rief wegen {one} an"), columns="other,name")
    (note,) = (note for note in roster.lines[0].notes if note.key == "roster.beside_child")
    assert note["words"] == "8:11 Ana Lind rief wegen an"
    assert [line.source_line for line in roster.lines] == [1, 2, 3, 4, 5]


def test_two_words_may_be_one_childs_by_either_part() -> None:
    text = _list("{one} – {two}", _GIVEN, _FAMILY)
    asked = _asked(text)
    assert asked.key == "roster.two_words"
    assert _whole(text, str(asked["one_columns"])) == [" ".join(pair) for pair in zip(_GIVEN, _FAMILY, strict=True)]
    assert _whole(text, str(asked["turned_columns"])) == [" ".join(pair) for pair in zip(_FAMILY, _GIVEN, strict=True)]
    assert _whole(text, "name,other") == [*_GIVEN]
    assert _asked(text, "given,other").key == "roster.two_words"  # which says nothing of two names


def test_lines_that_name_one_or_three_stay_as_they_are_read() -> None:
    """The question stands beside the children who were made; an answer changes the lines of two alone."""
    text = _list("{one}: {two}") + "\n\nTom Berg\nIda Wren: Uma Reed: Eva Pell"
    roster = read_roster(text)
    assert [child.given for child in roster.children] == ["Tom"]
    assert [note.key for note in roster.notes] == ["roster.two_named"]
    answered = read_roster(text, columns="name,other")
    assert [child.given for child in answered.children] == ["Jo", "Mira", "Leo", "Ava", "Noah", "Tom"]
    assert answered.lines[-1].outcome is Outcome.LEFT_OUT
    assert [note.key for note in answered.notes] == ["roster.as_a_table"]  # in which that line waits next time, too


@pytest.mark.parametrize("text", [
    "Jo Vost: Ana Lind\nMira Tarn: Petra Groß",  # two lines are answered as soon
    "Jo Vost: Ana Lind\nTom Berg\nIda Wren\nEva Pell\nMira Tarn: Petra Groß\nUma Reed\nLeo Zell: Karl Wick",
    _list("{one} – {two} – Uma Reed"),
])
def test_other_lists_are_asked_about_line_by_line(text: str) -> None:
    assert _asked_as_a_whole(text) == []


def _asked_as_a_whole(text: str) -> list[str]:
    try:
        notes = read_roster(text).notes
    except RosterError as error:
        notes = (error.message,)
    return [note.key for note in notes if note.key in ("roster.two_named", "roster.two_words")]
