"""Where a long name may be broken: never so that one letter stands alone or a mark leaves its letter."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.names.beats import Spoken
from namewright.names.clusters import clusters, is_letter
from namewright.names.syllables import breaks

BREAKS = [
    ("Mary-Kate", ("Mary-", "Kate"), "behind a hyphen only"), ("Ana María", ("Ana ", "María"), "behind a space only"),
    ("O-Lan", ("O-", "Lan"), "one letter before it, too"),
    ("Ana María-Lucía", ("Ana ", "María-", "Lucía"), "both"), ("Bo", ("Bo",), "too short"),
    ("Ada", ("Ada",), "not after one letter"),
    ("Marta", ("Mar", "ta"), "between two beats"), ("Wilhelmina", ("Wil", "hel", "mi", "na"), "between each"),
    ("-", ("-",), "nothing to break"),
]


@pytest.mark.parametrize(("name", "parts", "why"), BREAKS, ids=[row[2] for row in BREAKS])
def test_a_name_is_broken_where_it_may_be(name: str, parts: tuple[str, ...], why: str) -> None:
    letters, at = clusters(name), (0, *breaks(clusters(name)), len(clusters(name)))
    assert tuple("".join(letters[a:b]) for a, b in pairwise(at)) == parts, why


@given(st.text(st.sampled_from("abeimnorstuvzéñAEM -’"), min_size=1, max_size=14).map(str.strip).filter(bool))
def test_any_break_leaves_two_letters_on_each_side_or_follows_a_sign(name: str) -> None:
    """In order, inside the name, and never before a space."""
    letters = clusters(name)
    found = breaks(clusters(name))
    assert list(found) == sorted(set(found))
    for at in found:
        assert 0 < at < len(letters)
        after_a_sign = letters[at - 1] in (" ", "-")
        two_each = min(sum(map(is_letter, letters[:at])), sum(map(is_letter, letters[at:]))) >= 2
        assert after_a_sign or (two_each and is_letter(letters[at - 1]) and is_letter(letters[at]))


def test_a_language_without_patterns_breaks_at_words_and_beats_alone() -> None:
    """A name of two beats needs no patterns; one of a single beat stays whole."""
    assert breaks(clusters("Strength"), Spoken("xx")) == ()
    assert breaks(clusters("Mary-Kate"), Spoken("xx")) == (5,)


@given(st.text(st.characters(categories=("Lu", "Ll", "Mn"), max_codepoint=0x36F), max_size=20))
def test_breaks_leave_two_letters_on_each_side(name: str) -> None:
    """No break inside a cluster, and two letters at least on both rows."""
    letters = clusters(name)
    for at in breaks(clusters(name)):
        assert min(sum(map(is_letter, letters[:at])), sum(map(is_letter, letters[at:]))) >= 2


def test_a_language_changes_the_breaks() -> None:
    """A long name is broken between beats; one of a single beat in a language without patterns stays whole."""
    assert breaks(clusters("Christopherson")) == (5, 7, 11)  # Chris-to-pher-son; patterns alone say Christoph-erson
    assert breaks(clusters("Guadalupe"), Spoken("es-MX")) == (3, 5, 7)
    assert breaks(clusters("Brun"), Spoken("xx")) == ()
