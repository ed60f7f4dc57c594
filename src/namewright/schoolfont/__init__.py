"""A school's own font: its letters read, shaped and set on our rulings, and a centreline found in each.

Two libraries do the heavy part and come with the extra ``school-font``: HarfBuzz (``uharfbuzz``) shapes a name and
draws its outlines, shapely gives the Voronoi diagram from which a centreline is picked. Both are loaded by
``extra`` and only when a font is asked for, so that all else works without them.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

from namewright.message import Problem


class FontError(Problem):
    """A font that cannot be used."""


def extra(module: str) -> Any:
    """Return a library of the extra ``school-font``. Raises FontError where it is not installed."""
    try:
        return import_module(module)
    except ImportError as error:
        raise FontError("font.libraries") from error
