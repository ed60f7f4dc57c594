"""Several children in one line: told apart where that is sure, asked about where it is not, never made into one.

It is sure where every part opens with a known given name and nothing can be read as a family name before a comma.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import OPENING_PARTICLES, PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import INITIALLED, is_abbreviation, is_word_about, strip_numbering
from namewright.roster.capitals import is_small_word
from namewright.roster.care_words import CARE
from namewright.roster.commas import BRACKETS, COMMA, mask
from namewright.roster.group_lines import is_count
from namewright.roster.heading_words import CHILDREN, HEADING_WORDS, OPENERS, OUR, PLACES
from namewright.roster.known import is_double, is_family, is_given, is_known, lean, opens_with_given
from namewright.roster.liked import are_told_of
from namewright.roster.name_order import family_standing_first
from namewright.roster.vocabulary import (
    AND,
    ANY_DAYS,
    DOUBLE_STARTERS,
    GOES_BY_OPENINGS,
    HANDS,
    STATES,
    SUFFIXES,
    fold,
)
from namewright.store import keeps_names

_SIGNS = pattern(rf"\s*[;/&+|•·]\s*|\s+(?:{AND})\s+")
_AND_FAMILY = pattern(r"\s(?:y|e)\s+([^\s,;/]+)")
DASH = pattern(r"\s+[-–—]\s+")
_LABEL = pattern(r"([^:,;/&]{2,30}):\s+(?=\S)", needs=":")
_LONG_LABEL = pattern(r"([^:;/&]{2,60}):\s+(?=\S)", needs=":")
_BRACKETED_LABEL = pattern(r"([^:,;&+()]{2,40}\([^()]*\))\s+(?=[^\W\d_])", needs="(")
_PARTING = pattern("[,;，、]")
_BETWEEN_DAYS = pattern(r"[\s/()]+")
_DASHED_LABEL = pattern(r"([^:,;/&]{2,30}?)\s+[-–—]\s+(?=\S)")
_TIME = pattern(r"^\s*\d{1,2}[:.h]\d\d(?:\s?(?:Uhr|h|[AaPp][Mm]))?\s+")
ARROW = pattern(r"\s*(?:→|⇒|->|=>)\s*", needs="→⇒>")
_HEADS = HEADING_WORDS | PLACES | CHILDREN
_MAX_WORDS = 5
_ROW = 4
_MANY = 6
_TRIPLE = 3
_INSIDE = str.maketrans("", "", "-'’ʼ")
_MOSTLY = 0.6
_FEW_FAMILIES = 4
_SHORT = 3  # letters of a small word inside a name
_SIZE = 2  # letters of one, as of a shirt: XL


class Several(NamedTuple):
    """The parts of a line, a name each; not ``sure`` where it may be one child after all. ``label`` heads them."""

    parts: tuple[str, ...]
    sure: bool
    label: str = ""


def are_groups(lines: Sequence[str]) -> bool:
    """Say whether every line of a list has a label and names behind it, three on one of them; what counts has none."""
    lines = [line for line in lines if not is_count(line)]
    found = [(text, _label_of(text)) for text in map(strip_numbering, lines)]
    behind = [text[label.end() :] if label else "" for text, label in found]
    if len(lines) < 2 or not all(behind):
        return False
    named = not any(label and fold(label[1]) not in STATES and opens_with_given(label[1]) for _, label in found)
    told = [COMMA.split(text) for text in behind]
    if are_told_of([label[1] for _, label in found if label], told):
        return False
    parts = [part for some in told for part in some]
    sure = named and all(map(may_be_a_name, parts)) and all(map(is_titled_name, parts))
    return max(text.count(",") for text in behind) >= (1 if sure else 2)


def _label_of(text: str) -> re.Match[str] | None:
    """Return what heads a line with names behind a colon or a bracket: few words, or more where one is small."""
    if label := _LABEL.match(text):
        return label
    if (label := bracketed_label(text)) and ("/" not in label[1] or _names_days(label[1])):
        return label  # else the slash may part two children
    label = _LONG_LABEL.match(text)
    phrase = label and any(word.islower() and word not in PARTICLES for word in label[1].split())
    return label if phrase else None


def bracketed_label(text: str) -> re.Match[str] | None:
    """Return what heads a line and ends in brackets, opens with no given name and has a list behind it.

    ``Music (Tue) Mia, Leo``.
    """
    label = _BRACKETED_LABEL.match(text)
    return label if label and not opens_with_given(label[1]) and _PARTING.search(text, label.end()) else None


def _names_days(label: str) -> bool:
    """Say whether a label names a day of the week: ``Mon/Wed (3 pm)``."""
    return not ANY_DAYS.isdisjoint(_BETWEEN_DAYS.split(fold(label)))


def is_titled_name(part: str) -> bool:
    """Say whether no word but a short one inside is written small; some scripts have no capitals."""
    first, *rest = BRACKETS.sub(" ", part).split() or [part]
    return not begins_small(first) and all(not begins_small(word) or len(word) <= _SHORT for word in rest)


@keeps_names(1024)
def several_in(
    line: str, *, family_first: bool, alone: bool, givens: bool = False, grouped: bool = False
) -> Several | None:
    """Return the children of a line, None where it is one child or none.

    ``family_first`` says that the list writes ``Family, Given``, ``alone`` that the line is all there is, ``givens``
    that it is a list of given names alone, ``grouped`` that each line has a label and names behind it.
    """
    text = ARROW.split(strip_numbering(_TIME.sub("", line)), maxsplit=1)[0]
    label = _label_of(text)
    if label is None and (dashed := _DASHED_LABEL.match(text)) and not _HEADS.isdisjoint(fold(dashed[1]).split()):
        label = dashed
    if label and (found := _behind_label(text, label, grouped=grouped)):
        return found
    masked = mask(text)
    if not _SIGNS.search(masked) and not COMMA.search(masked):
        return _by_dash(text, masked) or _in_a_row(text.split(), alone=alone)
    spans = _spans(masked, re.compile(f"{COMMA.pattern}|{_SIGNS.pattern}"))
    parts = [text[start:end].strip() for start, end in spans if text[start:end].strip()]
    if parts and is_given(parts[-1]) and len(parts[-1]) > _SHORT:  # Mia, Leo and Ava.
        parts[-1] = parts[-1].rstrip(".")
    if len(parts) < 2 or not all(map(may_be_a_name, parts)) or _go_on_small(parts):
        return None if family_first or not _open_with_givens(parts) else Several(tuple(parts), False)
    if _is_led_to(parts[0].split()):
        return Several(tuple(parts), False)
    if not parts[0].islower() and any(_is_aside(part, parts[0]) for part in parts[1:]):
        return None  # Katie Moss, asma
    if _SIGNS.search(masked):
        return (family_first and _of_one_family(text, masked)) or _by_signs(parts, masked, family_first=family_first)
    if givens and all(" " not in part for part in parts):
        return Several(tuple(parts), all(map(is_given, parts)))
    return _by_commas(parts, family_first=family_first, alone=alone)


def _is_led_to(words: Sequence[str]) -> bool:
    """Say whether words of a sentence lead to the first name: ``In der Bauecke sind Mira``."""
    small = any(map(is_small_word, words[1:-1]))
    opened = len(words) > 1 and fold(words[0]) in OPENERS and begins_small(words[1])
    titled = not begins_small(words[0]) and not begins_small(words[-1])
    return small and titled and (opened or not is_known(words[0]))


def _behind_label(text: str, label: re.Match[str], *, grouped: bool) -> Several | None:
    """Return the children behind what heads a line; None where that is about a child or there are no names."""
    rest, head = text[label.end() :], f"{label[1]}:"
    words = fold(BRACKETS.sub("", label[1])).split() or [""]
    ours = len(words) > 1 and words[0] in OUR  # Meine Kinder
    cared = all(word in CARE and not is_given(word) for word in words)  # Allergies: Mira (nuts), Tilo (eggs)
    about = is_word_about(words[-1]) and not (grouped or ours or cared or words[-1] in CHILDREN)
    if about or fold(label[1]) in GOES_BY_OPENINGS:
        return None
    found = several_in(rest, family_first=False, alone=True)
    if found and not found.label:
        heads = not _HEADS.isdisjoint(words) and len(found.parts) >= _TRIPLE
        child = lean(words[0]) > 0 and not ours and fold(label[1]) not in STATES and _HEADS.isdisjoint(words)
        sure = (found.sure and not child) or ((heads or grouped) and all(map(str.istitle, found.parts)))
        return Several(found.parts, sure, head)
    if COMMA.search(rest):
        if grouped or not _HEADS.isdisjoint(fold(label[1]).split()[-1:]):
            names = tuple(COMMA.split(rest))
            return Several(names, grouped and all(map(str.istitle, names)), head)
    elif grouped and may_be_a_name(rest):
        return Several((rest.strip(),), True, head)
    if not opens_with_given(label[1]) and (names := _names_behind(rest)):
        return Several(names, False, head)
    return None


def _open_with_givens(parts: Sequence[str]) -> bool:
    """Say whether the first two parts and another open with a given name: ``Mia, Leo, Ava has a cold, Bo``."""
    first, second, *others = [lean(part.split()[0]) > 0 and not begins_small(part) for part in (*parts, "-", "-")]
    return first and second and any(others)


def _is_aside(part: str, name: str) -> bool:
    """Say whether small letters behind a name are health and care, or behind a given name no name: ``Mira, grapes``."""
    if not part.islower() or not begins_small(part):
        return False
    return fold(part) in CARE or (lean(name.split()[0]) > 0 and not any(map(is_known, part.split())))


def _of_one_family(text: str, masked: str) -> Several | None:
    """``Rowan, Oliver/Ollie`` in a list of ``Family, Given``: two of a family, or two names of one: asked."""
    family, comma, _ = masked.partition(",")
    if not comma or ";" in masked or "," in masked[len(family) + 1 :] or _SIGNS.search(family):
        return None
    behind = text[len(family) + 1 :]
    givens = [behind[start:end].strip() for start, end in _spans(masked[len(family) + 1 :], _SIGNS)]
    if len(givens) < 2 or not all(given and " " not in given for given in givens):
        return None
    return Several(tuple(f"{text[: len(family)].strip()}, {given}" for given in givens), False)


def _names_behind(text: str) -> tuple[str, ...]:
    """Return the parts behind a label, between commas, where each may be a name with capitals; else nothing."""
    parts = tuple(part for part in COMMA.split(text) if part)
    return parts if len(parts) > 1 and all(map(may_be_a_name, parts)) and all(map(is_titled_name, parts)) else ()


def several_in_group(cell: str) -> Several | None:
    """Return the children of a cell that holds a group; None where it has no comma or holds something else."""
    parts = [part for part in COMMA.split(cell) if part] if cell == mask(cell) else []
    if len(parts) < 2 or not all(map(may_be_a_name, parts)):
        return None
    return Several(tuple(parts), all(map(str.istitle, parts)))


def _spans(masked: str, pattern: re.Pattern[str]) -> list[tuple[int, int]]:
    at, spans = 0, []
    for match in pattern.finditer(masked):
        spans.append((at, match.start()))
        at = match.end()
    return [*spans, (at, len(masked))]


def may_be_a_name(part: str) -> bool:
    """Say whether a part may be a name: letters, few words, no figure, nothing about the child."""
    words = BRACKETS.sub(" ", part).split()
    return (0 < len(words) <= _MAX_WORDS and not any(char.isdigit() or char == "@" for char in " ".join(words))
            and any(map(is_letter, part)) and fold(words[0]) not in SUFFIXES
            and not (fold(part) in HANDS and len(part) > 1) and not _is_about(words)
            and (len(words) == 1 or fold(words[0]) not in GOES_BY_OPENINGS)  # Nick alone is a child
            and fold(" ".join(words[:2])) not in GOES_BY_OPENINGS - {fold(words[0])})


def _go_on_small(parts: Sequence[str]) -> bool:
    """Say whether a part behind a capital goes on in small letters with no name: ``Mira is new and likes trucks``."""
    return not begins_small(parts[0]) and any(
        begins_small(part) and part.split()[0] not in PARTICLES and not opens_with_given(part) for part in parts[1:])


def _is_about(words: Sequence[str]) -> bool:
    """Say whether words are a remark: one of them is a word about a child, and they open with no given name."""
    small = words[0].islower() and begins_small(words[0]) and len(words) > 1 and words[0] not in PARTICLES
    told = [word for word in words if not (len(word.rstrip(".")) == 1 and word.isupper())]  # Mia V, Ben M.
    return small or (any(map(is_word_about, told)) and not (is_given(words[0]) and len(told) < 2))


def _lead(part: str) -> int:
    return lean(part.split()[0])


def _by_signs(parts: list[str], masked: str, *, family_first: bool) -> Several | None:
    """Judge parts between signs or “and”; ``Ruiz y Gómez`` may be one family name."""
    if ";" in masked and (turned := _family_first_in(masked, parts, family_first=family_first)):
        return turned
    words = [part.split() for part in parts]
    before, _, _ = masked.rpartition(",")
    joined = _AND_FAMILY.findall(before or masked)  # by y or e, as two family names are
    row = len(parts) > _TRIPLE or (len(parts) == _TRIPLE and bool(before) and not joined)  # a, b and c
    if family_first and masked.count(",") == 1 and joined and len(_SIGNS.findall(masked)) == len(joined):
        return None  # Kipsang y Mumbi, Faraja
    if not row and (len(words[0]) > 1 or before) and any(not is_given(word) for word in joined):
        return None
    if "&" in masked and len(words[-1]) > 1 and all(len(each) == 1 for each in words[:-1]):  # Mia & Leo Chen
        family = " ".join(words[-1][1:])
        parts = [*(f"{part} {family}" for part in parts[:-1]), parts[-1]]
    some = any(lean(each[0]) > 0 for each in words) or all(len(each) > 1 for each in words)
    known = some and all(is_given(each[0]) for each in words) and not _is_one_loud(parts)
    return Several(tuple(parts), known or _are_names_by_shape(parts))


def _is_one_loud(parts: Sequence[str]) -> bool:
    """Say whether a part is in capitals where others are not: ``Katie Moss / PEG``."""
    loud = [part.isupper() and len(part) > 1 for part in parts]
    return any(loud) and not all(loud)


def _by_commas(parts: list[str], *, family_first: bool, alone: bool) -> Several | None:
    if len(parts) == 2:
        written_so = family_first and _may_be_families(parts[0].split())  # Cano Gil, María Reyes
        if not alone and not written_so and (
                _are_of_a_family(parts) or _are_two_wholes(parts[0].split(), parts[1].split())):
            return Several(tuple(parts), False)
        if family_first and fold(parts[1]) in CARE and " " in parts[0] and _lead(parts[0]) > 0:
            return Several(tuple(parts), False)  # Nuria Peral, Asma: a word of health that is a name, too
        return None if family_first else _two_by_comma(parts[0], parts[1], alone=alone)
    sizes = {len(BRACKETS.sub(" ", part).split()) for part in parts}
    given = sum(opens_with_given(part) for part in parts)
    families = sum(_lead(part) < 0 for part in parts)
    if all(map(INITIALLED.fullmatch, parts)):
        return Several(tuple(parts), True)
    if _are_of_a_family(parts):
        return Several(tuple(parts), False)
    if len(parts) == _TRIPLE and (_lead(parts[0]) < 0 or (len(sizes) > 1 and given < _TRIPLE)):
        return None  # Family, Given, and what cannot be placed
    if given >= _MOSTLY * len(parts) and _FEW_FAMILIES * families <= len(parts):
        return Several(tuple(parts), True)
    if len(parts) >= _MANY and len(sizes) == 1 and _are_names_by_shape(parts):
        return Several(tuple(parts), True)
    return Several(tuple(parts), False) if len(sizes) == 1 or given >= 2 or len(parts) > _TRIPLE else None


def _are_of_a_family(parts: Sequence[str]) -> bool:
    """Say whether whole names end alike: ``Mia Vost, Jana Vost`` may be a child and her mother."""
    words = [part.split() for part in parts]
    return all(len(each) > 1 for each in words) and len({fold(each[-1]) for each in words}) == 1


def _may_be_families(words: Sequence[str]) -> bool:
    """Say whether words may be family names alone, and one is most often: ``Gil Toro``, ``Cano Gil``."""
    return lean(words[0]) < 0 or (all(map(is_family, words)) and any(lean(word) < 0 for word in words))


def _are_two_wholes(first: Sequence[str], second: Sequence[str]) -> bool:
    """Say whether a whole name stands on each side of a comma: behind it a given name, then one that is a family's."""
    return (len(first) > 1 and len(second) == 2 and is_family(second[1]) and lean(second[1]) <= 0
            and (is_given(second[0]) or not is_known(second[0])))


