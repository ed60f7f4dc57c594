"""Everything loaded before it is asked for: modules, templates, letters. What comes of it can be kept as an image.

``static/python.mjs`` keeps the memory of a Python that was readied, so that the next start begins there. It must hold
no class but the invented one of this module, which is gone again at the end.
"""

from __future__ import annotations

import gc
import importlib
import re
from contextlib import suppress
from pathlib import Path
from urllib.parse import urlencode

import namewright
from namewright.site.bridge import Answer, Bridge
from namewright.site.bundle import below

DEMO = Path(namewright.__file__).with_name("demo.txt")
SCREENS = ("/mark.svg", "/class/list", "/class", "/now", "/child/1/seen", "/picture/1/page.svg", "/child/1/card.pdf")
READERS = ("openpyxl", "pyphen", "svgwrite")  # imported only when they are needed


def readied(class_file: str, host: str, root: str) -> Bridge:
    """Return a bridge that has answered before, with an invented class that is gone again."""
    for name in (*below(namewright), *READERS):
        with suppress(ImportError):  # what needs native code is not there inside a browser
            importlib.import_module(name)
    bridge = Bridge(class_file, host, root)
    bridge.compile_screens()
    _first_class(bridge, root)
    for path in SCREENS:
        bridge.answer("GET", root + path)
    Path(class_file).unlink()
    bridge.take_up({})
    gc.collect()
    return bridge


def _first_class(bridge: Bridge, root: str) -> None:
    """Go the way of a first class, from the pasted list to the PDF: what is worked out once on it is there then."""
    names = DEMO.read_text(encoding="utf-8")
    page = bridge.answer("GET", root + "/class/list")
    for path in ("/class/list/read?part=lines", "/class/list"):
        _sent(bridge, root + path, page, text=names)
    page = bridge.answer("GET", root + "/class")
    for path in ("/print/count", "/print"):
        _sent(bridge, root + path, page, what="sheets")
    while bridge.work():
        pass


def _sent(bridge: Bridge, path: str, page: Answer, **fields: str) -> None:
    """Send a form of a page, as a browser sends it."""
    hidden = dict(re.findall(r'name="(token|class)" value="([^"]*)"', page.body.decode()))
    form = [("Content-Type", "application/x-www-form-urlencoded")]
    bridge.answer("POST", path, form, urlencode(hidden | fields).encode())
