"""Erased for good: gone from every table and from the bytes of the file, with nothing of the others touched."""

from __future__ import annotations

import sqlite3
from itertools import product
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.rosters import NewList
from namewright.settings import Support

LIST = "Room 9 - the Zaphrelle class\nZaphrelle Quorndike\nMira Quill\nTilo Reed\nAva Finch\nAva Moss\n"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A class in which one child has left a trace everywhere."""
    place = tmp_path / "class.db"
    with Classbook.open(place) as book:
        book.update_roster(NewList(LIST + "Ottokar Blixby\n", whole=True))
        book.update_roster(NewList(LIST, whole=True))
        book.set_settings(1, {"keep_dots": "zq", "line_height": "30"}, who="RK")
        book.undo(1)
        book.set_settings(2, {"line_height": "24"}, who="RK")
        book.observe(1, "2026-09-10", Seen([0], support=Support.LIGHT, note="Zaphrelle was proud"))
        book.observe(2, "2026-09-10", Seen([0], note="sat with Zaphrelle"))
        taken_back = book.observe(3, "2026-09-10", Seen([0], note="zaphrelle helped"))
        book.strike(taken_back.id)
    return place


def traces(path: Path, *names: str) -> list[str]:
    """Return which names stand anywhere beside the class's file, whatever the case of the letters."""
    data = b"".join(file.read_bytes() for file in path.parent.iterdir()).lower()
    return [name for name in names if name.lower().encode() in data]


def test_an_erased_child_is_gone_from_the_bytes_of_the_file(path: Path) -> None:
    """No table and no unused corner of the file holds the family name, which nothing but this child has."""
    assert traces(path, "Quorndike") == ["Quorndike"]
    with Classbook.open(path) as book:
        assert book.erase([1]).children == 1
        assert [one.child.label for one in book.children(left=True)] == ["Mira", "Tilo", "Ava F.", "Ava M.", "Ottokar"]
    assert not traces(path, "Quorndike", "was proud", "zaphrelle helped")
    assert [file.name for file in path.parent.iterdir()] == ["class.db"]


@pytest.mark.parametrize("text", ["", "replace(hex(zeroblob(150000)), '00', 'Mira' || char(10))"])
def test_a_list_that_cannot_be_read_keeps_nobody_from_being_erased(path: Path, text: str) -> None:
    """A list that a damaged file holds, empty or past all limits, goes; the others of the class stay."""
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute(f"UPDATE rosters SET text = {text or repr(text)}")
    connection.close()
    with Classbook.open(path) as book:
        book.traces([1])
        assert book.erase([1]).children == 1
        assert [one.child.label for one in book.children(left=True)] == ["Mira", "Tilo", "Ava F.", "Ava M.", "Ottokar"]
    assert not traces(path, "Quorndike")


def test_a_large_class_keeps_no_trace_of_whom_it_erased(tmp_path: Path) -> None:
    """Also where the file has many pages, half of which become free: the names of all who were erased are gone."""
    path = tmp_path / "class.db"
    ends = ["".join(pair) for pair in product("aeioulnr", "bdfgklmn")][:60]
    kept, gone = [f"Stay{end} Tarrow" for end in ends], [f"Zorblin{end} Quorndike" for end in ends]
    with Classbook.open(path) as book:
        for _ in range(3):
            book.update_roster("name\n" + "\n".join(name for pair in zip(kept, gone, strict=True) for name in pair))
            book.update_roster("name\n" + "\n".join(kept + gone))
        ids = [one.id for one in book.children() if one.child.family == "Quorndike"]
        for child_id in ids:
            book.observe(child_id, "2026-09-10", Seen([0], note=f"Quorndike {'x' * 400}"))
        assert traces(path, "Quorndike", "Zorblin")
        assert book.erase(ids).children == 60
        assert len(book.children(left=True)) == 60
    assert not traces(path, "Quorndike", "Zorblin", "xxxxxxxx")


def test_others_keep_id_settings_history_and_notes(path: Path) -> None:
    """The list is read again without the line; everyone else is who they were, with all that was kept of them."""
    with Classbook.open(path) as book:
        before = {one.id: one.settings for one in book.children(left=True)}
        history, notes = book.history(2), book.observations(2)
        book.erase([1])
        after = {one.id: one.settings for one in book.children(left=True)}
        assert after == {child_id: kept for child_id, kept in before.items() if child_id != 1}
        assert (book.history(2), book.observations(2)) == (history, notes)
        assert book.roster_text().splitlines() == [line for line in LIST.splitlines() if "Quorndike" not in line]
        book.update_roster(book.roster_text() + "Suri Vale\n")
        assert max(one.id for one in book.children()) > 6


