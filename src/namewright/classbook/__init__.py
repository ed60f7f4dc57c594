"""The class's database: the roster, the children, their settings, and what was seen of their writing.

One SQLite file on the teacher's own machine. ``Classbook.open(path)`` is the way in.
"""

from namewright.classbook.database import Classbook
from namewright.classbook.erasing import Erased
from namewright.classbook.records import BookChild, Change, ClassbookError, Observation, RosterUpdate, Save, Seen
from namewright.classbook.traces import Trace

__all__ = ["BookChild", "Change", "Classbook", "ClassbookError", "Erased", "Observation", "RosterUpdate", "Save",
           "Seen", "Trace"]
