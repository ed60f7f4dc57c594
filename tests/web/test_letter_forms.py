"""Forms of letters as a form sends them and as settings keep them: the words of the command line."""

from __future__ import annotations

import pytest
from werkzeug.datastructures import MultiDict

from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.pages.ladder import read_rungs
from namewright.web.letter_forms import LETTERS, RUNGS, fields_of, shapes_of


def test_what_is_chosen_is_shown() -> None:
    shapes = shapes_of({"letters": "a=two-storey exit-strokes slant=8", "ladder": "dots start-dots"})
    assert shapes.forms_of("a") == ("two-storey",)
    assert shapes.forms_of("t") == ()
    assert (shapes.slant, shapes.rungs) == ("8", {"dots", "start-dots"})


@pytest.mark.parametrize(("sent", "kept"), [
    ([("letters.a", "a=two-storey"), ("letters.slant", "8")], {"letters": "a=two-storey slant=8"}),
    ([("letters", "exit-strokes"), ("letters.a", "a=two-storey")], {"letters": "exit-strokes a=two-storey"}),
    ([("letters.a", ""), ("letters.slant", " ")], {"letters": ""}),  # all as usual: taken back
    ([("ladder", "dots"), ("ladder", "start-dots"), ("rows", "3")], {"rows": "3", "ladder": "dots start-dots"}),
    ([("rows", "3")], {"rows": "3"}),  # a form that asks for no letters says nothing of them
])
def test_what_a_form_sends_stands_together(sent: list[tuple[str, str]], kept: dict[str, str]) -> None:
    assert fields_of(MultiDict(sent)) == kept


@pytest.mark.parametrize(("letter", "form"), [(letter, form) for letter, forms in LETTERS.items() for form in forms])
def test_every_form_that_is_offered_can_be_read_back(letter: str, form: str) -> None:
    """By the same words as on the command line, and shown again as it was chosen."""
    kept = fields_of(MultiDict([(f"letters.{letter}", f"{letter}={form}")]))
    assert shapes_of(kept).forms_of(letter) == (form,)
    assert read_choice(kept["letters"], upright()) is not None


def test_every_rung_that_is_offered_can_be_read_back() -> None:
    assert [str(part) for rung in RUNGS for part in read_rungs(rung)] == list(map(str, RUNGS))
