"""Which of two people in each row of a table without titles is the child, and when that is asked."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.row_persons import Person, children_of
from namewright.roster.vocabulary import Role

CHILD, GROWN = Person((0,), (Role.FULL,)), Person((1,), (Role.FULL,))
TOLD = [  # rows, the columns of who may be the child, why
    (["Mia Vost|Ida Vost", "Leo Tarn|Kim Tarn"], [0, 1], "nothing tells"),
    (["Ida Vost|Mia Vost|ida.vost@example.org", "Kim Tarn|Leo Tarn|kimt@example.org"], [1], "an address of the first"),
    (["Mia Vost|Ida Vost|ida.vost@example.org", "Leo Tarn|Kim Tarn|kimt@example.org"], [0], "of the second"),
    (["Mia Vost|Ida Vost|x1@example.org", "Leo Tarn|Kim Tarn|x2@example.org"], [0], "an address behind the second"),
    (["Mia Vost|Ida Vost|mia@example.org|ida@example.org", "Leo Tarn|Kim Tarn|leo@example.org|kim@example.org"],
     [0, 1], "both have one"),
    (["Mia Vost|Ida Vost|555-0142", "Leo Tarn|Kim Tarn|555-0143"], [0], "a telephone behind the second"),
    (["Mia Vost|Ida Vost|12.03.2019", "Leo Tarn|Kim Tarn|01.04.2019"], [0, 1], "a birthday behind both"),
    (["Mia Vost|Ida Vost|Mutter", "Leo Tarn|Kim Tarn|Vater"], [0], "a word for a parent behind the second"),
    (["Mia Vost|Ida Vost", "Leo Tarn|Kim Tarn", "Noé Vost|Ida Vost"], [0], "siblings, the parent second"),
    (["Ida Vost|Mia Vost", "Kim Tarn|Leo Tarn", "Ida Vost|Noé Vost"], [0, 1], "siblings, or a child with two rows"),
    (["Mia Vost|Mia Vost", "Leo Tarn|Leo Tarn"], [0, 1], "the same name twice"),
    (["Mia Vost", "Leo Tarn"], [0, 1], "rows cut short"),
]


@pytest.mark.parametrize(("rows", "columns", "why"), TOLD, ids=[row[2] for row in TOLD])
def test_who_may_be_the_child(rows: list[str], columns: list[int], why: str) -> None:
    found = children_of([CHILD, GROWN], [row.split("|") for row in rows])
    assert [person.columns[0] for person in found] == columns, why


def _read(*rows: str) -> list[str] | str:
    try:
        return [child.practice for child in read_roster("\n".join(rows)).children]
    except RosterError as error:
        return error.message.key


READ = [  # rows, who is read or what is asked, why
    (["Mia,Smith,Anna,Smith", "Leo,Jones,Ben,Jones", "Noah,Brown,Sara,Brown"], "roster.two_people", "a family each"),
    (["Mia,Müller,Anna,Weber", "Leo,Schmidt,Ben,Koch", "Noah,Wagner,Sara,Schulz"], "roster.two_people", "two families"),
    (["García\tLucía\tGarcía\tAna", "López\tHugo\tLópez\tEva", "Pérez\tPablo\tPérez\tInés"], "roster.two_people",
     "family names first"),
    (["Anna;Smith;Mr;Mia;Smith", "Ben;Jones;Mrs;Leo;Jones", "Sara;Brown;Ms;Noah;Brown"], ["Anna", "Ben", "Sara"],
     "a title before the second"),
    (["Frau;Anna;Weber;Mia;Weber", "Herr;Ben;Koch;Leo;Koch", "Frau;Sara;Wolf;Noah;Wolf"], ["Mia", "Leo", "Noah"],
     "a title before the first"),
    (["Anna,Rossi,anna.r@example.org,Mia,Rossi", "Bruno,Ricci,bruno@example.org,Leo,Ricci",
      "Sara,Greco,s.sara@example.org,Luca,Greco"], ["Mia", "Leo", "Luca"], "an address of the first"),
    (["Mia,Silva,12/03/2019,Ana,Silva", "Leo,Costa,01/04/2019,Rui,Costa", "Inês,Sousa,30/09/2019,Eva,Sousa"],
     ["Mia", "Leo", "Inês"], "a birthday behind the first"),
    (["Mia,Petit,Anna,Petit", "Noé,Petit,Anna,Petit", "Léo,Roux,Paul,Roux"], ["Mia", "Noé", "Léo"], "siblings"),
    (["Anna Weber\tMia Weber", "Ben Koch\tLeo Koch"], "roster.two_wholes", "whole names of one family"),
    (["Anna Weber\tMia Koch", "Ben Wolf\tLeo Roth"], "roster.two_wholes", "whole names of two"),
    (["Weber, Anna\tWeber, Mia", "Koch, Ben\tKoch, Leo"], "roster.two_wholes", "with commas"),
    (["Frau Anna Weber\tMia Weber", "Herr Ben Koch\tLeo Koch"], ["Mia", "Leo"], "titles in the cells"),
    (["Mia,Smith,Leeds,Red", "Leo,Jones,York,Blue", "Noah,Brown,Ripon,Green"], ["Mia", "Leo", "Noah"],
     "towns and groups are nobody"),
]


@pytest.mark.parametrize(("rows", "wanted", "why"), READ, ids=[row[2] for row in READ])
def test_a_child_and_a_grown_up_in_each_row(rows: list[str], wanted: list[str] | str, why: str) -> None:
    assert _read(*rows) == wanted, why


def test_what_is_asked_says_both_ways_to_answer() -> None:
    rows = "García\tLucía\tLópez\tAna\nGómez\tHugo\tRuiz\tEva\nPérez\tPablo\tDíaz\tInés"
    with pytest.raises(RosterError) as asked:
        read_roster(rows)
    said = asked.value.message
    assert (said["one"], said["other"], said["line"]) == ("García Lucía", "López Ana", 1)
    read = [[child.practice for child in read_roster(rows, columns=str(said[way])).children]
            for way in ("columns", "or_columns")]
    assert read == [["Lucía", "Hugo", "Pablo"], ["Ana", "Eva", "Inés"]]


def test_what_was_told_is_said_once() -> None:
    roster = read_roster("Mia Vost\tIda Vost\t555-0142\nLeo Tarn\tKim Tarn\t555-0143")
    told = [note for note in roster.notes if note.key == "roster.child_judged"]
    assert [(note["name"], note["other"]) for note in told] == [("Mia Vost", "Ida Vost")]


BUSES = {
    "en": ("Bus 4\nDriver: Jo Reed\nMonitor: Al Rosk\n", "Mill Lane", "Mom"),
    "es": ("Ruta 4\nConductor: Jo Reed\nMonitora: Al Rosk\n", "Calle Mayor", "Mamá"),
    "fr": ("Ligne 4\nConducteur: Jo Reed\nAccompagnatrice: Al Rosk\n", "Rue du Moulin", "Maman"),
    "de": ("Linie 4\nFahrer: Jo Reed\nBegleitung: Al Rosk\n", "Lindenstraße", "Mama"),
    "it": ("Linea 4\nAutista: Jo Reed\nAssistente: Al Rosk\n", "Via Roma", "Mamma"),
    "pt": ("Autocarro 4\nMotorista: Jo Reed\nMonitora: Al Rosk\n", "Rua Nova", "Mãe"),
}


@pytest.mark.parametrize("tongue", BUSES)
@pytest.mark.parametrize("sign", ["\t", ";", ",", " | ", "   "])
@pytest.mark.parametrize("names", [["Mia", "Leo", "Ava", "Ben"], ["Mia Vost", "Leo Tarn", "Ava Moss", "Ben Grell"],
                                   ["Xobrel", "Zuthe", "Vemka", "Rinno"],
                                   ["Xobrel Vank", "Zuthe Menk", "Vemka Drun", "Rinno Tovel"]])
@pytest.mark.parametrize("grown", ["{who}: {given}", "{given} {family}", "{given} Holm"])
def test_who_is_told_behind_the_time_of_a_stop_is_a_grown_up(
        tongue: str, sign: str, names: list[str], grown: str) -> None:
    above, stop, who = BUSES[tongue]
    parents = ["Pat", "Dagny", "Kwelu", "Hanna"]
    rows = [sign.join((name, stop if at % 2 else "Church", f"7:0{at}",
                       grown.format(who=who, given=parent, family=name.split()[-1]), f"555-010{at}"))
            for at, (name, parent) in enumerate(zip(names, parents, strict=True))]
    assert [child.practice for child in read_roster(above + "\n".join(rows)).children] == [
        name.split()[0] for name in names]


def test_names_behind_times_alone_are_the_children() -> None:
    text = "7:00\tMia Vost\tMill Lane\n7:05\tLeo Tarn\tMill Lane\n7:10\tAva Moss\tChurch"
    assert [child.practice for child in read_roster(text).children] == ["Mia", "Leo", "Ava"]
