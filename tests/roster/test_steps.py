"""The steps before columns are looked for: each in its place, and left out only where it would change nothing."""

from __future__ import annotations

import random

import pytest

from made_lists.many import SHAPES
from made_lists.people import HELD, people
from namewright.message import message
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.steps import AS_PASTED, BEFORE_COLUMNS, Step, through

LOOKING = {step.take.__name__: step for step in (*AS_PASTED, *BEFORE_COLUMNS) if step.needs}
EXAMPLES = {
    "from_parents_of": "Dear parents of Mira Vost, Leo Zell and Ava Quin,",
    "from_wrapped": "In my class this year I have Mira Vost, Leo\nZell, Ava Quin, Otta Marn, Kai Rehm and Bo\nTarn.",
    "from_ages": "Mira Vost (4;7) – /k/ for /t/\nLeo Zell (5;1) – lisp\nAva Quin (4;11) – /r/ at word start",
    "from_bare_labels": "Mira: ||\nLeo:\nAva: |||\nBo: |",
    "from_merged_cells": "Red table\tMira Vost\n\tLeo Zell\n\tAva Quin",
    "from_an_index": "Vost, Mira ..... 12    Zell, Bo ..... 31\nQuin, Otta ..... 4    Marn, Kai ..... 7",
    "from_arrows": "Mira → Oak School\nLeo → Elm School\nAva → Oak School\nBo → Elm School",
    "from_a_photo": "' 1, Mira Vost _\n. 2, Leo Zell |\n~ 3, Ava Quin .\n= 4, Bo Marn _",
    "from_a_program": '"Mira Vost",\n"Leo Zell",\n"Ava Quin"',
    "from_file_names": "Mira_Vost.jpg\nLeo_Zell.jpg\nAva_Quin.jpg",
    "from_a_form": "First name: Mira\nLast name: Vost\nFirst name: Leo\nLast name: Zell",
    "from_names_beside": "1. Mira Vost\t3. Ava Quin\n2. Leo Zell\t4. Bo Marn",
    "without_groups_beside": "Mira V. · Red group\nLeo Z. · Blue group\nAva Q. · Red group",
    "from_a_cast": "Sheep: Mira and Leo\nWolf: Ava\nFairy: Bo",
    "_from_pages": "Name\tBus\nMira Vost\t4\nLeo Zell\t7\n\nName\tSnack\nAva Quin\tpear\nBo Marn\tfig",
    "without_grown_ups": "8:02 Mira Vost (Grandma)\n8:10 Leo Zell (Dad)\n8:12 Ava Quin (Mum)",
    "from_counted_blocks": "Long jump\n1. Mira\n2. Leo\n30 metres\n1. Ava\n2. Bo",
    "from_dashed_families": "Brandt - Ottilie\nKeller - Theo\nGarcía - Lucía",
}


def lines_of(text: str) -> list[Line]:
    return [Line(line, at) for at, line in enumerate(text.split("\n"))]


def changes(step: Step, text: str) -> bool:
    lines = lines_of(text)
    return step.take(list(lines)) not in (lines, (lines, []))


def test_each_step_that_looks_for_signs_has_an_example() -> None:
    assert EXAMPLES.keys() == LOOKING.keys()


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_step_is_left_out_only_where_it_changes_nothing(name: str) -> None:
    """Of its example and of lists of all shapes the signs are rubbed out that it needs: then it leaves each line."""
    step = LOOKING[name]
    assert changes(step, EXAMPLES[name])
    made = [SHAPES[shape](rng := random.Random(shape), people(rng, rng.choice(HELD), 6)).text for shape in SHAPES]
    for text in (EXAMPLES[name], *made):
        bare = text
        while any(sign in bare for sign in step.needs):
            for sign in step.needs:
                bare = bare.replace(sign, " ")
        assert not changes(step, bare), text


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_step_is_taken_where_its_signs_are(name: str) -> None:
    step = LOOKING[name]
    taken = step.take(lines_of(EXAMPLES[name]))
    assert through((step,), lines_of(EXAMPLES[name])) == (taken if isinstance(taken, tuple) else (taken, []))


def test_steps_see_what_those_before_them_left() -> None:
    """Signs that a step writes are seen by the next; what is taken out is told in the order of the steps."""
    def with_arrows(lines: list[Line]) -> list[Line]:
        return [line._replace(text=f"{line.text} →") for line in lines]

    def without_first(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
        return lines[1:], [Aside(lines[0], (message("roster.sentence"),))]

    lines = lines_of("Mia\nLeo\nAva")
    found, told = through((Step(without_first, "→"), Step(with_arrows), Step(without_first, "→"), Step(without_first)),
                          lines)
    assert [line.text for line in found] == ["Ava →"]
    assert [aside.line.text for aside in told] == ["Mia →", "Leo →"]
    assert [line.text for line in lines] == ["Mia", "Leo", "Ava"]
