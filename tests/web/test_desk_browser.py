"""The desk in a real browser: each job is done in so many actions, and the PDF that comes of it is opened.

An action is a press, a chord of keys, or a field that is typed into. All names are invented.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from pypdf import PdfReader
from webhelp import Program, at_work, pdf_after, until

from longer import rest_long
from namewright.classbook import Classbook
from namewright.wording import wording

LIST = "Ottilka Tamsel\nKirrin Brane\nÍñigo Ondway\nBartholomew Finch\nBo Lindle\nMirel Vost\nMirel Vost\n"
# Two children of one name are asked about until the list is saved.
FOUND = re.compile("[67] children were found")
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
NewPage = Callable[..., Any]


class Hands:
    """Somebody at a page, whose actions are counted."""

    def __init__(self, page: Any) -> None:
        self.page, self.actions = page, 0

    def press(self, role: str, name: str) -> None:
        self.actions += 1
        self.page.get_by_role(role, name=name, exact=True).click()

    def type_in(self, label: str, text: str) -> None:
        self.actions += 1
        self.page.get_by_role("textbox", name=label, exact=True).fill(text)

    def key(self, key: str) -> None:
        self.actions += 1
        self.page.keyboard.press(key)

def kept(class_file: Path, text: str = LIST) -> None:
    with Classbook.open(class_file) as book:
        book.update_roster(text)


def at_desk(new_page: NewPage, program: Program, path: str = "/class", **options: Any) -> Any:
    page = new_page(**options)
    page.goto(program.address + path)
    return at_work(page)


def rows(page: Any) -> Any:
    return page.locator("#rows > li:visible .own-letters")


def drawn(page: Any) -> None:
    """Wait until the picture is one that was drawn anew."""
    expect(page.locator("#preview")).to_have_attribute("src", re.compile("^data:"))


def heights(page: Any) -> list[float]:
    """Return the line heights of the page that is shown."""
    svg = str(page.evaluate("decodeURIComponent(document.querySelector('#preview').src)"))
    lines = re.findall(r'class="(topline|baseline)"[^>]* y1="([\d.]+)"', svg)
    return [float(base[1]) - float(top[1]) for top, base in zip(lines[::2], lines[1::2], strict=True)]


def test_a_pasted_list_is_a_pdf_in_three_actions(program: Program, new_page: NewPage) -> None:
    """Paste, save, open: the PDF of everyone opens; a number tells two of one name apart for the adult alone."""
    page = new_page()
    page.goto(program.address)
    hands = Hands(page)
    hands.type_in("Your list", LIST)
    page.get_by_text(FOUND).wait_for()
    page.get_by_role("button", name=re.compile("^Save this class")).click()
    hands.actions += 1
    page.wait_for_url("**/class?*told=*")
    at_work(page)
    pdf = pdf_after(page, lambda: hands.press("button", "Open PDF"))
    assert hands.actions == 3
    assert len(pdf.pages) == 7
    assert {str(entry.title) for entry in pdf.outline} >= {"Mirel Vost 1", "Mirel Vost 2"}  # type: ignore[union-attr]
    printed = "".join(one.extract_text() for one in pdf.pages)
    assert printed.count("Mirel Vost 2") == printed.count("For Mirel Vost 2") == 1


@pytest.mark.parametrize("save", rest_long(["Tab", "Control+Enter"]))
def test_the_keyboard_alone_makes_the_pdf(program: Program, new_page: NewPage, save: str) -> None:
    """Paste, one chord, Enter; and with Tab alone in no more than twenty-five keystrokes."""
    page = new_page()
    page.goto(program.address + "/class/list?new=1")
    hands = Hands(page)
    page.locator("#text").focus()
    page.keyboard.insert_text(LIST)
    hands.actions += 1
    page.get_by_text(FOUND).wait_for()
    if save == "Tab":
        while "data-save" not in page.evaluate("document.activeElement.outerHTML.slice(0, 200)"):
            hands.key("Tab")
            assert hands.actions < 25
        hands.key("Enter")
    else:
        hands.key(save)
    page.wait_for_url("**/class?*told=*")
    expect(page.locator(":focus")).to_have_text("Open PDF")
    pdf = pdf_after(page, lambda: hands.key("Enter"))
    assert len(pdf.pages) == 7
    assert hands.actions <= (25 if save == "Tab" else 3)


def test_thirty_millimetres_are_kept_and_printed_in_four_actions(class_file: Path, program: Program,
                                                                 new_page: NewPage) -> None:
    """The child, the height, keep, print: what comes out has lines of 30 mm, and only this child's."""
    kept(class_file)
    page = at_desk(new_page, program)
    hands = Hands(page)
    hands.press("link", "Kirrin")
    page.locator("[data-panel='2']").wait_for()
    hands.type_in("Line height", "30")
    hands.press("button", "Keep")
    page.get_by_text("Kept. It holds from now on.").wait_for()
    pdf = pdf_after(page, lambda: hands.press("link", "Print only Kirrin"))
    assert hands.actions == 4
    assert [str(entry.title) for entry in pdf.outline] == ["Kirrin"]  # type: ignore[union-attr]
    until(page, lambda: {round(height, 2) for height in heights(page)} == {30})
    with Classbook.open(class_file) as book:
        assert book.settings_of(2) == {"line_height": "30"}


