"""Who does something for whom, in turn, ``Mia offre à Leo`` over ``Leo offre à Ava``: the first name is the child's.

The same small words stand in the middle of nearly all lines, and whoever stands behind them has a line of his own; so
no ``Jan van der Meer`` is meant. Signs in place of such words are read elsewhere (``arrows``, ``prose``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import groupby

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.roster.arrows import names_alone
from namewright.roster.beside import strip_numbering
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import fold

_FEWEST, _MOSTLY = 3, 0.8
_LOOKED_AT = 6  # lines that tell whether it is worth a look at all
_LONGEST = 200  # characters of a line that is looked at


def from_passed_on(lines: Sequence[Line]) -> list[Line]:
    """Return the names before such words, where nearly all lines have the same and name one another's children."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    if sum(_in_three(lines[at].text) is not None for at in filled[:_LOOKED_AT]) < _FEWEST:
        return list(lines)  # most lists end here
    found = {at: parts for at in filled if (parts := _in_three(lines[at].text))}
    if len(found) < max(_FEWEST, _MOSTLY * (len(filled) - 1)):
        return list(lines)
    (middle, often), = Counter(between for _, between, _ in found.values()).most_common(1)
    first = {fold(before) for before, _, _ in found.values()}
    told = [at for at, (_, between, behind) in found.items() if between == middle and fold(behind) in first]
    if often < _MOSTLY * len(filled) - 1 or len(told) < max(_FEWEST, _MOSTLY * often):
        return list(lines)
    made = names_alone(lines, {at: (before, f"{between} {behind}") for at, (before, between, behind) in found.items()
                               if between == middle})
    top = filled[0]
    closed = first == {fold(behind) for _, _, behind in found.values()} and len(found) == len(filled) - 1
    if closed and top not in found and begins_small(lines[top].text.strip(" *!.:").split(" ")[-1]):  # Ami secret
        made[top] = lines[top].heading(lines[top].text)  # everybody gives and is given to, so nobody is left over
    return made


def _in_three(text: str) -> tuple[str, str, str] | None:
    """Return the words before, in and behind the only run of small words within a line; None where there is none."""
    if len(text) > _LONGEST:
        return None
    runs = [(small, " ".join(words)) for small, words in groupby(strip_numbering(text).split(), begins_small)]
    if [small for small, _ in runs] != [False, True, False]:
        return None
    return runs[0][1], runs[1][1], runs[2][1]
