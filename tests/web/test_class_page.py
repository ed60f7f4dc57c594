"""The page of the class: everyone on it, what is chosen ticked, rulings by where ones like them are used."""

from __future__ import annotations

import re

from webhelp import Visitor

from namewright.lines.ruling import PRESETS
from namewright.web.class_page import CHOICES


def test_everyone_stands_on_it_and_the_sheets_are_ticked(settled: Visitor) -> None:
    """All seven by their labels; of the kinds of pages only sheets are chosen before anybody chose."""
    page = settled.get("/class").text
    for label in ("Ottilka", "Kirrin", "Miri", "Íñigo", "Katla", "Kasimir", "Bo"):
        assert label in page, label
    ticked = re.findall(r'<input[^>]*name="what"[^>]*value="(\w+)"[^>]*checked', page)
    assert ticked == ["sheets"]


def test_every_choice_and_every_ruling_can_be_made(settled: Visitor) -> None:
    """Each by its word, once in its list."""
    page = settled.get("/class").text
    offered = re.findall(r'<option value="([^"]*)"', page)
    for words in CHOICES.values():
        assert set(words) <= set(offered)
    assert set(PRESETS) <= set(offered)


def test_without_children_there_is_the_place_to_paste_them(visitor: Visitor) -> None:
    answer = visitor.get("/class")
    assert answer.status_code == 302
    assert answer.headers["Location"].startswith("/class/list")


def test_an_empty_line_height_shows_what_the_list_says_of_the_child(visitor: Visitor) -> None:
    """On a class's lines of 19 mm, where the list gives this child 30 mm, the field and the page agree."""
    visitor.keep("name,line height\nMira,\nTilo,30 mm\n")
    shown = {}
    for child in (1, 2):
        page = visitor.get(f"/class?child={child}&part=panel").text
        field = next(tag for tag in re.findall(r"<input[^>]*>", page) if 'name="line_height"' in tag)
        shown[child] = re.search(r'placeholder="([^"]*)"', field)[1]  # type: ignore[index]
    assert shown[2].startswith("30")
    assert not shown[1].startswith("30")
