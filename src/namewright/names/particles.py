"""Small words of family names (de, van der, bin …), as sets of lower-case words."""

from __future__ import annotations

PARTICLES = frozenset((
    "de", "del", "della", "delle", "di", "da", "das", "do", "dos", "du", "des", "la", "las", "los", "le", "van",
    "von", "vom", "zu", "zum", "zur", "der", "den", "ter", "ten", "te", "'t", "’t", "af", "av", "bin", "bint",
    "ibn", "ben", "el", "al", "st", "y", "e", "mac", "أبو", "ابو", "آل", "ال", "بن", "ابن", "بنت",
    "בן", "בת", "אבו",
))
"""Words that open a family name when another word follows; some in Arabic and Hebrew letters."""

SMALL_PARTICLES = frozenset((
    "de", "del", "da", "das", "do", "dos", "du", "des", "la", "las", "los", "van", "von", "vom", "zu", "zum",
    "zur", "der", "den", "ter", "ten", "te", "'t", "’t", "af", "av", "bin", "bint", "ibn", "y", "e",
))
"""Those of them that are written small when a name in capitals is mended."""

OPENING_PARTICLES = PARTICLES - frozenset(["y", "e", "mac", "ben", "te", "בן", "בת"])
"""Those that open a family name in free text too; Ben is more often a child."""
