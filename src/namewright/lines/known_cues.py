"""Where the stroke cues of common letters stand on the usual lines, found beforehand: a first class need not wait.

``known_cues.txt`` is what the search finds (``cue_search``) and nothing else; ``fonts/build_known_cues.py`` writes it
anew when letters, lines or search have changed, and a test compares the two. A part of it holds for one room
(``room_key``): after that the whites beside a letter for which it was asked; then a row for each letter, which has for
each pair of whites a character that tells which of the ways behind it is taken, or that there is none.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import cache
from itertools import product
from pathlib import Path

from namewright.lines.clearance import Sides
from namewright.lines.cue_places import Choice
from namewright.lines.forms import Pens
from namewright.lines.ruling import Ruling
from namewright.named_tuples import NamedTuple

FILE = Path(__file__).with_name("known_cues.txt")
NONE = "-"
CODES = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ!#$%&()*+./:<=>?@[]^_{|}~"


class Part(NamedTuple):
    """What is known of the letters in one room: of which sides, and for each letter its codes and ways."""

    sides: dict[Sides, int]
    letters: dict[str, str]


def room_key(ruling: Ruling, pens: Pens, *, thorough: bool) -> str:
    """Return what cues depend on besides a letter and the white beside it: lines, pens, and how long was searched."""
    return f"{'alone' if thorough else 'set'} {ruling.written} {pens.model_mm} {pens.start_mm}"


def part(key: str) -> Part | None:
    """Return what is known for a room, if anything is."""
    return _parts().get(key)


def known(letters: Part, cluster: str, sides: Sides) -> Sequence[Choice] | None:
    """Return the choices for the strokes and turns of a letter: none at all where it has no room for its cues.

    None where nothing is known of the letter with this white beside it.
    """
    row, at = letters.letters.get(cluster), letters.sides.get(sides)
    if row is None or at is None:
        return None
    codes, _, ways = row.partition(" ")
    code = codes[at]
    return [] if code == NONE else _read(ways.split(" ")[CODES.index(code)])


def written(keys: Iterable[tuple[str, Sequence[Sides], Iterable[tuple[str, Sequence[Sequence[Choice]]]]]]) -> str:
    """Return the text of the file, for each room its key, the sides, and of each letter its choices for each of them.

    Raises ValueError where a letter has too many ways.
    """
    return "\n".join(line for key, sides, letters in keys for line in _written(key, sides, letters)) + "\n"


def _written(key: str, sides: Sequence[Sides], letters: Iterable[tuple[str, Sequence[Sequence[Choice]]]],
             ) -> Iterator[str]:
    yield f"room {key}"
    yield "sides " + " ".join(f"{left!r}:{right!r}" for left, right in sides)
    for cluster, choices in letters:
        ways: dict[str, str] = {}
        codes = ""
        for choice in choices:
            way = ",".join("/".join(map(str, each)) for each in choice)
            codes += ways.setdefault(way, CODES[len(ways)]) if choice else NONE
        yield " ".join((cluster, codes, *ways))


@cache
def _parts() -> dict[str, Part]:
    parts: dict[str, Part] = {}
    for line in FILE.read_text("utf-8").splitlines():
        head, _, rest = line.partition(" ")
        if head == "room":
            current = parts[rest] = Part({}, {})
        elif head == "sides":
            current.sides.update((Sides(*map(float, pair.split(":"))), at) for at, pair in enumerate(rest.split(" ")))
        else:
            current.letters[head] = rest
    return parts


def _read(way: str) -> list[Choice]:
    return [Choice(*map(int, each.split("/"))) for each in way.split(",")]


def grid(whites_mm: Sequence[float]) -> list[Sides]:
    """Return every white on the left with every white on the right."""
    return [Sides(left, right) for left, right in product(whites_mm, whites_mm)]
