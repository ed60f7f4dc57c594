"""An alphabet: glyphs made of pen strokes, and the joining of a base letter with its marks.

Letter units: 100 to a zone, y up, baseline 0, midline 100, top line 200, descender line −100.
Out of scope: rulings, millimetres and spacing (``lines``).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

import unicodedata2

from namewright import toml
from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.letters.strokes import Stroke, parse_stroke
from namewright.message import Message, Problem, message
from namewright.named_tuples import NamedTuple
from namewright.store import Made

_SOFT_DOTTED = {"i": "ı", "j": "ȷ"}  # lose the dot under a mark above (Unicode property Soft_Dotted)
_SPACES = frozenset("  ")
_OWN_MARKS = {"circumflex", "breve", "horn"}  # of â ê ô ă ơ ư, over which Vietnamese sets a tone
_NONE: Mapping[Any, Any] = MappingProxyType({})
_MAX_STACKED = 2  # marks on one side of a letter: Vietnamese has as many, and a tile has no room for more
_MAX_NAMED = 4  # parts of a letter with marks that a reason names one by one


class MissingLetters(Problem):
    """A text has what cannot be drawn; ``characters`` lists it in order, once each.

    One of them is a character, or a letter with marks that it has no place for.

    Another message may say why; that our alphabet has none of them is said without one.
    """

    def __init__(self, characters: Iterable[str], told: Message | None = None) -> None:
        self.characters = tuple(dict.fromkeys(characters))
        super().__init__(told or message("letters.missing", characters=tuple(map(described, self.characters))))


def described(letter: str) -> Message:
    """Return a character as it is told: itself where it can be seen, its Unicode name and its code point.

    A letter with marks is told part by part, and one with a great many marks by their number.
    """
    parts = letter if len(letter) == 1 else unicodedata2.normalize("NFD", letter)
    if len(parts) > _MAX_NAMED:
        return message("letters.marked", letter=described(parts[0]), count=len(parts) - 1)
    names = " + ".join(filter(None, (unicodedata2.name(part, "").lower() for part in parts)))
    point = ", ".join(filter(None, (names, " ".join(f"U+{ord(part):04X}" for part in parts))))
    if unicodedata2.category(parts[0])[0] in "LNPS":
        return message("letters.character", char=letter, point=point)
    return message("letters.unseen", point=point)


class Glyph(NamedTuple):
    """A base letter, or a mark drawn about its own attachment point.

    ``one_piece`` letters (capitals, figures) stretch in one piece between baseline and top line; the others are
    mapped zone by zone. ``short`` letters rise only part of the ascender zone where a ruling grades heights.
    ``bar`` is the height of a capital's bar or fork, which lies exactly on a midline near it. ``attach`` names the
    anchor of the base to which a mark is joined.
    """

    strokes: tuple[Stroke, ...]
    anchors: Mapping[str, Point] = _NONE
    one_piece: bool = False
    short: bool = False
    attach: str = "top"
    bar: float | None = None


class PlacedMark(NamedTuple):
    """A mark on a letter: its glyph, the anchor of the base it hangs on, and its offset from there in units."""

    glyph: Glyph
    anchor: Point
    offset: Point

    def origin(self, place: Callable[[Point], Point] = lambda anchor: anchor, scale: float = 1.0) -> Point:
        """Return where the mark's own origin lies: at its anchor, put in its ``place``, and the offset from there.

        Marks keep their shape where zones are unequal, so the offset is only scaled.
        """
        x, y = place(self.anchor)
        return (x + self.offset[0] * scale, y + self.offset[1] * scale)

    def strokes(self, place: Callable[[Point], Point] = lambda anchor: anchor, scale: float = 1.0,
                ) -> tuple[Stroke, ...]:
        """Return the mark's strokes where they stand on the letter."""
        x0, y0 = self.origin(place, scale)
        return tuple(stroke.map(lambda point: (x0 + point[0] * scale, y0 + point[1] * scale))
                     for stroke in self.glyph.strokes)


