"""One list of a class that a page printed in two columns or three, put one name below the other.

Numbers that run down the columns, or along the rows, from one to the last name tell it for sure. Without numbers it is
told by whole names that open with a known given name in every column, of which no row has a family twice, and that
are written as only a list of a class is: the family names first, cut to a letter, or in the order of the letters down
one column and on in the next; or the last column ends a row sooner. Whoever stands beside a child in such rows may be
a grown-up or a friend as well: what tells neither stays a question. Out of scope: numbers in cells of their own between
parts of names (``numbered``), titles over the columns, single names (``contents``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.columns import WIDE_SPACE, split_cells
from namewright.roster.headers import header_role
from namewright.roster.known import is_given
from namewright.roster.pasted import Line
from namewright.roster.several import may_be_a_name
from namewright.roster.shares import share
from namewright.roster.vocabulary import fold

_SIGNS = ("\t", "|", ";", WIDE_SPACE)
_COUNTED = pattern(r"\(?#?([0-9]{1,3})\s?[.):\-–]*\s*([^\W\d_].*)")
_NUMBER = pattern(r"\(?#?[0-9]{1,3}[.):]?")
_INITIAL = pattern(r"[^\W\d_]\.?")
_FEWEST, _MOST_COLUMNS, _MOST_ABOVE, _LONGEST = 4, 4, 3, 2_000
_NEARLY_ALL, _NEARLY = 0.9, 0.75


class _Block(NamedTuple):
    """The lines (0-based) that are the rows, and the columns they make, each with the line and text of its cells."""

    rows: Sequence[int]
    columns: Sequence[Sequence[tuple[int, str]]]


def from_names_beside(lines: list[Line]) -> list[Line]:
    """Return the names of all columns one below the other, or the lines as they are where that is not sure."""
    if len(lines) > _LONGEST:
        return lines
    for sign in _SIGNS:
        block = _block(lines, sign)
        if block and (names := _counted(block) or _written_as_a_list(block)):
            first, last = block.rows[0], block.rows[-1]
            return [*lines[:first], *(lines[at].part(name) for at, name in names), *lines[last + 1 :]]
    return lines


def _block(lines: Sequence[Line], sign: str) -> _Block | None:
    """Return the rows that a sign parts into columns of names: all from the first one with it, empty lines apart."""
    filled = [at for at, line in enumerate(lines) if line.text.strip()]
    start = next((place for place, at in enumerate(filled[: _MOST_ABOVE + 1]) if sign in lines[at].text.strip()), None)
    if start is None:
        return None
    rows = {at: _cells(lines[at].text, sign) for at in filled[start:]}
    width = max(map(len, rows.values()))
    whole = [len(cells) == width for cells in rows.values()]
    short = whole.index(False) if not all(whole) else len(whole)
    if not 1 < width <= _MOST_COLUMNS or short < 2 or any(whole[short:]) or not all(map(all, rows.values())):
        return None
    columns = [[(at, cells[place]) for at, cells in rows.items() if place < len(cells)] for place in range(width)]
    return _Block(list(rows), columns)


def _cells(text: str, sign: str) -> list[str]:
    """Return the cells of a row without empty ones at its ends, a number in a cell of its own with what follows it."""
    cells = split_cells(text.strip().strip("|") if sign == "|" else text.rstrip(), sign) or [""]
    while len(cells) > 1 and not cells[-1]:
        cells.pop()
    found: list[str] = []
    for cell in cells:
        if found and _NUMBER.fullmatch(found[-1]):
            found[-1] = f"{found[-1]} {cell}"
        else:
            found.append(cell)
    return found


def _counted(block: _Block) -> list[tuple[int, str]]:
    """Return the names in the order of their numbers, which are one to as many as there are; else nothing."""
    cells = [cell for column in block.columns for cell in column]
    counted = [(int(match[1]), match[2], at, text) for at, text in cells if (match := _COUNTED.fullmatch(text))]
    if len(cells) < _FEWEST or len(counted) < len(cells):
        return []
    numbers = [number for number, *_ in counted]
    along = [number for number, *_ in sorted(counted, key=lambda found: found[2])]
    if list(range(1, len(cells) + 1)) not in (numbers, along) or not _are_names([name for _, name, *_ in counted]):
        return []
    return [(at, text) for _, _, at, text in sorted(counted)]


def _are_names(names: Sequence[str]) -> bool:
    """Say whether all may be names and nearly each stands once; some are known, or all have a capital in each word."""
    plain = all(may_be_a_name(name.replace(",", "")) or is_given(name) for name in names)
    once = len(set(map(fold, names))) >= _NEARLY_ALL * len(names)
    known = share(any(map(is_given, _words(name))) for name in names) >= _NEARLY
    return plain and once and (known or all(map(is_titled, names)))


def _written_as_a_list(block: _Block) -> list[tuple[int, str]]:
    """Return the names of rows without numbers, down each column, where these are surely one class."""
    names = [[text for _, text in column] for column in block.columns]
    every = [name for column in names for name in column]
    if len(names[-1]) < _FEWEST or any(map(header_role, every)) or any(map(_has_a_figure, every)):
        return []
    if not all(map(is_titled, every)) or len(set(map(fold, every))) < len(every) or _share_a_family(block):
        return []
    first = all("," in name.strip(",") for name in every) or all(map(_shouts_first, every))
    given = [share(is_given(_given(name, first=first)) for name in column) for column in names]
    if min(given) < _NEARLY or any(len(_words(name)) < 2 for name in every):
        return []
    cut = all(_INITIAL.fullmatch(name.split()[-1]) for name in every)
    uneven = len({len(column) for column in names}) > 1
    return [cell for column in block.columns for cell in column] if first or cut or uneven or _is_sorted(every) else []


def _words(name: str) -> list[str]:
    """Return the words of a name but for particles: Ben is none."""
    return [word.strip(",") for word in name.split() if word not in PARTICLES]


def _given(name: str, *, first: bool) -> str:
    """Return the word that opens the given name; ``first`` says that the family stands before it."""
    if not first:
        return "".join(_words(name)[:1])
    behind = name.partition(",")[2].split() or [word for word in name.split() if not _is_loud(word)]
    return behind[0] if behind else ""


def _is_loud(word: str) -> bool:
    return word.isupper() and len(word.strip(".")) > 1


def _shouts_first(name: str) -> bool:
    """Say whether the words of a family stand in capitals before the others: ``VOST Mira``."""
    loud = [_is_loud(word) for word in name.split() if any(map(is_letter, word))]
    return len(loud) > 1 and loud[0] and not loud[-1] and loud == sorted(loud, reverse=True)


def _has_a_figure(text: str) -> bool:
    return any(map(str.isdigit, text))


def _share_a_family(block: _Block) -> bool:
    """Say whether some row has a word of two letters or more twice, as a child and its mother have."""
    for row in _rows(block):
        words = [{fold(word) for word in _words(name) if len(word.strip(".")) > 1} for name in row]
        if any(not one.isdisjoint(two) for at, one in enumerate(words) for two in words[at + 1 :]):
            return True
    return False


def _rows(block: _Block) -> Iterator[list[str]]:
    for row in block.rows:
        yield [text for column in block.columns for at, text in column if at == row]


def _is_sorted(names: Sequence[str]) -> bool:
    """Say whether the names stand in the order of their first words, or of their last ones, on over the columns."""
    firsts, lasts = ([fold(name.split()[at]) for name in names] for at in (0, -1))
    return firsts == sorted(firsts) or lasts == sorted(lasts)
