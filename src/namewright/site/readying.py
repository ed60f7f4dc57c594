"""Everything loaded before it is asked for: modules, templates, letters. What comes of it can be kept as an image.

``static/python.mjs`` keeps the memory of a Python that was readied, so that the next start begins there. It must hold
no class but the invented one of this module, which is gone again at the end.
"""

from __future__ import annotations

import gc
import importlib
import io
import pkgutil
from contextlib import suppress
from pathlib import Path

import namewright
from namewright.classbook import Classbook
from namewright.making.make import Making
from namewright.making.request import Kind, Request, listed
from namewright.output.pdf import write_pdf
from namewright.practice.ordering import order_class
from namewright.roster.parsing import read_roster
from namewright.site.bridge import Bridge

DEMO = Path(namewright.__file__).with_name("demo.txt")
SCREENS = ("/class/list", "/class", "/now", "/child/1/seen", "/picture/1/page.svg", "/child/1/card.pdf")
READERS = ("openpyxl", "pyphen", "svgwrite")  # imported only when they are needed


def readied(class_file: str, host: str, root: str) -> Bridge:
    """Return a bridge that has answered before, with an invented class that is gone again."""
    for name in (*(each.name for each in pkgutil.walk_packages(namewright.__path__, "namewright.")), *READERS):
        with suppress(ImportError):  # what needs native code is not there inside a browser
            importlib.import_module(name)
    bridge = Bridge(class_file, host, root)
    bridge.compile_screens()
    with Classbook.open(class_file) as book:
        book.update_roster(DEMO.read_text(encoding="utf-8"))
    for path in SCREENS:
        bridge.answer("GET", root + path)
    _sheets(bridge)
    Path(class_file).unlink()
    bridge.take_up({})
    gc.collect()
    return bridge


def _sheets(bridge: Bridge) -> None:
    """Make a few sheets as a PDF, for which every letter of their names is laid out, by the letters of the screens."""
    roster = read_roster(DEMO.read_text(encoding="utf-8"))
    asked = Request((Kind.SHEETS,), tuple(map(listed, order_class(roster.children)))[:6], roster=roster)
    write_pdf(Making(asked, bridge.setter).pages(), io.BytesIO(), title="", lang="en")
