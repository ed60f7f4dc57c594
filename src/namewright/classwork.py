"""From a roster and the class's settings to finished pages: what command line and web both call.

Pages are made one by one as they are asked for, so that memory does not grow with the class. A child whose
page cannot be made is set down with the reason, and all others are still made. No files, no clock.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import TypeVar

from namewright.letters.alphabet import MissingLetters, upright
from namewright.letters.choice import LetterChoice, read_choice
from namewright.lines.fit import DoesNotFit
from namewright.lines.ruling import MAX_MIDLINE, MIN_MIDLINE, Ruling
from namewright.message import Message, message, together
from namewright.pages.page import Page, PageError
from namewright.pages.press import Press
from namewright.pages.sheet import SheetSettings, practice_pages
from namewright.pages.summary import Entry, drawable, summary_pages
from namewright.pages.tile_sheet import Strip, TileSettings, across, strips, tile_pages, tile_ruling
from namewright.practice.difficulty import Band
from namewright.practice.ordering import Placed
from namewright.roster.children import Child, LineReport, Outcome, Roster
from namewright.wording import Wording, wording

Made = TypeVar("Made")
FONT_TOO_LARGE = "the font’s letters reach out of the page; choose a smaller line height or a larger paper"
_ON_LINE_MM = 0.5  # nearer than this, a letter is seen to end on the line


@dataclass(frozen=True, slots=True)
class NotMade:
    """A child whose page could not be made, and why, in a sentence."""

    child: Child
    reason: str


@dataclass
class Work:
    """A class at work: who has been made and who could not be, filled as pages are asked for.

    ``remarks`` tells of children who are made, but not with a setting that could not be read.
    """

    press: Press = field(default_factory=Press)
    made: list[Placed] = field(default_factory=list)
    not_made: list[NotMade] = field(default_factory=list)
    remarks: list[NotMade] = field(default_factory=list)

    def sheets(self, placed: Iterable[Placed], settings: SheetSettings) -> Iterator[Page]:
        """Yield every child's sheet in the order given, with the child's own settings where there are any."""
        for one in placed:
            own = self._try(one.child, lambda child: self._sheet(child, settings))
            if own:
                self.made.append(one)
                yield from own

    def _sheet(self, child: Child, settings: SheetSettings) -> tuple[Page, ...]:
        try:
            read_choice(child.letters, upright())
        except ValueError as error:
            self.remarks.append(NotMade(child, f"{_sentence(error)} The class’s letters are used."))
        return practice_pages(self.press, child.practice, drawable(self.press, child.label), own(child, settings))

    def tiles(self, placed: Iterable[Placed], settings: TileSettings) -> Iterator[Page]:
        """Yield pages of letter tiles for every child in the order given."""
        return tile_pages(self.press, self._strips(placed, settings), settings)

    def _strips(self, placed: Iterable[Placed], settings: TileSettings) -> Iterator[tuple[str, tuple[Strip, ...]]]:
        ruling, room = tile_ruling(settings.side_mm), across(settings)
        for one in placed:
            if self._try(one.child, lambda child: (self.press.case(ruling).line(child.practice),)):
                self.made.append(one)
                label = drawable(self.press, one.child.label)
                yield label, strips(label, one.child.practice, room)

    def _try(self, child: Child, make: Callable[[Child], tuple[Made, ...]]) -> tuple[Made, ...]:
        try:
            return make(child)
        except (MissingLetters, DoesNotFit) as error:
            self.not_made.append(NotMade(child, _sentence(error)))
            return ()
        except PageError:
            if self.press.school_font is None:
                raise  # our own letters are known: they never reach out of a page
            self.not_made.append(NotMade(child, _sentence(ValueError(FONT_TOO_LARGE))))
            return ()

    def summary(self, roster: Roster, settings: SheetSettings) -> tuple[Page, ...]:
        """Return the page for the adult. Ask for it after the sheets."""
        entries = list(_entries(self, roster, settings))
        return summary_pages(self.press, entries, settings.paper, binding=settings.binding)


def own(child: Child, settings: SheetSettings) -> SheetSettings:
    """Return the class's settings with the child's own laid over them."""
    return replace(settings, ruling=own_ruling(child, settings.ruling), letters=own_letters(child, settings.letters),
                   support=child.support or settings.support, hand=child.hand or settings.hand)


def own_letters(child: Child, letters: LetterChoice) -> LetterChoice:
    """Return the class's forms of letters with the child's laid over them; words we cannot read count as none."""
    try:
        return read_choice(child.letters, upright()).over(letters)
    except ValueError:
        return letters


def own_ruling(child: Child, ruling: Ruling) -> Ruling:
    """Return the class's ruling, at the child's own line height where there is one."""
    return ruling if child.line_height_mm is None else ruling.scaled_to(child.line_height_mm)


def _sentence(error: Exception) -> str:
    words = str(error)
    return words[:1].upper() + words[1:] + "."


def left_out(roster: Roster) -> Sequence[LineReport]:
    """Return the reports of the lines that were left out."""
    return [report for report in roster.lines if report.outcome is Outcome.LEFT_OUT]


def _entries(work: Work, roster: Roster, settings: SheetSettings) -> Iterator[Entry]:
    words = wording(settings.language)
    counted = words.say("page.summary.made", made=len(work.made), all=len(roster.children))
    everyone = words.say("page.summary.everyone", settings=_settings_told(settings))
    yield Entry(words.say("page.summary.title"), (counted, everyone, words.say("page.summary.rule_advice"),
                                               words.say("page.summary.letters_advice"),
                                               *_font_said(work.press, settings, words)), title=True)
    for place, one in enumerate(work.made, 1):
        sentence = words.text(why(one), *_details(own(one.child, settings), settings))
        yield Entry(drawable(work.press, f"{place}. {one.child.label}"), (drawable(work.press, sentence),), beside=True)
    for heading, lines in (("not_made", _not_made(work, words)), ("left_out", _left_out(roster, words))):
        for count, sentence in enumerate(lines):
            if count == 0:
                yield Entry(words.say(f"page.summary.{heading}"), title=True)
            yield Entry("", (drawable(work.press, sentence),))


def _font_said(press: Press, settings: SheetSettings, words: Wording) -> Iterator[str]:
    """Yield what an adult should know of a school's font: no order of strokes, and how it meets the lines."""
    if press.school_font is None:
        return
    yield drawable(press, words.say("page.summary.font", name=press.school_font.name))
    heights = press.school_font.line_up(settings.ruling)
    if abs(heights.capitals_mm) >= _ON_LINE_MM:
        yield words.say(f"page.summary.font_{'above' if heights.capitals_mm > 0 else 'below'}",
                        height=abs(heights.capitals_mm))
        if MIN_MIDLINE <= round(heights.share, 2) <= MAX_MIDLINE:
            yield words.say("page.summary.font_ruling", share=heights.share)


