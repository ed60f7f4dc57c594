"""Names behind other words in a line: where they begin, and whether the words before them are a school day's."""

from __future__ import annotations

import pytest

from namewright.roster.day_words import BESIDE_DAY, DAY_PHRASES, DAY_WORDS, WITH
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold
from namewright.roster.within import behind_a_sign, behind_a_word, is_of_a_day, may_be_a_child, named_behind_a_day

LED = [
    ("Reading with Mia Vost, Leo Tarn, Ava Rey", "Reading with", "Mia Vost,Leo Tarn,Ava Rey"),
    ("Lesen mit Mia Vost und Leo Tarn", "Lesen mit", "Mia Vost,Leo Tarn"),
    ("Lectura con Mia, Leo y Ava.", "Lectura con", "Mia,Leo,Ava"),
    ("Petit groupe avec Mia & Leo", "Petit groupe avec", "Mia,Leo"),
    ("Lettura per Mia", "Lettura per", "Mia"),
    ("Leitura com Mia V., Leo T.", "Leitura com", "Mia V.,Leo T."),
    ("Snack (Mia, Leo)", "Snack", "Mia,Leo"),
    ("speech: Xobrel Vank, Zuthe Menk", "speech", "Xobrel Vank,Zuthe Menk"),
    ("Orthophonie → Mia", "Orthophonie", "Mia"),
    ("Hort – Mia und Leo", "Hort", "Mia,Leo"),
    ("Library with Ms. Dale, Mia", "Library with", "Mia"),
    ("Snack: Teresa English", "Snack", "Teresa English"),
]


@pytest.mark.parametrize(("text", "before", "names"), LED, ids=[row[0] for row in LED])
def test_names_stand_behind_words_of_a_day(text: str, before: str, names: str) -> None:
    found = named_behind_a_day(text)
    assert found is not None
    assert (found.before, found.parts) == (before, tuple(names.split(",")))


@pytest.mark.parametrize("text", [
    "Mia Vost with glasses", "Mia Vost", "Maria dos Santos", "Bus driver: Rosa Vale", "Reading teacher: Rosa Vale",
    "Gita Vost (Mia, Leo)", "Gita: Mia", "Xobrel: Mia, Leo",
    "Snack: nuts, eggs", "Library with Ms. Dale", "Mia with Leo Tarn", "Clase: Rosa",
])
def test_other_words_lead_to_no_names(text: str) -> None:
    """A child before the word, an adult's trade, remarks; what may be a child itself is not said to be a day's."""
    assert named_behind_a_day(text) is None


def test_names_behind_words_on_no_list_are_found_and_not_led() -> None:
    for found in (behind_a_word("Bloxing with Mia, Leo"), behind_a_sign("Xobrel: Mia, Leo")):
        assert found is not None
        assert found.parts == ("Mia", "Leo")
        assert not found.led


@pytest.mark.parametrize("text", [
    "Early dismissal", "Sortie anticipée", "Salida temprana", "Früher Schluss", "Uscita anticipata", "Saída antecipada",
    "Field trip", "No school", "Picture day", "Dia de fotos", "Keine Schule", "Não há aulas", "Circle time",
    "Spielkreis", "Speech with Ms. Dale", "Accueil, jeux libres", "Arrival and breakfast", "Math",
])
def test_a_line_of_a_day_names_nobody(text: str) -> None:
    assert is_of_a_day(text)


@pytest.mark.parametrize("text", [
    "Mia Vost", "Xobrel dismissal", "Reading Rosa", "Speech with xobrel", "Gita", "Saida Conte", "Early", "Day",
    "speech: xobrel, vemka", "Rose Party", "Xobrel, Lunch",
])
def test_what_may_hold_a_name_is_no_line_of_a_day(text: str) -> None:
    assert not is_of_a_day(text)


def test_a_given_name_that_is_a_word_of_a_day_may_be_a_child() -> None:
    assert may_be_a_child("Gita")
    assert may_be_a_child("Saida Conte")
    assert not may_be_a_child("Saída antecipada")
    assert not may_be_a_child("Lunch")


def test_the_words_are_folded_and_none_tells_a_day_and_stands_beside_one() -> None:
    assert all(word == fold(word) for word in DAY_WORDS | BESIDE_DAY | DAY_PHRASES | WITH)
    assert not DAY_WORDS & BESIDE_DAY


@pytest.mark.parametrize("line", ["sits with …\t…", "Lunch with Mia, …\t… and Leo"])
def test_a_cell_of_signs_alone_among_names_is_no_error(line: str) -> None:
    """As a list kept whole has where a name was erased: it ended the program."""
    assert [child.practice for child in read_roster(f"{line}\nMia Moss\nLeo Tarn").children][-2:] == ["Mia", "Leo"]


def test_a_whole_name_in_small_letters_is_none_of_a_day() -> None:
    names = [child.given for child in read_roster("anton sonntag\nlena krüger\nlucas merienda").children]
    assert names == ["Anton", "Lena", "Lucas"]


@pytest.mark.parametrize("name", ["saida garcia", "gita rossi"])
def test_a_given_name_that_is_a_trip_too_stays_one_before_a_family(name: str) -> None:
    assert may_be_a_child(name)
    assert [child.given for child in read_roster(f"{name}\nmira vost\nleo dolt").children] == [
        name.split()[0].title(), "Mira", "Leo"]
    assert not may_be_a_child("gita scolastica")
    assert not may_be_a_child("saida antecipada")


@pytest.mark.parametrize("comes", ["ist dabei", "kommt mit", "is coming", "va", "vient", "viene", "vem"])
def test_who_comes_is_no_part_of_a_day(comes: str) -> None:
    """A child called as a way out is was a heading, and lost."""
    assert not is_of_a_day(f"Saida {comes}")
    assert is_of_a_day("Saída antecipada")


@pytest.mark.parametrize("sign", ["💛", "🌟", "⭐", "•"])
def test_signs_about_a_name_make_it_no_part_of_a_day(sign: str) -> None:
    names = ("Stacy", "Kimani", "Saida", "Bahati")
    roster = read_roster("\n".join(f"{sign} {name} {sign}" for name in names))
    assert [child.practice for child in roster.children] == [*names]
