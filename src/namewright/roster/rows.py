"""One row into one entry: the parts of a name and what the row asks for, before the class is looked at.

Then the entry is settled: letter case mended where it was all one case, and the name to practise chosen.
Lengths are millimetres; a name to practise has at most 60 letters (grapheme clusters).
"""

from __future__ import annotations

import re
from collections.abc import Sequence

import unicodedata2

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import mend_case
from namewright.names.clusters import clusters, is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import Reading, is_all_about, strip_numbering, take_beside, trim
from namewright.roster.columns import Row, Table
from namewright.roster.contents import is_sheet_sign
from namewright.roster.cut_short import WrittenOut, written_out
from namewright.roster.family_words import family_words
from namewright.roster.free_text import NAME_LABEL, SEVERAL, read_name
from namewright.roster.group_lines import is_count
from namewright.roster.header_words import SIDES
from namewright.roster.headers import family_first, given_first, header_role
from namewright.roster.headings import heading_reason, perhaps_heading
from namewright.roster.judge import Judge
from namewright.roster.known import opens_with_given
from namewright.roster.name_order import Habits, Order
from namewright.roster.numbers import figure_inside
from namewright.roster.sentences import is_a_text
from namewright.roster.setting_cells import (
    Choice,
    read_goes_by,
    read_hand,
    read_language,
    read_line_height,
    read_practise,
    read_support,
)
from namewright.roster.several import Several
from namewright.roster.struck import struck_off
from namewright.roster.unlike import Unlike
from namewright.roster.vocabulary import NAME_ROLES, TOTALS, Role, fold
from namewright.settings import NamePart
from namewright.store import keeps_names

MAX_LETTERS = 60
ONE_EACH = message("roster.one_each")
TWO_CHILDREN = message("roster.two_children")
_ANY = Judge(())
_LONGEST_CELL = 300
_COUNTED_CELL = pattern(r"([^\W\d_][^:=0-9]{0,39})[:=]?\s?[0-9]{1,4}")
_BETWEEN_VOWELS = pattern(r"[aeiouāēīōū]['’‘`][aeiouāēīōū]", re.IGNORECASE, needs="'’‘`")
_INITIAL = pattern(r"[A-Za-z]\.?")
_ONE_LETTER_OPENING = pattern(r"(?:^|[\s-])[a-zA-Z]['’‘`]", needs="'’‘`")


class Entry(NamedTuple):
    """A row read as a child: parts of the name, settings, the name to practise (once settled), notes."""

    reading: Reading
    choice: Choice
    practice: str = ""
    notes: tuple[Message, ...] = ()


class LeftOut(NamedTuple):
    """A row that is no child: why, and what else is to be said of it."""

    notes: tuple[Message, ...]
    heading: bool = False



def read_row(row: Row, table: Table, judge: Judge = _ANY, unlike: Unlike | None = None) -> Entry | LeftOut:
    """Read a filled row that is not a header row.

    ``judge`` knows how the names of this list are written, ``unlike`` says why this line is unlike all others.
    """
    if unlike and unlike.told:
        return LeftOut(unlike.notes, heading=not unlike.doubtful)
    seen = [struck_off(cell) for cell in row.cells]
    for struck in seen:
        if struck.reason:
            return LeftOut((struck.reason,), heading=not struck.asked)
    row = row._replace(cells=tuple(each.text for each in seen))
    filled = [cell for cell in row.cells if cell]
    if left := _left_out(row, filled, table, judge, unlike):
        return left
    alone = not table.delimiter or _stands_alone(row, filled, table)
    for cell in [filled[0]] if alone else _name_cells(row, table):
        if several := judge.several(cell):
            return LeftOut(_asked_whose(several, cell))
    if alone and is_all_about(filled[0]):
        return LeftOut((message("roster.remark", words=strip_numbering(filled[0])[:60]), message("roster.if_child")))
    if unlike:
        return LeftOut(unlike.notes)
    if alone:
        return _alone(filled[0], judge.habits)
    return _read_columns(row.cells, table._replace(rows=()), judge.habits)


