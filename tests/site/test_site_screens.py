"""The screens as they stand inside the site, by touch, on a phone and on a tablet: within reach of everybody."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import sync_playwright
from sitehelp import FLAGS, Host, opened, save_class

pytestmark = pytest.mark.long
SCREENS = ("/class", "/now", "/child/1/seen", "/class/list", "/class/week", "/copy", "/class/erase")
SIZES = {"phone": {"width": 390, "height": 844}, "tablet": {"width": 820, "height": 1180}}
SHOWN = """(place) => {
  const frame = document.querySelector("#screens");
  frame.contentWindow.left = true;  // the screen before may have the same address
  frame.src = frame.contentWindow.location.href.replace(/[/]app[/].*/, "/app" + place);
}"""
LOADED = """(place) => {
  const inside = document.querySelector("#screens").contentWindow;
  return !inside.left && inside.location.pathname.endsWith("/app" + place) && inside.document.readyState === "complete";
}"""


def shown(page: Any, place: str) -> Any:
    """Show a screen and return its frame, loaded."""
    page.evaluate(SHOWN, place)
    page.wait_for_function(LOADED, arg=place)
    return next(each for each in page.frames if "/app" in each.url)


@pytest.mark.parametrize("size", SIZES)
def test_every_screen_is_accessible_inside_the_site(host: Host, tmp_path: Path, size: str) -> None:
    """Axe finds no violation in the page with its frame, and nothing runs off the screen (WCAG 2.2, 1.4.10)."""
    where = shutil.which("chromium")
    if not where:
        pytest.skip("Chromium is not installed here, so the site is not tried (Debian or Ubuntu: apt install chromium)")
    axe, found = Axe(), []
    with sync_playwright() as playwright:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=where, args=FLAGS, has_touch=True, is_mobile=True,
            viewport=SIZES[size], bypass_csp=True)  # type: ignore[arg-type]
        page, frame = opened(context, host)
        save_class(frame, "Ottoline Quast\nBram Teller")
        for place in SCREENS:
            inside = shown(page, place)
            inside.evaluate(axe.axe_script)  # the page's own axe then asks the frame's
            told = axe.run(page).response
            assert len(told["passes"]) > 25, "the frame was not looked at"
            found += [(place, one["id"], [node["target"] for node in one["nodes"]][:3]) for one in told["violations"]]
            assert inside.evaluate("document.documentElement.scrollWidth <= innerWidth"), place
        context.close()
    assert not found
