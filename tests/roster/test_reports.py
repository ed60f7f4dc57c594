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


@pytest.mark.parametrize(("stays", "new"), [
    ("se queda", "nuevo ingreso"), ("stays in", "new here"), ("reste chez", "vient de")])
@pytest.mark.parametrize("sign", [">", "→", "->"])
def test_a_group_that_is_named_again_below_is_no_report(stays: str, new: str, sign: str) -> None:
    """What was told of one child was taken for a comment about the one above, and three were lost."""
    text = (f"Isaiah D.: Osos {sign} Búhos\nAkshay V.: {stays} (Osos)\nGirindra D.: Zorros {sign} Osos\n"
            f"Jairaj K.: {stays} (Osos)\nDev P.: Osos {sign} Zorros\nBrinda A.: {new} {sign} Osos")
    assert [child.practice for child in read_roster(text).children] == [
        "Isaiah", "Akshay", "Girindra", "Jairaj", "Dev", "Brinda"]


@pytest.mark.parametrize("kin", ["gémea de", "twin sister of", "sœur jumelle de", "la cugina di", "die Schwester von"])
def test_a_child_that_is_told_by_the_one_above_is_no_comment(kin: str) -> None:
    text = (f"Jack Callewaert\nAli Goovaerts – {kin} Jack\nDebbie Theys\nMarnix Herman – {kin} Debbie\nLynn Sabbe\n"
            f"Carl De Winter\nIda Lammens – {kin} Carl\nBianca Roosen")
    assert [child.practice for child in read_roster(text).children] == [
        "Jack", "Ali", "Debbie", "Marnix", "Lynn", "Carl", "Ida", "Bianca"]
