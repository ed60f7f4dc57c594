"""A group's sheet: the shared letters first, then everybody's name or nobody's."""

from __future__ import annotations

import pytest

from namewright.letters.alphabet import MissingLetters
from namewright.lines.forms import Form
from namewright.lines.ruling import preset
from namewright.pages.blocks import PageSettings
from namewright.pages.group_sheet import group_page
from namewright.pages.page import Row
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter

PLAIN = PageSettings(preset("us-3/4"))


def rows(page: object) -> list[str]:
    return [item.name for item in page.items if isinstance(item, Row)]  # type: ignore[attr-defined]


def test_letters_stand_in_both_cases_then_the_names(setter: Typesetter) -> None:
    """A shared letter has its capital beside it; one name for two children of the same name."""
    children = [("Ava B.", "Ava"), ("Ava D.", "Ava"), ("Tilo", "Tilo")]
    assert rows(group_page(setter, 2, children, ["a", "v"], PLAIN)) == ["A a", "V v", "Ava", "Tilo"]


def test_names_are_there_for_all_or_for_none(setter: Typesetter) -> None:
    """Where there is no room for everybody nobody is shown, so that no child is missing."""
    children = [(name, name) for name in ("Mira", "Tilo", "Wren", "Fen")]
    assert rows(group_page(setter, 1, children, list("aeirnl"), PLAIN)) == ["A a", "E e", "I i", "R r", "N n", "L l"]


def test_a_wide_name_has_its_white_below(setter: Typesetter) -> None:
    """Where a name fills more than half of the line, the next line is for writing it; too wide a name has no row."""
    children = [("Bo", "Bo"), ("Alexandrine", "Alexandrine")]
    page = group_page(setter, 1, children, ["a"], PLAIN)
    assert rows(page) == ["A a", "Bo", "Alexandrine", "Alexandrine"]
    written, empty = [item for item in page.items if isinstance(item, Row)][-2:]
    assert len(written.items) > len(empty.items)
    assert (written.form, empty.form) == (Form.SOLID, Form.BLANK)
    wide = "Alexandrina-Maximiliana"
    assert rows(group_page(setter, 1, [*children, (wide, wide)], ["a"], PLAIN)) == ["A a"]


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("paper", list(Paper))
def test_a_group_with_nothing_in_common(setter: Typesetter, paper: Paper, language: str) -> None:
    """The page still says something kind, and every page passes its own check."""
    settings = PageSettings(preset("de-5"), paper, binding=True, language=language)
    page = group_page(setter, 9, [("Bo", "Bo"), ("Yanic", "Yanic")], [], settings)
    assert rows(page) == ["Bo", "Yanic"]


def test_letters_we_cannot_draw_are_refused(setter: Typesetter) -> None:
    """The caller leaves them out beforehand."""
    with pytest.raises(MissingLetters):
        group_page(setter, 1, [("Mira", "Mira")], ["м"], PLAIN)
