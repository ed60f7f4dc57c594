"""Pictures for the screen: a row of a name at its true size, read as XML by the standard library."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest

from namewright.letters.alphabet import upright
from namewright.lines.ruling import custom_ruling
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.web.requests import CannotDraw
from namewright.web.row_pictures import form_svg, mark_svg, row_svg

SVG = "{http://www.w3.org/2000/svg}"


def size(svg: str) -> tuple[float, float]:
    root = ElementTree.fromstring(svg)
    assert root.attrib["width"].endswith("mm")
    return float(root.attrib["width"].removesuffix("mm")), float(root.attrib["height"].removesuffix("mm"))


def rows(svg: str) -> list[tuple[str, str]]:
    return [(row.attrib["data-name"], row.attrib["data-form"])
            for row in ElementTree.fromstring(svg).iter(f"{SVG}g") if row.attrib.get("class") == "row"]


def test_a_name_stands_once_to_read_and_once_in_dots(setter: Typesetter) -> None:
    """On a picture just large enough: taller lines make a taller one, a longer name a wider one."""
    low, tall = (row_svg(setter, "Mira", SheetSettings(custom_ruling(height))) for height in (15.0, 30.0))
    assert rows(low) == [("Mira", "solid"), ("Mira", "dotted")]
    assert size(tall)[1] > 2 * 30.0
    assert size(tall)[1] - size(low)[1] >= 2 * 15.0
    assert size(row_svg(setter, "Miranda", SheetSettings(custom_ruling(15.0))))[0] > size(low)[0]


def test_a_name_that_cannot_be_drawn_is_told(setter: Typesetter) -> None:
    with pytest.raises(CannotDraw):
        row_svg(setter, "Марко", SheetSettings(custom_ruling(15.0)))


def test_every_form_of_a_letter_is_another_picture(setter: Typesetter) -> None:
    """So that a teacher sees what is chosen; all are of one size."""
    for letter, forms in upright().forms.items():
        drawn = [form_svg(setter, letter, form) for form in forms]
        assert len(set(drawn)) == len(forms), letter
        assert {size(one) for one in drawn} == {(20.0, 22.0)}


def test_the_word_is_not_larger_than_its_picture(setter: Typesetter) -> None:
    """A word of 5 mm to the x-height, a little wider than high."""
    width, height = size(mark_svg(setter))
    assert width > 4 * height > 4 * 5
