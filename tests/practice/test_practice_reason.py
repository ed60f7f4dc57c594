"""What a teacher could say to a parent: whole, and true of the name. Names are invented."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.difficulty import Band, name_difficulty
from namewright.practice.reason import for_parent
from namewright.wording import languages, wording

IN_IT = {"again", "marks", "twins"}


@pytest.mark.parametrize(("name", "parts"), [
    ("Bo", ()), ("Anna", ("again",)), ("Zoë", ("marks",)), ("Jean-Luc", ("marks", "twins")), ("Bobda", ("twins",)),
    ("Ana María", ("again", "marks")), ("Aa", ()),
])
def test_a_parent_is_told_what_is_in_the_name_and_nothing_else(name: str, parts: tuple[str, ...]) -> None:
    """Letters that come again, marks and gaps, mirror twins: each is told where it is so."""
    told = for_parent(name, name_difficulty(name), name[0])
    assert {each.key.removeprefix("parent.") for each in told} & IN_IT == set(parts)
    assert (told[-1].key, told[-1]["initial"]) == ("parent.initial", name[0])


@pytest.mark.parametrize(("band", "name", "letters"), [(Band.EASIER, "Bo", 2), (Band.MIDDLE, "Łucja", 5),
                                                       (Band.HARDER, "JeanLuc", 7)])
def test_the_opening_goes_by_the_band(band: Band, name: str, letters: int) -> None:
    """Easier, middling and harder names open differently, with how much there is to write."""
    rating = name_difficulty(name)
    opening = for_parent(name, rating, name[0])[0]
    assert (rating.band, opening.key, opening["count"]) == (band, f"parent.{band}", letters)


HE_OR_SHE = {"en": "he|she|his|her", "es": "él|ella", "fr": "il|elle", "de": "er|sie|ihm|ihr", "it": "lui|lei",
             "pt": "ele|ela"}


@given(st.text("AbdeÉñoO -’1", max_size=9), st.sampled_from(languages()))
def test_it_is_whole_sentences_about_the_name_alone(name: str, language: str) -> None:
    """Whatever the name: it is named, each sentence has one full stop, and no child is called he or she."""
    told = for_parent("Mira", name_difficulty(name), name[:1])
    said = wording(language).text(*told)
    assert "Mira" in said
    assert all(wording(language).sentence(each)[-1] == "." for each in told)
    assert not re.search(rf"\b({HE_OR_SHE[language]})\b", said)
