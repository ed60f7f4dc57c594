"""Reading groups, groups by half days and by days: their heads are no children, and everybody in them is read."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

NAMES = "Mia Leo Ava Noah Ben Zoe"
LISTS = [
    "Bluebirds (4)\nMia, Leo, Ava, Noah\nRobins (2)\nBen, Zoe",
    "Bluebirds\n- Mia\n- Leo\n- Ava\nRobins\n- Noah\n- Ben\n- Zoe",
    "Mon: Bluebirds - Mia, Leo, Ava\nTue: Robins - Noah, Ben\nWed: Owls - Zoe",
    "Triangles -> Mia, Leo\nCircles -> Ava, Noah, Ben\nSquares -> Zoe",
    "Table 1 - Mia V, Leo T, Ava R\nTable 2 - Noah Q, Ben M, Zoe M",
    "Tues. 9:15 – Mia, Leo, Ava (letter sounds)\nWed. 9:15 – Noah, Ben (blending)\nThu. 9:15 – Zoe",
]
HEADS = [
    ("M/W/F", "T/Th"), ("M/W", "T/R"), ("Mon-Wed-Fri mornings", "Tue-Thu mornings"),
    ("A day", "B day"), ("Full day", "Half day"),
    ("Cohort A (Mon/Tue)", "Cohort B (Thu/Fri)"), ("Level A", "Level B"), ("Vormittagskinder", "Ganztagskinder"),
    ("Mo/Mi/Fr", "Di/Do"), ("Lun/Mer", "Mar/Jeu"), ("Lun-Mié-Vie", "Mar-Jue"), ("Lun/Gio", "Mar/Ven"),
    ("Seg/Qua", "Ter/Qui"),
    ("Cohorte A", "Cohorte B"), ("Kohorte A", "Kohorte B"), ("Niveau 1", "Niveau 2"), ("Nivel A", "Nivel B"),
    ("Livello A", "Livello B"), ("Stufe 1", "Stufe 2"),
]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("text", LISTS)
def test_everybody_in_the_groups_and_nobody_else(text: str) -> None:
    assert [child.given for child in read_roster(text).children] == NAMES.split()


@pytest.mark.parametrize(("one", "two"), HEADS)
def test_a_head_of_days_or_of_a_level_is_told(one: str, two: str) -> None:
    roster = read_roster(f"{one}\nMia Vost\nLeo Tarn\n{two}\nAva Rey\nNoah Quill")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]
    assert roster.lines[0].outcome is roster.lines[3].outcome is Outcome.HEADING


@pytest.mark.parametrize("title", ["Reading groups", "Lesegruppen", "Groupes de lecture", "Grupos de lectura",
                                   "Gruppi di lettura", "Grupos de leitura"])
def test_under_a_title_of_groups_unknown_words_are_asked_about(title: str) -> None:
    roster = read_roster(f"{title}\nBluebirds\nMia\nLeo\nAva\nRobins\nNoah\nBen\nZoe")
    assert [child.practice for child in roster.children] == NAMES.split()


@pytest.mark.parametrize("text", ["Kim\nXobrel\nMia\nZuthe\nLeo", "- Mia\n- Leo\nXobrel\n- Ava\n- Noah",
                                  "Mia\nMo Di\nLeo",
                                  "Will Day\nMia Kinder\nLeo Tag\nAva Reading"])
def test_children_called_so_stay(text: str) -> None:
    assert len(practised(text)) == len(text.splitlines())


REGISTERS = [("Present", "Absent", "Late"), ("Here", "Away", "Sick"), ("Presentes", "Ausentes", "Retrasos"),
             ("Asiste", "Falta", "Llega tarde"), ("Présents", "Absents", "En retard"), ("Da", "Fehlt", "Krank"),
             ("Anwesend", "Abwesend", "Verspätet"), ("Presenti", "Assenti", "In ritardo"),
             ("Presentes", "Faltas", "Atrasos")]
CLASSES = [["Mia", "Leo", "Ava", "Otis"], ["Mia Vost", "Leo Tarn", "Ava Moss", "Otis Bell"],
           ["Xobrel Vank", "Zuthe Menk", "Vemka Drun", "Rinno Tovel"], ["Xobrel", "Zuthe", "Vemka", "Rinno"]]


@pytest.mark.parametrize("states", REGISTERS)
@pytest.mark.parametrize("names", CLASSES)
@pytest.mark.parametrize("sign", [", ", "; "])
@pytest.mark.parametrize("end", [": ", " – "])
def test_behind_states_stand_the_children_of_the_class(
        states: tuple[str, ...], names: list[str], sign: str, end: str) -> None:
    here, away, late = states
    text = f"{here}{end}{sign.join(names[:2])}\n{away}{end}{names[2]}\n{late}{end}{names[3]}"
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("states", REGISTERS)
@pytest.mark.parametrize("names", CLASSES)
@pytest.mark.parametrize("end", ["", ":", " (2)"])
def test_states_over_blocks_are_nobody(states: tuple[str, ...], names: list[str], end: str) -> None:
    if states[0] == "Da":  # so short a word may be anybody's
        return
    text = f"{states[0]}{end}\n{names[0]}\n{names[1]}\n\n{states[1]}\n{names[2]}\n{states[2]}\n{names[3]}"
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("sign", ["\t", " – ", ": "])
def test_states_in_capitals_behind_names_are_nobody(sign: str) -> None:
    for states in REGISTERS:
        text = "\n".join((f"Xobrel Vank{sign}{states[0]}", f"Zuthe Menk{sign}{states[1]}",
                          f"Vemka Drun{sign}{states[0]}", f"Rinno Tovel{sign}{states[0]}"))
        assert [child.practice for child in read_roster(text).children] == ["Xobrel", "Zuthe", "Vemka", "Rinno"]
