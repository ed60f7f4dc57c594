"""May the shape of a letter predict its band? A small open model, judged on letters it has not seen.

Ridge regression on four standardised features of our own strokes. It is judged leave-one-out: each letter is
predicted by a model fitted to all others, and set against guessing the mean of the others, or the middle band.
The penalty and the features were set before the first result was seen, and not changed after it. The verdict is
told in the developers' notes; a model that does not win is not used, so it is no part of the package.
Units: naming figures in those of Phillips et al. (2012); writing scores −1 (easy) to 1 (hard).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import fmean, pstdev

from namewright.geometry.points import heading, turn_degrees
from namewright.letters.strokes import Stroke
from namewright.practice.difficulty import Band, agreed_writing, band_of
from namewright.practice.evidence import load_evidence
from namewright.practice.features import letter_strokes, oblique_share

PENALTY = 1.0  # for features of standard deviation one; common practice for so few letters
FEATURES: Mapping[str, Callable[[Sequence[Stroke]], float]] = {
    "strokes": lambda strokes: float(len(strokes)),
    "path": lambda strokes: sum(stroke.length() for stroke in strokes),
    "turning": lambda strokes: sum(map(turning, strokes)),
    "oblique": oblique_share,
}
SCORE_CUT = 0.5  # a writing score beyond this, either way, is read as hard or easy

Row = tuple[float, ...]
Banding = Callable[[float], Band]


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the model did on letters it had not seen, beside the guess: errors are root mean squares."""

    target: str
    letters: int
    model_error: float
    mean_error: float
    model_hits: int
    middle_hits: int

    @property
    def wins(self) -> bool:
        """Whether the model is better both ways; only then would it be used."""
        return self.model_error < self.mean_error and self.model_hits > self.middle_hits

    def __str__(self) -> str:
        """Return the verdict in a sentence."""
        return (f"{self.target}, {self.letters} letters, each left out in turn: the model errs by "
                f"{self.model_error:.3f}, the mean of the others by {self.mean_error:.3f}; the model finds "
                f"{self.model_hits} bands, “always the middle” {self.middle_hits}. "
                f"{'It wins.' if self.wins else 'It does not win and is not used.'}")


def fit(rows: Sequence[Row], targets: Sequence[float], penalty: float = PENALTY) -> Callable[[Row], float]:
    """Return the ridge model of ``targets`` on ``rows``; features are standardised inside.

    The penalty is on the sum of squared weights; the intercept is free. Raises ValueError without rows.
    """
    if not rows:
        raise ValueError("a model needs at least one letter to learn from")
    columns = list(zip(*rows, strict=True))
    centres = [fmean(column) for column in columns]
    spreads = [pstdev(column) or 1.0 for column in columns]
    scaled = [[(value - c) / s for value, c, s in zip(row, centres, spreads, strict=True)] for row in rows]
    mean, size = fmean(targets), len(columns)
    gram = [[sum(row[i] * row[j] for row in scaled) + penalty * (i == j) for j in range(size)] for i in range(size)]
    moments = [sum(row[i] * (t - mean) for row, t in zip(scaled, targets, strict=True)) for i in range(size)]
    weights = _solved(gram, moments)
    return lambda row: mean + sum(w * (v - c) / s for w, v, c, s in zip(weights, row, centres, spreads, strict=True))


def _solved(matrix: list[list[float]], right: list[float]) -> list[float]:
    """Solve a small linear system by elimination with row exchange."""
    rows = [[*row, value] for row, value in zip(matrix, right, strict=True)]
    for at in range(len(rows)):
        pivot = max(range(at, len(rows)), key=lambda index: abs(rows[index][at]))
        rows[at], rows[pivot] = rows[pivot], rows[at]
        for below in range(at + 1, len(rows)):
            share = rows[below][at] / rows[at][at]
            rows[below] = [low - share * high for low, high in zip(rows[below], rows[at], strict=True)]
    found: list[float] = []
    for at in reversed(range(len(rows))):
        known = sum(value * old for value, old in zip(rows[at][at + 1:-1], found, strict=True))
        found.insert(0, (rows[at][-1] - known) / rows[at][at])
    return found


def left_out(rows: Sequence[Row], targets: Sequence[float]) -> list[float]:
    """Return each target as predicted by the model of all the others."""
    return [fit([*rows[:at], *rows[at + 1:]], [*targets[:at], *targets[at + 1:]])(row) for at, row in enumerate(rows)]


def judged(target: str, rows: Sequence[Row], targets: Sequence[float], band: Banding) -> Verdict:
    """Judge the model leave-one-out against guessing the mean, and against the middle band."""
    predicted = left_out(rows, targets)
    means = [fmean([*targets[:at], *targets[at + 1:]]) for at in range(len(targets))]
    bands = [band(value) for value in targets]
    return Verdict(target, len(rows), _error(predicted, targets), _error(means, targets),
                   sum(band(value) is true for value, true in zip(predicted, bands, strict=True)),
                   bands.count(Band.MIDDLE))


def _error(guesses: Sequence[float], targets: Sequence[float]) -> float:
    return math.sqrt(fmean((guess - true) ** 2 for guess, true in zip(guesses, targets, strict=True)))


def verdicts() -> tuple[Verdict, Verdict]:
    """Return the verdict on naming capitals (published figures) and on writing small letters (second-hand lists)."""
    capitals = load_evidence().capitals
    small = [chr(code) for code in range(ord("a"), ord("z") + 1)]
    return (judged("naming capitals", [_row(letter) for letter in capitals],
                   [item.b_not_first for item in capitals.values()], band_of),
            judged("writing small letters", [_row(letter) for letter in small],
                   [writing_score(letter) for letter in small], _band_of_score))


def writing_score(letter: str) -> float:
    """Return 1 where every list calls a small letter hard, −1 where every one calls it easy, else between."""
    lists = load_evidence().writing
    return fmean((letter in each.hard) - (letter in each.easy) for each in lists)


def _band_of_score(score: float) -> Band:
    if score < -SCORE_CUT:
        return Band.EASIER
    return Band.HARDER if score > SCORE_CUT else Band.MIDDLE


def turning(stroke: Stroke) -> float:
    """Return the sum of all turns along a stroke, in degrees."""
    ways = [heading(a, b) for a, b in pairwise(stroke.flattened(0.5))]
    return sum(abs(turn_degrees(before, after)) for before, after in pairwise(ways))


def _row(letter: str) -> Row:
    strokes = letter_strokes(letter)
    if strokes is None:
        raise ValueError(f"our alphabet has no “{letter}” to measure")
    return tuple(measure(strokes) for measure in FEATURES.values())


def main() -> None:
    """Print the verdicts: ``python tests/bench/predict.py``."""
    easy, hard = agreed_writing()
    for verdict in verdicts():
        print(verdict)
    print(f"Both lists of small letters call {len(easy)} easy and {len(hard)} hard; the rest is the middle.")


if __name__ == "__main__":
    main()
