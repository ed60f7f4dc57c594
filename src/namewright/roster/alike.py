"""What many lines of a list say beside their names, and say alike: it tells no child from another, so it is no name.

A label with a number in front (``Row 1: Mia``, ``Peg 4 – Leo``), a label of its own on every line (``Line leader:
Mia``), an answer behind (``Mia – yes``), the quotation marks of a program. Out of scope: tables with columns.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from string import ascii_lowercase

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.date_lines import is_a_date
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import PLACES
from namewright.roster.known import is_given, is_known, lean, opens_with_given
from namewright.roster.labelled import Labelled, labelled
from namewright.roster.labelled_groups import is_of_a_group_or_job
from namewright.roster.marks import opens_with_days
from namewright.roster.no_names import opens_a_line
from namewright.roster.pasted import CHAT, Line
from namewright.roster.remarks import parted_tail, signs_of_remarks
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import ANY_DAYS, DATES, HANDS, SUFFIXES, fold
from namewright.store import keeps_names

_MOSTLY, _HALF = 0.6, 0.5
_CLEARLY = 0.3  # by how much more of one side than of the other are given names
_MOST_ROUNDS = 3
_PART_AND_PART = 2  # words of a whole name
_FEW = 3  # lines that say the same tell something
_TAIL_SHARE = {",": 0.3}
_USUAL_SHARE = 0.15  # of the lines; a name may stand behind a comma
_NUMBERED_LABEL = pattern(
    r"\s*([^\W\d_]{2,20})\s*(?:no\.|nr\.|n[º°]|[#№])?\s*"
    r"(?:\d{1,3}\s*(?:[:.)–—-]\s*|\s)|[a-h]\s*[:–—-]\s)(?=\S*[^\W\d_])", re.IGNORECASE)
_OPENING = pattern(r"\s*([^\W\d_]+)\s+(?:(?:to|for|of|à|de|da|do|di|von|für|an|a|per|para)\s+)?(?=[^\W\d_])")
_COUNTED = pattern(r"\s*([IVXLlioOSsZB|\d]{1,6})(\s?[.,):])?\s+(?=[^\W\d_])")
_LETTERED = pattern(r"\s*([A-Za-z])[.)]\s+(?=[^\W\d_])")
_LOOK_ALIKE = str.maketrans("IliOo|SsZB", "1110015528")
_ROMAN = pattern(r"X{0,3}(?:IX|IV|V?I{0,3})")
_ROMAN_DIGITS = {"I": 1, "V": 5, "X": 10}
_LONGEST = 200  # characters of a line that is looked at: a longer one is a text
_OF_A_PROGRAM = pattern(r"""\s*(?:"([^"]+)"|'((?:[^']|(?<=\w)'(?=\w))+)'),?\s*""", needs="\"'")  # 'Clare O'Quill'
_BETWEEN_QUOTED = pattern(r"""["']\s*,\s*["']""")


