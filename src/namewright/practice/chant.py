"""The letters of a name on a four-beat measure, so that every name ends on a full measure. Exact fractions. Pure.

A letter is a quarter note, four to a measure. What is left over is made up in the last measure, and a name never ends
on a short note: a letter too few, and the last is held twice as long; one or two too many, and the third beat, then
the first, take two letters. A rule of ours; nothing here is of a tune.
"""

from __future__ import annotations

from fractions import Fraction

QUARTER, EIGHTH, HALF, WHOLE = Fraction(1, 4), Fraction(1, 8), Fraction(1, 2), Fraction(1)
BEATS = 4
_Q, _EE = (QUARTER,), (EIGHTH, EIGHTH)
_LAST = {
    1: (WHOLE,), 2: (HALF, HALF), 3: (*_Q, *_Q, HALF), 4: _Q * 4, 5: (*_Q, *_Q, *_EE, *_Q), 6: (*_EE, *_Q, *_EE, *_Q)}
"""The last measure, by how many letters it takes."""

Measure = tuple[Fraction, ...]


def measures(letters: int) -> tuple[Measure, ...]:
    """Return the lengths of the letters, measure by measure, each measure adding up to a whole note.

    Raises ValueError for no letter.
    """
    if letters < 1:
        raise ValueError("there is no letter to chant")
    full = max(0, -(-(letters - 6) // BEATS))  # the last measure takes three to six, fewer only of a short name
    return (*((_Q * BEATS,) * full), _LAST[letters - BEATS * full])
