"""A name that is struck off is out of the class, and told; words struck off behind a name are left out."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.struck import struck_off


@pytest.mark.parametrize("line", [
    "~~Mira Vost~~", "2. ~~Mira Vost~~ (se mudó)", "~~Mira Vost~~ weggezogen", "~Mira Vost~ moved away",
    "<s>Mira Vost</s>", "<del>Mira Vost</del> à déménagé", "M̶i̶r̶a̶ ̶V̶o̶s̶t̶",
])
def test_nobody_is_made_of_a_struck_name(line: str) -> None:
    read = read_roster(f"Bo Tarn\n{line}\nUna Grell")
    assert [child.practice for child in read.children] == ["Bo", "Una"]
    assert read.lines[1].outcome is Outcome.HEADING
    assert read.lines[1].notes == (message("roster.struck_off", words="Mira Vost"),)


def test_in_a_table_and_on_a_web_page() -> None:
    table = read_roster("First name,Last name\n~~Mira~~,Vost\nBo,Tarn")
    page = read_roster("<ul><li>Bo Tarn</li><li><s>Mira Vost</s></li></ul>")
    assert [child.practice for child in (*table.children, *page.children)] == ["Bo", "Bo"]


def test_another_name_behind_it_is_asked_about() -> None:
    read = read_roster("Bo Tarn\n~~Kate~~ Katie Vost")
    assert read.lines[1].outcome is Outcome.LEFT_OUT


def test_words_struck_off_behind_a_name_are_no_name() -> None:
    assert struck_off("Mira Vost ~~bus 4~~").text == "Mira Vost"
    assert read_roster("1. Mira ~~Quill~~ Vost").children[0].family == "Vost"


@pytest.mark.parametrize("line", ["Mira ~ Vost", "~ Mira Vost", "Mira Vost ~ 5 ~", "Mira <Vost>"])
def test_other_signs_strike_nothing(line: str) -> None:
    assert struck_off(line).reason is None
