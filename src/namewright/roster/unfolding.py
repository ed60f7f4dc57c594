"""A text as it was pasted into lines of one child each: what was wrapped about it off, what stood together apart.

What a program wrote or wrapped about the lines comes off first, and pages and tables are put one below another; then
what is told of the children and of the day is taken out, so that it sways nothing that lines are compared by
(``steps``). At the end it goes back to where it stood. Children behind labels and dates or side by side get lines of
their own, and columns are judged by these. What stands behind names is taken off where there are no columns, for in a
table it is a cell. Last, lines of several children are parted, which takes a look at all others, and what is left
unlike the rest is told. Each of these sees what those before it left, so their order matters.

Every line knows which line of the source it was on. A list that is kept should be read again as it was read first,
which is not taken on trust (``kept``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.roster.across import from_names_across
from namewright.roster.alike import without_counts, without_shared
from namewright.roster.attendance import without_attendance
from namewright.roster.beside import strip_numbering
from namewright.roster.chat_blocks import from_blocks
from namewright.roster.chats import from_a_chat
from namewright.roster.child_columns import doubted, from_child_columns
from namewright.roster.columns import WIDE_SPACE, Row, Table, join_cells, lay_out, split_cells
from namewright.roster.cut_short import plain_spellings
from namewright.roster.dated import from_dated_lines
from namewright.roster.foot_rows import foot_rows
from namewright.roster.grown_up_rows import grown_up_rows
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import header_roles, titles_for
from namewright.roster.heading_words import CHILDREN
from namewright.roster.hours import without_hours
from namewright.roster.judge import Judge
from namewright.roster.kin import from_kin
from namewright.roster.known import lean, opens_with_given
from namewright.roster.labelled_groups import from_labelled_groups
from namewright.roster.letters import greetings
from namewright.roster.lines_of_names import from_lines_of_names
from namewright.roster.log_lines import from_a_log
from namewright.roster.lone_rows import lone_rows
from namewright.roster.marks import with_brackets, without_marks, without_months, without_pronouns, without_sexes
from namewright.roster.month_rows import from_month_rows
from namewright.roster.numbered import from_numbered
from namewright.roster.pasted import PAIRED, Line, are_paired, unwrapped
from namewright.roster.prose import Aside, with_sentences, without_sentences
from namewright.roster.records import from_records
from namewright.roster.reports import from_reports
from namewright.roster.said_behind import without_said_behind
from namewright.roster.seats import from_seats
from namewright.roster.several import several_in_group
from namewright.roster.shares import share
from namewright.roster.shouted import without_shouted
from namewright.roster.signed import signed_lines
from namewright.roster.stacked import from_stacked_columns
from namewright.roster.steps import AS_PASTED, BEFORE_COLUMNS, through
from namewright.roster.titles_above import over_asides, titles_above
from namewright.roster.under_letters import from_alphabet
from namewright.roster.unlike import Unlike, month_rows, perhaps_unlike, unlike_lines
from namewright.roster.vocabulary import GROUPS, NAME_ROLES, Role, fold
from namewright.roster.waiting import from_waiting_lists
from namewright.roster.who_writes import from_doings_and_mails
from namewright.store import keeps_names

_MAX_ROUNDS = 3
_MOSTLY = 0.6
_LINES_KEPT = 1_000  # of a longer list nobody types, and it would be much to keep


class Unfolded(NamedTuple):
    """The lines of a text, how they are laid out, who judges them, and which (0-based) are unlike all others."""

    lines: Sequence[Line]
    table: Table
    judge: Judge
    unlike: Mapping[int, Unlike]


def unfold(lines: Sequence[str], columns: str = "") -> Unfolded:
    """Return the lines of a text, one child in each where that is sure.

    ``columns`` says what each column holds, empty where nobody said: its titles become a line. Raises Problem.
    """
    found, asides = from_records(lines), list[Aside]()
    if found is None:
        found, asides = from_a_log(lines) or (None, asides)
    if found is None:
        found, asides = _without_writers(unwrapped(lines), lines)
        found, inside = through(AS_PASTED, found)
        asides += inside
    found, about = through(BEFORE_COLUMNS, found)
    found, told = _without_asides(found)
    asides = sorted([*asides, *about, *told], key=lambda aside: aside.line.origin)
    typed, found = found, _put_in_lines(found, columns)
    table = _laid_out(found)
    above = frozenset() if found == typed else _over_asides(typed)  # of which nothing may be left
    found, doubtful = _titles_told(found, table)
    doubtful |= above if table.header is None and not table.delimiter else frozenset()
    if table.header is None and table.delimiter in ("", ","):
        found = without_marks(without_sexes(without_pronouns(with_brackets(found))))
        found = without_shouted(without_shared(without_hours(without_attendance(found))))
    found, table, judge = _all_apart(found)
    plain = not table.delimiter and table.header is None
    unlike = {at: perhaps_unlike(line.text) for at, line in enumerate(found) if line.origin in doubtful}
    texts = [line.text for line in found]
    unlike |= unlike_lines(texts) if plain else (
        grown_up_rows(table) | foot_rows(table) | lone_rows(table) | month_rows(texts))
    unfolded = Unfolded(found, table, judge, unlike)
    return _with_asides(unfolded, asides) if asides else unfolded


def _without_writers(bare: list[Line], lines: Sequence[str]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without who writes, pays or does what they tell, in mails, logs, reports and chats."""
    found, doers = from_doings_and_mails(bare, lines)
    if doers or found != bare:
        return found, doers
    if (noted := without_said_behind(bare)) != bare:
        return noted, []
    bare, comments = from_reports(bare, lines)
    bare, senders = from_blocks(bare)
    return from_a_chat(bare, lines), [*comments, *senders]


