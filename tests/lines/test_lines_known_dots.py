"""Dots known beforehand are those that are worked out, and they are used where they hold and nowhere else."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.lines import forms, known_dots
from namewright.lines.forms import Form, Inker, pens_for, trace_dots
from namewright.lines.ink import on_grid
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.lines.setting import RuledLetters
from namewright.pages.typesetter import Typesetter

USUAL = preset(DEFAULT_RULING)
PITCH_MM = pens_for(USUAL).pitch_mm
STALE = "letters, lines or dots have changed: run “make known-cues”, and look at pages with dots"


def test_what_is_known_is_what_is_worked_out() -> None:
    """Every letter of the file, to the hundredth of a millimetre in which it is drawn."""
    ruled, rows = RuledLetters(upright(), USUAL), known_dots.rows(USUAL, PITCH_MM)
    assert len(rows) > 200, STALE
    assert [letter for letter, row in rows.items()
            if known_dots.dots(row) != on_grid(trace_dots(ruled.letter(letter), PITCH_MM))] == [], STALE


@pytest.mark.parametrize("name", ["Mira", "Zoë", "Kayleigh", "Łucja", "O’Brae-Íñigo"])
def test_common_names_are_dotted_without_a_search(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """On the usual lines; the ink is the same as with one."""
    setter = Typesetter()
    line = setter.ruled(USUAL).line(name)
    worked_out = Inker(USUAL, pens_for(USUAL)).ink(line, Form.DOTTED)

    def none_wanted(letter: object, pitch_mm: float) -> None:
        raise AssertionError("searched")
    letters = {placed.letter.cluster for placed in line.letters} - {"’"}  # which is a thin stroke, without dots
    monkeypatch.setattr(forms, "trace_dots", lambda letter, pitch_mm: (
        none_wanted(letter, pitch_mm) if letter.cluster in letters else ()))
    assert setter.inker(USUAL).ink(line, Form.DOTTED) == worked_out


@pytest.mark.parametrize("choice", ["a=two-storey", "slant=8", "exit-strokes"])
def test_other_forms_of_letters_are_worked_out(setter: Typesetter, choice: str) -> None:
    """What is known holds for the usual letters alone."""
    assert not setter.lettering(read_choice(choice, setter.alphabet)).inker(USUAL).usual
    assert setter.inker(USUAL).usual


def test_nothing_is_known_of_other_lines_and_pitches() -> None:
    """The wide form's pitch is another."""
    assert not known_dots.rows(USUAL.scaled_to(30.0), PITCH_MM)
    assert not known_dots.rows(USUAL, 2 * PITCH_MM)


def test_what_is_written_is_read_again(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Dots come back as they were, also where there are none."""
    letters = {"a": [(876, -952), (0, 0)], "’": [], "-": [(-3, 4)]}
    file = tmp_path / "known_dots.txt"
    file.write_text(known_dots.written(USUAL, PITCH_MM, letters.items()), "utf-8")
    monkeypatch.setattr(known_dots, "FILE", file)
    known_dots._read.cache_clear()
    assert {letter: known_dots.dots(row) for letter, row in known_dots.rows(USUAL, PITCH_MM).items()} == letters
    known_dots._read.cache_clear()
