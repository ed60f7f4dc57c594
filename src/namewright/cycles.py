"""How seldom Python looks for cycles: of what makes pages nothing is left that only such a search would find.

Python begins one whenever it has 700 objects more than before, whatever they are, and looks through the older ones,
too, every so often: a tenth of the time of a class from its list to its PDF, and a third of it by way of the screens (a
class of 24, letters known). Yet sheets for 300 children leave not one object in a cycle, and a screen some two hundred.
"""

from __future__ import annotations

import gc

_NEW_OBJECTS = 200_000
_OLDER_EVERY = 20


def look_seldom() -> None:
    """Let this process look for cycles seldom: for whoever runs the program, and not who imports a part of it."""
    gc.set_threshold(_NEW_OBJECTS, _OLDER_EVERY, _OLDER_EVERY)
