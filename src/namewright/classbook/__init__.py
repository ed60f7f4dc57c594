"""The class's database: the roster, the children, their settings, and what was seen of their writing.

One SQLite file on the teacher's own machine. ``Classbook.open(path)`` is the way in.
"""

from namewright.classbook.erasing import Erased
from namewright.classbook.records import BookChild, Change, ClassbookError, Observation, RosterUpdate, Save
from namewright.classbook.store import Classbook

__all__ = ["BookChild", "Change", "Classbook", "ClassbookError", "Erased", "Observation", "RosterUpdate", "Save"]
