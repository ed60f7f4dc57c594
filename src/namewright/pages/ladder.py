"""The ladder of support: what the rows of a sheet ask of the child, rung by rung, and which letters are given.

From the most given to the least: dots with stroke marks, dots, dots that run out, wide dots, start dots, the
first letter, copying under a near model, writing from memory. In the studies of ``practice/evidence.toml``
copying and writing from memory did better than tracing, so a sheet spends one or two rows on the ladder's upper
rungs and the rest on the last two; from sheet to sheet the first rung moves down.

Out of scope: where rows stand (``sheet``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import StrEnum

from namewright.lines.forms import Form
from namewright.lines.setting import SetLine
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.settings import Support


class Part(StrEnum):
    """The parts of a sheet, in the order in which they stand; those from MARKED to FIRST are rungs to trace on."""

    MODEL = "model"
    MARKED = "marked-dots"
    DOTS = "dots"
    RUN_OUT = "dots-run-out"
    WIDE = "wide-dots"
    STARTS = "start-dots"
    FIRST = "first-letter"
    TILES = "tiles"
    COPY = "copy"
    MEMORY = "memory"


RUNGS: Mapping[Part, str] = {
    Part.MARKED: "The path and its order are given; a first meeting with a letter. Of five lessons and a control, "
                 "numbered arrows with writing from memory did most for first graders at risk (Berninger et al. 1997, "
                 "abstract).",
    Part.DOTS: "The path is given, the order is remembered. Tracing alone did less than copying for kindergartners "
               "(Hirsch & Niedermeyer 1973, abstract), so one row is enough.",
    Part.RUN_OUT: "Each time fewer letters are given, so the row itself leads on: chaining, common practice.",
    Part.WIDE: "Dots twice as far apart leave most of the path to the child: a step of ours, not a finding.",
    Part.STARTS: "Only where each stroke begins is given: a step of ours, with an eye on forms that face left, which "
                 "children reverse more than others (Treiman et al. 2014, abstract).",
    Part.FIRST: "The own first letter, which preschoolers print better than others (Treiman & Broderick 1998, "
                "abstract), is given; the rest is the child’s.",
    Part.COPY: "Copying beside a near model: copying did clearly better than tracing at writing from memory later "
               "(Askov & Greff 1975, abstract), and nearness of the model changes how strokes are joined.",
    Part.MEMORY: "From memory, the model folded away: with numbered arrows it did more than four other lessons and a "
                 "control (Berninger et al. 1997, abstract).",
}
ORDERED = (Part.MARKED, Part.STARTS)
"""The rungs that show where strokes begin, so that their order must be known."""
TRACED = tuple(part for part in RUNGS if part not in (Part.COPY, Part.MEMORY))
MAX_TRACED = 4
_SHORT_ROW = 8


class Chain(StrEnum):
    """Which letters are left to the child first where dots run out."""

    BACKWARD = "backward"  # the last letter first
    FORWARD = "forward"  # the first letter first


class Ladder(NamedTuple):
    """The traced rungs of a sheet (None: by level of support), the chain, and letters that keep their dots."""

    rungs: tuple[Part, ...] | None = None
    chain: Chain = Chain.BACKWARD
    keep: str = ""


_M, _B, _C, _R = Part.MODEL, Part.TILES, Part.COPY, Part.MEMORY
# What a sheet needs, and what it gets while there is room, the more important first.
_NEEDED: Mapping[Support, tuple[Part, ...]] = {
    Support.FULL: (_M, Part.DOTS, _C, _R), Support.PARTIAL: (_M, Part.RUN_OUT, _C, _R),
    Support.LIGHT: (_M, _C, _R), Support.INDEPENDENT: (_M, _R, _C),
}
_WISHED: Mapping[Support, tuple[Part, ...]] = {
    Support.FULL: (_B, _C, Part.RUN_OUT, _R), Support.PARTIAL: (_B, _C, _R),
    Support.LIGHT: (_B, _C, _R, _C, _R), Support.INDEPENDENT: (_B, _R, _C, _R),
}


def needed(support: Support, ladder: Ladder) -> tuple[Part, ...]:
    """Return the parts a sheet must have."""
    return _NEEDED[support] if ladder.rungs is None else (_M, *ladder.rungs, _C, _R)


def wished(support: Support, ladder: Ladder) -> tuple[Part, ...]:
    """Return the parts a sheet has while there is room, the more important first."""
    return _WISHED[support] if ladder.rungs is None else (_B, _C, _R)


def read_rungs(text: str) -> tuple[Part, ...]:
    """Read rungs as typed, such as ``dots wide-dots``. Raises Problem, naming those there are, for others."""
    names = text.replace(",", " ").split()
    known = [str(part) for part in TRACED]
    for name in names:
        if name not in known:
            raise Problem("ladder.unknown", name=name, known=tuple(known))
    if len(names) > MAX_TRACED:
        raise Problem("ladder.many", count=len(names), most=MAX_TRACED)
    return tuple(sorted(map(Part, names), key=list(Part).index))


def given(line: SetLine, part: Part, ladder: Ladder, time: int, times: int, *, fading: bool = False) -> list[Form]:
    """Return the form of every letter for the ``time``-th of ``times`` names in a row of this rung.

    In a row of dots that is ``fading`` they run out after the first name.
    """
    letters = len(line.letters)
    if part is Part.RUN_OUT:
        forms = _run_out(letters, ladder.chain, time, times)
    elif fading and time:
        forms = _run_out(letters, ladder.chain, time - 1, times - 1)
    elif part is Part.FIRST:
        forms = [Form.SOLID] + [Form.BLANK] * (letters - 1)
    else:
        forms = [{Part.WIDE: Form.WIDE, Part.STARTS: Form.STARTS}.get(part, Form.DOTTED)] * letters
    return [Form.DOTTED if form is not Form.SOLID and one.letter.cluster in ladder.keep else form
            for one, form in zip(line.letters, forms, strict=True)]


def _run_out(letters: int, chain: Chain, time: int, times: int) -> list[Form]:
    """Dot fewer letters each time; what is left to the child comes off the end or, in a forward chain, the front."""
    dotted = max(1, round(letters * (times - time) / (times + 1)))
    forms = [Form.DOTTED] * dotted + [Form.BLANK] * (letters - dotted)
    return forms if chain is Chain.BACKWARD else forms[::-1]


def repeats(part: Part, letters: int, room: float, width: float, gap: float) -> int:
    """Return how often a name of so many letters stands in a row of a room's width.

    Once or twice to trace, up to three times where dots run out; a name of two or three letters as often as makes a
    row of about ``_SHORT_ROW`` letters, which is what a name of four letters has.
    """
    most = 3 if part is Part.RUN_OUT else 1 if part in (Part.FIRST, Part.STARTS) else 2
    if most > 1:
        most = max(most, round(_SHORT_ROW / max(1, letters)))
    return max(1, min(most, int((room + gap) / (width + gap))))


def in_order(parts: Sequence[Part]) -> list[Part]:
    """Return parts in the order in which they stand."""
    return sorted(parts, key=list(Part).index)
