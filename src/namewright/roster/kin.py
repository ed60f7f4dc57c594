"""Lines that name a child by a grown-up, as a chain of telephone calls does: ``Mia's mum Jo -> Leo's dad``.

The child is made of the first such line, and what stands beside it is told; a further line for another grown-up of the
child, or one for a child who has a line, makes nobody twice. Read so where two lines or more are written so.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.known import is_given, lean
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import AND, OTHER_PEOPLE, fold, word_set

_OWNED = pattern(r"([^\W\d_][\w’'-]*)['’]s?\s+([^\W\d_]+)(?![\w-])")
_GENITIVE = pattern(r"([^\W\d_]{2,}s)\s+([^\W\d_]+)(?![\w-])")
_OF = pattern(r"(?:(?:[Ll][ae]|[Ee]l|[AaOo]|[Ii]l|[Dd]ie|[Dd]er|[Tt]he)\s+)?([^\W\d_]+)\s+"
              r"(?:(?:de|di|da|do|von|of|della|del)\s+(?:l[ao]\s+)?|d['’])([^\W\d_][\w-]*)")
_SIGN = pattern(r"\S\s+[-–—=|]\s+|\S\s?:\s+|\S\s?(?:->|→)\s?")
_SEATED = pattern(r"\(\d{1,2} [^\W\d_][^()]*\)(?:\s?:|\s?->|\s?→|\s+[-–—=])\s+[^\W\d_][^,;&+/]*[,;&+/]")
"""Who drives stands before other children, of whom nobody is left out unsaid: ``Mia's mom (3 seats): Leo, Anna``."""
_PARTS = pattern(rf"\s*[,;&+/]\s*|\s+(?:{AND})\s+")
_FURTHER = word_set("""
    papi, papy, tata, tatie, tonton, avo, avos, tia, tio, tias, zia, zio, mami, mamy, granny, gran, grandad, nan, mummy,
    daddy, yaya, yayo""")
"""Who else comes or fetches a child, where that is told in small letters or beside a word of `OTHER_PEOPLE`."""
_GROWN_UPS = OTHER_PEOPLE | _FURTHER
_SCHOOLS = word_set("school, escuela, escola, ecole, schule, scuola")
"""Of the Escuela del Sol no child is."""
_FEWEST = 2
_LONGEST = 200


def from_kin(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines with the children of such lines alone, and those that are about a child who has a line."""
    found = {at: name for at, line in enumerate(lines) if len(line.text) <= _LONGEST
             and (name := child_of(strip_numbering(line.text)))}
    if len(found) < _FEWEST:
        return list(lines), []
    seen = {fold(line.text.split()[0]) for at, line in enumerate(lines) if at not in found and line.text.strip()}
    kept, asides = [], []
    for at, line in enumerate(lines):
        if at not in found:
            kept.append(line)
        elif _SEATED.search(line.text) or (  # or Luka or Lukas
                is_given(f"{found[at]}s") and _GENITIVE.match(strip_numbering(line.text))):
            asides.append(Aside(line, (message("roster.unlike", words=found[at]),), asked=True))
        elif fold(found[at]) in seen:
            asides.append(Aside(line, (message("roster.about_children"),)))
        else:
            seen.add(fold(found[at]))
            kept.append(line.without(line.text, found[at]))
    return kept, asides


def child_of(text: str) -> str:
    """Return the child by whom a grown-up at the front of a line is named, empty where none is."""
    for owned in (_OWNED, _GENITIVE):
        if (match := owned.match(text)) and fold(match[2]) in OTHER_PEOPLE:
            name, bare = match[1], match[1][:-1]
            return name if owned is _OWNED or not is_given(bare) else bare
    match = _OF.match(text)
    kin = match and fold(match[1]) in OTHER_PEOPLE and fold(match[1]) not in _SCHOOLS
    return match[2] if match and kin and match[2][0].isupper() else ""


def are_grown_ups_behind(text: str) -> bool:
    """Say whether nobody but grown-ups of a family stands behind a sign: ``Mira Vost – maman et papa``."""
    sign = _SIGN.search(text) if len(text) <= _LONGEST else None
    parts = [part.split() for part in _PARTS.split(text[sign.end() :].strip(" .!"))] if sign else []
    if not parts or not all(len(part) == 1 and fold(part[0]) in _GROWN_UPS for part in parts):
        return False
    return any(begins_small(part[0]) or (fold(part[0]) in OTHER_PEOPLE and not lean(part[0]) > 0) for part in parts)
