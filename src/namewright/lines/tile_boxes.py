"""Letter-tile boxes for a name: each a tile and a little more, in as few rows as the width allows. Millimetres.

The boxes of a row share their edges. A long name goes on in a further row, broken where a word ends or the child
claps the next beat, so that the parts can be said while they are built.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.beats import UNSAID, Spoken, spoken_beats
from namewright.names.clusters import clusters
from namewright.names.syllables import beat_breaks, breaks

TILE_MM = 25.0
LARGE_TILE_MM = 38.0  # wider than the 31.75 mm small-parts cylinder of 16 CFR 1501.4
BOX_SLACK_MM = 1.0  # a box is so much wider than its tile, so that a tile cut by hand still lies inside
ROW_GAP_MM = 2.0
_WORD_GAP = 0.5  # of a box
_WORD_ENDS = " -‐‑"
_MAX_CUTS = 12  # places to break a name that are tried together; a name with more is cut evenly

Letters = tuple[str, ...]


class TileRows(NamedTuple):
    """Rows of letters (a space stays as ``" "`` between words of one row) and the side of every box."""

    rows: tuple[Letters, ...]
    box_mm: float

    @property
    def width_mm(self) -> float:
        """Return the width of the widest row."""
        return max(_width(row, self.box_mm) for row in self.rows)

    @property
    def height_mm(self) -> float:
        """Return the height of all rows."""
        return len(self.rows) * self.box_mm + (len(self.rows) - 1) * ROW_GAP_MM

    def offsets(self, row: Letters) -> tuple[float, ...]:
        """Return the left edge of each letter's box in a row; a space takes half a box."""
        edges: list[float] = []
        x = 0.0
        for letter in row:
            if letter == " ":
                x += _WORD_GAP * self.box_mm
                continue
            edges.append(x)
            x += self.box_mm
        return tuple(edges)


def tile_letters(name: str) -> Letters:
    """Return the letters of a name that get a tile, spaces kept as ``" "`` between words."""
    return tuple(" " if letter.isspace() else letter for letter in clusters(name.strip()))


