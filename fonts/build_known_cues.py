"""Search the stroke cues and the dots of common letters on the usual lines anew, and their gaps: ``make known-cues``.

To be run when letters, rulings, pens, spacing or the search have changed; ``tests/lines/test_lines_known_cues.py``,
``test_lines_known_dots.py`` and ``test_lines_known_gaps.py`` tell.
"""

from __future__ import annotations

import string
from collections.abc import Iterator, Sequence

from namewright.letters.alphabet import upright
from namewright.lines import known_cues, known_dots, known_gaps
from namewright.lines.clearance import Sides
from namewright.lines.cue_places import Choice
from namewright.lines.cues import CueMaker
from namewright.lines.forms import pens_for, trace_dots
from namewright.lines.ink import on_grid
from namewright.lines.ruling import DEFAULT_RULING, Ruling, preset, print_ruling
from namewright.lines.setting import RuledLetters
from namewright.lines.spacing import Spacer
from namewright.pages import blocks
from namewright.pages.letter_strip import STRIP_SIDES, strip_rulings
from namewright.pages.typesetter import TEXT_PENCIL_MM

LETTERS = string.ascii_letters + "'’-" + "".join(
    letter for letter in map(chr, range(0xC0, 0x17F)) if letter.isalpha() and not upright().missing(letter))
GAP_LETTERS = string.ascii_letters + string.digits + "’'-.,:!?%" + "áàâäãåçéèêëíîïóòôöõñúûüß"
TEXT_SIZES_MM = (blocks.TEXT_MM, blocks.DATE_TEXT_MM, blocks.CHECK_NOTE_MM)  # others space as one of these
WHITES_MM = (*(quarter / 4 for quarter in range(2, 13)), 4.0)  # what lies between letters; 4 mm at the ends of a line


def rooms() -> Iterator[tuple[Ruling, bool, Sequence[Sides]]]:
    """Yield the rulings, whether letters stand alone on them, and the white that they may have beside them."""
    usual = preset(DEFAULT_RULING)
    yield usual, False, known_cues.grid(WHITES_MM)
    for ruling in strip_rulings(usual):
        yield ruling, True, [Sides(side, side) for side in (share * ruling.x_height_mm for share in STRIP_SIDES)]


def choices(maker: CueMaker, ruled: RuledLetters, sides: Sequence[Sides],
            ) -> Iterator[tuple[str, list[Sequence[Choice]]]]:
    """Yield for each letter what the search chooses for each of the sides."""
    for letter in LETTERS:
        ink = ruled.letter(letter)
        yield ink.cluster, [maker.choices(ink, white) for white in sides]


def main() -> None:
    """Write the file."""
    found = []
    for ruling, thorough, sides in rooms():
        pens = pens_for(ruling)
        maker = CueMaker(ruling, pens, thorough)
        key = known_cues.room_key(ruling, pens, thorough=thorough)
        found.append((key, sides, list(choices(maker, RuledLetters(upright(), ruling), sides))))
    known_cues.FILE.write_text(known_cues.written(found), "utf-8")
    write_dots()
    write_gaps()


def write_dots() -> None:
    """Write the file of the dots."""
    ruling = preset(DEFAULT_RULING)
    pitch, ruled = pens_for(ruling).pitch_mm, RuledLetters(upright(), ruling)
    letters = ((letter, on_grid(trace_dots(ruled.letter(letter), pitch))) for letter in LETTERS)
    known_dots.FILE.write_text(known_dots.written(ruling, pitch, letters), "utf-8")


def spacers() -> Iterator[Spacer]:
    """Yield what spaces names on the usual lines and running text of a sheet, sizes that space alike but once."""
    lines = [RuledLetters(upright(), preset(DEFAULT_RULING)),
             *(RuledLetters(upright(), print_ruling(size), pencil_mm=TEXT_PENCIL_MM) for size in TEXT_SIZES_MM)]
    yield from {(each.mean_gap, each.min_gap, each.tail): each for each in (line.spacer() for line in lines)}.values()


def write_gaps() -> None:
    """Write the file of the gaps."""
    letter = upright().letter
    known_gaps.FILE.write_text(known_gaps.written(GAP_LETTERS, (
        ((each.mean_gap, each.min_gap, each.tail), lambda one, each=each: each.edges(letter(one)),
         lambda one, other, each=each: each.distance(letter(one), letter(other))) for each in spacers())), "utf-8")


if __name__ == "__main__":
    main()
