"""Grown-ups who are told by the child they belong to: ``Mia's mum Jo -> Leo's dad``, ``Jo (mamá de Leo)``, ``Mom Leo``.

Of a list of them, as a chain of calls or a group of parents is, each child is read once and the grown-ups never: the
first line that tells of a child becomes it, a further one, or one for a child who has a line, is told to be about it.
Read so where two lines or more are written so. Where most are, a line that no known name opens is asked about.

The words for grown-ups of a family stand here, too: who is called one (``is_a_grown_up``), and whether nobody else
stands behind a child (``are_grown_ups_behind``: ``Mira Vost – maman et papa``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, lean, opens_with_given
from namewright.roster.names_in_text import BETWEEN_NAMES
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import OTHER_PEOPLE, fold, word_set
from namewright.store import keeps_names

_OWNED = pattern(r"([^\W\d_][\w’'-]*)['’]s?\s+([^\W\d_]+)(?![\w-])")
_GENITIVE = pattern(r"([^\W\d_]{2,}s)\s+([^\W\d_]+)(?![\w-])")
_OF_WHOM = r"(?:(?:de|di|da|do|von|of|della|del)\s+(?:l[ao]\s+)?|d['’])"
_OF = pattern(r"(?:(?:[Ll][ae]|[Ee]l|[AaOo]|[Ii]l|[Dd]ie|[Dd]er|[Tt]he)\s+)?([^\W\d_]+)\s+"
              rf"{_OF_WHOM}([^\W\d_][\w-]*)")
_NAME = r"[^\W\d_][\w’'.-]*"
_BETWEEN = r"(?:\s*\(|\s+[-–—]\s+|\s*,\s*|\s+)"
_BEHIND = (
    pattern(rf"{_NAME}(?:\s+{_NAME}){{0,2}}?{_BETWEEN}(?:(?:la|el|le|a|o|il|die|der|the|l['’])\s*)?(?P<kin>[^\W\d_]+)\s+"
            rf"{_OF_WHOM}(?P<child>{_NAME}(?:\s+{_NAME}){{0,2}})\)?"),
    pattern(rf"{_NAME}(?:\s+{_NAME}){{0,2}}?{_BETWEEN}(?P<child>[^\W\d_][\w-]*(?:\s+[^\W\d_][\w-]*)?)['’]s?\s+"
            r"(?P<kin>[^\W\d_]+)\)?"),
)
_DIRECT = pattern(rf"(?P<kin>[^\W\d_]+)\s+(?P<child>{_NAME}(?:\s+{_NAME})?)")
_MUMS_AND_DADS = word_set("""
    mother, mom, mum, mommy, mummy, father, dad, daddy, madre, mama, padre, papa, mere, maman, pere, mutter, mutti,
    vater, vati, mamma, babbo, mae, pai""")
_PARENTS = _MUMS_AND_DADS | word_set("""
    parent, parents, guardian, guardians, grandma, grandpa, grandmother, grandfather, gran, granny, grandad, nan,
    abuela, abuelo, tutor, tutora, mamie, mamy, papi, papy, grand-mere, grand-pere, eltern, oma, opa, grossmutter,
    grossvater, nonna, nonno, genitore, genitori, avo, pais, encarregado, encarregada""")
_ONESELF = word_set("you, tu, vous, du, voce, ich, moi, yo, io, eu, me")
_SIGN = pattern(r"\S\s+[-–—=|]\s+|\S\s?:\s+|\S\s?(?:->|→)\s?")
_SEATED = pattern(r"\(\d{1,2} [^\W\d_][^()]*\)(?:\s?:|\s?->|\s?→|\s+[-–—=])\s+[^\W\d_][^,;&+/]*[,;&+/]")
"""Who drives stands before other children, of whom nobody is left out unsaid: ``Mia's mom (3 seats): Leo, Anna``."""
_SURELY = OTHER_PEOPLE | _PARENTS
GROWN_UPS = _SURELY | word_set("""
    tata, tatie, tonton, avos, tia, tio, tias, zia, zio, mami, nana, mums, moms, dads, grandparents, yaya, yayo""")
"""Who lives with a child or fetches it; those not sure tell so beside others alone, for Tia and Zia may be children."""
SCHOOLS = word_set("school, escuela, escola, ecole, schule, scuola")
_RELATED = OTHER_PEOPLE - SCHOOLS
"""Who is somebody’s; the Escuela del Sol is no child’s."""
_FEWEST, _ENOUGH = 2, 3
_SOME = 0.3
_LONGEST = 200


