"""Several children in every line, and no word before them: ``1: Mia, Leo, Ava``, ``- Mia Vost, Leo Tarn, Ava Elm``.

Told before columns are looked for, which commas cut, too. A table has as many cells in each row, and its second column
holds no given names; where a list could be one, it is left to the question that columns ask.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import chain
from statistics import mean

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.headers import header_role
from namewright.roster.known import is_given, lean
from namewright.roster.labelled_groups import names_told
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share, share
from namewright.roster.sure_groups import is_over_groups
from namewright.roster.vocabulary import AND, fold

_LEAD = pattern(r"\s*(?:[•*·–—-]\s+)?((?:[^\W\d_]{2,15}\.?\s)?\(?\d{1,2}(?:\s?[.):=]|\s?[-–—](?=\s))?)?\s*(?=[^\W\d_])")
_JOINED = pattern(rf"\s(?:{AND}|[&+])\s")
_BULLETS = frozenset("•*·–—-(")
_SIGNS = frozenset(",;，、&+/")
_COLUMNS = ("\t", "|", "  ", '"')
_LONGEST = 400  # characters of a line: a longer one is a text
_LEAST_ROWS, _MOST_TITLES = 2, 2
_ALL, _MOST, _MOSTLY, _HARDLY = 0.9, 0.75, 0.6, 0.25
_SEVERAL, _MANY = 3, 4  # names in a line on the average: a pair may be family and given name


def from_lines_of_names(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child, or the lines as they are where not surely all hold several."""
    text = "\n".join([line.text.strip() for line in lines])
    if _SIGNS.isdisjoint(text):
        return list(lines) if any(sign in text for sign in _COLUMNS) else _without_signs(lines)
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    rows = {at: row for at in filled if len(row := _row(lines[at].text)) > 1}
    above = [at for at in filled if at < min(rows, default=0)]
    alone = len(rows) + len(above) == len(filled) and len(above) <= _MOST_TITLES
    bullets = all(lines[at].text.lstrip()[0] in _BULLETS or _JOINED.search(lines[at].text) for at in rows)
    if not alone or len(rows) < _LEAST_ROWS or not _are_sure(list(rows.values()), bullets=bullets):
        return list(lines)
    return list(_apart(lines, rows, above))


def _without_signs(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child of lines with given names alone, three or more in each: ``Mia Leo Ava``.

    Three lines are needed, or two below a title.
    """
    words = {at: line.text.split() for at, line in enumerate(lines) if line.text.strip()}
    rows = {at: row for at, row in words.items() if _are_given_names(row)}
    above = [at for at in words if at < min(rows, default=0)]
    alone = len(rows) + len(above) == len(words) and len(above) <= _MOST_TITLES
    if not alone or len(rows) < (_LEAST_ROWS if above else _SEVERAL):
        return list(lines)
    return [each for at, line in enumerate(lines) for each in (map(line.part, rows[at]) if at in rows else (line,))]


def _are_given_names(words: Sequence[str]) -> bool:
    """Say whether there are three words or more, and all are given names, hardly one a family's as often."""
    if len(words) < _SEVERAL or not all(map(is_given, words)):
        return False
    leans = list(map(lean, words))
    return min(leans) >= 0 and share(each > 0 for each in leans) >= _MOSTLY


def _row(text: str) -> tuple[str, ...]:
    if len(text) > _LONGEST or any(sign in text.strip() for sign in _COLUMNS) or not (lead := _LEAD.match(text)):
        return ()
    return names_told(text[lead.end() :].rstrip(" ,;"))


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


def _apart(lines: Sequence[Line], rows: Mapping[int, Sequence[str]], above: Sequence[int]) -> Iterator[Line]:
    for at, line in enumerate(lines):
        if at not in rows:
            yield line.heading(line.text) if at in above and is_over_groups(line.text) else line
            continue
        lead = _LEAD.match(line.text)
        if lead and lead[1] and any(map(is_letter, lead[1])):
            yield line.heading(lead[1].rstrip(" .):=–—-"))
        yield from map(line.part, rows[at])
