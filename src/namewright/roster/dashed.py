"""A dash with spaces about it between two names: a family and its child (``Brandt - Ottilie``), or two children.

It is no hyphen, but for pairs that are one name by themselves (``Mary - Kate``, as programs write it). A dash with a
space behind it alone stands for a colon (``high- Mia, Theo``). Out of scope: other labels before a dash, and remarks
behind one. Pure.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.particles import OPENING_PARTICLES, PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.heading_words import COLOURS, HEADING_WORDS, PLACES
from namewright.roster.known import is_given, is_known, lean
from namewright.roster.pasted import Line
from namewright.roster.shares import are_in_a_row
from namewright.roster.vocabulary import ANY_DAYS, fold
from namewright.store import keeps_names

_NAME = r"[^\W\d_][^\d\t|,;:&+/()\[\]]{1,40}?"
_DASHED = pattern(rf"(?P<before>{_NAME})\s+[-–—]\s+(?P<behind>{_NAME})(?P<beside>\s*[(\[][^()\[\]]*[)\]])?\s*",
                  needs="-–—")
_LABEL = pattern(r"^\s*([^\W\d_]{2,15}(?: [0-9]{1,2})?)[-–—]\s+(?=[^\W\d_a-z])", needs="-–—")
_OF_LISTS = ANY_DAYS | COLOURS | DAY_WORDS | HEADING_WORDS | PLACES
_MOST_WORDS = 3
_FEW, _MOSTLY = 2, 0.6  # of the lines with a dash: the others are as they are


class _Dashed(NamedTuple):
    """The names about a dash, what stands behind them in brackets, and whether they are surely family and given."""

    family: str
    given: str
    beside: str
    sure: bool


def from_dashed_families(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with a comma for the dash behind a family name, where none parts two given names."""
    lines = _with_colons(lines)
    found = {at: dashed for at, line in enumerate(lines) if (dashed := _dashed(line.text))}
    sure = [at for at, dashed in found.items() if dashed.sure]
    if not sure or any(lean(one.family) > 0 and lean(one.given) > 0 for one in found.values()):
        return list(lines)
    told = set(found) if len(sure) >= max(_FEW, _MOSTLY * len(found)) else set(sure)
    return [_by_comma(line, found[at]) if at in told else line for at, line in enumerate(lines)]


def _with_colons(lines: Sequence[Line]) -> list[Line]:
    """Write the dash right behind small words as a colon, where two lines have one or it is no name: ``high- Mia``.

    Behind a capital that is no name there must be a row of given names: ``Hoch- Mia Theo Luz``; no ``Anna- Lena``.
    """
    found = {at: match for at, line in enumerate(lines) if (match := _LABEL.match(line.text)) and (
        begins_small(match[1]) or (not is_given(match[1]) and are_in_a_row(line.text[match.end() :])))}
    told = {at for at, match in found.items() if len(found) > 1 or not is_known(match[1])}
    return [line._replace(text=f"{found[at][1]}: {line.text[found[at].end() :]}") if at in told else line
            for at, line in enumerate(lines)]


def has_family_before_dash(text: str) -> bool:
    """Say whether a dash parts a name known as nobody's given one and one that is given."""
    dashed = _dashed(text)
    return dashed is not None and dashed.sure


@keeps_names(1024)
def _dashed(text: str) -> _Dashed | None:
    """Return the names about a dash where that before it may be a family's and that behind it is a given one."""
    found = _DASHED.fullmatch(strip_numbering(text))
    if found is None or not is_titled(found["before"]) or not is_titled(found["behind"]):
        return None
    family = [word for word in found["before"].split() if fold(word) not in PARTICLES]
    given = found["behind"].split()
    if not family or max(len(family), len(given)) > _MOST_WORDS or any(map(_is_of_a_list, (*family, *given))):
        return None
    if not all(map(is_given, given)) or (len(found["before"].split()) > 1 and any(map(is_given, family))):
        return None
    led = fold(found["before"].split()[0]) in OPENING_PARTICLES  # van der Meer
    sure = (led or all(lean(word) < 0 for word in family)) and not any(map(is_given, family)) and lean(given[0]) > 0
    return _Dashed(found["before"], found["behind"], found["beside"] or "", sure)


def _by_comma(line: Line, dashed: _Dashed) -> Line:
    told = message("roster.family_stands_first", given=dashed.given, family=dashed.family)
    return line._replace(text=f"{dashed.family}, {dashed.given}{dashed.beside}", notes=(*line.notes, told))


def _is_of_a_list(word: str) -> bool:
    return fold(word) in _OF_LISTS or is_word_about(word)
