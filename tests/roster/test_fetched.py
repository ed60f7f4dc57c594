"""Who brings or fetches a child is no name it goes by; a name to go by stays one."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

KIN = [("Mum", "Dad"), ("mamá", "papá"), ("maman", "mamie"), ("Mama", "Oma"), ("mamma", "nonno"), ("mãe", "avó")]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("kin", KIN)
@pytest.mark.parametrize("form", ["{} ({}) – 15:20 ({})", "7:45 {} ({}), 15:20 ({})", "{} ({}) ({})", "{} [{}] [{}]"])
def test_a_whole_name_beside_words_for_a_family_is_a_grown_up(kin: tuple[str, str], form: str) -> None:
    rows = [("Vost, Mira", kin[0], "Rosa Marlene"), ("Quix, Xobrel", "Clara Ines", kin[1]),
            ("Tarn, Leo", kin[1], "Anna Paola"), ("Moss, Ida", "Marta Laura", "Julia Emma")]
    text = "\n".join(form.format(*row) for row in rows)
    assert practised(text) == ["Mira", "Xobrel", "Leo", "Ida"]
    assert all(report.notes for report in read_roster(text).lines)


def test_what_a_child_goes_by_stays() -> None:
    assert practised("Katherine Moss (Katie)\nMira Vost (Oma)\nLeo Tarn (Opa)\nIda Bell (Mama)") == [
        "Katie", "Mira", "Leo", "Ida"]
    assert "Anna Maria" in practised("Annamaria Moss (Anna Maria)\nMira Vost\nLeo Tarn\nIda Bell")


@pytest.mark.parametrize("titles", [
    "Child;In;Brought by;Out;Collected by", "Niña;Entrada;La trae;Salida;Recogida por",
    "Kind;um;Gebracht von;um;Geholt von",
    "Enfant;Arrivée;Déposé par;Départ;Repris par",
    "Bambina;Entrata;Portata da;Uscita;Ritirata da",
    "Criança;Chegada;Trazida por;Saída;Entregue a"])
def test_a_column_of_who_comes_with_a_child_is_no_column_of_children(titles: str) -> None:
    rows = ["Xobrel Quix;7:40;Zorin Pell;16:02;Ada Pell", "Vemka Drun;8:05;Tarnu Elm;15:40;Bela Ferrow",
            "Odelo Fask;7:55;Ulmo Orn;16:20;Ida Orn", "Kivor Lund;8:10;Pell Zorin;15:50;Ana Lund"]
    assert practised("\n".join([titles, *rows])) == ["Xobrel", "Vemka", "Odelo", "Kivor"]
