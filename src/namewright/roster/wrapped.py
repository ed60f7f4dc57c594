"""A paragraph whose lines a mail program or a page wrapped, put together again: names in a row, and a letter's words.

A line goes on where the first word of the next had no room behind it, and where the lines say so: by a comma or an
“and”, by words in small letters, or by halves of a name where all others are whole (``…, Ava⏎Tarn, …``). Where halves
may be two children, they are asked about. Lines that each stand for themselves are left as they are.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate, groupby, pairwise
from statistics import median_low

from namewright.message import message
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.free_text import SEVERAL
from namewright.roster.heading_words import ARTICLES, CHILDREN, HEADING_WORDS, LEVELS, OPENERS, TODAY
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_given_alone
from namewright.roster.names_in_text import EDGES, bare_word, names_in
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.rows import ONE_EACH
from namewright.roster.shares import are_most, share
from namewright.roster.unlike import is_closing
from namewright.roster.vocabulary import AND, AND_WORDS, DATES

_QUOTES = pattern(r"(?:\s?>)+\s?", needs=">")
PARTING = (",", ";", " / ", " • ")
"""Signs of which a paragraph has one that is put together."""
_PARTED = pattern(rf"[,;/•·]\s|\s(?:{AND}|&)\s")
_GOES_ON = pattern(rf"(?:[,;/&•·]|\s(?:{AND}))\s*$")
_OPENS_ON = pattern(rf"(?:{AND}|[&/])\s")
_ENDED = pattern(r"(?:[^\W\d_]{2,}|[\d)\]\"”»])[.!?:…]+[)\"”»]*\s*$")
_LABEL = pattern(r"[^,;:.!?]{1,40}:(?:\s|$)", needs=":")
_COLUMNS = pattern(r"[\t|]|\S {2,}\S|\S;\S|,[^\W\d_]")
_BESIDE = pattern(r"\s(?:[-–—=]|[-=]>|[→⇒])\s|:\s")
_NARROW, _NARROW_PROSE, _WIDE = 26, 40, 130  # characters of the longest line
_FULL = 0.85  # of the longest line: letters of print are not all as wide
_FEWEST = 3  # names in a row
_LONGEST_NAME, _TWO = 4, 2  # words
_MOSTLY, _HALF, _THIRD = 0.8, 0.5, 0.34
_SIGNS = frozenset("/&•·+")
_NO_TEXT = '"@<>'
_PAIR = 2  # lines
_NO_NAMES = DATES | CHILDREN | HEADING_WORDS | LEVELS | TODAY | {"jahr", "ano", "anno"}


def from_wrapped(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines, those of each wrapped paragraph as one, and the halves at its breaks that may be two."""
    text = "\n".join([line.text for line in lines])
    if not any(sign in text for sign in PARTING) or max(map(len, text.split("\n"))) < _NARROW:
        return lines, []
    quoted = [_QUOTES.match(line.text) for line in lines]
    bare = [line.text[sign.end() :] if sign else line.text for line, sign in zip(lines, quoted, strict=True)]
    kinds = [(sign and sign[0].strip(), bool(text.strip()) and not _COLUMNS.search(text.strip()))
             for sign, text in zip(quoted, bare, strict=True)]
    found: list[Line] = []
    asides: list[Aside] = []
    for (_, filled), places in groupby(range(len(lines)), key=kinds.__getitem__):
        run = [*places]
        for start, end in _blocks(bare[run[0] : run[-1] + 1]) if filled else [(0, len(run))]:
            some = lines[run[0] + start : run[0] + end]
            block = bare[run[0] + start : run[0] + end]
            joined, asked = _joined(block) if filled and len(some) > 1 else ("", ())
            if joined and _is_of_a_letter(joined, [text for text in bare if text not in block]):
                asides.append(Aside(some[0]._replace(text=joined), (message("roster.sentence"),)))
            else:
                found += [some[0]._replace(text=joined)] if joined else some
            asides += [Aside(some[0]._replace(text=each), (SEVERAL, ONE_EACH), asked=True) for each in asked]
    if len(found) == len(lines):
        return lines, []
    return [line._replace(text=_QUOTES.sub("", line.text, count=1)) if line.text.lstrip().startswith(">") else line
            for line in found], asides


