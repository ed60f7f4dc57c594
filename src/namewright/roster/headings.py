"""Lines about the class rather than a child: a modest guess, always reported and never silent.

``Room 6``, ``Alder Room 2026/27 - Ms. Ferrow``, ``Teacher: Oda Vost``, ``Page 2``, ``Monday``: ``heading_reason`` says
why such a line is no child, by its own words alone. ``perhaps_heading`` says that one may be none: ``Aula Girasoles``.
What only the other lines of a list tell is said elsewhere (``unlike``, ``titles_above``).
"""

from __future__ import annotations

import re

from namewright.message import Message, message
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import INITIALLED, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.class_words import is_beside_class, is_compound, is_heading_word, opens_as_class
from namewright.roster.date_lines import ends_in_a_name, is_a_date
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.further_titles import FURTHER_TITLES
from namewright.roster.header_words import HEADER_WORDS, SOMEBODY_ELSE
from namewright.roster.heading_words import (
    ARTICLES,
    BESIDE_CLASS,
    CHILDREN,
    CLASS_OPENINGS,
    COLOUR_FORMS,
    COLOURS,
    DATED_OPENINGS,
    ENDS,
    HEADING_WORDS,
    LEVELS,
    LINES,
    LISTS,
    MAIL_LABELS,
    MANY_ADULTS,
    ON_SCREENS,
    OUR,
    OVER_NAMES,
    PHONES,
    PLACES,
    PRINTED,
    ROLLS,
)
from namewright.roster.known import is_family, is_given, is_known, lean
from namewright.roster.month_heads import is_of_birthdays
from namewright.roster.notes_to_readers import (
    SIGN,
    asks_kindly,
    before_a_request,
    greets,
    is_note,
    may_be_a_cry,
    may_greet,
)
from namewright.roster.vocabulary import (
    ADULTS,
    AND,
    ANY_DAYS,
    DAY_LETTER,
    DAYS,
    LEADERS,
    MONTHS,
    NUMBER_LABELS,
    OF_THE,
    OTHER_PEOPLE,
    SEASONS,
    STATES,
    TEACHERS,
    TITLES,
    TOTALS,
    Role,
    fold,
)
from namewright.roster.within import behind_an_adult, is_of_a_day, may_be_a_child, named_behind_a_day
from namewright.store import keeps_names

_AFTER_PRINTED = frozenset((
    "on", "as", "by", "from", "at", "el", "de", "por", "le", "du", "par", "am", "von", "aus", "vom", "mit", "il", "da",
    "dal", "al", "con", "em", "list", "of", "des", "au", "a", "am",
))
_DATED = ANY_DAYS | MONTHS | OF_THE | {"le", "el"}
_TITLES_ONLY = SOMEBODY_ELSE.union(*({fold(word) for word in words} for words in FURTHER_TITLES.values()))
_TEACHERS = ("lehrer", "lehrerin", "lehrkraft", "erzieher", "erzieherin", "teacher")
_MINE = frozenset(("mia", "mio", "mie", "miei"))  # behind an article alone: Mia is a child
_CLASS_IN_FIGURES = pattern(r"\s*\d{1,2}\s?(?:\.?[ºª°]\s?)?[a-hA-H]\s*|\s*\d{1,2}\.?[ºª°]\s*")
_LETTERED_CLASS = pattern(r"(?:[A-Z]|\d{1,2}[A-Z]?|TK|PK)-[A-Z][^\W\d_]+")  # K-Vale
_OF_NAMES = frozenset(("names", "namen", "vornamen", "noms", "prenoms", "nombres", "nomes"))
_LONGEST_CLASS = 3  # words
_FEW = 2
_MOST_OF_A_NUMBER = 3  # figures: the RUT of Chile has more
_YEARS = "years?|yrs?|anos?|ans|jahre?"
_AGED = pattern(rf"\d{{1,2}}(?:\s?[-–/]\s?\d{{1,2}} (?:{_YEARS}|anni)| (?:{_YEARS}))(?: olds?)?(?: [a-f])?"
                r"|\d{1,2} anni [a-f]")
