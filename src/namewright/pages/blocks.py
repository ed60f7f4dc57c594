"""What sheets and cards are built of: ruled rows, captions, boxes, the check bar. Millimetres, y down.

Each function returns finished items for a place it is told; where things go is decided by the page files.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache

from namewright.letters.choice import LetterChoice
from namewright.lines.forms import Form
from namewright.lines.ink import (
    BLACK,
    DARK,
    RULE,
    SHADE,
    Ink,
    Role,
    Shape,
    Style,
    dot_fragment,
    line,
    passage,
    shape_of,
)
from namewright.lines.ruling import GuideLine, Ruling, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tile_boxes import TileRows, boxes
from namewright.named_tuples import NamedTuple
from namewright.pages.drawable import drawable
from namewright.pages.page import Chart, Furniture, Guide, Item, Letters, Placed, Row, Tile
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.wording import TIED_SPACE, Wording

TEXT_MM = 1.9  # x-height of captions; with its ascenders that is type of about 11 pt
CHECK_BAR_MM = 50.0
NAME_MM = 3.6  # x-height of the child's name in the line that says whose page it is, much larger than the rest of it
CHECK_NOTE_MM = 1.3  # x-height of what the adult reads at the foot: small and grey, out of the child's way
ROW_CLEAR_MM = 2.0  # white that stays between a mark or tail and the next row
MIN_CLEAR_MM = 1.5  # the same where a page has no room for more

GUIDE_STYLES = {
    GuideLine.TOP: Style(0.3, RULE),
    GuideLine.MID: Style(0.3, RULE, (2.0, 1.5)),
    GuideLine.BASE: Style(0.5, RULE),
    GuideLine.DESCENDER: Style(0.2, RULE),
}
_BAND_STYLE = Style(0.12, RULE)
_FOLD_STYLE = Style(0.4, RULE)
_FOLD_STEP_MM = 1.6  # of its fine dots: no dash of a midline is so short
_BOX_STYLE = Style(0.4, DARK)
_DATE_MM, DATE_TEXT_MM = 34.0, 1.6  # the line a date is written on, and the x-height of the words before it
_MIN_START_MM, _START_PENS = 1.2, 1.7  # the width of a start dot, and the same in pens
_START = shape_of(dot_fragment([(0.0, 0.0)]))
_OVER_TOP_MM = 2.4  # so far the name may rise into the margin
_NAME_HERE = "\0"  # no name has it


class PageSettings(NamedTuple):
    """How a page of ruled rows is made that gives no support of its own: a group's sheet, the size finder."""

    ruling: Ruling
    paper: Paper = Paper.LETTER
    binding: bool = False
    language: str = "en"
    letters: LetterChoice = LetterChoice()


class RowSpace(NamedTuple):
    """How much height a ruled row takes over and under its baseline, for the names that stand in it."""

    rise_mm: float
    drop_mm: float

    @property
    def height_mm(self) -> float:
        """Return the height of the whole row."""
        return self.rise_mm + self.drop_mm


def row_space(ruling: Ruling, lines: Sequence[SetLine]) -> RowSpace:
    """Return the height of a row: the ruling's own, more where marks or tails reach beyond it."""
    pen = pen_width_mm(ruling)  # a stroke on a line covers it and reaches half a pen beyond: no reason to move rows
    rises = [one.rise_mm + ROW_CLEAR_MM for one in lines if one.rise_mm > ruling.line_height_mm + pen]
    drops = [one.drop_mm + ROW_CLEAR_MM for one in lines if one.drop_mm > ruling.descender_mm + pen]
    rise = max([ruling.line_height_mm, *rises])
    drop = max([ruling.descender_mm + ruling.gap_mm, *drops])
    return RowSpace(rise, drop)


def printed_depth(ruling: Ruling) -> float:
    """Return how far under the baseline the lowest printed line of a row lies, 0 where none does."""
    named = [-ruling.height_of(which) for which in ruling.lines]
    return max([0.0, *named, *(-band for band in ruling.bands_mm)])


def guides(ruling: Ruling, x0: float, x1: float, baseline: float) -> tuple[Guide, ...]:
    """Return the printed lines of a row, top to bottom."""
    return tuple([Guide(which, x0, x1, baseline - height, style) for which, height, style in _printed(ruling)])


@lru_cache(maxsize=64)  # of a ruling: every row of every page has them
def _printed(ruling: Ruling) -> tuple[tuple[GuideLine | None, float, Style], ...]:
    """Return the printed lines of a ruling with their heights over the baseline, top to bottom."""
    bands = [(None, band, _weighed(_BAND_STYLE, ruling, None)) for band in ruling.bands_mm]
    if ruling.inked.shaded_band:
        bands.insert(0, (None, ruling.x_height_mm / 2, Style(ruling.x_height_mm, SHADE)))
    named = [(which, ruling.height_of(which), _weighed(GUIDE_STYLES[which], ruling, which))
             for which in GuideLine if which in ruling.lines]
    return (*bands, *named)


