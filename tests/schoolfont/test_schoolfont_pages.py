"""Pages in a school's own font: the same pages as ever, without stroke marks, and with a word to the adult."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont

from namewright.cli import main
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import DEFAULT_RULING, GuideLine, custom_ruling, preset
from namewright.making.choices import Choices, read_choices
from namewright.making.make import Making
from namewright.making.request import Kind, Request, listed
from namewright.pages import blocks
from namewright.pages.name_card import CardSettings, card_page
from namewright.pages.page import Furniture, Guide, Page, Row, leaves
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.children import Child, Roster
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering
from namewright.settings import Support
from schoolfont.fontmaking import CAP, X, font_bytes, font_file, glyph_of

RULING = preset("us-5/8")


@pytest.fixture(scope="module")
def school(tmp_path_factory: pytest.TempPathFactory) -> Typesetter:
    return Typesetter(school_font=Lettering(load_font(font_file(tmp_path_factory.mktemp("font")))))


def models(page: Page) -> Iterator[tuple[Ink, ...]]:
    """Yield the ink of every row that shows a solid name."""
    for item in page.items:
        if isinstance(item, Row) and item.form == Form.SOLID:
            yield tuple(leaf for leaf in item.items if isinstance(leaf, Ink))


@pytest.mark.parametrize("support", list(Support))
def test_a_font_claims_no_order_of_strokes(school: Typesetter, support: Support) -> None:
    """A model in a school's font is its filled outline and nothing else: no start dots, numbers or arrows."""
    pages = [*practice_pages(school, "Abi", "Abi", SheetSettings(RULING, support=support)),
             card_page(school, "Abi", "Abi", CardSettings(RULING, support=support))]
    found = [inks for page in pages for inks in models(page)]
    assert found
    assert all(len(inks) == 1 and inks[0].style.fill for inks in found)


@pytest.mark.parametrize("support", list(Support))
def test_our_own_letters_keep_their_marks(setter: Typesetter, support: Support) -> None:
    """The same pages in our own letters have marks on the model wherever the level of support has them."""
    (page, *_) = practice_pages(setter, "Abi", "Abi", SheetSettings(RULING, support=support))
    assert any(len(inks) > 2 for inks in models(page)) == (support is not Support.INDEPENDENT)


def test_an_outline_is_closed_within_its_fragment(school: Typesetter) -> None:
    """Each contour is one relative m … z, so that a path can be moved by its M alone; a counter stays in one path."""
    line = school.ruled(RULING).line("Abx")
    (ink,) = blocks.letters_at(school, line, Form.SOLID, 20.0, 50.0)
    for piece, contours in zip(ink.pieces, (2, 1, 2), strict=True):
        assert re.fullmatch(rf"(?:m[^a-zA-Z]+(?:[hvlc][^a-zA-Z]*)+z){{{contours}}}", piece.fragment.data)
    assert ink.path_data().count("M") == 3


@pytest.mark.parametrize("form", [Form.SOLID, Form.FAINT, Form.HOLLOW])
def test_forms_of_an_outline_cover_it(school: Typesetter, form: Form) -> None:
    """Solid, faint and hollow letters cover the outline they are given; a hollow one its edge around it."""
    line = school.ruled(RULING).line("Ab")
    x0, y0, x1, y1 = blocks.letters_at(school, line, form, 0.0, 0.0)[0].bounds()
    edge = school.inker(RULING).pens.outline_mm if form is Form.HOLLOW else 0.0
    assert x1 - x0 == pytest.approx(line.width_mm + 2 * edge, abs=0.03)
    assert (-y0, y1) == pytest.approx((line.rise_mm + edge, line.drop_mm + edge), abs=0.03)


def test_boxes_show_the_letter_that_the_model_has(school: Typesetter) -> None:
    """The small letter in a tile's box has the school's shape too."""
    ink = school.letter("A", 2.5)
    x0, y0, x1, y1 = ink.bounds()
    assert ink.style.fill
    assert (x1 - x0, y1 - y0) == pytest.approx((2.5 * 300 / X, 2.5 * CAP / X), abs=0.02)


@pytest.mark.parametrize("kind", [Kind.SHEETS, Kind.SIZES, Kind.FIND, Kind.CHANT])
def test_a_name_that_only_the_font_has_is_shown_in_it_to_the_child(tmp_path: Path, kind: Kind) -> None:
    """Whose page it is, or which name is clapped, stands there as it is written, and not as code points."""
    font = TTFont(font_file(tmp_path))
    for table in font["cmap"].tables:
        table.cmap[ord("ㅊ")] = table.cmap[ord("A")]
    font.save(path := tmp_path / "with-more.ttf")
    setter = Typesetter(school_font=Lettering(load_font(path)))
    child = Child("ㅊi", "ㅊi", "ㅊi", "", 1)
    (placed,) = order_class([child], writable=lambda _: True)
    making = Making(Request((kind,), (listed(placed),), roster=Roster((child,), ())), setter)
    pages = list(making.pages())
    assert pages
    assert not making.account.not_made
    spelled = [leaf.spelled.words for page in pages for leaf in leaves(page.items)
               if isinstance(leaf, Ink) and leaf.spelled]
    assert spelled
    assert not [words for words in spelled if "U+" in words]


