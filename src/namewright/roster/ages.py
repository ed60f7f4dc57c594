"""Ages in years and months (``4;7``) and the sounds of speech (``/k/``) behind names: what follows them is no name.

``Mia Vost (4;7) – /k/ for /t/, lisp`` has an age on nearly every line, so the name ends before it, and its semicolon
parts no columns; ``Mia Vost: /sh/ at word start`` has sounds, and the name ends at the sign that most lines have. Out
of scope: cells, where a semicolon stands beside another one.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from operator import itemgetter

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line

_AGE = pattern(r"(?<![\w;./])([0-9]{1,2};(?:1[01]|[0-9]))(?![\w;])", needs=";")
_SOUND = pattern(r"(?<![^\s(,;])/[^\W\d_]{1,4}[ː:]?/(?![^\s),;.])", needs="/")
_SIGN = pattern(r"\s*:\s+|\s+[–—-]\s+|\s*,\s+| {2,}|\t+|\s+(?=\()")
_FEWEST, _LONGEST, _MOST_WORDS = 3, 300, 5
_MOSTLY, _SOME = 0.6, 0.3


def from_ages(lines: list[Line]) -> list[Line]:
    """Return the lines without ages and sounds and what follows them, where most lines have some."""
    filled = {at: line.text for at, line in enumerate(lines) if any(map(is_letter, line.text))}
    found = _by_age(filled) or _by_sound(filled)
    if not found:
        return lines
    first = next(iter(filled))
    titled = first not in found and _is_a_title(filled[first])
    return [line.without(line.text.replace(found[at], "", 1), found[at]) if at in found else
            line.heading(line.text) if titled and at == first else line for at, line in enumerate(lines)]


def _is_a_title(text: str) -> bool:
    """Say whether a first line has words in small letters, and opens with no given name: ``Speech goals``."""
    small = any(begins_small(word) and word not in PARTICLES for word in text.split()[1:])
    return small and not opens_with_given(text)


def _by_age(filled: Mapping[int, str]) -> dict[int, str]:
    """Return the names before the ages, or behind those that stand first, by their lines (0-based)."""
    ages = {at: match for at, text in filled.items() if len(text) <= _LONGEST and (match := _AGE.search(text))}
    if len(ages) < max(_FEWEST, _MOSTLY * len(filled)) or any(_is_cut(text) for text in filled.values()):
        return {}
    before = {at: filled[at][: match.start()].rstrip(" \t,:(–—-[") for at, match in ages.items()}
    if not any(before.values()):
        before = {at: _SIGN.split(filled[at][match.end() :].strip(" \t,:)–—-]"), maxsplit=1)[0]
                  for at, match in ages.items()}
    return before if _are_names(list(before.values())) else {}


def _is_cut(text: str) -> bool:
    """Say whether a semicolon stands on a line that is none of an age."""
    return ";" in _AGE.sub(" ", text, count=1)


def _by_sound(filled: Mapping[int, str]) -> dict[int, str]:
    """Return the names before the first sign of lines of which some have sounds behind it."""
    sounds = [at for at, text in filled.items() if len(text) <= _LONGEST and _SOUND.search(text)]
    if len(sounds) < max(_FEWEST, _SOME * len(filled)):
        return {}
    parted = {at: _SIGN.split(text, maxsplit=1) for at, text in filled.items()}
    signs = {at: filled[at][len(parts[0]) : len(filled[at]) - len(parts[1])].strip()
             for at, parts in parted.items() if len(parts) > 1 and parts[0].strip()}
    sign = max(Counter(signs.values()).items(), key=itemgetter(1), default=("", 0))[0]
    found = {at: parted[at][0].strip() for at, of in signs.items() if of == sign}
    if len(found) < _MOSTLY * len(filled) or sign == "," or not all(at in found for at in sounds):
        return {}
    return found if _are_names(list(found.values())) else {}


def _are_names(texts: Sequence[str]) -> bool:
    bare = [strip_numbering(text).replace(",", " ") for text in texts]
    return all(text and is_titled(text) and len(text.split()) <= _MOST_WORDS and not any(map(str.isdigit, text))
               for text in bare)
