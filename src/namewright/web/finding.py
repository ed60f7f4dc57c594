"""Finding a child of the class by what was typed of its name."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby

from namewright.names.alphabetical import base_letters
from namewright.roster.vocabulary import fold
from namewright.web.desk import Member


def beginning(typed: str, everyone: Sequence[Member]) -> tuple[Member, ...]:
    """Return those whose name begins with what was typed, marks and capitals aside; else those whose family’s does."""
    wanted = fold(typed)
    first = tuple(one for one in everyone if any(name.startswith(wanted) for name in names_of(one)))
    return first or tuple(one for one in everyone if family_of(one).startswith(wanted))


def names_of(one: Member) -> tuple[str, ...]:
    """Return the names by which a child may be found, the family's apart: folded, and in base letters alone."""
    child = one.one.child
    return tuple(dict.fromkeys(each for name in (child.practice, child.label, child.given) if name
                               for each in (fold(name), base_letters(fold(name)))))


def family_of(one: Member) -> str:
    """Return the family name, folded: it counts where no name begins so."""
    return fold(one.one.child.family)


def label_key(label: str) -> tuple[str, str]:
    """Return what labels are sorted by where one looks for a child: by base letters, marks and capitals aside."""
    return base_letters(label), label


def by_alphabet(everyone: Iterable[Member]) -> tuple[Member, ...]:
    """Return the children as one looks for them in a list: by what they are called."""
    return tuple(sorted(everyone, key=lambda one: label_key(one.label)))


def by_initial(everyone: Iterable[Member]) -> tuple[tuple[str, tuple[Member, ...]], ...]:
    """Return children that stand by alphabet in parts, each with the letter that they begin with."""
    parts = groupby(everyone, lambda one: base_letters(one.label)[:1].upper())
    return tuple((letter, tuple(part)) for letter, part in parts)
