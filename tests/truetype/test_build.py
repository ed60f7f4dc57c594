"""The built fonts: the same bytes from the same source, metrics on the guide lines, lines without gaps."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont

from namewright.letters.alphabet import Alphabet
from namewright.truetype.build import Plan, build_font, plan_fonts
from namewright.truetype.characters import ZONE
from namewright.truetype.faces import FACES, Face

FONTS = Path(__file__).parents[2] / "fonts"


@pytest.fixture(scope="module")
def plan(alphabet: Alphabet) -> Plan:
    return plan_fonts(alphabet)


@pytest.fixture(scope="module")
def few(alphabet: Alphabet) -> Alphabet:
    """A few letters of ours, so that a font of them is soon made."""
    return alphabet._replace(glyphs={char: alphabet.glyphs[char] for char in "aelnoAVıȷij"})


def opened(data: bytes) -> TTFont:
    return TTFont(io.BytesIO(data))


def in_fonts(face: Face) -> Path:
    return FONTS / f"NamewrightUpright-{face.style.replace(' ', '')}.ttf"


@pytest.mark.long
@pytest.mark.parametrize("face", FACES, ids=lambda face: face.style)
def test_built_files_are_what_the_alphabet_builds(plan: Plan, face: Face) -> None:
    """The files in fonts/ are those that ``namewright fonts -o fonts`` writes today, to the byte, and small."""
    built = in_fonts(face).read_bytes()
    assert build_font(plan, face) == built, "run: namewright fonts -o fonts"
    assert len(built) < 1_000_000


@pytest.mark.parametrize("face", FACES, ids=lambda face: face.style)
def test_metrics_stand_on_the_guide_lines(face: Face) -> None:
    """Midline, top line and descender line are the font's heights, and its lines are set a zone apart."""
    font = TTFont(in_fonts(face))
    os2, hhea = font["OS/2"], font["hhea"]
    assert (os2.sxHeight, os2.sCapHeight) == (ZONE, 2 * ZONE)
    assert (hhea.ascent, hhea.descent, hhea.lineGap) == (2 * ZONE, -ZONE, ZONE)
    assert (os2.sTypoAscender, os2.sTypoDescender, os2.sTypoLineGap) == (2 * ZONE, -ZONE, ZONE)
    assert os2.usWinAscent >= font["head"].yMax
    assert -os2.usWinDescent <= font["head"].yMin
    assert font["head"].unitsPerEm == 4 * ZONE


@pytest.mark.parametrize("face", FACES, ids=lambda face: face.style)
def test_names_tell_family_style_and_licence(face: Face) -> None:
    """A menu shows one family with four styles; the licence travels with the font."""
    name = TTFont(in_fonts(face))["name"]
    assert (name.getDebugName(16), name.getDebugName(17)) == ("Namewright Upright", face.style)
    assert "Open Font License" in name.getDebugName(13)
    assert name.getDebugName(14) == "https://openfontlicense.org"


@pytest.mark.long
def test_guide_lines_have_no_gaps(plan: Plan) -> None:
    """Whatever two letters meet, or a letter and a space, the left one's lines reach the right one's."""
    font = TTFont(in_fonts(next(face for face in FACES if face.ruled)))
    letters, marks = plan.moves
    boxes = {name: font["glyf"][name] for name in {left for left, _ in letters}}
    gaps = [(left, right) for left, right in letters
            if boxes[left].xMax < font["hmtx"][left][0] + letters[left, right] + marks[left, right]]
    assert gaps == []
    assert max(box.xMin for box in boxes.values()) <= 0


def test_fonts_follow_the_alphabet_that_is_given(few: Alphabet) -> None:
    """A font is built from the alphabet passed in: other strokes, another outline, and its own name."""
    solid = FACES[0]
    swapped = few._replace(name="Other Letters", glyphs={**few.glyphs, "o": few.glyphs["n"]})
    ours, other = (opened(build_font(plan_fonts(one), solid)) for one in (few, swapped))
    assert ours["glyf"]["o"] != other["glyf"]["o"]
    assert ours["glyf"]["n"] == other["glyf"]["n"]
    assert other["name"].getDebugName(16) == "Other Letters"
