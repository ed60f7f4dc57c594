"""Everything made ready before a class is at hand: nothing of it stays but what is quicker from then on."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from namewright.classbook import Classbook
from namewright.site.bridge import Bridge
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


def test_the_way_of_a_first_class_is_gone_to_its_pdf(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The list is read, saved and printed; where a form had changed, readying would be for nothing."""
    answered: list[tuple[str, int]] = []
    made: list[int] = []
    answer, work = Bridge.answer, Bridge.work

    def heard(bridge: Bridge, method: str, path: str, *given: Any) -> Any:
        said = answer(bridge, method, path, *given)
        answered.append((path, said.status))
        return said

    def counted(bridge: Bridge) -> bool:
        there = work(bridge)
        made.extend(job.pages for job in bridge._desk.jobs._jobs.values() if job.ready)
        return there

    monkeypatch.setattr(Bridge, "answer", heard)
    monkeypatch.setattr(Bridge, "work", counted)
    readied(str(tmp_path / "class.db"), HOST, ROOT)
    assert (ROOT + "/class/list", 302) in answered
    assert [status for _, status in answered if status not in (200, 302)] == []
    assert max(made) > 20
