"""The suggested next level of support: the stated rule, and what it must never do."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.classbook.growing import formed_lately
from namewright.classbook.looks import looks
from namewright.classbook.records import Observation
from namewright.classbook.stages import Stage, read_stage, stage_said
from namewright.classbook.suggest import suggest
from namewright.message import Problem
from namewright.settings import Support
from namewright.wording import wording

NAME = "Mira"


def note(day: int, letters: int | None, support: Support | None = Support.PARTIAL, name: str = NAME,
         id_: int = 0) -> Observation:
    return Observation(id_ or day, 1, f"2026-09-{day:02d}", name, None if letters is None else tuple(range(letters)),
                       support, None, "", "", "")


@pytest.mark.parametrize(("formed", "expected", "reason"), [
    ((), Support.PARTIAL, "few"), ((4,), Support.PARTIAL, "few"),
    ((4, 4), Support.LIGHT, "lighter"), ((4, 2, 4), Support.LIGHT, "lighter"), ((2, 4, 4), Support.LIGHT, "lighter"),
    ((4, 4, 2, 2), Support.PARTIAL, "stay"),  # the first day is four back
    ((1, 1), Support.FULL, "fuller"), ((4, 1, 0), Support.FULL, "fuller"), ((4, 0, 1), Support.PARTIAL, "rising"),
    ((2, 2), Support.PARTIAL, "stay"),  # half is not fewer than half
    ((1, 4, 1), Support.PARTIAL, "to_and_fro"), ((3, 3, 4), Support.PARTIAL, "one_more"),
])
def test_the_rule(formed: tuple[int, ...], expected: Support, reason: str) -> None:
    """All letters on two of the last three days: lighter; under half on both of the last two: fuller; else stay."""
    made = suggest(Support.PARTIAL, [note(day, count) for day, count in enumerate(formed, 1)], NAME)
    assert (made.support, made.reason.key) == (expected, f"suggest.{reason}")


def test_the_ends_of_the_ladder_stay_and_say_what_else() -> None:
    """There is nothing lighter than none and nothing fuller than full."""
    best = suggest(Support.INDEPENDENT, [note(day, 4, Support.INDEPENDENT) for day in (1, 2)], NAME)
    least = suggest(Support.FULL, [note(day, 0, Support.FULL) for day in (1, 2)], NAME)
    assert (best.support, best.reason.key) == (Support.INDEPENDENT, "suggest.lightest")
    assert (least.support, least.reason.key) == (Support.FULL, "suggest.fullest")


def test_days_at_another_level_or_about_another_name_do_not_count() -> None:
    """What was done with more support says nothing about less, and another name has other letters."""
    others = [note(1, 4, Support.FULL), note(2, 4, Support.FULL), note(3, 3, name="Mir"), note(4, None)]
    assert suggest(Support.PARTIAL, others, NAME).reason.key == "suggest.few"
    assert suggest(Support.PARTIAL, [note(1, 4, None), note(2, 4, None)], NAME).reason.key == "suggest.lighter"


def test_the_notes_of_a_day_add_up() -> None:
    """A second note keeps the letters of the first, a few words hide none, and “not yet” is only where it was said."""
    day = [note(1, 2, id_=1), replace(note(1, 0, id_=2), letters=(3,), not_yet=()), note(1, None, id_=3)]
    (look,) = looks(day)
    assert (look.formed, look.not_yet, look.whole) == ({0, 1, 3}, {2}, False)  # the first note leaves r and a out
    (said,) = looks([replace(note(2, 0), letters=(0,), not_yet=(1,))])
    assert (said.formed, said.not_yet) == ({0}, {1})
    assert looks([note(2, None)]) == ()


def test_a_lighter_level_counts_for_a_heavier_one() -> None:
    """Every letter with less support is as good as with more; fewer letters with less support say nothing here."""
    lighter = [note(1, 4, Support.LIGHT), note(2, 4, Support.INDEPENDENT)]
    assert suggest(Support.PARTIAL, lighter, NAME).support is Support.LIGHT
    failing = [note(1, 0, Support.LIGHT), note(2, 0, Support.LIGHT)]
    assert suggest(Support.PARTIAL, failing, NAME).reason.key == "suggest.few"


def test_a_child_on_the_way_up_stays() -> None:
    """None and then one of three is rising, and not “fewer than half”; one and then none is not."""
    for counts, key in (((0, 1), "rising"), ((1, 1), "fuller"), ((1, 0), "fuller")):
        days = [note(day, count, name="Ana") for day, count in enumerate(counts, 1)]
        assert suggest(Support.PARTIAL, days, "Ana").reason.key == f"suggest.{key}"


def test_a_letter_on_one_of_two_days_is_told_with_both_days() -> None:
    """Bo with B, o and then B alone: o stood on the first and not on the second; so the other way, and both at once."""
    def told(name: str, *days: tuple[int, ...]) -> str:
        notes = [replace(note(day, 0, name=name), letters=letters) for day, letters in enumerate(days, 1)]
        return wording("en").say(suggest(Support.PARTIAL, notes, name).reason)

    fine = "Staying with this level is fine."
    assert told("Bo", (0, 1), (0,)) == f"Your notes show o on 1 Sep, and not yet on 2 Sep. {fine}"
    assert told("Mira", (0, 1), (0, 1, 2)) == f"Your notes show r on 2 Sep, and not yet on 1 Sep. {fine}"
    assert told("Mira", (0, 1), (0, 3)) == f"Your notes show i on 1 Sep, and not yet on 2 Sep. " \
        f"Your notes show a on 2 Sep, and not yet on 1 Sep. {fine}"
    assert "growing" in told("Anna", (0, 1, 2), (0, 1))  # an n stood on both days
    assert "One more day with every letter" in told("Bo", (0,), (0, 1))


def test_days_a_month_apart_are_not_the_last_two_days() -> None:
    """Three weeks apart at the most: a day long before says nothing about now."""
    def on(*days: str) -> list[Observation]:
        return [replace(note(1, 4), id=at, date=day) for at, day in enumerate(days)]

    assert suggest(Support.PARTIAL, on("2026-09-01", "2026-10-02"), NAME).reason.key == "suggest.few"
    assert suggest(Support.PARTIAL, on("2026-09-11", "2026-10-02"), NAME).reason.key == "suggest.lighter"


@given(st.sampled_from(Support), st.lists(st.tuples(st.integers(1, 28), st.integers(0, 4)), max_size=6))
def test_never_more_than_one_step(support: Support, days: list[tuple[int, int]]) -> None:
    """Whatever was noted, the suggestion is a neighbour of today's level or the same, the same each time."""
    notes = [note(day, count, support, id_=at) for at, (day, count) in enumerate(days, 1)]
    made = suggest(support, notes, NAME)
    levels = list(Support)
    assert abs(levels.index(made.support) - levels.index(support)) <= 1
    assert made == suggest(support, list(reversed(notes)), NAME)


