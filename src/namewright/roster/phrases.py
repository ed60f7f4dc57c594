"""Who is named within a phrase that a program or a family wrote: ``Mia Vost fehlt heute``, ``Absence: Leo``.

What lines have in common is no name, and neither is a word in small letters or one that such phrases have. What is left
stands together as runs. A phrase without its runs is its frame.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from itertools import pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.about_words import ABOUT, ABOUT_ENDINGS
from namewright.roster.care_words import CARE
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.heading_words import HEADING_WORDS
from namewright.roster.known import is_given, is_known
from namewright.roster.vocabulary import AND_WORDS, ATTENDANCE, DATES, fold

_WORD = pattern(r"\S+")
_EDGES = ".,;:!?()[]{}<>\"“”„«»‹›*"
_CLOSING = ",;:!?)]\"”»"
_OF = pattern(r"(?:[dl]|qu|dell|all|nell|sull)['’](?=[^\W\d_a-zß-ÿ])", needs="'’")
_OWNED = pattern(r"['’]s$", needs="'’")
_NO_NAMES = ABOUT | CARE | DAY_WORDS | ATTENDANCE | HEADING_WORDS
_FEWEST, _OFTEN, _VERY_OFTEN = 3, 0.15, 0.3


class Run(NamedTuple):
    """A name within a phrase, as it is written, and where it begins and ends."""

    name: str
    start: int
    end: int


class Phrase(NamedTuple):
    """A phrase, who is named in it, and what is left of it, folded, with {} for each name."""

    text: str
    runs: tuple[Run, ...]
    frame: str

    @property
    def rest(self) -> str:
        """Return the words of the frame alone."""
        return self.frame.replace("{}", " ")

    @property
    def left(self) -> str:
        """Return the phrase as it is written, without the names."""
        text = self.text
        for run in reversed(self.runs):
            text = f"{text[: run.start]} {text[run.end :]}"
        return text

    @property
    def before(self) -> tuple[str, ...]:
        """Return the last two words before the first name, as they are written."""
        return tuple(self.text[: self.runs[0].start].split()[-2:]) if self.runs else ()


def phrase(text: str, common: Collection[str] = ()) -> Phrase:
    """Return a phrase with who is named in it; ``common`` are words, folded, that are no name here."""
    words = list(_WORD.finditer(text))
    said = [match[0] for match in words]
    named = [_is_name(said[at], said[at + 1] if at + 1 < len(said) else "", common) for at in range(len(said))]
    runs: list[Run] = []
    at = 0
    while at < len(words):
        if not named[at]:
            at += 1
            continue
        start = at
        while not _closes(said[at]) and (step := _next(said, named, at)):
            at = step
        runs.append(_run(text, words[start].start(), words[at].end()))
        at += 1
    return of_runs(text, runs)


def of_runs(text: str, runs: Sequence[Run]) -> Phrase:
    """Return a phrase in which these runs are the names."""
    return Phrase(text, tuple(runs), _frame(text, runs))


def common_words(texts: Sequence[str], names: Collection[str]) -> frozenset[str]:
    """Return the words, folded, that so many texts have that they are no name; none of ``names``."""
    counts = Counter(word for text in texts for word in {fold(_core(each)) for each in text.split()})
    least = max(_FEWEST, _OFTEN * len(texts))
    behind = Counter(pair for text in texts for pair in set(pairwise(text.split())) if begins_small(pair[0]))
    return frozenset(word for word, count in counts.items() if count >= least and word not in names and word and (
        not is_given(word) or count >= max(_FEWEST, _VERY_OFTEN * len(texts)))) | {
        word for (_, last), count in behind.items() if count > 1 and (word := fold(_core(last))) not in names
        and word and not is_given(word)}  # zu Hause


def are_joined(found: Phrase) -> bool:
    """Say whether all that stands between the names of a phrase is a comma or a word for and."""
    between = [found.text[one.end : two.start].strip() for one, two in zip(found.runs, found.runs[1:], strict=False)]
    return all(sign in {",", "&", "+", "/"} or fold(sign.strip(", ")) in AND_WORDS for sign in between)


def has_further_capitals(found: Phrase) -> bool:
    """Say whether another word than those of its names begins with a capital: it may be somebody unknown."""
    return any(is_letter(core[0]) and not begins_small(core) for word in found.left.split() if (core := _core(word)))


def _core(word: str) -> str:
    return word.strip(_EDGES)


def _is_name(word: str, following: str, common: Collection[str]) -> bool:
    """Say whether a word may be of a name; one before a colon is a label, unless it is a known name."""
    core = _core(word)
    bare = _OWNED.sub("", _OF.sub("", core))
    if not bare or not is_letter(bare[0]) or begins_small(bare) or any(map(str.isdigit, bare)):
        return False
    folded = fold(bare)
    if any(map(str.isdigit, following)) and folded in DATES:
        return False
    if folded in common or (fold(core) in common):
        return False
    if (word.rstrip().endswith(":") or following == ":") and not is_given(bare):
        return False
    return is_given(bare) or not (folded in _NO_NAMES or (folded.endswith(ABOUT_ENDINGS) and not is_known(bare)))


def _closes(word: str) -> bool:
    """Say whether a name ends with a word: a sign stands behind it, or a full stop that is not an initial's."""
    return word[-1] in _CLOSING or (word[-1] == "." and len(_core(word)) > 1) or _OWNED.search(_core(word)) is not None


def _next(said: Sequence[str], named: Sequence[bool], at: int) -> int:
    """Return where a name goes on, with small words of families in between; 0 where it does not."""
    to = at + 1
    while to < len(said) and not named[to] and fold(said[to]) in PARTICLES:
        to += 1
    return to if to < len(said) and named[to] and said[to][0] not in "([\"“„«" and not _OF.match(said[to]) else 0


def _run(text: str, start: int, end: int) -> Run:
    while start < end and text[start] in _EDGES:
        start += 1
    while end > start and text[end - 1] in _EDGES and not (text[end - 1] == "." and text[end - 3 : end - 2] in " "):
        end -= 1
    opened = _OF.match(text[start:end])
    start += opened.end() if opened else 0
    owned = _OWNED.search(text[start:end])
    end -= len(owned[0]) if owned else 0
    return Run(text[start:end], start, end)


def _frame(text: str, runs: Sequence[Run]) -> str:
    parts, at = list[str](), 0
    for run in runs:
        parts += [text[at : run.start], "{}"]
        at = run.end
    return fold(" ".join([*parts, text[at:]]))
