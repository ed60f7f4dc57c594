"""What a class's file keeps of a list: the same children, and nothing that stood beside them."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from namewright.classbook import Classbook
from namewright.classbook.needed import list_words, needed
from namewright.classbook.rosters import NewList
from namewright.roster.children import Child
from namewright.roster.parsing import read_roster
from namewright.settings import Hand, NamePart, Support
from namewright.wording import languages, wording

RICH = """Student,Preferred name,Hand,Line height,Birthday,Mother's name,E-mail,Allergies
"Quorndike, Zaphrelle",Zaffy,left,5/8 in,3/4/2021,Ilsabet Quorndike,ilsa@example.org,peanuts
"Quill, Mira",,right,,1/2/2021,Orla Quill,orla@example.org,
"Reed, Tilo",,,20,5/6/2021,Petra Reed,,bees
"""
WORDS = st.sampled_from([
    "Mira", "Tilo", "Zoë", "de", "la", "van", "O'Fee", "Ana", "María", "QUILL", "bo", "Reed-Moss", "(Bo)", "“Zaffy”",
    "goes by", "L", "left", ",", ";", "\t", "-", "'", '"', "2021", "Room 4", "小雨", "Jr.",
    "given,family,hand", "=", "x", "Mr."])
LINES = st.lists(st.lists(WORDS, min_size=1, max_size=6).map(" ".join), min_size=1, max_size=6).map("\n".join)


def children(text: str, part: NamePart) -> list[Child]:
    """Return the children of a list, whatever line they stand on."""
    return [child._replace(line=0) for child in read_roster(text, "it", part).children]


@given(LINES, st.sampled_from(list(NamePart)))
@example("A:'", NamePart.GIVEN)
@example(RICH, NamePart.BOTH)
def test_it_reads_as_the_same_children(text: str, part: NamePart) -> None:
    """Whatever part of the name is practised later, and where each stands is told."""
    try:
        roster = read_roster(text, "it", part)
    except ValueError:
        return
    kept, lines = needed(text, roster, part)
    assert children(kept, part) == [child._replace(line=0) for child in roster.children]
    assert [child.line for child in read_roster(kept, "it", part).children] == list(lines)


def test_what_stood_beside_the_names_is_not_kept(tmp_path: Path) -> None:
    """No birthday, guardian, address or allergy comes into the bytes of the file; names and settings do."""
    path = tmp_path / "class.db"
    with Classbook.open(path) as book:
        book.update_roster(RICH)
        assert book.roster_text().splitlines() == [
            "First name,Family name,Goes by,Hand,Line height", "Zaphrelle,Quorndike,Zaffy,left,15.875 mm",
            "Mira,Quill,,right,", "Tilo,Reed,,,20.0 mm"]
        assert [one.child.line for one in book.children()] == [2, 3, 4]
    data = path.read_bytes()
    for beside in (b"2021", b"Ilsabet", b"example.org", b"peanut", b"bees"):
        assert beside not in data


def test_the_whole_list_is_kept_where_an_adult_asks(tmp_path: Path) -> None:
    """Then it stays as it was pasted, also when the class practises another part of the name."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster(NewList(RICH, whole=True))
        book.set_class_setting("practise", "family")
        assert (book.roster_text(), book.roster_is_whole()) == (RICH, True)
        assert [one.child.practice for one in book.children()] == ["Quorndike", "Quill", "Reed"]


def test_only_the_newest_list_is_kept(tmp_path: Path) -> None:
    """A mended slip and whoever left a list leave no bytes of it."""
    path = tmp_path / "class.db"
    with Classbook.open(path) as book:
        book.update_roster("Mira Quill\nZaphrelle Quorndyke\n")
        book.update_roster(NewList("Mira Quill\nZaphrelle Quorndike\n", same={2: 2}))
    assert b"Quorndyke" not in path.read_bytes()


@pytest.mark.parametrize("again", ["Mira Quill\nTilo Reed", "1. Mira Quill\n2. Tilo Reed\n"])
def test_a_list_that_says_the_same_is_no_change(tmp_path: Path, again: str) -> None:
    """A window that shows an older list may send what is kept already; nobody is asked about it."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Mira Quill\nTilo Reed\n")
        assert book.update_roster(NewList(again, after_roster=0)).stayed == (1, 2)
        assert book.roster_id() == 1


@pytest.mark.parametrize("language", languages())
def test_the_columns_are_titled_in_the_language_of_the_reader(language: str) -> None:
    """Every title and every choice of every language is one that a list is read by, whatever part is practised."""
    words = list_words(wording(language).say)
    rows = "First name,Family name,Goes by,Practise,Hand,Support,Line height,Letters,Beats,Language\n" + "".join(
        f"Mira{at},Quill,Mi{at},{'Quill' if at == 3 else ''},{hand},{support},20 mm,a=two-storey,Mi-ra,de\n"
        for at, (hand, support) in enumerate(zip([*Hand, ""], list(Support), strict=True)))
    for part in NamePart:
        kept, _ = needed(rows, read_roster(rows, "it", part), part, words=words)
        assert children(kept, part) == children(rows, part)
        assert list(words.values())[:10] == kept.splitlines()[0].split(",")
        assert words["left"] in kept


def test_what_is_kept_stays_in_the_words_that_it_was_kept_in(tmp_path: Path) -> None:
    """Another part of the name, and a child who is erased, write no other titles over it."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster(NewList(RICH, words=list_words(wording("es").say)))
        kept = book.roster_text()
        assert kept.splitlines()[0] == "Nombre,Apellidos,Se le llama,Mano,Altura de línea"
        book.set_class_setting("practise", "family")
        assert book.roster_text() == kept
        book.erase([2])
        assert book.roster_text().splitlines() == [kept.splitlines()[at] for at in (0, 1, 3)]