"""``5 años A``, ``4-5 years``; Anni alone behind a number is a child."""
_LABEL = pattern(r"\s*([^\s:,;/&][^:,;/&]{0,29}?)\s*(?::|\s[-–—])\s+(?=\S)")
_SIGNS = pattern(r"[^\d,/&+;]+(?:[,/&+;]|\s(?:and|und|et|y|e)\s)\D+")
_BETWEEN_NAMES = pattern(rf"(?:(?<!\s)\s+)?[,;/&+]\s*(?:(?:{AND})\s+)?|(?<!\s)\s+(?:{AND})\s+")
_PAGE = pattern(r"\b(?:page|seite|pag|pagina)\.? ?\d{1,3}(?: ?(?:/|of|von|sur|de|di) ?\d{1,3})?$")
_SLIDE = pattern(r"(?:slide|folie|diapositiv[aeo]|diapo|hoja|feuille|foglio|folha) ?\d{1,3}")
_SCHOOL_YEAR = pattern(r"(?<!\d)20\d\d\s?[/–-]\s?(?:20)?\d\d(?!\d)", needs="2")
_ASIDE = pattern(r"(?<!\s)\s+[-–—|/]\s+.*|,\s*(?=\d|(?P<title>[^\W\d_]+)).*|(?<!\s)\s*\([^()]*\)\s*$")
_COUNTED = pattern(r"\d{1,4}(?:st|nd|rd|th|er|[ºª°])?")
_ELIDED = pattern(r"(?:d|l|dell)['’](?=[^\W\d_])", needs="'’")
_IN_BRACKETS = pattern(r"\([^()]*\)")
_ADDRESSED = pattern(r"(?:To|An|Para|À|A|Cc):\s+[^\W\d_a-z]")
_END = pattern(r"\s*[*=#~_<-]{2,}\s*(?:eof|end|ende|fin|fine|fim|einde)\b[\w\s]{0,40}[*=#~_>-]{2,}\s*", re.I)
"""Where a printed list ends: ``*** END OF REPORT ***``."""
_MARK = r"(?:[^\W\d_]{1,2}|[^\w\s=]|\d)\s*=\s*[^=,;/|]+"
_KEY = pattern(rf"\W*{_MARK}(?:[,;/|]\s*{_MARK})+|\W*(?:[^\W\d_]|[^\w\s=])\s*=\s*[a-zß-ÿ][^=]*", needs="=")
"""What the marks of a list mean: ``P = present, A = absent``."""
_SAID = pattern(r"([^=:,]{2,40}?)\s*[=:]\s+(?=\S)", needs="=:")
_SAID_BY_COMMA = pattern(r"[^\W\d_][^=:,\d]{1,39},\s+([^\W\d_][^=:,\d]{1,39}?)\s*[=:]\s+(?=\S)", needs="=:")
_SUMMED = pattern(r"([^:0-9]{2,40}?)\s?:\s*[€$£]?\s?[0-9][0-9.,  ]*[%€$£]?", needs=":")
"""What a figure alone stands behind, as in ``Class average: 92.4 %``."""
_OF_A_CLASS = frozenset(("della", "dell", "da", "der", "du"))
_BETWEEN_DAYS = pattern(r"[-–/+&,.()]+")
_WEEK = pattern(rf"{DAY_LETTER}(?:[-–/]{DAY_LETTER}){{1,4}}")  # without a sign between: initials, as MT
_BETWEEN = pattern(r"[\s,;/()\[\]|·•–—:]+")
_LAST_SIGN = pattern(r"\s[-–—]\s+(?=\S)")
_INITIALLED_CHILD = pattern(r"[^\W\d_][\w’'-]+ [^\W\d_]\.\s+[-–—]\s")
_PLACED = pattern(r"(?P<name>[^:;]{2,60}?)(?:,|\s+(?:[-–—]|(?P<arrow>→|⇒|[-=]>)))\s+(?P<place>\S.*)")


