"""Where the dots of a trace stand: a rhythm that the eye can follow, without a clot and without a hole.

Millimetres, y down. Between the anchors of a letter's runs (``runs``) the way is divided evenly. Where two runs go
close side by side (a bowl leaving its stem), the straighter one keeps its dots and the other begins where it is clear
of them. The pitch may flex a little by a letter, so that all fits.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise, product, repeat

from namewright.geometry import boxes
from namewright.geometry.points import Point
from namewright.letters.strokes import Stroke
from namewright.lines.runs import ON_RUN, Run, anchors, runs_of
from namewright.named_tuples import NamedTuple

MIN_DISTANCE = 0.7  # of the pitch: nearer dots look like a clot
BARE_FROM = 0.55  # of the pitch: a path farther than this from any dot is bare
_FLEXES = (1.0, 0.96, 1.04, 0.92, 1.08, 0.88, 1.12)  # of the pitch: what a letter may take, the nearest first
_GOOD = 0.12  # a penalty that needs no better
_EVEN, _EVEN_SHORT = 0.15, 0.3  # by how much a step may differ from the pitch, in long pieces and in short ones
_SHORT = 2.6  # pitches
_UNEVEN = 0.2  # the penalty of a piece that is not divided evenly
_EVEN_ENOUGH = 0.01  # a way to divide a piece that needs no better: all of it followed, its steps even
_ONE_PLACE = 0.45  # of the pitch: a run that ends so near behind a dot needs none at its end
_THERE = 0.1  # of the pitch: a dot no farther from a place stands on it
_SAMPLE = 0.1  # of the pitch: how closely a piece is looked at


def dots(strokes: Sequence[Stroke], pitch_mm: float, beside: Sequence[Point] = ()) -> tuple[Point, ...]:
    """Return the dots of one letter's strokes, in mm, each at least 0.7 of the pitch from every other.

    The pitch is a wish: a letter takes up to an eighth more or less where its pieces then divide better. ``beside`` are
    dots that stand there already, those of the letter whose mark the strokes are: they serve, and are kept clear of.
    """
    lone = [*beside, *(stroke.start for stroke in strokes if stroke.is_dot)]
    best: tuple[float, list[Point]] = (math.inf, lone)
    for order, needed in _plans(runs_of(strokes), pitch_mm):
        for flex in _FLEXES:
            placing = _Placing(order, flex * pitch_mm, list(lone))
            if placing.fill(needed, best[0] - 0.02):
                best = (placing.penalty, placing.placed)
            if best[0] <= _GOOD:
                return tuple(best[1][len(beside):])
    return tuple(best[1][len(beside):])


def _plans(runs: Sequence[Run], pitch: float) -> Iterator[tuple[Sequence[Run], Sequence[Point]]]:
    """Yield orders in which runs are dotted, with the anchors, the usual one first.

    Usually stems are dotted evenly past the bowls that leave them close by. Where that leaves a hole, a dot is put
    where they part, or the bowls come first, or the tip of a short serif has no dot for the sake of the stem.
    """
    needed, close = anchors(runs, pitch)
    yield runs, needed
    if close:
        yield runs, [*needed, *close]
    if len(runs) > 1:
        yield runs[::-1], [*needed, *close]
    yield runs, [*reversed(needed), *close]


# --- the placing ------------------------------------------------------------------------------------------


class _Placing:
    """The dots of one letter at one pitch, as they are being placed, and how far from ideal they are."""

    def __init__(self, runs: Sequence[Run], pitch: float, placed: list[Point]) -> None:
        self.runs, self.pitch, self.placed, self.penalty = runs, pitch, placed, 0.0

    def fill(self, needed: Iterable[Point], most: float) -> bool:
        """Place the anchors that keep off those before them, then the dots between them, run by run.

        Return whether the penalty stays below ``most``; once it does not, nothing more is placed.
        """
        for anchor in needed:
            if self._is_free(anchor, self.placed):
                self.placed.append(anchor)
        for run in self.runs:
            for piece in self._pieces(run):
                penalty, new = self._best(piece)
                self.placed += new
                self.penalty += penalty
                if self.penalty >= most:
                    return False
        return True

    def _pieces(self, run: Run) -> list[_Piece]:
        """Cut a run where it passes dots that have their place; its ends are open where none stands."""
        passed = sorted(way for dot in self.placed for way in run.near(dot, ON_RUN * self.pitch))
        ways = [way for at, way in enumerate(passed) if not at or way - passed[at - 1] > 0.3 * self.pitch]
        places = [(way, True) for way in ways]
        if not ways or ways[0] > _ONE_PLACE * self.pitch:
            places.insert(0, (0.0, False))
        if not ways or run.length - ways[-1] > _ONE_PLACE * self.pitch:
            places.append((run.length, False))
        return [_Piece(run, a, b, a_marked, b_marked) for (a, a_marked), (b, b_marked) in pairwise(places)]

    def _best(self, piece: _Piece) -> tuple[float, list[Point]]:
        """Return the best way to place dots on a piece, with its penalty; the first that is good needs no better."""
        return self._plainly(piece) or self._searched(piece)

    def _plainly(self, piece: _Piece) -> tuple[float, list[Point]] | None:
        """Return the even division between two dots, where it is as good as any: that holds for most pieces.

        With steps of at most twice the distance from which a path is bare, none of it is.
        """
        if not (piece.start_marked and piece.end_marked):
            return None
        length = piece.end - piece.start
        count = max(1, round(length / self.pitch))
        unevenness = self._unevenness(length, count)
        if unevenness > _EVEN_ENOUGH or length / count > 2 * BARE_FROM * self.pitch:
            return None
        new = piece.run.along(piece.start + length * at / count for at in range(1, count))
        ends = piece.run.at(piece.start), piece.run.at(piece.end)
        if not all(any(math.dist(end, dot) < _THERE * self.pitch for dot in self.placed) for end in ends):
            return None
        if not all(self._is_free(point, self.placed) for point in new) or not self._keep_off(new):
            return None
        return unevenness, new

    def _keep_off(self, new: Sequence[Point]) -> bool:
        return all(self._is_free(point, new[at + 1:]) for at, point in enumerate(new))

    def _searched(self, piece: _Piece) -> tuple[float, list[Point]]:
        """Return the best of all ways to divide a piece, what stays bare of it weighed against how uneven it is."""
        samples = piece.samples(_SAMPLE * self.pitch)
        points = piece.run.along(samples)
        near = boxes.within(self.placed, boxes.grown(boxes.around(points), self.pitch))
        far = BARE_FROM * self.pitch
        bare = [(way, point) for way, point in zip(samples, points, strict=True)
                if min(map(math.dist, repeat(point), near), default=math.inf) > far]
        best = (self._bareness(bare, (), ()), list[Point]())
        for unevenness, ways in self._ways(piece, samples, points, near):
            new = piece.run.along(ways)
            if all(self._is_free(point, near) for point in new) and self._keep_off(new):
                best = min(best, (unevenness + self._bareness(bare, ways, new), new), key=lambda way: way[0])
                if best[0] <= _EVEN_ENOUGH:
                    break
        return best

    def _ways(self, piece: _Piece, samples: Sequence[float], points: Sequence[Point], near: Sequence[Point],
              ) -> Iterator[tuple[float, list[float]]]:
        """Yield ways to divide a piece, each with how uneven it is: from its own ends, then from where dots are clear.

        An end has a dot already, or none can stand there: then the division begins at the first place that is clear.
        """
        starts = [(piece.start, False)] if piece.start_marked else []
        ends = [(piece.end, False)] if piece.end_marked else []
        if starts and ends:
            yield from self._divisions(*starts, *ends)
        clear = [at for at, point in enumerate(points) if self._is_free(point, near)]
        if not clear:
            return
        before, behind = samples[max(clear[0] - 1, 0)], samples[min(clear[-1] + 1, len(samples) - 1)]
        starts.append((self._border(piece, before, samples[clear[0]], near), True))
        ends.append((self._border(piece, behind, samples[clear[-1]], near), True))
        for start, end in product(starts, ends):
            yield from self._divisions(start, end)
        yield _UNEVEN, self._stepped(piece.start, [samples[at] for at in clear])
        yield 0.0, [samples[clear[len(clear) // 2]]]

    def _stepped(self, start: float, clear: Sequence[float]) -> list[float]:
        """Return places a pitch apart, or as near to that as the clear places let them be."""
        found: list[float] = []
        last = start
        while ahead := [way for way in clear if way - last >= MIN_DISTANCE * self.pitch]:
            last = min(ahead, key=lambda way: abs(way - last - self.pitch))
            found.append(last)
        return found

    def _border(self, piece: _Piece, taken: float, clear: float, near: Sequence[Point]) -> float:
        """Return where a piece becomes clear of the dots near it, between a place that is not and one that is."""
        for _ in range(4):
            middle = (taken + clear) / 2
            taken, clear = (taken, middle) if self._is_free(piece.run.at(middle), near) else (middle, clear)
        return clear

    def _divisions(self, start: tuple[float, bool], end: tuple[float, bool]) -> Iterator[tuple[float, list[float]]]:
        """Yield the even divisions between two places with about a pitch to a step; new ends are dots themselves."""
        (a, new_a), (b, new_b) = start, end
        down = int((b - a) / self.pitch)
        for count in (down, down + 1):
            if count > 0:
                yield (self._unevenness(b - a, count),
                       [a + (b - a) * at / count for at in range(0 if new_a else 1, count + (1 if new_b else 0))])

    def _is_free(self, point: Point, among: Sequence[Point]) -> bool:
        return not among or min(map(math.dist, repeat(point), among)) >= MIN_DISTANCE * self.pitch - 1e-9

    def _unevenness(self, length: float, count: int) -> float:
        """Return by how much steps differ from the pitch, little within what looks even and much beyond it."""
        off = abs(length / count / self.pitch - 1)
        allowed = _EVEN if length > _SHORT * self.pitch else _EVEN_SHORT
        return 0.03 * off + 3 * max(0.0, off - allowed)

    def _bareness(self, bare: Sequence[tuple[float, Point]], ways: Sequence[float], new: Sequence[Point]) -> float:
        """Return the penalty for what stays bare of a piece with dots at ``ways``, growing faster than its length.

        A place has a dot near it if one is near along the run: most need not be measured across.
        """
        far, left = BARE_FROM * self.pitch, 0
        for way, point in bare:
            at = bisect_left(ways, way - far)
            if not (at < len(ways) and ways[at] <= way + far):
                left += min(map(math.dist, repeat(point), new), default=math.inf) > far
        return 0.02 * left + _SAMPLE * left * max(0, left - 1)  # one place alone is less than a fifth of a pitch


class _Piece(NamedTuple):
    """A stretch of a run between two places, and whether a dot stands there already."""

    run: Run
    start: float
    end: float
    start_marked: bool
    end_marked: bool

    def samples(self, step: float) -> list[float]:
        """Return places along the piece, both ends among them."""
        count = max(1, math.ceil((self.end - self.start) / step))
        return [self.start + (self.end - self.start) * at / count for at in range(count + 1)]
