"""Twins and other siblings on one line: ``The Solano twins Rafi & Luz`` becomes ``Rafi Solano`` and ``Luz Solano``.

A word for siblings stands before the names or behind them, with the family’s name beside it or none. Out of
scope: ``Rafi & Luz Solano`` without such a word (``several``), and what is said of a child (``Mia (brother Leo)``).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.heading_words import ARTICLES
from namewright.roster.known import is_double, is_given, lean
from namewright.roster.names_in_text import BETWEEN_NAMES
from namewright.roster.pasted import Line
from namewright.roster.several import may_be_a_name
from namewright.roster.vocabulary import fold

_TWINS = ("twins|triplets|zwillinge|drillinge|gemel[oa]s|melliz[oa]s|trilliz[oa]s|jumeaux|jumelles|tripl[ée]s|"
          "gemell[ie]|trigemini|g[ée]me[oa]s|trig[ée]me[oa]s")
_SIBLINGS = (rf"(?:{_TWINS}|siblings|brothers|sisters|geschwister|br[üu]der|schwestern|herman[oa]s|fr[èe]res|"
             "s(?:oe|œ)urs|fratelli|sorelle|irm[ãa][os]s?)")
_THE = r"(?:(?:the|die|l[oae]s|[ie]l?|gli|[oa]s|nos|our|unsere)\s+)?"
_FAMILY = r"(?P<family>[^\W\d_][^\d,;:&+/()\[\]]{1,40}?)"
_NAMED = r"(?P<names>[^\W\d_][^\d:()\[\]]*?)"
_SIGN = r"\s*[,:(\[–—-]\s*"
_FORMS = [pattern(form, re.IGNORECASE) for form in (
    rf"{_THE}{_FAMILY}[\s-]+{_SIBLINGS}(?:{_SIGN}|\s+){_NAMED}[)\].!]*",  # The Solano twins Rafi & Luz
    rf"{_THE}{_SIBLINGS}\s+{_FAMILY}{_SIGN}{_NAMED}[)\].!]*",  # Los gemelos Solano: Rafi y Luz
    rf"{_NAMED}{_SIGN}{_THE}{_FAMILY}[\s-]+{_SIBLINGS}[)\].!]*",  # Rafi & Luz (the Solano twins)
    rf"{_NAMED}{_SIGN}{_THE}{_SIBLINGS}\s+{_FAMILY}[)\].!]*",
    rf"{_THE}{_SIBLINGS}\s+{_NAMED}[.!]*",  # Les jumeaux Solano Rafi et Luz
)]
_TWO = pattern(rf"(?P<names>[^\W\d_][^\d:()\[\],;]*?){_SIGN}{_THE}{_SIBLINGS}[)\].!]*", re.IGNORECASE)
_PARTED = pattern(r"\s[-–—→]|[-–—→]\s|[=/]")  # Kian – Theo & Milo (twins)
_WORD = pattern(rf"\b{_SIBLINGS}\b", re.IGNORECASE)
_ONLY_TWINS = pattern(rf"{_THE}(?:{_TWINS})\s", re.IGNORECASE)
_FEWEST, _MOST = 2, 4  # children
_MOST_WORDS = 3  # of the family’s name
_LONGEST = 120


class _Family(NamedTuple):
    """The name of a family and the given names of its children."""

    name: str
    children: tuple[str, ...]


def from_siblings(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with one for each child of a family that is told so, the family’s name with it."""
    found = {at: family for at, line in enumerate(lines) if len(line.text) <= _LONGEST and _WORD.search(line.text)
             and (family := _family(strip_numbering(line.text)))}
    by_comma = 2 * sum("," in line.text for at, line in enumerate(lines) if at not in found) > len(lines)
    return [each for at, line in enumerate(lines) for each in (
        _apart(line, found[at], by_comma=by_comma) if at in found else (line,))]


def _apart(line: Line, family: _Family, *, by_comma: bool) -> Iterator[Line]:
    for child in family.children:
        whole = f"{family.name}, {child}" if by_comma else f"{child} {family.name}"
        yield line.part(whole if family.name else child)


def _family(text: str) -> _Family | None:
    """Return the children of one family where a line tells them so, None where it tells something else."""
    for form in _FORMS:
        if match := form.fullmatch(text):
            children = BETWEEN_NAMES.split(match["names"].strip())
            family = match.groupdict().get("family")
            if found := _behind_the_word(text, children) if family is None else _checked(family, children):
                return found
    behind = _TWO.fullmatch(text)
    return _of_one_name(BETWEEN_NAMES.split(behind["names"].strip())) if behind and not _PARTED.search(
        behind["names"]) else None


def _checked(family: str, children: Sequence[str]) -> _Family | None:
    """Return a family where its name may be one, and its children may be so."""
    words = [word for word in family.split() if fold(word) not in PARTICLES]
    titled = is_titled(family) and 0 < len(words) <= _MOST_WORDS and not any(map(is_word_about, words))
    titled = titled and not lean(words[0]) > 0 and ARTICLES.isdisjoint(map(fold, words))  # Mia Vost, brothers Leo & Bo
    return _Family(family, tuple(children)) if titled and _are_children(children) else None


def _behind_the_word(text: str, names: Sequence[str]) -> _Family | None:
    """Return the children behind a word for them, where the family’s name, or none, stands before the first."""
    family, _, given = names[0].rpartition(" ")
    children = (given, *names[1:])
    if family:
        return _checked(family, children) if not is_given(family) or is_given(given) else None
    return _Family("", children) if _ONLY_TWINS.match(text) and _are_children(children) else None


def _of_one_name(names: Sequence[str]) -> _Family | None:
    """Return the children before a word for siblings, on whatever list: ``Xobrel et Vemka (jumeaux)``.

    The family’s name behind the last is that of all: ``Mia and Leo Vost (twins)``.
    """
    *others, last = (name.split() for name in names)
    if not _FEWEST <= len(names) <= _MOST or not all(may_be_a_name(name) and is_titled(name) for name in names):
        return None
    if any(sum(fold(word) not in PARTICLES for word in words) > _MOST_WORDS for words in (*others, last)):
        return None
    if all(len(words) == 1 and lean(words[0]) < 0 for words in (*others, last)):  # two families
        return None
    shared = all(len(words) == 1 for words in others) and len(last) > 1 and not is_double(*last[:_FEWEST])
    if shared and not lean(last[1]) > 0:
        return _Family(" ".join(last[1:]), (*(words[0] for words in others), last[0]))
    return _Family("", tuple(names))


def _are_children(names: Sequence[str]) -> bool:
    """Say whether names may be those of a few children, one word each and most of them known."""
    known = sum(map(is_given, names))
    return _FEWEST <= len(names) <= _MOST and 2 * known >= len(names) and all(
        " " not in name and may_be_a_name(name) and is_titled(name) for name in names)
