"""A table that we wrote line by line is read as it stands; any other is judged as ever."""

from __future__ import annotations

import pytest

from namewright.roster.children import Child, Outcome
from namewright.roster.own_tables import own_table
from namewright.roster.parsing import read_roster
from namewright.roster.written import NOT_READ, line_by_line, written
from namewright.settings import Hand, NamePart

TITLES = f"First name,Family name,{NOT_READ}"


def _child(given: str, family: str = "", **more: object) -> Child:
    return Child(given, given, given, family, 0)._replace(**more)


@pytest.mark.parametrize(("given", "family"), [
    ("Harrie", "e Geoffrey"), ("Nº", "Aluno"), ("cHURC-", "Nelia"), ("Seg", ""), ("Total", "24"), ("Rol", ""),
    ("Lundi", ""), ("Mia, Leo", "Vost"), ("Mr. Vale", ""),
])
def test_what_was_read_as_a_child_stays_the_same(given: str, family: str) -> None:
    """Some such child was another one in what was kept, or none: it is judged once, when it is pasted."""
    mia, one = _child("Mia", "Vost"), _child(given, family)
    text = line_by_line([written(mia, mia._replace(practice="Vost")), "Red group:", written(one, one)])
    assert [(child.given, child.family) for child in read_roster(text).children] == [("Mia", "Vost"), (given, family)]


@pytest.mark.parametrize("lines", [
    ["Mensa:", "lun", "1", "2", "3", "Mia:", "Nome", "Leo"], ["first: Borahan:", "0\tfirst\tlast\tid", "id: 8:"],
    ["Liste de:", "N°:", "Nom:", "Prénom"], ["A: B, C", "D: E, F", "---"],
])
def test_words_beside_children_make_none(lines: list[str]) -> None:
    mia = _child("Mia", "Vost")
    roster = read_roster(line_by_line([written(mia, mia), *lines, "", written(mia, mia)]))
    assert [child.practice for child in roster.children] == ["Mia", "Mia"]
    assert len(roster.lines) == len(lines) + 4
    assert not roster.text


def test_settings_and_names_to_go_by_are_read() -> None:
    zaff = _child("Zaff", "Quorn", practice="Zaffy", hand=Hand.LEFT, line_height_mm=12.5, names_in="tr")
    text = line_by_line([written(zaff, zaff._replace(practice="Quorn"))])
    read = read_roster(text).children[0]
    assert (read.practice, read.hand, read.line_height_mm, read.names_in) == ("Zaffy", Hand.LEFT, 12.5, "tr")
    assert read_roster(text, part=NamePart.FAMILY).children[0].practice == "Quorn"


@pytest.mark.parametrize("text", [
    "First name,Family name,Notes\nMia,Vost,", f"{TITLES}\nMia,Vost,nuts", f"{TITLES}\nMia Vost", f"{TITLES}\nMia",
    f"First name,Colour,{NOT_READ}\nMia,red,", "Mia\nLeo", "", NOT_READ,
])
def test_any_other_table_is_judged(text: str) -> None:
    assert own_table(text.split("\n")) is None


def test_a_line_that_was_added_is_a_child_and_so_are_the_others() -> None:
    roster = read_roster(f"{TITLES}\nMia,Vost,\n,,Red group:\nLeo,Tarn,\nAva Berg")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava"]
    assert roster.lines[2].outcome is not Outcome.CHILD


def test_a_list_of_which_nothing_else_held_is_kept_as_it_was_read() -> None:
    """Of such a list seven children were others, or gone, when it was read again."""
    text = ("Lanches\nseg – feriado\nter – feriado\nqua – Đặng, Phương (iogurtes)\nqui – Vũ, Ánh (bolachas)\n"
            "sex – Lê, An (queijo)")
    roster = read_roster(text)
    again = read_roster(roster.text)
    assert [child.practice for child in again.children] == [child.practice for child in roster.children]
