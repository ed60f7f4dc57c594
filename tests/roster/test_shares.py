"""Shares of yes, from none to all."""

from __future__ import annotations

import pytest

from namewright.roster.shares import are_most, given_share, share


@pytest.mark.parametrize(("answers", "expected"), [([], 0.0), ([False], 0.0), ([True, False], 0.5), ([True] * 3, 1.0)])
def test_a_share_of_answers(answers: list[bool], expected: float) -> None:
    assert share(answers) == expected


def test_first_words_tell_given_names() -> None:
    assert given_share(["Anna Vost", "Xqv", "Ben", "Zipper"]) == 0.5
    assert given_share([]) == 0.0


def test_of_few_answers_so_many_must_agree() -> None:
    assert are_most([True, True, False], 0.6)
    assert not are_most([True, True, False], 0.6, enough=4)
    assert not are_most([], 0.6)
