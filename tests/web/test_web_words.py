"""The words of the screens: every language says all that is said, and nothing is asked for that is not there."""

from __future__ import annotations

import re
from importlib import resources

import pytest

from namewright.tuning import KNOBS
from namewright.web.screen_language import screen_languages
from namewright.wording import FIRST, wording


def test_every_word_that_templates_ask_for_is_there() -> None:
    """A key written out in a template exists."""
    folder = resources.files("namewright.web").joinpath("templates")
    asked = [(template.name, key) for template in folder.iterdir()
             for key in re.findall(r"\bt\(['\"]([a-z_.0-9-]+)['\"][,)]", template.read_text(encoding="utf-8"))]
    assert len(asked) > 200
    assert [each for each in asked if not wording(FIRST).has(each[1])] == []


@pytest.mark.parametrize("language", screen_languages())
def test_every_knob_has_a_name(language: str) -> None:
    """A setting is called by a word of the language, not by its key, and so is its unit."""
    for knob in KNOBS:
        assert wording(language).has(f"web.knob.{knob.key}")
        if knob.unit:
            assert wording(language).has(f"setting.unit.{knob.unit}")
