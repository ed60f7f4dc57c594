"""Groups that stay from one plan to the next, kept in the class's file. The class is invented."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from namewright.classbook import Classbook, ClassbookError, Seen, grouping
from namewright.classbook.schema import MIGRATIONS, bring_up_to_date
from namewright.cli import main
from namewright.practice.ordering import order_class

CLASS = ("Mira", "Rami", "Bob", "Dod", "Lia", "Ilai", "Zuzel", "Noor", "Aron", "Tove", "Vito", "Otto", "Enno")
Capture = pytest.CaptureFixture[str]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    place = tmp_path / "room4.db"
    with Classbook.open(place) as book:
        book.update_roster("\n".join(CLASS))
    return place


def planned(path: Path, *more: str) -> int:
    return main(["plan", str(path), "-o", str(path.with_name("plan.pdf")), *more])


def groups_of(path: Path) -> Mapping[str, int]:
    """Return the group of each child by name, read by Python's own sqlite3."""
    raw = sqlite3.connect(path)
    rows = raw.execute("SELECT practice, number FROM groups JOIN children ON id = child_id").fetchall()
    raw.close()
    return dict(rows)


def test_a_plan_keeps_its_groups_and_the_same_class_gets_them_again(path: Path) -> None:
    """Every child has a group, and a second plan changes neither the groups nor the file nor the page."""
    assert planned(path) == 0
    first, plan, file = groups_of(path), path.with_name("plan.pdf").read_bytes(), path.read_bytes()
    assert set(first) == set(CLASS)
    assert planned(path) == 0
    assert (path.with_name("plan.pdf").read_bytes(), path.read_bytes()) == (plan, file)


def test_from_month_to_month_children_stay_together(path: Path) -> None:
    """The list is shuffled, one joins and one leaves: nobody who stays gets another group, whatever the order asked."""
    planned(path)
    before = groups_of(path)
    number = max(set(before.values()), key=list(before.values()).count)  # a group that can spare a child
    gone = next(name for name in CLASS if before[name] == number)
    with Classbook.open(path) as book:
        book.update_roster("\n".join(["Wupix", *(name for name in reversed(CLASS) if name != gone)]))
    assert planned(path, "--order", "need") == 0
    after = groups_of(path)
    assert set(after) == {"Wupix", *CLASS} - {gone}
    assert {name: after[name] for name in before if name != gone} == {
        name: group for name, group in before.items() if name != gone}


def test_new_groups_are_made_when_asked_for_and_earlier_ones_can_be_brought(path: Path, tmp_path: Path) -> None:
    """--new-groups forgets what was kept; --groups-from goes before it, and is kept in its turn."""
    planned(path)
    fresh = groups_of(path)
    with Classbook.open(path) as book:
        ids = {one.child.practice: one.id for one in book.children()}
        book.keep_groups({ids[name]: 9 - at % 3 for at, name in enumerate(CLASS)})
    assert planned(path) == 0
    assert groups_of(path) == {name: 9 - at % 3 for at, name in enumerate(CLASS)}
    assert planned(path, "--new-groups") == 0
    assert groups_of(path) == fresh
    (tmp_path / "list.txt").write_text("\n".join(CLASS), encoding="utf-8")
    main(["order", str(tmp_path / "list.txt"), "--format", "json", "-o", str(tmp_path / "earlier.json")])
    text = (tmp_path / "earlier.json").read_text(encoding="utf-8").replace('"group": 1,', '"group": 41,')
    (tmp_path / "earlier.json").write_text(text, encoding="utf-8")
    assert planned(path, "--groups-from", str(tmp_path / "earlier.json")) == 0
    assert 41 in groups_of(path).values()


def test_a_file_that_cannot_be_changed_still_gives_a_plan(path: Path, capsys: Capture,
                                                          monkeypatch: pytest.MonkeyPatch) -> None:
    """The plan is written, and one sentence says that the tables are not kept."""
    def refuse(_: Classbook, groups: Mapping[int, int]) -> None:
        raise ClassbookError("classbook.read_only", file=str(path))

    monkeypatch.setattr(Classbook, "keep_groups", refuse)
    assert planned(path) == 0
    assert len(PdfReader(path.with_name("plan.pdf")).pages) >= 1
    said = capsys.readouterr().err
    assert "tables and letters are not saved" in said
    assert "can be read but not changed" in said
    assert groups_of(path) == {}


