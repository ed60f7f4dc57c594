"""The words of the screens, one file a language in ``words/``, so that others can add theirs.

A language is chosen on the page (a cookie keeps it), else by what the browser asks for. Out of scope: the
sentences on printed pages (``pages/captions``); the note to a family stands here, for it is written by the web page.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from importlib import resources
from types import MappingProxyType

from flask import Request

from namewright.web.said import in_tongue

COOKIE = "tongue"
FIRST = "en"


@cache
def tongues() -> tuple[str, ...]:
    """Return the languages that have words, sorted."""
    folder = resources.files("namewright.web").joinpath("words")
    return tuple(sorted(entry.name.removesuffix(".toml") for entry in folder.iterdir() if entry.name.endswith(".toml")))


@cache
def words(tongue: str) -> Mapping[str, str]:
    """Return the words of a language, by section and key: ``home.title``. Raises KeyError for one without words."""
    if tongue not in tongues():
        raise KeyError(tongue)
    source = resources.files("namewright.web").joinpath("words", f"{tongue}.toml")
    return MappingProxyType(dict(_flat(tomllib.loads(source.read_text(encoding="utf-8")))))


def _flat(table: Mapping[str, object], prefix: str = "") -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from _flat(value, f"{prefix}{key}.")
        else:
            yield prefix + key, str(value)


def tongue_of(asked: Request) -> str:
    """Return the language of a request."""
    chosen = asked.cookies.get(COOKIE, "")
    if chosen in tongues():
        return chosen
    return asked.accept_languages.best_match(tongues(), FIRST) or FIRST


def say(tongue: str, key: str, **fields: object) -> str:
    """Return a sentence with its {fields} filled in; a plural key ends in ``.one`` where ``count`` is 1."""
    table = words(tongue)
    if fields.get("count") == 1 and f"{key}_one" in table:
        key = f"{key}_one"
    return table[key].format(**fields) if fields else table[key]


def reason(asked: Request, error: Exception | str) -> str:
    """Return what the engine says, in the language of a request where there are words for it."""
    return in_tongue(str(error), tongue_of(asked))
