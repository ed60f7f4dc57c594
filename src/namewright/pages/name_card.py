"""A name card for one child: the model with its stroke marks and, where there is room, a row to write on.

One card to a page on index cards and A6, or several to a sheet with cut lines. Millimetres, y down.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from namewright.letters.choice import LetterChoice
from namewright.lines.cues import END_MM
from namewright.lines.fit import DoesNotFit, Fit, fit_name
from namewright.lines.forms import LONE_DOT, Form, pens_for
from namewright.lines.ink import RULE, Ink, Style, line
from namewright.lines.ruling import Ruling
from namewright.lines.setting import pen_width_mm
from namewright.lines.tuned import check_pens
from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.beats import Spoken
from namewright.pages import blocks
from namewright.pages.letter_strip import ModelMarks, model_marks, strip_over, strip_rows
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paper import CardSize, Paper
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import Wording, wording

CARD_EDGE_MM = 8.0  # more than the 6.35 mm that printers may leave white
_SHEET_EDGE_MM = 5.0  # cut lines may come nearer to the edge of the sheet than letters may
_BAR_ROOM_MM = 5.0  # over the cards of a sheet
_CUT_PAST_MM = 2.5  # by so much a cut goes on past the cards
_UNDER_STRIP_MM = 4.0  # wished for under a strip of letters: nearer, its lowest line and a top line read as a pair
_CUT_STYLE = Style(0.15, RULE, (3.0, 2.0))


class CardSettings(NamedTuple):
    """How a card is made; ``names_in``, ``beats`` and ``whose`` as for a sheet."""

    ruling: Ruling
    size: CardSize = CardSize.INDEX_4X6
    support: Support = Support.FULL
    language: str = "en"
    letters: LetterChoice = LetterChoice()
    names_in: str | None = None
    beats: str = ""
    whose: str = ""

    @property
    def spoken(self) -> Spoken:
        """Return how the name is spoken."""
        return Spoken(self.names_in, self.language, self.beats)


def card_page(setter: Typesetter, name: str, label: str, settings: CardSettings) -> Page:
    """Return one card on a page of its own size. Raises MissingLetters or DoesNotFit."""
    width, height = settings.size.size_mm
    items = tuple(_card_items(setter, name, settings))
    return checked(Page(width, height, items, outline=label, edge_mm=CARD_EDGE_MM))


def card_sheet(setter: Typesetter, name: str, label: str, settings: CardSettings, paper: Paper) -> Page:
    """Return a sheet filled with cards of one child (one to use, the others to spare), with lines to cut along.

    The sheet lies the way that takes more cards. The check bar stands once, in what is cut away, so that no card that a
    child keeps has one; at the other end the adult is asked to see to the cutting, and told whose cards these are where
    another child has the same name. Where the cards cover the whole sheet there is none of it (see ``cut_away_mm``).
    Raises MissingLetters or DoesNotFit.
    """
    width, height = settings.size.size_mm
    sheet_width, sheet_height = _lying(settings.size, paper)
    across, down = int(sheet_width // width), int(sheet_height // height)
    left, top = (sheet_width - across * width) / 2, cut_away_mm(settings.size, paper)
    card = tuple(_card_items(setter, name, settings))
    items = [blocks.moved(item, left + column * width, top + row * height)
             for row in range(down) for column in range(across) for item in card]
    if has_room_beside(settings.size, paper):
        words = wording(settings.language)
        items.append(Furniture(blocks.check_bar(setter, words, left + 2.0, top - _CUT_PAST_MM - 2.6)))
        items.append(Furniture(tuple(_under_cards(setter, words, settings, left + 2.0, sheet_height - top))))
    items.append(_cuts(sheet_width, sheet_height, [left + column * width for column in range(across + 1)],
                       [top + row * height for row in range(down + 1)]))
    return checked(Page(sheet_width, sheet_height, tuple(items), outline=label, edge_mm=_SHEET_EDGE_MM))


def _under_cards(setter: Typesetter, words: Wording, settings: CardSettings, x: float, foot: float) -> Iterator[Ink]:
    """Yield what the adult reads under the cards, clear of the cuts: whose they are, and the caution."""
    baseline = foot + _CUT_PAST_MM + 2.4 * blocks.CHECK_NOTE_MM
    if settings.whose:
        whose = blocks.told_whose(setter, words, x, baseline, settings.whose)
        yield whose
        x = whose.bounds()[2] + 3.0
    yield blocks.text_at(setter, words.say("page.cards_caution"), x, baseline, blocks.CHECK_NOTE_MM, RULE)


def _lying(size: CardSize, paper: Paper) -> tuple[float, float]:
    """Return width and height of a paper as it lies to take more cards."""
    width, height = size.size_mm
    return max((paper.size_mm, paper.size_mm[::-1]), key=lambda side: int(side[0] // width) * int(side[1] // height))


def cut_away_mm(size: CardSize, paper: Paper) -> float:
    """Return how much is cut away over the cards of a sheet, and as much under them."""
    height = _lying(size, paper)[1]
    return (height % size.size_mm[1]) / 2


def has_room_beside(size: CardSize, paper: Paper) -> bool:
    """Say whether what is cut away has room for what an adult reads."""
    return cut_away_mm(size, paper) >= _SHEET_EDGE_MM + _BAR_ROOM_MM


def _cuts(width: float, height: float, xs: list[float], ys: list[float]) -> Ink:
    """Return straight cuts along the cards and a little past them; one at the very edge of the paper is not needed.

    Level ones run right across the sheet, upright ones end before what the adult reads.
    """
    edge = _SHEET_EDGE_MM + _CUT_STYLE.width_mm
    over, under = max(edge, ys[0] - _CUT_PAST_MM), min(height - edge, ys[-1] + _CUT_PAST_MM)
    upright = [line(x, over, x, under) for x in xs if edge <= x <= width - edge]
    level = [line(edge, y, width - edge, y) for y in ys if edge <= y <= height - edge]
    return Ink.of(_CUT_STYLE, (*upright, *level))


class _Layout(NamedTuple):
    """What stands on a card and how high: the model's rows from ``top_mm`` down, then rows to write on.

    ``over_mm`` is the height that stroke marks need over each row of the model; ``tail_mm`` parts the model from
    the rows to write on where its tails or a strip would come too near to them.
    """

    fit: Fit
    space: blocks.RowSpace
    marks: ModelMarks | None
    writes: bool
    tail_mm: float
    top_mm: float

    @property
    def over_mm(self) -> float:
        return self.marks.over_mm(self.space.rise_mm) if self.marks else 0.0


def _card_items(setter: Typesetter, name: str, settings: CardSettings) -> Iterator[Item]:
    """Yield the items of a card with its top left corner at (0, 0)."""
    check_pens(settings.ruling)
    setter = setter.lettering(settings.letters)
    layout = _best_layout(setter, name, settings)
    y = layout.top_mm
    for count in range(len(layout.fit.lines)):
        yield from _model(setter, layout, count, settings, y + layout.over_mm + layout.space.rise_mm)
        y += layout.over_mm + layout.space.height_mm
    y += layout.marks.below_mm(layout.space.drop_mm) if layout.marks else 0.0
    if layout.marks and layout.marks.under:
        yield from strip_over(setter, layout.marks.under, name, CARD_EDGE_MM, y)
    if layout.writes:
        yield from _writing_rows(setter, layout.fit, settings, y + layout.tail_mm, layout.space)


def _best_layout(setter: Typesetter, name: str, settings: CardSettings) -> _Layout:
    """Return the layout with all the white between rows that the ruling has; with half of it where more then fits.

    A model that is too high even so has no more under each row than its own tails take. Raises
    MissingLetters, or DoesNotFit where the model alone is too wide or too high.
    """
    close = settings._replace(ruling=settings.ruling._replace(gap_mm=settings.ruling.gap_mm / 2))
    try:
        airy = _laid_out(setter, name, settings)
    except DoesNotFit:
        try:
            return _laid_out(setter, name, close)
        except DoesNotFit:
            return _laid_out(setter, name, settings._replace(ruling=settings.ruling._replace(gap_mm=0.0)), dense=True)
    if airy.writes and (airy.marks or not _has_cues(setter, settings)):
        return airy
    tight = _laid_out(setter, name, close)
    return max(airy, tight, key=lambda layout: (layout.marks is not None, layout.writes))


def _laid_out(setter: Typesetter, name: str, settings: CardSettings, *, dense: bool = False) -> _Layout:
    """Share out a card's height: first the model, then rows to write on, then a model's tails, as room allows.

    ``dense`` rows have under them only what their tails or printed lines take. Raises
    MissingLetters, or DoesNotFit where the model alone is too wide or too high.
    """
    width, height = settings.size.size_mm
    edge = CARD_EDGE_MM + _reach(settings)  # what stands on a line covers it and reaches beyond
    room = width - 2 * CARD_EDGE_MM
    fit = fit_name(name, setter.ruled(settings.ruling), (room - 2 * END_MM,), settings.spoken)
    space = blocks.row_space(settings.ruling, fit.lines)
    if dense:
        space = space._replace(drop_mm=blocks.ROW_CLEAR_MM + max(
            [blocks.printed_depth(settings.ruling), *(one.drop_mm for one in fit.lines)]))
    model = len(fit.lines) * space.height_mm
    free = height - 2 * edge
    if model - settings.ruling.gap_mm > free:  # the white under the last row may be lost
        raise DoesNotFit(name, model, free,
                         message("fit.card", name=name, needed=math.ceil(model), room=math.floor(free)))
    free -= model
    marks = model_marks(setter, fit.lines, room) if _has_cues(setter, settings) else None
    over = len(fit.lines) * marks.over_mm(space.rise_mm) + marks.below_mm(space.drop_mm) if marks else 0.0
    lost = settings.ruling.gap_mm if marks and marks.cues else 0.0
    if over > free + lost:  # a small card has a large model without them
        marks, over = None, 0.0
    free = max(0.0, free - over)
    rows = len(fit.lines) * space.height_mm
    writes = rows <= free
    free -= rows * writes
    tail = min(max(_tail_room(fit, space), _strip_room(marks, space)), free) if writes else 0.0
    free -= tail
    return _Layout(fit, space, marks, writes, tail, edge + max(0.0, free) / 2)


def _tail_room(fit: Fit, space: blocks.RowSpace) -> float:
    """Return by how much a tail of the model's last row would come nearer than two millimetres to the row below."""
    return max(0.0, fit.lines[-1].drop_mm + blocks.ROW_CLEAR_MM - space.drop_mm)


