"""How hard a letter and a name are for a child of 3 to 6: three bands on the published evidence, and rules of ours.

**Unit.** The logit-like units of Phillips et al. (2012), Table 4, column ``b_not_first``; more negative is easier.

**Three bands, not 26 ranks.** The authors hold the order to be clear only at the ends, and twenty of the 26
figures lie between −0.65 and −0.30. Those twenty are the middle band, edges included; the step down to the
next easier letter (0.11) and up to the next harder one (0.16) are wider than any step inside (at most 0.09).
So O B A C are easier, U V are harder. **Every letter counts as the mean of its band**: what the source calls
unclear decides nothing here. The figures are of NAMING capitals; Puranik et al. (2014, abstract) found that what
makes letters easy to name says little about which ones a child can write, so a band is a place to begin.

**Where there is no figure of its own,** a letter borrows a band, and its note says so:

- A small letter takes its capital's: knowing the capital makes the small one more than 16 times as likely to be
  known (Turnbull et al. 2010). Both lists of small letters that first graders find hard to WRITE (at second hand)
  share q z u j k: these move to the harder band. Both share c i o v as easy; v, harder to name and easy to write,
  goes to the middle, for the two do not agree.
- An accented letter takes what its base letter takes; the mark itself has no figure.
- A digit, and a letter outside A–Z even without its marks (ł, ø, ß, the ʻokina …), goes to the middle band.

**The child's own initial** is easier by one amount for all, the mean over the 22 letters that have one (0.77: five of
the 22 are not told from nothing by the source's own p, so letter by letter they say too little). It is never moved
to a harder band, for preschoolers print it better, too (Treiman & Broderick 1998). Only the sign as written gains:
in Anna the A does, the a does not.

**A name** is the mean of its different signs (a repeated one counts once) plus a workload, and what is told of it is
the band of that sum. The workload is a RULE OF OURS, not a finding: no study was found of how much a longer name
delays writing it. Its weight is chosen so that a name long by Puranik & Lonigan's count (seven letters) carries as
much as the whole width of the middle band, the width inside which letters cannot be told apart. Each mark, and each
space, hyphen or apostrophe, is not quite half a letter of work more; each pair of mirror twins that meet in the name
(b and d, found on our own strokes) is one letter more. That such twins make letters harder is published (Bowles et
al. 2014), how much they weigh here is ours. Reading a name against the letters' cut-offs is a rule of ours as well.

Out of scope: the order of a class (``ordering``), groups, plans over time.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum
from functools import cache, lru_cache, reduce

import unicodedata2

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.practice.evidence import Evidence, load_evidence
from namewright.practice.likeness import twins

__all__ = ["Band", "Evidence", "LetterDifficulty", "NameDifficulty", "agreed_writing", "band_of",
           "base_letter", "letter_difficulty", "load_evidence", "name_difficulty", "own_initial_gain",
           "twins_in", "written_signs"]

MIDDLE_FROM, MIDDLE_TO = -0.65, -0.30
LONG_NAME_LETTERS = 7
MAX_LETTERS = 40  # more different letters are no name, and are neither compared nor put apart
WORKLOAD_PER_LETTER = round((MIDDLE_TO - MIDDLE_FROM) / LONG_NAME_LETTERS, 2)
WORKLOAD_PER_SIGN = 0.02  # a mark, a space, a hyphen, an apostrophe: half a letter, cut to the source's precision
WORKLOAD_PER_TWINS = WORKLOAD_PER_LETTER
DIGITS = 2  # the source's own precision; what is printed is what is compared


class Band(StrEnum):
    """How hard, in three steps."""

    EASIER = "easier"
    MIDDLE = "middle"
    HARDER = "harder"


class LetterDifficulty(NamedTuple):
    """One written sign (a grapheme cluster), its band, why, and the band's figure in the source's units.

    ``figure`` is the mean of the letters that the source puts into the band, less the gain of the own initial.
    """

    letter: str
    figure: float
    band: Band
    note: str


class NameDifficulty(NamedTuple):
    """A name's different signs in the order of the name, and the two parts of its difficulty.

    ``length`` counts the letters and digits to write, repeats included, and no spaces, hyphens or
    apostrophes. ``letter_part`` and ``workload`` are in the letters' units, to two decimals. ``small_signs``
    counts marks, spaces, hyphens and apostrophes; ``twins`` are the pairs of mirror twins that meet in the name.
    """

    letters: tuple[LetterDifficulty, ...]
    length: int
    letter_part: float
    workload: float
    small_signs: int = 0
    twins: tuple[tuple[str, str], ...] = ()

    @property
    def difficulty(self) -> float:
        """The one number: letter part plus workload; lower is easier."""
        return round(self.letter_part + self.workload, DIGITS)

    @property
    def band(self) -> Band:
        """The band of the one number, by the letters' cut-offs."""
        return band_of(self.difficulty)


