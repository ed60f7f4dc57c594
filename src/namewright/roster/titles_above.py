"""Titles over a list whose lines have a sign: bullets, numbers from one on, the comma of ``Family, Given``, columns.

Such a list is written one way all through, so a line over it without the sign is mostly about the class. It is a title
for sure where its words say so; what may be a name is asked about, and a known name over bullets or commas is a child:
the first sign of a list is easily lost in copying. A first line that stands apart over names with remarks is asked
about in the same way. Out of scope: lists without signs (``unlike``), titles of columns.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import pairwise

import unicodedata2

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import BULLETS, strip_numbering
from namewright.roster.capitals import is_small_word
from namewright.roster.care_words import CARE
from namewright.roster.class_words import opens_as_class
from namewright.roster.first_lines import first_lines
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import ARTICLES, HEADING_WORDS, LEVELS, LISTS, PLACES
from namewright.roster.headings import heading_reason
from namewright.roster.judge import ASIDE, is_title
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.name_order import BOTH_BY_COMMA
from namewright.roster.pasted import COLUMN_SIGNS
from namewright.roster.shares import share
from namewright.roster.vocabulary import ADULTS, AND_WORDS, ANY_DAYS, MONTHS, NUMBER_UNITS, OF_THE, SEASONS, fold

# No blank here is the end of a line: over many empty lines a search would begin at each and run through all others.
_SIGN = rf"[^\S\n]*(?:(?:[{BULLETS}]|\[[ xX]?\])[^\S\n]+(?=\S)|o[^\S\n]+(?=[^\W\d_a-z]))"
_COUNT = r"(?:>|[^\S\n])*[(#]?0{0,3}(\d{1,3})(?:[.):\s-]|$)"
_BULLET, _NUMBER = pattern(_SIGN), pattern(_COUNT)
_COUNTED_WORD = pattern(r"\s*([^\W\d_]{2,20})\.? ?(\d{1,3})\s*")
_SIGNED = pattern(rf"^(?:{_SIGN}|{_COUNT})|,", re.MULTILINE)
_ASIDE = pattern(r"\s[-–—|/]\s|[,:(\[]")
_LEADER = pattern(r"\s(?:/|=|->|→|\.{2,}|…)\s")
_LABEL_OF_AN_ADULT = pattern(rf"[\s,–—-](?:{'|'.join(map(re.escape, sorted(ADULTS)))})\s?:\s")
_CLASS = HEADING_WORDS | LEVELS | PLACES | LISTS | ADULTS
_DATED = MONTHS | ANY_DAYS | SEASONS
_NAMES_BEHIND = pattern(r"[,;:&+]")
_ENOUGH = 3  # lines with a sign
_MOST_ABOVE, _MOST_OVER = 8, 4  # lines over the first number, of which a letter has some; over columns
_MANY = 5  # lines that are all alike, where no empty line parts the first from them
_SOME, _MOSTLY, _NEARLY_ALL = 0.3, 0.6, 0.8
_LONGEST, _LONGEST_LIST = 200, 2_000
_PAIR = 2  # lines: a title and all names


class Above(NamedTuple):
    """The lines (0-based) that are titles, and those that may be children after all."""

    sure: frozenset[int] = frozenset()
    doubtful: frozenset[int] = frozenset()


def titles_above(lines: Sequence[str], delimiter: str = "", *, below: bool = False) -> Above:
    """Return the titles over a list with signs, of ``lines`` as typed, without those that are known by their words.

    ``delimiter`` parts the columns of a table without titles: a line over it that has none may be one, too. ``below``
    says that something stood over the lines that is no child for sure.
    """
    above = _by_signs(lines, delimiter, below=below) if delimiter or _SIGNED.search("\n".join(lines)) else Above()
    return Above(above.sure, above.doubtful.union(
        over_asides(lines), _over_one_line(lines), _over_groups(lines), _shouted(lines),
        () if delimiter else first_lines(lines)))


def _over_groups(lines: Sequence[str]) -> Iterator[int]:
    """Yield a line of no known name that stands over groups, under headings or apart over words that end in a colon."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line))]
    if len(filled) <= _PAIR or not _heads(lines[filled[1]]) or (filled[1] == filled[0] + 1 and (
            lines[filled[1]].rstrip().endswith(":") or not lines[filled[0]].strip().isalpha())):
        return
    first = lines[filled[0]]
    if any(_heads(lines[at]) for at in filled[_PAIR:]) and not (
            NAME_LABEL.match(first) or is_title(first) or opens_with_given(strip_numbering(first))):
        yield filled[0]


