"""A school's font against other people's libraries, with a general-purpose font.

The font is DejaVu Sans 2.37 (dejavu-fonts.github.io; Debian's fonts-dejavu-core). FreeType (through Pillow) draws the
letters, scikit-image thins them and counts their parts and counters, fontTools reads advances and kerning, PDFium draws
our PDF. Our own centreline is picked from a Voronoi diagram of the outline, so the thinning is another algorithm on
other data: pixels (Zhang & Suen, Commun. ACM 27, 1984).
"""

from __future__ import annotations

import io
import itertools
import math
import string
import unicodedata
from pathlib import Path

import numpy as np
import pytest
from fontTools.ttLib import TTFont
from PIL import Image, ImageDraw, ImageFont
from scipy.ndimage import distance_transform_edt
from skimage.measure import euler_number, label
from skimage.morphology import remove_small_holes, skeletonize

from longer import rest_long
from namewright.geometry.points import Point
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import flatten
from namewright.lines.dots import MIN_DISTANCE, dots
from namewright.lines.forms import Form, pens_for
from namewright.lines.ruling import preset
from namewright.output.svg import page_svg
from namewright.pages import blocks
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.schoolfont.contours import area_of
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering, shaped
from printed import MM_PER_POINT, pdf_bytes, scan

FONTS = Path("/usr/share/fonts/truetype/dejavu")
FILE = FONTS / "DejaVuSans.ttf"
if not FILE.exists():
    pytest.skip("DejaVu Sans is not installed (Debian: fonts-dejavu-core)", allow_module_level=True)

LETTERS = string.ascii_letters
MOVES = "aegikmqsxyBGMQRW"  # among them each way in which strokes meet, turn and end
PIXELS = 200  # to the x-height
ORIGIN = (150, 450)
SIDE = 620
THIN = 3  # pixels to both sides of a drawn centreline: it closes what rounding to pixels opens
COUNTERS = dict.fromkeys("ADOPRQabdegopq", 1) | {"B": 2}  # seen in this font: its g has one storey


@pytest.fixture(scope="module")
def lettering() -> Lettering:
    return Lettering(load_font(FILE))


@pytest.fixture(scope="module")
def freetype(lettering: Lettering) -> ImageFont.FreeTypeFont:
    return freetype_of(FILE, lettering)


def freetype_of(file: Path, lettering: Lettering) -> ImageFont.FreeTypeFont:
    """Return the font in FreeType at a size of ``PIXELS`` to the x-height, without hinting by the layout engine."""
    size = PIXELS * lettering.font.engine.face.upem / lettering.font.measures.x_height
    return ImageFont.truetype(str(file), size, layout_engine=ImageFont.Layout.BASIC)


def drawn_by_freetype(font: ImageFont.FreeTypeFont, letter: str) -> np.ndarray:
    """Return the letter's pixels, its origin at ``ORIGIN``."""
    image = Image.new("L", (SIDE, SIDE), 0)
    ImageDraw.Draw(image).text(ORIGIN, letter, font=font, fill=255, anchor="ls")
    return np.asarray(image) > 127


def centreline_points(lettering: Lettering, letter: str) -> list[list[Point]]:
    """Return points a pixel apart along each stroke of our centreline, in pixels."""
    strokes = lettering.drawn(shaped(lettering.font, letter)[0]).strokes
    found = []
    for stroke in strokes:
        track = flatten(stroke.segments, 0.02)
        length = sum(math.dist(a, b) for a, b in itertools.pairwise(track)) * PIXELS / 100
        found.append([(ORIGIN[0] + x * PIXELS / 100, ORIGIN[1] - y * PIXELS / 100)
                      for x, y in evenly(track, max(1, round(length)))])
    return found


def drawn(tracks: list[list[Point]], reach: int) -> np.ndarray:
    """Return the tracks as pixels, drawn with a round pen of that radius."""
    image = np.ones((SIDE, SIDE), dtype=bool)
    for x, y in itertools.chain.from_iterable(tracks):
        image[round(y), round(x)] = False
    return np.asarray(distance_transform_edt(image) <= reach)


def mean_distances(lettering: Lettering, font: ImageFont.FreeTypeFont, letter: str) -> tuple[float, float]:
    """Return the mean distance from our centreline to the thinned letter, and back, in x-heights."""
    skeleton = skeletonize(drawn_by_freetype(font, letter))
    tracks = centreline_points(lettering, letter)
    to_skeleton, to_ours = distance_transform_edt(~skeleton), distance_transform_edt(~drawn(tracks, 0))
    there = np.mean([to_skeleton[round(y), round(x)] for track in tracks for x, y in track])
    return float(there) / PIXELS, float(to_ours[skeleton].mean()) / PIXELS


