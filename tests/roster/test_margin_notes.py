"""Comments in the margin are told, their marks come off names, and marks that are something else stay remarks."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

LEADS = ["Commented ", "Comentado ", "Commenté ", "Kommentiert ", "Commentato ", ""]


@pytest.mark.parametrize("lead", LEADS)
@pytest.mark.parametrize(("one", "two"), [("[KB1]", "[KB2]"), ("[A1]", "[A2]"), ("[a]", "[b]"), ("[1]", "[2]")])
@pytest.mark.parametrize("foot", [True, False])
def test_comments_are_no_children(lead: str, one: str, two: str, *, foot: bool) -> None:
    names = [f"Mira Vost{one}", "Xobrel Quix", f"Zendar Pluum {two}", "Leo Tarn"]
    said = [f"{lead}{one}: Geburtstag prüfen", f"{lead}{two}: demander à mamie"]
    text = "\n".join([*names, "", *said] if foot else [names[0], said[0], *names[1:3], said[1], names[3]])
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Zendar", "Leo"]
    assert [line.text for line in roster.lines if any(note.key == "roster.comment" for note in line.notes)] == said
    assert all(line.notes for line in roster.lines if line.text.endswith("]"))


def test_several_marks_and_an_answer() -> None:
    roster = read_roster("Mira Vost[KB1][KB2]\nLeo Tarn\nIda Moss\n\nCommented [KB1]: ask Oma\n"
                         "Commented [KB2]: Half days\nCommented [KB2R1]: Yes")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "[A] Mira Vost\n[B] Xobrel Quix\n[A] Leo Tarn", "Mira Rose Vost [A]\nXobrel Quix [A]\nLeo Tarn [B]",
    "[ ] Mira Vost\n[x] Xobrel Quix\n[ ] Leo Tarn", "Mira Rose Vost [A1]\nXobrel Quix [A2]: nuts\nLeo [A1]: hat"])
def test_marks_of_groups_are_no_comments(text: str) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo"]


def test_a_comment_that_may_be_a_name_is_asked_about() -> None:
    roster = read_roster("Mira Vost [3]\nXobrel Quix\nLeo Tarn\n[3] Ida Moss")
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == ["[3] Ida Moss"]
