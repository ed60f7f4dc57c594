"""A setting and its value in words; what a newer program set, as it was written."""

from __future__ import annotations

import pytest

from namewright.classbook.keys import CHILD_KEYS
from namewright.message import Message, message
from namewright.web.settings_in_forms import PAGE_KEYS
from namewright.web.settings_told import called, told_of, told_of_class


@pytest.mark.parametrize("key", [*CHILD_KEYS, *PAGE_KEYS, "order", "title", "tables", "letters_per_week"])
def test_every_setting_is_called_by_words(key: str) -> None:
    assert isinstance(called(key), Message)


def test_a_value_is_told_in_words() -> None:
    assert told_of("hand", "left") == message("word.left")
    assert told_of("bold_baseline", "on") == message("web.lines.on")
    assert told_of("line_height", "24") == "24"
    assert told_of("line_height", None) == message("web.lines.usual")
    assert told_of("ladder", "dots first-letter") == (message("web.rung.dots"), message("web.rung.first-letter"))
    assert told_of("letters", "a=two-storey slant=8") == (
        message("web.forms.letter", letter="a", form=message("web.form.two-storey")),
        message("web.forms.slanted", degrees="8"))


def test_a_value_of_the_class_is_told_as_its_form_has_it() -> None:
    assert told_of_class("paper", "a4") == message("web.class.paper_a4")
    assert told_of_class("ruling", "us-1/2") == message("web.desk.inch_mm", inches="½", height=12.7)
    assert told_of_class("language", "es") == "Español"
    assert told_of_class("binding", "on") == message("web.lines.on")
    assert told_of_class("colour", "#123456") == "#123456"
    assert told_of_class("title", None) == message("web.desk.usual")


def test_what_is_not_known_stays_as_written() -> None:
    assert called("sparkle") == "sparkle"
    assert told_of("ladder", "mirror") == ("mirror",)
