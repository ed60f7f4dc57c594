"""Letter-tile boxes sized to a name: how many rows, how large a box. Millimetres."""

from __future__ import annotations

import math
from dataclasses import dataclass

from namewright.names.clusters import clusters

TILE_MM = 25.0
LARGE_TILE_MM = 38.0  # wider than the 31.75 mm small-parts cylinder of 16 CFR 1501.4
BOX_SLACK_MM = 1.0  # so that a tile of 25 mm lies inside its box
LEAST_BOX_MM = 15.0
BOX_GAP_MM = 1.5
_WORD_GAP = 0.5  # of a box


@dataclass(frozen=True, slots=True)
class TileRows:
    """Rows of letters (a space stays as ``" "`` between words of one row) and the side of every box."""

    rows: tuple[tuple[str, ...], ...]
    box_mm: float

    def row_width(self, row: tuple[str, ...]) -> float:
        """Return the width of a row of boxes."""
        return self.offsets(row)[-1] + self.box_mm

    def offsets(self, row: tuple[str, ...]) -> tuple[float, ...]:
        """Return the left edge of each letter's box in a row; a space takes half a box."""
        edges: list[float] = []
        x = 0.0
        for letter in row:
            if letter == " ":
                x += _WORD_GAP * self.box_mm
                continue
            edges.append(x)
            x += self.box_mm + BOX_GAP_MM
        return tuple(edges)


def tile_letters(name: str) -> tuple[str, ...]:
    """Return the letters of a name that get a tile, spaces kept as ``" "`` between words."""
    return tuple(" " if letter.isspace() else letter for letter in clusters(name.strip()))


def tile_rows(name: str, room_mm: float) -> TileRows:
    """Lay a name's boxes out in a width: one row while a box is at least 15 mm wide, else more rows.

    A box holds a 25 mm tile where the row allows. Rows are broken at a space or behind a hyphen where that
    leaves them even enough, else into equal parts.
    """
    letters = tile_letters(name)
    for count in range(1, len(letters) + 1):
        rows = _broken(letters, count)
        box = min(TILE_MM + BOX_SLACK_MM, min(_box_for(row, room_mm) for row in rows))
        if box >= LEAST_BOX_MM:
            return TileRows(rows, math.floor(box * 10) / 10)
    raise ValueError(f"a tile box does not fit into {room_mm:g} mm")


def _box_for(row: tuple[str, ...], room_mm: float) -> float:
    boxes = sum(letter != " " for letter in row)
    return (room_mm - (boxes - 1) * BOX_GAP_MM) / (boxes + _WORD_GAP * row.count(" "))


def _broken(letters: tuple[str, ...], count: int) -> tuple[tuple[str, ...], ...]:
    """Break letters into ``count`` rows, at word ends where one lies within a fifth of the even place."""
    rows: list[tuple[str, ...]] = []
    rest = letters
    for left in range(count, 1, -1):
        if not rest:
            break
        even = math.ceil(len(rest) / left)
        ends = [at for at in range(1, len(rest)) if rest[at - 1] in " -‐‑"]
        near = [at for at in ends if abs(at - even) <= max(1, len(rest) // 5)]
        at = min(near, key=lambda end: abs(end - even)) if near else even
        rows.append(_trimmed(rest[:at]))
        rest = _trimmed(rest[at:])
    return tuple(row for row in (*rows, rest) if row)


def _trimmed(row: tuple[str, ...]) -> tuple[str, ...]:
    start, end = 0, len(row)
    while start < end and row[start] == " ":
        start += 1
    while end > start and row[end - 1] == " ":
        end -= 1
    return row[start:end]
