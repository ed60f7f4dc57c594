"""The class in an order for practice, and that order written as a table, as CSV and as JSON.

Difficulty is in the logit-like units explained in ``difficulty``: lower is easier, figures to two decimals.
Everything is a suggestion for a teacher; nothing here reads or writes a file.
Out of scope: plans over weeks (``weeks``).
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

import unicodedata2

from namewright.names.beats import beats
from namewright.names.clusters import clusters
from namewright.practice.difficulty import (
    WORKLOAD_PER_LETTER,
    WORKLOAD_PER_SIGN,
    Band,
    NameDifficulty,
    base_letter,
    name_difficulty,
    written_signs,
)
from namewright.practice.families import Family, family_of
from namewright.practice.groups import group_class, numbered
from namewright.practice.reason import for_parent, reason
from namewright.practice.sequence import faces_left, practice_sequence
from namewright.roster.children import Child
from namewright.settings import Support

_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_TABLE_COLUMNS = ("place", "child", "length", "difficulty", "band", "letters in practice order")
_CSV_COLUMNS = ("place", "name", "label", "band", "letters", "reason", "length", "difficulty",
                "bands", "watch", "beats", "beats_known", "group")
BEAT_POINT = "\u2027"  # the hyphenation point: in no name (Gal·la has another), and read as beats in a roster
NOTES = (
    "Difficulty: the mean of the name’s different letters by Phillips et al. (2012), lower being easier, "
    "plus the work of writing it.",
    f"The work, {WORKLOAD_PER_LETTER:.2f} for each letter and for each pair of mirror twins, {WORKLOAD_PER_SIGN:.2f} "
    "for each mark, space, hyphen or apostrophe, is a rule of ours and not a finding.",
    "Small letters borrow their capital’s figure; q z u j k count as harder to write, "
    "from lists known at second hand.",
)


class Order(StrEnum):
    """How to order a class: see ``order_class``."""

    PRACTICE = "practice"
    NEED = "need"
    FAMILY = "family"
    ROSTER = "roster"
    NAME = "name"


@dataclass(frozen=True, slots=True)
class Placed:
    """One child in an ordered class.

    ``position`` counts from 1; ``difficulty`` is ``letter_part`` + ``workload``; ``length`` counts letters
    (and digits) to write; ``letters`` are the different letters, each with its band, in practice order;
    ``reason`` is one sentence for the teacher, ``to_parent`` one for a parent. ``small_signs`` and ``twins`` are
    those of the name's difficulty.
    ``beats``, ``beats_known`` and ``group`` (from 1) are empty, false and 0 until ``completed`` fills them in.
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
    to_parent: str = ""
    small_signs: int = 0
    twins: tuple[tuple[str, str], ...] = ()
    beats: tuple[str, ...] = ()
    beats_known: bool = False
    group: int = 0


def order_class(children: Sequence[Child], by: Order = Order.PRACTICE, usual: Support = Support.FULL,
                ) -> tuple[Placed, ...]:
    """Return every child of a class once, in the order asked for.

    PRACTICE goes from the easier name to the harder; equal ones stand by name, then as in the roster.
    NEED goes from the most support to the least (``usual`` for a child whose list says nothing: the teacher
    knows more than a figure), and inside a level from the harder name to the easier. FAMILY goes by how the
    pencil moves in the own initial, inside a family by PRACTICE. NAME follows ``collation_key``. The same
    children in the same order give the same answer each time.
    """
    rated = [(child, name_difficulty(child.practice, own_initial(child))) for child in children]
    keys: dict[Order, Callable[[tuple[Child, NameDifficulty]], tuple[object, ...]]] = {
        Order.PRACTICE: lambda each: (each[1].difficulty, collation_key(each[0])),
        Order.NEED: lambda each: (_support_rank(each[0], usual), -each[1].difficulty, collation_key(each[0])),
        Order.FAMILY: lambda each: (_family_rank(each[0]), each[1].difficulty, collation_key(each[0])),
        Order.NAME: lambda each: (collation_key(each[0]),),
        Order.ROSTER: lambda _: (),
    }
    ordered = sorted(rated, key=keys[by])
    return tuple(_place(*each, position, len(ordered)) for position, each in enumerate(ordered, start=1))


