"""Lists of a program as entries of fields, in a line or some lines each."""

from __future__ import annotations

import pytest

from namewright.roster.entry_fields import bare, entries
from namewright.roster.pasted import Line

WHO, WHAT = ("Ana Vost", "Tom Tarn", "Ruth Berg"), ("Leo is ill", "Mia is late", "Ada is ill")


def read(text: str) -> list[list[str]]:
    return [[field.text for field in entry.fields]
            for entry in entries([Line(line, at) for at, line in enumerate(text.split("\n"))])]


@pytest.mark.parametrize("row", ["7:1{at}  {who}  {what}", "{who}\t{what}\t03.05.202{at}", "{who}\n{what}\n7:1{at}",
                                 "7:1{at}\n{who}\n{what}", "{who}\n{what}\n7:1{at}\n", "7:1{at} – {who} – {what}",
                                 "From: {who}\nSubject: {what}\nDate: 7:1{at}\n", "{who}, {what}, +12,5{at} €"])
def test_each_entry_has_its_fields_without_times_and_sums(row: str) -> None:
    text = "\n".join(row.format(at=at, who=who, what=what)
                     for at, (who, what) in enumerate(zip(WHO, WHAT, strict=True)))
    assert read(text) == [list(pair) for pair in zip(WHO, WHAT, strict=True)]


def test_lines_without_times_are_no_entries_and_a_family_before_a_comma_stays() -> None:
    assert read("Ana Vost\nTom Tarn\nRuth Berg") == []
    rows = "1/11 Vost, Leo (fruit)\n2/11 Tarn, Mia (nuts)\n3/11 Zell, Ada (fruit)"
    assert read(rows)[0] == ["Vost, Leo (fruit)"]


@pytest.mark.parametrize(("text", "left"), [
    ("12.05.2025 Leo Vost +12,50 €", ("Leo Vost", True, True)), ("Mon 3/12 8:15 Leo", ("Leo", True, False)),
    ("Leo · 9:40", ("Leo", True, False)), ("Leo 1b", ("Leo 1b", False, False)), ("Sam Vost", ("Sam Vost",
    False, False)),
])
def test_times_and_sums_come_off_the_ends(text: str, left: tuple[str, bool, bool]) -> None:
    assert bare(text) == left
