"""What was noted of one child's name writing, look by look, with what the child practised with on that day.

Pure data, and nothing added up to a score. Out of scope: where it comes from (``classbook``), how it is drawn
(``record_table``) or written (``output.record_table``).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from namewright.settings import Support


@dataclass(frozen=True, slots=True)
class Held:
    """What a child practised with on a day: the level of support, ``noted`` or else as it was set on that day.

    ``line_height_mm`` is that of the sheets as set; ``rows`` are the rungs chosen one by one in place of a level, by
    their words.
    """

    support: Support
    noted: bool
    line_height_mm: float
    rows: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Trial:
    """One look at a child's name: the letters of ``Record.letters`` formed and not yet formed, by their places there.

    A place in neither was not looked at. ``step`` (1 to 7) is where the whole name stood, None where nobody said.
    """

    day: date
    held: Held
    formed: frozenset[int] = frozenset()
    not_yet: frozenset[int] = frozenset()
    step: int | None = None
    note: str = ""
    who: str = ""

    @property
    def looked(self) -> bool:
        """Say whether any letter was looked at."""
        return bool(self.formed or self.not_yet)


@dataclass(frozen=True, slots=True)
class Record:
    """All looks at a child's name, by day and then as they were noted; ``letters`` are those of the practised name."""

    label: str
    letters: tuple[str, ...]
    trials: tuple[Trial, ...]

    def numbered(self) -> Iterator[tuple[int | None, Trial]]:
        """Yield each trial with its number: 0 for the first look at letters, the baseline; None where none was."""
        number = -1
        for trial in self.trials:
            number += trial.looked
            yield number if trial.looked else None, trial
