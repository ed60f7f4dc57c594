"""A school's font file is measured, or refused in one sentence: never a traceback, never an endless wait."""

from __future__ import annotations

import random
import struct
import time
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont
from fontTools.ttLib.tables._g_l_y_f import Glyph, GlyphComponent

from namewright.cli import main
from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import preset
from namewright.schoolfont import FontError
from namewright.schoolfont.reading import LARGEST_FILE, load_font
from namewright.schoolfont.shaping import Lettering
from schoolfont.fontmaking import CAP, DEEP, Box, X, cubic_font_bytes, font_bytes, font_file, glyph_of


def test_heights_are_read(tmp_path: Path) -> None:
    """The font's name, and its heights in font units: OS/2's for x and capitals, d's and p's own for the rest."""
    font = load_font(font_file(tmp_path, font_bytes(stated=(X + 8, CAP - 8))))
    assert font.name == "Boxwood Infant"
    assert font.measures.x_height == X + 8
    assert font.measures.cap_height == CAP - 8
    assert font.measures.descender == DEEP


@pytest.mark.parametrize("stated", [(0, 0), (X * 2, CAP * 2), (5, 5)])
def test_a_height_that_its_letters_deny_is_measured(tmp_path: Path, stated: tuple[int, int]) -> None:
    """What OS/2 leaves out or states wrongly is measured on x and H."""
    measures = load_font(font_file(tmp_path, font_bytes(stated=stated))).measures
    assert (measures.x_height, measures.cap_height) == (X, CAP)


def test_a_font_without_os2_is_measured(tmp_path: Path) -> None:
    """A font may lack its OS/2 table and its names: its letters are measured, its file name is its name."""
    def spoil(font: TTFont) -> None:
        del font["OS/2"], font["name"]

    font = load_font(font_file(tmp_path, font_bytes(spoil)))
    assert (font.name, font.measures.x_height) == ("school", X)


def test_cubic_outlines_are_read(tmp_path: Path) -> None:
    """An .otf with cubic outlines is measured and set as a .ttf is."""
    font = load_font(font_file(tmp_path, cubic_font_bytes(), "school.otf"))
    assert (font.measures.x_height, font.measures.cap_height) == (X, CAP)
    assert len(Lettering(font).ruled(preset("us-3/4")).line("Hx").letters) == 2


def cut_table(data: bytes) -> bytes:
    """Return a font whose first table claims to end far beyond the file."""
    return data[:12 + 12] + struct.pack(">L", 10 * len(data)) + data[12 + 16:]