@pytest.mark.parametrize(("notes", "letters"), [
    ([], ""), ([note(1, None)], ""), ([note(1, 0)], ""), ([note(1, 2)], "Mi"),
    ([note(1, 4), note(2, 1)], "M"),              # what stood once and stands no more is still to come
    ([note(1, 2), note(2, None)], "Mi"),          # a day without a look says nothing
    ([note(1, 3), note(2, 4, name="Mara")], "Mira"),  # another form of the name: M, r and a stand in the same places
    ([note(1, 3), replace(note(2, 0), letters=(3,), not_yet=())], "Mira"),  # the others were not looked at again
    ([note(1, 3), replace(note(2, 0), letters=(), not_yet=(1,))], "Mr"),
])
def test_letters_that_stand_are_those_of_the_last_look(notes: list[Observation], letters: str) -> None:
    """Of each letter the last day on which something was said of it counts."""
    assert formed_lately(NAME, notes) == frozenset(letters)


def test_a_letter_stands_where_it_stands_in_every_place() -> None:
    """Anna with A, n, n formed: the a is still to come; with the second n missing so is the n."""
    anna = Observation(1, 1, "2026-09-01", "Anna", (0, 1, 2), None, None, "", "", "")
    assert formed_lately("Anna", [anna]) == frozenset("An")
    assert formed_lately("Anna", [replace(anna, letters=(0, 1, 3))]) == frozenset("Aa")


def test_every_stage_has_a_sentence_and_is_read_by_number_and_word() -> None:
    """The ladder is whole, and what is no stage is refused with the list."""
    for stage in Stage:
        assert wording("en").has(stage_said(stage).key)
        assert read_stage(str(stage.value)) is read_stage(stage.word.upper()) is stage
    with pytest.raises(Problem, match="some-letters"):
        read_stage("8")
