"""The bridge: every kind of request that a screen sends, answered without a server."""

from __future__ import annotations

import re
import sys
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

import pytest
from jinja2 import Environment

from namewright.lines.cues import CueMaker
from namewright.making import own_pages
from namewright.site import bridge as site_bridge
from namewright.site.bridge import Answer, Bridge, compile_templates
from namewright.site.build import _page

HOST, ROOT = "play.example", "/names/app"
BOUNDARY = "a-part-ends"


@pytest.fixture
def class_file(tmp_path: Path) -> Path:
    return tmp_path / "class.db"


@pytest.fixture
def bridge(class_file: Path) -> Bridge:
    return Bridge(class_file, HOST, ROOT)


def typed(page: Answer, **fields: str) -> dict[str, str]:
    """Return a form as a browser would send it: what is hidden in the page, and what is typed."""
    hidden = re.findall(r'name="(token|class)" value="([^"]*)"', page.body.decode())
    return dict(hidden[:2]) | fields


def form(bridge: Bridge, path: str, fields: dict[str, str], files: dict[str, bytes] | None = None) -> Answer:
    """Send a form with files as RFC 7578 has it, put together by hand."""
    parts = [f'--{BOUNDARY}\r\nContent-Disposition: form-data; name="{key}"\r\n\r\n{text}\r\n'.encode()
             for key, text in fields.items()]
    parts += [f'--{BOUNDARY}\r\nContent-Disposition: form-data; name="{key}"; filename="one.db"\r\n\r\n'.encode() + data
              + b"\r\n" for key, data in (files or {}).items()]
    body = b"".join(parts) + f"--{BOUNDARY}--\r\n".encode()
    return bridge.answer("POST", ROOT + path, [("Content-Type", f"multipart/form-data; boundary={BOUNDARY}")], body)


def header(answer: Answer, name: str) -> str:
    return dict(answer.headers).get(name, "")


def keep(bridge: Bridge, names: str) -> None:
    """Keep a list as the class."""
    page = bridge.answer("GET", ROOT + "/class/list")
    (based,) = set(re.findall(r'name="based" value="(\d+)"', page.body.decode()))
    body = urlencode(typed(page, text=names, based=based, practise="given")).encode()
    kept = bridge.answer("POST", ROOT + "/class/list", [("Content-Type", "application/x-www-form-urlencoded")], body)
    assert kept.status == 302, kept.body.decode()[-900:]


def test_pages_lie_under_the_root(bridge: Bridge) -> None:
    """Links, style and pictures all begin with the root, wherever a server has put the folder."""
    page = bridge.answer("GET", ROOT + "/class/list")
    links = re.findall(r'(?:href|src|action)="([^"#]+)"', page.body.decode())
    assert page.status == 200
    assert len(links) > 8
    assert all(link.startswith(ROOT + "/") for link in links), links


def test_what_the_screens_are_made_of_lies_among_the_files(bridge: Bridge) -> None:
    """Styles, scripts and fonts are answered without Python: as it would answer them, byte for byte."""
    keep(bridge, "Ottoline\nBram")
    pages = [bridge.answer("GET", ROOT + path).body.decode() for path in ("/class/list", "/class", "/now")]
    links = {link for page in pages for link in re.findall(r'(?:href|src)="([^"]+/static/[^"]+)"', page)}
    files = dict(_page())
    assert len(links) > 8
    for link in links:
        assert bridge.answer("GET", link).body == files[link.removeprefix("/names/")], link


@pytest.mark.parametrize("path", ["/elsewhere", "/names/apparel", "/names/app"])
def test_what_lies_outside_is_not_found(bridge: Bridge, path: str) -> None:
    assert bridge.answer("GET", path).status == 404


def test_only_this_page_may_frame_the_screens(bridge: Bridge) -> None:
    page = bridge.answer("GET", ROOT + "/class/list")
    assert header(page, "X-Frame-Options") == "SAMEORIGIN"
    assert "frame-ancestors 'self'" in header(page, "Content-Security-Policy")
    assert "default-src 'none'" in header(page, "Content-Security-Policy")


