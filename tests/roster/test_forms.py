"""Answers of a form become a table; what is no form stays as it is."""

from __future__ import annotations

import pytest

from namewright.roster.forms import from_a_form
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


def rows(text: str) -> list[str]:
    return [line.text for line in from_a_form([Line(line, at) for at, line in enumerate(text.splitlines())])]


@pytest.mark.parametrize(("given", "family"), [("First name", "Last name"), ("Prénom", "Nom"), ("Vorname", "Nachname"),
                                               ("Nombre", "Apellidos"), ("Nome", "Cognome")])
def test_each_block_is_a_child(given: str, family: str) -> None:
    text = f"{given}: Xobrel\n{family}: Vost\n\n{given} : Mia\n{family} : Tarn"
    assert [(one.given, one.family) for one in read_roster(text).children] == [("Xobrel", "Vost"), ("Mia", "Tarn")]


def test_an_answer_that_is_missing_leaves_the_others_in_their_places() -> None:
    text = "First name: Mia\nLast name: Vost\nAge: 4\nFirst name: Bo\nAge:\nLast name: Tarn"
    assert rows(text) == ["First name\tLast name\tAge", "Mia\tVost\t4", "Bo\tTarn\t"]


@pytest.mark.parametrize("text", ["Name: Mia\nAge: 4\nName: Bo\nAge: 5", "First name: Mia", "Mia: nuts\nBo: eggs",
                                  "First name: Mia\nLast name: Vost\nBo\nUna\nJo", ": \n: "])
def test_what_is_no_form_of_both_parts_stays(text: str) -> None:
    assert rows(text) == text.splitlines()
