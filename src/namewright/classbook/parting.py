"""The children of a line that may be several, and the lines that say each of them. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.commas import BRACKETS
from namewright.roster.heading_words import MAYBE
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.several import several_in
from namewright.roster.vocabulary import AND_WORDS, OR, fold

_WORDS = "|".join(sorted(AND_WORDS))
COMMAS = pattern(rf"\s*[,，、]\s*(?:(?:{_WORDS}|&)\s+)?|\s*[;/&+|•·]\s*|\s+(?:{_WORDS})\s+")
_APART = pattern(rf"\s(?:{OR})\s+(?=[^\W\d_a-z])|\s[-–—=]\s|\s*(?:→|⇒|->|=>)\s*")
_LABEL = pattern(r"[^:,;&]{1,40}:\s+", needs=":")
_AND = pattern(rf"\s*[&+/]\s*|\s+(?:{_WORDS})\s+")


@dataclass(frozen=True, slots=True)
class Promise:
    """A child that a line has to become: what must be read from it, empty where that does not matter."""

    given: str
    family: str = ""
    practice: str = ""

    @property
    def name(self) -> str:
        """Return the whole name."""
        return " ".join(part for part in (self.given, self.family) if part)


def parted(text: str) -> tuple[Promise, ...]:
    """Return the children of a line that may be several: a family name that stands once is everybody’s."""
    whole = strip_numbering(text)
    label = _LABEL.match(whole)
    if label and not opens_with_given(label[0]):  # Comedor: Lucía, Hugo y Vega
        whole = whole[label.end() :]
    if shared := shared_family(whole):
        return shared
    found = several_in(whole, family_first=False, alone=True)
    parts = found.parts if found else COMMAS.split(whole)
    names = tuple(name for part in parts for name in _APART.split(part)
                  if any(map(is_letter, name)) and not any(map(str.isdigit, name)))
    words = [bare for name in names if (bare := BRACKETS.sub(" ", name).split())]
    if words and len(words[0]) > 1 and fold(words[0][0]) in MAYBE:
        words[0] = words[0][1:]
    lone = len(words) > 1 and len(words[-1]) > 1 and all(len(each) == 1 for each in words[:-1])
    if lone and (_AND.search(whole) or len(words[-1][-1].strip(".")) > 1):  # in Marlo - Jasper K. the K is Jasper’s
        words = [*([*each, *words[-1][1:]] for each in words[:-1]), words[-1]]
    return tuple(Promise(each[0], " ".join(each[1:])) for each in words)


def shared_family(text: str) -> tuple[Promise, ...]:
    """Return the children of ``Lindle, Bo & Ana``: one comma behind a word that is no given name, and two behind it."""
    family, _, behind = text.partition(",")
    names = [name.strip() for name in _AND.split(behind)] if "," not in behind else []
    if len(names) < 2 or is_given(family.strip()) or not all(name and " " not in name for name in names):
        return ()
    return tuple(Promise(name, family.strip()) for name in names)


def ways_to_write(children: Sequence[Promise]) -> Iterator[tuple[str, ...]]:
    """Yield names, a line each: as they are, family first, and under the word that says that they are names."""
    yield tuple(one.name for one in children)
    yield tuple(f"{one.family}, {one.given}" if one.family else one.given for one in children)
    yield tuple(f"Name: {one.name}" for one in children)


