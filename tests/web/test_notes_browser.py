"""Noting the letters of the day in a real browser, on a phone: taps are counted, and the class's file is read."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from webhelp import MESSY, Program, port_of_its_own

from namewright.classbook import Classbook

PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
NewPage = Callable[..., Any]


def kept(class_file: Path) -> None:
    with Classbook.open(class_file) as book:
        book.update_roster(MESSY)


def noted_today(class_file: Path) -> dict[str, tuple[int, ...] | None]:
    """Return the letters of today's only note of each child who has one."""
    with Classbook.open(class_file) as book:
        notes = {one.child.label: book.observations(one.id) for one in book.children()}
    assert all(len(each) <= 1 for each in notes.values())
    today = date.today().isoformat()
    return {label: each[0].letters for label, each in notes.items() if each and each[0].date == today}


def done(page: Any, count: int) -> None:
    page.get_by_text(f"{count} of 7 done").wait_for()


def test_five_children_are_five_taps_and_their_letters(class_file: Path, program: Program, new_page: NewPage) -> None:
    """The first child is open; a tap for each letter, and one to save, which opens the next."""
    kept(class_file)
    page, taps = new_page(**PHONE), 0
    page.goto(program.address + "/seen")
    for count in range(1, 6):
        card = page.locator(".note-card[open]")
        card.locator(".tile").first.tap()
        card.locator(".tile").nth(1).tap()
        card.get_by_role("button", name="Save and next").tap()
        taps += 1
        done(page, count)
    assert taps == 5
    assert list(noted_today(class_file).values()) == [(0, 1)] * 5
    expect(page.locator(".note-card[open]")).to_have_count(1)
    expect(page.locator(".note-card .badge.done")).to_have_count(5)


@pytest.mark.long
def test_all_letters_at_once_and_a_change_of_mind(class_file: Path, program: Program, new_page: NewPage) -> None:
    """One tap ticks every letter, or none; opened again the card has what was saved, and a letter can be taken away."""
    kept(class_file)
    page = new_page(**PHONE)
    page.goto(program.address + "/seen?by=name")
    card = page.locator(".note-card[open]")
    card.get_by_text("All the letters").tap()
    expect(card.locator(".tile :checked")).to_have_count(2)
    card.get_by_text("None yet").tap()
    expect(card.locator(".tile :checked")).to_have_count(0)
    expect(card.locator("[name=all]")).not_to_be_checked()
    card.locator(".tile").nth(1).tap()
    expect(card.locator("[name=none]")).not_to_be_checked()
    card.locator("[data-unsaved]").wait_for()
    card.get_by_role("button", name="Save and next").tap()
    done(page, 1)
    assert noted_today(class_file) == {"Bo": (1,)}
    first = page.locator(".note-card").first
    first.locator("summary").first.tap()
    expect(first.locator("[name=letter]:checked")).to_have_count(1)
    first.locator(".tile").nth(0).tap()
    first.locator(".tile").nth(1).tap()
    first.get_by_role("button", name="Save and next").tap()
    expect(first).not_to_have_attribute("open", "")
    assert noted_today(class_file) == {"Bo": (0,)}


@pytest.mark.long
def test_letters_stay_where_the_program_does_not_answer(class_file: Path, new_page: NewPage) -> None:
    """Killed between tap and save: the card says so, keeps its letters, and saves them once the program runs again."""
    kept(class_file)
    page = new_page(**PHONE)
    with Program(class_file, port_of_its_own()) as first:
        page.goto(first.address + "/seen")
        card = page.locator(".note-card[open]")
        card.locator(".tile").first.tap()
        first.kill()
        card.get_by_role("button", name="Save and next").tap()
        page.get_by_text("The program does not answer").wait_for()
        with Program(class_file, first.port):
            card.get_by_role("button", name="Save and next").tap()
            page.get_by_role("button", name="Send it again").tap()
            done(page, 1)
    assert list(noted_today(class_file).values()) == [(0,)]


@pytest.mark.long
def test_a_day_is_taken_back_from_the_childs_page(class_file: Path, program: Program, new_page: NewPage) -> None:
    """The year shows what was noted; a day that is taken back is gone from it."""
    kept(class_file)
    page = new_page(**PHONE)
    page.goto(program.address + "/child/1/seen")
    for at in (0, 3):
        page.locator(".tile").nth(at).tap()
    page.get_by_role("button", name="Save", exact=True).tap()
    page.get_by_text("Saved for Ottilka").wait_for()
    expect(page.locator(".year .stands")).to_have_count(2)
    page.get_by_text("Take a day back").tap()
    page.get_by_role("button", name="Take back what was noted").tap()
    page.get_by_text("That day was taken back.").wait_for()
    page.get_by_text("Nothing has been noted yet.").wait_for()
