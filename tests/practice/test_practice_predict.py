"""The open question whether shapes predict bands: the model is a ridge model, and the verdict is what it is."""

from __future__ import annotations

import random

import numpy as np
import pytest

from bench.predict import FEATURES, Verdict, fit, judged, left_out, verdicts
from namewright.practice.difficulty import band_of


def test_the_model_is_ridge_regression() -> None:
    """numpy's least squares on standardised rows with the penalty added as rows gives the same predictions.

    Hoerl & Kennard (1970); the augmented-rows form is common practice.
    """
    rng = np.random.default_rng(5)
    rows, targets = rng.normal(size=(20, 4)) * [1, 10, 100, 0.1] + 3, rng.normal(size=20)
    model = fit([tuple(row) for row in rows], list(targets), 2.5)
    scaled = (rows - rows.mean(0)) / rows.std(0)
    padded = np.vstack([scaled, np.sqrt(2.5) * np.eye(4)])
    weights = np.linalg.lstsq(padded, np.concatenate([targets - targets.mean(), np.zeros(4)]), rcond=None)[0]
    assert [model(tuple(row)) for row in rows] == pytest.approx(list(targets.mean() + scaled @ weights))


def test_a_letter_left_out_has_no_part_in_its_own_prediction() -> None:
    """Changing one letter's figure leaves its own prediction as it was and moves another's."""
    rows, targets = [(1.0,), (2.0,), (4.0,), (5.0,)], [1.0, 2.0, 4.5, 5.0]
    before, after = left_out(rows, targets), left_out(rows, [9.0, *targets[1:]])
    assert before[0] == after[0]
    assert before[1] != after[1]


def test_a_real_relation_would_win() -> None:
    """The judge is not blind: where the target is a plain function of the features, the model wins."""
    rng = random.Random(2)
    rows = [(rng.uniform(-1, 1),) for _ in range(26)]
    assert judged("made up", rows, [row[0] - 0.5 for row in rows], band_of).wins


def test_the_verdict_on_our_letters() -> None:
    """Measured: the model finds no more bands than “always the middle”, on capitals nor on small letters.

    Root mean squares, naming capitals 0.292 against 0.273 for the mean; writing small letters 0.656 against
    0.668. Bands found 20 against 20, and 14 against 17.
    """
    naming, writing = verdicts()
    assert (naming.letters, writing.letters, len(FEATURES)) == (26, 26, 4)
    assert naming.model_error == pytest.approx(0.292, abs=0.002)
    assert naming.mean_error == pytest.approx(0.273, abs=0.002)
    assert writing.model_error == pytest.approx(0.656, abs=0.002)
    assert writing.mean_error == pytest.approx(0.668, abs=0.002)
    assert (naming.model_hits, naming.middle_hits, writing.model_hits, writing.middle_hits) == (20, 20, 14, 17)
    assert not naming.wins
    assert not writing.wins
    assert "not used" in str(naming)


def test_winning_takes_both() -> None:
    """A smaller error with no more bands found is no win, nor the other way round."""
    assert Verdict("x", 3, 0.1, 0.2, 3, 2).wins
    assert not Verdict("x", 3, 0.1, 0.2, 2, 2).wins
    assert not Verdict("x", 3, 0.2, 0.2, 3, 2).wins


def test_a_model_needs_letters() -> None:
    """Nothing to learn from is said."""
    with pytest.raises(ValueError, match="at least one letter"):
        fit([], [])
