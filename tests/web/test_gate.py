"""The passphrase of a shared class: who is let in, and who is not heard for a while."""

from __future__ import annotations

import pytest

from namewright.web.gate import IDLE_S, STAY_S, Gate


@pytest.fixture
def gate() -> Gate:
    return Gate("three plain words")


def test_only_the_passphrase_lets_in(gate: Gate) -> None:
    """Each who types it has a key of their own, and no other key is known."""
    one, other = gate.let_in("three plain words", 0.0), gate.let_in("three plain words", 0.0)
    assert one
    assert other
    assert one != other
    assert gate.knows(one, 1.0)
    assert gate.knows(other, 1.0)
    for typed in ("", "three plain word", "Three plain words", "three plain words "):
        assert gate.let_in(typed, 1.0) is None
    assert not gate.knows("", 1.0)
    assert not gate.knows("three plain words", 1.0)


def test_who_leaves_or_does_nothing_is_outside(gate: Gate) -> None:
    """A key holds for an hour after it was shown last, for a school day at most, and until it is taken back."""
    key = gate.let_in("three plain words", 0.0) or ""
    assert gate.knows(key, IDLE_S - 1)
    assert not gate.knows(key, 2 * IDLE_S)
    key = gate.let_in("three plain words", 0.0) or ""
    assert all(gate.knows(key, float(at)) for at in range(0, int(STAY_S), int(IDLE_S / 2)))
    assert not gate.knows(key, STAY_S)
    key = gate.let_in("three plain words", 0.0) or ""
    gate.let_out(key)
    assert not gate.knows(key, 1.0)


def test_an_address_is_not_heard_after_five_wrong_tries(gate: Gate) -> None:
    """For a minute from each of them, and nobody else is kept out by it."""
    for at in range(5):
        assert not gate.closed_to("a", 100.0 + at)
        gate.note_wrong("a", 100.0 + at)
    assert gate.closed_to("a", 105.0)
    assert not gate.closed_to("b", 105.0)
    assert gate.closed_to("a", 160.0)
    assert not gate.closed_to("a", 160.1)


def test_many_addresses_together_close_it_to_all(gate: Gate) -> None:
    """Thirty wrong tries in a minute, however they are spread."""
    for at in range(29):
        gate.note_wrong(f"from {at}", 100.0)
    assert not gate.closed_to("new", 101.0)
    gate.note_wrong("another", 100.5)
    assert gate.closed_to("new", 101.0)
    assert not gate.closed_to("new", 160.6)


def test_the_passphrase_is_not_shown_by_accident(gate: Gate) -> None:
    """What is logged of an object does not hold it."""
    assert "plain" not in repr(gate)
