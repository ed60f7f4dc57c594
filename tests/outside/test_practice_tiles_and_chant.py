"""Loose tiles held against an integer programme of SciPy (HiGHS), and measures of a chant by exact fractions."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from pathlib import Path
from random import Random

import numpy as np
import pytest
from scipy.optimize import Bounds, LinearConstraint, milp

from namewright.names.clusters import clusters
from namewright.practice.chant import EIGHTH, measures
from namewright.practice.tile_set import sheets_of, tiles_needed

CENSUS = Path(__file__).parents[1] / "data" / "first-names-held-out.tsv"


def classes() -> list[list[str]]:
    """Return random classes of census first names (the source stands in the file)."""
    lines = CENSUS.read_text(encoding="utf-8").splitlines()
    names = [line.split("\t")[0].capitalize() for line in lines if line and not line.startswith("#")]
    return [Random(seed).sample(names, 4 + 3 * seed) for seed in range(6)]


def hungriest(counts: list[int], at_once: int) -> int:
    """Return the most tiles of a letter that so many children can need, as the programme finds them."""
    found = milp(-np.array(counts, dtype=float), integrality=np.ones(len(counts)), bounds=Bounds(0, 1),
                 constraints=LinearConstraint(np.ones((1, len(counts))), 0, at_once))
    return round(-found.fun)


@pytest.mark.parametrize("at_once", [1, 2, 4, 30])
@pytest.mark.parametrize("names", classes(), ids=len)
def test_any_children_can_build_and_no_tile_is_over(names: list[str], at_once: int) -> None:
    """Of each letter there are as many tiles as the worst choice of children needs: not one fewer, not one more."""
    needed = tiles_needed(names, at_once)
    counts = [Counter(clusters(name)) for name in names]
    assert set(needed) == {letter for one in counts for letter in one}
    for letter, count in needed.items():
        assert count == hungriest([one[letter] for one in counts], at_once)


@pytest.mark.parametrize("names", classes(), ids=len)
def test_tiles_take_the_fewest_sheets(names: list[str]) -> None:
    """Within one sheet of the optimum of a programme that packs each letter's tiles into sheets of 63."""
    needed = tiles_needed(names, 4)
    sheets = sheets_of(needed, 7, 9)
    most = len(sheets) + 1
    letters = len(needed)
    # x[letter, sheet] tiles, then used[sheet]: all tiles placed, no sheet over full, few sheets
    cost = np.concatenate([np.zeros(letters * most), np.ones(most)])
    placed = np.zeros((letters, letters * most + most))
    filled = np.zeros((most, letters * most + most))
    for letter in range(letters):
        placed[letter, letter * most:(letter + 1) * most] = 1
        for sheet in range(most):
            filled[sheet, letter * most + sheet] = 1
    for sheet in range(most):
        filled[sheet, letters * most + sheet] = -63
    counts = list(needed.values())
    found = milp(cost, integrality=np.ones(len(cost)),
                 bounds=Bounds(0, np.concatenate([np.repeat(counts, most), np.ones(most)])),
                 constraints=[LinearConstraint(placed, counts, counts), LinearConstraint(filled, -np.inf, 0)])
    assert len(sheets) <= round(found.fun) + 1
    assert Counter(letter for sheet in sheets for row in sheet for letter in row) == Counter(needed)
    assert all(len(sheet) <= 9 and all(len(row) <= 7 for row in sheet) for sheet in sheets)


@pytest.mark.parametrize("letters", range(1, 31))
def test_every_measure_is_full(letters: int) -> None:
    """The lengths of each measure add up to a whole note, exactly; eighths come in pairs and never end a name."""
    made = measures(letters)
    assert sum(map(len, made)) == letters
    assert all(sum(measure, Fraction(0)) == 1 for measure in made)
    assert all(measure.count(EIGHTH) % 2 == 0 for measure in made)
    assert made[-1][-1] > EIGHTH
    assert all(len(measure) == 4 for measure in made[:-1])


def test_nobody_builds_or_chants_nothing() -> None:
    with pytest.raises(ValueError, match="nobody"):
        tiles_needed(["Mira"], 0)
    with pytest.raises(ValueError, match="no letter"):
        measures(0)
