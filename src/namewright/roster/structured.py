"""Text that a program wrote as keys and values, into a tree of these: JSON and what is written like it, YAML, XML.

What is written nearly so is read as well: unquoted keys, single quotes, commas too many, an end that was not copied.
Each value knows the 0-based line that it stands on. Nothing is called deeper for deeper text. Out of scope: which of
the values are children (``records``).
"""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator, Sequence
from html import unescape

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern

_LONGEST = 2_000_000  # characters
_LONGEST_LINE = 2_000
_DEEPEST = 40
_MOST_BESIDE = 0.3  # of the letters, in words round about the braces
_NEARLY_ALL, _HALF = 0.8, 0.5
_FEW = 2
_KEYED = pattern(r"""\{\s*(?:"[^"\n]{1,60}"|'[^'\n]{1,60}'|[\w$ .-]{1,40}?)\s*(?::|=>)""", needs="{")
# A text with backslashes has an end to its length, else one that is never closed would be run through from each quote.
_TOKEN = pattern(r"""=>|[{}\[\]:,;]|"[^"\\\n]*"|"(?:[^"\\\n]|\\.){0,500}"|'(?:[^'\\\n]|\\.)*'(?=\s*(?:[\]}:,;]|=>|$))"""
                 r"""|[^\s{}\[\]:,;"][^{}\[\]:,;"\n=]*|\n""")
_COMMENT = pattern(r"(?<![^\s,{\[])(?://|/\*).*$|^\s*#.*$", needs="/#")
_PAIR = pattern(r"""(?<![^\s,;|])([A-Za-z_][\w.-]{0,40})\s?=\s?(?:"([^"]*)"|'([^']*)'|([^\s"'=](?:[^"=]*?[^\s"=])??)?"""
                r"""(?=\s*[,;|]|\s+[\w.-]+\s?=|\s*$))""", needs="=")
_YAML = pattern(r"""(\s*)((?:-\s+)*)(?:(?:"([^"]{1,60})"|'([^']{1,60})'|([^\s:"'#\[{-][^:"]{0,60}?))"""
                r"""\s*:(?:\s+(.*))?|(.*))""")
_DASHED = pattern(r"""\s*-\s+(?:"[^"]+"|'[^']+'|[^\s:"'][^:"]{0,40}?)\s?:(?:\s|$)""", needs="-")
_TAG = pattern(r"""<(/?)([A-Za-z_][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(/?)>|<[?!][^>]{0,2000}>""",
               needs="<")
_ATTRIBUTE = pattern(r"([\w:.-]+)\s*=\s*(?:\"([^\"<]*)\"|'([^'<]*)')")
_NOTHING = frozenset(("null", "none", "nil", "undefined", "~", "n/a"))


class Value(NamedTuple):
    """A text and the line (0-based) it stands on."""

    text: str
    line: int


class Node:
    """Values under keys; those of a list have none."""

    __slots__ = ("keys", "line", "parts")

    def __init__(self, line: int) -> None:
        self.line = line
        self.keys: list[str] = []
        self.parts: list[Value | Node] = []

    def add(self, key: str, part: Value | Node) -> None:
        """Put a part behind the others; in a list its key is empty."""
        self.keys.append(key)
        self.parts.append(part)

    @property
    def keyed(self) -> bool:
        """Say whether the parts stand under keys."""
        return any(self.keys)

    def pairs(self) -> Iterator[tuple[str, Value | Node]]:
        """Yield each part with its key."""
        yield from zip(self.keys, self.parts, strict=True)


def tree_of(lines: Sequence[str]) -> Node | None:
    """Return the values of a text that is written as keys and values; None where it is a text of another kind."""
    if sum(map(len, lines)) > _LONGEST:
        return None
    text = "\n".join(lines)
    if ("{" in text and _KEYED.search(text)) or _is_json(text):
        return _from_braces(text)
    if sum(map(bool, map(_DASHED.match, lines))) >= _FEW:
        return _from_dashes(lines)
    if sum("</" in line or "/>" in line for line in lines) >= _FEW:
        return _from_tags(text)
    return _from_pairs(lines) if "=" in text else None


def _is_json(text: str) -> bool:
    """Say whether a text is one list of JSON, in whose lists there may be names without keys."""
    try:
        return text.lstrip().startswith("[") and isinstance(json.loads(text), list)
    except (ValueError, RecursionError):
        return False


def _from_pairs(lines: Sequence[str]) -> Node | None:
    """Read lines of ``key=value``, two or more on each, whatever stands before them."""
    root = Node(0)
    filled = [(at, line) for at, line in enumerate(lines) if line.strip()]
    for at, line in filled:
        pairs = list(_PAIR.finditer(line)) if len(line) < _LONGEST_LINE else []
        if len(pairs) > 1:
            row = Node(at)
            for match in pairs:
                row.add(match[1], Value(" ".join((match[2] or match[3] or match[4] or "").split()), at))
            root.add("", row)
    return root if len(root.parts) >= max(_FEW, _NEARLY_ALL * len(filled)) else None