def test_where_a_name_still_stands_is_told(path: Path) -> None:
    """A note about another child and a heading may hold the name; an adult is told where, and they stay."""
    with Classbook.open(path) as book:
        foretold = book.traces([1])
        erased = book.erase([1])
        where = [(trace.place, trace.label, trace.line) for trace in erased.standing]
        assert where == [("note", "Mira", 0), ("line", "", 1)]
        assert [trace.key for trace in foretold] == [trace.key for trace in erased.standing]
        assert book.observations(2)[0].note == "sat with Zaphrelle"
        assert book.roster_text().startswith("Room 9 - the Zaphrelle class")


def test_a_name_inside_another_word_is_not_told(tmp_path: Path) -> None:
    """A short name is looked for as a word of its own."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Bo Lindle\nMira Quill\n")
        book.observe(2, "2026-09-10", Seen(note="made a bow and a Boat"))
        assert not book.erase([1]).standing


def test_a_child_who_left_is_erased(path: Path) -> None:
    """The list is as it was: no older one is kept."""
    with Classbook.open(path) as book:
        ottokar = next(one.id for one in book.children(left=True) if one.left)
        book.erase([ottokar])
        assert book.roster_text() == LIST
    assert not traces(path, "Ottokar", "Blixby")


def test_a_list_seen_before_is_not_kept_after(path: Path) -> None:
    """A window that still shows the name cannot bring it back unseen."""
    with Classbook.open(path) as book:
        seen_before = book.roster_id()
        book.erase([1])
        with pytest.raises(ClassbookError, match=r"classbook\.list_meanwhile"):
            book.update_roster(NewList(LIST, after_roster=seen_before))


def test_everyone_on_the_list_may_be_erased(path: Path) -> None:
    """With nobody left on it the list itself goes, headings included; who had left before stays."""
    with Classbook.open(path) as book:
        book.erase([one.id for one in book.children()])
        assert (book.roster_text(), book.roster_id()) == ("", 0)
        assert [one.child.label for one in book.children(left=True)] == ["Ottokar"]
    assert not traces(path, "Zaphrelle", "Quill", "Moss")


def test_a_name_over_two_lines_goes_whole(tmp_path: Path) -> None:
    """A cell in quotation marks may run over lines; all of them are the child's."""
    with Classbook.open(tmp_path / "class.db") as book:
        text = 'given,family,remark\nZaphrelle,Quorndike,"likes\nthe swing"\nMira,Quill,"is\nnew"\n'
        book.update_roster(NewList(text, whole=True))
        mira = next(one.id for one in book.children() if one.child.given == "Mira")
        book.erase([one.id for one in book.children() if one.id != mira])
        assert [(one.id, one.child.given, one.child.line) for one in book.children()] == [(mira, "Mira", 2)]
        assert "swing" not in book.roster_text()


def test_whom_we_do_not_know_erases_nobody(path: Path) -> None:
    """One wrong number among several changes nothing at all."""
    before = path.read_bytes()
    with Classbook.open(path) as book, pytest.raises(ClassbookError, match=r"classbook\.no_child_to_erase"):
        book.erase([2, 99])
    assert path.read_bytes() == before


def test_the_whole_class_is_erased(path: Path) -> None:
    """No name, setting or note is left, the class has another name of its own, and ids are not used again."""
    with Classbook.open(path) as book:
        book.set_class_settings({"title": "Zaphrelle’s room"})
        before = book.class_id
        book.erase_all()
        assert (book.children(left=True), dict(book.class_settings), book.roster_text()) == ((), {}, "")
        assert book.class_id != before
        book.update_roster("Suri Vale\n")
        assert book.children()[0].id > 6
    assert not traces(path, "Zaphrelle", "Quill", "Ottokar", "RK")


def test_every_class_has_a_name_of_its_own(tmp_path: Path) -> None:
    """Two files never have the same, and one file always has the same."""
    ids = []
    for name in ("a.db", "b.db", "a.db"):
        with Classbook.open(tmp_path / name) as book:
            ids.append(book.class_id)
    assert ids[0] == ids[2] != ids[1]
    assert min(map(len, ids)) == 32


def test_forms_and_beats_of_the_list_are_kept(tmp_path: Path) -> None:
    """The columns for forms of letters and beats stay with the child; forms that were set come before those listed."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("name,letters,beats\nMira Quill,a=two-storey,Mi-ra\nTilo Reed,,\n")
        said = [(one.child.letters, one.child.beats) for one in book.children()]
        assert said == [("a=two-storey", "Mi-ra"), ("", "")]
        book.set_settings(1, {"letters": "t=curved"})
        assert book.children()[0].child.letters == "t=curved"
