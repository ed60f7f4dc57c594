"""Which settings a class file keeps, and in which form: one that reads back as itself."""

from __future__ import annotations

import pytest

from namewright.classbook.keys import CHILD_KEYS, can_be_set, checked_setting
from namewright.classbook.records import ClassbookError
from namewright.tuning import KNOBS

KEPT = [  # key, as typed, as kept
    ("support", " Light ", "light"), ("hand", "LEFT", "left"), ("practise", "both", "both"),
    ("line_height", "5/8 in", "15.875"),
    ("line_height", "20 mm", "20"), ("midline", "0,5", "0.5"), ("rows", "3", "3"), ("bold_baseline", "yes", "on"),
    ("bold_baseline", "no", "off"), ("ladder", "dots,  dots-run-out", "dots dots-run-out"),
    ("keep_dots", " g  k ", "g k"),
    ("letters", "a=two-storey", "a=two-storey"), ("names_in", "HAW", "haw")]
OF_CHILD = [("beats", " Pe-ne-lo-pe ", "Pe-ne-lo-pe"), ("home_language", "es", "es")]
OF_CLASS = [("title", "  The  Alders ", "The Alders"), ("ruling", "de-5", "de-5"), ("paper", "A4", "a4"),
("landscape", "on", "on"),
            ("binding", "off", "off"), ("language", "es", "es"), ("order", "need", "need"), ("tables", "5", "5"),
            ("letters_per_week", "2", "2")]


@pytest.mark.parametrize(("key", "typed", "kept"), [*KEPT, *OF_CLASS])
def test_a_setting_is_kept_in_one_form(key: str, typed: str, kept: str) -> None:
    """Whatever way it was typed; and what is kept, typed again, stays as it is."""
    assert checked_setting(key, typed, of_class=True) == kept
    assert checked_setting(key, kept, of_class=True) == kept


@pytest.mark.parametrize(("key", "typed", "kept"), [*KEPT, *OF_CHILD])
def test_a_child_may_have_what_concerns_one_child(key: str, typed: str, kept: str) -> None:
    assert checked_setting(key, typed, of_class=False) == kept


@pytest.mark.parametrize(("key", "text"), [(key, text) for key, text, _ in OF_CHILD])
def test_what_concerns_one_child_is_no_setting_of_the_class(key: str, text: str) -> None:
    with pytest.raises(ClassbookError):
        checked_setting(key, text, of_class=True)


@pytest.mark.parametrize("key", [key for key, _, _ in OF_CLASS])
def test_what_concerns_the_whole_class_is_no_childs_setting(key: str) -> None:
    with pytest.raises(ClassbookError):
        checked_setting(key, "on", of_class=False)


@pytest.mark.parametrize("key", CHILD_KEYS)
def test_nothing_typed_is_not_set(key: str) -> None:
    assert checked_setting(key, "  ", of_class=False) is None


@pytest.mark.parametrize(("key", "typed"), [
    ("support", "lots"), ("hand", "third"), ("line_height", "900"), ("rows", "0"), ("bold_baseline", "perhaps"),
    ("letters", "a=old"),
    ("ladder", "stairs"), ("keep_dots", "x" * 201), ("title", "x" * 81), ("ruling", "xx-1"), ("paper", "a3"),
    ("language", "xx"),
    ("volume", "3")])
def test_what_cannot_be_kept_is_refused(key: str, typed: str) -> None:
    with pytest.raises(ClassbookError):
        checked_setting(key, typed, of_class=True)


def test_every_knob_can_be_kept_for_a_child() -> None:
    assert {knob.key for knob in KNOBS} <= set(CHILD_KEYS)


def test_what_a_file_may_hold_is_what_could_be_set() -> None:
    """A value of its list; no empty one, none that is no value, no key of another kind."""
    asked = [("hand", "left", False), ("hand", " ", False), ("hand", "third", False), ("title", "x", False),
             ("title", "x", True), ("volume", "3", True)]
    assert [can_be_set(key, text, of_class=of_class) for key, text, of_class in asked] == [
        True, False, False, False, True, False]
