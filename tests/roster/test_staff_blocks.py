"""Adults in a block of their own beside the class are told and not made, in six languages and wherever they stand."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

KIDS = ["Mira Vost", "Xobrel Quix", "Leo Tarn"]
WORDS = [("Staff", "Children (3)"), ("Adults:", "Children:"), ("Personal", "Niños (3)"), ("Adultes :", "Enfants (3)"),
         ("Erwachsene:", "Kinder (3)"), ("Personale (2)", "Bambini:"), ("Adultos:", "Crianças (3)"),
         ("Teachers and aides", "Students")]


def _made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("form", ["{}", "☐ {}", "{} ____", "- {}"])
@pytest.mark.parametrize(("adults", "children"), WORDS)
@pytest.mark.parametrize("first", [True, False])
def test_adults_are_no_children(adults: str, children: str, form: str, *, first: bool) -> None:
    staff = "\n".join([adults, *map(form.format, ("Ida Moss", "Clou Zendar"))])
    kids = "\n".join([children, *map(form.format, KIDS)])
    text = f"{staff}\n\n{kids}" if first else f"{kids}\n\n{staff}"
    assert _made(text) == ["Mira", "Xobrel", "Leo"]
    told = [line for line in read_roster(text).lines if "Moss" in line.text or "Zendar" in line.text]
    assert [line.outcome for line in told] == [Outcome.HEADING] * 2
    assert all(line.notes[0].key == "roster.among_adults" for line in told)


@pytest.mark.parametrize("text", [
    "Teachers\nMira Vost\nXobrel Quix\nLeo Tarn", "Staff\nVost\nTarn\n\nQuix\nMoss",
    "Teacher\nMira Vost\nXobrel Quix\n\nNew\nLeo Tarn\nIda Moss", "Mira Staff\nLeo Tarn\n\nAdult Ida\nIda Moss"])
def test_who_may_be_a_child_is_none_of_them(text: str) -> None:
    """Nobody else stands there, the word may be a name, or one for a single teacher stands over several."""
    assert not any(note.key == "roster.among_adults" for line in read_roster(text).lines for note in line.notes)


def test_one_teacher_stands_under_a_colon() -> None:
    assert _made("Teacher:\nIda Moss\n\nMira Vost\nXobrel Quix\nLeo Tarn") == ["Mira", "Xobrel", "Leo"]


def test_who_is_called_by_name_is_a_child() -> None:
    assert _made("Mira Vost\nLeo Tarn\n\nAdults:\nName: Ida Moss") == ["Mira", "Leo", "Ida"]


@pytest.mark.parametrize("word", ["Adults", "Adultos", "Adultes", "Erwachsene", "Adulti", "Acompanhantes", "Staff",
                                  "Begleitpersonen", "Volontari", "Accompagnateurs"])
@pytest.mark.parametrize("rest", ["Foxes: Mia, Leo\nBears: Ava, Ben", "Mia\nLeo\nAva\nBen"])
def test_several_adults_behind_a_word_for_them_are_told(word: str, rest: str) -> None:
    """They were asked about as children, and made beside groups that are told in a line each."""
    roster = read_roster(f"{word}: Jo, Ana\n{rest}")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Ben"]
    assert [note.key for note in roster.lines[0].notes][:1] == ["roster.adult"]


@pytest.mark.parametrize(("word", "titles"), [("Volunteers", "First\tLast"), ("Docentes", "Nombre\tApellidos"),
                                              ("Enseignants", "Prénom\tNom"), ("Lehrkräfte", "Vorname\tNachname"),
                                              ("Insegnanti", "Nome\tCognome"), ("Professores", "Nome\tApelido")])
def test_adults_in_a_table_of_their_own_are_no_children(word: str, titles: str) -> None:
    text = f"{titles}\nMira\tVost\nXobrel\tQuix\nLeo\tTarn\n\n{word}\n{titles}\nIda\tMoss\nJo\tFenn"
    assert _made(text) == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("word", ["Staff", "Docentes", "Bénévoles", "Équipe éducative", "Lehrkräfte", "Insegnanti",
                                  "Professores", "Emergency contacts", "Notfallkontakte"])
@pytest.mark.parametrize("sign", ["\t", ",", ";"])
def test_a_word_in_a_row_of_its_own_heads_the_adults_of_a_table(word: str, sign: str) -> None:
    rows = ["First\tLast\tBus\tPhone", "Mira\tVost\t4\t555-0143", "Leo\tTarn\t\t", "Ida\tMoss\t7\t", "\t\t\t",
            f"{word}\t\t\t",
            "Jo\tVost\t\t555-0142", "Uwe\tQuix\t\t555-0144"]
    roster = read_roster("\n".join(rows).replace("\t", sign))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
