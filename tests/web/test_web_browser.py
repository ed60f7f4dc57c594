"""Three people's jobs in a real browser, from start to the PDF in hand, which is opened and measured.

Accessibility is judged by axe-core (Deque, as carried by axe-playwright-python) against WCAG 2.2 A and AA; the size of
targets by WCAG 2.2's 2.5.5 (44 px). Where Chromium is missing these tests are skipped and say so.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import expect
from pypdf import PdfReader
from webhelp import MESSY, PATIENCE, Program, at_work, port_of_its_own, until

from longer import rest_long
from namewright.classbook import Classbook, Seen
from namewright.classbook.records import letter_positions

PT_PER_MM = 72 / 25.4
PHONE = {"viewport": {"width": 360, "height": 740}, "has_touch": True, "is_mobile": True}
RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}
SCREENS = ("/class", "/class?child=1&all=1", "/class?for=everyone", "/class/list", "/class/list?new=1", "/now",
           "/classes", "/copy", "/seen", "/child/1/settings", "/child/1/seen", "/class/week", "/class/next",
           "/class/beats", "/class/erase", "/child/1/home?in=es", "/print/pages?what=sheets&child=1", "/nowhere",
           "/child/1/made?size=4x6", "/child/1/made?size=practice", "/seen?by=table")
NewPage = Callable[..., Any]


def visit(page: Any, address: str) -> None:
    """Go to a screen and open all that is folded away."""
    page.goto(address)
    page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })")


def fetched(page: Any, address: str) -> PdfReader:
    """Return the PDF behind an address, asked for by the page itself."""
    data = page.evaluate("async (at) => [...new Uint8Array(await (await fetch(at)).arrayBuffer())]", address)
    return PdfReader(io.BytesIO(bytes(data)))


def tallness(part: Any) -> float:
    """Return how many times as high as wide a part of the screen is."""
    box = part.bounding_box()
    return float(box["height"] / box["width"])


def size_mm(pdf: PdfReader, at: int = 0) -> tuple[float, float]:
    box = pdf.pages[at].mediabox
    return float(box.width) / PT_PER_MM, float(box.height) / PT_PER_MM


@pytest.mark.long
def test_the_key_goes_out_of_the_address(class_file: Path, browser: Any) -> None:
    """Opened once with the key, the page has an address without it, which reloads; others are told what to do."""
    with Program(class_file) as running:
        mine, others = browser.new_context(), browser.new_context()
        page = mine.new_page()
        page.set_default_timeout(PATIENCE)
        page.goto(running.way_in)
        expect(page).to_have_url(f"{running.address}/class/list")
        assert not page.evaluate("document.cookie")
        page.reload()
        page.locator("textarea[name=text]").wait_for()
        tab = mine.new_page()
        tab.goto(f"{running.address}/class/list")
        tab.locator("textarea[name=text]").wait_for()
        page = others.new_page()
        assert page.goto(f"{running.address}/class/list").status == 403
        expect(page.locator("main")).to_contain_text("Only who started the program", use_inner_text=True)
        page.set_content(f'<a href="{running.way_in}">come in</a>')  # a link on a page from elsewhere
        page.click("a")
        page.locator("textarea[name=text]").wait_for()
        expect(page).to_have_url(f"{running.address}/class/list")
        mine.close()
        others.close()


def settle(page: Any, address: str, scripts: bool = True) -> None:
    """Paste the class and keep it; the desk is at work then, where it has scripts."""
    page.goto(address + "/class")
    page.get_by_label("Your list").fill(MESSY)
    page.get_by_role("button", name="Save this class").click()
    page.wait_for_url("**/class?told=*")
    if scripts:
        at_work(page)


def test_the_teacher_prints_the_class(program: Program, new_page: NewPage) -> None:
    """Paste a messy list, mend a line in place, choose A4, see the page, print: one PDF, a page a child."""
    page = new_page()
    page.goto(program.address)
    page.get_by_label("Your list").fill(MESSY)
    page.get_by_text("7 children were found").wait_for()
    page.get_by_label("Your list").fill(MESSY.replace("Katla Pruner", "Katla Pruner-Esk L") + "Wenna Praske")
    page.get_by_text("8 children were found").wait_for()
    page.get_by_role("button", name="Save this class").click()
    page.get_by_text("The class is saved: 8 children.").wait_for()
    at_work(page).get_by_role("link", name="For everyone").click()
    page.get_by_label("Paper", exact=True).select_option("a4")
    page.locator("#preview[src*='210%20297']").wait_for()
    until(page, lambda: tallness(page.locator("#preview")) == pytest.approx(297 / 210, rel=0.01))
    page.get_by_text("Changed and not kept yet: everyone.").wait_for()
    page.get_by_text("8 pages").wait_for()
    page.get_by_role("button", name="Open PDF").click()
    link = page.get_by_role("link", name="Open the PDF")
    link.wait_for()
    pdf = fetched(page, link.get_attribute("href"))
    assert len(pdf.pages) == 8
    assert size_mm(pdf) == pytest.approx((210, 297), abs=0.05)
    assert {one.title for one in pdf.outline} >= {"Ottilka", "Wenna", "Íñigo"}  # type: ignore[union-attr]
    page.get_by_role("button", name="Keep", exact=True).click()
    page.get_by_text("Kept. It holds from now on.").wait_for()
    page.goto(program.address + "/class?for=everyone")
    expect(page.get_by_label("Paper", exact=True)).to_have_value("a4")


@pytest.mark.long
def test_the_teacher_chooses_forms_by_their_pictures(program: Program, new_page: NewPage) -> None:
    """A form of a letter is chosen from its picture, the page follows, and it is chosen still after it was kept."""
    page = new_page()
    settle(page, program.address)
    page.get_by_role("link", name="For everyone").click()
    page.locator("#all").get_by_text("More about the letters").click()
    letter = page.locator("#all").get_by_role("group", name="a", exact=True)
    letter.get_by_role("radio", name="with two storeys").check()
    page.locator("#preview[src^='data:']").wait_for()
    page.locator("#all").get_by_text("More about the page").click()
    page.locator("#all").get_by_label("Dots far apart").check()
    page.locator("#preview[src*='wide-dots']").wait_for()
    page.get_by_role("button", name="Keep", exact=True).click()
    page.get_by_text("Kept. It holds from now on.").wait_for()
    page.reload()
    at_work(page).get_by_role("link", name="For everyone").click()
    page.locator("#all").get_by_text("More about the letters").click()
    page.locator("#all").get_by_text("More about the page").click()
    form = page.locator("#all").get_by_role("group", name="a", exact=True)
    expect(form.get_by_role("radio", name="with two storeys")).to_be_checked()
    expect(page.locator("#all").get_by_label("Dots far apart")).to_be_checked()


@pytest.mark.long
def test_the_teacher_plans_a_week(program: Program, new_page: NewPage) -> None:
    """A doubtful name is clapped at one tap, two children never sit together, and the plan is one PDF."""
    page = new_page()
    settle(page, program.address)
    page.get_by_text("More", exact=True).click()
    page.get_by_role("link", name="Beats to clap").click()
    page.get_by_role("button", name="Ottilka is clapped Ot-til-ka").click()
    page.get_by_text("Saved for Ottilka.").wait_for()
    page.get_by_role("link", name="Back to the class").click()
    page.get_by_role("link", name="This week").click()
    page.get_by_label("This child", exact=True).select_option("Ottilka")
    page.get_by_label("and this child").select_option("Bo")
    page.get_by_role("button", name="Never together").click()
    page.get_by_text("Ottilka and Bo sit apart.").wait_for()
    page.wait_for_load_state()  # all of the screen, not its top alone
    tables = page.locator("section[aria-labelledby=tables] > p").all_inner_texts()
    assert len(tables) == 2
    assert not any("Ottilka" in table and "Bo" in table for table in tables)
    page.get_by_role("button", name="Make the plan").click()
    page.get_by_role("link", name="Open the PDF").wait_for()


@pytest.mark.long
def test_the_teacher_makes_next_months_sheets(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Two levels would change; one is unticked and stays, and everyone's sheets come as one PDF."""
    page = new_page()
    settle(page, program.address)
    with Classbook.open(class_file) as book:
        for child, day in product((1, 2), ("2026-03-02", "2026-03-05")):
            book.observe(child, day, Seen(letter_positions(book.child(child).child.practice)))
    page.goto(program.address + "/class")
    at_work(page).get_by_text("More", exact=True).click()
    page.get_by_role("link", name="Next month").click()
    page.get_by_label("Ottilka: from full to partial support.").uncheck()
    page.get_by_role("button", name="Make the sheets").click()
    page.get_by_text("Everyone you chose is in it.").wait_for()
    with Classbook.open(class_file) as book:
        assert [one.settings.get("support") for one in book.children()][:3] == [None, "partial", None]