def _from_braces(text: str) -> Node | None:
    """Read JSON, one object a line too, and what programs write like it."""
    text = "\n".join(_COMMENT.sub("", line) for line in text.split("\n"))
    root = Node(0)
    open_now, line, key, last, beside = [root], 0, "", "", 0
    for match in _TOKEN.finditer(text):
        token = match[0]
        top = open_now[-1]
        if token == "\n":
            line += 1
        elif token in "{[":
            inner = Node(line)
            top.add(key, inner)
            open_now.append(inner)
            key = last = ""
        elif token in "}]":
            open_now = open_now[:-1] or [root]
            key = last = ""
        elif token in (":", "=>"):
            key = last
            if top.parts and last and isinstance(top.parts[-1], Value) and not top.keys[-1]:
                del top.parts[-1], top.keys[-1]
        elif token in ",;":
            key = last = ""
        elif top is root:
            beside += sum(map(is_letter, token))
            last = _bare(token)
        else:
            last = _bare(token)
            top.add(key, Value(last, line))
            key = ""
        if len(open_now) > _DEEPEST:
            return None
    return root if root.parts and beside <= _MOST_BESIDE * sum(map(is_letter, text)) else None


def _bare(token: str) -> str:
    """Return a value without its quotation marks, empty where it says that there is none."""
    bare = token.strip()
    if bare[:1] == '"' == bare[-1:] and len(bare) > 1:
        try:
            return " ".join(str(json.loads(bare)).split())
        except ValueError:
            return " ".join(bare[1:-1].split())
    if bare[:1] == "'" == bare[-1:] and len(bare) > 1:
        return " ".join(bare[1:-1].replace("\\'", "'").split())
    return "" if bare.lower() in _NOTHING else " ".join(bare.split())


def _from_dashes(lines: Sequence[str]) -> Node | None:
    """Read YAML as far as lists need it: keys, values, dashes, what is set in."""
    filled = [(at, line) for at, line in enumerate(lines) if line.strip() and line.strip() not in ("---", "...")
              and not line.lstrip().startswith("#")]
    found = [(at, match) for at, line in filled if (match := _YAML.fullmatch(line.expandtabs(2)))]
    told = sum(bool(match[2] or _key(match)) for _, match in found)
    dashed = [_key(match) for _, match in found if match[2] and match[6] is not None]
    if told < _NEARLY_ALL * len(filled) or len(set(dashed)) > _HALF * len(dashed):
        return None
    root = Node(0)
    open_now: list[tuple[int, Node]] = [(0, root)]
    made: list[Node] = []
    waiting: Node | None = None  # of a key with nothing behind it
    for at, match in found:
        key = _key(match).strip()
        column, dashes = len(match[1]), match[2].count("-")
        while len(open_now) > 1 and (open_now[-1][0] > column or (
                open_now[-1][0] == column and not dashes and not open_now[-1][1].keyed)):
            open_now.pop()
            waiting = None
        if waiting is not None and (column > open_now[-1][0] or (dashes and open_now[-1][1].keyed)):
            open_now.append((column, waiting))
        waiting = None
        if dashes and key:
            while len(open_now) > 1 and open_now[-1][1].keyed and open_now[-1][0] >= column:
                open_now.pop()
            made.append(Node(at))
            open_now[-1][1].add("", made[-1])
            open_now.append((column + len(match[2]), made[-1]))
        if len(open_now) > _DEEPEST:
            return None
        top = open_now[-1][1]
        if key and not (match[6] or "").strip():
            waiting = Node(at)
            top.add(key, waiting)
        elif key:
            top.add(key, Value(_bare(match[6]), at))
        elif dashes:
            top.add("", Value(_bare(match[7] or ""), at))
    is_form = len(set(dashed)) > 1 and all(len(each.keys) == 1 for each in made)  # a dash before each answer
    return None if is_form else root


def _key(match: re.Match[str]) -> str:
    """Return the key of a line of YAML, quoted or not; empty where it has none."""
    return match[3] or match[4] or match[5] or ""


def _from_tags(text: str) -> Node | None:
    """Read XML: elements and attributes are keys."""
    root = Node(0)
    open_now: list[tuple[str, Node]] = [("", root)]
    done, line = 0, 0
    for tag in _TAG.finditer(text):
        words = unescape(" ".join(text[done : tag.start()].split()))
        name, node = open_now[-1]
        if words:
            node.add("", Value(words, line + text.count("\n", done, tag.start())))
        line += text.count("\n", done, tag.start())
        done = tag.end()
        if tag[1] and tag[2] == name:
            open_now.pop()
            open_now[-1][1].add(name, _closed(node))
        elif tag[2] and not tag[1]:
            inner = Node(line)
            for each in _ATTRIBUTE.finditer(tag[3]):
                inner.add(each[1], Value(unescape(each[2] or each[3] or ""), line))
            if tag[4]:
                open_now[-1][1].add(tag[2], _closed(inner))
            else:
                open_now.append((tag[2], inner))
        line += text.count("\n", tag.start(), tag.end())
        if len(open_now) > _DEEPEST:
            return None
    while len(open_now) > 1:
        name, node = open_now.pop()
        open_now[-1][1].add(name, _closed(node))
    return _together(root) if any(isinstance(part, Node) for part in root.parts) else None


def _together(node: Node) -> Node:
    """Return a node with the parts of a key that comes again as one list."""
    again = {key for key, count in Counter(node.keys).items() if key and count > 1}
    lists: dict[str, Node] = {}
    found = Node(node.line)
    for key, part in node.pairs():
        if key not in again:
            found.add(key, part)
            continue
        if key not in lists:
            lists[key] = Node(part.line)
            found.add(key, lists[key])
        lists[key].add("", part)
    return found


def _closed(node: Node) -> Value | Node:
    """Return the words of an element that holds nothing else."""
    if node.keyed:
        return _together(node)
    words = [part.text for part in node.parts if isinstance(part, Value)]
    return Value(" ".join(words), node.parts[0].line if node.parts else node.line)