def _is_of_a_letter(text: str, others: Sequence[str]) -> bool:
    """Say whether a paragraph that opens small beside lines that open as names do is a letter's and names nobody."""
    opening = [opens_as_a_name(bare) for each in others if any(map(is_letter, bare := strip_numbering(each)))]
    return _is_small(text.split()[0]) and are_most(opening, _MOSTLY, _FEWEST) and not any(
        is_given(name.words[0]) for name in names_in(text))


def _blocks(run: Sequence[str]) -> Iterator[tuple[int, int]]:
    """Yield where the paragraphs begin and end that may be wrapped, and each other line by itself.

    A line that is short, though nothing tells that it ends there, stands for itself: so do those beside it.
    """
    width, start = max(map(len, run)), 0
    closed = [_is_closed(left, right) for left, right in pairwise(run)]
    full = [is_full(left, right, width) for left, right in pairwise(run)]
    short = [len(left) for left, ends, fits in zip(run, closed, full, strict=False) if not ends and not fits]
    for at in range(1, len(run) + 1):
        if at == len(run) or closed[at - 1] or not full[at - 1]:
            rows = max(short, default=0) > _HALF * width or (short and at - start <= _PAIR)
            yield from [(each, each + 1) for each in range(start, at)] if rows else [(start, at)]
            start = at


def _is_closed(left: str, right: str) -> bool:
    """Say whether a line ends before the next: by its sentence, or because this has a sign, a label or signs it."""
    opening = right.strip()
    if _OPENS_ON.match(opening):
        return False
    label = _LABEL.match(opening) and not _is_of_a_sentence(left.split()[-1])
    sign = strip_numbering(right) != opening and not (opening[0] in _SIGNS and f" {opening[0]} " in left)
    return sign or bool(label or _ENDED.search(left)) or _is_signed(right)


def _is_signed(text: str) -> bool:
    """Say whether a line ends a letter, or is an adult's: ``Teacher, room 2``."""
    reason = heading_reason(text)
    return (reason is not None and reason.key == "roster.adult") or is_closing(text)


def is_full(left: str, right: str, width: int) -> bool:
    """Say whether the first word of the next line had no room: hardly any where only this tells that they are one."""
    size = len(left.rstrip()) + 1 + len(right.split()[0])
    told = _GOES_ON.search(left) or _OPENS_ON.match(right.strip()) or _is_small(left.split()[-1])
    return size > width * (_FULL if told else 1)


def _is_small(word: str) -> bool:
    letters = word.strip(EDGES)
    return bool(letters) and begins_small(letters)


def _joined(block: Sequence[str]) -> tuple[str, tuple[str, ...]]:
    """Return the lines of a block as one, empty where they are none, and the names at its breaks to be asked about."""
    words = [word for text in block for word in text.split()]
    small = share(_is_small(word) and word.lower() not in PARTICLES | AND_WORDS for word in words)
    if any(sign in word for word in words for sign in _NO_TEXT) or not _NARROW <= max(map(len, block)) <= _WIDE:
        return "", ()
    if (small >= _THIRD and _is_prose(block)) or _are_turned(" ".join(words)):
        return " ".join(words), ()
    return ("", ()) if any(map(_BESIDE.search, block[1:])) else _names(block, words)


def _is_prose(block: Sequence[str]) -> bool:
    """Say whether lines begin in the midst of a sentence, as those of a list do not, and all of them are full."""
    if max(map(len, block)) < _NARROW_PROSE:
        return False
    told = [_is_small(left.split()[-1]) or _is_small(right.split()[0]) or left[-1] == "," for left, right in
            pairwise(block)]
    inner = [_is_small(right.split()[0]) and _is_in_a_sentence(left.split(), right.split()[0])
             for left, right in pairwise(block)]
    alone = len(block) > _PAIR or block[0][-1] == "," or _is_small(block[0].split()[-1])
    return alone and all(told) and share(inner) >= _HALF


def _is_of_a_sentence(word: str) -> bool:
    return bare_word(word) in OPENERS | ARTICLES | AND_WORDS


def _is_in_a_sentence(left: Sequence[str], word: str) -> bool:
    """Say whether a small word goes on with a line, and is no name of a list without capitals."""
    return _is_of_a_sentence(left[-1]) or _is_of_a_sentence(word) or not (
        _is_small(left[0]) or is_given(word.strip(EDGES)))


def _are_turned(text: str) -> bool:
    """Say whether names stand in a row with the family's before a comma: ``Vost, Mia; Tarn, Leo; Berg, Ava``."""
    parts = [part for part in text.rstrip(" .;").split(";") if part.strip()]
    return len(parts) >= _FEWEST and all(part.count(",") == 1 and _are_of_a_name(_words(part)) for part in parts)


