"""Cues known beforehand are those that the search finds, and they are asked for where they hold and nowhere else."""

from __future__ import annotations

import random
from collections.abc import Sequence
from pathlib import Path

import pytest

from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.lines import cues as making_cues
from namewright.lines import known_cues
from namewright.lines.clearance import Sides
from namewright.lines.cue_places import Choice
from namewright.lines.cues import CueMaker
from namewright.lines.forms import pens_for
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.lines.setting import RuledLetters
from namewright.pages.letter_strip import STRIP_SIDES, strip_rulings
from namewright.pages.typesetter import Typesetter

USUAL = preset(DEFAULT_RULING)
ROOMS = [(USUAL, False), *((ruling, True) for ruling in strip_rulings(USUAL))]
STALE = "letters, lines or search have changed: run “make known-cues”, and look at pages with stroke marks"


def part_of(room: int) -> known_cues.Part:
    """Return what is known of one of the rooms."""
    ruling, thorough = ROOMS[room]
    part = known_cues.part(known_cues.room_key(ruling, pens_for(ruling), thorough=thorough))
    assert part is not None, STALE
    return part


def differing(room: int, asked: Sequence[tuple[str, Sides]]) -> list[tuple[str, Sides]]:
    """Return the letters with white beside them for which the search finds something else than is known."""
    ruling, thorough = ROOMS[room]
    maker, ruled = CueMaker(ruling, pens_for(ruling), thorough=thorough), RuledLetters(upright(), ruling)
    part = part_of(room)
    return [(letter, sides) for letter, sides in asked
            if maker.choices(ruled.letter(letter), sides) != known_cues.known(part, letter, sides)]


@pytest.mark.parametrize("room", range(len(ROOMS)))
def test_what_is_known_is_what_the_search_finds(room: int) -> None:
    """Every letter in one of the rooms, with white drawn by lot; in the longer run all with all."""
    part, draw = part_of(room), random.Random(room)
    asked = [(letter, draw.choice(list(part.sides))) for letter in sorted(part.letters)[room::len(ROOMS)]]
    assert differing(room, asked) == [], STALE


@pytest.mark.long
@pytest.mark.parametrize("room", range(len(ROOMS)))
def test_all_that_is_known_is_what_the_search_finds(room: int) -> None:
    """Every letter with every white beside it."""
    part = part_of(room)
    assert differing(room, [(letter, sides) for letter in part.letters for sides in part.sides]) == [], STALE


@pytest.mark.parametrize("name", ["Mira", "Zoë", "Kayleigh", "Łucja", "Thomasina", "Anouk"])
def test_common_names_need_no_search(setter: Typesetter, name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """On the usual lines, and each letter alone on a strip."""
    def none_wanted(*_: object) -> None:
        raise AssertionError("searched")
    monkeypatch.setattr(making_cues, "searched", none_wanted)
    assert len(list(setter.cues(USUAL).each(setter.ruled(USUAL).line(name)))) == len(name)
    for ruling in strip_rulings(USUAL):
        side = STRIP_SIDES[0] * ruling.x_height_mm
        maker = setter.thorough_cues(ruling)
        assert all(maker.cues(setter.ruled(ruling).line(letter).letters[0].letter, Sides(side, side)).starts
                   for letter in name)


@pytest.mark.parametrize("choice", ["a=two-storey", "slant=8", "crossbars=left", "exit-strokes"])
def test_other_forms_of_letters_are_searched(setter: Typesetter, choice: str) -> None:
    """What is known holds for the usual letters alone."""
    assert not setter.lettering(read_choice(choice, setter.alphabet)).cues(USUAL).usual
    assert setter.cues(USUAL).usual


def test_other_lines_and_whites_are_searched(setter: Typesetter) -> None:
    """Nothing is known of other line heights, and of white that letters seldom have."""
    part, taller = part_of(0), USUAL.scaled_to(30.0)
    assert known_cues.part(known_cues.room_key(taller, pens_for(taller), thorough=False)) is None
    assert known_cues.known(part, "a", Sides(2.0, 2.0)) is not None
    assert known_cues.known(part, "a", Sides(2.1, 2.0)) is None
    assert known_cues.known(part, "ẫ", Sides(2.0, 2.0)) is None


def test_what_is_written_is_read_again(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Choices come back as they were, also where there are none, with an apostrophe or a hyphen as the letter."""
    sides = known_cues.grid([1.25, 4.000499999999999])
    ways = [[Choice(3, 1, 12), Choice(0, 0, 4)], [], [Choice(94, 0, 0)], [Choice(3, 1, 12), Choice(0, 0, 4)]]
    file = tmp_path / "known_cues.txt"
    file.write_text(known_cues.written([("set 1 2", sides, [(letter, ways) for letter in "a'-"])]), "utf-8")
    monkeypatch.setattr(known_cues, "FILE", file)
    known_cues._parts.cache_clear()
    part = known_cues.part("set 1 2")
    assert part is not None
    assert [known_cues.known(part, letter, each) for letter in "a'-" for each in sides] == ways * 3
    known_cues._parts.cache_clear()
