"""Whether labels with names behind them are surely groups, be their words on no list: by counts, by form, by the names.

``Packed lunch (3): Mia, Leo, Ava`` counts its names, and so does every label beside it; ``Sand = Mia V., Leo T.``
writes an initial behind each name and none in a label; and where nearly all names are known and hardly a label is,
these are no children. Pure; which lines have a label is said by ``labelled_groups``.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import chain

from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import INITIALLED
from namewright.roster.capitals import is_small_word, is_titled
from namewright.roster.heading_words import HEADING_WORDS, JOB_ENDINGS, JOBS, TODAY
from namewright.roster.known import is_given, lean
from namewright.roster.names_between import BRACKETS
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import (
    ANY_DAYS,
    MONTHS,
    NO_CHILD,
    STATES,
    TITLES,
    fold,
    word_set,
)

_COUNT = pattern(r"^(?:(?P<first>\d{1,2})(?:\s?[x×])?\s)?(?P<words>.*?[^\W\d_].*?)"
                 r"(?:\s*[(\[]\s*(?P<inside>\d{1,2})[^\W\d_ ]{0,3}\s*[)\]]|\s*[-–—=:×]\s*(?P<last>\d{1,2}))?$")
_NUMBERED = pattern(r"([^\W\d_]{2,20})\s?(?:no\.|nr\.|n[º°]|[#№])?\s?([0-9]{1,3})\b", re.IGNORECASE)
_TIMED = pattern(r"[^\W\d_].*\s[0-9]{1,2}[:.h][0-9]{2}(?:\s?(?:Uhr|h|[AaPp][Mm]))?$")
_SEATS = pattern(r"[(\[]\s*\d{1,2}\s+[^\W\d_][^()\[\]]*[)\]]")
_PERIODS = MONTHS | ANY_DAYS | TODAY | word_set("""
    week, month, term, semana, mes, trimestre, semaine, mois, woche, monat, settimana, mese""")
"""What a title over groups ends in: ``Helfer der Woche``."""
_NEARLY_ALL, _MOSTLY, _MANY, _HALF, _FEW_OF_ALL = 0.9, 0.8, 0.6, 0.5, 0.34
_FEW = 2  # labels
_CROWD, _PAIR = 2.5, 2.0  # names behind a label on the average: parents and pets come in twos
_ALONE = 3  # names behind the only label of a list


def is_of_adults(label: str) -> bool:
    """Say whether a label names grown-ups or somebody of a family: ``Teachers``, ``Frau Vost``."""
    return any(fold(word.strip(".:’'")) in NO_CHILD for word in label.split())


def is_of_one_adult(label: str) -> bool:
    """Say whether a label is a grown-up by name: ``Frau Vost``, ``Mr. Tarn (4 seats)``; no ``Teachers``."""
    words = BRACKETS.sub(" ", label).split()
    return len(words) > 1 and fold(words[0].rstrip(".")) in TITLES and opens_as_a_name(words[1])


def are_led_by_adults(labels: Sequence[str], names: Sequence[Sequence[str]]) -> bool:
    """Say whether grown-ups stand before the children they drive or lead: ``Mrs. Vost (4 seats): Mira, Tilo``.

    Each with what there is room for, or several before names that are known or have initials; beside them no label may
    be a child or other grown-ups, whose names would be adults, too.
    """
    every = list(chain.from_iterable(names))
    led = [is_of_one_adult(label) or (is_of_adults(label) and _SEATS.search(label) is not None) for label in labels]
    others = [label for label, is_led in zip(labels, led, strict=True) if not is_led]
    if not any(led) or any(map(is_of_adults, others)) or share(map(_may_be_a_child, others)) >= _HALF:
        return False
    if len(set(map(fold, every))) < _NEARLY_ALL * len(every):
        return False
    if any(is_of_adults(name.split()[0]) or fold(name) in HEADING_WORDS for name in every):
        return False
    seated = [_SEATS.search(label) is not None for label, is_led in zip(labels, led, strict=True) if is_led]
    told = share(INITIALLED.fullmatch(name) is not None for name in every) >= _HALF or given_share(every) >= _HALF
    return all(seated) or (sum(led) > 1 and told)


def are_surely_groups(labels: Sequence[str], names: Sequence[Sequence[str]]) -> bool:
    """Say whether each label, with its names, is surely a group and no child; ``names`` may be names by their form."""
    every = list(chain.from_iterable(names))
    if not every or (len(labels) == 1 and len(every) < _ALONE) or max(map(len, names)) < 2:
        return False
    if len(set(map(fold, every))) < _NEARLY_ALL * len(every):
        return False
    if len(labels) > 1 and (_are_counted(labels, names) or _count_on(labels, names)):
        return True
    perhaps = share(map(_may_be_a_child, labels))
    initialled = share(INITIALLED.fullmatch(name) is not None for name in every)
    if initialled >= _NEARLY_ALL and not any(INITIALLED.fullmatch(label) for label in labels) and perhaps < _HALF:
        return True
    if given_share(every) >= _NEARLY_ALL:
        return perhaps < _HALF
    phrases = any(map(_is_a_phrase, labels))
    return perhaps < _FEW_OF_ALL and len(labels) > 1 and len(every) >= (_PAIR if phrases else _CROWD) * len(labels)


def are_jobs(labels: Sequence[str], names: Sequence[Sequence[str]]) -> bool:
    """Say whether jobs stand before who has them this week, one child each as a rule: ``Line leader: Mira``.

    No label is known as a name. Of names on no list several stand behind one of them; a lesson would stand alone.
    """
    every = list(chain.from_iterable(names))
    named = any(_may_be_a_child(label) and fold(label) not in JOBS for label in labels)  # Luci are lights
    if not may_be_jobs(labels) or named or len(set(map(fold, every))) < len(every):
        return False
    if any(is_a_job(name) or fold(name) in HEADING_WORDS for name in every):
        return False
    return given_share(every) >= _HALF or max(map(len, names)) > 1


def may_be_jobs(labels: Sequence[str], least: int = _FEW) -> bool:
    """Say whether labels may be jobs: some at least have a word of these, and most others go on in small letters."""
    jobs = list(map(is_a_job, labels))
    told = (job or _is_a_phrase(label) or fold(label) in STATES for job, label in zip(jobs, labels, strict=True))
    return len(labels) > _FEW and sum(jobs) >= least and share(told) >= _MANY


def is_a_job(label: str) -> bool:
    """Say whether a word of a label tells what a child does for its class: ``Lights``, ``Türdienst``."""
    words = [fold(word.strip(".,:")) for word in BRACKETS.sub(" ", label).split()]
    return any(word in JOBS or word.endswith(JOB_ENDINGS) for word in words)


def is_over_groups(text: str) -> bool:
    """Say whether a line that stands over groups alone is their title: one word, small letters, a figure or a week."""
    words = text.split()
    told = len(words) == 1 or any(map(str.isdigit, text)) or _is_a_phrase(text) or fold(words[-1]) in _PERIODS
    return told and not lean(words[0].strip(",:")) > 0


def _are_counted(labels: Sequence[str], names: Sequence[Sequence[str]]) -> bool:
    """Say whether the labels tell how many names stand behind each."""
    counts = [match["first"] or match["inside"] or match["last"] if (match := _COUNT.match(label)) else None
              for label in labels]
    right = [count is not None and int(count) == len(some) for count, some in zip(counts, names, strict=True)]
    return sum(right) > 1 and share(right) >= _MOSTLY


def _count_on(labels: Sequence[str], names: Sequence[Sequence[str]]) -> bool:
    """Say whether labels are one word and a number that goes up, ``Stop 1``, or places with their times: ``Elm 8:10``.

    Where two names at most stand behind each, these may be a family's and a given name.
    """
    found = [_NUMBERED.match(label) for label in labels]
    words, numbers = {fold(match[1]) for match in found if match}, [int(match[2]) for match in found if match]
    counted = all(found) and len(words) == 1 and numbers == sorted(set(numbers))
    others = [label for label in labels if not _TIMED.search(label)]
    timed = len(labels) - len(others) >= max(_FEW, _MANY * len(labels)) and not any(map(_may_be_a_child, others))
    return (counted or timed) and max(map(len, names)) > _FEW


def _may_be_a_child(label: str) -> bool:
    """Say whether a label is written as a name, and is known as one: ``Mira``, ``Xobrel Smith``; no ``Art table``."""
    match = _COUNT.match(label)
    bare = match["words"] if match else label
    words = [word for word in bare.split() if any(map(is_letter, word))]
    if not words or not is_titled(" ".join(words)) or any(map(str.isdigit, bare)):
        return False
    return is_given(words[0].strip("'’s")) or is_given(words[0]) or (
        len(words) > 1 and any(lean(word) != 0 for word in words))


def _is_a_phrase(label: str) -> bool:
    """Say whether a label goes on in small letters, as no name does: ``Play dough``, ``Pâte à modeler``."""
    return any(map(is_small_word, label.split()[1:]))
