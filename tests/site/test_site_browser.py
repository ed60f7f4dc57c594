"""The site in Chromium, from a server that hands out files and nothing else: a class, no network, kills, two tabs."""

from __future__ import annotations

import io
import os
import random
import re
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from playwright.sync_api import BrowserContext
from pypdf import PdfReader
from sitehelp import SAVE, Host, copy_of, fetched, height_of, image_made, opened, ready, save_class, sheets

from namewright.classbook import Classbook
from namewright.cli import main
from namewright.wording import wording

pytestmark = pytest.mark.long
KILLS = int(os.environ.get("NAMEWRIGHT_KILLS", "10"))  # 50 take several minutes
DEMO = Path(__file__).parents[2] / "src" / "namewright" / "demo.txt"


NUMBER = re.compile(rb"[-+]?\d*\.?\d+")
LAST_DIGIT = 0.11  # of the PDF's own numbers, hundredths of a millimetre: C libraries may differ in a sine's last digit
STEP, MOST_STEPS = 1.0, 0.0002  # places are whole hundredths: one that lies on a half may go to the other side


def same_but_for_last_digits(one: bytes, other: bytes) -> None:
    """Hold two PDFs to the same objects in order, their drawings to the same numbers but for the last digit."""
    apart: list[float] = []
    with pikepdf.open(io.BytesIO(one)) as first, pikepdf.open(io.BytesIO(other)) as second:
        assert len(first.objects) == len(second.objects)
        for a, b in zip(first.objects, second.objects, strict=True):
            if isinstance(a, pikepdf.Stream) and a.get("/Type") in ("/XRef", "/ObjStm"):
                continue  # where things lie in the file: packed streams of other numbers are a byte longer
            if isinstance(a, pikepdf.Stream):
                left, right = a.read_bytes(), b.read_bytes()
                assert NUMBER.sub(b"#", left) == NUMBER.sub(b"#", right)
                apart += (abs(float(x) - float(y))
                          for x, y in zip(NUMBER.findall(left), NUMBER.findall(right), strict=True))
            else:
                assert a.unparse() == b.unparse()
    assert max(apart) <= STEP
    assert sum(each >= LAST_DIGIT for each in apart) <= MOST_STEPS * len(apart)


def test_a_class_becomes_the_same_pdf_as_by_the_command_line(device: BrowserContext, host: Host,
                                                             tmp_path: Path) -> None:
    """And no request goes anywhere but to the site's own address, for its own files."""
    asked: list[str] = []
    device.on("request", lambda request: asked.append(request.url))
    page, frame = opened(device, host)
    save_class(frame, DEMO.read_text("utf-8"))
    made = sheets(page, frame)
    assert main(["sheets", str(DEMO), "-o", str(tmp_path / "class.pdf")]) == 0
    same_but_for_last_digits(made, (tmp_path / "class.pdf").read_bytes())
    assert asked
    assert not [each for each in asked if each.startswith(("http", "ws")) and not each.startswith(host.address)]


def test_the_browsers_own_menu_prints_the_pages_or_how_they_are_printed(device: BrowserContext, host: Host) -> None:
    """It prints the page around the screens: neither a name nor a button comes on paper before the pages are made."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast\nBram Teller")

    def on_paper() -> list[Any]:
        return list(PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True))).pages)

    (how,) = on_paper()
    assert how.extract_text().split() == wording("en").say("web.print.from_menu", button="Print").split()
    inside = next(each for each in page.frames if "/app" in each.url)
    inside.evaluate("() => { window.print = () => { document.documentElement.dataset.printed = 'yes'; }; }")
    frame.get_by_role("button", name="Print", exact=True).click()
    frame.locator("html[data-printed]").wait_for(state="attached", timeout=90_000)
    sheets_made = on_paper()
    assert len(sheets_made) == 2
    for each in sheets_made:
        assert (each.mediabox.width, each.mediabox.height) == pytest.approx((612, 792), abs=1)
        assert len(each.get_contents().get_data()) > 10_000  # drawn, not blank
        assert "foot of the page" not in each.extract_text()
    inside.evaluate("document.querySelector('#paper-out').replaceChildren()")
    assert len(on_paper()) == 1


def test_it_goes_on_without_a_network(device: BrowserContext, host: Host) -> None:
    """The server is gone and the tab is new: the class is there, and a card is made."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast\nBram Teller")
    page.close()
    host.stop()
    page, frame = opened(device, host)
    (child,) = copy_of(page).execute("SELECT min(id) FROM children").fetchone()
    assert fetched(page, f"/{host.name}/app/child/{child}/card.pdf").startswith(b"%PDF-")
    page.reload()
    ready(page)
    assert "Ottoline" in fetched(page, f"/{host.name}/app/class").decode()


