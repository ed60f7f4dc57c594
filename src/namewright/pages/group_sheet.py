"""A sheet for a group of children who share letters: their names, and the shared letters to practise side by side.

One page a group. Every shared letter has a row of its own: the model with its stroke marks, once in dots, then white
for everybody in turn, and more rows of white where the page has room. Where no letter is shared everybody's own first
letter stands there. A child whose name cannot be drawn has empty lines among the names. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.lines.cues import END_MM, line_with_cues
from namewright.lines.fit import DoesNotFit, fit_name
from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Role, passage
from namewright.lines.ruling import Ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Row, checked
from namewright.pages.paper import Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.wording import wording

_HEADER_MM, _FOOTER_MM, _CAPTION_MM = 10.0, 7.0, 7.0
_APART_MM = 2.0  # between two rows, beside the ruling's own white
_LEAST_LETTERS = 3  # with fewer, names are no reason to leave a letter out: what is shared is what the page is for
_MOST_MORE = 2  # rows of white that a letter has beside its own
_LINE_MM = 5.6
_SIZE_MM = 1.9


class _Lines(NamedTuple):
    """Rows that belong together: a name, in one line or more, then empty ones; a child who has no letters is told."""

    shown: tuple[SetLine, ...]
    empty: int
    told: str = ""


class _Group(NamedTuple):
    """The page as it is made: its letters, what it is ruled with and where."""

    setter: Typesetter
    ruling: Ruling
    sheet: Sheet

    @property
    def x(self) -> float:
        """Return where the ink of a row begins."""
        return self.sheet.left_mm + pen_width_mm(self.ruling) / 2 + END_MM

    @property
    def end(self) -> float:
        """Return how far down rows may reach."""
        return self.sheet.foot - _FOOTER_MM

    def height(self, lines: Sequence[SetLine] = ()) -> float:
        """Return what a row takes, with the white under it."""
        return blocks.row_space(self.ruling, lines).height_mm + _APART_MM


def group_page(setter: Typesetter, number: int, children: Sequence[tuple[str, str]], shared: Sequence[str],
               settings: blocks.PageSettings) -> Page:
    """Return the sheet of group ``number``. ``children`` gives each child's label and the name to practise.

    There are as many shared letters, in the order given, as leave room for the names, three or all at the least; where
    even so not all names have room, letters fill the page. Raises MissingLetters for a letter we cannot draw.
    """
    sheet = sheet_of(settings.paper, binding=settings.binding)
    words = wording(settings.language)
    group = _Group(setter.lettering(settings.letters), settings.ruling, sheet)
    heading = words.say("page.group.heading", number=number, names=tuple(label for label, _ in children))
    items, y = _headed(setter, sheet, heading, words.say("page.group.letters" if shared else "page.group.none"))
    letters, names = _letter_lines(group, shared or _first_letters(group, children), y), _name_lines(group, children)
    named = _CAPTION_MM + sum(_names_height(group, one) for one in names or ())
    fewer = _with_room_under(group, letters, y, named)
    letters, names = (fewer, names) if names and fewer else (letters, None)
    taken = y + sum(_letter_height(group, line) for line in letters)
    free = group.end - taken - (named if names else 0.0)
    more = min(_MOST_MORE * len(letters), max(0, int((free + _APART_MM) // group.height())))
    for at, line in enumerate(letters):
        rows = 1 + (more + len(letters) - 1 - at) // len(letters)
        items += _letter_rows(group, line, rows, y)
        y += _letter_height(group, line) + (rows - 1) * group.height()
    if names:
        items += _named_rows(setter, group, words.say("page.group.names"), names, y)
    items.append(Furniture(blocks.check_bar(setter, words, sheet.left_mm, sheet.foot - 1.5)))
    return checked(Page(sheet.width_mm, sheet.height_mm, tuple(items), outline=heading))


def _named_rows(setter: Typesetter, group: _Group, caption: str, names: Sequence[_Lines], y: float) -> list[Item]:
    """Return the rows of each child under their caption, from ``y`` down."""
    items: list[Item] = [blocks.text_at(setter, caption, group.sheet.left_mm, y + _CAPTION_MM - 2.8, _SIZE_MM)]
    y += _CAPTION_MM
    for one in names:
        items += _name_rows(group, one, y)
        y += _names_height(group, one)
    return items


def _headed(setter: Typesetter, sheet: Sheet, heading: str, caption: str) -> tuple[list[Item], float]:
    """Return the heading of a page and the caption of its letters, and where these begin."""
    lines = setter.wrapped(heading, sheet.room_width, 2.2)
    y = sheet.top_mm + _HEADER_MM + (len(lines) - 1) * _LINE_MM
    captioned = setter.wrapped(caption, sheet.room_width, _SIZE_MM)
    items: list[Item] = [*passage((blocks.text_at(setter, line, sheet.left_mm, sheet.top_mm + 5.0 + at * _LINE_MM, 2.2)
                       for at, line in enumerate(lines)), Role.TITLE),
             *passage(blocks.text_at(setter, line, sheet.left_mm, y + 3.0 + at * _LINE_MM, _SIZE_MM)
                      for at, line in enumerate(captioned))]
    return items, y + (len(captioned) - 1) * _LINE_MM + _CAPTION_MM


# --- letters ------------------------------------------------------------------------------------------


def _first_letters(group: _Group, children: Sequence[tuple[str, str]]) -> list[str]:
    """Return the first letter of everybody's name, once each; one that has no small form only where there is none."""
    firsts = []
    for _, name in children:
        letters = [one for one in clusters(name) if one.strip() and not group.setter.alphabet.missing(one)]
        firsts += [one.lower() for one in letters if one.lower() != one.upper()][:1] or letters[:1]
    return [one for one in dict.fromkeys(firsts) if not group.setter.alphabet.missing(one)]