def test_what_cannot_be_drawn_is_refused_with_what_can(class_file: Path, program: Program, new_page: NewPage) -> None:
    """80 mm for a long name: a sentence and a button while it is typed; the picture stays whole all the time."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=4")
    field = page.get_by_role("textbox", name="Line height", exact=True)
    field.fill("80")
    take = page.get_by_role("button", name=re.compile(r"^Take \d"))
    take.wait_for()
    expect(field).to_have_attribute("aria-invalid", "true")
    until(page, "document.querySelector('#preview').naturalWidth > 0")
    take.click()
    expect(field).not_to_have_attribute("aria-invalid", "true")
    value = float(field.input_value())
    assert 19.05 < value < 80
    drawn(page)
    field.fill("500")
    page.get_by_text(f"Up to {value:g} mm can be drawn for Bartholomew.").wait_for()
    page.get_by_role("button", name="Take back").click()
    expect(page.locator("#own-line_height")).to_have_value("")


def test_the_page_follows_a_slider_and_nothing_is_kept_unasked(class_file: Path, program: Program,
                                                              new_page: NewPage) -> None:
    """What is changed is told in the bar, stays with its child while another is looked at, and can be taken back."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=1")
    page.get_by_role("slider", name="Line height").fill("26")
    page.get_by_text("Changed and not kept yet: Ottilka.").wait_for()
    until(page, lambda: [round(height, 2) for height in heights(page)[:1]] == [26])
    page.get_by_role("link", name="Bo", exact=True).click()
    page.locator("[data-panel='5']").wait_for()
    expect(page.get_by_role("textbox", name="Line height", exact=True)).to_have_value("")
    page.get_by_role("link", name="Ottilka", exact=True).click()
    page.locator("[data-panel='1']").wait_for()
    expect(page.locator("#own-line_height")).to_have_value("26")
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)
    page.get_by_role("button", name="Take back").click()
    expect(page.locator("#own-line_height")).to_have_value("")
    page.get_by_text("Changed and not kept yet").wait_for(state="hidden")


