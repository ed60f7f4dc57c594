"""A ladder of name writing, in our own words, for an adult to say where a child stands.

Where it comes from. That name writing grows in a foreseeable order is reported by Haney (2002, *Early Childhood
Education Journal* 30(2), abstract). Puranik & Lonigan (2011, *Reading and Writing* 24(5), 567–589,
doi:10.1007/s11145-009-9220-8) order features of early writing from easier to harder: along a line, in separate
units, simple forms, left to right, complex forms, and letters after these; their table was seen. Hildreth (1936,
*Child Development* 7, 291–303) described levels of name writing first; her paper was not seen, so no age and no
level is taken from it. **The seven steps below are our inference from these**, a common language for notes and not
a measure: children skip steps and go back, and no age is attached to any. Out of scope: what a child reads.
"""

from __future__ import annotations

from enum import IntEnum

from namewright.message import Message, Problem, message


class Stage(IntEnum):
    """A step of the ladder, the earlier the lower."""

    MARKS = 1
    LINES = 2
    SHAPES = 3
    SOME_LETTERS = 4
    ALL_LETTERS = 5
    READABLE = 6
    EVEN = 7

    @property
    def word(self) -> str:
        """Return the word by which it is typed and kept in captions: ``some-letters``."""
        return self.name.lower().replace("_", "-")


STAGES = tuple(f"{stage.value} {stage.word}" for stage in Stage)
"""The stages as they are typed: number and word."""


def stage_said(stage: Stage) -> Message:
    """Return what a child does at a stage, as a sentence."""
    return message(f"page.progress.stage_{stage.value}")


def read_stage(text: str) -> Stage:
    """Read a stage by its number or its word. Raises Problem, naming them all, for anything else."""
    word = text.strip().lower().replace("_", "-").replace(" ", "-")
    for stage in Stage:
        if word in (str(stage.value), stage.word):
            return stage
    raise Problem("classbook.no_stage", text=text, known=STAGES)
