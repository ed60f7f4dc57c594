"""Who is named within a phrase, and what is left of it."""

from __future__ import annotations

import pytest

from namewright.roster.phrases import are_joined, common_words, has_further_capitals, phrase


@pytest.mark.parametrize(("text", "names", "frame"), [
    ("Leo Vost absent today", ["Leo Vost"], "{} absent today"),
    ("Absence : Mia", ["Mia"], "absence : {}"),
    ("Krankmeldung: Mia van der Berg", ["Mia van der Berg"], "krankmeldung: {}"),
    ("Absence d'Emma Zell", ["Emma Zell"], "absence d' {}"),
    ("Mia's birthday", ["Mia"], "{} 's birthday"),
    ("Leo and Mia are ill", ["Leo", "Mia"], "{} and {} are ill"),
    ("Leo V. – fever", ["Leo V."], "{} – fever"),
    ("Klassenfahrt Leo Vost 1b", ["Leo Vost"], "klassenfahrt {} 1b"),
    ("Reis, Ana", ["Reis", "Ana"], "{} , {}"),
    ("menu for next week", [], "menu for next week"),
])
def test_names_stand_together_without_the_words_about_them(text: str, names: list[str], frame: str) -> None:
    found = phrase(text)
    assert ([run.name for run in found.runs], found.frame) == (names, frame)


def test_what_most_have_in_common_is_no_name_unless_somebody_is_called_so() -> None:
    texts = ["Xobrel Leo Vost", "Xobrel Mia Tarn", "Xobrel Ada Vost", "Theo Vost Xobrel"]
    assert common_words(texts, {"vost"}) == {"xobrel"}
    others = [f"{name} ist krank" for name in ("Leo", "Kai", "Bo", "Ida", "Nora", "Theo", "Mia", "Tim")]
    assert "ada" not in common_words(["Ada fehlt", "Ada ist da", "Ada kommt", *others], set())


def test_names_are_joined_by_words_for_and_alone() -> None:
    assert are_joined(phrase("Leo und Mia fehlen"))
    assert not are_joined(phrase("Leo trifft Mia"))


def test_a_capital_beside_the_names_may_be_somebody() -> None:
    assert has_further_capitals(phrase("Ana Berg sah Fieber"))
    assert not has_further_capitals(phrase("Ana Berg opened it"))
