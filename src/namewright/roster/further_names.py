"""Names in a line that nobody was made of: where known given names open its parts, one child of it may be two.

What is read of a line by its signs and its neighbours may be wrong. That somebody is merged or left out by it without a
word is what this keeps from happening, whatever rule it was that failed.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Iterator, Mapping

from namewright.patterns import pattern
from namewright.roster.beside import Reading, is_word_about
from namewright.roster.commas import BRACKETS
from namewright.roster.cut_short import SHORT_NAMES
from namewright.roster.known import is_given, lean
from namewright.roster.vocabulary import AND_WORDS, DATES, fold
from namewright.store import keeps_names

_PARTS = pattern(rf"\s*[,;/|+&\t]\s*|\s[-–—]+\s|\s{{2,}}|!\s+|\s(?:{'|'.join(sorted(AND_WORDS))})\s")
_LABEL = pattern(r"\s*(?:[-*•\d.)(]+\s+)*(?:[^\W\d_][^:,;/&]{0,40}:|\d{1,2}[:.h]\d\d|with|mit|avec|con|com)\s+", re.I)
_STOP = pattern(r"(\w\s)?(?<![^\W\d_])([^\W\d_]{2,})\.\s+(?=\S)", needs=".")
_SHORTEST = 3  # letters of a name before a full stop: fewer are cut short, as is a word on no list
_FEW = 2  # names in a heading: one may be a grown-up's
_LONGEST = 300  # characters: a longer line is a text


def lines_of_others(texts: Mapping[int, str], made: Mapping[int, Reading], *, by_comma: bool) -> frozenset[int]:
    """Return the lines in which stand names that nobody of the list was made of.

    ``texts`` are the lines that were made a child or a heading, by number, ``made`` what was read of the children;
    ``by_comma`` says that the list writes ``Family, Given``. A name that opens parts of several lines is that of a
    group or a grown-up.
    """
    named = {at: found for at, text in texts.items() if (found := _openers(text))}
    if not named:
        return frozenset()
    counts = Counter(fold(name) for found in named.values() for name in found)
    known = {name for name, count in counts.items() if count > 1}.union(*map(_first_words, made.values()))
    return frozenset(at for at, found in named.items() if _left(
        found, known.union(_family(made[at], texts[at], by_comma=by_comma) if at in made else ())
    ) >= (1 if at in made else _FEW))


def _left(names: Collection[str], accounted: Collection[str]) -> int:
    """Return how many names are not accounted for, with a hyphen by either part."""
    return sum(not {*fold(name).split("-")} & {*accounted} for name in names)


def _first_words(reading: Reading) -> frozenset[str]:
    """Return what opens the names of a child, folded: further words may be of a child that was merged with it."""
    return frozenset(fold(word) for name in (reading.given, reading.goes_by)
                     for word in name.partition(" ")[0].split("-"))


def _family(reading: Reading, text: str, *, by_comma: bool) -> list[str]:
    """Return the words of a family name that may open a part; ``Mia Tarn, Leo`` may be two children."""
    words = fold(reading.family).replace("-", " ").split()
    return words if by_comma or (len(words) == 1 and "," in text) else []


@keeps_names(1024)
def _openers(text: str) -> tuple[str, ...]:
    """Return the given names that open the parts of a line, each once; what stands in brackets opens none."""
    if len(text) > _LONGEST or ("  " not in text and text.replace(" ", "").isalpha()):
        return ()
    bare = _STOP.sub(_parted, BRACKETS.sub(" ", text))
    label = _LABEL.match(bare)
    parts = _PARTS.split(bare[label.end() if label else 0 :])
    names = dict.fromkeys(_names(parts)) if len(parts) > 1 else {}
    surely = [name for name in names if lean(name) > 0]
    return tuple(names if len(surely) > 1 else surely)  # among given names one that may be a family's is one, too


def _names(parts: Collection[str]) -> Iterator[str]:
    for part in parts:
        word = part.split(maxsplit=1)[0].strip(":!?*•") if part.strip() else ""
        named = len(word) > 1 and word[0].isupper() and word[-1] != "." and is_given(word)
        if named and fold(word) not in DATES and not is_word_about(word):
            yield word


def _parted(match: re.Match[str]) -> str:
    """Part a text behind a full stop where the word before it is not cut short: ``Mia. Leo``, ``Mia Vost. Leo``."""
    before, word = match[1] or "", match[2]
    if fold(word) in SHORT_NAMES:
        return match[0]
    whole = (lean(word) > 0 and len(word) >= _SHORTEST) or ((before or is_given(word)) and len(word) > _SHORTEST)
    return f"{before}{word}; " if whole else match[0]
