"""Forms of letters and rungs of support as a form shows them: pictures and boxes to choose, put together as words.

The words are those of the command line (``a=two-storey slant=8 exit-strokes``), so a class file means the same
everywhere. In a form, ``letters.a`` is the choice for one letter, ``letters.slant`` degrees. Out of scope: what a form
looks like (``letters``), what a rung asks of a child (``pages.ladder``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from werkzeug.datastructures import MultiDict

from namewright.letters.alphabet import upright
from namewright.pages.ladder import TRACED

LETTERS: Mapping[str, tuple[str, ...]] = dict(upright().forms)
RUNGS: tuple[str, ...] = tuple(TRACED)
_SLANT = "slant="


@dataclass(frozen=True, slots=True)
class Shapes:
    """What is chosen: words for forms, the slant in degrees as text, the names of rungs."""

    words: frozenset[str]
    slant: str
    rungs: frozenset[str]

    def forms_of(self, letter: str) -> tuple[str, ...]:
        """Return the form chosen for a letter, or none."""
        return tuple(word.partition("=")[2] for word in self.words if word.partition("=")[0] == letter)


def shapes_of(settings: Mapping[str, str]) -> Shapes:
    """Return what settings choose; words that cannot be read are shown as typed elsewhere, and choose nothing here."""
    words = settings.get("letters", "").split()
    return Shapes(frozenset(word for word in words if not word.startswith(_SLANT)),
                  next((word.removeprefix(_SLANT) for word in words if word.startswith(_SLANT)), ""),
                  frozenset(settings.get("ladder", "").split()))


def fields_of(form: MultiDict[str, str]) -> dict[str, str]:
    """Return a form's fields as settings: what is chosen in several places stands together."""
    found = {key: text for key, text in form.items() if not key.startswith("letters.")}
    parts = form.getlist("letters") + [_word(key, text) for key, text in form.items(multi=True)
                                       if key.startswith("letters.")]
    for key, chosen in (("letters", parts), ("ladder", form.getlist("ladder"))):
        if chosen:
            found[key] = " ".join(part.strip() for part in chosen if part.strip())
    return found


def _word(key: str, text: str) -> str:
    return f"{_SLANT}{text.strip()}" if key == "letters.slant" and text.strip() else text
