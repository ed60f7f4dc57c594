"""A week without a contradiction, read from the JSON as another program would, for twenty classes from open data.

First names are the half of the 1990 census names that no rule was tuned on (``tests/data``, where the source stands),
drawn by how common they are, with a fixed seed. Which letters look alike is read from the published ratings
(Simpson et al. 2013, as transcribed in ``test_practice_sources``), not from the package.
"""

from __future__ import annotations

import contextlib
import io
import json
import random
from itertools import pairwise, product
from pathlib import Path
from typing import Any

import pytest
from test_practice_sources import SIMPSON_CAPITALS, SIMPSON_SINGLE_STOREY_A, SIMPSON_SMALL, pairs

from namewright.cli import main

DATA = Path(__file__).parent.parent / "data" / "first-names-held-out.tsv"
ROWS = [line.split("\t") for line in DATA.read_text("utf-8").splitlines() if not line.startswith("#")]
ALIKE = {pair for pair, rating in pairs(SIMPSON_CAPITALS).items() if rating >= 5.0} \
    | {pair for pair, rating in (pairs(SIMPSON_SMALL) | pairs(SIMPSON_SINGLE_STOREY_A)).items() if rating >= 5.0}
LEVELS = ("full", "partial", "light", "independent")


def roster_of(seed: int, path: Path) -> int:
    """Write a class of 12 to 30 children, each with a level of support or none, and return how many there are."""
    rng = random.Random(seed)
    count = rng.randint(12, 30)
    names: dict[str, None] = {}
    while len(names) < count:
        names[rng.choices(ROWS, [float(row[1]) for row in ROWS])[0][0].capitalize()] = None
    lines = ["name,support", *(f"{name},{rng.choice((*LEVELS, ''))}" for name in names)]
    path.write_text("\n".join(lines), encoding="utf-8")
    return count


def planned(*words: str) -> dict[str, Any]:
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        assert main(["plan", *words, "--format", "json"]) == 0
    return json.loads(out.getvalue())  # type: ignore[no-any-return]


def signs(letters: list[str]) -> set[str]:
    return {letter.lower() for letter in letters}


@pytest.mark.parametrize("seed", range(20))
def test_a_week_has_no_contradiction(seed: int, tmp_path: Path) -> None:
    """Everyone has a day and a table, tables are even, Monday has Monday's letter, look-alikes stand apart."""
    roster = tmp_path / "class.csv"
    count, tables, pace = roster_of(seed, roster), 3 + seed % 4, 1 + seed % 3
    plan = planned(str(roster), "--groups", str(tables), "--letters-per-week", str(pace))
    assert set(plan) == {"weeks", "days", "groups", "children"}
    children = {child["name"]: child for child in plan["children"]}
    assert len(children) == count

    assert sorted(name for day in plan["days"] for name in day["with"]) == sorted(children)
    assert sorted(name for group in plan["groups"] for name in group["names"]) == sorted(children)
    sizes = [len(group["names"]) for group in plan["groups"]]
    assert (len(sizes), max(sizes) - min(sizes)) == (tables, max(sizes) - min(sizes))
    assert max(sizes) - min(sizes) <= 1

    monday, first_week = plan["days"][0], plan["weeks"][0]
    assert monday["day"] == "Monday"
    assert monday["letters"][0] in first_week["letters"]
    for name in monday["with"]:
        assert signs(children[name]["next"]) & set(first_week["letters"])
        assert set(first_week["letters"]) & set(name.lower())
    for day in plan["days"]:
        assert set(day["letters"]) == {letter for name in day["with"] for letter in signs(children[name]["next"])}
        assert day["minutes"] > 0

    weeks = [week["letters"] for week in plan["weeks"]]
    assert all(1 <= len(letters) <= pace for letters in weeks)
    for one, other in [*pairwise(weeks), *((letters, letters) for letters in weeks)]:
        assert not [pair for pair in product(one, other)
                    if {frozenset(pair), frozenset(letter.upper() for letter in pair)} & ALIKE]
    met: set[str] = set()
    for week in plan["weeks"]:
        met |= set(week["letters"])
        assert all(set(name.lower()) <= met for name in week["completes"])

    pages = [page for day in plan["days"] for page in day["pages"]]
    assert sorted(pages) == list(range(1, len(pages) + 1))
    for child in plan["children"]:
        assert set(child) == {"id", "line", "name", "letters", "formed", "next", "support", "reason"}
        assert not set(child["next"]) & set(child["formed"])
        assert set(child["next"]) <= set(child["letters"])
        assert child["support"] in LEVELS
        assert child["name"] in child["reason"]


def test_csv_has_one_row_a_child_and_day(tmp_path: Path) -> None:
    """The csv module reads back the days of the JSON, row by row."""
    import csv

    roster = tmp_path / "class.csv"
    roster_of(3, roster)
    plan = planned(str(roster))
    assert main(["plan", str(roster), "--format", "csv", "-o", str(tmp_path / "plan.csv")]) == 0
    with (tmp_path / "plan.csv").open(newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert [(row["day"], row["name"]) for row in rows] == [(day["day"], name) for day in plan["days"]
                                                           for name in day["with"]]
    by_name = {child["name"]: child for child in plan["children"]}
    assert all(row["next"].split() == by_name[row["name"]]["next"] for row in rows)
    assert sum(int(row["minutes"]) for row in rows) == sum(day["minutes"] for day in plan["days"])
