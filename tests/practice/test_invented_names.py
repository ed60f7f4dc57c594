"""Names of nobody: made of the parts of the class's own, sayable by rule, never unkind."""

from __future__ import annotations

from itertools import islice
from random import Random

import pytest

from namewright.names.beats import Spoken, spoken_beats
from namewright.names.clusters import clusters
from namewright.practice.invented_names import look_alikes, with_initial, with_other_initials
from namewright.practice.name_likeness import outline, same_initial
from namewright.practice.unkind import is_unkind, unkind_alone, unkind_words

LANGUAGES = (None, "de", "en", "es", "fr", "haw", "it", "pl", "pt", "vi", "xx")
NAMES = ("Bo", "Mira", "Zoë", "Ngân", "Quillon", "Maëlys", "AJ", "Ana-Lou", "Christopherson", "Ẹ̀bun")


def made(first: str, mates: tuple[str, ...], language: str | None, count: int = 200) -> list[str]:
    return list(islice(with_initial(first, mates, language, Random(3)), count))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("first", ["B", "I", "Q", "É", "W", "d"])
def test_names_begin_as_they_should_and_are_kind(first: str, language: str | None) -> None:
    names = made(first, (), language)
    assert len(names) >= 5
    assert len(set(names)) == len(names)
    assert all(name.startswith(first) and len(clusters(name)) > 1 for name in names)
    assert not any(map(is_unkind, names))


def test_they_sound_like_the_class() -> None:
    """Of a class whose names end alike, many of the invented end so, too; of another none do."""
    alike = made("T", ("Wanuska", "Borotska", "Lirteska", "Janolska") * 6, "en")
    assert sum(name.endswith("ska") or name.endswith("a") for name in alike) > len(alike) / 3
    assert not any("olsk" in name for name in made("T", (), "en"))


def test_vietnamese_ones_have_one_syllable() -> None:
    names = made("T", (), "vi")
    beats = [len(spoken_beats(tuple(clusters(name)), Spoken("vi")).starts) for name in names]
    assert sum(count == 1 for count in beats) >= 0.8 * len(beats), names


@pytest.mark.parametrize("name", NAMES)
def test_others_begin_otherwise_and_are_about_as_long(name: str) -> None:
    length = len(clusters(name))
    others = list(islice(with_other_initials(name, length, (), None, Random(5)), 40))
    assert not any(same_initial(one, name) for one in others)
    assert sum(abs(len(one) - length) <= max(1, length // 4) for one in others) >= 6


@pytest.mark.parametrize("name", NAMES)
def test_look_alikes_differ_in_a_letter_or_two(name: str) -> None:
    """They keep initial, length and outline; those that differ in one letter come before those that differ in two."""
    found = list(islice(look_alikes(name), 12))
    assert len(found) >= 3
    for one in found:
        assert outline(one) == outline(name)
        assert clusters(one)[0] == clusters(name)[0]
        assert 1 <= sum(a != b for a, b in zip(clusters(one), clusters(name), strict=True)) <= 2
    assert "Qaillon" not in found


def test_a_letter_alone_has_letters_that_look_like_it() -> None:
    assert next(look_alikes("O")) == "Q"


def test_some_words_are_unkind_only_alone() -> None:
    assert all(is_unkind(word.title()) for word in unkind_alone())
    assert is_unkind("Ho")
    assert not is_unkind("Hoku")
    assert not unkind_alone() & unkind_words()