def _left_out(row: Row, filled: Sequence[str], table: Table, judge: Judge, unlike: Unlike | None) -> LeftOut | None:
    """Return a row that is no child, or no child surely enough, whatever names stand in it."""
    if not any(is_letter(char) for cell in filled for char in cell):
        return LeftOut((_no_letter_reason("".join(filled)),))
    if length := _too_long(row.cells, table):
        return LeftOut((message("roster.long_cell", count=length, most=MAX_LETTERS), ONE_EACH))
    if len(filled) == 1 and judge.told(filled[0]):
        return LeftOut((SEVERAL, ONE_EACH))
    if len(filled) == 1 and is_a_text(filled[0]) and not NAME_LABEL.match(filled[0]):
        return LeftOut((SEVERAL, ONE_EACH))
    if len(filled) == 1 and judge.is_title(filled[0]) and (reason := heading_reason(filled[0])):
        return _heading(reason)
    if unlike and not unlike.doubtful:
        return _heading(*unlike.notes)
    if len(filled) == 1 and not NAME_LABEL.match(filled[0]) and (doubt := perhaps_heading(filled[0])):
        return LeftOut((doubt,))
    if table.delimiter == "," and filled[-1].endswith(":") and len(filled) > 1 and not opens_with_given(filled[0]):
        return LeftOut((message("roster.perhaps_heading", words=", ".join(filled)[:60]),))
    if table.delimiter and _counts(filled):
        return _heading(message("roster.heading_count"))
    if table.delimiter and len(filled) > 1 and all(map(heading_reason, filled)):
        return _heading(message("roster.heading_only"))
    return None


def _heading(*reasons: Message) -> LeftOut:
    return LeftOut((*reasons, message("roster.if_child")), heading=True)


def _asked_whose(several: Several, cell: str) -> tuple[Message, ...]:
    """Return the question about a line that may hold several children, or one behind other words."""
    if len(several.parts) == 1:
        return (message("roster.unlike", words=strip_numbering(cell)[:60]),)
    return (TWO_CHILDREN,) if len(several.parts) == 2 else (SEVERAL, ONE_EACH)


@keeps_names(1024)
def settle(entry: Entry, part: NamePart, names_in: str = "") -> Entry | LeftOut:
    """Mend the case of an entry and choose the name to practise.

    ``part`` is the class default, and so is ``names_in``, the language of the names by its tag.
    """
    notes = list(entry.notes)
    reading, literal = _mended(entry, names_in, notes)
    if not reading.given:
        reading = reading._replace(given=reading.goes_by)
    practice = literal or _chosen(reading, entry.choice.part or part, notes)
    if not any(map(is_letter, practice)):
        if SEVERAL in notes:
            return LeftOut((SEVERAL, ONE_EACH))
        if cut := [note for note in notes if note.key in {"roster.cut_short", "roster.figure_inside"}]:
            return LeftOut(tuple(cut))
        return LeftOut((message("roster.no_name"), *notes))
    beside = reading.family or any(note.key == "roster.number" for note in notes)  # CE1 A
    if not literal and beside and practice == reading.given and _INITIAL.fullmatch(practice):
        return LeftOut((message("roster.cut_short", typed=practice),))
    size = len(clusters(practice)) if len(practice) > MAX_LETTERS else 0
    if size > MAX_LETTERS:
        return LeftOut((message("roster.long_name", count=size, most=MAX_LETTERS),))
    notes.extend(odd_marks(practice))
    return Entry(reading, entry.choice, practice, tuple(notes))


def odd_marks(name: str) -> tuple[Message, ...]:
    """Return a note for a mark between vowels that may be an ʻokina; it is kept as typed."""
    if not _BETWEEN_VOWELS.search(_ONE_LETTER_OPENING.sub(" ", name)):
        return ()
    return (message("roster.okina", name=name),)


def _too_long(cells: Sequence[str], table: Table) -> int:
    """Return the length of a cell that is far too long for a name and what stands beside it, else 0."""
    for at, cell in enumerate(cells):
        beside = at < len(table.roles) and table.roles[at] is Role.OTHER and len(table.roles) > 1
        if len(cell) > _LONGEST_CELL and not beside:
            return len(cell)
    return 0


@keeps_names(1024)
def _alone(text: str, habits: Habits) -> Entry:
    """Read a name with nothing but what stands beside it in its line; a stray dot is no family name."""
    reading = read_name(text, habits)
    return _entry(reading._replace(family=trim(reading.family)), Choice(), ())


def _entry(reading: Reading, choice: Choice, notes: Sequence[Message]) -> Entry:
    told = choice
    if reading.hand or reading.support or reading.line_height_mm:
        told = choice._replace(hand=choice.hand or reading.hand, support=choice.support or reading.support,
                               line_height_mm=choice.line_height_mm or reading.line_height_mm)
    goes_by = choice.literal and reading.goes_by and reading.goes_by != choice.literal
    extra = [message("roster.passed_over", name=reading.goes_by, other=choice.literal)] if goes_by else []
    return Entry(reading, told, notes=(*reading.notes, *notes, *extra))


def _counts(filled: Sequence[str]) -> bool:
    """Say whether a row counts those above it: ``Total`` and a number, ``Sizes: 3 x S, 5 x M``."""
    if len(filled) == 1 and is_count(filled[0]):
        return True
    if _tells_counts(filled) or _counts_in_each(filled):
        return True
    opening = fold(filled[0]).split()[:1]
    return bool(opening) and TOTALS.issuperset(opening) and all(
        any(map(str.isdigit, cell)) for cell in filled[1:] or filled)


