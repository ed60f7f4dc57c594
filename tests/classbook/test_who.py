"""A name as an adult writes it. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.who import Known
from namewright.wording import wording


@pytest.mark.parametrize(("names", "shown"), [
    (("Katherine", "Moss", "Katie"), "Katherine “Katie” Moss"),
    (("Katherine", "Moss", "Katherine"), "Katherine Moss"),
    (("Katherine", "Moss", "Moss"), "Katherine Moss"),
    (("Katherine", "", "Katie"), "Katherine “Katie”"),
    (("", "Moss", "Moss"), "Moss Moss"),
])
def test_a_child_is_shown_by_the_whole_name(names: tuple[str, str, str], shown: str) -> None:
    """With what the child is called, where that is something else."""
    known = Known(1, *names, "a label", here=True)
    field = known.shown
    assert (field if isinstance(field, str) else wording("en").say(field)) == shown
