"""Our fonts as other people's engines see them.

HarfBuzz (uharfbuzz) types names from Faker's lists (PyPI Faker, MIT: first and last names of many countries);
FreeType (in Pillow) draws the letters; OpenType Sanitizer (PyPI opentype-sanitizer) says whether a browser loads
them; the letters that languages need stand in tests/data, from Unicode CLDR.
"""

from __future__ import annotations

import importlib
import io
import json
import unicodedata
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import ots
import pytest
import uharfbuzz as hb
from fontTools.ttLib import TTFont
from PIL import Image, ImageDraw, ImageFont
from scipy.ndimage import binary_fill_holes, label

from namewright.geometry import boxes
from namewright.letters.alphabet import Alphabet, Letter, MissingLetters
from namewright.lines.forms import Form
from namewright.lines.ink import DARK
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.lines.setting import RuledLetters
from namewright.lines.spacing import NATURAL_GAP
from namewright.output.png import page_png
from namewright.pages.blocks import letters_at
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.truetype.characters import UNIT, ZONE, FontMark, Repertoire, repertoire_of

ROOT = Path(__file__).parents[2]
BUILT = sorted((ROOT / "fonts").glob("Namewright*.ttf"))
SOLID = ROOT / "fonts" / "NamewrightUpright-Solid.ttf"
LOCALES = ("cs_CZ", "da_DK", "de_DE", "en_IE", "en_US", "es_ES", "et_EE", "fi_FI", "fr_FR", "hr_HR", "hu_HU", "it_IT",
           "lt_LT", "lv_LV", "nl_NL", "no_NO", "pl_PL", "pt_BR", "ro_RO", "sk_SK", "sl_SI", "sv_SE", "tr_TR", "vi_VN",
           "yo_NG")
PIXELS = 120  # to the x-height


@pytest.fixture(scope="module")
def ruled(alphabet: Alphabet) -> RuledLetters:
    """Our setting on the ruling for which the fonts are made."""
    return RuledLetters(alphabet, preset(DEFAULT_RULING))


