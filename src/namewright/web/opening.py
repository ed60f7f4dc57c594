"""The page opened in the browser without its key on anybody's command line.

Other accounts of a machine may see how a browser was started. So it is given a file that only its owner can read, and
that leads on to the address with the key; it is taken away soon after. It lies in the home folder and is not hidden,
since browsers that are kept apart from the system read nothing else. Where it cannot be written, the address is given.
"""

from __future__ import annotations

import html
import os
import secrets
import time
import webbrowser
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

KEPT_S = 20.0  # a browser that has to start first takes a while
_NAME = "namewright-open-"
_PAGE = """<!doctype html>
<html><head><meta charset="utf-8"><meta name="referrer" content="no-referrer"><title>Namewright</title>
<meta http-equiv="refresh" content="0;url={address}"></head><body><a href="{address}">Namewright</a></body></html>
"""


def show(address: str, *, home: Path | None = None, kept_s: float = KEPT_S,
         browse: Callable[[str], object] = webbrowser.open) -> None:
    """Open an address in the browser; returns when the file that leads there is gone again."""
    place = _written(address, home or Path.home())
    if place is None:
        browse(address)
        return
    try:
        browse(place.as_uri())
        time.sleep(kept_s)
    finally:
        place.unlink(missing_ok=True)


def tidy_up(home: Path | None = None) -> None:
    """Take away what programs that were killed have left; their keys open nothing any more."""
    with suppress(OSError):
        for place in (home or Path.home()).glob(f"{_NAME}*.html"):
            if time.time() - place.stat().st_mtime > KEPT_S:
                place.unlink(missing_ok=True)


def _written(address: str, home: Path) -> Path | None:
    place = home / f"{_NAME}{secrets.token_hex(8)}.html"
    try:
        handle = os.open(place, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except OSError:
        return None
    with os.fdopen(handle, "w", encoding="utf-8") as file:
        file.write(_PAGE.format(address=html.escape(address)))
    return place
