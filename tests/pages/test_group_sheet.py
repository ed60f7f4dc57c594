"""A group's sheet: the shared letters first, then everybody's name or nobody's."""

from __future__ import annotations

import pytest

from namewright.letters.alphabet import MissingLetters
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import preset
from namewright.pages.blocks import PageSettings
from namewright.pages.group_sheet import group_page
from namewright.pages.page import Furniture, Guide, Row
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter

PLAIN = PageSettings(preset("us-3/4"))


def rows(page: object) -> list[str]:
    """Return what is to be read in the rows of a page, those of white left out."""
    return [item.name for item in page.items if isinstance(item, Row) and item.name]  # type: ignore[attr-defined]


def test_letters_stand_in_both_cases_then_the_names(setter: Typesetter) -> None:
    """A shared letter has its capital beside it; one name for two children of the same name."""
    children = [("Ava B.", "Ava"), ("Ava D.", "Ava"), ("Tilo", "Tilo")]
    assert rows(group_page(setter, 2, children, ["a", "v"], PLAIN)) == ["A a", "V v", "Ava", "Tilo"]


def test_names_are_there_for_all_or_for_none(setter: Typesetter) -> None:
    """Where there is no room for everybody nobody is shown, so that no child is missing."""
    children = [(name, name) for name in ("Mira", "Tilo", "Wren", "Fen")]
    assert rows(group_page(setter, 1, children, list("aeirnl"), PLAIN)) == ["A a", "E e", "I i", "R r", "N n", "L l"]


def test_many_shared_letters_leave_room_for_the_names(setter: Typesetter) -> None:
    """Of six shared letters as many stand there as let everybody's name stand under them."""
    children = [(name, name) for name in ("Amelin", "Liemna", "Enmila")]
    assert rows(group_page(setter, 1, children, list("aeilmn"), PLAIN)) == ["A a", "E e", "I i", "Amelin", "Liemna",
                                                                            "Enmila"]


def test_a_wide_name_has_its_white_below(setter: Typesetter) -> None:
    """Where a name fills more than half of the line, the next line is for writing it; a wider one takes two rows."""
    children = [("Bo", "Bo"), ("Alexandrine", "Alexandrine")]
    page = group_page(setter, 1, children, ["a"], PLAIN)
    assert rows(page) == ["A a", "Bo", "Alexandrine", "Alexandrine"]
    written, empty = [item for item in page.items if isinstance(item, Row)][-2:]
    assert written.name == empty.name
    assert len(written.items) > len(empty.items)
    assert (written.form, empty.form) == (Form.SOLID, Form.BLANK)
    wide = "Alexandrina-Maximiliana"
    two = ["Alexandrina-", "Maximiliana"]
    assert rows(group_page(setter, 1, [("Bo", "Bo"), (wide, wide)], ["a"], PLAIN)) == ["A a", "Bo", *two, *two]
    assert rows(group_page(setter, 1, [("Bo", "Bo"), ("o" * 60, "o" * 60)], ["a"], PLAIN)) == ["A a"]


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("paper", list(Paper))
def test_a_group_with_nothing_in_common(setter: Typesetter, paper: Paper, language: str) -> None:
    """The page still says something kind, and every page passes its own check."""
    settings = PageSettings(preset("de-5"), paper, binding=True, language=language)
    page = group_page(setter, 9, [("Bo", "Bo"), ("Yanic", "Yanic")], [], settings)
    assert rows(page) == ["B b", "Y y", "Bo", "Yanic"]


def test_a_child_whose_name_we_cannot_draw_has_lines_too(setter: Typesetter) -> None:
    """Its line of the list stands over them, and the names of the others are there as ever."""
    children = [("Bo", "Bo"), ("line 4 of the list", "דוד")]
    page = group_page(setter, 1, children, [], PLAIN)
    assert rows(page) == ["B b", "Bo"]
    last = [item for item in page.items if isinstance(item, Row)][-1]
    said = [ink.spelled.words for item in page.items if isinstance(item, Furniture)
            for ink in item.items if isinstance(ink, Ink) and ink.spelled]
    assert (last.form, last.name) == (Form.BLANK, "")
    assert "line 4 of the list" in said


@pytest.mark.parametrize("ruling", ["us-3/4", "de-5", "us-1/2"])
@pytest.mark.parametrize("shared", ["", "a", "ae", "aeinrl"])
def test_a_page_is_filled_with_rows(setter: Typesetter, shared: str, ruling: str) -> None:
    """Where names have no room or leave some, letters have more rows to write on: at most two each."""
    children = [(name, name) for name in ("Mira", "Tilo", "Wren", "Fen", "Bartholomew")]
    page = group_page(setter, 1, children, list(shared), PageSettings(preset(ruling)))
    found = [item for item in page.items if isinstance(item, Row)]
    foot = max(guide.y for row in found for guide in row.items if isinstance(guide, Guide))
    blank = sum(not row.name for row in found)
    letters = sum(" " in row.name for row in found)
    step = 1.5 * preset(ruling).line_height_mm + 25.0
    assert foot > page.height_mm - 20.0 - step or blank == 2 * letters


def test_letters_we_cannot_draw_are_refused(setter: Typesetter) -> None:
    """The caller leaves them out beforehand."""
    with pytest.raises(MissingLetters):
        group_page(setter, 1, [("Mira", "Mira")], ["м"], PLAIN)
