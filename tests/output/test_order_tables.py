"""An order written down: a table in columns, CSV that holds no formula, JSON. All names are invented."""

from __future__ import annotations

import csv
import io
import json
import re

import pytest

from any_class import CLASS, child
from namewright.output.order_tables import BEAT_POINT, order_csv, order_json, order_table
from namewright.practice.difficulty import Band
from namewright.practice.ordering import Order, Placed, completed, order_class
from namewright.wording import wording

BANDS = "|".join(wording("en").listed([band]) for band in Band)


def test_table_is_in_columns_and_owns_up_to_its_rules() -> None:
    """Each column starts at one place in every row, and the notes tell findings from rules of ours."""
    table = order_table(order_class(CLASS))
    header, *rows = table.splitlines()[: len(CLASS) + 1]
    at = header.index("band")
    assert all(re.match(rf"({BANDS}) ", row[at:]) and row[at - 2: at] == "  " for row in rows)
    assert all(wording("en").say(f"order.note.{note}") in table for note in ("rule", "bands", "borrowed"))
    assert "a rule of ours and not a finding" in table
    assert "says little about writing them (Puranik et al. 2014, abstract)" in table
    assert "second hand" in table


def test_table_counts_wide_and_combining_characters_as_they_show() -> None:
    """A letter with a loose mark takes one column, a full-width letter two."""
    names = [child("Q\u0302ol"), child("Ｑo"), child("Abe")]
    rows = order_table(order_class(names, writable=lambda _: True)).splitlines()[1:4]
    shown = [row.replace("\u0302", "").replace("Ｑ", "QQ") for row in rows]
    assert len(rows) == 3
    assert len({re.search(BANDS, row).start() for row in shown}) == 1  # type: ignore[union-attr]


def test_csv_reads_back() -> None:
    """The csv module of the standard library reads back every child, in order, numbers as numbers."""
    placed = completed(order_class(CLASS))
    rows = list(csv.DictReader(io.StringIO(order_csv(placed), newline="")))
    assert [row["name"] for row in rows] == [each.child.practice for each in placed]
    assert [float(row["difficulty"]) for row in rows] == [each.difficulty for each in placed]
    assert [int(row["place"]) for row in rows] == list(range(1, len(CLASS) + 1))
    assert all(row["reason"] == wording("en").text(*each.reason) for row, each in zip(rows, placed, strict=True))
    objects = json.loads(order_json(placed))
    for row, entry in zip(rows, objects, strict=True):
        assert row["beats"].split(BEAT_POINT) == entry["beats"]
        assert row["beats_known"] == str(entry["beats_known"]).lower()
        assert row["group"] == str(entry["group"])
        assert row["watch"].split() == [each["letter"] for each in entry["letters"] if each["watch"]]
        assert row["bands"].split() == [each["band"] for each in entry["letters"]]


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "＝"])
def test_csv_holds_no_formula(start: str) -> None:
    """No text cell starts as a formula would (OWASP, "CSV Injection"), whatever was typed as a name."""
    text = order_csv(completed(order_class([child(f"{start}SUM(A1)")])))
    row = next(csv.DictReader(io.StringIO(text, newline="")))
    assert row["name"] == f"'{start}SUM(A1)"
    numbers = ("place", "length", "difficulty", "group")
    assert not any(cell.startswith(start) for column, cell in row.items() if column not in numbers)


def test_json_says_the_same_as_the_order() -> None:
    """One object a child, in order, with every letter's band and whether to watch it."""
    placed = completed(order_class(CLASS))
    objects = json.loads(order_json(placed))
    assert [each["name"] for each in objects] == [each.child.practice for each in placed]
    for entry, each in zip(objects, placed, strict=True):
        assert entry["difficulty"] == each.difficulty
        assert (entry["length"], entry["band"], entry["reason"]) == (
            each.length, each.band, wording("en").text(*each.reason))
        assert [(letter["letter"], letter["band"]) for letter in entry["letters"]] == list(each.letters)
        assert {letter["letter"] for letter in entry["letters"] if letter["watch"]} == set("Jdjg") & set(
            each.child.practice)
        assert "".join(entry["beats"]) == entry["name"]
        assert isinstance(entry["beats_known"], bool)
        assert entry["group"] >= 1
        assert each.child.label in entry["to_parent"]


def test_an_empty_class_is_written_too() -> None:
    """No children: an empty order, a header, and an empty list."""
    assert order_class([]) == ()
    assert json.loads(order_json(())) == []
    assert order_csv(()).count("\n") == 1
    assert order_table(()).startswith("place")


NAMES = ("Bo", "Zoë", "Ava", "Noor", "Mira", "Íñigo", "Christopherson", "Ẹ̀bun", "Mary-Kate", "deShawn", "Łucja", "AJ")


def placed_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE) -> tuple[Placed, ...]:
    return completed(order_class([child(name, line) for line, name in enumerate(names, start=1)], order))


def test_a_group_is_in_the_csv_as_well() -> None:
    """The group of each child can be sorted by in a spreadsheet."""
    rows = list(csv.DictReader(io.StringIO(order_csv(placed_of(NAMES)), newline="")))
    groups = {int(row["group"]) for row in rows}
    assert groups == set(range(1, len(groups) + 1))
    assert 3 <= len(groups) <= 4