@keeps_names(2048)
def heading_reason(text: str) -> Message | None:
    """Say why a line is about the class and not a child, None where it is not.

    A modest guess: a line that ends in a colon, one that opens with a title (Ms., Sra.), one made of nothing but
    words of a heading, ``…'s class``, a label for something else than a name (``Teacher: …``), or a heading
    word followed by a number, a sign or nothing.
    """
    words = _words(text)
    if not words or _is_said_to_be_a_name(strip_numbering(text)) or _is_marked_otherwise(words[0], text):
        return None
    if text.rstrip().endswith(":"):
        return message("roster.heading_colon")
    if _is_summed(text):
        return message("roster.heading_count")
    if _KEY.fullmatch(text) or _END.fullmatch(text):
        return message("roster.heading_remark")
    first = words[0].strip(".,!")
    label = _LABEL.match(text)
    label = label if label and label[1].strip() else None
    if label and heads_adults(text):
        return message("roster.adult")
    if label and MAIL_LABELS.issuperset(fold(label[1]).split()) and not (len(label[1]) < _FEW + 1 and "," in text):
        return message("roster.heading_label")
    if label and _SIGNS.fullmatch(text, label.end()) and first not in TITLES and not (
            OTHER_PEOPLE.intersection(fold(label[1]).split())):
        return None  # a group and the names of it
    if first not in TITLES and named_behind_a_day(strip_numbering(text)):
        return None
    return _reason_by_opening(words, text) or _reason_by_words(words, text)


@keeps_names(1024)
def heads_adults(text: str) -> bool:
    """Say whether words before a sign are of who teaches or helps, or each name behind it has a title.

    ``Teachers: Mrs. Tarn, Mr. Vost``, ``Educadoras: D. Tarn, D. Vost``; Sr. behind a name is a suffix.
    """
    label = _LABEL.match(text)
    if label is None:
        return False
    parts = [part.split() for part in _BETWEEN_NAMES.split(text[label.end() :].strip(" .!"))]
    titled = len(parts) > 1 and all(len(part) > 1 and fold(part[0]) in TITLES for part in parts)
    adults = fold(label[1]) in TEACHERS or fold(label[1]) in MANY_ADULTS
    return titled or (adults and all(part and opens_as_a_name(part[0]) for part in parts))


def _is_summed(text: str) -> bool:
    """Say whether a figure stands behind words for a total or a mean: ``Media de la clase: 95.5 %``."""
    match = _SUMMED.fullmatch(text.strip())
    words = fold(match[1]).split() if match else []
    return not TOTALS.isdisjoint(words) and all(word in TOTALS | OF_THE | CHILDREN or word in _OF_A_CLASS or (
        is_heading_word(word)) for word in words)


def _reason_by_opening(words: list[str], text: str) -> Message | None:
    """Say why a line is about the class by how it opens."""
    first, rest = words[0].strip(".,!"), words[1:]
    if greets(words, text) or is_note(words, text):
        return message("roster.heading_remark")
    if first in TITLES and rest:
        return None if behind_an_adult(strip_numbering(text)) else message("roster.adult")
    if first in TEACHERS and rest and all(map(is_beside_class, rest)):  # Educadora, sala 2
        return message("roster.adult")
    if _CLASS_IN_FIGURES.fullmatch(text):
        return message("roster.heading_class")
    of_class = _names_a_class(words) or _is_ours(words) or _is_class_with_aside(text) or _is_a_coloured_room(text)
    if of_class and not _is_beside_a_name(text) and not _tells_of_a_child(text):
        return message("roster.heading_class")
    if not ROLLS.isdisjoint((first, " ".join(words[:2]), " ".join(words[:3]))):
        return message("roster.heading_class")
    if first in PHONES and rest and not any(map(is_letter, "".join(rest))):
        return message("roster.heading_label")
    if _PAGE.search(" ".join(words)) or _SLIDE.fullmatch(" ".join(words)):
        return message("roster.page_number")
    if first in HEADING_WORDS and (not rest or _opens_heading(rest[0]) or _counts_who_is_here(words)):
        return message("roster.heading_word", word=first)
    if ":" in rest and _is_label(" ".join(words[: words.index(":")]), text):
        return message("roster.heading_label")
    return None


def _is_marked_otherwise(first: str, text: str) -> bool:
    """Say whether a first word has a mark that no total has, and an initial behind it: ``Totál B.``."""
    typed = strip_numbering(text).rstrip("* ").split() if first in TOTALS else []
    return len(typed) == _FEW and not typed[0].isascii() and typed[1][0].isupper() and (
        INITIALLED.fullmatch(" ".join(typed)) is not None)


def _counts_who_is_here(words: list[str]) -> bool:
    """Say whether words are a total of who came and how many: ``Total present: 24``, ``Totale presenti 12``."""
    said = [word for word in words[1:] if any(map(is_letter, word)) and word not in OF_THE]
    return words[0] in TOTALS and bool(said) and STATES.issuperset(said) and any(map(str.isdigit, words))


