"""Our own letters as Type 3 fonts (ISO 32000-1, 9.6.5): text that looks as it is drawn and can be searched and read.

A letter's place among the fonts follows from its characters alone: one font for each block of 256 code points, and
for letters with marks that have no code point of their own, one for each such set of marks. So pages drawn by different
processes agree without asking each other. A second set of fonts has the same letters with nothing in them: text for
readers, laid over names that are drawn as paths. (An invisible rendering mode is not enough: by ISO 32000-1, 9.3.6,
it has no effect on Type 3.)

Glyph space has 1,000 units to the x-height, y up, and 2,000 to the font's size, as it is with most fonts: by the size
readers judge what is a gap between words.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from itertools import groupby

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.letters.alphabet import upright
from namewright.lines.forms import TEXT_PEN, Inker, pens_for
from namewright.lines.ink import Ink, Spelled
from namewright.lines.ruling import print_ruling
from namewright.lines.setting import RuledLetters
from namewright.lines.spacing import Spacers
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.output.pdf.objects import ObjectFile, deflated
from namewright.output.pdf.paths import UNIT, operators
from namewright.store import keeps_names

X_HEIGHT = 1000  # glyph units
_SIZE = 2  # x-heights
_X_HEIGHT_MM = X_HEIGHT / UNIT  # path data in hundredths of a millimetre are then glyph units
_PENCIL_MM = 0.8
_SPACE = " "
_AFTER = "n.’"
_SPACE_WIDTH = 560
_NOTHING = b"1000 0 d0 -99 0 1 1 re W n 0 0 1000 700 re f"  # a box far from all that may be seen of it: PDFium reads
# no letter that has no box
_M_WIDTH = 0.6  # of the size: by the width of what it finds under the name m, poppler judges how large a Type 3 font is
_REACH = 200  # half a pen, and a little more


class Glyph(NamedTuple):
    """A letter: how far the next one stands, its strokes, and the box of their centrelines."""

    advance: int
    strokes: bytes
    box: tuple[int, int, int, int]


class Place(NamedTuple):
    """Where a letter is: the name of its font and its code there."""

    font: str
    code: int


@lru_cache(maxsize=4000)
def place(cluster: str, *, hidden: bool = False) -> Place:
    """Return the place of a letter, in the fonts that are seen or in those with nothing in them."""
    base, *marks = list(unicodedata.normalize("NFC", cluster))
    block = f"{'H' if hidden else 'F'}{ord(base) >> 8:x}"
    return Place(".".join([block, *(f"{ord(mark):x}" for mark in marks)]), ord(base) & 255)


@cache
def _case() -> tuple[RuledLetters, Inker]:
    ruling = print_ruling(_X_HEIGHT_MM)
    letters = RuledLetters(upright(), ruling, 0.0, _PENCIL_MM, spacers=Spacers(usual=True))
    return letters, Inker(ruling, pens_for(ruling))


@lru_cache(maxsize=4000)
def glyph(cluster: str) -> Glyph:
    """Return a letter of the fonts.

    Its advance is the widest it has before n, a full stop and an apostrophe, so that no reader takes a gap for a space;
    what another pair needs, its text says.
    """
    if cluster == _SPACE:
        return Glyph(_SPACE_WIDTH, b"", (0, 0, 0, 0))
    case, inker = _case()
    fragment = inker.letter(case.letter(cluster))
    x0, y0, x1, y1 = (round(mm * UNIT) for mm in fragment.bounds)
    advance = max(case.step(cluster, after) for after in _AFTER)
    return Glyph(_SIZE * round(advance * UNIT / _SIZE), operators(fragment), (x0, -y1, x1, -y0))


# --- text in a content stream ----------------------------------------------------------------------------


@keeps_names(1000)  # captions recur, and a name stands on all rows of its page
def spelled_clusters(words: str) -> tuple[str, ...]:
    """Return the letters of a text, and one space between its words."""
    return clusters(_SPACE.join(words.split()))


def shown(ink: Ink, spelled: Spelled) -> str:
    """Return the operators that show a text set by our own spacing, from its first letter's origin on (9.4.3)."""
    xs, scale = ink.shape.xs, X_HEIGHT / spelled.x_height_mm / _SIZE
    return _shown(spelled.words, spelled.x_height_mm, tuple([round((x - xs[0]) * scale) for x in xs]))


@keeps_names(1000)  # captions recur; every child's own name is new
def _shown(words: str, x_height_mm: float, places: tuple[int, ...]) -> str:
    """Return the operators for letters at ``places``, in units of the font's size from the first on."""
    size = round(_SIZE * x_height_mm * UNIT, 2)
    where, pen, font = iter(places), 0, ""
    drawn: list[str] = []
    for cluster in spelled_clusters(words):
        advance, letter_font, code = _letter(cluster)
        at = pen if cluster == _SPACE else _SIZE * next(where)
        if letter_font != font:
            drawn.append(f"{')]TJ ' if font else ''}/{letter_font} {size:g} Tf[(")
            font = letter_font
        drawn.append(code if at == pen else f"){(pen - at) // _SIZE}({code}")
        pen = at + advance
    return f"{''.join(drawn)})]TJ".replace("[()", "[")


@lru_cache(maxsize=4000)
def _letter(cluster: str) -> tuple[int, str, str]:
    """Return a letter's advance, its font and its code as it stands in a string."""
    where = place(cluster)
    return glyph(cluster).advance, where.font, _escaped(where.code)


