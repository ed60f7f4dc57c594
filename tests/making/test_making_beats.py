"""What a teacher says of a name's beats and of its language reaches the paper: where a long name is broken, and how."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, grouping
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.pages.page import Row
from namewright.practice.ordering import order_class

LARGE = {"line_height": "52 mm"}  # so that a long name stands on two rows


def rows(book: Classbook, kind: Kind = Kind.SHEETS) -> tuple[str, ...]:
    """Return the parts of the first child's name as they stand on rows, each once, in order."""
    children = book.children()
    asked = Request((kind,), members_of(book, children, order_class([one.child for one in children])),
                    read_choices(book.class_settings))
    pages = Making(asked).pages()
    return tuple(dict.fromkeys(item.name for page in pages for item in page.items if isinstance(item, Row)))


@pytest.fixture
def book(tmp_path: Path) -> Classbook:
    """A class of one, whose long name is broken over two rows."""
    book = Classbook.open(tmp_path / "class.db")
    book.update_roster("Penelopetta")
    book.set_class_settings(LARGE)
    return book


def test_own_beats_move_the_break(book: Classbook) -> None:
    """A name is broken where its teacher says that a beat ends, and there only."""
    (one,) = book.children()
    book.set_settings(one.id, {"beats": "Penelo-petta"})
    assert rows(book) == ("Penelo", "petta")
    book.set_settings(one.id, {"beats": "Penel-opetta"})
    assert rows(book) == ("Penel", "opetta")


def test_beats_of_another_name_are_refused(book: Classbook) -> None:
    (one,) = book.children()
    with pytest.raises(ClassbookError, match="do_not_join"):
        book.set_settings(one.id, {"beats": "Pe-ne-lo-pe"})
    assert not book.settings_of(one.id)


@pytest.mark.parametrize(("of_class", "of_child", "parts"), [
    ("en", "", ("Mag", "da", "lene")), ("en", "it", ("Mag", "da", "le", "ne")), ("it", "en", ("Mag", "da", "lene"))])
def test_a_childs_own_language_goes_before_the_classs(tmp_path: Path, of_class: str, of_child: str,
                                                      parts: tuple[str, ...]) -> None:
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Magdalene")
        book.set_class_settings({"names_in": of_class})
        book.set_settings(book.children()[0].id, {"names_in": of_child})
        children = book.children()
        (placed,) = grouping.with_groups(book, children, order_class([each.child for each in children]),
                                         names_in=of_class)
    assert placed.beats == parts
