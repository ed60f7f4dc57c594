"""One name written out in a line or in a cell: which words are given, which family, what is no name.

Free text cannot be certain, so every reading that could be otherwise says in a note what was read as what.
The rules, in order, all common practice:

1. numbering, bullets and tick boxes in front are taken off; e-mails, dates, telephone numbers and any other
   word with a digit are left out;
2. a name in brackets or quotation marks is what the child goes by; a remark in brackets is left out;
3. ``Family, Given``: what stands before the comma is the family name, whole;
4. ``MOSS Katie``, ``Katie MOSS``: the words in capitals are the family name;
5. a known pair (Ana María, Mary Kate, Juan Carlos) or a devotion (María del Carmen) is one given name;
6. a particle (de la, van der …) or a family name common in Spanish as second word opens the family name, so
   Sofía García López has two family names; so have names that two given names of Spain or Portugal lead, or that are
   written with marks of Spanish or Portuguese;
7. Vietnamese, Chinese and Korean family names stand first where all other words are of that language, and in a list
   whose lines mostly have theirs first;
8. otherwise the first word is given, the last is family, and given names between are middle names, left out; what is
   known as no given name is kept with the family name.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.message import Message, message
from namewright.names.casing import begins_small, is_all_capitals
from namewright.names.particles import OPENING_PARTICLES, PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import (
    Reading,
    is_abbreviation,
    is_word_about,
    strip_numbering,
    take_beside,
    trim,
    without_said,
)
from namewright.roster.care_words import CARE
from namewright.roster.cut_short import written_out
from namewright.roster.heading_words import PLACES
from namewright.roster.known import (
    are_iberian,
    is_family,
    is_given,
    is_iberian,
    is_known,
    is_pair,
    lean,
    opens_with_given,
    with_openings,
)
from namewright.roster.name_order import (
    UNSAID,
    Habits,
    Order,
    are_both_families,
    family_standing_first,
    may_be_turned,
)
from namewright.roster.numbers import figure_inside
from namewright.roster.vocabulary import (
    ANY_DAYS,
    DEVOTIONS,
    DOUBLE_SECONDS,
    DOUBLE_STARTERS,
    HANDS,
    SPANISH_FAMILIES,
    SUFFIXES,
    fold,
)
from namewright.store import keeps_names

NAME_LABEL = pattern(
    r"^\s*(?:(?:student|child|pupil)(?:[’']s)? ?)?(?:name|student|child|pupil|nombre|alumn[oa]|nome|nom|pr[ée]nom|"
    r"vorname|kind|sch[üu]ler(?:in)?|[ée]l[èe]ve|enfant|alunn[oa]|bambin[oa]|alun[oa]|crian[çc]a)s? ?: *",
    re.IGNORECASE, needs=":")
"""The label of a form before its name; it is taken off like a number."""
_TWO_NAMES = pattern(r"^(?:[^()\[\]\"“–—→⇒>-]|(?<=\w)-(?=\w))*\w (?:&|\+|and) +\w")
SEVERAL = message("roster.several")
"""A line of several names: nobody can be made from it."""
_MOSTLY_GIVEN = (Order.MOSTLY_GIVEN, Order.ALWAYS_GIVEN)
_FEW_WORDS = 3  # of a family name before a comma
_SAINT = pattern(r"S(?:t|te|ta)\.")
_MARKS = frozenset("áéíóúñãõç")
_INITIALS = pattern(r"\.|(?:[^\W\d_]\.)+")


@keeps_names(1024)
def read_name(text: str, habits: Habits = UNSAID) -> Reading:
    """Read one whole name in free text, by the rules of this module; ``habits`` are those of the whole list."""
    typed = NAME_LABEL.sub("", strip_numbering(text)).replace(";", ",")
    if any(map(str.isdigit, typed)) and (spoilt := _spoilt_given(typed)):
        return Reading(notes=(spoilt,))
    bare, beside = without_said(*take_beside(typed))
    cells, beside = _without_last([cell for cell in map(trim, bare.split(",")) if cell], beside, habits)
    cells = _join_suffix(cells)
    if not cells:
        return _read_inside(beside)
    if _are_several(cells) or _TWO_NAMES.search(typed):
        return Reading(notes=(*beside.notes, SEVERAL))
    whole = len(cells) == 1
    out = written_out(tuple(cells[not whole].split(" ")), habits.plain, given=not whole)
    if out.asked:
        return Reading(notes=(*beside.notes, out.asked))
    words = list(out.words)
    split = _split_words(words, habits.order, out.least) if whole else _split_comma(cells, words, out.least, habits)
    split = split._replace(notes=split.notes + out.notes)
    if not split.family and (called := _called_and_family(split.given, beside.goes_by)):
        split, beside = split._replace(family=called[1]), beside._replace(goes_by=called[0])
    if not split.family and _stands_for_given(typed, beside.goes_by):
        split = Reading(beside.goes_by, split.given, notes=split.notes if whole and "," not in typed else ())
    return beside._replace(given=split.given, family=split.family, notes=beside.notes + split.notes)


def _called_and_family(given: str, called: str) -> tuple[str, str] | None:
    """Return what a child goes by and its family name, where that stands behind: ``Ethan called Lalla Piret``."""
    first, _, family = called.partition(" ")
    if " " in given or not family or " " in family or lean(family) > 0 or not (is_given(first) or is_family(family)):
        return None
    return first, family


def _without_last(cells: list[str], beside: Reading, habits: Habits) -> tuple[list[str], Reading]:
    """Return the parts between commas without the last ones that tell a hand or a remark, and what they told."""
    while len(cells) > 1:
        *before, last = cells
        if len(fold(last)) > 1 and fold(last) in HANDS:
            beside = beside._replace(hand=HANDS[fold(last)])
        elif habits.family_by_comma and (state := _state_behind(last)):
            before.append(last[: -len(state)].rstrip())
            beside = beside._replace(notes=(*beside.notes, message("roster.remark", words=state)))
        elif _is_remark(cells, habits):
            beside = beside._replace(notes=(*beside.notes, message("roster.remark", words=last[:60])))
        else:
            break
        cells = before
    return cells, beside


def _spoilt_given(typed: str) -> Message | None:
    """Return what is asked where a figure stands in a given name: the first word, or the one behind a comma."""
    before, _, behind = typed.partition(",")
    return figure_inside(behind if behind.strip() and len(before.split()) <= _FEW_WORDS else before)


def _read_inside(beside: Reading) -> Reading:
    """Read a name that stands whole in quotation marks or brackets: it is no name to go by."""
    inside = read_name(beside.goes_by) if " " in beside.goes_by else beside
    return inside if inside is beside else inside._replace(hand=beside.hand, notes=beside.notes + inside.notes)


def _stands_for_given(typed: str, called: str) -> bool:
    """Say whether the name a child goes by stands in the place of a given name: ``“Will” Tarn``, ``Tarn, “Will”``."""
    if not called or called not in typed:
        return False
    before = typed[: typed.index(called)].rstrip(" \"“”„«([{（")
    return not any(map(str.isalnum, before)) or before.endswith(",")


def _is_remark(cells: Sequence[str], habits: Habits) -> bool:
    """Say whether words behind the last comma are about the child (``Katie Moss, K``) and no given name."""
    name, behind = cells[0], cells[-1]
    words = behind.split()
    if _is_small_care(words, name) or _has_words_about(words, name) or _is_a_place(words):
        return True
    if " " not in name or name.split()[0].lower() in PARTICLES:  # before the comma stands no whole name
        return len(cells) == 2 and _is_small_aside(words, name, habits)
    if _is_small_phrase(words, name):
        return True
    if is_abbreviation(behind, name) and (lean(name.split()[0]) > 0 or not habits.family_by_comma):
        return True
    return not is_given(words[0]) and (habits.remarks_by_comma or lean(name.split()[0]) > 0)


def _state_behind(behind: str) -> str:
    """Return the word behind a given name that tells of the child, in capitals or small: ``Moss, KATIE NEW``."""
    *given, last = behind.split()
    if not given or last.istitle() or not is_word_about(last) or is_given(last) or any(map(is_word_about, given)):
        return ""
    return last


def _is_small_care(words: Sequence[str], name: str) -> bool:
    """``Katie Moss, asma``: health and care in small letters."""
    return all(fold(word) in CARE and word.islower() for word in words) and not name.islower()


def _has_words_about(words: Sequence[str], name: str) -> bool:
    """``Katie Moss, bus 4``, ``Katie Moss, Mo Mi from 3/11``: a word about the child, or two days of the week."""
    known = is_given(words[0])
    if len(words) > 1 and all(fold(word) in ANY_DAYS for word in words[:2]):
        return True
    return any(map(is_word_about, words)) and (not known or (len(words) > 1 and " " in name))


def _is_small_aside(words: Sequence[str], name: str, habits: Habits) -> bool:
    """``Mira, no nuts``, ``Mira, grapes``: small letters behind a name with a capital, or what the whole list has."""
    if begins_small(name) or words[0] in PARTICLES:
        return False
    if habits.same_by_comma:
        return not is_given(words[0])
    if len(words) > 1:  # logopeda martes, though a family may be called so
        return all(map(begins_small, words)) and not is_given(words[0])
    unsaid = lean(name) == 0 and not is_known(name) and not habits.family_by_comma
    return begins_small(words[0]) and not is_known(words[0]) and (lean(name) > 0 or unsaid)


def _is_a_place(words: Sequence[str]) -> bool:
    """``Katie Moss, green table``: words for where a child sits."""
    return len(words) > 1 and fold(words[-1]) in PLACES and not is_given(words[0])


def _is_small_phrase(words: Sequence[str], name: str) -> bool:
    """``Katie Moss, wears braces``: words in small letters."""
    return words[0].islower() and not name.islower() and (
        len(words) > 1 or not all(map(is_given, words[0].split("-"))) or opens_with_given(name))


def _join_suffix(cells: list[str]) -> list[str]:
    """Put Jr. or III behind the family name, whichever side of a comma it stands on."""
    if len(cells) > 1 and fold(cells[-1]) in SUFFIXES:
        return [f"{cells[0]} {_suffix(cells[-1])}", *cells[1:-1]]
    given = cells[-1].split(" ") if len(cells) > 1 else []
    if len(given) > 1 and fold(given[-1]) in SUFFIXES:
        return [f"{cells[0]} {_suffix(given[-1])}", *cells[1:-1], " ".join(given[:-1])]
    return cells


def _suffix(word: str) -> str:
    return word.upper() if fold(word).strip("i") in ("", "v") else word


def _are_several(cells: list[str]) -> bool:
    """Say whether cells are one child each: three or more of one word, or three or more of as many words."""
    sizes = {len(cell.split(" ")) for cell in cells}
    return len(cells) > 2 and len(sizes) == 1 and sizes <= {1, 2, 3}


def _split_comma(cells: list[str], rest: list[str], least: int, habits: Habits) -> Reading:
    """``Family, Given Middle``; a third cell cannot be placed and is left out, with a note."""
    family, size = cells[0], max(least, _given_size(rest))
    notes = [message("roster.second_comma", words=", ".join(cells[2:])[:60])] * (len(cells) > 2)
    if size < len(rest) or not _is_clear(family.split(" ")[0], rest[0], habits):
        notes.append(_read_by_comma(" ".join(rest[:size]), family, " ".join(rest[size:])))
    return Reading(" ".join(rest[:size]), family, notes=tuple(notes))


def _is_clear(family: str, given: str, habits: Habits) -> bool:
    """Say whether the comma of ``Family, Given`` needs no word: the lists of names or the other lines say the same."""
    if is_given(family):  # two given names by a comma may be two children
        return lean(family) < 0
    return lean(family) < 0 or habits.family_by_comma or is_given(given)


def _split_words(words: list[str], order: Order, least: int = 1) -> Reading:
    """Split a name without a comma; so many words at least are given names."""
    words = with_openings(words) if len(words) > 2 else words  # of two the first may be a given name: MC Donald
    if len(words) == 1:
        return Reading(words[0])
    tail = [_suffix(words.pop())] if len(words) > 1 and fold(words[-1]) in SUFFIXES else []
    if len(words) == 1:
        return Reading(words[0], notes=(message("roster.suffix", word=tail[0]),))
    shouted = _split_capitals(words)
    turned = None if shouted or tail else _turned(words, order)
    if turned:
        return turned
    if shouted:
        given, middle, family = shouted
    else:
        size = max(least, _given_size(words))
        at = _family_start(words, size)
        given, middle, family = words[:size], words[size:at], words[at:]
    reading = Reading(" ".join(given), " ".join(family + tail))
    loud = {is_all_capitals(word) and not _INITIALS.fullmatch(word) for word in words}
    certain = len(words) == 2 and len(given) == 1 and not shouted and len(loud) == 1 and order is not Order.FAMILY
    if certain:
        return reading
    return reading._replace(notes=(_read_as(reading.given, reading.family, " ".join(middle)),))


def _turned(words: list[str], order: Order) -> Reading | None:
    """Read a name whose family name stands first, by the order of the list or by the language of the name itself."""
    given_first = order is Order.GIVEN or (order in _MOSTLY_GIVEN and may_be_turned(words)) or (
        order is Order.ALWAYS_GIVEN and are_both_families(words))
    found = None if given_first else family_standing_first(words)
    straight = len(words) == 2 and lean(words[0]) > 0 > lean(words[1])  # no family called Chloé has a child Dubois
    if found is None and order is Order.FAMILY and not straight:
        at = _family_end(words)
        end = at + _given_size(words[at:])
        found = " ".join(words[at:end]), " ".join(words[end:]), " ".join(words[:at])
    if found is None:
        return None
    given, middle, family = found
    notes = (message("roster.middle", name=middle),) if middle else ()
    return Reading(given, family, notes=(message("roster.family_stands_first", given=given, family=family), *notes))


def _family_end(words: Sequence[str]) -> int:
    """Return where a family name ends that stands first: its particles, its first word, more that are known as such."""
    at, last = next((at for at, word in enumerate(words[:-1]) if word.lower() not in PARTICLES), 0) + 1, len(words) - 1
    while at < last and (lean(words[at]) < 0 or (is_given(words[last]) and not is_given(words[at]))):
        at += 1
    return at


def _split_capitals(words: list[str]) -> tuple[list[str], list[str], list[str]] | None:
    """Take a run of words in capitals at one end, one of them three letters or more, as the family name."""
    loud = [is_all_capitals(word) and not _INITIALS.fullmatch(word) for word in words]
    if all(loud) or not any(loud):
        return None
    head = loud.index(False)
    tail = len(loud) - loud[::-1].index(False)
    if any(len(word) > 2 for word in words[:head]):
        return words[head:], [], words[:head]
    if any(len(word) > 2 for word in words[tail:]):
        return words[:1], words[1:tail], words[tail:]
    return None


def _given_size(words: list[str]) -> int:
    """Count the words of the given name at the front: one, initials (A. J.), a known pair, or a devotion."""
    initials = next((at for at, word in enumerate(words) if not _is_initial(word)), len(words))
    if 1 < initials < len(words):
        return initials
    folded = [fold(word) for word in words[:5]]
    if len(words) > 1 and _SAINT.fullmatch(words[0]):  # St. John Vost
        return 2
    if len(words) > 1 and (is_pair(words[0], words[1]) or are_iberian(words[0], words[1], words[2:])):
        return 2
    if len(folded) > 2 and folded[0] == "gian" and lean(words[1]) > 0:  # no Italian is called Gian alone
        return 2
    if len(folded) < 2 or folded[0] not in DOUBLE_STARTERS:
        return 1
    at = 1
    while at < len(folded) and folded[at] in ("de", "del", "la", "los", "las"):
        at += 1
    if at > 1 and at < len(folded) and folded[at] in DEVOTIONS:
        return at + 1
    return 2 if folded[1] in DOUBLE_SECONDS else 1


def _is_initial(word: str) -> bool:
    return len(word) == 2 and word[1] == "." and word[0].isupper()


def _family_start(words: list[str], size: int) -> int:
    """Find the index at which the family name opens, ``len(words)`` if there is none."""
    last = len(words) - 1
    if size > last:
        return len(words)
    if _has_two_families(words, size):
        return size
    for at in range(size, last):
        if words[at].lower().strip(".") in OPENING_PARTICLES:
            return at
        if _is_spanish_family(words[at]):
            return at
    if last > size and words[last - 1].lower() in PARTICLES:
        return last - 1
    return next((at for at in range(size, last) if not _may_be_middle(words[at])), last)


def _may_be_middle(word: str) -> bool:
    """Say whether a word behind the given name may be a second one: else it is kept, as part of the family name."""
    return is_given(word) or len(word.strip(".")) == 1


def _has_two_families(words: list[str], size: int) -> bool:
    """Say whether two words behind a given name of Spain, Portugal or the Americas are both family names.

    The name must say so: two given names in front, a first family name that is known as one, or marks of Spanish.
    """
    if len(words) != size + 2 or not is_iberian(words[:size]) or is_given(words[size]):
        return False
    return size > 1 or lean(words[size]) < 0 or any(char in _MARKS for word in words for char in word.lower())


def _is_spanish_family(word: str) -> bool:
    folded = fold(word)
    return folded in SPANISH_FAMILIES or (len(folded) > 4 and folded.endswith("ez"))


def _read_by_comma(given: str, family: str, middle: str) -> Message:
    """Return the same where the family name stands before a comma already."""
    if middle:
        return message("roster.comma_with_middle", given=given, middle=middle, family=family)
    return message("roster.read_by_comma", given=given, family=family)


def _read_as(given: str, family: str, middle: str) -> Message:
    """Return the note that tells what was read as what."""
    if middle:
        return message("roster.read_with_middle", given=given, middle=middle, family=family)
    return message("roster.read", given=given, family=family) if family else message("roster.read_given", given=given)
