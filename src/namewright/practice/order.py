"""The class in an order for practice, and that order written as a table, as CSV and as JSON.

Difficulty is in the logit-like units explained in ``difficulty``: lower is easier, figures to two decimals.
Everything is a suggestion for a teacher; nothing here reads or writes a file.
Out of scope: groups, plans over days.
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import StrEnum

import unicodedata2

from namewright.names.clusters import clusters
from namewright.names.model import Child
from namewright.practice.difficulty import (
    WORKLOAD_PER_LETTER,
    Band,
    NameDifficulty,
    name_difficulty,
    written_signs,
)
from namewright.practice.reason import reason
from namewright.practice.sequence import faces_left, practice_sequence

_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_TABLE_COLUMNS = ("place", "child", "length", "difficulty", "band", "letters in practice order")
_CSV_COLUMNS = ("place", "name", "label", "band", "letters", "reason", "length", "difficulty")
NOTES = (
    "Difficulty: the mean of the name’s different letters by Phillips et al. (2012), lower being easier, "
    "plus the work of writing it.",
    f"The work, {WORKLOAD_PER_LETTER:.2f} for each letter, is a rule of ours and not a finding.",
    "Small letters borrow their capital’s figure; q z u j k count as harder to write, "
    "from lists known at second hand.",
)


class Order(StrEnum):
    """How to order a class."""

    PRACTICE = "practice"
    ROSTER = "roster"
    NAME = "name"


@dataclass(frozen=True, slots=True)
class Placed:
    """One child in an ordered class.

    ``position`` counts from 1; ``difficulty`` is ``letter_part`` + ``workload``; ``length`` counts letters
    (and digits) to write; ``letters`` are the different letters, each with its band, in practice order;
    ``reason`` is one sentence for the teacher.
    """

    child: Child
    position: int
    difficulty: float
    letter_part: float
    workload: float
    length: int
    band: Band
    letters: tuple[tuple[str, Band], ...]
    reason: str


def order_class(children: Sequence[Child], by: Order = Order.PRACTICE) -> tuple[Placed, ...]:
    """Return every child of a class once, in the order asked for.

    PRACTICE goes from the easier name to the harder; equal ones stand by name, then as in the roster.
    NAME follows ``collation_key``. The same children in the same order give the same answer each time.
    """
    rated = [(child, name_difficulty(child.practice, own_initial(child))) for child in children]
    keys: dict[Order, Callable[[tuple[Child, NameDifficulty]], tuple[object, ...]]] = {
        Order.PRACTICE: lambda each: (each[1].difficulty, collation_key(each[0])),
        Order.NAME: lambda each: (collation_key(each[0]),),
        Order.ROSTER: lambda _: (),
    }
    ordered = sorted(rated, key=keys[by])
    return tuple(_place(*each, position, len(ordered)) for position, each in enumerate(ordered, start=1))


def own_initial(child: Child) -> str:
    """Return the first letter of the child's first name, as written; empty where there is none.

    The practised name begins with it, unless the family name alone is practised.
    """
    family_only = bool(child.given) and child.practice == child.family
    return "".join(written_signs(child.given if family_only else child.practice)[:1])


def collation_key(child: Child) -> tuple[str, str, str, str]:
    """Return the key of NAME order: base letters whatever their case, then marks, then the text, the label.

    Names are decomposed (NFD) and stripped of their marks, so É stands with E and before F; the marks
    decide only between names alike without them. A letter with no decomposition (ł, ø) follows z, and a
    space, a hyphen or an apostrophe stands before every letter. No language's own rules are followed.
    """
    decomposed = unicodedata2.normalize("NFD", child.practice)
    marks = [c for c in decomposed if unicodedata2.category(c).startswith("M")]
    bases = [c for c in decomposed if not unicodedata2.category(c).startswith("M")]
    return "".join(bases).casefold(), "".join(marks), child.practice, child.label


def _place(child: Child, rating: NameDifficulty, position: int, of: int) -> Placed:
    initial = own_initial(child)
    letters = practice_sequence(rating.letters, initial)
    return Placed(
        child=child, position=position, difficulty=rating.difficulty, letter_part=rating.letter_part,
        workload=rating.workload, length=rating.length, band=rating.band,
        letters=tuple((each.letter, each.band) for each in letters),
        reason=reason(child.label, position, of, rating.length, letters, initial),
    )


def order_table(placed: Sequence[Placed]) -> str:
    """Return the order in columns of monospaced text, then notes on the figures; it ends in a newline."""
    rows = [_TABLE_COLUMNS, *(_row(each) for each in placed)]
    widths = [max(map(_width, column)) for column in zip(*rows, strict=True)]
    lines = ("  ".join(map(_padded, row, widths)).rstrip() for row in rows)
    return "\n".join((*lines, "", *NOTES, ""))


def order_csv(placed: Sequence[Placed]) -> str:
    """Return the order as CSV (RFC 4180, lines end in CR LF), one row a child below a header.

    A text that a spreadsheet would take for a formula gets a leading apostrophe; numbers stay numbers.
    """
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(_CSV_COLUMNS)
    for each in placed:
        texts = (each.child.practice, each.child.label, each.band, _letters(each), each.reason)
        writer.writerow((each.position, *map(_harmless, texts), each.length, f"{each.difficulty:.2f}"))
    return out.getvalue()


def order_json(placed: Sequence[Placed]) -> str:
    """Return the order as a JSON list, one object a child.

    ``watch`` is true for the letters seen named as left-facing and often reversed when written from memory.
    """
    return json.dumps([_object(each) for each in placed], ensure_ascii=False, indent=2) + "\n"


def _row(each: Placed) -> tuple[str, ...]:
    return (str(each.position), each.child.label, str(each.length), f"{each.difficulty:.2f}", each.band,
            _letters(each))


def _letters(each: Placed) -> str:
    return " ".join(letter for letter, _ in each.letters)


def _object(each: Placed) -> dict[str, object]:
    return {
        "position": each.position, "name": each.child.practice, "label": each.child.label,
        "difficulty": each.difficulty, "letter_part": each.letter_part, "workload": each.workload,
        "length": each.length, "band": each.band,
        "letters": [{"letter": letter, "band": band, "watch": faces_left(letter)}
                    for letter, band in each.letters],
        "reason": each.reason,
    }


def _harmless(text: str) -> str:
    return "'" + text if text.startswith(_FORMULA_STARTS) else text


def _width(text: str) -> int:
    """Count the columns of a text in a monospaced face: wide characters (UAX #11) take two, marks none."""
    return sum(2 if unicodedata2.east_asian_width(cluster[0]) in "WF" else 1 for cluster in clusters(text))


def _padded(text: str, width: int) -> str:
    return text + " " * (width - _width(text))
