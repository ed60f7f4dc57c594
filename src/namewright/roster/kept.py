"""What is to be kept of a list that was unfolded is read again, before anybody relies on it.

An unfolded line stands among other lines than when it was typed, so now and then it would be read otherwise next month.
Then the list stays as it was typed, where each line is still one; else it is written as a table that leaves nothing to
judge, line by line. Whoever reads what is kept finds that reading ready (``store.keeps_names``).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from namewright.message import message
from namewright.roster.children import Child, LineReport, Outcome, Roster, RosterError
from namewright.roster.written import Written, line_by_line, written
from namewright.settings import NamePart

AS_A_TABLE = message("roster.as_a_table")


def read_alike(part: NamePart, read: Callable[[str, NamePart], Roster], typed: Callable[[NamePart], Roster],
               lines: Sequence[str]) -> Roster:
    """Return what was typed as it is read for a part of the name, with a text that is read alike when it is read again.

    ``read`` reads a text, ``typed`` what was typed, whose ``lines`` say all of it (none where they do not). Raises what
    ``typed`` raises.
    """
    roster = typed(part)
    if not roster.text or _is_alike(roster, _tried(read, roster.text, part)):
        return roster
    if [report.source_line for report in roster.lines] == list(range(1, len(lines) + 1)):
        return roster._replace(text="", lines=tuple(
            report._replace(text=line) for report, line in zip(roster.lines, lines, strict=True)))
    text = line_by_line(_lines(roster, _found(typed, NamePart.GIVEN), _found(typed, NamePart.FAMILY)))
    table = _tried(read, text, part)
    if table is None or len(table.lines) != len(roster.lines) + 1 or _who(roster) != _who(table):
        return roster  # a question that the table would not ask again is asked now all the same
    return _as_table(roster, table, text)


def _tried(read: Callable[[str, NamePart], Roster], text: str, part: NamePart) -> Roster | None:
    try:
        return read(text, part)
    except RosterError:
        return None


def _found(typed: Callable[[NamePart], Roster], part: NamePart) -> Sequence[Child]:
    try:
        return typed(part).children
    except RosterError:  # nobody has a name of that part
        return ()


def _is_alike(one: Roster, other: Roster | None) -> bool:
    """Say whether a second reading has the same children, on whatever lines, and no fewer lines to ask about."""
    return other is not None and _who(one) == _who(other) and _asked(one) <= _asked(other)


def _who(roster: Roster) -> list[Child]:
    return [child._replace(line=0) for child in roster.children]


def _asked(roster: Roster) -> int:
    return sum(report.outcome is Outcome.LEFT_OUT for report in roster.lines)


def _lines(roster: Roster, by_given: Sequence[Child], by_family: Sequence[Child]) -> list[Written | str]:
    """Return what is to stand on each line: a child, words that are none, nothing where a row goes on or had titles."""
    given, family = ({child.line: child for child in found} for found in (by_given, by_family))
    said = {at: written(given[at], family[at]) for at in given.keys() & family.keys()}
    said = {one.line: said.get(one.line) or written(one, one) for one in roster.children}
    return [said.get(report.line, _beside(report)) for report in roster.lines]


def _beside(report: LineReport) -> str:
    """Return what stands in the table for a line that opens no child; one that is asked about must be no heading."""
    if report.outcome in (Outcome.CHILD, Outcome.HEADER):
        return ""
    return report.text.rstrip(" :") if report.outcome is Outcome.LEFT_OUT else report.text


def _as_table(roster: Roster, table: Roster, text: str) -> Roster:
    """Return a reading by the lines of the table, each with what was told of it where it was typed."""
    title, *rows = table.lines
    told = [LineReport(row.line, row.text, was.outcome if was.outcome is Outcome.LEFT_OUT else row.outcome, row.child,
                       was.notes if row.outcome is was.outcome else (*was.notes, *row.notes), was.source_line)
            for row, was in zip(rows, roster.lines, strict=True)]
    first = told[0].origin if told else 1
    return Roster(table.children, (title._replace(origin=first), *told), (*roster.notes, AS_A_TABLE), text)