def _are_names_by_shape(parts: Sequence[str]) -> bool:
    """Say whether parts that are on no list can be nothing but names: whole ones, or many, all with capitals."""
    words = [BRACKETS.sub(" ", part).split() for part in parts]
    titled = all(opens_as_a_name(word) or word.lower() in PARTICLES for each in words for word in each)
    whole = all(1 < len(each) <= _TRIPLE for each in words)
    return titled and (whole or len(parts) >= _MANY)


def _family_first_in(masked: str, parts: list[str], *, family_first: bool) -> Several | None:
    """``Chen, Mia; Park, Leo``: family and given name by comma, children by semicolon.

    Each is written as its list writes names, for it is read again: in a list of given names a comma parts two.
    """
    pairs = [[part.strip() for part in COMMA.split(some)] for some in masked.split(";") if some.strip()]
    if len(pairs) < 2 or any(len(pair) != 2 or "" in pair for pair in pairs) or len(parts) != 2 * len(pairs):
        return None
    if sum(_lead(one) > 0 and _lead(two) > 0 for one, two in pairs) * 2 > len(pairs):
        return None
    turned = zip(parts[::2], parts[1::2], strict=True)
    return Several(tuple(f"{one}, {two}" if family_first else f"{two} {one}" for one, two in turned), True)


