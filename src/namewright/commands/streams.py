r"""The streams of the command line: always there, and able to take every name whatever their encoding.

What an encoding lacks is written as it would be in JSON, ``\\u0141``, so that what another program reads stays well
formed; quotation marks and dashes become plain ones. Nothing fails after it was saved only because it cannot be shown.
"""

from __future__ import annotations

import codecs
import io
import os
import sys

_PLAIN = str.maketrans({**dict.fromkeys("“”„«»‘’‚ʼ‹›", "'"), **dict.fromkeys("–—‑−", "-"), "…": "...", "×": "x"})
_HANDLER = "namewright"


def open_streams() -> None:
    """Put an empty stream in the place of one that the caller has closed, and let each write any character."""
    sys.stdin = sys.stdin or os.fdopen(os.open(os.devnull, os.O_RDONLY))
    sys.stdout = sys.stdout or os.fdopen(os.open(os.devnull, os.O_WRONLY), "w")
    sys.stderr = sys.stderr or os.fdopen(os.open(os.devnull, os.O_WRONLY), "w")
    codecs.register_error(_HANDLER, _plainly)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors=_HANDLER)


def _plainly(error: UnicodeError) -> tuple[str, int]:
    """Return what is written instead of characters that an encoding lacks, as the codecs module asks for it."""
    if not isinstance(error, UnicodeEncodeError):
        raise error
    lacking = error.object[error.start:error.end]
    return "".join(_escaped(char) for char in lacking.translate(_PLAIN)), error.end


def _escaped(char: str) -> str:
    if char.isascii():
        return char
    units = char.encode("utf-16-be", "surrogatepass")
    return "".join(f"\\u{units[at]:02x}{units[at + 1]:02x}" for at in range(0, len(units), 2))
