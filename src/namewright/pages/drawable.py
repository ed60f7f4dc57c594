"""Text for an adult with what our letters lack told in brackets, so that nobody is left out."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from operator import itemgetter

import unicodedata2

from namewright.names.clusters import clusters, is_letter
from namewright.names.latin_spelling import latin_spelling
from namewright.pages.typesetter import Typesetter
from namewright.wording import TIED_SPACE

_MAX_CODE_POINTS = 3  # of a run: enough to tell the script, and short enough to stand in a caption
_BETWEEN = frozenset(" -'’")  # what stands between two words of one name


def drawable(setter: Typesetter, text: str) -> str:
    """Return a text with what our letters lack told in brackets.

    Cyrillic is told in Latin letters, as passports spell it; of other letters the first few code points of a run.
    """
    if not setter.alphabet.missing(text.replace(TIED_SPACE, " ")):
        return text
    letters = clusters(unicodedata2.normalize("NFC", text))
    lacking = [one != TIED_SPACE and bool(setter.alphabet.missing(one)) for one in letters]
    told = [here or (letters[at] in _BETWEEN and all(lacking[max(at - 1, 0):at] + lacking[at + 1:at + 2]))
            for at, here in enumerate(lacking)]
    runs = groupby(zip(letters, told, strict=True), itemgetter(1))
    return "".join((_told if lacks else str)("".join(letter for letter, _ in run)) for lacks, run in runs)


def as_far_as(setter: Typesetter, text: str) -> str:
    """Return as much of a name as our letters can show, for whoever looks for it; empty where that is no letter.

    Cyrillic in Latin letters, as passports spell it; a letter without the marks that it cannot carry here.
    """
    runs = groupby(clusters(unicodedata2.normalize("NFC", text)), lambda one: bool(setter.alphabet.missing(one)))
    shown = "".join(_nearest(setter, "".join(run)) if lacks else "".join(run) for lacks, run in runs)
    words = " ".join(word for word in shown.split() if word.strip("-'’."))
    return words if any(map(is_letter, words)) else ""


def sentence(setter: Typesetter, text: str) -> str:
    """Return a text that names single letters: those that ours lack by their nearest, or else told in brackets."""
    if not setter.alphabet.missing(text.replace(TIED_SPACE, " ")):
        return text
    return "".join(one if one == TIED_SPACE else _shown(setter, one) or drawable(setter, one) for one in clusters(text))


def letters_shown(setter: Typesetter, letters: Sequence[str]) -> tuple[str, ...]:
    """Return the letters of a name one by one as a grown reader may know them: the nearest, or its place."""
    return tuple(_shown(setter, one) or str(at) for at, one in enumerate(letters, start=1))


def _shown(setter: Typesetter, letter: str) -> str:
    if not setter.alphabet.missing(letter):
        return letter
    nearest = as_far_as(setter, letter)
    return nearest.lower() if letter.islower() else nearest


def _nearest(setter: Typesetter, run: str) -> str:
    bare = "".join(letter for letter in unicodedata2.normalize("NFD", run) if not unicodedata2.combining(letter))
    return latin_spelling(run) or ("" if setter.alphabet.missing(bare) else bare)


def _told(run: str) -> str:
    latin = latin_spelling(run) if len(run) > 1 else ""  # a single letter is told as itself, not as a name
    return f"({latin or _code_points(run)})"


def _code_points(run: str) -> str:
    shown = [f"U+{ord(char):04X}" for char in run if char not in _BETWEEN]
    return f"{' '.join(shown[:_MAX_CODE_POINTS])}{' ...' if len(shown) > _MAX_CODE_POINTS else ''}"
