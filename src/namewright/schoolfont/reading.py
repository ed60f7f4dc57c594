"""A font file from a teacher: read with care, measured, or refused with a reason.

Font units, y up. The file is not trusted: it must be one TrueType or OpenType font of at most 20 MB whose tables lie
inside it. fontTools reads its small tables (OS/2, name); everything of open size (characters, outlines, shaping) is
left to HarfBuzz, which bounds what a hostile font may ask for. Compressed web fonts are refused, not unpacked.
"""

from __future__ import annotations

import logging
from collections.abc import Mapping
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path
from typing import Any

from fontTools.ttLib import TTFont

from namewright.geometry import boxes
from namewright.schoolfont import FontError, extra
from namewright.schoolfont.axes import chosen_axes, known_forms
from namewright.schoolfont.contours import glyph_contours

logging.getLogger("fontTools").addHandler(logging.NullHandler())  # a spoiled font makes it say thousands of lines
LARGEST_FILE = 20_000_000  # bytes
_NAME_LENGTH = 60
_TRUSTED = 0.1  # share by which a measure that the file states may differ from its own letter
_FONT_STARTS = (b"\x00\x01\x00\x00", b"true", b"OTTO")  # OpenType 1.9, “Table directory”; “true” is Apple's
_OTHER_STARTS: Mapping[bytes, str] = {
    b"wOFF": "font.web", b"wOF2": "font.web", b"ttcf": "font.collection",
}


@dataclass(frozen=True, slots=True)
class Measures:
    """Heights over the baseline in font units; ``descender`` is a depth and positive."""

    x_height: float
    cap_height: float
    descender: float


@dataclass(frozen=True, slots=True)
class SchoolFont:
    """A font that has been read: its name for a reader, its measures, and HarfBuzz's font object.

    ``others`` are the forms of a variable font that could have been asked for where none was.
    """

    name: str
    measures: Measures
    engine: Any
    others: tuple[str, ...] = ()

    def glyph(self, char: str) -> int:
        """Return the glyph of one character, 0 where the font has none."""
        return int(self.engine.get_nominal_glyph(ord(char)) or 0)


def load_font(path: Path, axes: str | None = None) -> SchoolFont:
    """Read a font file; ``axes`` tells which form of a variable font is meant (see ``axes``), else its default.

    Raises FontError for a font that cannot be used; OSError for none at all.
    """
    hb = extra("uharfbuzz")
    data = _checked_bytes(path)
    try:
        table = TTFont(BytesIO(data), lazy=True)
        cut_short = any(entry.offset + entry.length > len(data) for entry in table.reader.tables.values())
        name, stated = _name(table) or path.stem, _stated(table)
        engine = hb.Font(hb.Face(hb.Blob(data)))
        others = known_forms(table) if axes is None else ()
        if axes is not None:
            engine.set_variations(dict(chosen_axes(table, axes, str(path))))
            stated = {}  # the file's own heights are those of its default form
    except FontError:
        raise
    except Exception as error:  # whatever a broken file makes the readers raise
        raise FontError("font.broken", file=str(path)) from error
    if cut_short or not engine.face.glyph_count:
        raise FontError("font.cut_short", file=str(path))
    return SchoolFont(name, _measures(engine, stated, path), engine, others)


def _checked_bytes(path: Path) -> bytes:
    with path.open("rb") as file:
        if not path.is_file():
            raise FontError("font.no_file", file=str(path))
        data = file.read(LARGEST_FILE + 1)
    if len(data) > LARGEST_FILE:
        raise FontError("font.large", file=str(path), megabytes=LARGEST_FILE // 1_000_000)
    start = data[:4]
    if start not in _FONT_STARTS:
        raise FontError(_OTHER_STARTS.get(start, "font.no_font"), file=str(path))
    return data


def _name(table: TTFont) -> str:
    """Return the family name (name ID 1), kept short and free of what cannot be shown."""
    found = table["name"].getDebugName(1) if "name" in table else None
    return "".join(char for char in found or "" if char.isprintable())[:_NAME_LENGTH].strip()


def _stated(table: TTFont) -> Mapping[str, float]:
    """Return the heights that the OS/2 table states (version 2 and later); those it leaves at 0 are not stated."""
    os2 = table.get("OS/2")
    fields = {"x": "sxHeight", "H": "sCapHeight"}
    return {letter: float(value) for letter, field in fields.items() if (value := getattr(os2, field, 0)) > 0}


def _measures(engine: Any, stated: Mapping[str, float], path: Path) -> Measures:
    """Return what the file states where its letters bear it out, else what x, H and p measure."""
    x = _height(engine, "x", stated)
    if not x:
        raise FontError("font.no_letters", file=str(path))
    cap = _height(engine, "H", stated) or x
    deep, _ = _reach(engine, "p") or (0.0, 0.0)
    return Measures(x, cap, max(0.0, -deep))


def _height(engine: Any, letter: str, stated: Mapping[str, float]) -> float:
    reach = _reach(engine, letter)
    told = stated.get(letter, 0.0)
    if reach is None:
        return told if letter != "x" else 0.0
    return told if abs(told - reach[1]) <= _TRUSTED * reach[1] else max(0.0, reach[1])


def _reach(engine: Any, letter: str) -> tuple[float, float] | None:
    """Return the lowest and the highest point of a letter's outline, None where there is none."""
    contours = glyph_contours(engine, engine.get_nominal_glyph(ord(letter)) or 0)
    if not contours or not engine.get_nominal_glyph(ord(letter)):
        return None
    _, low, _, high = boxes.joined(contour.bounds() for contour in contours)
    return low, high
