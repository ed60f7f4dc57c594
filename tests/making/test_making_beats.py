"""What a teacher says of a name's beats and of its language reaches the paper: where a long name is broken, and how."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, grouping
from namewright.cli import main
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


def test_what_is_said_of_a_child_from_the_command_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Beats, the language of a name and of a home, each for one child; whose it is must be said."""
    file = str(tmp_path / "class.db")
    with Classbook.open(file) as book:
        book.update_roster("Mira\nBo")
    said = (("--beats", "Mir-a"), ("--names-in", "pl"), ("--home-language", "es"))
    assert [main(["class", file, *words, "--of", "Mira"]) for words in said] == [0, 0, 0]
    with Classbook.open(file) as book:
        assert dict(book.child(1).settings) == {"beats": "Mir-a", "names_in": "pl", "home_language": "es"}
        assert not book.class_settings
    assert "beats to clap Mir-a" in capsys.readouterr().out
    assert main(["class", file, "--beats", "Mir-a"]) == 2
    assert main(["class", file, "--beats", "Bo-bo", "--of", "Bo"]) == 2
    assert "do not make the name" in capsys.readouterr().err
