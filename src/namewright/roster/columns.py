"""Lines into cells: the delimiter, the header row, and what each column holds.

A text is a table where a header row says so, or where most of its lines have the same kind of columns. In
a table without a header of known words the columns are judged by what they hold (``contents``), and a note says so on
each line.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.patterns import pattern
from namewright.roster.contents import Judged, judge, names_in
from namewright.roster.header_words import NAME_OR_FAMILY, SIDES
from namewright.roster.headers import are_sides, header_role, header_roles, is_about_somebody_else
from namewright.roster.heading_words import GREETINGS, OPENERS
from namewright.roster.known import is_family, is_given, is_known, lean
from namewright.roster.name_order import BOTH_BY_COMMA
from namewright.roster.names_in_text import is_small
from namewright.roster.pasted import cells_run_on
from namewright.roster.shares import given_share, share
from namewright.roster.two_title_rows import titles_in_two_rows
from namewright.roster.vocabulary import NAME_ROLES, Role, fold
from namewright.store import keeps_names

WIDE_SPACE = "  "
"""Stands for columns made of two spaces or more."""
DELIMITERS = ("\t", ";", "|", WIDE_SPACE, ",")
_HEADER_WITHIN = 10
_MAX_JOINED = 20
_HALF, _NEARLY_ALL = 0.5, 0.8
_SAID = 3  # words in small letters that make a sentence
_MOST_TITLES, _LEAST_ROWS, _MANY_CELLS = 5, 2, 4
_TWO_CELLS = pattern(r"[^,]*[^\s,],[^\s,][^,]*")
_PLAINLY_CUT = 4  # lines of two cells with no space behind any comma, as programs write them and hardly anybody types
_FEWEST = 4  # lines that tell by their signs alone, signs that draw one
_COUNT = pattern(r"\W*\d{1,3}\s?[.)]\s*[^\W\d_]")
_DECIMALS = pattern(r"(?:[€$£]\s?\d+),(?=\d\d(?!\d))|\d,(?=\d{1,2}\s?(?:[€$£%°]|(?i:euros?|eur|chf|fr|km|kg|cm|m)\b))"
                    r"|(?<=\s)\d{1,3},(?=\d{1,2}(?:\s|$))")
"""A comma within a sum of money, a measure or a figure that stands alone, ``7,50 €``: it parts no columns."""
_DRAWN = "-=─"
_RULE = frozenset(f"{_DRAWN} \t|:+;,")
_ASIDE = pattern(r"\s[-–—]\s|\([^()]+\)$")
_FAR_APART = pattern(r" {3,}", needs=" ")  # Mira     Tilo     Anna, where hardly another line has columns
_NUMBER_CELL = pattern(r"\s*(?:\(?\d{1,4}[.):]?|#\d{1,4}|[-*•–☐□☑☒✓✔✗✘])\s*$")


class Row(NamedTuple):
    """One logical row: its first line (0-based), how many lines it takes, and its cells, trimmed."""

    line: int
    span: int
    cells: tuple[str, ...]


class Table(NamedTuple):
    """How a text is cut: its rows, the first header row (None if none), the roles and headers of its columns.

    ``delimiter`` is empty where every line is free text. In a ``grid`` every cell is a child. ``doubt`` names two
    columns (0-based, the one read as the given name first) of which nothing tells which is which; ``unsure`` says
    that the header may be a child. ``beside`` is where the name of a grown-up begins who was told from the child.
    """

    delimiter: str
    rows: tuple[Row, ...]
    header: int | None
    roles: tuple[Role, ...]
    titles: tuple[str, ...] = ()
    grid: bool = False
    doubt: tuple[int, int] | None = None
    unsure: bool = False
    beside: int | None = None


def lay_out(lines: Sequence[str]) -> Table:
    """Decide how ``lines`` are cut into columns and what the columns hold."""
    filled = [line for line in lines if line.strip()]
    there = [delimiter for delimiter in DELIMITERS if any(delimiter in line for line in filled)]
    runs_on = cells_run_on(filled)
    for delimiter in there:
        for row in _rows(lines, delimiter, most=_HEADER_WITHIN):
            if are_sides(row.cells) and not _is_over_titles(row, lines, delimiter):
                return Table(delimiter, tuple(_rows(lines, delimiter)), row.line, (Role.FULL,) * len(row.cells),
                             grid=True)
            roles = header_roles(row.cells, ruled=_is_ruled(row, lines)) or _over_figures(row, lines, delimiter)
            if roles and not _is_counted(row.cells) and not _may_be_a_family(row, roles, lines, delimiter) and (
                    not _is_group_of_one(row, lines, delimiter) and not _is_as_below(row, lines, delimiter)):
                rows = tuple(_rows(lines, delimiter))
                row, roles, doubt = _in_two_rows(row, roles, rows)
                for seen in (_with_families, _with_families_beside, _with_given_names, _with_whole_names):
                    roles = seen(roles, row, rows)
                return Table(delimiter, rows, row.line, roles, row.cells, doubt=doubt)
    for delimiter in there:
        whole = _joined(lines, delimiter) if runs_on else filled
        if _is_tabular(whole, delimiter) or (len(whole) < len(filled) and _are_even(whole, delimiter)):
            rows = tuple(_rows(lines, delimiter))
            judged = judge([row.cells for row in rows], delimiter, WIDE_SPACE)
            if judged.doubt and delimiter == ";" and _has_a_sparse_column(filled):  # a child has its name in each row
                judged = Judged((Role.FULL, *[Role.OTHER] * (len(judged.roles) - 1)))
            if judged.grid:
                top = next(row.line for row in rows if any(row.cells)) if judged.headed else None
                return Table(delimiter, rows, top, judged.roles, grid=True, unsure=judged.unsure)
            many = len(filled) == 1 and max(names_in(row.cells) for row in rows) > 2
            one_row = many or (len(filled) == 1 and any(_are_by_comma(row.cells) for row in rows))
            if NAME_ROLES.intersection(judged.roles) and not one_row:  # one line of several names is no table
                first = next((row for row in rows if any(row.cells)), None) if judged.headed else None
                first = first if first and first.span == 1 and not _is_as_below(first, lines, delimiter) else None
                return Table(delimiter, rows, first.line if first else None, judged.roles,
                             first.cells if first else (), doubt=judged.doubt, unsure=judged.unsure,
                             beside=judged.beside)
    plain = tuple(Row(index, 1, (_plain(line),)) for index, line in enumerate(lines))
    return Table("", plain, None, (Role.FULL,))


def _is_over_titles(row: Row, lines: Sequence[str], delimiter: str) -> bool:
    """Say whether the row right below is of titles, too: ``Boys | | Girls |`` over ``Name | Age | Name | Age``."""
    below = lines[row.line + row.span : row.line + row.span + 1]
    return any(header_roles(split_cells(line, delimiter) or ()) is not None for line in below)


def _in_two_rows(
    titles: Row, roles: tuple[Role, ...], rows: Sequence[Row]
) -> tuple[Row, tuple[Role, ...], tuple[int, int] | None]:
    """Return the row of titles, roles and doubt, where a second row of titles stands right below or above that."""
    at = rows.index(titles)
    below = rows[at + 1] if at + 1 < len(rows) else None
    if below and (found := titles_in_two_rows(titles.cells, below.cells, known=True)):
        return below._replace(cells=found.titles), found.roles, found.doubt
    if at and (found := titles_in_two_rows(rows[at - 1].cells, titles.cells, known=False)):
        return titles._replace(cells=found.titles), found.roles, found.doubt
    return titles, roles, None


def _joined(lines: Sequence[str], delimiter: str) -> list[str]:
    """Return the filled lines, each with those that a quoted cell of it runs over."""
    whole = (" ".join(lines[row.line : row.line + row.span]) for row in _rows(lines, delimiter))
    return [line for line in whole if line.strip()]


def _is_ruled(row: Row, lines: Sequence[str]) -> bool:
    """Say whether the line below a row is drawn of signs, as under the titles of a table: ``|---|---|``."""
    below = lines[row.line + row.span] if row.line + row.span < len(lines) else ""
    return _RULE.issuperset(below) and sum(map(below.count, _DRAWN)) >= _FEWEST


def _over_figures(row: Row, lines: Sequence[str], delimiter: str) -> tuple[Role, ...] | None:
    """Return the roles of a first row with one title of names and words that nobody knows, where figures stand below.

    ``Nome;Maiúsculas;Minúsculas;Faltam`` over rows that have figures in a column is no child.
    """
    known = [header_role(cell) for cell in row.cells]
    named = any(role in NAME_ROLES and is_known(cell) for cell, role in zip(row.cells, known, strict=True))
    if len(known) < _FEWEST - (not named) or not all(row.cells) or any(map(str.isdigit, "".join(row.cells))) or (
            sum(role in NAME_ROLES for role in known) != 1):
        return None
    rows = [other for other in _rows(lines, delimiter) if any(other.cells[1:])]
    below = [other.cells for other in rows if other.line > row.line]
    if len(below) < _FEWEST or rows[0].line != row.line:
        return None
    figures = any(share(at < len(cells) and any(map(str.isdigit, cells[at])) for cells in below) >= _NEARLY_ALL
                  for at, role in enumerate(known) if role not in NAME_ROLES)
    return tuple(role or Role.OTHER for role in known) if figures else None


def _are_by_comma(cells: Sequence[str]) -> bool:
    """Say whether each of two cells or more holds both parts of a name and a comma: ``Chen, Mia; Park, Leo``."""
    filled = [cell for cell in cells if cell]
    return len(filled) > 1 and all(map(BOTH_BY_COMMA.fullmatch, filled))


def _with_whole_names(roles: tuple[Role, ...], titles: Row, rows: Sequence[Row]) -> tuple[Role, ...]:
    """Return the roles, a column of given names as one of whole names where it holds these and no other is of families.

    Whoever writes ``Vorname`` over ``Mira Vost`` means no name of two words: the second ones are known as families, or
    are no given names as the first ones are. Of names on no list its singular tells that, or the comma that each has.
    """
    if not {Role.FAMILY, Role.FULL}.isdisjoint(roles) or roles.count(Role.GIVEN) != 1:
        return roles
    at = roles.index(Role.GIVEN)
    texts = [row.cells[at] for row in rows if row.line > titles.line and at < len(row.cells) and row.cells[at]]
    cells = [text.split() for text in texts]
    comma = share(bool(BOTH_BY_COMMA.fullmatch(text)) for text in texts) >= _NEARLY_ALL
    whole = share(len(words) > 1 and lean(words[-1]) <= 0 for words in cells) >= _NEARLY_ALL
    known = share(len(words) > 1 and (is_family(words[-1]) or (is_given(words[0]) and not is_given(words[-1])))
                  for words in cells) >= _HALF
    unsaid = not any(is_given(words[-1]) for words in cells) and not _promises_several(titles.cells[at])
    sure = len(cells) >= _FEWEST and ((whole and (known or unsaid)) or (comma and not is_family(titles.cells[at])))
    return tuple(Role.FULL if sure and role is Role.GIVEN else role for role in roles)


def _with_families(roles: tuple[Role, ...], titles: Row, rows: Sequence[Row]) -> tuple[Role, ...]:
    """Return the roles, ``Nom de l’élève`` and ``Name des Kindes`` as family names where given ones stand beside them.

    Alone these are over whole names, and such a cell holds the given name of its row as well. Where the cells below are
    given names, those beside them are a grown-up's.
    """
    if Role.FAMILY in roles or roles.count(Role.GIVEN) != 1 or roles.count(Role.FULL) != 1:
        return roles
    given, whole = roles.index(Role.GIVEN), roles.index(Role.FULL)
    title = fold(titles.cells[whole]).split()
    if title[0] not in NAME_OR_FAMILY or len(title) == 1:
        return roles
    pairs = [(row.cells[given], row.cells[whole]) for row in rows
             if row.line > titles.line and len(row.cells) > max(given, whole) and row.cells[given] and row.cells[whole]]
    within = share(not {*fold(one).split()}.isdisjoint(fold(other).split()) for one, other in pairs)
    families = given_share([other for _, other in pairs]) < _HALF
    if pairs and within < _HALF and families:
        return tuple(Role.FAMILY if role is Role.FULL else role for role in roles)
    return tuple(Role.OTHER if role is Role.GIVEN else role for role in roles)


def _with_families_beside(roles: tuple[Role, ...], titles: Row, rows: Sequence[Row]) -> tuple[Role, ...]:
    """Return the roles, the only title of family names as that where it stands beside the child's single names.

    ``Nombre del niño | Apellidos`` over ``Mira | Vost``: beside whole names it would be a grown-up's.
    """
    families = [at for at, title in enumerate(titles.cells) if header_role(title) is Role.FAMILY]
    if not {Role.GIVEN, Role.FAMILY}.isdisjoint(roles) or roles.count(Role.FULL) != 1 or len(families) != 1:
        return roles
    whole, family = roles.index(Role.FULL), families[0]
    cells = [row.cells[whole].split() for row in rows
             if row.line > titles.line and len(row.cells) > whole and row.cells[whole]]
    if abs(whole - family) > 1 or share(len(words) == 1 for words in cells) <= _HALF:
        return roles
    return tuple({whole: Role.GIVEN, family: Role.FAMILY}.get(at, role) for at, role in enumerate(roles))


def _with_given_names(roles: tuple[Role, ...], titles: Row, rows: Sequence[Row]) -> tuple[Role, ...]:
    """Return the roles, the one column of known given names under a title nobody knows as such: ``Zuname | Taufname``.

    Only where the titles name family names and nothing else to practise.
    """
    if Role.FAMILY not in roles or not {Role.GIVEN, Role.FULL, Role.GOES_BY, Role.PRACTISE}.isdisjoint(roles):
        return roles
    unknown = [at for at, title in enumerate(titles.cells) if title and header_role(title) is None
               and not is_about_somebody_else(title)]
    below = {at: [row.cells[at] for row in rows if row.line > titles.line and at < len(row.cells) and row.cells[at]]
             for at in unknown}
    given = [at for at, cells in below.items() if given_share(cells) > _HALF and len(set(cells)) > _HALF * len(cells)]
    return tuple(Role.GIVEN if at in given else role for at, role in enumerate(roles)) if len(given) == 1 else roles


def _is_group_of_one(row: Row, lines: Sequence[str], delimiter: str) -> bool:
    """Say whether the only title in a row is the group of a child, as it is in other rows: ``Ana Gil, Niños``."""
    said = [at for at, cell in enumerate(row.cells) if header_role(cell)]
    if len(said) != 1 or fold(row.cells[said[0]]) not in SIDES or not any(" " in cell for cell in row.cells):
        return False
    others = [other.cells[said[0]] for other in _rows(lines, delimiter)
              if other.line != row.line and said[0] < len(other.cells) and other.cells[said[0]]]
    return any(fold(cell) in SIDES for cell in others) or (
        len(others) >= _FEWEST and 2 * len(set(others)) <= len(others))


def _is_as_below(titles: Row, lines: Sequence[str], delimiter: str) -> bool:
    """Say whether a row has no titles, because what stands beside its names does so in most: ``Niño, Ana – bus``."""
    others = [row.cells for row in _rows(lines, delimiter) if row.line != titles.line and any(row.cells)]
    return len(others) >= _LEAST_ROWS and any(
        _ASIDE.search(cell) and share(at < len(cells) and _ASIDE.search(cells[at]) is not None
                                      for cells in others) >= _HALF
        for at, cell in enumerate(titles.cells))


def _is_counted(cells: Sequence[str]) -> bool:
    """Say whether a row has a number in front of what is no title: ``2. Lýdie   Žák``, whose family is called pupil."""
    first = next(filter(None, cells), "")
    return _COUNT.match(first) is not None and header_role(first) is None


def _may_be_a_family(titles: Row, roles: Sequence[Role], lines: Sequence[str], delimiter: str) -> bool:
    """Say whether a first row may be a child of a family called Kind: below are two columns of unknown single names."""
    said = [at for at, cell in enumerate(titles.cells) if header_role(cell) in NAME_ROLES]
    if len(said) != 1 or not is_family(titles.cells[said[0]]) or roles[said[0]] is not Role.FULL:
        return False
    rows = [row.cells for row in _rows(lines, delimiter) if row.line > titles.line and any(row.cells)]
    columns = [[row[at] for row in rows if at < len(row) and row[at]] for at in range(len(titles.cells))]
    single = [names_in(cells) == len(rows) == len(set(cells)) and not any(" " in cell for cell in cells)
              for cells in columns]
    alike = any(one and titles.cells[at] and header_role(titles.cells[at]) is None for at, one in enumerate(single))
    return bool(rows) and alike and single[said[0]] and given_share(columns[said[0]]) < _HALF


def _promises_several(title: str) -> bool:
    """Say whether a title of given names is one of several: ``Prénoms``."""
    return any(word.endswith(("s", "men", "i")) for word in fold(title).split() if word not in ("is", "child's"))


def stray_cells(line: str) -> list[str]:
    """Return the cells of a line among lines that have no columns, without a number or bullet in front."""
    if "\t" not in line:
        whole = " ".join(line.split())
        return [whole] if whole else []
    cells = [cell for cell in (" ".join(cell.split()) for cell in line.split("\t")) if cell]
    return cells[1:] if len(cells) > 1 and _NUMBER_CELL.match(cells[0]) else cells


@keeps_names(1024)
def _plain(line: str) -> str:
    """Write the cells of a stray row as one name: two words of a name, or what stands behind a name as a remark."""
    cells = stray_cells(line) if "\t" in line else []
    if len(cells) < 2:
        words = _FAR_APART.split(line.strip())
        return ", ".join(words) if len(words) > 2 and all(map(str.isalpha, words)) else _unquote(line)
    single = all(" " not in cell for cell in cells)
    if single and (all(lean(cell) > 0 for cell in cells) or (len(cells) > 2 and not any(map(is_known, cells)))):
        return ", ".join(cells)  # given names alone: several children
    if " " not in cells[0] and " " not in cells[1]:
        name = f"{cells[0]}, {cells[1]}" if lean(cells[0]) < lean(cells[1]) else f"{cells[0]} {cells[1]}"
        cells = [name, *cells[2:]]
    return " – ".join([cells[0], ", ".join(cells[1:])]) if len(cells) > 1 else cells[0]


def cells_by_each_sign(line: str) -> list[list[str]]:
    """Return the cells of a line by each sign that it has and that may part columns."""
    return [split_cells(line, sign) or [] for sign in DELIMITERS if sign in line]


def has_titles(line: str) -> bool:
    """Say whether a line has the titles of a table, by whatever sign its cells are parted."""
    return any(header_roles(cells) is not None for cells in cells_by_each_sign(line))


def split_cells(line: str, delimiter: str) -> list[str] | None:
    """Cut a line; a cell that opens with a quotation mark runs to the closing one (RFC 4180).

    Returns None where a quoted cell is not closed in this line. A quotation mark inside a cell is text.
    """
    if delimiter == WIDE_SPACE:
        return [cell.strip() for cell in re.split(r" {2,}", line.strip())]  # one may be a tab alone
    if '"' not in line:
        return [" ".join(cell.split()) for cell in line.split(delimiter)]
    cells = _cut(line, delimiter, sameness=False) if line.lstrip(" ").startswith('"') else None
    if cells is not None and all(quoted for _, quoted in cells):  # a program quotes each cell of a line
        return [cell for cell, _ in cells]
    cells = _cut(line, delimiter, sameness=True)
    return None if cells is None else [cell for cell, _ in cells]


def _cut(line: str, delimiter: str, *, sameness: bool) -> list[tuple[str, bool]] | None:
    """Return the cells of a line, and whether each was quoted; ``sameness`` says that a mark alone may mean it."""
    cells: list[tuple[str, bool]] = []
    at = 0
    while at <= len(line):
        closed = _quoted_cell(line, at, delimiter, sameness=sameness)
        if closed == -1:
            return None
        end = closed or line.find(delimiter, at)
        end = len(line) if end < 0 else end
        cells.append((_unquote(line[at:end]), True) if closed else (" ".join(line[at:end].split()), False))
        at = end + 1
    return cells


def join_cells(cells: Sequence[str], delimiter: str) -> str:
    """Write cells as a line that `split_cells` cuts into the same."""
    if delimiter == WIDE_SPACE:
        return "   ".join(cells)
    quoted = any(delimiter in cell or cell.startswith('"') for cell in cells)
    return delimiter.join(map(_quoted, cells) if quoted else cells)


def _quoted(cell: str) -> str:
    doubled = cell.replace('"', '""')
    return f'"{doubled}"'


def _quoted_cell(line: str, at: int, delimiter: str, *, sameness: bool) -> int:
    """Return where a quoted cell that opens at ``at`` ends; 0 if it is not quoted, -1 if it is not closed.

    A mark alone in its cell quotes nothing where it may say that the cell is as the one above.
    """
    start = at
    while line.startswith(" ", start):
        start += 1
    if not line.startswith('"', start):
        return 0
    alone = sameness and _ends_a_cell(line, start + 1, delimiter)
    close = start + 1
    while True:
        close = line.find('"', close)
        if close < 0:
            return 0 if alone else -1
        if line.startswith('"', close + 1):
            close += 2
            continue
        if alone and line[:close].rstrip(" ").endswith(delimiter):
            return 0
        return _ends_a_cell(line, close + 1, delimiter)


def _ends_a_cell(line: str, at: int, delimiter: str) -> int:
    """Return where a cell ends of which only spaces may follow; 0 where more does."""
    while line.startswith(" ", at):
        at += 1
    return at if at == len(line) or line.startswith(delimiter, at) else 0


def _unquote(cell: str) -> str:
    cell = " ".join(cell.split())
    if len(cell) > 1 and cell[0] == cell[-1] == '"':
        return " ".join(cell[1:-1].replace('""', '"').split())
    return cell


def _rows(lines: Sequence[str], delimiter: str, most: int = 0) -> Iterable[Row]:
    """Yield the logical rows; ``most`` stops after that many filled ones."""
    index = filled = 0
    while index < len(lines) and not (most and filled >= most):
        span = 1
        cells = split_cells(lines[index], delimiter)
        if cells is None or (cells[-1] == '"' and _closes_below(lines, index, delimiter)):
            cells, span = _join(lines, index, delimiter)
        yield Row(index, span, tuple(cells))
        filled += any(cells)
        index += span


def _closes_below(lines: Sequence[str], index: int, delimiter: str) -> bool:
    """Say whether a mark at the end of a line opens a cell that begins with a line break, and is none of sameness."""
    below = lines[index + 1].partition('"') if index + 1 < len(lines) else ("", "", "")
    return bool(below[1]) and bool(below[0].strip()) and delimiter not in below[0] and (
        not below[2].strip() or below[2].lstrip().startswith(delimiter))


def _join(lines: Sequence[str], index: int, delimiter: str) -> tuple[list[str], int]:
    """Join a quoted cell that runs over several lines; if it never closes, its mark is only text."""
    text = lines[index]
    for span in range(2, min(_MAX_JOINED, len(lines) - index) + 1):
        addition = lines[index + span - 1]
        text = f"{text} {addition}"
        cells = split_cells(text, delimiter) if '"' in addition else None
        if cells is not None:
            if any(cell.startswith('"') and cell != '"' and cell.count('"') % 2 for cell in cells):
                break  # what opened was not closed: a child may stand on each line
            return cells, span
    return [" ".join(cell.replace('"', " ").split()) for cell in lines[index].split(delimiter)], 1


def _has_a_sparse_column(filled: Sequence[str]) -> bool:
    """Say whether each line has the same semicolons, and now and then a remark behind: a program wrote them so.

    A second child behind whole names opens with a given name, or is written as the first one is.
    """
    if len(filled) < _FEWEST or len({line.count(";") for line in filled}) > 1:
        return False
    names, *behind = zip(*(line.split(";") for line in filled), strict=True)
    said = [cell.split() for column in behind for cell in column if cell.strip()]
    whole = all(len(name.split()) > 1 for name in names)
    return whole and bool(said) and not any(
        all(map(opens_as_a_name, words)) and (len(words) > 1 or is_given(words[0])) for words in said)


def _are_even(filled: Sequence[str], delimiter: str) -> bool:
    """Say whether a program wrote the lines: each has as many cells, and none that is not quoted a space in front."""
    rows = [split_cells(line, delimiter) or () for line in filled]
    spaced = any(f"{delimiter} " in line and '"' not in line for line in filled)
    return len(rows) > 1 and {len(cells) for cells in rows} == {max(2, len(rows[0]))} and not spaced


def _is_said(line: str) -> bool:
    """Say whether a line is a sentence that opens with a small word or a greeting: ``Este mes con Mia, Leo …``."""
    first, *words = line.split()
    bare = first.strip(",!:")
    greets = fold(bare) in GREETINGS and (bare != first or not is_given(bare))  # Olá, Mia e Leo …
    opens = fold(bare) in OPENERS and not is_given(bare)
    return (greets or opens) and sum(map(is_small, words)) >= _SAID


def _below_titles(filled: Sequence[str], delimiter: str) -> Sequence[str]:
    """Return the lines below those without the sign at the top, where all have as many cells, and these are many."""
    top = next((at for at, line in enumerate(filled[: _MOST_TITLES + 1]) if delimiter in line.strip()), 0)
    if not top or len(filled) - top < _LEAST_ROWS:
        return filled
    rows = [split_cells(line, delimiter) or () for line in filled[top:]]
    even = len(set(map(len, rows))) == 1 and all(sum(map(bool, cells)) >= _MANY_CELLS for cells in rows)
    return filled[top:] if even else filled


def _is_tabular(filled: Sequence[str], delimiter: str) -> bool:
    """Say whether the lines have columns.

    Most lines must have two cells or more (with tabs a number in front is none, unless all have one), or for commas
    three or more on three lines, since ``Family, Given`` has one comma. Quoted cells (``"Moss, Katie",K``) make two
    enough.
    """
    if delimiter in ";," and share(map(_is_said, filled)) > _HALF:
        return False
    if delimiter == ";" and _has_a_sparse_column(filled):
        return True
    filled = _below_titles(filled, delimiter)
    if delimiter == ",":
        filled = [_DECIMALS.sub("0", line) for line in filled]
    least, most, lines = {"\t": (2, 0.5, 1), ",": (3, 0.8, 3)}.get(delimiter, (2, 0.6, 1))
    if delimiter == "," and all(line.lstrip().startswith('"') for line in filled):
        least, lines = 2, 1
    elif delimiter == "," and all(map(_TWO_CELLS.fullmatch, filled)):
        least, lines = 2, _PLAINLY_CUT
    elif delimiter == "," and any(line.endswith(",") for line in filled) and _are_even(filled, ","):
        least = 2
    if sum(delimiter in line for line in filled) < most * len(filled):
        return False
    if len(filled) < lines or (delimiter == WIDE_SPACE and any("," in line for line in filled)):
        return False
    count = sum(sum(map(bool, split_cells(line, delimiter) or ())) >= least for line in filled)
    if delimiter == "\t" and count < len(filled):
        count = sum(len(stray_cells(line)) >= least for line in filled)
    return count > 0 and count >= most * len(filled)