def _strip_room(marks: ModelMarks | None, space: blocks.RowSpace) -> float:
    """Return the white that is wished for under a strip that is lower than the model's row, or has rows of its own."""
    strip = marks.strip if marks else None
    return _UNDER_STRIP_MM if marks and strip and (marks.under or strip.drop_mm > space.drop_mm) else 0.0


def _reach(settings: CardSettings) -> float:
    """Return how far ink reaches from its centreline, for pen and dots; a lone dot is half as wide again."""
    pens = pens_for(settings.ruling)
    return LONE_DOT / 2 * max(pens.model_mm, pens.dot_mm)


def _has_cues(setter: Typesetter, settings: CardSettings) -> bool:
    return setter.knows_strokes and settings.support is not Support.INDEPENDENT


def _model(setter: Typesetter, layout: _Layout, count: int, settings: CardSettings, baseline: float) -> Iterator[Item]:
    """Yield a row of the model, with its stroke marks or with the strip of letters that has them beside it."""
    line, marks = layout.fit.lines[count], layout.marks
    x, end = _letters_x(settings), settings.size.size_mm[0] - CARD_EDGE_MM
    inks = blocks.letters_at(setter, line, Form.SOLID, x, baseline)
    if marks and marks.cues:
        inks += marks.maker.ink(line, marks.cues[count], x, baseline)
    beside = marks.strip if marks and marks.beside else None
    yield blocks.ruled_row(line.text, Form.SOLID, settings.ruling, CARD_EDGE_MM,
                           x + line.width_mm + END_MM if beside else end, baseline, inks)
    if beside:
        yield from strip_rows(setter, beside, line.text, end - beside.width_mm, baseline)


def _letters_x(settings: CardSettings) -> float:
    """Return where the leftmost centreline of a row stands."""
    return CARD_EDGE_MM + END_MM + pen_width_mm(settings.ruling) / 2


def _writing_rows(setter: Typesetter, fit: Fit, settings: CardSettings, y: float, space: blocks.RowSpace,
                  ) -> Iterator[Item]:
    """Yield the row to write on: dotted for full support, the first letter dotted for partial, else blank."""
    width, _ = settings.size.size_mm
    for set_line in fit.lines:
        letters = len(set_line.letters)
        forms: dict[Support, list[Form]] = {
            Support.FULL: [Form.DOTTED] * letters,
            Support.PARTIAL: [Form.DOTTED] + [Form.BLANK] * (letters - 1),
        }
        each = forms.get(settings.support, [Form.BLANK] * letters)
        baseline = y + space.rise_mm
        inks = blocks.letters_at(setter, set_line, each, _letters_x(settings), baseline)
        yield blocks.ruled_row(set_line.text, Form.DOTTED if inks else Form.BLANK, settings.ruling, CARD_EDGE_MM,
                               width - CARD_EDGE_MM, baseline, inks)
        y += space.height_mm
