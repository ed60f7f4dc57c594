"""What a list of next month leaves out of a child goes on. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook import Classbook
from namewright.classbook.going_on import NOTHING_SAID, by_hand, is_other_script
from namewright.classbook.rosters import Answers, NewList
from namewright.classbook.who import Known
from namewright.roster.parsing import read_roster
from namewright.settings import Hand, NamePart, Support


def _known(given: str, family: str, practice: str) -> Known:
    goes_by = "" if practice in (given, family) else practice
    return Known(1, given, family, practice, practice, here=True, goes_by=goes_by)


REST = "Tilo Reed\nBo Lindle\nWenna Praske\n"


@pytest.mark.parametrize(("name", "other"), [
    ("Mila", False), ("Zoë", False), ("Łucja", False), ("Keʻali", False), ("Mª José", False), ("", False),
    ("Мила", True), ("Ζωή", True), ("小雨", True), ("محمد", True), ("Mila М", True)])
def test_a_letter_of_another_script_is_told(name: str, other: bool) -> None:
    """Accents and the ʻokina belong to Latin letters."""
    assert is_other_script(name) is other


@pytest.mark.parametrize(("line", "old", "part", "practice", "family"), [
    ("Мила Боева", _known("Mila", "Boeva", "Mila"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Мила Боева", _known("Mila", "Boeva", "Mila"), NamePart.FAMILY, "Boeva", "Boeva"),
    ("Мила Боева", _known("Mila", "Boeva", "Mila"), NamePart.BOTH, "Mila Boeva", "Boeva"),
    ("Мила Боева", _known("Мила", "Боева", "Myla"), NamePart.GIVEN, "Myla", "Боева"),
    ("Мила Boeva", _known("Mila", "Boeva", "Boeva"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Mila Боева", _known("Myla", "Boeva", "Myla"), NamePart.GIVEN, "Mila", "Boeva"),
    ("Мила Боева", _known("Мила", "Боева", "Мила"), NamePart.GIVEN, "Мила", "Боева"),
])
def test_each_part_goes_on_as_it_was_spelled(line: str, old: Known, part: NamePart, practice: str,
                                             family: str) -> None:
    """Only where the list has another script; Latin letters of a list are what is meant now."""
    child = NOTHING_SAID.as_known(read_roster(line, "it", part).children[0], old)
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
    update = book.update_roster(NewList(f"Room 9\n{REST}{typed}\n", whole=whole))
    assert update.left == update.joined == update.recognised == update.notes == ()
    assert book.child(child).child.practice == practice == book.child(child).child.label
    book.set_class_setting("practise", "family")
    book.set_class_setting("practise", "given")
    assert book.child(child).child.practice == practice
    assert not is_other_script(book.roster_text()) or whole or "goes by" in answered


def test_the_spelling_goes_with_the_child(book: Classbook) -> None:
    """Erased, neither spelling is in the bytes of the file."""
    book.update_roster(f"Mila Boeva\n{REST}")
    child = book.children()[0].id
    book.update_roster(NewList(f"Мила Боева\n{REST}", whole=True))
    book.erase([child])
    data = book.path.read_bytes()
    assert not any(name.encode() in data for name in ("Mila", "Boeva", "Мила", "Боева"))


FROM_HOME = """First name,Family name,Goes by,Hand,Support,Line height,Language
Katherine,Moss,Katie,left,light,22 mm,
Zoë,Reed,,,,,
Anne-Marie,D’Orsay,,,,,
Łucja,Wren,Lusia,,,,pl
Bo,Lindle,,,,,
Jürgen,Köhl,,,,,
"""
FROM_THE_OFFICE = """Wren, Lucja
Moss, Katherine
Lindle, Bo
Dorsay, Anne Marie
Reed, Zoe
Koehl, Juergen
"""


def _all_of(book: Classbook) -> dict[int, tuple[object, ...]]:
    return {one.id: (one.child.given, one.child.family, one.child.practice, one.child.label, one.child.hand,
                     one.child.support, one.child.line_height_mm, one.child.names_in) for one in book.children()}


@pytest.mark.parametrize("whole", [True, False])
def test_a_list_that_says_less_takes_nothing_away(book: Classbook, whole: bool) -> None:
    """Accents, hyphens, what a child goes by, hand, support and line height stay when the office sends names alone."""
    book.update_roster(NewList(FROM_HOME, whole=whole))
    before = _all_of(book)
    update = book.update_roster(NewList(FROM_THE_OFFICE, whole=whole))
    assert update.joined == update.left == ()
    assert _all_of(book) == before
    for part in ("family", "both", "given"):
        book.set_class_setting("practise", part)
    assert _all_of(book) == before
    book.update_roster(NewList(FROM_THE_OFFICE, whole=whole))
    assert _all_of(book) == before


def test_a_list_that_says_more_or_otherwise_is_followed(book: Classbook) -> None:
    """Another nickname, an accent that was missing, a second family name, other hands."""
    book.update_roster(FROM_HOME)
    book.update_roster("Name,Hand\n" "Katherine (goes by Kit) Moss,\n" "Zoé Reed Vale,right\n" "Anne-Marie D’Orsay,\n"
                       "Łucja Wren,\n" "Bó Lindle,\nJürgen Köhl,\n")
    named = {one.child.practice: one.child for one in book.children()}
    assert set(named) == {"Kit", "Zoé", "Anne-Marie", "Lusia", "Bó", "Jürgen"}
    assert named["Zoé"].family == "Reed Vale"
    assert [named[name].hand for name in ("Kit", "Zoé")] == [None, Hand.RIGHT]  # this list tells hands
    assert named["Kit"].support is Support.LIGHT  # and no level


def test_what_is_taken_out_by_hand_is_gone(book: Classbook) -> None:
    """Where the list of the class itself has a line that was changed, all of that line is meant as it stands."""
    book.update_roster(FROM_HOME)
    kept = book.roster_text()
    book.update_roster(kept.replace("Katherine,Moss,Katie,left", "Katherine,Moss,,").replace("Zoë", "Zoe"))
    katherine, zoe = book.children()[:2]
    assert (katherine.child.practice, katherine.child.hand) == ("Katherine", None)
    assert katherine.child.support is Support.LIGHT
    assert zoe.child.practice == "Zoe"


def test_a_name_that_was_said_to_be_meant_so_is_taken_so(book: Classbook) -> None:
    """An adult may say of a line that the accent, or what the child goes by, is no more."""
    book.update_roster(FROM_HOME)
    names = ["Lusia", "Katherine", "Bo", "Anne-Marie", "Zoe", "Jürgen"]
    book.update_roster(NewList(FROM_THE_OFFICE, answers=Answers(meant=frozenset({2, 5}))))
    assert [one.child.practice for one in book.children()] == names
    book.update_roster(FROM_THE_OFFICE)
    assert [one.child.practice for one in book.children()] == names


def test_what_a_child_goes_by_in_place_of_the_given_name(book: Classbook) -> None:
    """A list that has Katie Moss leaves Katherine out, and then she is there again: one child, nobody is asked."""
    book.update_roster(FROM_HOME)
    before = _all_of(book)
    for name in ("Katie Moss", "Katherine Moss", "Moss, Katie"):
        update = book.update_roster(FROM_THE_OFFICE.replace("Moss, Katherine", name))
        assert (update.recognised, _all_of(book)) == ((), before)


@pytest.mark.parametrize("whole", [True, False])
def test_a_whole_name_in_another_script_is_remembered(book: Classbook, whole: bool) -> None:
    """A name that no rule spells in Latin letters is the same child once somebody has said so, list after list."""
    book.update_roster(f"Xiaoming Wang\n{REST}")
    child = book.children()[0].id
    in_chinese = f"{REST}王小明\n"
    update = book.update_roster(NewList(in_chinese, whole=whole, same={4: child}))
    assert (child in update.stayed, update.joined) == (True, ())
    for text in (in_chinese, f"Wang, Xiaoming\n{REST}", in_chinese):
        update = book.update_roster(NewList(text, whole=whole))
        assert (update.joined, update.left, update.recognised, update.notes) == ((), (), (), ())
        assert book.child(child).child.practice == "Xiaoming"
        assert book.child(child).child.family == "Wang"


def test_a_line_that_was_written_anew_keeps_its_name_in_the_other_script(book: Classbook) -> None:
    """Who spelled a name while the list was read is known by it next month; erased, it is in no byte of the file."""
    book.update_roster(NewList(f"Xiaoming Wang\n{REST}", answers=Answers(also={1: "王小明"})))
    child = book.children()[0].id
    assert child in book.update_roster(f"王小明\n{REST}").stayed
    assert "王小明".encode() in book.path.read_bytes()
    book.erase([child])
    assert "王小明".encode() not in book.path.read_bytes()


@pytest.mark.parametrize(("now", "changed"), [
    ("a\nb\nc\n", 0), ("a\nx\nc\n", 1), ("\na\nx\ny", 2), ("x\ny\nz\n", 0), ("a\nb\n", 0), ("b\na\nc", 0)])
def test_a_list_that_was_changed_by_hand(now: str, changed: int) -> None:
    """As many lines, and one or two of them others."""
    assert len(by_hand("a\nb\nc\n", now)) == changed


def test_latin_letters_of_a_list_take_over_and_the_other_script_is_remembered(book: Classbook) -> None:
    """Who goes by Mila has the register’s own Latin spelling once there is one, and is known in either script."""
    book.update_roster(f"Мила Боева (goes by Mila)\n{REST}")
    child = book.children()[0].id
    for text in (f"Boeva, Mila\n{REST}", f"Мила Боева\n{REST}"):
        assert book.update_roster(text).joined == ()
        named = book.child(child).child
        assert (named.given, named.family, named.practice) == ("Mila", "Boeva", "Mila")


def test_a_slip_that_was_answered_for_is_known(book: Classbook) -> None:
    """The child goes on as an adult said, whichever spelling comes, until one is said to be meant."""
    book.update_roster(f"Katla Pruner\n{REST}")
    child = book.children()[0].id
    slip = f"Katlla Pruner\n{REST}"
    book.update_roster(NewList(slip, same={1: child}, answers=Answers(keeps=frozenset({1}))))
    for text in (slip, f"Katla Pruner\n{REST}", f"Sefa Ilar\n{REST}Katlla Pruner\n", slip):
        assert book.update_roster(text).recognised == ()
        assert book.child(child).child.practice == "Katla"
        assert book.child(child).left is None
    book.update_roster(NewList(slip, answers=Answers(meant=frozenset({1}))))
    assert book.child(child).child.practice == "Katlla"


def test_another_child_of_a_name_that_was_changed_is_another(book: Classbook) -> None:
    """Who is Emma Vost now stays so when a second child comes who is called Emma Moss."""
    book.update_roster(f"Emma Moss\n{REST}")
    child = book.children()[0].id
    book.update_roster(NewList(f"Emma Vost\n{REST}", same={1: child}))
    update = book.update_roster(f"Emma Moss\nEmma Vost\n{REST}")
    assert len(update.joined) == 1
    assert book.child(child).child.family == "Vost"


UNKNOWN = ("Vexil Quorra", "Zorn Belka", "Tavi Morn", "Ottilka Tamsel")  # on no list of names


def test_names_that_only_their_order_tells_apart_stay_as_they_were(book: Classbook) -> None:
    """An office that writes family names first makes nobody practise those; a comma says what is what."""
    book.update_roster("".join(f"{name}\n" for name in UNKNOWN))
    before = _all_of(book)
    turned = [" ".join(reversed(name.split())) for name in UNKNOWN]
    update = book.update_roster("".join(f"{name}\n" for name in turned))
    assert _all_of(book) == before
    assert "Vexil Quorra" in str(update.notes)
    book.update_roster("".join(f"{name.replace(' ', ', ')}\n" for name in UNKNOWN))
    assert [one.child.practice for one in book.children()] == [name.split()[1] for name in UNKNOWN]
