"""What a device may refuse or take away, and a newer version: a sentence, and nothing lost that was saved."""

from __future__ import annotations

import os
import re
import shutil
from pathlib import Path
from typing import Any

import pytest
from openpyxl import Workbook
from playwright.sync_api import BrowserContext, expect, sync_playwright
from sitehelp import FLAGS, SAVE, Host, copy_of, height_of, opened, ready, save_class

from namewright.classbook import Classbook

pytestmark = pytest.mark.long
LET_GO = 5_000  # ms after which the browser forgets how much room a page that was closed had
FOR_THE_SMALL, FOR_ONE_LARGE = 6_000_000, 16_000_000  # bytes: of what has to be kept there are 29 million
DROPPED = """([name, text]) => {
  const carried = new DataTransfer(), target = document.querySelector("h1");
  carried.items.add(new File([text], name));
  for (const kind of ["dragover", "drop"]) {
    target.dispatchEvent(new DragEvent(kind, { dataTransfer: carried, bubbles: true, cancelable: true }));
  }
}"""


def screens(page: Any) -> Any:
    """Return the frame in which the screens stand, for scripts of a test."""
    return next(each for each in page.frames if "/app" in each.url)


def test_storage_that_is_taken_away_while_the_page_is_open(device: BrowserContext, host: Host) -> None:
    """The class is still in the open page, and the next change keeps all of it anew."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast")
    origin = host.address.removesuffix(f"/{host.name}/")
    device.new_cdp_session(page).send("Storage.clearDataForOrigin", {"origin": origin, "storageTypes": "indexeddb"})
    assert screens(page).evaluate(SAVE, "21")[0] == 200
    page.reload()
    ready(page)
    assert copy_of(page).execute("SELECT count(*) FROM children").fetchone() == (1,)
    assert height_of(page) == 21


def test_the_browser_is_asked_to_keep_the_class_after_it_is_said_why(device: BrowserContext, host: Host) -> None:
    """Nothing is asked before there is a class; what the browser answers is said."""
    page, frame = opened(device, host)
    assert not page.get_by_text("clear away").is_visible()
    save_class(frame, "Ottoline Quast")
    page.reload()
    ready(page)
    page.get_by_text("clear away").wait_for()
    page.get_by_role("button", name="Yes, ask it").click()
    page.get_by_text(re.compile("has agreed|promises nothing")).wait_for()


# A request that Python is still at when the page is loaded anew: nobody answers it any more.
NEVER = """const send = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (said, ...more) {
  if (!said.ask?.path.endsWith("/never")) send.call(this, said, ...more);
}"""


def test_a_newer_version_is_offered_and_never_forced(device: BrowserContext, folder: Path, tmp_path: Path) -> None:
    """The old one goes on until it is asked for the newer, and ends then, whatever it was asked for before; the class
    is there in both."""
    device.add_init_script(NEVER)
    mine = tmp_path / "names"
    shutil.copytree(folder, mine)
    host = Host(mine)
    try:
        page, frame = opened(device, host)
        save_class(frame, "Ottoline Quast")
        screens(page).evaluate("() => { fetch('never'); }")
        script = mine / "service-worker.js"
        old = re.search(r'"version": "(\w+)"', script.read_text("utf-8"))
        assert old
        script.write_text(script.read_text("utf-8").replace(old[1], "newer"), "utf-8")
        page.reload()
        ready(page)
        page.get_by_text("A newer version").wait_for()
        assert page.evaluate("async () => (await fetch('version')).text()") == old[1]
        assert screens(page).evaluate(SAVE, "21")[0] == 200
        with page.expect_navigation():
            page.get_by_role("button", name="Use the newer one now").click()
        ready(page)
        assert page.evaluate("async () => (await fetch('version')).text()") == "newer"
        assert height_of(page) == 21
    finally:
        host.stop()


def test_a_list_that_is_dropped_is_read_and_a_copy_waits_to_be_put_in_place(device: BrowserContext, host: Host) -> None:
    page, frame = opened(device, host)
    page.wait_for_url(re.compile("#app/class/list"))  # the screen is loaded with its scripts
    screens(page).evaluate(DROPPED, ["class.csv", "Given,Family\nOttoline,Quast\nBram,Teller\n"])
    expect(frame.locator("textarea")).to_have_value(re.compile("Ottoline"))
    screens(page).evaluate(DROPPED, ["class.db", "a copy"])
    expect(frame.locator("input[type=file][accept='.db']")).to_have_value(re.compile(r"class\.db"))


def test_a_browser_that_lacks_something_is_told_so(device: BrowserContext, host: Host) -> None:
    """Both by the page's script and by the one that an older browser reads."""
    for lacking in ("DecompressionStream", "indexedDB"):
        page = device.new_page()
        page.add_init_script(f"Object.defineProperty(window, '{lacking}', {{ value: undefined }})")
        page.goto(host.address)
        page.get_by_text("too old").wait_for()
        page.close()
    page = device.new_page()
    page.add_init_script("delete window.DecompressionStream")
    page.route("**/shell.mjs", lambda route: route.abort())
    page.goto(host.address)
    page.get_by_text("too old").wait_for()


