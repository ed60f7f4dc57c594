"""E-mails, dates, ages, telephone numbers and IDs beside a name: taken out, with the words that belong to them.

Each kind is named in a note; what it holds is not repeated. A word that runs into its number keeps its letters
(``Katie2``); one that is more number than word goes whole (``S1044``, ``2nd``).
"""

from __future__ import annotations

import re

from namewright.message import Message, message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.vocabulary import MONTHS, NUMBER_LABELS, NUMBER_UNITS, fold

_EMAIL = pattern(r"\S+@\S+")
_DAY = r"\d{1,2}(?:st|nd|rd|th|\.|º|°)?"
_YEAR = r"(?:,?\s+(?:de\s+|del\s+)?(?:\d{4}|[’']?\d\d)\b)?"
_MARKED = ("février", "févr", "fév", "août", "décembre", "déc", "märz", "mär", "março", "jänner")
_MONTH = rf"(?:{'|'.join(sorted((*MONTHS, *_MARKED), key=len, reverse=True))})\b\.?"
_DATE = (  # a long one, that re compiles and keeps when a list first has a figure in it
    rf"(?i)(?<!\d)\d{{1,4}}\s?([-/.])\s?(?:\d{{1,2}}|{_MONTH})\s?\1\s?\d{{1,4}}(?!\d)"
    rf"|(?<!\d){_DAY}\s+(?:de\s+|of\s+)?{_MONTH}{_YEAR}"
    rf"|\b{_MONTH}\s+{_DAY}(?!\w){_YEAR}"
)
_DAY_BEHIND = pattern(r",\s*\d", needs=",")
_PHONE = pattern(r"\+?\(?\d[\d\s().-]{6,}\d")
_DIGITS = pattern(r"\S*\d\S*")
_MIXED = pattern(r"(?<!\S)(?=\S*[a-z])[^\W\d_]{2,}-?\d+[^\W\d_]+(?!\S)")
_SPOILT = pattern(r"(?![01](?:st|er|[eè]re|h|[uU]hr)$)"
                  r"(?:[^\W\d_]+[01358]{1,2}|[01](?=[^\W\d_]{3}))(?:[^\W\d_]+[01358]{1,2})*[^\W\d_]+[01]?")
_GLUED = pattern(r"([^\W\d_]{3,})\d{1,3}")
_LETTERS = pattern(r"[^\W\d_]+")
_LETTER = pattern(r"[^\W\d_]")
_MARK = "\0"
"""Stands where a number stood, until the words that belong to it are found; no clean text holds it."""
_LONGEST_LABEL = 3
_LEAST_LETTERS = 3  # of a name with a figure in it; a code has fewer


def take_numbers(text: str, notes: list[Message]) -> str:
    """Take out whatever has to do with numbers; the notes say what."""
    text = _drop(text, _EMAIL, "roster.email", notes)
    if any(map(str.isdigit, text)):
        if _leaves_a_name(re.sub(_DATE, _MARK, text), day_first=bool(_DAY_BEHIND.search(text))):
            text = _drop(text, re.compile(_DATE), "roster.date", notes)
        text = _drop(text, _PHONE, "roster.phone", notes)
        notes.extend(message("roster.word_with_number", word=word) for word in _MIXED.findall(text))
        text = _drop(_MIXED.sub(" ", text), _DIGITS, "roster.number", notes)
    return " ".join(_without_labels(text.split())) if _MARK in text else text


def is_of_figures(text: str) -> bool:
    """Say whether a text has figures and no letter: a number, a date or a time alone."""
    return any(map(str.isdigit, text)) and not any(map(is_letter, text))


def behind_a_date(text: str) -> tuple[str, str]:
    """Return a text to the end of its last date, and what stands behind that; all of it where no whole name is before.

    ``VOST Mira 12/05/2020 GS``: no part of a name stands there.
    """
    found = tuple(re.finditer(_DATE, text)) if any(map(str.isdigit, text)) else ()
    match = found[-1] if found else None
    if match is None or len(_LETTERS.findall(text[: match.start()])) < 2:
        return text, ""
    return text[: match.end()], text[match.end() :].strip(" ,;–—-")


def figure_inside(name: str) -> Message | None:
    """Return what is asked where the first word of a name has a figure among its letters, as a photo’s reading has."""
    first = next((word for part in name.split() if (word := part.strip(".,;:!?|¦*"))), "")
    if not any(map(str.isdigit, first)) or not _SPOILT.fullmatch(first) or len(_LETTER.findall(first)) < _LEAST_LETTERS:
        return None
    return message("roster.figure_inside", word=first[:60])


def _drop(text: str, pattern: re.Pattern[str], key: str, notes: list[Message]) -> str:
    if not pattern.search(text):
        return text
    notes.append(message(key))
    return pattern.sub(lambda match: f" {_letters_of(match[0])} {_MARK} ", text)


def _letters_of(word: str) -> str:
    """Return the letters of a word that runs into its number, empty for anything else."""
    glued = _GLUED.fullmatch(word)
    return glued[1] if glued and not word.isupper() else ""


def _leaves_a_name(text: str, *, day_first: bool) -> bool:
    """Keep ``Moss, April 12`` as it is: where only a family name would be left, the month is the child.

    Behind the day it is no child: ``Ben, 7. August``.
    """
    rest = text.replace(_MARK, " ").strip()
    return bool(_LETTER.search(rest)) and (day_first or not (rest.endswith(",") and " " not in rest))


def _without_labels(words: list[str]) -> list[str]:
    """Take the marks out, with a label before each (``DOB``) and a unit behind it (``yrs``); one word always stays."""
    at = 0
    while _MARK in words[at:]:
        at = words.index(_MARK, at)
        before = _label_size(words[:at])
        after = _unit_size(words[at + 1 :])
        if not any(map(_LETTER.search, words[: at - before] + words[at + 1 + after :])):
            before = after = 0
        words = words[: at - before] + words[at + 1 + after :]
        at -= before
    return words


def _label_size(words: list[str]) -> int:
    for size in range(min(_LONGEST_LABEL, len(words)), 0, -1):
        label = " ".join(words[-size:])
        if fold(label.strip("#")) in NUMBER_LABELS and label != "B.":
            return size
    return 0


def _unit_size(words: list[str]) -> int:
    return next((size for size in (2, 1) if fold(" ".join(words[:size])) in NUMBER_UNITS), 0) if words else 0
