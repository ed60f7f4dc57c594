"""Gaps known beforehand are those that are measured, and they are asked for where they hold and nowhere else."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.lines import known_gaps, spacing
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.lines.spacing import Spacer, Spacers
from namewright.pages.typesetter import Typesetter

STALE = "letters or spacing have changed: run “make known-cues”, and look at pages"


def test_what_is_known_is_what_is_measured() -> None:
    """The edges of every letter, and for each of them the distance to some that may follow, drawn by lot."""
    draw, letter, parts = random.Random(7), upright().letter, known_gaps._parts()
    assert len(parts) >= 4, STALE
    for key, gaps in parts.items():
        measured = Spacer(*key)
        for left in gaps.places:
            assert gaps.edges(left) == measured.edges(letter(left)), STALE
            for right in draw.sample(sorted(gaps.places), 8):
                assert gaps.distance(left, right) == measured.distance(letter(left), letter(right)), STALE


@pytest.mark.parametrize("name", ["Mira", "Zoë", "Kayleigh", "Thomasina Vost", "O’Brae"])
def test_common_names_and_captions_need_no_measuring(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """On the usual lines and as running text in the sizes of a sheet; lines come out as they do when measured."""
    usual, measured = preset(DEFAULT_RULING), Typesetter()
    measured._spacers = Spacers()
    sizes = (1.3, 1.6, 1.9, 2.2, 3.6)
    wanted = (measured.ruled(usual).line(name), *(measured.text_width(name, size) for size in sizes))

    def none_wanted(*_: object) -> None:
        raise AssertionError("measured")
    monkeypatch.setattr(spacing, "profile", none_wanted)
    setter = Typesetter()
    assert wanted == (setter.ruled(usual).line(name), *(setter.text_width(name, size) for size in sizes))


@pytest.mark.parametrize("choice", ["a=two-storey", "exit-strokes"])
def test_other_forms_of_letters_are_measured(setter: Typesetter, choice: str) -> None:
    """What is known holds for the usual letters alone."""
    assert not setter.lettering(read_choice(choice, setter.alphabet))._spacers.usual
    assert setter._spacers.usual


def test_other_gaps_and_letters_are_measured() -> None:
    """Nothing is known of tighter lines, and of letters that few names have."""
    (key, gaps), *_ = known_gaps._parts().items()
    assert known_gaps.known((key[0] - 1.0, *key[1:])) is None
    assert gaps.distance("a", "ẫ") is None
    assert gaps.distance("ẫ", "a") is None
    assert gaps.edges("ẫ") is None


def test_what_is_written_is_read_again(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """To a tenth of a letter unit, with the edges as they are."""
    file, edges = tmp_path / "known_gaps.txt", {"a": (-0.1, 87.66666666666667), "-": (0.0, 40.0), "’": (3.5, 4.0)}
    file.write_text(known_gaps.written("a-’", [((58.0, 32.5, 0.7), edges.__getitem__, lambda left, right: (
        ord(left) + ord(right)) % 384 + 0.3)]), "utf-8")
    monkeypatch.setattr(known_gaps, "FILE", file)
    known_gaps._parts.cache_clear()
    gaps = known_gaps.known((58.0, 32.5, 0.7))
    assert gaps is not None
    assert {each: gaps.edges(each) for each in edges} == edges
    assert all(gaps.distance(left, right) == (ord(left) + ord(right)) % 384 + 0.3 for left in edges for right in edges)
    known_gaps._parts.cache_clear()
