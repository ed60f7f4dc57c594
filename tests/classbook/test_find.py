"""Who is meant by what an adult types, and which letters of a name: never a guess between two."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.classbook.find import called_so, find_child, find_letters
from namewright.classbook.records import NO_SETTINGS, BookChild, ClassbookError, letter_positions
from namewright.names.clusters import clusters
from namewright.roster.children import Child
from namewright.tuning import Tuning


def child(id_: int, practice: str, label: str, family: str, left: str | None = None, given_name: str = "") -> BookChild:
    return BookChild(id_, Child(practice, label, given_name or practice, family, id_), Tuning(), NO_SETTINGS,
                     "2026-09-01T08:00:00", left)


CLASS = (child(1, "Ava", "Ava B.", "Birn"), child(2, "Ava", "Ava D.", "Dunn"), child(3, "Zoë", "Zoë", "Vale"),
         child(4, "Mimi", "Mimi", "Quill", given_name="Mirabel"),
         child(5, "Tilo", "Tilo", "Reed", left="2026-10-01T08:00:00"),
         child(6, "Oda", "Oda", "Marn", left="2026-10-01T08:00:00"), child(7, "Oda", "Oda", "Brae"))


@pytest.mark.parametrize(("typed", "id_", "why"), [
    ("Ava B.", 1, "by label"), ("ava b", 1, "whatever its case, and without its dot"), ("Ava Dunn", 2, "by both names"),
    ("Zoe", 3, "without its mark"), ("zoë", 3, "in small letters"), ("Mimi", 4, "by what the child goes by"),
    ("Mirabel", 4, "by the given name"), ("Mirabel Quill", 4, "by the whole name"),
    ("Tilo", 5, "who left is found where nobody else is meant"), ("Oda", 7, "who is here goes before who left")])
def test_a_child_is_found(typed: str, id_: int, why: str) -> None:
    assert find_child(CLASS, typed).id == id_, why


@pytest.mark.parametrize(("typed", "why"), [("Ava", "which_child"), ("Bo", "unknown_child"), ("", "unknown_child"),
                                            ("Dunn", "unknown_child")])
def test_two_children_or_none_are_not_guessed_at(typed: str, why: str) -> None:
    with pytest.raises(ClassbookError, match=rf"classbook\.{why}"):
        find_child(CLASS, typed)


@pytest.mark.parametrize(("name", "typed"), [
    ("Łucja", "Lucja"), ("Søren", "Soren"), ("Søren", "soeren"), ("Jürgen", "Juergen"), ("Jürgen", "Jurgen"),
    ("Weiß", "Weiss"), ("Irmık", "Irmik"), ("İpek", "ipek"), ("Đorđe", "Dorde"), ("Æsa", "Aesa"), ("Þóra", "Thora"),
    ("Anne-Marie", "Anne Marie"), ("D’Arla", "DArla"), ("Lucja", "Łucja")])
def test_a_name_is_found_as_it_is_typed_without_its_signs(name: str, typed: str) -> None:
    """A keyboard has no ł: the name is found without it, alone and with the family name, here and left."""
    everyone = (child(1, name, name, "Młot"), child(2, "Bo", "Bo", "Birn"))
    assert find_child(everyone, typed).id == find_child(everyone, f"{typed} Mlot").id == 1
    assert find_child((child(1, name, name, "Młot", left="2026-10-01T08:00:00"), everyone[1]), typed).id == 1


def test_a_name_in_another_script_is_found_by_its_spelling_in_latin_letters() -> None:
    assert find_child((child(1, "Дарина", "Дарина", "Коваль"), child(2, "Bo", "Bo", "Birn")), "Darina Koval").id == 1


ALIKE = (child(1, "Lucja", "Lucja", "Moss"), child(2, "Łucja", "Łucja", "Reed"))


@pytest.mark.parametrize("everyone", [
    ALIKE, ALIKE[::-1], (*ALIKE, child(3, "Bo", "Bo", "Birn")),
    (ALIKE[1], child(1, "Lucja", "Lucja", "Moss", left="2026-10-01T08:00:00")),
    (ALIKE[0], child(2, "Łucja", "Łucja R.", "Reed"), child(3, "Łucja", "Łucja V.", "Vost")),
    (ALIKE[0], child(2, "Mimi", "Mimi", "Reed", given_name="Łucja"))])
def test_of_two_names_that_fold_alike_none_is_taken_in_silence(everyone: tuple[BookChild, ...]) -> None:
    """``Lucja`` may be a hurried ``Łucja``: it is asked, and what the question offers finds each."""
    with pytest.raises(ClassbookError, match=r"classbook\.which_child") as asked:
        find_child(everyone, "Lucja")
    labels = asked.value.message["labels"]
    assert isinstance(labels, tuple)
    assert {find_child(everyone, str(label)).id for label in labels} == {1, 2} | ({3} if len(labels) > 2 else set())


def test_an_accent_that_was_typed_is_meant() -> None:
    assert find_child(ALIKE, "łucja").id == 2
    assert find_child(ALIKE, "Lucja Moss").id == 1
    assert find_child((child(1, "Bo", "Bo", "Weiss"), child(2, "Bo", "Bo", "Weiß")), "Bo Weiß").id == 2


def test_where_nothing_else_tells_two_names_apart_that_is_said() -> None:
    """One with an accent is named with it, the other by a longer name in the list."""
    for family in ("", "Moss"):
        everyone = (child(1, "Lucja", "Lucja", family), child(2, "Łucja", "Łucja", family))
        assert find_child(everyone, "Łucja").id == 2
        with pytest.raises(ClassbookError, match=r"classbook\.alike_but_signs"):
            find_child(everyone, f"Lucja {family}")


def test_a_line_of_a_list_is_found_so_too() -> None:
    everyone = [one.child for one in ALIKE]
    assert called_so(everyone[1:], "Lucja") == called_so(everyone, "Łucja") == everyone[1:]
    assert called_so(everyone, "Lucja") == everyone
    assert called_so(everyone, "lucja moss") == everyone[:1]


@pytest.mark.parametrize("typed", ["-", "'", ".", "ʻ"])
def test_a_sign_alone_is_nobody(typed: str) -> None:
    """A child without a given name is not called by it."""
    with pytest.raises(ClassbookError, match=r"classbook\.unknown_child"):
        find_child((child(1, "Vost", "Vost", "Vost", given_name=""), *CLASS), typed)


@pytest.mark.parametrize(("name", "typed", "places", "why"), [
    ("Anna", "An", (0, 1), "a capital is the capital"), ("Anna", "a", (3,), "a small letter the small one"),
    ("Anna", "nn", (1, 2), "each place once"), ("Anna", "aa", (0, 3), "then its other case, if there is no other"),
    ("Anna", "N", (1,), "so a capital stands for a small one"), ("Zoë", "ë", (2,), "a mark belongs to its letter"),
    ("Mary-Kate", "M, K", (0, 5), "commas and spaces are nothing"), ("Mira", "", (), "nothing typed is no letter"),
     ("Ẹ̀bun", "Ẹ̀", (0,), "however many marks")])
def test_letters_are_found(name: str, typed: str, places: tuple[int, ...], why: str) -> None:
    assert find_letters(name, typed) == places, why


@pytest.mark.parametrize(("name", "typed"), [("Anna", "x"), ("Anna", "nnn"), ("Zoë", "e"), ("Mary-Kate", "-")])
def test_a_letter_that_is_not_there_or_not_so_often_is_refused(name: str, typed: str) -> None:
    with pytest.raises(ClassbookError):
        find_letters(name, typed)


@given(st.sampled_from(["Anna", "Zoë", "Mary-Kate", "Ẹ̀bun", "Ana María"]), st.data())
def test_any_letters_of_a_name_are_found_in_it(name: str, data: st.DataObject) -> None:
    """Letters picked from the name in any order: as many places, each with one of these letters."""
    picked = data.draw(st.lists(st.sampled_from(letter_positions(name)), unique=True))
    letters = clusters(name)
    found = find_letters(name, "".join(letters[at] for at in picked))
    assert sorted(letters[at] for at in found) == sorted(letters[at] for at in picked)
    assert list(found) == sorted(set(found))
