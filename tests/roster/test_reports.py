"""Comments of school reports: the names are children, what is said of them is not."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.reports import from_reports

NAMES = ("Mia Vost", "Tilo Berg", "Xobrel Tarn", "Vemka Quill", "Noah Roth")
SAID = [
    "{} has settled in well. This term {} made good friends.", "Este trimestre {} ha hecho amigos. ¡Sigue así!",
    "Ce trimestre, {} a fait de beaux progrès.", "In diesem Halbjahr hat {} Freunde gefunden. Weiter so!",
    "{} scrive il suo nome da solo.", "Neste período {} fez amigos. Precisa de ajuda com a tesoura."]


@pytest.mark.parametrize("said", SAID)
@pytest.mark.parametrize("mark", ["", "### ", "• "])
@pytest.mark.parametrize("comma", [True, False])
@pytest.mark.parametrize("over", [True, False])
def test_comments_leave_the_names(said: str, mark: str, comma: bool, over: bool) -> None:
    text = ["Term 1"]
    for name in NAMES:
        given, family = name.split()
        shown = f"{family}, {given}" if comma else name
        told = said.format(*(given,) * 2)
        text += [mark + shown, told, ""] if over else [f"{mark}{shown}: {told}", ""]
    typed = "\n".join(text).strip()
    roster = read_roster(typed)
    assert [(child.given, child.family) for child in roster.children] == [tuple(name.split()) for name in NAMES]
    assert read_roster(roster.text or typed).children == roster.children


@pytest.mark.parametrize("text", [
    "\n".join(NAMES), "## Red table\nMia\nLeo\n## Blue table\nAva\nTom\n## Green table\nBen\nIda",
    "Mia: likes red\nLeo: likes blue\nAva: likes green"])
def test_lists_that_are_no_comments_stay(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert from_reports(lines, text.split("\n")) == (lines, [])


@pytest.mark.parametrize("text", [
    "Mia gives to Leo\nLeo gives to Ava\nAva gives to Otis\nOtis gives to Mia",
    "Hafsat: solo papà Musa\nAminatu: mamma Musa, nonna Usman\nRabi: solo papà Usman\nTilo: zio Rabi, zia Rabi"])
def test_lines_that_hang_together_like_a_chain_stay(text: str) -> None:
    """What is said in one line and stands first in the next is a child’s own line, and no comment about one."""
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert from_reports(lines, text.split("\n")) == (lines, [])
