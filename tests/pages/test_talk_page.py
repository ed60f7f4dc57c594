"""The page for a talk with a family: what it shows of a name, that any name fits it, and in whose language it is."""

from __future__ import annotations

from datetime import date

import pytest

from namewright.lines.forms import Form
from namewright.pages import talk_page as module
from namewright.pages.child_progress import ProgressSettings
from namewright.pages.growth import Growth, Track
from namewright.pages.page import Row
from namewright.pages.paper import Paper
from namewright.pages.talk_page import Talk, talk_pages
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import languages

FIRST, LATEST = date(2026, 9, 8), date(2026, 11, 17)


def talk(name: str, first: str, now: str, **more: object) -> Talk:
    """Return a talk about a name whose letters were formed first and now as told: + formed, - not yet."""
    letters = [letter for letter in name if letter.isalpha()]
    days = [(FIRST, first), (LATEST, now)] if first else [(LATEST, now)]
    tracks = tuple(Track(letter, tuple((day, marks[at] == "+") for day, marks in days))
                   for at, letter in enumerate(letters))
    growth = Growth(name, tracks, ((FIRST, Support.FULL), (LATEST, Support.LIGHT)))
    return Talk(growth, name, **more)  # type: ignore[arg-type]


def test_a_name_is_shown_as_it_was_and_as_it_is(setter: Typesetter, monkeypatch: pytest.MonkeyPatch) -> None:
    """A letter in full where it was formed, in dots where not: on the first day, and as it stands now."""
    forms: list[list[Form]] = []
    monkeypatch.setattr(module.blocks, "letters_at", lambda _, line, each, x, y: forms.append(list(each)) or ())
    (page,) = talk_pages(setter, talk("Mira", "+---", "++-+"), ProgressSettings())
    dots, full = Form.DOTTED, Form.SOLID
    assert forms == [[full, dots, dots, dots], [full, full, dots, full]]
    assert [item.name for item in page.items if isinstance(item, Row)] == ["Mira", "Mira"]


def test_one_day_is_shown_once(setter: Typesetter) -> None:
    """With no earlier day there is nothing to set beside it."""
    (page,) = talk_pages(setter, talk("Mira", "", "++-+"), ProgressSettings())
    assert sum(isinstance(item, Row) for item in page.items) == 1


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("name", ["Bo", "Jean-Luc", "Zoë Christopherson", "Wilhelmina-Christopherson Quillfeather-Amb"])
def test_any_name_fits_its_page(setter: Typesetter, name: str, language: str) -> None:
    """The page's own check passes on both papers; with the longest words that may be noted there is a second page."""
    count = sum(letter.isalpha() for letter in name)
    words = tuple((day, "proud of it " * 40) for day in (FIRST, LATEST))
    for paper in Paper:
        asked = talk(name, "-" * count, "+" * count, coming=("a", "x"))
        (page,) = talk_pages(setter, asked, ProgressSettings(paper, language=language))
        assert (page.width_mm, page.height_mm) == paper.size_mm
        asked = talk(name, "-" * count, "+" * count, coming=("a", "x"), words=words)
        assert 1 <= len(talk_pages(setter, asked, ProgressSettings(paper, language=language))) <= 2


def test_nothing_noted_is_no_page(setter: Typesetter) -> None:
    with pytest.raises(ValueError, match="nothing was noted"):
        talk_pages(setter, Talk(Growth("Mira", ()), "Mira"), ProgressSettings())
