"""The SVG of a page: one user unit to a millimetre, and the few classes by which it can be measured from outside."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET

import pytest

from namewright.lines.ink import Ink, Style, line
from namewright.lines.ruling import GuideLine, preset
from namewright.output.png import page_png
from namewright.output.svg import page_svg
from namewright.pages.page import Page, Row, Tile
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

SVG = "{http://www.w3.org/2000/svg}"
SIZES = {(Paper.A4, False): ("210mm", "297mm"), (Paper.A4, True): ("297mm", "210mm"),  # ISO 216
         (Paper.LETTER, False): ("215.9mm", "279.4mm"), (Paper.LETTER, True): ("279.4mm", "215.9mm")}  # 8.5 × 11 in


def sheet(setter: Typesetter, name: str = "Zoë", ruling: str = "de-6", **more: object) -> tuple[Page, ET.Element]:
    page = practice_pages(setter, name, name, SheetSettings(preset(ruling), **more))[0]  # type: ignore[arg-type]
    return page, ET.fromstring(page_svg(page))


@pytest.mark.parametrize(("paper", "landscape"), SIZES)
def test_size_is_in_millimetres(setter: Typesetter, paper: Paper, landscape: bool) -> None:
    """Width and height carry the unit mm, and the viewBox says the same numbers: one unit is one millimetre."""
    _, root = sheet(setter, paper=paper, landscape=landscape)
    width, height = SIZES[paper, landscape]
    assert (root.tag, root.get("width"), root.get("height")) == (f"{SVG}svg", width, height)
    assert root.get("viewBox") == f"0 0 {width[:-2]} {height[:-2]}"


@pytest.mark.parametrize("support", Support)
def test_rows_tell_name_and_form(setter: Typesetter, support: Support) -> None:
    """Each row of the page is a group of class row with the name and its form; the forms are those of the design."""
    page, root = sheet(setter, support=support)
    groups = root.findall(f"{SVG}g[@class='row']")
    assert len(groups) == sum(isinstance(item, Row) for item in page.items) > 0
    assert {group.get("data-name") for group in groups} == {"Zoë"}
    assert {group.get("data-form") for group in groups} <= {"solid", "dotted", "dashed", "faint", "hollow", "blank"}


@pytest.mark.parametrize(("ruling", "classes"), [
    ("de-6", {"topline", "midline", "baseline", "descender-line"}), ("us-3/4", {"topline", "midline", "baseline"}),
    ("uk-5", {"midline", "baseline"}), ("es-4", {"midline", "baseline"}), ("unlined", set()),
    ("fr-3", {"topline", "midline", "baseline", "descender-line"})])
def test_guide_lines_have_their_classes(setter: Typesetter, ruling: str, classes: set[str]) -> None:
    """A row holds the lines that its ruling prints, each once and level, at the heights the ruling gives."""
    _, root = sheet(setter, ruling=ruling)
    for group in root.findall(f"{SVG}g[@class='row']"):
        found = {element.get("class"): element for element in group.findall(f"{SVG}line") if element.get("class")}
        assert set(found) == classes
        for kind, element in found.items():
            assert element.get("y1") == element.get("y2")
            drop = float(found["baseline"].get("y1", "nan")) - float(element.get("y1", "nan"))
            assert drop == pytest.approx(preset(ruling).height_of(GuideLine(kind)), abs=0.002)


def test_tiles_tell_their_letter(setter: Typesetter) -> None:
    """There is one box of class tile a letter, a letter being what a child counts: a mark stays on its letter."""
    _, root = sheet(setter, name="Ẹ̀bùn")
    assert [tile.get("data-letter") for tile in root.findall(f".//{SVG}rect[@class='tile']")] == ["Ẹ̀", "b", "ù", "n"]


def test_nothing_else_has_a_class(setter: Typesetter) -> None:
    """Rows, guide lines and tiles have classes and nothing else has; the furniture has its id."""
    _, root = sheet(setter)
    assert {element.get("class") for element in root.iter()} == {
        None, "row", "tile", "topline", "midline", "baseline", "descender-line"}
    assert [element.get("id") for element in root.iter() if element.get("id")] == ["furniture"]


def test_markup_in_a_name_stays_text() -> None:
    """A name or letter with characters that mean something to XML comes back as it was (XML 1.0, §2.4)."""
    nasty = """<b>&amp;"Ó'</b> & <!--"""
    page = Page(100, 100, (Row(nasty, "blank", (Ink.of(Style(0.3), (line(20, 20, 30, 20),)),)),
                           Tile(30, 30, 20, 20, "&", Style(0.3)), Tile(60, 30, 20, 20, '<"', Style(0.3))))
    root = ET.fromstring(page_svg(page))
    assert root.find(f"{SVG}g").get("data-name") == nasty  # type: ignore[union-attr]
    assert [tile.get("data-letter") for tile in root.findall(f"{SVG}rect")] == ["&", '<"']


def test_a_page_with_an_ampersand_can_be_made(setter: Typesetter) -> None:
    """The same through the whole house: a name with & gives an SVG that parses."""
    page, root = sheet(setter, name="Bo&Al")
    assert root.find(f"{SVG}g[@class='row']").get("data-name") == "Bo&Al"  # type: ignore[union-attr]
    assert page_png(page, 40)


def test_numbers_are_written_one_way(setter: Typesetter) -> None:
    """No minus zero, no exponent, no trailing zero, and no more than three decimals."""
    page, _ = sheet(setter, name="Šárka", ruling="fr-2.5")
    text = page_svg(page)
    numbers = re.findall(r"-?\d+(?:\.\d+)?(?:e-?\d+)?", " ".join(re.findall(r'(?: d|x1|x2|y1|y2|x|y)="([^"]*)"', text)))
    assert len(numbers) > 500
    assert [one for one in numbers if one == "-0" or "e" in one or re.search(r"\.\d*0$|\.\d{4,}", one)] == []


def test_same_page_same_text(setter: Typesetter) -> None:
    """The same input gives the same bytes, from a new typesetter as from a used one."""
    used, _ = sheet(setter, name="Łucja")
    fresh, _ = sheet(Typesetter(), name="Łucja")
    assert page_svg(used) == page_svg(fresh)