def test_plain_http_beyond_this_computer_is_told_so(host: Host, tmp_path: Path) -> None:
    where = shutil.which("chromium")
    if not where:
        pytest.skip("Chromium is not installed here, so the site is not tried (Debian or Ubuntu: apt install chromium)")
    with sync_playwright() as playwright:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=where,
            args=[*FLAGS, "--host-resolver-rules=MAP names.example 127.0.0.1"])
        page = context.new_page()
        page.goto(host.address.replace("localhost", "names.example"))
        page.get_by_text("begins with https").wait_for()
        context.close()


def test_who_would_rather_not_ask_the_browser_is_left_alone(device: BrowserContext, host: Host) -> None:
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast")
    page.reload()
    ready(page)
    page.get_by_role("button", name="Not now").click()
    page.wait_for_timeout(500)  # nobody loads a page anew before the answer is written
    page.reload()
    ready(page)
    page.wait_for_timeout(1000)
    assert not page.get_by_text("clear away").is_visible()
    assert not page.evaluate("navigator.storage.persisted()")


def give_room(device: BrowserContext, page: Any, host: Host, room: int) -> None:
    """Leave so many bytes of storage to the site, as a full device does."""
    origin = host.address.removesuffix(f"/{host.name}/")
    device.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", {"origin": origin, "quotaSize": room})


@pytest.mark.parametrize("room", [1, FOR_THE_SMALL, FOR_ONE_LARGE])
def test_a_device_without_enough_room_is_told_so(device: BrowserContext, host: Host, room: int) -> None:
    """The first visit ends in a sentence, soon, and not in a bar that stands still; with more room the next begins."""
    page = device.new_page()
    give_room(device, page, host, room)
    page.goto(host.address)
    page.get_by_text("room on this device").wait_for(timeout=60_000)
    give_room(device, page, host, 1_000_000_000)
    page.reload()
    ready(page)


@pytest.mark.parametrize("room", [1, FOR_THE_SMALL])
def test_a_device_whose_room_has_gone_shows_the_class_and_says_what_it_cannot_save(device: BrowserContext, host: Host,
                                                                                   room: int) -> None:
    """On a later visit: the class is there, a change is refused in a sentence, and what was saved stays."""
    page, frame = opened(device, host)
    save_class(frame, "Ottoline Quast")
    assert screens(page).evaluate(SAVE, "21")[0] == 200
    page.close()
    page = device.new_page()
    page.wait_for_timeout(LET_GO)
    give_room(device, page, host, room)
    page.goto(host.address)
    ready(page).get_by_role("button", name="Open PDF").wait_for()
    saved = 21
    for height in range(22, 40):  # the browser looks only now and then how much room there is
        status, told = screens(page).evaluate(SAVE, str(height))
        if status != 200:
            break
        saved = height
        page.wait_for_timeout(1500)
    assert status == 507
    assert "could not save the change" in told
    assert height_of(page) == saved


def test_a_list_that_is_typed_while_the_program_starts_goes_on_where_it_is_read(device: BrowserContext,
                                                                                host: Host) -> None:
    """The first visit has a place to paste long before Python is there; with the cursor, it is taken along."""
    page = device.new_page()
    page.goto(host.address)
    early = page.get_by_label("Your list")
    early.fill("Ottoline Quast\nBram Teller")
    early.press("ArrowUp")
    frame = ready(page)
    expect(frame.get_by_role("button", name="Save this class of 2")).to_be_visible(timeout=30_000)
    expect(frame.locator("textarea")).to_have_value("Ottoline Quast\nBram Teller")
    expect(frame.locator("textarea")).to_be_focused()
    page.keyboard.type(" IV")
    expect(frame.locator("textarea")).to_have_value(re.compile(r"IV\n|IV.*\nBram"))
    expect(early).to_be_hidden()


