"""A page's items as a PDF content stream: hundredths of a millimetre, y up from the sheet's bottom left corner.

A fragment is drawn about its own origin, so that equal fragments are equal bytes wherever they stand; what recurs is
shared (``forms``). Running text is set in our own fonts. Everything is part of a tag or an artifact.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache

from namewright.geometry.boxes import Box, holds, joined
from namewright.lines.ink import BLACK, Ink, Spelled, Style
from namewright.named_tuples import NamedTuple
from namewright.output.pdf.font import hidden, shown, spelled_clusters
from namewright.output.pdf.forms import Form, Shared, painting, recurring
from namewright.output.pdf.objects import deflated
from namewright.output.pdf.paths import UNIT, unit
from namewright.output.pdf.tags import Tag, tag
from namewright.pages.page import Chart, Furniture, Guide, Item, Letters, Page, Place, Placed, Row, Tile
from namewright.units import MM_PER_INCH, PT_PER_INCH
from namewright.wording import Wording

_SCALE = f"{PT_PER_INCH / MM_PER_INCH / UNIT:.9f}"  # nine decimals: to a tenth of a micrometre across a page
_POINTS = PT_PER_INCH / MM_PER_INCH
_LAID_OVER = 0.4  # of a name's height: PDFium takes the line below a taller text for the same line


class DrawnPage(NamedTuple):
    """A finished page: its size in points, its content, deflated, and its parts in reading order."""

    width_pt: float
    height_pt: float
    content: bytes
    tags: tuple[Tag, ...]
    outline: str | None


class Batch(NamedTuple):
    """Some pages, drawn, the forms they share in the order of their names, and the letters of their texts."""

    pages: tuple[DrawnPage, ...]
    forms: tuple[Form, ...]
    seen: frozenset[str]
    laid_over: frozenset[str]


def drawn(pages: Sequence[Page], words: Wording) -> Batch:
    """Draw pages that share their forms; ``words`` are those in which figures are described."""
    shared = Shared(recurring(pages), words)
    finished = tuple(_page(page, shared) for page in pages)
    return Batch(finished, tuple(shared.names), frozenset(shared.seen), frozenset(shared.laid_over))


def _page(page: Page, shared: Shared) -> DrawnPage:
    canvas = _Canvas(page.height_mm, shared)
    canvas.draw_all(page.items)
    content = "\n".join(canvas.lines).encode("latin-1")
    return DrawnPage(page.width_mm * _POINTS, page.height_mm * _POINTS, deflated(content),
                     tuple(part.tag(shared.words) for part in canvas.parts), page.outline)


class _Part:
    """A part of the page as it grows: a passage of text, a row, or a line of boxes with their ``letters``."""

    def __init__(self, kind: str, says: str | None = None, scope: str | None = None) -> None:
        self.kind, self.says, self.scope = kind, says, scope
        self.boxes: list[Box] = []
        self.letters: list[str] = []
        self.stretches: list[int] = []
        self.kids: list[_Part] = []

    def tag(self, words: Wording) -> Tag:
        box = joined(self.boxes) if len(self.boxes) > 1 else self.boxes[0] if self.boxes else None
        says = words.say("shown.boxes", letters=tuple(self.letters)) if self.letters else self.says
        kids = tuple([kid.tag(words) for kid in self.kids])
        return tag(self.kind, self.stretches, says, box, kids, self.scope)


_ARTIFACT = _Part("Artifact")
_PLACES = {  # the structure types of ISO 32000-1, 14.8.4.3, and the scope of a head (table 349)
    Place.TABLE: ("Table", None), Place.ROW: ("TR", None), Place.CELL: ("TD", None), Place.LIST: ("L", None),
    Place.COLUMN_HEAD: ("TH", "Column"), Place.ROW_HEAD: ("TH", "Row"), Place.ENTRY: ("LI", None)}


class _Canvas:
    """The stream of one page, the pen as it is set so far, and the page's parts."""

    def __init__(self, height_mm: float, shared: Shared) -> None:
        self.height_mm, self.shared = height_mm, shared
        self.lines = [f"{_SCALE} 0 0 {_SCALE} 0 0 cm"]
        self.parts: list[_Part] = []
        self.pen = _Pen()
        self._open: _Part | None = None
        self._marked = 0

    # --- parts and artifacts -----------------------------------------------------------------------------

    def draw_all(self, items: Sequence[Item]) -> None:
        """Draw the items of a page and close the last part."""
        self._draw_each(items)
        self._turn_to(None)

    def _draw_each(self, items: Iterable[Item]) -> None:
        for item in items:
            if isinstance(item, Row):
                self._row(item)
            elif isinstance(item, Letters):
                self._figure(self.shared.words.say("shown.strokes", name=item.name), item.items)
                self._turn_to(_ARTIFACT)
            elif isinstance(item, Furniture):
                self._draw_each(item.items)
            elif isinstance(item, Placed):
                self._placed(item)
            elif isinstance(item, Chart):
                self._figure(item.told, item.items)
                self._turn_to(_ARTIFACT)
            else:
                self._single(item)

    def _placed(self, item: Placed) -> None:
        """Draw what stands in a table or a list, as parts of a part of its own."""
        kind, scope = _PLACES[item.place]
        part, around = _Part(kind, scope=scope), self.parts
        around.append(part)
        if item.place is Place.ENTRY:  # the words of an entry are its body (14.8.4.3.3)
            part.kids.append(_Part("LBody"))
            part = part.kids[0]
        self.parts = part.kids
        self._draw_each(item.items)
        self._turn_to(_ARTIFACT)
        self.parts = around

    def _turn_to(self, part: _Part | None) -> None:
        """Go on with a part, a new one or one begun before, or with an artifact."""
        if part is self._open:
            return
        if self._open is not None:
            self.lines.append("EMC")
        self._open = part
        if part is _ARTIFACT:
            self.lines.append("/Artifact BMC")
        elif part is not None:
            if not part.stretches:
                self.parts.append(part)
            part.stretches.append(self._marked)
            self.lines.append(f"/{part.kind}<</MCID {self._marked}>>BDC")
            self._marked += 1

    def _row(self, row: Row) -> None:
        """Draw a row of a name: a figure that says what it shows, with the name laid over it for readers.

        A row to write on without lines shows nothing, and nothing is said of it.
        """
        if not row.items:
            return
        covered = self._figure(self.shared.words.say(f"shown.{row.form}", name=row.name), row.items)
        inks = [box for item, box in zip(row.items, covered, strict=True) if isinstance(item, Ink)]
        if inks and row.name.strip():
            x0, y0, x1, y1 = joined(inks)
            self.shared.laid_over.update(spelled_clusters(row.name))
            text = hidden(row.name, (x1 - x0) * UNIT, round(_LAID_OVER * (y1 - y0) * UNIT))
            self.lines.append(f"BT 1 0 0 1 {self._place(x0, y1)} Tm {text} ET")
        self._turn_to(_ARTIFACT)

    def _figure(self, told: str, items: Sequence[Guide | Ink]) -> list[Box]:
        """Begin a figure that says what it shows, and draw it; return the boxes of its items."""
        part = _Part("Figure", told)
        self._turn_to(part)
        for item in items:
            self._draw(item)
        covered = [item.bounds() for item in items]
        part.boxes.append(self._points(joined(covered)))
        return covered

    def _single(self, item: Guide | Tile | Ink) -> None:
        """Draw what stands in no row, and find the part that it belongs to."""
        last = self.parts[-1] if self.parts else None
        if isinstance(item, Tile):
            part = last if last is not None and last.letters else _Part("Figure")
            self._turn_to(part)
            part.letters.append(item.letter)
            part.boxes.append(self._points(item.bounds()))
        elif isinstance(item, Ink) and item.spelled is not None:
            goes_on = item.spelled.goes_on and last is not None and not last.kids
            self._turn_to(last if goes_on else _Part(item.spelled.role))
        elif not (self._open is not None and self._open.letters and isinstance(item, Ink)
                  and holds(self._open.boxes[-1], self._points(item.bounds()))):
            self._turn_to(_ARTIFACT)
        self._draw(item)

    def _points(self, box: Box) -> Box:
        x0, y0, x1, y1 = box
        return (x0 * _POINTS, (self.height_mm - y1) * _POINTS, x1 * _POINTS, (self.height_mm - y0) * _POINTS)

    # --- ink ---------------------------------------------------------------------------------------------

    def _draw(self, item: Guide | Tile | Ink) -> None:
        if isinstance(item, Ink):
            if item.spelled is not None:
                self._text(item, item.spelled)
                return
            self._take(item.style, True)
            left, top, _ = item.shape.pieces[0]
            place = self._place(item.x + left, item.y + top)
            self.lines.append(f"q 1 0 0 1 {place} cm {self.shared.drawing(item.shape, item.style)} Q")
        elif isinstance(item, Guide):
            self._take(item.style, False)
            height = round((self.height_mm - item.y) * UNIT)
            self.lines.append(f"{round(item.x0 * UNIT)} {height} m {round(item.x1 * UNIT)} {height} l S")
        else:
            self._take(item.style, False)
            size = f"{round(item.width * UNIT)} {round(item.height * UNIT)}"
            self.lines.append(f"{self._place(item.x, item.y + item.height)} {size} re {painting(item.style)}")

    def _place(self, x: float, y: float) -> str:
        """Return a place on the page in whole hundredths of a millimetre, as letters are drawn."""
        return f"{round(x * UNIT)} {round((self.height_mm - y) * UNIT)}"

    def _text(self, ink: Ink, spelled: Spelled) -> None:
        change, self.pen = _written_with(self.pen, ink.style.colour)
        self.lines += change
        place = self._place(ink.x + ink.shape.xs[0], ink.y)
        name = self.shared.text(ink, spelled)
        if name is not None:
            self.lines.append(f"q 1 0 0 1 {place} cm /{name} Do Q")
        else:
            self.lines.append(f"BT 1 0 0 1 {place} Tm {shown(ink, spelled)} ET")

    def _take(self, style: Style, round_ends: bool) -> None:
        """Take up the pen of a style."""
        change, self.pen = _taken_up(self.pen, style, round_ends)
        self.lines += change


