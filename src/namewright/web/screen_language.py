"""The language of a request: chosen on the page (a cookie keeps it), else by what the browser asks for.

Out of scope: the words (``wording``).
"""

from __future__ import annotations

from flask import Request

from namewright.message import Message, Problem
from namewright.wording import FIRST, languages, wording

COOKIE = "language"
CHANGED = "language-changed"
"""A cookie that stands from a change of the screens' language until the desk has asked about the pages' language."""


def screen_languages() -> tuple[str, ...]:
    """Return the languages that have words for the screens, sorted."""
    return tuple(language for language in languages() if wording(language).has("web.name"))


def language_of(asked: Request) -> str:
    """Return the language of a request."""
    chosen = asked.cookies.get(COOKIE, "")
    if chosen in screen_languages():
        return chosen
    return asked.accept_languages.best_match(screen_languages(), FIRST) or FIRST


def reason(asked: Request, told: Message | Problem) -> str:
    """Return what is told, or what a problem tells, in the language of a request."""
    return wording(language_of(asked)).sentence(told)
