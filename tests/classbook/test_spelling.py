"""A name in Latin letters that was answered once stays with the child. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook import Classbook
from namewright.classbook.spelling import Names, as_spelled, is_other_script
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart

REST = "Tilo Reed\nBo Lindle\nWenna Praske\n"


@pytest.mark.parametrize(("name", "other"), [
    ("Mila", False), ("Zoë", False), ("Łucja", False), ("Keʻali", False), ("Mª José", False), ("", False),
    ("Мила", True), ("Ζωή", True), ("小雨", True), ("محمد", True), ("Mila М", True)])
def test_a_letter_of_another_script_is_told(name: str, other: bool) -> None:
    """Accents and the ʻokina belong to Latin letters."""
    assert is_other_script(name) is other


@pytest.mark.parametrize(("line", "old", "part", "practice", "family"), [
    ("Мила Боева", Names("Mila", "Boeva", "Mila"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Мила Боева", Names("Mila", "Boeva", "Mila"), NamePart.FAMILY, "Boeva", "Boeva"),
    ("Мила Боева", Names("Mila", "Boeva", "Mila"), NamePart.BOTH, "Mila Boeva", "Boeva"),
    ("Мила Боева", Names("Мила", "Боева", "Myla"), NamePart.GIVEN, "Myla", "Боева"),
    ("Мила Boeva", Names("Mila", "Boeva", "Boeva"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Mila Боева", Names("Myla", "Boeva", "Myla"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Мила Боева", Names("Мила", "Боева", "Мила"), NamePart.GIVEN, "Мила", "Боева"),
])
def test_each_part_goes_on_as_it_was_spelled(line: str, old: Names, part: NamePart, practice: str,
                                             family: str) -> None:
    """Only where the list has another script; Latin letters of a list are what is meant now."""
    child = as_spelled(read_roster(line, "it", part).children[0], old)
    assert (child.practice, child.family) == (practice, family)


@pytest.mark.parametrize("whole", [True, False])
@pytest.mark.parametrize(("typed", "answered", "practice"), [
    ("Мила Боева", "Mila Boeva", "Mila"),
    ("Мила", "Mila", "Mila"),
    ("Мила Боева", "Мила Боева (goes by Mila)", "Mila"),
    ("Дарина Коваль", "Daryna Kowal", "Daryna"),
    ("Коваль, Дарина", "Kowal, Daryna", "Daryna"),
    ("محمد Vost", "محمد Vost (goes by Muhamad)", "Muhamad"),
])
def test_the_answer_stays_when_the_list_comes_again(book: Classbook, typed: str, answered: str, practice: str,
                                                    whole: bool) -> None:
    """The same child by the same letters, nobody is asked, and switching the part of the name and back keeps it."""
    book.update_roster(f"{answered}\n{REST}")
    child = book.children()[0].id
    update = book.update_roster(f"Room 9\n{REST}{typed}\n", whole=whole)
    assert update.left == update.joined == update.recognised == update.notes == ()
    assert book.child(child).child.practice == practice == book.child(child).child.label
    if not (whole and "goes by" in answered):  # a list that is kept whole says nothing of what a child goes by
        book.set_class_setting("practise", "family")
        book.set_class_setting("practise", "given")
    assert book.child(child).child.practice == practice
    assert not is_other_script(book.roster_text()) or whole or "goes by" in answered


def test_the_spelling_goes_with_the_child(book: Classbook) -> None:
    """Erased, neither spelling is in the bytes of the file."""
    book.update_roster(f"Mila Boeva\n{REST}")
    child = book.children()[0].id
    book.update_roster(f"Мила Боева\n{REST}", whole=True)
    book.erase([child])
    data = book.path.read_bytes()
    assert not any(name.encode() in data for name in ("Mila", "Boeva", "Мила", "Боева"))
