"""Two classes side by side: a gap that is empty in each row taken out, and columns under names of classes apart.

With the gap gone, the same titles stand right beside each other, as other tables have it; where they are those of
given and family names, the tables are put one below the other, and so they are without a gap under the names of
groups. Where every column has the
name of a class, an age or a state over it (``K1``, ``3 anni``, ``Absent``) and nothing but names below, the groups are
put one below the other, each under its title; a column that counts the rows is none of them. Out of scope: titles of
one word that nobody knows, unless the columns end at different rows, as those of a record do not.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise

from namewright.names.casing import begins_small
from namewright.patterns import pattern
from namewright.roster.buddies import is_of_buddies
from namewright.roster.capitals import is_titled
from namewright.roster.columns import DELIMITERS, WIDE_SPACE, join_cells, split_cells
from namewright.roster.further_rows import is_about_others
from namewright.roster.headers import are_sides, header_role, header_roles, names_both_parts
from namewright.roster.heading_words import ARTICLES, LEVELS
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_known, opens_with_given
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.several import may_be_a_name
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import GROUPS, LATE, NAME_ROLES, STATES, fold, word_set

_AGES = word_set("""
    anni, anos, ans, jahre, year, years, old, olds, ano, anno, grade, infantil, an, piccoli, mezzani, grandi, petits,
    moyens, grands, toddlers, infants, krippe, vorschule, vorschulkinder""")
_STATES = word_set("in, da, verspatung")
"""What is a state beside another in a row of titles, and may be anything else elsewhere."""
_FEWEST, _LEAST = 3, 2  # rows, and columns
_MOST_LINES, _MOST_ABOVE = 5_000, 3
_HALF = 0.5
_NUMBER = pattern(r"[0-9]+|\b(?:[ivx]+|[a-d])\b")
_SHORT = pattern(r"[a-z]{0,3}[0-9]{1,2}[a-z]?|[0-9]{1,2}[.ºª°]{0,2}\s?[a-z]|am|pm")
_COUNT = pattern(r"[0-9]{1,3}[.)]?")
_WIDE = pattern(r"\s{2,}")
_SIGNS = " :.-–()"


def from_classes_beside(lines: Sequence[Line]) -> list[Line]:
    """Return the rows of a table without columns that are empty in each, and classes that stand alone in columns."""
    if len(lines) > _MOST_LINES:
        return list(lines)
    for sign in DELIMITERS:
        if groups := _groups(lines, sign):
            return groups
    for sign in COLUMN_SIGNS:
        found = {at: split_cells(line.text, sign) for at, line in enumerate(lines) if sign in line.text}
        rows = {at: cells for at, cells in found.items() if cells}
        if len(rows) < max(_FEWEST, len(found)):
            continue
        if (blocks := _under_groups(list(rows.values()))) and (apart := _tables_apart(lines, rows, blocks, sign)):
            return apart
        filled = sorted({place for cells in rows.values() for place, cell in enumerate(cells) if cell})
        gaps = set(range(filled[0], filled[-1])) - set(filled) if filled else set()
        if gaps and (apart := _tables_apart(lines, rows, _blocks(filled), sign)):
            return apart
        if gaps:
            return [line._replace(text=join_cells(
                [cell for place, cell in enumerate(rows[at]) if place not in gaps], sign)) if at in rows else line
                for at, line in enumerate(lines)]
    return list(lines)


def _under_groups(rows: Sequence[Sequence[str]]) -> list[list[int]]:
    """Return the columns under each name of a group, ``1A | | 1B |`` over ``Nom | Prénom | Nom | Prénom``."""
    for upper, lower in pairwise(rows[: _MOST_ABOVE + 1]):
        starts = [place for place, cell in enumerate(upper) if cell]
        if len(starts) >= _LEAST and not starts[0] and (
                are_sides(upper) or all(_is_of_a_group(upper[place]) for place in starts)):
            return [[place for place in range(start, min(end, len(lower))) if lower[place]]
                    for start, end in zip(starts, [*starts[1:], len(lower)], strict=True)]
    return []


def _blocks(filled: Sequence[int]) -> list[list[int]]:
    """Return the columns that stand together, a gap between each of these and the next."""
    blocks: list[list[int]] = []
    for place in filled:
        if blocks and blocks[-1][-1] == place - 1:
            blocks[-1].append(place)
        else:
            blocks.append([place])
    return blocks


def _tables_apart(lines: Sequence[Line], rows: Mapping[int, Sequence[str]],
                  blocks: Sequence[Sequence[int]], sign: str) -> list[Line]:
    """Return the tables one below the other where all have the same titles of both parts of a name, else nothing.

    Without a gap or groups over them the second name may be a parent's, and a column of whole names is read row by row.
    """
    parts = {at: [[cells[place] if place < len(cells) else "" for place in block] for block in blocks]
             for at, cells in rows.items()}
    top = next((at for at, found in parts.items() if header_roles(found[0])), None)
    if top is None or len(blocks) < _LEAST or any(list(map(fold, one)) != list(map(fold, parts[top][0]))
                                                  for one in parts[top]):
        return []
    if not names_both_parts(parts[top][0]):
        return []
    found = [line for at, line in enumerate(lines) if at < top and at not in rows]
    titled = [at for at in rows if at < top and any(map(header_role, rows[at]))]  # Niños, Niñas: a column is called so
    found += [lines[at].heading(" & ".join(filter(None, rows[at]))) for at in titled]
    for number in range(len(blocks)):
        for at, cells in parts.items():
            heads = [cell for cell in cells[number] if cell and at not in titled]
            if at < top and heads:
                found.append(lines[at].heading(" ".join(heads)))
            elif at >= top and heads:
                found.append(lines[at].part(join_cells(cells[number], sign)))
    return [*found, *(line for at, line in enumerate(lines) if at > top and at not in rows and line.text.strip())]


def _groups(lines: Sequence[Line], sign: str) -> list[Line]:
    """Return the groups of columns one below the other, none where a sign parts no such columns."""
    there = [at for at, line in enumerate(lines) if line.text.strip()]
    top = next((at for at in there[: _MOST_ABOVE + 1] if sign in lines[at].text.strip()), None)
    if top is None or not _may_head(_cells(lines[top].text, sign)):
        return []
    below = [at for at in there if at > top]
    rows = {at: cells for at in (top, *below) if (cells := _row(lines[top].text, lines[at].text, sign))}
    if len(rows) <= 1 or len(rows) <= len(below):
        return []
    filled = sorted({place for cells in rows.values() for place, cell in enumerate(cells) if cell})
    names = [place for place in filled if not _counts(place, rows)]
    if len(filled) > len(names) + 1 or not _are_classes(rows, names):  # numbers of their own: numbered
        return []
    return list(_one_by_one(lines, rows, names))


def _cells(text: str, sign: str) -> Sequence[str]:
    return split_cells(text, sign) or ()


def _row(titles: str, text: str, sign: str) -> Sequence[str]:
    """Return the cells of a row; of columns made of spaces, by where their titles begin."""
    if sign != WIDE_SPACE:
        return _cells(text, sign) if sign in text or sign != "," else (text.strip(),)
    starts = [0, *(gap.end() for gap in _WIDE.finditer(titles.rstrip()) if gap.start())]
    apart = all(len(text) <= at or text[at - 2 : at].isspace() for at in starts[1:])
    if apart and (not text[:1].isspace() or len(text) > starts[-1]):
        ends = [*starts[1:], None]
        return [text[start:end].strip() for start, end in zip(starts, ends, strict=True)]
    cells = _cells(text, sign)
    return cells if len(cells) == len(starts) else ()


def _counts(place: int, rows: Mapping[int, Sequence[str]]) -> bool:
    """Say whether a column counts the rows and has no name over it."""
    title, *cells = [cells[place] if place < len(cells) else "" for cells in rows.values()]
    return header_role(title) not in NAME_ROLES and not any(map(str.isdigit, title)) and all(
        _COUNT.fullmatch(cell) for cell in cells if cell)


def _may_head(cells: Sequence[str]) -> bool:
    """Say quickly whether a row may hold names of groups: two or more, none twice, none a title of columns of names."""
    if are_sides(cells):  # read in the order of the rows
        return False
    filled = [cell for cell in cells if cell]
    if len(filled) < _LEAST or len(set(map(fold, filled))) < len(filled):
        return False
    return header_roles(filled) is None or all(map(_is_of_a_group, filled))


def _are_classes(rows: Mapping[int, Sequence[str]], filled: Sequence[int]) -> bool:
    """Say whether the first row names a group over each column, and names stand below, each once."""
    titles, *others = rows.values()
    heads = [titles[place] if place < len(titles) else "" for place in filled]
    columns = [[row[place] for row in others if place < len(row) and row[place]] for place in filled]
    names = [name for column in columns for name in column]
    if len(heads) < _LEAST or not all(heads) or not names or not all(map(_is_a_name, names)):
        return False
    if len(set(map(fold, names))) < len(names):
        return False
    if all(map(_is_of_a_group, heads)):
        return not all(map(_is_a_state, heads)) or not STATES.isdisjoint(map(fold, heads))
    if not all(columns):
        return False
    known, whole = given_share(names) >= _HALF, all(" " in name and " " not in head for name in names for head in heads)
    ragged = len(set(map(len, columns))) > 1 and all(map(_is_filled_from_the_top, _down(others, filled)))
    led = known and all(fold(head.split()[0]) in ARTICLES for head in heads)
    return all(map(_may_name_a_group, heads)) and (led or (ragged and whole))


def _down(rows: Sequence[Sequence[str]], filled: Sequence[int]) -> Iterator[list[bool]]:
    for place in filled:
        yield [place < len(row) and bool(row[place]) for row in rows]


def _is_filled_from_the_top(cells: Sequence[bool]) -> bool:
    return sorted(cells, reverse=True) == list(cells)


def _is_a_name(cell: str) -> bool:
    if ":" in cell or any(map(str.isdigit, cell)) or not is_titled(cell):
        return False
    return may_be_a_name(cell) or (opens_with_given(cell) and len(cell.split()) == _LEAST)  # Juliana Leite


def _is_of_a_group(head: str) -> bool:
    """Say whether a cell is about a class, an age or a state."""
    bare = fold(head).strip(_SIGNS)
    if not GROUPS.isdisjoint(words := bare.split()) and len(words) == _LEAST:  # Grupo Azul, though Azul is a name
        return True
    return _is_a_state(head) or _names_a_class(head) or _SHORT.fullmatch(bare) is not None or _is_of_a_level(bare)


def _is_a_state(head: str) -> bool:
    bare = fold(head).strip(_SIGNS)
    return bare in STATES or bare in _STATES or not LATE.isdisjoint(bare.split())


def _is_of_a_level(bare: str) -> bool:
    """Say whether words are a level or an age and a number or a letter: ``Pré II``, ``3 años``; not ``Phone 2``."""
    words = _NUMBER.sub(" ", bare).replace("º", " ").replace("-", " ").strip(_SIGNS).split()
    return bool(words) and all(word.strip(".") in LEVELS | _AGES for word in words)


def _may_name_a_group(head: str) -> bool:
    """Say whether a title may be what a group is called: a word or two that are no name, as animals are."""
    words = [word for word in head.split() if fold(word) not in ARTICLES]
    if header_role(head) is not None or is_about_others(head) or any(is_of_buddies(fold(word)) for word in words):
        return False
    return 0 < len(words) <= _LEAST and not any(map(is_known, words)) and not begins_small(words[-1])


def _names_a_class(head: str) -> bool:
    """Say whether a cell is about a class and its room or teacher, and titles no column."""
    role, counted = header_role(head), len(head.split()[-1]) == 1 and " " in head  # Room 4, Klasse A
    titles = role in NAME_ROLES or (role is not None and not counted)
    about = heading_reason(head) is not None or (counted and role is not None)
    if any(is_of_buddies(fold(word)) for word in head.split()):
        return False
    return about and not titles and not is_about_others(head) and (counted or not opens_with_given(head))


def _one_by_one(lines: Sequence[Line], rows: Mapping[int, Sequence[str]], filled: Sequence[int]) -> Iterator[Line]:
    """Yield what stands above, each class with its heading, and what stands below."""
    top, last = min(rows), max(rows)
    yield from lines[:top]
    for place in filled:
        cells = [(at, row[place]) for at, row in rows.items() if place < len(row) and row[place]]
        yield from (lines[at].heading(cell) if at == top else lines[at].part(cell) for at, cell in cells)
    yield from (line for at, line in enumerate(lines) if at not in rows and (at > last or (at > top and line.text)))
