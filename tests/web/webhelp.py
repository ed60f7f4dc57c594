"""What the tests of the web page share: a program that is really started, and Chromium where it is installed."""

from __future__ import annotations

import io
import os
import re
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from html import unescape
from inspect import getsource
from pathlib import Path
from types import TracebackType
from typing import Any
from urllib.request import Request, urlopen

import pytest
from flask import Flask
from flask.testing import FlaskClient
from pypdf import PdfReader
from werkzeug.test import TestResponse

from namewright.classbook import Classbook
from namewright.settings import NamePart
from namewright.web.key import cookie_name
from namewright.web.list_reading import Reading, read
from namewright.web.serve import free_port

FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync"]
HOST = "127.0.0.1:4999"
PATIENCE = 90_000  # ms for what comes a moment later: a shared machine may stand still for a while
OTHERS = ["Katla Pruner", "Kasimir Dolt", "Wenna Praske", "Theo Ashgrove"]
"""Children over the line that a test is about."""
# An invented class, as messy as one pasted from a message.
MESSY = """Room 9 - the Alder class
1) Tamsel, Ottilka   L
2) Brane, KIRRIN
• Vost, Mirel (goes by Miri)

3. Íñigo Ondway
Katla Pruner
Kasimir Dolt
Bo Lindle
"""


def port_of_its_own() -> int:
    """Return a free port that no other test takes while a program is killed and started again on it.

    Not the usual one, which every program tries first, and not one that a system lends to outgoing connections.
    """
    first = 21000 + 7 * os.getpid() % 6000  # no two runs of the tests on one machine look in the same place
    for port in range(first, first + 50):
        with suppress(OSError):
            return free_port("127.0.0.1", port)
    raise AssertionError("no port is free")


def chromium() -> str:
    """Return where Chromium is; skip the test, in a plain sentence, where it is not."""
    found = shutil.which("chromium") or shutil.which("chromium-browser")
    if not found:
        pytest.skip("Chromium is not installed here, so the pages are not tried in a browser "
                    "(Debian or Ubuntu: apt install chromium)")
    return found


def own_folder(class_file: Path) -> dict[str, str]:
    """Return an environment in which the user's own folder is one beside that of the class."""
    return {**os.environ, "XDG_DATA_HOME": f"{class_file.parent}-own"}


KEYS: dict[str, str] = {}
CONTEXTS: list[Any] = []
"""The keys of the programs that were started, by cookie, and the browser's contexts that have them."""


def let_in(cookie: str, key: str) -> None:
    """Give every browser the key of a program, as its first address would."""
    KEYS[cookie] = key
    for context in CONTEXTS:
        context.add_cookies(cookies())


def cookies() -> list[dict[str, object]]:
    """Return the keys as cookies for a browser."""
    return [{"name": name, "value": key, "domain": "127.0.0.1", "path": "/", "httpOnly": True, "sameSite": "Strict"}
            for name, key in KEYS.items()]


class Program:
    """``namewright open``, started for real, and killed without a word where a test asks for it."""

    def __init__(self, class_file: Path, port: int | None = None) -> None:
        port_words = ["--port", str(port)] if port else []
        self.process = subprocess.Popen(
            [sys.executable, "-m", "namewright.cli", "open", "--class", str(class_file), "--no-browser", *port_words],
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=own_folder(class_file))
        assert self.process.stdout is not None
        self.way_in = self.process.stdout.readline().strip()
        if not self.way_in.startswith("http://127.0.0.1:"):
            ended = self.process.poll()  # None where it still ran
            raise AssertionError(f"instead of an address: {self.way_in!r}, {self.said()!r}, exit status {ended}")
        self.address, _, self.key = self.way_in.partition("/?key=")
        let_in(f"key-{self.port}", self.key)

    @property
    def port(self) -> int:
        """Return the port that it answers on."""
        return int(self.address.rpartition(":")[2])

    def ask(self, path: str = "/", data: bytes | None = None) -> str:
        """Return the answer to a request of who has the key. Raises OSError or HTTPException."""
        asked = Request(self.address + path, data, {"Cookie": f"key-{self.port}={self.key}"})
        return urlopen(asked, timeout=PATIENCE / 1000).read().decode()

    def kill(self) -> None:
        """End it at once, as a power cut would."""
        self.process.kill()
        self.process.wait()

    def said(self) -> str:
        """End it and return all that it wrote, after the address."""
        self.process.terminate()
        out, error = self.process.communicate(timeout=PATIENCE / 1000)
        return out + error

    def __enter__(self) -> Program:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None,
                 trace: TracebackType | None) -> None:
        if self.process.poll() is None:
            self.kill()


def token_in(page: str) -> str:
    """Return the first form token of a page."""
    found = re.search(r'name="token" value="([^"]+)"', page)
    assert found, page[:400]
    return unescape(found[1])


