"""The size finder: one child's own name at six line heights on one page, to find by trying which fits.

On every row the name stands once in dots, with white to write it again. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from namewright.letters.choice import LetterChoice
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ruling import Ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.press import Press, captions
from namewright.units import number

HEIGHTS = 6
LEAST_MM, GREATEST_MM = 8.0, 60.0
_LABEL_MM = 16.0
_HEADER_MM, _CAPTION_MM, _FOOTER_MM = 17.0, 2.0, 7.0
_NOTE_MM, _NOTE_STEP_MM = 1.5, 4.3


@dataclass(frozen=True, slots=True)
class SizeSettings:
    """How the page is made; the ruling gives the proportions, not the height."""

    ruling: Ruling
    paper: Paper = Paper.LETTER
    binding: bool = False
    language: str = "en"
    letters: LetterChoice = LetterChoice()


def size_page(press: Press, name: str, label: str, settings: SizeSettings) -> Page:
    """Return the page: six heights in equal ratios, from 8 mm to the tallest that the page and the name allow.

    Raises MissingLetters, or DoesNotFit for a name that is too wide even at the second smallest of them.
    """
    sheet = sheet_of(settings.paper, binding=settings.binding)
    press = press.lettering(settings.letters)
    words = captions(settings.language)
    notes = press.wrapped(words["sizes.note"], sheet.room_width, _NOTE_MM)
    room = sheet.foot - sheet.top_mm - _HEADER_MM - _FOOTER_MM - len(notes) * _NOTE_STEP_MM
    rows = _rows(press, name, settings.ruling, sheet.room_width - _LABEL_MM, room)
    items: list[Item] = [*blocks.text_with_name(press, words["sizes.owner"], label, sheet.left_mm, sheet.top_mm + 5.0)]
    items += _ruled(press, rows, sheet, sheet.top_mm + _HEADER_MM)
    text = [blocks.text_at(press, words["sizes.try"], sheet.left_mm, sheet.top_mm + 12.0)]
    text += [blocks.text_at(press, line, sheet.left_mm, sheet.foot - _FOOTER_MM - (len(notes) - 1 - at) * _NOTE_STEP_MM,
                            _NOTE_MM) for at, line in enumerate(notes)]
    text += blocks.check_bar(press, words["check"], sheet.left_mm, sheet.foot - 1.5)
    return checked(Page(sheet.width_mm, sheet.height_mm, (*items, Furniture(tuple(text))), outline=label))


def _rows(press: Press, name: str, ruling: Ruling, width: float, height: float) -> list[SetLine]:
    """Set the name at six heights, the tallest as tall as fits, down to the half millimetre."""
    tallest = GREATEST_MM
    while tallest >= 1.25 * LEAST_MM:
        heights = [round(2 * LEAST_MM * (tallest / LEAST_MM) ** (step / (HEIGHTS - 1))) / 2 for step in range(HEIGHTS)]
        lines = [press.case(replace(ruling.scaled_to(one), gap_mm=0.0)).line(name) for one in heights]
        tall = sum(blocks.row_space(line.ruling, [line]).height_mm + _CAPTION_MM for line in lines)
        if tall <= height and all(line.width_mm <= width for line in lines):
            return lines
        tallest -= 0.5
    raise DoesNotFit(name, lines[-1].width_mm, width)


def _ruled(press: Press, lines: list[SetLine], sheet: Sheet, y: float) -> Iterator[Item]:
    x0 = sheet.left_mm + _LABEL_MM
    for line in lines:
        space = blocks.row_space(line.ruling, [line])
        baseline = y + space.rise_mm
        x = x0 + pen_width_mm(line.ruling) / 2
        inks = blocks.letters_at(press, line, Form.DOTTED, x, baseline)
        yield blocks.text_at(press, f"{number(line.ruling.line_height_mm)} mm", sheet.left_mm, baseline)
        yield blocks.ruled_row(line.text, Form.DOTTED, line.ruling, x0, sheet.right_edge, baseline, inks)
        y += space.height_mm + _CAPTION_MM
