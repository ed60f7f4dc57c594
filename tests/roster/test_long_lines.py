"""A line made to be slow, a piece over and over, takes no more than in proportion to its length.

A page takes 200,000 characters in one line; what looks back from each of them for another takes minutes.
"""

from __future__ import annotations

import time
from contextlib import suppress

import pytest

from namewright.message import Problem
from namewright.roster.name_order import BOTH_BY_COMMA
from namewright.roster.parsing import read_roster

LONG = 40_000  # characters
_MOST_S = 2.0  # of processor time; what grew with the square took five times as long, or more


@pytest.mark.parametrize("line", [
    pytest.param("Mia" + " " * LONG + "(x)", id="a gap"),
    pytest.param("Mia (2)" + "\u00a0" * LONG + "Leo", id="a gap behind a number"),
    pytest.param("a =" + " " * LONG + "Mia", id="a gap behind a sign"),
    pytest.param("To: Mia <mia@example.org>" + " " * LONG + "Leo", id="a gap behind an address"),
    pytest.param("April 1." + "1" * LONG, id="a date"),
])
def test_a_piece_over_and_over_is_read_at_once(line: str) -> None:
    began = time.process_time()
    with suppress(Problem):
        read_roster(f"Mia Vost\nLeo Tarn\nAva Berg\n{line}")
    assert time.process_time() - began < _MOST_S


def test_two_parts_by_a_comma_are_looked_for_in_one_pass() -> None:
    began = time.process_time()
    assert not BOTH_BY_COMMA.fullmatch("a" * LONG + "," + "1" * LONG)
    assert time.process_time() - began < _MOST_S
