"""Shares of yes, from none to all."""

from __future__ import annotations

import pytest

from namewright.roster.shares import given_share, share


@pytest.mark.parametrize(("answers", "expected"), [([], 0.0), ([False], 0.0), ([True, False], 0.5), ([True] * 3, 1.0)])
def test_a_share_of_answers(answers: list[bool], expected: float) -> None:
    assert share(answers) == expected


def test_first_words_tell_given_names() -> None:
    assert given_share(["Anna Vost", "Xqv", "Ben", "Zipper"]) == 0.5
    assert given_share([]) == 0.0