def _reason_by_words(words: list[str], text: str) -> Message | None:
    """Say why a line is about the class by all of its words."""
    first, rest = words[0].strip(".,!"), words[1:]
    ends = first in ENDS and bool(rest) and all(word in OF_THE | LISTS for word in rest)
    days = _is_date(words) or is_a_date(text) or _is_day(text) or _are_days(text) or _is_month(first, rest)
    days = days or is_of_birthdays(text)
    dated = ends or days or _is_of_class_words(text)
    several = sum(any(map(str.isalnum, word)) for word in text.split()) > 1
    named = _opens_with_a_marked_name(text) or _is_a_name_with_figures(first, rest)
    screen = (several or not is_known(first)) and _is_of_a_screen(words)
    if dated or (not named and (screen or (several and all(map(is_heading_word, words))))):
        return message("roster.heading_only")
    if "," not in text and is_of_a_day(strip_numbering(text)):
        return message("roster.sentence")
    printed = first in PRINTED and (_ends(rest) if not is_given(first) else _is_dated_print(rest))
    return message("roster.heading_remark") if printed else None


def _is_of_a_screen(words: list[str]) -> bool:
    """Say whether words are buttons or the menu of a page: ``Save   Cancel``, ``Showing 1–5 of 5``."""
    of = OF_THE | {"von", "sur", "su"} if any(map(str.isdigit, "".join(words))) else frozenset[str]()
    return not ON_SCREENS.isdisjoint(words) and all(
        word in ON_SCREENS or word in of or is_heading_word(word) for word in words)


def _words(text: str) -> list[str]:
    """Return the folded words of a line, colons apart, without its number and without signs in front of it."""
    words = fold(strip_numbering(text)).replace(":", " : ").split()
    first = (at for at, word in enumerate(words) if any(map(str.isalnum, word)) or word in ":-–—")
    return words[next(first, len(words) - 1):] if words else words


def _opens_with_a_marked_name(text: str) -> bool:
    """Say whether a given name stands first whose marks a word of ours has not: ``Åge (5)``."""
    word = strip_numbering(text).split()[0]
    return is_given(word) and word.casefold() != fold(word)


def _is_a_name_with_figures(first: str, rest: list[str]) -> bool:
    """Say whether figures stand behind a given name that is a title, too: ``Buddy 5``, ``Rut (4)``, ``Rut #19``."""
    aged = len(rest) == 1 and _IN_BRACKETS.fullmatch(rest[0]) is not None and first in HEADER_WORDS
    numbered = first == "rut" and sum(map(str.isdigit, "".join(rest))) <= _MOST_OF_A_NUMBER
    return (first in _TITLES_ONLY or aged or numbered) and is_given(first) and not any(map(is_letter, "".join(rest)))


@keeps_names(1024)
def _is_said_to_be_a_name(text: str) -> bool:
    label = NAME_LABEL.match(text)
    return label is not None and any(map(is_letter, text[label.end() :]))


