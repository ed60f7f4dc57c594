"""What is in capitals in a list that writes no name so: ``Mira Vost MOVED``, ``LEAVES EARLY ON MONDAYS``: remarks."""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.day_words import DAY_WORDS, WITH
from namewright.roster.heading_words import OPENERS
from namewright.roster.known import is_known, lean
from namewright.roster.names_in_text import EDGES
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import ANY_DAYS, HANDS, MONTHS, REMARKS, SUFFIXES, fold
from namewright.store import keeps_names

_FEWEST_LINES = 4
_HARDLY = 0.3  # of the lines
_WHOLE = 2  # words of a name: what stands behind one word may be the family, as in ``Mira VOST``
_SHORTEST = 3  # letters: fewer are initials
_TELLING = (OPENERS | ANY_DAYS | MONTHS | DAY_WORDS | WITH) - PARTICLES - frozenset(("an", "in", "si", "so"))
"""Words of what is said; without those that open or are family names."""
_LONGEST = 200  # characters of a line that is looked at: a longer one is a text


def without_shouted(lines: Sequence[Line]) -> list[Line]:
    """Take off what a few lines say in capitals behind a whole name; each tells what was taken from it."""
    found = [_shouted(line.text) for line in lines]
    filled = [line.text for line in lines if line.text.strip()]
    loud = sum(_is_loud(word) for text in filled for word in text.split()[-1:])
    if len(filled) < _FEWEST_LINES or loud > _HARDLY * len(filled):
        return list(lines)
    return [line.without(parts[1], parts[0]) if parts else line for line, parts in zip(lines, found, strict=True)]


@keeps_names(1024)
def _shouted(text: str) -> tuple[str, str] | None:
    """Return the name and the words in capitals behind it, None where a line is something else."""
    words = text.split() if len(text) < _LONGEST else []
    at = len(words)
    while at and _is_loud(words[at - 1]):
        at -= 1
    name, tail = words[:at], words[at:]
    if not tail or len(name) < _WHOLE or not all(map(_is_of_a_name, name)):
        return None
    if any(map(_is_of_the_family, tail)):
        return None
    return " ".join(name), " ".join(tail)


def is_loud_line(text: str) -> bool:
    """Say whether a line that is no row of columns has capitals alone; some scripts have none."""
    return text.isupper() and len(text) <= _LONGEST and "\t" not in text and all(
        char.isupper() for char in text if is_letter(char))


@keeps_names(1024)
def is_shouted(text: str) -> bool:
    """Say whether a line in capitals tells something: a word of it is in no name, two where a given name opens it."""
    words = [word.strip(EDGES) for word in strip_numbering(text).split()]
    if len(words) < _WHOLE or not is_loud_line(text):
        return False
    telling = sum(fold(word).removesuffix("s") in _TELLING or fold(word) in _TELLING or is_word_about(word)
                  for word in words[lean(words[0]) > 0 :])
    return telling > (lean(words[0]) > 0)


def _is_loud(word: str) -> bool:
    return len(word) >= _SHORTEST and word.isalpha() and word.isupper()


def _is_of_a_name(word: str) -> bool:
    return fold(word) in PARTICLES or (word[0].isupper() and not _is_loud(word) and word[-1].isalpha())


def _is_of_the_family(word: str) -> bool:
    """Say whether a word is a family, a suffix or a hand; New is a family, too, and is a remark in capitals."""
    folded = fold(word)
    return (is_known(word) and folded not in REMARKS) or folded in HANDS or folded in SUFFIXES
