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
   Sofía García López has two family names;
7. otherwise the first word is given, the last is family, and what stands between is a middle name, left out.
"""

from __future__ import annotations

from dataclasses import replace

from namewright.names.beside import Reading, strip_numbering, take_beside, trim
from namewright.names.casing import is_all_capitals
from namewright.names.words import (
    DEVOTIONS,
    DOUBLE_SECONDS,
    DOUBLE_STARTERS,
    HANDS,
    OPENING_PARTICLES,
    PARTICLES,
    SPANISH_FAMILIES,
    SUFFIXES,
    fold,
)


def read_name(text: str) -> Reading:
    """Read one whole name in free text, by the rules of this module."""
    bare, beside = take_beside(strip_numbering(text))
    cells = [cell.strip() for cell in bare.split(",")]
    cells = [cell for cell in map(trim, cells) if cell]
    if len(cells) > 1 and len(fold(cells[-1])) > 1 and fold(cells[-1]) in HANDS:
        beside = replace(beside, hand=HANDS[fold(cells.pop())])
    if len(cells) > 1 and fold(cells[-1]) in SUFFIXES:
        cells[-2:] = [f"{cells[-2]} {cells[-1]}"] if len(cells) == 2 else [cells[-2]]
    if not cells:
        return beside
    if len(cells) > 2 and all(" " not in cell for cell in cells):
        several = "It holds several names with commas between them; write one name on each line."
        return Reading(notes=(*beside.notes, several))
    split = _split_words(cells[0].split(" ")) if len(cells) == 1 else _split_comma(cells)
    return replace(beside, given=split.given, family=split.family, notes=beside.notes + split.notes)


def _split_comma(cells: list[str]) -> Reading:
    """``Family, Given Middle``; a third cell cannot be placed and is left out, with a note."""
    family, rest = cells[0], cells[1].split(" ")
    size = _given_size(rest)
    notes = [f"Left out: “{', '.join(cells[2:])[:60]}”, after the second comma."] * (len(cells) > 2)
    if size < len(rest):
        notes.append(_said(" ".join(rest[:size]), family, " ".join(rest[size:])))
    return Reading(" ".join(rest[:size]), family, notes=tuple(notes))


def _split_words(words: list[str]) -> Reading:
    """Split a name without a comma."""
    if len(words) == 1:
        return Reading(words[0])
    tail = [words.pop()] if len(words) > 2 and fold(words[-1]) in SUFFIXES else []
    shouted = _split_capitals(words)
    if shouted:
        given, middle, family = shouted
    else:
        size = _given_size(words)
        at = _family_start(words, size)
        given, middle, family = words[:size], words[size:at], words[at:]
    reading = Reading(" ".join(given), " ".join(family + tail))
    certain = len(words) == 2 and len(given) == 1 and not shouted
    if certain:
        return reading
    return replace(reading, notes=(_said(reading.given, reading.family, " ".join(middle)),))


def _split_capitals(words: list[str]) -> tuple[list[str], list[str], list[str]] | None:
    """Take a run of words in capitals at one end, one of them three letters or more, as the family name."""
    loud = [is_all_capitals(word) and word.strip(".") != "" for word in words]
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
    for at in range(size, last):
        if words[at].lower().strip(".") in OPENING_PARTICLES:
            return at
        if _is_spanish_family(words[at]):
            return at
    return last - 1 if last > size and words[last - 1].lower() in PARTICLES else last


def _is_spanish_family(word: str) -> bool:
    folded = fold(word)
    return folded in SPANISH_FAMILIES or (len(folded) > 4 and folded.endswith("ez"))


def _said(given: str, family: str, middle: str) -> str:
    """Say what was read as what, and how to mend it."""
    parts = [f"“{given}” as given name"]
    if middle:
        parts.append(f"“{middle}” as middle name (left out)")
    parts.append(f"“{family}” as family name" if family else "no family name")
    return f"Read {', '.join(parts)}; to change this, write “Family, Given” or use columns."
