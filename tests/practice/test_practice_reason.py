"""What a teacher could say to a parent: whole, and true of the name. Names are invented."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.difficulty import Band, name_difficulty
from namewright.practice.reason import for_parent

PARTS = {"again": "come again", "mark": "a small mark or gap that", "marks": "small marks or gaps that",
         "twins": "mirror twins"}


@pytest.mark.parametrize(("name", "parts"), [
    ("Bo", ()), ("Anna", ("again",)), ("Zoë", ("mark",)), ("Jean-Luc", ("mark", "twins")), ("Bobda", ("twins",)),
    ("Ana María", ("again", "marks")), ("Aa", ()),
])
def test_a_parent_is_told_what_is_in_the_name_and_nothing_else(name: str, parts: tuple[str, ...]) -> None:
    """Letters that come again, marks and gaps, mirror twins: each is said where it is so."""
    said = for_parent(name, name_difficulty(name), name[0])
    assert {part for part, words in PARTS.items() if words in said} == set(parts)
    assert f"we begin with “{name[0]}”" in said


@pytest.mark.parametrize(("language", "openings", "letters"), [
    ("en", ("a kind one to start with", "about as much work as most", "asks for a little patience"),
     ("two letters", "five letters", "seven letters")),
    ("es", ("es agradecido para empezar", "el mismo trabajo que la mayoría", "pide un poco de paciencia"),
     ("2 letras", "5 letras", "7 letras")),
])
def test_the_opening_goes_by_the_band(language: str, openings: tuple[str, ...], letters: tuple[str, ...]) -> None:
    """Easier, middling and harder names open differently, in both languages, with how much there is to write."""
    for band, name, opening, count in zip(Band, ("Bo", "Łucja", "JeanLuc"), openings, letters, strict=True):
        rating = name_difficulty(name)
        assert rating.band is band
        said = for_parent(name, rating, name[0], language)
        assert opening in said
        assert count in said


@given(st.text("AbdeÉñoO -’1", max_size=9), st.sampled_from(["en", "es", "de"]))
def test_it_is_one_sentence_about_the_name_alone(name: str, language: str) -> None:
    """Whatever the name: it is named, there is one full stop, and no child is called he or she."""
    said = for_parent("Mira", name_difficulty(name), name[:1], language)
    assert "Mira" in said
    assert (said[-1], said.count(".")) == (".", 1)
    assert not re.search(r"\b(he|she|his|her|él|ella)\b", said)
    assert language == "es" or not said.startswith("El nombre")