BROKEN = {
    "empty": (b"", "not a font file"),
    "text": (b"Dear school, here is the font", "not a font file"),
    "a web font": (b"wOFF" + font_bytes()[4:], "web font"),
    "a web font of the second kind": (b"wOF2" + font_bytes()[4:], "web font"),
    "a collection": (b"ttcf" + font_bytes()[4:], "collection"),
    "only a start": (b"\x00\x01\x00\x00", "broken"),
    "cut short": (font_bytes()[:len(font_bytes()) // 2], "font"),
    "a table beyond the end": (cut_table(font_bytes()), "cut short"),
    "no small x": (font_bytes(without="x"), "small x"),
}


@pytest.mark.parametrize("case", BROKEN)
def test_a_broken_file_is_one_sentence(case: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A file that is no usable font: exit status 2, one sentence that names it, and nothing written."""
    data, reason = BROKEN[case]
    out = tmp_path / "card.pdf"
    status = main(["card", "Abi", "-o", str(out), "--font", str(font_file(tmp_path, data))])
    said = capsys.readouterr().err
    assert (status, said.count("\n"), out.exists()) == (2, 1, False)
    assert "school.ttf" in said
    assert reason in said
    assert "Traceback" not in said


@pytest.mark.parametrize("path", ["", "gone.ttf"])
def test_a_folder_or_no_file_is_one_sentence(path: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A folder or a name that leads nowhere: exit status 2 and one sentence."""
    status = main(["card", "Abi", "-o", str(tmp_path / "card.pdf"), "--font", str(tmp_path / path)])
    assert (status, capsys.readouterr().err.count("\n")) == (2, 1)


def test_a_huge_file_is_refused_unread(tmp_path: Path) -> None:
    """A file over the limit is refused at the limit, however large it is."""
    path = font_file(tmp_path)
    with path.open("r+b") as file:
        file.truncate(LARGEST_FILE + 1)
    with pytest.raises(FontError, match=r"font\.large"):
        load_font(path)


def nested(depth: int, times: int) -> bytes:
    """Return a font whose A is built of itself (depth 0), or of x doubled ``times`` over at each of many levels."""
    def spoil(font: TTFont) -> None:
        glyf, order = font["glyf"], list(font.getGlyphOrder())
        names = [f"level{level}" for level in range(depth)]
        for name, base in zip([*names, "A"], ["x", *names] if names else ["A"], strict=True):
            glyph = Glyph()
            glyph.numberOfContours = -1
            glyph.xMin = glyph.yMin = glyph.xMax = glyph.yMax = 0
            glyph.components = [component(base) for _ in range(times)]
            glyf[name] = glyph
            font["hmtx"][name] = (400, 0)
        font.setGlyphOrder([*order, *names])
        glyf.glyphOrder = font.getGlyphOrder()
        font.recalcBBoxes = False
    return font_bytes(spoil)


def component(base: str) -> GlyphComponent:
    """Return a component at no offset."""
    part = GlyphComponent()
    part.glyphName, part.x, part.y, part.flags = base, 0, 0, 0x0002
    return part


@pytest.mark.parametrize(("depth", "times"), [(0, 1), (0, 4), (30, 4)])
def test_endless_composites_end(tmp_path: Path, depth: int, times: int) -> None:
    """A letter built of itself, or of so many parts that no computer ends, is reported at once."""
    start = time.monotonic()
    lettering = Lettering(load_font(font_file(tmp_path, nested(depth, times))))
    with pytest.raises(MissingLetters, match=r"font\..*Boxwood Infant"):
        lettering.ruled(preset("us-3/4")).line("A")
    assert time.monotonic() - start < 20


def test_a_letter_too_intricate_is_reported(tmp_path: Path) -> None:
    """A letter with an outline a hundred x-heights long is a picture: it is reported, not worked on for ever."""
    def spoil(font: TTFont) -> None:
        font["glyf"]["A"] = glyph_of(*[(-16000, 0, 16000, CAP)] * 9)

    case = Lettering(load_font(font_file(tmp_path, font_bytes(spoil)))).ruled(preset("us-3/4"))
    with pytest.raises(MissingLetters, match=r"font\.intricate.*latin capital letter a, U\+0041"):
        case.line("Ab")


def test_a_letter_of_very_many_parts_is_reported(tmp_path: Path) -> None:
    """A letter of hundreds of specks, as chalk fonts have, is reported with a reason: it has no line to trace."""
    def spoil(font: TTFont) -> None:
        font["glyf"]["A"] = glyph_of(*[(x, y, x + 4, y + 4) for x in range(0, 300, 10) for y in range(0, 200, 10)])

    case = Lettering(load_font(font_file(tmp_path, font_bytes(spoil)))).ruled(preset("us-3/4"))
    with pytest.raises(MissingLetters, match=r"font\.intricate"):
        case.line("Ab")


def test_a_letter_far_beyond_its_line_is_reported(tmp_path: Path) -> None:
    """A letter four times as high as its line, or six x-heights wide, fits no page: it is reported."""
    for box in ((0, 0, 300, 5 * X), (0, 0, 7 * X, CAP), (0, -3 * X, 300, X)):
        def spoil(font: TTFont, box: Box = box) -> None:
            font["glyf"]["A"] = glyph_of(box)

        case = Lettering(load_font(font_file(tmp_path, font_bytes(spoil)))).ruled(preset("us-3/4"))
        with pytest.raises(MissingLetters, match=r"font\.far"):
            case.line("Ab")


def test_no_damage_makes_a_traceback(tmp_path: Path) -> None:
    """Whatever bytes of a font are spoilt, it is used, refused as a font, or a letter of it is reported."""
    whole, chance = font_bytes(), random.Random(7)
    outcomes = set()
    for _ in range(50):
        data = bytearray(whole)
        for _ in range(chance.choice((1, 4, 40))):
            data[chance.randrange(12, len(data))] = chance.randrange(256)
        try:
            Lettering(load_font(font_file(tmp_path, bytes(data)))).ruled(preset("us-3/4")).line("Abfix p")
            outcomes.add("used")
        except FontError:
            outcomes.add("refused")
        except MissingLetters:
            outcomes.add("reported")
    assert outcomes == {"used", "refused", "reported"}


def test_without_the_extra_it_says_how_to_get_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the libraries of the extra are not installed, a sentence says how to install them."""
    import sys

    monkeypatch.setitem(sys.modules, "uharfbuzz", None)
    with pytest.raises(FontError, match=r"font\.libraries"):
        load_font(font_file(tmp_path))
