"""TOML as our own files have it, read quickly.

That is one entry a line, its value as JSON has it, in braces or lines of text. ``tomllib`` goes through a text sign by
sign, in Python: for a first class that was a twentieth of the work. What is written otherwise it reads all the same.
"""

from __future__ import annotations

import json
import re
from typing import Any

_LINE = re.compile(r"""(?P<key>[\w-]+|"[^"\\]+")[ \t]*=[ \t]*(?P<value>.+)
    | (?:\[(?P<table>[\w.-]+)\] | \[\[(?P<one_of>[\w-]+)\]\])?[ \t]*(?:\#.*)?""", re.VERBOSE)
_LINES = re.compile(r'"""\n([^"\\\r]*)"""')
_COMMENT = re.compile(r'[ \t]*#[^"]*$')
_IN_BRACES = re.compile(r'"[^"]*"|([\w-]+)[ \t]*=')


def loads(text: str) -> dict[str, Any]:
    """Return what ``tomllib.loads`` returns for a text that is TOML. Raises TOMLDecodeError for most others."""
    try:
        return _plain(text)
    except (ValueError, AttributeError, TypeError):  # a table within one of several, or no TOML
        import tomllib  # not at the top: loading it takes as long as reading a file with it

        return tomllib.loads(text)


def _plain(text: str) -> dict[str, Any]:
    """Read a text that is as plain as that; raise ValueError for another."""
    whole: dict[str, Any] = {}
    table = whole
    for line in _LINES.sub(lambda found: json.dumps(found[1]), text).split("\n"):
        found = _LINE.fullmatch(line)
        if found is None:
            raise ValueError(line)
        key, value, name, one_of = found.groups()
        if key:
            table[key.strip('"')] = _value(value)
        elif name:
            table = whole
            for part in name.split("."):
                table = table.setdefault(part, {})
        elif one_of:
            table = {}
            whole.setdefault(one_of, []).append(table)
    return whole


def _value(text: str) -> object:
    if "#" in text:
        text = _COMMENT.sub("", text)
    if text.startswith("{"):
        if "\\" in text:
            raise ValueError(text)
        text = _IN_BRACES.sub(lambda found: f'"{found[1]}":' if found[1] else found[0], text)
    return json.loads(text)
