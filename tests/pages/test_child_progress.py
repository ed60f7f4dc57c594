"""The pages of progress: what they say in words and marks, and that any year of any name fits on the sheet."""

from __future__ import annotations

import re
from itertools import product

import pytest

from contrast import contrast
from namewright.lines.ink import FAINT, WHITE, Ink
from namewright.pages.child_progress import STRONG, TINT, ProgressSettings, progress_page
from namewright.pages.growth import Growth, Track, summary
from namewright.pages.page import leaves
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import languages, wording
from pages.on_page import blocks_of
from pages.years import NAMES, day, growth

YEARS = ([0], [0, 1], list(range(0, 270, 14)), list(range(0, 270, 2)), list(range(0, 1000, 40)))


def grid() -> list[tuple[str, list[int], Paper, str]]:
    """Return every name with every year, on the papers and in the languages in turn."""
    sheets = list(product(Paper, languages()))
    return [(name, days, *sheets[count % len(sheets)]) for count, (name, days) in enumerate(product(NAMES, YEARS))]


@pytest.mark.parametrize(("name", "days", "paper", "language"), grid())
def test_any_year_of_any_name_is_inside_the_margins(setter: Typesetter, name: str, days: list[int], paper: Paper,
                                                   language: str) -> None:
    """One day or three years, two letters or thirty: the page's own check of margins and empty paths passes."""
    for stages, support in ((True, True), (False, False)):
        page = progress_page(setter, growth(name, days, stages=stages, support=support),
                             ProgressSettings(paper, binding=len(days) == 2, language=language))
        assert (page.width_mm, page.height_mm) == paper.size_mm


def _dots(page_items: tuple[object, ...], colour: str) -> list[Ink]:
    """Return dots of a colour: paths of no length with a pen of at least half a millimetre."""
    return [ink for ink in leaves(page_items)  # type: ignore[arg-type]
            if isinstance(ink, Ink) and ink.style.colour == colour and ink.style.width_mm >= 0.5
            and re.fullmatch(r"(m-?[\d.]+ -?[\d.]+h0)+", ink.pieces[0].fragment.data)]


def _places(ink: Ink) -> list[tuple[float, float]]:
    """Return where the dots stand, read from the path data."""
    x, y = ink.pieces[0].x, ink.pieces[0].y
    found = []
    for dx, dy in re.findall(r"m(-?[\d.]+) (-?[\d.]+)h0", ink.pieces[0].fragment.data):
        x, y = x + float(dx), y + float(dy)
        found.append((round(x, 2), round(y, 2)))
    return found


def test_each_day_has_one_mark_a_letter_and_days_stand_to_scale(setter: Typesetter) -> None:
    """A full dot for each letter formed, a point for each on its way, and a day's place goes by the calendar."""
    tracks = (Track("B", ((day(0), False), (day(10), True), (day(40), True))),
              Track("o", ((day(0), False), (day(10), False), (day(40), True))))
    page = progress_page(setter, Growth("Bo", tracks), ProgressSettings())
    full = [place for ink in _dots(page.items, STRONG) for place in _places(ink)][1:]  # the first explains the mark
    points = [place for ink in _dots(page.items, FAINT) for place in _places(ink)][1:]
    assert len(full) == 3
    assert len(points) == 3
    rows = sorted({y for _, y in full + points})
    assert [sum(y == row for _, y in full) for row in rows] == [2, 1]
    x0, x10, x40 = (sorted({x for x, _ in full + points}))
    assert (x40 - x10) / (x10 - x0) == pytest.approx(3, abs=0.01)


def test_a_letters_band_begins_on_the_day_it_was_first_seen(setter: Typesetter) -> None:
    """The tinted band runs from the first full dot to the last day, and a letter not yet formed has none."""
    tracks = (Track("B", ((day(0), False), (day(10), True), (day(40), False))), Track("o", ((day(40), False),)))
    page = progress_page(setter, Growth("Bo", tracks), ProgressSettings())
    bands = [ink for ink in leaves(page.items) if isinstance(ink, Ink) and ink.style.colour == TINT]
    dots = [place for ink in _dots(page.items, STRONG) for place in _places(ink)]
    points = [place for ink in _dots(page.items, FAINT) for place in _places(ink)]
    assert len(bands) == 1
    reach = bands[0].style.width_mm / 2
    assert bands[0].bounds()[0] + reach == pytest.approx(dots[-1][0], abs=0.02)
    assert bands[0].bounds()[2] - reach == pytest.approx(max(x for x, _ in points[1:]), abs=0.02)


