"""Letters over names that begin so are headings in every form, and what only looks so stays as it is."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("text", [
    "A\nAna\nAbel\nB\nBruno\nC\nCoral\nD\nDiego", "Aa\nAna\nAbel\nBb\nBruno\nCc\nCoral\nDd\nDiego",
    "A: Ana, Abel\nB: Bruno\nC: Coral\nD: Diego\nE:", "A – Ana et Abel\nB – Bruno\nC – Coral\nD – Diego\nE –",
    "Aa  Ana & Abel\nBb  Bruno\nCc  Coral\nDd  Diego", "A\tAna; Abel\nB\tBruno\nC\tCoral\nD\tDiego",
])
@pytest.mark.parametrize("title", ["", "Alphabet tree\n", "LE COIN DES NOMS\n\n", "Baum der Namen 2026\n"])
def test_a_letter_over_names_that_begin_so_is_nobody(title: str, text: str) -> None:
    roster = read_roster(title + text)
    assert [child.practice for child in roster.children] == ["Ana", "Abel", "Bruno", "Coral", "Diego"]
    assert all(report.notes for report in roster.lines if report.outcome is Outcome.HEADING)


def test_names_on_no_list_and_with_marks_stand_under_their_letters() -> None:
    assert practised("Dd: Dölnye\nLl: Leiryáth, Lömi\nÅå: Åsmel\nTt:\nZz: Zvemka") == [
        "Dölnye", "Leiryáth", "Lömi", "Åsmel", "Zvemka"]


def test_family_names_may_be_what_is_sorted() -> None:
    assert practised("M\nMoss, Ana\nT\nTarn, Leo\nTibor, Ida\nV\nVost, Mia\nB\nBell, Noah") == [
        "Ana", "Leo", "Ida", "Mia", "Noah"]


def test_who_stands_above_the_first_letter_is_a_child() -> None:
    assert practised("Leo\nA\nAna\nB\nBruno\nC\nCoral") == ["Leo", "Ana", "Bruno", "Coral"]


def test_letters_that_count_or_tell_a_group_are_no_alphabet() -> None:
    assert practised("A. Mira Vost\nB. Leo Tarn\nC. Ida Moss") == ["Mira", "Leo", "Ida"]
    groups = "A\nMira Vost\nLeo Tarn\nB\nIda Moss\nAnna Bell\nC\nNoah Quill\nZoe Fenn"
    assert {"Mira", "Leo", "Ida", "Anna", "Noah", "Zoe"} <= set(practised(groups))
