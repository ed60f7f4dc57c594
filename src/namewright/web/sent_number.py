"""A whole number as a form or an address sends it: of a child, a note, a list, a save."""

from __future__ import annotations

_MOST_FIGURES = 18  # SQLite counts no further than 19 of them


def sent_number(text: str) -> int | None:
    """Return the number that a text is, None for all else: no program of ours sends that, but anybody may."""
    return int(text) if text.isascii() and text.isdecimal() and len(text) <= _MOST_FIGURES else None
