"""Codes that count things before the children who have them, ``TAB-01 = Mia Vost``: a number, and no group of one.

All codes are letters and a figure behind them, the same letters on nearly every line and no figure twice, with one sign
for all between a code and its child. Out of scope: words and figures with a space between, which may be a table or a
bus (``labelled_groups``), and columns.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.names_in_text import BRACKETS
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import fold

_CODE = pattern(r"\s*(?:[-*•·]\s+)?([^\W\d_]{1,8}[-_.#/]?)([0-9]{1,5})\s*(→|⇒|->|=>|=|:|\s[-–—](?=\s))\s*(?=[^\W\d_])")
_FEWEST, _MOSTLY = 3, 0.8
_TITLES = 2  # lines without a code, at most, above those with one


def from_codes_before(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the codes that stand before children, where nearly all have one."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    found = {at: match for at in filled if (match := _CODE.match(lines[at].text))}
    rest = [lines[at].text[match.end() :] for at, match in found.items()]
    above = [at for at in filled if at not in found]
    alike = len({(fold(match[1]), match[3].strip()) for match in found.values()}) == 1
    once = len({match[2] for match in found.values()}) == len(found)
    if (len(found) < _FEWEST or len(above) > _TITLES or not alike or not once or max(above, default=-1) > min(found)
            or not are_most(map(_may_open_with_a_name, rest), _MOSTLY)):
        return list(lines)
    return [line._replace(text=line.text[found[at].end() :]) if at in found else
            line.heading(line.text) if at in above else line for at, line in enumerate(lines)]


def _may_open_with_a_name(text: str) -> bool:
    bare = BRACKETS.sub(" ", text).strip()
    return bool(bare) and is_titled(bare.split(",")[0]) and not any(map(str.isdigit, bare))
