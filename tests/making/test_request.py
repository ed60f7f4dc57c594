"""A request: which choice holds for whom, and how much there is to do."""

from __future__ import annotations

import pytest

from namewright.making.choices import Choices
from namewright.making.request import Kind, Member, Request, listed
from namewright.practice.ordering import completed, order_class
from namewright.roster.children import Child, Roster
from namewright.settings import Hand, Support

CHILDREN = tuple(Child(name, name, name, "", line, support=support, hand=hand) for line, (name, support, hand) in
                 enumerate([("Bo", None, None), ("Ada", Support.LIGHT, Hand.LEFT)], 1))
MEMBERS = tuple(map(listed, order_class(CHILDREN)))


def of(name: str) -> Member:
    return next(one for one in MEMBERS if one.placed.child.practice == name)


def test_a_childs_own_goes_before_everyones_and_what_goes_first_before_both() -> None:
    """Layer by layer, each choice by itself."""
    request = Request((Kind.SHEETS,), MEMBERS, Choices(support=Support.PARTIAL, hand=Hand.RIGHT))
    assert [request.settings_of(of(name)).support for name in ("Bo", "Ada")] == [Support.PARTIAL, Support.LIGHT]
    assert request.settings_of(of("Ada")).hand is Hand.LEFT
    alike = Request((Kind.SHEETS,), MEMBERS, Choices(support=Support.PARTIAL), Choices(support=Support.FULL))
    assert {alike.settings_of(one).support for one in MEMBERS} == {Support.FULL}
    assert alike.settings_of(of("Ada")).hand is Hand.LEFT
    assert request.settings.support is Support.PARTIAL


@pytest.mark.parametrize(("kinds", "steps"), [((Kind.SHEETS,), 2), ((Kind.SHEETS, Kind.ADULT), 3), ((Kind.PLAN,), 1),
                                              ((Kind.SHEETS, Kind.CARDS, Kind.GROUPS), 5), ((), 1)])
def test_steps_are_children_for_their_own_pages_and_else_kinds(kinds: tuple[Kind, ...], steps: int) -> None:
    """Of two children."""
    assert Request(kinds, MEMBERS).steps == steps


def test_groups_are_there_or_it_is_said() -> None:
    """A request made without beats and tables cannot be planned."""
    with pytest.raises(ValueError, match="groups were not asked for"):
        _ = Request((Kind.PLAN,), MEMBERS).planned
    grouped = tuple(map(listed, completed(order_class(CHILDREN))))
    assert [one.child.practice for one in Request((Kind.PLAN,), grouped).planned] == [
        one.placed.child.practice for one in grouped]


def test_classmates_are_all_of_the_list_each_once() -> None:
    """Also those of whom no page is asked for."""
    request = Request((Kind.CARDS,), (of("Ada"),), roster=Roster(CHILDREN, ()))
    assert sorted(child.practice for child in request.classmates) == ["Ada", "Bo"]
