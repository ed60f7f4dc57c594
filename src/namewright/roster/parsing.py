"""A roster as a teacher has it, pasted or in a file, into children and an account of every line.

The recipe: lines, clean characters, columns, rows, names to practise, labels, reports. A line is what
``str.splitlines`` calls a line. Out of scope: which letters can be drawn (the alphabet reports
that by child).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path
from types import MappingProxyType

from namewright.message import Message, message, together
from namewright.named_tuples import NamedTuple
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.children import Child, LineReport, Outcome, Roster, RosterError
from namewright.roster.columns import Table
from namewright.roster.doubt import doubted
from namewright.roster.free_text import SEVERAL
from namewright.roster.judge import Judge
from namewright.roster.kept import read_alike
from namewright.roster.labels import labels
from namewright.roster.limits import MAX_BYTES, MAX_LINES
from namewright.roster.listed_twice import once_each, told_once
from namewright.roster.own_tables import own_table
from namewright.roster.pasted import Line
from namewright.roster.row_drafts import Draft, draft_rows, note_repeats, one_of_each, settled
from namewright.roster.rows import ONE_EACH, Entry
from namewright.roster.run_together import asked_together
from namewright.roster.sources import decode, read_bytes
from namewright.roster.tidy import Tidied, scrub
from namewright.roster.two_named import Two, answered, question, two_on_each
from namewright.roster.unfolding import Unfolded, unfold
from namewright.roster.vocabulary import Role
from namewright.settings import NamePart
from namewright.store import keeps_names

PASTED = message("roster.pasted")
FILE = message("roster.file")
LIST = message("roster.list")
_READINGS, _TEXTS = 6, 3  # a list that is saved is read as typed and as kept, each for three parts of the name
_KEPT_CHARACTERS = 250_000


class _Rows(NamedTuple):
    """A text whose rows are read and not yet settled: its lines cleaned and as typed, how they are laid out.

    ``typed`` are the lines as they are told, ``lines`` those of the text; ``own`` says that it is a table of ours, of
    which nothing is judged; ``two`` are the people on lines (0-based) that name two each.
    """

    clean: Sequence[Tidied]
    typed: Sequence[str]
    found: Unfolded
    drafts: Sequence[Draft]
    lines: Sequence[str]
    own: bool = False
    two: Mapping[int, Two] = MappingProxyType({})


def read_roster(
    text: str, source: Message | str = PASTED, part: NamePart = NamePart.GIVEN, columns: str = "", names_in: str = ""
) -> Roster:
    """Read a roster from ``text``; ``part`` is what a child practises unless its own row says otherwise.

    ``source`` is how errors name the text: words of ours, or the name of a file. ``columns`` says what the columns hold
    (``given,family``), where the text does not. ``names_in`` is the language of the names by its tag (``tr``), which
    letter case follows where a row has none of its own. Raises RosterError if there is no child in it, too much text,
    or nothing that tells which of two columns holds the name to practise.
    """
    if len(text) > MAX_BYTES:
        raise RosterError("roster.text_large", source=source, megabytes=MAX_BYTES // 1_000_000)
    return (_read_alike if len(text) > _KEPT_CHARACTERS else _read_alike_lately)(text, source, part, columns, names_in)


def _read_alike(text: str, source: Message | str, part: NamePart, columns: str, names_in: str) -> Roster:
    """Read a text that is to be read alike next time, from what is kept of it; its titles stand in that."""
    read = _read if len(text) > _KEPT_CHARACTERS else _read_lately
    return read_alike(part, lambda tried, of: read(tried, source, of, "", names_in),
                      lambda of: read(text, source, of, columns, names_in), () if columns else text.splitlines())


def _read(text: str, source: Message | str, part: NamePart, columns: str, names_in: str) -> Roster:
    lines = tuple(text.splitlines())
    if len(lines) > MAX_LINES:
        raise RosterError("roster.text_long", source=source, count=len(lines), most=MAX_LINES)
    known = (_rows if len(text) > _KEPT_CHARACTERS else _rows_lately)(lines, columns)
    unfolded, table = known.found.lines, known.found.table
    chosen = [settled(draft, part, names_in) for draft in known.drafts]
    each = chosen if known.own else once_each(one_of_each(chosen, known.found, known.typed), known.found)
    drafts = note_repeats(each, unfolded)
    children = _children([draft for draft in drafts if draft.entry])
    reports = _reports(known.typed, known.clean, unfolded, drafts, children)
    who = (question(known.two, lines),) if known.two else ()
    if not children:
        raise RosterError(who[0] if who else _no_children(source, reports), reports)
    if table.doubt:
        raise RosterError(_two_readings(table, unfolded), reports)
    same = [line.text for line in unfolded] == [line.text for line in known.clean]
    notes = (*who, *_columns_judged(table, children), *_child_judged(table, children),
             *_comma_guessed(known.found.judge, unfolded, children), *told_once(drafts, known.found, children))
    return Roster(tuple(children.values()), reports, notes,
                  "" if same else "\n".join(report.text for report in reports))


def _rows(typed: tuple[str, ...], columns: str) -> _Rows:
    """Read a text as far as that is the same for every part of the name that is practised."""
    lines = [typed[0].removeprefix("\ufeff"), *typed[1:]] if typed else []  # a byte order mark is no part of a name
    clean = [scrub(line) for line in lines]
    if columns and (asked := _rows_lately(typed, "")).two and (
            parts := answered([line.text for line in clean], asked.two, columns)) is not None:
        return _answered(asked, parts)
    if not columns and (own := own_table([line.text for line in clean])):
        return _Rows(clean, lines, own.found, own.drafts, lines, own=True)
    found = unfold([line.text for line in clean], columns)
    drafts = doubted(asked_together(draft_rows(found), found, lines), found, lines)
    return _Rows(clean, _typed(lines, clean, found.lines), found, drafts, lines, two=two_on_each(drafts, found, lines))


def _answered(asked: _Rows, parts: Sequence[Line]) -> _Rows:
    """Read the lines as it was answered where each names two people; one that names three waits as it did."""
    still = {asked.found.lines[draft.row.line].origin for draft in asked.drafts
             if SEVERAL in draft.notes}.difference(asked.two)
    texts = [part.text for part in parts]
    found = unfold(texts)
    placed = [line._replace(origin=parts[line.origin].origin, notes=(*parts[line.origin].notes, *line.notes))
              for line in found.lines]
    drafts = [draft.asked_for_each() if draft.entry and placed[draft.row.line].origin in still else draft
              for draft in doubted(draft_rows(found), found, texts)]
    return _Rows(asked.clean, _typed(asked.lines, asked.clean, placed), found._replace(lines=placed), drafts,
                 asked.lines)


# What was read a moment ago is not read again: a list is read as it is typed, tried and saved.
_read_alike_lately, _read_lately = keeps_names(_READINGS)(_read_alike), keeps_names(_READINGS)(_read)
_rows_lately = keeps_names(_TEXTS)(_rows)


def _columns_judged(table: Table, children: dict[int, Child]) -> tuple[Message, ...]:
    """Return what was decided of columns without titles: said once, with the first child as an example."""
    if table.header is not None or not {Role.GIVEN, Role.FAMILY} <= set(table.roles):
        return ()
    example = next((child for child in children.values() if child.given and child.family), None)
    return (message("roster.no_header", given=example.given, family=example.family),) if example else ()


def _child_judged(table: Table, children: dict[int, Child]) -> tuple[Message, ...]:
    """Say once which of two people in each row was taken for the child, with the first row as an example."""
    at = table.beside
    found = next(((child, " ".join(row.cells[at : at + 1 + (Role.FULL not in table.roles)])) for row in table.rows
                  if at is not None and (child := children.get(row.line)) and len(row.cells) > at and row.cells[at]),
                 None)
    return (message("roster.child_judged", name=f"{found[0].given} {found[0].family}".strip(), other=found[1]),) \
        if found else ()


def _comma_guessed(judge: Judge, unfolded: Sequence[Line], children: dict[int, Child]) -> tuple[Message, ...]:
    """Say once that a comma was taken to part family and given name where no name tells, by the first child."""
    if not judge.habits.comma_guessed:
        return ()
    read = next((child for line, child in children.items() if child.family and "," in unfolded[line].text), None)
    return (message("roster.comma_guessed", given=read.given, family=read.family),) if read else ()


def _two_readings(table: Table, unfolded: Sequence[Line]) -> Message:
    """Return the question which of two columns holds the name to practise, or the child, and what says either."""
    first, second = table.doubt or (0, 1)
    people = table.roles[first] is not Role.FULL and table.roles[second] is Role.OTHER
    line, one, other = _example(table, first, second, 2 if people else 1)
    if people:
        key, parts = "two_people", ("family", "given") if table.roles[first] is Role.FAMILY else ("given", "family")
        said = [_columns({at: parts[0], at + 1: parts[1]}) for at in (first, second)]
        everyone = {place + at: part for place in (first, second) for at, part in enumerate(parts)}
    else:
        key, kept, rest = ("two_wholes", "name", "other") if Role.FULL in table.roles else (
            "two_readings", "given", "family")
        said = [_columns({first: kept, second: rest}), _columns({second: kept, first: rest})]
        everyone = dict.fromkeys((first, second, *_more_wholes(table, second)), "name")
    return message(f"roster.{key}", line=unfolded[line].origin + 1, one=one, other=other, first=first + 1,
                   second=second + 1, columns=said[0], or_columns=said[1], all_columns=_columns(everyone))


def _more_wholes(table: Table, second: int) -> list[int]:
    """Return the columns behind a second one of names that hold names alone as that does: a third class, perhaps."""
    cells = [[row.cells[at] for row in table.rows if row.line != table.header and at < len(row.cells) and row.cells[at]]
             for at in range(max(len(row.cells) for row in table.rows))]
    many = len(cells[second]) / 2
    return [at for at, column in enumerate(cells) if at > second and len(column) >= many and all(
        is_titled(cell) and not any(map(str.isdigit, cell)) and (" " in cell) is (" " in cells[second][0])
        for cell in column)]


def _columns(held: Mapping[int, str]) -> str:
    """Return how it is said what columns hold: ``other,given,family``."""
    return ",".join(held.get(at, "other") for at in range(max(held) + 1))


def _example(table: Table, first: int, second: int, size: int) -> tuple[int, str, str]:
    """Return the first row, by its line, with what stands from two columns on, so many cells each."""
    rows = [(row.line, " ".join(row.cells[first : first + size]), " ".join(row.cells[second : second + size]))
            for row in table.rows if len(row.cells) > max(first, second) and (
                table.header is None or row.line > table.header)]
    return next((row for row in rows if all(row[1:])), max(rows, key=len, default=(0, "", "")))


def _typed(lines: Sequence[str], clean: Sequence[Tidied], unfolded: Sequence[Line]) -> list[str]:
    """Return every line as it was typed, its number with it, or as it was made by unfolding."""
    parts = Counter(line.origin for line in unfolded)
    return [lines[line.origin] if _is_whole(line, clean[line.origin].text, parts[line.origin]) else line.text
            for line in unfolded]


def _is_whole(line: Line, typed: str, parts: int) -> bool:
    """Say whether a line is all of what was typed there, but for a number or bullet before it."""
    return line.text == typed or (parts == 1 and line.text == strip_numbering(typed))


def load_roster(
    path: Path, part: NamePart = NamePart.GIVEN, columns: str = "", sheet: str = "", names_in: str = ""
) -> Roster:
    """Read a roster from a .txt, .csv, .tsv or .xlsx file. Raises RosterError as `read_roster` does."""
    return roster_from_bytes(read_bytes(path), path.name, part, columns, sheet, names_in)


def roster_from_bytes(
    data: bytes, source: Message | str = FILE, part: NamePart = NamePart.GIVEN, columns: str = "", sheet: str = "",
    names_in: str = "",
) -> Roster:
    """Read a roster from the bytes of a file, told apart by content and not by its name.

    ``sheet`` is the title of the sheet that is the class, where a spreadsheet has several.
    """
    text, notes = decode(data, source, sheet)
    try:
        read = read_roster(text, source, part, columns, names_in)
        return read._replace(notes=(*notes, *read.notes))
    except RosterError as error:  # what is wrong with the file may be why nobody was found
        raise RosterError(together(error.message, *notes), error.lines) from None


def _children(drafts: Sequence[Draft]) -> dict[int, Child]:
    """Make the children, by the 0-based line each was read from, in roster order."""
    entries = [(draft.row.line, draft.entry) for draft in drafts if draft.entry]
    names = labels([(entry.practice, _other_name(entry)) for _, entry in entries])
    return {
        line: Child(
            practice=entry.practice,
            label=label,
            given=entry.reading.given,
            family=entry.reading.family,
            line=line + 1,
            support=entry.choice.support,
            hand=entry.choice.hand,
            line_height_mm=entry.choice.line_height_mm,
            letters=entry.choice.letters,
            beats=entry.choice.beats,
            names_in=entry.choice.names_in,
        )
        for (line, entry), label in zip(entries, names, strict=True)
    }


def _other_name(entry: Entry) -> str:
    """Return the name that helps to tell this child apart: the part that is not practised."""
    if entry.practice == entry.reading.family:
        return entry.reading.given
    return "" if entry.practice.endswith(entry.reading.family) else entry.reading.family


def _reports(
    lines: Sequence[str], clean: Sequence[Tidied], unfolded: Sequence[Line], drafts: Sequence[Draft],
    children: dict[int, Child],
) -> tuple[LineReport, ...]:
    """Write one report for every line, the lines that a quoted cell runs over included."""
    reports = []
    for draft in drafts:
        at = draft.row.line
        child = children.get(at if draft.of is None else draft.of)
        for here in range(at, at + draft.row.span):
            line = unfolded[here]
            own = draft.notes if here == at else (message("roster.continues", line=unfolded[at].origin + 1),)
            notes = (*clean[line.origin].notes, *line.notes, *own)
            reports.append(LineReport(here + 1, lines[here], draft.outcome, child, notes, line.origin + 1))
    return tuple(reports)


def _no_children(source: Message | str, reports: Sequence[LineReport]) -> Message:
    left_out = next((report for report in reports if report.outcome in (Outcome.LEFT_OUT, Outcome.HEADING)), None)
    header = next((report for report in reports if report.outcome is Outcome.HEADER), None)
    if left_out:
        text = left_out.text.strip()[:40]
        nobody = message("roster.nobody", source=source, line=left_out.source_line, text=text)
        return together(nobody, *(note for note in left_out.notes if note != ONE_EACH), ONE_EACH)
    if header:
        return message("roster.only_header", source=source, line=header.source_line)
    return message("roster.empty", source=source)
