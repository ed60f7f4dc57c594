"""The typesetter: what one run keeps ready so that every page is made from the same letters.

Caches of letters by ruling, and of running text. They are bounded: memory does not grow with the roster.
Out of scope: what stands where (``sheet``, ``card``, ``tiles``, ``summary``).
"""

from __future__ import annotations

import re
from collections.abc import Hashable, Sequence
from itertools import islice
from typing import TYPE_CHECKING

from namewright.letters.alphabet import Alphabet, Letter, upright
from namewright.letters.choice import LetterChoice, chosen
from namewright.lines.cues import CueMaker
from namewright.lines.forms import TEXT_PEN, Form, Inker, Written, pens_for
from namewright.lines.ink import BLACK, Ink, Spelled, Style, passage
from namewright.lines.ruling import LETTER_UNITS, Ruling, print_ruling
from namewright.lines.setting import PENCIL_MM, InkLetter, LineSetter, RuledLetters, SetLetter, SetLine, pen_width_mm
from namewright.lines.spacing import WORD_GAP, Spacers
from namewright.names.clusters import clusters
from namewright.store import LETTERS, Store
from namewright.wording import TIED_SPACE

if TYPE_CHECKING:
    from namewright.pages.page import Page
    from namewright.schoolfont.shaping import Lettering

_KEPT = 24
_KEPT_LETTERINGS = 8
_KEPT_TEXTS = 200
_KEPT_WIDTHS = 2000
_KEPT_LINES = 4  # a text is measured, then drawn
TEXT_PENCIL_MM = 0.15
_ALONE = 0.35  # of a line: what the last word takes at least that may stand alone on it
_TEXT_SPACE = 0.75  # of the space between a child's two names: grown readers need less