@pytest.mark.long
def test_the_roster_is_searched_sorted_and_ticked(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Found by any beginning; A to Z is kept on this device; everyone or nobody is ticked at once."""
    kept(class_file)
    page = at_desk(new_page, program)
    page.get_by_role("searchbox", name="Find a child").fill("in")
    expect(rows(page)).to_have_text(["Íñigo"])
    page.get_by_role("searchbox", name="Find a child").fill("")
    with page.expect_response(re.compile("/class/sorted")):  # so that it is kept before the page is loaded anew
        page.get_by_role("link", name="A to Z").click()
    by_name = ["Bartholomew", "Bo", "Íñigo", "Kirrin", "Mirel Vost 1", "Mirel Vost 2", "Ottilka"]
    expect(rows(page)).to_have_text(by_name)
    page.reload()
    expect(rows(page)).to_have_text(by_name)
    at_work(page).get_by_role("button", name="Tick all").click()
    expect(page.locator("#rows :checked")).to_have_count(7)
    expect(page.locator("#who")).to_have_value("ticked")
    page.get_by_role("button", name="Tick none").click()
    expect(page.locator("#who")).to_have_value("all")


@pytest.mark.long
def test_nothing_moves_when_the_script_begins(class_file: Path, program: Program, new_page: NewPage) -> None:
    """The class is seen before the desk's script is there, and every part of the screen stands where it will stand."""
    kept(class_file)
    page, held = new_page(), []
    page.route("**/desk.js", lambda route: held.append(route))
    page.goto(program.address + "/class", wait_until="commit")
    page.get_by_role("searchbox", name="Find a child").wait_for()
    page.evaluate("document.fonts.ready.then(() => 0)")
    places = """() => ['#find', '#rows', '#rows li:last-child', '.viewer-head', '#stage', '.settings', '#print']
        .map((part) => document.querySelector(part).getBoundingClientRect())
        .map((box) => [box.x, box.y, box.width, box.height].map(Math.round))"""
    until(page, "document.querySelector('#preview').complete")
    before = page.evaluate(places)
    assert not page.evaluate("document.documentElement.style.getPropertyValue('--foot-bar')")  # which the script sets
    until(page, lambda: held)
    held[0].continue_()  # what was loaded ahead is the script, asked for once
    at_work(page)
    assert page.evaluate(places) == before


@pytest.mark.long
def test_a_table_adds_to_the_ticks(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Who was ticked before stays so; pressed again the table’s ticks go; the count of pages follows."""
    kept(class_file, LIST + "Tavi Reed\nWenna Praske\nTobin Yarrel\nKasimir Dolt\nKatla Pruner\nZoë Quill\nAmara Moss")
    page = at_desk(new_page, program)
    page.get_by_label("Print for Bo").check()
    table = page.get_by_role("button", name="Table 1", exact=True)
    table.click()
    expect(table).to_have_attribute("aria-pressed", "true")
    ticked = page.locator("#rows :checked").count()
    assert ticked > 2
    expect(page.locator("#ticked-count")).to_have_text(f"{ticked} ticked")
    expect(page.get_by_label("Print for Bo")).to_be_checked()
    expect(page.locator("#who")).to_have_value("ticked")
    page.get_by_text(f"{ticked} pages").wait_for()
    table.click()
    expect(table).to_have_attribute("aria-pressed", "false")
    assert page.locator("#rows :checked").count() <= 1


@pytest.mark.long
def test_arrows_lead_to_the_next_child_and_page_keys_through_the_pages(class_file: Path, program: Program,
                                                                      new_page: NewPage) -> None:
    """From anywhere on the desk, and from the roster with the focus on the name; every page of a child is shown."""
    kept(class_file)
    page = at_desk(new_page, program)
    first, second, third = rows(page).all_inner_texts()[:3]
    expect(page.locator("#shown")).to_have_text(first)
    page.keyboard.press("ArrowDown")
    page.locator("#shown", has_text=second).wait_for()
    page.get_by_role("link", name=second, exact=True).focus()
    page.keyboard.press("ArrowDown")
    page.locator("#shown", has_text=third).wait_for()
    expect(page.locator(":focus")).to_have_text(third)
    page.keyboard.press("ArrowUp")
    page.locator("#shown", has_text=second).wait_for()
    page.locator("[data-for=own]", has_text=second).wait_for()
    page.get_by_role("slider", name="Line height").fill("40")
    page.get_by_text("Page 1 of 2").wait_for()
    page.locator("#stage").focus()
    page.keyboard.press("PageDown")
    page.get_by_text("Page 2 of 2").wait_for()
    page.keyboard.press("PageUp")
    page.get_by_text("Page 1 of 2").wait_for()


@pytest.mark.long
def test_the_panel_of_another_child_takes_nothing(class_file: Path, program: Program, new_page: NewPage) -> None:
    """While a child's panel is on its way that of the child before stands there: a line height would be that one's."""
    kept(class_file)
    page = at_desk(new_page, program)
    _, second, *_ = rows(page).all_inner_texts()
    held: list[Any] = []
    page.route("**/class?child=*&part=panel*", lambda route: held.append(route))
    page.keyboard.press("ArrowDown")
    page.locator("#shown", has_text=second).wait_for()
    slider = page.locator("#own [type=range]").first
    slider.focus()
    assert not slider.evaluate("slider => slider === document.activeElement")
    until(page, lambda: held)
    held.pop().continue_()
    page.locator("[data-for=own]", has_text=second).wait_for()
    slider.focus()
    expect(slider).to_be_focused()


@pytest.mark.long
def test_pages_for_the_adult_are_a_file_of_their_own(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Chosen with the children's they come as a second PDF, and both are told in the bar."""
    kept(class_file)
    page = at_desk(new_page, program)
    page.locator("#what > summary").click()
    page.get_by_label("The plan: who practises what next").check()
    page.keyboard.press("Escape")
    page.get_by_role("button", name="Open PDF").click()
    page.locator("[data-jobs][data-finished]").wait_for()
    links = [str(each.get_attribute("href")) for each in page.locator("[data-pdf]").all()]
    children, adult = (PdfReader(io.BytesIO(page.context.request.get(program.address + at).body())) for at in links)
    assert len(children.pages) == 7
    assert "This page is for" not in adult.pages[0].extract_text()
    expect(page.locator(":focus")).to_have_attribute("href", links[0])


@pytest.mark.parametrize("language", rest_long(["en", "de", "es", "fr", "it", "pt"]))
def test_the_browsers_own_menu_prints_the_pages_or_how_they_are_printed(class_file: Path, program: Program,
                                                                        new_page: NewPage, language: str) -> None:
    """Before pages are made and after something else is chosen one page says how, and nothing else; else the pages."""
    kept(class_file)
    page = at_desk(new_page, program, locale=language)
    words = wording(language)
    said = " ".join(words.say("web.print.from_menu", button=words.say("web.desk.print")).split())

    def on_paper() -> list[str]:
        pdf = PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True)))
        return [" ".join(each.extract_text().split()) for each in pdf.pages]

    assert on_paper() == [said]
    page.evaluate("() => { window.print = () => { document.documentElement.dataset.printed = 'yes'; }; }")
    page.locator("#print button[name=view]").click()
    page.locator("html[data-printed]").wait_for(state="attached")
    made = on_paper()
    assert len(made) == 7
    assert said not in " ".join(made)
    page.locator("#print [name=who]").select_option("one")
    assert on_paper() == [said]


