"""Finding a child by what an adult types, and letters of a name by the letters themselves. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from namewright.classbook.records import BookChild, ClassbookError, letter_positions
from namewright.names.clusters import clusters
from namewright.roster.children import Child
from namewright.roster.vocabulary import fold


def find_child(children: Sequence[BookChild], typed: str) -> BookChild:
    """Return the one child that is called so: by label, practised name, given name, or given and family name.

    A child who is here goes before one who left. Raises ClassbookError where there is none, or more than one.
    """
    wanted = fold(typed)
    for group in ([one for one in children if one.left is None], [one for one in children if one.left]):
        for names in (lambda child: (child.label,), _names):
            found = [one for one in group if wanted in map(fold, names(one.child))]
            if len(found) == 1:
                return found[0]
            if found:
                raise ClassbookError("classbook.which_child", typed=typed,
                                     labels=tuple(one.child.label for one in found))
    raise ClassbookError("classbook.unknown_child", typed=typed)


def is_called(child: Child, typed: str) -> bool:
    """Say whether a child is called so in a list: by label, practised name, given name, or given and family name."""
    return fold(typed) in map(fold, (child.label, *_names(child)))


def _names(child: Child) -> tuple[str, ...]:
    return (child.practice, child.given, f"{child.given} {child.family}")


def find_letters(name: str, typed: str) -> tuple[int, ...]:
    """Return the places in the name of the letters typed, each used once, from left to right.

    A letter typed as a capital or small stands for the same one in the name if no other fits. Raises ClassbookError
    for a letter that the name does not have, or not so often.
    """
    letters, free = clusters(name), list(letter_positions(name))
    found = []
    for sign in clusters("".join(typed.replace(",", " ").split())):
        place = next((at for at in free if letters[at] == sign), None)
        if place is None:
            place = next((at for at in free if letters[at].casefold() == sign.casefold()), None)
        if place is None:
            raise ClassbookError("classbook.no_such_letter", letter=sign, name=name)
        free.remove(place)
        found.append(place)
    return tuple(sorted(found))