def _heads(line: str) -> bool:
    return line.rstrip().endswith(":") or heading_reason(line) is not None


def _over_one_line(lines: Sequence[str]) -> Iterator[int]:
    """Yield a line of unknown words over the only other one, which has many names: ``Targhette``."""
    filled = {at: line for at, line in enumerate(lines) if any(map(is_letter, line))}
    if len(filled) == _PAIR and len(filled[max(filled)]) <= _LONGEST_LIST:
        first, second = (filled[at] for at in sorted(filled))
        joined = second.count(",") + sum(word in AND_WORDS for word in second.split())
        names = joined >= _ENOUGH and "," in second and not _NAMES_BEHIND.search(first)
        if names and not NAME_LABEL.match(first) and not is_title(first) and not any(map(is_given, first.split())):
            yield min(filled)


def _shouted(lines: Sequence[str]) -> Iterator[int]:
    """Yield a first line of several words in capitals, one of them known as no name, over lines that are not.

    ``SIGN-IN SHEET``, ``AMIGO INVISIBLE``; the first of whole names in capitals is a child.
    """
    if not _is_upper(next(filter(str.strip, lines), "")):
        return
    filled = {at: line for at, line in enumerate(lines) if any(map(is_letter, line))}
    first, *others = list(filled)[: _MANY + 1] or [len(lines)]
    words = strip_numbering(filled[first]).split() if others else []
    if len(words) < _PAIR or not _is_upper(filled[first]) or is_title(filled[first]) or len(others) < _ENOUGH:
        return
    loud = any(line.isupper() or any(map(_is_loud, line.split())) for at, line in filled.items() if at != first)
    if not loud and not _ASIDE.search(filled[first]) and not all(map(is_known, words)):
        yield first


def _is_upper(text: str) -> bool:
    """Say whether a line is in capitals but for what an ordinal ends in: ``1.º PERÍODO``."""
    return text.replace("º", "").replace("ª", "").isupper()


def _is_loud(word: str) -> bool:
    """Say whether a word of several letters is in capitals."""
    return len(word) > _ENOUGH and word.isupper()


def _by_signs(lines: Sequence[str], delimiter: str, *, below: bool) -> Above:
    """Return the titles that stand over bullets, numbers, commas or columns."""
    texts = ["" if is_title(line) else line for line in lines]
    filled = {at: text for at, text in enumerate(texts) if any(map(is_letter, text))}
    over_one = set(_over_numbers(filled))
    cells = {at for at, text in filled.items() if delimiter and delimiter in text.strip()}
    counted = _counted_among_bullets(filled)
    apart = over_one.union(_apart_over_bullets(lines, texts, filled, below=below))
    over = apart | {*_over_bullets(texts, filled), *_over_commas(texts, filled), *_over_columns(filled, cells)}
    found = [at for at in sorted(over - cells) if len(texts[at]) <= _LONGEST and not NAME_LABEL.match(texts[at])]
    sure = frozenset(at for at in found if _is_a_title(texts[at]))
    opening = [at for at in found if at not in sure and (
        at in apart or not at or not texts[at - 1].strip() or at - 1 in sure)]
    doubtful = frozenset(at for at in opening if at in apart or _may_be_none(_words(texts[at])))
    return Above(sure | counted.sure, doubtful | counted.doubtful)


def _may_be_none(words: Sequence[str]) -> bool:
    return not is_given(words[0]) or begins_small(words[-1])


