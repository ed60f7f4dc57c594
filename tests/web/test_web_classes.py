"""Several classes: a file each in one folder, opened, begun and named on the screen; a copy to keep and back again."""

from __future__ import annotations

import io
import os
import re
import shutil
import sys
from html import unescape
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from webhelp import HOST, MESSY, Visitor, labels, mark_in

from namewright.classbook import Classbook
from namewright.classbook.drafts import Draft
from namewright.settings import NamePart
from namewright.web import create_app
from namewright.web.class_files import file_name


def here(visitor: Visitor) -> str:
    """Return what the class that is open is called in the top bar."""
    return unescape(visitor.get("/classes").text.partition("<summary>")[2].partition("<b>")[2].partition("</b>")[0])


def test_a_class_is_begun_by_its_name_and_the_first_stays_as_it_was(settled: Visitor, class_file: Path) -> None:
    """The new one is empty, in a file of its own beside the first, and one press goes back."""
    answer = settled.post("/classes/new", {"title": "Room 4: the Wrens"})
    assert answer.headers["Location"].startswith("/class/list")
    fresh = class_file.with_name("room-4-the-wrens.db")
    assert labels(fresh) == []
    assert here(settled) == "Room 4: the Wrens"
    settled.keep("Zorah Pell\nWenna Praske")
    assert labels(fresh) == ["Zorah", "Wenna"]
    assert len(labels(class_file)) == 7
    assert settled.post("/classes/open", {"file": "class.db"}).status_code == 302
    assert "Ottilka" in settled.get("/now").text
    assert "Zorah" not in settled.get("/now").text


def test_an_empty_class_is_removed_in_two_steps(settled: Visitor, class_file: Path) -> None:
    """Asked about first; the class that is open and one that has anything in it stay, a list being worked on too."""
    begun = [class_file.with_name(f"room-{number}.db") for number in (4, 5)]
    for number in (4, 5):
        settled.post("/classes/new", {"title": f"Room {number}"})
    assert settled.get("/classes").text.count("Remove this empty class") == 1  # Room 5 is open
    settled.post("/classes/open", {"file": "class.db"})
    assert settled.get("/classes").text.count("Remove this empty class") == 2
    asked = settled.post("/classes/remove", {"file": "room-4.db"}).text
    assert "Remove Room 4?" in asked
    assert begun[0].exists()
    with Classbook.open(begun[1]) as book:
        book.keep_draft(Draft("Zorah Pell", NamePart.GIVEN))
    for path, status in zip((*begun, class_file, class_file.with_name("other.db")), (302, 422, 422, 404), strict=True):
        assert settled.post("/classes/remove/yes", {"file": path.name}).status_code == status
    assert [path.exists() for path in (*begun, class_file)] == [False, True, True]
    assert not list(class_file.parent.glob("room-4*"))
    assert len(labels(class_file)) == 7


def test_a_page_of_the_other_class_changes_nothing_and_still_turns(settled: Visitor, class_file: Path) -> None:
    """A window left open from the first class saves nothing into the second, but may open a class."""
    mark = mark_in(settled.get("/class/list").text)
    settled.post("/classes/new", {"title": "Room 4"})
    assert settled.post("/class/list", {"text": "Nobody Known", "based": "1"}, mark=mark).status_code == 409
    assert labels(class_file.with_name("room-4.db")) == []
    assert settled.post("/classes/open", {"file": "class.db"}, mark=mark).status_code == 302
    assert len(labels(class_file)) == 7


def test_a_list_that_is_another_class_becomes_one(settled: Visitor, class_file: Path) -> None:
    """From both lists side by side the new one goes into a class of its own, and the first keeps its own."""
    assert settled.keep("Zorah Pell\nWenna Praske").headers["Location"] == "/class/list/instead"
    settled.post("/classes/new", {"title": "Room 4", "draft": "1"})
    page = settled.get("/class/list").text
    assert "Zorah Pell\nWenna Praske" in page
    assert settled.keep("Zorah Pell\nWenna Praske").headers["Location"].startswith("/class?")
    assert labels(class_file.with_name("room-4.db")) == ["Zorah", "Wenna"]
    with Classbook.open(class_file) as book:
        assert (len(book.children()), book.draft()) == (7, None)


