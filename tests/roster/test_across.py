"""Names across the top are children, skills down the side are none; a table with its names down the side stays one."""

from __future__ import annotations

import pytest

from namewright.roster.across import from_names_across
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.settings import Hand

NAMES = ["Mira", "Xobrel", "Anna"]


@pytest.mark.parametrize("text", [
    "\tMira\tXobrel\tAnna\nHolds pencil\t✓\t\t✓\nZips coat\t–\t✓\talmost",
    "Skill,Mira,Xobrel,Anna\nHolds pencil,3,2,1\nCuts,1,,2\nKnows letters,1/4,2/4,4/4",
    "| | Mira | Xobrel | Anna |\n|---|---|---|---|\n| Holds pencil | x | | x |\n| Zips coat | | x | |",
    "\t1\t2\t3\nName\tMira\tXobrel\tAnna\nKann schneiden\tja\tnein\tja\nMalt gern?\t\t\t",
    "             Mira   Xobrel   Anna\nHolds pencil  x      -        x\nZips coat     x      x        -",
    "\tMira\tXobrel\nHolds pencil\t✓\t\nZips coat\t–\t✓\n\n\tAnna\nHolds pencil\t✓\nZips coat\t",
    "\tMira\tXobrel\tAnna\nHolds pencil\tSecure\tEmerging\tSecure\nZips coat\tSecure\tSecure\tEmerging",
])
def test_names_across_the_top_are_children(text: str) -> None:
    roster = read_roster(f"Fine motor check – October\n\n{text}")
    assert [child.practice for child in roster.children] == NAMES
    assert {report.outcome for report in roster.lines} <= {Outcome.CHILD, Outcome.HEADING, Outcome.BLANK}
    assert [child.practice for child in read_roster(roster.text).children] == NAMES
    assert "almost" not in roster.text


def test_both_parts_of_a_name_and_the_hand_may_stand_down_the_side() -> None:
    text = "Vorname\tMira\tXobrel\tAnna\nNachname\tVost\tTarn\tElm\nHand\tlinks\t\trechts\nkann schneiden\tx\t\tx"
    roster = read_roster(text)
    names = [(child.given, child.family) for child in roster.children]
    assert names == [("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anna", "Elm")]
    assert [child.hand for child in roster.children] == [Hand.LEFT, None, Hand.RIGHT]
    assert read_roster(roster.text).children == roster.children


def test_names_on_no_list_are_told_by_skills_in_small_letters() -> None:
    text = "\tXobrel\tVemka\tOuthna\nHolds pencil\t✓\t\t✓\nZips coat\t–\t✓\t\nCuts on a line\t✓\t✓\t✓"
    assert [child.practice for child in read_roster(text).children] == ["Xobrel", "Vemka", "Outhna"]


@pytest.mark.parametrize("text", [
    "\tMon\tTue\tWed\nMira\t✓\t\t✓\nTilo\t✓\t✓\t",
    "\tReading\tMath\tArt\nXobrel\t✓\t\t✓\nVemka\t✓\t✓\t\nOuth\t✓\t✓\t",
    "\tHolds pencil\tZips coat\nXobrel\t✓\t\nVemka\t\t✓",
    "Name\tHand\tNotes\nMira\tL\tnew\nTilo\tR\tnew",
    "Mira\tVost\t✓\nAnna\tTarn\t–\nLeo\tElm\t✓",
    "Vost, Mira, K\nTarn, Anna, K\nElm, Leo, K", "", 'Mira,"Vost\nAnna,"Tarn'])