def tile_rows(name: str, room_mm: float, *, spoken: Spoken = UNSAID) -> TileRows:
    """Lay a name's boxes out in a width, in rows of boxes for tiles of ``TILE_MM``.

    Rows are as few as take it, or one more so that no row goes from one word into a part of the next, or else so that
    no beat is broken; only a beat that is wider than a row has to be. Of the ways to break it into so many rows, one
    with a word to a row is taken first, then the most even. Raises ValueError where not even one box fits.
    """
    letters, box = tile_letters(name), TILE_MM + BOX_SLACK_MM
    if box > room_mm:
        raise ValueError(f"a tile box does not fit into {room_mm:g} mm")
    if rows := _broken(letters, (), 1, room_mm, box):
        return TileRows(rows, box)
    across = int(room_mm // box)
    between = _spoken_breaks(letters, spoken, across)  # not before: most names have one row, beats are read from tables
    least = max(2, -(-sum(letter != " " for letter in letters) // across))
    in_beats, anywhere = _in_wide_beats(letters, between, across), tuple(range(1, len(letters)))
    ways = [(count, places, whole) for places, whole in ((between, True), (between, False), (in_beats, True))
            for count in (least, least + 1)]
    ways += [(count, places, False) for count in range(least, len(letters) + 1) for places in (in_beats, anywhere)]
    for count, places, whole in ways:
        if rows := _broken(letters, places, count, room_mm, box, whole_words=whole):
            return TileRows(rows, box)
    return TileRows(tuple((letter,) for letter in letters if letter != " "), box)


def _spoken_breaks(letters: Letters, spoken: Spoken, across: int) -> tuple[int, ...]:
    """Return where a name may go on in the next row: behind a word or a hyphen, or between two beats of a word.

    Within a word of one beat only where it is wider than a row, which takes ``across`` boxes.
    """
    ends = [at + 1 for at, letter in enumerate(letters) if letter in _WORD_ENDS]
    places = set(ends)
    if spoken.own:  # the teacher's own beats are of the whole name
        places.update(at for at in spoken_beats(letters, spoken).starts if letters[at - 1] not in _WORD_ENDS)
        return tuple(sorted(places - {0, len(letters)}))
    for start, end in pairwise((0, *ends, len(letters))):
        word = letters[start:end - (letters[end - 1] in _WORD_ENDS)]
        places.update(start + at for at in (breaks if len(word) > across else beat_breaks)(word, spoken))
    return tuple(sorted(places - {0, len(letters)}))


def _in_wide_beats(letters: Letters, between: tuple[int, ...], across: int) -> tuple[int, ...]:
    """Return where a name may be broken whose beats are not all as short as a row: inside the others, too."""
    beats = pairwise((0, *between, len(letters)))
    return tuple(sorted({*between, *(at for start, end in beats if end - start > across
                                     for at in range(start + 1, end))}))


def _broken(letters: Letters, places: Sequence[int], count: int, room_mm: float, box_mm: float, *,
            whole_words: bool = False) -> tuple[Letters, ...]:
    """Return the most even way to break letters at ``count - 1`` of these places into rows that fit, () for none.

    With ``whole_words`` a row that goes on from one word into the next holds nothing but whole words.
    """
    if len(places) > _MAX_CUTS:
        places = _nearest(places, len(letters), count)
    ways = ((0, *cuts, len(letters)) for cuts in combinations(places, count - 1))
    rows_of = (_rows_at(letters, cuts) for cuts in ways if not (whole_words and _mixes_words(letters, cuts)))
    fitting = [rows for rows in rows_of if all(rows) and max(_width(row, box_mm) for row in rows) <= room_mm]
    return min(fitting, default=(), key=_unevenness)


def _unevenness(rows: tuple[Letters, ...]) -> tuple[int, ...]:
    return (sum(map(_inner_ends, rows)), max(map(len, rows)), sum(len(row) ** 2 for row in rows), *map(len, rows))


def _mixes_words(letters: Letters, cuts: Sequence[int]) -> bool:
    """Say whether a row goes from one word into another and has only a part of either."""
    ends = {0, len(letters), *(at + 1 for at, letter in enumerate(letters) if letter in _WORD_ENDS)}
    return any(not ends >= {a, b} and any(a < end < b for end in ends) for a, b in pairwise(cuts))


def _inner_ends(row: Letters) -> int:
    """Return how often a word ends inside a row and another begins."""
    return sum(letter in _WORD_ENDS for letter in row[:-1])


def _nearest(places: Sequence[int], size: int, count: int) -> list[int]:
    """Return only the places nearest to the ends of ``count`` even rows: trying all would take too long."""
    even = [size * at / count for at in range(1, count)]
    return sorted({min(places, key=lambda place: abs(place - want + shift)) for want in even for shift in (-1, 0, 1)})


def _rows_at(letters: Letters, cuts: Sequence[int]) -> tuple[Letters, ...]:
    return tuple(_trimmed(letters[a:b]) for a, b in pairwise(cuts))


def _width(row: Letters, box_mm: float) -> float:
    spaces = row.count(" ")
    return (len(row) - spaces + _WORD_GAP * spaces) * box_mm


def _trimmed(row: Letters) -> Letters:
    text = list(row)
    while text and text[0] == " ":
        del text[0]
    while text and text[-1] == " ":
        del text[-1]
    return tuple(text)


def boxes(tiles: TileRows) -> Iterator[tuple[str, float, float]]:
    """Yield each letter with the left and upper edge of its box, from the corner of the first."""
    for count, row in enumerate(tiles.rows):
        letters = (letter for letter in row if letter != " ")
        for letter, offset in zip(letters, tiles.offsets(row), strict=True):
            yield letter, offset, count * (tiles.box_mm + ROW_GAP_MM)
