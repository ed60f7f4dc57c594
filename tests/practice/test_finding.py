"""The own name among other names: enough of both, harder as the level of support goes down, the same each time."""

from __future__ import annotations

from pathlib import Path
from random import Random
from statistics import fmean

import pytest

from longer import rest_long
from namewright.names.clusters import clusters
from namewright.practice.finding import BLOCKS, Finding, Rung, finding
from namewright.practice.name_likeness import bare_initial, likeness, outline
from namewright.practice.unkind import is_unkind, unkind_words
from namewright.roster.known import is_given
from namewright.settings import Support

CENSUS = Path(__file__).parents[1] / "data" / "first-names-held-out.tsv"
ODD = ("O", "Bo", "Ẹ̀bun", "Ana María", "Mary-Kate", "Kealiʻi", "Łucja", "Ánh", "deShawn", "Wilhelminaconstantinamaria",
       "Xyz", "Ii", "ABC", "7b")


def classes(count: int, size: int = 8) -> list[list[str]]:
    """Return random classes of census first names (the source stands in the file)."""
    lines = CENSUS.read_text(encoding="utf-8").splitlines()
    names = [line.split("\t")[0].capitalize() for line in lines if line and not line.startswith("#")]
    return [Random(seed).sample(names, size) for seed in range(count)]


def hardness(found: Finding) -> float:
    return fmean(likeness(found.name, other.name) for other in found.others)


@pytest.mark.long
def test_hard_pages_have_names_more_alike_than_easy_ones() -> None:
    """For every child of 100 random classes, the others are more alike at the hardest level than at the easiest."""
    for names in classes(100):
        for name in names:
            easy = finding(name, names, Support.FULL, "seed")
            hard = finding(name, names, Support.INDEPENDENT, "seed")
            assert hardness(hard) > hardness(easy), (name, names)


@pytest.mark.parametrize("support", rest_long(Support))
def test_no_page_ever_falls(support: Support) -> None:
    """For children of 100 random classes the others climb by rung and by likeness, one by one, and none is lacking."""
    wanted = sum(block.size for block in BLOCKS[support])
    for names in classes(100):
        for name in names[:3]:
            others = finding(name, names, support, "seed").others
            alike = [likeness(name, other.name) for other in others]
            rungs = [list(Rung).index(other.rung) for other in others]
            assert alike == sorted(alike), (name, others)
            assert rungs == sorted(rungs), (name, others)
            assert len(others) == wanted, (name, others)


@pytest.mark.parametrize("support", Support)
@pytest.mark.parametrize("name", ODD)
def test_no_odd_page_ever_falls(name: str, support: Support) -> None:
    for mates in ((), classes(1, 24)[0]):
        alike = [likeness(name, other.name) for other in finding(name, mates, support, "seed").others]
        assert alike == sorted(alike)


@pytest.mark.parametrize("support", Support)
def test_length_does_not_give_the_name_away(support: Support) -> None:
    """On pages of 20 random classes most of the others are as long as the own name within one letter, or classmates.

    Not on each of them: of three letters, and with some initials, there are few names.
    """
    near = [abs(len(clusters(other.name)) - len(clusters(name))) <= 1 or not other.listed
            for names in classes(20, 24) for name in names[:6]
            for other in finding(name, names, support, "seed").others]
    assert fmean(near) > 0.75


@pytest.mark.parametrize("support", Support)
@pytest.mark.parametrize("name", [*ODD, *classes(1)[0]])
@pytest.mark.parametrize("mates", [(), classes(1, 24)[0], ["Bo", "Bo", "bo"]], ids=["nobody", "class", "same"])
def test_every_page_has_enough_of_both(name: str, support: Support, mates: list[str]) -> None:
    """At least four times the own name and three others, none of them the own name in other letter case, none twice."""
    found = finding(name, [*mates, name], support, "seed")
    assert found.hits >= 4
    others = [other.name.casefold() for other in found.others]
    assert len(others) >= 3
    assert len(set(others)) == len(others)
    assert name.casefold() not in others
    assert not any(is_unkind(other.name) for other in found.others if other.listed)
    assert all(other.listed != (other.name in mates) for other in found.others)


def test_others_climb() -> None:
    """Down the hardest page names go from the same initial to the same initial and outline, which is as it says."""
    found = finding("Marek", ["Mila", "Bodo", "Nora", "Marla"], Support.INDEPENDENT, "seed")
    rungs = [list(Rung).index(other.rung) for other in found.others]
    assert rungs == sorted(rungs)
    for other in found.others:
        assert bare_initial(other.name) == bare_initial("Marek")
        assert other.rung is (Rung.OUTLINE if outline(other.name) == outline("Marek") else Rung.INITIAL)


def test_a_page_is_the_same_when_it_is_made_again() -> None:
    """The seed alone decides the places, and another seed brings others."""
    names = classes(1)[0]
    same = {finding(names[0], names, Support.FULL, "1") for _ in range(3)}
    assert len(same) == 1
    assert len({finding(names[0], names, Support.FULL, str(seed)) for seed in range(20)}) > 10


@pytest.mark.parametrize("support", rest_long(Support))
def test_names_of_nobody_are_real_names(support: Support) -> None:
    """What is added to the names of 30 random classes is a given name that the reader knows, not one of syllables."""
    for names in classes(30, 4):
        for name in (*names[:2], *ODD):
            added = [other.name for other in finding(name, names, support, "seed").others if other.listed]
            assert all(map(is_given, added)), (name, added)


def test_names_added_are_many_and_of_nobody() -> None:
    """Of a child alone in its class, over 20 seeds: other names each time, none of those taken, marks aside."""
    pages = [finding("Mira", [], Support.PARTIAL, str(seed), taken=("Zoë", "Maya Lou")) for seed in range(20)]
    added = [other.name for page in pages for other in page.others]
    assert len(set(added)) > 25
    assert max(map(added.count, added)) < 10
    assert not {"Zoe", "Zoë", "Maya"} & set(added)


def test_classmates_come_before_names_of_nobody() -> None:
    """On an easy page of a small class all others are classmates, though none is as long as the own name."""
    others = finding("Mira", ["Theodora", "Josephine", "Annabella", "Frederick"], Support.FULL, "seed").others
    assert len(others) == 4
    assert not any(other.listed for other in others)


def test_names_that_cannot_be_drawn_are_not_added() -> None:
    others = finding("Mira", [], Support.LIGHT, "seed", usable=lambda name: "a" not in name).others
    assert len(others) == 7
    assert not any("a" in other.name for other in others)


def test_no_place_gives_the_name_away() -> None:
    """Over many pages the own name stands in each place of a block of four about half of the time."""
    firsts = [[one.is_own for one in finding("Mira", classes(1)[0], Support.FULL, str(seed)).shown[:4]]
              for seed in range(300)]
    shares = [fmean(column) for column in zip(*firsts, strict=True)]
    assert all(0.35 < share < 0.65 for share in shares), shares


def test_unkind_words_are_found_in_any_language() -> None:
    assert all(is_unkind(word.upper()) for word in unkind_words())
    assert is_unkind("Xfèo")
    assert not is_unkind("Mira")
