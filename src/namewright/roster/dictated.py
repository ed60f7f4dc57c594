"""A class told aloud, in one breath: ``okay so in my class I have Mia, Leo, then Ava and that's everybody``.

Words in small letters that have or name somebody, or say who is the first, lead to the names; signs and words as “then”
and “and” stand between them, and what is said behind the last is left out. Names that are known, or whole ones, are
surely the children; else the line is asked about. Where each has a line, these words come off. Out of scope: names
behind a colon or a verb of naming, with their end told (``sentences``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.roster.heading_words import CHILDREN, GREETINGS, HEADING_WORDS, OPENERS
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.several import Several, may_be_a_name
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import AND_WORDS, OTHER_PEOPLE, fold, word_set
from namewright.store import keeps_names

_MINE = word_set("""
    have, i've, i’ve, we've, we’ve, got, tengo, tenemos, j'ai, j’ai, avons, habe, haben, ho, abbiamo, tenho, temos""")
_HAVING = _MINE | word_set("""
    has, are, is, there's, there’s, hay, estan, esta, son, a, sont, sind, gibt, heissen, sono, c'e, c’e, ha, tem,
    sao""")
_OPENING = CHILDREN | GREETINGS | OPENERS | word_set("""
    okay, ok, so, well, uh, here's, here’s, i've, i’ve, we've, we’ve, pues, bueno, mi, mis, alors, bon, mes, ich,
    wir, meine, meiner, unsere, unserer, allora, entao, minha, meus, eu""")
"""Words that may open the telling with a capital: a name before small words is a child of whom something is said."""
_END = frozenset(("schluss", "ende"))
_INSIDE = word_set("i, i've, i’ve, klasse, gruppe, kinder, schuler, jahr") | _END
"""Words that may stand in it with a capital."""
_NEXT = word_set("""
    then, next, also, plus, afterwards, luego, despues, tambien, ademas, ensuite, puis, apres, aussi, dann, danach,
    auch, sowie, noch, poi, dopo, anche, inoltre, depois, tambem, mais""") | AND_WORDS
_FIRST = word_set("""
    first, firstly, primero, primera, premier, premiere, d'abord, d’abord, commencer, zuerst, erst, erste, erster,
    erstes, prima, primo, primeiro, primeira, primeiramente, eerst, eerste""")
"""Words for who is named first."""
_ORDER = _FIRST | _NEXT | word_set("""
    after, second, third, last, lastly, finally, segundo, segunda, tercero, tercera, siguiente, ultimo, ultima,
    finalmente, deuxieme, troisieme, suivant, suivante, enfin, finalement, finir, terminer, nachstes, nachster,
    nachste, zweites, zweite, zweiter, drittes, dritte, dritter, zuletzt, schluss, schliesslich, ende, secondo,
    seconda, terzo, terza, seguente, prossimo, prossima, infine, seguir, seguida, terceiro, terceira, seguinte, proximo,
    proxima, fim, dan, daarna, slotte, laatste""")
"""Words that tell in which order names are said."""
_CAPITAL = (_FIRST | _NEXT | frozenset(("zum", "pour", "por", "para"))) - {"prima", "primo"}
"""Those that may open a line with a capital: Prima and Primo are given names."""
_FILLING = _OPENING | word_set("""
    one, is, it's, it’s, of, now, comes, l'ultimo, l’ultimo, l'ultima, l’ultima, que, viene, est, c'est, c’est, vient,
    par, als, ist, sind, kommt, kommen, zum, ganz, oke, ten, komt""")
"""Words that stand about those of order."""
_OPENING_ALOUD = _OPENING | _FIRST | {"als", "zum"}
_EDGES = ".,;:!?…"
_LAST = 3  # words before the names, one of which has somebody
_FEWEST, _MOST_WORDS, _LONGEST = 3, 4, 3_000
_KNOWN, _NEARLY_ALL = 0.5, 0.9
_SOME_LINES = 2


class _Told(NamedTuple):
    """The words before the names, the names, which other words stand among these, and what is said after."""

    before: tuple[str, ...]
    names: tuple[str, ...]
    between: tuple[tuple[str, ...], ...]
    after: tuple[str, ...]


