"""Clap it, chant it, for the adult: each name with arcs under its beats, its letters as notes on a four-beat measure.

Plain notation on one line, drawn with our own pen: to be chanted to any tune that the class knows; none is printed.
How long each letter lasts is ``practice.chant``. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from namewright.letters.strokes import parse_stroke
from namewright.lines.ink import BLACK, DARK, Ink, Piece, Style, line, stroke_fragment
from namewright.lines.ruling import print_ruling
from namewright.lines.setting import SetLine
from namewright.message import message
from namewright.names.beats import spoken_beats
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed, left_out, name_at
from namewright.pages.page import Furniture, Page
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.chant import EIGHTH, HALF, WHOLE, measures
from namewright.practice.difficulty import written_signs

_NAME_MM, _NAME_X_MM = 58.0, 3.4
_PENCIL_MM = 0.15  # nobody writes between its letters
_ROW_MM, _LEAST_ROW_MM = 26.0, 18.5  # with less, the arcs of a row with tails meet the notes under it
_SIGNS_MM, _BEAT_MM = 8.0, 8.6  # the time signature, and a quarter note with its white
_STEM_MM, _HEAD_MM = 7.0, 1.45  # a stem's length, and half of a head's width
_PEN, _BEAM = Style(0.35, BLACK), Style(1.0, BLACK)
_ARC = Style(0.45, DARK)
_SMALL_MM = 1.6


@dataclass(frozen=True, slots=True)
class Chanted:
    """A name, and what holds for the child."""

    name: str
    settings: SheetSettings


def chant_pages(setter: Typesetter, names: Sequence[Chanted], settings: SheetSettings, without: Sequence[str] = (),
                ) -> tuple[Page, ...]:
    """Return the adult's pages, as few as hold the names, and about as many names on each. Raises MissingLetters.

    ``without`` is what children are called whose names our letters cannot draw: the adult is asked to clap with them.
    """
    pages: list[Page] = []
    count = -(-len(names) // int(_begun(setter, settings, without).room // _LEAST_ROW_MM))
    for start, end in pairwise(round(len(names) * at / count) for at in range(count + 1)):
        frame = _begun(setter, settings, without)
        step = min(_ROW_MM, frame.room / (end - start))
        for one in names[start:end]:
            _row(frame, one)
            frame.y += step
        pages.append(frame.page(None if pages else frame.words.say("page.know.chant_outline")))
    return tuple(pages)


def named(setter: Typesetter, one: Chanted) -> SetLine:
    """Set a name in its column, smaller where it is long: an adult reads it. Raises MissingLetters."""
    setter = setter.lettering(one.settings.letters)
    size = blocks.fitting_name(setter, one.name, _NAME_MM, _NAME_X_MM)
    pencil = None if setter.school_font and setter.alphabet.missing(one.name) else _PENCIL_MM
    return setter.ruled(print_ruling(size), 0.0, pencil).line(one.name)


def _begun(setter: Typesetter, settings: SheetSettings, without: Sequence[str]) -> Frame:
    frame = framed(setter, None, settings)
    frame.note(frame.words.text(message("page.know.chant"), *left_out("page.know.chant_without", without)), _SMALL_MM)
    frame.y += 3.0
    return frame


def _row(frame: Frame, one: Chanted) -> None:
    setter = frame.setter.lettering(one.settings.letters)
    line_, baseline = named(frame.setter, one), frame.y + 9.0
    frame.items.append(name_at(setter, line_, frame.left, baseline))
    beats = spoken_beats(clusters(one.name), one.settings.spoken)
    frame.items.append(Furniture(tuple(_arcs(line_, beats.starts, frame.left, baseline))))
    if not beats.known:
        frame.items.append(Furniture((blocks.text_at(frame.setter, "?", frame.left + line_.width_mm + 1.5, baseline),)))
    signs = written_signs(one.name)
    lasting = measures(len(signs))
    x = frame.left + _NAME_MM + 6.0
    beat = min(_BEAT_MM, (frame.right - x - _SIGNS_MM - 3.0) / (4 * len(lasting)))
    frame.items.append(Furniture(tuple(_staff(frame, signs, lasting, x, baseline, beat))))


def _arcs(set_line: SetLine, starts: Sequence[int], x: float, baseline: float) -> Iterator[Ink]:
    """Yield an arc under each beat of a name."""
    places = [at for at, letter in enumerate(clusters(set_line.text)) if not letter.isspace()]
    y = baseline + max(2.2, set_line.drop_mm + 0.8)
    for start, end in pairwise((*starts, len(clusters(set_line.text)))):
        spots = [spot for spot, at in zip(set_line.letters, places, strict=True) if start <= at < end]
        if spots:
            x0, x1 = spots[0].x + spots[0].letter.bounds[0], spots[-1].x + spots[-1].letter.bounds[2]
            width, sag = max(x1 - x0, 1.5), 2.2
            path = f"M0 0C{0.25 * width} {sag} {0.75 * width} {sag} {width} 0"
            yield Ink.of(_ARC, (Piece(x + x0, y, stroke_fragment([parse_stroke(path)])),))


def _staff(frame: Frame, signs: Sequence[str], lasting: Sequence[Sequence[Fraction]], x: float, y: float,
           beat_mm: float) -> Iterator[Ink]:
    """Yield the time signature, notes with their letters under them, and the lines between measures."""
    for digit_y in (y - 2.4, y + 2.6):
        yield blocks.text_at(frame.setter, "4", x, digit_y, 2.3)
    letters = iter(signs)
    x += _SIGNS_MM
    for number, measure in enumerate(lasting, start=1):
        at, heads = x, []
        for length in measure:
            heads.append((at + 0.3 * beat_mm, length))
            at += float(4 * length) * beat_mm
        yield from _notes(heads, y)
        for head, _ in heads:
            letter = frame.setter.letter(next(letters), _SMALL_MM)
            x0, _, x1, _ = letter.bounds()
            yield letter.moved(head - (x0 + x1) / 2, y + 6.4)
        x += 4 * beat_mm
        yield from _bar(x - 0.08 * beat_mm, y, last=number == len(lasting))


def _bar(x: float, y: float, *, last: bool) -> Iterator[Ink]:
    yield Ink.of(_PEN, (line(x, y - 4.0, x, y + 4.0),))
    if last:
        yield Ink.of(_BEAM, (line(x + 1.5, y - 3.6, x + 1.5, y + 3.6),))


def _notes(heads: Sequence[tuple[float, Fraction]], y: float) -> Iterator[Ink]:
    """Yield heads, stems, and the beams of eighth notes, which come in pairs."""
    open_heads = [x for x, length in heads if length >= HALF]
    full_heads = [x for x, length in heads if length < HALF]
    for style, places in ((Style(0.5, BLACK), open_heads), (Style(0.3, BLACK, fill=BLACK), full_heads)):
        if places:
            yield Ink.of(style, [Piece(x, y, _HEAD) for x in places])
    stems = [x + _HEAD_MM - 0.1 for x, length in heads if length < WHOLE]
    if stems:
        yield Ink.of(_PEN, tuple(line(x, y - 0.3, x, y - _STEM_MM) for x in stems))
    short = [x + _HEAD_MM - 0.1 for x, length in heads if length == EIGHTH]
    if short:
        yield Ink.of(_BEAM, tuple(line(a, y - _STEM_MM + 0.4, b, y - _STEM_MM + 0.4)
                                  for a, b in zip(short[::2], short[1::2], strict=True)))


_HEAD = stroke_fragment([parse_stroke("M1.35 -0.45C1.75 0.35 0.55 1.15 -0.3 1.1C-1.1 1.05 -1.7 0.8 -1.35 0.45"
                                      "C-1.75 -0.35 -0.55 -1.15 0.3 -1.1C1.1 -1.05 1.7 -0.8 1.35 -0.45")])
