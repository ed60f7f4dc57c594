"""What is typed for a child on the desk and not kept is what is printed, by every way to print, and stays typed.

In a real browser; its own printing is stood in for, and what it would be handed is looked at. All names are invented.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from webhelp import Program, at_work, pdf_after, until

from longer import rest_long
from namewright.classbook import Classbook
from namewright.tuning import KNOBS
from namewright.web.panel import OF_CHILD

NewPage = Callable[..., Any]
HANDED = """() => {
  window.handed = [];
  window.print = () => window.handed.push(document.querySelector("#paper-out").innerHTML);
}"""
WORDS = {"hand": "left", "support": "light", "practise": "family"}
KEYS = [key for group in OF_CHILD for key in (*group.seen, *group.folded)]


@pytest.fixture
def desk(class_file: Path, program: Program, new_page: NewPage) -> Any:
    """The desk with the panel of the first of two children."""
    with Classbook.open(class_file) as book:
        book.update_roster("Given,Family\nKirrin,Brane\nBo,Lindle\n")
    page = new_page()
    page.goto(f"{program.address}/class?child=1&all=1")
    at_work(page)
    page.evaluate(HANDED)
    return page


def heights(drawn: str) -> set[float]:
    """Return the line heights on pages that are drawn, in millimetres."""
    lines = re.findall(r'class="(topline|baseline)"[^>]* y1="([\d.]+)"', drawn)
    return {round(float(base[1]) - float(top[1]), 2) for top, base in zip(lines[::2], lines[1::2], strict=True)}


def handed(page: Any, press: Callable[[], None]) -> str:
    """Return the pages that the browser is handed to print by a press."""
    before = page.evaluate("handed.length")
    press()
    until(page, f"handed.length > {before}")
    return str(page.evaluate("handed.at(-1)"))


def only_this_child(page: Any) -> None:
    page.get_by_role("button", name="Only Kirrin").click()


def test_what_is_typed_is_printed_at_once_by_every_way(desk: Any, class_file: Path) -> None:
    """40 mm and no pause: by the button, by the chord of browsers, as a PDF; it stays in its field and is not kept."""
    only_this_child(desk)
    field = desk.get_by_role("textbox", name="Line height", exact=True)
    field.press_sequentially("40")
    button = desk.get_by_role("button", name="Print", exact=True)
    assert heights(handed(desk, button.click)) == {40}
    assert heights(handed(desk, lambda: desk.keyboard.press("Control+p"))) == {40}
    pdf = pdf_after(desk, desk.get_by_role("link", name="Print only Kirrin").click)
    assert len(pdf.pages) == len(re.findall("<svg", handed(desk, button.click))) > 1
    expect(field).to_have_value("40")
    expect(desk.get_by_text("Changed and not kept yet: Kirrin.")).to_be_visible()
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


def test_pages_that_were_printed_are_not_printed_again_once_another_height_is_typed(desk: Any) -> None:
    """By the browser's own menu, which asks nobody: what it would print are pages of before, so they are gone."""
    only_this_child(desk)
    assert 40 not in heights(handed(desk, desk.get_by_role("button", name="Print", exact=True).click))
    desk.get_by_role("textbox", name="Line height", exact=True).fill("40")
    expect(desk.locator("#paper-out")).to_be_empty()


def change(page: Any, key: str) -> None:
    """Set a control of the child to something else than it is."""
    field = page.locator(f"#own-{key}")
    knob = next((one for one in KNOBS if one.key == key), None)
    if knob and knob.kind != "switch":
        at = float(page.locator(f"[data-turns=own-{key}]").input_value())
        to = max((knob.least, knob.greatest), key=lambda end: abs(end - at))
        field.fill("2" if knob.kind == "count" else f"{at + (to - at) / 4:.2f}")
    elif knob:
        field.select_option("off" if field.input_value() == "on" else "on")
    elif key == "letters":
        page.locator("#own-slant").fill("8")
    elif key == "ladder":
        page.locator("#own input[name=ladder][type=checkbox]").nth(1).check()
    elif key == "keep_dots":
        field.fill("i")
    else:
        field.select_option(WORDS[key])


@pytest.mark.parametrize("key", rest_long(KEYS, 3))
def test_every_setting_of_a_child_is_printed_as_if_it_were_kept(desk: Any, key: str) -> None:
    """The pages before and after it is kept are the same, and others than without it."""
    only_this_child(desk)
    button = desk.get_by_role("button", name="Print", exact=True)
    without = handed(desk, button.click)
    change(desk, key)
    typed = handed(desk, button.click)
    desk.get_by_role("button", name="Keep", exact=True).click()
    desk.get_by_text("Kept. It holds from now on.").wait_for()
    assert handed(desk, button.click) == typed != without
