"""A page as SVG 1.1, one user unit to a millimetre. Translates item by item and decides nothing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from namewright.lines.ink import Ink, Style
from namewright.pages.page import Chart, Furniture, Guide, Item, Letters, Page, Placed, Row, Tile
from namewright.units import number

if TYPE_CHECKING:
    import svgwrite
    import svgwrite.base
    import svgwrite.container

FURNITURE_ID = "furniture"


def page_svg(page: Page) -> str:
    """Return the page as SVG text: ``width`` and ``height`` in mm, a viewBox in mm."""
    import svgwrite  # not at the top: it loads an HTTP client, and most runs draw no SVG

    width, height = number(page.width_mm), number(page.height_mm)
    drawing = svgwrite.Drawing(size=(f"{width}mm", f"{height}mm"), viewBox=f"0 0 {width} {height}", debug=False)
    named = next((item for item in page.items if isinstance(item, Furniture)), None)  # an id may stand only once
    for item in page.items:
        element = drawing.add(_element(drawing, item))
        if item is named:
            element.attribs["id"] = FURNITURE_ID
    return str(drawing.tostring())


def _element(drawing: svgwrite.Drawing, item: Item) -> svgwrite.base.BaseElement:
    if isinstance(item, Ink):
        return drawing.path(d=item.path_data(), **_paint(item.style))
    if isinstance(item, Guide):
        return _guide(drawing, item)
    if isinstance(item, Tile):
        return _tile(drawing, item)
    return _group(drawing, item)


def _group(drawing: svgwrite.Drawing, item: Row | Letters | Furniture | Placed | Chart) -> svgwrite.container.Group:
    group = drawing.g()
    if isinstance(item, Row):
        group.attribs["class"] = "row"
        group.attribs["data-name"] = item.name
        group.attribs["data-form"] = item.form
    for child in item.items:
        group.add(_element(drawing, child))
    return group


def _guide(drawing: svgwrite.Drawing, item: Guide) -> svgwrite.base.BaseElement:
    element = drawing.line((number(item.x0), number(item.y)), (number(item.x1), number(item.y)),
                           **_paint(item.style, cap=None))
    if item.line is not None:
        element.attribs["class"] = str(item.line)
    return element


def _tile(drawing: svgwrite.Drawing, item: Tile) -> svgwrite.base.BaseElement:
    element = drawing.rect((number(item.x), number(item.y)), (number(item.width), number(item.height)),
                           **_paint(item.style, cap=None))
    element.attribs["class"] = "tile"
    element.attribs["data-letter"] = item.letter
    return element


def _paint(style: Style, cap: str | None = "round") -> dict[str, str]:
    paint = {"fill": style.fill or "none", "stroke": style.colour, "stroke_width": number(style.width_mm)}
    if cap:
        paint |= {"stroke_linecap": cap, "stroke_linejoin": cap}
    if style.dash_mm:
        paint["stroke_dasharray"] = " ".join(number(length) for length in style.dash_mm)
    return paint
