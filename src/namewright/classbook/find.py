"""Finding a child by what an adult types, and letters of a name by the letters themselves. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from namewright.classbook.records import BookChild, ClassbookError, letter_positions
from namewright.names.clusters import clusters
from namewright.roster.vocabulary import fold


def find_child(children: Sequence[BookChild], typed: str) -> BookChild:
    """Return the one child that is called so: by label, practised name, given name, or given and family name.

    A child who is here goes before one who left. Raises ClassbookError where there is none, or more than one.
    """
    wanted = fold(typed)
    for group in ([one for one in children if one.left is None], [one for one in children if one.left]):
        for names in (lambda one: (one.child.label,), _names):
            found = [one for one in group if wanted in map(fold, names(one))]
            if len(found) == 1:
                return found[0]
            if found:
                raise ClassbookError(f"More than one child is called “{typed}”: "
                                     f"{', '.join(one.child.label for one in found)}; write one of these.")
    raise ClassbookError(f"There is no child called “{typed}” in this class; “namewright class” and its file lists "
                         "who is there.")


def _names(one: BookChild) -> tuple[str, ...]:
    child = one.child
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
            raise ClassbookError(f"There is no “{sign}” left in “{name}”; write the letters that were formed, each as "
                                 "often as it was.")
        free.remove(place)
        found.append(place)
    return tuple(sorted(found))
