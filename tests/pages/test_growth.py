"""What a page of progress says of a child: the days, the letters that stand, and no comparison."""

from __future__ import annotations

from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from namewright.pages.growth import Growth, Track, summary
from namewright.settings import Support

DAY = st.dates(date(2026, 1, 1), date(2026, 12, 31))
TRACK = st.builds(Track, st.sampled_from("Mira"), st.lists(st.tuples(DAY, st.booleans()), max_size=6).map(
    lambda days: tuple(sorted(dict(days).items()))))
GROWTHS = st.builds(Growth, st.just("Mira"), st.lists(TRACK, max_size=5).map(tuple),
                    st.lists(st.tuples(DAY, st.sampled_from(Support)), max_size=4).map(tuple),
                    st.lists(st.tuples(DAY, st.integers(1, 7)), max_size=4).map(tuple))


def day(number: int) -> date:
    return date(2026, 3, number)


def test_a_letter_is_first_seen_on_the_first_day_it_was_formed() -> None:
    """A day on which it was not is no first day, and one that was lost again is not forgotten."""
    assert Track("M", ((day(1), False), (day(2), True), (day(3), False), (day(4), True))).first == day(2)
    assert Track("M", ((day(1), False),)).first is None
    assert Track("M").first is None


def test_letters_are_told_in_the_order_they_came_else_as_in_the_name() -> None:
    tracks = (Track("M", ((day(5), True),)), Track("i", ((day(2), True),)), Track("r"), Track("a", ((day(2), True),)))
    assert [track.letter for track in Growth("Mira", tracks).formed] == ["i", "a", "M"]


@given(GROWTHS)
def test_every_day_is_there_once_and_in_order(growth: Growth) -> None:
    """Whatever was noted on it: letters, help or a step."""
    noted = ({when for track in growth.tracks for when, _ in track.days} | {when for when, _ in growth.support}
             | {when for when, _ in growth.stages})
    assert growth.days == tuple(sorted(noted))


@given(GROWTHS)
def test_what_is_formed_was_formed_on_a_day(growth: Growth) -> None:
    assert {id(track) for track in growth.formed} == {
        id(track) for track in growth.tracks if track.days and track.days[-1][1]}
    firsts = [track.since for track in growth.formed]
    assert firsts == sorted(firsts)  # type: ignore[type-var]


def test_a_letter_stands_since_it_was_last_lost() -> None:
    """“Every letter since September” is not said where November showed one: the last run of days counts."""
    track = Track("M", ((day(1), True), (day(2), False), (day(3), True), (day(4), True)))
    assert (track.first, track.since, track.stands) == (day(1), day(3), True)
    lost = Track("i", ((day(1), True), (day(4), False)))
    assert (lost.first, lost.since, lost.stands) == (day(1), None, False)
    assert summary(Growth("Mi", (track, lost))).key == "page.progress.first_letter"
