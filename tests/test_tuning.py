"""Settings for motor and vision needs as they are typed: read within their range, laid one over another."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.tuning import KNOBS, Knob, Tuning, knob, read_setting, tuning_from, tuning_of


def test_every_field_of_the_settings_has_its_knob() -> None:
    """What can be set can be asked for, and nothing else."""
    assert list(Tuning._fields) == [one.key for one in KNOBS]


@pytest.mark.parametrize("one", [one for one in KNOBS if one.kind != "switch"], ids=lambda one: one.key)
def test_a_range_holds_its_ends_and_nothing_beyond(one: Knob) -> None:
    assert read_setting(one.key, str(one.least)) == pytest.approx(one.least)
    assert read_setting(one.key, str(one.greatest)) == pytest.approx(one.greatest)
    for beyond in (one.greatest + 0.6, one.least - 0.6):
        with pytest.raises(ValueError, match=r"."):
            read_setting(one.key, str(beyond))


@pytest.mark.parametrize(("key", "text", "value"), [
    ("letter_spacing", "2mm", 2.0), ("letter_spacing", "1/4 in", 6.35), ("midline", "0,5", 0.5), ("rows", "3", 3),
    ("bold_baseline", "on", True), ("bold_baseline", "Sí", True), ("bold_baseline", "no", False), ("rows", "  ", None),
    ("unlined", "", None)])
def test_a_setting_is_read(key: str, text: str, value: object) -> None:
    """A length may have its unit, a decimal its comma; a switch says yes or no; nothing is as the class has it."""
    found = read_setting(key, text)
    assert found == value
    assert type(found) is type(value)


@pytest.mark.parametrize(("key", "text"), [
    ("bold_baseline", "perhaps"), ("rows", "many"), ("dot_size", "large"), ("midline", "nan"), ("midline", "inf"),
    ("line_height", "-20")])
def test_what_cannot_be_set_is_refused(key: str, text: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        read_setting(key, text)


def test_a_setting_that_there_is_not_is_refused() -> None:
    with pytest.raises(ValueError, match=r"."):
        knob("loudness")
    with pytest.raises(ValueError, match=r"."):
        tuning_from({"loudness": "3"})


_VALUES = {"switch": st.booleans(), "count": st.integers(1, 12)}
TUNINGS = st.builds(Tuning, **{each.key: st.none() | _VALUES.get(each.kind, st.floats(0.3, 80.0)) for each in KNOBS})


@given(TUNINGS, TUNINGS, TUNINGS)
def test_laying_over_goes_setting_by_setting(child: Tuning, group: Tuning, everyone: Tuning) -> None:
    """The upper one's word holds where it has one; nothing laid over is the same; three may be laid in either order."""
    for key in Tuning._fields:
        mine, other = getattr(child, key), getattr(group, key)
        assert getattr(child.over(group), key) == (other if mine is None else mine)
    assert child.over(Tuning()) == Tuning().over(child) == child
    assert child.over(group).over(everyone) == child.over(group.over(everyone))


def test_the_knobs_among_the_settings_become_a_tuning() -> None:
    """Whatever else is set is left aside."""
    settings = {"rows": "3", "unlined": "on", "letters": "slant=8", "hand": "left"}
    assert tuning_of(settings) == Tuning(rows=3, unlined=True)
