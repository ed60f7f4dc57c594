"""From settings kept as text to what the engine takes. A setting that is not set takes the engine's own default.

A child is laid over the class here and nowhere else on the web side. Lengths are millimetres.
Out of scope: keeping settings (``classbook``); what they do to a page (``pages``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from namewright.classbook import BookChild
from namewright.classbook.keys import WORD_KEYS, ladder_of, letters_of, tuning_of
from namewright.classwork import own_letters
from namewright.lines.ruling import DEFAULT_RULING, preset
from namewright.lines.tuned import tuned
from namewright.pages.name_card import CardSettings, CardSize
from namewright.pages.paper import Paper
from namewright.pages.sheet import SheetSettings
from namewright.pages.tile_sheet import TileSettings
from namewright.roster.children import Child
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import Knob, Tuning

PAGE_KEYS = ("paper", "ruling", "line_height", "support", "hand", "language", "landscape", "binding", *WORD_KEYS)


def sheet_of_class(settings: Mapping[str, str]) -> SheetSettings:
    """Return the sheet settings of the class. Raises ValueError, in a sentence, for what cannot be set."""
    tuning = tuning_of(settings)
    return SheetSettings(
        ruling=tuned(preset(settings.get("ruling", DEFAULT_RULING)), tuning),
        paper=Paper(settings.get("paper", Paper.LETTER)), landscape=settings.get("landscape") == "on",
        binding=settings.get("binding") == "on", support=Support(settings.get("support", Support.FULL)),
        hand=Hand(settings.get("hand", Hand.RIGHT)), language=settings.get("language", "en"), tuning=tuning,
        letters=letters_of(settings), ladder=ladder_of(settings))


def sheet_of_child(one: BookChild, settings: Mapping[str, str]) -> SheetSettings:
    """Return the sheet settings of one child: the class's, with the child's own laid over them."""
    everyone = sheet_of_class(settings)
    ruling = tuned(preset(settings.get("ruling", DEFAULT_RULING)), one.tuning)
    return replace(everyone, ruling=ruling, tuning=one.tuning, support=one.child.support or everyone.support,
                   hand=one.child.hand or everyone.hand, letters=own_letters(one.child, everyone.letters),
                   ladder=ladder_of({**settings, **one.settings}))


def tried(one: BookChild, settings: Mapping[str, str], own: Mapping[str, str]) -> BookChild:
    """Return a child as if ``own`` were what is set for it. Raises ValueError, in a sentence, as settings do."""
    own = {key: text for key, text in own.items() if text.strip()}
    mine = tuning_of(own)
    if mine.line_height is None and "line_height" not in one.settings:
        mine = replace(mine, line_height=one.own.line_height)  # what the list itself says of this child
    roster_says = _without_settings(one)
    child = replace(roster_says, line_height_mm=mine.line_height, practice=_practised(one, own),
                    support=Support(own["support"]) if "support" in own else roster_says.support,
                    hand=Hand(own["hand"]) if "hand" in own else roster_says.hand,
                    letters=own.get("letters", roster_says.letters))
    return replace(one, child=child, own=mine, tuning=mine.over(tuning_of(settings)), settings=own)


def _without_settings(one: BookChild) -> Child:
    """Return the child without what was set; what the list said under a setting is not known here."""
    return replace(one.child, support=None if "support" in one.settings else one.child.support,
                   hand=None if "hand" in one.settings else one.child.hand,
                   letters="" if "letters" in one.settings else one.child.letters)


def _practised(one: BookChild, own: Mapping[str, str]) -> str:
    child = one.child
    if "practise" not in own:
        return child.practice
    wanted = {NamePart.GIVEN: child.given, NamePart.FAMILY: child.family,
              NamePart.BOTH: f"{child.given} {child.family}".strip()}
    return wanted[NamePart(own["practise"])] or child.practice


def card_of_child(one: BookChild, settings: Mapping[str, str], size: CardSize) -> CardSettings:
    """Return the card settings of one child."""
    sheet = sheet_of_child(one, settings)
    return CardSettings(sheet.ruling, size, sheet.support, sheet.language, sheet.letters)


def tiles_of_class(settings: Mapping[str, str]) -> TileSettings:
    """Return the tile settings of the class."""
    sheet = sheet_of_class(settings)
    return TileSettings(paper=sheet.paper, landscape=sheet.landscape, binding=sheet.binding, language=sheet.language,
                        letters=sheet.letters)


@dataclass(frozen=True, slots=True)
class Control:
    """One knob as a form shows it: the step it moves by, and what holds while it is not set, where that is known."""

    knob: Knob
    step: float
    rest: float | None


def control(knob: Knob, everyone: SheetSettings, tuning: Tuning) -> Control:
    """Return how a knob is shown for a child of a class with these settings."""
    of_class = getattr(tuning, knob.key, None)
    rest = _rests(everyone).get(knob.key) if of_class is None else float(of_class)
    return Control(knob, _step(knob), rest)


def _step(knob: Knob) -> float:
    if knob.kind == "count":
        return 1.0
    if knob.kind == "number":
        return 0.05
    return 0.5 if knob.greatest >= 20 else 0.1


def _rests(everyone: SheetSettings) -> Mapping[str, float]:
    ruling = everyone.ruling
    return {"line_height": ruling.line_height_mm, "midline": ruling.x_height_mm / ruling.line_height_mm,
            "row_gap": ruling.gap_mm, "letter_spacing": 0.0, "line_weight": 1.0}
