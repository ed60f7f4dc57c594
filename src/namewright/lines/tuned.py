"""A ruling as one child needs it: the class's, with the specialist's settings laid over it. Millimetres."""

from __future__ import annotations

import math

from namewright.lines.fit import DoesNotFit
from namewright.lines.ruling import Inking, Ruling
from namewright.message import message
from namewright.tuning import Tuning

# The most of an x-height that a setting may take before letters close up or cannot be made out; found by trial.
_MAX_OF_X_HEIGHT = (("model_pen", 0.3), ("dot_size", 0.25), ("dot_pitch", 0.75))


class TooWide(DoesNotFit):
    """A pen, a dot or a pitch that closes small letters up or scatters them."""

    def __init__(self, setting: str, width_mm: float, most_mm: float, x_height_mm: float) -> None:
        super().__init__(setting, width_mm, most_mm, message(f"fit.{setting}", width=width_mm, most=most_mm,
                                                             x_height=x_height_mm))


def tuned(ruling: Ruling, tuning: Tuning) -> Ruling:
    """Return the ruling with the settings that are about lines and pens.

    Raises Problem for a line height we cannot rule. Whether its pens suit its letters is asked where they are drawn
    (``check_pens``), for a page that only names the settings must not fail by them.
    """
    if tuning.line_height is not None:
        ruling = ruling.scaled_to(tuning.line_height)
    if tuning.midline is not None:
        ruling = _with_midline(ruling, tuning.midline)
    if tuning.row_gap is not None:
        ruling = ruling._replace(gap_mm=tuning.row_gap)
    if tuning.unlined:
        ruling = ruling._replace(lines=frozenset(), bands_mm=())
    return ruling._replace(inked=_inked(ruling.inked, tuning))


def check_pens(ruling: Ruling) -> None:
    """Raise TooWide where a pen of one's own would fill the letters of a ruling, or its dots would scatter."""
    own = ruling.inked
    for (setting, share), width_mm in zip(_MAX_OF_X_HEIGHT, (own.pen_mm, own.dot_mm, own.pitch_mm), strict=True):
        if width_mm is not None and width_mm > share * ruling.x_height_mm + 0.005:
            raise TooWide(setting, width_mm, math.floor(share * ruling.x_height_mm * 10) / 10, ruling.x_height_mm)


def suited(ruling: Ruling) -> Ruling:
    """Return a ruling, with the usual pens for its x-height where its own do not suit its letters."""
    try:
        check_pens(ruling)
    except TooWide:
        return ruling._replace(inked=ruling.inked._replace(pen_mm=None, dot_mm=None, pitch_mm=None))
    return ruling


def _with_midline(ruling: Ruling, share: float) -> Ruling:
    """Move the midline; the descender zone keeps its depth in x-heights. Graded heights are given up."""
    x_height = share * ruling.line_height_mm
    depth = ruling.descender_mm / ruling.x_height_mm * x_height
    return ruling._replace(x_height_mm=x_height, ascender_mm=ruling.line_height_mm - x_height, descender_mm=depth,
                           short_mm=None, bands_mm=())


def _inked(inked: Inking, tuning: Tuning) -> Inking:
    own = {"pen_mm": tuning.model_pen, "dot_mm": tuning.dot_size, "pitch_mm": tuning.dot_pitch,
           "weight": tuning.line_weight, "bold_baseline": tuning.bold_baseline, "shaded_band": tuning.shaded_band}
    return inked._replace(**{key: value for key, value in own.items() if value is not None})  # type: ignore[arg-type]
