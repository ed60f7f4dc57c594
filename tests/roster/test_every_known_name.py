"""Every given and every family name of the reader's own data in ordinary places of lists in six languages.

The short run tries one name in 300 in every place; the long one tries every name in one place of every language by
turns, or in all of them where ``NAMEWRIGHT_NAMES`` is ``all``, which takes an hour.
"""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterator

import pytest

from made_lists.every_name import FAMILY_PLACES, GIVEN_PLACES, TONGUES, every, fate_of, listed, not_right
from namewright.roster.vocabulary import TITLES, fold

SHARE = 300
ASKED = 0.005
WRITTEN_OUT = frozenset(("Chas", "Robt", "Thos", "Wm"))
"""Given names that are another cut short, which is practised: Charles, Robert, Thomas, William."""
PLACES = [("given", where) for where in GIVEN_PLACES] + [("family", where) for where in FAMILY_PLACES]


def _is_exempt(name: str, where: str) -> bool:
    """Say whether a name is rightly read otherwise: Miss Smith is an adult."""
    return name in WRITTEN_OUT or (where == "before a family name" and fold(name) in TITLES)


def _tried(part: str, names: tuple[str, ...], where: str, language: str) -> Counter[str]:
    found = [(name, fate) for name, fate in not_right(names, part, where, language) if not _is_exempt(name, where)]
    sure = [each for each in found if each[1] != "asked"]
    assert not sure, f"{part} names {where} in {language}: {sure[:20]}"
    return Counter(fate for _, fate in found)


@pytest.mark.parametrize("language", TONGUES)
@pytest.mark.parametrize(("part", "where"), PLACES, ids=[f"{part} {where}" for part, where in PLACES])
def test_a_known_name_is_read_wherever_it_stands(part: str, where: str, language: str) -> None:
    names = every(part)[list(TONGUES).index(language) :: SHARE]
    assert not _tried(part, names, where, language), where


def _turns(part: str) -> Iterator[tuple[tuple[str, ...], str, str]]:
    """Yield names with where they are tried, and in which language."""
    names, places = every(part), list(GIVEN_PLACES if part == "given" else FAMILY_PLACES)
    for order, language in enumerate(TONGUES):
        for at, where in enumerate(places):
            everyone = os.environ.get("NAMEWRIGHT_NAMES") == "all"
            yield names if everyone else names[(at + order) % len(places) :: len(places)], where, language


@pytest.mark.long
@pytest.mark.parametrize("part", ["given", "family"])
def test_every_known_name_is_read_or_asked_about(part: str) -> None:
    """Nobody is lost or practises something else, and hardly one in a thousand is asked about."""
    tried, asked = 0, 0
    for names, where, language in _turns(part):
        asked += _tried(part, names, where, language)["asked"]
        tried += len(names)
    assert tried >= len(every(part)) * len(TONGUES)
    assert asked <= ASKED * tried, (asked, tried)


def test_the_lists_name_whom_they_should() -> None:
    text, wanted = listed(["Gita"], "given", "behind a comma", "it")
    assert "Rossi, Gita\n" in text
    assert (len(wanted), "Gita" in wanted) == (12, True)
    assert listed(["Gita"], "given", "first line", "de")[0].startswith("Gita\n")
    assert listed(["Kind"], "family", "last line", "de")[0].endswith("\nKind, Lena")
    assert listed(["Kind"], "family", "said", "fr")[0].count(" et ") == 1


@pytest.mark.parametrize(("name", "part", "where", "fate"), [
    ("Class", "given", "alone", "lost"), ("Monday", "given", "alone", "asked"), ("Gita", "given", "alone", "asked"),
    ("Mia", "given", "alone", "right"), ("Chas", "given", "before a family name", "wrong")])
def test_what_becomes_of_a_name_is_told(name: str, part: str, where: str, fate: str) -> None:
    assert fate_of([name], part, where, "en") == fate


@pytest.mark.parametrize(("name", "part", "where"), [
    ("Zak", "given", "behind a comma"), ("Dear", "family", "before a comma"), ("Herr", "family", "before a comma")])
def test_words_of_titles_are_names_among_names(name: str, part: str, where: str) -> None:
    assert [fate_of([name], part, where, language) for language in TONGUES] == ["right"] * len(TONGUES)


@pytest.mark.parametrize("name", ["Math", "Mattina", "Gita", "Nanna", "Saida"])
def test_words_of_the_day_that_are_given_names_are_asked_about(name: str) -> None:
    assert fate_of([name], "given", "alone", "it") == "asked"
