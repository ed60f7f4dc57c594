"""The data of one child for a specialist: every trial is there, nothing is added up, and any child's fits its pages."""

from __future__ import annotations

import csv
import io
from datetime import date, timedelta

import pytest

from namewright.output.record_csv import records_csv
from namewright.output.svg import page_svg
from namewright.pages.child_progress import ProgressSettings
from namewright.pages.paper import Paper
from namewright.pages.record import Held, Record, Trial
from namewright.pages.record_table import record_pages
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import languages

BEGIN = date(2026, 9, 8)
NOTED, SET = Held(Support.PARTIAL, True, 19.05), Held(Support.FULL, False, 25.4, ("dots", "start-dots"))


def trial(day: int, formed: str, held: Held = NOTED, **more: object) -> Trial:
    """Return a trial: + formed, - not yet, . not looked at."""
    def places(mark: str) -> frozenset[int]:
        return frozenset(at for at, each in enumerate(formed) if each == mark)

    return Trial(BEGIN + timedelta(days=day), held, places("+"), places("-"), **more)  # type: ignore[arg-type]


RECORD = Record("Mira", tuple("Mira"), (
    trial(0, "....", note="=holds the pencil near the tip", who="RK"), trial(1, "+---", SET, step=4),
    trial(1, "++.."), trial(30, "++-+", step=5)))


def test_trials_are_numbered_from_the_baseline() -> None:
    """The first look at letters is the baseline; a note in words alone is no trial of letters."""
    assert [number for number, _ in RECORD.numbered()] == [None, 0, 1, 2]


def test_the_csv_has_a_row_a_letter_looked_at() -> None:
    """Read back by the csv module: raw data alone, and no cell that a spreadsheet takes for a formula."""
    rows = list(csv.DictReader(io.StringIO(records_csv([RECORD]))))
    assert len(rows) == 1 + 4 + 2 + 4
    assert rows[0]["note"] == "'=holds the pencil near the tip"
    assert (rows[0]["look"], rows[0]["letter"]) == ("", "")
    assert [(row["place"], row["letter"], row["formed"]) for row in rows[1:5]] == [
        ("1", "M", "1"), ("2", "i", "0"), ("3", "r", "0"), ("4", "a", "0")]
    assert {(row["support"], row["support_noted"], row["line_height_mm"], row["rows"]) for row in rows[1:5]} == {
        ("full", "0", "25.4", "dots start-dots")}
    assert {row["baseline"] for row in rows[1:5]} == {"1"}
    assert {row["baseline"] for row in rows[5:]} == {"0"}
    assert not {"score", "percent", "total", "mean"} & set(rows[0])


def test_counts_under_the_letters_are_counts(setter: Typesetter, monkeypatch: pytest.MonkeyPatch) -> None:
    """How often each letter was looked at and formed, worked out by hand."""
    said: list[str] = []
    monkeypatch.setattr("namewright.pages.record_table.fitted",
                        lambda setter, text, *rest: said.append(text) or ())
    record_pages(setter, RECORD, ProgressSettings())
    assert said[said.index("Trials"):][:9] == ["Trials", "", "", "", "", "3", "3", "2", "2"]
    assert said[said.index("Formed"):][:9] == ["Formed", "", "", "", "", "3", "2", "0", "1"]


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize(("name", "count"), [("Bo", 1), ("Mira", 90), ("Wilhelminachristophersonquill", 40)])
def test_any_record_fits_its_pages(setter: Typesetter, name: str, count: int, language: str) -> None:
    """Ninety trials or thirty letters: the pages' own check passes, and the child is in the outline once."""
    marks = "+-" * (len(name) // 2)
    trials = tuple(trial(7 * at, marks, SET if at % 2 else NOTED, note="a word " * 60 if at == 3 else "")
                   for at in range(count))
    pages = record_pages(setter, Record(name, tuple(name), trials), ProgressSettings(Paper.A4, language=language))
    assert [page.outline for page in pages].count(name) == 1
    assert len(pages) > 1 or count < 60
    assert all("<svg" in page_svg(page) for page in pages[:1])


def test_nothing_noted_is_no_page(setter: Typesetter) -> None:
    with pytest.raises(ValueError, match="nothing was noted"):
        record_pages(setter, Record("Mira", tuple("Mira"), ()), ProgressSettings())