def band_of(figure: float) -> Band:
    """Return the band of a figure in the source's units; both edges belong to the middle."""
    if figure < MIDDLE_FROM:
        return Band.EASIER
    return Band.HARDER if figure > MIDDLE_TO else Band.MIDDLE


def written_signs(name: str) -> tuple[str, ...]:
    """Return what a child has to write: the letters and digits of a name, in order, repeats included."""
    if name.isascii():
        return tuple(filter(str.isalnum, name))
    return tuple(sign for sign in clusters(name) if unicodedata2.category(sign[0])[0] in "LN")


def base_letter(sign: str) -> str:
    """Return the first character of a sign once its marks are taken off: ``é`` gives ``e``."""
    return sign[0] if sign.isascii() else str(unicodedata2.normalize("NFD", sign)[0])


@cache
def agreed_writing() -> tuple[frozenset[str], frozenset[str]]:
    """Return the small letters that every writing list calls easy, and those that every one calls hard."""
    lists = load_evidence().writing
    return (reduce(frozenset.intersection, (each.easy for each in lists)),
            reduce(frozenset.intersection, (each.hard for each in lists)))


@cache
def own_initial_gain() -> float:
    """Return how much easier a letter is as the child's own initial: the mean over the letters that have a figure."""
    gains = [item.own_initial_gain for item in load_evidence().capitals.values() if item.own_initial_gain is not None]
    return round(_average(gains), DIGITS)


@lru_cache(maxsize=2000)
def letter_difficulty(letter: str, *, own_initial: bool = False) -> LetterDifficulty:
    """Return how hard one written sign is; see the module header for what stands in for a missing figure."""
    base = base_letter(letter)
    capital = base.upper() if base.isascii() and base.isalpha() else None
    named = band_of(load_evidence().capitals[capital].b_not_first) if capital else Band.MIDDLE
    marked = "" if unicodedata2.normalize("NFD", letter) == base else "; its mark has no figure"
    if own_initial:
        figure = _mean_of(named) - own_initial_gain()
        return LetterDifficulty(letter, figure, band_of(figure), f"the child’s own initial{marked}")
    band, note = _moved(base, named) if capital else (named, "no published figure: middle band")
    return LetterDifficulty(letter, _mean_of(band), band, note + marked)


def _moved(base: str, named: Band) -> tuple[Band, str]:
    """Set the naming band of a letter of A–Z or a–z against what is known of writing it."""
    easy, hard = agreed_writing()
    if base in hard:
        return Band.HARDER, "hard to write in both lists (second-hand)"
    if base in easy and named is Band.HARDER:
        return Band.MIDDLE, "harder to name, easy to write (second-hand): middle band"
    return named, "naming figure" if base.isupper() else "naming figure of its capital"


@cache
def _mean_of(band: Band) -> float:
    """Return the mean naming figure of the capitals in a band."""
    figures = [item.b_not_first for item in load_evidence().capitals.values()]
    return _average([figure for figure in figures if band_of(figure) is band])


def name_difficulty(name: str, own_initial: str | None = None) -> NameDifficulty:
    """Return how hard a name is to write.

    ``own_initial`` is the first sign of the child's first name; None means that ``name`` begins with it.
    A name with nothing to write is given the middle band's figure, no letters and no workload.
    """
    signs = written_signs(name)
    own = own_initial if own_initial is not None else "".join(signs[:1])
    letters = tuple(letter_difficulty(sign, own_initial=sign == own) for sign in dict.fromkeys(signs))
    marks = 0 if name.isascii() else sum(unicodedata2.category(char)[0] == "M" for sign in signs
                                         for char in unicodedata2.normalize("NFD", sign))
    small = marks + len(clusters(name)) - len(signs) if signs else 0
    met = twins_in(signs)
    work = WORKLOAD_PER_LETTER * len(signs) + WORKLOAD_PER_SIGN * small + WORKLOAD_PER_TWINS * len(met)
    return NameDifficulty(letters, len(signs), round(_mean(letters), DIGITS), round(work, DIGITS), small, met)


def twins_in(signs: Sequence[str]) -> tuple[tuple[str, str], ...]:
    """Return the pairs of letters, marks aside, that are mirror or turned twins of each other in our alphabet."""
    bases = tuple(dict.fromkeys(map(base_letter, signs)))
    if len(bases) > MAX_LETTERS:
        return ()
    return tuple((one, other) for case in (str.islower, str.isupper)
                 for one, other, _ in twins(filter(case, bases)))


def _mean(letters: Sequence[LetterDifficulty]) -> float:
    return _average([each.figure for each in letters]) if letters else _mean_of(Band.MIDDLE)


def _average(figures: Sequence[float]) -> float:
    return math.fsum(figures) / len(figures)
