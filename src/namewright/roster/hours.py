"""When a child comes, behind its name: ``Mira V Mo/Mi/Fr``, ``Bo Tarn til noon``, ``Una G ganztags``.

Told by the words alone, line by line, for only a few children have such a remark. One day without a sign (``Kim Do``)
and one letter (``Ana M y J``) stay a part of the name. Out of scope: days on most lines (``marks``), days behind a
dash or a colon, in brackets or before names.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.known import is_given
from namewright.roster.marks import is_a_day
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.vocabulary import fold, word_set
from namewright.store import keeps_names

_JOINED = pattern(r"[/+&,–-]")
_WEEK = frozenset(("lmxjv", "lmmjv", "mdmdf", "lmmgv", "stqqs", "mtwtf", "mtwthf", "mtwrf"))
"""The days from Monday to Friday by their letters, in the six languages."""
_FIGURES = pattern(r"\d{1,2}(?:[:.h]\d\d|h)?(?:[-–]\d{1,2}(?:[:.h]\d\d|h)?)?")
_ALONE = word_set("""
    mornings, afternoons, ganztags, halbtags, vormittags, nachmittags, mittags, mi-temps, part-time, integral""")
"""Words that tell it alone; full by itself is how much help a child has."""
_TELLING = _ALONE | word_set("""
    til, till, until, only, noon, full, half, bis, nur, jusqu'a, jusqu’a, midi, seulement, hasta, solo, media, completa,
    mediodia, fino, mezza, intera, mezzogiorno, pieno, ate, meio-dia, meio, inteiro, comedor, cantine, mensa""")
"""Words of which one at least stands there, where no days are joined by a sign."""
_BESIDE = word_set("""
    to, from, after, before, at, am, pm, a, y, e, et, und, and, day, days, time, ab, von, um, uhr, tag, tage, matin,
    matins, apres-midi, le, la, les, las, los, el, alle, dalle, al, mattina, mattine, pomeriggio, giornata, giorno,
    tempo, so, ao, as, da, das, de, do, manha, manhas, tarde, tardes, manana, mananas, jornada, dia, dias, journee,
    periodo, o, os, h, in, the, comes""")
_LONGEST = 200  # characters of a line that is looked at: a longer one is a text


def without_hours(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the days and hours behind names; each tells what was taken from it."""
    found = [_parted(line.text) if len(line.text) <= _LONGEST else None for line in lines]
    return [line.without(parted[1], parted[0]) if parted else line for line, parted in zip(lines, found, strict=True)]


@keeps_names(1024)
def _parted(line: str) -> tuple[str, str] | None:
    """Return the name of a line and the hours behind it, None where a line has no such end."""
    if any(sign in line for sign in COLUMN_SIGNS):
        return None
    words = line.split()
    at = len(words)
    while at > 1 and _is_beside(words[at - 1]):  # Sam is a day and a child
        at -= 1
    while at < len(words) and not _opens(words[at:]):
        at += 1
    name, tail = strip_numbering(" ".join(words[:at])).split(), words[at:]
    if not tail or not _tells(tail) or not _is_a_name(name) or name[-1].endswith(":"):  # a label has rules of its own
        return None
    return " ".join(words[:at]), " ".join(tail)


def _opens(tail: Sequence[str]) -> bool:
    """Say whether a first word can open such a remark: days by signs, a day before more, or a word in small letters."""
    first = tail[0]
    return _are_days(first) or begins_small(first) or _FIGURES.fullmatch(first) is not None or (
        len(tail) > 1 and is_a_day(first))


def _tells(tail: Sequence[str]) -> bool:
    """Say whether words surely tell when a child comes, and no single letters stand for names."""
    told = [fold(word) for word in tail if fold(word) in _TELLING and begins_small(word)]
    alone = len(tail) == 1 and not _ALONE.issuperset(told)
    return (bool(told) and not alone) or any(map(_are_days, tail))


def _is_a_name(words: Sequence[str]) -> bool:
    """Say whether words are a whole name, or a given name with the initial of another, or a given name alone."""
    written = bool(words) and is_titled(" ".join(words)) and not any(map(str.isdigit, "".join(words)))
    letters = written and all(is_letter(word[0]) for word in words)
    return letters and (len(words) > 1 or is_given(words[0]))


def _is_beside(word: str) -> bool:
    """Say whether a word may stand in such a remark: written small, a day, an hour, a letter for a day."""
    small = begins_small(word) or not word[0].isalpha() or word.isupper()
    folded = fold(word)
    return (small and (folded in _TELLING or folded in _BESIDE)) or is_a_day(word) or _are_days(word) or (
        _FIGURES.fullmatch(word) is not None) or (len(word) == 1 and word.isupper()) or word == "Uhr"


def _are_days(word: str) -> bool:
    """Say whether days are joined by a sign: ``Mo/Mi/Fr``, ``Di+Do``, ``L/X/V``; of letters alone three in a week."""
    parts = [part for part in _JOINED.split(word) if part]
    if len(parts) < 2:
        return False
    letters = "".join(map(fold, parts))
    if all(len(part) <= 2 for part in parts) and any(len(part) == 1 for part in parts):
        return len(parts) > 2 and any(_go_on(letters, week) for week in _WEEK)
    return all(map(is_a_day, parts))


def _go_on(letters: str, week: str) -> bool:
    """Say whether letters stand in the order of a week's days."""
    rest = iter(week)
    return all(letter in rest for letter in letters)
