"""The group of a child beside its name comes off, and no family, group of several or grown-up is taken for one."""

from __future__ import annotations

import pytest

from namewright.message import Problem
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

_KNOWN, _UNKNOWN = ("Mia", "Leo V.", "Ana", "Emilie"), ("Xobrel", "Zuni T.", "Karv", "Wenna")
_GROUPS = ("Rote Gruppe/Blaue Gruppe", "Red group/Green group", "Mesa 2/Mesa 1", "Ruta 4/Ruta 2",
           "Grupo azul/Grupo rojo", "Table bleue/Table verte", "Tavolo 1/Tavolo 3", "Equipa A/Equipa B",
           "Gruppe Rot/Gruppe Gelb")
_COLOURS = ("Verde/Azul", "Rot/Blau", "Blue/Red", "Rouge/Jaune", "Rosso/Giallo", "Vermelho/Amarelo")


def made(text: str) -> list[str]:
    try:
        return [child.practice for child in read_roster(text).children]
    except Problem:
        return []


def listed(form: str, groups: str, names: tuple[str, ...]) -> str:
    one, two = groups.split("/")
    return "\n".join(form.format(name=name, group=group)
                     for name, group in zip(names, (one, two, one, two), strict=True))


@pytest.mark.parametrize("names", [_KNOWN, _UNKNOWN])
@pytest.mark.parametrize("groups", [*_GROUPS, *_COLOURS])
@pytest.mark.parametrize("form", ["{name} · {group}", "{name} ....... {group}", "{group}: {name}", "{group} – {name}",
                                  "{group} - {name}", "{name} – {group}", "{name}, {group}", "{group} = {name}"])
def test_the_group_of_each_child_comes_off(form: str, groups: str, names: tuple[str, ...]) -> None:
    assert made(listed(form, groups, names)) == [name.split()[0] for name in names]


def test_what_comes_off_is_told() -> None:
    line, *_ = read_roster("Rob A. · Rote Gruppe\nMia B. · Blaue Gruppe").lines
    assert line.outcome is Outcome.CHILD
    assert [note.key for note in line.notes] == ["roster.remark"]


@pytest.mark.parametrize("text", ["avril, Mia\nmai, Leo\njuin, Ava", "Avril, Mia\nJuin, Leo\nJuin, Ava",
                                  "maggio, Mia\ngiugno, Leo\nmaggio, Ava", "DOB 7th of June = Mia\nDOB 3rd of May = Leo"
                                  "\nDOB 1st of May = Ava", "Geb. 7. Juni: Mia\nGeb. 3. Mai: Leo\nGeb. 1. Mai: Ava"])
def test_the_birthday_before_each_child_comes_off(text: str) -> None:
    assert made(text) == ["Mia", "Leo", "Ava"]


@pytest.mark.parametrize(("text", "names"), [
    ("Brown, Mia\nGreen, Leo\nWhite, Ava", "Mia Leo Ava"),
    ("Brown, Mia\nGreen, Leo\nGreen, Ava\nReed, Bo", "Mia Leo Ava Bo"),
    ("Vost, Ruta 4\nReed, Anna 5\nMoss, Leo 4", "Ruta Anna Leo"),
    ("Table 1: Mia, Leo\nTable 2: Ava, Noah", "Mia Leo Ava Noah"),
    ("Red: Mia, Leo\nBlue: Ava, Noah", "Mia Leo Ava Noah"),
    ("Bus 1 - Elm Street\nMia Vost\nLeo Berg\nBus 2 - Oak Avenue\nAva Tarn\nNoah Reed", "Mia Leo Ava Noah"),
    ("April, Mia\nMay, Leo\nJune, Ava", "April Mia May Leo June Ava"),
])
def test_families_and_groups_of_several_stay_what_they_are(text: str, names: str) -> None:
    assert made(text) == names.split()


def test_grown_ups_of_a_group_are_no_children() -> None:
    assert made("Table 1 - Mrs. Vale\nTable 2 - Mr. Oak") == []


@pytest.mark.parametrize("text", ["Élève\tGroupe\nLuzi, Stefania\t2\nVost, Mia\t1\nBerg, Leo\t3",
                                  "Schüler\tTisch\nLang, Stefania\t2\nBraun, Mia\t1\nBerger, Leo\t3"])
def test_a_family_before_its_comma_is_no_child_where_each_row_has_another_group(text: str) -> None:
    assert made(text) == ["Stefania", "Mia", "Leo"]


@pytest.mark.parametrize("title", ["Children", "Names", "Kinder"])
def test_two_children_of_a_group_in_a_cell_stay_two(title: str) -> None:
    assert made(f"Group\t{title}\n1\tMia, Leo\n2\tAva, Bo") == ["Mia", "Leo", "Ava", "Bo"]
    assert made(f"Group\t{title}\n1\tXobrel, Zuni\n2\tMarvt, Karv") == ["Xobrel", "Zuni", "Marvt", "Karv"]
