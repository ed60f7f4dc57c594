"""What the tests, the bench and the pictures of the site share: a server of files, and a page of it in a browser."""

from __future__ import annotations

import base64
import re
import sqlite3
import threading
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext

FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update"]
PATIENCE = 90_000  # ms for what comes a moment later: a shared machine may stand still for a while
IMAGE = """async () => {
  for (const name of await caches.keys()) if (await (await caches.open(name)).match("image")) return true;
  return false;
}"""

FETCHED = """async (address) => {
  const reader = new FileReader(), read = new Promise((done) => { reader.onload = done; });
  reader.readAsDataURL(await (await fetch(address)).blob());
  await read;
  return reader.result.split(",")[1];
}"""  # a list of numbers would take the driver seconds

# Saves a line height as the class's own, and returns the status and the page that answer.
SAVE = """async (height) => {
  const form = document.querySelector("form[action$='/class/choices']"), fields = new FormData(form);
  fields.delete("after");  // which save the form was opened after: this one goes over any
  fields.set("lines", "other");
  fields.set("line_height", height);
  const answer = await fetch(form.action, { method: "POST", body: fields });
  return [answer.status, await answer.text()];
}"""


class _Files(SimpleHTTPRequestHandler):
    """Hands out files and says nothing of it."""

    def log_message(self, format: str, *args: object) -> None:
        """Keep the terminal clean."""


class Host:
    """Python's file server on loopback: nothing but files.

    It takes its port itself: one that is only looked for, then named to a server, may meanwhile be another test's.
    """

    def __init__(self, folder: Path) -> None:
        self.name = folder.name
        self._server = ThreadingHTTPServer(("127.0.0.1", 0), partial(_Files, directory=str(folder.parent)))
        self.address = f"http://localhost:{self._server.server_port}/{folder.name}/"
        threading.Thread(target=self._server.serve_forever, daemon=True).start()

    def stop(self) -> None:
        """Answer nothing any more."""
        self._server.shutdown()
        self._server.server_close()


def opened(device: BrowserContext, host: Host) -> Any:
    """Open the site and wait for its first screen; return the page and the frame of the screens."""
    page = device.new_page()
    page.goto(host.address)
    return page, ready(page)


def ready(page: Any) -> Any:
    """Wait until Python answers in a page, and return the frame of the screens."""
    page.wait_for_selector("#screens:not([hidden])", timeout=90_000)
    frame = page.frame_locator("#screens")
    frame.locator("h1").first.wait_for(timeout=60_000)
    return frame


def save_class(frame: Any, names: str) -> None:
    """Paste a list and save it, as a teacher does."""
    frame.locator("textarea").fill(names)
    frame.get_by_role("button", name="Save this class").click()
    frame.locator("[data-tally=whole]").wait_for(state="attached")  # the desk's script is at work
    frame.owner.page.wait_for_url(re.compile(r"#app/class([?]|$)"))  # the place to which a reload comes back


def sheets(page: Any, frame: Any) -> bytes:
    """Make the sheets of the whole class and return the PDF that opens."""
    frame.get_by_role("button", name="Open PDF").click()
    link = frame.get_by_role("link", name="Open the PDF")
    link.wait_for(timeout=90_000)
    return fetched(page, link.get_attribute("href"))


def fetched(page: Any, address: str) -> bytes:
    """Return what the screens are given for an address of their own."""
    inside = next(each for each in page.frames if "/app" in each.url)
    return base64.b64decode(inside.evaluate(FETCHED, address))


def image_made(page: Any) -> None:
    """Wait until this device has its image of Python."""
    for _ in range(240):
        page.wait_for_timeout(500)
        if page.evaluate(IMAGE):
            return
    raise AssertionError("no image of Python was made")


def copy_of(page: Any) -> sqlite3.Connection:
    """Return a copy of the class as it is saved, opened by SQLite itself."""
    found = sqlite3.connect(":memory:")
    found.deserialize(fetched(page, f"/{page.url.split('/')[3]}/app/copy/class.db"))
    return found


def height_of(page: Any) -> float:
    """Return the line height that is kept for the class."""
    return float(dict(copy_of(page).execute("SELECT key, value FROM class_settings"))["line_height"])
