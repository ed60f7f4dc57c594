"""Erased for good in the browser: told what goes, asked, and then gone from the file and from the running program."""

from __future__ import annotations

import re
import time
from contextlib import suppress
from http.client import HTTPException
from pathlib import Path
from threading import Thread
from urllib.parse import urlencode

import pytest
from webhelp import HOST, MESSY, Program, Visitor, finished, mark_in, token_in

from longer import rest_long
from namewright.classbook import Classbook
from namewright.web import create_app
from namewright.web.key import cookie_name

LIST = "Zaphrelle Quorndike\nMirel Vost\nKatla Pruner\n"


@pytest.fixture
def class_of_three(visitor: Visitor) -> Visitor:
    """A class in which one child has notes, settings and a PDF."""
    visitor.keep(LIST)
    visitor.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a", "note": "proud"})
    visitor.post("/child/2/seen", {"day": "2026-03-02", "letter": ["0"], "once": "b", "note": "beside Zaphrelle"})
    visitor.post("/child/1/lines", {"line_height": "30", "after": "0"})
    return visitor


def test_nothing_is_erased_before_it_is_confirmed(class_of_three: Visitor, class_file: Path) -> None:
    """The first form says who and how much would go; nobody ticked is said; neither changes the file."""
    before = class_file.read_bytes()
    page = class_of_three.get("/class/erase").text
    assert page.index("Katla") < page.index("Zaphrelle")  # by alphabet
    sure = class_of_three.post("/class/erase", {"child": ["1", "3"]})
    for said in ("Zaphrelle", "Katla", "One day of writing that was noted goes with it", "There is no way back"):
        assert said in sure.text
    assert re.search(r'value="[0-9a-f]{16}" checked> A note of 2026-03-02 about Mirel: “beside Zaph', sure.text)
    assert sure.text.count("Mirel") == 1
    assert class_of_three.post("/class/erase", {}).status_code == 422
    assert class_file.read_bytes() == before


def test_a_child_is_gone_from_file_and_program(class_of_three: Visitor, class_file: Path) -> None:
    """The bytes of the file hold the name no more, nor do finished PDFs and pictures; where it stands yet is told."""
    job = finished(class_of_three, class_of_three.post("/print", {"what": "sheets", "who": "all"}))
    assert class_of_three.get(job + "/pages.pdf").status_code == 200
    answer = class_of_three.post("/class/erase/yes", {"child": "1"})
    assert "Quorndike" not in answer.headers["Location"]
    said = class_of_three.arrive(answer)
    assert "One child was erased for good." in said
    assert "may still stand here: a note of 2026-03-02 about Mirel: “beside Zaphrelle”" in said
    assert "delete those too" in said
    assert b"Quorndike" not in class_file.read_bytes()
    for gone in (job + "/pages.pdf", "/child/1/lines", "/child/1/card.pdf"):
        assert class_of_three.get(gone).status_code == 404
    for path in ("/class", "/class/list", "/class/erase", "/now"):
        assert "Zaphrelle" not in class_of_three.get(path).text


def test_what_is_ticked_goes_too(class_of_three: Visitor, class_file: Path) -> None:
    """Where an adult leaves the tick, the name goes from the note about another child, and no bytes of it stay."""
    sure = class_of_three.post("/class/erase", {"child": "1"}).text
    also = re.findall(r'name="also" value="([0-9a-f]{16})"', sure)
    answer = class_of_three.post("/class/erase/yes", {"child": "1", "also": also})
    assert "may still stand" not in class_of_three.arrive(answer)
    with Classbook.open(class_file) as book:
        assert [note.note for note in book.observations(2)] == ["beside …"]
    assert b"Zaphrelle" not in class_file.read_bytes()


def test_an_open_page_forgets_whom_another_program_erased(class_of_three: Visitor, class_file: Path) -> None:
    """A finished PDF of an open page is gone after the name was erased at the command line."""
    job = finished(class_of_three, class_of_three.post("/print", {"what": "sheets", "who": "all"}))
    with Classbook.open(class_file) as book:
        book.erase([1])
    class_of_three.get("/class")
    assert class_of_three.get(job + "/pages.pdf").status_code == 404


def test_sent_twice_it_erases_once(class_of_three: Visitor, class_file: Path) -> None:
    """The second sending finds nobody, and everyone else is still there."""
    for _ in range(2):
        assert class_of_three.post("/class/erase/yes", {"child": "1"}).status_code == 302
    with Classbook.open(class_file) as book:
        assert [one.child.label for one in book.children(left=True)] == ["Mirel", "Katla"]


def test_who_left_can_be_erased_too(class_of_three: Visitor, class_file: Path) -> None:
    """A child who is no longer on the list is found under a heading of its own."""
    class_of_three.keep("Mirel Vost\nKatla Pruner\n")
    page = class_of_three.get("/class/erase").text
    assert page.index("No longer on the list") < page.index("Zaphrelle")
    class_of_three.post("/class/erase/yes", {"child": "1"})
    assert b"Quorndike" not in class_file.read_bytes()


