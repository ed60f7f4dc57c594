"""Given names from open lists: known, common, easy to read, kind; of the language that was said or that a class has."""

from __future__ import annotations

import pytest

from namewright.names.beats import Spoken, spoken_beats
from namewright.names.clusters import clusters
from namewright.practice.given_names import bare, given_names
from namewright.practice.unkind import is_unkind, unkind_alone, unkind_words
from namewright.roster.known import is_given, is_known

LANGUAGES = ("de", "en", "es", "fr", "it", "nl", "pl", "pt", "sv", "vi")


@pytest.mark.parametrize("language", LANGUAGES)
def test_names_are_known_short_and_kind(language: str) -> None:
    """Each stands in the reader's lists, which another script makes, has few beats and is no unkind word."""
    own, _ = given_names(language, "en", ())
    assert len(own) >= 30
    assert list(own) == sorted(set(own))
    for name in own:
        assert is_given(name) or (language == "vi" and is_known(name)), name
        assert 3 <= len(clusters(name)) <= 8, name
        assert len(spoken_beats(tuple(clusters(name)), Spoken(language)).starts) <= 3, name
        assert not is_unkind(name), name


def test_a_class_has_its_own_habit_unless_a_language_is_said() -> None:
    spanish, french = ["Sofía", "Mateo", "Jimena", "Ximena", "Lucía", "Andrés"], ["Amélie", "Noémie", "Thérèse", "Léo"]
    own, others = given_names(None, "en", spanish)
    assert "Joaquín" in own
    assert "Joaquín" not in others
    assert "Zacharie" in given_names(None, "en", french)[0]
    assert "Björn" in given_names("de", "en", french)[0]
    assert "Zachary" in given_names(None, "en", ["Mia", "Noah", "Luca"])[0]
    assert "Zachary" in given_names("xx", "xx", [])[0]


def test_marks_and_case_make_no_other_name() -> None:
    assert bare("Zoë") == bare("ZOE") == "zoe"


def test_some_words_are_unkind_only_alone() -> None:
    assert all(is_unkind(word.title()) for word in unkind_alone())
    assert is_unkind("Ho")
    assert not is_unkind("Hoku")
    assert not unkind_alone() & unkind_words()
