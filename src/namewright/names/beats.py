"""The beats of a name: what a class claps, Pe-ne-lo-pe in four.

The number of beats comes from the teacher's correction, else (for English) from the CMU Pronouncing
Dictionary, else from the spelling, and the answer says which. The first two count as known, and the third where
somebody said the language (any but English). The
dictionary says how many beats a word has, not where its letters part, so the places are always a reading of
the spelling. It gives quick everyday American speech: Julia has two beats there. In names in -lia, -nia and -cia the
fuller reading is taken (Ju-li-a). Where a family says it otherwise, the teacher's correction wins.

Measured on names kept apart from the making of the rules: tests/outside/test_names_beats.py. Tables of their own
have English, French, German, Hawaiian, Italian, Polish, Portuguese and Spanish; Vietnamese claps once a word; for any
other language the answer is a rough guess. Out of scope: scripts other than Latin (one beat a word).
"""

from __future__ import annotations

import re
from functools import cache
from itertools import pairwise
from pathlib import Path

import unicodedata2

from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.names.beat_places import APOSTROPHES, places
from namewright.names.beat_rules import TABLES, plain, weights
from namewright.names.casing import CASED, DOTTED
from namewright.names.clusters import clusters, is_letter
from namewright.patterns import pattern

_FULLER = pattern(r"[aeiouy].*[lnc]iah?s?$")
# Names of national lists of births that the dictionary lacks and that are often misread, read by hand.
BY_HAND = {"calliope": 4, "esme": 2, "josue": 3, "kobe": 2, "kwame": 2, "liam": 2, "messiah": 3, "niamh": 1,
           "persephone": 4}
TABLES_BY_TAG = tuple(sorted(TABLES))
SPOKEN = tuple(sorted({*TABLES, "vi"}))
"""The languages, by their tags, whose names are clapped by rules of their own."""
NAMES_IN = tuple(sorted({*SPOKEN, *CASED}))
"""The languages that names may be said to be in: those with beats or with letter case of their own."""
_JOINTS = frozenset("-‐‑·•‧ ")


class Beats(NamedTuple):
    """A name cut into letters (grapheme clusters), and at which of them each beat begins, the first at 0.

    Hyphens and spaces are among the letters and belong to the beat before them. ``known`` is True where a pronouncing
    dictionary, the teacher, or the rules of a language that somebody said gave the number of beats, False for a guess;
    ``source`` says in words where it came from.
    """

    letters: tuple[str, ...]
    starts: tuple[int, ...]
    known: bool
    source: str

    @property
    def parts(self) -> tuple[str, ...]:
        """Return the text of each beat; joined they are the name."""
        return tuple("".join(self.letters[a:b]) for a, b in pairwise((*self.starts, len(self.letters))))


def beats(name: str, language: str = "en", corrected: str | None = None) -> Beats:
    """Return the beats of ``name`` in a language given by its tag, such as ``en``, ``es-MX`` or ``haw``.

    ``corrected`` is the teacher's own reading, typed ``Pe-ne-lo-pe`` or ``Pe·ne·lo·pe``. Capital and small
    letters need not agree; the name's own are kept. Raises Problem for an empty name and
    for a correction that does not join back to the name.
    """
    name = str(unicodedata2.normalize("NFC", name))
    if not name.strip():
        raise Problem("beats.no_name")
    if corrected is not None and corrected.strip():
        letters = clusters(name)
        return Beats(letters, _as_corrected(letters, corrected), True, "the teacher's correction")
    return beats_of(clusters(name), language)


class Spoken(NamedTuple):
    """How a name is spoken: its language by a tag, None where nobody said, and the teacher's own beats as typed.

    ``around`` is the language of the pages, which a name is likeliest to have where nobody said another.
    """

    language: str | None = None
    around: str = "en"
    own: str = ""


UNSAID = Spoken()  # English pages, and nothing said of the name


