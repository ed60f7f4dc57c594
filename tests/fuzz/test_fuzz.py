"""Changed bytes never end in a traceback: lists, spreadsheets, fonts, class's files, forms.

A quarter of a minute here in all; ``make test-long`` tries many times more. What was once found stays as an example.
The same targets are run by a fuzzer that looks at which lines were reached (``tests/bench/fuzz.py``).
"""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from targets import TARGETS

QUICK = {"list": 30, "workbook": 20, "font": 10, "class": 12, "values": 12, "form": 15}
LONG = 40  # times as many
EDITS = st.lists(st.tuples(st.floats(0, 1, exclude_max=True), st.integers(0, 3), st.binary(min_size=1, max_size=4)),
                 min_size=1, max_size=8)


def changed(seed: bytes, edits: list[tuple[float, int, bytes]]) -> bytes:
    """Return a seed with bytes written over, put in, taken out or doubled at places given as shares of its length."""
    for share, kind, piece in edits:
        at = int(share * len(seed))
        seed = (seed[:at] + piece + seed[at + len(piece):], seed[:at] + piece + seed[at:],
                seed[:at] + seed[at + 1 + piece[0]:], seed[:at] + seed[at:at + 40] * 2 + seed[at:])[kind]
    return seed


def tried(name: str, examples: int) -> None:
    """Try a target with so many changed seeds."""
    target = TARGETS[name]

    @settings(max_examples=examples, deadline=None, database=None, suppress_health_check=list(HealthCheck))
    @given(st.sampled_from(target.seeds()), EDITS)
    def run(seed: bytes, edits: list[tuple[float, int, bytes]]) -> None:
        target.run(changed(seed, edits))

    run()


@pytest.mark.parametrize("name", TARGETS)
def test_sound_inputs_are_taken(name: str) -> None:
    """The seeds themselves."""
    for seed in TARGETS[name].seeds():
        TARGETS[name].run(seed)


@pytest.mark.parametrize("name", TARGETS)
def test_changed_bytes_end_in_a_sentence(name: str) -> None:
    """A few of each, at every run of the tests."""
    tried(name, QUICK[name])


@pytest.mark.long
@pytest.mark.parametrize("name", TARGETS)
def test_many_changed_bytes_end_in_a_sentence(name: str) -> None:
    """Many of each."""
    tried(name, LONG * QUICK[name])
