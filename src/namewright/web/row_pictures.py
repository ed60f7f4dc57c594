"""Pictures for the screen: rows of a name to be shown at their true size, and drawings in our own letters.

Millimetres, y down. Out of scope: how large a millimetre is on a screen (the browser's part).
"""

from __future__ import annotations

from namewright.letters.alphabet import MissingLetters
from namewright.letters.choice import LetterChoice
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import BLACK, Ink, Style
from namewright.lines.ruling import GuideLine, custom_ruling
from namewright.lines.tuned import check_pens
from namewright.output.svg import page_svg
from namewright.pages import blocks
from namewright.pages.page import Item, Page
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.web.requests import CannotDraw

_EDGE_MM = 2.0
_THREE = (GuideLine.TOP, GuideLine.MID, GuideLine.BASE)


def row_svg(setter: Typesetter, name: str, settings: SheetSettings) -> str:
    """Return a name on its lines, once to read and once in dots, on a picture just large enough. Raises CannotDraw."""
    try:
        return page_svg(_row_page(setter, name, settings))
    except (MissingLetters, DoesNotFit) as error:
        raise CannotDraw(error) from error


def _row_page(setter: Typesetter, name: str, settings: SheetSettings) -> Page:
    ruling = settings.ruling
    check_pens(ruling)
    spacing = settings.tuning.letter_spacing or 0.0
    setter = setter.lettering(settings.letters)
    line = setter.ruled(ruling, spacing).line(name)
    space = blocks.row_space(ruling, [line])
    items: list[Item] = []
    for count, form in enumerate((Form.SOLID, Form.DOTTED)):
        baseline = _EDGE_MM + count * space.height_mm + space.rise_mm
        inks = blocks.letters_at(setter, line, form, 2 * _EDGE_MM, baseline)
        items.append(blocks.ruled_row(name, form, ruling, _EDGE_MM, line.width_mm + 3 * _EDGE_MM, baseline, inks))
    return Page(line.width_mm + 4 * _EDGE_MM, 2 * (space.height_mm + _EDGE_MM), tuple(items))


def form_svg(setter: Typesetter, letter: str, form: str) -> str:
    """Return one form of a letter on its lines. Raises KeyError for a letter that we do not have."""
    ruling = custom_ruling(12.0, lines=_THREE, descender_mm=6.0)
    setter = setter.lettering(LetterChoice(((letter, form),)))
    line = setter.ruled(ruling).line(letter)
    wide, baseline = 20.0, 14.0
    inks = blocks.letters_at(setter, line, Form.SOLID, (wide - line.width_mm) / 2, baseline)
    return page_svg(Page(wide, 22.0, (blocks.ruled_row(letter, Form.SOLID, ruling, 0.0, wide, baseline, inks),)))


def mark_svg(setter: Typesetter) -> str:
    """Return the word Namewright in our own letters, no lines; its colour is the page's, through a mask."""
    ink = setter.text("Namewright", 5.0)
    bold = Ink(Style(1.05, BLACK), ink.shape)
    x0, y0, x1, y1 = bold.bounds()
    return page_svg(Page(x1 - x0 + 1, y1 - y0 + 1, (bold.moved(0.5 - x0, 0.5 - y0),)))
