"""What a comma says where a list has one, judged by its other lines."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.judge import Judge
from namewright.roster.parsing import read_roster
from namewright.roster.several import Several

WHOLE = ["Katla Pruner", "Kasimir Dolt", "Wenna Praske", "Theo Ashgrove"]


@pytest.mark.parametrize(("line", "given", "family"), [
    ("Tamsel, Ottilka L", "Ottilka", "Tamsel"), ("Tamsel, Ottilka Quen", "Ottilka", "Tamsel"),
    ("Rubio, Mª José", "María José", "Rubio"),
])
def test_family_and_given_name_among_whole_names(line: str, given: str, family: str) -> None:
    """A remark stands behind one name only where the list says the same again."""
    child = read_roster("\n".join([*WHOLE, line])).children[-1]
    assert (child.given, child.family) == (given, family)


@pytest.mark.parametrize("line", ["Xobrel, Tarnul", "Mia, Tarnul"])
def test_two_words_by_comma_among_whole_names_are_asked_about(line: str) -> None:
    """They may be two children, so nobody is made of them in silence."""
    report = read_roster("\n".join([*WHOLE, line])).lines[-1]
    assert report.child is None
    assert [note.key for note in report.notes] == ["roster.two_children"]


def test_what_comes_again_behind_one_name_is_a_remark() -> None:
    names, foods = ["Mira", "Gaspar", "Nuno", "Lotte", "Ivo", "Senta"], ["Äpfel", "Trauben"]
    roster = read_roster("\n".join(f"{name}, {foods[at % 2]}" for at, name in enumerate(names)))
    assert [child.practice for child in roster.children] == names


@pytest.mark.parametrize("names", [
    ("Vensal Tremwal, Miadel", "Chomper Trytran, Xubyth", "Xorshath Vumham, Jeshe", "Yorfog Thachym, Kwanfoud"),
    ("Vensal, Miadel", "Chomper, Xubyth", "Xorshath, Jeshe", "Yorfog, Kwanfoud")])
@pytest.mark.parametrize("ending", [
    ("Un saludo,", "Encarnita Vale", "Secretaría del centro"), ("Kind regards,", "Edna Vale", "School Office"),
    ("Viele Grüße,", "Elke Vale", "Schulbüro Nord"), ("Cordialement,", "Odile Vale", "Secrétariat Nord"),
    ("Cordiali saluti,", "Elda Vale", "Segreteria Nord"), ("Cumprimentos,", "Elza Vale", "Secretaria Norte")])
def test_who_signs_below_a_numbered_list_does_not_tell_what_its_commas_part(
    names: tuple[str, ...], ending: tuple[str, ...]
) -> None:
    text = "\n".join((*(f"{at}.- {name}" for at, name in enumerate(names, 1)), "", *ending))
    assert [child.practice for child in read_roster(text).children][: len(names)] == [
        name.split(", ")[1] for name in names]


@pytest.mark.parametrize("remarks", [("peanuts", "egg", "milk"), ("Hort", "Hort", "Bus")])
def test_remarks_behind_the_commas_of_a_numbered_list_stay_remarks(remarks: tuple[str, ...]) -> None:
    text = "\n".join(f"{at}. {name}, {remark}" for at, (name, remark) in enumerate(
        zip(("Mira Vost", "Leo Tarn", "Ida Kern"), remarks, strict=True), 1))
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ida"]


_BY_COMMA = (  # lists written family name first, and two given names about a comma
    (("Smith, Anna", "Jones, Ben", "Brown, Sara", "Wilson, Tom"), "Mia, Leo"),
    (("García, Lucía", "López, Hugo", "Pérez, Pablo", "Gómez, Inés"), "Valeria, Mateo"),
    (("Dubois, Louise", "Moreau, Camille", "Durand, Manon", "Lefebvre, Théo"), "Chloé, Noé"),
    (("Müller, Anna", "Schmidt, Ben", "Weber, Tim", "Fischer, Lea"), "Emma, Paul"),
    (("Rossi, Giulia", "Ferrari, Chiara", "Bianchi, Matteo", "Ricci, Sara"), "Luca, Giorgia"),
    (("Silva, Beatriz", "Pereira, Tiago", "Ferreira, Joana", "Costa, Rui"), "Carolina, Rafael"),
)


@pytest.mark.parametrize("at", [0, 2, 4])
@pytest.mark.parametrize(("names", "line"), _BY_COMMA, ids=[line for _, line in _BY_COMMA])
def test_two_given_names_by_comma_are_asked_about_among_family_names(names: tuple[str, ...], line: str,
                                                                     at: int) -> None:
    roster = read_roster("\n".join([*names[:at], line, *names[at:]]))
    assert [len(roster.children), roster.lines[at].child] == [len(names), None]
    assert [note.key for note in roster.lines[at].notes] == ["roster.two_children"]


@pytest.mark.parametrize("family", ["Robert", "Daniel", "James", "Peter", "Hugo", "Bruno", "Charles", "Quillwort"])
@pytest.mark.parametrize("names", [names for names, _ in _BY_COMMA], ids=["en", "es", "fr", "de", "it", "pt"])
def test_a_given_name_that_is_a_family_name_too_is_one_before_a_comma(names: tuple[str, ...], family: str) -> None:
    roster = read_roster("\n".join([*names, f"{family}, Leo"]))
    assert [roster.children[-1].given, roster.children[-1].family] == ["Leo", family]


def test_titles_of_parts_of_the_day_stay_titles_beside_each_other() -> None:
    roster = read_roster("Mattina\nGiulia\nMarco\nSara\n\nPomeriggio\nLuca\nChiara\nPietro")
    assert [child.practice for child in roster.children] == ["Giulia", "Marco", "Sara", "Luca", "Chiara", "Pietro"]
    assert all(line.outcome is not Outcome.LEFT_OUT for line in roster.lines)


def test_where_most_pairs_may_be_two_children_so_may_the_others() -> None:
    """In a column of children two given names stood in each cell, and who is on no list was merged with the second."""
    known = ["Mia, Leo", "Anna, Ben", "Emma, Noah", "Lina, Paul"]
    judge = Judge([*known, "Xobrel, Tilo"])
    assert judge.several("Xobrel, Tilo") == Several(("Xobrel", "Tilo"), False)
    assert Judge(["Vost, Mia", "Tarn, Leo", "Quill, Anna", "Xobrel, Tilo"]).several("Xobrel, Tilo") is None


@pytest.mark.parametrize(("line", "outcome"), [
    ("Xobrel: Vemkat", Outcome.LEFT_OUT), ("Xobrel: Peanuts", Outcome.CHILD), ("Xobrel: Blue", Outcome.CHILD),
    ("Mia: Vemkat", Outcome.CHILD), ("Xobrel Tarn: Vemkat", Outcome.CHILD)])
def test_a_word_and_a_colon_before_another_on_no_list_is_asked_about(line: str, outcome: Outcome) -> None:
    """Nothing tells whether the first is the child or stands over it; what is known of either does."""
    assert read_roster(f"Anna\nLeo\n{line}\nEmma").lines[2].outcome is outcome


@pytest.mark.parametrize("row", ["Mira     Tilo     Anna", "Xobrel     Vemka     Tunzo", "ნაირა     თამარ     რევაზ"])
def test_three_words_far_apart_are_not_one_child(row: str) -> None:
    roster = read_roster(f"{row}\nEmil")
    assert [child.practice for child in roster.children] in (["Emil"], [*row.split(), "Emil"])


@pytest.mark.parametrize("day", ["Friday", "Dimanche", "Freitag", "Lunes", "Venerdì", "sábado"])
def test_the_only_day_among_names_may_be_a_child(day: str) -> None:
    """It is asked about; over the names, below an empty line or beside another day it stands over some."""
    for among in (f"Emma\nTheo\n{day}\nLuz", f"Emma Vost\nTheo Tarn\n{day}"):
        assert [report.text for report in read_roster(among).lines if report.outcome is Outcome.LEFT_OUT] == [day]
    for over in (f"{day}\nEmma\nTheo", f"Emma\nTheo\n\n{day}\nLuz", f"Monday\nEmma\nTheo\n{day}\nLuz"):
        roster = read_roster(over)
        assert day not in {child.practice for child in roster.children}
        assert not [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT]


@pytest.mark.parametrize("line", ["Probably Jan or Max", "Jan oder Max", "Ana o Luz", "Léa ou Zoé",
                                  "Jan Vost or Max Tarn"])
def test_of_two_names_with_or_between_nobody_is_made(line: str) -> None:
    roster = read_roster(f"Mia\n{line}\nTheo\nLena")
    assert [child.practice for child in roster.children] == ["Mia", "Theo", "Lena"]
    assert roster.lines[1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("word", ["Maybe", "vielleicht", "Peut-être", "Quizás", "Forse", "Talvez"])
def test_who_is_not_sure_is_asked(word: str) -> None:
    roster = read_roster(f"Mia Vost\n{word} Luz\nTheo Tarn\nLena Brask")
    assert [child.practice for child in roster.children] == ["Mia", "Theo", "Lena"]
    assert roster.lines[1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("line", [line for _, line in _BY_COMMA])
@pytest.mark.parametrize("titles", ["Child\tBus", "Alumno\tGrupo", "Élève\tClasse", "Kind\tKlasse", "Alunno\tMensa",
                                    "Aluno\tTurma"])
def test_a_row_of_a_table_is_one_child_though_its_family_name_is_given_to_others(titles: str, line: str) -> None:
    names = [*next(names for names, own in _BY_COMMA if own == line), line]
    roster = read_roster("\n".join([titles, *(f"{name}\tA" for name in names)]))
    assert [(one.given, one.family) for one in roster.children] == [tuple(name.split(", ")[::-1]) for name in names]


@pytest.mark.parametrize("family", ["Al-Masri", "Oliver"])
def test_rows_that_come_again_for_another_grown_up_do_not_tell_what_a_comma_parts(family: str) -> None:
    names = [f"{family}, Anh", "Vost, Mira", "Quix, Tilo", "Tarn, Xobrel"]
    rows = [f"{name}\t{adult} Moss\t555-01{at}{len(adult)}" for at, name in enumerate(names) for adult in ("Jo", "Ida")]
    roster = read_roster("\n".join(["Student\tContact\tPhone", *rows]))
    assert [one.practice for one in roster.children] == ["Anh", "Mira", "Tilo", "Xobrel"]