def without_shared(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without what they say alike; each tells what was taken from it."""
    found = list(lines)
    for _ in range(_MOST_ROUNDS):  # behind what several say there may be more of it: “– at home: Arabic”
        before = found
        found = _without_labels(_without_numbered_labels(without_counts(_without_openings(found))))
        found = _without_tails(_without_small_tails(found))
        if found == before:
            break
    return found


def from_a_program(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the quotation marks and brackets that a program writes about each name."""
    lines = [line if part == line.text else line._replace(text=part) for line in lines for part in _array(line.text)]
    quoted = [_OF_A_PROGRAM.fullmatch(line.text) if len(line.text) < _LONGEST else None for line in lines]
    if sum(map(bool, quoted)) < max(_FEW, _MOSTLY * _filled(lines)):
        return lines
    return [line._replace(text=match[1] or match[2]) if match else line
            for line, match in zip(lines, quoted, strict=True)]


def _array(text: str) -> list[str]:
    """Return the names of ``["Mia", "Leo"]``, else the text as it is."""
    bare = text.strip().rstrip(",;")
    quote = bare[1:].lstrip()[:1]
    if not (bare.startswith("[") and bare.endswith("]") and quote in ('"', "'") and bare[:-1].rstrip().endswith(quote)):
        return [text]
    return _BETWEEN_QUOTED.split(bare[1:-1].strip().strip(quote))


def _filled(lines: Iterable[Line]) -> int:
    return sum(bool(line.text.strip()) for line in lines)


def without_counts(lines: Sequence[Line]) -> list[Line]:
    """Take Roman numbers off, and those that a reader of print took for letters, where they count the lines.

    Now and then a number may be missing.
    """
    if lettered := _without_letters(lines):
        return lettered
    expected, found = 1, {}
    for at, line in enumerate(lines):
        match = _COUNTED.match(line.text[:_LONGEST])
        if match and (value := next((one for one in (expected, expected + 1) if one in _values(match[1])), 0)):
            found[at], expected = match, value + 1
        elif match and match[1].isdigit():
            expected = int(match[1]) + 1
    plain = not any(match[2] or not match[1].isdigit() for match in found.values())  # such numbers stand as typed
    if plain or len(found) < max(_FEW, _MOSTLY * _filled(lines)):
        return list(lines)
    return [line._replace(text=line.text[found[at].end() :]) if at in found else line
            for at, line in enumerate(lines)]


def _without_letters(lines: Sequence[Line]) -> list[Line]:
    """Take off the letters that count all lines from A on: ``A. Mira Vost``, ``b) Bo Tarn``; nothing where none do."""
    filled = [line for line in lines if line.text.strip()]
    found = [_LETTERED.match(line.text[:_LONGEST]) for line in filled]
    letters = "".join(match[1].lower() for match in found if match)
    if len(letters) < max(_FEW, len(filled)) or letters != ascii_lowercase[: len(letters)]:
        return []
    return [line._replace(text=_LETTERED.sub("", line.text, count=1)) for line in lines]


def _values(sign: str) -> set[int]:
    """Return what a number may be: its figures, figures that were read as letters, or a Roman number."""
    figures = sign.translate(_LOOK_ALIKE)
    values = {int(figures)} if figures.isascii() and figures.isdigit() else set()
    if _ROMAN.fullmatch(sign):
        digits = [_ROMAN_DIGITS[char] for char in sign]
        values.add(sum(-one if one < two else one for one, two in zip(digits, [*digits[1:], 0], strict=True)))
    return values


def _without_numbered_labels(lines: Sequence[Line]) -> list[Line]:
    """Take ``Peg 4 –`` off where most lines begin with the same word and a number."""
    found = [_NUMBERED_LABEL.match(line.text[:_LONGEST]) for line in lines]
    counts = Counter(fold(match[1]) for match in found if match)
    word, count = counts.most_common(1)[0] if counts else ("", 0)
    if count < max(2, _MOSTLY * _filled(lines)):
        return list(lines)
    return [line.without(match[0], line.text[match.end() :]) if match and fold(match[1]) == word else line
            for line, match in zip(lines, found, strict=True)]


def _without_labels(lines: Sequence[Line]) -> list[Line]:
    """Take a label off every line that has one, where the names stand behind the labels."""
    found = [_label(line.text) for line in lines]
    pairs = [(label.bare, label.rest) for label in found if label]
    if len(pairs) < max(_FEW, _MOSTLY * _filled(lines)):
        return list(lines)
    dated = share(_names_a_day(label.label) for label in found if label) >= _MOSTLY
    if not _stand_behind(*zip(*pairs, strict=True), dated=dated):
        return list(lines)
    return [line.without(label.label, label.rest) if label else line for line, label in zip(lines, found, strict=True)]


def _label(text: str) -> Labelled | None:
    """Return what a line is labelled with; None where a comma parts a name in it, as in ``Vost, Mira: nuts``.

    One before small words does not: ``Back row, left to right:``.
    """
    label = labelled(strip_numbering(text))
    if label is None or ";" in label.bare:
        return None
    before, _, behind = (part.strip() for part in label.bare.partition(","))
    return label if not behind or (before and not begins_small(before) and begins_small(behind)) else None


def _names_a_day(label: str) -> bool:
    """Say whether a day of the week stands in a label: ``Chess (Mon)``."""
    return not ANY_DAYS.isdisjoint(fold(word.strip("()[],.")) for word in label.split()[1:])


def _stand_behind(before: Sequence[str], behind: Sequence[str], *, dated: bool) -> bool:
    """Say whether names stand behind labels, by what is known of names, repetition, days and capitals."""
    if any(NAME_LABEL.match(f"{label}:") for label in before) or any("," in name for name in behind):
        return False
    if share(map(_is_a_date, behind)) >= _MOSTLY:  # Xobrel – Mar 2/12: Mar may be a name, too
        return False
    one, two = (len(set(map(fold, side))) / len(side) for side in (before, behind))
    if one <= _CLEARLY < _MOSTLY < two:
        return True
    first, second = given_share(before), given_share(behind)
    if share(map(is_of_a_group_or_job, before)) >= _MOSTLY and all(map(is_titled, behind)) and first < _CLEARLY:
        return not any(map(_tells, behind))
    if (dated or _say_again(before)) and not _say_again(behind) and first < _CLEARLY:
        return all(map(is_titled, behind)) and not any(map(_tells, behind))
    if two <= _MOSTLY or share(map(_is_no_label, before)) >= _CLEARLY or share(map(_tells, behind)) >= _CLEARLY:
        return False
    if share(map(begins_small, behind)) > share(map(begins_small, before)):
        return False  # what is behind names is written small
    if second - first >= _CLEARLY or first >= _MOSTLY:
        return first < _MOSTLY  # else names stand on both sides
    capital = share(is_titled(text) and text[0].isupper() for text in before)
    return all(map(is_titled, behind)) and capital <= 1 - _CLEARLY


def _is_a_date(text: str) -> bool:
    """Say whether words are a day or a month and figures, or days that a child comes on."""
    dated = fold(text.split()[0]).strip(".,") in DATES and any(map(str.isdigit, text))
    return dated or is_a_date(text) or opens_with_days(text)


def _say_again(texts: Sequence[str]) -> bool:
    """Say whether the words of several texts are few that come again and again, be each text another one."""
    words = [fold(word) for text in texts for word in text.split()]
    return len(set(words)) <= _HALF * len(words)


def _tells(text: str) -> bool:
    """Say whether words behind a sign are about a child: ``ask mom``."""
    return any(map(is_word_about, text.split()))


def _is_no_label(text: str) -> bool:
    """Say whether words before a sign are a name and what is about the child: ``Mira Vost takes``."""
    words = text.split()
    parts = [word for word in words if fold(word) not in PARTICLES]  # “Chef de” is no whole name
    return is_word_about(words[-1]) or (len(parts) > _PART_AND_PART and is_titled(" ".join(parts[:_PART_AND_PART])))


def _without_openings(lines: Sequence[Line]) -> list[Line]:
    """Take off a word of lists that most lines open with, without a sign: ``Student Mira Vost``, ``Awarded to Bo``."""
    found = [_OPENING.match(line.text) if len(line.text) < _LONGEST else None for line in lines]
    counts = Counter(fold(match[1]) for match in found if match)
    often = max(_FEW, _MOSTLY * _filled(lines))
    shared = {word for word, count in counts.items() if count >= often and opens_a_line(word)}
    return [line.without(match[0], line.text[match.end() :]) if match and fold(match[1]) in shared else line
            for line, match in zip(lines, found, strict=True)]


def _without_small_tails(lines: Sequence[Line]) -> list[Line]:
    """Take off what several lines say in small letters behind a name: ``Mira is coming``, ``Tilo kommt mit``."""
    found = [_small_tail(line.text.strip()) if len(line.text) < _LONGEST else None for line in lines]
    counts = Counter(fold(tail[1]) for tail in found if tail)
    unknown = {fold(tail[1]) for tail in found if tail and not opens_with_given(tail[0])}
    names = sum(not line.text.endswith(":") for line in lines if line.text.strip())
    shared = {words for words, count in counts.items()
              if count >= max(_FEW, _USUAL_SHARE * names) or (count > 1 and words not in unknown)}
    return [line.without(tail[1], tail[0]) if tail and fold(tail[1]) in shared else line
            for line, tail in zip(lines, found, strict=True)]


@keeps_names(1024)
def _small_tail(text: str) -> tuple[str, str] | None:
    """Return what stands before the words in small letters that end a line, and these, where they are no name."""
    words = text.rstrip(" .!").split()
    at = len(words)
    while at > 1 and words[at - 1].isalpha() and begins_small(words[at - 1]) and fold(words[at - 1]) not in PARTICLES:
        at -= 1
    before, tail = words[:at], words[at:]
    if not tail or not before[-1][-1].isalpha() or not is_titled(" ".join(before)) or fold(" ".join(tail)) in HANDS:
        return None
    named = any(is_word_about(word) or is_known(word) for word in tail)
    titled = len(before) == 1 and fold(tail[-1]) in PLACES  # Red table
    return None if named or titled else (" ".join(before), " ".join(tail))


def _without_tails(lines: Sequence[Line]) -> list[Line]:
    """Take off what several lines say behind a name: ``– yes``, ``(she)``."""
    found = [parted_tail(line.text.strip()) if len(line.text) < _LONGEST and not _is_of_a_chat(line) else None
             for line in lines]
    counts = Counter(tail[1:] for tail in found if tail)
    size = _filled(lines)
    again = signs_of_remarks(found, size)
    shared = {(sign, words) for (sign, words), count in counts.items()
              if (sign in again and _is_no_name(words, count)) or (_is_answer(sign, words, count / size)
                  and count >= max(_FEW, _TAIL_SHARE.get(sign, _USUAL_SHARE) * size))}
    return [line.without(tail[2], tail[0]) if tail and tail[1:] in shared else line
            for line, tail in zip(lines, found, strict=True)]


def _is_of_a_chat(line: Line) -> bool:
    """Say whether a line is a message that names nobody, who sent it in front: a heading."""
    return CHAT in line.notes and line.text.endswith(":")


def _is_no_name(tail: str, count: int) -> bool:
    """Say whether words are no name, among few that come again: two children are hardly ever called alike."""
    return tail not in HANDS and tail not in SUFFIXES and (count > 1 or not is_given(tail.partition(" ")[0]))


def _is_answer(sign: str, tail: str, share: float) -> bool:
    """Say whether words behind several names are no name, no hand and no suffix."""
    if not tail or tail in HANDS or tail in SUFFIXES or not any(map(is_letter, tail)):
        return False
    return lean(tail.split()[0]) <= 0 or (sign != "," and share >= _CLEARLY)
