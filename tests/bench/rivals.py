"""The same pages made by two general-purpose libraries: ReportLab from ready numbers, WeasyPrint from the SVGs.

Nothing is made easier for our side: paths and colours are made ready before ReportLab's time begins.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from namewright.pages.page import Page

PT_PER_MM = 72 / 25.4
Move = tuple[str, tuple[float, ...]]
Drawing = tuple[dict[str, Any], list[Move]]


def ready(page: Page) -> list[Drawing]:
    """Turn a page into numbers in points, y up: each drawing a paint and its moves. fontTools reads the paths."""
    from fontTools.pens.recordingPen import RecordingPen
    from fontTools.svgLib.path import parse_path
    from reportlab.lib.colors import HexColor

    from namewright.lines.ink import Ink
    from namewright.pages.page import Guide, leaves

    def place(points: Sequence[tuple[float, float]]) -> tuple[float, ...]:
        return tuple(v for x, y in points for v in (x * PT_PER_MM, (page.height_mm - y) * PT_PER_MM))

    drawings: list[Drawing] = []
    for item in leaves(page.items):
        style = item.style
        paint = {"width": style.width_mm * PT_PER_MM, "stroke": HexColor(style.colour),
                 "fill": HexColor(style.fill) if style.fill else None, "cap": int(isinstance(item, Ink)),
                 "join": int(isinstance(item, Ink)), "dash": [mm * PT_PER_MM for mm in style.dash_mm]}
        if isinstance(item, Ink):
            pen = RecordingPen()
            parse_path(item.path_data(), pen)
            moves = [(name, place(points)) for name, points in pen.value if points]
        elif isinstance(item, Guide):
            moves = [("moveTo", place([(item.x0, item.y)])), ("lineTo", place([(item.x1, item.y)]))]
        else:
            corner = place([(item.x, item.y + item.height)])
            moves = [("rect", (*corner, item.width * PT_PER_MM, item.height * PT_PER_MM))]
        drawings.append((paint, moves))
    return drawings


def reportlab(pages: Sequence[tuple[tuple[float, float], list[Drawing]]]) -> bytes:
    """Draw ready numbers on ReportLab's canvas and save it, streams compressed; the pen is set where it changes."""
    from reportlab.pdfgen.canvas import Canvas

    out = io.BytesIO()
    canvas = Canvas(out, pageCompression=1)
    for size, drawings in pages:
        canvas.setPageSize(size)
        before: dict[str, Any] = {}
        for paint, moves in drawings:
            if paint != before:
                _set_pen(canvas, paint, before)
                before = paint
            path = canvas.beginPath()
            for name, numbers in moves:
                getattr(path, name)(*numbers)
            canvas.drawPath(path, stroke=1, fill=int(paint["fill"] is not None))
        canvas.showPage()
    canvas.save()
    return out.getvalue()


def _set_pen(canvas: Any, paint: dict[str, Any], before: dict[str, Any]) -> None:
    setters = {"width": canvas.setLineWidth, "stroke": canvas.setStrokeColor, "fill": canvas.setFillColor,
               "cap": canvas.setLineCap, "join": canvas.setLineJoin, "dash": canvas.setDash}
    for key, value in paint.items():
        if (key not in before or value != before[key]) and not (key == "fill" and value is None):
            setters[key](value)


def weasyprint(svgs: Sequence[str], size_mm: tuple[float, float]) -> bytes:
    """Turn the same SVGs, one on each page of one HTML file, into a PDF."""
    from weasyprint import HTML

    width, height = size_mm
    css = f"@page{{size:{width}mm {height}mm;margin:0}}body{{margin:0}}svg{{display:block;break-after:page}}"
    return bytes(HTML(string=f"<style>{css}</style>{''.join(svgs)}").write_pdf())
