"""The site in Chromium, from a server that hands out files and nothing else: teacher, aide, no network, two tabs."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import Any

import pytest
from conftest_site import Host, opened, ready
from playwright.sync_api import BrowserContext

from namewright.cli import main

pytestmark = pytest.mark.long
DEMO = Path(__file__).parents[2] / "src" / "namewright" / "demo.txt"


def save_class(frame: Any, names: str) -> None:
    """Paste a list and save it, as a teacher does."""
    frame.locator("h2 a").first.click()
    frame.locator("textarea").fill(names)
    frame.locator("form[data-list] button").first.click()
    frame.locator("button[name=keep], button.main").first.click()
    frame.locator("form[data-class]").wait_for()


def fetched(page: Any, address: str) -> bytes:
    """Return what the screens' frame is given for an address of its own."""
    inside = next(each for each in page.frames if "/app" in each.url)
    return bytes(inside.evaluate("""async (address) => Array.from(new Uint8Array(
        await (await fetch(address)).arrayBuffer()))""", address))