def _weighed(style: Style, ruling: Ruling, which: GuideLine | None) -> Style:
    """Return a guide line's style as heavy as the ruling asks for; a bold baseline is black and twice as wide."""
    weight = ruling.inked.weight
    if which is GuideLine.BASE and ruling.inked.bold_baseline:
        return style._replace(width_mm=2 * weight * style.width_mm, colour=BLACK)
    return style if weight == 1.0 else style._replace(width_mm=weight * style.width_mm)


def ruled_row(name: str, form: str, ruling: Ruling, x0: float, x1: float, baseline: float,
              inks: Sequence[Ink] = ()) -> Row:
    """Return a row: its guide lines from ``x0`` to ``x1`` and ink already on its place."""
    return Row(name, form, (*guides(ruling, x0, x1, baseline), *inks))


def letters_at(setter: Typesetter, set_line: SetLine, forms: Form | Sequence[Form], x: float, baseline: float,
               ) -> tuple[Ink, ...]:
    """Return a set line inked with its leftmost centreline at ``x``."""
    return setter.inker(set_line.ruling).ink(set_line, forms, x, baseline)


def moved(item: Item, dx: float, dy: float) -> Item:
    """Return an item elsewhere on its page."""
    if isinstance(item, Row | Letters):
        return item._replace(items=tuple(_moved_leaf(leaf, dx, dy) for leaf in item.items))
    if isinstance(item, Placed):
        return item._replace(items=tuple(moved(each, dx, dy) for each in item.items))
    if isinstance(item, Furniture | Chart):
        return item._replace(items=tuple(ink.moved(dx, dy) for ink in item.items))
    if isinstance(item, Tile):
        return item._replace(x=item.x + dx, y=item.y + dy)
    return _moved_leaf(item, dx, dy)


def _moved_leaf(item: Guide | Ink, dx: float, dy: float) -> Guide | Ink:
    if isinstance(item, Ink):
        return item.moved(dx, dy)
    return item._replace(x0=item.x0 + dx, x1=item.x1 + dx, y=item.y + dy)


def text_at(setter: Typesetter, words: str, x: float, baseline: float, size_mm: float = TEXT_MM,
            colour: str = BLACK) -> Ink:
    """Return running text with its left edge at ``x``."""
    return setter.text_at(words, size_mm, x, baseline, colour)


def text_with_name(setter: Typesetter, words: Wording, key: str, name: str, x: float, baseline: float,
                   size_mm: float = 2.2, name_mm: float | None = None) -> tuple[Ink, ...]:
    """Return the title of a key about a name, its own words apart: they recur, the name does not.

    The name may be larger than the rest, in letters of ``name_mm``. Where our letters lack one of it and the names have
    a school's font, it stands in that.
    """
    inks: list[Ink] = []
    before, _, after = words.say(key, name=_NAME_HERE).replace(TIED_SPACE, " ").partition(_NAME_HERE)
    if name.endswith("."):  # “Ava B.” ends a sentence by itself
        after = after.removeprefix(".")
    for shown, size in ((before, size_mm), (name, name_mm or size_mm), (after, size_mm)):
        if shown.strip():
            start = x + setter.text_space(size_mm) * (shown[:1] == " ")
            ink = (name_to_read(setter, name, size).moved(start, baseline) if shown == name
                   else text_at(setter, shown.strip(), start, baseline, size))
            inks.append(ink)
            x = ink.bounds()[2] + setter.text_space(size_mm) * (0.35 + (shown[-1:] == " "))
    return passage(inks, Role.TITLE)


def name_to_read(setter: Typesetter, name: str, size_mm: float) -> Ink:
    """Return a name to read, its left edge at x 0: in our letters, or where these lack one in the school's own."""
    if setter.school_font is None or not setter.alphabet.missing(name):
        return setter.text(name, size_mm)
    ruling = print_ruling(size_mm)
    (ink,) = letters_at(setter, setter.ruled(ruling).line(name), Form.SOLID, 0.0, 0.0)
    return ink


def fitting(setter: Typesetter, words: str, room_mm: float, size: float) -> float:
    """Return the x-height, or the smaller one at which the words are no wider than the room, 0.4 mm at the least."""
    return _fitting(lambda tried: setter.text_width(words, tried), room_mm, size)


def fitting_name(setter: Typesetter, name: str, room_mm: float, size: float) -> float:
    """Return the same for a name to read."""
    def width_at(size_mm: float) -> float:
        x0, _, x1, _ = name_to_read(setter, name, size_mm).bounds()
        return x1 - x0
    return _fitting(width_at, room_mm, size)


def _fitting(width_at: Callable[[float], float], room_mm: float, size: float) -> float:
    """Return the same for any width; gaps between letters do not shrink with these, so one division is not enough."""
    while size > 0.4 and (width := width_at(size)) > room_mm:
        size *= min(0.98, room_mm / width)
    return size


