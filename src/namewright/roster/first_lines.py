"""The first line of a list without columns that is written as no other: it may be a title, and is asked about.

Of names that are on no list a title is known by its form alone: one word over whole names (``Nachtlicht``), small words
where no name has any (``Mi clase``), a school year, signs about it (``** Dia do desporto **``). A known given name that
opens it is a child, unless a year, signs or a last word in small letters say otherwise. So are asked about the lines
above the only one that says that the children follow (``Kinder (11)``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import said_by_a_register, strip_numbering
from namewright.roster.capitals import is_small_word
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import CHILDREN
from namewright.roster.headings import heading_reason
from namewright.roster.known import opens_with_given
from namewright.roster.shares import share
from namewright.roster.vocabulary import ON_A_REGISTER, fold

_YEAR = pattern(r"(?<![0-9/.-])20[0-9]{2}\s?[/–-]\s?(?:20)?[0-9]{2}(?![0-9/.-])", needs="2")
_DRAWN = pattern(r"\s*(?P<sign>[*=~_#+-]{2,})\s*[^\W_].*(?P=sign)\s*", needs="*=~_#+-")
_ASIDE = pattern(r"\s[-–—|/=]\s|[:(\[]|\s(?:->|→|>)\s")
_ENOUGH = 3  # lines below
_MOST_ABOVE = 4  # lines over the children
_WHOLE = 2  # words
_NEARLY_ALL = 0.9
_LONGEST = 200


def first_lines(lines: Sequence[str]) -> Iterator[int]:
    """Yield the lines (0-based) at the top that may be no child though no word says so; ``lines`` are as typed."""
    filled = {at: line for at, line in enumerate(lines) if any(map(is_letter, line))}
    first, *others = filled or [0]
    if len(others) < _ENOUGH or len(lines[first]) > _LONGEST or NAME_LABEL.match(lines[first]):
        return
    heads = lines[first].rstrip().endswith(":") or heading_reason(lines[first]) is not None
    if not heads and _is_unlike(lines[first], [lines[at] for at in others if not lines[at].rstrip().endswith(":")]):
        yield first
    yield from _over_children(filled)


def _is_unlike(text: str, others: Sequence[str]) -> bool:
    """Say whether the first line alone has a year, signs about it, small words, or one word over whole names."""
    if any(sign.search(text) and not any(map(sign.search, others)) for sign in (_YEAR, _DRAWN)):
        return True
    words, below = _name(text), [_name(other) for other in others]
    if not words or begins_small(words[0]) or "," in text or len(below) < _ENOUGH:
        return False
    given = opens_with_given(strip_numbering(text))
    alone = not given and len(words) == 1 and share(len(each) >= _WHOLE for each in below) >= _NEARLY_ALL
    small = any(map(is_small_word, words[-1:] if given else words))  # Mi clase
    return alone or (small and not any(is_small_word(word) for each in below for word in each))


def _name(text: str) -> list[str]:
    """Return the words of a line up to what stands aside of a name, without what a register says of the day."""
    words = _ASIDE.split(strip_numbering(text))[0].replace(",", " ").split()
    return words[: len(words) - said_by_a_register(words, ON_A_REGISTER)]


def _over_children(filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines of no known name above the only one that says that the children follow."""
    said = [at for at, line in filled.items() if heading_reason(line) and len(line) <= _LONGEST
            and fold(" ".join(_name(line))).rstrip(":") in CHILDREN]
    above = [at for at in filled if said and at < said[0]]
    if len(said) == 1 and len(above) <= _MOST_ABOVE:
        yield from (at for at in above if not opens_with_given(strip_numbering(filled[at]))
                    and not filled[at].rstrip().endswith(":") and not heading_reason(filled[at]))