def over_asides(lines: Sequence[str]) -> Iterator[int]:
    """Yield the first line where an empty one parts it from the rest, and nearly all others have something aside.

    A known given name there is a child that has nothing beside it. A word of care that opens it needs no empty line.
    """
    filled = {at: strip_numbering(line) for at, line in enumerate(lines) if any(map(is_letter, line))}
    first = next(iter(filled), len(lines))
    if len(filled) <= _ENOUGH or is_title(lines[first]):
        return
    words = _words(filled[first])
    named = any(map(is_given, words[:1] if _is_joined(words) else words))  # Alergias y salud: Salud is one
    if fold(words[0]) in CARE and not named and not _NAMES_BEHIND.search(filled[first]):
        yield first  # Allergies / food
    if _has_no_figure(lines[first], [lines[at] for at in filled if at != first]):
        yield first  # Hora da novidade
    told = [_has_something_behind(text) for text in filled.values()]
    if first + 1 in filled and (len(filled) < _MANY or not all(told[1:])):
        return
    titled = _has_a_date_behind(filled[first]) and sum(map(_has_a_date_behind, filled.values())) == 1
    small = titled and begins_small((_words(_ASIDE.split(filled[first])[0]) or words)[-1])  # Venta de fotos – mayo
    ends = [begins_small((_words(_LEADER.split(_ASIDE.split(text)[0])[0]) or words)[-1]) for text in filled.values()]
    phrase = ends[0] and not any(ends[1:]) and len(words) > _PAIR  # Gita al museo
    last = _words(filled[first])[-1]
    small = small or (is_small_word(last) and not told[0])  # Ami secret
    named = opens_with_given(filled[first]) and not small and not phrase
    if (titled or not told[0]) and not named and share(told[1:]) >= _NEARLY_ALL:
        yield first


def _has_something_behind(text: str) -> bool:
    """Say whether something stands beside a name: in brackets, behind a sign, or a number."""
    return (ASIDE.search(text) is not None or _LEADER.search(text) is not None or text.rstrip()[-1:].isdigit()
            or text.rstrip().endswith((" –", " —", " -"))  # nothing was counted
            or any(sign in text for sign in ("→", "->", " > "))
            or unicodedata2.category(text.rstrip()[-1:] or " ") == "So")  # a tooth for each


def _is_joined(words: Sequence[str]) -> bool:
    """Say whether a word for and is the second: ``Allergies et santé``."""
    return len(words) > _PAIR and fold(words[1]) in AND_WORDS


def _has_a_date_behind(text: str) -> bool:
    """Say whether behind a dash is a month, a day or a year and nothing else: ``Book order – March``."""
    _, dash, rest = text.replace("—", "–").replace(" - ", " – ").partition(" – ")
    words = [fold(word.strip(".,")) for word in rest.split()]
    return bool(dash) and not _DATED.isdisjoint(words) and all(
        word in _DATED or word in OF_THE or word.isdigit() for word in words)


def _has_no_figure(text: str, others: Sequence[str]) -> bool:
    """Say whether a line is the only one without a figure, and has small words, or one that is unknown, and no sign.

    ``Hora da novidade``, ``Büchertaschen``.
    """
    words = _words(text)
    if any(map(str.isdigit, text)) or _ASIDE.search(text) or any(sign in text for sign in COLUMN_SIGNS):
        return False
    small = any(map(is_small_word, words[1:]))
    unknown = len(words) == 1 and not is_known(words[0])
    return (small or unknown) and share(any(map(str.isdigit, other)) for other in others) >= _NEARLY_ALL