@keeps_names(1024)
def perhaps_heading(text: str) -> Message | None:
    """Say that a line may be about the class, where words speak for it and no name that is known against it.

    A school year, a word for a class in front (``Aula Girasoles``), or one word and an adult behind a dash
    (``Bluebirds - Ms. Ferrow``). ``heading_reason`` comes first.
    """
    bare = _without_aside(text)
    words = fold(strip_numbering(bare)).split()
    if not words or "," in bare:
        return None
    named = len(words) == 1 and words[0] in HEADING_WORDS and is_given(words[0])
    if named or (len(words) == 1 and words[0] in DAY_WORDS and may_be_a_child(bare)):  # Gita is a trip, and a girl
        return _perhaps(text)
    rest = strip_numbering(bare).split()[1:]  # Dia do desporto, and Dia is a girl
    if words[0] == "dia" and not begins_small(bare) and _is_of_what(rest):
        return _perhaps(text)
    if _is_said_of_a_place(text):
        return _perhaps(text)
    label = _LABEL.match(strip_numbering(text))
    if label and is_of_a_day(label[1]) and begins_small(strip_numbering(text)[label.end() :]):  # Lunch: pizza
        return _perhaps(text)
    told = not is_given(words[0]) or words[0] in ("ok", "okay")
    if len(words) > _LONGEST_CLASS and told and not CHILDREN.isdisjoint(words):  # ok here r my kids
        return _perhaps(text)
    if len(words) == _FEW and is_given(words[0]) and words[1] in OVER_NAMES:  # Violet Club
        return _perhaps(text)
    if len(words) == _FEW and words[0] in BESIDE_CLASS and is_given(words[0]) and len(words[1]) == 1:  # Prima A
        return _perhaps(text)
    if _LETTERED_CLASS.fullmatch(text.strip()) and (
            text.strip().startswith("K-") or not lean(text.strip().partition("-")[2]) > 0):  # K-Vale; no J-Marie
        return _perhaps(text)
    typed = strip_numbering(text).split()
    if 1 < len(typed) <= _LONGEST_CLASS and (
            (typed[-1] in _OF_NAMES and typed[-1].islower()) or (words[0] in _OF_NAMES and not is_given(words[0]))):
        return _perhaps(text)  # Valentine names
    if _may_be_a_room(words) and (not is_known(words[0]) or _is_led(text)):
        return _perhaps(text)
    if may_greet(words) or (len(words) == _FEW and asks_kindly(words[1]) and not is_given(words[0])):
        return _perhaps(text)
    if may_be_a_cry(text):
        return _perhaps(text)
    if _ADDRESSED.match(text) and len(words) > 1:
        return _perhaps(text)
    asked = before_a_request(text) if asks_kindly(fold(text)) else None
    if asked and not any(map(is_known, asked.split())) and not INITIALLED.fullmatch(strip_numbering(asked)):
        return _perhaps(text)
    if any(is_known(word) for word in words):
        return None
    if len(words) == _FEW and words[1] in DAYS:  # Swimming Tuesday
        return _perhaps(text)
    aside = fold(text[len(bare):].strip(" -–—|/,(")).split()
    led = len(words) == 1 and bool(aside) and aside[0].strip(".,") in TITLES
    return _perhaps(text) if led or _SCHOOL_YEAR.search(text) else None


def _is_of_what(words: list[str]) -> bool:
    """Say whether a small word of ours comes first and one that tells of what next: ``do desporto``, ``de la paz``."""
    first, rest = fold(words[0]) if words else "", [word for word in words[1:] if fold(word) not in OF_THE]
    return first in OF_THE and bool(rest) and all(map(begins_small, words))


def _perhaps(text: str) -> Message:
    return message("roster.perhaps_heading", words=text.strip()[:60])


def _without_aside(text: str) -> str:
    """Return a line without a school year, and without what stands behind a dash, in brackets, or an adult."""
    bare = _SCHOOL_YEAR.sub(" ", text).rstrip(" -–—,")
    match = _ASIDE.search(bare)
    if match and match["title"] and fold(match["title"]) not in ADULTS:
        return bare.strip()
    return " ".join((bare[: match.start()] if match else bare).split())


def _is_class_with_aside(text: str) -> bool:
    """Say whether a line names a class beside a school year or an adult: ``Alder Room 2026/27 - Ms. Ferrow``."""
    bare = _without_aside(text)
    words = _words(bare)
    if not words or ":" in text or "," in bare:
        return False
    if len(words) == 1 and is_compound(words[0]):
        return True
    if _is_led(text) and _may_be_a_room(words):
        return not is_known(words[0]) or not any(map(is_given, words[1:]))
    named = words[0] in CLASS_OPENINGS and len(words) > _FEW and words[1] in OF_THE
    return _names_a_class(words) or (named and not any(map(is_given, words[1:])))


def _may_be_a_room(words: list[str]) -> bool:
    """Say whether words open as the name of a room does, and not with a given name."""
    return opens_as_class(words[0]) and len(words) > 1 and not is_given(words[0])


def _is_led(text: str) -> bool:
    """Say whether an adult stands behind a sign: ``Sala Girasoles, maestra Irune``."""
    return any(fold(word) in ADULTS for word in SIGN.split(text)[1:] for word in word.split()[:1])


def _are_days(text: str) -> bool:
    """Say whether a line has nothing but days of the week, two or more: ``M/W/F``, ``Tue-Thu mornings``."""
    words = [fold(word) for word in text.split()]
    days = [part for word in words for part in _BETWEEN_DAYS.split(word) if part]
    letters = bool(_WEEK.fullmatch(text.strip().strip(":")))
    named = [] if ends_in_a_name(text) else [day for day in days if day in ANY_DAYS]
    return letters or (len(named) > 1 and len(words) < len(days) and all(
        day in ANY_DAYS or is_beside_class(day) for day in days))