@pytest.mark.long
def test_more_pages_than_are_printed_here_are_said_before_the_printer_is_asked(class_file: Path, program: Program,
                                                                               new_page: NewPage) -> None:
    """Sixty-one pages: nothing is handed to the printer until the first sixty are asked for; the PDF is beside it."""
    given, families = ("Bo", "Mo", "Ilo", "Ona", "Lio", "Ono", "Ino", "Oli"), ("Vost", "Dolt", "Brane", "Reed")
    names = [f"{one} {family}{end}" for end in ("a", "e") for family in families for one in given][:61]
    kept(class_file, "\n".join(names))
    page = at_desk(new_page, program)
    page.evaluate("() => { window.printed = 0; window.print = () => { window.printed += 1; }; }")
    page.get_by_role("button", name="Print", exact=True).click()
    page.get_by_text("These are more than 60 pages").wait_for()
    assert page.evaluate("window.printed") == 0
    expect(page.locator("#bar-said").get_by_role("button", name="Open PDF")).to_be_visible()
    page.get_by_role("button", name="Print the first 60").click()
    page.get_by_text("The pages are at the printer’s window now").wait_for()
    assert page.evaluate("window.printed") == 1
    expect(page.locator("#paper-out section")).to_have_count(60)


@pytest.mark.long
def test_who_cannot_be_drawn_is_named_with_the_way_out(class_file: Path, program: Program, new_page: NewPage) -> None:
    """By the name as it was typed, and no code of a letter; all others are made."""
    kept(class_file, "Kirrin Brane\nАнна Dolt\nBo Lindle\n")
    page = at_desk(new_page, program, "/class?child=2")
    expect(page.locator("[data-row='2'] .badge.look")).to_have_count(1)
    page.get_by_role("button", name="Open PDF").click()
    page.get_by_text("2 pages are ready").wait_for()
    page.get_by_text("What could not be made (1)").click()
    expect(page.locator("#bar-said")).to_contain_text("Анна", use_inner_text=True)
    assert "U+" not in page.inner_text("body")
    page.locator("#bar-said").get_by_role("link", name="Mend the line in the list").click()
    page.wait_for_url("**/class/list#line-2")


