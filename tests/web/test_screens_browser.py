"""What holds for every screen of notes, cards, letters and weeks, in a real browser."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from webhelp import MESSY, Program

from namewright.classbook import Classbook, Seen

SCREENS = ("/class", "/class/list", "/now", "/child/1/made?size=4x6", "/child/1/made?size=practice", "/seen",
           "/seen?by=table", "/child/1/seen", "/child/1/home?place=back", "/class/week", "/class/next", "/class/beats",
           "/class/erase", "/print/pages?what=sheets&child=1")
NewPage = Callable[..., Any]


@pytest.fixture
def address(class_file: Path, program: Program) -> str:
    """Return the address of a class with a day of notes, large enough that much of it lies below the window."""
    with Classbook.open(class_file) as book:
        book.update_roster(MESSY + "".join(f"Wen{sign}a Praske\n" for sign in "bcdfghjklmnpqrstvwxz"))
        for child in (1, 2):
            book.observe(child, "2026-09-14", Seen([0]), who="RK")
    return program.address


@pytest.mark.long
def test_a_window_made_narrow_is_no_narrower_than_its_page(address: str, new_page: NewPage) -> None:
    """What was laid out wide keeps no width of it: at 320 px no screen scrolls sideways."""
    page = new_page()
    wide = []
    for path in SCREENS:
        page.set_viewport_size({"width": 1360, "height": 900})
        page.goto(address + path)
        page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })")
        page.evaluate("scrollTo(0, document.body.scrollHeight)")
        page.set_viewport_size({"width": 320, "height": 640})
        wide.append((path, page.evaluate("document.documentElement.scrollWidth")))
    assert [each for each in wide if each[1] > 320] == []


@pytest.mark.long
def test_a_chosen_letter_has_a_sign_where_colours_are_forced(address: str, new_page: NewPage) -> None:
    """A tick in its corner, whatever the colours are; one that is not chosen has none."""
    page = new_page(forced_colors="active")
    page.goto(address + "/child/1/seen")
    page.locator(".tile input").first.check()
    signs = page.evaluate("[...document.querySelectorAll('.tile')].map((e) => getComputedStyle(e, '::after').content)")
    assert signs[:2] == ['"✓" / ""', "none"]  # seen, and not read into the letter's name


@pytest.mark.long
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_screens_for_who_wants_more_contrast(address: str, new_page: NewPage, scheme: str) -> None:
    """Where more contrast is asked for, text has that of WCAG 2.2, 1.4.6 (7 to 1)."""
    page = new_page(contrast="more", color_scheme=scheme, bypass_csp=True)
    found = []
    for path in ("/seen", "/now", "/child/1/home", "/class/week"):
        page.goto(address + path)
        rules = {"runOnly": {"type": "rule", "values": ["color-contrast-enhanced"]},
                 "rules": {"color-contrast-enhanced": {"enabled": True}}}
        found += [(path, [node["target"] for node in one["nodes"]][:3])
                  for one in Axe().run(page, options=rules).response["violations"]]
    assert found == []
