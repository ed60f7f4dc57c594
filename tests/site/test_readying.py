"""Everything made ready before a class is at hand: nothing of it stays but what is quicker from then on."""

from __future__ import annotations

from pathlib import Path

from namewright.classbook import Classbook
from namewright.site.readying import DEMO, SCREENS, readied

HOST, ROOT = "play.example", "/names/app"


def test_it_answers_and_holds_no_class(tmp_path: Path) -> None:
    """The invented class is gone: its file, and every child of it."""
    class_file = tmp_path / "class.db"
    bridge = readied(str(class_file), HOST, ROOT)
    assert not class_file.exists()
    with Classbook.open(class_file) as book:
        book.update_roster(DEMO.read_text("utf-8"))
        assert len(book.children()) > 20
    class_file.unlink()
    copy = bridge.answer("GET", ROOT + "/copy/class.db")
    class_file.write_bytes(copy.body)
    with Classbook.open(class_file) as book:
        assert not book.children()


def test_it_takes_up_the_class_that_lies_in_the_file_then(tmp_path: Path) -> None:
    bridge = readied(str(tmp_path / "class.db"), HOST, ROOT)
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Ottoline\nBram")
    bridge.take_up({})
    assert "Ottoline" in bridge.answer("GET", ROOT + "/class").body.decode()
    assert bridge.unkept() is None


def test_the_screens_are_those_of_the_application(tmp_path: Path) -> None:
    """Each answers for a class; where one had gone, readying it would be for nothing."""
    bridge = readied(str(tmp_path / "class.db"), HOST, ROOT)
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Ottoline\nBram")
    bridge.take_up({})
    assert [bridge.answer("GET", ROOT + path).status for path in SCREENS] == [200] * len(SCREENS)
