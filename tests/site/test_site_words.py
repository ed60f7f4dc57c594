"""What the page around the screens says is there in every language of the screens, so that the site can be built."""

from __future__ import annotations

import pytest

from namewright.site.build import STATIC, WORDS
from namewright.web.screen_language import screen_languages
from namewright.wording import wording


@pytest.mark.parametrize("language", screen_languages())
def test_the_page_around_the_screens_has_its_words(language: str) -> None:
    assert [key for key in WORDS if not wording(language).has(f"web.site.{key}")] == []


def test_no_word_is_carried_that_the_page_does_not_say() -> None:
    """A key of the page's words stands in quotes in its script, or is put into the page when the site is built."""
    script = (STATIC / "shell.mjs").read_text("utf-8")
    assert [key for key in WORDS if f'"{key}"' not in script] == ["scripts"]