@pytest.mark.long
def test_on_a_phone_the_page_stays_in_sight_of_its_controls(class_file: Path, program: Program,
                                                           new_page: NewPage) -> None:
    """First the class; a child brings its page, pinned on top while a control is used; and back again."""
    kept(class_file)
    page = at_desk(new_page, program, **PHONE)
    expect(page.locator("#preview")).to_be_hidden()
    page.get_by_role("link", name="Kirrin", exact=True).tap()
    page.locator("[data-panel='2']").wait_for()
    expect(page.locator("#rows")).to_be_hidden()
    slider = page.get_by_role("slider", name="Space between letters")
    slider.scroll_into_view_if_needed()
    before = page.evaluate("scrollY")
    page.mouse.wheel(0, 200)
    until(page, f"scrollY > {before}")
    picture, bar = page.locator("#preview").bounding_box(), page.locator(".foot-bar").bounding_box()
    assert picture["y"] >= 0
    assert picture["y"] + picture["height"] < bar["y"]
    page.get_by_role("link", name="All children").tap()
    page.locator("#rows").wait_for()
    expect(page.locator("#preview")).to_be_hidden()


@pytest.mark.long
def test_what_was_made_is_offered_only_while_nothing_else_is_chosen(class_file: Path, program: Program,
                                                                    new_page: NewPage) -> None:
    """Another height, another child, other ticks: the line of the PDF made before goes, at once."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    ready = page.locator("#bar-said [data-pdf]")

    def made() -> None:
        page.get_by_role("link", name=re.compile("^Print only")).click()
        ready.wait_for()

    made()
    page.get_by_role("textbox", name="Line height", exact=True).fill("22")
    expect(ready).to_be_hidden()
    made()
    page.get_by_role("link", name="Bo", exact=True).click()
    expect(ready).to_be_hidden()
    page.locator("[data-panel='5']").wait_for()
    made()
    page.get_by_label("Print for Ottilka").check()
    expect(ready).to_be_hidden()


@pytest.mark.long
def test_for_whom_is_the_child_that_is_looked_at(class_file: Path, program: Program, new_page: NewPage) -> None:
    """One press beside “everyone” on a wide desk; on a phone, inside a child’s view, by itself."""
    kept(class_file)
    page = at_desk(new_page, program)
    page.get_by_role("link", name="Kirrin", exact=True).click()
    alone = page.get_by_role("button", name="Only Kirrin", exact=True)
    alone.wait_for()
    expect(page.locator("#who")).to_have_value("all")
    alone.click()
    expect(page.locator("#who")).to_have_value("one")
    expect(alone).to_have_attribute("aria-pressed", "true")
    page.get_by_text("One page", exact=True).wait_for()
    alone.click()
    expect(page.locator("#who")).to_have_value("all")
    phone = at_desk(new_page, program, "/class?told=x", **PHONE)
    expect(phone.locator("#who")).to_have_value("all")
    expect(phone.locator(":focus")).to_have_text("Open PDF")
    assert phone.evaluate("scrollY") == 0
    phone.get_by_role("link", name="Kirrin", exact=True).tap()
    expect(phone.locator("#who")).to_have_value("one")
    phone.get_by_role("link", name="All children").tap()
    expect(phone.locator("#who")).to_have_value("all")


@pytest.mark.long
def test_of_a_child_far_down_the_list_the_settings_begin_at_their_top(class_file: Path, program: Program,
                                                                     new_page: NewPage) -> None:
    """On a tablet and on a phone the line height is in sight, and the preview is no taller than its page wants."""
    kept(class_file, LIST + "\n".join(f"{one}{other} Vost" for one in ("Ko", "Ta", "Re", "Lu", "Mi", "Sa")
                                     for other in ("ra", "bin", "dek", "lo")))
    with Classbook.open(class_file) as book:
        book.set_class_settings({"landscape": "on"})
    tablet = {"viewport": {"width": 820, "height": 1180}}
    for options in (tablet, PHONE):
        page = at_desk(new_page, program, **options)
        last = page.locator("#rows > li").last
        last.locator("a").click()
        page.locator(f"[data-panel='{last.get_attribute('data-row')}']").wait_for()  # the child's settings, which stay
        drawn(page)
        until(page, "document.querySelector('#preview').getBoundingClientRect().height > 100")
        field, foot, viewer, picture = (page.locator(each).bounding_box() for each in (
            "#own-line_height", ".foot-bar", ".viewer", "#preview"))
        assert page.evaluate("scrollY") == 0
        assert viewer["height"] - picture["height"] < 140
        if options is tablet:
            assert viewer["y"] + viewer["height"] < field["y"] < foot["y"] - field["height"]
            assert page.locator(".top").bounding_box()["height"] < 60
        at_work(page).goto(program.address + "/class?child=1")
        at_work(page)
        assert page.evaluate("scrollY") == 0


# --- answers that come late: they are held back, and meanwhile somebody goes on ---
KEPT, WHOLE = "Kept. It holds from now on.", re.compile(r"/class\?child=[0-9]+$")


def hold(page: Any, address: str | re.Pattern[str]) -> list[Any]:
    """Hold back the answers of an address from now on; return the requests that wait."""
    held: list[Any] = []
    page.route(address, lambda route: held.append(route))
    return held


def let_go(page: Any, held: list[Any]) -> None:
    """Let the answer come that somebody waits for, and all later ones at once."""
    until(page, lambda: held)
    held.pop().continue_()
    page.unroute_all()


def keep_held(page: Any, address: str | re.Pattern[str]) -> list[Any]:
    """Press Keep and hold back an answer to it; return the request that waits."""
    held = hold(page, address)
    page.get_by_role("button", name="Keep").click()
    until(page, lambda: held)
    return held


def height_field(page: Any) -> Any:
    """Return the field for the chosen child's line height."""
    return page.get_by_role("textbox", name="Line height", exact=True)