def test_pages_look_as_set_for_the_class_unless_the_command_says_otherwise(path: Path) -> None:
    """Paper, language and order come from the file; what is said on the command line goes before them."""
    with Classbook.open(path) as book:
        book.set_class_settings({"paper": "a4", "language": "es", "order": "need", "ruling": "us-1/2"})
    sheets = path.with_name("sheets.pdf")
    assert planned(path, "--group-sheets", str(sheets)) == 0
    for file in (path.with_name("plan.pdf"), sheets):
        reader = PdfReader(file)
        assert float(reader.pages[0].mediabox.width) == pytest.approx(210 / 25.4 * 72, abs=0.1)
        assert reader.trailer["/Root"]["/Lang"] == "es"
    assert planned(path, "--paper", "letter", "--captions", "en") == 0
    reader = PdfReader(path.with_name("plan.pdf"))
    assert float(reader.pages[0].mediabox.width) == pytest.approx(612, abs=0.1)
    assert reader.trailer["/Root"]["/Lang"] == "en"


def test_what_was_noted_as_formed_is_on_the_plan(path: Path) -> None:
    """A note of letters changes the page; a note of a few words does not."""
    planned(path)
    before = path.with_name("plan.pdf").read_bytes()
    with Classbook.open(path) as book:
        book.observe(1, "2026-09-10", Seen(note="a good morning"))
    planned(path)
    assert path.with_name("plan.pdf").read_bytes() == before
    with Classbook.open(path) as book:
        book.observe(1, "2026-09-11", Seen([0, 3]))
    planned(path)
    assert path.with_name("plan.pdf").read_bytes() != before


def test_what_does_not_go_with_a_class_is_said(path: Path, tmp_path: Path, capsys: Capture) -> None:
    """Another part of the name, a class with nobody in it, a file that is no class: one sentence and no plan."""
    assert planned(path, "--practise", "both") == 2
    with Classbook.open(tmp_path / "empty.db"):
        pass
    assert planned(tmp_path / "empty.db") == 2
    (tmp_path / "cut.db").write_bytes(path.read_bytes()[:3000])
    assert planned(tmp_path / "cut.db") == 2
    assert not path.with_name("plan.pdf").exists()
    practise, empty, cut = capsys.readouterr().err.splitlines()
    assert "--practise" in practise
    assert "no child in" in empty
    assert "damaged" in cut


def test_only_children_who_are_here_have_a_group(path: Path) -> None:
    """Whoever left has none; who comes back before the next plan has the old one; who is erased leaves no trace."""
    planned(path)
    before = groups_of(path)
    with Classbook.open(path) as book:
        everyone = book.groups()
        book.update_roster("\n".join(CLASS[1:]))
        assert len(book.groups()) == len(CLASS) - 1
        book.update_roster("\n".join(CLASS))
        assert book.groups() == everyone
        book.erase([next(one.id for one in book.children() if one.child.practice == "Bob")])
        assert len(book.groups()) == len(CLASS) - 1
        book.erase_all()
        assert book.groups() == {}
    assert before["Mira"] >= 1


def test_groups_are_those_of_the_whole_class_or_none(path: Path) -> None:
    """Keeping is one change: groups of a child we do not know leave those of before as they were."""
    with Classbook.open(path) as book:
        book.keep_groups({1: 1, 2: 1, 3: 1})
        for bad in ({1: 2, 99: 2}, {1: 0}):
            with pytest.raises(ClassbookError):
                book.keep_groups(bad)
        assert book.groups() == {1: 1, 2: 1, 3: 1}
        members = book.children()
        placed = grouping.with_groups(book, members, order_class([one.child for one in members]))
        assert {each.group for each in placed if each.child.practice in ("Mira", "Rami", "Bob")}
        assert book.groups() == {1: 1, 2: 1, 3: 1}  # asking changes nothing


def test_a_class_from_before_groups_were_kept_still_opens(tmp_path: Path) -> None:
    """A file with the tables of version 2 keeps its children, has no groups yet, and can keep some."""
    place = tmp_path / "older.db"
    raw = sqlite3.connect(place, isolation_level=None)
    bring_up_to_date(raw, "older.db", MIGRATIONS[:2])
    raw.execute("INSERT INTO children (given, family, practice, label, line, joined_at) "
                "VALUES ('Mira', '', 'Mira', 'Mira', 1, '2026-09-01')")
    raw.close()
    with Classbook.open(place) as book:
        assert [one.child.practice for one in book.children()] == ["Mira"]
        assert book.groups() == {}
        book.keep_groups({1: 1})
        assert book.groups() == {1: 1}


