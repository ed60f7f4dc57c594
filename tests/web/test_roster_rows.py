"""A line a child: what is its own, what stands, and whether something needs a look. All names are invented."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from flask import Flask
from webhelp import Visitor

from namewright.classbook import Seen
from namewright.making.from_book import holds_for_class
from namewright.settings import Hand, Support
from namewright.web.desk import book, class_settings, close_book, members
from namewright.web.note_form import form_of, noted_on
from namewright.web.roster_rows import Row, rows_of


@pytest.fixture
def app(visitor: Visitor) -> Iterator[Flask]:
    visitor.keep("name,hand,letters\nKatla Pruner,left,\nMirel Vost,,purple\nАнна Dolt,,\nBo Lindle,,\n")
    application = visitor.client.application
    with application.test_request_context("/"):
        yield application
        close_book()


def rows() -> dict[str, Row]:
    settings = class_settings()
    return {row.label: row for row in rows_of(members(), settings, holds_for_class(settings))}


def test_only_what_is_a_childs_own_is_shown(app: Flask) -> None:
    """Level, hand and height where they are not those of everyone."""
    book().set_settings(4, {"line_height": "30", "support": "light"})
    found = rows()
    assert (found["Katla"].hand, found["Katla"].height_mm, found["Katla"].support) == (Hand.LEFT, None, None)
    assert (found["Bo"].hand, found["Bo"].height_mm, found["Bo"].support) == (None, 30.0, Support.LIGHT)


def test_letters_that_stand_are_counted(app: Flask) -> None:
    """Of the letters to tap in the notes, and as many as are told there; where nothing was noted nothing is."""
    book().observe(1, "2026-03-02", Seen([0, 1, 2]))
    found = rows()
    told = form_of(book().children()[0], 1, noted_on(book(), book().children()[0], "2026-03-02"), {}).told
    assert found["Katla"].formed == (told["count"], told["letters"]) == (3, 5)  # one a of two
    assert found["Bo"].formed is None


def test_what_needs_a_look_is_told(app: Flask) -> None:
    """Letters that we lack, and words that cannot be read; the name as it was typed."""
    found = rows()
    assert {label for label, row in found.items() if row.look} == {"Анна", "Mirel"}
    look = found["Анна"].look
    assert look is not None
    assert dict(look.fields)["label"] == "Анна"


def test_each_has_its_place_by_alphabet(app: Flask) -> None:
    assert [label for label, _ in sorted(rows().items(), key=lambda each: each[1].place)] == [
        "Bo", "Katla", "Mirel", "Анна"]