def why(one: Placed) -> Message:
    """Return why a child stands here: how much there is to write, how hard, and which letters when."""
    letters = [letter for letter, _ in one.letters]
    if one.band is None:
        return message("page.summary.no_letters")
    harder = tuple(letter for letter, band in one.letters[1:] if band is Band.HARDER)
    easier = tuple(letter for letter, band in one.letters[1:] if band is Band.EASIER)
    key = "why_last" if harder else "why_soon" if easier else "why"
    return message(f"page.summary.{key}", count=one.length, band=one.band, first=letters[0], letters=harder or easier)


def _settings_told(settings: SheetSettings) -> tuple[Message, ...]:
    return (message("page.summary.support", support=settings.support),
            message("page.summary.hand", hand=settings.hand),
            message("page.summary.lines", height=settings.ruling.line_height_mm))


def _details(chosen: SheetSettings, everyone: SheetSettings) -> Iterator[Message]:
    """Tell a child's own settings, those that everyone has left away; nothing where there are none."""
    usual = _settings_told(everyone)
    parts = tuple(each for each in _settings_told(chosen) if each not in usual)
    if parts:
        yield message("page.summary.own", settings=parts)


def _not_made(work: Work, words: Wording) -> Iterator[str]:
    for one in work.not_made:
        yield words.say("page.summary.not_made_line", name=one.child.label, line=one.child.line, reason=one.reason)


def _left_out(roster: Roster, words: Wording) -> Iterator[str]:
    for report in left_out(roster):
        yield words.say("page.summary.left_out_line", line=report.line, reason=together(*report.notes))
