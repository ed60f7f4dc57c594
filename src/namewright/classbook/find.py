"""Finding a child by what an adult types, and letters of a name by the letters themselves. Pure."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import unicodedata2

from namewright.classbook.going_on import spelt_out, whole_name, words
from namewright.classbook.records import BookChild, ClassbookError, letter_positions
from namewright.names.clusters import clusters
from namewright.roster.children import Child
from namewright.roster.vocabulary import fold


def find_child(children: Sequence[BookChild], typed: str) -> BookChild:
    """Return the one child that is called so: by label, practised name, given name, or given and family name.

    A child who is here goes before one who left. Whoever is called so to the letter, accents aside, goes before names
    that only fold alike, as ``Lucja`` and ``Łucja``; but where there are both, who is meant is asked. Raises
    ClassbookError where there is none, or more than one.
    """
    here = [one for one in children if one.left is None]
    gone = [one for one in children if one.left]
    wanted = fold(typed)
    for group, others in ((here, here), (gone, children)):
        for names in (_label, _names):
            if any(wanted in map(fold, names(one.child)) for one in group):
                return _only(_called(others, typed, names), typed)
    for group in (here, gone):
        if found := _called(group, typed, _names):
            return _only(found, typed)
    raise ClassbookError("classbook.unknown_child", typed=typed)


def called_so(children: Sequence[Child], typed: str) -> list[Child]:
    """Return who of a list is called so, as in ``find_child``."""
    wanted = _folded(typed)
    found = [one for one in children if any(not wanted.isdisjoint(_folded(name)) for name in _names(one))]
    return [one for one in found if _is_written(one, typed)] or found


def _called(children: Sequence[BookChild], typed: str,
            names: Callable[[Child], tuple[str, ...]]) -> list[BookChild]:
    """Return those who have one of some names, and those who have one that is written otherwise and folds alike."""
    wanted, signs = _folded(typed), _signs(typed)
    return [one for one in children if any(
        not wanted.isdisjoint(_folded(name)) and (name in names(one.child) or _signs(name) != signs)
        for name in _names(one.child))]


def _folded(name: str) -> frozenset[tuple[str, ...]]:
    """Return the words of a name as they are typed without accents: ``ø`` as ``o`` and as ``oe``."""
    return frozenset((words(name), words(spelt_out(name)), tuple(fold(name).split()))) - {()}


def _only(found: Sequence[BookChild], typed: str) -> BookChild:
    """Return the only one, or whose name was typed with its accents. Raises ClassbookError."""
    exactly = [one for one in found if _is_written(one.child, typed)]
    if len(found) == 1 or len(exactly) == 1:
        return (exactly if len(found) > 1 else found)[0]
    labels, wholes = [one.child.label for one in found], [whole_name(one.child) for one in found]
    if len(set(map(words, labels))) == len(set(map(words, wholes))) == 1:
        raise ClassbookError("classbook.alike_but_signs", typed=typed, labels=tuple(labels))
    again = words(typed) in map(words, labels)  # typed again, a label would be asked again
    raise ClassbookError("classbook.which_child", typed=typed, labels=tuple(wholes if again else labels))


def _is_written(child: Child, typed: str) -> bool:
    """Say whether a name was typed with its signs; without any it may be another name, typed in a hurry."""
    signs = _signs(typed)
    return not signs.isascii() and signs in map(_signs, _names(child))


def _signs(name: str) -> str:
    return " ".join(str(unicodedata2.normalize("NFC", name)).lower().split())


def _label(child: Child) -> tuple[str, ...]:
    return (child.label,)


def _names(child: Child) -> tuple[str, ...]:
    return (child.label, child.practice, child.given, whole_name(child))


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
