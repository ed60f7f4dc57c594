"""Lines that name a child by a grown-up, in front or behind: ``Mia's mum Jo -> Leo's dad``, ``Jo (mamá de Leo)``.

The child is made of the first such line, and what stands beside it is told; a further line for another grown-up of the
child, or one for a child who has a line, makes nobody twice. Read so where two lines or more are written so. Where most
are, as among the members of a group of parents, a line that no known name opens is asked about.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.message import Message, message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, lean, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import AND, OTHER_PEOPLE, fold, word_set
from namewright.store import keeps_names

_OWNED = pattern(r"([^\W\d_][\w’'-]*)['’]s?\s+([^\W\d_]+)(?![\w-])")
_GENITIVE = pattern(r"([^\W\d_]{2,}s)\s+([^\W\d_]+)(?![\w-])")
_OF = pattern(r"(?:(?:[Ll][ae]|[Ee]l|[AaOo]|[Ii]l|[Dd]ie|[Dd]er|[Tt]he)\s+)?([^\W\d_]+)\s+"
              r"(?:(?:de|di|da|do|von|of|della|del)\s+(?:l[ao]\s+)?|d['’])([^\W\d_][\w-]*)")
_NAME = r"[^\W\d_][\w’'.-]*"
_BETWEEN = r"(?:\s*\(|\s+[-–—]\s+|\s*,\s*|\s+)"
_BEHIND = (
    pattern(rf"{_NAME}(?:\s+{_NAME}){{0,2}}?{_BETWEEN}(?:(?:la|el|le|a|o|il|die|der|the|l['’])\s*)?(?P<kin>[^\W\d_]+)\s+"
            rf"(?:(?:de|di|da|do|von|of|della|del)\s+|d['’])(?P<child>{_NAME}(?:\s+{_NAME}){{0,2}})\)?"),
    pattern(rf"{_NAME}(?:\s+{_NAME}){{0,2}}?{_BETWEEN}(?P<child>[^\W\d_][\w-]*(?:\s+[^\W\d_][\w-]*)?)['’]s?\s+"
            r"(?P<kin>[^\W\d_]+)\)?"),
)
_DIRECT = pattern(rf"(?P<kin>[^\W\d_]+)\s+(?P<child>{_NAME}(?:\s+{_NAME})?)")
_MOTHERS = word_set("""
    mother, mom, mum, mommy, mummy, father, dad, daddy, madre, mama, padre, papa, mere, maman, pere, mutter, mutti,
    vater, vati, mamma, babbo, mae, pai""")
_PARENTS = _MOTHERS | word_set("""
    parent, parents, guardian, guardians, grandma, grandpa, grandmother, grandfather, gran, granny, grandad, nan,
    abuela, abuelo, tutor, tutora, mamie, mamy, papi, papy, grand-mere, grand-pere, eltern, oma, opa, grossmutter,
    grossvater, nonna, nonno, genitore, genitori, avo, pais, encarregado, encarregada""")
_ONESELF = word_set("you, tu, vous, du, voce, ich, moi, yo, io, eu, me")
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
_FEWEST, _ENOUGH = 2, 3
_SOME = 0.3
_LONGEST = 200


def from_kin(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines with the children of such lines alone, and those that are about a child who has a line."""
    if not any([_tells_of_kin(line.text) for line in lines]):  # mostly, and told line by line
        return list(lines), []
    bare = {at: strip_numbering(line.text) for at, line in enumerate(lines)
            if len(line.text) <= _LONGEST and any(map(is_letter, line.text))}
    found = {at: name for at, text in bare.items() if (name := child_of(text))}
    direct = {at: name for at, text in bare.items() if at not in found and (name := _called_by_a_parent(text))}
    if _are_most(bare, found | direct):
        found |= direct
    if len(found) < _FEWEST:
        return list(lines), []
    seen = {fold(words) for at, text in bare.items() if at not in found for words in (text, text.split()[0])}
    mostly = _are_most(bare, found)
    kept: list[Line] = []
    asides: list[Aside] = []
    for at, line in enumerate(lines):
        if at not in found:
            if notes := _of_others(bare[at]) if mostly and at in bare else ():
                asides.append(Aside(line, notes, asked=True))
            else:
                kept.append(line)
        elif _SEATED.search(line.text) or (  # or Luka or Lukas
                (own := _GENITIVE.match(bare[at])) and own[1] == f"{found[at]}s" and is_given(own[1])):
            asides.append(Aside(line, (message("roster.unlike", words=found[at]),), asked=True))
        elif fold(found[at]) in seen:
            asides.append(Aside(line, (message("roster.about_children"),)))
        else:
            seen.add(fold(found[at]))
            kept.append(line.without(line.text, found[at]))
    return kept, asides


