"""What was noted of a child, with what it practised with on that day, on the pages and in the spreadsheet."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from pypdf import PdfReader

from namewright.classbook import Classbook, Seen
from namewright.classbook.growing import growth_of
from namewright.cli import main
from namewright.making.from_book import member_of
from namewright.making.noted import record_of_member, talk_of
from namewright.practice.ordering import order_class
from namewright.settings import Support

Capture = pytest.CaptureFixture[str]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A class in which one child was given another level and other lines in October, and then her own rows."""
    path = tmp_path / "room4.db"
    with Classbook.open(path) as book:
        book.update_roster("Mira\nBo\n")
        book.set_class_settings({"support": "full"}, when="2026-08-30T08:00:00")
        for day, letters, support in (("2026-09-08", [0], None), ("2026-10-20", [0, 1], None),
                                      ("2026-11-03", [0, 1, 3], Support.LIGHT), ("2026-11-17", [0, 1, 3], None)):
            book.observe(1, day, Seen(letters, support=support, note="hums as she writes" if day < "2026-10" else ""))
        book.set_settings(1, {"support": "partial", "line_height": "25 mm"}, when="2026-10-05T08:00:00")
        book.set_settings(1, {"ladder": "dots"}, when="2026-11-10T08:00:00")
        book.undo(1, when="2026-11-20T08:00:00")
    return path


@pytest.fixture
def book(path: Path) -> Iterator[Classbook]:
    with Classbook.open(path) as book:
        yield book


def test_what_a_child_practised_with_by_date(book: Classbook) -> None:
    """The level as noted, else as it was set on that day, whatever was changed or undone since."""
    one = book.child(1)
    member = member_of(one, order_class([one.child])[0], book, held=True)
    record = record_of_member(member)
    assert [(trial.held.support, trial.held.noted, round(trial.held.line_height_mm, 2), trial.held.rows)
            for trial in record.trials] == [
        ("full", False, 19.05, ()), ("partial", False, 25.0, ()), ("light", True, 25.0, ()),
        ("partial", False, 25.0, ("dots",))]


def test_a_talk_is_about_what_stands_and_comes(book: Classbook) -> None:
    """New letters before such as stand somewhere, words only where they are asked for."""
    one = book.child(1)
    (placed,) = order_class([one.child])
    member = member_of(one, placed, book, held=True)
    growth = growth_of("Mira", "Mira", member.notes, member.held)
    assert talk_of(member, growth, words=False).words == ()
    talk = talk_of(member, growth, words=True)
    assert (talk.coming, [text for _, text in talk.words]) == (("r",), ["hums as she writes"])


def test_of_many_words_the_first_and_the_latest_are_told(book: Classbook) -> None:
    """What lies between is left out."""
    one = book.child(1)
    for day, words in (("2026-10-01", "between"), ("2026-11-20", "between, too"), ("2026-11-24", "signs her drawings")):
        book.observe(1, day, Seen([0], note=words))
    member = member_of(one, order_class([one.child])[0], book, held=True)
    growth = growth_of("Mira", "Mira", member.notes, member.held)
    assert talk_of(member, growth, words=True).words == (
        (date(2026, 9, 8), "hums as she writes"), (date(2026, 11, 24), "signs her drawings"))


def test_the_page_is_in_the_language_of_the_home(path: Path, book: Classbook) -> None:
    """Each child's own; what was typed goes first; without either, that of the captions."""
    book.set_settings(1, {"home_language": "es"})
    out = str(path.with_name("talk.pdf"))

    def text(*words: str) -> str:
        assert main(["progress", "Mira", "--class", str(path), "--page", "talk", "-o", out, *words]) == 0
        return "".join(PdfReader(out).pages[0].extract_text().split())

    assert "paraverlojuntos" in text()
    assert "àregarderensemble" in text("--captions", "fr")
    assert "humsasshewrites" not in text()
    assert "humsasshewrites" in text("--words")
    book.set_settings(1, {"home_language": ""})
    assert "tolookattogether" in text()


def test_the_record_as_pages_and_csv(path: Path, capsys: Capture) -> None:
    """Both by one command; of whom nothing was noted, that is said; only the record is a CSV."""
    pdf, table = path.with_name("record.pdf"), path.with_name("record.csv")
    asked = ["progress", "--all", "--class", str(path), "--page", "record", "-o"]
    assert main([*asked, str(pdf)]) == 1
    assert len(PdfReader(pdf).pages) == 1
    assert main([*asked, str(table), "--format", "csv"]) == 1
    assert "Nothing is noted about Bo yet" in capsys.readouterr().err
    rows = list(csv.DictReader(io.StringIO(table.read_text(encoding="utf-8"))))
    assert len(rows) == 4 * 4
    assert main(["progress", "Mira", "--class", str(path), "-o", str(table), "--format", "csv"]) == 2
    assert "--page record" in capsys.readouterr().err
