"""The closed counters of our printed letters against those of a general-purpose sans serif.

DejaVu Sans (Debian package fonts-dejavu-core) drawn by FreeType through Pillow; counted by scikit-image.
"""

from __future__ import annotations

import io
from pathlib import Path

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont
from skimage.measure import label

from longer import rest_long
from namewright.letters.alphabet import upright
from namewright.letters.choice import LetterChoice
from namewright.lines.forms import Form
from namewright.lines.ruling import preset
from namewright.output.png import page_png
from namewright.pages.blocks import letters_at
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter

DEJAVU = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")
CHARACTERS = ("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"
              "æœøłđħßþðŋɓɗƙƴəÆŒØŁĐÐĦẞÞŊƁƊƘƳƏåÅäéñşțǫ")
# Letters with more than one accepted form, and the counters that ours have.
OTHER_FORM = {
    "4": (0, "written open at the top, as the hand does it in two strokes; print closes it"),
}


def counters(black: np.ndarray) -> int:
    """Return how many pieces of white are shut in by ink."""
    white = np.pad(~black, 1, constant_values=True)
    return int(label(white, connectivity=1).max()) - 1


def our_counters(setter: Typesetter, char: str, ruling: str) -> int:
    """Count on a raster with 60 pixels to the x-height, so that every ruling is looked at equally closely."""
    line = setter.ruled(preset(ruling)).line(char)
    x_height = line.ruling.x_height_mm
    inks = letters_at(setter, line, Form.SOLID, 4 * x_height - line.width_mm / 2, 4.8 * x_height)
    page = Page(8 * x_height, 8 * x_height, inks)
    image = Image.open(io.BytesIO(page_png(page, 60 / x_height * 25.4))).convert("L")
    return counters(np.array(image) < 128)


def their_counters(char: str) -> int:
    image = Image.new("L", (480, 400), 255)
    ImageDraw.Draw(image).text((80, 60), char, font=ImageFont.truetype(str(DEJAVU), 200), fill=0)
    return counters(np.array(image) < 128)


@pytest.mark.skipif(not DEJAVU.exists(), reason="DejaVu Sans is not installed (Debian package fonts-dejavu-core)")
@pytest.mark.parametrize("ruling", rest_long(["us-3/4", "de-4", "fr-2"]))
def test_counters_are_those_of_print(setter: Typesetter, ruling: str) -> None:
    """A solid letter shuts in as many pieces of white as in print: nothing is clotted and nothing gapes."""
    ours = {char: our_counters(setter, char, ruling) for char in CHARACTERS}
    wanted = {char: OTHER_FORM[char][0] if char in OTHER_FORM else their_counters(char) for char in CHARACTERS}
    assert {char: (ours[char], wanted[char]) for char in CHARACTERS if ours[char] != wanted[char]} == {}


# The other forms of letters: the same topology as print, or the one that the form's name says.
VARIANTS = {("a", "two-storey"): 1, ("g", "two-storey"): 2, ("4", "closed"): 1}


def test_other_forms_have_the_counters_they_should(setter: Typesetter) -> None:
    """A variant shuts in what print does; two storeys of g are two, and a closed 4 is closed."""
    usual = upright()
    for letter, forms in usual.forms.items():
        for form in forms[1:]:
            own = setter.lettering(LetterChoice(((letter, form),)))
            wanted = VARIANTS.get((letter, form), our_counters(setter, letter, "us-3/4"))
            assert our_counters(own, letter, "us-3/4") == wanted, (letter, form)
    exits = setter.lettering(LetterChoice(exit_strokes=True))
    for letter in usual.exit_strokes:
        assert our_counters(exits, letter, "us-3/4") == our_counters(setter, letter, "us-3/4"), letter


def test_the_counter_of_counters_can_count() -> None:
    """A ring has one counter, a broken ring none, a figure of eight two."""
    image = Image.new("L", (100, 100), 255)
    pen = ImageDraw.Draw(image)
    pen.ellipse((10, 10, 50, 50), outline=0, width=4)
    assert counters(np.array(image) < 128) == 1
    pen.ellipse((47, 10, 90, 50), outline=0, width=4)
    assert counters(np.array(image) < 128) == 2
    pen.rectangle((5, 25, 20, 32), fill=255)
    assert counters(np.array(image) < 128) == 1