def test_who_left_is_found_where_nobody_is_left_on_the_list(class_of_three: Visitor) -> None:
    """The way to erasing is on the list’s screen for as long as the file has anyone at all."""
    class_of_three.keep("Mirel Vost\n")
    class_of_three.post("/class/erase/yes", {"child": "2"})
    assert 'href="/class/erase"' in class_of_three.get("/class/list").text
    class_of_three.post("/class/erase/yes", {"child": ["1", "3"]})
    assert 'href="/class/erase"' not in class_of_three.get("/class/list").text


@pytest.mark.parametrize("after_s", rest_long([0.006, 0.0, 0.02]))
def test_killed_while_erasing(class_of_three: Visitor, class_file: Path, after_s: float) -> None:
    """A program killed while it erases has erased all of a child or nothing, and the file opens as before."""
    with Program(class_file) as program:
        page = program.ask()
        form = {"child": "1", "token": token_in(page), "class": mark_in(page)}

        def send() -> None:
            with suppress(OSError, HTTPException):
                program.ask("/class/erase/yes", urlencode(form).encode())

        sending = Thread(target=send)
        sending.start()
        time.sleep(after_s)
        program.kill()
        sending.join()
    with Classbook.open(class_file) as book:
        here = [one.child.label for one in book.children(left=True)]
        kept = "Quorndike" in book.roster_text()
    assert here in (["Zaphrelle", "Mirel", "Katla"], ["Mirel", "Katla"])
    assert kept == (len(here) == 3) == (b"Quorndike" in class_file.read_bytes())


def test_a_list_that_is_not_saved_goes_too_and_that_is_said(class_of_three: Visitor, class_file: Path) -> None:
    """A draft may hold the very name; it is told before, and gone after, from every byte of the file."""
    typed = {"text": LIST + "Zaphrelle Quorndike’s cousin", "based": "1"}
    class_of_three.post("/class/list/read?part=lines", typed)
    assert b"cousin" in class_file.read_bytes()
    assert "did not save goes with it" in class_of_three.post("/class/erase", {"child": "1"}).text
    class_of_three.post("/class/erase/yes", {"child": "1"})
    assert b"cousin" not in class_file.read_bytes()


def test_the_whole_class_is_erased_and_open_pages_with_it(class_of_three: Visitor, class_file: Path) -> None:
    """Nothing is left in the file, and a page that was open before changes nothing in the class that comes next."""
    page = class_of_three.get("/class/list").text
    assert "Everyone in class.db will be gone" in class_of_three.post("/class/erase", {"everything": "1"}).text
    answer = class_of_three.post("/class/erase/yes", {"everything": "1"})
    assert "The whole class was erased for good." in class_of_three.arrive(answer)
    for name in (b"Zaphrelle", b"Vost", b"Katla"):
        assert name not in class_file.read_bytes()
    mark = page.partition('name="class" value="')[2].partition('"')[0]
    assert class_of_three.post("/class/list", {"text": LIST, "based": "1"}, mark=mark).status_code == 409
    assert class_of_three.get("/class").headers["Location"] == "/class/list"


def test_another_class_erases_nothing_here(class_of_three: Visitor, class_file: Path, tmp_path: Path) -> None:
    """The most dangerous form of all is refused too where it was made for another class."""
    other = Visitor(create_app({"CLASS": str(tmp_path / "other.db"), "HOSTS": [HOST]}))
    other.keep(LIST)
    mark = other.get("/class").text.partition('name="class" value="')[2].partition('"')[0]
    assert class_of_three.post("/class/erase/yes", {"everything": "1"}, mark=mark).status_code == 409
    assert b"Quorndike" in class_file.read_bytes()


def test_a_shared_class_is_erased_only_where_it_is_kept(class_of_three: Visitor, class_file: Path) -> None:
    """Who comes from another computer of the network is told so, and nothing is erased."""
    class_of_three.client.environ_base["REMOTE_ADDR"] = "192.0.2.7"
    for answer in (class_of_three.get("/class/erase"), class_of_three.post("/class/erase/yes", {"everything": "1"})):
        assert answer.status_code == 403
        assert "only at the computer that has the class file" in answer.text
    assert b"Quorndike" in class_file.read_bytes()


def test_this_computer_may_ask_by_its_address_in_the_network(class_of_three: Visitor, class_file: Path) -> None:
    """A shared class is opened at that address, so its keeper comes from there too."""
    app = create_app({"CLASS": str(class_file), "HOSTS": [HOST, "192.0.2.7:4999"]})
    here = Visitor(app)
    here.client.set_cookie(cookie_name(HOST), app.config["KEY"], domain="192.0.2.7")
    here.client.environ_base["REMOTE_ADDR"] = "192.0.2.7"
    assert here.get("/class/erase", Host="192.0.2.7:4999").status_code == 200
    here.client.environ_base["REMOTE_ADDR"] = "192.0.2.8"
    assert here.get("/class/erase", Host="192.0.2.7:4999").status_code == 403


def test_two_of_one_name_are_told_apart_before_one_is_erased(settled: Visitor) -> None:
    """One who left and one who is here may have one label: each then has the whole name, at both steps."""
    settled.keep(MESSY.replace("Katla Pruner", "Katla Vost"))
    page = settled.get("/class/erase").text
    assert "Katla Pruner" in page
    assert "Katla Vost" in page
    assert "Katla Pruner" in settled.post("/class/erase", {"child": "5"}).text
