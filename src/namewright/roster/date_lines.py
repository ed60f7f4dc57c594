"""Lines that are a date and nothing else (``Thu, Mar 5``, ``lun. 12 janv.``), as calendars set them over what is on.

May 5 and Sam 5 may be children with their ages: one word of the date must be nobody's given name.
"""

from __future__ import annotations

from namewright.patterns import pattern
from namewright.roster.known import is_given
from namewright.roster.vocabulary import ANY_DAYS, MONTHS, OF_THE, fold, word_set
from namewright.store import keeps_names

_SHORT_MONTHS = word_set("""
    janv, fevr, avr, juil, janeiro, fev, mai, out, dez, mrz, okt, gen, mag, giu, lug, set, ott, nov, dic, sett, ago,
    abr, apr, feb, jan, dec, oct""")
_SURE_DAYS = word_set("mon, tue, tues, wed, thu, thur, thurs, fri, sat, sun")
"""Beside a month; Sam 4 May may be a child."""
_HARDLY_NAMES = frozenset(("lundi",))
"""Days that somebody is called, though hardly anybody: a date behind one tells it. Domenica 3/11 is asked about."""
_NUMBER = pattern(r"(?:[12]?\d|3[01]|0\d)(?:st|nd|rd|th|er|[ºª°])?|20\d\d")
IN_FIGURES = pattern(r"\d{1,2}[./-]\d{1,2}[./-]?(?:\d{2}|\d{4})?|\d{4}-\d{1,2}-\d{1,2}")
"""A date: ``3/12``, ``3.12.2019``, ``2019-12-03``."""
_BEHIND_FIGURES = pattern(r"\d[./-]\d{1,4}[./-]?\d{0,4}(?::|\s[-–—])\s+[^\W\d_]+$")
_TIME = pattern(r"\d{1,2}(?:[:.h]\d\d|h)?(?:[ap]m)?")
_BETWEEN = pattern(r"[\s,]+")
_EDGES = ".()"
_SHORT = 2  # letters: Mo 4 may be a child
_YEAR = 4  # figures: May – June 2024
_MOST_WORDS = 8


@keeps_names(1024)
def is_a_date(text: str) -> bool:
    """Say whether a line is a date: a number, with a day of the week or a month, and nothing else but small words."""
    parts = _BETWEEN.split(text) if any(map(str.isdigit, text)) else []
    words = [word for part in parts if (word := part.strip(_EDGES))]
    if not 1 < len(words) <= _MOST_WORDS:
        return False
    days = [word for word in words if fold(word) in ANY_DAYS]
    months = [word for word in words if fold(word) in MONTHS or fold(word) in _SHORT_MONTHS]
    rest = [word for word in words if word not in days and word not in months]
    numbers = [word for word in rest if _NUMBER.fullmatch(word) or IN_FIGURES.fullmatch(word)]
    alone = [word for word in months if word not in days]  # mar 5 ene is a Tuesday
    if len(alone) > 1 and len(numbers) == 1 and len(numbers[0]) < _YEAR and any(map(is_given, alone)):
        return False  # March 3 June: her birthday
    others = (word for word in rest if word not in numbers and not _TIME.fullmatch(word.lower()))
    if (alone and is_given(alone[-1]) and _BEHIND_FIGURES.search(text)) or ends_in_a_name(text):
        return False  # jeudi 3/12 – Marco
    day = text[:1].islower() or not any(map(is_given, days)) or (bool(days) and fold(days[0]) in _SURE_DAYS)
    both = bool(days and months) and {*days} != {*months} and day
    told = any(word.islower() or fold(word) in _HARDLY_NAMES for word in days)
    small = told and any(map(IN_FIGURES.fullmatch, numbers))  # lundi 3/11
    sure = both or small or any(len(word) > _SHORT and not is_given(word) for word in (*days, *months))
    return bool(numbers) and sure and all(fold(word) in OF_THE or word in "–—-" for word in others)


@keeps_names(1024)
def ends_in_a_name(text: str) -> bool:
    """Say whether a name with a capital stands right behind a day and its date: ``mardi 5/12 Dom``.

    Behind a date in figures a month is one, too: ``mardi 2/12 Marco``.
    """
    *_, day, date, name = ["", "", "", *text.split()]
    figures = IN_FIGURES.fullmatch(date)
    if not (figures or _NUMBER.fullmatch(date.rstrip("."))) or fold(day).strip(_EDGES) not in ANY_DAYS:
        return False
    again = fold(name)[:_SHORT] == fold(day)[:_SHORT]
    said = (fold(name) in ANY_DAYS and not again) or (figures is not None and fold(name) in MONTHS - ANY_DAYS)
    return said and name.istitle() and is_given(name)


@keeps_names(1024)
def is_a_day_in_figures(text: str) -> bool:
    """Say whether a text is a day of the week and a date in figures, as beside a name: ``Gio 3/12`` is nobody of 3."""
    words = [word.strip(_EDGES) for word in _BETWEEN.split(text.strip())]
    figures = [word for word in words if IN_FIGURES.fullmatch(word)]
    return bool(figures) and all(word in figures or fold(word) in ANY_DAYS for word in words)
