"""The forms of letters a school chooses: variants by plain names, a slant, exit strokes.

Written in one line, as on the command line or in a roster: ``a=two-storey t=curved slant=8 exit-strokes``.
``crossbars=left`` draws crossbars from right to left, as many left-handers do: the pencil is then pulled along and
not pushed (common practice: no study was seen that says which way is better). Units: the slant in degrees, 0 to 15.
"""

from __future__ import annotations

from namewright.geometry import distances
from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import Stroke
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.units import number

MAX_SLANT = 15.0
_TOUCHING = 2.0  # letter units: a bar that ends this near a stroke ends on it


class LetterChoice(NamedTuple):
    """Chosen variants as (letter, form), the slant in degrees, exit strokes, and crossbars from right to left.

    None leaves open what another choice may say; where none does, letters are upright and plain.
    """

    variants: tuple[tuple[str, str], ...] = ()
    slant: float | None = None
    exit_strokes: bool | None = None
    leftward_bars: bool | None = None

    def over(self, below: LetterChoice) -> LetterChoice:
        """Return this choice laid over another: what is not said here holds as there."""
        variants = dict(below.variants) | dict(self.variants)
        return LetterChoice(tuple(sorted(variants.items())),
                            below.slant if self.slant is None else self.slant,
                            below.exit_strokes if self.exit_strokes is None else self.exit_strokes,
                            below.leftward_bars if self.leftward_bars is None else self.leftward_bars)

    def __str__(self) -> str:
        words = [f"{letter}={form}" for letter, form in self.variants]
        words += [f"slant={number(self.slant)}"] if self.slant is not None else []
        if self.exit_strokes is not None:
            words.append("exit-strokes" if self.exit_strokes else "exit-strokes=no")
        if self.leftward_bars is not None:
            words.append("crossbars=left" if self.leftward_bars else "crossbars=right")
        return " ".join(words)


def read_choice(text: str, alphabet: Alphabet) -> LetterChoice:
    """Read a choice from words. Raises Problem, which names what there is, for others."""
    choice = LetterChoice()
    variants: dict[str, str] = {}
    for word in text.replace(",", " ").replace(";", " ").split():
        letter, _, form = word.partition("=")
        if word in ("exit-strokes", "exit-strokes=no"):
            choice = choice._replace(exit_strokes=not form)
        elif letter == "crossbars":
            choice = choice._replace(leftward_bars=_leftward(form))
        elif letter == "slant":
            choice = choice._replace(slant=_slant(form))
        else:
            variants[letter] = _form(letter, form, alphabet)
    return choice._replace(variants=tuple(sorted(variants.items())))


def _leftward(text: str) -> bool:
    if text not in ("left", "right"):
        raise Problem("letters.crossbars", text=text)
    return text == "left"


def _slant(text: str) -> float:
    try:
        slant = float(text.removesuffix("°").replace(",", "."))
    except ValueError:
        slant = -1.0
    if not 0 <= slant <= MAX_SLANT:
        raise Problem("letters.slant", text=text, most=MAX_SLANT)
    return slant


def _form(letter: str, form: str, alphabet: Alphabet) -> str:
    known = alphabet.forms.get(letter)
    if known is None:
        raise Problem("letters.one_form", letter=letter, known=(*alphabet.forms, "slant", "exit-strokes", "crossbars"))
    if form not in known:
        raise Problem("letters.no_form", letter=letter, form=form, known=tuple(known))
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
    if choice.leftward_bars:
        glyphs = {char: glyph._replace(strokes=_leftward_bars(glyph.strokes)) for char, glyph in glyphs.items()}
    return alphabet._replace(glyphs=glyphs)


def _leftward_bars(strokes: tuple[Stroke, ...]) -> tuple[Stroke, ...]:
    """Turn crossbars round: level lines with both ends free or both ends on other strokes (t f T A H, not E F)."""
    if len(strokes) == 1:
        return strokes
    return tuple(stroke.reversed() if _is_crossbar(stroke, strokes) else stroke for stroke in strokes)


def _is_crossbar(stroke: Stroke, strokes: tuple[Stroke, ...]) -> bool:
    if len(stroke.segments) != 1 or stroke.is_dot or stroke.start[1] != stroke.end[1]:
        return False
    tracks = [other.flattened(0.5) for other in strokes if other is not stroke]
    starts_on, ends_on = (any(distances.to_polyline(end, track) < _TOUCHING for track in tracks)
                          for end in (stroke.start, stroke.end))
    return starts_on == ends_on
