"""Who is who when a new roster comes: children who stay keep their id, and with it all that is kept about them.

Pure. A line of the new roster is given to a child we know in this order: as the caller says (a line mended in place);
the same given name, family name and practised name; the same label, unless the family names contradict each other
(another child with the same first name is another child). The first two also bring back a child who had left.
Children alike in every name are matched in roster order, and where one of them is gone that guess is said.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass, field

from namewright.message import Message, message
from namewright.roster.children import Child
from namewright.roster.vocabulary import fold


@dataclass(frozen=True, slots=True)
class Known:
    """A child as the database has it; ``here`` is false for one who has left."""

    id: int
    given: str
    family: str
    practice: str
    label: str
    here: bool


@dataclass
class Enrolment:
    """The id for each line of the roster that is a known child, and what was guessed."""

    ids: dict[int, int] = field(default_factory=dict)
    notes: list[Message] = field(default_factory=list)


def enrol(children: Sequence[Child], known: Sequence[Known], same: Mapping[int, int]) -> Enrolment:
    """Match the children of a new roster with those known; ``same`` gives ids by line where the caller knows."""
    found = Enrolment({child.line: same[child.line] for child in children if child.line in same})
    here = [one for one in known if one.here]
    _match(found, children, here, _names, _names)
    _match(found, children, [one for one in known if not one.here], _names, _names)
    _match(found, children, here, _label, _label, _families_agree)
    found.notes += _guesses(found, children, known)
    return found


def _match(found: Enrolment, children: Sequence[Child], known: Sequence[Known], new_key: Callable[[Child], Hashable],
           old_key: Callable[[Known], Hashable], fits: Callable[[Child, Known], bool] = lambda new, old: True) -> None:
    taken, free = set(found.ids.values()), defaultdict[Hashable, list[Known]](list)
    for one in known:
        if one.id not in taken:
            free[old_key(one)].append(one)
    for child in children:
        alike = () if child.line in found.ids else free.get(new_key(child), ())
        match = next((one for one in alike if fits(child, one)), None)
        if match:
            found.ids[child.line] = match.id
            free[new_key(child)].remove(match)


def _names(one: Child | Known) -> tuple[str, str, str]:
    return (one.given.casefold(), one.family.casefold(), one.practice.casefold())


def _label(one: Child | Known) -> str:
    return one.label.casefold()


def _families_agree(new: Child, old: Known) -> bool:
    return not new.family or not old.family or fold(new.family) == fold(old.family)


def _guesses(found: Enrolment, children: Sequence[Child], known: Sequence[Known]) -> list[Message]:
    """Say where children alike in every name are fewer than before, so that which of them stayed was guessed."""
    before = Counter(_names(one) for one in known if one.here)
    now = Counter(_names(child) for child in children)
    shown = {_names(one): " ".join(part for part in (one.given, one.family) if part) or one.practice for one in known}
    return [message("classbook.guess", before=before[key], name=shown[key], count=count)
            for key, count in now.items() if before[key] > count and before[key] > 1]
