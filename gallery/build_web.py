"""Rebuild the pictures of the web page: every screen, wide and on a phone, by day and by night. Names are invented.

Needs Chromium and playwright. ``python gallery/build_web.py [screen …]``; look at each before committing it.
"""

from __future__ import annotations

import io
import os
import re
import shutil
import sys
import tempfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from PIL import Image
from playwright.sync_api import Browser, Page, sync_playwright
from waitress.server import create_server

from namewright.classbook import Classbook, Seen
from namewright.classbook.stages import Stage
from namewright.settings import Support
from namewright.web import create_app
from namewright.web.key import cookie_name
from namewright.web.serve import free_port

HERE = Path(__file__).parent
DEMO = HERE.parent / "src" / "namewright" / "demo.txt"
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync"]
GALLERY = "gallery"  # the key of the page
WIDE, PHONE = {"width": 1360, "height": 900}, {"width": 390, "height": 844}
SCREENS = {
    "list": "/class/list", "paste": "/class/list?new=1", "class": "/class?child=1", "children": "/class", "now": "/now",
    "lines": "/class?child=1&all=1", "sides": "/class?child=1", "everyone": "/class?child=1&for=everyone",
    "settings": "/child/1/settings", "notes": "/seen", "seen": "/child/1/seen", "family": "/child/1/home?in=es",
    "print": "/print/pages?what=sheets&child=1", "erase": "/class/erase", "week": "/class/week",
    "made": "/child/1/made?size=4x6", "beats": "/class/beats", "next": "/class/next",
}


def filled(path: Path) -> None:
    """Make a class with settings and a few days of writing."""
    with Classbook.open(path) as book:
        book.update_roster(DEMO.read_text(encoding="utf-8"), when="2026-09-01T08:00:00")
        child = book.children()[0].id
        book.set_settings(child, {"line_height": "24", "letter_spacing": "2"}, who="RK", when="2026-09-14T09:30:00")
        book.set_settings(child, {"letter_spacing": "3.5"}, who="RK", when="2026-10-02T10:05:00")
        for day, letters in (("2026-09-15", [0]), ("2026-09-29", [0, 1]), ("2026-10-13", [0, 1, 3]),
                             ("2026-10-27", [0, 1, 2, 3])):
            book.observe(child, day, Seen(letters, support=Support.PARTIAL, stage=Stage.SOME_LETTERS), who="RK")


@contextmanager
def running(class_file: Path) -> Iterator[str]:
    """Serve a class on a free port; yield its address."""
    port = free_port("127.0.0.1", None)
    app = create_app({"CLASS": str(class_file), "HOSTS": [f"127.0.0.1:{port}"], "KEY": GALLERY})
    server = create_server(app, listen=f"127.0.0.1:{port}", threads=4)
    threading.Thread(target=server.run, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{port}"
    finally:
        server.close()


def browser_of(playwright: Any) -> Browser:
    """Start Chromium without a window."""
    found = shutil.which("chromium") or os.environ.get("CHROMIUM", "/usr/bin/chromium")
    return playwright.chromium.launch(executable_path=found, args=FLAGS)


def job_page(page: Page, address: str) -> None:
    """Go through printing as far as the page with the PDF."""
    page.goto(address + "/class")
    page.get_by_role("button", name="Open PDF").click()
    page.wait_for_selector("[data-jobs][data-finished]", timeout=120_000)
    counted = re.compile(r"^\s*\d+ \S+\s*$")  # to the end, a moment after
    page.locator("#pages").filter(has_text=counted).wait_for()


def shoot(browser: Browser, address: str, name: str, size: dict[str, int], scheme: str) -> None:
    """Take one picture."""
    context = browser.new_context(viewport=size, color_scheme=scheme, reduced_motion="reduce",  # type: ignore[arg-type]
                                  has_touch=size is PHONE, is_mobile=size is PHONE)
    context.add_cookies([{"name": cookie_name(address), "value": GALLERY, "url": address}])
    page = context.new_page()
    if name == "job":
        job_page(page, address)
    else:
        page.goto(address + SCREENS[name])
        if name == "now":
            page.locator("#letters").press_sequentially("ka")
        elif name == "sides":
            page.get_by_text("Before and after, at true size").click()
        page.wait_for_load_state("networkidle")
    where = "wide" if size is WIDE else "phone"
    shade = "" if scheme == "light" else "-dark"
    tall = int(page.evaluate("document.documentElement.scrollHeight"))
    page.set_viewport_size({"width": size["width"], "height": min(tall, 2 * size["height"])})
    picture = Image.open(io.BytesIO(page.screenshot()))
    picture.convert("RGB").quantize(96, dither=Image.Dither.NONE).save(HERE / f"web-{name}-{where}{shade}.png",
                                                                      optimize=True)
    context.close()


def main() -> None:
    """Take every picture, or those of the screens that are named."""
    wanted = sys.argv[1:] or [*SCREENS, "job"]
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        filled(Path(folder) / "class.db")
        browser = browser_of(playwright)
        with running(Path(folder) / "class.db") as address:
            for name in wanted:
                for size in (WIDE, PHONE):
                    for scheme in ("light", "dark"):
                        shoot(browser, address, name, size, scheme)
                print(name)
        browser.close()


if __name__ == "__main__":
    main()
