"""A guess at a name in Latin letters is made for Cyrillic alone, as passports spell it."""

from __future__ import annotations

import pytest

from namewright.names.latin_spelling import latin_spelling

# Invented names; spelled by hand after the list of ICAO Doc 9303, from memory.
SPELLED = {"Анна Петрова": "Anna Petrova", "Юлия Щербакова": "Iuliia Shcherbakova", "Игорь": "Igor",
           "Анна-Мария": "Anna-Mariia", "Їжак Євген": "Izhak Ievhen", "Миљана Ђокић": "Miljana Dokic",
           "Аўгіня": "Auhinia", "Галина": "Galina", "Галина Їжак": "Halyna Izhak"}


@pytest.mark.parametrize(("name", "latin"), SPELLED.items(), ids=SPELLED.values())
def test_a_cyrillic_name_is_spelled_as_in_a_passport(name: str, latin: str) -> None:
    """Each word begins with a capital, a sign for softness is not written."""
    assert latin_spelling(name) == latin


@pytest.mark.parametrize("name", ["李小龙", "محمد", "דוד", "Ελένη", "Zoë", "Анна Quill", "Гөлнар", ""])
def test_no_guess_is_better_than_a_wrong_one(name: str) -> None:
    """Where the script does not say how a name sounds, or a name is Latin already, the field is left empty."""
    assert latin_spelling(name) == ""
