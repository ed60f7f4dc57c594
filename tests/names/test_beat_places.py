"""Where one beat of a word ends and the next begins, once its hearts (the vowels that are clapped) are known."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.names.beat_places import places
from namewright.names.clusters import clusters

PLACES = [  # name, the hearts, its beats, language, why
    ("Mira", (1, 3), "Mi ra", "en", "one consonant goes to the beat behind it"),
    ("Marta", (1, 4), "Mar ta", "en", "two are parted"),
    ("Matthew", (1, 5), "Mat thew", "en", "but for those that words begin with together"),
    ("Andrew", (0, 4), "An drew", "en", "of three the two that words begin with"),
    ("Nicky", (1, 4), "Nick y", "en", "ck closes a beat"), ("Maxine", (1, 3), "Max ine", "en", "so does x"),
    ("Winston", (1, 5), "Win ston", "en", "st opens one behind a consonant"),
    ("Justin", (1, 4), "Jus tin", "en", "and is parted else"),
    ("Katelyn", (1, 5), "Kate lyn", "en", "a silent letter stays with what it leans on"),
    ("Maya", (1, 3), "Ma ya", "en", "a y before a vowel opens a beat"),
    ("O’Brien", (0, 4, 5), "O’ Bri en", "en", "an apostrophe closes"),
    ("Kaʻena", (1, 3, 5), "Ka ʻe na", "haw", "an ʻokina opens, being a consonant"),
    ("Leo", (1, 2), "Le o", "en", "two hearts side by side"),
    ("Bo", (1,), "Bo", "en", "one heart is one beat"),
]


@pytest.mark.parametrize(("name", "hearts", "beats", "language", "why"), PLACES, ids=[row[4] for row in PLACES])
def test_where_beats_begin(name: str, hearts: tuple[int, ...], beats: str, language: str, why: str) -> None:
    letters = clusters(name)
    ends = [0, *places(letters, hearts, language), len(letters)]
    found = ["".join(letters[a:b]) for a, b in pairwise(ends)]
    assert " ".join(found) == beats, why


@given(st.text(st.sampled_from("aeioubcdlmnrstyxéñ’"), min_size=2, max_size=12),
       st.sampled_from(["en", "es", "fr", "haw"]), st.data())
def test_each_beat_has_the_heart_it_was_given(name: str, language: str, data: st.DataObject) -> None:
    """Whatever stands between two hearts, the cut lies between them."""
    letters = clusters(name)
    vowels = [at for at, letter in enumerate(letters) if letter in "aeioué"]
    hearts = tuple(sorted(data.draw(st.sets(st.sampled_from(vowels), max_size=4)))) if vowels else ()
    found = places(letters, hearts, language)
    assert len(found) == max(0, len(hearts) - 1)
    for cut, (before, after) in zip(found, pairwise(hearts), strict=True):
        assert before < cut <= after