class Typesetter:
    """Letters on their rulings, their ink and running text of one run, made when first asked for.

    ``kept_sheets`` children's sheets are kept, by name, owner and settings, where somebody will ask for one again.
    """

    def __init__(self, alphabet: Alphabet | None = None, slant: float = 0.0, captions_by: Typesetter | None = None, *,
                 school_font: Lettering | None = None, kept_sheets: int = 0) -> None:
        self.alphabet, self.slant, self.captions_by = alphabet or upright(), slant, captions_by
        self.school_font = school_font
        self.sheets: Store[Hashable, tuple[Page, ...]] = Store(kept_sheets)
        self._others: Store[LetterChoice, Typesetter] = Store(_KEPT_LETTERINGS)
        self._ruled: Store[tuple[Ruling, float, float], RuledLetters] = Store(_KEPT)
        self._ruled_font: Store[tuple[Ruling, float], LineSetter] = Store(_KEPT)
        self._inkers: Store[Ruling, Inker] = Store(_KEPT)
        self._cues: Store[tuple[Ruling, bool], CueMaker] = Store(_KEPT)
        self._texts: Store[tuple[str, float], Ink] = Store(_KEPT_TEXTS)
        self._widths: Store[tuple[str, float], float] = Store(_KEPT_WIDTHS)
        self._text_lines: Store[tuple[str, float], SetLine] = Store(_KEPT_LINES)
        self._cut: Store[Ruling, Store[str, tuple[Letter, InkLetter]]] = Store(_KEPT)
        self._spacers = Spacers(usual=self.alphabet is upright())

    @property
    def knows_strokes(self) -> bool:
        """Return whether the order of strokes is known: a school's font does not tell it."""
        return self.school_font is None

    @property
    def _usual(self) -> bool:
        return self.alphabet is upright() and not self.slant

    def lettering(self, choice: LetterChoice) -> Typesetter:
        """Return a typesetter for names in chosen forms of letters; captions stay in the usual ones."""
        if choice == LetterChoice() or self.school_font is not None:  # a school's font has its own forms
            return self
        return self._others.get(choice, lambda: Typesetter(chosen(self.alphabet, choice), choice.slant or 0.0, self))

    def ruled(self, ruling: Ruling, letter_spacing_mm: float = 0.0, pencil_mm: float | None = None) -> LineSetter:
        """Return the letters on a ruling, with extra letter spacing in mm: the school's own where it has a font.

        What has a ``pencil_mm`` of its own is a caption, and captions stay in our letters.
        """
        if self.school_font is not None and pencil_mm is None:
            school = self.school_font
            return self._ruled_font.get((ruling, letter_spacing_mm), lambda: school.ruled(ruling, letter_spacing_mm))

        def make() -> RuledLetters:
            pencil = PENCIL_MM if pencil_mm is None else pencil_mm
            space = 1.0 if pencil_mm is None else _TEXT_SPACE
            cut = self._cut.get(ruling, lambda: Store(LETTERS))
            return RuledLetters(self.alphabet, ruling, letter_spacing_mm, pencil, self.slant, space, cut, self._spacers)
        return self._ruled.get((ruling, letter_spacing_mm, pencil_mm or 0.0), make)

    def inker(self, ruling: Ruling) -> Inker:
        """Return the ink for a ruling, with the pens that suit it."""
        return self._inkers.get(ruling, lambda: Inker(ruling, pens_for(ruling), usual=self._usual))

    def cues(self, ruling: Ruling) -> CueMaker:
        """Return the stroke cues for letters on a ruling."""
        return self._cues.get((ruling, False), lambda: CueMaker(
            ruling, pens_for(ruling), usual=self._usual))

    def thorough_cues(self, ruling: Ruling) -> CueMaker:
        """Return the same for letters that stand alone: places are searched until nearly every letter has its cues."""
        return self._cues.get((ruling, True), lambda: self.cues(ruling).thoroughly())

    def text(self, words: str, x_height_mm: float = 1.75) -> Ink:
        """Return one line of running text in our own letters, its baseline at y 0, its left edge at x 0."""
        if self.captions_by is not None:
            return self.captions_by.text(words, x_height_mm)
        return self._texts.get((words, x_height_mm), lambda: self._text(words, x_height_mm))

    def text_at(self, words: str, x_height_mm: float, x: float, baseline: float, colour: str = BLACK) -> Ink:
        """Return running text with its left edge at ``x``."""
        return self.text(words, x_height_mm).moved(x, baseline).in_colour(colour)

    def _text(self, words: str, x_height_mm: float) -> Ink:
        return self._written(self._text_line(words, x_height_mm).letters, words, x_height_mm)

    def _written(self, letters: Sequence[SetLetter], words: str, x_height_mm: float) -> Ink:
        shape = Written(letters, self.inker(print_ruling(x_height_mm)))
        return Ink(Style(TEXT_PEN * x_height_mm, BLACK), shape, spelled=Spelled(words, x_height_mm))

    def forget_texts(self) -> None:
        """Let go of the running text and the sheets that are kept: there are names in them. Letters stay."""
        for kept in (self._texts, self._widths, self._text_lines, self.sheets):
            kept.clear()

    def words(self, text: str, x_height_mm: float = 1.75) -> tuple[Ink, ...]:
        """Return the same running text word by word: in prose it is words that recur, not whole lines."""
        if self.captions_by is not None:
            return self.captions_by.words(text, x_height_mm)
        letters = iter(self._text_line(text, x_height_mm).letters)
        return passage(self._written(tuple(islice(letters, len(clusters(word)))), word, x_height_mm)
                       for word in text.split())

    def letter(self, letter: str, x_height_mm: float) -> Ink:
        """Return one letter small, in the shape that the model has, its baseline at y 0."""
        if self.school_font is None:
            return self.text(letter, x_height_mm)
        ruling = print_ruling(x_height_mm)
        (ink,) = self.inker(ruling).ink(self.ruled(ruling).line(letter), Form.SOLID)
        return ink

    def _text_line(self, words: str, x_height_mm: float) -> SetLine:
        return self._text_lines.get((words, x_height_mm), lambda: self.ruled(
            print_ruling(x_height_mm), 0.0, TEXT_PENCIL_MM).line(words.replace(TIED_SPACE, " ")))

    def text_width(self, words: str, x_height_mm: float = 1.75) -> float:
        """Return the width of a line of running text in mm."""
        if self.captions_by is not None:
            return self.captions_by.text_width(words, x_height_mm)
        if not words.strip():
            return 0.0
        return self._widths.get((words, x_height_mm), lambda: self._text_line(words, x_height_mm).width_mm)

    def text_space(self, x_height_mm: float = 1.75) -> float:
        """Return the width of a word space in running text in mm."""
        return _TEXT_SPACE * self.alphabet.space * x_height_mm / LETTER_UNITS

    def wrapped(self, words: str, width_mm: float, x_height_mm: float = 1.75) -> tuple[str, ...]:
        """Break running text into lines no wider than ``width_mm``; a word that is wider is cut.

        No short word stands alone on the last line where the line over it has one to give.
        """
        lines: list[list[str]] = [[]]
        used = 0.0
        between = (self.text_space(x_height_mm) + WORD_GAP * x_height_mm / LETTER_UNITS
                   - pen_width_mm(print_ruling(x_height_mm)))  # a width counts half a pen on either side
        for word in self.breakable(words, width_mm, x_height_mm):
            width = self.text_width(word, x_height_mm)
            if lines[-1] and used + width > width_mm:
                lines.append([])
                used = 0.0
            lines[-1].append(word)
            used += width + between
        self._accompany(lines, width_mm, x_height_mm)
        return tuple(" ".join(line) for line in lines)

    def _accompany(self, lines: list[list[str]], width_mm: float, x_height_mm: float) -> None:
        """Bring a word down to a short one that stands alone on the last line, where the line over it has three."""
        if len(lines) < 2 or len(lines[-1]) > 1 or len(lines[-2]) < 3:
            return
        if (self.text_width(lines[-1][0], x_height_mm) < _ALONE * width_mm
                and self.text_width(f"{lines[-2][-1]} {lines[-1][0]}", x_height_mm) <= width_mm):
            lines[-1].insert(0, lines[-2].pop())

    def breakable(self, text: str, width_mm: float, x_height_mm: float = 1.75) -> list[str]:
        """Return the words of a text, each that is wider than ``width_mm`` cut into pieces that are not."""
        words: list[str] = []
        for word in breakable_at(text):
            rest = clusters(word)
            while len(rest) > 1 and (width := self.text_width("".join(rest), x_height_mm)) > width_mm:
                share = max(1, int(len(rest) * width_mm / width))
                while share > 1 and self.text_width("".join(rest[:share]), x_height_mm) > width_mm:
                    share -= 1
                words.append("".join(rest[:share]))
                rest = rest[share:]
            words.append("".join(rest))
        return words


def breakable_at(text: str) -> list[str]:
    """Return a text in the pieces between which a line may break."""
    return re.findall(rf"[{TIED_SPACE}\S]+", text)
