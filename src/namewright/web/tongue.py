"""The words of the screens, in the language of a request.

A language is chosen on the page (a cookie keeps it), else by what the browser asks for. Out of scope: the
sentences on printed pages (``pages/captions``); the note to a family stands here, for it is written by the web page.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from flask import Request

from namewright.message import Field, Message, Problem
from namewright.web.said import in_tongue
from namewright.wording import FIRST, languages, wording

COOKIE = "tongue"


def tongues() -> tuple[str, ...]:
    """Return the languages that have words for the screens, sorted."""
    return tuple(language for language in languages() if wording(language).has("web.name"))


@cache
def words(tongue: str) -> Mapping[str, str]:
    """Return the words of the screens, by section and key: ``home.title``. Raises KeyError for one without words."""
    if tongue not in tongues():
        raise KeyError(tongue)
    return wording(tongue).section("web")


def tongue_of(asked: Request) -> str:
    """Return the language of a request."""
    chosen = asked.cookies.get(COOKIE, "")
    if chosen in tongues():
        return chosen
    return asked.accept_languages.best_match(tongues(), FIRST) or FIRST


def say(tongue: str, key: str, **fields: Field) -> str:
    """Return a sentence of the screens with its {fields} filled in."""
    return wording(tongue).say(f"web.{key}", **fields)


def reason(asked: Request, error: Message | Exception | str) -> str:
    """Return what the engine says, in the language of a request where there are words for it."""
    if isinstance(error, Message | Problem):
        return wording(tongue_of(asked)).sentence(error.message if isinstance(error, Problem) else error)
    return in_tongue(str(error), tongue_of(asked))
