"""What stands on one line of a page has room there in every language, on the narrowest paper there is."""

from __future__ import annotations

from datetime import date

import pytest

from namewright.pages.blocks import CHECK_BAR_MM, CHECK_NOTE_MM, TEXT_MM
from namewright.pages.growth import day_said
from namewright.pages.ladder import Part
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.wording import languages, wording

ROOM = min(sheet_of(paper, binding=True).room_width for paper in Paper)
GUTTER_MM = 11.0  # left of the captions of a sheet
ON_A_SHEET = ("model_plain", "copy_beside", "copy_under", *(part for part in Part if part is not Part.COPY))
MONTH_MM = 14.0  # of a year's page: twelve names side by side on the narrowest
LINES = (
    *((f"page.{key}", TEXT_MM, ROOM - GUTTER_MM) for key in ON_A_SHEET),
    ("page.fold", CHECK_NOTE_MM, ROOM - GUTTER_MM - CHECK_BAR_MM - 3.0),
    ("page.check", CHECK_NOTE_MM, ROOM - GUTTER_MM - CHECK_BAR_MM - 3.0),
    ("page.sizes.try", TEXT_MM, ROOM),
    ("page.group.names", TEXT_MM, ROOM),
    ("page.progress.help", 2.1, ROOM), ("page.progress.steps", 2.1, ROOM),
    ("page.progress.foot", 1.6, ROOM),
    ("page.progress.first_seen", 1.6, 24.0), ("page.progress.class_title", 2.4, ROOM),
    *((f"month.{month}", 1.6, MONTH_MM) for month in range(1, 13)),
)


@pytest.mark.parametrize("language", languages())
def test_a_line_has_room(setter: Typesetter, language: str) -> None:
    """Each caption of one line is narrower than the place it stands in."""
    words = wording(language)
    wide = {key: round(width, 1) for key, size, room in LINES
            if (width := setter.text_width(words.say(key), size)) > room}
    assert wide == {}


@pytest.mark.parametrize("language", languages())
def test_the_last_day_has_room_beside_the_steps(setter: Typesetter, language: str) -> None:
    """On the class's year a day stands in a column of 25 mm."""
    words = wording(language)
    for month in range(1, 13):
        said = words.say("page.progress.class_last", date=day_said(date(2026, month, 28)))
        assert setter.text_width(said, 1.5) <= 25.0, said


@pytest.mark.parametrize("language", languages())
def test_the_key_of_a_year_has_room_beside_its_heading(setter: Typesetter, language: str) -> None:
    """Two marks and what they mean stand at the right of the heading."""
    words = wording(language)
    key = sum(setter.text_width(words.say(f"page.progress.{each}"), 1.6) + 9.5 for each in ("formed", "not_yet"))
    assert setter.text_width(words.say("page.progress.letters"), 2.1) + 5.0 + key <= ROOM