@keeps_names(256)
def told_aloud(text: str) -> Several | None:
    """Return the children of a class that somebody told, headed by the words; None where a line is no such telling."""
    told = _told(text.split()) if len(text) <= _LONGEST and not any(map(str.isdigit, text)) else None
    if told is None or len(told.names) < _FEWEST or not all(len(name.split()) <= _MOST_WORDS for name in told.names):
        return None
    before = [fold(word.strip(_EDGES)) for word in told.before if word.strip(_EDGES) not in "Àà"]  # “il y a” has
    ours = not (CHILDREN | _INSIDE | HEADING_WORDS).isdisjoint(before)
    order = [words for words in told.between if _tell_the_order(words)]
    counted = bool(order) and _tell_the_order(before) and not _FIRST.isdisjoint(before)
    child = any(map(is_given, before[:1])) and not (ours or counted)  # Una has Leo, Ana and Ben as friends
    others = any(word.removesuffix("s") in OTHER_PEOPLE or word in OTHER_PEOPLE for word in before[-_LAST:])
    if child or others or (_HAVING.isdisjoint(before[-_LAST:]) and not counted):
        return None
    mine = ours or counted or not _MINE.isdisjoint(before[-_LAST:])
    broken = any(fold(word) not in _NEXT for words in told.between if words not in order for word in words)
    named = mine and all(map(may_be_a_name, told.names)) and not broken
    label = " ".join((*told.before, *(("…", *told.after) if told.after else ())))
    return Several(told.names, named and _are_surely_names(told.names), f"{label.rstrip(_EDGES + ' ')}:")


def from_a_telling(lines: list[Line]) -> list[Line]:
    """Take off what says in which order names are told, a line for each: ``then Mia``, ``y por último Leo``."""
    found = {at: names for at, line in enumerate(lines) if (names := _behind_order(line.text))}
    if len(found) < _SOME_LINES:
        return lines
    return [line.without(line.text[: -len(found[at])], found[at]) if at in found else line
            for at, line in enumerate(lines)]


def _behind_order(text: str) -> str:
    """Return what stands behind words of order, from the first capital on; nothing where there are no such words."""
    words = text.split() if len(text) <= _LONGEST and ":" not in text and not any(map(str.isdigit, text)) else []
    start = next((at for at, word in enumerate(words) if not _leads(word, first=not at)), len(words))
    first = not _FIRST.isdisjoint(fold(word.strip(_EDGES)) for word in words[max(0, start - _LAST) : start])
    if not 0 < start < len(words) or not (first or _tell_the_order(words[:start])):
        return ""
    names = text.split(maxsplit=start)[start]
    opening = fold(words[0].strip(_EDGES))
    small = begins_small(words[0]) or (start > 1 and opening in _OPENING)
    told = opening in _CAPITAL and not is_given(words[0].strip(_EDGES)) and opens_with_given(names)  # Then Recess
    return names if small or told else ""


def _tell_the_order(words: Sequence[str]) -> bool:
    """Say whether words tell who is first or next, and nothing else."""
    bare = [fold(word.strip(_EDGES)) for word in words if any(map(is_letter, word))]
    return not (_ORDER - AND_WORDS).isdisjoint(bare) and all(word in _ORDER or word in _FILLING for word in bare)


def _are_surely_names(names: Sequence[str]) -> bool:
    """Say whether many are known, or all are whole: of one whole name a word alone may be the second family name."""
    whole = share(" " in name for name in names)
    return (whole >= _NEARLY_ALL or whole <= 1 - _NEARLY_ALL) and (
        given_share(names) >= _KNOWN or whole >= _NEARLY_ALL)


def _told(words: Sequence[str]) -> _Told | None:
    start = next((at for at, word in enumerate(words) if not _leads(word, first=not at)), len(words))
    end = next((at + 1 for at in range(len(words) - 1, -1, -1) if not _is_small(words[at])), 0)
    if not 0 < start < end:
        return None
    names: list[str] = []
    run: list[str] = []
    between: list[tuple[str, ...]] = [()]
    for at, word in enumerate(words[start:end], start):
        bare = word.strip(",;:!?…")
        small = _is_small(word) or (between[-1] and fold(bare) in _END)
        parts = small and (fold(bare) in _NEXT or not (bare in PARTICLES and run))
        if parts and any(map(is_letter, bare)):
            between[-1] += (bare,)
        elif any(map(is_letter, bare)):
            run.append(bare)
            between += [()] if between[-1] else []
        if run and (parts or word[-1] in ",;:!?…" or at == end - 1):
            names.append(" ".join(run).rstrip(" ."))
            run = []
    return _Told(tuple(words[:start]), tuple(names), tuple(between[:-1]), tuple(words[end:]))


def _leads(word: str, *, first: bool) -> bool:
    """Say whether a word leads to the names; ``Mia``, though small an Italian “my”, never does."""
    return _is_small(word) or fold(word.strip(_EDGES)) in (_OPENING_ALOUD if first else _INSIDE)


def _is_small(word: str) -> bool:
    """Say whether a word begins small, be a sign before it; one of signs alone is in no name."""
    bare = word.lstrip("¡¿'\"“„(")
    return not bare or not any(map(is_letter, bare)) or begins_small(bare)
