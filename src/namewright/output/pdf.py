"""Pages as one PDF, written page by page so that memory does not grow with the class.

CairoSVG draws each page. What cairo cannot say (how a viewer should print, the language) is added at the end
as an incremental update, ISO 32000-1, 7.5.6: the bytes already written stay as they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import BinaryIO

from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.units import MM_PER_INCH, PT_PER_INCH

_CATALOG_KEYS = ("/Version /1.7 /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true "
                 "/PickTrayByPDFSize true >> /PageMode {mode} /Lang ({lang})")


def write_pdf(pages: Iterable[Page], out: BinaryIO, *, title: str, lang: str) -> int:
    """Write the pages to ``out`` (open for reading and writing, empty) and return how many there were.

    ``title`` should be general: it is shown by viewers and print queues. ``lang`` is a BCP 47 tag.
    Raises NativeLibraryMissing without cairo, ValueError for no pages at all.
    """
    from namewright.output import _cairo

    target, sink = _cairo.pdf_target(out.write, title)
    shapes = _cairo.Shapes()
    count = 0
    for count, page in enumerate(pages, 1):
        target.set_size(page.width_mm / MM_PER_INCH * PT_PER_INCH, page.height_mm / MM_PER_INCH * PT_PER_INCH)
        if page.outline is not None:
            target.add_outline(0, page.outline, f"page={count}", 0)
        _cairo.PageSurface(page_svg(page).encode(), target, shapes)
        target.show_page()
    if not count:
        raise ValueError("there is no page to write")
    target.finish()
    sink.flush()
    _extend_catalog(out, lang, outline=True)
    return count


def _extend_catalog(out: BinaryIO, lang: str, *, outline: bool) -> None:
    """Append a new version of the document catalog with our keys added.

    Raises ValueError if the file does not end as cairo ends one (a classic cross-reference table).
    """
    size = out.seek(0, 2)
    out.seek(max(0, size - 1024))
    tail = out.read()
    trailer = re.search(rb"trailer\s*<<\s*/Size (\d+)\s*/Root (\d+) 0 R(.*?)>>\s*startxref\s*(\d+)\s*%%EOF",
                        tail, re.DOTALL)
    if not trailer:
        raise ValueError("cairo wrote a PDF whose trailer is not understood")
    count, root, rest, xref = int(trailer[1]), int(trailer[2]), trailer[3].strip(), int(trailer[4])
    old = _object(out, xref, root)
    keys = _CATALOG_KEYS.format(mode="/UseOutlines" if outline and b"/Outlines" in old else "/UseNone", lang=lang)
    out.seek(0, 2)
    body = b"%d 0 obj\n<< %s\n   %s\n>>\nendobj\n" % (root, old, keys.encode("ascii"))
    table = b"xref\n%d 1\n%010d 00000 n \n" % (root, size)
    out.write(body + table + b"trailer\n<< /Size %d\n   /Root %d 0 R\n   %s\n   /Prev %d\n>>\nstartxref\n%d\n%%%%EOF\n"
              % (count, root, rest, xref, size + len(body)))


def _object(out: BinaryIO, xref: int, number: int) -> bytes:
    """Return the text between << and >> of a dictionary object, found by the cross-reference table."""
    out.seek(xref)
    header = re.match(rb"xref\s+0 \d+\s*?\n", out.read(64))
    if not header:
        raise ValueError("cairo wrote a PDF whose cross-reference table is not understood")
    out.seek(xref + header.end() + 20 * number)  # an entry is 20 bytes, ISO 32000-1, 7.5.4
    out.seek(int(out.read(10)))
    found = re.match(rb"\d+ 0 obj\s*<<(.*?)>>\s*endobj", out.read(4096), re.DOTALL)
    if not found:
        raise ValueError("cairo wrote a PDF whose catalog is not understood")
    return found[1].strip()
