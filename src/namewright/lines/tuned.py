"""A ruling as one child needs it: the class's, with the specialist's settings laid over it. Millimetres."""

from __future__ import annotations

from dataclasses import replace

from namewright.lines.ruling import Inking, Ruling
from namewright.tuning import Tuning


def tuned(ruling: Ruling, tuning: Tuning) -> Ruling:
    """Return the ruling with the settings that are about lines and pens.

    Raises ValueError for a line height we cannot rule.
    """
    if tuning.line_height is not None:
        ruling = ruling.scaled_to(tuning.line_height)
    if tuning.midline is not None:
        ruling = _with_midline(ruling, tuning.midline)
    if tuning.row_gap is not None:
        ruling = replace(ruling, gap_mm=tuning.row_gap)
    if tuning.unlined:
        ruling = replace(ruling, lines=frozenset(), bands_mm=())
    return replace(ruling, inked=_inked(ruling.inked, tuning))


def _with_midline(ruling: Ruling, share: float) -> Ruling:
    """Move the midline; the descender zone keeps its depth in x-heights. Graded heights are given up."""
    x_height = share * ruling.line_height_mm
    depth = ruling.descender_mm / ruling.x_height_mm * x_height
    return replace(ruling, x_height_mm=x_height, ascender_mm=ruling.line_height_mm - x_height, descender_mm=depth,
                   short_mm=None, bands_mm=())


def _inked(inked: Inking, tuning: Tuning) -> Inking:
    own = {"pen_mm": tuning.model_pen, "dot_mm": tuning.dot_size, "pitch_mm": tuning.dot_pitch,
           "weight": tuning.line_weight, "bold_baseline": tuning.bold_baseline, "shaded_band": tuning.shaded_band}
    return replace(inked, **{key: value for key, value in own.items() if value is not None})  # type: ignore[arg-type]