def test_only_classes_of_the_folder_are_listed_and_opened(settled: Visitor, class_file: Path) -> None:
    """Other files, other programs' databases and paths that lead elsewhere are not."""
    class_file.with_name("notes.db").write_bytes(b"SQLite format 3\0" + bytes(200))
    elsewhere = class_file.parent / "other"
    elsewhere.mkdir()
    Classbook.open(elsewhere / "secret.db").close()
    page = settled.get("/classes").text
    assert "notes.db" not in page
    for name in ("notes.db", "other/secret.db", "../class.db", str(elsewhere / "secret.db"), ""):
        assert settled.post("/classes/open", {"file": name}).status_code == 404
    assert here(settled) == "My class"
    assert settled.post("/classes/new", {"title": "  "}).status_code == 422


def test_a_class_is_called_otherwise(settled: Visitor, class_file: Path) -> None:
    """The name changes, the file does not, and one that is too long is refused in a sentence."""
    settled.post("/classes/name", {"title": "The <b>Alders</b>"})
    assert here(settled) == "The <b>Alders</b>"
    assert class_file.exists()
    assert settled.post("/classes/name", {"title": "x" * 400}).status_code == 422


def test_a_copy_is_kept_and_comes_back_beside_the_others(settled: Visitor, class_file: Path) -> None:
    """A copy that is opened writes over nothing; in an empty class it takes the place; no class is refused."""
    settled.post("/classes/name", {"title": "Room 9"})
    copy = settled.get("/copy/class.db")
    assert 'filename="room-9-2' in copy.headers["Content-Disposition"]
    settled.keep(MESSY.replace("Bo Lindle\n", ""))
    sent = {"file": (io.BytesIO(copy.data), "room-9-2026-09-14.db")}
    assert settled.post("/copy", sent).status_code == 302  # type: ignore[arg-type]
    assert len(labels(class_file)) == 6
    assert len(labels(class_file.with_name("room-9.db"))) == 7
    settled.post("/classes/new", {"title": "Empty"})
    sent = {"file": (io.BytesIO(copy.data), "room-9.db")}
    settled.post("/copy", sent)  # type: ignore[arg-type]
    assert len(labels(class_file.with_name("empty.db"))) == 7
    before = sorted(class_file.parent.iterdir())
    wrong = {"file": (io.BytesIO(b"no class"), "../../room.db")}
    assert settled.post("/copy", wrong).status_code == 422  # type: ignore[arg-type]
    assert sorted(class_file.parent.iterdir()) == before


def test_two_copies_of_one_name_at_the_same_moment_are_two_classes(settled: Visitor, class_file: Path,
                                                                   monkeypatch: pytest.MonkeyPatch) -> None:
    """Where another window takes the name between the look and the writing, its file stays and ours is another."""
    copy, theirs = settled.get("/copy/class.db").data, class_file.with_name("room-9.db")

    def taken_meanwhile(title: str, folder: Path) -> Path:
        found = file_name(title, folder)
        if found == theirs:
            theirs.write_bytes(copy)
        return found

    monkeypatch.setattr("namewright.web.copies.file_name", taken_meanwhile)
    assert settled.post("/copy", {"file": (io.BytesIO(copy), "room-9.db")}).status_code == 302  # type: ignore[dict-item]
    assert theirs.read_bytes() == copy
    assert len(labels(class_file.with_name("room-9-2.db"))) == 7


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no named pipes here")
def test_a_pipe_among_the_classes_is_passed_over(settled: Visitor, class_file: Path) -> None:
    """Nobody waits for what may never be written into it."""
    os.mkfifo(class_file.with_name("pipe.db"))
    assert "pipe" not in settled.get("/classes").text


