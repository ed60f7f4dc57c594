"""A class in order, and the order as table, CSV and JSON. The class is invented."""

from __future__ import annotations

import csv
import io
import json
import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from any_class import ANY_CLASS, CLASS, child
from namewright.output.order_tables import BEAT_POINT, order_csv, order_json, order_table
from namewright.practice.difficulty import Band, written_signs
from namewright.practice.ordering import (
    Order,
    beats_that_do_not_fit,
    collation_key,
    completed,
    order_class,
    own_initial,
)
from namewright.roster.children import Child
from namewright.settings import Support
from namewright.wording import wording


@given(ANY_CLASS, st.sampled_from(Order))
def test_everyone_is_placed_once(children: list[Child], by: Order) -> None:
    """Each child of the class has one place, the places count from one, and asking again changes nothing."""
    placed = order_class(children, by)
    assert sorted(each.child.line for each in placed) == [each.line for each in children]
    here = [each for each in placed if written_signs(each.child.practice)]
    assert [each.position for each in here] == list(range(1, len(here) + 1))
    assert order_class(children, by) == placed


@given(ANY_CLASS)
def test_practice_order_is_what_is_told(children: list[Child]) -> None:
    """Bands never step back, in a band no name stands behind a longer one, and then the load decides."""
    placed = [each for each in order_class(children) if each.band]
    keys = [(list(Band).index(each.band or Band.MIDDLE), each.length, each.difficulty) for each in placed]
    assert keys == sorted(keys)
    assert all(each.difficulty == pytest.approx(each.letter_part + each.workload) for each in placed)


@pytest.mark.parametrize(("before", "after"), [("Max", "Bobby"), ("Lu", "Harper"), ("Isla", "Gianna")])
def test_short_easy_names_come_before_long_ones(before: str, after: str) -> None:
    """A name of the same or an easier band with fewer letters goes first."""
    assert [each.child.practice for each in order_class([child(after), child(before)])] == [before, after]


def test_a_name_that_cannot_be_drawn_has_no_band_no_place_and_no_advice() -> None:
    """It stands last whatever the order, says which characters are lacking, and is counted as not in the order."""
    children = [child("李", 1), child("Bo", 2), child("Mira", 3)]
    for by in Order:
        *placed, last = order_class(children, by)
        assert sorted(each.position for each in placed) == [1, 2]
        assert (last.child.practice, last.position, last.band, last.letters) == ("李", 0, None, ())
        assert last.reason[0]["letters"] == ("李",)
    assert "2 of 3 have a place" in order_table(order_class(children))
    entry = json.loads(order_json(completed(order_class(children))))[-1]
    assert [entry[key] for key in ("position", "band", "difficulty")] == [None, None, None]
    in_a_font = order_class(children, writable=lambda _: True)
    assert all(each.band for each in in_a_font)


@given(ANY_CLASS, st.randoms(use_true_random=False))
def test_practice_order_does_not_hang_on_the_roster(children: list[Child], random: object) -> None:
    """Shuffling the roster leaves the order of the names as it was."""
    shuffled = list(children)
    random.shuffle(shuffled)  # type: ignore[attr-defined]
    names = [each.child.practice for each in order_class(children)]
    assert [each.child.practice for each in order_class(shuffled)] == names


def test_equal_names_stand_as_in_the_roster() -> None:
    """Two children whom nothing tells apart keep the roster's order."""
    twins = [child("Mira", 5), child("Mira", 2)]
    assert [each.child.line for each in order_class(twins)] == [5, 2]


def test_roster_order_is_the_roster() -> None:
    """ROSTER keeps the order given."""
    assert tuple(each.child for each in order_class(CLASS, Order.ROSTER)) == CLASS


def test_name_order_looks_at_base_letters_first() -> None:
    """Accented names stand with their base letters, after the plain one, ł with l."""
    names = [each.child.practice for each in order_class(CLASS, Order.NAME)]
    assert names == ["Alexandrine", "Bob", "Dod", "Etol", "Étol", "Jean-Tov", "Łuva", "Mira", "Zuzelka"]