def test_a_language_is_remembered_without_a_browser_seeing_the_cookie(bridge: Bridge, class_file: Path) -> None:
    """Choosing Spanish leads back, sets no cookie outside, and lasts over a start with the cookies of last time."""
    page = bridge.answer("GET", ROOT + "/class/list")
    chosen = form(bridge, "/language", typed(page, language="es", back=ROOT + "/class"))
    assert (chosen.status, header(chosen, "Location")) == (302, ROOT + "/class")
    assert header(chosen, "Set-Cookie") == ""
    again = Bridge(class_file, HOST, ROOT)
    again.take_up(bridge.cookies)
    assert b'<html lang="es"' in again.answer("GET", ROOT + "/class/list").body


def test_a_change_is_told_until_it_is_kept(bridge: Bridge) -> None:
    """A class that was saved is unkept until the device says that it has it; looking changes nothing."""
    bridge.answer("GET", ROOT + "/class")
    bridge.is_kept()
    keep(bridge, "Ottoline\nBram")
    fresh = bridge.unkept()
    assert fresh is not None
    assert fresh.startswith(b"SQLite format 3\0")
    bridge.is_kept()
    bridge.answer("GET", ROOT + "/class")
    assert bridge.unkept() is None


def test_only_what_was_given_out_is_kept(bridge: Bridge, class_file: Path) -> None:
    """What changed after the file was given out stays unkept, though that file was kept meanwhile."""
    keep(bridge, "Ottoline\nBram")
    assert bridge.unkept() is not None
    keep(bridge, "Sunniva")
    bridge.is_kept()
    assert bridge.unkept() == class_file.read_bytes()


def test_what_could_not_be_kept_is_taken_back(monkeypatch: pytest.MonkeyPatch, bridge: Bridge) -> None:
    """On a full device the class is what it was, and a page says so."""
    keep(bridge, "Ottoline\nBram")
    bridge.unkept()
    bridge.is_kept()
    keep(bridge, "Ottoline\nBram\nSunniva")
    monkeypatch.setitem(sys.modules, "flask.testing", None)  # it needs pdb, which Python for browsers has not
    said = bridge.not_kept()
    assert said.status == 507
    assert b"could not save" in said.body
    page = bridge.answer("GET", ROOT + "/class").body.decode()
    assert "Ottoline" in page
    assert "Sunniva" not in page


def test_a_pdf_is_made_when_nothing_else_is_asked(class_file: Path) -> None:
    """The form is answered at once; the work then tells how far it is; the PDF is a PDF."""
    told: list[tuple[int, int]] = []
    bridge = Bridge(class_file, HOST, ROOT)
    bridge.take_up({}, lambda done, total: told.append((done, total)))
    keep(bridge, "Ottoline\nBram")
    page = bridge.answer("GET", ROOT + "/class")
    sent = form(bridge, "/print", typed(page, what="sheets", who="all"))
    assert sent.status == 302
    where = header(sent, "Location")
    assert b"data-finished" not in bridge.answer("GET", where).body
    assert bridge.work()
    assert not bridge.work()
    assert [done for done, _ in told] == list(range(1, len(told) + 1)), told
    assert all(done <= total for done, total in told)
    assert len(told) >= 2
    assert b"data-finished" in bridge.answer("GET", where).body
    assert bridge.answer("GET", where + "/pages.pdf").body.startswith(b"%PDF-")


def pdf_of(bridge: Bridge) -> bytes:
    """Make the sheets of everybody."""
    page = bridge.answer("GET", ROOT + "/class")
    where = header(form(bridge, "/print", typed(page, what="sheets", who="all")), "Location")
    bridge.work()
    return bridge.answer("GET", where + "/pages.pdf").body


def test_letters_that_were_counted_are_not_made_again_for_the_pdf(class_file: Path, bridge: Bridge,
                                                                  monkeypatch: pytest.MonkeyPatch) -> None:
    """The PDF is the same, byte for byte, whether its letters are there from counting or not."""
    keep(bridge, "Ottoline\nBram")
    page = bridge.answer("GET", ROOT + "/class")
    form(bridge, "/print/count", typed(page, what="sheets", who="all"))
    form(bridge, "/print/count", typed(page, what="sheets", who="all"))
    worked: list[str] = []
    alone = CueMaker._work_out

    def counted(maker: CueMaker, *given: Any) -> Any:
        worked.append("marks")
        return alone(maker, *given)

    monkeypatch.setattr(CueMaker, "_work_out", counted)
    after = pdf_of(bridge)
    assert not worked
    other = Bridge(class_file, HOST, ROOT)
    assert pdf_of(other) == after
    assert worked


