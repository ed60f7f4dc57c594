"""The list in a real browser: what a teacher does is counted (a tap, a chord, a field filled), to the PDF in hand."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from webhelp import MESSY, Program, at_work, pdf_after, port_of_its_own, until

from namewright.classbook import Classbook

NewPage = Callable[..., Any]
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
CLEAN = "Mira Quill\nTilo Reed\nWenna Praske\nKatla Pruner\nSefa Ilar\n"
# An invented class of thirty-two lines as a message has them; five need somebody, and thirty are children then.
LONG = """Room 9 - the Alder class
1. TAMSEL, OTTILKA
2. Brane, Kirrin
3. Vost, Mirel (goes by Miri)
4. Ondway, Íñigo
5. Pruner, Katla
6. Dolt, Kasimir
7. Lindle, Bo
8. Wren, Nia - left
9. Pell, Augustin 555-0134-77
10. Ilar, Sefa
11. Quorrel & Vexil
12. Анна Петрова
13. Ashgrove, Theodora
14. Marsh, Ewan
15. Reed, Tilo (wears glasses)
16. Quill, Mira
17. Praske, Wenna
18. Yarrel, Tobin
19. Pell, Zorah
20. Lindle, Bo
21. Hale, Oona
22. Finch, Ruben
23. Moss, Delia
24. Thorn, Cyrus
25. Lake, Imani
new child
26. Stone, Petra
27. Field, Jonah
28. Birch, Lena (Kvothe)
29. Rowan, Silas
30. Heath, Nora
"""


class Counted:
    """A page on which every action is counted."""

    def __init__(self, page: Any) -> None:
        self.page, self.actions = page, 0

    def press(self, name: str) -> None:
        self.actions += 1
        self.page.get_by_role("button", name=name).first.click()

    def paste(self, text: str) -> None:
        """Paste with the keyboard, where the screen has put the cursor."""
        self.actions += 1
        self.page.keyboard.insert_text(text)


def children(class_file: Path) -> list[str]:
    with Classbook.open(class_file) as book:
        return [one.child.practice for one in book.children()]


@pytest.mark.long
def test_a_clean_list_is_a_pdf_in_three_actions(program: Program, new_page: NewPage) -> None:
    """From the first page: paste, save, open. Every child has a page."""
    page = new_page()
    page.goto(program.address)
    teacher = Counted(page)
    expect(page.locator("#text")).to_be_focused()
    teacher.paste(CLEAN)
    teacher.press("Save this class")
    page.wait_for_url("**/class?*")
    at_work(page)
    pdf = pdf_after(page, lambda: teacher.press("Open PDF"))
    assert teacher.actions <= 3
    assert {one.title for one in pdf.outline} >= {"Mira", "Tilo", "Wenna", "Katla", "Sefa"}  # type: ignore[union-attr]


def test_a_messy_list_needs_eight_actions_and_loses_nobody(program: Program, class_file: Path,
                                                           new_page: NewPage) -> None:
    """Thirty-two lines, five of which need a person: each is one press, and every child has a page."""
    page = new_page()
    page.goto(program.address)
    teacher = Counted(page)
    expect(page.locator("#text")).to_be_focused()
    assert len(LONG.splitlines()) == 32
    teacher.paste(LONG)
    page.get_by_role("heading", name="5 lines need you").wait_for()
    for left, name in ((4, "Split in 2"), (3, "Use this spelling"), (2, "Two children"), (1, "Not a child"),
                       (0, "The child goes by Kvothe")):
        teacher.press(name)
        if left:
            page.get_by_role("heading", name="need" if left > 1 else "One line needs you").filter(
                has_text=f"{left} lines" if left > 1 else "One").wait_for()
    page.get_by_text("Nothing needs you.").wait_for()
    teacher.press("Save this class of 31")
    page.wait_for_url("**/class?*")
    at_work(page)
    pdf = pdf_after(page, lambda: teacher.press("Open PDF"))
    assert teacher.actions <= 8
    kept = children(class_file)
    assert len(kept) == 31
    assert {"Quorrel", "Vexil", "Anna", "Kvothe", "Ottilka", "Nia"} <= set(kept)
    assert kept.count("Bo") == 2
    assert len({one.title for one in pdf.outline}) >= 31  # type: ignore[union-attr]


@pytest.mark.long
def test_keys_alone_lead_from_the_list_to_the_pdf(program: Program, new_page: NewPage) -> None:
    """Paste, one chord, and the keyboard stands on what opens the PDF."""
    page = new_page()
    page.goto(program.address)
    expect(page.locator("#text")).to_be_focused()
    page.keyboard.insert_text(CLEAN)
    page.keyboard.press("Control+Enter")
    page.wait_for_url("**/class?*")
    expect(page.locator(":focus")).to_have_text("Open PDF")
    pdf = pdf_after(page, lambda: page.keyboard.press("Enter"))
    assert len(pdf.pages) >= 5


def test_what_is_typed_survives_a_reload_a_walk_and_a_new_start(class_file: Path, new_page: NewPage) -> None:
    """Enter begins a line, leaving asks, and the words are there again after all of it; Back shows no error."""
    page = new_page()
    with Program(class_file, port_of_its_own()) as first:
        page.goto(first.address + "/class/list")
        page.get_by_label("Your list").fill("Mira Quill")
        page.get_by_label("Your list").press("End")
        page.keyboard.press("Enter")
        page.keyboard.insert_text("Tilo Reed")
        page.get_by_text("2 children were found").wait_for()
        page.reload()
        expect(page.get_by_label("Your list")).to_have_value("Mira Quill\nTilo Reed")
        page.get_by_role("link", name="One child now").click()
        page.get_by_role("dialog").get_by_role("button", name="Stay here").click()
        page.get_by_role("dialog").wait_for(state="hidden")
        assert page.url.endswith("/class/list")
        page.get_by_role("link", name="One child now").click()
        page.get_by_role("button", name="Go without saving").click()
        page.wait_for_url("**/now")
        page.go_back()
        expect(page.get_by_label("Your list")).to_have_value("Mira Quill\nTilo Reed")
        first.kill()
        with Program(class_file, first.port):
            page.get_by_label("Your list").press("End")
            page.get_by_label("Your list").press("Control+End")
            page.keyboard.insert_text("\nWenna Praske")
            page.get_by_text("3 children were found").wait_for()
            page.get_by_role("button", name="Save this class of 3").click()
            page.wait_for_url("**/class?*")
            page.go_back()
            expect(page.get_by_label("Your list")).to_have_value(re.compile("\nWenna Praske\n?$"))
    assert children(class_file) == ["Mira", "Tilo", "Wenna"]


@pytest.mark.long
def test_a_press_is_taken_back_and_a_save_too(program: Program, class_file: Path, new_page: NewPage) -> None:
    """Split, take the step back; save another list, take that back from the desk."""
    page = new_page()
    page.goto(program.address + "/class/list")
    page.get_by_label("Your list").fill(CLEAN + "Quorrel & Vexil")
    page.get_by_role("button", name="Split in 2").click()
    page.get_by_text("Nothing needs you.").wait_for()
    expect(page.get_by_label("Your list")).to_have_value(re.compile("Name: Quorrel\nName: Vexil$"))
    page.get_by_role("button", name="Take back the last step").click()
    page.get_by_role("heading", name="One line needs you").wait_for()
    expect(page.get_by_label("Your list")).to_have_value(re.compile("Quorrel & Vexil$"))
    page.get_by_role("button", name="Save this class of 5").click()
    page.get_by_text("“Quorrel & Vexil”").wait_for()
    page.goto(program.address + "/class/list")
    page.get_by_label("Your list").fill(CLEAN.replace("Tilo Reed\n", ""))
    page.get_by_role("button", name="Save this class of 4").click()
    page.get_by_role("button", name="Take it back").click()
    page.get_by_text("The class is as it was before.").wait_for()
    assert children(class_file) == ["Mira", "Tilo", "Wenna", "Katla", "Sefa"]


@pytest.mark.long
def test_what_is_on_its_way_arrives_before_the_list_is_saved(program: Program, new_page: NewPage) -> None:
    """After the save it would be a list that another window has typed."""
    page, held, sent = new_page(), [], []
    page.goto(program.address + "/class/list")
    page.get_by_label("Your list").fill(CLEAN)
    page.get_by_text("5 children were found").wait_for()
    page.route("**/class/list/read*", lambda route: held.append(route))
    page.get_by_label("Your list").fill(CLEAN + "Ewan Marsh L")
    until(page, lambda: held)
    page.on("request", lambda request: sent.append(request) if request.method == "POST" else None)
    page.evaluate("""() => document.addEventListener("submit", (event) => {
      document.documentElement.dataset.saving = event.defaultPrevented ? "waits" : "sent"; })""")
    page.get_by_role("button", name="Save this class").click()
    until(page, "document.documentElement.dataset.saving === 'waits'")
    assert not sent
    held[0].continue_()
    page.unroute("**/class/list/read*")
    page.get_by_text("The class is saved: 6 children.").wait_for()
    page.goto(program.address + "/class/list")
    page.get_by_role("link", name="Erase children for good").wait_for()
    assert not page.get_by_text("The list was changed in another window.").count()


@pytest.mark.long
def test_another_class_is_kept_beside_the_first(program: Program, class_file: Path, new_page: NewPage) -> None:
    """A list of others is shown beside the class; made a class of its own, it is one press away in the top bar."""
    page = new_page()
    page.goto(program.address + "/class/list")
    page.get_by_label("Your list").fill(CLEAN)
    page.get_by_role("button", name="Save this class of 5").click()
    page.wait_for_url("**/class?*")
    page.goto(program.address + "/class/list")
    page.get_by_label("Your list").fill(MESSY)
    page.get_by_role("button", name="Save this class of 7").click()
    page.get_by_role("heading", name="4 children leave the class").wait_for()
    page.get_by_label("Or keep both").fill("Room 4")
    page.get_by_role("button", name="Begin this class").click()
    page.get_by_text("Room 4 is begun.").wait_for()
    page.get_by_role("button", name="Save this class of 7").click()
    page.wait_for_url("**/class?*")
    assert len(children(class_file.with_name("room-4.db"))) == 7
    page.locator(".classes > summary").click()
    page.get_by_role("button", name="My class").click()
    page.get_by_text("My class is open.").wait_for()
    assert len(children(class_file)) == 5


def test_without_scripts_a_list_is_read_mended_and_saved(program: Program, class_file: Path,
                                                         new_page: NewPage) -> None:
    """The same forms do the same: read, one press for a line, save."""
    page = new_page(java_script_enabled=False)
    page.goto(program.address)
    page.get_by_label("Your list").fill(CLEAN + "Quorrel & Vexil")
    page.get_by_role("button", name="Read the names").click()
    page.get_by_role("button", name="Split in 2").click()
    expect(page.get_by_label("Your list")).to_have_value(re.compile("\nName: Quorrel\nName: Vexil\n?$"))
    page.get_by_role("button", name="Save this class of 7").click()
    page.wait_for_url("**/class?*")
    assert len(children(class_file)) == 7


def test_choices_that_take_two_rows_fill_them(program: Program, new_page: NewPage) -> None:
    """On a phone what is practised has three choices, parted and framed: each row of them is as wide as the frame."""
    page = new_page(**PHONE)
    page.goto(program.address + "/class/list?new=1")
    page.get_by_label("Your list").fill(CLEAN)
    choices = page.locator(".segments label")
    choices.nth(2).wait_for()
    page.get_by_text("5 children were found").wait_for()  # nothing moves any more
    boxes = [choices.nth(at).bounding_box() for at in range(3)]
    frame = page.locator(".segments").bounding_box()
    for top in {box["y"] for box in boxes}:
        row = [box for box in boxes if box["y"] == top]
        assert min(box["x"] for box in row) - frame["x"] < 3
        assert frame["x"] + frame["width"] - max(box["x"] + box["width"] for box in row) < 3


def test_letters_of_other_scripts_are_as_large_as_ours(class_file: Path, new_page: NewPage) -> None:
    """Beside Mira stands Мира: as wide a word within a third, where it was twice as wide before."""
    with Classbook.open(class_file) as book:
        book.update_roster("Mira Quill\nМира Боева\n", when="2026-09-01T08:00:00")
    with Program(class_file) as running:
        page = new_page()
        page.goto(running.address + "/class/erase")
        page.evaluate("document.fonts.ready.then(() => 0)")
        own, other = (page.locator(".own-letters", has_text=re.compile(f"^{name}")).first.bounding_box()["width"]
                      for name in ("Mira", "Мира"))
        assert 0.8 * own < other < 4 / 3 * own