@pytest.mark.long
def test_a_page_left_open_from_one_class_changes_nothing_in_another(class_file: Path, new_page: NewPage) -> None:
    """The program is ended and started with another class at the same address: what was typed is kept on the page.

    Started once more with its own class, the same page sends it after all.
    """
    page, other = new_page(), class_file.with_name("other.db")
    with Program(class_file, port_of_its_own()) as first:
        settle(page, first.address)
        page.goto(first.address + "/child/1/lines")
        at_work(page).get_by_role("textbox", name="Line height", exact=True).fill("31")
        first.kill()
        with Program(other, first.port) as second:
            settle(new_page(), second.address)
            before = other.read_bytes()
            page.get_by_role("button", name="Keep", exact=True).click()
            page.get_by_text("This page belongs to another class").wait_for()
            assert other.read_bytes() == before
            second.kill()
        with Program(class_file, first.port):
            page.get_by_role("button", name="Keep", exact=True).click()
            page.get_by_text("Kept. It holds from now on.").wait_for()
            with Classbook.open(class_file) as book:
                assert book.settings_of(1) == {"line_height": "31"}


@pytest.mark.long
def test_a_child_is_erased_by_keyboard_on_a_phone(class_file: Path, program: Program, new_page: NewPage) -> None:
    """From the list to the question and the answer with the keyboard alone; the safe answer comes first."""
    page = new_page(**PHONE)
    settle(page, program.address)
    page.goto(program.address + "/class/list")
    page.get_by_role("link", name="Erase children for good").press("Enter")
    page.get_by_label("Ottilka").press("Space")
    page.get_by_role("button", name="Look at what would be erased").press("Enter")
    page.get_by_role("heading", name="Erase for good?").wait_for()
    page.get_by_role("link", name="Erase nothing").focus()
    page.keyboard.press("Tab")
    expect(page.locator(":focus")).to_have_text("Erase for good")
    page.keyboard.press("Enter")
    page.get_by_text("One child was erased for good.").wait_for()
    assert b"Tamsel" not in class_file.read_bytes()