class _Pen(NamedTuple):
    """The pen as a stream has set it; a page begins with black, 1 wide (ISO 32000-1, table 52)."""

    width_mm: float = 1 / UNIT
    colour: str = BLACK
    fill: str = BLACK
    round: bool = False
    dash_mm: tuple[float, ...] = ()


@lru_cache(maxsize=1000)  # few styles follow one another
def _taken_up(pen: _Pen, style: Style, round_ends: bool) -> tuple[tuple[str, ...], _Pen]:
    """Return the operators that make a pen that of a style, and the pen then. Without a width it is only filled."""
    width, fill = style.width_mm or pen.width_mm, style.fill or pen.fill
    change = (
        ("1 J 1 j" if round_ends else "0 J 0 j", round_ends != pen.round),
        (f"{unit(width)} w", width != pen.width_mm),
        (_colour(style.colour, stroking=True), style.colour != pen.colour),
        (f"[{' '.join(unit(length) for length in style.dash_mm)}] 0 d", style.dash_mm != pen.dash_mm),
        (_colour(fill, stroking=False), fill != pen.fill))
    return tuple(what for what, is_new in change if is_new), _Pen(width, style.colour, fill, round_ends, style.dash_mm)


@lru_cache(maxsize=1000)
def _written_with(pen: _Pen, colour: str) -> tuple[tuple[str, ...], _Pen]:
    """Return the operators that write text in a colour with a pen, and the pen then."""
    change = ((_colour(colour, stroking=True), colour != pen.colour),
              (_colour(colour, stroking=False), colour != pen.fill))
    return tuple(what for what, is_new in change if is_new), pen._replace(colour=colour, fill=colour)


@lru_cache(maxsize=64)
def _colour(colour: str, *, stroking: bool) -> str:
    """Return the operator for a colour such as #6b6b6b: grey where its three parts are equal."""
    parts = [f"{int(colour[at:at + 2], 16) / 255:.3f}".rstrip("0").rstrip(".") for at in (1, 3, 5)]
    if len(set(parts)) == 1:
        return f"{parts[0]} {'G' if stroking else 'g'}"
    return f"{' '.join(parts)} {'RG' if stroking else 'rg'}"