def _without_asides(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children, and what is told of those taken out; a table keeps all of its own."""
    table = _laid_out(lines)
    if table.delimiter or table.header is not None:
        return lines, []
    found, told = without_sentences(lines)
    found, about = from_kin(found)
    return from_waiting_lists(found), [*told, *about]


def _put_in_lines(lines: list[Line], columns: str) -> list[Line]:
    """Put children one below another who stand behind dates and labels, in columns, forms, plans and calendars."""
    paired = are_paired(lines)
    if paired and not columns:
        return lines
    found = [_unasked(line) for line in lines] if paired else from_stacked_columns(
        from_labelled_groups(from_dated_lines(from_alphabet(without_months(lines)))))
    if columns:
        found = _titled(found, titles_for(columns))
    else:
        found = from_month_rows(from_seats(from_names_across(from_numbered(from_lines_of_names(found)))))
    table = _laid_out(found)
    if (apart := from_child_columns(found, table)) != found:
        return apart
    spaced = table.delimiter == WIDE_SPACE and header_roles(table.titles) is None
    return _without_first_counts(found) if spaced else found


def _all_apart(lines: list[Line]) -> tuple[list[Line], Table, Judge]:
    """Part the lines that hold several children, again while there are any: what is found may tell more of the rest."""
    found, table, judge = lines, *_judged(lines)
    for _ in range(_MAX_ROUNDS):
        size, found = len(found), _unfolded(found, table, judge)
        if len(found) == size:
            break
        table, judge = _judged(found)
    return found, table, judge


def _judged(lines: Sequence[Line]) -> tuple[Table, Judge]:
    table = _laid_out(lines)
    return table, Judge(_whole_names(table), plain_spellings(line.text for line in lines), in_rows=_are_records(table))


def _with_asides(unfolded: Unfolded, asides: Sequence[Aside]) -> Unfolded:
    """Put sentences back where they stood, each a row of its own."""
    lines: list[Line] = []
    moved: list[int] = []
    told: dict[int, Aside] = {}
    for each in with_sentences(unfolded.lines, asides):
        if isinstance(each, Aside):
            told[len(lines)] = each
            lines.append(each.line)
        else:
            moved.append(len(lines))
            lines.append(each)
    table = unfolded.table
    rows = [*(row._replace(line=moved[row.line]) for row in table.rows),
            *(Row(at, 1, (aside.line.text.strip(),)) for at, aside in told.items())]
    header = None if table.header is None else moved[table.header]
    unlike = {moved[at]: why for at, why in unfolded.unlike.items()} | {
        at: Unlike(aside.notes, doubtful=aside.asked, told=True) for at, aside in told.items()}
    return Unfolded(lines, table._replace(rows=tuple(sorted(rows)), header=header), unfolded.judge, unlike)


def _titles_told(found: list[Line], table: Table) -> tuple[list[Line], frozenset[int]]:
    """Return the lines with titles over a list as headings, and where (0-based) those come from that may be none.

    So may be who signed a letter about the list.
    """
    if table.header is not None:
        return found, frozenset()
    texts = [line.text for line in found]
    above = titles_above(texts, table.delimiter, below=bool(found and found[0].origin))
    doubtful = above.doubtful if table.delimiter else above.doubtful.union(signed_lines(texts), greetings(texts))
    return ([line.heading(line.text) if at in above.sure else line for at, line in enumerate(found)],
            frozenset(found[at].origin for at in doubtful))


def _over_asides(lines: Sequence[Line]) -> frozenset[int]:
    """Return where a line comes from that may be a title over names with something beside each."""
    return frozenset(lines[at].origin for at in over_asides([line.text for line in lines]))


def _without_first_counts(lines: list[Line]) -> list[Line]:
    """Take the numbers off that a reader of print made (``l)  Mira Vost``), where the first line has one."""
    bare = without_counts(lines)
    counted = next((new.text != old.text for new, old in zip(bare, lines, strict=True) if old.text.strip()), False)
    return bare if counted else lines


_lay_out_lately = keeps_names(4)(lay_out)


def _laid_out(found: Sequence[Line]) -> Table:
    """Lay lines out; what came of a list on a screen is kept, for mostly it is asked for again at once."""
    lines = tuple([line.text for line in found])
    if are_paired(found):
        rows = (Row(at, 1, tuple(split_cells(text, "\t") or (text,))) for at, text in enumerate(lines))
        return Table("\t", tuple(rows), None, (Role.FULL, Role.OTHER), doubt=(0, 1))
    return doubted(lay_out(lines) if len(lines) > _LINES_KEPT else _lay_out_lately(lines))


def _unasked(line: Line) -> Line:
    return line._replace(notes=tuple(note for note in line.notes if note != PAIRED))


def _titled(found: list[Line], titles: Sequence[str]) -> list[Line]:
    """Put titles over the columns, in place of those that stand there."""
    table = _laid_out(found)
    sign = "   " if table.delimiter == WIDE_SPACE else table.delimiter or " "
    at = table.header if table.header is not None else 0
    title = Line(sign.join(titles), found[at].origin if found else 0)
    return [*found[:at], title, *found[at + (table.header is not None) :]]


def _whole_names(table: Table) -> list[str]:
    """Return the cells of a table that hold whole names, or its lines where they have no columns."""
    return [cell for row in table.rows for cell, role in zip(row.cells, table.roles, strict=False)
            if role is Role.FULL and cell]


def _are_records(table: Table) -> bool:
    """Say whether most rows have something else beside the whole name: one child's, be it by two given names."""
    rows = [row for row in table.rows if row.line != table.header and any(row.cells)]
    return bool(table.delimiter) and not table.grid and bool(rows) and share(
        any(cell and role not in NAME_ROLES for cell, role in zip(row.cells, table.roles, strict=False))
        for row in rows) >= _MOSTLY