def name_sample(alphabet: Alphabet, count: int = 1000) -> list[str]:
    """Return a fixed sample, evenly spread through the sorted names that our letters can write."""
    found: set[str] = set()
    for locale in LOCALES:
        provider = importlib.import_module(f"faker.providers.person.{locale}").Provider
        for part in ("first_names", "last_names"):
            found.update(unicodedata.normalize("NFC", name) for name in getattr(provider, part, ()))
    names = sorted(name for name in found if name.strip() and not alphabet.missing(name))
    assert len(names) > 3 * count
    return [names[index * len(names) // count] for index in range(count)]


class Typist:
    """HarfBuzz with one font."""

    def __init__(self, path: Path) -> None:
        self.names = TTFont(path).getGlyphOrder()
        self.font = hb.Font(hb.Face(hb.Blob.from_file_path(str(path))))

    def type(self, text: str) -> tuple[int, list[tuple[str, int, int]]]:
        """Return the advance of a text, and for each glyph its name and where it stands."""
        buffer = hb.Buffer()
        buffer.add_str(text)
        buffer.guess_segment_properties()
        hb.shape(self.font, buffer)
        x, placed = 0, []
        for info, at in zip(buffer.glyph_infos, buffer.glyph_positions, strict=True):
            placed.append((self.names[info.codepoint], x + at.x_offset, at.y_offset))
            x += at.x_advance
        return x, placed


def bare_edges(letter: Letter) -> tuple[float, float]:
    x0, _, x1, _ = boxes.joined(stroke.bounds() for stroke in letter.base.strokes)
    return x0, x1


def our_advance(ruled: RuledLetters, name: str) -> float:
    """Return the width of a name in font units: from origin to origin as set, and half a white at either end."""
    line = ruled.line(name)
    first, last = (ruled.alphabet.letter(line.letters[index].letter.cluster) for index in (0, -1))
    run = (line.letters[-1].x - line.letters[0].x) / ruled.units_to_mm
    return UNIT * (run + bare_edges(last)[1] - bare_edges(first)[0] + NATURAL_GAP)


def test_names_are_as_wide_as_we_set_them(alphabet: Alphabet, ruled: RuledLetters) -> None:
    """HarfBuzz types a name as wide as we set it, to one font unit."""
    typist, wrong = Typist(SOLID), []
    for name in name_sample(alphabet):
        off = typist.type(name)[0] - our_advance(ruled, name)
        if abs(off) > 1.0:
            wrong.append((name, off))
    assert wrong == []


@pytest.mark.parametrize("path", BUILT, ids=lambda path: path.stem)
def test_composed_and_decomposed_text_are_typed_alike(alphabet: Alphabet, path: Path) -> None:
    """A name in Unicode form D is typed as the same name in form C: same glyphs in the same places."""
    typist = Typist(path)
    names = [name for name in name_sample(alphabet) if not name.isascii()]
    assert len(names) > 100
    assert [name for name in names if typist.type(unicodedata.normalize("NFD", name)) != typist.type(name)] == []


def stacks(alphabet: Alphabet) -> Iterator[str]:
    """Yield letters with marks for which Unicode has no single code point and our fonts no glyph."""
    known = {sort.cluster for sort in repertoire_of(alphabet).letters}
    letters = "abcdefghijklmnopqrstuvwxyzæøłABCDEFGHIJKLMNOPQRSTUVWXYZ"
    tails = [*alphabet.mark_of, *(one + two for one in alphabet.mark_of for two in alphabet.mark_of)]
    for tail in tails:
        for letter in letters:
            cluster = unicodedata.normalize("NFC", letter + tail)
            try:
                alphabet.letter(cluster)
            except MissingLetters:
                continue
            if cluster not in known:
                yield cluster


def our_marks(alphabet: Alphabet, sorts: Repertoire, cluster: str) -> list[tuple[FontMark, float, float]]:
    """Return the marks of a letter as we place them, in font units from its glyph's side."""
    letter = alphabet.letter(cluster)
    left = bare_edges(letter)[0] - NATURAL_GAP / 2
    by_glyph = {id(mark.glyph): mark for mark in sorts.marks}
    return [(by_glyph[id(mark.glyph)], UNIT * (mark.anchor[0] + mark.offset[0] - left),
             UNIT * (mark.anchor[1] + mark.offset[1])) for mark in letter.marks]


def test_marks_stand_where_our_anchors_put_them(alphabet: Alphabet) -> None:
    """HarfBuzz hangs every mark where we do, one over another and beside, to one font unit.

    Where Unicode composes a letter with the second of two marks on the same anchor (ạ of a, cedilla, dot below),
    an engine stacks them the other way round; those few are left out.
    """
    sorts = repertoire_of(alphabet)
    composed = {sort.name: sort.marks for sort in sorts.letters}
    typist, wrong, count, turned = Typist(SOLID), [], 0, 0
    for cluster in stacks(alphabet):
        (base, _, _), *typed = typist.type(cluster)[1]
        ours = our_marks(alphabet, sorts, cluster)
        for name in composed[base]:
            first = next(mark for mark in ours if mark[0].name == name)
            turned += any(mark[0].glyph.attach == first[0].glyph.attach for mark in ours[:ours.index(first)])
            ours.remove(first)
        wanted = sorted((mark.name, x, y) for mark, x, y in ours)  # on different sides the order is no matter
        typed.sort()
        count += 1
        if [name for name, _, _ in wanted] != [name for name, _, _ in typed] or any(
                max(abs(a[1] - b[1]), abs(a[2] - b[2])) > 1 for a, b in zip(wanted, typed, strict=True)):
            wrong.append((cluster, wanted, typed))
    assert count > 5000
    assert turned < 0.01 * count
    assert len(wrong) <= turned, wrong


def ink(image: Image.Image) -> np.ndarray:
    """Return how much of each pixel is covered, 0 to 1."""
    return 1 - np.array(image.convert("L")) / 255


def our_picture(setter: Typesetter, cluster: str, form: Form, origin: float) -> np.ndarray:
    """Return our own letter with its origin that many pixels from the left and 3.4 x-heights from the top."""
    line = setter.ruled(preset(DEFAULT_RULING)).line(cluster)
    x_height = line.ruling.x_height_mm
    x = origin / PIXELS * x_height - line.letters[0].x
    page = Page(4 * x_height, 5 * x_height, letters_at(setter, line, form, x, 3.4 * x_height))
    return ink(Image.open(io.BytesIO(page_png(page, PIXELS / x_height * 25.4))))


def their_picture(path: Path, cluster: str, shape: tuple[int, ...]) -> np.ndarray:
    """Return the letter as FreeType draws it from a built font, its side at 100 pixels."""
    image = Image.new("L", (shape[1], shape[0]), 255)
    font = ImageFont.truetype(str(path), 4 * PIXELS, layout_engine=ImageFont.Layout.BASIC)
    ImageDraw.Draw(image).text((100, 3.4 * PIXELS), cluster, font=font, fill=0, anchor="ls")
    return ink(image)


def overlaps(setter: Typesetter, alphabet: Alphabet, path: Path, form: Form, every: int = 1) -> dict[str, float]:
    """Return for each letter the ink that both pictures have, over the ink that either has.

    Dots are printed in dark grey and a font has no grey: ours count as black.
    """
    found = {}
    full = ink(Image.new("L", (1, 1), DARK))[0, 0] if form is Form.DOTTED else 1.0
    for sort in repertoire_of(alphabet).letters[::every]:
        if len(sort.cluster) == 1:
            ours = our_picture(setter, sort.cluster, form, 100 + sort.shift / ZONE * PIXELS) / full
            theirs = their_picture(path, sort.cluster, ours.shape)
            found[sort.cluster] = float(np.minimum(ours, theirs).sum() / np.maximum(ours, theirs).sum())
    return found


@pytest.mark.long
def test_solid_letters_are_our_solid_form(setter: Typesetter, alphabet: Alphabet) -> None:
    """Every letter as FreeType draws it covers what our own solid form covers (intersection over union 0.98)."""
    found = overlaps(setter, alphabet, SOLID, Form.SOLID)
    assert {char: share for char, share in found.items() if share < 0.98} == {}


@pytest.mark.long
@pytest.mark.parametrize(("style", "form", "least"), [("Dotted", Form.DOTTED, 0.97), ("Hollow", Form.HOLLOW, 0.97)])
def test_dotted_and_hollow_letters_are_our_own_forms(setter: Typesetter, alphabet: Alphabet, style: str, form: Form,
                                                     least: float) -> None:
    """The same for dots and outlines, where edges are most of the ink: every third letter covers 97 % in common."""
    path = ROOT / "fonts" / f"NamewrightUpright-{style}.ttf"
    found = overlaps(setter, alphabet, path, form, every=3)
    assert len(found) > 120
    assert {char: share for char, share in found.items() if share < least} == {}


def test_letters_on_lines_are_solid_letters_on_the_guide_lines(alphabet: Alphabet) -> None:
    """The font with lines adds three level lines to the solid letters, on base line, midline and top line."""
    path = ROOT / "fonts" / "NamewrightUpright-SolidOnLines.ttf"
    for sort in repertoire_of(alphabet).letters[::5]:
        shape = (5 * PIXELS, 4 * PIXELS)
        solid, ruled = their_picture(SOLID, sort.cluster, shape), their_picture(path, sort.cluster, shape)
        assert np.maximum(solid - ruled, 0).max() < 0.3, sort.cluster  # nothing of the letter is lost
        rows = np.flatnonzero((ruled - solid).max(axis=1) > 0.3)
        lines = [group.mean() + 0.5 for group in np.split(rows, np.flatnonzero(np.diff(rows) > 3) + 1)]
        assert lines == pytest.approx([3.4 * PIXELS - height * PIXELS for height in (2, 1, 0)], abs=1.0), sort.cluster


@pytest.mark.parametrize("path", BUILT, ids=lambda path: path.stem)
def test_fonts_may_be_embedded_and_have_both_spaces(path: Path) -> None:
    """A licence that lets a font be used lets it be embedded (OS/2 fsType 0); a fixed space is as wide as a space."""
    font = TTFont(path)
    assert font["OS/2"].fsType == 0
    spaces = [font["hmtx"][font.getBestCmap()[code]] for code in (0x20, 0xA0)]
    assert spaces[0] == spaces[1]


@pytest.mark.parametrize("path", BUILT, ids=lambda path: path.stem)
def test_sanitizer_passes_every_font(path: Path) -> None:
    """What OpenType Sanitizer refuses, browsers do not load."""
    assert ots.sanitize(str(path), capture_output=True).returncode == 0


@pytest.mark.parametrize("path", BUILT, ids=lambda path: path.stem)
def test_fonts_have_every_letter_that_languages_need(path: Path) -> None:
    """All letters of CLDR's main sets, small and capital, are in the font, composed or to be composed."""
    table = json.loads((ROOT / "tests" / "data" / "exemplar-latin.json").read_text(encoding="utf-8"))
    needed = {char for language in table["languages"].values() for letter in language["main"]
              for form in (letter, letter.upper()) for char in unicodedata.normalize("NFC", form)}
    assert needed - {chr(code) for code in TTFont(path).getBestCmap()} == set()


@pytest.mark.parametrize("path", BUILT, ids=lambda path: path.stem)
def test_signs_of_writing_are_there(path: Path) -> None:
    """Quotation marks, dashes and the signs of an address can be typed."""
    assert set("“”‘’„…–—@#&-.,!?") <= {chr(code) for code in TTFont(path).getBestCmap()}


@pytest.mark.parametrize(("char", "parts"), [("ď", 2), ("ľ", 2), ("ť", 2), ("ő", 3), ("ű", 3), ("ế", 3), ("ẵ", 3),
                                             ("ǘ", 4), ("i", 2), ("“", 2), ("”", 2), ("’", 1)])
def test_hollow_marks_stand_apart(char: str, parts: int) -> None:
    """Filled in, a hollow letter has as many parts as it has marks and itself: none runs into another."""
    font = ImageFont.truetype(str(ROOT / "fonts" / "NamewrightUpright-Hollow.ttf"), 4 * PIXELS)
    image = Image.new("L", (5 * PIXELS, 6 * PIXELS), 0)
    ImageDraw.Draw(image).text((PIXELS, PIXELS), char, font=font, fill=255)
    whole = binary_fill_holes(np.asarray(image) > 127)
    assert label(whole, structure=np.ones((3, 3)))[1] == parts