def _is_day(text: str) -> bool:
    """Say whether a line is a day of the week and nothing but words of a date, and no name: ``Montag``."""
    words = [fold(word).strip(".,") for word in text.split()]
    if not all(word in _DATED or _COUNTED.fullmatch(word) for word in words) or ends_in_a_name(text):
        return False
    days = DAYS.intersection(words)
    return bool(days) and (any(map(_COUNTED.fullmatch, words)) or not any(map(is_given, days)))


def _is_of_class_words(text: str) -> bool:
    """Say whether a line has nothing but words of a class or a list: ``Infantil 5 años B``, ``5 ans``."""
    if _AGED.fullmatch(fold(text)):
        return True
    parts = map(fold, _BETWEEN.split(strip_numbering(text)))
    words = [word for part in parts if any(map(str.isalnum, word := _ELIDED.sub("", part).strip(".!?*")))]  # ⭐ Line
    if " ".join(words[:2]) in DATED_OPENINGS:
        return all(map(is_beside_class, words))
    if len(words) < _FEW or is_given(words[0]):
        return False
    named = any(word in HEADING_WORDS or word in LEVELS or is_compound(word) for word in words)
    return named and all(map(is_beside_class, words))


def _is_a_coloured_room(text: str) -> bool:
    """``Roter Tisch``, ``Red table 2``, ``Sala verde``: a word for a room or a group and a colour, in either order.

    In capitals both may be a child's names: ``Rosa Mesa``.
    """
    words = text.rstrip("0123456789 ").split()
    if len(words) != _FEW or not words[0][0].isupper():
        return False
    folded = {*map(fold, words)}
    if folded.isdisjoint(CLASS_OPENINGS | PLACES) or folded.isdisjoint(COLOURS | COLOUR_FORMS):
        return False
    return words[1].islower() or not all(map(is_known, words))


def _names_a_class(words: list[str]) -> bool:
    first, rest, last = words[0], words[1:], words[-1].strip(".,")
    owned = len(words) > 1 and words[-2].endswith(("'s", "’s", "s'", "s’"))
    if last in ("class", "roster", "students", "kindergarten") and owned:
        return True
    if first == "alle" and last in CHILDREN:  # Alle Kinder; as a name it has a family behind it
        return True
    if first == "the" and last in ("class", "room", "group"):
        return True
    of = ("list", "of", "roster", "de", "di", "der")
    if first in ("class", "classe", "klasse", "clase") and rest and rest[0] in of:
        return True
    place = (last in PLACES and not (is_given(first) and is_family(last))) or (
        last in OVER_NAMES and not is_known(last) and not lean(first) > 0)
    numbered = (first in CLASS_OPENINGS or first in LINES) and len(rest) == 1 and (last.isdigit() or (
        last in COLOURS and not is_given(first) and not is_given(last)))  # Mesa 2, Gruppe Blau
    if numbered or (first in ARTICLES and bool(rest) and all(word in CHILDREN for word in rest)):
        return True
    return bool(rest) and (place or first in ("escuela", "ciclo", "turno", "jardin"))


def is_placed(text: str) -> bool:
    """Say whether a place stands behind a sign, and before it what may be a name: ``Mira Vost – red table``."""
    match = _PLACED.fullmatch(strip_numbering(text))
    if not match or not {word.strip(".,") for word in fold(match["place"]).split()[-1:]} & PLACES:
        return False
    before = fold(match["name"]).replace(",", " ").split()
    return not any(is_beside_class(word) or word in PLACES or word in CLASS_OPENINGS or word in TITLES
                   for word in before)


def _tells_of_a_child(text: str) -> bool:
    """Say whether a line opens with a given name and goes on small: ``Ava starts Monday in the afternoon group``.

    What a whole name is said to be is no class, either: ``Mira V. = fish, costume from school``, ``Vost, Mira: fish``.
    """
    bare = strip_numbering(text)
    whole = _SAID_BY_COMMA.match(bare)
    if whole and (is_given(whole[1].split()[0]) or "," in bare[whole.end() :]) and is_titled(whole[1]):
        return not any(map(is_heading_word, map(fold, bare[: whole.end(1)].replace(",", " ").split())))
    said = _SAID.match(bare)
    if said and not _is_said_of_a_place(text) and begins_small(bare[said.end() :]) and (
            INITIALLED.fullmatch(said[1]) or (is_given(said[1].split()[0]) and len(said[1].split()) == _FEW)):
        return True
    if said and bare[said.end()] == "?" and len(said[1].split()) == _FEW and is_titled(said[1]):
        return not any(map(is_beside_class, map(fold, said[1].split())))  # nobody asks what a class is
    words = bare.split()
    return len(words) > _LONGEST_CLASS and lean(words[0]) > 0 and begins_small(words[1]) and (
        fold(words[1]) not in OF_THE)


