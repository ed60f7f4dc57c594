"""The group of each child beside its name: ``Rob A. · Red group``, ``Mesa 2 - Leo``, ``Blue – Mia``, ``Reed, Ruta 4``.

A group is a word for one with a number, a letter or a colour, or a colour alone; on nearly all lines it stands on the
same side of a sign, and one name stands on the other. Then the group comes off. So does a birthday in words behind its
label, ``DOB 7th of June = Mia``, and its month. Out of scope: several children behind a group (``labelled_groups``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.class_words import is_compound
from namewright.roster.heading_words import CLASS_OPENINGS, COLOURS, HEADING_WORDS, LINES, PLACES
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_known
from namewright.roster.no_names import is_no_name, says_nobody
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.vocabulary import ADULTS, GROUPS, MONTHS, OF_THE, STREETS, TITLES, fold, word_set
from namewright.store import keeps_names

_SIGN = r"(?:\s*(?P<comma>,)\s+|\s?:\s+|\s+[-–—=·•]\s+|\s*(?:\.{3,}|…+|(?:\.\s){3,}|·{2,}|_{3,})\s*)"
SIGNS = (", ", ":", " - ", " – ", " — ", " = ", "·", "•", "...", "…", ". . .", "___")
_FIRST = pattern(rf"(?P<group>[^,;:&+/|]{{2,40}}?){_SIGN}(?P<name>\S[^,;:&+/|]*)")
_LAST = pattern(rf"(?P<name>[^,;:&+/|]+?(?:, [^,;:&+/|]+?)?){_SIGN}(?P<group>[^,;:&+/|]{{2,40}})")
_COUNT = pattern(r"[0-9]{1,2}[a-h]?|[a-h]|[ivx]{1,4}|n[°ºr]|no|#[0-9]{1,2}")
_ORDINAL = pattern(r"[0-9]{1,2}(?:st|nd|rd|th|er|[.ºª°])?|20[0-9]{2}|[0-9]{1,2}[./-][0-9]{1,2}(?:[./-][0-9]{2,4})?")
_WORDS = frozenset(("bus", "isla", "ilha", "isola", "insel", "kreis", "linie", "linea", "carpet")).union(
    GROUPS, LINES, PLACES, CLASS_OPENINGS)
_SHADES = COLOURS | word_set("""
    roja, rojas, amarilla, amarillas, blanca, blancas, morada, moradas, negra, negras, verte, vertes, bleue, bleues,
    blanche, blanches, noire, noires, violette, violettes, rossa, rosse, gialla, gialle, bianca, bianco, bianche, nera,
    nero, vermelha, vermelhas, amarela, amarelas, roxa, roxas, branca, branco, preta, preto, lilas, turkis,
    turquoise, turquesa""")
"""Colours as they stand beside a word for a group, where Blanca is no child."""
_NAMES_TOO = word_set("""
    green, brown, white, black, gray, grey, rose, rosa, rossi, rosso, verdi, bianca, blanca, blanc, blanco, noir, viola,
    violet, lila, pink""")
"""Colours that families or children have: alone they tell no group."""
_GERMAN = ("e", "er", "es", "en")
_BORN = word_set("""
    dob, born, birthday, bday, birthdate, geboren, geb, geburtstag, ne, nee, naissance, anniversaire, nacido, nacida,
    nacimiento, cumpleanos, cumple, nato, nata, nascita, compleanno, nascido, nascida, nascimento, aniversario""")
_MOST_WORDS, _LONGEST = 5, 120
_MOST_OF_A_GROUP, _MOST_OF_A_DATE = 3, 8
_FEW, _NEARLY_ALL = 2, 0.8


class _Parted(NamedTuple):
    """The name and the group of a line, if a comma parts them, and if the group is a colour or a month alone."""

    name: str
    group: str
    comma: bool
    coloured: bool


def without_groups_beside(lines: Sequence[Line]) -> list[Line]:
    """Return the names alone where nearly all lines have their group on the same side of a sign."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    for parted in (_group_first, _group_last):
        found = {at: one for at in filled if (one := parted(lines[at].text))}
        if found and _are_told(found, filled):
            return [line.without(found[at].group, found[at].name) if at in found else line
                    for at, line in enumerate(lines)]
    return list(lines)


