"""An order written as a table to read, as CSV for a spreadsheet and as JSON for another program.

Out of scope: how it is found (``practice.ordering``).
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Sequence

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.ordering import Placed
from namewright.practice.sequence import faces_left
from namewright.wording import FIRST, Wording, wording

_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_TABLE_COLUMNS = ("place", "child", "band", "count", "letters")
_CSV_COLUMNS = ("place", "name", "label", "band", "letters", "reason", "length", "difficulty",
                "bands", "watch", "beats", "beats_known", "group")
_NONE = "–"
_NOTES = ("rule", "bands", "borrowed")
BEAT_POINT = "\u2027"  # the hyphenation point: in no name (Gal·la has another), and read as beats in a roster


def order_table(placed: Sequence[Placed], language: str = FIRST) -> str:
    """Return the order in columns of monospaced text, how many have a place, and notes; it ends in a newline."""
    words = wording(language)
    rows = [tuple(words.say(f"order.column.{column}") for column in _TABLE_COLUMNS),
            *(_row(each, words) for each in placed)]
    widths = [max(map(_width, column)) for column in zip(*rows, strict=True)]
    lines = ("  ".join(map(_padded, row, widths)).rstrip() for row in rows)
    count = sum(each.band is not None for each in placed)
    account = [] if count == len(placed) else [words.say("order.some", count=count, all=len(placed))]
    return "\n".join((*lines, "", *account, *(words.say(f"order.note.{note}") for note in _NOTES), ""))


def order_csv(placed: Sequence[Placed], language: str = FIRST) -> str:
    """Return the order as CSV (RFC 4180, lines end in CR LF), one row a child below a header.

    A text that a spreadsheet would take for a formula gets a leading apostrophe; numbers stay numbers.
    """
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(_CSV_COLUMNS)
    words = wording(language)
    for each in placed:
        texts = (each.child.practice, each.child.label, each.band or "", _letters(each),
                 words.text(*each.reason))
        more = (" ".join(band for _, band in each.letters),
                " ".join(letter for letter, _ in each.letters if faces_left(letter)), BEAT_POINT.join(each.beats))
        figure = f"{each.difficulty:.2f}" if each.band else ""
        writer.writerow((each.position or "", *map(harmless, texts), each.length, figure,
                         *map(harmless, more), str(each.beats_known).lower(), each.group))
    return out.getvalue()


def order_json(placed: Sequence[Placed], language: str = FIRST) -> str:
    """Return the order as a JSON list, one object a child.

    ``watch`` is true for left-facing letters, the ones often reversed when written from memory; ``beats`` join
    to the name, and ``beats_known`` is false where they are a guess. Position, band and figures are null for a name
    that cannot be written here.
    """
    words = wording(language)
    return json.dumps([_object(each, words) for each in placed], ensure_ascii=False, indent=2) + "\n"


def _row(each: Placed, words: Wording) -> tuple[str, ...]:
    if each.band is None:
        return (_NONE, each.child.label, _NONE, str(each.length), _NONE)
    return (str(each.position), each.child.label, words.listed([each.band]), str(each.length), _letters(each))


def _letters(each: Placed) -> str:
    return " ".join(letter for letter, _ in each.letters)


def _object(each: Placed, words: Wording) -> dict[str, object]:
    here = each.band is not None
    return {
        "position": each.position if here else None, "name": each.child.practice, "label": each.child.label,
        "difficulty": each.difficulty if here else None, "letter_part": each.letter_part if here else None,
        "workload": each.workload if here else None, "length": each.length, "band": each.band,
        "letters": [{"letter": letter, "band": band, "watch": faces_left(letter)}
                    for letter, band in each.letters],
        "beats": list(each.beats), "beats_known": each.beats_known, "group": each.group,
        "reason": words.text(*each.reason), "to_parent": words.text(*each.to_parent),
    }


def harmless(text: str) -> str:
    """Return a cell that no spreadsheet takes for a formula (OWASP, "CSV Injection")."""
    return "'" + text if text.startswith(_FORMULA_STARTS) else text


def _width(text: str) -> int:
    """Count the columns of a text in a monospaced face: wide characters (UAX #11) take two, marks none."""
    return sum(2 if unicodedata2.east_asian_width(cluster[0]) in "WF" else 1 for cluster in clusters(text))


def _padded(text: str, width: int) -> str:
    return text + " " * (width - _width(text))