@pytest.mark.long
def test_what_is_changed_before_the_script_runs_counts(program: Program, new_page: NewPage) -> None:
    """On a slow machine a choice may be made before the script is there; the page that is shown follows it then."""
    page = new_page()
    settle(page, program.address)
    held: list[Any] = []
    page.route("**/desk.js", lambda route: held.append(route))
    page.goto(program.address + "/class?for=everyone", wait_until="commit")
    page.get_by_label("Paper", exact=True).select_option("a4")
    until(page, lambda: held)
    held[0].continue_()
    page.locator("#preview[src*='210%20297']").wait_for()


@pytest.mark.long
def test_a_page_that_nobody_touched_asks_for_nothing(program: Program, new_page: NewPage) -> None:
    """Pictures are drawn anew only when a choice was changed, not whenever a screen is opened."""
    page, asked = new_page(), []
    settle(page, program.address)
    page.on("request", lambda request: asked.append(request.url))
    for path in ("/class", "/class?child=1&all=1", "/class/list"):
        page.goto(program.address + path)
        page.wait_for_load_state("networkidle")
        if path != "/class/list":
            at_work(page)
    assert not [url for url in asked if "draft" in url or "kind=" in url.partition("page.svg")[2] or "part=" in url]


@pytest.mark.long
def test_the_specialist_finds_a_line_height(program: Program, new_page: NewPage) -> None:
    """Measure the screen, move the slider, see the row at true size beside the class's, keep it, take it back."""
    page = new_page()
    settle(page, program.address)
    page.goto(program.address + "/class?child=1")
    at_work(page).get_by_text("Before and after, at true size").click()
    page.get_by_role("button", name="Measure this screen").click()
    page.get_by_role("slider", name="Size of the outline").fill("428")  # 85.60 mm: five pixels a millimetre here
    page.get_by_role("button", name="The outline fits the card").click()
    assert tallness(page.locator("[data-card]")) == pytest.approx(53.98 / 85.60, rel=0.01)
    page.get_by_role("slider", name="Line height").fill("30")
    until(page, """(() => {
        const row = document.querySelector('#own-row'), svg = decodeURIComponent(row.src);
        const y = (line) => Number(svg.match(`class="${line}"[^>]* y1="([0-9.]+)"`)?.[1]);
        return row.complete && Math.abs(y('baseline') - y('topline') - 30) < 0.01; })()""")
    view = re.search(r'viewBox="0 0 ([\d.]+) ([\d.]+)"',
                     page.evaluate("decodeURIComponent(document.querySelector('#own-row').src)"))
    assert view
    wide = 5 * float(view[1])
    until(page, lambda: page.locator("#own-row").bounding_box()["width"] == pytest.approx(wide, abs=1))
    page.keyboard.press("Escape")
    page.get_by_role("textbox", name="Your initials").fill("RK")
    page.get_by_role("button", name="Keep", exact=True).click()
    page.get_by_text("Kept. It holds from now on.").wait_for()
    page.locator("#own").get_by_text("What was changed, and by whom").click()
    page.get_by_text("Line height: as the class became 30").wait_for()
    pdf = fetched(page, "/child/1/sheet.pdf")
    assert size_mm(pdf) == pytest.approx((215.9, 279.4), abs=0.05)
    page.get_by_role("button", name=re.compile("Undo the change")).click()
    page.get_by_text("It is as it was before.").wait_for()
    expect(page.get_by_role("textbox", name="Line height")).to_have_value("")


