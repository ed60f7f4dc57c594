"""Which pages to know a name by are made: all, those that were typed, and one of the two lists to sign in on."""

from __future__ import annotations

import pytest

from namewright.commands.know import _kinds
from namewright.commands.talk import Refusal
from namewright.making.request import TO_KNOW, Kind

DAY, WEEK = Kind.SIGNIN, Kind.SIGNIN_WEEK


@pytest.mark.parametrize(("typed", "week", "kinds"), [
    (None, False, tuple(kind for kind in TO_KNOW if kind is not WEEK)),
    (None, True, tuple(kind for kind in TO_KNOW if kind is not DAY)),
    ("signin,find", False, (Kind.FIND, DAY)),
    ("signin", True, (WEEK,)),
    ("signin_week", False, (WEEK,)),
    ("signin,signin_week", False, (DAY, WEEK)),
])
def test_one_list_to_sign_in_on_unless_both_are_typed(typed: str | None, week: bool, kinds: tuple[Kind, ...]) -> None:
    assert _kinds(typed, week=week) == kinds


def test_another_word_is_refused() -> None:
    with pytest.raises(Refusal):
        _kinds("find,sing", week=False)
