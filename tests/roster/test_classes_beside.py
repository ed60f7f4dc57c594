"""Classes side by side in a table are read one after the other; parents beside children are asked about as before."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster

ONE, TWO = ["Mira Vost", "Xobrel Quix", "Leo Tarn"], ["Ida Moss", "Vemka Drun", "Noah Bell"]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("heads", [("Room 7", "Room 8"), ("Ms. Ferrow's class", "Mr. Odell's class"),
                                   ("Sala 3", "Sala 4"), ("Clase de Irune", "Clase de Maite"), ("CP A", "CP B"),
                                   ("Gruppe 3", "Gruppe 4"),
                                   ("Sezione C", "Sezione D"), ("Turma C", "Turma D"), ("Klasse 1c", "Klasse 1d")])
@pytest.mark.parametrize("sign", ["\t", "\t\t", ";", ";;;"])
def test_under_names_of_classes_every_column_is_a_class(heads: tuple[str, str], sign: str) -> None:
    text = "\n".join(sign.join(pair) for pair in (heads, *zip(ONE, TWO, strict=True)))
    assert sorted(practised(text)) == sorted(["Mira", "Xobrel", "Leo", "Ida", "Vemka", "Noah"])
    assert sorted(practised(f"{text}\n{sign}Zoe Fenn")) == sorted([*practised(text), "Zoe"])


@pytest.mark.parametrize("titles", ["No.\tChild\tDOB", "Nr.\tKind\tgeb.", "Nº\tAlumno\tF. nac.", "N.\tAlunno\tNato il"])
@pytest.mark.parametrize("gap", ["\t", "\t\t", "\t\t\t"])
def test_a_gap_between_two_tables_tells_nothing(titles: str, gap: str) -> None:
    rows = [f"{at}\t{one}\t1.{at}.2020{gap}{at}\t{two}\t2.{at}.2020" for at, (one, two) in
            enumerate(zip(ONE, TWO, strict=True), 1)]
    text = "\n".join([f"Room 7\t\t{gap}Room 8\t\t", f"{titles}{gap}{titles}", *rows])
    assert sorted(practised(text)) == sorted(["Mira", "Xobrel", "Leo", "Ida", "Vemka", "Noah"])


def test_an_empty_column_between_the_parts_of_a_name_is_none() -> None:
    assert practised("Mia\t\tVost\nLeo\t\tTarn\nIda\t\tMoss") == ["Mia", "Leo", "Ida"]


@pytest.mark.parametrize("heads", ["Student\tParent", "Kind\tMutter", "Alumno\tTutora"])
def test_who_stands_beside_a_child_is_no_class(heads: str) -> None:
    text = "\n".join([heads, *(f"{one}\t{two}" for one, two in zip(ONE, TWO, strict=True))])
    try:
        assert practised(text) == ["Mira", "Xobrel", "Leo"]
    except RosterError as error:
        pytest.fail(str(error.message))
