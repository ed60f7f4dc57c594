"""The typefaces that the screens are set in: what they hold, and that ours is what `namewright fonts` builds."""

from __future__ import annotations

from pathlib import Path

import pytest
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.ttLib import TTFont

from namewright.wording import languages, wording

FONTS = Path(__file__).parents[2] / "src/namewright/web/static/fonts"
BUILT = Path(__file__).parents[2] / "fonts/NamewrightUpright-Solid.ttf"


def _outline(font: TTFont, name: str) -> list[tuple[str, tuple[object, ...]]]:
    glyphs = font.getGlyphSet()
    pen = DecomposingRecordingPen(glyphs)
    glyphs[name].draw(pen)
    return pen.value


def test_our_own_letters_on_the_screen_are_the_built_font() -> None:
    """Every character is there, with the same outline and width, and every pair is as far apart."""
    packed, built = TTFont(FONTS / "own-letters.woff2"), TTFont(BUILT)
    assert packed.getBestCmap().keys() == built.getBestCmap().keys()
    for code, name in packed.getBestCmap().items():
        ours = built.getBestCmap()[code]
        assert packed["hmtx"][name][0] == built["hmtx"][ours][0]
        assert _outline(packed, name) == _outline(built, ours)
    assert packed["GPOS"].table.LookupList.LookupCount == built["GPOS"].table.LookupList.LookupCount


@pytest.mark.parametrize("language", languages())
def test_the_screens_have_every_letter_of_their_words(language: str) -> None:
    """No word of a screen falls back to some other typeface for a letter."""
    files = [FONTS / f"{each}.woff2" for each in ("screens-latin", "screens-latin-ext")]
    has = {code for file in files for code in TTFont(file).getBestCmap()}
    said = wording(language)
    texts = [said.templates[key] for key in said.templates if key.startswith("web.")]
    letters = {letter for text in texts for letter in text if letter.isalpha()}
    assert {letter for letter in letters if ord(letter) not in has} == set()
