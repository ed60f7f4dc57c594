"""One child's card in a real browser: taps and keys are counted, and what is printed is measured."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from pypdf import PdfReader
from webhelp import MESSY, Program, until

from namewright.classbook import Classbook

PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
PT_PER_MM = 72 / 25.4
NewPage = Callable[..., Any]


def opened(class_file: Path, program: Program, page: Any, text: str = MESSY) -> None:
    """Keep a class and open the screen, with a browser that only remembers that it was asked to print."""
    with Classbook.open(class_file) as book:
        book.update_roster(text)
    page.add_init_script("window.print = () => { window.wasPrinted = true; }")
    page.goto(program.address + "/now")
    expect(page.locator("#letters")).to_be_focused()  # the cursor comes with the first picture


def printed(page: Any) -> tuple[float, float]:
    """Return the size in mm of the one page that the browser prints. It was asked to."""
    until(page, "window.wasPrinted")
    pdf = PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True)))
    assert len(pdf.pages) == 1
    return float(pdf.pages[0].mediabox.width) / PT_PER_MM, float(pdf.pages[0].mediabox.height) / PT_PER_MM


def titles(page: Any) -> list[str]:
    """Return who is in the PDF that the page offers, fetched by the page itself."""
    address = page.get_by_role("link", name="Open the PDF").get_attribute("href")
    data = page.evaluate("async (at) => [...new Uint8Array(await (await fetch(at)).arrayBuffer())]", address)
    return [one.title for one in PdfReader(io.BytesIO(bytes(data))).outline]  # type: ignore[union-attr]


def test_a_card_is_two_taps(class_file: Path, program: Program, new_page: NewPage) -> None:
    """A name, then Print: the card itself, on its own size once that was chosen on this device."""
    page, taps = new_page(**PHONE), 0
    opened(class_file, program, page)
    page.get_by_text("Card, 4 × 6 inches").tap()
    page.get_by_role("button", name="Bo", exact=True).tap()
    page.get_by_role("button", name="Print", exact=True).wait_for()
    page.goto(program.address + "/now")
    for button in ("Kasimir", "Print"):
        page.get_by_role("button", name=button, exact=True).tap()
        taps += 1
    assert taps == 2
    assert printed(page) == pytest.approx((152.4, 101.6), abs=0.3)  # Chromium rounds a page to whole CSS pixels
    assert titles(page) == ["Kasimir"]


@pytest.mark.long
def test_the_keyboard_alone_has_a_card(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Two letters, Enter, Enter: the focus waits on Print."""
    page = new_page()
    opened(class_file, program, page)
    page.keyboard.type("ot")
    page.keyboard.press("Enter")
    page.locator("button.print:focus").wait_for()
    page.keyboard.press("Enter")
    assert printed(page) == pytest.approx((215.9, 279.4), abs=0.3)
    assert titles(page) == ["Ottilka"]


@pytest.mark.long
def test_two_who_begin_alike_are_chosen_by_arrows(class_file: Path, program: Program, new_page: NewPage) -> None:
    page = new_page()
    opened(class_file, program, page)
    page.keyboard.type("Ka")
    page.get_by_text("2 names begin like this").wait_for()
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowDown")
    expect(page.locator(":focus")).to_have_text("Katla")
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Print", exact=True).wait_for()
    assert titles(page) == ["Katla"]


@pytest.mark.long
def test_the_first_is_who_is_called_so(class_file: Path, program: Program, new_page: NewPage) -> None:
    """A child whose name begins with the letters stands before one whose family name does, and Enter takes that one."""
    page = new_page()
    opened(class_file, program, page, "Bo Tamsel\nTavi Brane\n")
    page.locator("#letters").press_sequentially("ta")
    page.get_by_text("2 names begin like this").wait_for()
    expect(page.locator(".names li:visible")).to_have_text(["Tavi", "Bo"])
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Print", exact=True).wait_for()
    assert titles(page) == ["Tavi"]


@pytest.mark.long
def test_letters_taken_away_again_leave_everyone_by_alphabet(class_file: Path, program: Program,
                                                             new_page: NewPage) -> None:
    page = new_page()
    opened(class_file, program, page)
    page.keyboard.type("ka")
    page.keyboard.press("Backspace")
    page.keyboard.press("Backspace")
    expect(page.locator(".names li:visible")).to_have_text(
        ["Bo", "Íñigo", "Kasimir", "Katla", "Kirrin", "Miri", "Ottilka"])
