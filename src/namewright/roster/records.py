"""Records that a program wrote (JSON, YAML, XML, contacts, events of a calendar) into a table or a list of names.

The keys are the titles of the columns, so that these are read as those of any table are. What stands round about the
records (a teacher, a school, a class) and what is known not to be a child's is told as a heading, and never made.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import header_role, header_roles, is_about_somebody_else
from namewright.roster.pasted import Line, is_markup
from namewright.roster.structured import Node, Value, tree_of
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, Role, fold
from namewright.roster.written import NOTES

_CARD = pattern(r"\s*BEGIN:(VEVENT|VCARD|VCALENDAR)\s*", needs=":")
_FIELD = pattern(r"(?:[\w-]+\.)?([A-Z-]+)(?:;[^:]*)?:(.*)", needs=":")
_ESCAPED = pattern(r"\\([,;:\\nN])", needs="\\")
_NOT_ESCAPED = pattern(r"(?<!\\);", needs=";")
_BETWEEN = pattern(r"[\W_]+|(?<=[a-z])(?=[A-Z])")
_OF_RECORDS = message("roster.from_records")
_ALIKE = 0.5
_MOST_TITLES = 60
"""So many have a column each: with more, records with keys of their own would make a table that grows by the square."""
_SIGNS = frozenset("{[:=<")
"""Of which each text of keys and values has one."""


class _Group(NamedTuple):
    """Records that stand together, under which key."""

    key: str
    parts: tuple[Value | Node, ...]


def from_records(lines: Sequence[str]) -> list[Line] | None:
    """Return the records of a text as rows under a line of titles; None where it holds no records."""
    if _SIGNS.isdisjoint("\n".join(lines)):
        return None
    if any(map(_CARD.fullmatch, lines)):
        return list(_from_cards(lines)) or None
    tree = None if any(map(is_markup, lines)) else tree_of(lines)
    if tree is None:
        return None
    told: list[Line] = []
    groups = list(_groups(tree, "", told))
    found = list(_written(groups))
    return [*told, *found] if found else [Line("", at).heading(line) for at, line in enumerate(lines)]


def _groups(node: Node, key: str, told: list[Line]) -> Iterator[_Group]:
    """Yield the groups of records below a node; what stands beside them is added to ``told``."""
    parts = [(of, part) for of, part in node.pairs() if not _is_of_others(of) or not isinstance(part, Node)]
    inner = [(of, part) for of, part in parts if isinstance(part, Node)]
    if not node.keyed and len(inner) == len(node.parts) == 1 and not _is_a_record(inner[0][1]):
        yield from _groups(inner[0][1], key, told)
    elif (columns := _by_columns(node)) is not None:
        yield _Group(key, tuple(columns))
    elif node.keyed and not _is_a_list(node):
        lists = _lists_of_children(inner)
        for of, part in parts:
            if isinstance(part, Value) and any(map(is_letter, f"{of}{part.text}")):
                told.append(Line("", part.line).heading(f"{of}: {part.text}"))
            elif isinstance(part, Node) and part in lists:
                yield from _groups(part, of, told)
    elif any(_holds_children(part) or _is_a_list_of_records(part) for _, part in inner):
        for of, part in inner:
            yield from _groups(part, of or key, told)
    elif any(of for of, _ in inner) and len({fold(of) for of, _ in inner}) == len(inner):
        yield _Group(key, tuple(_keyed_by_name(inner)))
    else:
        yield _Group(key, tuple(part for _, part in parts))


def _is_of_others(key: str) -> bool:
    return is_about_somebody_else(key) or not OTHER_PEOPLE.isdisjoint(map(fold, _BETWEEN.split(key)))


def _is_a_list(node: Node) -> bool:
    """Say whether keyed parts are records all alike: an element that comes again, or records by their number."""
    inner = [part for part in node.parts if isinstance(part, Node) and part.keyed]
    counts = Counter(map(fold, node.keys))
    if len(inner) < 2 or len(inner) < len(node.parts):
        return len(node.parts) > 1 and len(counts) == 1
    keys = [set(part.keys) for part in inner]
    often = Counter(key for each in keys for key in each)
    return all(any(often[key] > _ALIKE * len(keys) for key in each) for each in keys)


def _is_a_record(node: Node) -> bool:
    """Say whether a value of a node itself is a name."""
    if not node.keyed or _is_a_list(node) or _holds_children(node):
        return False
    own = [(key, part) for key, part in node.pairs() if isinstance(part, Value) or part.keyed]
    titles = [title for key, part in own for title in (
        [key] if isinstance(part, Value) else [of for of, _ in _flat(part, key)])]
    return any(header_role(title) in NAME_ROLES for title in titles)


def _is_a_list_of_records(node: Node) -> bool:
    return not node.keyed and any(isinstance(part, Node) for part in node.parts)


def _lists_of_children(inner: Sequence[tuple[str, Node]]) -> frozenset[Node]:
    """Return the parts that hold children: those whose key says so, else all that may."""
    return frozenset(part for of, part in inner if _says_children(of)) or frozenset(part for _, part in inner)


def _says_children(key: str) -> bool:
    return header_role(key) is Role.FULL or not CHILD_WORDS.isdisjoint(map(fold, _BETWEEN.split(key)))


def _holds_children(node: Node) -> bool:
    """Say whether a record is a group: a list of records stands in it, or one whose key says children."""
    for of, part in node.pairs():
        if isinstance(part, Node) and not _is_of_others(of):
            listed = not part.keyed or _is_a_list(part)
            if listed and (_says_children(of) or any(isinstance(each, Node) and each.keyed for each in part.parts)):
                return True
    return False


def _by_columns(node: Node) -> list[Node] | None:
    """Return the rows of columns that are kept each as a list under its title; None where they are not."""
    columns = [(key, part.parts) for key, part in node.pairs() if isinstance(part, Node) and not part.keyed]
    if len(columns) < 2 or len({len(parts) for _, parts in columns}) > 1 or not columns[0][1]:
        return None
    roles = header_roles([key for key, _ in columns])
    if roles is None or any(isinstance(part, Node) for _, parts in columns for part in parts):
        return None
    rows = []
    for cells in zip(*(parts for _, parts in columns), strict=True):
        row = Node(cells[0].line)
        for (key, _), cell in zip(columns, cells, strict=True):
            row.add(key, cell)
        rows.append(row)
    return rows


def _keyed_by_name(inner: Sequence[tuple[str, Node]]) -> Iterator[Node]:
    """Yield records with the key that each stands under as one more value."""
    for key, part in inner:
        row = Node(part.line)
        titles = header_roles(tuple(of for of, _ in _flat(part)))
        named = titles is not None and not NAME_ROLES.isdisjoint(titles)
        row.add("key" if named else "name", Value(key, part.line))
        for of, value in part.pairs():
            row.add(of, value)
        yield row


def _flat(node: Node, over: str = "") -> Iterator[tuple[str, Value]]:
    """Yield the values of a record with their titles; those of a list within are one."""
    for key, part in node.pairs():
        title = _title(over, key)
        if isinstance(part, Value):
            yield title, part
        elif part.keyed:
            yield from _flat(part, title)
        elif texts := [each.text for each in part.parts if isinstance(each, Value)]:
            yield title, Value(", ".join(texts), part.line)


def _title(over: str, key: str) -> str:
    """Return the title of a value within another: ``first`` within ``name`` is the first name."""
    plain = " ".join(over.replace("_", " ").split())
    if plain and not _is_of_others(plain) and header_role(key) in NAME_ROLES:
        return key
    return " ".join(filter(None, (plain, key)))


def _written(groups: Sequence[_Group]) -> Iterator[Line]:
    """Yield the rows of all groups under one line of titles, and a heading over each where there are several."""
    rows = [[list(_flat(part)) if isinstance(part, Node) and part.keyed else _untitled(part) for part in group.parts]
            for group in groups]
    titles = list(dict.fromkeys(title for group in rows for row in group for title, _ in row))
    roles = header_roles(titles)
    kept = [title for title in titles if roles or not _is_told(title)]
    if len(kept) > _MOST_TITLES:
        kept.sort(key=lambda title: header_role(title) is None)
    kept, further = kept[:_MOST_TITLES], frozenset(kept[_MOST_TITLES:])
    headed = False
    for group, of_group in zip(groups, rows, strict=True):
        if len(groups) > 1 and group.key and any(map(is_letter, group.key)) and of_group:
            first = group.parts[0].line
            yield Line("", first).heading(group.key.replace("_", " "))
        for row in of_group:
            cells = dict(row)
            texts = [cells[title].text if title in cells else "" for title in kept]
            if further:
                texts.append(" ".join(value.text for title, value in cells.items() if title in further))
            if not any(texts):
                continue
            line = _line_of_name(row)
            if roles and not headed:
                yield Line("\t".join(map(_cell, [*kept, NOTES] if further else kept)), line)
                headed = True
            yield Line("\t".join(map(_cell, texts)), line, (_OF_RECORDS,))


def _untitled(part: Value | Node) -> list[tuple[str, Value]]:
    """Return the values of a list without keys, each under a number of its own."""
    values = [part] if isinstance(part, Value) else [each for each in part.parts if isinstance(each, Value)]
    return [(f"\N{NO-BREAK SPACE}{at}", value) for at, value in enumerate(values)]


def _is_told(title: str) -> bool:
    """Say whether a title is known to stand over something else than children."""
    return not title.startswith("\N{NO-BREAK SPACE}") and (
        header_role(title) not in (None, *NAME_ROLES) or _is_of_others(title))


def _line_of_name(row: Sequence[tuple[str, Value]]) -> int:
    return next((value.line for title, value in row if header_role(title) in NAME_ROLES), row[0][1].line)


def _cell(text: str) -> str:
    return " ".join(text.split())


def _from_cards(lines: Sequence[str]) -> Iterator[Line]:
    """Yield what the events of a calendar are called, and the names of contacts."""
    rows: list[tuple[int, tuple[str, str, str]]] = []
    name, whole, kind, start = "", "", "", 0
    for at, text in _unfolded(lines):
        field = _FIELD.fullmatch(text.strip())
        key, value = (field[1], field[2].strip()) if field else ("", "")
        if key == "BEGIN":
            kind, name, whole, start = value, "", "", at
        elif key == "SUMMARY" and kind == "VEVENT":
            yield Line(_plain(value), at, (_OF_RECORDS,))
        elif key == "N":
            name, start = value, at
        elif key == "FN":
            whole, start = _plain(value), at
        elif key == "END" and value == "VCARD":
            family, given, *_ = (*map(_plain, _NOT_ESCAPED.split(name)), "", "")
            rows.append((start, (given, family, "" if given else whole or family)))
    parted = any(given for _, (given, _, _) in rows)
    if rows and parted:
        yield Line("First name\tLast name\tFull name", rows[0][0])
    for at, cells in rows:
        if any(cells):
            yield Line("\t".join(cells) if parted else cells[2], at, (_OF_RECORDS,))


def _unfolded(lines: Sequence[str]) -> list[tuple[int, str]]:
    """Return the lines with those that go on (set in by a space) put to the one above."""
    found: list[tuple[int, str]] = []
    for at, line in enumerate(lines):
        if line[:1] in (" ", "\t") and found and not _FIELD.fullmatch(line.strip()):
            found[-1] = (found[-1][0], found[-1][1] + line[1:])
        else:
            found.append((at, line))
    return found


def _plain(value: str) -> str:
    return " ".join(_ESCAPED.sub(lambda match: " " if match[1] in "nN" else match[1], value).split())
