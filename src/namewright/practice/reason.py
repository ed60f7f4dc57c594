"""The sentence a teacher could say about a child's place and letters: whole, warm, and true to the figures.

A child is called by label, never by a pronoun. Nothing is claimed that the evidence does not carry.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.practice.difficulty import Band, LetterDifficulty, NameDifficulty

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
            "ten", "eleven", "twelve")


def reason(label: str, position: int, of: int, length: int, letters: Sequence[LetterDifficulty],
           own_initial: str) -> str:
    """Return one sentence: the place, how much there is to write, and where in the name to begin and end."""
    if not letters:
        return no_place(label, ())
    return (f"{_opening(label, position, of)}: {count_letters(length)} to write, "
            f"{_beginning(letters, own_initial)}{_ending(letters[1:])}.")


def no_place(label: str, missing: Sequence[str]) -> str:
    """Return why a name has no place in the order; ``missing`` are the characters that cannot be drawn."""
    if not missing:
        return f"{label} has no letters to practise yet, so please look at this name in the roster."
    return (f"{label} has no place in this order, because {_joined(missing)} cannot be drawn with our letters; "
            "please ask the family how the name is written in these.")


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


# --- to a parent -------------------------------------------------------------------------------------

_TO_PARENT = {
    "en": {
        "easier": "{label}’s name is a kind one to start with",
        "middle": "{label}’s name is about as much work as most",
        "harder": "{label}’s name asks for a little patience",
        "none": "{label}’s name has no letters to practise yet, and together we will find out how to write it.",
        "length": "it has {count} to write", "again": "some of them come again, which helps",
        "mark": "there is a small mark or gap that deserves its own turn",
        "marks": "there are small marks or gaps that deserve their own turn",
        "twins": "{pair} are mirror twins, so mixing them up for a while is no worry",
        "initial": "we begin with “{initial}”, the first letter of the name",
        "and": "and",
    },
    "es": {
        "easier": "El nombre de {label} es agradecido para empezar",
        "middle": "El nombre de {label} da el mismo trabajo que la mayoría",
        "harder": "El nombre de {label} pide un poco de paciencia",
        "none": "El nombre de {label} aún no tiene letras para practicar, y juntos veremos cómo escribirlo.",
        "length": "tiene {count} por escribir", "again": "algunas se repiten, y eso ayuda",
        "mark": "hay un signo o espacio pequeño que merece su momento",
        "marks": "hay signos o espacios pequeños que merecen su momento",
        "twins": "{pair} son gemelas en espejo, y confundirlas un tiempo no es preocupante",
        "initial": "empezamos por la “{initial}”, la primera letra de su nombre",
        "and": "y",
    },
}


def for_parent(label: str, rating: NameDifficulty, own_initial: str, language: str = "en") -> str:
    """Return what a teacher could say to a parent about a name, in one sentence; English where a language is not known.

    A mark here is also a space, a hyphen or an apostrophe: all are small things to learn that are no letters.
    """
    words = _TO_PARENT.get(language, _TO_PARENT["en"])
    if not rating.letters:
        return words["none"].format(label=label)
    letters = f"{rating.length} letra{'s' * (rating.length > 1)}" if words is _TO_PARENT["es"] else count_letters(
        rating.length)
    has = [words["length"].format(count=letters)]
    has += [words["again"]] if rating.length > len(rating.letters) else []
    has += [words["mark" if rating.small_signs == 1 else "marks"]] if rating.small_signs else []
    has += [words["twins"].format(pair=f"{one} {words['and']} {other}") for one, other in rating.twins[:1]]
    opening = words[rating.band].format(label=label)
    return f"{opening}: {'; '.join(has)}; {words['initial'].format(initial=own_initial or rating.letters[0].letter)}."
