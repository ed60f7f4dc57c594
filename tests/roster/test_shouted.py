"""Words in capitals behind names: remarks where the list writes no name so, else families."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

NAMES = ("Mira Vost", "Tilo Tarn", "Xobrel Menk", "Una Elm")


@pytest.mark.parametrize("words", ["MOVED", "NEW", "PARTIE", "ABGEMELDET", "NUEVA", "TRASFERITA", "SAIU",
                                   "HAT GEWECHSELT"])
def test_a_shouted_word_behind_a_whole_name_is_a_remark(words: str) -> None:
    roster = read_roster("\n".join((*NAMES, f"Anik Thal {words}")))
    assert [(child.given, child.family) for child in roster.children][-1] == ("Anik", "Thal")
    assert [(note.key, *dict(note.fields).values()) for note in roster.lines[-1].notes] == [("roster.remark", words)]


@pytest.mark.parametrize(("line", "family"), [
    ("Anik VOSTEL", "Vostel"),  # behind one word it may be the family
    ("Anik Lu GARCIA", "Garcia"),  # on the list of family names
    ("Anik Thal III", "Thal"),
    ("Anik M. VOSTEL", "Vostel"),
])
def test_what_may_be_the_family_stays(line: str, family: str) -> None:
    assert read_roster("\n".join((*NAMES, line))).children[-1].family.casefold().startswith(family.casefold())


def test_where_families_are_written_in_capitals_they_are_families() -> None:
    lines = ["Mira Lu VOSTEL", "Tilo Jan TARNEN", "Una ELMEN", "Anik Thal MENKEL"]
    assert [child.family for child in read_roster("\n".join(lines)).children] == ["Vostel", "Tarnen", "Elmen", "Menkel"]


def test_of_few_lines_nothing_is_known() -> None:
    assert read_roster("Mira Vost\nTilo Lu TARNEN").children[-1].family == "Tarnen"