@keeps_names(1024)
def _tells_of_kin(text: str) -> bool:
    bare = strip_numbering(text) if len(text) <= _LONGEST else ""
    return bool(child_of(bare) or _called_by_a_parent(bare))


def _are_most(bare: Mapping[int, str], found: Mapping[int, str]) -> bool:
    """Say whether many lines name a child by a parent, and so many at most of the others open with a known name."""
    others = sum(not _of_others(text) for at, text in bare.items() if at not in found and not heading_reason(text))
    return len(found) >= max(_ENOUGH, _SOME * len(bare), others + 1)


def _of_others(text: str) -> tuple[Message, ...]:
    """Return what is asked about a line among those of grown-ups that nobody known opens: ``Du``, ``At work``."""
    small = any(begins_small(word) and fold(word) not in PARTICLES for word in text.split())
    known = opens_with_given(text) and not small and fold(text) not in _ONESELF
    return () if known or text.rstrip().endswith(":") or heading_reason(text) else (
        message("roster.unlike", words=text[:60]),)


@keeps_names(1024)
def _called_by_a_parent(text: str) -> str:
    """Return the child of ``Mamá Leo``, empty where something else is said; Oma Ida is a grandmother."""
    match = _DIRECT.fullmatch(text)
    return match["child"] if match and fold(match["kin"]) in _MOTHERS and match["child"][0].isupper() else ""


@keeps_names(1024)
def child_of(text: str) -> str:
    """Return the child by whom a grown-up is named that a line tells of, empty where none is."""
    if name := _behind_a_parent(text):
        return name
    for owned in (_OWNED, _GENITIVE):
        if (match := owned.match(text)) and fold(match[2]) in OTHER_PEOPLE:
            name, bare = match[1], match[1][:-1]
            return name if owned is _OWNED or not is_given(bare) else bare
    match = _OF.match(text)
    kin = match and fold(match[1]) in OTHER_PEOPLE and fold(match[1]) not in _SCHOOLS
    return match[2] if match and kin and match[2][0].isupper() else ""


def _behind_a_parent(text: str) -> str:
    """Return the child by whom a parent is named that stands before it, empty where none is."""
    for form in _BEHIND:
        if (match := form.fullmatch(text)) and fold(match["kin"]) in _PARENTS and match["child"][0].isupper():
            return match["child"]
    return ""


def is_a_grown_up(words: str) -> bool:
    """Say whether words are what a parent or grandparent is called, and nothing else: ``Oma``, ``mamá``."""
    return fold(words) in _PARENTS


def are_grown_ups_behind(text: str) -> bool:
    """Say whether nobody but grown-ups of a family stands behind a sign: ``Mira Vost – maman et papa``."""
    sign = _SIGN.search(text) if len(text) <= _LONGEST else None
    parts = [part.split() for part in _PARTS.split(text[sign.end() :].strip(" .!"))] if sign else []
    if not parts or not all(len(part) == 1 and fold(part[0]) in _GROWN_UPS for part in parts):
        return False
    return any(begins_small(part[0]) or (fold(part[0]) in OTHER_PEOPLE and not lean(part[0]) > 0) for part in parts)