@pytest.mark.parametrize(("ruling", "told"), [
    (RULING, ["no stroke marks", "4.8 mm below the top line", "midline at 0.71"]),
    (custom_ruling(20, midline=0.8), ["no stroke marks", "2.4 mm above the top line", "midline at 0.71"]),
    (custom_ruling(20, midline=X / CAP), ["no stroke marks"]),
])
def test_the_adult_is_told(school: Typesetter, ruling: object, told: list[str],
                           monkeypatch: pytest.MonkeyPatch) -> None:
    """The adult's page says that no order is claimed, how far capitals are from the top line, and on what ruling none.

    The midline for this font is 500/700 of the line height; on 5/8 in lines capitals reach 0.7 of 15.875 mm.
    """
    from namewright.making import adult
    from namewright.making.choices import Choices
    from namewright.making.request import Kind, Request
    from namewright.roster.parsing import read_roster

    said: list[str] = []
    monkeypatch.setattr(adult, "summary_pages", lambda setter, entries, *_, **__: said.extend(entries[0].sentences))
    request = Request((Kind.ADULT,), (), Choices(ruling), roster=read_roster("Abi\n"))  # type: ignore[arg-type]
    adult.adult_pages(school, request, (), ())
    about_font = said[4:]
    assert len(about_font) == len(told)
    assert all(part in sentence for part, sentence in zip(told, about_font, strict=True))


def test_no_row_shows_where_strokes_begin_though_it_was_kept_for_the_class(school: Typesetter) -> None:
    """Rungs kept for our own letters are left out, and said; a sheet is made all the same.

    Regression: with start-dots kept in a class's file, rings stood where a font's centrelines happened to begin.
    """
    child = Child("Abi", "Abi", "Abi", "", 1)
    (placed,) = order_class([child], writable=lambda _: True)
    kept = read_choices({"ladder": "start-dots wide-dots"})
    making = Making(Request((Kind.SHEETS,), (listed(placed),), kept), school)
    (page,) = making.pages()
    assert Form.STARTS not in {row.form for row in page.items if isinstance(row, Row)}
    assert Form.WIDE in {row.form for row in page.items if isinstance(row, Row)}
    assert [remark.told.key for remark in making.account.remarks] == ["account.font_order"]


def test_the_command_line_makes_all_but_the_child_it_names(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Sheets, card and tiles take the font; who cannot be set in it is named, all others are made."""
    font, roster, out = font_file(tmp_path), tmp_path / "class.txt", tmp_path / "out.pdf"
    roster.write_text("Abi\nBo\nPia\nAbdi\n", encoding="utf-8")
    for words, status in ((["sheets", str(roster)], 1), (["tiles", str(roster)], 1), (["card", "Abi"], 0)):
        assert main([*words, "-o", str(out), "--font", str(font)]) == status
        assert out.read_bytes().startswith(b"%PDF")
    said = capsys.readouterr().err
    assert "Bo" in said
    assert "The font “Boxwood Infant” has no “B” (latin capital letter b, U+0042)" in said


@pytest.mark.parametrize(("words", "said"), [
    (["--letters", "a=two-storey"], "Say one of them"),
    (["--ladder", "dots start-dots"], "no start-dots"),
    (["--ladder", "marked-dots"], "no marked-dots"),
])
def test_words_that_need_our_own_letters_are_refused(words: list[str], said: str, tmp_path: Path,
                                                     capsys: pytest.CaptureFixture[str]) -> None:
    """Other forms of our letters, and rows that show where strokes begin, do not go with a font: a sentence says so."""
    roster = tmp_path / "class.txt"
    roster.write_text("Abi\n", encoding="utf-8")
    status = main(["sheets", str(roster), "-o", str(tmp_path / "out.pdf"), "--font", str(font_file(tmp_path)), *words])
    assert (status, said in capsys.readouterr().err) == (2, True)


@pytest.mark.parametrize("ruling", ["us-5/8", "de-6", "uk-5"])
def test_tails_deeper_than_their_zone_move_the_rows_apart(tmp_path: Path, ruling: str) -> None:
    """A font whose tails reach far below our descender line keeps white between them and the row below."""
    def spoil(font: TTFont) -> None:
        font["glyf"]["p"] = glyph_of((100, -3 * X // 2, 180, X))

    setter = Typesetter(school_font=Lettering(load_font(font_file(tmp_path, font_bytes(spoil)))))
    (page, *_) = practice_pages(setter, "Abp", "Abp", SheetSettings(preset(ruling), support=Support.FULL))
    rows = [item for item in page.items if isinstance(item, Row)]
    captions = [one.bounds()[1] for item in page.items if isinstance(item, Furniture) for one in item.items]
    seen = 0
    for row in rows:
        inks = [leaf.bounds() for leaf in row.items if isinstance(leaf, Ink)]
        base = next(item.y for item in row.items if isinstance(item, Guide) and item.line is GuideLine.BASE)
        others = [item.y for other in rows for item in other.items if isinstance(item, Guide)]
        below = [y for y in (*captions, *others) if y > base + preset(ruling).descender_mm + 0.01]
        if inks and below:
            assert min(below) - max(box[3] for box in inks) > 0.5
            seen += 1
    assert seen >= 2


def test_capitals_reach_the_top_line_where_nobody_chose_lines(school: Typesetter) -> None:
    """The font's own cap height is the top line; lines that somebody chose stay as they are."""
    own = Making(Request((Kind.CARDS,), ()), school).request.settings.ruling
    assert school.school_font is not None
    assert school.school_font.line_up(own).capitals_mm == pytest.approx(0.0, abs=1e-9)
    assert own.x_height_mm == preset(DEFAULT_RULING).x_height_mm
    chosen = Making(Request((Kind.CARDS,), (), Choices(preset("de-5"))), school).request.settings.ruling
    assert chosen == preset("de-5")
    assert Making(Request((Kind.CARDS,), ()), Typesetter()).request.settings.ruling == preset(DEFAULT_RULING)
