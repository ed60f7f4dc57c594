"""Given name and family in capitals on a line each are one child; capitals that are no families make none of it."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster


@pytest.mark.parametrize(("text", "names"), [
    ("Mira\nVOST\nLeo\nTARN\nAnna\nKELL", ["Mira Vost", "Leo Tarn", "Anna Kell"]),
    ("Mira\nVOST\n\nLeo\nTARN\n\nAnna\nKELL", ["Mira Vost", "Leo Tarn", "Anna Kell"]),
    ("FUCHS\nClara\nBERG\nJonas\nKRAUSE\nEmil", ["Clara Fuchs", "Jonas Berg", "Emil Krause"]),
    ("Klasse 1b\nClara\nFUCHS\nJonas\nBERG\nEmil\nKRAUSE", ["Clara Fuchs", "Jonas Berg", "Emil Krause"]),
    ("Élodie\nLE GOFF\nHugo\nROUX\nJean-Luc\nMOREAU", ["Élodie Le Goff", "Hugo Roux", "Jean-Luc Moreau"]),
    ("Lucía\nGARCÍA LÓPEZ\nLuis\nPÉREZ\nAna\nRUIZ GIL", ["Lucía García López", "Luis Pérez", "Ana Ruiz Gil"]),
    ("Xobrel\nBERG\nQuorra\nFUCHS\nDravo\nKRAUSE", ["Xobrel Berg", "Quorra Fuchs", "Dravo Krause"]),
])
def test_given_name_and_family_by_turns_are_one_child_each(text: str, names: list[str]) -> None:
    assert [f"{child.given} {child.family}" for child in read_roster(text).children] == names


@pytest.mark.parametrize("text", [
    "MIRA\nLeo\nANNA\nTheo\nEVA\nBen", "Mira\nVOST\nLeo\nTARN", "Mira\nVost\nLeo\nTarn\nAnna\nKell",
])
def test_where_nothing_tells_families_every_line_is_a_child(text: str) -> None:
    assert len(read_roster(text).children) == len(text.split("\n"))


@pytest.mark.parametrize("text", [
    "Mira\nEAL\nLeo\nSEN\nAnna\nIEP", "Mira\nABSENT\nLeo\nPRESENT\nAnna\nSICK",
    "MONTAG\nMira\nDIENSTAG\nLeo\nMITTWOCH\nAnna",
])
def test_states_marks_and_days_are_no_families(text: str) -> None:
    children = read_roster(text).children
    assert [child.given for child in children if child.given in {"Mira", "Leo", "Anna"}] == ["Mira", "Leo", "Anna"]
    assert not any(child.family for child in children)


def test_what_is_shouted_below_a_whole_name_is_no_family() -> None:
    roster = read_roster("Mira Kell\nNIENTE NOCI\nLeo Berg\nPRANZO A CASA\nAnna Fuchs\nSALE PRIMA")
    assert {"Kell", "Berg", "Fuchs"} <= {child.family for child in roster.children}
