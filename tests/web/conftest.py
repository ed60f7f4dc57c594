"""Fixtures: an application over a class of its own, a program that runs, and a browser page."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from ctypes.util import find_library
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from playwright.sync_api import expect, sync_playwright
from webhelp import CONTEXTS, FLAGS, HOST, MESSY, PATIENCE, Program, Visitor, chromium, cookies

from namewright.web.desk import close_book

expect.set_options(timeout=PATIENCE)


@pytest.fixture
def class_file(tmp_path: Path) -> Path:
    """A place for a class."""
    return tmp_path / "class.db"


@pytest.fixture
def visitor(class_file: Path) -> Visitor:
    """Somebody on this machine, before an empty class."""
    from namewright.web import create_app

    return Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST]}))


@pytest.fixture
def at_the_desk(visitor: Visitor) -> Iterator[None]:
    """A reading asks the desk's letters what can be drawn."""
    with visitor.client.application.app_context():
        yield


@pytest.fixture
def settled(visitor: Visitor) -> Visitor:
    """The same, with the messy class kept."""
    assert visitor.keep(MESSY).status_code == 302
    return visitor


@pytest.fixture
def app(settled: Visitor) -> Iterator[Flask]:
    """The application in the middle of a request, the messy class open."""
    application = settled.client.application
    with application.test_request_context("/"):
        yield application
        close_book()


@pytest.fixture
def program(class_file: Path) -> Iterator[Program]:
    """A program that runs."""
    chromium()
    with Program(class_file) as running:
        yield running


@pytest.fixture(scope="module")
def browser() -> Iterator[Any]:
    """Chromium."""
    where = chromium()
    if sys.platform == "linux" and not find_library("atomic"):
        pytest.skip("the driver of the browser needs a library that is not installed here, so the pages are not tried "
                    "in a browser (Debian or Ubuntu: apt install libatomic1)")
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=where, args=FLAGS)
        yield running
        running.close()


@pytest.fixture
def new_page(browser: Any) -> Iterator[Callable[..., Any]]:
    """Open pages, wide unless told otherwise, and hold them to writing no error on the console."""
    contexts, errors = [], []

    def opened(**options: Any) -> Any:
        context = browser.new_context(**{"viewport": {"width": 1360, "height": 900}, **options})
        contexts.append(context)
        context.set_default_timeout(PATIENCE)
        context.add_cookies(cookies())
        CONTEXTS.append(context)
        page = context.new_page()
        page.on("console", lambda said: errors.append(said.text) if said.type == "error" else None)
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.console_errors = errors
        return page

    yield opened
    for context in contexts:
        CONTEXTS.remove(context)
        context.close()
    blocked = [error for error in errors if "Content Security" in error or "TypeError" in error]
    assert not blocked