def mark_in(page: str) -> str:
    """Return the mark of the class in the first form of a page."""
    found = re.search(r'name="class" value="([^"]+)"', page)
    assert found, page[:400]
    return found[1]


class Visitor:
    """A client that asks as a browser on this machine would."""

    def __init__(self, app: Flask) -> None:
        self.client: FlaskClient = app.test_client()
        self.client.set_cookie(cookie_name(HOST), app.config["KEY"], domain=HOST.partition(":")[0])

    def get(self, path: str, **headers: str) -> TestResponse:
        """Ask for a page."""
        return self.client.get(path, headers={"Host": HOST, **_named(headers)})

    def post(self, path: str, data: Mapping[str, str | Sequence[str]], *, token: str | None = None,
             mark: str | None = None, **headers: str) -> TestResponse:
        """Send a form, with token and mark of the class from the first page unless given; an empty one is not sent."""
        first = self.get("/gate" if self.client.application.config["PASSPHRASE"] else "/class/list").text
        token, mark = token_in(first) if token is None else token, mark_in(first) if mark is None else mark
        form = {**data, **{key: text for key, text in (("token", token), ("class", mark)) if text}}
        return self.client.post(path, data=form, headers={"Host": HOST, "Origin": f"http://{HOST}", **_named(headers)})

    def arrive(self, answer: TestResponse) -> str:
        """Return the page that an answer leads to, however often it is led on."""
        while answer.status_code == 302:
            answer = self.get(answer.headers["Location"])
        return answer.text

    def keep(self, text: str) -> TestResponse:
        """Keep a list of names."""
        return self.post("/class/list", {"text": text, "based": self.based(), "practise": "given"})

    def based(self) -> str:
        """Return the number of the list that is kept now."""
        found = re.search(r'name="based" value="(\d+)"', self.get("/class/list").text)
        assert found
        return found[1]


def _named(headers: Mapping[str, str]) -> dict[str, str]:
    return {name.replace("_", "-"): text for name, text in headers.items()}


def listed(line: str, *more: str) -> Reading:
    """Read a list of four children and more lines, at a desk."""
    return read("\n".join([*OTHERS, line, *more]), NamePart.GIVEN)


def labels(class_file: Path) -> list[str]:
    """Return what the children of a class are called."""
    with Classbook.open(class_file) as book:
        return [one.child.label for one in book.children()]


def book_text(class_file: Path) -> str:
    """Return what is kept of the newest list."""
    with Classbook.open(class_file) as book:
        return book.roster_text()


def list_shown(visitor: Visitor, text: str, **more: str) -> str:
    """Return how a list is shown as it is typed."""
    answer = visitor.post("/class/list/read?part=lines", {"text": text, "based": visitor.based(), "practise": "given",
                                                          **more})
    assert answer.status_code == 200
    return unescape(answer.text)


def list_typed(visitor: Visitor) -> str:
    """Return the text that stands in the list's field."""
    page = visitor.get("/class/list").text
    return unescape(page.partition('<textarea id="text"')[2].partition(">")[2].partition("</textarea>")[0])


def finished(visitor: Visitor, answer: TestResponse) -> str:
    """Wait until the PDF that an answer leads to is made; return the path of its page."""
    assert answer.status_code == 302, answer.text[:500]
    where = answer.headers["Location"].partition("?")[0]
    soon(visitor, where + "/state", "data-finished")
    return where


def soon(visitor: Visitor, path: str, words: str) -> str:
    """Ask for a part of a page until it has some words, and return it."""
    ends = time.monotonic() + PATIENCE / 1000
    while words not in (said := visitor.get(path).text):
        assert time.monotonic() < ends, f"never came: {words}"
        time.sleep(0.05)
    return said


def until(page: Any, true: str | Callable[[], object]) -> None:
    """Wait until something holds that ``expect`` has no word for: what a script on a page says, or a test itself.

    Asked from outside again and again: the strict policy forbids a script that polls inside. Whatever comes a moment
    after an act (an answer, a picture, a focus, a screen) is waited for so or by ``expect``, and never read at once.
    """
    ends = time.monotonic() + PATIENCE / 1000
    while not (page.evaluate(true) if isinstance(true, str) else true()):
        assert time.monotonic() < ends, f"never came: {true if isinstance(true, str) else getsource(true).strip()}"
        page.wait_for_timeout(50)


def at_work(page: Any) -> Any:
    """Wait until the desk's script is there, which comes after the page was seen, and has counted; return the page."""
    page.locator("[data-tally=whole]").wait_for(state="attached")
    return page


def pdf_after(page: Any, act: Callable[[], object]) -> PdfReader:
    """Return the PDF that an act opens, in this window or another."""
    with page.context.expect_event("response", lambda answer: answer.url.endswith(".pdf")) as waiting:
        act()
    return PdfReader(io.BytesIO(page.context.request.get(waiting.value.url).body()))