@pytest.mark.parametrize(("firsts", "expected"), [
    ((0, 10), "Bo has formed every letter of the name. B came first, on 7 Sep 2026, and o was the newest to join, on "
              "17 Sep 2026."),
    ((10, 0), "Bo has formed every letter of the name. o came first, on 7 Sep 2026, and B was the newest to join, on "
              "17 Sep 2026."),
    ((0, 0), "Bo has formed every letter of the name, since 7 Sep 2026."),
    ((0, None), "Bo has formed B, since 7 Sep 2026: the first letter of many."),
    ((None, None), "Bo is making first marks on the way to the name. The letters will follow in their own time."),
])
def test_the_summary_says_what_is_there(firsts: tuple[int | None, int | None], expected: str) -> None:
    """One warm sentence or two: what stands, what came first and last; no count, no comparison."""
    days = (0, 10, 40)
    tracks = tuple(Track(letter, tuple((day(at), first is not None and at >= first) for at in days))
                   for letter, first in zip("Bo", firsts, strict=True))
    assert wording("en").say(summary(Growth("Bo", tracks))) == expected


def test_the_summary_lists_letters_in_the_order_of_the_name() -> None:
    """Some letters are named as they stand in the name, the newest by its day."""
    tracks = (Track("M", ((day(0), True),)), Track("i", ((day(0), False),)), Track("r", ((day(9), True),)))
    said = wording("en").say(summary(Growth("Mir", tracks)))
    assert said.startswith("Mir has formed M and r. The newest to join is r")
    unseen = Growth("Mir", (Track("M"),), stages=((day(0), 1),))
    assert "has not been noted yet" in wording("en").say(summary(unseen))


def test_nothing_noted_is_no_page(setter: Typesetter) -> None:
    """A page without a day would show nothing; it is refused in words."""
    with pytest.raises(ValueError, match="nothing was noted"):
        progress_page(setter, Growth("Bo", (Track("B"), Track("o"))), ProgressSettings())


def test_marks_stand_out_in_grey_too() -> None:
    """By lightness alone dots reach 3:1 (WCAG 2.2, SC 1.4.11) on white and on their band."""
    assert contrast(STRONG, WHITE) >= 4.5
    assert all(contrast(*pair) >= 3 for pair in ((STRONG, TINT), (FAINT, WHITE), (FAINT, TINT)))


# --- the class -----------------------------------------------------------------------------------------


def test_one_step_is_now_and_those_noted_before_are_tinted(setter: Typesetter) -> None:
    """Steps 1, 4 and then 2 were noted: 2 is filled, 1 and 4 are tinted, the other four are white."""
    tracks = (Track("B", ((day(0), True),)),)
    page = progress_page(setter, Growth("Bo", tracks, stages=((day(0), 1), (day(9), 4), (day(40), 2))),
                         ProgressSettings())
    assert [len(blocks_of(page, fill)) for fill in (STRONG, TINT, WHITE)] == [1, 2, 4]


def test_less_help_is_a_lower_bar_and_each_stretch_is_as_long_as_it_lasted(setter: Typesetter) -> None:
    """Full for ten days, noted twice, then light for thirty until the last day: two bars, one in three as wide."""
    support = ((day(0), Support.FULL), (day(4), Support.FULL), (day(10), Support.LIGHT))
    page = progress_page(setter, Growth("Bo", (Track("B", ((day(40), True),)),), support=support), ProgressSettings())
    (full, high), (light, low) = blocks_of(page, STRONG)
    assert light / full == pytest.approx(3, abs=0.05)
    assert high > 2 * low
