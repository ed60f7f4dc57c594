"""What may be changed: every setting once for a child and once for everyone, five of each to be seen."""

from __future__ import annotations

import pytest

from namewright.classbook.keys import CHILD_KEYS
from namewright.message import message
from namewright.tuning import KNOBS
from namewright.web.panel import OF_CHILD, OF_CLASS, Group, for_child, for_everyone, range_of, rests_at
from namewright.web.settings_in_forms import ORDER, PAGE_KEYS


@pytest.mark.parametrize(("groups", "keys"), [
    (OF_CHILD, set(CHILD_KEYS)), (OF_CLASS, {*PAGE_KEYS, ORDER} - {"line_height"})])  # one control says the lines
def test_every_setting_has_one_place(groups: tuple[Group, ...], keys: set[str]) -> None:
    placed = [key for group in groups for key in (*group.seen, *group.folded)]
    assert len(placed) == len(set(placed))
    assert set(placed) == keys
    assert sum(len(group.seen) for group in groups) == 5


def test_an_empty_field_shows_what_holds() -> None:
    """For a child what everyone has, with its unit; for everyone what the chosen lines have."""
    settings = {"ruling": "de-5", "letter_spacing": "2.5", "line_height": "30"}
    mm = message("setting.unit.mm")
    own, everyone = for_child(settings), for_everyone(settings)
    assert rests_at(own["letter_spacing"]) == message("web.desk.amount", value=2.5, unit=mm)
    assert rests_at(own["line_height"]) == message("web.desk.amount", value=30.0, unit=mm)
    assert rests_at(everyone["line_height"]) == message("web.desk.amount", value=10.0, unit=mm)
    assert rests_at(everyone["model_pen"]) == message("web.desk.usual")
    assert rests_at(own["midline"]) == message("web.desk.plain", value=0.5)


def test_an_empty_line_height_shows_what_the_list_says() -> None:
    """A specialist who opens a child sees the height that its pages have, not that of the class."""
    mm = message("setting.unit.mm")
    own = for_child({"ruling": "us-3/4"}, 30.0)
    assert rests_at(own["line_height"]) == message("web.desk.amount", value=30.0, unit=mm)
    assert rests_at(own["letter_spacing"]) == rests_at(for_child({"ruling": "us-3/4"})["letter_spacing"])


def test_every_measure_tells_its_range() -> None:
    for knob in KNOBS:
        assert range_of(for_child({})[knob.key]) == message(
            "web.desk.range", least=knob.least, most=knob.greatest, unit=message(f"setting.unit.{knob.unit}"))
