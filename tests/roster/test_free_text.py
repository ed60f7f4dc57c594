"""Which words of a name are given and which family, row by row of the rules that the module lists."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from namewright.roster.care_words import CARE
from namewright.roster.free_text import read_name
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import ATTENDANCE, DOUBLE_STARTERS, HANDS, fold
from namewright.settings import Hand

SPLIT = [  # typed, given, family, whether what was read is told, why
    ("Mira", "Mira", "", False, "one word is given"),
    ("Mira Vost", "Mira", "Vost", False, "two words are given and family"),
    ("Mira Oda Vost", "Mira", "Vost", True, "what stands between is a middle name, and left out"),
    ("Vost, Mira", "Mira", "Vost", False, "the family name stands before a comma"),
    ("Vost; Mira", "Mira", "Vost", False, "or before a semicolon"),
    ("de la Brae Vost, Mira", "Mira", "de la Brae Vost", False, "whole"),
    ("Vost, Mira Oda", "Mira", "Vost", True, "behind it the first word is given"),
    ("Vost, Mira, Oda Alder", "Mira", "Vost", True, "a third part cannot be placed"),
    ("VOST Mira", "Mira", "VOST", True, "capitals in front are the family name"),
    ("Mira VOST", "Mira", "VOST", True, "capitals behind are, too"),
    ("Mira DE VOST", "Mira", "DE VOST", True, "with their particle"),
    ("MIRA VOST", "MIRA", "VOST", False, "all in capitals says nothing"),
    ("J.P. Vost", "J.P.", "Vost", False, "initials are no family name"),
    ("A. J. Vost", "A. J.", "Vost", True, "two initials are one given name"),
    ("Ana María Vost", "Ana María", "Vost", True, "a known pair is one given name"),
    ("María del Carmen Vost", "María del Carmen", "Vost", True, "so is a devotion"),
    ("Vost, María del Carmen", "María del Carmen", "Vost", False, "behind a comma too"),
    ("Mira van der Brae", "Mira", "van der Brae", True, "a particle opens the family name"),
    ("Mira Oda van Brae", "Mira", "van Brae", True, "also after a middle name"),
    ("Mira García Vost", "Mira", "García Vost", True, "a Spanish family name in the middle is the first of two"),
    ("Mira Núñez Vost", "Mira", "Núñez Vost", True, "as is one in -ez"),
    ("José Ángel Pereda Quillón", "José Ángel", "Pereda Quillón", True, "two family names behind two given ones"),
    ("María José Robledo Castaño", "María José", "Robledo Castaño", True, "known or not"),
    ("Ana Lucía Rojas Tovar", "Ana Lucía", "Rojas Tovar", True, "or one of them"),
    ("Ana Pereda Quillón", "Ana", "Pereda Quillón", True, "also behind one given name, where marks say so"),
    ("Mary Kate Oda Vost", "Mary Kate", "Vost", True, "not behind names of elsewhere"),
    ("Ana Maria Renee Vost", "Ana Maria", "Vost", True, "and not where the next is a given name"),
    ("Mira Vost Jr.", "Mira", "Vost Jr.", False, "a suffix goes with the family name"),
    ("Mira Vost iii", "Mira", "Vost III", False, "in capitals where it is a number"),
    ("Vost, Mira, Jr.", "Mira", "Vost Jr.", False, "whichever side of a comma it stands on"),
    ("Mira Jr.", "Mira", "", True, "and without a family name it is left out"),
    ("3. Vost, Mira", "Mira", "Vost", False, "numbering is nothing"),
    ("Name: Mira Vost", "Mira", "Vost", False, "nor is the label of a form"),
]


@pytest.mark.parametrize(("typed", "given", "family", "told", "why"), SPLIT, ids=[row[4] for row in SPLIT])
def test_given_and_family_name(typed: str, given: str, family: str, told: bool, why: str) -> None:
    """What could be read otherwise is told in a note; what is certain is not."""
    found = read_name(typed)
    assert (found.given, found.family, bool(found.notes)) == (given, family, told), why


CALLED = [
    ("Mirabel (Mira) Vost", "Mirabel", "Vost", "Mira", None, "between the two"),
    ("“Mira” Vost", "Mira", "Vost", "Mira", None, "alone in front it takes the given name's place"),
    ("“Mira Vost”", "Mira", "Vost", "", None, "a whole name in quotation marks is the name itself"),
    ("Vost, Mirabel (Mira)", "Mirabel", "Vost", "Mira", None, "behind a comma"),
    ("Vost, Mira, left", "Mira", "Vost", "", Hand.LEFT, "a hand behind a second comma"),
    ("Mira Vost, left-handed, gluten free", "Mira", "Vost", "", Hand.LEFT, "a hand before a remark"),
    ("Mira Vost (left)", "Mira", "Vost", "", Hand.LEFT, "a hand in brackets"),
]


@pytest.mark.parametrize(("typed", "given", "family", "goes_by", "hand", "why"), CALLED, ids=[row[5] for row in CALLED])
def test_what_a_child_goes_by_and_writes_with(typed: str, given: str, family: str, goes_by: str, hand: Hand | None,
                                              why: str) -> None:
    found = read_name(typed)
    assert (found.given, found.family, found.goes_by, found.hand) == (given, family, goes_by, hand), why


@pytest.mark.parametrize("typed", ["Mira, Tilo, Oda", "Mira Vost, Tilo Brae, Oda Marn", "Mira & Tilo",
                                   "Mira and Tilo Vost", "Mira + Tilo"])
def test_several_names_in_one_line_are_not_guessed_at(typed: str) -> None:
    """None of them is taken for the child, and that is told."""
    found = read_name(typed)
    assert (found.given, found.family) == ("", "")
    assert found.notes


WORD = st.text(st.sampled_from("abdeilmnorstuvz"), min_size=3, max_size=9).map(str.capitalize)
TOLD = CARE | ATTENDANCE | {"iii", "robt"}  # behind a name a remark, a number or another name cut short: Mira Asd
PLAIN = WORD.filter(lambda word: read_name(word).given == word and not word.lower().endswith("ez")
                    and fold(word) not in DOUBLE_STARTERS | TOLD)  # Ana Luz is one given name


@given(PLAIN, PLAIN)
def test_a_comma_turns_two_words_round(given_name: str, family: str) -> None:
    """``Given Family`` and ``Family, Given`` are read alike, whatever the two words are."""
    assume(fold(given_name) not in HANDS)  # “Moss, lefty” tells a hand
    one, other = read_name(f"{given_name} {family}"), read_name(f"{family}, {given_name}")
    assert (one.given, one.family) == (other.given, other.family) == (given_name, family)


@given(st.lists(PLAIN, min_size=2, max_size=4))
def test_the_first_word_is_given_and_the_last_is_family(words: list[str]) -> None:
    """Without a comma every word is in one of the two names or told of as left out."""
    found = read_name(" ".join(words))
    assert (found.given.split()[0], found.family.split()[-1]) == (words[0], words[-1])
    kept = [*found.given.split(), *found.family.split()]
    assert kept == words or found.notes


@given(st.text(max_size=60))
def test_any_text_is_read_without_a_traceback(typed: str) -> None:
    """Whatever is typed, the parts are trimmed and hold no more words than were typed."""
    found = read_name(typed)
    for part in (found.given, found.family, found.goes_by):
        assert part == " ".join(part.split())


def test_a_word_about_a_child_behind_its_given_name_hides_no_given_name() -> None:
    """In a list with the family name before a comma; a word alone behind the comma is still a remark."""
    others = "VOST, MIRA\nTARN, BO\nGRELL, UNA   ALTA"
    child = read_roster(f"{others}\nDETHNANOG, NYEMDLIAM   NUOVO").children[-1]
    assert (child.practice, child.family) == ("Nyemdliam", "Dethnanog")
    assert read_roster(f"{others}\nDETHNANOG, ASMA").children[-1].practice == "Asma"
    assert read_roster(f"{others}\nFASK, PENNY NEW").children[-1].practice == "Penny"


@pytest.mark.parametrize("typed", ["Xobrelu, logopeda martes", "Xobrelu, necesita ayuda", "Xobrelu, zwembad"])
def test_small_words_behind_a_name_on_no_list_are_a_remark(typed: str) -> None:
    assert read_name(typed)[:2] == ("Xobrelu", "")


PARTED = [
    ("MC NALLY RAFI", "SMITH JOHN", "Mc Nally"), ("O BRIEN RAFI", "SMITH JOHN", "O Brien"),
    ("DE LA CRUZ RAFI", "SMITH JOHN", "de la Cruz"), ("VAN DER MEER RAFI", "SMITH JOHN", "van der Meer"),
    ("RAFI MC NALLY", "JOHN SMITH", "Mc Nally"), ("RAFI O BRIEN", "JOHN SMITH", "O Brien"),
    ("Rafi O Brien", "John Smith", "O Brien"), ("Rafi D Angelo", "John Smith", "D Angelo"),
    ("rafi mc nally", "john smith", "Mc Nally"), ("Rafi O BRIEN", "John SMITH", "O Brien"),
    ("O BRIEN, RAFI", "SMITH, JOHN", "O Brien"), ("MC NALLY, RAFI", "SMITH, JOHN", "Mc Nally"),
]


@pytest.mark.parametrize(("line", "other", "family"), PARTED)
def test_a_family_name_typed_in_two_words_is_one(line: str, other: str, family: str) -> None:
    """What opens it is neither a given name nor a middle one, and it is written as it is elsewhere."""
    others = [other, other.replace("SMITH", "JONES").replace("JOHN", "ANNA").replace("Smith", "Jones")
              .replace("John", "Anna")]
    children = read_roster("\n".join((line, *others))).children
    assert (children[0].practice, children[0].family) == ("Rafi", family)


def test_an_initial_before_another_family_name_stays_one() -> None:
    children = read_roster("Rafi O Vost\nMC Tarn\nJohn Smith").children
    assert [(child.given, child.family) for child in children] == [("Rafi", "Vost"), ("MC", "Tarn"), ("John", "Smith")]