def violations(page: Any, address: str, width: int, options: dict[str, Any]) -> list[tuple[object, ...]]:
    """Return what axe finds on every screen."""
    axe = Axe()
    page.set_viewport_size({"width": width, "height": 900})
    found: list[tuple[object, ...]] = []
    for path in SCREENS:
        visit(page, address + path)
        for one in axe.run(page, options=options).response["violations"]:
            found.append((path, width, one["id"], [node["target"] for node in one["nodes"]][:3]))
    return found


@pytest.mark.long
def test_every_screen_is_accessible(program: Program, new_page: NewPage) -> None:
    """Axe finds no violation on any screen, wide and on a phone."""
    page = new_page(bypass_csp=True)
    settle(page, program.address)
    assert not violations(page, program.address, 1360, RULES)
    assert not violations(page, program.address, PHONE["viewport"]["width"], RULES)  # type: ignore[index]


@pytest.mark.long
def test_colours_are_told_apart_by_night(program: Program, new_page: NewPage) -> None:
    """The dark colours have the contrast of WCAG 2.2, 1.4.3, on every screen."""
    page = new_page(color_scheme="dark", bypass_csp=True)
    settle(page, program.address)
    assert not violations(page, program.address, 1360, {"runOnly": {"type": "rule", "values": ["color-contrast"]}})


@pytest.mark.long
@pytest.mark.parametrize("width", [360, 680])  # a phone; a wide screen at 200 %
def test_nothing_runs_off_a_narrow_screen(program: Program, new_page: NewPage, width: int) -> None:
    """At a phone's width, and zoomed to 200 %, no screen scrolls sideways (WCAG 2.2, 1.4.10)."""
    page = new_page(viewport={"width": width, "height": 640})
    settle(page, program.address)
    for path in SCREENS:
        if path.startswith("/print"):
            continue  # paper has its own width
        visit(page, program.address + path)
        assert page.evaluate("document.documentElement.scrollWidth") <= width, path


@pytest.mark.parametrize(("finger", "least"), rest_long([(True, 43.5), (False, 39.5)]))
def test_targets_are_large(program: Program, new_page: NewPage, finger: bool, least: float) -> None:
    """What is pressed is at least 44 px high for a finger, 40 for a mouse; a box or a radio is pressed by its label."""
    page = new_page(has_touch=finger, is_mobile=finger)
    settle(page, program.address)
    assert page.evaluate("matchMedia('(pointer: coarse)').matches") == finger
    for path in SCREENS:
        visit(page, program.address + path)
        small = page.evaluate("""(least) => [...document.querySelectorAll(
            'button, select, input:not([type=hidden]):not([type=checkbox]):not([type=radio]):not([type=range]), '
            + 'label:has(> input), summary, nav a, .deeds a')].filter(e => e.checkVisibility()
            && e.getBoundingClientRect().height < least).map(e => e.outerHTML.slice(0, 80))""", least)
        assert not small, path