def owner_line(setter: Typesetter, words: Wording, name: str, x: float, right: float, top: float, *,
               dated: bool = True, date: str = "page.date") -> tuple[Ink, ...]:
    """Return the line that says whose page this is, the name large in it, and at its right a line for the date.

    ``date`` is what the child says before the date: what was done here.

    It takes some 8 mm below ``top``. A long name stands smaller, and where even so it leaves no room the date has none.
    """
    baseline = top + 6.5
    highest = -name_to_read(setter, name, NAME_MM).bounds()[1]  # two marks over a capital
    usual = NAME_MM * min(1.0, (baseline - top + _OVER_TOP_MM) / highest)
    wrote = words.say(date)
    date_x = right - _DATE_MM - setter.text_width(wrote, DATE_TEXT_MM) - 2.0
    own = setter.text_width(words.say("page.owner", name="").strip(), 2.2) + 5.0
    size = fitting_name(setter, name, date_x - x - own - 4.0, usual)
    has_date = dated and size >= 1.9
    if not has_date:
        size = fitting_name(setter, name, right - x - own, usual)
    title = text_with_name(setter, words, "page.owner", name, x, baseline, min(2.2, size), size)
    if not has_date:
        return title
    return (*title, text_at(setter, wrote, date_x, baseline, DATE_TEXT_MM),
            Ink.of(Style(0.3, RULE), (line(right - _DATE_MM, baseline, right, baseline),)))


def start_dot(x: float, y: float, width_mm: float) -> Ink:
    """Return the solid dot where the first stroke of a row begins."""
    return Ink(Style(width_mm, BLACK), _START, x, y)


def name_start(setter: Typesetter, set_line: SetLine, x: float, baseline: float) -> Ink:
    """Return the solid dot where the first stroke of a name whose leftmost centreline is at ``x`` begins.

    A school's font does not tell where strokes begin: there the dot stands at ``x``, halfway up the small letters.
    """
    ruling = set_line.ruling
    width = max(_MIN_START_MM, _START_PENS * pen_width_mm(ruling))
    if not setter.knows_strokes:
        return start_dot(x, baseline - ruling.x_height_mm / 2, width)
    first = set_line.letters[0]
    right, down = first.letter.strokes[0].start
    return start_dot(x + first.x + right, baseline + down, width)


def fold_line(width_mm: float, y: float) -> Furniture:
    """Return the fine dots along which a page of a width is folded, right across the paper."""
    return Furniture((Ink(_FOLD_STYLE, _fold_dots(width_mm), 0.0, y),), bleeds=True)


@lru_cache(maxsize=16)
def _fold_dots(width_mm: float) -> Shape:
    return shape_of(dot_fragment((_FOLD_STEP_MM * (at + 0.5), 0.0) for at in range(int(width_mm / _FOLD_STEP_MM))))


def check_bar(setter: Typesetter, words: Wording, x: float, y: float) -> tuple[Ink, ...]:
    """Return the bar of exactly 50 mm, centre of end tick to centre of end tick, and its note beside it."""
    bar = Ink.of(Style(0.25, DARK), (line(x, y, x + CHECK_BAR_MM, y), line(x, y - 1.3, x, y + 1.3),
                                     line(x + CHECK_BAR_MM, y - 1.3, x + CHECK_BAR_MM, y + 1.3)))
    return (bar, text_at(setter, words.say("page.check"), x + CHECK_BAR_MM + 3, y + 0.8, CHECK_NOTE_MM, RULE))


def adults_foot(setter: Typesetter, words: Wording, x: float, y: float, note: str = "", whose: str = "",
                ) -> tuple[Ink, ...]:
    """Return what the adult reads at the foot of a child's page: the check bar, and below its words a note.

    Over the bar stands whose page it is, where that is asked for.
    """
    bar, check = check_bar(setter, words, x, y)
    said = [bar, check]
    if note:
        said = [bar, check.moved(0.0, -1.7), text_at(setter, note, x + CHECK_BAR_MM + 3, y + 2.5, CHECK_NOTE_MM, RULE)]
    if whose:
        said.append(told_whose(setter, words, x, y - 1.9, whose))
    return tuple(said)


def told_whose(setter: Typesetter, words: Wording, x: float, baseline: float, whose: str) -> Ink:
    """Return, small and grey for the adult, whose page or card it is: another child has the same name."""
    return text_at(setter, words.say("page.whose", name=drawable(setter, whose)), x, baseline, CHECK_NOTE_MM, RULE)


def tile_boxes(setter: Typesetter, tiles: TileRows, x: float, y: float, *, hint: bool) -> tuple[Tile | Ink, ...]:
    """Return the boxes with the top left corner of the first at (``x``, ``y``).

    With ``hint`` each box shows its letter small in the corner, where a tile will cover it.
    """
    items: list[Tile | Ink] = []
    for letter, right, down in boxes(tiles):
        items.append(Tile(x + right, y + down, tiles.box_mm, tiles.box_mm, letter, _BOX_STYLE))
        if hint:
            hint_ink = setter.letter(letter, 2.6).read_as(goes_on=True)
            items.append(hint_ink.moved(x + right + 2.2, y + down + 7.0))
    return tuple(items)