@pytest.mark.parametrize("letter", rest_long(dict.fromkeys(MOVES + LETTERS), len(MOVES)))
def test_the_centreline_is_that_of_the_thinned_letter(lettering: Lettering, freetype: ImageFont.FreeTypeFont,
                                                      letter: str) -> None:
    """Our centreline and scikit-image's skeleton of FreeType's pixels are less than 2 % of the x-height apart.

    Measured: 0.5 % there and 0.6 % back on average; the most, 1.5 %, at x, whose crossing thinning pulls apart.
    """
    assert max(mean_distances(lettering, freetype, letter)) < 0.02


@pytest.mark.long
@pytest.mark.parametrize("name", ["DejaVuSerif", "DejaVuSans-Bold", "DejaVuSansMono-Oblique"])
def test_other_styles_are_followed_on_average(name: str) -> None:
    """With serifs, bold or slanted, the mean over the alphabet stays under 2 % of the x-height both ways."""
    file = FONTS / f"{name}.ttf"
    if not file.exists():
        pytest.skip(f"{name} is not installed (Debian: fonts-dejavu-extra)")
    style = Lettering(load_font(file))
    font = freetype_of(file, style)
    there, back = zip(*(mean_distances(style, font, letter) for letter in LETTERS), strict=True)
    assert max(float(np.mean(there)), float(np.mean(back))) < 0.02


def parts_and_holes(image: np.ndarray) -> tuple[int, int]:
    """Return how many parts and how many holes a picture has (Euler number: parts less holes).

    A few pixels cut off in the tip of an acute angle are no hole; a counter has thousands.
    """
    image = remove_small_holes(image, max_size=PIXELS // 4, connectivity=1)
    parts = int(label(image, connectivity=2).max())
    return parts, parts - int(euler_number(image, connectivity=2))


@pytest.mark.long
@pytest.mark.parametrize("name", ["DejaVuSans", "DejaVuSerif", "DejaVuSans-Bold", "DejaVuSansMono-Oblique"])
def test_each_letter_keeps_its_parts_and_counters(name: str) -> None:
    """The centreline, drawn thin, has as many parts as the letter, each in one piece, and a loop for each counter."""
    file = FONTS / f"{name}.ttf"
    if not file.exists():
        pytest.skip(f"{name} is not installed (Debian: fonts-dejavu-extra)")
    style = Lettering(load_font(file))
    font = freetype_of(file, style)
    wrong = {}
    for letter in filter(style.font.glyph, LETTERS + "ßøåñçğẵ&8"):
        ours = parts_and_holes(drawn(centreline_points(style, letter), THIN))
        theirs = parts_and_holes(drawn_by_freetype(font, letter))
        if ours != theirs:
            wrong[letter] = (ours, theirs)
    assert wrong == {}


def test_counters_are_those_a_reader_sees(lettering: Lettering) -> None:
    """The counting itself is right: it finds the counters that a reader sees in this font."""
    counted = {letter: parts_and_holes(drawn(centreline_points(lettering, letter), THIN))[1] for letter in LETTERS}
    assert {letter: holes for letter, holes in counted.items() if holes} == COUNTERS


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "fr-2"])
def test_dots_never_clot(lettering: Lettering, ruling: str) -> None:
    """No two dots of a letter are nearer than 0.7 of its pitch, an eighth under the usual at the least."""
    lines, pitch = preset(ruling), pens_for(preset(ruling)).pitch_mm
    ruled = lettering.ruled(lines)
    for letter in LETTERS + "ßøåñçğẵ&8":
        placed = dots(ruled.line(letter).letters[0].letter.strokes, pitch)
        assert len(placed) > 1
        assert all(math.dist(a, b) >= 0.88 * MIN_DISTANCE * pitch - 1e-9 for a, b in itertools.combinations(placed, 2))


def steps(lettering: Lettering, text: str) -> list[float]:
    """Return the distances from letter to letter in font units, as set on a ruling."""
    ruled = lettering.ruled(preset("us-3/4"))
    to_units = lettering.font.measures.x_height / ruled.ruling.x_height_mm
    return [(b.x - a.x) * to_units for a, b in itertools.pairwise(ruled.line(text).letters)]


def test_advances_are_those_of_the_file(lettering: Lettering) -> None:
    """Letters that do not kern stand as far apart as hmtx says (read by fontTools)."""
    table = TTFont(FILE)
    names, advances = table.getBestCmap(), table["hmtx"]
    for letter in LETTERS:
        assert steps(lettering, f"{letter}|") == pytest.approx([advances[names[ord(letter)]][0]])


