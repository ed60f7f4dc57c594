"""The plan: everyone on it, readable in grey and for every eye, and a sentence for whatever cannot be."""

from __future__ import annotations

import io

import numpy as np
import pytest
from planhelp import NAMES, child, plan_of

from namewright.lines.ink import RULE, Ink, Style
from namewright.output.png import page_png
from namewright.pages.page import leaves
from namewright.pages.paper import Paper
from namewright.pages.plan import pages as plan_module
from namewright.pages.plan.band_shapes import SHAPE_STYLES
from namewright.pages.plan.pages import PlanSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, completed, order_class
from namewright.practice.timetable import Lookout, timetable
from namewright.practice.weeks import Week
from namewright.wording import wording


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("order", [Order.PRACTICE, Order.NEED, Order.FAMILY])
def test_a_week_of_thirty_takes_one_page_and_what_explains_it_two(
        setter: Typesetter, paper: Paper, language: str, order: Order) -> None:
    """On both papers, in both languages and in every order; each page is checked for its margins as it is made."""
    names = [f"{first}{rest}" for first in "BKLMNS" for rest in ("ari", "ora", "ido", "uke", "enn")]
    pages = plan_of(setter, names, PlanSettings(paper, order=order, language=language))
    assert len(pages) == 3
    boxes = [sum(isinstance(item, Ink) and item.style == Style(0.25, RULE) for item in leaves(page.items))
             for page in pages]
    assert boxes == [30, 0, 0]


@pytest.mark.parametrize("names", [[], ["Mira"], ["Mira", "Bo"], ["Mira"] * 7, ["-", "’"], ["李", "Боян", "Bo"],
                                   ["M" + "ioaeu" * 30], ["".join(map(chr, range(0x4E00, 0x4E40)))]])
def test_odd_classes_still_have_a_plan(setter: Typesetter, names: list[str]) -> None:
    """None, one, two, the same name seven times, nothing to write, letters we lack, a text that is no name."""
    assert plan_of(setter, names)


def test_two_hundred_children_are_all_on_it(setter: Typesetter) -> None:
    """A large class takes more pages and leaves nobody out."""
    names = [f"{a}{b}{c}" for a in "BDFGKLMNRS" for b in "aeiou" for c in ("", "n", "so", "ri")]
    pages = plan_of(setter, names)
    assert 4 <= len(pages) <= 12


@pytest.mark.parametrize("count", range(20, 36))
def test_no_child_stands_alone_at_the_top_of_a_page(setter: Typesetter, count: int) -> None:
    """Rows that go on over a page take at least three children with them: one alone there is overlooked."""
    pages = plan_of(setter, [NAMES[at % len(NAMES)] + "abcde"[at // len(NAMES)] for at in range(count)], weeks=1)
    rows = [sum(isinstance(item, Ink) and item.style == Style(0.1, RULE) for item in leaves(page.items))
            for page in pages[1:]]
    assert sum(rows) == count
    assert all(number == 0 or number >= 3 for number in rows)


def test_under_a_week_stand_all_its_names_or_how_many_more() -> None:
    """Eight names are listed, of nine the first seven and that two more are complete."""
    for count, last in ((1, "Bo 1"), (8, "Bo 8"), (9, wording("en").say("page.plan.more", count=2))):
        children = [child(f"Bo {at}", at) for at in range(1, count + 1)]
        plan = timetable(completed(order_class(children, Order.ROSTER)), Lookout())
        column = plan_module._column(Week(("b",), (), tuple(range(count))), plan, wording("en"))
        assert (len(column), column[0], column[-1]) == (min(count, 8), "Bo 1", last)


def test_the_page_has_ink_where_a_grey_printer_shows_three_tones(setter: Typesetter) -> None:
    """Drawn and turned grey, the three fills are three well parted tones on the page."""
    from PIL import Image

    page = plan_of(setter, NAMES)[1]
    pixels = np.array(Image.open(io.BytesIO(page_png(page, 150))).convert("L"))
    tones = [round(0.299 * int(f[1:3], 16) + 0.587 * int(f[3:5], 16) + 0.114 * int(f[5:7], 16))
             for f in (look.fill for look in SHAPE_STYLES.values())]
    assert all(int((abs(pixels.astype(int) - tone) <= 2).sum()) > 300 for tone in tones)


# --- the command -------------------------------------------------------------------------------------


def test_marks_of_names_keep_off_the_letters_of_the_week(setter: Typesetter) -> None:
    """Regression: the ring of Åsa and the tilde of Ñusta ran into the letters over them."""
    for page in plan_of(setter, ["Åsa", "Ánh", "Ñusta", "Bo"]):
        inks = [item for item in leaves(page.items) if isinstance(item, Ink)]
        names = [ink.bounds() for ink in inks if ink.spelled and ink.spelled.words in ("Åsa", "Ánh", "Ñusta")]
        shapes = [ink.bounds() for ink in inks if ink.style.fill not in (None, "none")]
        for x0, y0, x1, y1 in names:
            assert not any(x0 < right and left < x1 and y0 < foot and top < y1 for left, top, right, foot in shapes)