def _two_by_comma(one: str, two: str, *, alone: bool) -> Several | None:
    """Judge a line with one comma, in a list that does not write ``Family, Given``."""
    first, second = (BRACKETS.sub(" ", part).split() or [part] for part in (one, two))
    sure, unsure = Several((one, two), True), Several((one, two), False)
    opens, follows = lean(first[0]), lean(second[0])
    if fold(second[-1]) in SUFFIXES or first[0].lower() in PARTICLES:
        return None
    if opens <= 0:  # what stands before the comma may be a family name
        on_no_list = opens == 0 and not is_given(first[0]) and not is_given(second[0])
        alike = len(first) == len(second) <= _TRIPLE and two.istitle()
        whole = opens == 0 and len(first) > 1 < len(second) <= _TRIPLE and is_titled_name(two)
        single = on_no_list and len(first) == len(second) == 1 and two.istitle()  # Xuwen, Tarbo
        return unsure if single or (((on_no_list and alike) or whole) and not alone) else None
    if len(first) == 1 == len(second):  # Mia, Leo
        return sure if follows > 0 else unsure
    if len(first) > 1 < len(second):  # Mia Chen, Leo Park; María García, Ana Belén may be one child
        return (sure if lean(first[-1]) <= 0 else unsure) if follows > 0 else None
    return unsure if is_given(second[0]) else None


