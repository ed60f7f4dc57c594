"""The site in Firefox, driven by its own protocol: a list pasted, the network gone, the PDF, and a later visit."""

from __future__ import annotations

import base64
import io
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from sitehelp import Host

from namewright.roster.parsing import read_roster

pytestmark = pytest.mark.long
DEMO = Path(__file__).parents[2] / "src" / "namewright" / "demo.txt"
LINK = "#bar-said a[data-pdf]"
FETCHED = """const [address, done] = arguments;
fetch(address).then((answer) => answer.blob()).then((held) => {
  const reader = new FileReader();
  reader.onload = () => done(reader.result.split(",")[1]);
  reader.readAsDataURL(held);
}, (error) => done(String(error)));"""


class Firefox:
    """One Firefox without a window, with a profile of its own, at the screens inside the site."""

    def __init__(self, where: str, folder: Path) -> None:
        from marionette_driver.marionette import Marionette

        self.driver = Marionette(bin=where, headless=True, port=0, workspace=str(folder),
                                 gecko_log=str(folder / "log"), startup_timeout=120)
        self.driver.start_session()

    def until(self, true: Any) -> Any:
        """Wait until something holds, and return it; what is looked at may be replaced meanwhile."""
        from marionette_driver import Wait
        from marionette_driver.errors import MarionetteException

        waiting = Wait(self.driver, timeout=90, ignored_exceptions=MarionetteException)
        return waiting.until(lambda driver: true())

    def seen(self, css: str) -> Any:
        """Return what is shown under a selector; None where nothing is."""
        return next((one for one in self.driver.find_elements("css selector", css) if one.is_displayed()), None)

    def enter(self) -> None:
        """Go into the frame of the screens, when it is shown."""
        self.driver.switch_to_frame()
        self.driver.switch_to_frame(self.until(lambda: self.seen("#screens")))

    def fetched(self, address: str) -> bytes:
        """Return what the screens are given for an address of their own."""
        said = self.driver.execute_async_script(FETCHED, script_args=[address], sandbox=None, script_timeout=60_000)
        return base64.b64decode(said)


@pytest.fixture
def firefox(tmp_path: Path) -> Iterator[Firefox]:
    where = shutil.which("firefox-esr") or shutil.which("firefox")
    if not where:
        pytest.skip("Firefox is not installed here, so the site is not tried in it (Debian: apt install firefox-esr)")
    pytest.importorskip("marionette_driver", reason="Firefox’s driver is not installed here (pip: marionette_driver)")
    running = Firefox(where, tmp_path)
    yield running
    running.driver.quit(in_app=False)
    running.driver.cleanup()


def test_a_class_from_paste_to_pdf_and_a_later_visit_without_a_network(firefox: Firefox, host: Host) -> None:
    """The list is pasted while the program starts; when it is saved the server goes, and nothing is missing."""
    text = DEMO.read_text("utf-8")
    children = len(read_roster(text).children)
    firefox.driver.navigate(host.address)
    early = firefox.until(lambda: firefox.seen("#list"))
    firefox.driver.execute_script("arguments[0].value = arguments[1]", script_args=[early, text])
    firefox.enter()
    save = firefox.until(lambda: firefox.seen("button[data-save]"))
    firefox.until(lambda: save.text.endswith(str(children)))
    save.click()
    print_all = firefox.until(lambda: next((one for one in firefox.driver.find_elements("css selector", "button")
                                            if one.text == "Open PDF"), None))
    firefox.until(lambda: firefox.driver.find_elements("css selector", "[data-tally=whole]"))  # its script is at work
    host.stop()
    print_all.click()
    link = firefox.until(lambda: firefox.seen(LINK))
    with pikepdf.open(io.BytesIO(firefox.fetched(link.get_attribute("href")))) as made:
        assert len(made.pages) >= children
    firefox.driver.navigate("about:blank")
    firefox.driver.navigate(host.address)
    firefox.enter()
    assert "Beatriz" in firefox.fetched(f"/{host.name}/app/class").decode()
