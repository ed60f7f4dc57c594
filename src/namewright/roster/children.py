"""What a roster becomes: children, and an account of every line it was read from."""

from __future__ import annotations

from enum import StrEnum

from namewright.message import Field, Message, Problem
from namewright.named_tuples import NamedTuple
from namewright.roster.tidy import tidy
from namewright.settings import Hand, Support

_OPENING = 40  # characters of a line


class Child(NamedTuple):
    """One child, as the rest of the house needs to know them.

    ``practice`` is the name to write, NFC; ``label`` is how an adult tells this child from every other
    in the class (it adds an initial or a number where two share a name); ``line`` is the 1-based line
    (or spreadsheet row) the child was read from. A setting that is None means "as the class".
    ``letters`` (chosen forms) and ``beats`` (the name cut for clapping) are as typed, ``names_in`` is the language of
    the name by its tag (BCP 47); all three are empty where not given.
    """

    practice: str
    label: str
    given: str
    family: str
    line: int
    support: Support | None = None
    hand: Hand | None = None
    line_height_mm: float | None = None
    letters: str = ""
    beats: str = ""
    names_in: str = ""


class Outcome(StrEnum):
    """What became of a line."""

    CHILD = "child"
    HEADER = "header"
    HEADING = "heading"
    FURTHER = "further row"
    BLANK = "blank"
    LEFT_OUT = "left out"


class LineReport(NamedTuple):
    """One line of the list and what became of it, with what the teacher should know.

    ``child`` is who was read from it; of a further row, or a line that a quoted cell runs over, who stands above.

    Lines of several children, web pages and the like are unfolded first, so that each child has a line. ``line`` counts
    the lines as they are then, ``source_line`` those of what was pasted.
    """

    line: int
    text: str
    outcome: Outcome
    child: Child | None
    notes: tuple[Message, ...] = ()
    origin: int = 0

    @property
    def source_line(self) -> int:
        """Return the 1-based line of what was pasted that this one was on."""
        return self.origin or self.line

    @property
    def opening(self) -> str:
        """Return the first words of the line, by which an adult finds it, without what cannot be seen."""
        words = tidy(self.text).text
        return words if len(words) <= _OPENING else f"{words[:_OPENING].rstrip()} …"

    @property
    def opens_child(self) -> bool:
        """Say whether a child was read from this line, and did not begin on one above."""
        return self.outcome is Outcome.CHILD and self.child is not None and self.child.line == self.line


class Roster(NamedTuple):
    """The children in roster order, and one report for every line of the list, in its order.

    ``notes`` are about the source as a whole: its encoding, its other sheets. ``text`` is the list with a line for each
    child where it had to be unfolded for that, empty where it is as it was: what is to be kept of it.
    """

    children: tuple[Child, ...]
    lines: tuple[LineReport, ...]
    notes: tuple[Message, ...] = ()
    text: str = ""

    def source_line(self, line: int) -> int:
        """Return the line of what was pasted that a line of this list was on."""
        return next((report.source_line for report in self.lines if report.line == line), line)

    def opening(self, line: int) -> str:
        """Return the first words of a line, empty where there is none of this number."""
        return next((report.opening for report in self.lines if report.line == line), "")


class RosterError(Problem):
    """A source that gives no children at all.

    ``lines`` accounts for the lines that were read before giving up, so that nothing is lost by it.
    """

    def __init__(self, told: Message | str, /, lines: tuple[LineReport, ...] = (), **fields: Field) -> None:
        super().__init__(told, **fields)
        self.lines = lines
