"""The language of a request: chosen on the page (a cookie keeps it), else by what the browser asks for.

Out of scope: the words (``wording``).
"""

from __future__ import annotations

from flask import Request

from namewright.message import Message, Problem
from namewright.web.said import in_tongue
from namewright.wording import FIRST, languages, wording

COOKIE = "tongue"


def tongues() -> tuple[str, ...]:
    """Return the languages that have words for the screens, sorted."""
    return tuple(language for language in languages() if wording(language).has("web.name"))


def tongue_of(asked: Request) -> str:
    """Return the language of a request."""
    chosen = asked.cookies.get(COOKIE, "")
    if chosen in tongues():
        return chosen
    return asked.accept_languages.best_match(tongues(), FIRST) or FIRST


def reason(asked: Request, error: Message | Exception | str) -> str:
    """Return what the engine says, in the language of a request where there are words for it."""
    if isinstance(error, Message | Problem):
        return wording(tongue_of(asked)).sentence(error.message if isinstance(error, Problem) else error)
    return in_tongue(str(error), tongue_of(asked))
