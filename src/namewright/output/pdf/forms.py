"""What the pages of a batch share: a shape or a text that recurs is written once, as a form (ISO 32000-1, 8.10).

Hundredths of a millimetre, y up, about the origin of what is drawn.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable
from functools import lru_cache

from namewright.geometry import boxes
from namewright.lines.ink import Fragment, Ink, Shape, Spelled, Style
from namewright.named_tuples import NamedTuple
from namewright.output.pdf.font import shown, spelled_clusters
from namewright.output.pdf.paths import UNIT, operators
from namewright.pages.page import Page, leaves
from namewright.wording import Wording

_FORM_PAYS = 300  # of 100, 200, 300, 500 and 1,000 what made classes of thirty and three hundred smallest
_Key = Fragment | tuple[str, float]  # what may recur: a fragment, a text by its words and its x-height
_NAMES = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"


class Form(NamedTuple):
    """A shape that is drawn in several places, its pen set by whoever draws it: its bytes, and the box it may fill."""

    content: bytes
    box: tuple[int, int, int, int]
    is_text: bool = False


def form_name(number: int) -> str:
    """Return the name of a batch's form: a to z, A to Z, aa, ba and so on."""
    rest, letter = divmod(number, len(_NAMES))
    return (form_name(rest - 1) if rest else "") + _NAMES[letter]


def recurring(pages: Iterable[Page]) -> frozenset[_Key]:
    """Return the fragments and the texts for which a form is shorter than drawing them on each page.

    On one page a repeated fragment costs next to nothing: deflating finds it. A form has a price of its own, so that
    plain drawing has to cost ``_FORM_PAYS`` characters first.
    """
    on_pages: Counter[_Key] = Counter()
    for page in pages:
        inks = [item for item in leaves(page.items) if isinstance(item, Ink)]
        shapes = {id(ink.shape): ink.shape for ink in inks if ink.spelled is None}  # a name stands in several rows
        fragments = {id(fragment): fragment for shape in shapes.values() for _, _, fragment in shape.pieces}
        on_pages.update({*fragments.values(), *[(spelled.words, spelled.x_height_mm)
                                                for _, _, _, _, spelled in inks if spelled is not None]})
    return frozenset(key for key, count in on_pages.items() if count > 1 and (count - 1) * _cost(key) > _FORM_PAYS)


def _cost(key: _Key) -> int:
    return len(operators(key)) if isinstance(key, Fragment) else 4 * len(key[0])


class Shared:
    """What the pages of a batch share: forms as they are met, which fragments are to become one, letters used."""

    def __init__(self, recurring: frozenset[_Key], words: Wording) -> None:
        self.recurring, self.words = recurring, words
        self.names: dict[Form, str] = {}
        self.texts: dict[_Key, str] = {}
        self.drawings: dict[tuple[float, str | None], tuple[dict[int, str], dict[int, str]]] = {}
        self.seen: set[str] = set()
        self.laid_over: set[str] = set()

    def name(self, form: Form) -> str:
        """Return the form's name, a new one when it is first met."""
        if form not in self.names:
            self.names[form] = form_name(len(self.names))
        return self.names[form]

    def text(self, ink: Ink, spelled: Spelled) -> str | None:
        """Return the name of the form that shows a text; None for one that does not recur."""
        key = (spelled.words, spelled.x_height_mm)
        if key not in self.texts:
            self.seen.update(spelled_clusters(spelled.words))
            if key in self.recurring:
                self.texts[key] = self.name(_text_form(ink, spelled))
        return self.texts.get(key)

    def drawing(self, shape: Shape, style: Style) -> str:
        """Return the operators that draw a shape about its first piece, with the pen as the style has it.

        Shapes and fragments are known by their ids: those of a batch live as long as it is drawn.
        """
        shapes, fragments = self.drawings.setdefault((style.width_mm, style.fill), ({}, {}))
        known = shapes.get(id(shape))
        if known is None:
            known = shapes[id(shape)] = " ".join(self._pieces(shape, style, fragments))
        return known

    def _pieces(self, shape: Shape, style: Style, known: dict[int, str]) -> list[str]:
        """Return what draws each piece, and between them the steps from one to the next.

        Places are rounded, not steps, so that errors never add up.
        """
        pieces = shape.pieces
        left, top, _ = pieces[0]
        across = down = 0
        drawn: list[str] = []
        for x, y, fragment in pieces:
            right, below = round((x - left) * UNIT), round((top - y) * UNIT)
            if right != across or below != down:
                drawn.append(f"1 0 0 1 {right - across} {below - down} cm")
                across, down = right, below
            operated = known.get(id(fragment))
            if operated is None:
                operated = known[id(fragment)] = (
                    f"/{self.name(_form(fragment, style))} Do" if fragment in self.recurring
                    else f"{operators(fragment).decode('ascii')} {painting(style)}")
            drawn.append(operated)
        return drawn


@lru_cache(maxsize=2000)
def _form(fragment: Fragment, style: Style) -> Form:
    reach = style.width_mm / 2 + 1.0
    x0, y0, x1, y1 = fragment.bounds
    box = (round((x0 - reach) * UNIT), round((-y1 - reach) * UNIT), round((x1 + reach) * UNIT),
           round((reach - y0) * UNIT))
    return Form(operators(fragment) + f" {painting(style)}".encode("ascii"), box)


def _text_form(ink: Ink, spelled: Spelled) -> Form:
    (x0, y0, x1, y1), left = boxes.grown(ink.shape.box, ink.style.width_mm / 2), ink.shape.xs[0]
    box = (math.floor((x0 - left) * UNIT), math.floor(-y1 * UNIT), math.ceil((x1 - left) * UNIT), math.ceil(-y0 * UNIT))
    return Form(f"BT {shown(ink, spelled)} ET".encode("latin-1"), box, is_text=True)


def painting(style: Style) -> str:
    """Return the operator that fills, strokes or does both (8.5.3); a line of no width would be a hair's, not none."""
    if style.fill is None:
        return "S"
    return "B" if style.width_mm else "f"
