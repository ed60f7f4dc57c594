"""A name in Latin letters that was answered once stays with the child, however often a list brings the other script.

A list pasted anew writes Мила, as the register does; the class knows the child as Mila, since somebody who knows how
the family spells it said so. What stands for the child in the class goes on then, part by part, wherever the list has
another script and the class Latin letters. It is kept in the child's own names, so it goes with the child. Pure.
"""

from __future__ import annotations

from collections.abc import Sequence

import unicodedata2

from namewright.named_tuples import NamedTuple
from namewright.roster.children import Child
from namewright.roster.labels import labels

_LATIN = ("LATIN", "MODIFIER LETTER", "FEMININE ORDINAL", "MASCULINE ORDINAL")  # ʻ and ª stand in Latin names


class Names(NamedTuple):
    """The names of a child as the class has them."""

    given: str
    family: str
    practice: str


def is_other_script(name: str) -> bool:
    """Say whether a name has a letter of a script that is not Latin."""
    return not name.isascii() and any(
        char.isalpha() and not unicodedata2.name(char, "").startswith(_LATIN) for char in name)


def as_spelled(child: Child, old: Names) -> Child:
    """Return a child of a list with the spelling that the class has, where the list writes another script."""
    given, family = _part(child.given, old.given), _part(child.family, old.family)
    return child._replace(given=given, family=family, practice=_practised(child, old, given, family))


def _part(new: str, old: str) -> str:
    return old if is_other_script(new) and old and not is_other_script(old) else new


def _practised(child: Child, old: Names, given: str, family: str) -> str:
    if not is_other_script(child.practice):
        return child.practice
    if child.practice == child.family:
        return family
    if child.family and child.practice == f"{child.given} {child.family}":
        return f"{given} {family}"
    called = old.practice not in (old.family, f"{old.given} {old.family}")
    return _part(child.practice, old.practice if called else given)


def relabelled(children: Sequence[Child]) -> tuple[Child, ...]:
    """Return the children with labels that tell them apart by the names that they have now."""
    names = labels([(child.practice, _beside(child)) for child in children])
    return tuple(child._replace(label=label) for child, label in zip(children, names, strict=True))


def _beside(child: Child) -> str:
    """Return the part of the name that is not practised."""
    if child.practice == child.family:
        return child.given
    return "" if child.practice.endswith(child.family) else child.family
