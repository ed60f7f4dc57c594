"""A class told aloud in one breath: its children are made, and whoever is only told of is asked about."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.dictated import told_aloud
from namewright.roster.parsing import read_roster

TOLD = [
    "okay so in my class I have {}, {} and then {} and that's everybody",
    "a ver en mi grupo tengo a {}, luego {} y también {} y ya son todos",
    "alors dans ma classe j'ai {}, ensuite {} et puis {} et c'est tout",
    "also in meiner Klasse habe ich {}, dann {} und noch {} und das sind alle",
    "allora nella mia classe ho {}, poi {} e anche {} e sono tutti",
    "então na minha turma eu tenho {}, depois {} e também {} e são todos",
    "In my class there are {}, {} and {}.",
]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("told", TOLD)
@pytest.mark.parametrize("names", [
    ("Mia", "Tilo", "Anna"), ("Mia Vost", "Tilo de la Cruz", "Anna Berg"),
    ("Xobrel Vost", "Vemka Tarn", "Outhna Quill")])
def test_a_class_is_told_in_one_breath(told: str, names: tuple[str, ...]) -> None:
    roster = read_roster(told.format(*names))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert read_roster(roster.text).children == roster.children


def test_a_given_name_that_is_a_word_before_names_is_a_child() -> None:
    assert practised("My kids are Mia, Leo, Ada and Una") == ["Mia", "Leo", "Ada", "Una"]


@pytest.mark.parametrize("told", TOLD)
def test_names_on_no_list_without_a_family_are_asked_about(told: str) -> None:
    found = told_aloud(told.format("Xobrel", "Vemka", "Outhna"))
    assert found is not None
    assert not found.sure
    assert found.parts == ("Xobrel", "Vemka", "Outhna")


def test_who_is_named_for_something_else_is_asked_about() -> None:
    found = told_aloud("the cooks today are Mia, Leo and Ada")
    assert found is not None
    assert not found.sure


@pytest.mark.parametrize("text", [
    "Una has Leo, Ana and Ben as friends", "Mia has Leo, Ana and Ben as friends", "Xobrel has Leo, Ana and Ben, too"])
def test_a_child_of_whom_something_is_told_opens_no_class(text: str) -> None:
    assert told_aloud(text) is None
    with pytest.raises(RosterError):
        read_roster(text)


@pytest.mark.parametrize("text", [
    "", ",", "À, Mia, Leo, Ada", "À frente: Mia, Leo, Ada",
    "I have", "so I have ,, and", "Mia, Leo and Ada", "the teachers are Mia, Leo and Ada",
    "I have 3 kids, Mia, Leo"])
def test_what_tells_no_class(text: str) -> None:
    assert told_aloud(text) is None


IN_ORDER = [
    "so the first one is {}, then {}, after that {} and lastly {}",
    "bueno, la primera es {}, después {}, la siguiente es {} y por último {}",
    "pour commencer {}, puis {} … après {} et pour finir {}.",
    "als erste kommt {} … danach {} … als nächstes {} … zum Schluss {}",
    "allora per prima {}, poi {}, dopo {} e per ultima {}",
    "primeiro é {}, a seguir {}, depois {} e por fim {}",
]


@pytest.mark.parametrize("told", IN_ORDER)
@pytest.mark.parametrize("names", [
    ("Mia", "Tilo", "Anna", "Leo"), ("Mia Vost", "Tilo de la Cruz", "Anna Berg", "Leo Tarn"),
    ("Xobrel Vost", "Vemka Tarn", "Outhna Quill", "Ruvo Lind")])
def test_words_of_order_lead_to_names_and_part_them(told: str, names: tuple[str, ...]) -> None:
    roster = read_roster(told.format(*names))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert read_roster(roster.text).children == roster.children


@pytest.mark.parametrize("told", IN_ORDER)
def test_words_of_order_come_off_lines_of_one_child(told: str) -> None:
    names = ("Xobrel Vost", "Mia Tarn", "Vemka Quill", "Leo Lind")
    lines = "\n".join(f"{each}{{}}" for each in told.rstrip(".").replace(" and ", ", and ").split("{}")[:-1])
    roster = read_roster(lines.replace(", ", "").replace(" … ", "").format(*names))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert read_roster(roster.text).children == roster.children


@pytest.mark.parametrize("text", [
    "First Reading, then Math, then Recess and Lunch", "first Mia has to leave, then Leo comes, then Ava goes"])
def test_what_is_done_in_an_order_is_asked_about(text: str) -> None:
    found = told_aloud(text)
    assert found is None or not found.sure
    with pytest.raises(RosterError):
        read_roster(text)


def test_a_given_name_that_is_a_word_of_order_stays() -> None:
    assert practised("Prima Rossi\nPrima Vost\nMia Tarn") == ["Prima", "Prima", "Mia"]
