"""A text as it was pasted into lines of one child each: what was wrapped about it off, what stood together apart.

Every line knows which line of the source it was on. Unfolding again changes nothing, so that a list that is kept
is read again as it was read first.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.across import from_names_across
from namewright.roster.alike import from_a_program, is_titled, with_remarks, without_counts, without_shared
from namewright.roster.beside import is_word_about, says_what_called, strip_numbering
from namewright.roster.chats import from_a_chat
from namewright.roster.columns import WIDE_SPACE, Row, Table, join_cells, lay_out, split_cells, stray_cells
from namewright.roster.corrected import from_corrections
from namewright.roster.cut_short import plain_spellings
from namewright.roster.dated import from_dated_lines
from namewright.roster.forms import from_a_form
from namewright.roster.header_words import SOLO_HEADERS
from namewright.roster.headers import family_first, given_first, header_roles, titles_for
from namewright.roster.headings import heading_reason, is_placed
from namewright.roster.kin import from_kin
from namewright.roster.known import is_given, lean
from namewright.roster.labelled_groups import from_labelled_groups
from namewright.roster.marks import without_marks
from namewright.roster.month_rows import from_month_rows
from namewright.roster.name_order import Habits, Order, order_of
from namewright.roster.numbered import from_numbered
from namewright.roster.pasted import Line, unwrapped
from namewright.roster.photos import from_a_photo
from namewright.roster.prose import Aside, with_sentences, without_sentences
from namewright.roster.seats import from_seats
from namewright.roster.sentences import speaks_of_several, told_in_a_sentence
from namewright.roster.several import (
    AND,
    Several,
    are_groups,
    comma_tells,
    family_first_by_comma,
    say_the_same,
    several_in,
    several_in_group,
)
from namewright.roster.shares import given_share, share
from namewright.roster.stacked import from_stacked_columns
from namewright.roster.titles_above import titles_above
from namewright.roster.unlike import Unlike, perhaps_unlike, unlike_lines
from namewright.roster.vocabulary import DAYS, GROUPS, SHORT_DAYS, Role, fold
from namewright.roster.waiting import from_waiting_lists
from namewright.store import keeps_names

_BETWEEN_DAYS = pattern(r"[\s/–-]+")
_PAIR = pattern(rf"[^\W\d_][\w’'-]+\s+(?:{AND}|&|\+)\s+[^\W\d_][\w’'-]+")
_ASIDE = pattern(r"[(\[][^()\[\]]*[)\]]|\s[-–—]\s.*|:\s.*")
_MAX_ROUNDS = 3
_LINES_KEPT = 1_000  # of a longer list nobody types, and it would be much to keep
_MOSTLY, _OFTEN, _SOME = 0.8, 0.6, 0.2
_LONGEST_NAME = 4  # words
_FEW = 2  # lines tell little of how a list is written
_MAX_ASKED = 2_000
"""Characters of a line that are looked through for several children: a longer one is no list of names but a text."""


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
    found = from_corrections(from_a_program(from_a_photo(from_a_chat(unwrapped(lines), lines))))
    table = _laid_out(found)
    asides: list[Aside] = []
    if not table.delimiter and table.header is None:
        found, asides = without_sentences(found)
        found, about = from_kin(found)
        asides = sorted([*asides, *about], key=lambda aside: aside.line.origin)
        found = from_waiting_lists(found)
    found = from_dated_lines(found)
    found = from_stacked_columns(from_a_form(from_labelled_groups(found)))
    if columns:
        found = _titled(found, titles_for(columns))
    else:
        found = from_month_rows(from_seats(from_names_across(from_numbered(found))))
    table = _laid_out(found)
    if table.delimiter == WIDE_SPACE and header_roles(table.titles) is None:
        table = _laid_out(found := _without_first_counts(found))
    found, doubtful = _titles_told(found, table)
    if table.header is None and table.delimiter in ("", ","):
        found = without_shared(without_marks(found))
    for _ in range(_MAX_ROUNDS):  # what is found apart may tell more of the rest
        table = _laid_out(found)
        judge = Judge(whole_names(table), plain_spellings(line.text for line in found))
        size, found = len(found), _unfolded(found, table, judge)
        if len(found) == size:
            break
    else:
        table = _laid_out(found)
        judge = Judge(whole_names(table), plain_spellings(line.text for line in found))
    plain = not table.delimiter and table.header is None
    unlike = {at: perhaps_unlike(line.text) for at, line in enumerate(found) if line.origin in doubtful}
    unlike |= unlike_lines([line.text for line in found]) if plain else {}
    unfolded = Unfolded(found, table, judge, unlike)
    return _with_asides(unfolded, asides) if asides else unfolded


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
    """Return the lines with titles over a list as headings, and where (0-based) those come from that may be none."""
    if table.header is not None:
        return found, frozenset()
    above = titles_above([line.text for line in found], is_title, table.delimiter)
    return ([line.heading(line.text) if at in above.sure else line for at, line in enumerate(found)],
            frozenset(found[at].origin for at in (*above.doubtful, *_over_remarks(found))))


def _over_remarks(found: Sequence[Line]) -> Iterator[int]:
    """Yield where the first line, with none below it, is no given name and has no sign, and nearly all others have."""
    filled = {at: strip_numbering(line.text) for at, line in enumerate(found) if any(map(is_letter, line.text))}
    first = next(iter(filled), len(found))
    if len(filled) <= _FEW + 1 or first + 1 in filled or is_title(found[first].text):
        return
    signed = [_ASIDE.search(text) is not None for text in filled.values()]
    if not signed[0] and share(signed[1:]) >= _MOSTLY and not is_given(filled[first].split()[0]):
        yield first


def _without_first_counts(lines: list[Line]) -> list[Line]:
    """Take the numbers off that a reader of print made (``l)  Mira Vost``), where the first line has one."""
    bare = without_counts(lines)
    counted = next((new.text != old.text for new, old in zip(bare, lines, strict=True) if old.text.strip()), False)
    return bare if counted else lines


_lay_out_lately = keeps_names(4)(lay_out)


def _laid_out(found: Sequence[Line]) -> Table:
    """Lay lines out; what came of a list on a screen is kept, for mostly it is asked for again at once."""
    lines = tuple(line.text for line in found)
    return lay_out(lines) if len(lines) > _LINES_KEPT else _lay_out_lately(lines)


def _titled(found: list[Line], titles: Sequence[str]) -> list[Line]:
    """Put titles over the columns, in place of those that stand there."""
    table = _laid_out(found)
    sign = "   " if table.delimiter == WIDE_SPACE else table.delimiter or " "
    at = table.header if table.header is not None else 0
    title = Line(sign.join(titles), found[at].origin if found else 0)
    return [*found[:at], title, *found[at + (table.header is not None) :]]


def whole_names(table: Table) -> list[str]:
    """Return the cells of a table that hold whole names, or its lines where they have no columns."""
    return [cell for row in table.rows for cell, role in zip(row.cells, table.roles, strict=False)
            if role is Role.FULL and cell]


def _unfolded(found: list[Line], table: Table, judge: Judge) -> list[Line]:
    if table.grid:
        first = next((at for at, line in enumerate(found) if len(_filled_cells(line, table.delimiter)) > 1), 0)
        return [each for at, line in enumerate(found) for each in (
            (_titles_of(line, table.delimiter),) if at == table.header or (at < first and _may_be_a_title(line.text))
            else _cells_of(line, table.delimiter))]
    if table.delimiter:
        return _cells_apart(found, table, judge)
    return [each for line in found for each in _apart(line, judge)]


def _cells_apart(found: list[Line], table: Table, judge: Judge) -> list[Line]:
    """Repeat a row for each child of a cell that surely holds several."""
    lines: list[Line] = []
    groups = _are_groups_of_rows(table)
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


class Judge:
    """Judges the lines of one list without columns: how it writes a comma, and whether a line is all there is."""

    def __init__(self, texts: Sequence[str], plain: frozenset[str] = frozenset()) -> None:
        self._seen = frozenset(texts)
        self._titles = frozenset(text for text in self._seen if is_title(text)) - _with_places(texts)
        filled = [text for text in texts if text.strip() and text not in self._titles]
        self._alone = len(filled) < 2
        self._family_first = family_first_by_comma(filled)
        single = sum(" " not in strip_numbering(text) for text in filled)
        self._grouped = are_groups(filled)
        self._paired = len(filled) > _FEW and share(map(_is_pair, filled)) >= _OFTEN
        self._remarked = with_remarks(filled)
        self._givens = len(filled) > _FEW and 2 * single >= len(filled)
        by_comma = self._family_first and not single
        self.habits = Habits(_order(filled, texts), by_comma, _remarks_by_comma(filled),
                             by_comma and not comma_tells(filled), plain)
        self._found: dict[str, Several | None] = {}

    def is_title(self, text: str) -> bool:
        """Say whether a line is about the class and no child."""
        return text in self._titles if text in self._seen else is_title(text)

    def several(self, text: str) -> Several | None:
        """Return the children of a line, None where it is one child or none."""
        if text not in self._found:
            self._found[text] = self._judged(text)
        return self._found[text]

    def told(self, text: str) -> Several | None:
        """Return the children told in a sentence: for sure where none of them has a line in this list."""
        found = told_in_a_sentence(text) if len(text) <= _MAX_ASKED and not says_what_called(text) else None
        return found and found._replace(sure=found.sure and self._seen.isdisjoint(found.parts))

    def _judged(self, text: str) -> Several | None:
        if told := self.told(text):
            return told
        if text.isalpha() or len(text) > _MAX_ASKED or self.is_title(text) or says_what_called(text):
            return None
        if told := speaks_of_several(text):
            return told
        if text in self._remarked or (self.habits.remarks_by_comma and _has_a_remark(text)):
            return None
        cells = stray_cells(text)
        if len(cells) > 1:
            given = all(" " not in cell and lean(cell) > 0 for cell in cells)
            row = self._alone and len(cells) > _FEW and all(cell.isalpha() and len(cell) > 1 for cell in cells)
            return Several(tuple(cells), given and len(cells) > _FEW) if given or row else None
        found = several_in(text, family_first=self._family_first, alone=self._alone, givens=self._givens,
                           grouped=self._grouped)
        return found._replace(sure=True) if found and self._paired and _is_pair(text) else found


def _with_places(texts: Sequence[str]) -> frozenset[str]:
    """Return the lines that are children with a place behind them (``Mira – Blaue Gruppe``) and no titles.

    They open with a given name and are not the first line, or stand next to each other: a title has names below it.
    """
    lines = [text for text in texts if text.strip()]
    placed = [is_placed(text) for text in lines]
    beside = [before or after for before, after in zip([False, *placed], [*placed[1:], False], strict=False)]
    return frozenset(text for at, text in enumerate(lines) if placed[at] and (
        beside[at] or (at and is_given(strip_numbering(text).replace(",", " ").split()[0]))))


def _is_pair(text: str) -> bool:
    """Say whether two names of one word are told by a word between them: ``Mia and Leo``, ``Xobrel y Tarnul``."""
    return _PAIR.fullmatch(strip_numbering(text)) is not None


def _has_a_remark(text: str) -> bool:
    """Say whether one name stands before a comma, and behind it no given name, in a list of remarks by comma."""
    before, _, behind = strip_numbering(text).partition(",")
    words = behind.split()
    return bool(words) and " " not in before and (begins_small(words[0]) or not any(map(is_given, words)))


def _order(filled: Sequence[str], texts: Sequence[str]) -> Order:
    """Return which part of a name stands first: as a title says, or by the names."""
    titles = [bare for text in texts if fold(bare := text.strip("()[] ")) in SOLO_HEADERS]
    if any(map(family_first, titles)):
        return Order.FAMILY
    if any(map(given_first, titles)):
        return Order.GIVEN
    names = (_ASIDE.sub(" ", strip_numbering(text)) for text in filled if "," not in text)
    return order_of([name for name in names if name.strip()])


def _remarks_by_comma(filled: Sequence[str]) -> bool:
    """Say whether whole names stand before the commas of a list, as they stand without one: a remark follows."""
    names = [strip_numbering(text).partition(",")[0].strip() for text in filled]
    whole = sum(" " in name for name in names)
    behind = [after.strip() for text in filled if (after := strip_numbering(text).partition(",")[2])]
    if say_the_same(behind) and (whole >= _MOSTLY * len(filled) or given_share(behind) <= _SOME):
        return True
    titled = not any(map(begins_small, filter(None, names)))
    small = titled and len(behind) >= _FEW and all(map(begins_small, behind))
    if small and given_share(behind) <= _SOME:
        return True
    if whole < _MOSTLY * len(filled):
        return False
    bare = sum(" " in name and "," not in text for name, text in zip(names, filled, strict=True))
    if bare >= _FEW and 3 * bare >= len(filled):
        return True
    told = sum(map(_is_surely_about, behind))
    named = any(is_given(words.split()[0]) and not _is_surely_about(words) for words in behind)
    alone = sum(" " in name and name == text and is_titled(name) and len(name.split()) <= _LONGEST_NAME
                for name, text in zip(names, map(strip_numbering, filled), strict=True))
    return told + alone >= max(1, _SOME * len(behind)) and not named


def _filled_cells(line: Line, delimiter: str) -> list[str]:
    return [cell for cell in split_cells(line.text, delimiter) or [line.text] if cell]


def _may_be_a_title(text: str) -> bool:
    """Say whether a line above a grid is no known given name: a grid is filled from its top on."""
    return any(map(is_letter, text)) and not is_given(strip_numbering(text).split()[0])


def _is_surely_about(words: str) -> bool:
    """Say whether words behind a comma tell something of a child: small ones, figures, days of the week."""
    parts = _BETWEEN_DAYS.split(words)
    days = len(parts) > 1 and all(fold(word) in DAYS | SHORT_DAYS for word in parts)  # one alone may be a name: Mon
    return days or begins_small(words) or any(map(str.isdigit, words)) or any(map(is_word_about, words.split()))


def _cells_of(line: Line, delimiter: str) -> Iterator[Line]:
    """Yield a line for every filled cell."""
    cells = _filled_cells(line, delimiter)
    if len(cells) < 2:
        yield line
        return
    for cell in cells:
        yield line.part(cell)


def _titles_of(line: Line, delimiter: str) -> Line:
    """Write the titles of a grid as a heading of one line."""
    titles = filter(None, split_cells(line.text, delimiter) or [line.text])
    return line._replace(text=f"{' · '.join(titles).rstrip(':')}:")


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


@keeps_names(2048)
def is_title(text: str) -> bool:
    """Say whether a line is about the class and no child."""
    return not any(map(is_letter, text)) or fold(text.strip("()[]")) in SOLO_HEADERS or heading_reason(text) is not None