def _unfolded(found: list[Line], table: Table, judge: Judge) -> list[Line]:
    if table.grid:
        first = next((at for at, line in enumerate(found) if len(_filled_cells(line, table.delimiter)) > 1), 0)
        return [each for at, line in enumerate(found) for each in (
            (_titles_of(line, table.delimiter, unsure=table.unsure and at == table.header),)
            if at == table.header or (at < first and _may_be_a_title(line.text))
            else _cells_of(line, table.delimiter))]
    if table.delimiter:
        return _cells_apart(found, table, judge)
    return [each for line in found for each in _apart(line, judge)]


def _cells_apart(found: list[Line], table: Table, judge: Judge) -> list[Line]:
    """Repeat a row for each child of a cell that surely holds several."""
    lines: list[Line] = []
    groups = _are_groups_of_rows(table) and not _are_families_first(table)
    for row in table.rows:
        own = found[row.line : row.line + row.span]
        at = next((at for at, role in enumerate(table.roles[: len(row.cells)]) if role is Role.FULL), None)
        asked = at is not None and row.line != table.header and row.span == 1
        several = (several_in_group(row.cells[at]) if groups else None) or judge.several(row.cells[at]) \
            if at is not None and asked else None
        if at is None or several is None or not several.sure or several.label:
            lines += own
            continue
        for part in several.parts:
            cells = (*row.cells[:at], part, *row.cells[at + 1 :])
            text = join_cells(cells, table.delimiter)
            lines.append(own[0].part(text))
    return lines


