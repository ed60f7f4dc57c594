"""Lines of one cell among the rows of a table with titles: a group's name, what a sign means, the end of a mail.

Where nearly every row has several cells, such a line is a heading if the titles come again right below it or it is the
code of a class or an age; it tells what a sign means if a name ends in that sign; and below a word that ends a letter
it is who wrote the table. A word that is no known name is asked about where an empty row parts it from those above and
others follow. A lone name anywhere else is a child that was added by hand.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.columns import Row, Table
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.headers import header_roles
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.shares import share
from namewright.roster.unlike import Unlike, is_closing, legend, perhaps_unlike
from namewright.roster.vocabulary import NAME_ROLES, NUMBER_UNITS, fold

_CODE = pattern(r"[A-Z]{1,3}-?[0-9]{1,2}[a-zA-Z]?")
_AGED = pattern(r"[0-9]{1,2}(?:\s?[-–/]\s?[0-9]{1,2})?\s?([^\W\d_]+)")
_NEARLY_ALL = 0.8
_MOST_SIGNED = 3  # lines below the end of a letter: more of them may be children


def lone_rows(table: Table) -> dict[int, Unlike]:
    """Return, by line, the lines of one cell among rows of several that are no children, and why."""
    if table.header is None or not table.delimiter or table.grid:
        return {}
    rows = [row for row in table.rows if row.line > table.header and any(row.cells)]
    alone = {row.line: text for row in rows if (text := _alone(row))}
    others = [row for row in rows if row.line not in alone]
    if len(alone) > len(others) or share(len(list(filter(None, row.cells))) > 1 for row in others) < _NEARLY_ALL:
        return {}
    found = dict.fromkeys(_heads(table, alone), _told("over"))
    found |= {at: _told("class") for at, text in alone.items() if _is_a_group(text)}
    found |= dict.fromkeys(_legend(table, others, alone), _told("sign"))
    found = {at: perhaps_unlike(alone[at]) for at in _over_blocks(table, alone)} | found
    return found | dict.fromkeys(_signature(rows, alone), _told("closing"))


def _told(why: str) -> Unlike:
    return Unlike((message(f"roster.heading_{why}"),))


def _alone(row: Row) -> str:
    """Return the text of a row of one cell that may be a name, else nothing."""
    filled = [cell for cell in row.cells if cell]
    worded = len(filled) == 1 and any(map(is_letter, filled[0])) and not NAME_LABEL.match(filled[0])
    return filled[0] if worded else ""


def _heads(table: Table, alone: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines right above titles that come again."""
    filled = [row for row in table.rows if any(row.cells)]
    for at, row in enumerate(filled[:-1]):
        below = filled[at + 1].cells
        if row.line in alone and (below == table.titles or header_roles(below)):
            yield row.line


def _is_a_group(text: str) -> bool:
    """Say whether a text is the code of a class or an age, ``CE1``, ``3 ANNI``, and not the third child, ``3 Anni``."""
    if _CODE.fullmatch(text):
        return True
    aged = _AGED.fullmatch(text)
    return aged is not None and fold(aged[1]) in NUMBER_UNITS and not (aged[1].istitle() and is_given(aged[1]))


def _over_blocks(table: Table, alone: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines of no known name between an empty row and one of several cells: ``Office``, over its people."""
    for above, row, below in zip(table.rows, table.rows[1:], table.rows[2:], strict=False):
        parted = row.line in alone and not any(above.cells) and len(list(filter(None, below.cells))) > 1
        if parted and not any(map(is_known, alone[row.line].split())):
            yield row.line


def _legend(table: Table, others: list[Row], alone: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines that say what a sign means in which a name of the table ends."""
    names = [cell for row in others for cell, role in zip(row.cells, table.roles, strict=False) if role in NAME_ROLES]
    yield from (at for at in legend({**alone, **{-1 - at: name for at, name in enumerate(names)}}) if at in alone)


def _signature(rows: list[Row], alone: Mapping[int, str]) -> list[int]:
    """Return the lines at the end from a word on that ends a letter: ``Thanks,``, and who wrote it."""
    below: list[int] = []
    for row in reversed(rows):
        if row.line not in alone:
            break
        below.insert(0, row.line)
    first = next((at for at, line in enumerate(below) if _ends_a_letter(alone[line])), len(below))
    signed = below[first:]
    return signed if len(signed) <= _MOST_SIGNED + 1 else signed[:1]


def _ends_a_letter(text: str) -> bool:
    return is_closing(text) or (text.endswith(("!", ",")) and not opens_with_given(text))