def _support_rank(child: Child, usual: Support) -> int:
    return list(Support).index(child.support or usual)


def initial_family(child: Child) -> Family:
    """Return the family of the child's own initial, marks aside; OTHER where there is none."""
    initial = own_initial(child)
    return family_of(base_letter(initial)) if initial else Family.OTHER


def _family_rank(child: Child) -> int:
    return list(Family).index(initial_family(child))


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
        to_parent=for_parent(child.label, rating, initial), small_signs=rating.small_signs, twins=rating.twins,
    )


def completed(placed: Sequence[Placed], language: str = "en", before: Mapping[str, int] | None = None,
              ) -> tuple[Placed, ...]:
    """Return the same children with their beats and groups.

    Groups hang on the names and not on the order; they are numbered by the roster. ``before`` gives the group of
    last time by label, from which a new one is made with as few moves as can be (see ``groups``), its number kept.
    """
    roster = sorted(range(len(placed)), key=lambda at: placed[at].child.line)
    labels = [placed[at].child.label for at in roster]
    earlier = {place: group for place, label in enumerate(labels) if (group := (before or {}).get(label, 0)) > 0}
    old: dict[int, list[int]] = {}
    for place, group in earlier.items():
        old.setdefault(group, []).append(place)
    groups = group_class([placed[at].child.practice for at in roster], list(old.values()))
    number = numbered(groups, earlier)
    return tuple(_with_beats(replace(placed[at], group=number[place]), language)
                 for place, at in sorted(enumerate(roster), key=lambda pair: pair[1]))


def _with_beats(each: Placed, language: str) -> Placed:
    """Fill in the beats: the teacher's where they join to the name, else as found; a name with none stays whole."""
    for corrected in (each.child.beats or None, None):
        try:
            found = beats(each.child.practice, language, corrected)
        except ValueError:  # a correction of another name, nothing to clap, a language without rules
            continue
        return replace(each, beats=found.parts, beats_known=found.known)
    return replace(each, beats=(each.child.practice,), beats_known=False)


def beats_that_do_not_fit(children: Sequence[Child]) -> tuple[tuple[Child, str], ...]:
    """Return every child whose beats in the roster do not join to the name, with a sentence that says so."""
    found: list[tuple[Child, str]] = []
    for child in children:
        if child.beats:
            try:
                beats(child.practice, corrected=child.beats)
            except ValueError as error:
                found.append((child, str(error)))
    return tuple(found)


def _whole(placed: Sequence[Placed]) -> Sequence[Placed]:
    """Return children with beats and groups, which are found only where they are wanted: they take time."""
    return placed if all(each.group for each in placed) else completed(placed)


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
    for each in _whole(placed):
        texts = (each.child.practice, each.child.label, each.band, _letters(each), each.reason)
        more = (" ".join(band for _, band in each.letters),
                " ".join(letter for letter, _ in each.letters if faces_left(letter)), BEAT_POINT.join(each.beats))
        writer.writerow((each.position, *map(_harmless, texts), each.length, f"{each.difficulty:.2f}",
                         *map(_harmless, more), str(each.beats_known).lower(), each.group))
    return out.getvalue()


def order_json(placed: Sequence[Placed]) -> str:
    """Return the order as a JSON list, one object a child.

    ``watch`` is true for left-facing letters, the ones often reversed when written from memory; ``beats`` join
    to the name, and ``beats_known`` is false where they are a guess.
    """
    return json.dumps([_object(each) for each in _whole(placed)], ensure_ascii=False, indent=2) + "\n"


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
        "beats": list(each.beats), "beats_known": each.beats_known, "group": each.group, "reason": each.reason,
        "to_parent": each.to_parent,
    }


def _harmless(text: str) -> str:
    return "'" + text if text.startswith(_FORMULA_STARTS) else text


def _width(text: str) -> int:
    """Count the columns of a text in a monospaced face: wide characters (UAX #11) take two, marks none."""
    return sum(2 if unicodedata2.east_asian_width(cluster[0]) in "WF" else 1 for cluster in clusters(text))


def _padded(text: str, width: int) -> str:
    return text + " " * (width - _width(text))
