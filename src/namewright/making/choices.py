"""What is chosen, by whoever may choose it, and which choice holds.

From the bottom up: the usual (``settled``), what is kept for the class, what is asked for now, what a child has of
its own in the list or the class's file. A choice that a layer leaves open is that of the layer below. A ruling that
is named brings its own measures: a line height, midline or row gap of a layer below was meant for other lines.
Lengths are millimetres. Out of scope: how a choice is kept (``classbook``) and what it does to a page (``pages``).
"""

from __future__ import annotations

from collections.abc import Mapping

from namewright.letters.alphabet import upright
from namewright.letters.choice import LetterChoice, read_choice
from namewright.lines.ruling import DEFAULT_RULING, Ruling, preset
from namewright.lines.tuned import tuned
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.pages.hue import read_colour
from namewright.pages.ladder import Chain, Ladder, Part, read_rungs
from namewright.pages.paper import Paper
from namewright.pages.sheet_settings import SheetSettings
from namewright.practice.ordering import Order
from namewright.roster.children import Child
from namewright.settings import Hand, Support
from namewright.tuning import Tuning, tuning_of
from namewright.wording import FIRST

_OF_ITS_LINES = ("line_height", "midline", "row_gap", "unlined")


class Choices(NamedTuple):
    """One layer of choices; None leaves a choice open. ``letters`` and ``tuning`` leave open each part of theirs."""

    ruling: Ruling | None = None
    paper: Paper | None = None
    landscape: bool | None = None
    binding: bool | None = None
    support: Support | None = None
    hand: Hand | None = None
    language: str | None = None
    order: Order | None = None
    rungs: tuple[Part, ...] | None = None
    chain: Chain | None = None
    keep_dots: str | None = None
    names_in: str | None = None
    beats: str | None = None
    colour: str | None = None
    sleeve: bool | None = None
    tile_names: bool | None = None
    letters: LetterChoice = LetterChoice()
    tuning: Tuning = Tuning()

    def over(self, below: Choices) -> Choices:
        """Return these choices laid over others."""
        under = below.tuning
        if self.ruling is not None:
            under = under._replace(**dict.fromkeys(_OF_ITS_LINES))
        said = {key: value for key, value in self._asdict().items() if value is not None}
        return below._replace(**{**said, "letters": self.letters.over(below.letters),
                                 "tuning": self.tuning.over(under)})


NOTHING = Choices()


def read_choices(texts: Mapping[str, str]) -> Choices:
    """Return choices from text by key, as a class's file keeps them (``classbook.keys``); other keys are passed over.

    Raises Problem for what cannot be chosen.
    """
    def one(key: str) -> str | None:
        return texts.get(key, "").strip() or None

    ruling, paper, support, hand, order, chain, ladder = map(
        one, ("ruling", "paper", "support", "hand", "order", "chain", "ladder"))
    return Choices(
        ruling=preset(ruling) if ruling else None, paper=Paper(paper) if paper else None,
        landscape=_switch(one("landscape")), binding=_switch(one("binding")),
        support=Support(support) if support else None, hand=Hand(hand) if hand else None, language=one("language"),
        order=Order(order) if order else None, rungs=read_rungs(ladder) if ladder else None,
        chain=Chain(chain) if chain else None, keep_dots=one("keep_dots"),
        names_in=one("names_in"), colour=read_colour(texts["colour"]) if one("colour") else None,
        sleeve=_switch(one("sleeve")), tile_names=_switch(one("tile_names")),
        letters=read_choice(texts.get("letters", ""), upright()),
        tuning=tuning_of(texts))


def _switch(word: str | None) -> bool | None:
    return None if word is None else word == "on"


def choices_in_list(child: Child) -> tuple[Choices, Problem | None]:
    """Return what the list says of a child, and what is wrong with its words for letters, which then choose nothing.

    Of most children it says nothing, and they share that.
    """
    letters, problem = LetterChoice(), None
    try:
        letters = read_choice(child.letters, upright())
    except Problem as error:
        problem = error
    own = Choices(support=child.support, hand=child.hand, names_in=child.names_in or None,
                  beats=child.beats or None, letters=letters, tuning=Tuning(line_height=child.line_height_mm))
    return NOTHING if own == NOTHING else own, problem


def settled(choices: Choices) -> SheetSettings:
    """Return what holds: what is chosen, and the usual where a choice is left open.

    Raises Problem for lines that cannot be ruled.
    """
    return SheetSettings(
        ruling=tuned(choices.ruling or preset(DEFAULT_RULING), choices.tuning), paper=choices.paper or Paper.LETTER,
        landscape=bool(choices.landscape), binding=bool(choices.binding), support=choices.support or Support.FULL,
        hand=choices.hand or Hand.RIGHT, language=choices.language or FIRST, letters=choices.letters,
        ladder=Ladder(choices.rungs, choices.chain or Chain.BACKWARD, choices.keep_dots or ""), tuning=choices.tuning,
        names_in=choices.names_in, beats=choices.beats or "", colour=choices.colour or "black",
        sleeve=bool(choices.sleeve), tile_names=choices.tile_names is not False)