@pytest.mark.skipif(sys.platform != "linux", reason="names of files are text here")
def test_a_file_whose_name_is_no_text_is_a_class_like_others(settled: Visitor, class_file: Path) -> None:
    """As an older system may have written it: it is listed and opened, and every page is shown."""
    odd = class_file.with_name(os.fsdecode(b"caf\xe9.db"))
    shutil.copy(class_file, odd)
    found = re.search(r'name="file" value="([^"]*xe9[^"]*)"', settled.get("/classes").text)
    assert found
    assert settled.post("/classes/open", {"file": found[1]}).status_code == 302
    for path in ("/class", "/class/list", "/classes", "/class/erase"):
        assert settled.get(path).status_code == 200
    odd.write_bytes(b"SQLite format 3" + bytes(100))
    assert settled.get("/class").status_code == 409


def test_a_file_that_may_not_be_looked_for_is_passed_over(settled: Visitor, class_file: Path,
                                                          monkeypatch: pytest.MonkeyPatch) -> None:
    """A link into a folder of somebody else's."""
    others, is_file = class_file.with_name("others.db"), Path.is_file
    shutil.copy(class_file, others)

    def asked(path: Path) -> bool:
        if path.name == others.name:
            raise PermissionError(path.name)
        return is_file(path)

    monkeypatch.setattr(Path, "is_file", asked)
    page = settled.get("/classes")
    assert (page.status_code, others.name in page.text) == (200, False)


@pytest.mark.parametrize("how", [{"PASSPHRASE": "a long passphrase for tests"}, {"IN_BROWSER": True}])
def test_where_there_is_one_class_alone_no_other_is_offered(class_file: Path, how: dict[str, object]) -> None:
    """Who was let into a shared class sees no other and takes no file away; inside a browser there is one."""
    app = create_app({"CLASS": str(class_file), "HOSTS": [HOST], **how})
    visitor = Visitor(app)
    with Classbook.open(class_file.with_name("other.db")):
        pass
    if "PASSPHRASE" in how:
        visitor.post("/gate", {"passphrase": str(how["PASSPHRASE"])})
    assert visitor.get("/class/list").status_code == 200
    assert "other" not in visitor.get("/class/list").text.partition('class="classes"')[2]
    assert visitor.get("/classes").status_code == 404
    assert visitor.post("/classes/open", {"file": "other.db"}).status_code == 404
    assert (visitor.get("/copy/class.db").status_code == 200) == ("IN_BROWSER" in how)


def test_a_list_that_was_typed_waits_where_a_copy_takes_the_place(settled: Visitor, class_file: Path) -> None:
    """Inside a browser a copy goes in place of the one class; what was typed there and not saved is not lost by it."""
    copy = settled.get("/copy/class.db").data
    class_file.unlink()
    visitor = Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST], "IN_BROWSER": True}))
    visitor.post("/class/list/read?part=lines", {"text": "Wenna Praske\n", "based": "0", "practise": "given"})
    answer = visitor.post("/copy", {"file": (io.BytesIO(copy), "class.db")})  # type: ignore[dict-item]
    assert "waits on the list screen" in visitor.get(visitor.get(answer.headers["Location"]).headers["Location"]).text
    assert "Wenna Praske" in visitor.get("/class/list").text
    assert len(labels(class_file)) == 7


@given(st.text(max_size=80))
def test_a_file_name_is_safe_whatever_a_class_is_called(title: str) -> None:
    """Small letters, figures and hyphens, never a path, a hidden file or a device, and not too long."""
    name = file_name(title).name
    assert name == Path(name).name
    assert name.endswith(".db")
    assert set(name) <= set("abcdefghijklmnopqrstuvwxyz0123456789-.")
    assert not name.startswith((".", "-"))
    assert name.partition(".")[0] not in ("con", "nul", "aux", "prn", "com1")
    assert len(name) <= 50
