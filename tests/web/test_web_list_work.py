"""The list page does work in step with the list: counted in calls, so that a slow machine fails nothing."""

from __future__ import annotations

import cProfile
import pstats

import pytest
from webhelp import Visitor

# Invented lines of which each has notes of its own, a column beside the name, or a letter that cannot be drawn.
SHAPES = {
    "notes": "Mirel{n} Vost (wears glasses {n})", "columns": "Mirel{n}\tVost\t{n}/4/2021\tglasses {n}",
    "letters": "Жора{n} Vost", "spaces": "  Mirel    Vost{n}  , ,,  x", "remarks": "KIRRIN BRANE {n} {n}{n}{n}",
}


def calls(visitor: Visitor, text: str) -> int:
    """Return how many functions are called to read a list and show it."""
    counting = cProfile.Profile()
    counting.enable()
    answer = visitor.post("/class/list/read?part=lines", {"text": text, "based": "0", "practise": "given"})
    counting.disable()
    assert answer.status_code == 200
    return int(pstats.Stats(counting).total_calls)  # type: ignore[attr-defined]


def test_a_list_of_endless_lines_is_refused_before_it_is_read(visitor: Visitor) -> None:
    """A few lines of a great many characters are no class list: that is said at once."""
    answer = visitor.post("/class/list/read", {"text": "Mirel\t" * 100_000, "based": "0", "practise": "given"})
    assert answer.status_code == 422
    assert "longer than 200000 characters" in answer.text


@pytest.mark.parametrize("shape", SHAPES.values(), ids=SHAPES)
def test_four_times_the_lines_are_about_four_times_the_work(visitor: Visitor, shape: str) -> None:
    """Regression: every line counted the notes of all lines, so that four hundred took over a minute."""
    few, many = ("\n".join(shape.format(n=n) for n in range(count)) for count in (20, 80))
    calls(visitor, few)  # what is kept from the first time on
    assert calls(visitor, many) < 6 * calls(visitor, few)