def test_kerning_is_that_of_the_file(lettering: Lettering) -> None:
    """Pairs of capitals are kerned by what the font's old ``kern`` table says too (read by fontTools)."""
    table = TTFont(FILE)
    pairs, advances = table["kern"].kernTables[0].kernTable, table["hmtx"]
    told = {(a, b): value for (a, b), value in pairs.items() if len(a) == len(b) == 1 and (a + b).isalpha()}
    assert len(told) > 100
    for (a, b), value in told.items():
        assert steps(lettering, a + b) == pytest.approx([advances[a][0] + value]), a + b


@pytest.mark.parametrize(("letter", "base"), [("Ẹ̀", "E"), ("ọ́", "o"), ("Ọ̀", "O"), ("ẹ̀", "e"), ("é", "e"), ("ṣ", "s")])
def test_marks_stand_clear_of_their_letter(lettering: Lettering, letter: str, base: str) -> None:
    """Marks have the places that the font's own anchors give its plain letters: over, under, and never across.

    HarfBuzz alone would join E and the dot below, and this font has no place for a grave on that.
    """
    (shape,) = shaped(lettering.font, letter)
    height = drawn_top(lettering, base)
    assert shape.cluster == letter
    marks = unicodedata.normalize("NFD", letter)[1:]
    assert len(area_parts(lettering, letter)) == 1 + len(marks)
    assert (drawn_top(lettering, letter) > height + 10) == bool(set("\u0300\u0301") & set(marks))


def drawn_top(lettering: Lettering, letter: str) -> float:
    """Return the top of a letter's outline in hundredths of the x-height."""
    return max(contour.bounds()[3] for contour in lettering.drawn(shaped(lettering.font, letter)[0]).contours)


def area_parts(lettering: Lettering, letter: str) -> list[object]:
    """Return the separate parts of a letter's area."""
    import shapely

    return list(shapely.get_parts(area_of(lettering.drawn(shaped(lettering.font, letter)[0]).contours, 0.1)))


@pytest.mark.parametrize("letter", "aegBRØ&ß8")
def test_a_filled_letter_is_the_fonts_own(lettering: Lettering, freetype: ImageFont.FreeTypeFont, letter: str) -> None:
    """A solid letter on our PDF, drawn by PDFium, covers the pixels that FreeType covers: counters are open."""
    ruling, dpi = preset("us-1"), 400
    setter = Typesetter(school_font=lettering)
    inks = blocks.letters_at(setter, setter.ruled(ruling).line(letter), Form.SOLID, 20.0, 30.0)
    ours = scan(pdf_bytes([Page(60.0, 50.0, inks)]), dpi=dpi) < 128
    theirs = drawn_by_freetype(freetype, letter)
    assert overlap(ours, theirs, ruling.x_height_mm / 25.4 * dpi / PIXELS) > 0.97


def overlap(ours: np.ndarray, theirs: np.ndarray, scale: float) -> float:
    """Return how much of two shapes is common (intersection over union) when both are cut out and sized alike."""
    first, second = (Image.fromarray(image).crop(Image.fromarray(image).getbbox()) for image in (ours, theirs))
    assert first.width / second.width == pytest.approx(scale, rel=0.02)
    same = np.asarray(second.resize(first.size)), np.asarray(first)
    return float((same[0] & same[1]).sum() / (same[0] | same[1]).sum())


def test_svg_and_pdf_draw_the_same_letter(lettering: Lettering) -> None:
    """The same page as SVG (drawn by CairoSVG as it is) and as PDF (drawn by PDFium) differs only at edges."""
    import cairosvg

    ruling = preset("us-1")
    setter = Typesetter(school_font=lettering)
    items = [ink for row, form in enumerate((Form.SOLID, Form.HOLLOW, Form.FAINT))
             for ink in blocks.letters_at(setter, setter.ruled(ruling).line("aB&"), form, 15.0, 30.0 + 25.0 * row)]
    page = Page(90.0, 90.0, tuple(items))
    paper = scan(pdf_bytes([page]), dpi=144)
    png = cairosvg.svg2png(page_svg(page).encode(), output_width=paper.shape[1], output_height=paper.shape[0],
                           background_color="white")
    screen = np.asarray(Image.open(io.BytesIO(png)).convert("L"), dtype=float)
    assert (paper < 128).sum() * (MM_PER_POINT / 2) ** 2 > 100  # square millimetres: there is ink to compare
    assert float(np.abs(paper - screen).mean()) < 2.0
    assert float((np.abs(paper - screen) > 128).mean()) < 0.001