def test_a_copy_is_saved_by_its_link_and_opened_again(device: BrowserContext, host: Host, tmp_path: Path) -> None:
    """What the link gives is the class's file: the browser must not ask the server of files for it."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast\nBram Teller")
    frame.get_by_text("More", exact=True).click()
    with page.expect_download() as coming:
        frame.get_by_role("link", name="Save a copy").click()
    coming.value.save_as(tmp_path / "class.db")
    with Classbook.open(tmp_path / "class.db") as book:
        assert {one.child.label for one in book.children()} == {"Ottoline", "Bram"}
    inside = next(each for each in page.frames if "/app" in each.url)
    assert inside.evaluate(SAVE, "21")[0] == 200
    frame.get_by_role("link", name="Open a copy").click()  # the menu is still open
    frame.locator("input[type=file]").set_input_files(tmp_path / "class.db")
    frame.get_by_role("button", name="Put the copy in its place").click()
    frame.get_by_role("button", name="Open PDF").wait_for()
    kept = dict(copy_of(page).execute("SELECT key, value FROM class_settings"))
    assert kept.get("line_height") != "21"


HELD = """async (words) => {
  const [name] = await caches.keys(), kept = await (await caches.open(name)).match("image");
  const held = new TextDecoder("latin1").decode(await kept.arrayBuffer());
  return words.map((word) => held.includes(word));
}"""
SPOILT = """async () => {
  const [name] = await caches.keys(), cache = await caches.open(name);
  const headers = (await cache.match("image")).headers;
  await cache.put("image", new Response(new Uint8Array(4096), { headers }));
}"""


def begun(page: Any) -> list[str]:
    """Return how Python began in a page, as its worker has marked it."""
    return [mark for worker in page.workers
            for mark in worker.evaluate("performance.getEntriesByType('mark').map((one) => one.name)")]


def test_later_starts_begin_from_an_image_that_holds_no_class(device: BrowserContext, host: Host) -> None:
    """The image is made beside the class without it; one that is spoilt is thrown away, and the class is there."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast")
    assert "fresh" in begun(page)
    image_made(page)
    assert page.evaluate(HELD, ["namewright.site.bridge", "Ottoline"]) == [True, False]
    page.close()
    page, frame = opened(device, host)
    assert "from image" in begun(page)
    page.evaluate(SPOILT)
    page.close()
    page, frame = opened(device, host)
    assert "fresh" in begun(page)
    assert "Ottoline" in fetched(page, f"/{host.name}/app/class").decode()


# Saves one line height after another as fast as they are answered, and notes the newest that was answered.
SAVE_ON = f"""async (from) => {{
  const save = {SAVE};
  for (let height = from; ; height += 0.01) {{
    const [status] = await save(height.toFixed(2));
    if (status === 200) window.saved = Number(height.toFixed(2));
  }}
}}"""


def test_what_was_said_to_be_saved_is_there_after_any_kill(device: BrowserContext, host: Host) -> None:
    """A page torn away in the middle of saving leaves the old class or the new one, whole, never older than told."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast")
    image_made(page)  # so that each start from then on is a short one
    chance, least, killed_amid = random.Random(7), 10.0, 0
    for _ in range(KILLS):
        inside = next(each for each in page.frames if "/app" in each.url)
        inside.evaluate(f"void ({SAVE_ON})({least + 0.01})")
        page.wait_for_timeout(chance.uniform(200, 900))
        told = inside.evaluate("window.saved ?? 0")
        page.close()
        page, frame = opened(device, host)
        frame.get_by_role("button", name="Open PDF").wait_for()
        found = copy_of(page)
        assert found.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        kept = height_of(page)
        assert kept >= max(told, least)
        killed_amid += kept > least
        least = kept
    assert killed_amid > KILLS / 2, "hardly any page was torn away while it saved"


def test_one_tab_holds_the_class(device: BrowserContext, host: Host) -> None:
    """A second tab says so in a sentence, and goes on by itself when the first is closed."""
    first, _ = opened(device, host)
    second = device.new_page()
    second.goto(host.address)
    second.get_by_text("open in another tab").wait_for()
    first.close()
    ready(second)
