"""Settings on trial: a child as if they were set, and how a form shows each measure. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.records import BookChild
from namewright.lines.ruling import custom_ruling
from namewright.pages.sheet_settings import SheetSettings
from namewright.roster.children import Child
from namewright.settings import Hand, Support
from namewright.tuning import KNOBS, Tuning
from namewright.web.trial import control, tried

KNOB = {knob.key: knob for knob in KNOBS}


def child(settings: dict[str, str], **more: object) -> BookChild:
    mira = Child("Mira", "Mira", "Mira", "Quill", 1, **more)  # type: ignore[arg-type]
    return BookChild(1, mira, Tuning(), settings, "2026-09-01T08:00:00")


def test_what_is_tried_is_as_if_it_were_set() -> None:
    """Level, hand, measures and the part of the name; empty text is not set."""
    one = tried(child({}), {"support": "light", "hand": "left", "line_height": "22", "practise": "both", "rows": " "})
    assert (one.child.support, one.child.hand, one.child.practice) == (Support.LIGHT, Hand.LEFT, "Mira Quill")
    assert (one.own.line_height, one.child.line_height_mm, one.own.rows) == (22.0, 22.0, None)
    assert "rows" not in one.settings


def test_what_was_set_and_is_tried_away_falls_back() -> None:
    """A level that was set is gone, one that the list says stays; so with the line height."""
    was_set = tried(child({"support": "light"}, support=Support.LIGHT), {})
    in_list = tried(child({}, support=Support.LIGHT, hand=Hand.LEFT), {})
    assert (was_set.child.support, in_list.child.support, in_list.child.hand) == (None, Support.LIGHT, Hand.LEFT)
    listed = BookChild(1, child({}).child, Tuning(line_height=24.0), {}, "2026-09-01T08:00:00")
    assert tried(listed, {"rows": "2"}).own.line_height == 24.0


@pytest.mark.parametrize(("key", "step"), [("rows", 1.0), ("midline", 0.05), ("line_height", 0.5), ("model_pen", 0.1)])
def test_a_slider_moves_by_what_can_be_seen(key: str, step: float) -> None:
    """Whole rows, a twentieth of a share, half a millimetre of a line, a tenth of a pen."""
    assert control(KNOB[key], SheetSettings(custom_ruling(20.0)), Tuning()).step == step


def test_a_slider_rests_where_the_class_has_it() -> None:
    """Its own measure, else that of the ruling; where neither is known there is none."""
    everyone = SheetSettings(custom_ruling(20.0, midline=0.6, gap_mm=3.0))
    assert control(KNOB["line_height"], everyone, Tuning()).rest == 20.0
    assert control(KNOB["midline"], everyone, Tuning()).rest == pytest.approx(0.6)
    assert control(KNOB["row_gap"], everyone, Tuning()).rest == 3.0
    assert control(KNOB["letter_spacing"], everyone, Tuning(letter_spacing=2.5)).rest == 2.5
    assert control(KNOB["model_pen"], everyone, Tuning()).rest is None
