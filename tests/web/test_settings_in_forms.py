"""The settings that a form holds, over what is kept for the class."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from flask import Flask
from webhelp import Visitor
from werkzeug.datastructures import MultiDict

from namewright.classbook import ClassbookError
from namewright.web.desk import book, close_book
from namewright.web.settings_in_forms import asked_settings, keep_choices, own_settings


@pytest.fixture
def app(settled: Visitor) -> Iterator[Flask]:
    application = settled.client.application
    with application.test_request_context("/"):
        book().set_class_settings({"paper": "a4", "landscape": "on", "order": "name", "letters": "a=two-storey"})
        yield application
        close_book()


def test_a_form_goes_before_what_is_kept_and_keeps_nothing(app: Flask) -> None:
    """What it does not send is not chosen, for a box that is not ticked sends nothing; other settings stay."""
    found = asked_settings(MultiDict({"paper": "letter", "support": "light"}))
    assert (found["paper"], found["support"], found["order"]) == ("letter", "light", "name")
    assert "landscape" not in found
    assert "letters" not in found
    assert book().class_settings["paper"] == "a4"


def test_what_cannot_be_set_is_refused(app: Flask) -> None:
    """For the class and for a child; nothing is kept of the form."""
    for read in (asked_settings, own_settings, keep_choices):
        with pytest.raises(ClassbookError):
            read(MultiDict({"line_height": "900", "support": "light"}))
    assert "support" not in book().class_settings


def test_choices_are_kept_as_they_stand_in_the_form(app: Flask) -> None:
    """One that is not there is taken away; forms chosen in several places stand together."""
    keep_choices(MultiDict([("paper", "letter"), ("letters.a", "a=two-storey"), ("letters.t", "t=curved")]))
    kept = book().class_settings
    assert (kept["paper"], kept["letters"]) == ("letter", "a=two-storey t=curved")
    assert "landscape" not in kept


def test_what_nobody_changed_is_not_kept(settled: Visitor) -> None:
    """A form says all that is shown: what is usual and was never set is no change, and what was set is."""
    with settled.client.application.test_request_context("/"):
        usual = {"paper": "letter", "support": "full", "hand": "right", "order": "practice", "language": "en",
                 "tile_names": "on", "colour": "black"}
        before = book().class_settings
        first = keep_choices(MultiDict({**usual, **before, "support": "light"}))
        assert first
        assert [change.key for change in first.changes] == ["support"]
        back = keep_choices(MultiDict({**usual, **before}))
        assert back
        assert [(change.key, change.before, change.after) for change in back.changes] == [("support", "light", "full")]
        assert keep_choices(MultiDict({**usual, **book().class_settings, "order": "name"}))
        assert book().class_settings["order"] == "name"
        close_book()


def test_a_childs_form_has_what_concerns_a_child(app: Flask) -> None:
    """Paper is no setting of a child; a length is kept in millimetres."""
    assert own_settings(MultiDict({"line_height": "1 in", "hand": "left", "paper": "a4", "rows": ""})) == {
        "line_height": "25.4", "hand": "left"}
