"""What many lines of a list say beside their names, and say alike: it tells no child from another, so it is no name.

A label with a number in front (``Row 1: Mia``, ``Peg 4 – Leo``), a label of its own on every line (``Line leader: Mia``),
an answer behind (``Mia – yes``), the quotation marks of a program. Out of scope: tables with columns.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.roster.beside import strip_numbering
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.known import is_given, lean
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import HANDS, SUFFIXES, fold

_MOSTLY = 0.6
_CLEARLY = 0.3  # by how much more of one side than of the other are given names
_FEW = 3  # lines that say the same tell something
_TAIL_SHARE = {",": 0.3}
_USUAL_SHARE = 0.15  # of the lines; a name may stand behind a comma
_NUMBERED_LABEL = re.compile(
    r"\s*([^\W\d_]{2,20})\s*(?:no\.|nr\.|n[º°]|[#№])?\s*\d{1,3}\s*(?:[:.)–—-]\s*|\s)(?=\S*[^\W\d_])", re.IGNORECASE)
_LABELLED = re.compile(r"([^:,;]{2,40}?)(?::\s+|\s+[-–—]\s+)(\S.*)")
_TAILS = (re.compile(r"(.*[^\W\d_].*?)(\s[-–—]|:|,)\s+([^,:()\[\]]{1,40})"),
          re.compile(r"(.*[^\W\d_].*?)\s*([(\[])([^()\[\]]{1,40})[)\]]"))
_OF_A_PROGRAM = re.compile(r"""\s*(?:"([^"]+)"|'([^']+)'),?\s*""")
_ARRAY = re.compile(r"""\s*\[\s*(["'])(.+)\1\s*,?\s*\]\s*[,;]?\s*""")


def without_shared(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without what they say alike; each tells what was taken from it."""
    return _without_tails(_without_labels(_without_numbered_labels(lines)))


def from_a_program(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the quotation marks and brackets that a program writes about each name."""
    arrays = [(line, _ARRAY.fullmatch(line.text)) for line in lines]
    lines = [replace(line, text=part) for line, array in arrays
             for part in (re.split(rf"{array[1]}\s*,\s*{array[1]}", array[2]) if array else (line.text,))]
    quoted = [_OF_A_PROGRAM.fullmatch(line.text) for line in lines]
    if sum(map(bool, quoted)) < max(_FEW, _MOSTLY * _filled(lines)):
        return lines
    return [replace(line, text=match[1] or match[2]) if match else line
            for line, match in zip(lines, quoted, strict=True)]


def _filled(lines: Iterable[Line]) -> int:
    return sum(bool(line.text.strip()) for line in lines)


def _taken(line: Line, text: str, words: str) -> Line:
    return replace(line, text=text, notes=(*line.notes, message("roster.remark", words=words.strip(" :–—-([")[:60])))


def _without_numbered_labels(lines: Sequence[Line]) -> list[Line]:
    """Take ``Peg 4 –`` off where most lines begin with the same word and a number."""
    found = [_NUMBERED_LABEL.match(line.text) for line in lines]
    counts = Counter(fold(match[1]) for match in found if match)
    word, count = counts.most_common(1)[0] if counts else ("", 0)
    if count < max(2, _MOSTLY * _filled(lines)):
        return list(lines)
    return [_taken(line, line.text[match.end() :], match[0]) if match and fold(match[1]) == word else line
            for line, match in zip(lines, found, strict=True)]


def _without_labels(lines: Sequence[Line]) -> list[Line]:
    """Take a label off every line that has one, where the names stand behind the labels."""
    found = [_LABELLED.fullmatch(strip_numbering(line.text)) for line in lines]
    pairs = [(match[1], match[2]) for match in found if match]
    if len(pairs) < max(_FEW, _MOSTLY * _filled(lines)) or not _stand_behind(*zip(*pairs, strict=True)):
        return list(lines)
    return [_taken(line, match[2], match[1]) if match else line for line, match in zip(lines, found, strict=True)]


def _stand_behind(before: Sequence[str], behind: Sequence[str]) -> bool:
    """Say whether names stand behind labels, by what is known of names, repetition and capitals."""
    if any(NAME_LABEL.match(f"{label}:") for label in before) or any("," in name for name in behind):
        return False
    one, two = (len(set(map(fold, side))) / len(side) for side in (before, behind))
    if one <= _CLEARLY < _MOSTLY < two:
        return True
    first, second = (_share(is_given(text.split()[0]) for text in side) for side in (before, behind))
    if second - first >= _CLEARLY or first >= _CLEARLY:
        return second - first >= _CLEARLY
    return two > _MOSTLY and all(map(_is_titled, behind)) and _share(map(_is_titled, before)) <= 1 - _CLEARLY


def _share(answers: Iterable[bool]) -> float:
    found = tuple(answers)
    return sum(found) / max(1, len(found))


def _is_titled(text: str) -> bool:
    """Say whether every word begins with a capital, as those of a name do."""
    return all(word[0].isupper() or fold(word) in PARTICLES for word in text.split())


def _without_tails(lines: Sequence[Line]) -> list[Line]:
    """Take off what several lines say behind a name: ``– yes``, ``(she)``."""
    found = [next((match for pattern in _TAILS if (match := pattern.fullmatch(line.text.rstrip()))), None)
             for line in lines]
    counts = Counter((match[2].strip(), fold(match[3])) for match in found if match)
    size = _filled(lines)
    shared = {tail for tail, count in counts.items()
              if count >= max(_FEW, _TAIL_SHARE.get(tail[0], _USUAL_SHARE) * size) and _is_answer(tail[1], count / size)}
    return [_taken(line, match[1], match[3]) if match and (match[2].strip(), fold(match[3])) in shared else line
            for line, match in zip(lines, found, strict=True)]


def _is_answer(tail: str, share: float) -> bool:
    """Say whether words behind several names are no name, no hand and no suffix."""
    if tail in HANDS or tail in SUFFIXES or not any(map(is_letter, tail)):
        return False
    return lean(tail.split()[0]) <= 0 or share >= _CLEARLY


