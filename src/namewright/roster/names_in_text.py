"""The names that stand in a sentence, by its words with capitals, and the lines among which each may have its own.

Adults behind a title, days and months are none, nor are the small words that open a sentence.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.heading_words import OPENERS
from namewright.roster.known import is_given
from namewright.roster.vocabulary import AND, AND_WORDS, DAYS, MONTHS, OTHER_PEOPLE, TITLES, fold

BRACKETS = pattern(r"\([^()]*\)|\[[^\[\]]*\]", needs="([")
OWNED = ("'s", "’s")
EDGES = ".,:;!?…\"“”«»()[]¡¿*"
"""Signs about a word of a text."""
BETWEEN_NAMES = pattern(rf"\s*[,;，、&+/]\s*(?:(?:{AND}|&)\s+)?|\s+(?:{AND})\s+")
"""What parts names in a row: a sign, a word, or both: ``Mia, Leo & Ava``, ``Mia and Leo``, ``Mia, Leo, and Ava``."""
_AND = AND_WORDS | {"u"}
_JOINING = AND_WORDS | PARTICLES
_NOBODY = TITLES | DAYS | MONTHS | OTHER_PEOPLE


class Name(NamedTuple):
    """Words with capitals in a sentence: folded, as typed, and at which word they begin."""

    words: tuple[str, ...]
    typed: str
    at: int


class Children:
    """The lines that may be children: which of them hold a name."""

    def __init__(self, texts: Iterable[tuple[int, str]]) -> None:
        self._places: defaultdict[str, set[int]] = defaultdict(set)
        self._whole: set[tuple[str, ...]] = set()
        for at, text in texts:
            words = [bare_word(word) for word in text.split()]
            self._whole.add(tuple(words))
            for word in words:
                self._places[word].add(at)

    def hold(self, name: Sequence[str]) -> bool:
        """Say whether the words of a name stand on one of the lines together."""
        return bool(self.places(name))

    def places(self, name: Sequence[str]) -> set[int]:
        """Return the lines on which the words of a name stand together."""
        found = [self._places.get(word, set()) for word in name]
        return set.intersection(*found) if found else set()

    def are(self, name: Sequence[str]) -> bool:
        """Say whether a name is all that one of the lines has."""
        return tuple(name) in self._whole


def are_joined(one: Name, two: Name, words: Sequence[str]) -> bool:
    """Say whether nothing but “and” stands between two names."""
    return two.at == len(one.words) + 1 and bare_word(words[two.at - 1]) in _AND


def holds(children: Children, name: Name) -> bool:
    """Say whether a name has a line, whole or by its known given name."""
    return children.hold(name.words) or (is_given(name.words[0]) and children.hold(name.words[:1]))


def names_in(text: str) -> Iterator[Name]:
    """Yield the runs of words with capitals, without adults behind a title, days and months."""
    words = BRACKETS.sub(" ", text).split()
    run: list[str] = []
    skip = openers(text)
    for at, word in enumerate([*words, ""]):
        ends = run and run[-1][-1] in ",.;:!?"
        if run and (ends or not has_capital(word)):
            while run and bare_word(run[0]) in OPENERS:  # Sie
                run = run[1:]
            named = len(run) > 1 and is_given(run[0])  # August T. with her brother
            if run and (named or bare_word(run[0]) not in _NOBODY):
                yield Name(tuple(map(bare_word, run)), " ".join(run).strip(EDGES), at - len(run))
            run = []
        if has_capital(word) and at >= skip and not (at and bare_word(words[at - 1]) in TITLES and not run):
            run.append(word)


def openers(text: str) -> int:
    """Count the words that open a sentence and are no name: ``If``, ``A``, ``Bei``."""
    words = BRACKETS.sub(" ", text).split()
    return next((at for at, word in enumerate(words) if bare_word(word) not in OPENERS), len(words))


def has_capital(word: str) -> bool:
    """Say whether the letters of a word begin with a capital."""
    letters = word.strip(EDGES)
    return bool(letters) and is_letter(letters[0]) and not begins_small(letters)


def is_small(word: str) -> bool:
    """Say whether a word is in small letters, and stands in no name and between none."""
    letters = word.strip(EDGES)
    return len(letters) > 1 and letters.islower() and begins_small(letters) and letters not in _JOINING


def bare_word(word: str) -> str:
    """Return a word folded, without signs about it and without what says that something is somebody’s."""
    bare = fold(word.strip(EDGES))
    return next((bare.removesuffix(end) for end in OWNED if bare.endswith(end)), bare)