def _letter_lines(group: _Group, letters: Sequence[str], y: float) -> list[SetLine]:
    """Return a line for every letter, both its cases where it has two, while there is room."""
    ruled = group.setter.ruled(group.ruling, round(0.4 * group.ruling.x_height_mm, 2))
    lines: list[SetLine] = []
    for letter in letters:
        capital = letter.upper()
        line = ruled.line(letter if capital == letter or len(capital) > len(letter) else f"{capital} {letter}")
        y += _letter_height(group, line)
        if y - _APART_MM > group.end:
            break
        lines.append(line)
    return lines


def _with_room_under(group: _Group, letters: list[SetLine], y: float, needed_mm: float) -> list[SetLine]:
    """Return as many of the letters as leave room for what stands under them; none where that would be too few."""
    while letters and y + sum(_letter_height(group, line) for line in letters) + needed_mm - _APART_MM > group.end:
        letters = letters[:-1] if len(letters) > _LEAST_LETTERS else []
    return letters


def _letter_height(group: _Group, line: SetLine) -> float:
    return group.setter.thorough_cues(group.ruling).headroom_mm + group.height([line])


def _letter_rows(group: _Group, line: SetLine, rows: int, y: float) -> Iterator[Row]:
    """Yield a letter's row, the model and the letter in dots, and more rows of white under it."""
    setter, sheet, ruling = group.setter, group.sheet, group.ruling
    maker = setter.thorough_cues(ruling)
    baseline = y + maker.headroom_mm + blocks.row_space(ruling, [line]).rise_mm
    inks = list(line_with_cues(maker, setter.inker(ruling), line, maker.each(line), group.x, baseline))
    inks += blocks.letters_at(setter, line, Form.DOTTED, group.x + line.width_mm + 2 * ruling.x_height_mm, baseline)
    yield blocks.ruled_row(line.text, Form.SOLID, ruling, sheet.left_mm, sheet.right_edge, baseline, inks)
    y += _letter_height(group, line)
    for at in range(rows - 1):
        below = y + at * group.height() + blocks.row_space(ruling, ()).rise_mm
        yield blocks.ruled_row("", Form.BLANK, ruling, sheet.left_mm, sheet.right_edge, below)


# --- names --------------------------------------------------------------------------------------------


def _name_lines(group: _Group, children: Sequence[tuple[str, str]]) -> list[_Lines] | None:
    """Return everybody's rows, those of one name once: solid, with white beside it or, for a wide name, below it.

    None where somebody's name is too wide for the page.
    """
    room = group.sheet.room_width - pen_width_mm(group.ruling) - 2 * END_MM
    lines: dict[str, _Lines] = {}
    for label, name in children:
        if group.setter.alphabet.missing(name):
            lines[label] = _Lines((), 1, label)
            continue
        try:
            shown = fit_name(name, group.setter.ruled(group.ruling), [room]).lines
        except DoesNotFit:
            return None
        beside = len(shown) == 1 and 2 * shown[0].width_mm + 2 * END_MM <= group.sheet.room_width
        lines[name] = _Lines(shown, 0 if beside else len(shown))
    return list(lines.values())


def _names_height(group: _Group, one: _Lines) -> float:
    return (len(one.shown) + one.empty) * group.height(one.shown)


def _name_rows(group: _Group, one: _Lines, y: float) -> Iterator[Item]:
    setter, sheet, ruling = group.setter, group.sheet, group.ruling
    space = blocks.row_space(ruling, one.shown)
    if one.told:
        x = sheet.right_edge - setter.text_width(one.told, blocks.CHECK_NOTE_MM)
        yield Furniture((blocks.text_at(setter, one.told, x, y - 0.8, blocks.CHECK_NOTE_MM, RULE),))
    for at in range(len(one.shown) + one.empty):
        baseline = y + at * group.height(one.shown) + space.rise_mm
        inks = blocks.letters_at(setter, one.shown[at], Form.SOLID, group.x, baseline) if at < len(one.shown) else ()
        form, name = Form.SOLID if inks else Form.BLANK, one.shown[at % len(one.shown)].text if one.shown else ""
        yield blocks.ruled_row(name, form, ruling, sheet.left_mm, sheet.right_edge, baseline, inks)