def _are_families_first(table: Table) -> bool:
    """Say whether each row has one child by family and given name: names tell, or the group stands behind ``Élève``.

    Two of a pair are both known as given ones, or stand behind their group, or below a title for several.
    """
    at = next((at for at, role in enumerate(table.roles) if role is Role.FULL), 0)
    title = fold(table.titles[at]) if len(table.titles) > at else ""
    cells = [row.cells[at] for row in table.rows if row.line != table.header and len(row.cells) > at and row.cells[at]]
    pairs = [cell.split(",") for cell in cells if cell.count(",") == 1]
    if not pairs or len(pairs) < len(cells):
        return False
    if share(lean(family.strip()) < 0 and lean(given.strip()) > 0 for family, given in pairs) >= _MOSTLY:
        return True
    one = CHILDREN.isdisjoint(title.replace("/", " ").split()) and (at == 0 or title in CHILD_WORDS)
    return one and not all(opens_with_given(family) for family, _ in pairs)


def _are_groups_of_rows(table: Table) -> bool:
    """Say whether each row is a group: a column ``Table`` or ``Team`` has another value in every row."""
    for at in range(len(table.roles)):
        values = [fold(row.cells[at]) for row in table.rows if row.line != table.header and len(row.cells) > at
                  and row.cells[at]]
        titled = at < len(table.titles) and fold(table.titles[at]) in GROUPS
        named = all(not GROUPS.isdisjoint(value.split()) for value in values)
        if (titled or named) and len(values) > 1 and len(set(values)) == len(values):
            return True
    return False


def _filled_cells(line: Line, delimiter: str) -> list[str]:
    return [cell for cell in split_cells(line.text, delimiter) or [line.text] if cell]


def _may_be_a_title(text: str) -> bool:
    """Say whether a line above a grid is no known given name: a grid is filled from its top on."""
    return any(map(is_letter, text)) and not opens_with_given(strip_numbering(text))


def _cells_of(line: Line, delimiter: str) -> Iterator[Line]:
    """Yield a line for every filled cell."""
    cells = _filled_cells(line, delimiter)
    if len(cells) < 2:
        yield line
        return
    for cell in cells:
        yield line.part(cell)


def _titles_of(line: Line, delimiter: str, *, unsure: bool = False) -> Line:
    """Write the titles of a grid as a heading of one line, as a line that is asked about where they may be children."""
    titles = " · ".join(filter(None, split_cells(line.text, delimiter) or [line.text])).rstrip(":")
    return line._replace(text=titles if unsure and " · " in titles else f"{titles}:")


def _apart(line: Line, judge: Judge) -> Iterator[Line]:
    """Yield the line, or a line for every child in it where it surely holds several, its label first."""
    several = judge.several(line.text)
    if several is None or not several.sure:
        yield line
        return
    if several.label:
        yield line._replace(text=several.label)
    for part in several.parts:
        yield line.part(part)