def _by_dash(text: str, masked: str) -> Several | None:
    """``Bo - Al`` may be two children; ``Mary - Kate`` is one name, and what is no name is a remark."""
    parts = [part.strip() for part in (text[start:end] for start, end in _spans(masked, DASH)) if part.strip()]
    if len(parts) < 2 or not all(map(may_be_a_name, parts)):
        return None
    words = [BRACKETS.sub(" ", part).split() for part in parts]
    if is_double(words[0][-1], words[1][0]) or (parts[-1].islower() and not parts[0].islower()):
        return None
    if len(parts[-1]) <= _SIZE and is_abbreviation(parts[-1], parts[0]):  # Mira – S
        return None
    if not all(is_given(each[0]) for each in words):
        alike = len({len(each) for each in words}) == 1 and len(words[0]) <= _TRIPLE
        titled = all(opens_as_a_name(word) for each in words for word in each)
        unlisted = not any(is_given(each[0]) for each in words) or all(len(each) == 1 for each in words)
        return Several(tuple(parts), False) if alike and titled and unlisted else None
    single = all(len(each) == 1 for each in words)
    sure = all(lean(each[0]) > 0 for each in words) and (
        (single and fold(parts[0]) not in DOUBLE_STARTERS) or all(len(each) > 1 for each in words))
    return Several(tuple(parts), sure)


def _in_a_row(words: list[str], *, alone: bool) -> Several | None:
    """``Mia Leo Noah Ava``: four given names or more and no family name."""
    if len(words) < _ROW or not all(word.translate(_INSIDE).isalpha() for word in words):
        return None
    if family_standing_first(words):
        return None
    if any(word.lower() in OPENING_PARTICLES for word in words):
        return Several(tuple(words), False) if len(words) > _MANY + _TRIPLE else None
    small = [word for word in words if begins_small(word) and word not in PARTICLES and not is_given(word)]
    if small and not all(map(begins_small, words)):
        return None  # a sentence
    given = sum(lean(word) > 0 for word in words)
    families = sum(lean(word) < 0 for word in words)
    if 4 * given < 3 * len(words) or (families and (families > 1 or len(words) < 2 * _MANY)):
        row = alone and all(map(opens_as_a_name, words)) and not lean(words[0]) > 0 > lean(words[-1])
        unsure = len(words) >= _MANY or row
        return Several(tuple(words), False) if unsure else None
    return Several(tuple(words), alone or len(words) >= _MANY)
