"""One ink hue for guide lines and captions, chosen by the school; black and grey where nobody chooses, for copiers.

Letters, dots and pictograms stay black, the band of small letters grey, and where a stroke starts is told by a shape,
so that nothing is lost on a copier or to a child who does not tell hues apart. Never two hues: teaching by lines of
several colours is not ours.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from types import MappingProxyType

from namewright.lines.ink import BLACK, RULE, Ink
from namewright.message import Problem
from namewright.pages.page import Furniture, Guide, Item, Page, Row
from namewright.patterns import pattern
from namewright.units import number

COLOURS: Mapping[str, str] = MappingProxyType({
    "black": BLACK, "blue": "#1d5c96", "green": "#2c6b3f", "violet": "#6b4b9a", "brown": "#7a4a22", "teal": "#0d6a6c"})
MIN_CONTRAST = 4.5  # to white: WCAG 2.2, SC 1.4.3, for text; a paler line is lost on a copier
_HEX = pattern(r"#?([0-9a-f]{6})")


def read_colour(text: str) -> str:
    """Return a colour as it is kept: one of those named, or ``#rrggbb``.

    Raises Problem for words that name no colour, and for one too pale to be read and copied.
    """
    word = text.strip().lower()
    if word in COLOURS:
        return word
    found = _HEX.fullmatch(word)
    if found is None:
        raise Problem("page.no_colour", text=text, known=tuple(COLOURS))
    colour = f"#{found[1]}"
    contrast = contrast_to_white(colour)
    if contrast < MIN_CONTRAST:
        raise Problem("page.pale", colour=colour, contrast=number(contrast, 1), least=number(MIN_CONTRAST, 1))
    return colour


def contrast_to_white(colour: str) -> float:
    """Return the contrast of ``#rrggbb`` to white, 1 to 21, as WCAG 2.2 defines it."""
    shares = [int(colour[at:at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares)
    return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05)


def in_hue(pages: Iterable[Page], colour: str) -> Iterator[Page]:
    """Yield pages with their guide lines and captions in a colour (see ``read_colour``); for black as they are."""
    hue = COLOURS.get(colour, colour)
    for page in pages:
        yield page if hue == BLACK else page._replace(items=tuple(_hued(item, hue) for item in page.items))


def _hued(item: Item, hue: str) -> Item:
    if isinstance(item, Row):
        return Row(item.name, item.form, tuple(_lined(leaf, hue) if isinstance(leaf, Guide) else leaf
                                               for leaf in item.items))
    if isinstance(item, Furniture):
        return Furniture(tuple(_said(ink, hue) for ink in item.items), item.bleeds)
    if isinstance(item, Guide):
        return _lined(item, hue)
    return _said(item, hue) if isinstance(item, Ink) else item


def _lined(guide: Guide, hue: str) -> Guide:
    """Return a guide line in the hue; the grey band stays, and so does a bold base line, which is black."""
    return guide._replace(style=guide.style._replace(colour=hue)) if guide.style.colour == RULE else guide


def _said(ink: Ink, hue: str) -> Ink:
    """Return a caption in the hue; what is small and grey for the adult stays, and so do letters that are drawn."""
    return ink.in_colour(hue) if ink.spelled is not None and ink.style.colour == BLACK else ink