def _tells_counts(filled: Sequence[str]) -> bool:
    """Say whether words and figures take turns, one of the words for a total or for boys: ``Boys | 4 | Girls | 5``."""
    words, counts = [fold(word).strip(" :") for word in filled[::2]], filled[1::2]
    return len(words) == len(counts) > 1 and all(map(str.isdigit, counts)) and not (TOTALS | SIDES).isdisjoint(words)


def _counts_in_each(filled: Sequence[str]) -> bool:
    """Say whether each cell counts something, and one all children or the boys: ``Hombres: 5 | Total: 12``."""
    counts = [_COUNTED_CELL.fullmatch(cell) for cell in filled]
    words = {fold(count[1]).strip() for count in counts if count}
    return len(counts) > 1 and all(counts) and not words.isdisjoint(TOTALS | SIDES)


def _name_cells(row: Row, table: Table) -> list[str]:
    """Return the cells of a row that may hold whole or given names."""
    return [cell for cell, role in zip(row.cells, table.roles, strict=False) if role in (Role.FULL, Role.GIVEN)]


def _stands_alone(row: Row, filled: Sequence[str], table: Table) -> bool:
    """Say whether a whole name was typed into one cell of a table, where its columns hold something else."""
    if len(filled) != 1:
        return False
    at = row.cells.index(filled[0])
    role = table.roles[at] if at < len(table.roles) else Role.OTHER
    if table.header is None and role not in NAME_ROLES:
        return True
    parts = len(NAME_ROLES.intersection(table.roles)) > 1
    return parts and " " in filled[0] and (at >= len(table.roles) or role in NAME_ROLES)


@keeps_names(1024)
def _read_columns(cells: tuple[str, ...], table: Table, habits: Habits) -> Entry:
    """Read the cells of a table row, each by the role of its column."""
    by_role: dict[Role, list[tuple[int, str]]] = {}
    notes: list[Message] = []
    for at, cell in enumerate(cells):
        if is_sheet_sign(cell):
            notes.append(message("roster.sheet_sign", cell=cell[:20]))
        elif cell:
            by_role.setdefault(table.roles[at] if at < len(table.roles) else Role.OTHER, []).append(
                (at, cell)
            )
    texts = {role: " ".join(cell for _, cell in _in_order(role, found)) for role, found in by_role.items()}
    reading = _read_parts(texts, _title(by_role.get(Role.FULL, ()), table), habits, notes)
    choice = _read_choice(texts, by_role, table, notes)
    if goes_by := read_goes_by(texts.get(Role.GOES_BY, ""), notes):
        reading = reading._replace(goes_by=goes_by)
    if Role.MIDDLE in texts:
        notes.append(message("roster.middle", name=texts[Role.MIDDLE]))
    if Role.OTHER in by_role:
        notes.append(_left_out_columns([at for at, _ in by_role[Role.OTHER]], table))
    return _entry(reading, choice, notes)


def _in_order(role: Role, found: Sequence[tuple[int, str]]) -> Sequence[tuple[int, str]]:
    """Return cells of one role by column, those of particles alone (``van der``) first: they open a family name."""
    if role is not Role.FAMILY or len(found) < 2:
        return found
    return sorted(found, key=lambda cell: not PARTICLES.issuperset(fold(cell[1]).split()))


def _title(found: Sequence[tuple[int, str]], table: Table) -> str:
    """Return the header over the first of these cells, empty where there is none."""
    return table.titles[found[0][0]] if found and found[0][0] < len(table.titles) else ""


def _read_parts(texts: dict[Role, str], title: str, habits: Habits, notes: list[Message]) -> Reading:
    """Read given and family name from their columns, or else from a column of whole names with this title."""
    whole = texts.get(Role.FULL, "")
    if Role.GIVEN not in texts and Role.FAMILY not in texts:
        if family_first(title) and not habits.surely_given:
            without = habits._replace(remarks_by_comma=False, same_by_comma=False)
            reading = read_name(_comma_behind_family(whole, title), without)
            return reading if "," in whole else reading._replace(notes=tuple(map(_told_without_comma, reading.notes)))
        first = given_first(title) or header_role(title) is Role.GIVEN
        return read_name(whole, habits._replace(order=Order.GIVEN) if first else habits)
    if spoilt := figure_inside(texts.get(Role.GIVEN, "")):
        return Reading(notes=(spoilt,))
    given, beside = take_beside(texts.get(Role.GIVEN) or _without(whole, texts[Role.FAMILY]))
    out = written_out(tuple(given.split()), habits.plain, given=True) if given else WrittenOut(())
    if out.asked:
        return Reading(notes=(*beside.notes, out.asked))
    family, after = take_beside(texts.get(Role.FAMILY) or _without(whole, texts[Role.GIVEN]))
    if whole and not set(_words(whole)) <= set(_words(f"{given} {family}")):
        notes.append(message("roster.whole_name", words=whole[:60]))
    notes.extend(out.notes)
    return Reading(
        trim(" ".join(out.words)),
        trim(family),
        beside.goes_by or after.goes_by,
        beside.hand or after.hand,
        beside.support or after.support,
        beside.line_height_mm or after.line_height_mm,
        beside.notes + after.notes,
    )


