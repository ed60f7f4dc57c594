"""Names under the letters they begin with, as on a wall of names or in an index: no letter is a child.

``A: Ana, Abel``, ``B –``, or ``Cc`` with Coral on the next line. Read so where each letter stands once and nearly all
names under them have a word that begins so; a line above the first letter is a title where no known name opens it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most, share
from namewright.roster.vocabulary import AND, fold
from namewright.store import keeps_names

_LETTER = pattern(r"\s*([^\W\d_])(?:\s?([^\W\d_]))?(?:\s*[:–—=|-]\s*|\t\s*|\s{2,}|\s*$)(.*)")
_PARTS = pattern(rf"\s*[,&+/·]\s*|\s+(?:{AND})\s+")
_OVER = message("roster.heading_over")
_ENOUGH = 3  # letters with names
_NEARLY_ALL = 0.8
_MOST_TITLES = 2
_LONGEST = 400


class _Head(NamedTuple):
    """A letter, what it is written as, and the names behind it on its line."""

    letter: str
    typed: str
    names: tuple[str, ...]


def from_alphabet(lines: Sequence[Line]) -> list[Line]:
    """Return the letters as headings and a line for each name behind one, or the lines as they are."""
    heads = {at: head for at, line in enumerate(lines) if (head := _head(line.text))}
    letters = [head.letter for head in heads.values()]
    if len(heads) < _ENOUGH or len(set(letters)) < len(letters):
        return list(lines)
    named = {at: (*heads[at].names, *below) for at, below in _below(lines, heads).items()}
    fit = [_begins(name, heads[at].letter) for at, names in named.items() for name in names]
    if not are_most(map(bool, named.values()), 0, _ENOUGH) or share(fit) < _NEARLY_ALL:
        return list(lines)
    above = [at for at in range(min(heads)) if any(map(is_letter, lines[at].text))]
    titles = {at for at in above if len(above) <= _MOST_TITLES and not opens_with_given(lines[at].text)}
    return [each for at, line in enumerate(lines) for each in (
        _apart(line, heads[at]) if at in heads else [line.heading(line.text, _OVER) if at in titles else line])]


@keeps_names(1024)
def _head(text: str) -> _Head | None:
    """Return the letter that a line opens with, alone or as ``Aa``, and what stands behind it."""
    match = _LETTER.fullmatch(text) if len(text) <= _LONGEST else None
    if match is None or (match[2] and match[1].casefold() != match[2].casefold()):
        return None
    letter = match[1].casefold()
    apart = tuple(filter(None, (match[3].split(";") if ";" in match[3] else _PARTS.split(match[3]))))
    together = len(apart) > 1 and not all(_begins(part, letter) for part in apart)  # Abel, Mia
    names = (match[3],) if together else apart
    return _Head(letter, text[: match.end(2) if match[2] else match.end(1)].strip(), tuple(map(str.strip, names)))


def _below(lines: Sequence[Line], heads: Mapping[int, _Head]) -> dict[int, list[str]]:
    """Return the lines with words below each letter, up to the next one."""
    found: dict[int, list[str]] = {at: [] for at in heads}
    last = -1
    for at, line in enumerate(lines):
        if at in heads:
            last = at
        elif last in found and any(map(is_letter, line.text)):
            found[last].append(line.text)
    return found


@keeps_names(1024)
def _begins(name: str, letter: str) -> bool:
    """Say whether a word of a name begins with a letter, be it with a mark or without."""
    words = strip_numbering(name).split()
    return any(word.casefold().startswith(letter) or fold(word).startswith(fold(letter)) for word in words)


def _apart(line: Line, head: _Head) -> Iterator[Line]:
    yield line.heading(head.typed, _OVER)
    yield from map(line.part, head.names)
