"""What becomes of each row of a list: a child, a title, a heading, a further row of a child, or nothing sure.

A row is judged alone first, then by the others: a title over one column, a child with a row for each grown-up, a line
in which stand names that nobody was made of.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from itertools import pairwise

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.children import Outcome
from namewright.roster.columns import Row, Table
from namewright.roster.fillers import is_filler, why_nobody
from namewright.roster.free_text import NAME_LABEL, SEVERAL
from namewright.roster.further_names import lines_of_others
from namewright.roster.further_rows import further_rows, rows_by_grown_up, rows_of_a_day_book, tells_of_others
from namewright.roster.header_words import SOLO_HEADERS
from namewright.roster.headers import header_role, header_roles
from namewright.roster.heading_words import COLOURS, FREE_SEATS, NO_SCHOOL
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_family, is_given, is_known, lean
from namewright.roster.names_in_text import openers
from namewright.roster.no_names import is_no_school, is_nobody
from namewright.roster.numbers import is_of_figures
from namewright.roster.pasted import CHAT, Line
from namewright.roster.prose import is_sentence
from namewright.roster.rows import ONE_EACH, TWO_CHILDREN, Entry, LeftOut, read_row, settle
from namewright.roster.shares import are_in_a_row, share
from namewright.roster.staff_blocks import heads_many_adults
from namewright.roster.unfolding import Unfolded
from namewright.roster.unlike import perhaps_unlike
from namewright.roster.vocabulary import NAME_ROLES, fold
from namewright.settings import NamePart

_ABOVE_HEADER = message("roster.above_header")
_ASIDE = pattern(r"\S+(?:[,;:]|\s+[-–—=/(])\s*\S")  # Xobrel, needs help
_COUNTED_INSIDE = pattern(r"\b1[.)]\s?[^\W\d_].*[,;]\s*2[.)]\s?[^\W\d_]", needs="1")  # Rose: 1. Mia, 2. Leo
_LABEL = pattern(r"([^\W\d_]{2,15})\s?(?::|[-–—]) +(?=[^\W\d_a-z])", needs=":-–—")
_INITIALS = pattern(r"([^\W\d_][^:]{1,30}):\s+(?:[^\W\d_]\.\s?){2,3}", needs=":.")
_TWO_APART = pattern(r"\s*[^\W\d_]\S*(?:\t| {3,})[^\W\d_]\S*\s*")
_TITLED = pattern(r"[^\W\d_a-z][^\W\d_]+ +[^\W\d_a-z]")
_IF_CHILD = message("roster.if_child")  # a header that is judged by what stands below it may be one after all
_ENOUGH, _MOSTLY = 3, 0.6  # rows, and the share of them that is written as names are
_GIVEN_AND_ONE = 2  # words of a line
_CERTAIN_HEADER = 3
"""So many header words in one row are no child, even with other words between them."""


class Draft(NamedTuple):
    """A row on its way: what it became, with the entry of a child, or the line (0-based) of whose further row it is."""

    row: Row
    outcome: Outcome
    entry: Entry | None = None
    notes: tuple[Message, ...] = ()
    of: int | None = None

    def asked_for_each(self) -> Draft:
        """Return the row with the question whether several children stand on it."""
        return Draft(self.row, Outcome.LEFT_OUT, notes=(SEVERAL, ONE_EACH))


def draft_rows(found: Unfolded) -> list[Draft]:
    """Return what became of every row, whichever part of a name is practised."""
    drafts, table = [], found.table
    top = _title_alone(table)
    titles = None if table.header is None else next(row.cells for row in table.rows if row.line == table.header)
    for row in table.rows:
        if not any(row.cells):
            drafts.append(Draft(row, Outcome.BLANK))
        elif row.line == top:
            drafts.append(_top_draft(row, table))
        elif table.header is not None and row.line < table.header:
            drafts.append(Draft(row, Outcome.HEADING, notes=(_ABOVE_HEADER,)))
        elif row.line == table.header and table.unsure:
            drafts.append(Draft(row, Outcome.LEFT_OUT, notes=(_perhaps_titles(row),)))
        elif _is_header(row, table):
            two = row.line == table.header and table.titles not in ((), row.cells)  # rows of titles
            known = two or header_roles(row.cells) or len(row.cells) == 1
            drafts.append(Draft(row, Outcome.HEADER, notes=() if known else (_IF_CHILD,)))
            if row.cells != titles and (roles := header_roles(row.cells)):
                table = table._replace(roles=roles, titles=row.cells)
        else:
            drafts.append(_draft_row(row, table, found))
    sure = _without_small([_doubted(draft, found) for draft in drafts], found)
    sure = _without_titles_over_titles(sure, found)
    sure = _without_fillers([_without_no_school(draft, found) for draft in sure], found)
    apart = _without_merged(sure, found)
    return _with_second_words(_asked_alike(apart, found), found)


def _end_in_one(drafts: Sequence[Draft], apart: Collection[int]) -> bool:
    """Say whether one word stands below rows of two of which none is known as a family's alone: labels to cut out."""
    if not drafts[1:]:
        return False
    above, last = drafts[-2:]
    single = above.row.line in apart and last.entry and " " not in "".join(last.row.cells).strip()
    second = [draft.entry.reading.family for draft in drafts if draft.entry and draft.row.line in apart]
    return bool(single) and len(apart) > 1 and all(lean(name) >= 0 for name in second if name)