def _over_bullets(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines without a bullet right over one with it, where most have one, or all others stand so."""
    marked = {at: text for at, text in filled.items() if _BULLET.match(text)}
    over = [at for at, below in pairwise(filled) if at not in marked and below in marked]
    others = [at for at in filled if at not in marked and "".join(texts[at + 1 : at + 2]).strip()]
    heads = len(marked) > len(over) > 1 and over == others
    if (heads or len(marked) >= _MOSTLY * len(filled)) and _are_names(marked.values()):
        yield from over


def _apart_over_bullets(
    lines: Sequence[str], texts: Sequence[str], filled: Mapping[int, str], *, below: bool
) -> Iterator[int]:
    """Yield the lines below others that an empty one or a title parts from the first bullet: who shows it, mostly."""
    marked = [at for at, text in filled.items() if _BULLET.match(text)]
    if len(marked) >= max(_ENOUGH, _SOME * len(filled)):  # each group has its title, and what counts the slides
        yield from (at for at in filled if at < marked[0] and not texts[at + 1].strip() and (
            below or any(map(str.strip, lines[:at]))))


def _counted_among_bullets(filled: Mapping[int, str]) -> Above:
    """Return lines of one word and a number without the bullet that others have: ``Slide 1``.

    Those that count up by one are sure.
    """
    counts = {at: match for at, text in filled.items() if (match := _COUNTED_WORD.fullmatch(text))}
    if sum(map(bool, map(_BULLET.match, filled.values()))) < max(_ENOUGH, _MOSTLY * (len(filled) - len(counts))):
        return Above()
    sure: set[int] = set()
    for word in {match[1] for match in counts.values()}:
        found = [(at, int(match[2])) for at, match in counts.items() if match[1] == word]
        if len(found) > 1 and all(after - before == 1 for (_, before), (_, after) in pairwise(found)):
            sure.update(at for at, _ in found)
    return Above(frozenset(sure), frozenset(at for at, match in counts.items() if not is_given(match[1])) - sure)


def _over_numbers(filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines over number one, where nearly all from there on are counted: over the first, and over others."""
    places = list(filled)
    numbers = [int(match[1]) if (match := _NUMBER.match(text)) else 0 for text in filled.values()]
    ones = [at for at, two in enumerate(pairwise(numbers)) if two == (1, 2)]
    counted = {places[at]: filled[places[at]] for at, number in enumerate(numbers) if ones and at >= ones[0] and number}
    if ones and ones[0] <= _MOST_ABOVE and _are_names(counted.values()) and (
            len(counted) >= _MOSTLY * (len(places) - ones[0])):
        yield from (places[at] for at in range(ones[0]) if not numbers[at] or not at)
        yield from (places[at - 1] for at in ones[1:] if not numbers[at - 1])


def _over_commas(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines without a comma that open a block, where nearly all others have one."""
    opening = [at for at, text in filled.items() if "," not in text and not (at and texts[at - 1].strip())]
    others = [text for at, text in filled.items() if at not in opening]
    if share(bool(BOTH_BY_COMMA.fullmatch(text)) for text in others) >= _NEARLY_ALL and _are_names(others):
        yield from (at for at, below in pairwise(filled) if at in opening and "," in filled[below])


def _over_columns(filled: Mapping[int, str], cells: set[int]) -> list[int]:
    """Return the lines over the first one that has columns, where nearly all below have them."""
    first = min(cells, default=0)
    above = [at for at in filled if at < first]
    enough = len(cells) >= max(_ENOUGH, _NEARLY_ALL * (len(filled) - len(above)))
    return above if enough and len(above) <= _MOST_OVER else []


def _are_names(lines: Iterable[str]) -> bool:
    """Say whether there are enough lines and most of them begin and end as names do, up to a comma or a dash."""
    names = [_ASIDE.split(strip_numbering(line))[0].split() for line in lines]
    titled = [bool(words) and not (begins_small(words[0]) or begins_small(words[-1])) for words in names]
    return len(titled) >= _ENOUGH and share(titled) >= _MOSTLY


def _words(text: str) -> list[str]:
    return [bare for word in text.split() if (bare := word.strip(",;:.()[]–—-|/"))] or text.split()


def _is_a_title(text: str) -> bool:
    """Say whether a line can be nothing but a title: it opens as one, or leads from a lone word to an adult’s label.

    A word for a class or an adult further on is no sign: ``Xobrel Tarn, Room 4``.
    """
    words, head = _words(strip_numbering(text)), _words(_ASIDE.split(text.strip())[0])
    first = fold(words[0])
    if is_given(first):
        return False
    if _is_of_a_class(first):
        return not is_known(first) or any(map(_is_of_a_class, words[1:]))
    if len(first) > 1 and first in ARTICLES and begins_small(words[-1 if len(words) == 1 else 1]):
        return True
    if len(head) == 1 and _LABEL_OF_AN_ADULT.search(fold(text)):
        return True
    return _is_an_age(text) and any(map(_is_of_a_class, words))


def _is_an_age(text: str) -> bool:
    """``5 years - list``: a number and a unit in front."""
    number, *rest = _words(text)
    return number.isdigit() and bool(rest) and fold(rest[0]) in NUMBER_UNITS


def _is_of_a_class(word: str) -> bool:
    """Say whether a word is about classes, lists or adults."""
    return (folded := fold(word)) in _CLASS or opens_as_class(folded)
