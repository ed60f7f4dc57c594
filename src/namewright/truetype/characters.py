"""The character repertoire of a font: a glyph for every character that the alphabet can draw, its name and its metrics.

Font units, y up, 4,000 to the em: 1,000 to a zone, so that an em is four zones (ascender, x-height, descender and
one to skip) and a letter unit is ten font units. Out of scope: outlines and tables.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

import unicodedata2
from fontTools.agl import UV2AGL

from namewright.geometry import boxes
from namewright.letters.alphabet import Alphabet, Glyph, Letter, MissingLetters
from namewright.lines.spacing import NATURAL_GAP

UNITS_PER_EM = 4000
UNIT = 10  # font units to a letter unit
ZONE = 100 * UNIT

# Letters with marks get a glyph of their own from the blocks that hold whole languages, and these besides:
# Vietnamese horns, Romanian commas, Yoruba, Igbo and Welsh. The rest are set from base and marks.
_BLOCKS = (range(0x21, 0x180), range(0x1EA0, 0x1EFA))
_BESIDES = "ƠơƯưǪǫȘșȚțǸǹḾḿṄṅṢṣẀẁẂẃẄẅ"
_PUNCTUATION = range(0x2010, 0x2020)
_SEQUENCES = ("ẹ́", "ẹ̀", "ọ́", "ọ̀", "m̀", "m̄", "n̄", "j́")  # no code point of their own: Yoruba, and the Dutch íj́
SPACE = "space"


@dataclass(frozen=True, slots=True)
class FontLetter:
    """A letter, figure or sign: its glyph's name, its cluster (NFC), and the glyphs that it is put together from.

    ``base`` names the glyph of the letter without its marks (itself where it has none) and ``marks`` those of
    its marks, in writing order. ``advance`` and ``shift`` (the x of the letter's origin) are in font units and
    the same for a letter with and without marks.
    """

    name: str
    cluster: str
    letter: Letter
    base: str
    marks: tuple[str, ...]
    advance: int
    shift: int


@dataclass(frozen=True, slots=True)
class FontMark:
    """A mark: its glyph's name, its character (None for a form that only some letters take), and its drawing."""

    name: str
    char: str | None
    glyph: Glyph


@dataclass(frozen=True, slots=True)
class Repertoire:
    """Everything one font holds besides the space."""

    letters: tuple[FontLetter, ...]
    marks: tuple[FontMark, ...]

    def on(self, base: Glyph) -> tuple[FontLetter, ...]:
        """Return the letters that stand on one base glyph."""
        return tuple(entry for entry in self.letters if entry.letter.base is base)

    def marks_at(self, attach: str) -> tuple[FontMark, ...]:
        """Return the marks that hang on one kind of anchor."""
        return tuple(mark for mark in self.marks if mark.glyph.attach == attach)

    def attachments(self) -> tuple[str, ...]:
        """Return the kinds of anchor on which marks hang."""
        return tuple(dict.fromkeys(mark.glyph.attach for mark in self.marks))


def repertoire_of(alphabet: Alphabet) -> Repertoire:
    """Return the repertoire of an alphabet, letters by code point, marks as the alphabet lists them."""
    marks = tuple(_font_marks(alphabet))
    mark_names = {id(mark.glyph): mark.name for mark in marks}
    bases = {id(glyph): char for char, glyph in alphabet.glyphs.items() if not alphabet.letter(char).marks}
    letters = (_font_letter(alphabet.letter(cluster), bases, mark_names) for cluster in _clusters(alphabet))
    return Repertoire(tuple(letters), marks)


def _clusters(alphabet: Alphabet) -> Iterator[str]:
    blocks = (chr(code) for block in (*_BLOCKS, _PUNCTUATION) for code in block)
    wanted = {*alphabet.glyphs, *blocks, *_BESIDES}
    sequences = [*_SEQUENCES, *(cluster.upper() for cluster in _SEQUENCES)]
    for cluster in [*sorted(wanted), *sequences]:
        if unicodedata2.normalize("NFC", cluster) == cluster and _draws(alphabet, cluster):
            yield cluster


def _draws(alphabet: Alphabet, cluster: str) -> bool:
    try:
        alphabet.letter(cluster)
    except MissingLetters:
        return False
    return True


def _font_letter(letter: Letter, bases: Mapping[int, str], marks: Mapping[int, str]) -> FontLetter:
    x0, _, x1, _ = boxes.joined(stroke.bounds() for stroke in letter.base.strokes)
    return FontLetter(
        name="_".join(map(glyph_name, letter.cluster)), cluster=letter.cluster, letter=letter,
        base=glyph_name(bases[id(letter.base)]),
        marks=tuple(marks[id(mark.glyph)] for mark in letter.marks),
        advance=round(UNIT * (x1 - x0 + NATURAL_GAP)), shift=round(UNIT * (NATURAL_GAP / 2 - x0)),
    )


def _font_marks(alphabet: Alphabet) -> Iterator[FontMark]:
    chars = {name: char for char, name in alphabet.mark_of.items()}
    forms = {**alphabet.mark_forms, **alphabet.stacked_forms}
    stands_for = {use: chars[name] for (name, _), use in forms.items()}
    for name, glyph in alphabet.marks.items():
        if name in chars:
            yield FontMark(glyph_name(chars[name]), chars[name], glyph)
        elif name in stands_for:
            yield FontMark(f"{glyph_name(stands_for[name])}.{name.replace('_', '')}", None, glyph)


def glyph_name(char: str) -> str:
    """Return a character's glyph name as the Adobe Glyph List gives it, else ``uni`` and its code point."""
    name: str = UV2AGL.get(ord(char), f"uni{ord(char):04X}")
    return name


def names(repertoire: Iterable[FontLetter | FontMark]) -> str:
    """Return the repertoire as a glyph class in the notation of feature files."""
    return "[" + " ".join(entry.name for entry in repertoire) + "]"
