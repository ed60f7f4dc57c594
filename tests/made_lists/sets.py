"""The sets of shapes by the names that the benches call them.

All sets but one are open. `vault` is kept shut: the reader is not mended by its lists, and nobody who mends it looks
at them. How all were read at first sight is told in DEVELOPERS.md.
"""

from __future__ import annotations

from made_lists import (
    shapes_apart,
    shapes_attic,
    shapes_autumn,
    shapes_back,
    shapes_cellar,
    shapes_desk,
    shapes_fresh,
    shapes_further,
    shapes_held,
    shapes_kept,
    shapes_last,
    shapes_late,
    shapes_loft,
    shapes_office,
    shapes_open,
    shapes_pocket,
    shapes_porch,
    shapes_seen,
    shapes_spring,
    shapes_summer,
    shapes_tuned,
    shapes_unseen,
    shapes_vault,
    shapes_winter,
)

SETS = {
    "tuned": shapes_tuned, "held": shapes_held, "fresh": shapes_fresh, "late": shapes_late, "further": shapes_further,
    "last": shapes_last, "apart": shapes_apart, "back": shapes_back, "open": shapes_open, "seen": shapes_seen,
    "spring": shapes_spring, "kept": shapes_kept, "unseen": shapes_unseen, "summer": shapes_summer,
    "autumn": shapes_autumn, "winter": shapes_winter, "office": shapes_office, "desk": shapes_desk,
    "porch": shapes_porch, "pocket": shapes_pocket,
    "cellar": shapes_cellar, "attic": shapes_attic, "loft": shapes_loft, "vault": shapes_vault,
}
