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


HEADS = [("K1", "K2"), ("AM", "PM"), ("3-year-olds", "4-year-olds"), ("3 años", "4 años"), ("Infantil 3", "Infantil 4"),
         ("Petite section", "Moyenne section"), ("PS", "MS"), ("CP", "CE1"), ("3 Jahre", "4 Jahre"), ("1a", "1b"),
         ("3 anni", "4 anni"), ("Piccoli", "Mezzani"), ("Pré I", "Pré II"), ("1.º ano", "2.º ano"),
         ("Present", "Absent"), ("Asiste", "Ausente"), ("Présents", "En retard"), ("Anwesend", "Entschuldigt"),
         ("Presenti", "In ritardo"), ("Presentes", "Faltas")]


@pytest.mark.parametrize("heads", HEADS)
@pytest.mark.parametrize("sign", ["\t", ";", ",", " | ", "wide"])
@pytest.mark.parametrize("names", [(["Mia", "Leo"], ["Ida", "Noah", "Ava"]),
                                   (["Xobrel", "Vemka"], ["Zuthe", "Rinno", "Pelu"]),
                                   (["Mia Vost", "Xobrel Quix"], ["Ida Moss", "Zuthe Drun", "Juliana Leite"])])
def test_under_ages_levels_and_states_every_column_is_a_group(
        heads: tuple[str, str], sign: str, names: tuple[list[str], list[str]]) -> None:
    one, two = names
    rows = [heads, *zip([*one, ""], two, strict=True)]
    text = "\n".join(f"{left:22}{right}" if sign == "wide" else sign.join((left, right)) for left, right in rows)
    assert practised(text) == [name.split()[0] for name in (*one, *two)]


@pytest.mark.parametrize("first", ["", "No.", "Nr."])
def test_a_column_that_counts_the_rows_is_no_group(first: str) -> None:
    heads = ("Grupo Rojo", "Grupo Azul") if first == "No." else ("Groupe rouge", "Groupe bleu")
    text = f"{first}\t{heads[0]}\t{heads[1]}\n1\tMia Vost\tIda Moss\n2\tXobrel Quix\tZuthe Drun\n3\t\tNoah Bell"
    assert practised(text) == ["Mia", "Xobrel", "Ida", "Zuthe", "Noah"]


def test_columns_that_end_at_different_rows_are_groups_under_words_that_nobody_knows() -> None:
    assert practised("Bears\tFoxes\nXobrel Quix\tZuthe Drun\nVemka Tarn\t\nRinno Moss\t") == [
        "Xobrel", "Vemka", "Rinno", "Zuthe"]


@pytest.mark.parametrize(("text", "names"), [
    ("Name\tAbsent\nMia Vost\tx\nLeo Tarn\t", "Mia Leo"), ("Mia\tK1\nLeo\tK2\nAva\tK1", "Mia Leo Ava"),
    ("Name,Klasse\nMia Vost,1a\nLeo Tarn,1b", "Mia Leo"), ("Given\tFamily\nMia\tVost\nLeo\tTarn", "Mia Leo"),
    ("Mia Vost, 1a\nLeo Tarn, 1b\nAva Moss, 1a", "Mia Leo Ava"), ("Red,Blue\nMia,Leo\nAva,Ben", "Mia Leo Ava Ben"),
])
def test_other_columns_stay(text: str, names: str) -> None:
    assert practised(text) == names.split()


def test_two_groups_of_given_names_under_names_of_their_own_are_asked_about() -> None:
    """Both columns are of given names, so no one of them is of families: four of eight were made of two each."""
    with pytest.raises(RosterError) as refused:
        read_roster("Acorns\tOaks\nWilf\tPippa\nOrla\tJasper\nMina\tZayd\nElodie\tIvo")
    assert refused.value.message.key == "roster.two_readings"


@pytest.mark.parametrize("titles", ["First name\tLast name", "Apellidos\tNombre", "Nom\tPrénom",
                                    "Nachname\tVorname\tgeb.", "N.\tCognome\tNome", "Nome próprio\tApelido"])
@pytest.mark.parametrize("gap", ["\t\t", "\t\t\t"])
def test_two_tables_of_given_and_family_names_about_a_gap_lose_nobody(titles: str, gap: str) -> None:
    def row(name: str, at: int) -> str:
        given, family = name.split()
        cells = {"First name": given, "Nombre": given, "Prénom": given, "Vorname": given, "Nome": given,
                 "Nome próprio": given, "N.": str(at), "geb.": f"0{at}.02.2019"}
        return "\t".join(cells.get(title, family) for title in titles.split("\t"))

    rows = [gap.join(row(name, at) for name in pair) for at, pair in enumerate(zip(ONE, TWO, strict=True), 1)]
    heads = gap.join(["1 A" + "\t" * titles.count("\t"), "1 B"])
    text = "\n".join([heads, gap.join([titles, titles]), *rows, row("Zoe Fenn", 4)])
    assert sorted(practised(text)) == ["Ida", "Leo", "Mira", "Noah", "Vemka", "Xobrel", "Zoe"]


@pytest.mark.parametrize(("groups", "titles"), [
    ("Équipe A||Équipe B|", "Nom|Prénom"), ("1A||1B|", "Cognome|Nome"), ("Group 1|||Group 2||", "Last|First|Age"),
    ("Jungen|||Mädchen||", "Nachname|Vorname|Alter"), ("Niñas||Niños|", "Apellidos|Nombre"),
    ("Bambini||Bambine|", "Cognome|Nome"), ("Sala 1||Sala 2|", "Apelido|Nome")])
def test_groups_side_by_side_with_titles_of_their_own_lose_nobody(groups: str, titles: str) -> None:
    def row(name: str) -> str:
        given, family = name.split()
        return "\t".join((family, given, "5")[: titles.count("|") + 1])

    rows = ["\t".join(map(row, pair)) for pair in zip(ONE, TWO, strict=True)]
    text = "\n".join([groups.replace("|", "\t"), "\t".join([titles.replace("|", "\t")] * 2), *rows])
    assert sorted(practised(text)) == sorted(name.split()[0] for name in (*ONE, *TWO))
    assert {child.family for child in read_roster(text).children} == {name.split()[1] for name in (*ONE, *TWO)}


def test_boys_and_girls_over_names_and_ages_are_all_made() -> None:
    text = "Boys\t\tGirls\t\nName\tAge\tName\tAge\nLeo Tarn\t5\tMira Vost\t5\nXobrel Quix\t6\tIda Zell\t5"
    assert sorted(practised(text)) == ["Ida", "Leo", "Mira", "Xobrel"]
