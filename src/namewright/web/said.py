"""What the engine says, in the language of the screen: a table of whole sentences for each language.

The engine and the class's file speak English, in sentences with names and numbers in them. A language may have a
file ``words/said/<language>.toml`` of English sentences with {words} for what changes, each with its own sentence. What
is not in it is said in English: a reason in another language is better than none.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from functools import cache
from importlib import resources

_FIELD = re.compile(r"(?P<quoted>“)?\{(\w+)\}")
_BETWEEN = re.compile(r"(?<=[.”]) (?=[A-Z“])")  # two sentences


@cache
def sentences(tongue: str) -> Mapping[str, str]:
    """Return the table of a language, English first; empty where it has none."""
    source = resources.files("namewright.web").joinpath("words", "said", f"{tongue}.toml")
    if not source.is_file():
        return {}
    return {str(english): str(own) for english, own in tomllib.loads(source.read_text(encoding="utf-8")).items()}


@cache
def _patterns(tongue: str) -> tuple[tuple[re.Pattern[str], str], ...]:
    return tuple((_pattern(english), own) for english, own in sentences(tongue).items() if "{" in english)


def _pattern(english: str) -> re.Pattern[str]:
    """Return what matches an English sentence with anything in its fields; in quotation marks, up to their end."""
    found, at = "", 0
    for field in _FIELD.finditer(english):
        inside = "[^”]*" if field["quoted"] else ".+?"
        found += f"{re.escape(english[at:field.start()])}{field['quoted'] or ''}(?P<{field[2]}>{inside})"
        at = field.end()
    return re.compile(found + re.escape(english[at:]), re.DOTALL)


def in_tongue(english: str, tongue: str) -> str:
    """Return sentences in a language, and what stands in them too where that has words of its own."""
    if english in sentences(tongue):
        return sentences(tongue)[english]
    for pattern, own in _patterns(tongue):
        found = pattern.fullmatch(english)
        if found:
            return own.format(**{key: in_tongue(text, tongue) for key, text in found.groupdict().items()})
    parts = _BETWEEN.split(english)
    return " ".join(in_tongue(part, tongue) for part in parts) if len(parts) > 1 else english
