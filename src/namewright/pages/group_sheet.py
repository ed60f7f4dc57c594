"""A sheet for a group of children who share letters: their names, and the shared letters to practise side by side.

One page a group. Every shared letter has a row of its own: the model with its stroke marks, once in dots, then white
for everybody in turn. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from namewright.lines.cues import END_MM, line_with_cues
from namewright.lines.forms import Form
from namewright.lines.ink import Role, passage
from namewright.lines.ruling import Ruling
from namewright.lines.setting import pen_width_mm
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Row, checked
from namewright.pages.paper import Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.wording import wording

_HEADER_MM, _FOOTER_MM, _CAPTION_MM = 10.0, 7.0, 7.0
_LINE_MM = 5.6
_SIZE_MM = 1.9


def group_page(setter: Typesetter, number: int, children: Sequence[tuple[str, str]], shared: Sequence[str],
               settings: blocks.PageSettings) -> Page:
    """Return the sheet of group ``number``. ``children`` gives each child's label and the name to practise.

    There are as many shared letters, in the order given, as there is room for, and then the names if all have
    room. Raises MissingLetters for a letter we cannot draw.
    """
    labels = [label for label, _ in children]
    sheet = sheet_of(settings.paper, binding=settings.binding)
    words = wording(settings.language)
    setter = setter.lettering(settings.letters)
    heading = words.say("page.group.heading", number=number, names=tuple(labels))
    lines = setter.wrapped(heading, sheet.room_width, 2.2)
    head = passage((blocks.text_at(setter, line, sheet.left_mm, sheet.top_mm + 5.0 + at * _LINE_MM, 2.2)
                    for at, line in enumerate(lines)), Role.TITLE)
    y = sheet.top_mm + _HEADER_MM + (len(lines) - 1) * _LINE_MM
    caption = words.say("page.group.letters" if shared else "page.group.none")
    captioned = setter.wrapped(caption, sheet.room_width, _SIZE_MM)
    items: list[Item] = [*head, *passage(blocks.text_at(setter, line, sheet.left_mm, y + 3.0 + at * _LINE_MM, _SIZE_MM)
                                         for at, line in enumerate(captioned))]
    y += (len(captioned) - 1) * _LINE_MM
    rows = list(_rows(setter, shared, settings.ruling, sheet, y + _CAPTION_MM))
    items += rows
    below = max((guide.bounds()[3] for row in rows for guide in row.items), default=y) + settings.ruling.descender_mm
    different = list(dict.fromkeys(name for _, name in children))
    names = list(_names(setter, different, settings.ruling, sheet, below + _CAPTION_MM))
    if len(names) == len(different):  # everybody or nobody
        caption = words.say("page.group.names")
        items.append(blocks.text_at(setter, caption, sheet.left_mm, below + _CAPTION_MM - 2.8, _SIZE_MM))
        items += chain.from_iterable(names)
    items.append(Furniture(blocks.check_bar(setter, words, sheet.left_mm, sheet.foot - 1.5)))
    return checked(Page(sheet.width_mm, sheet.height_mm, tuple(items), outline=heading))


def _rows(setter: Typesetter, shared: Sequence[str], ruling: Ruling, sheet: Sheet, y: float) -> Iterator[Row]:
    """Yield a row for every letter, both its cases where the shared letter has two, while there is room."""
    spacing = round(0.4 * ruling.x_height_mm, 2)
    maker, ruled = setter.thorough_cues(ruling), setter.ruled(ruling, spacing)
    for letter in shared:
        capital = letter.upper()
        line = ruled.line(letter if capital == letter or len(capital) > len(letter) else f"{capital} {letter}")
        space = blocks.row_space(ruling, [line])
        height = maker.headroom_mm + space.height_mm
        if y + height > sheet.foot - _FOOTER_MM:
            return
        baseline = y + maker.headroom_mm + space.rise_mm
        x = sheet.left_mm + pen_width_mm(ruling) / 2 + END_MM
        inks = list(line_with_cues(maker, setter.inker(ruling), line, maker.each(line), x, baseline))
        inks += blocks.letters_at(setter, line, Form.DOTTED, x + line.width_mm + 2 * ruling.x_height_mm, baseline)
        yield blocks.ruled_row(line.text, Form.SOLID, ruling, sheet.left_mm, sheet.right_edge, baseline, inks)
        y += height + 2.0


def _names(setter: Typesetter, names: Sequence[str], ruling: Ruling, sheet: Sheet, y: float,
           ) -> Iterator[tuple[Row, ...]]:
    """Yield the rows of every name while there is room: solid, with white beside it or, for a wide name, below it.

    A name wider than the sheet has none.
    """
    for name in names:
        if setter.alphabet.missing(name):
            continue
        line = setter.ruled(ruling).line(name)
        if line.width_mm + pen_width_mm(ruling) + 2 * END_MM > sheet.room_width:
            continue
        space = blocks.row_space(ruling, [line])
        step = space.height_mm + 2.0
        forms = (Form.SOLID,) if 2 * line.width_mm + 2 * END_MM <= sheet.room_width else (Form.SOLID, Form.BLANK)
        if y + len(forms) * step - 2.0 > sheet.foot - _FOOTER_MM:
            return
        x = sheet.left_mm + pen_width_mm(ruling) / 2 + END_MM
        baselines = [y + at * step + space.rise_mm for at in range(len(forms))]
        yield tuple(blocks.ruled_row(name, form, ruling, sheet.left_mm, sheet.right_edge, baseline,
                                     blocks.letters_at(setter, line, form, x, baseline))
                    for form, baseline in zip(forms, baselines, strict=True))
        y += len(forms) * step
