"""The forms of letters a school chooses: variants by plain names, a slant, exit strokes.

Written in one line, as on the command line or in a roster: ``a=two-storey t=curved slant=8 exit-strokes``.
Units: the slant in degrees to the right of upright, 0 to 15.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from namewright.letters.alphabet import Alphabet
from namewright.units import number

GREATEST_SLANT = 15.0


@dataclass(frozen=True, slots=True)
class LetterChoice:
    """Chosen variants as (letter, form), the slant in degrees, and whether letters have exit strokes."""

    variants: tuple[tuple[str, str], ...] = ()
    slant: float = 0.0
    exit_strokes: bool = False

    def over(self, below: LetterChoice) -> LetterChoice:
        """Return this choice laid over another: what is not said here holds as there."""
        variants = dict(below.variants) | dict(self.variants)
        return LetterChoice(tuple(sorted(variants.items())), self.slant or below.slant,
                            self.exit_strokes or below.exit_strokes)

    def __str__(self) -> str:
        words = [f"{letter}={form}" for letter, form in self.variants]
        words += [f"slant={number(self.slant)}"] if self.slant else []
        return " ".join([*words, *(["exit-strokes"] if self.exit_strokes else [])])


def read_choice(text: str, alphabet: Alphabet) -> LetterChoice:
    """Read a choice from words. Raises ValueError, in a sentence that names what there is, for others."""
    choice = LetterChoice()
    variants: dict[str, str] = {}
    for word in text.replace(",", " ").replace(";", " ").split():
        letter, _, form = word.partition("=")
        if word == "exit-strokes":
            choice = replace(choice, exit_strokes=True)
        elif letter == "slant":
            choice = replace(choice, slant=_slant(form))
        else:
            variants[letter] = _form(letter, form, alphabet)
    return replace(choice, variants=tuple(sorted(variants.items())))


def _slant(text: str) -> float:
    try:
        slant = float(text.removesuffix("°").replace(",", "."))
    except ValueError:
        slant = -1.0
    if not 0 <= slant <= GREATEST_SLANT:
        raise ValueError(f"a slant of “{text}” cannot be written; choose from 0 to {number(GREATEST_SLANT)} degrees")
    return slant


def _form(letter: str, form: str, alphabet: Alphabet) -> str:
    known = alphabet.forms.get(letter)
    if known is None:
        letters = " ".join(alphabet.forms)
        raise ValueError(f"“{letter}” has one form only; these have a choice: {letters}, slant and exit-strokes")
    if form not in known:
        raise ValueError(f"“{letter}” has no form called “{form}”; choose one of {', '.join(known)}")
    return form


def chosen(alphabet: Alphabet, choice: LetterChoice) -> Alphabet:
    """Return the alphabet with the chosen forms in the place of the usual ones. The slant is the setting's."""
    glyphs = dict(alphabet.glyphs)
    if choice.exit_strokes:
        glyphs |= alphabet.exit_strokes
    for letter, form in choice.variants:
        glyph = alphabet.variants.get((letter, form))
        if glyph is not None:  # the usual form has no entry: it stands in the alphabet
            glyphs[letter] = glyph
    return replace(alphabet, glyphs=glyphs)
