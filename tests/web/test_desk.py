"""What one start of the page keeps: pages of another class change nothing; a killed program loses at most a save."""

from __future__ import annotations

import time
from http.client import HTTPException
from pathlib import Path
from threading import Thread
from urllib.parse import urlencode

import pytest
from webhelp import HOST, MESSY, Program, Visitor, labels, mark_in, token_in

from longer import rest_long
from namewright.classbook import Classbook
from namewright.roster import known
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold
from namewright.web import create_app
from namewright.web.desk import Desk


def test_forgetting_lets_go_of_the_words_of_lists(class_file: Path) -> None:
    """Folded names are kept ready in memory, and go with an erased child or a class that is left."""
    read_roster("Ottilka Tamsel\nKirrin Brane")
    assert fold.cache_info().currsize  # type: ignore[attr-defined]
    assert known._forms_of.cache_info().currsize  # type: ignore[attr-defined]
    Desk(class_file).forget()
    assert not fold.cache_info().currsize  # type: ignore[attr-defined]
    assert not known._forms_of.cache_info().currsize  # type: ignore[attr-defined]


def test_a_page_of_another_class_changes_nothing_here(class_file: Path, settled: Visitor) -> None:
    """Every form of a page that was opened for class A is refused by a program that has class B open.

    What was typed stands on the page to copy, and the form comes back as it was, so that class A takes it later.
    """
    other_file = class_file.with_name("other.db")
    other = Visitor(create_app({"CLASS": str(other_file), "HOSTS": [HOST]}))
    assert other.keep("Wenna Praske\nTobin Yarrel\n").status_code == 302
    page = settled.get("/class/list?new=1").text
    token, mark, before = token_in(other.get("/class").text), mark_in(page), other_file.read_bytes()
    forms: list[tuple[str, dict[str, str]]] = [
        ("/class/list", {"text": MESSY, "based": "1"}), ("/child/1/lines", {"line_height": "30", "after": "0"}),
        ("/child/1/seen", {"day": "2026-03-02", "letter": "0", "note": "MESSY", "once": "k"}),
        ("/class/choices", {"paper": "a4", "order": "name"}), ("/class/drafts", {"draft-class": "paper=a4"}),
        ("/print", {"what": "sheets", "who": "all", "paper": "a4"}), ("/child/1/lines/undo", {"after": "0"})]
    for path, form in forms:
        for sent in (token, token_in(page)):  # of this start of the program, and of the other's
            answer = other.post(path, form, token=sent, mark=mark)
            assert (answer.status_code, "belongs to another class" in answer.text) == (409, True), path
            assert mark_in(answer.text.partition("<main")[2]) == mark
    assert other_file.read_bytes() == before
    back = other.post("/class/list", {"text": MESSY, "based": "1"}, mark=mark).text.partition("<main")[2]
    assert "KIRRIN" in back.partition("readonly")[2].partition("</textarea>")[0]
    assert settled.post("/class/list", {"text": MESSY, "based": "1"}, mark=mark_in(back)).status_code == 302


def test_a_copy_of_a_class_is_another_class(class_file: Path, settled: Visitor) -> None:
    """A copied file has the same random name, but children may differ by now, so its forms are its own."""
    copy = class_file.with_name("copy.db")
    copy.write_bytes(class_file.read_bytes())
    other = Visitor(create_app({"CLASS": str(copy), "HOSTS": [HOST]}))
    mark = mark_in(settled.get("/class").text)
    assert other.post("/class/choices", {"order": "name"}, mark=mark).status_code == 409
    again = Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST]}))
    assert again.post("/class/choices", {"order": "name"}, mark=mark).status_code == 302


def send(program: Program, form: dict[str, str], first_page: str) -> bool:
    """Send a list from outside; return whether it was taken."""
    data = urlencode({**form, "token": token_in(first_page), "class": mark_in(first_page)}).encode()
    try:
        program.ask("/class/list", data)
    except (OSError, HTTPException):  # cut off in the middle of an answer
        return False
    return True


@pytest.mark.parametrize("after_s", rest_long([0.004, 0.0, 0.012, 0.03]))
def test_killed_during_a_save(class_file: Path, after_s: float) -> None:
    """A program killed while it saves leaves the old list or the new one, whole; sent again it is there once."""
    form = {"text": MESSY + "Wenna Praske\n", "based": "1", "practise": "given"}
    with Program(class_file) as first:
        page = first.ask()
        assert send(first, {**form, "text": MESSY, "based": "0"}, page)
        sending = Thread(target=send, args=(first, form, page))
        sending.start()
        time.sleep(after_s)
        first.kill()
        sending.join()
    assert len(labels(class_file)) in (7, 8)
    with Program(class_file) as second:
        assert send(second, form, second.ask())
    with Classbook.open(class_file) as book:
        assert len(book.children(left=True)) == 8
        assert book.roster_id() == 2
