"""A page's items as a PDF content stream: hundredths of a millimetre, y up from the sheet's bottom left corner.

A fragment is drawn about its own origin, so that equal fragments are equal bytes wherever they stand. One that recurs
on many pages of a batch is written once, as a form that all its places share (ISO 32000-1, 8.10).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from namewright.lines.ink import Fragment, Ink, Piece, Style
from namewright.output.pdf.objects import deflated
from namewright.output.pdf.paths import UNIT, operators, unit
from namewright.pages.page import Guide, Item, Page, Tile, leaves
from namewright.units import MM_PER_INCH, PT_PER_INCH

_SCALE = f"{PT_PER_INCH / MM_PER_INCH / UNIT:.9f}"  # nine decimals: to a tenth of a micrometre across a page
_FORM_PAYS = 300  # of 100, 200, 300, 500 and 1,000 what made classes of thirty and three hundred smallest
_FIRST_PEN = Style(1 / UNIT)  # a page begins with black, 1 wide (ISO 32000-1, table 52)
_NAMES = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"


@dataclass(frozen=True, slots=True)
class Form:
    """A shape that is drawn in several places, its pen set by whoever draws it: its bytes, and the box it may fill."""

    content: bytes
    box: tuple[int, int, int, int]


@dataclass(frozen=True, slots=True)
class DrawnPage:
    """A finished page: its size in points and its content, deflated."""

    width_pt: float
    height_pt: float
    content: bytes
    outline: str | None


@dataclass(frozen=True, slots=True)
class Batch:
    """Some pages, drawn, and the forms they share, in the order of their names."""

    pages: tuple[DrawnPage, ...]
    forms: tuple[Form, ...]


def form_name(number: int) -> str:
    """Return the name of a batch's form: a to z, A to Z, aa, ba and so on."""
    rest, letter = divmod(number, len(_NAMES))
    return (form_name(rest - 1) if rest else "") + _NAMES[letter]


def drawn(pages: Sequence[Page]) -> Batch:
    """Draw pages that share their forms."""
    shared = Shared(_recurring(pages))
    return Batch(tuple(_page(page, shared) for page in pages), tuple(shared.names))


def _recurring(pages: Iterable[Page]) -> frozenset[str]:
    """Return the fragments, by their data, for which a form is shorter than drawing them anew on each page.

    On one page a repeated fragment costs next to nothing: deflating finds it. A form has a price of its own, so that
    plain drawing has to cost ``_FORM_PAYS`` characters first.
    """
    on_pages = Counter(data for page in pages
                       for data in {piece.fragment.data for item in leaves(page.items) if isinstance(item, Ink)
                                    for piece in item.pieces})
    return frozenset(data for data, count in on_pages.items() if (count - 1) * len(data) > _FORM_PAYS)


@dataclass
class Shared:
    """The forms of a batch as they are met, and which fragments are to become one."""

    recurring: frozenset[str]
    names: dict[Form, str] = field(default_factory=dict)

    def name(self, form: Form) -> str:
        """Return the form's name, a new one when it is first met."""
        if form not in self.names:
            self.names[form] = form_name(len(self.names))
        return self.names[form]


def _page(page: Page, shared: Shared) -> DrawnPage:
    points = PT_PER_INCH / MM_PER_INCH
    return DrawnPage(page.width_mm * points, page.height_mm * points, deflated(content(page, shared)), page.outline)


def content(page: Page, shared: Shared) -> bytes:
    """Return the content stream of a page."""
    canvas = _Canvas(page.height_mm, shared)
    for item in leaves(page.items):
        canvas.draw(item)
    return "\n".join(canvas.lines).encode("ascii")


@dataclass
class _Canvas:
    """The stream of one page, and the pen as it is set so far."""

    height_mm: float
    shared: Shared
    lines: list[str] = field(default_factory=lambda: [f"{_SCALE} 0 0 {_SCALE} 0 0 cm"])
    style: Style = _FIRST_PEN
    round: bool = False

    def draw(self, item: Item) -> None:
        """Draw one item that is no group."""
        if isinstance(item, Ink):
            self._set_pen(item.style, round_ends=True)
            for piece in item.pieces:
                self._piece(piece, item.style)
        elif isinstance(item, Guide):
            self._set_pen(item.style, round_ends=False)
            y = unit(self.height_mm - item.y)
            self.lines.append(f"{unit(item.x0)} {y} m {unit(item.x1)} {y} l S")
        elif isinstance(item, Tile):
            self._set_pen(item.style, round_ends=False)
            corner = f"{unit(item.x)} {unit(self.height_mm - item.y - item.height)}"
            self.lines.append(f"{corner} {unit(item.width)} {unit(item.height)} re {_painting(item.style)}")

    def _piece(self, piece: Piece, style: Style) -> None:
        data = piece.fragment.data
        if data in self.shared.recurring:
            drawn = f"/{self.shared.name(_form(piece.fragment, style))} Do"
        else:
            drawn = f"{operators(data).decode('ascii')} {_painting(style)}"
        self.lines.append(f"q 1 0 0 1 {unit(piece.x)} {unit(self.height_mm - piece.y)} cm {drawn} Q")

    def _set_pen(self, style: Style, *, round_ends: bool) -> None:
        before = self.style
        if round_ends != self.round:
            self.lines.append("1 J 1 j" if round_ends else "0 J 0 j")
            self.round = round_ends
        if style is before:
            return
        if style.width_mm and style.width_mm != before.width_mm:  # without a width it is only filled
            self.lines.append(f"{unit(style.width_mm)} w")
        if style.colour != before.colour:
            self.lines.append(_colour(style.colour, stroking=True))
        if style.dash_mm != before.dash_mm:
            self.lines.append(f"[{' '.join(unit(length) for length in style.dash_mm)}] 0 d")
        if style.fill and style.fill != before.fill:
            self.lines.append(_colour(style.fill, stroking=False))
        self.style = Style(style.width_mm or before.width_mm, style.colour, style.dash_mm, style.fill or before.fill)


@lru_cache(maxsize=2000)
def _form(fragment: Fragment, style: Style) -> Form:
    reach = style.width_mm / 2 + 1.0
    x0, y0, x1, y1 = fragment.bounds
    box = (round((x0 - reach) * UNIT), round((-y1 - reach) * UNIT), round((x1 + reach) * UNIT),
           round((reach - y0) * UNIT))
    return Form(operators(fragment.data) + f" {_painting(style)}".encode("ascii"), box)


def _painting(style: Style) -> str:
    """Return the operator that fills, strokes or does both (8.5.3); a line of no width would be a hair's, not none."""
    if style.fill is None:
        return "S"
    return "B" if style.width_mm else "f"


@lru_cache(maxsize=64)
def _colour(colour: str, *, stroking: bool) -> str:
    """Return the operator for a colour such as #6b6b6b: grey where its three parts are equal."""
    parts = [f"{int(colour[at:at + 2], 16) / 255:.3f}".rstrip("0").rstrip(".") for at in (1, 3, 5)]
    if len(set(parts)) == 1:
        return f"{parts[0]} {'G' if stroking else 'g'}"
    return f"{' '.join(parts)} {'RG' if stroking else 'rg'}"
