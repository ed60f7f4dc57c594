"""Rows at the foot of a table that count are no children, and a child with figures of its own is one or asked about."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

CHILDREN = ("Mira V.\tx\t-", "Leo T.\tx\tx", "Xobrel K.\t-\tx", "Noah A.\tx\tx")
WHOLE = ("Mira Vost", "Xobrel Tarn", "Leo Lind", "Ada Bru")
FEET = [
    ("Name\tMon\tTue", "Total\t3\t2", "vegetarian\t1\t0"), ("Kind\tMo\tDi", "Summe\t3\t2", "vegetarisch\t1\t1"),
    ("Élève\tLun\tMar", "Total\t3\t2", "dont sans porc\t1\t1"), ("Alumno\tLun\tMar", "Total\t3\t2", "sin gluten\t1\t1"),
    ("Bambino\tLun\tMar", "Totale\t3\t2", "di cui vegetariani\t1\t1"),
    ("Criança\tSeg\tTer", "Total\t3\t2", "sem carne\t1\t1"),
]


def _outcomes(text: str) -> list[tuple[str, Outcome]]:
    return [(line.text.split("\t")[0].split(",")[0], line.outcome) for line in read_roster(text).lines]


@pytest.mark.parametrize("foot", FEET)
@pytest.mark.parametrize("titled", [True, False])
def test_what_stands_below_a_total_is_no_child(foot: tuple[str, str, str], titled: bool) -> None:
    title, total, part = foot
    roster = read_roster("\n".join(([title] if titled else []) + [*CHILDREN, total, part]))
    assert [child.given for child in roster.children] == ["Mira", "Leo", "Xobrel", "Noah"]
    assert [line.outcome for line in roster.lines[-2:]] == [Outcome.HEADING] * 2
    assert [line.notes[0].key for line in roster.lines[-2:]] == ["roster.heading_count"] * 2


@pytest.mark.parametrize("rows", [("Hot\t3\t2", "Packed\t1\t1"), ("Warm\t3\t2", "Kalt\t1\t1"), ("Xunte\t3\t2",)])
def test_figures_where_others_have_marks_are_asked_about(rows: tuple[str, ...]) -> None:
    text = "\n".join(("Name\tMon\tTue", *CHILDREN, *rows))
    assert [outcome for _, outcome in _outcomes(text)][-len(rows) :] == [Outcome.LEFT_OUT] * len(rows)
    answered = "\n".join(("Name\tMon\tTue", *CHILDREN, *(f"Name: {row}" for row in rows)))
    names = [child.given for child in read_roster(answered).children]
    assert names[-len(rows) :] == [row.split("\t")[0] for row in rows], "its way out"


@pytest.mark.parametrize("text", [
    "Name,Bus,Room\nMira Vost,walks,red\nLeo Tarn,walks,red\nNoah Holm,walks,blue\nIda Kern,3,4",  # a known name
    "Name,Bus\nMira Vost,walks\nLeo Tarn,walks\nNoah Holm,walks\nXobrel Kund,3",  # one figure may be its bus
    "Name,Age,Room\nMira Vost,5,12\nXobrel Tarn,5,12\nOdelo Holm,6,14\nVemka Kund,6,14",  # all have figures
    "name,mon\nmira vost,x\nleo tarn,x\nnoah holm,x\nxobrel kund,3",
    "Name,Mon\nMira Vost,x\nLeo Tarn,x\nNoah Holm,x\nTotal,3\nXobrel Kund,x",  # with a mark, as the others have
])
def test_a_child_with_figures_of_its_own_is_one(text: str) -> None:
    assert len(read_roster(text).children) == sum(not line.startswith("Total") for line in text.splitlines()) - 1


def test_counts_by_kind_below_a_total_of_figures_are_no_children() -> None:
    text = "Name,Age\nMira Vost,5\nLeo Tarn,6\nNoah Holm,5\nTotal,3\nboys,2\ngirls,1"
    assert [child.given for child in read_roster(text).children] == ["Mira", "Leo", "Noah"]


@pytest.mark.parametrize("sign", ["\t", ";"])
@pytest.mark.parametrize("word", [
    "Subtotal", "Group total", "Sous-total", "Zwischensumme", "Subtotale", "Subtotal Bears", "Sous-total Ours"])
def test_a_subtotal_is_no_child_and_those_below_are(word: str, sign: str) -> None:
    names = ["Mira Vost", "Leo Tarn", "Ana Ruiz", "Dlunyil Kwapson", "Xairfön Gaskwom", "Tarnul Brevin"]
    rows = [f"{name}{sign}1{at}.03.2020" for at, name in enumerate(names)]
    total = f"{word}{sign}3"
    text = "\n".join((f"Child{sign}DOB", *rows[:3], total, *rows[3:], total))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("titles", [
    "Name,Mon,Tue,Here", "Nombre,Lun,Mar,Asisten", "Élève,Lun,Mar,Inscrits", "Name,Mo,Di,Zusammen",
    "Nome,Lun,Mar,Tutti", "Nome,Seg,Ter,Juntos", "Naam,ma,di,Samen"])
def test_a_row_called_as_another_column_is_counts_it(titles: str) -> None:
    rows = [f"{name},1,{at % 2},{1 + at % 2}" for at, name in enumerate(WHOLE)]
    assert _outcomes("\n".join((titles, *rows, f"{titles.split(',')[-1]},4,2,6")))[-1][1] is Outcome.HEADING


@pytest.mark.parametrize("foot", [
    "Group average", "Klassen-Durchschnitt", "Media della classe", "Mittelwert", "Moyenne"])
def test_a_row_that_opens_or_ends_with_a_word_for_a_total(foot: str) -> None:
    rows = [f"{name};{at + 3}/10;{at + 40}" for at, name in enumerate(WHOLE)]
    outcome = _outcomes("\n".join(("Name;Words;Lines", *rows, f"{foot.replace('-', ' ')};5/10;42")))[-1][1]
    assert outcome is Outcome.HEADING


@pytest.mark.parametrize("rows", [
    ("First name,Last name,Words,Lines", "Mira,Vost,3/9,40", "Xobrel,Tarn,4/9,41", "Leo,Lind,5/9,42", "Ada,Bru,6/9,43",
     "Gjennomsnitt,,5/9,42"),
    ("Name,Words,Lines", *(f"{name},{at}/9,4{at}" for at, name in enumerate(WHOLE)), "Keskiarvo,5/9,42")])
def test_figures_for_one_name_under_two_are_asked_about_in_any_language(rows: tuple[str, ...]) -> None:
    assert _outcomes("\n".join(rows))[-1][1] is Outcome.LEFT_OUT
    last = rows[-1].replace(rows[-1].split(",")[0], "Noah")
    assert read_roster("\n".join((*rows[:-1], last))).children[-1].practice == "Noah", "a known name is a child"


@pytest.mark.parametrize("word", ["Absent", "Tardy", "Présents", "Presenti", "Ausentes", "Anwesend", "TOT", "Tot."])
def test_a_row_that_counts_who_was_there_is_a_heading(word: str) -> None:
    roster = read_roster("\n".join(("Name\tMon\tTue", *CHILDREN, f"{word}\t3\t2")))
    assert [child.given for child in roster.children] == ["Mira", "Leo", "Xobrel", "Noah"]
    assert roster.lines[-1].outcome is Outcome.HEADING


@pytest.mark.parametrize("titles", ["No.\tName", "Matrícula\tAluno"])
@pytest.mark.parametrize("foot", ["Total de registros: 12", "Total records: 12", "Totale 12"])
def test_a_total_in_the_first_column_is_a_heading(titles: str, foot: str) -> None:
    roster = read_roster("\n".join((titles, *(f"{at}\t{name}" for at, name in enumerate(WHOLE, 1)), foot + "\t")))
    assert len(roster.children) == len(WHOLE)
    assert roster.lines[-1].outcome is Outcome.HEADING
