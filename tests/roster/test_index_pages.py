"""An index in columns: each name with its page is a child of its own."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.index_pages import from_an_index
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


@pytest.mark.parametrize(("text", "names"), [
    ("Vost, Mira ..... 12    Zell, Bo . . . . 31 |\nQuin, Otta ..,... 4 _    Marn, Kai … … 7\n_\nTarn, Lia _ _ . 9",
     ["Mira", "Bo", "Otta", "Kai", "Lia"]),
    ("ÍNDICE\nXamim Vosth ····· 2    Berol Zellum ..... 14\nThouga Quinth ........ 35", ["Xamim", "Berol", "Thouga"]),
])
def test_two_entries_of_a_line_are_two_children(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


def test_the_page_of_each_name_is_told() -> None:
    roster = read_roster("Vost, Mira ..... 12    Zell, Bo ..... 31\nQuin, Otta ..... 4    Marn, Kai ..... 7")
    told = [str(report.notes) for report in roster.lines if report.outcome is Outcome.CHILD]
    assert [page in notes for page, notes in zip(("12", "31", "4", "7"), told, strict=True)] == [True] * 4


@pytest.mark.parametrize("text", [
    "Mira Vost ..... 12\nBo Zell ..... 14",  # one column
    "Chess club ..... 12    Art room ..... 3\nDrum kit ..... 4    School yard ..... 7",
    "Reed, A., 5  Moss, B., 6\nFinch, C., 7  Dolt, D., 8",
    "Mira Vost ..... 12  yes    Bo Zell ..... 14  no",  # something else stands there
])
def test_other_lines_stay_as_they_are(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_an_index(lines) == lines
