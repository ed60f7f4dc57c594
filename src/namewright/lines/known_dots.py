"""Where the dots of common letters stand on the usual lines, worked out beforehand: a first class need not wait.

``known_dots.txt`` is what ``forms.trace_dots`` finds, in hundredths of a millimetre, and nothing else;
``fonts/build_known_cues.py`` writes it anew when letters, lines or dots have changed, and a test compares the two. Its
first line tells for which lines and pitch it holds; then a row has a letter and its dots, x and y in turn.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from pathlib import Path

from namewright.letters.strokes import GridPoint
from namewright.lines.ruling import Ruling

FILE = Path(__file__).with_name("known_dots.txt")


def rows(ruling: Ruling, pitch_mm: float) -> Mapping[str, str]:
    """Return the rows of the letters on these lines; none where nothing is known of them."""
    key, letters = _read()
    return letters if key == _key(ruling, pitch_mm) else {}


def dots(row: str) -> list[GridPoint]:
    """Return the dots in a row."""
    values = list(map(int, row.split()))
    return list(zip(values[::2], values[1::2], strict=True))


def written(ruling: Ruling, pitch_mm: float, letters: Iterable[tuple[str, Sequence[GridPoint]]]) -> str:
    """Return the text of the file."""
    found = (" ".join((letter, *(f"{x} {y}" for x, y in points))) for letter, points in letters)
    return "\n".join((_key(ruling, pitch_mm), *found)) + "\n"


def _key(ruling: Ruling, pitch_mm: float) -> str:
    return f"{ruling.written} {pitch_mm}"


@cache
def _read() -> tuple[str, Mapping[str, str]]:
    key, *lines = FILE.read_text(encoding="utf-8").splitlines()
    return key, {letter: row for letter, _, row in (line.partition(" ") for line in lines)}
