"""A child with a row for each grown-up is one child, and that is told; two of one name stay two."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

TITLES = "Student ID,Student Last Name,Student First Name,Date of Birth,Contact First Name,Relationship"


def _practised(*rows: str) -> list[str]:
    return [child.practice for child in read_roster("\n".join((TITLES, *rows))).children]


def test_a_row_for_each_grown_up_makes_one_child() -> None:
    rows = ("40100,Vost,Mira,2021-01-24,Olga,Mother", "40100,Vost,Mira,2021-01-24,Rolf,Father",
            "40101,Tarn,Leo,2020-04-28,Ruth,Mother")
    assert _practised(*rows) == ["Mira", "Leo"]
    roster = read_roster("\n".join((TITLES, *rows)))
    report = roster.lines[2]
    assert report.outcome is Outcome.FURTHER
    assert report.child == roster.children[0]  # what is erased of the child takes this row along
    assert [(note.key, dict(note.fields)) for note in report.notes] == [
        ("roster.same_child", {"line": 2, "shared": "40100"})]


def test_children_of_one_name_with_numbers_of_their_own_are_two() -> None:
    assert _practised("40100,Vost,Mira,2021-01-24,Olga,Mother", "40107,Vost,Mira,2020-03-02,Ruth,Mother") == [
        "Mira", "Mira"]


def test_twins_share_a_birthday_and_are_two() -> None:
    assert _practised("40100,Vost,Mira,2021-01-24,Olga,Mother", "40101,Vost,Leo,2021-01-24,Olga,Mother") == [
        "Mira", "Leo"]


def test_a_table_about_nobody_else_keeps_every_row() -> None:
    roster = read_roster("First name\tLast name\tBirthday\nMira\tVost\t2021-01-24\nMira\tVost\t2021-01-24")
    assert len(roster.children) == 2


def test_a_mother_and_a_father_one_below_the_other_are_of_one_child() -> None:
    """Without a number of the child; the telephones are theirs. Two mothers are of two children."""
    titles = ("Child,Guardian,Relation,Phone", "Kind,Elternteil,Beziehung,Telefon", "Enfant,Parent,Lien,Téléphone",
              "Niño,Tutor,Parentesco,Teléfono", "Bambino,Genitore,Parentela,Telefono",
              "Criança,Responsável,Relação,Telefone")
    words = ("mother father", "Mutter Vater", "mère père", "madre padre", "madre padre", "mãe pai")
    for title, pair in zip(titles, words, strict=True):
        one, two = pair.split()
        rows = f"Mira Vost,Jo Vost,{one},5550134\nMira Vost,Sam Vost,{two},5550135\nLeo Tarn,Ruth Tarn,{one},5550136"
        roster = read_roster(f"{title}\n{rows}")
        assert [child.practice for child in roster.children] == ["Mira", "Leo"], title
        assert roster.lines[2].outcome is Outcome.FURTHER
        assert len(read_roster(f"{title}\n{rows.replace(two, one)}").children) == 3


def test_children_with_numbers_of_their_own_stay_two_beside_a_mother_and_a_father() -> None:
    assert _practised("40100,Vost,Mira,2021-01-24,Olga,Mother", "40107,Vost,Mira,2020-03-02,Rolf,Father") == [
        "Mira", "Mira"]


GROWN_UPS = [("mother", "father"), ("Mutter", "Vater"), ("mère", "père"), ("madre", "padre"), ("mamma", "babbo"),
             ("mãe", "pai")]


@pytest.mark.parametrize(("one", "two"), GROWN_UPS)
@pytest.mark.parametrize("line", ["{}, {} {}, 555 {}", "{} ({} {}, 555 {})", "{} – {} {} 555 {}", "{}\t{}\t{}\t555 {}",
                                  "{},{},{},555 {}", "{2}\t{1}\t{0}\t555 {3}"])
def test_a_line_for_each_grown_up_without_titles_makes_each_child_once(line: str, one: str, two: str) -> None:
    contacts = [("Mira Vost", one, "Olga Vost", "0101"), ("Mira Vost", two, "Rolf Vost", "0102"),
                ("Leo Tarn", one, "Ruth Tarn", "0103"), ("Leo Tarn", two, "Emil Tarn", "0104")]
    roster = read_roster("\n".join(line.format(*contact) for contact in contacts))
    assert [child.given for child in roster.children] == ["Mira", "Leo"]
    assert [report.outcome for report in roster.lines] == [Outcome.CHILD, Outcome.FURTHER] * 2
    twice = "\n".join(line.format(*contact).replace(two, one) for contact in contacts)
    assert len(read_roster(twice).children) == 4, "two mothers are of two children"


def test_without_titles_a_number_or_a_birthday_of_its_own_is_another_child() -> None:
    assert len(read_roster("1. Mira Vost, mother Olga\n2. Mira Vost, father Rolf\n3. Leo Tarn").children) == 3
    assert len(read_roster("Mira Vost, 2.3.2019, mother Olga\nMira Vost, 4.5.2020, father Rolf\nLeo Tarn, 1.1.2019, x"
                           ).children) == 3
    assert len(read_roster("Mira, mother Olga\nMira, father Rolf\nLeo Tarn").children) == 3, "a given name alone"


def test_a_group_that_stands_in_rows_beside_grown_ups_is_no_child() -> None:
    rows = "Rot\tMira Vost\tmother Jo\nRot\tLeo Tarn\tmother Bo\nBlau\tNoah Holm\tfather Ed\nBlau\tIda Kern\tfather Al"
    assert [child.given for child in read_roster(rows).children] == ["Mira", "Leo", "Noah", "Ida"]


@pytest.mark.parametrize("titles", ["Child\tHousehold\tAdult 1\tPhone", "Niño/a\tHogar\tAdulto\tTeléfono",
                                    "Enfant\tFoyer\tAdulte\tTéléphone", "Kind\tHaushalt\tEltern\tTelefon",
                                    "Bambino\tNucleo\tAdulti\tTelefono", "Criança\tAgregado\tAdulto\tTelefone"])
def test_a_child_of_two_homes_is_made_once(titles: str) -> None:
    rows = ["Mira Vost\t1\tJo Vost\t555-0143", "Mira Vost\t2\tIda Tarn\t555-0190", "Leo Quix\t1\tYul Quix\t555-0191"]
    roster = read_roster("\n".join([titles, *rows]))
    assert [one.practice for one in roster.children] == ["Mira", "Leo"]
    assert roster.lines[2].notes[0].key == "roster.same_child"


def test_of_one_name_in_two_rooms_are_two_beside_their_parents() -> None:
    text = "Child\tRoom\tMother\nMira Vost\t1\tJo Vost\nMira Vost\t2\tIda Vost\nLeo Quix\t1\tAnna Quix"
    assert [one.practice for one in read_roster(text).children] == ["Mira", "Mira", "Leo"]