def test_a_table_with_names_down_the_side_stays(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_names_across(lines) == lines


def test_a_table_with_titles_has_a_row_for_each_child() -> None:
    """A name that comes again in its row, and a title Family, do not make names that stand across."""
    text = "Family;Given;Goes by;Mother;Hand;Sister\nTarn-Vost;Leo;;;left;\nRosa;Mia;Mia;;;Leo\nQuorne;Zyphra;;;;Zyphra"
    assert [(child.given, child.family) for child in read_roster(text).children] == [
        ("Leo", "Tarn-Vost"), ("Mia", "Rosa"), ("Zyphra", "Quorne")]


def test_a_window_below_seats_is_no_skill() -> None:
    """Three children of the first row were lost, for the second was taken for names across a table."""
    text = "Plano de mesas\nPIZARRA\nMira\tAdil\tAnna\t\nBen\tNihal\tEmil\tIbrahim\nventana\tpuerta"
    assert [child.practice for child in read_roster(text).children] == [
        "Mira", "Adil", "Anna", "Ben", "Nihal", "Emil", "Ibrahim"]


@pytest.mark.parametrize(("title", "further"), [
    ("Student", "Bus\tcar\twalk\tcar"), ("Aluno(a)", "Transporte\ta pé\tcarro\ta pé"),
    ("Kind", "Bus\tRot\tBlau\tRot"), ("Alunno", "Pulmino\tlinea 5\tauto\tauto")])
def test_whole_names_across_may_be_counted_above(title: str, further: str) -> None:
    text = f"No.\t1\t2\t3\n{title}\tXobrelu, Zivquar\tQerrotzu, Aivnor\tVrexiu, Omquil\n{further}"
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Zivquar", "Aivnor", "Omquil"]
    assert read_roster(roster.text).children == roster.children


def test_whole_names_across_may_stand_over_their_dates() -> None:
    text = ("Élève\tXobrelu, Zivquar\tQerrotzu, Aivnor\tVrexiu, Omquil\n"
            "Né(e) le\t18/10/2020\t16/08/2020\t20/08/2020\nCar\tvoiture\tà pied\tvoiture")
    assert [child.practice for child in read_roster(text).children] == ["Zivquar", "Aivnor", "Omquil"]


@pytest.mark.parametrize("rows", [
    "Student;Xobrelu Zivquar;Qerrotzu Aivnor;Vrexiu Omquil\nBus;car;bus 4;walker",
    "Élève\tXobrelu Zivquar\tQerrotzu Aivnor\tVrexiu Omquil\nAllergies\t\tnoix\t",
    "Kind\tZivquar, Xobrelu\tAivnor, Qerrotzu\tOmquil, Vrexiu\nGeb.datum\t31/03/2020\t04/11/2020\t11/07/2019",
    "No.\t1\t2\t3\nAlumno\tZivquar, Xobrelu\tAivnor, Qerrotzu\tOmquil, Vrexiu\nRuta\ta pie\tcoche\truta 2"])
def test_whole_names_across_over_one_row_are_children(rows: str) -> None:
    """The class was one child, called Bus or Ruta, and the children were the titles of columns."""
    assert [child.practice for child in read_roster(rows).children] == ["Xobrelu", "Qerrotzu", "Vrexiu"]


@pytest.mark.parametrize("rows", [
    "Student;Fine Motor;Gross Motor;Letter Sounds\nZyphra Quorne;P;B;P",
    "Kind;Erster Besuch;Zweiter Besuch;Dritter Besuch\nZyphra Quorne;3.4.2020;4.5.2020;5.6.2020"])
def test_two_words_in_each_title_make_no_children_of_them(rows: str) -> None:
    assert [child.practice for child in read_roster(rows).children] == ["Zyphra"]


def test_numbers_over_skills_make_no_children_of_them() -> None:
    rows = "\n".join(f"{name}\tx\tx\t" for name in ("Mira Vost", "Xobrel Tarn", "Anna Elm"))
    text = f"\t1\t2\t3\nName\tFine Motor\tGross Motor\tBody Map\n{rows}"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel", "Anna"]


@pytest.mark.parametrize("letter", [
    "Envio a lista:\nXorcha M., Naise C., Mira S., Jude T.\nAtenciosamente,\nProf.ª Rita",
    "Here they are:\nXorcha M., Naise C., Mira S., Jude T.\nThanks,\nMs. Cole",
])
def test_the_first_name_of_a_row_is_no_corner_over_a_line_that_closes_a_letter(letter: str) -> None:
    assert [child.practice for child in read_roster(letter).children] == ["Xorcha", "Naise", "Mira", "Jude"]


@pytest.mark.parametrize("free", ["vazio", "vacío", "vide", "frei", "vuoto", "empty"])
def test_names_of_two_signs_are_no_marks(free: str) -> None:
    """A Chinese name is as short as a mark, and the children below the top row were lost without a word."""
    text = f"Yuta\tミノル\tHanako\tサユリ\n{free}\t千代\t{free}\t拓真\nキョウスケ"
    assert [child.practice for child in read_roster(text).children] == [
        "Yuta", "ミノル", "Hanako", "サユリ", "千代", "拓真", "キョウスケ"]


@pytest.mark.parametrize(("title", "born"), [
    ("Leerling", "Geb.datum"), ("Student", "DOB"), ("Alumno/a", "F. nacimiento"), ("Élève", "Né(e) le"),
    ("Kind", "Geb.-Datum"), ("Alunno", "Nato il"), ("Aluno", "Data nasc."),
])
def test_names_over_their_birthdays_are_children(title: str, born: str) -> None:
    """Also on no list, and with another row that is called as a child might be."""
    names = ["Kwiabra Outhkem", "Nyalnyias Keizyl", "Triambaim Foulos", "Kenai Vouthkwath"]
    days = ["25.06.2019", "08.07.2019", "19.05.2020", "29.04.2020"]
    rows = [[title, *names], ["Ruta", "2", "2", "coche", "2"], [born, *days]]
    for some in (rows, [rows[0], rows[2]]):
        text = "\n".join(map("\t".join, some))
        assert [f"{child.given} {child.family}" for child in read_roster(text).children] == names


@pytest.mark.parametrize(("given", "family"), [("Vorname", "Nachname"), ("First name", "Last name"),
                                               ("Nombre", "Apellidos"), ("Prénom", "Nom"), ("Nome", "Cognome")])
def test_a_child_called_as_a_month_stands_among_given_names_across(given: str, family: str) -> None:
    """The row of given names was none, and every child was to practise its family's."""
    rows = (("No.", "1", "2", "3", "4"), (given, "冬梅", "Yang", "Jun", "桂兰"), (family, "Yi", "He", "Ding", "Mo"))
    read = read_roster("\n".join(map(" | ".join, rows))).children
    assert [child.given for child in read] == ["冬梅", "Yang", "Jun", "桂兰"]


@pytest.mark.parametrize(("title", "way"), [("Bambino/a", "Trasporto"), ("Alumno/a", "Ruta"), ("Student", "Transport"),
                                            ("Kind", "Heimweg"), ("Élève", "Trajet"), ("Aluno", "Transporte")])
def test_a_family_called_as_a_title_stands_among_names_across(title: str, way: str) -> None:
    rows = (("No.", "1", "2", "3", "4"), (title, "Silvia Wathel", "Leandro Parent", "Julia Abrass", "Leo Mahy"),
            (way, "a piedi", "linea 2", "auto", "auto"))
    read = read_roster("\n".join(map(" | ".join, rows))).children
    assert [child.practice for child in read] == ["Silvia", "Leandro", "Julia", "Leo"]


@pytest.mark.parametrize("signed", ["Teacher, room 2", "Educadora, sala 2", "Erzieherin, Raum 2", "Mme Vost, salle 2"])
def test_the_first_of_several_names_in_a_line_over_who_signs_it_is_kept(signed: str) -> None:
    names = ("Dolores Tarn", "Eric Vost", "Isabel Lind", "Laura Berg", "Adam Brae")
    assert [child.practice for child in read_roster(f"{', '.join(names)}\n{signed}").children] == [
        name.split()[0] for name in names]
