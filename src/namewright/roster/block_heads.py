"""Heads over the blocks of a list without columns: months in their order, colours, ways home or groups in capitals.

What a head is follows from all of them together: months that come in the order of the year are no children called
April and June, and where each block opens in capitals and no other line has them, these name the blocks.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from itertools import pairwise

import unicodedata2

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_loud
from namewright.roster.group_names import kinds_of
from namewright.roster.heading_words import COLOURS, NOBODY
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import MONTH_NUMBERS, fold

_NO_LETTERS = pattern(r"[^\w\s.]+")
_BEFORE_ASIDE = pattern(r"\s*[(\[:]|\s+[-–—|/]\s")
_COUNTED = pattern(r"\s*([^\W\d_]{2,20})\s+(?:[Nn][°ºr]\.?\s*|#)?(\d{1,2})(?![\d.h/]|:(?!\s*$))")
_SIGNS = " :-*"
_YEAR = 12
_MANY = 4  # months in order are never children; fewer are where something else speaks for it
_FEW = 2
_TITLES = 3  # lines over the first head at most
_MOSTLY, _MOST_BULLETED = 0.8, 0.5
_NAMES_TOO = frozenset(("rose", "rosa", "violet", "viola", "lila", "bianca", "blanca"))  # colours that children have
_STOPS = frozenset(("stop", "haltestelle", "halt", "arret", "parada", "fermata", "paragem"))
_GROUPS = frozenset(("groups", "gruppen", "lesegruppen", "groupes", "grupos", "gruppi", "teams", "equipes", "equipos"))


class Heads(NamedTuple):
    """The lines (0-based) that head blocks, those over all of them, and those that may be children in capitals."""

    heads: frozenset[int] = frozenset()
    titles: frozenset[int] = frozenset()
    doubtful: frozenset[int] = frozenset()


def block_heads(texts: Sequence[str], filled: Mapping[int, str]) -> Heads:
    """Return the heads of a list; ``filled`` are its lines with letters, none said to be a name."""
    openers = [at for at in filled if not at or not texts[at - 1].strip()]
    if months := _months(filled, frozenset(openers)):
        return Heads(frozenset(months), frozenset(_above(months[0], filled)))
    if counted := _counted(filled):
        over = frozenset(_above(counted[0], filled))
        above = frozenset(at for at in over if any(map(str.isdigit, filled[at])))
        asked = frozenset(at for at in over - above if not opens_with_given(strip_numbering(filled[at])))
        sure = _tell_no_name([filled[at] for at in counted])
        return Heads(frozenset(counted), above, asked) if sure else Heads(titles=above, doubtful=asked.union(counted))
    if bare := frozenset(_over_bullets(filled)):
        below = [strip_numbering(text) for at, text in filled.items() if at not in bare]
        known = given_share(below) >= _MOST_BULLETED  # else these may be names as the others are, their bullets lost
        return Heads(bare) if known else Heads(doubtful=bare)
    if coloured := _coloured(filled, openers, texts):
        given = all(is_given(filled[at].strip(" :-*")) for at in coloured)  # Rose and Viola may be children
        return Heads(doubtful=frozenset(coloured)) if given else Heads(frozenset(coloured))
    if named := _of_a_kind(filled, openers, texts):
        return Heads(doubtful=frozenset(named))  # Daisy and Lily may be children, Wolf and Vogel families
    loud = _loud_heads(filled, openers, texts)
    if not loud:
        return Heads(doubtful=frozenset(_of_groups(filled)))
    above = frozenset(_above(loud[0], filled))
    named = [at for at in loud if all(map(is_known, _before_aside(filled[at]).split()))]
    if 2 * len(named) > len(loud):
        return Heads(doubtful=frozenset(loud) | above)
    return Heads(frozenset(loud), doubtful=above)


def _over_bullets(filled: Mapping[int, str]) -> list[int]:
    """Return the lines without a bullet, each over lines that have one, where two such are no known given names."""
    bulleted = {at: strip_numbering(text) != text.strip() or unicodedata2.category(text.strip()[0]) == "So"  # 💛 Mia
                for at, text in filled.items()}
    heads = [one for one, two in pairwise(filled) if bulleted[two] and not bulleted[one]]
    most = share(bulleted.values()) >= _MOST_BULLETED and sum(bulleted.values()) + len(heads) == len(filled)
    named = any(is_given(filled[at].split()[0].strip(",:")) for at in heads)
    return heads if most and len(heads) >= _FEW and not named else []


def _counted(filled: Mapping[int, str]) -> list[int]:
    """Return the lines that open with one word and count from one on, each over lines without: ``Stop 2 – Oak Ave``."""
    found = {at: match for at, text in filled.items() if (match := _COUNTED.match(text))}
    titled = {fold(match[1]) for at, match in found.items() if filled[at].rstrip().endswith(":")}  # Baan 1:
    found = {at: match for at, match in found.items() if fold(match[1]) in titled or not is_given(match[1])}
    word = next(iter(Counter(fold(match[1]) for match in found.values()).most_common(1)), ("", 0))[0]
    heads = [at for at, match in found.items() if fold(match[1]) == word]
    numbers = [int(found[at][2]) for at in heads]
    if len(heads) < _FEW or numbers != list(range(1, len(numbers) + 1)) or heads[-1] == max(filled):
        return []
    over = not any(one in heads and two in heads for one, two in pairwise(filled))
    plain = share(not any(map(str.isdigit, text)) for at, text in filled.items() if at not in heads and at > heads[0])
    return heads if over and plain >= _MOSTLY else []


def _tell_no_name(heads: Sequence[str]) -> bool:
    """Say whether what stands behind the counts is nothing, a place, has a figure or comes again, and is no known name.

    Behind a stop stands a place: ``Haltestelle 1 – Bahnhof``.
    """
    stops = fold(heads[0].split()[0]) in _STOPS
    behind = [_COUNTED.sub("", text, count=1).strip(" :–—-.)") for text in heads]
    again = Counter(map(fold, behind))
    return not any(map(opens_with_given, behind)) and all(
        stops or not text or any(map(str.isdigit, text)) or again[fold(text)] > 1 for text in behind)


def _coloured(filled: Mapping[int, str], openers: Sequence[int], texts: Sequence[str]) -> list[int]:
    """Return what opens the blocks where each opens with a colour alone, another one in each: groups by colour."""
    heads = [at for at in openers if at + 1 < len(texts) and texts[at + 1].strip()]
    colours = {fold(filled[at].strip(" :-*")) for at in heads}
    blocks = len(colours) >= _FEW and len(colours) == len(heads) and COLOURS.issuperset(colours)
    return heads if blocks else _coloured_lines(filled)


def _coloured_lines(filled: Mapping[int, str]) -> list[int]:
    """Return the lines of a colour alone where the first is one, and none stands over another: groups without gaps.

    Colours that are all names as well may be children, unless all the others have a family name.
    """
    heads = {at: fold(text) for at, text in filled.items() if fold(text.strip(" :-*")) in COLOURS}
    if len(heads) < _FEW or len(set(heads.values())) < len(heads) or next(iter(filled)) not in heads:
        return []
    over = not any(one in heads and two in heads for one, two in pairwise(filled)) and max(filled) not in heads
    others = [text for at, text in filled.items() if at not in heads]
    whole = share(" " in text.strip() for text in others) >= _MOSTLY
    return list(heads) if over and (whole or not _NAMES_TOO.issuperset(heads.values())) else []


def _of_a_kind(filled: Mapping[int, str], openers: Sequence[int], texts: Sequence[str]) -> list[int]:
    """Return the lines of one word each that groups are called after, all of one kind: ``Circles`` and ``Squares``.

    They open all blocks, one of them perhaps with a word that is missing here; or, where there are no gaps, they stand
    over the others from the first on, and are nobody's name.
    """
    words = {at: text.strip(_SIGNS) for at, text in filled.items()}
    kinds = {at: found for at, word in words.items() if " " not in word and (found := kinds_of(word))}
    if len(kinds) < _FEW:
        return []
    apart = len({fold(words[at]) for at in kinds}) == len(kinds)
    shared = frozenset.intersection(*kinds.values())
    blocks = [at for at in openers if at + 1 < len(texts) and texts[at + 1].strip()]
    inside = [at for at in kinds if at not in blocks]
    alone = [at for at in blocks if at not in kinds]
    if len(blocks) >= _FEW and not inside and shared and apart and len(alone) <= 1 and all(
            " " not in words[at] and not is_given(words[at]) for at in alone):
        return blocks
    heads = list(kinds)
    over = not any(one in kinds and two in kinds for one, two in pairwise(filled)) and max(filled) not in kinds
    named = any(is_known(words[at]) for at in heads)
    told = shared and over and not named and next(iter(filled)) in kinds and apart
    return heads if told else []


def _of_groups(filled: Mapping[int, str]) -> list[int]:
    """Return the lines that may name groups where a title says there are some: no known names over known given ones."""
    title = next((at for at in list(filled)[:_TITLES] if not _GROUPS.isdisjoint(fold(filled[at]).split())), None)
    if title is None:
        return []
    given = {at: opens_with_given(strip_numbering(text)) for at, text in filled.items() if at > title}
    heads = [one for one, two in pairwise(given) if given[two] and not given[one]]
    return heads if len(heads) >= _FEW and len(heads) + sum(given.values()) == len(given) else []


def _above(first: int, filled: Mapping[int, str]) -> list[int]:
    above = [at for at in filled if at < first]
    return above if len(above) <= _TITLES else []


def _months(filled: Mapping[int, str], openers: frozenset[int]) -> list[int]:
    """Return the lines of nothing but a month, where they come in the order of the year; else none."""
    found = {at: number for at, text in filled.items() if (number := month_of(text))}
    others = [text for at, text in filled.items() if at not in found]
    opening = [at for at in found if at in openers or at - 1 in found]
    loud = [at for at in found if is_loud(filled[at])]
    told = share(any(map(str.isdigit, text)) for text in others if fold(text.strip()) not in NOBODY) >= _MOSTLY
    quiet = share(not is_loud(text) for text in others) >= _MOSTLY
    every = (list(found), _FEW) if told else (opening, _MANY)  # over days the first may stand right below the title
    for some, least in ((loud, _FEW if quiet else _MANY), every, (opening, _FEW if told else _MANY),
                        (list(found), _MANY)):
        below = [at for at in filled if some and at > some[0] and at not in found]
        if len(some) >= least and in_order([found[at] for at in some]) and 2 * len(below) > len(others):
            return some
    return []


def month_of(text: str) -> int:
    """Return the number of the month that a line names, 0 where it says anything else."""
    words = [word.strip("._") for word in _NO_LETTERS.sub(" ", fold(text)).split()]
    numbers = [MONTH_NUMBERS.get(word, 0) for word in words]
    return numbers[0] if numbers and all(numbers) and len(numbers) <= _FEW else 0


def in_order(months: Sequence[int]) -> bool:
    """Say whether months follow each other within one year, whichever it begins with."""
    since = [(month - months[0]) % _YEAR for month in months]
    return since == sorted(set(since))


def _loud_heads(filled: Mapping[int, str], openers: Sequence[int], texts: Sequence[str]) -> list[int]:
    """Return the lines in capitals that open blocks, where every block has one and hardly another line is so."""
    loud = [at for at in openers if _is_loud(filled[at])]
    inside = [at for at in filled if at not in openers]
    if len(loud) < _FEW or share(not _is_loud(filled[at]) for at in inside) < _MOSTLY:
        return []
    blocks = [at for at in openers if at + 1 < len(texts) and texts[at + 1].strip()]
    return loud if blocks and set(blocks) <= set(loud) else []


def _is_loud(text: str) -> bool:
    """Say whether a line is in capitals up to a bracket or a dash: ``BUS 7 (Mr. Vost)``."""
    letters = [char for char in _before_aside(text) if is_letter(char)]
    return len(letters) > 1 and all(map(str.isupper, letters))  # some scripts have no capitals


def _before_aside(text: str) -> str:
    match = _BEFORE_ASIDE.search(text)
    return text[: match.start()] if match else text
