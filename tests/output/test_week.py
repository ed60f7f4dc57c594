"""A timetable for another program and for a spreadsheet, read back by the standard library."""

from __future__ import annotations

import csv
import io
import json

from namewright.message import Message
from namewright.output.week import DAYS, plan_csv, plan_json
from namewright.practice.ordering import Order, completed, order_class
from namewright.practice.timetable import Lookout, timetable
from namewright.roster.children import Child
from namewright.settings import Support

CHILDREN = [Child("Bo", "Bo", "Bo", "", 1), Child("Ada", "Ada =1", "Ada", "", 2, support=Support.LIGHT),
            Child("Tal", "Tal", "Tal", "", 4)]
PLAN = timetable(completed(order_class(CHILDREN, Order.ROSTER)), Lookout(formed={1: frozenset("o")}))
NUMBERS, IDS = {1: (1, 2), 4: (5,)}, {1: 11, 4: 14}


def say(told: Message) -> str:
    return f"says {told.key}"


def test_json_has_every_part_of_the_plan() -> None:
    """Children by their labels; pages and ids where they are known; a reason in words; nothing escaped."""
    found = json.loads(plan_json(PLAN, NUMBERS, IDS, say))
    assert list(found) == ["weeks", "days", "groups", "children"]
    bo, ada, tal = found["children"]
    assert (bo["id"], bo["line"], bo["name"], bo["formed"], bo["support"]) == (11, 1, "Bo", ["o"], "full")
    assert (ada["id"], ada["name"], ada["support"]) == (None, "Ada =1", "light")
    assert tal["letters"] == list("Tal") or sorted(tal["letters"]) == sorted("Tal")
    assert all(child["reason"].startswith("says practice.") for child in found["children"])
    assert [day["day"] for day in found["days"]] == list(DAYS[:len(found["days"])])
    pages = {name: page for day in found["days"] for name in day["with"] for page in [day["pages"]]}
    assert pages["Tal"] == [5] or 5 in pages["Tal"]
    assert sorted(name for day in found["days"] for name in day["with"]) == ["Ada =1", "Bo", "Tal"]
    assert [week["week"] for week in found["weeks"]] == list(range(1, len(found["weeks"]) + 1))


def test_csv_has_a_row_a_child_and_day() -> None:
    """Under a header; minutes by the level of help (6 and 4); pages and letters with spaces between."""
    rows = {row["name"]: row for row in csv.DictReader(io.StringIO(plan_csv(PLAN, NUMBERS, IDS, say), newline=""))}
    assert set(rows) == {"Bo", "Ada =1", "Tal"}
    assert [rows["Bo"][column] for column in ("pages", "id", "minutes", "formed")] == ["1 2", "11", "6", "o"]
    assert (rows["Ada =1"]["pages"], rows["Ada =1"]["id"], rows["Ada =1"]["minutes"]) == ("", "", "4")
    assert rows["Bo"]["day"] in DAYS
    assert rows["Bo"]["letters"].split() in (["B", "o"], ["o", "B"])


def test_minutes_are_those_of_one_child() -> None:
    """Where two children share a day, a row has not the minutes of both."""
    names = ("Bo", "Ada", "Tal", "Nan", "Wren", "Zik", "Otto")
    many = [Child(name, name, name, "", line) for line, name in enumerate(names, 1)]
    plan = timetable(completed(order_class(many)), Lookout())
    assert max(day.minutes for day in plan.days) == 12
    rows = csv.DictReader(io.StringIO(plan_csv(plan, {}, {}, say), newline=""))
    assert {row["minutes"] for row in rows} == {"6"}


def test_within_a_day_children_come_as_their_sheets_lie() -> None:
    """Pages against the order of the plan: each day runs from the first page to the last, whoever has none behind."""
    names = [f"{first}{rest}" for first in "BKLMN" for rest in ("ari", "ora", "ido")]
    many = [Child(name, name, name, "", line) for line, name in enumerate(names, 1)]
    plan = timetable(completed(order_class(many)), Lookout())
    numbers = {line: (40 - 2 * line, 41 - 2 * line) for line in range(2, len(names) + 1)}
    days = json.loads(plan_json(plan, numbers, {}, say))["days"]
    assert all(day["pages"] == sorted(day["pages"]) for day in days)
    assert [day["with"][-1] for day in days if "Bari" in day["with"]] == ["Bari"]
    assert [sorted(day["with"]) for day in days] \
        == [sorted(plan.children[at].placed.child.label for at in day.children) for day in plan.days]
    rows = csv.DictReader(io.StringIO(plan_csv(plan, numbers, {}, say), newline=""))
    assert [row["name"] for row in rows] == [name for day in days for name in day["with"]]


def test_no_cell_is_a_formula() -> None:
    """A label that begins as one is quoted (OWASP, CSV Injection)."""
    child = Child("Bo", "=Bo", "Bo", "", 1)
    plan = timetable(completed(order_class([child])), Lookout())
    assert next(csv.DictReader(io.StringIO(plan_csv(plan, {}, {}, say), newline="")))["name"] == "'=Bo"