@pytest.mark.long
def test_the_keyboard_alone_prints_the_class(program: Program, new_page: NewPage) -> None:
    """From the first page to the PDF with Tab, arrows, Space and Enter, the focus always to be seen."""
    page = new_page()
    page.goto(program.address)

    def tab_to(name: str) -> None:
        for _ in range(120):
            page.keyboard.press("Tab")
            words, outline = page.evaluate("""() => { const e = document.activeElement; return [
                (e.labels?.[0]?.textContent ?? e.textContent ?? "").trim(), getComputedStyle(e).outlineWidth]; }""")
            if words.startswith(name):
                assert outline != "0px"
                return
        raise AssertionError(f"{name} is not reached by Tab")

    expect(page.get_by_label("Your list")).to_be_focused()  # the cursor comes with the first picture
    page.keyboard.insert_text(MESSY)
    page.get_by_text("7 children were found").wait_for()
    tab_to("Save this class")
    page.keyboard.press("Enter")
    page.get_by_text("The class is saved").wait_for()
    expect(page.locator(":focus")).to_have_text("Open PDF")
    page.keyboard.press("Enter")
    page.locator("a.do:focus", has_text="Open the PDF").wait_for()
    assert len(fetched(page, page.evaluate("document.activeElement.href")).pages) >= 7


def test_the_browser_prints_the_same_pages(program: Program, new_page: NewPage) -> None:
    """Printed by the browser, without a PDF library, each page is exactly a sheet, and there is none too many."""
    page = new_page()
    settle(page, program.address)
    page.evaluate("void (print = () => { document.documentElement.dataset.printed = 'yes'; })")
    page.get_by_role("link", name="For everyone").click()
    for paper, size in (("a4", (210, 297)), ("letter", (215.9, 279.4))):
        page.get_by_label("Paper", exact=True).select_option(paper)
        page.get_by_role("button", name="Print", exact=True).click()
        page.locator("html[data-printed]").wait_for()
        pdf = PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True)))
        assert len(pdf.pages) == 7
        assert size_mm(pdf) == pytest.approx(size, abs=0.3)  # Chromium rounds a page to whole CSS pixels
        assert "Open PDF" not in pdf.pages[0].extract_text()
        page.evaluate("delete document.documentElement.dataset.printed")


@pytest.mark.long
def test_without_scripts_the_class_is_printed_too(program: Program, new_page: NewPage) -> None:
    """Where JavaScript is switched off the same forms do the same."""
    page = new_page(java_script_enabled=False)
    settle(page, program.address, scripts=False)
    page.get_by_role("link", name="Íñigo", exact=True).click()
    page.get_by_role("heading", name="Íñigo").wait_for()
    page.wait_for_load_state()
    expect(page.locator(".scripted:visible")).to_have_count(0)
    page.get_by_role("button", name="Open PDF").click()
    page.get_by_role("link", name="Open the PDF").wait_for()


@pytest.mark.long
def test_a_killed_program_loses_nothing(class_file: Path, new_page: NewPage) -> None:
    """Killed while a list is mended: what was typed stays on the page, and is kept once the program runs again."""
    page = new_page()
    with Program(class_file, port_of_its_own()) as first:
        settle(page, first.address)
        page.goto(first.address + "/class/list")
        page.get_by_label("Your list").press("Control+End")
        page.keyboard.insert_text("Wenna Praske")
        page.get_by_text("8 children were found").wait_for()
        first.kill()
        page.get_by_role("button", name="Save this class").click()
        page.get_by_text("The program does not answer").wait_for()
        expect(page.get_by_label("Your list")).to_have_value(re.compile("Wenna Praske$"))
        with Program(class_file, first.port):
            page.get_by_role("button", name="Save this class").click()
            page.get_by_role("button", name="Send it again").click()
            page.get_by_text("The class is saved: 8 children.").wait_for()
            expect(page.locator("#rows > li")).to_have_count(8)
            page.reload()
            expect(page.locator("#rows > li")).to_have_count(8)


def test_a_program_says_nothing_about_children(class_file: Path, new_page: NewPage) -> None:
    """All that a program writes while a class is kept, looked at and printed holds no name."""
    with Program(class_file) as running:
        page = new_page()
        settle(page, running.address)
        page.goto(running.address + "/child/1/seen")
        page.goto(running.address + "/child/99/lines")
        said = running.said()
    for name in ("Ottilka", "Tamsel", "Katla", "ottilka"):
        assert name not in said