def _without_titles_over_titles(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Make a title of a cell alone right above titles that come again, be it called as it may: ``Middaggroep``."""
    over = {two.row.line: one.row.line for one, two in pairwise(drafts) if two.outcome is Outcome.HEADER
            and one.entry and two.row.line != found.table.header and sum(map(bool, one.row.cells)) == 1
            and len(two.row.cells) > 1}
    return [Draft(draft.row, Outcome.HEADING, notes=(_ABOVE_HEADER, _IF_CHILD)) if draft.row.line in over.values()
            else draft for draft in drafts]


def _asked_alike(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Ask about two words far apart on a line where those of another one are asked about: ``Petra     Leo``."""
    if found.table.delimiter:
        return drafts
    apart = {draft.row.line for draft in drafts if _TWO_APART.fullmatch(found.lines[draft.row.line].text)}
    if not apart:
        return drafts
    asked = any(SEVERAL in draft.notes or TWO_CHILDREN in draft.notes for draft in drafts if draft.row.line in apart)
    if not asked and not _end_in_one([draft for draft in drafts if draft.outcome is not Outcome.BLANK], apart):
        return drafts
    return [Draft(draft.row, Outcome.LEFT_OUT, notes=(TWO_CHILDREN,)) if draft.entry and draft.row.line in apart
            else draft for draft in drafts]


def _with_second_words(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Take the second word for a family name, be it a word about children, where it tells two apart: ``Leo Hort``."""
    counts = Counter(fold(draft.entry.reading.given) for draft in drafts if draft.entry)
    return [_with_second_word(draft, found.lines[draft.row.line].text)
            if draft.entry and counts[fold(draft.entry.reading.given)] > 1 else draft for draft in drafts]


def _with_second_word(draft: Draft, text: str) -> Draft:
    words, entry = strip_numbering(text).split(), draft.entry
    beside = next((note for note in draft.notes if note.key == "roster.remark"), None)
    if entry is None or beside is None or entry.reading.family or len(words) != _GIVEN_AND_ONE or words != [
            entry.reading.given, beside["words"]] or not words[1].istitle():
        return draft
    told = message("roster.read", given=words[0], family=words[1])
    notes = tuple(told if note == beside else note for note in draft.notes)
    reading = entry.reading._replace(family=words[1])
    return draft._replace(notes=notes, entry=entry._replace(reading=reading, notes=notes))


def _without_small(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Leave out rows of a table whose name is in small letters where hardly another is: ``8:30 | free``.

    A word for nobody or no school is told, any other but a known given name asked about. A name with capitals in it,
    or with a family’s under titles, is one that was typed in haste: ``xobrel,tarn``.
    """
    titled = found.table.header is not None
    small = [_is_small(draft.entry, titled) for draft in drafts if draft.entry]
    if not found.table.delimiter or len(small) < _ENOUGH or share(not each for each in small) < _MOSTLY:
        return drafts
    return [_small_told(draft, _called(draft.entry)) if draft.entry and _is_small(draft.entry, titled) else draft
            for draft in drafts]


def _is_small(entry: Entry, titled: bool) -> bool:
    name = _called(entry)
    return begins_small(name) and name.islower() and not (titled and entry.reading.given and entry.reading.family)


def _without_no_school(draft: Draft, found: Unfolded) -> Draft:
    """Ask about a word for a week off in a name's place, as behind the number of a week."""
    text = found.lines[draft.row.line].text
    if draft.entry is None or not is_no_school(draft.entry.reading) or NAME_LABEL.match(text):
        return draft
    return Draft(draft.row, Outcome.LEFT_OUT, notes=perhaps_unlike(text).notes)


def _without_fillers(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Make nobody of words that hold a free place or show how a row is filled in: ``TBD``, ``Example Student``."""
    fillers = {draft.row.line: draft.entry.reading for draft in drafts if draft.entry and is_filler(draft.entry.reading)
               and not _is_labelled(found.lines[draft.row.line])}
    if not fillers:
        return drafts
    others = [draft.entry.reading for draft in drafts if draft.entry and draft.row.line not in fillers]
    why = {at: why_nobody(reading, others) for at, reading in fillers.items()}
    return [Draft(draft.row, Outcome.LEFT_OUT if why[draft.row.line].doubtful else Outcome.HEADING,
                  notes=why[draft.row.line].notes) if draft.row.line in why else draft for draft in drafts]


def _is_labelled(line: Line) -> bool:
    """Say whether ``Name:`` stands before what was typed, or stood there before it was taken off several lines."""
    before = [str(note["words"]) for note in line.notes if note.key == "roster.remark"]
    return any(NAME_LABEL.match(text) for text in (line.text, *(f"{words}: {line.text}" for words in before)))


def _small_told(draft: Draft, words: str) -> Draft:
    if fold(words) in FREE_SEATS | NO_SCHOOL:
        return Draft(draft.row, Outcome.HEADING, notes=(message("roster.sentence"),))
    if lean(words.split()[0]) > 0 or fold(words.split()[0]) in PARTICLES:
        return draft
    return Draft(draft.row, Outcome.LEFT_OUT, notes=perhaps_unlike(words).notes)


def _called(entry: Entry) -> str:
    return entry.reading.given or entry.reading.family or entry.reading.goes_by or "?"


def _doubted(draft: Draft, found: Unfolded) -> Draft:
    """Ask about a child of a list without titles who would be called by a word of lists, or by that of a sentence."""
    line = found.lines[draft.row.line]
    text = line.text
    if draft.entry is None or found.table.header is not None or NAME_LABEL.match(text):
        return draft
    signs = not text.replace(" ", "").isalpha()  # most lines have none, and are read at each letter that is typed
    if signs and (_COUNTED_INSIDE.search(text) or _holds_a_group(text)):
        return draft.asked_for_each()
    said = not found.table.delimiter and CHAT not in line.notes and _is_said(text)
    nobody = said or (signs and _tells_initials(text)) or is_nobody(draft.entry.reading)
    return Draft(draft.row, Outcome.LEFT_OUT, notes=perhaps_unlike(text).notes) if nobody else draft


def _tells_initials(text: str) -> bool:
    """Say whether only initials stand behind a word that is no given name: ``Board: M.V.``."""
    match = _INITIALS.fullmatch(text)
    return match is not None and not is_given(match[1].split()[0])


def _holds_a_group(text: str) -> bool:
    """Say whether names stand behind a word in small letters, or a row of them behind a colour: ``reds: Xobrel Q``."""
    label = _LABEL.match(text)
    if label is None:
        return False
    small = begins_small(label[1]) and not is_given(label[1]) and _TITLED.match(text, label.end()) is not None
    return small or (fold(label[1]) in COLOURS and are_in_a_row(text[label.end() :]))


def _is_said(text: str) -> bool:
    """Say whether a line is a sentence or a cry that opens with no given name: ``Could I have these? Thanks!``."""
    bare = strip_numbering(text)
    if _ASIDE.match(bare):
        return False
    opening, *rest = bare.strip("¡¿!?., ").split() or [""]
    small = bool(rest) and rest[0].isalpha() and begins_small(rest[0])
    said = is_sentence(bare) and (openers(bare) > 0 or small)
    return (said or bare.endswith(("!", "?"))) and (openers(bare) > 0 or not is_given(opening))


def _without_merged(drafts: list[Draft], found: Unfolded) -> list[Draft]:
    """Ask about a line that made one child or none, in which stand names that nobody of the list was made of."""
    table = found.table
    if table.header is not None or (table.delimiter and sum(any(row.cells) for row in table.rows) > 1):
        return drafts
    made = {draft.row.line: draft.entry.reading for draft in drafts if draft.entry and any(draft.entry.reading[:2])}
    texts = {draft.row.line: found.lines[draft.row.line].text for draft in drafts
             if draft.row.line in made or draft.outcome is Outcome.HEADING}  # who has no name yet is asked about
    texts = {at: text for at, text in texts.items() if at in made or not heads_many_adults(text)}
    merged = lines_of_others(texts, made, by_comma=found.judge.habits.family_by_comma)
    return [draft.asked_for_each() if draft.row.line in merged else draft for draft in drafts]


def _draft_row(row: Row, table: Table, unfolded: Unfolded) -> Draft:
    draft = _became(row, read_row(row, table, unfolded.judge, unfolded.unlike.get(row.line)))
    reading = draft.entry.reading if draft.entry else None
    turned = not (table.delimiter or draft.notes) and "\t" in unfolded.lines[row.line].text and ", " in row.cells[0]
    if draft.entry and reading and turned:  # a row among lines, its family name first
        told = message("roster.read_by_comma", given=reading.given, family=reading.family)
        return draft._replace(entry=draft.entry._replace(notes=(told,)), notes=(told,))
    return draft


def _became(row: Row, found: Entry | LeftOut) -> Draft:
    if isinstance(found, LeftOut):
        outcome = Outcome.HEADING if found.heading else Outcome.LEFT_OUT
        return Draft(row, outcome, notes=found.notes)
    return Draft(row, Outcome.CHILD, found, found.notes)


def settled(draft: Draft, part: NamePart, names_in: str) -> Draft:
    """Return the draft of a child with the name to practise, chosen by ``part``; any other as it is."""
    return _became(draft.row, settle(draft.entry, part, names_in)) if draft.entry else draft


def _is_header(row: Row, table: Table) -> bool:
    """Say whether this is the header row, another one further down, or a line of one header word."""
    if row.line == table.header or (table.header is not None and row.cells == table.titles):
        return True
    filled = [cell for cell in row.cells if cell]
    if len(filled) == 1:
        return fold(filled[0].strip("()[]")) in SOLO_HEADERS
    if table.header is None or header_roles(row.cells) is None or _holds_figures(row, table):
        return False
    if not any(header_role(cell) for cell, role in zip(row.cells, table.roles, strict=False) if role in NAME_ROLES):
        return False  # a girl called as nobody titles a column: Niña, zurda, Ana
    known = sum(header_role(cell) is not None for cell in filled)
    return known == len(filled) or known >= _CERTAIN_HEADER


def _holds_figures(row: Row, table: Table) -> bool:
    """Say whether a cell is a date or a number that is no title: the row of Vanessa Kind and her mother."""
    return any(is_of_figures(cell) and cell not in table.titles for cell in row.cells)


def _title_alone(table: Table) -> int | None:
    """Return the line of a first row that is the title of one column alone: ``Given``, ``Kind``; None where none is."""
    first = next((row for row in table.rows if any(row.cells)), None)
    if table.header is not None or first is None or len(filled := [cell for cell in first.cells if cell]) > 1:
        return None
    bare = filled[0].strip("()[]:,; ")
    named = is_given(bare.rstrip(" 0123456789("))  # Zak 5
    titled = header_role(bare) in NAME_ROLES and fold(bare) not in SOLO_HEADERS and not named
    return first.line if titled and heading_reason(filled[0]) is None else None


def _top_draft(row: Row, table: Table) -> Draft:
    """Take a title of one column for that, and ask where it is a family name and what stands below is one, too."""
    below = next((words[0] for one in table.rows if one.line > row.line and (words := " ".join(one.cells).split())), "")
    name = " ".join(row.cells).strip("()[]:,; ")
    if is_known(name) and is_family(below) and not is_given(below):
        return Draft(row, Outcome.LEFT_OUT, notes=(_perhaps_titles(row),))
    return Draft(row, Outcome.HEADER, notes=(_IF_CHILD,))


def _perhaps_titles(row: Row) -> Message:
    return message("roster.perhaps_titles", words=", ".join(filter(None, row.cells))[:60])


def one_of_each(drafts: Sequence[Draft], found: Unfolded, typed: Sequence[str]) -> list[Draft]:
    """Make nobody of the further rows of a child, which stay with it, where there is a row for each grown-up."""
    rows = [(draft.row, (fold(draft.entry.reading.given), fold(draft.entry.reading.family)))
            for draft in drafts if draft.entry]
    table, unfolded = found.table, found.lines
    titled = table.header is not None and any(map(tells_of_others, table.titles))
    same = further_rows(rows, table) if titled else rows_by_grown_up(
        [(row._replace(cells=(" ".join(typed[row.line : row.line + row.span]),)), name) for row, name in rows])
    same = {**same, **rows_of_a_day_book(rows, table)} if table.header is not None else same
    return [Draft(draft.row, Outcome.FURTHER, notes=(message(
        "roster.same_child", line=unfolded[further.first].origin + 1, shared=further.shared),), of=further.first)
        if (further := same.get(draft.row.line)) else draft for draft in drafts]


def note_repeats(drafts: Sequence[Draft], unfolded: Sequence[Line]) -> list[Draft]:
    """Keep a name that stands on an earlier line too as a second child, and say so."""
    first: dict[tuple[str, str, str], int] = {}
    noted = []
    for draft in drafts:
        if draft.entry:
            reading = draft.entry.reading
            key = (fold(reading.given), fold(reading.family), draft.entry.practice.casefold())
            line = first.setdefault(key, draft.row.line)
            if line != draft.row.line:
                again = message("roster.repeat", line=unfolded[line].origin + 1)
                draft = draft._replace(notes=(*draft.notes, again))
        noted.append(draft)
    return noted
