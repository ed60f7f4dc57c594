"""Rebuild the proofs of the letters: the alphabet in each form, spacing, cues, variants, the ladder, sizes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from namewright.letters.choice import LetterChoice, read_choice
from namewright.lines.cues import line_with_cues
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import Ruling, preset
from namewright.output.png import page_png
from namewright.pages import blocks
from namewright.pages.blocks import PageSettings
from namewright.pages.ladder import Ladder, Part
from namewright.pages.page import Item, Page
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.size_finder import size_pages
from namewright.pages.typesetter import Typesetter

HERE = Path(__file__).parent
DPI = 80
SETTER = Typesetter()
ALPHABET = ("Aa Bb Cc Dd", "Ee Ff Gg Hh", "Ii Jj Kk Ll", "Mm Nn Oo", "Pp Qq Rr Ss", "Tt Uu Vv", "Ww Xx Yy Zz",
            "12345 67890", "Éé Ññ Őő Ąą")
CUED = ("ABCDEFG", "HIJKLMN", "OPQRSTU", "VWXYZ", "abcdefghij", "klmnopqrs", "tuvwxyz", "0123456789", "ÉÑŐÅĄ",
        "éñőåąçễ")
SMALL = ("ABDEFGHIJKMNPQRTXY", "abdefghijkmnpqrtxy")
# The commonest pairs of tests/outside/test_letters_spacing.py, and those that are hardest to set.
PAIRS = ("an ar el in ri er na on en ie", "ne li le ia re Ma la or ll nd", "ra il et is ha al nn ta ni ma",
         "th tt da ic te ce ol rl es he", "st Ro de ey at se Al ro ti Sh", "rn cl AV To Ty LT ii oo vv Ky")


def rows(lines: Iterable[tuple[str, Ruling, Form | None]], setter: Typesetter = SETTER, gap: float = 1.0) -> Page:
    """Return lines of text on their rulings; a form of None is the model with its stroke marks.

    Raises ValueError for a line that does not fit: a proof that is cut off proves nothing.
    """
    sheet = sheet_of(Paper.A4)
    items: list[Item] = []
    y = sheet.top_mm
    for text, ruling, form in lines:
        spacing = 0.4 * ruling.x_height_mm if form is None else 0.2 * ruling.x_height_mm * (form is Form.HOLLOW)
        line = setter.ruled(ruling, round(spacing, 2)).line(text)
        if line.width_mm > sheet.right_edge - sheet.left_mm - 5.0:
            raise ValueError(f"“{text}” is {line.width_mm:.0f} mm wide")
        maker = setter.thorough_cues(ruling)
        y += maker.headroom_mm if form is None else 0.0
        space = blocks.row_space(ruling, [line])
        baseline, x = y + space.rise_mm, sheet.left_mm + 5.0
        inks: Sequence[Ink] = (blocks.letters_at(setter, line, form, x, baseline) if form is not None else
                               line_with_cues(maker, setter.inker(ruling), line, maker.each(line), x, baseline))
        items.append(blocks.ruled_row(text, str(form), ruling, sheet.left_mm, sheet.right_edge, baseline, inks))
        y += space.height_mm + gap
    return Page(sheet.width_mm, y + 6.0, tuple(items))


def alphabets() -> Iterator[tuple[str, Page]]:
    """Yield the whole alphabet in each form that has ink."""
    for form in (Form.SOLID, Form.DOTTED, Form.WIDE, Form.DASHED, Form.FAINT, Form.HOLLOW):
        yield f"alphabet-{form}", rows(((text, preset("us-3/4"), form) for text in ALPHABET), gap=5.0)


def variants() -> Page:
    """Return the other forms that a school may choose, then a slant, then exit strokes."""
    alphabet = SETTER.alphabet
    other = LetterChoice(tuple((letter, forms[-1]) for letter, forms in alphabet.forms.items()))
    sheets = [rows([("a g y t q k w", preset("us-3/4"), Form.SOLID), ("IJMW1479", preset("us-3/4"), None)],
                   SETTER.lettering(other)),
              rows([("Marigold", preset("us-3/4"), Form.SOLID)], SETTER.lettering(read_choice("slant=8", alphabet))),
              rows([("Mandukhai", preset("us-3/4"), Form.SOLID)],
                   SETTER.lettering(read_choice("exit-strokes", alphabet)))]
    items: list[Item] = []
    y = 0.0
    for page, height in zip(sheets, (66.0, 36.0, 36.0), strict=True):
        items += [blocks.moved(item, 0.0, y) for item in page.items]
        y += height
    return sheets[0]._replace(items=tuple(items), height_mm=y + 6.0)


def main() -> None:
    """Write every proof."""
    sheet = SheetSettings(preset("us-1/2"), Paper.A4)
    rungs = Ladder((Part.DOTS, Part.WIDE, Part.STARTS, Part.FIRST))
    pictures = [
        *alphabets(),
        ("spacing", rows(((text, preset("de-5"), Form.SOLID) for text in PAIRS), gap=6.0)),
        ("cues", rows([(text, preset("us-3/4"), None) for text in CUED], gap=-4.0)),
        ("cues-small", rows([(text, preset(ruling), None) for ruling in ("us-3/8", "de-4", "fr-3", "uk-5")
                             for text in SMALL], gap=-1.0)),
        ("variants", variants()),
        ("ladder", practice_pages(SETTER, "Marigold", "Marigold", sheet._replace(ladder=rungs))[0]),
        ("size-finder", size_pages(SETTER, "Marigold", "Marigold", PageSettings(preset("us-3/4")))[0]),
    ]
    for name, page in pictures:
        (HERE / f"{name}.png").write_bytes(page_png(page, 2 * DPI if "small" in name else DPI))
        print(name)


if __name__ == "__main__":
    main()
