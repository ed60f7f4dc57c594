"""Several children in every line behind a bullet, a number, or nothing: ``1: Mia, Leo, Ava``, ``▪ Mia, Leo and Ava``.

Told before columns are looked for, which commas cut, too. A table has as many cells in each row, and its second column
holds no given names; where a list could be one, it is left to the question that columns ask.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from itertools import chain
from statistics import mean

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.headers import header_role
from namewright.roster.headings import heading_reason, heads_adults
from namewright.roster.names_between import names_told
from namewright.roster.pasted import Line
from namewright.roster.shares import are_in_a_row, given_share, share
from namewright.roster.sure_groups import is_over_groups
from namewright.roster.vocabulary import AND, fold

_LEAD = pattern(r"(?:(?:([^\W\d_]{2,15}\.?\s\(?\d{1,2})|\d{1,2})(?:\s?[.):=]|\s?[-–—](?=\s))?)?\s*(?=[^\W\d_])")
"""A word and its number before names, or a number with a sign that no numbering has: ``Table 1.``, ``1=``."""
_JOINED = pattern(rf"\s(?:{AND}|[&+])\s")
_BEFORE_COUNTS = " #№"
_SIGNS = frozenset(",;，、&+/")
_COLUMNS = ("\t", "|", "  ", '"')
_LONGEST = 400  # characters of a line: a longer one is a text
_LEAST_ROWS, _MOST_TITLES = 2, 2
_ALL, _MOST, _MOSTLY, _HARDLY = 0.9, 0.75, 0.6, 0.25
_SEVERAL, _MANY = 3, 4  # names in a line on the average: a pair may be family and given name


class _Row(NamedTuple):
    """The names of a line, and the word with a number before them, empty where it has none."""

    label: str
    names: tuple[str, ...]


def from_lines_of_names(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child, or the lines as they are where not surely all hold several."""
    text = "\n".join([line.text.strip() for line in lines])
    if _SIGNS.isdisjoint(text):
        return list(lines) if any(sign in text for sign in _COLUMNS) else _without_signs(lines)
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    rows = {at: row for at in filled if (row := _row(lines[at].text)) and len(row.names) > 1}
    above = _only_above(filled, rows)
    bullets = all(_is_in_no_table(lines[at].text) for at in rows)
    if rows and _are_headed(lines, filled, rows):
        heads = set(filled[::2])
        headed = [line.heading(line.text) if at in heads else line for at, line in enumerate(lines)]
        return list(_apart(headed, rows, ()))
    if above is None or len(rows) < _LEAST_ROWS or not _are_sure([row.names for row in rows.values()], bullets=bullets):
        return list(lines)
    return list(_apart(lines, rows, above))


def _is_in_no_table(text: str) -> bool:
    """Say whether a line opens with a sign that is no part of its number, or has an and."""
    return not text.lstrip(_BEFORE_COUNTS)[0].isalnum() or _JOINED.search(text) is not None


def _only_above(filled: Sequence[int], rows: Collection[int]) -> list[int] | None:
    """Return the lines above the rows, at most two, None where others stand between or below."""
    others = [at for at in filled if at not in rows]
    return others if len(others) <= _MOST_TITLES and max(others, default=-1) < min(rows, default=0) else None


def _are_headed(lines: Sequence[Line], filled: Sequence[int], rows: Mapping[int, _Row]) -> bool:
    """Say whether each row of names stands right below a heading of its own, and there is nothing else: groups."""
    heads, bodies = filled[::2], filled[1::2]
    if len(filled) % 2 or len(rows) < _LEAST_ROWS or list(rows) != list(bodies):
        return False
    names = [fold(name) for row in rows.values() for name in row.names]
    return len(set(names)) == len(names) and min(len(row.names) for row in rows.values()) >= _SEVERAL and all(
        heading_reason(lines[at].text) and not heads_adults(lines[at].text) for at in heads)


def _without_signs(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child of lines with given names alone, three or more in each: ``Mia Leo Ava``.

    Three lines are needed, or two below a title.
    """
    words = {at: line.text.split() for at, line in enumerate(lines) if line.text.strip()}
    rows = {at: row for at, row in words.items() if are_in_a_row(lines[at].text)}
    above = _only_above(list(words), rows)
    if above is None or len(rows) < (_LEAST_ROWS if above else _SEVERAL):
        return list(lines)
    return [each for at, line in enumerate(lines) for each in (map(line.part, rows[at]) if at in rows else (line,))]


def _row(text: str) -> _Row | None:
    if len(text) > _LONGEST or any(sign in text.strip() for sign in _COLUMNS):
        return None
    bare = strip_numbering(text)
    lead = _LEAD.match(bare)
    return _Row(lead[1] or "", names_told(bare[lead.end() :].rstrip(" ,;"))) if lead else None


def _are_sure(rows: Sequence[Sequence[str]], *, bullets: bool) -> bool:
    """Say whether rows of names are surely no table of family names or parents; none has ``bullets`` or an and."""
    names, behind = list(chain.from_iterable(rows)), [name for row in rows for name in row[1:]]
    if len(set(map(fold, names))) < _ALL * len(names) or any(map(header_role, rows[0])):
        return False
    size, even = mean(map(len, rows)), len(set(map(len, rows))) == 1
    whole = share(" " in name for name in names)
    if whole <= _HARDLY:
        if even and not bullets:
            return size >= _MANY and all(given_share(column) >= _MOSTLY for column in zip(*rows, strict=True))
        first, others = given_share([row[0] for row in rows]), given_share(behind)
        return size >= (_SEVERAL if bullets or others >= _MOSTLY else _MANY) and others >= first / 2
    families = mean(len({fold(name.split()[-1]) for name in row}) / len(row) for row in rows)  # parents share them
    return min(whole, families) >= _MOST and (bullets or not even) and size >= _SEVERAL


def _apart(lines: Sequence[Line], rows: Mapping[int, _Row], above: Sequence[int]) -> Iterator[Line]:
    for at, line in enumerate(lines):
        if at not in rows:
            yield line.heading(line.text) if at in above and is_over_groups(line.text) else line
            continue
        if rows[at].label:
            yield line.heading(rows[at].label)
        yield from map(line.part, rows[at].names)