def _are_told(found: dict[int, _Parted], filled: Sequence[int]) -> bool:
    """Say whether nearly all lines from the first on have a group, under one title at most, and one child each.

    Brown and Green are families, too, so one colour or month at least must be no name; a comma beside colours needs
    all lines, and that they come again or are written small.
    """
    some = list(found.values())
    groups = [fold(one.group) for one in some]
    below = sum(at >= min(found) for at in filled)
    if len(some) < max(_FEW, _NEARLY_ALL * below) or len(filled) - below > 1:
        return False
    again = len(set(groups)) < len(groups)
    if not again and any(len(one.name.split()) > 1 and all(map(is_given, one.name.split())) for one in some):
        return False  # Table 1: Mia Leo
    coloured = [one for one in some if one.coloured]
    if coloured and all(_may_be_a_name(one.group) for one in coloured):
        return False
    small = all(begins_small(one.group) for one in coloured) or all(fold(one.group) in MONTHS for one in coloured)
    return not any(one.comma for one in coloured) or ((again or small) and len(some) == below)


def _may_be_a_name(group: str) -> bool:
    """Say whether a colour or a month is a name as well: ``Brown``, ``April``; in small letters none is."""
    folded = fold(group)
    return not begins_small(group) and (folded in _NAMES_TOO if folded in COLOURS else is_known(group))


@keeps_names(1024)
def _group_first(text: str) -> _Parted | None:
    return _parted(text, first=True)


@keeps_names(1024)
def _group_last(text: str) -> _Parted | None:
    return _parted(text, first=False)


def _parted(text: str, *, first: bool) -> _Parted | None:
    """Return the group and the name of a line, None where there is no group or anything but a name beside it."""
    if len(text) > _LONGEST or any(sign in text for sign in COLUMN_SIGNS):
        return None
    match = (_FIRST if first else _LAST).fullmatch(strip_numbering(text).strip())
    if match is None:
        return None
    group = match["group"].strip()
    told = _is_a_group(group) or (first and (_is_a_birthday(group) or _is_a_month(group)))
    if not told or not _may_be_one_child(match["name"]):
        return None
    return _Parted(match["name"], group, bool(match["comma"]), " " not in group and not is_compound(fold(group)))


@keeps_names(1024)
def _is_a_group(text: str) -> bool:
    """Say whether words are a group: ``Mesa 2``, ``Rote Gruppe``, ``Bus A``, ``Blau``, ``Bärengruppe``."""
    words = [fold(word).strip(".") for word in text.split()]
    if len(words) == 1:
        return words[0] in COLOURS or is_compound(words[0])
    if not 1 < len(words) <= _MOST_OF_A_GROUP:
        return False
    for word, others in ((words[0], words[1:]), (words[-1], words[:-1])):
        if word in _WORDS and all(_COUNT.fullmatch(other) or _is_a_colour(other) for other in others):
            return True
    return len(words) == _MOST_OF_A_GROUP and words[0] in HEADING_WORDS and _is_a_group(" ".join(words[1:]))


def _is_a_colour(word: str) -> bool:
    return word in _SHADES or any(word.endswith(end) and word.removesuffix(end) in COLOURS for end in _GERMAN)


def _is_a_birthday(text: str) -> bool:
    """Say whether words are a label of birthdays and a date: ``DOB 7th of June``."""
    label, *words = [fold(word).strip(".,") for word in text.split()]
    dated = [word for word in words if word in MONTHS or _ORDINAL.fullmatch(word)]
    return label in _BORN and bool(dated) and len(words) <= _MOST_OF_A_DATE and all(
        word in dated or word in OF_THE or word in ("le", "el", "il", "am", "on", "em", "en") for word in words)


def _is_a_month(text: str) -> bool:
    """Say whether a word is the month of a birthday; Marco is one only where it is written Março."""
    return fold(text) in MONTHS and text.lower() != "marco"


def _may_be_one_child(text: str) -> bool:
    """Say whether words may be the name of a child, and are no grown-up, place, group or word of lists."""
    words = text.replace(",", " ").split()
    first = fold(words[0]).strip(".") if words else ""
    if not 0 < len(words) <= _MOST_WORDS or any(map(str.isdigit, text)) or not any(map(is_letter, text)):
        return False
    if first in TITLES or first in ADULTS or any(fold(word) in STREETS for word in words[1:]):
        return False
    return not (is_no_name(words[0]) or says_nobody(text) or _is_a_group(text) or heading_reason(text))