def weeks_of(path: Path, *more: str) -> dict[str, Any]:
    out = path.with_name("plan.json")
    assert main(["plan", str(path), "--format", "json", "-o", str(out), *more]) == 0
    return json.loads(out.read_text(encoding="utf-8"))  # type: ignore[no-any-return]


def test_what_was_taught_in_earlier_weeks_is_remembered(path: Path) -> None:
    """From week to week other letters come, none that looks like last week's; the same week gives the same plan."""
    letters = []
    for day in ("2026-11-02", "2026-11-12", "2026-11-20", "2026-11-22"):  # the last a Sunday: the week after
        plan = weeks_of(path, "--week", day)
        assert weeks_of(path, "--week", day) == plan
        letters += plan["weeks"][0]["letters"]
    assert len(set(letters)) == 4
    with Classbook.open(path) as book:
        assert [week.isoformat() for week in book.taught()] == ["2026-11-02", "2026-11-09", "2026-11-16", "2026-11-23"]


def test_nothing_that_was_formed_is_taught_again(path: Path) -> None:
    """A letter that a child has formed is not among its next ones, and one that all have formed is no week's letter."""
    before = weeks_of(path)
    letter = before["weeks"][0]["letters"][0]
    with Classbook.open(path) as book:
        for one in book.children():
            book.observe(one.id, "2026-11-02", Seen([at for at, sign in enumerate(one.child.practice)
                                                if sign.lower() == letter], not_yet=()))
    after = weeks_of(path)
    assert all(letter not in week["letters"] for week in after["weeks"])
    assert any(child["formed"] for child in after["children"])
    for child in after["children"]:
        assert not set(child["formed"]) & set(child["next"])
        assert letter not in "".join(child["next"]).lower()


def test_who_shall_sit_together_or_apart_does(path: Path, capsys: Capture) -> None:
    """Said in the class's file, kept in every plan, taken back with --either; what contradicts itself is told."""
    apart = {"Mira", "Rami"}
    assert main(["class", str(path), "--apart", "Mira, Rami"]) == 0
    assert main(["class", str(path), "--together", "Bob, Zuzel"]) == 0
    groups = [set(group["names"]) for group in weeks_of(path)["groups"]]
    assert not any(apart <= group for group in groups)
    assert any({"Bob", "Zuzel"} <= group for group in groups)
    assert main(["class", str(path), "--together", "Mira, Bob"]) == 0
    assert main(["class", str(path), "--together", "Rami, Zuzel"]) == 0
    capsys.readouterr()
    weeks_of(path)
    assert "could not be met" in capsys.readouterr().err
    for pair in ("Mira, Bob", "Rami, Zuzel", "Mira, Rami", "Bob, Zuzel"):
        assert main(["class", str(path), "--either", pair]) == 0
    with Classbook.open(path) as book:
        assert book.seats() == ()
    assert main(["class", str(path), "--apart", "Mira"]) == 2


def test_tables_stay_from_week_to_week(path: Path) -> None:
    """The letters change and the tables do not."""
    first = weeks_of(path, "--week", "2026-11-02")
    second = weeks_of(path, "--week", "2026-11-09")
    assert first["groups"] == second["groups"]
    assert first["weeks"][0]["letters"] != second["weeks"][0]["letters"]


def test_the_class_says_in_which_language_its_names_are(path: Path, capsys: Capture) -> None:
    """Kept in the class's file, it decides the beats of the order; what is typed goes before it."""
    def beats(*more: str) -> list[str]:
        capsys.readouterr()
        assert main(["order", str(path), "--format", "json", *more]) == 0
        return [entry["beats"] for entry in json.loads(capsys.readouterr().out) if entry["name"] == "Lia"]

    assert main(["class", str(path), "--names-in", "vi"]) == 0
    assert beats() == [["Lia"]]
    assert beats("--names-in", "en") == [["Li", "a"]]


def test_tables_are_as_asked_else_as_is_kept(path: Path) -> None:
    """Where neither says how many, the plan finds it."""
    with Classbook.open(path) as book:
        assert grouping.wishes(book, book.children()).tables is None
        book.set_class_settings({"tables": "4"})
        assert [grouping.wishes(book, book.children(), asked).tables for asked in (None, 2)] == [4, 2]
