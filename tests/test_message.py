"""What is told to a person, as a value: equal by what it says, whole after a journey between processes."""

from __future__ import annotations

import pickle

import pytest

from namewright.lines.fit import DoesNotFit
from namewright.message import Message, Problem, message, together
from namewright.settings import Support


def test_the_order_in_which_fields_are_given_is_no_matter() -> None:
    """Two messages that say the same are one, also in a set; other fields are another message."""
    assert message("fit.row", name="Mira", room=12) == message("fit.row", room=12, name="Mira")
    assert len({message("a", x=1, y=2), message("a", y=2, x=1), message("a", x=2, y=1)}) == 2


def test_a_field_keeps_its_meaning() -> None:
    """A number stays a number and a choice a choice; what is not there is an error, not a blank."""
    told = message("some.key", room=12.5, level=Support.LIGHT, inside=message("other"))
    assert (told["room"], told["level"], told["inside"]) == (12.5, Support.LIGHT, Message("other"))
    assert isinstance(told["level"], Support)
    with pytest.raises(KeyError):
        told["nothing"]


def test_it_shows_itself_to_whoever_develops() -> None:
    """The key, then the fields by name, a message inside another too."""
    assert str(message("a.b")) == "a.b"
    assert str(message("a.b", n=2, inside=message("c", m="x"))) == "a.b(inside=c(m=x), n=2)"


def test_one_message_alone_stays_itself() -> None:
    """Several are one that holds them in order."""
    one, other = message("a"), message("b")
    assert together(one) is one
    assert together(one, other)["told"] == (one, other)


def test_a_problem_is_its_message_whichever_way_it_was_made() -> None:
    """By key and fields, or by a message; it is a ValueError for whoever knows no better."""
    assert Problem("a.b", n=2).message == Problem(message("a.b", n=2)).message == message("a.b", n=2)
    assert isinstance(Problem("a"), ValueError)


def test_a_problem_goes_from_process_to_process() -> None:
    """Also one that is made from other things than its message: all that it carries arrives."""
    sent = DoesNotFit("Mira", 120.4, 99.9)
    got = pickle.loads(pickle.dumps(sent))
    assert type(got) is DoesNotFit
    assert (got.name, got.needed_mm, got.room_mm, got.message) == ("Mira", 120.4, 99.9, sent.message)
    assert str(got) == str(sent) == "fit.row(name=Mira, needed=121, room=99)"