def _is_said_of_a_place(text: str) -> bool:
    """Say whether small letters behind a sign tell what a place is: ``Art Room = our school``."""
    bare = strip_numbering(text)
    said = _SAID.match(bare)
    words = said[1].split() if said else []
    return said is not None and len(words) == _FEW and fold(words[-1]) in PLACES and begins_small(bare[said.end() :])


def _is_beside_a_name(text: str) -> bool:
    """Say whether a place is surely beside a name: an arrow points at it, or it is written small."""
    match = _PLACED.fullmatch(strip_numbering(text)) if is_placed(text) else None
    last = _LAST_SIGN.split(match["place"])[-1] if match else ""  # Vost, Mira – Bruder in der Schule
    kin = bool(last) and fold(last.split()[0]) in OTHER_PEOPLE - TEACHERS
    if _INITIALLED_CHILD.match(strip_numbering(text)) and not is_beside_class(fold(text.split()[0])):
        return True
    return match is not None and (bool(match["arrow"]) or begins_small(last) or kin)


def _is_ours(words: list[str]) -> bool:
    """``Unsere Klasse``, ``La nostra classe``, ``My kids``."""
    led = words[0] in ARTICLES
    own = [word.strip(".,!") for word in (words[1:] if led else words)]
    named = any(word.isalpha() for word in own[1:])
    ours = own and (own[0] in OUR or (led and own[0] in _MINE))
    return named and bool(ours) and all(map(is_heading_word, own[1:]))


def _is_label(label: str, text: str) -> bool:
    """Say whether the words before a colon are known, and label neither a name nor a number beside one."""
    if label in NUMBER_LABELS and len(text.split()) > 2:
        return False
    if label == "irma" and "\u00e3" not in text.lower().partition(":")[0]:  # a sister is an irmã
        return False
    role = HEADER_WORDS.get(label)
    if role is not None:
        return role is Role.OTHER
    if not any(map(str.isalpha, label.split())):  # 1st: counts
        return False
    return label in OTHER_PEOPLE or _is_of_a_leader(label) or all(map(is_heading_word, label.split()))


def _is_of_a_leader(label: str) -> bool:
    """Say whether a label is of an adult: ``Driver``, ``Moniteur du groupe``."""
    words = label.split()
    teaches = len(words) == 1 and label.endswith(_TEACHERS) and not is_known(label)  # Klassenlehrerin
    return label in LEADERS or teaches or (not LEADERS.isdisjoint(words) and all(
        word in LEADERS or word in OF_THE or word in BESIDE_CLASS or is_heading_word(word) for word in words))


def _is_date(words: list[str]) -> bool:
    """Say whether a line is a month or a season and a year."""
    return len(words) == 2 and words[0].strip(".,") in MONTHS | SEASONS and bool(re.fullmatch(r"\d{4}", words[1]))


def _is_month(first: str, rest: list[str]) -> bool:
    """Say whether a line is a month or a season alone that is no name: ``Settembre``."""
    return not rest and len(first) > _FEW + 1 and first in MONTHS | SEASONS and not is_given(first)


def _ends(rest: list[str]) -> bool:
    """Say whether a sign, figures or a small word stand behind the first word; ``Criado Elm,Sara`` is a name."""
    return not rest or not rest[0].replace(",", "").isalpha() or rest[0] in _AFTER_PRINTED


def _is_dated_print(rest: list[str]) -> bool:
    """Say whether small words and a date stand behind a word that is a name, too: ``Édité le 03/09/2026``."""
    return len(rest) > 1 and rest[0] in _AFTER_PRINTED and all(any(map(str.isdigit, word)) for word in rest[1:])


def _opens_heading(word: str) -> bool:
    return (
        not word[0].isalpha() or len(word) == 1 or word in HEADING_WORDS or word.strip(".,") in TITLES
        or any(map(str.isdigit, word))
    )
