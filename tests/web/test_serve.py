"""The page on this machine: its port, and where the class lies. Nothing is served here."""

from __future__ import annotations

import socket

import pytest

from namewright.web.serve import LOOPBACK, USUAL_PORT, free_port


@pytest.fixture
def taken() -> int:
    """A port that another program listens on for the length of a test."""
    listening = socket.socket()
    listening.bind((LOOPBACK, 0))
    listening.listen()
    yield listening.getsockname()[1]
    listening.close()


def test_the_usual_port_is_outside_those_a_system_lends(monkeypatch: pytest.MonkeyPatch, taken: int) -> None:
    """RFC 6335 lends from 49152, Linux from 32768; where it is taken any other will do."""
    assert 1024 < USUAL_PORT < 32768
    monkeypatch.setattr("namewright.web.serve.USUAL_PORT", taken)
    assert free_port(LOOPBACK, None) not in (taken, 0)


def test_a_port_asked_for_is_that_or_none(taken: int) -> None:
    """Nobody finds the page at another than the one that the network lets through."""
    with pytest.raises(OSError, match="in use"):
        free_port(LOOPBACK, taken)
