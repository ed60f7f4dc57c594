"""Name practice for young writers: a class roster in, measured practice paper out.

What stands in ``__all__`` is the promise to other programs; everything else is private. It is loaded when it is first
asked for, so that the command line loads only what a command needs.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from namewright.api import (
        Account,
        Child,
        Kind,
        LineReport,
        Making,
        Message,
        NotMade,
        Page,
        Problem,
        Remark,
        Roster,
        RosterError,
        in_words,
        make,
        page_png,
        page_svg,
        read_roster,
        write_pdf,
    )

__version__ = "0.1.0"
__all__ = [
    "Account",
    "Child",
    "Kind",
    "LineReport",
    "Making",
    "Message",
    "NotMade",
    "Page",
    "Problem",
    "Remark",
    "Roster",
    "RosterError",
    "__version__",
    "in_words",
    "make",
    "page_png",
    "page_svg",
    "read_roster",
    "write_pdf",
]


def __getattr__(name: str) -> Any:
    if name not in __all__:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    found = globals()[name] = getattr(import_module("namewright.api"), name)
    return found


def __dir__() -> list[str]:
    return sorted(__all__)
