"""One class in two columns or three is read name by name; who may stand beside a child is asked about."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

COUNTED = [
    ("Room 9\n1 ORTIZ Mira\t4 PAZ Leo\n2 VEGA Ana\t5 GIL Noa\n3 RUIZ Tilo\t6 MORA Eva",
     ["Mira", "Ana", "Tilo", "Leo", "Noa", "Eva"]),
    ("1) Vost, Mira | 4) Berg, Leo\n2) Tarn, Ada | 5) Birk, Noah\n3) Quell, Emil",
     ["Mira", "Ada", "Emil", "Leo", "Noah"]),
    ("Mi grupo\n\n(1) Zorb Quixel     (3) Vexil Rook\n(2) Trask Mell     (4) Orrin Pask",
     ["Zorb", "Trask", "Vexil", "Orrin"]),
    ("#1 - Mira Vost;#2 - Leo Berg\n#3 - Ada Tarn;#4 - Noah Birk\n#5 - Emil Quell",
     ["Mira", "Leo", "Ada", "Noah", "Emil"]),
    ("1.   Mira Vost      3.   Leo Berg\n2.   Ada Tarn       4.   Noah Birk", ["Mira", "Ada", "Leo", "Noah"]),
    ("1. Mira Vost\t3. Ada Tarn\t5. Emil Quell\n2. Leo Berg\t4. Noah Birk\t6. Ida Sand",
     ["Mira", "Leo", "Ada", "Noah", "Emil", "Ida"]),
]


@pytest.mark.parametrize(("text", "names"), COUNTED)
def test_numbers_that_run_through_all_columns_make_one_list(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


WRITTEN = [
    ("Igelgruppe\nVost, Mira | Berg, Leo\nTarn, Ada | Birk, Noah\nQuell, Emil | Sand, Ida\nMoor, Jana | Wolf, Tim",
     ["Mira", "Ada", "Emil", "Jana", "Leo", "Noah", "Ida", "Tim"], "the families first"),
    ("VOST Mira\tBERG Leo\nTARN Ben\tBIRK Noah\nQUELL Emil\tSAND Ida\nMOOR Jana\tWOLF Tim",
     ["Mira", "Ben", "Emil", "Jana", "Leo", "Noah", "Ida", "Tim"], "the families in capitals"),
    ("Mira V. | Leo B.\nAda T. | Noah B.\nEmil Q. | Ida S.\nJana M. | Tim W.",
     ["Mira", "Ada", "Emil", "Jana", "Leo", "Noah", "Ida", "Tim"], "families cut to a letter"),
    ("Ada Tarn\tJana Moor\nEmil Quell\tLeo Berg\nHugo Lenz\tMira Vost\nIda Sand\tNoah Birk",
     ["Ada", "Emil", "Hugo", "Ida", "Jana", "Leo", "Mira", "Noah"], "in the order of the letters"),
    ("Mira Vost\tLeo Berg\nAda Tarn\tNoah Birk\nEmil Quell\tIda Sand\nJana Moor\tTim Wolf\nHugo Lenz",
     ["Mira", "Ada", "Emil", "Jana", "Hugo", "Leo", "Noah", "Ida", "Tim"], "one sooner at its end"),
]


@pytest.mark.parametrize(("text", "names", "why"), WRITTEN)
def test_whole_names_written_as_only_a_class_is_are_all_children(text: str, names: list[str], why: str) -> None:
    read = read_roster(text)
    assert [child.practice for child in read.children] == names, why
    assert all(line.outcome in (Outcome.CHILD, Outcome.HEADING) for line in read.lines), why


ASKED = [
    ("Mira Vost\tLeo Berg\nTim Tarn\tNoah Birk\nEmil Quell\tIda Sand\nAda Moor\tJana Wolf", "grown-ups or friends"),
    ("Mira Vost\tAnna Vost\nAda Tarn\tPaul Birk\nEmil Quell\tKarl Quell\nTim Moor\tOlga Moor\nHugo Lenz",
     "of one family"),
]


@pytest.mark.parametrize(("text", "why"), ASKED)
def test_whoever_may_stand_beside_a_child_is_asked_about(text: str, why: str) -> None:
    with pytest.raises(RosterError) as asked:
        read_roster(text)
    assert asked.value.message.key == "roster.two_wholes", why


def test_what_is_counted_beside_names_makes_no_child() -> None:
    read = read_roster("1. Mira Vost | 3 pencils\n2. Leo Berg | 4 pencils\n3. Ada Tarn | 5 pencils")
    assert [child.practice for child in read.children] == ["Mira", "Leo", "Ada"]
