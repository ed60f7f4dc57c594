"""The families of letters by how the pencil moves: which letter is in which, and that every letter is in one."""

from __future__ import annotations

from string import ascii_letters

import pytest

from namewright.practice.families import Family, family_of

MEMBERS = [  # judged by eye from how each is commonly written (common practice), not from our code
    (Family.STRAIGHT, "litEFHILT"), (Family.ROUND, "cadgoqesCGOQS"), (Family.DOWN, "nhmrbpuBDPR"),
    (Family.SLANT, "vwxzkAVWXZK"),
]


@pytest.mark.parametrize(("family", "letters"), MEMBERS, ids=[str(row[0]) for row in MEMBERS])
def test_letters_are_in_the_family_that_a_teacher_would_put_them_in(family: Family, letters: str) -> None:
    assert {letter for letter in letters if family_of(letter) is not family} == set()


def test_every_letter_of_ours_has_a_family_and_no_other_sign() -> None:
    """A sign that our alphabet does not have is in none."""
    assert all(family_of(letter) is not Family.OTHER for letter in ascii_letters)
    assert family_of("Ж") is Family.OTHER


def test_a_mark_moves_no_letter_to_another_family() -> None:
    """Families go by the base strokes: é goes with e."""
    for marked, plain in (("é", "e"), ("ñ", "n"), ("Š", "S"), ("ộ", "o"), ("Ẹ̀", "E")):
        assert family_of(marked) is family_of(plain), marked