def test_name_order_looks_at_marks_before_capitals() -> None:
    """Names with the same base letters stand by their marks, whatever their case."""
    names = [each.child.practice for each in order_class([child("etöl"), child("Étol")], Order.NAME)]
    assert names == ["Étol", "etöl"]


def test_name_order_does_not_hang_on_the_spelling_of_a_mark() -> None:
    """A composed and a decomposed é sort alike up to the text itself."""
    assert collation_key(child("Étol"))[:2] == collation_key(child("E\u0301tol"))[:2]


def test_own_initial_is_that_of_the_first_name() -> None:
    """Where the family name alone is practised, the first name still gives the own initial."""
    assert own_initial(child("Solum", given="Mira", family="Solum")) == "M"
    assert own_initial(child("Mira Solum", given="Mira", family="Solum")) == "M"
    assert own_initial(child("’Ana")) == "A"
    family = order_class([child("Solum", given="Mira", family="Solum")])[0]
    assert "reason.own_letter" not in [told.key for told in family.reason]


def test_letters_are_letter_and_band() -> None:
    """Luca: L is the own initial, c and a are easier, u is harder."""
    placed = order_class([child("Luca")])[0]
    assert placed.letters == (("L", Band.EASIER), ("c", Band.EASIER), ("a", Band.EASIER), ("u", Band.HARDER))


@given(ANY_CLASS)
def test_a_reason_is_whole_sentences_without_a_pronoun(children: list[Child]) -> None:
    """A reason names the child, has one full stop to a sentence, and does not guess at a boy or a girl."""
    for each in order_class(children):
        said = wording("en").text(*each.reason)
        assert each.child.label in said
        assert said.endswith(".")
        assert said.count(".") == len(each.reason)
        assert not re.search(r"\b(he|she|his|her|him|hers)\b", said.replace(each.child.label, ""))


def test_a_reason_says_what_is_true_of_the_name() -> None:
    """The first to start has the count of letters, the own initial, and the harder letters for last."""
    said = {name: wording("en").text(*order_class([child(name)])[0].reason) for name in ("Mira", "Suko", "-")}
    assert said["Mira"] == ("Mira comes first, with 4 letters to write. M is the child’s own first letter, so begin "
                            "there. Then a can follow soon.")
    assert "Leave u and k for last" in said["Suko"].replace("k and u", "u and k")
    assert "look at this name" in said["-"]


BANDS = "|".join(wording("en").listed([band]) for band in Band)


def test_need_goes_from_most_support_to_least_and_then_from_hard_to_easy() -> None:
    """A level of support the teacher chose goes before any figure; one not stated counts as the class's."""
    children = [child("Mira", 1), child("Bo", 2), child("Alexandrine", 3), child("Christofon", 4)]
    children[1] = children[1]._replace(support=Support.FULL)
    children[2] = children[2]._replace(support=Support.INDEPENDENT)
    names = [each.child.practice for each in order_class(children, Order.NEED, Support.PARTIAL)]
    assert names == ["Bo", "Christofon", "Mira", "Alexandrine"]


def test_family_order_goes_by_the_own_initial() -> None:
    """Straight, round, down and round, slanting: by the own initial, marks aside, then as in PRACTICE."""
    names = [each.child.practice for each in order_class(
        [child(name) for name in ("Vito", "Bo", "Óla", "Lia", "Osk", "’", "Ila")], Order.FAMILY)]
    assert names == ["Ila", "Lia", "Óla", "Osk", "Bo", "Vito", "’"]


def test_groups_hang_on_the_roster_and_not_on_the_order_asked_for() -> None:
    """Whatever the order of the list, a child is in the same group."""
    found = [{each.child.line: each.group for each in completed(order_class(CLASS, by))} for by in Order]
    assert all(each == found[0] for each in found)