@pytest.mark.long
def test_nothing_takes_the_focus_from_whoever_went_on(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Neither the desk's script, which begins after the page was seen, nor a PDF that is ready."""
    kept(class_file)
    page = new_page()
    find = page.get_by_role("searchbox", name="Find a child")
    script = hold(page, "**/desk.js")
    page.goto(program.address + "/class?told=x", wait_until="commit")
    find.focus()
    let_go(page, script)
    at_work(page)
    expect(find).to_be_focused()
    order = hold(page, "**/print")
    page.get_by_role("button", name="Open PDF").click()
    until(page, lambda: order)
    find.focus()
    pdf_after(page, lambda: let_go(page, order))
    expect(find).to_be_focused()


@pytest.mark.long
@pytest.mark.parametrize("late", ["**/class/drafts", WHOLE])
def test_what_is_typed_while_another_change_is_kept_stands(class_file: Path, program: Program, new_page: NewPage,
                                                           late: str | re.Pattern[str]) -> None:
    """It is told as not kept, the cursor stays where it was, and the next Keep keeps it."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    field, opened_after = height_field(page), page.locator("#own [data-draft] [name=after]")
    before = opened_after.input_value()
    field.fill("24")
    held = keep_held(page, late)
    field.press("End")
    page.keyboard.type(".5")
    let_go(page, held)
    expect(opened_after).not_to_have_value(before)  # the panel was read again
    with Classbook.open(class_file) as book:
        assert book.settings_of(2) == {"line_height": "24"}
    page.get_by_text("Changed and not kept yet: Kirrin.").wait_for()
    page.keyboard.type("5")
    expect(field).to_have_value("24.55")
    page.get_by_role("button", name="Keep").click()
    page.get_by_text(KEPT).wait_for()
    expect(page.locator("#changes")).to_be_hidden()
    with Classbook.open(class_file) as book:
        assert book.settings_of(2) == {"line_height": "24.55"}


@pytest.mark.long
def test_going_back_to_what_was_while_a_change_is_kept_is_a_change(class_file: Path, program: Program,
                                                                   new_page: NewPage) -> None:
    """What is kept then is not what the page came with."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    field = height_field(page)
    field.fill("24")
    held = keep_held(page, "**/class/drafts")
    field.fill("")
    page.locator("#changes").wait_for(state="hidden")
    let_go(page, held)
    page.get_by_text("Changed and not kept yet: Kirrin.").wait_for()
    page.locator("#rows [data-row='2']", has_text="24 mm").wait_for()  # the page was read again
    expect(field).to_have_value("")


@pytest.mark.long
def test_a_second_keep_waits_for_the_first(class_file: Path, program: Program, new_page: NewPage) -> None:
    """Sent beside it, it would be refused as a change from another window."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    field = height_field(page)
    field.fill("24")
    held = keep_held(page, WHOLE)
    field.fill("25")
    page.get_by_role("button", name="Keep").click()
    let_go(page, held)
    page.locator("#rows [data-row='2']", has_text="25 mm").wait_for()
    page.get_by_text(KEPT).wait_for()
    expect(page.locator("#changes")).to_be_hidden()


@pytest.mark.long
def test_what_is_typed_after_a_change_was_taken_back_stands_alone(class_file: Path, program: Program,
                                                                  new_page: NewPage) -> None:
    """The change that was taken back goes at once, and does not come again with what is typed next."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    field, gap = height_field(page), page.get_by_role("textbox", name="Space between letters", exact=True)
    field.fill("24")
    held = hold(page, WHOLE)
    page.get_by_role("button", name="Take back").click()
    expect(field).to_have_value("")
    gap.fill("2")
    until(page, lambda: held)
    with page.expect_response(WHOLE):
        let_go(page, held)
    page.get_by_role("button", name="Keep").click()
    page.get_by_text(KEPT).wait_for()
    with Classbook.open(class_file) as book:
        assert book.settings_of(2) == {"letter_spacing": "2"}


@pytest.mark.long
def test_the_panel_of_a_child_no_longer_shown_does_not_come_back(class_file: Path, program: Program,
                                                                 new_page: NewPage) -> None:
    """Another child is chosen while the page is read again after Keep: the lines are new, the panel is that child's."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    height_field(page).fill("24")
    held = keep_held(page, WHOLE)
    page.get_by_role("link", name="Bo", exact=True).click()
    page.locator("[data-panel='5']").wait_for()
    let_go(page, held)
    page.locator("#rows [data-row='2']", has_text="24 mm").wait_for()
    expect(page.locator("[data-panel]")).to_have_attribute("data-panel", "5")
    expect(page.locator("#rows .chosen")).to_have_attribute("data-row", "5")


@pytest.mark.long
@pytest.mark.parametrize("typed", ["25", ""])
def test_what_is_typed_into_a_child_who_is_left_while_it_is_kept_is_a_change(class_file: Path, program: Program,
                                                                             new_page: NewPage, typed: str) -> None:
    """Another height, or none as before: it is told once the answer comes, and the next Keep keeps it."""
    kept(class_file)
    page = at_desk(new_page, program, "/class?child=2")
    height_field(page).fill("24")
    held = keep_held(page, "**/class/drafts")
    height_field(page).fill(typed)
    page.get_by_role("link", name="Bo", exact=True).click()
    page.locator("[data-panel='5']").wait_for()
    let_go(page, held)
    page.locator("#rows [data-row='2']", has_text="24 mm").wait_for()
    page.get_by_text("Changed and not kept yet: Kirrin.").wait_for()
    page.get_by_role("button", name="Keep").click()
    page.locator("#changes").wait_for(state="hidden")
    page.get_by_text(KEPT).wait_for()
    with Classbook.open(class_file) as book:
        assert book.settings_of(2) == ({"line_height": typed} if typed else {})


@pytest.mark.long
def test_an_order_outlives_a_page_that_is_loaded_anew_at_once(class_file: Path, program: Program,
                                                              new_page: NewPage) -> None:
    """A to Z is kept though nobody waited for it."""
    kept(class_file)
    page = at_desk(new_page, program)
    held = hold(page, "**/class/sorted*")
    page.get_by_role("link", name="A to Z").click()
    until(page, lambda: held)
    page.reload()
    let_go(page, held)
    until(page, lambda: any(one["name"] == "sorted" for one in page.context.cookies()))