class Letter(NamedTuple):
    """One grapheme cluster ready to be set: a base glyph and its marks, in writing order."""

    cluster: str
    base: Glyph
    marks: tuple[PlacedMark, ...] = ()

    def strokes(self) -> tuple[Stroke, ...]:
        """Return the strokes of base and marks in letter units, as on a ruling of equal zones, in writing order."""
        return (*self.base.strokes, *(stroke for mark in self.marks for stroke in mark.strokes()))

    def bounds(self) -> Box:
        """Return the box of the centrelines in letter units, as on a ruling of equal zones."""
        return boxes.joined(stroke.bounds() for stroke in self.strokes())

    def next_mark(self, attach: str) -> Point | None:
        """Return the offset from the base's anchor at which a further mark would stand, beyond those there are.

        None where the base has no such anchor.
        """
        if attach not in self.base.anchors:
            return None
        steps = [mark.glyph.anchors.get(attach, (0.0, 0.0)) for mark in self.marks if mark.glyph.attach == attach]
        return (sum(x for x, _ in steps), sum(y for _, y in steps))

    def with_mark(self, glyph: Glyph) -> Letter | None:
        """Return the letter with one more mark; None where its base has no place for it."""
        offset = self.next_mark(glyph.attach)
        if offset is None:
            return None
        placed = PlacedMark(glyph, self.base.anchors[glyph.attach], offset)
        return self._replace(marks=(*self.marks, placed))


class Alphabet(NamedTuple):
    """Glyphs by character, marks by name, and the rules by which marks change with their base.

    ``mark_forms`` names the form that a mark takes on a letter, ``stacked_forms`` the one over another mark.
    ``forms`` names the forms of each letter that has a choice, the usual one first; ``variants`` holds the
    others by (letter, form). ``exit_strokes`` holds letters that leave the baseline with a curve.
    """

    name: str
    space: float
    glyphs: Mapping[str, Glyph]
    marks: Mapping[str, Glyph]
    mark_of: Mapping[str, str]
    mark_forms: Mapping[tuple[str, str], str]
    stacked_forms: Mapping[tuple[str, str], str] = _NONE
    forms: Mapping[str, tuple[str, ...]] = _NONE
    variants: Mapping[tuple[str, str], Glyph] = _NONE
    exit_strokes: Mapping[str, Glyph] = _NONE

    def has(self, char: str) -> bool:
        """Return whether one character (NFD) is drawn as it is, a space counting as drawn."""
        return char in self.glyphs or char in self.mark_of or char in _SPACES

    def missing(self, text: str) -> tuple[str, ...]:
        """Return what of ``text`` cannot be drawn, once each: characters, then letters that cannot carry their marks.

        Where nothing is missing, every letter of the text can be made.
        """
        whole = unicodedata2.normalize("NFC", text)
        unknown = [char for char in whole
                   if not self.has(char) and not all(self.has(part) for part in unicodedata2.normalize("NFD", char))]
        bare = () if whole.isascii() else self._bare(unicodedata2.normalize("NFD", whole))
        return tuple(dict.fromkeys((*unknown, *bare)))

    def _bare(self, decomposed: str) -> Iterator[str]:
        """Yield each letter whose marks have no place on it, and each mark that stands on no letter."""
        pieces: list[str] = []
        for char in decomposed:
            if char in self.mark_of and pieces:
                pieces[-1] += char
            else:
                pieces.append(char)
        for piece in pieces:
            if (len(piece) > 1 or piece in self.mark_of) and self.has(piece[0]) and not self._carries(piece):
                yield unicodedata2.normalize("NFC", piece.lstrip("".join(_SPACES)))

    def _carries(self, piece: str) -> bool:
        base, marks = piece[0], piece[1:]
        if base not in self.glyphs or unicodedata2.category(base)[0] != "L":  # a name may be cut after a sign
            return False
        anchors = self.glyphs[_SOFT_DOTTED.get(base, base)].anchors
        hung = [self.marks[self._mark_name(base, mark)].attach for mark in marks]
        return all(side in anchors and hung.count(side) <= _MAX_STACKED for side in hung)

    def letter(self, cluster: str) -> Letter:
        """Return the letter for one grapheme cluster. Raises MissingLetters for one we cannot draw."""
        decomposed = unicodedata2.normalize("NFD", cluster)
        lost = self.missing(cluster)
        if lost or decomposed[0] in self.mark_of or decomposed in _SPACES:
            raise MissingLetters(lost or decomposed)
        base, marks = decomposed[0], decomposed[1:]
        return self._compose(cluster, base, [self._mark_name(base, mark) for mark in marks])

    def _mark_name(self, base: str, mark: str) -> str:
        name = self.mark_of[mark]
        return self.mark_forms.get((name, base), name)

    def _compose(self, cluster: str, base: str, names: list[str]) -> Letter:
        if base in _SOFT_DOTTED:
            if not any(self.marks[name].attach == "top" for name in names):
                names = ["dot", *names]
            base = _SOFT_DOTTED[base]
        letter = Letter(cluster, self.glyphs[base])
        under: dict[str, str] = {}
        for name in _own_before_tones(names):
            side = self.marks[name].attach
            marked = letter.with_mark(self.marks[self.stacked_forms.get((name, under.get(side, "")), name)])
            if marked is None:
                raise MissingLetters([unicodedata2.normalize("NFC", cluster)])
            letter, under[side] = marked, name
        return letter


