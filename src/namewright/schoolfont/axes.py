"""A variable font's axes: which of its forms is meant, told by values or by the name of one that it has ready.

OpenType 1.9, table “fvar”. Out of scope: drawing, which HarfBuzz does with the values found here.
"""

from __future__ import annotations

from collections.abc import Mapping

from fontTools.ttLib import TTFont

from namewright.schoolfont import FontError

_MAX_TOLD = 12  # names of ready forms that a reason lists


def chosen_axes(table: TTFont, asked: str, file: str) -> Mapping[str, float]:
    """Return values by axis for what is asked, as “wght=400 wdth=90” or as the name of a ready form, “Bold”.

    Raises FontError, naming what there is, where the font has no axes, or not these or not so far.
    """
    if "fvar" not in table:
        raise FontError("font.no_axes", file=file)
    ready = {(table["name"].getDebugName(one.subfamilyNameID) or "").casefold(): one.coordinates
             for one in table["fvar"].instances}
    if asked.strip().casefold() in ready:
        return dict(ready[asked.strip().casefold()])
    limits = _limits(table)
    values = [part.partition("=") for part in asked.replace(",", " ").split()]
    try:
        found = {tag: float(value) for tag, _, value in values}
        fits = bool(found) and all(limits[tag][0] <= value <= limits[tag][1] for tag, value in found.items())
    except (KeyError, ValueError):
        fits = False
    if not fits:
        raise FontError("font.axes", asked=asked, known=known_forms(table))
    return found


def known_forms(table: TTFont) -> tuple[str, ...]:
    """Return what can be asked of a font: its axes with their limits, then its ready forms; nothing of a plain one."""
    if "fvar" not in table:
        return ()
    axes = [f"{tag}={low:g}…{high:g}" for tag, (low, high) in _limits(table).items()]
    names = [table["name"].getDebugName(one.subfamilyNameID) or "" for one in table["fvar"].instances]
    return (*axes, *filter(None, names[:_MAX_TOLD]))


def _limits(table: TTFont) -> Mapping[str, tuple[float, float]]:
    return {axis.axisTag: (axis.minValue, axis.maxValue) for axis in table["fvar"].axes}
