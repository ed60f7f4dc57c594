"""The names between signs are parted, and nothing that is no name is taken for one."""

from __future__ import annotations

import pytest

from namewright.roster.names_between import names_between, names_told, parts_between


@pytest.mark.parametrize(("text", "names"), [
    ("Mia, Leo & Ava", ["Mia", "Leo", "Ava"]), ("Mia, Leo, and Ava.", ["Mia", "Leo", "Ava"]),
    ("Xobrel; Vemka; Quorrik", ["Xobrel", "Vemka", "Quorrik"]), ("Mia + Leo / Ava", ["Mia", "Leo", "Ava"]),
    ("Mia und Leo", ["Mia", "Leo"]), ("Ana Ruiz y Gómez, Luis Soto", ["Ana Ruiz y Gómez", "Luis Soto"]),
    ("Ana Ruiz y Luis", ["Ana Ruiz", "Luis"]), ("Mira V., Zoe M.", ["Mira V.", "Zoe M."]),
    ("1. Mira, 2. Leo", ["Mira", "Leo"]), ("Mia Vost, Leo Tarn, Ava Elm, Kashish Pai", [
        "Mia Vost", "Leo Tarn", "Ava Elm", "Kashish Pai"]),
])
def test_names_are_parted_by_signs_and_words(text: str, names: list[str]) -> None:
    assert list(names_told(text)) == names


@pytest.mark.parametrize("text", ["", "M/W/F", "peanuts, dairy", "Mia, 4 B", "Chen, Mia; Park, Leo", "Mia, , Leo"])
def test_where_something_else_stands_no_name_is_told(text: str) -> None:
    assert names_told(text) == ()


def test_places_are_taken_off_where_they_count_the_names() -> None:
    assert names_between("1. Mira, 2. Leo") == ("Mira", "Leo")
    assert names_between("3. Mira, 1. Leo") == parts_between("3. Mira, 1. Leo") == ("3. Mira", "1. Leo")


def test_signs_in_brackets_part_nothing() -> None:
    assert parts_between("Mira (bus, late), Leo") == ("Mira (bus, late)", "Leo")
