"""The steps of name writing as an adult types them."""

from __future__ import annotations

import pytest

from namewright.classbook.stages import Stage, read_stage
from namewright.pages.growth import STAGES


@pytest.mark.parametrize("stage", Stage)
def test_a_step_is_read_by_its_number_and_by_its_word(stage: Stage) -> None:
    """In any case, with a space, a line or a hyphen between its words."""
    for typed in (str(stage.value), stage.word, stage.word.upper(), stage.word.replace("-", " "), f" {stage.name} "):
        assert read_stage(typed) is stage


@pytest.mark.parametrize("typed", ["", "0", "8", "best", "1.5", "-1"])
def test_what_is_no_step_is_refused(typed: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        read_stage(typed)


def test_the_page_of_progress_has_as_many_steps() -> None:
    assert [stage.value for stage in Stage] == list(range(1, STAGES + 1))
