"""What comes next for each child behind an arrow, ``Mira Vost → Oak Hill School``: the name alone is the child's.

Schools, rooms and buses come again from line to line and children do not, so a word for a class or a school there heads
nothing. Out of scope: arrows to names, as of wishes and groups, and one dash or colon for all (``alike``, ``beside``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.heading_words import PLACES
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.shares import given_share, share
from namewright.roster.sure_groups import is_a_job
from namewright.roster.vocabulary import fold

_ARROW = pattern(r"([^→⇒>:;|\t\d]{2,60}?)\s*(?:→|⇒|->|=>)\s*([^→⇒>;|\t]{1,60})")
_DASH = pattern(r"([^→⇒>:;|\t\d]{2,60}?)(?:\s[-–—]|\s?:)\s([^→⇒>;|\t]{1,60})")
_FRAMED = pattern(r"\s*(?:\*+|=+|~+|_+|-+)\s*[^\W\d_].*[*=~_-]\s*")
_SCHOOLS = PLACES | {"escuela", "colegio", "collegio", "grundschule", "colegios", "ceip", "liceo", "lycee", "college"}
_FEWEST, _MOSTLY = 4, 0.8
_AGAIN, _SMALL, _NAMED, _HALF = 0.6, 0.6, 0.3, 0.5


def from_arrows(lines: Sequence[Line]) -> list[Line]:
    """Return the names before arrows, where most lines have one and what stands behind it is no name."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    for sign in (_ARROW, _DASH):
        found = {at: (match[1].strip(), match[2].strip()) for at in filled
                 if (match := sign.fullmatch(strip_numbering(lines[at].text).strip()))}
        names, others = [name for name, _ in found.values()], [other for _, other in found.values()]
        if len(found) >= max(_FEWEST, _MOSTLY * len(filled)) and _are_children(names, others, dashed=sign is _DASH):
            return names_alone(lines, found)
    return list(lines)


def names_alone(lines: Sequence[Line], found: Mapping[int, tuple[str, str]]) -> list[Line]:
    """Return lines with the name of each that has something beside it, and a first one apart from these as a heading.

    A known given name there is a child of whom nothing is said; one of two words between signs is ``* Noël secret *``.
    """
    first = next((at for at, line in enumerate(lines) if line.text.strip()), 0)
    text = lines[first].text if lines else ""
    bare = text.strip(" *_=#-~")
    framed = _FRAMED.fullmatch(text) is not None
    alone = not any(line.text.strip() for line in lines[first + 1 : first + 2])
    apart = first not in found and ((framed and " " in bare) or ((framed or alone) and not opens_with_given(bare)))
    return [line.without(found[at][1], found[at][0]) if at in found else (
        line.heading(bare) if apart and at == first else line) for at, line in enumerate(lines)]


def _is_no_name(other: str, school: bool) -> bool:
    return school or begins_small(other) or not any(map(is_letter, other))


def _are_children(names: Sequence[str], others: Sequence[str], *, dashed: bool) -> bool:
    """Say whether names stand on one side, each once, and on the other what is no name: it comes again or is small.

    Behind a dash or a colon, which part much else, they are words for places: ``Mira Vost – Oak Hill School``.
    """
    once, told = set(map(fold, names)), list(map(fold, others))
    small = share(map(begins_small, others)) >= _SMALL
    named = share(is_titled_name(name) and may_be_a_name(name.replace(",", " ")) for name in names) >= _MOSTLY
    again = len(set(told)) <= _AGAIN * len(told)
    whole = all(" " in name for name in names) or given_share(names) >= _MOSTLY  # no groups
    school = [not _SCHOOLS.isdisjoint(other.split()) for other in told]
    placed = whole and any(school) and share(map(_is_no_name, others, school)) >= _HALF
    return (len(once) == len(names) and (placed or (not dashed and (again or small))) and once.isdisjoint(told)
            and named and given_share(told) <= _NAMED and not any(map(is_a_job, names)))