def spoken_beats(letters: tuple[str, ...], spoken: Spoken) -> Beats:
    """Return the beats of a name, cut into at least one letter, as it is spoken; beats of another name are passed over.

    Where nobody said the language, a name that the English dictionary holds keeps its number of beats in English if
    the language of the pages has another (Liam on Spanish pages), and is no longer called known. In a language that
    somebody said, what the rules of its spelling give is called known; not in English, whose spelling tells too little.
    """
    if spoken.own.strip():
        try:
            return Beats(letters, _as_corrected(letters, spoken.own), True, "the teacher's correction")
        except Problem:
            pass
    if spoken.language is not None and _tag(spoken.language) in SPOKEN and _tag(spoken.language) != "en":
        by_rule = beats_of(letters, spoken.language)
        return Beats(letters, by_rule.starts, True, f"the rules of spelling ({spoken.language})")
    found = beats_of(letters, spoken.language or spoken.around)
    if spoken.language is None and _tag(spoken.around) != "en":
        english = beats_of(letters, "en")
        if english.known and len(english.starts) != len(found.starts):
            return Beats(letters, english.starts, False, "English, or the language of the pages")
    return found


def _tag(language: str) -> str:
    return re.split("[-_]", language.casefold())[0]


def readings(letters: tuple[str, ...], spoken: Spoken) -> tuple[tuple[str, ...], ...]:
    """Return the ways in which a name may be parted into beats, one for each number of them that a language here has.

    The likeliest comes first, then that of the language of the pages, then the others by their tags. Vietnamese, where
    every word is one beat, is left out unless it is spoken. The letters are at least one; hyphens and spaces belong to
    the beat before them.
    """
    others = (beats_of(letters, tag) for tag in (spoken.around, "en", *TABLES_BY_TAG))
    found: dict[int, tuple[str, ...]] = {}
    for each in (spoken_beats(letters, spoken), *others):
        found.setdefault(len(each.parts), each.parts)
    return tuple(found.values())


def typed(parts: tuple[str, ...]) -> str:
    """Return beats as a teacher would type them, Pe-ne-lo-pe: what ``corrected`` reads."""
    return "-".join(part.rstrip(" -‐‑") for part in parts)


def beats_of(letters: tuple[str, ...], language: str = "en") -> Beats:
    """Return the beats of a name that has been cut into its letters, at least one."""
    starts, known = [], True
    for begin, end in _words(letters):
        in_word, listed = _word(letters[begin:end], language)
        starts += [begin + at for at in in_word]
        known = known and listed
    source = "the CMU Pronouncing Dictionary, or read by hand" if known else f"a guess from the spelling ({language})"
    return Beats(letters, tuple(starts), known, source)


def _words(letters: tuple[str, ...]) -> list[tuple[int, int]]:
    """Cut behind each run of hyphens and spaces; a piece without a letter stays with its neighbour."""
    cuts = [at for at in range(1, len(letters)) if _parts(letters[at - 1]) and not _parts(letters[at])]
    found: list[tuple[int, int]] = []
    for begin, end in pairwise((0, *cuts, len(letters))):
        if found and not (any(map(is_letter, letters[slice(*found[-1])])) and any(map(is_letter, letters[begin:end]))):
            found[-1] = (found[-1][0], end)
        else:
            found.append((begin, end))
    return found


def _parts(letter: str) -> bool:
    """Say whether a sign parts two words."""
    return letter in "-‐‑" or letter.isspace()


def _word(letters: tuple[str, ...], language: str) -> tuple[list[int], bool]:
    """Return at which letters the beats of one word begin, and whether a dictionary gave their number."""
    if _spelled_aloud("".join(letters)):
        return [0, *(at for at, letter in enumerate(letters) if at and letter[0].isalnum())], False
    spoken = tuple(at for at, letter in enumerate(letters) if is_letter(letter) or letter in APOSTROPHES)
    if language.casefold().startswith("vi") or not spoken:
        return [0], False
    inner = tuple(letters[at] for at in spoken)
    nuclei, known = _nuclei(inner, language)
    return [0, *(spoken[at] for at in places(inner, nuclei, language))], known


