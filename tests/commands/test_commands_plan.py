"""``namewright plan``: written, and what makes no sense refused in a sentence."""

from __future__ import annotations

import json
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest
from pypdf import PdfReader

from namewright.cli import main

Program = Callable[..., subprocess.CompletedProcess[bytes]]


def written(tmp_path: Path, text: str, *more: str) -> tuple[int, Path]:
    roster, out = tmp_path / "class.txt", tmp_path / "plan.pdf"
    roster.write_text(text, encoding="utf-8")
    return main(["plan", str(roster), "-o", str(out), *more]), out


@pytest.mark.parametrize("order", ["easiest", "need", "family"])
def test_the_command_writes_a_plan(tmp_path: Path, order: str) -> None:
    """pypdf opens the file; the page is A4 where asked for; the same list gives the same bytes."""
    status, out = written(tmp_path, "Bo\nMira\nZoë\nNoor\n", "--order", order, "--paper", "a4", "--weeks", "3")
    assert status == 0
    box = PdfReader(out).pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx((210 / 25.4 * 72, 297 / 25.4 * 72), abs=0.1)
    first = out.read_bytes()
    written(tmp_path, "Bo\nMira\nZoë\nNoor\n", "--order", order, "--paper", "a4", "--weeks", "3")
    assert out.read_bytes() == first


@pytest.mark.parametrize("weeks", ["0", "-3", "ten", "61", "2.5"])
def test_weeks_that_make_no_sense_are_refused_in_a_sentence(
        tmp_path: Path, capsys: pytest.CaptureFixture[str], weeks: str) -> None:
    """What was given, what may be given, and no file."""
    status, out = written(tmp_path, "Bo\n", f"--weeks={weeks}")
    assert status == 2
    assert not out.exists()
    assert f"“{weeks}” is not a number of weeks" in capsys.readouterr().err


@pytest.mark.parametrize("groups", ["0", "many"])
def test_tables_that_make_no_sense_are_refused_in_a_sentence(
        tmp_path: Path, capsys: pytest.CaptureFixture[str], groups: str) -> None:
    """What was given, and what may be given."""
    assert written(tmp_path, "Bo\n", f"--groups={groups}")[0] == 2
    assert f"“{groups}” is not a number of tables" in capsys.readouterr().err


MANY = "9" * 5000


@pytest.mark.parametrize("text", ['[{"label": "Mira", "group": 1e999}]', f'[{{"label": "Mira", "group": {MANY}}}]',
                                  "[" * 100_000, "[1]", '{"a": 1}', "\udcff"], ids=range(6))
def test_groups_that_are_none_are_told(tmp_path: Path, capsys: pytest.CaptureFixture[str], text: str) -> None:
    """A file of groups that holds anything else."""
    (tmp_path / "groups.json").write_text(text, encoding="utf-8", errors="surrogateescape")
    assert written(tmp_path, "Bo\n", "--groups-from", str(tmp_path / "groups.json"))[0] == 2
    assert "does not hold the tables" in capsys.readouterr().err


def test_sheets_are_named_by_their_page_in_the_class_pdf(tmp_path: Path) -> None:
    """The pages in the plan are those of the PDF that “sheets” makes: the outline of that file says whose they are."""
    roster = tmp_path / "class.txt"
    roster.write_text("Bo\nMira\nZoë\nChristopherson\n", encoding="utf-8")
    big = ["--line-height", "30"]
    main(["sheets", str(roster), "-o", str(tmp_path / "class.pdf"), *big])
    main(["plan", str(roster), "--format", "json", "-o", str(tmp_path / "plan.json"), *big])
    reader = PdfReader(tmp_path / "class.pdf")
    starts = {str(entry.title): reader.get_destination_page_number(entry) + 1 for entry in reader.outline}
    found = json.loads((tmp_path / "plan.json").read_text(encoding="utf-8"))
    assert {page for day in found["days"] for page in day["pages"]} == set(range(1, len(reader.pages) + 1))
    for day in found["days"]:
        (name,) = day["with"]
        assert any(day["pages"][0] == start for title, start in starts.items() if name in title)


def test_groups_of_an_earlier_order_are_kept(tmp_path: Path) -> None:
    """``order --format json`` is what ``plan --groups-from`` reads; another file is refused in a sentence."""
    roster, earlier = tmp_path / "class.txt", tmp_path / "earlier.json"
    roster.write_text("\n".join(("Bo", "Mira", "Zoë", "Noor", "Rami", "Obed", "Lia")), encoding="utf-8")
    assert main(["order", str(roster), "--format", "json", "-o", str(earlier)]) == 0
    assert {entry["group"] for entry in json.loads(earlier.read_text(encoding="utf-8"))} == {1, 2}
    plan = ["plan", str(roster), "-o", str(tmp_path / "plan.pdf"), "--groups-from"]
    assert main([*plan, str(earlier)]) == 0
    assert main([*plan, str(roster)]) == 2
    assert main([*plan, str(tmp_path / "none.json")]) == 2


def test_a_list_without_names_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """No child, no plan, one sentence."""
    status, out = written(tmp_path, "1\n2\n")
    assert status == 2
    assert not out.exists()
    assert "No child’s name" in capsys.readouterr().err
