"""The sentence a teacher could say about a child's place and letters: whole, warm, and true to the figures.

A child is called by label, never by a pronoun. Nothing is claimed that the evidence does not carry.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.practice.difficulty import Band, LetterDifficulty

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
            "ten", "eleven", "twelve")


def reason(label: str, position: int, of: int, length: int, letters: Sequence[LetterDifficulty],
           own_initial: str) -> str:
    """Return one sentence: the place, how much there is to write, and where in the name to begin and end."""
    if not letters:
        return f"{label} has no letters to practise yet, so please look at this name in the roster."
    return (f"{_opening(label, position, of)}: {count_letters(length)} to write, "
            f"{_beginning(letters, own_initial)}{_ending(letters[1:])}.")


def count_letters(length: int) -> str:
    """Return ``one letter``, ``four letters``, ``13 letters``."""
    number = _NUMBERS[length] if length < len(_NUMBERS) else str(length)
    return f"{number} letter{'' if length == 1 else 's'}"


def _opening(label: str, position: int, of: int) -> str:
    if position == 1:
        return f"{label} starts"
    return f"{label} completes the round" if position == of else f"Then comes {label}"


def _beginning(letters: Sequence[LetterDifficulty], own_initial: str) -> str:
    first = letters[0].letter
    if first == own_initial:
        return f"and {first} is the child’s own first letter, so begin there"
    return f"and {first} is a good one to begin with"


def _ending(rest: Sequence[LetterDifficulty]) -> str:
    """Name the letters worth saying something about: the harder ones, else the easier ones."""
    harder = [each.letter for each in rest if each.band is Band.HARDER]
    if harder:
        return f"; keep {_joined(harder)} for last, with a little more time"
    easier = [each.letter for each in rest if each.band is Band.EASIER]
    return f"; {_joined(easier)} can follow soon" if easier else ""


def _joined(letters: Sequence[str]) -> str:
    return letters[0] if len(letters) == 1 else f"{', '.join(letters[:-1])} and {letters[-1]}"