# What an installed app is given by the system when a file is opened with it (W3C, Web App Launch Handler API).
LAUNCHES = """Object.defineProperty(window, "launchQueue", { value: { setConsumer(take) {
  window.launched = (name, text) => take({
    targetURL: location.href, files: [{ kind: "file", name, getFile: async () => new File([text], name) }],
  });
} } })"""


def test_files_that_are_opened_with_the_app(device: BrowserContext, host: Host) -> None:
    """A list waits until the program has started, and is read then; a copy waits to be put in its place."""
    page = device.new_page()
    page.add_init_script(LAUNCHES)
    page.goto(host.address)
    page.get_by_label("Your list").wait_for()
    page.evaluate("launched('class.csv', 'Given,Family\\nOttoline,Quast\\nBram,Teller\\n')")
    page.get_by_text("“class.csv” is opened as soon as").wait_for()
    frame = ready(page)
    expect(frame.locator("textarea")).to_have_value(re.compile("Ottoline"))
    page.evaluate("launched('class.db', 'a copy')")
    expect(frame.locator("input[type=file][accept='.db']")).to_have_value(re.compile(r"class\.db"))


def files_of_a_class(folder: Path) -> dict[str, Path]:
    """Write two children as a list, as a workbook and as a class's own file; return the files by their endings."""
    files = {ending: folder / f"class.{ending}" for ending in ("csv", "xlsx", "db")}
    files["csv"].write_text("Given,Family\nOttoline,Quast\nBram,Teller\n", "utf-8")
    book = Workbook()
    for row in (("Given", "Family"), ("Ottoline", "Quast"), ("Bram", "Teller")):
        book.worksheets[0].append(row)
    book.save(files["xlsx"])
    with Classbook.open(files["db"]) as kept:
        kept.update_roster("Ottoline\nBram\nYsolde")
    return files


def test_files_that_are_opened_with_the_installed_app(host: Host, tmp_path: Path) -> None:
    """Chromium installs the site by its own manifest, and hands lists and a copy to it as the system would."""
    where = shutil.which("chromium")
    if not where:
        pytest.skip("Chromium is not installed here, so the site is not tried (Debian or Ubuntu: apt install chromium)")
    files = files_of_a_class(tmp_path)
    home = {**os.environ, "HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path / "data")}  # an app leaves a note there
    with sync_playwright() as playwright:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path / "profile"), executable_path=where, args=[*FLAGS, "--headless=new"], headless=False,
            env=home)  # type: ignore[arg-type]
        page, _ = opened(context, host)
        driver = context.new_cdp_session(page)
        assert driver.send("Page.getInstallabilityErrors")["installabilityErrors"] == []
        driver.send("PWA.install", {"manifestId": host.address})
        for ending, file in files.items():
            driver = context.new_cdp_session(page)
            with context.expect_page() as launched:
                driver.send("PWA.launchFilesInApp", {"manifestId": host.address, "files": [str(file)]})
            page.close()  # it held the class
            page = launched.value
            frame = ready(page)
            if ending == "db":
                chosen = frame.locator("input[type=file][accept='.db']")
                expect(chosen).to_have_value(re.compile(r"class\.db"))
            else:
                expect(frame.locator("textarea")).to_have_value(re.compile("Ottoline.*\n.*Bram"))
        frame.get_by_role("button", name="Open a copy").click()
        frame.get_by_role("button", name="Open PDF").wait_for()
        assert copy_of(page).execute("SELECT count(*) FROM children").fetchone() == (3,)
        context.close()


def test_a_copy_that_is_dropped_beside_a_typed_list_loses_nothing(device: BrowserContext, host: Host) -> None:
    """What was typed before the program had started is read first; the copy is opened when somebody says so."""
    page = device.new_page()
    page.add_init_script(LAUNCHES)
    page.goto(host.address)
    page.get_by_label("Your list").fill("Ottoline Quast\nBram Teller")
    page.evaluate("launched('class.db', 'a copy')")
    frame = ready(page)
    expect(frame.locator("textarea")).to_have_value("Ottoline Quast\nBram Teller")
    page.get_by_role("button", name="Open a copy").click()
    expect(frame.locator("input[type=file][accept='.db']")).to_have_value(re.compile(r"class\.db"))