def test_groups_of_last_time_are_kept_by_label() -> None:
    """Given last time's groups, the same class gets the same groups, and a label that is gone is no matter."""
    names = ("Mira", "Rami", "Bob", "Dod", "Lia", "Ilai", "Zuzel")
    placed = order_class([child(name, line) for line, name in enumerate(names, start=1)])
    before = {"Mira": 7, "Bob": 7, "Zuzel": 7, "Rami": 2, "Dod": 2, "Lia": 2, "Ilai": 2, "Gone": 3}
    after = {each.child.label: each.group for each in completed(placed, before=before)}
    assert after == {label: before[label] for label in names}


@given(ANY_CLASS, st.lists(st.integers(-1, 4), min_size=12, max_size=12))
def test_every_child_has_a_group_whatever_was_said_of_last_time(children: list[Child], numbers: list[int]) -> None:
    """Numbers below one say nothing; groups are numbered from one, and no child is without."""
    before = {each.label: number for each, number in zip(children, numbers, strict=False)}
    placed = completed(order_class(children), before=before)
    assert [each.child for each in placed] == [each.child for each in order_class(children)]
    assert all(each.group >= 1 for each in placed)


def test_beats_are_the_teachers_where_given() -> None:
    """A correction that joins to the name wins and is known; one of another name is passed over."""
    children = [child("Mirabo", 1, beats="Mir-a-bo"), child("Dod", 2, beats="Bo-a"), child("Bo", 3)]
    own, other, _ = completed(order_class(children, Order.ROSTER))
    assert (own.beats, own.beats_known) == (("Mir", "a", "bo"), True)
    assert "".join(other.beats) == "Dod"
    assert [each.practice for each, _ in beats_that_do_not_fit(children)] == ["Dod"]


def test_a_name_without_letters_has_itself_for_beats() -> None:
    """Nothing to clap is no error, and is not called known."""
    only = completed(order_class([child("-")]))[0]
    assert ("".join(only.beats), only.beats_known, only.group) == ("-", False, 1)


ODD = st.text("AaÉéDdJoẸ̀bñłß’'ʻ‘·- ‑.3李я", min_size=1, max_size=12).filter(
    lambda name: name.strip() and not name.startswith("'"))  # in CSV one apostrophe in front is ours
FIELDS = {"name", "difficulty", "length", "band", "letters", "beats", "beats_known", "group", "reason"}


@given(st.lists(ODD, min_size=1, max_size=6), st.sampled_from(["en", "es", "pl", "haw", "xx"]))
def test_any_name_is_written_out_whole(names: list[str], language: str) -> None:
    """Every object has the fields promised; its beats join to the name; its letters are the name's, each once."""
    placed = completed(order_class([child(unicodedata.normalize("NFC", name), line)
                                    for line, name in enumerate(names, start=1)]), language)
    rows = list(csv.DictReader(io.StringIO(order_csv(placed), newline="")))
    for entry, row in zip(json.loads(order_json(placed)), rows, strict=True):
        assert set(entry) >= FIELDS
        assert "".join(entry["beats"]) == entry["name"] == row["beats"].replace(BEAT_POINT, "").removeprefix("'")
        letters = [each["letter"] for each in entry["letters"]]
        assert sorted(letters) == (sorted(set(written_signs(entry["name"]))) if entry["band"] else [])
        assert entry["length"] == len(written_signs(entry["name"]))
        assert row["letters"].removeprefix("'").split() == letters
        assert all(set(each) == {"letter", "band", "watch"} for each in entry["letters"])


def test_beats_written_as_csv_are_read_again_as_the_teachers() -> None:
    """A name with a point of its own comes back, too: the column can be mended and used as a list."""
    placed = completed(order_class([child("Gal·la", 1), child("Ana Rosa", 2)]))
    rows = list(csv.DictReader(io.StringIO(order_csv(placed), newline="")))
    again = completed(order_class([child(row["name"], at, beats=row["beats"]) for at, row in enumerate(rows, 1)]))
    assert [each.beats for each in again] == [each.beats for each in placed]
    assert all(each.beats_known for each in again)
