"""Words that hold a free place, or show how a row is filled in, are nobody; where they are names too, it is asked."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

FREE = ["EMPTY", "TBD", "open seat", "Vacancy", "VACÍO", "(libre)", "por asignar", "Vacante", "place libre",
        "À pourvoir", "noch frei", "N.N.", "(frei)", "LIBERO", "Posto libero", "da definire", "VAGA", "Lugar vago",
        "a definir"]
EXAMPLES = [("Example", "Student"), ("Sample", "Student"), ("Ejemplo", "Alumno"), ("Élève", "Exemple"),
            ("Muster", "Kind"), ("Esempio", "Alunno"), ("Aluno", "Teste"), ("First", "Last")]


@pytest.mark.parametrize("words", FREE)
@pytest.mark.parametrize("row", ["7\t{}", "7\t{}\t", "7\t{}\tx"])
def test_a_free_place_in_a_table_is_nobody(words: str, row: str) -> None:
    roster = read_roster("Place\tName\tBus\n1\tMia Vost\t4\n2\tLeo Quix\t\n3\tIda Tarn\t7\n" + row.format(words))
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ida"]
    assert roster.lines[-1].outcome is not Outcome.CHILD
    assert roster.lines[-1].notes


@pytest.mark.parametrize(("one", "two"), EXAMPLES)
def test_a_row_that_shows_how_is_nobody(one: str, two: str) -> None:
    roster = read_roster(f"First name,Last name,E-mail\n{one},{two},a@b.example\nMia,Vost,\nLeo,Quix,e@f.example")
    assert [child.practice for child in roster.children] == ["Mia", "Leo"]
    assert roster.lines[1].outcome in {Outcome.HEADING, Outcome.HEADER}


def test_a_word_that_may_be_a_name_is_asked_about_or_stays() -> None:
    roster = read_roster("Vorname\tNachname\nMax\tBeispiel\nMia\tVost\nLeo\tFree\nIda\tSample\nBo\t")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ida", "Bo"]
    assert roster.lines[1].outcome is Outcome.LEFT_OUT
    labelled = read_roster("Name: Vaga\nMia\nName: Libre")
    assert [child.practice for child in labelled.children] == ["Vaga", "Mia", "Libre"]
    table = read_roster("Name\tBus\nMia\t4\nLeo\t7\nFree\t4\nFREE\t7")
    assert [line.outcome for line in table.lines[3:]] == [Outcome.LEFT_OUT, Outcome.HEADING]