def _spelled_aloud(word: str) -> bool:
    """Say whether a word is initials, a beat a letter: A.J., or two capitals that make no word, such as TJ."""
    bare = word.strip(" -‐‑.")
    if DOTTED.match(word):
        return True
    makes_word = bare == "NG" or (bare[-1:] != "J" and any(letter in "AEIOUY" for letter in bare))
    return len(bare) == 2 and bare.isascii() and bare.isalpha() and bare.isupper() and not makes_word


def _nuclei(letters: tuple[str, ...], language: str) -> tuple[tuple[int, ...], bool]:
    """Return the indices of the letters that are nuclei of beats, as many as the dictionary says if it does.

    The dictionary has no marks: it is sure of a marked word only where the spelling says the same, and it is wrong
    about one that ends in a marked e, which is always heard (Maté is not mate).
    """
    sure = weights(letters, language)
    possible = [(weight, -at) for at, weight in enumerate(sure) if weight is not None]
    spelt = sum(weight > 0 for weight, _ in possible)
    number = _listed(letters) if language.casefold().startswith("en") else None
    usable = number is not None and number <= max(1, len(possible))
    if number is None or not usable or (number < spelt and letters[-1].casefold() != "e" == plain(letters[-1])):
        number, usable = spelt, False
    if number == spelt - 1 and _FULLER.search("".join(map(plain, letters))) and language.casefold().startswith("en"):
        number = spelt  # Ju-li-a: the dictionary has the quick Jul-ya, a class claps what it can see
    known = usable and (number == spelt or not any(map(_has_mark, letters)))
    likeliest = sorted(possible, reverse=True)[: max(1, number)]
    return tuple(sorted(-at for _, at in likeliest)), known


def _has_mark(letter: str) -> bool:
    return is_letter(letter) and plain(letter) != letter.casefold()


def _listed(letters: tuple[str, ...]) -> int | None:
    word = "".join(plain(letter) for letter in letters if is_letter(letter))
    return _dictionary(word[:1]).get(word, BY_HAND.get(word))


@cache
def _dictionary(initial: str) -> dict[str, int]:
    """Return the numbers of beats of the words with an initial: a class has few of the 49,513."""
    numbers: dict[str, int] = {}
    for line in _lines().get(initial, ()):
        numbers.update(dict.fromkeys(line[2:].split(" "), int(line[0])))
    return numbers


@cache
def _lines() -> dict[str, list[str]]:
    """Read the dictionary once, when the first English name is asked for: its lines by the initial of their words."""
    found: dict[str, list[str]] = {}
    for line in Path(__file__).with_name("data").joinpath("cmudict-beats.tsv").read_text("utf-8").splitlines():
        if not line.startswith("#"):
            found.setdefault(line[2:3], []).append(line)
    return found


def _as_corrected(letters: tuple[str, ...], corrected: str) -> tuple[int, ...]:
    """Cut the name where the correction is cut, and behind each hyphen or space of its own."""
    typed = clusters(str(unicodedata2.normalize("NFC", corrected)))
    if _solid(typed) != _solid(letters):
        raise Problem("beats.do_not_join", typed=corrected.strip(), name="".join(letters))
    cuts = _cuts(typed) | _cuts(letters)
    solid = [at for at, letter in enumerate(letters) if letter not in _JOINTS]
    return (0, *(at for passed, at in enumerate(solid) if passed in cuts))


def _solid(typed: tuple[str, ...]) -> list[str]:
    return [mark.casefold() for mark in typed if mark not in _JOINTS]


def _cuts(typed: tuple[str, ...]) -> frozenset[int]:
    """Return how many letters stand before each hyphen, dot or space that follows one."""
    return frozenset(len(_solid(typed[:at])) for at, mark in enumerate(typed) if mark in _JOINTS) - {0}
