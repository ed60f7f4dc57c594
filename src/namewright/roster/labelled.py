"""A label before a name, ``Chess (Mon 3:15): Mira Vost``: words up to a colon or to a dash between spaces.

What stands in brackets belongs to the label whole. Whether words before such a sign are a label or a name is judged by
those who ask (``alike``, ``unlike``, ``dated``), by the other lines. Out of scope: a form’s fields, which may be empty
(``forms``), and groups, whose colon outranks a dash before it (``labelled_groups``).
"""

from __future__ import annotations

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.store import keeps_names

_LABELLED = pattern(r"((?:[^()\[\]]|[(\[][^()\[\]]*[)\]]){2,60}?)(?:\s?:\s+|\s+[-–—]\s+)(\S.*)")
_BRACKETS = pattern(r"\s*[(\[][^()\[\]]*[)\]]")
_LONGEST = 200  # characters of a line that is looked at: a longer one is a text


class Labelled(NamedTuple):
    """The words before the first sign of a line, with and without their brackets, and what stands behind it."""

    label: str
    bare: str
    rest: str


@keeps_names(1024)
def labelled(text: str) -> Labelled | None:
    """Return the label of a line and the rest; None where no sign parts them, or the line is a text."""
    match = _LABELLED.fullmatch(text.strip()) if len(text) <= _LONGEST else None
    if match is None:
        return None
    bare = _BRACKETS.sub("", match[1]).strip()
    return Labelled(match[1].strip(), bare, match[2]) if bare else None