def test_sheets_are_laid_out_while_the_list_is_looked_at(class_file: Path, bridge: Bridge,
                                                        monkeypatch: pytest.MonkeyPatch) -> None:
    """Step by step, whenever nothing is asked; the PDF of the saved class lays out none, and is the same PDF."""
    laid_out: list[str] = []
    alone = own_pages.practice_pages

    def counted(setter: Any, name: str, *given: Any) -> Any:
        laid_out.append(name)
        return alone(setter, name, *given)

    monkeypatch.setattr(own_pages, "practice_pages", counted)
    page = bridge.answer("GET", ROOT + "/class/list")
    form(bridge, "/class/list/read?part=lines", typed(page, text="Ottoline\nBram\nSunniva", practise="given"))
    assert laid_out == []
    assert bridge.work()
    assert len(laid_out) == 1
    assert [bridge.work(), bridge.work(), bridge.work()] == [True, True, False]
    assert sorted(laid_out) == ["Bram", "Ottoline", "Sunniva"]
    laid_out.clear()
    keep(bridge, "Ottoline\nBram\nSunniva")
    after = pdf_of(bridge)
    assert laid_out == []
    assert pdf_of(Bridge(class_file, HOST, ROOT)) == after
    assert len(laid_out) == 3


def test_a_copy_is_saved_and_opened_again(bridge: Bridge, tmp_path: Path) -> None:
    """A copy is the file itself; opened elsewhere it is the class; what is no class changes nothing."""
    keep(bridge, "Ottoline\nBram")
    copy = bridge.answer("GET", ROOT + "/copy/class.db")
    assert "attachment" in header(copy, "Content-Disposition")
    other = Bridge(tmp_path / "other.db", HOST, ROOT)
    keep(other, "Sunniva")
    page = other.answer("GET", ROOT + "/copy")
    assert form(other, "/copy", typed(page), {"file": b"no class"}).status == 422
    assert "Sunniva" in other.answer("GET", ROOT + "/class").body.decode()
    assert form(other, "/copy", typed(page), {"file": copy.body}).status == 302
    shown = other.answer("GET", ROOT + "/class").body.decode()
    assert "Ottoline" in shown
    assert "Sunniva" not in shown


@pytest.mark.parametrize("host", [HOST, "localhost:8000"])
def test_a_child_is_erased_for_good(class_file: Path, host: str) -> None:
    """Whoever holds the device may, at any address: nobody else can ask. No trace of the name is left in the file."""
    bridge = Bridge(class_file, host, ROOT)
    keep(bridge, "Ottoline Quast\nBram Teller")
    page = bridge.answer("GET", ROOT + "/class/erase")
    assert page.status == 200
    found = re.search(r'name="child" value="(\d+)"> <span[^>]*>Ottoline<', page.body.decode())
    assert found
    sure = form(bridge, "/class/erase", typed(page, child=found[1]))
    assert sure.status == 200
    assert "tidies up its own store only now and then" in sure.body.decode()  # a database there appends, as Chromium's
    assert form(bridge, "/class/erase/yes", typed(page, child=found[1])).status == 302
    assert bridge.unkept() is not None
    assert b"Ottoline" not in class_file.read_bytes()
    assert b"Bram" in class_file.read_bytes()


def test_an_error_is_a_page(bridge: Bridge) -> None:
    assert form(bridge, "/class", typed(bridge.answer("GET", ROOT + "/class/list"))).status == 405
    assert bridge.answer("GET", ROOT + "/lines/99").status == 404


def test_compiled_templates_are_taken_and_answer_the_same(class_file: Path, tmp_path: Path,
                                                          monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing of a screen is compiled then, and it is the same to the byte but for its token."""
    token = re.compile(rb'name="token" value="[^"]*"')
    from_source = token.sub(b"", Bridge(class_file, HOST, ROOT).answer("GET", ROOT + "/class/list").body)
    folder = tmp_path / "screens"
    compile_templates(folder)
    monkeypatch.setattr(site_bridge, "COMPILED", folder)
    monkeypatch.setattr(Environment, "compile", lambda *_, **__: pytest.fail("a template was compiled"))
    compiled = Bridge(class_file, HOST, ROOT)
    assert token.sub(b"", compiled.answer("GET", ROOT + "/class/list").body) == from_source
    compiled.compile_screens()