def _words(part: str) -> list[str]:
    return [word.strip(EDGES) for word in part.split()]


def _are_of_a_name(words: Sequence[str]) -> bool:
    return 0 < len(words) <= _LONGEST_NAME and all(map(_is_of_a_name, words))


def _names(block: Sequence[str], words: Sequence[str]) -> tuple[str, tuple[str, ...]]:
    """Return the lines with names in a row as one, and the halves at their ends that may be two children."""
    breaks = [*accumulate(len(text.split()) for text in block)][:-1]
    parts = _parts(words)
    signs = [len(_PARTED.findall(text.strip(" ,;/"))) for text in block]
    led = bool(parts) and (parts[0].start > 0 or any(word in AND_WORDS for word in words))
    if len(parts) < _FEWEST or (share(not count for count in signs) > _HALF and not led):
        return "", ()
    across = [(part, at) for part in parts for at in breaks if part.start < at < part.stop]
    inner = [len(part) for part in parts if not any(part.start < at < part.stop for at in breaks)]
    whole = bool(inner) and median_low(inner) > 1
    told = [at for at in breaks if not any(at == end for _, end in across) and _is_told(words, at, parts[0].start)]
    halves = [(part, at) for part, at in across if whole and _is_half(words, part, at)]
    if len(told) + len(halves) <= len(breaks) / 2 or (across and not whole) or ({*signs} == {1} and not led):
        return "", ()
    asked = [part for part, at in across if (part, at) not in halves or not _is_one(words, part, at, inner)]
    left = [word for at, word in enumerate(words) if not any(at in part for part in asked)]
    return " ".join(left), tuple(" ".join(_words(" ".join(words[part.start : part.stop]))) for part in asked)


def _parts(words: Sequence[str]) -> list[range]:
    """Return where names stand that follow each other, by the words of each: the longest such row."""
    found: list[range] = []
    row: list[range] = []
    for segment in _segments(words):
        name = _name_in(words, segment)
        row = [*row, name] if name == segment else [name] * bool(name)
        found = max(found, row, key=len)
    return found


def _segments(words: Sequence[str]) -> Iterator[range]:
    """Yield what stands between signs and words that part."""
    start = 0
    for at, word in enumerate(words):
        joins = word in AND_WORDS or word in _SIGNS
        if joins or word[-1] in ",;:" or _ENDED.search(word) or at == len(words) - 1:
            if (end := at if joins else at + 1) > start:
                yield range(start, end)
            start = at + 1


def _name_in(words: Sequence[str], segment: range) -> range:
    """Return where the name stands at the end of a segment, behind the words that lead to it; none in a label."""
    start = segment.stop
    while start > segment.start and _is_of_a_name(words[start - 1].strip(EDGES)):
        start -= 1
    led = start > segment.start
    while start < segment.stop and ((led and _is_small(words[start])) or bare_word(words[start]) in _NO_NAMES):
        start += 1
    return range(start, start if words[segment.stop - 1][-1] == ":" else segment.stop)


def _is_of_a_name(word: str) -> bool:
    return opens_as_a_name(word) or word.lower() in PARTICLES


def _is_told(words: Sequence[str], at: int, first: int) -> bool:
    """Say whether a sign or a small word tells that the words before and behind a line's end are one paragraph.

    Behind the first name only a word that joins or is of a name does: other words are said when the names are.
    """
    before, behind = words[at - 1], words[at]
    joins = any(word in _SIGNS or word in AND_WORDS or word in PARTICLES for word in (before, behind))
    return before[-1] in ",;:" or joins or (at <= first and (_is_small(before) or _is_small(behind)))


def _is_half(words: Sequence[str], part: range, at: int) -> bool:
    """Say whether a line ends within a name: a word of it stands alone before or behind, or a small word leads on."""
    return at - part.start == 1 or part.stop - at == 1 or not {words[at - 1], words[at]}.isdisjoint(PARTICLES)


def _is_one(words: Sequence[str], part: range, at: int, inner: Sequence[int]) -> bool:
    """Say whether what stands about a line's end is one name for sure: as long as others, and not two given ones."""
    name = [word.strip(EDGES) for word in words[part.start : part.stop]]
    if len(name) > max(inner) and PARTICLES.isdisjoint(name):
        return False
    return not (is_given(name[0]) and is_given_alone(words[at].strip(EDGES))) or len(name) > _TWO