def _own_before_tones(names: list[str]) -> list[str]:
    """Return marks in writing order: the hat, breve or horn belongs to the letter of ậ, the dot below is its tone.

    Unicode's canonical order is that of the marks' places: the dot below would come first.
    """
    return sorted(names, key=lambda name: name == "dot_below") if _OWN_MARKS & set(names) else names


def parse_alphabet(source: str) -> Alphabet:
    """Read an alphabet from TOML text (see ``fonts/README.md`` for the notation).

    Strokes are read letter by letter, when asked for: a class has a fifth of them. A stroke that does not parse
    is a ValueError then, which names the glyph.
    """
    table = toml.loads(source)
    letters, marks = table["glyphs"], table["marks"]
    exits, forms = table.get("exit_strokes", {}), table.get("variants", {})
    glyphs: Made[str, Glyph] = Made((*letters, *_SOFT_DOTTED), lambda char: (
        glyphs[_SOFT_DOTTED[char]] if char in _SOFT_DOTTED else _letter_glyph(char, letters[char])))
    others = ((char, form) for char, of_letter in forms.items() for form in of_letter if form != "usual")
    return Alphabet(
        name=table["name"],
        space=float(table["space"]),
        glyphs=glyphs,
        marks=Made(marks, lambda name: _glyph(name, marks[name])),
        mark_of={entry["char"]: name for name, entry in marks.items() if "char" in entry},
        mark_forms={(form["mark"], base): form["use"] for form in table["mark_forms"]
                    for base in form.get("bases", "")},
        stacked_forms={(form["mark"], form["after"]): form["use"] for form in table["mark_forms"] if "after" in form},
        forms={char: (of_letter["usual"], *(form for form in of_letter if form != "usual"))
               for char, of_letter in forms.items()},
        variants=Made(others, lambda which: _letter_glyph(which[0], forms[which[0]][which[1]])),
        exit_strokes=Made(exits, lambda char: _letter_glyph(char, exits[char])),
    )


def _letter_glyph(char: str, entry: Mapping[str, Any]) -> Glyph:
    glyph = _glyph(char, entry)
    return glyph._replace(anchors=_standing_anchors(glyph) | dict(glyph.anchors))


def _glyph(name: str, entry: Mapping[str, Any]) -> Glyph:
    try:
        strokes = tuple(parse_stroke(data) for data in entry["strokes"])
    except ValueError as error:
        raise ValueError(f"glyph “{name}”: {error}") from error
    anchors = {key: (float(x), float(y)) for key, (x, y) in entry.get("anchors", {}).items()}
    return Glyph(strokes, anchors, bool(entry.get("one_piece")), bool(entry.get("short")), entry.get("attach", "top"),
                 entry.get("bar"))


def _standing_anchors(glyph: Glyph) -> dict[str, Point]:
    """Return the anchors a letter has where its entry gives none: over and under its middle."""
    x0, y0, x1, y1 = boxes.joined(stroke.bounds() for stroke in glyph.strokes)
    middle = (x0 + x1) / 2
    return {"top": (middle, 200.0 if y1 > 150 else 100.0), "bottom": (middle, -100.0 if y0 < -50 else 0.0)}


@cache
def upright() -> Alphabet:
    """Return our own upright manuscript alphabet, ``fonts/upright.toml``."""
    return parse_alphabet(font_bytes("upright.toml").decode("utf-8"))


def font_bytes(name: str) -> bytes:
    """Read a file of fonts from the installed package, or from ``fonts/`` of a checkout."""
    package, checkout = Path(__file__).parents[1], Path(__file__).parents[3]
    packaged = package / "fonts" / name
    return (packaged if packaged.is_file() else checkout / "fonts" / name).read_bytes()