def _words(text: str) -> list[str]:
    return fold(text.replace(",", " ")).split()


def _without(whole: str, part: str) -> str:
    """Take one part off the front or the end of a whole name; a name of that part alone stays."""
    typed, size = whole.replace(",", " ").split(), len(part.split())
    for at, rest in ((slice(size), typed[size:]), (slice(-size, None), typed[:-size])):
        if rest and _words(" ".join(typed[at])) == _words(part):
            return " ".join(rest)
    return whole


def _comma_behind_family(whole: str, title: str) -> str:
    """Write ``Moss Katie`` as ``Moss, Katie``; “Apellidos” promises two family names where three words stand."""
    words = whole.split()
    size = family_words(words)
    size += "apellidos" in fold(title) and len(words) > size + 1
    return whole if "," in whole or len(words) <= size else f"{' '.join(words[:size])}, {' '.join(words[size:])}"


def _told_without_comma(note: Message) -> Message:
    """Return what is told of a name that was read by a comma, where nobody typed one."""
    key = {"roster.read_by_comma": "roster.read", "roster.comma_with_middle": "roster.read_with_middle"}.get(note.key)
    return message(key, **dict(note.fields)) if key else note


def _read_choice(
    texts: dict[Role, str], by_role: dict[Role, list[tuple[int, str]]], table: Table, notes: list[Message]
) -> Choice:
    return read_choice_cells(texts, notes, hand_title=_title(by_role.get(Role.HAND, ()), table),
                             height_title=_title(by_role.get(Role.LINE_HEIGHT, ()), table))


def read_choice_cells(
    texts: dict[Role, str], notes: list[Message], *, hand_title: str = "", height_title: str = ""
) -> Choice:
    """Read the settings of a child from the cells of a row, by the role of their columns."""
    part, literal = read_practise(texts.get(Role.PRACTISE, ""), notes)
    return Choice(
        support=read_support(texts.get(Role.SUPPORT, ""), notes),
        hand=read_hand(texts.get(Role.HAND, ""), hand_title, notes),
        line_height_mm=read_line_height(texts.get(Role.LINE_HEIGHT, ""), height_title, notes),
        part=part,
        literal=literal,
        letters=texts.get(Role.LETTERS, ""),
        beats=texts.get(Role.BEATS, ""),
        names_in=read_language(texts.get(Role.LANGUAGE, ""), notes),
    )


def _left_out_columns(columns: Sequence[int], table: Table) -> Message:
    """Name the columns that are not about the name, without repeating what they hold."""
    titles = tuple(
        message("roster.column", title=table.titles[at]) if at < len(table.titles) and table.titles[at] else at + 1
        for at in columns
    )
    return message("roster.columns", count=len(titles), columns=titles)


def _mended(entry: Entry, names_in: str, notes: list[Message]) -> tuple[Reading, str]:
    """Mend each part by itself, and report what changed in one note."""
    before = (entry.reading.given, entry.reading.family, entry.reading.goes_by, entry.choice.literal)
    after = tuple(
        mend_case(name, family=at == 1, language=entry.choice.names_in or names_in) if name else ""
        for at, name in enumerate(before)
    )
    if after == before:
        return entry.reading, entry.choice.literal
    changed = [(old, new) for old, new in zip(before, after, strict=True) if old != new]
    old, new = (" ".join(pair) for pair in zip(*changed, strict=True))
    notes.append(message("roster.case", typed=old, written=new))
    given, family, goes_by, literal = after
    return entry.reading._replace(given=given, family=family, goes_by=goes_by), literal


def _chosen(reading: Reading, part: NamePart, notes: list[Message]) -> str:
    """Choose the name to practise; where that part is missing, the other one, with a note."""
    given = reading.goes_by or reading.given
    if part is NamePart.BOTH:
        return f"{given} {reading.family}".strip()
    wanted, other = (given, reading.family) if part is NamePart.GIVEN else (reading.family, given)
    if other and not wanted:
        notes.append(message(f"roster.no_{part.value}", other=other))
    return wanted or other


def _no_letter_reason(text: str) -> Message:
    categories = {unicodedata2.category(char)[0] for char in text if not char.isspace()}
    if categories == {"M"}:
        return message("roster.only_accents")
    if "N" in categories and categories <= {"N", "P", "S"}:
        return message("roster.only_numbers")
    return message("roster.no_letter")
