"""What a teacher could say about a child's place and letters: whole, warm, and true to the figures.

A child is called by label, never by a pronoun. Nothing is claimed that the evidence does not carry. Each message is
one whole sentence. Out of scope: the words (``wording``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.message import Message, message
from namewright.practice.difficulty import Band, NameDifficulty


def reason(label: str, position: int, of: int, length: int, letters: Sequence[tuple[str, Band]],
           own_initial: str) -> tuple[Message, ...]:
    """Return a child's place, how much there is to write, and where in the name to begin and end.

    ``letters`` are the different ones of the name in practice order, each with its band.
    """
    if not letters:
        return (no_place(label, ()),)
    place = "first" if position == 1 else "last" if position == of else "next"
    begin = "own_letter" if letters[0][0] == own_initial else "good_letter"
    return (message(f"reason.{place}", label=label, count=length),
            message(f"reason.{begin}", letter=letters[0][0]), *_ending(letters[1:]))


def no_place(label: str, missing: Sequence[str]) -> Message:
    """Return why a name has no place in the order; ``missing`` are the characters that cannot be drawn."""
    if missing:
        return message("reason.no_place", label=label, letters=tuple(missing))
    return message("reason.no_letters", label=label)


def _ending(rest: Sequence[tuple[str, Band]]) -> Iterator[Message]:
    """Name the letters worth saying something about: the harder ones, else the easier ones."""
    harder = tuple(letter for letter, band in rest if band is Band.HARDER)
    easier = tuple(letter for letter, band in rest if band is Band.EASIER)
    if harder:
        yield message("reason.for_last", letters=harder)
    elif easier:
        yield message("reason.soon", letters=easier)


def for_parent(label: str, rating: NameDifficulty, own_initial: str) -> tuple[Message, ...]:
    """Return what a teacher could say to a parent about a name.

    A mark here is also a space, a hyphen or an apostrophe: all are small things to learn that are no letters.
    """
    if not rating.letters:
        return (message("parent.no_letters", label=label),)
    return (message(f"parent.{rating.band}", label=label, count=rating.length), *_in_it(rating),
            message("parent.initial", initial=own_initial or rating.letters[0].letter))


def _in_it(rating: NameDifficulty) -> Iterator[Message]:
    if rating.length > len(rating.letters):
        yield message("parent.again")
    if rating.small_signs:
        yield message("parent.marks", count=rating.small_signs)
    for pair in rating.twins[:1]:
        yield message("parent.twins", letters=pair)