def hidden(words: str, width: float, height: float) -> str:
    """Return the operators that lay a text over a drawn name: nothing to see, ``width`` by ``height`` units."""
    drawn = [f"/{font} {height:g} Tf({text})Tj" for font, text in _hidden(words)]
    share = 100 * width / (height * max(1, len(spelled_clusters(words))))
    return " ".join([f"{share:.2f} Tz", *drawn, "100 Tz"])


@keeps_names(1000)
def _hidden(words: str) -> tuple[tuple[str, str], ...]:
    """Return the letters of a text that shows nothing, as strings in one font each."""
    places = [place(cluster, hidden=True) for cluster in spelled_clusters(words)]
    return tuple((font, "".join(_escaped(one.code) for one in group))
                 for font, group in groupby(places, key=lambda one: one.font))


def _escaped(code: int) -> str:
    """Return a byte of a string (7.3.4.2); the stream is written as Latin-1, a byte a character."""
    if code in (10, 13):
        return f"\\{code:03o}"
    return f"\\{chr(code)}" if chr(code) in "()\\" else chr(code)


# --- the fonts at the end of the file --------------------------------------------------------------------


class Fonts:
    """The letters that a document has used, and their fonts once all are known."""

    def __init__(self) -> None:
        self.seen: set[str] = set()
        self.laid_over: set[str] = set()

    def use(self, seen: Iterable[str], laid_over: Iterable[str]) -> None:
        """Take note of letters."""
        self.seen.update(seen)
        self.laid_over.update(laid_over)

    def write(self, file: ObjectFile, number: int) -> None:
        """Write the fonts, and under ``number`` the dictionary of their names."""
        fonts: dict[str, dict[int, str]] = {}
        for letters, is_hidden in ((self.seen, False), (self.laid_over, True)):
            for cluster in letters:
                at = place(cluster, hidden=is_hidden)
                fonts.setdefault(at.font, {})[at.code] = cluster
        reach = [boxes.grown(glyph(cluster).box, _REACH) for cluster in sorted(self.seen)]
        box = boxes.joined(reach) if reach else (0, 0, 0, 0)
        entries = [b"/%s %d 0 R" % (name.encode("ascii"), _font(file, name, dict(sorted(letters.items())), box))
                   for name, letters in sorted(fonts.items())]
        file.put(b"<<%s>>" % b"".join(entries), number)


def _font(file: ObjectFile, name: str, letters: Mapping[int, str], box: Box) -> int:
    """Write one font and return its number. All that show have one ``box``: poppler takes a line's height from it."""
    nothing = file.put_stream(b"", deflated(_NOTHING))
    if name.startswith("H"):
        unit, box = b".001", (0, 0, 1000, 1000)
        programs, widths = dict.fromkeys(letters, nothing), dict.fromkeys(letters, 1000)
    else:
        glyphs = {code: glyph(cluster) for code, cluster in letters.items()}
        unit = b".0005"
        programs = {code: file.put_stream(b"", deflated(_program(one))) for code, one in glyphs.items()}
        widths = {code: one.advance for code, one in glyphs.items()}
    names = {code: b"/g%d" % code for code in letters}
    spare = min(code for code in range(256) if code not in letters)
    names[spare], programs[spare], widths[spare] = b"/m", nothing, round(_M_WIDTH / float(unit))
    first, last = min(names), max(names)
    unicode = file.put_stream(b"", deflated(_to_unicode(letters)))
    return file.put(
        b"<</Type/Font/Subtype/Type3/FontMatrix[%s 0 0 %s 0 0]/FontBBox[%d %d %d %d]" % (unit, unit, *box)
        + b"/Resources<<>>/CharProcs<<%s>>" % b"".join(names[code] + b" %d 0 R" % programs[code] for code in names)
        + b"/Encoding<</Type/Encoding/Differences[%s]>>" % b"".join(b"%d%s " % entry for entry in sorted(names.items()))
        + b"/FirstChar %d/LastChar %d/Widths[%s]" % (first, last, b" ".join(
            b"%d" % widths.get(code, 0) for code in range(first, last + 1)))
        + b"/ToUnicode %d 0 R>>" % unicode)


def _program(one: Glyph) -> bytes:
    if not one.strokes:
        return b"%d 0 d0" % one.advance
    return b"%d 0 d0 %d w 1 J 1 j " % (one.advance, round(TEXT_PEN * X_HEIGHT)) + one.strokes + b" S"


def _to_unicode(letters: Mapping[int, str]) -> bytes:
    """Return the map from codes to characters (9.10.3), composed where they can be."""
    pairs = [b"<%02x><%s>" % (code, unicodedata.normalize("NFC", cluster).encode("utf-16-be").hex().encode("ascii"))
             for code, cluster in letters.items()]
    blocks = [pairs[at:at + 100] for at in range(0, len(pairs), 100)]  # no more stand in one block
    return (b"/CIDInit/ProcSet findresource begin 12 dict begin begincmap/CMapType 2 def/CMapName/N def\n"
            b"1 begincodespacerange<00><ff>endcodespacerange\n"
            + b"\n".join(b"%d beginbfchar\n%s\nendbfchar" % (len(block), b"\n".join(block)) for block in blocks)
            + b"\nendcmap CMapName currentdict/CMap defineresource pop end end")