def from_kin(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines with each child in place of its grown-up, and those that make nobody: told, or asked about."""
    told = [_told(line.text) for line in lines]
    if not any(map(any, told)):
        return list(lines), []
    bare = {at: strip_numbering(line.text) for at, line in enumerate(lines)
            if len(line.text) <= _LONGEST and any(map(is_letter, line.text))}
    found = {at: one.child for at, one in enumerate(told) if one.child}
    with_called = found | {at: one.called for at, one in enumerate(told) if one.called}
    if _are_most(bare, with_called):
        found = with_called
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
        elif _SEATED.search(line.text) or _may_end_in_s(bare[at], found[at]):
            asides.append(Aside(line, (message("roster.unlike", words=found[at]),), asked=True))
        elif fold(found[at]) in seen:
            asides.append(Aside(line, (message("roster.about_children"),)))
        else:
            seen.add(fold(found[at]))
            kept.append(line.without(line.text, found[at]))
    return kept, asides


class _Told(NamedTuple):
    """The child by whom a line names a grown-up, or the one it calls as a parent is called: ``Mamá Leo``."""

    child: str = ""
    called: str = ""


@keeps_names(1024)
def _told(text: str) -> _Told:
    bare = strip_numbering(text) if len(text) <= _LONGEST else ""
    child = _child_of(bare)
    return _Told(child, "" if child else _called_by_a_parent(bare))


def _may_end_in_s(text: str, name: str) -> bool:
    """Say whether the child of a line may have an s of its own: ``Lukas Oma`` is Luka’s or Lukas’."""
    own = _GENITIVE.match(text)
    return own is not None and own[1] == f"{name}s" and is_given(own[1])


def _are_most(bare: Mapping[int, str], found: Mapping[int, str]) -> bool:
    """Say whether many lines name a child by a parent, and so many at most of the others open with a known name."""
    others = sum(not _of_others(text) for at, text in bare.items() if at not in found and not heading_reason(text))
    return len(found) >= max(_ENOUGH, _SOME * len(bare), others + 1)


def _of_others(text: str) -> tuple[Message, ...]:
    """Return what is asked about a line among those of grown-ups that nobody known opens: ``Du``, ``At work``."""
    small = not is_titled(text)
    known = opens_with_given(text) and not small and fold(text) not in _ONESELF
    return () if known or text.rstrip().endswith(":") or heading_reason(text) else (
        message("roster.unlike", words=text[:60]),)


def _called_by_a_parent(text: str) -> str:
    """Return the child of ``Mamá Leo``, empty where something else is said; Oma Ida is a grandmother."""
    match = _DIRECT.fullmatch(text)
    return match["child"] if match and fold(match["kin"]) in _MUMS_AND_DADS and opens_as_a_name(match["child"]) else ""


def _child_of(text: str) -> str:
    """Return the child by whom a line names a grown-up, empty where none is: ``Mia’s mum``, ``Tilos Mama``."""
    if name := _behind_a_parent(text):
        return name
    for owned in (_OWNED, _GENITIVE):
        if (match := owned.match(text)) and fold(match[2]) in OTHER_PEOPLE:
            name, bare = match[1], match[1][:-1]
            return name if owned is _OWNED or not is_given(bare) else bare
    of = _OF.match(text)
    return of[2] if of and fold(of[1]) in _RELATED and opens_as_a_name(of[2]) else ""


def _behind_a_parent(text: str) -> str:
    """Return the child by whom a parent is named that stands before it, empty where none is."""
    for form in _BEHIND:
        if (match := form.fullmatch(text)) and fold(match["kin"]) in _PARENTS and opens_as_a_name(match["child"]):
            return match["child"]
    return ""


def is_a_grown_up(words: str) -> bool:
    """Say whether words are what a parent or grandparent is called, and nothing else: ``Oma``, ``mamá``."""
    return fold(words) in _PARENTS


def are_grown_ups_behind(text: str) -> bool:
    """Say whether nobody but grown-ups of a family stands behind a sign: ``Mira Vost – maman et papa``."""
    sign = _SIGN.search(text) if len(text) <= _LONGEST else None
    parts = [part.split() for part in BETWEEN_NAMES.split(text[sign.end() :].strip(" .!"))] if sign else []
    if not all(len(part) == 1 and fold(part[0]) in GROWN_UPS for part in parts):
        return False
    return any(begins_small(part[0]) or (fold(part[0]) in _SURELY and not lean(part[0]) > 0) for part in parts)
