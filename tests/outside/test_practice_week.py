"""A week without a contradiction, read from the JSON as another program would, for twenty classes from open data.

First names are the half of the 1990 census names that no rule was tuned on (``tests/data``, where the source stands),
drawn by how common they are, with a fixed seed. Which letters look alike is read from the published ratings
(Simpson et al. 2013, as transcribed in ``test_practice_sources``), not from the package.
"""

from __future__ import annotations

import contextlib
import csv
import io
import json
import random
from itertools import pairwise, product
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from test_practice_sources import SIMPSON_CAPITALS, SIMPSON_SINGLE_STOREY_A, SIMPSON_SMALL, pairs

from longer import rest_long
from namewright.classbook import Classbook, Seen
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


def class_of(seed: int, path: Path) -> tuple[int, dict[str, set[str]]]:
    """Make a class's file of a roster, with three months of notes of most children.

    Return how many children there are, and the signs of each name that stand at the end, kept beside what is noted:
    every place of the sign was formed when it was looked at last.
    """
    roster = path.with_suffix(".csv")
    count, rng = roster_of(seed, roster), random.Random(1000 + seed)
    standing: dict[str, set[str]] = {}
    with Classbook.open(path) as book:
        book.update_roster(roster.read_text(encoding="utf-8"))
        for one in book.children():
            name = one.child.practice
            places, last = list(range(len(name))), dict.fromkeys(range(len(name)), False)
            for day in ("2026-09-08", "2026-10-06", "2026-11-03")[:rng.randint(0, 3)]:
                share = 1.0 if rng.random() < 0.2 else rng.random()
                looked = [at for at in places if rng.random() < 0.8]
                formed = [at for at in looked if rng.random() < share]
                book.observe(one.id, day, Seen(formed, not_yet=set(looked) - set(formed)))
                last |= {at: at in formed for at in looked}
            standing[name] = {name[at] for at in places} - {name[at] for at in places if not last[at]}
    return count, standing


@pytest.mark.parametrize("seed", rest_long(range(20), 5))
def test_a_week_has_no_contradiction(seed: int, tmp_path: Path) -> None:
    """Everyone has a day and a table, tables are even, Monday has Monday's letter, look-alikes stand apart.

    What a child has formed is not taught to it again, what everybody has formed is not taught at all, and a name of
    which all letters stand is not waited for.
    """
    file = tmp_path / "class.db"
    (count, standing), tables, pace = class_of(seed, file), 3 + seed % 4, 1 + seed % 3
    plan = planned(str(file), "--groups", str(tables), "--letters-per-week", str(pace), "--week", "2026-11-30")
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
        assert all(signs(list(set(name) - standing[name])) <= met for name in week["completes"])

    for name, stands in standing.items():
        assert set(children[name]["formed"]) == stands
        assert not set(children[name]["next"]) & stands
        assert children[name]["next"] or stands == set(name)
    lacking = {letter for name, stands in standing.items() for letter in signs(list(set(name) - stands))}
    assert {letter for letters in weeks for letter in letters} <= lacking
    assert not {name for week in plan["weeks"] for name in week["completes"]} & {
        name for name, stands in standing.items() if stands == set(name)}
    with Classbook.open(file) as book:
        assert list(book.taught().values()) == [tuple(first_week["letters"])]

    pages = [page for day in plan["days"] for page in day["pages"]]
    assert sorted(pages) == list(range(1, len(pages) + 1))
    for child in plan["children"]:
        assert set(child) == {"id", "line", "name", "letters", "formed", "next", "support", "hand", "reason"}
        assert not set(child["next"]) & set(child["formed"])
        assert set(child["next"]) <= set(child["letters"])
        assert child["support"] in LEVELS
        assert child["name"] in child["reason"]


def test_a_week_remembers_the_week_before(tmp_path: Path) -> None:
    """Planned for the next Monday, the class goes on: other letters, none like those of before, and the same tables."""
    file = tmp_path / "class.db"
    class_of(7, file)
    first, second = (planned(str(file), "--week", day) for day in ("2026-11-23", "2026-11-30"))
    before, after = first["weeks"][0]["letters"], second["weeks"][0]["letters"]
    assert not set(before) & set(after)
    assert not [pair for pair in product(before, after)
                if {frozenset(pair), frozenset(letter.upper() for letter in pair)} & ALIKE]
    assert [group["names"] for group in first["groups"]] == [group["names"] for group in second["groups"]]


@pytest.mark.parametrize("options", rest_long([
    ["--line-height", "30 mm", "--same-for-all", "--ladder", "dots start-dots", "--hand", "left"],
    ["--order", "need", "--paper", "a4", "--support", "light"], ["--order", "roster"], []], first=2))
@pytest.mark.parametrize("kept", rest_long([{"order": "name", "line_height": "28 mm"}, {}]))
def test_page_numbers_are_those_of_the_class_pdf(tmp_path: Path, options: list[str], kept: dict[str, str]) -> None:
    """Made with the same options, each child's sheet begins on the page that the plan names, by the PDF's outline."""
    file, sheets = tmp_path / "class.db", tmp_path / "class.pdf"
    class_of(4, file)
    with Classbook.open(file) as book:
        book.set_class_settings(kept)
        book.update_roster(book.roster_text() + "\nChristophermaximilian\n")  # a name of more than one page
    assert main(["sheets", str(file), "-o", str(sheets), *options]) == 0
    pdf = PdfReader(sheets)
    begins = {str(one.title): pdf.get_destination_page_number(one) + 1 for one in pdf.outline}  # type: ignore[union-attr,arg-type]
    told = _pages_by_name(tmp_path, file, options)
    assert {name: pages[0] for name, pages in told.items()} == begins
    assert sorted(page for pages in told.values() for page in pages) == list(range(1, len(pdf.pages) + 1))


def _pages_by_name(tmp_path: Path, file: Path, options: list[str]) -> dict[str, list[int]]:
    """Return the pages that the CSV of the plan has for each child."""
    table = tmp_path / "plan.csv"
    assert main(["plan", str(file), "--format", "csv", "-o", str(table), *options]) == 0
    with table.open(newline="", encoding="utf-8") as rows:
        return {row["name"]: list(map(int, row["pages"].split())) for row in csv.DictReader(rows)}


def test_csv_has_one_row_a_child_and_day(tmp_path: Path) -> None:
    """The csv module reads back the days of the JSON, row by row."""
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
