"""What the page for the adult says: the class in order, what each child has and why, and who has no page and why.

Out of scope: where it stands on the page (``pages.summary``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import MAX_MIDLINE, MIN_MIDLINE
from namewright.making.account import NotMade
from namewright.making.naming import called
from namewright.making.request import Member, Request
from namewright.message import Message, message, together
from namewright.names.clusters import clusters
from namewright.pages.drawable import as_far_as, drawable
from namewright.pages.page import Page
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band
from namewright.practice.ordering import Placed
from namewright.roster.children import LineReport, Outcome, Roster
from namewright.settings import Hand
from namewright.wording import Wording, wording

_SAME_MM = 0.05  # lines that differ by less are told alike: 19.05 mm is three quarters of an inch
_ON_LINE_MM = 0.5  # nearer than this, a letter is seen to end on the line


def adult_pages(setter: Typesetter, request: Request, made: Sequence[Member], not_made: Sequence[NotMade],
                ) -> tuple[Page, ...]:
    """Return the page for the adult about the children made, those not made and the lines left out."""
    settings = request.settings
    entries = list(_entries(setter, request, made, not_made))
    return summary_pages(setter, entries, settings.paper, binding=settings.binding)


def left_out(roster: Roster) -> Sequence[LineReport]:
    """Return the reports of the lines that were left out."""
    return [report for report in roster.lines if report.outcome is Outcome.LEFT_OUT]


def _entries(setter: Typesetter, request: Request, made: Sequence[Member], not_made: Sequence[NotMade],
             ) -> Iterator[Entry]:
    settings, roster = request.settings, request.roster
    words = wording(settings.language)
    counted = words.say("page.summary.made", made=len(made), all=len(roster.children))
    everyone = words.say("page.summary.everyone", settings=_settings_told(settings))
    yield Entry(words.say("page.summary.title"), (counted, everyone, words.say("page.summary.rule_advice"),
                                               words.say("page.summary.letters_advice"),
                                               *_font_said(setter, settings, words)), title=True)
    for place, one in enumerate(made, 1):
        said = words.text(why(one.placed), *_details(request.settings_of(one), settings))
        yield Entry(f"{place}. {called(setter, one, roster, words)}", (drawable(setter, said),), beside=True)
    for heading, lines in (("not_made", not_made_said(setter, not_made, roster, words)),
                           ("left_out", _left_out(roster, words))):
        for count, said in enumerate(lines):
            if count == 0:
                yield Entry(words.say(f"page.summary.{heading}"), title=True)
            yield Entry("", (drawable(setter, said),))


def _font_said(setter: Typesetter, settings: SheetSettings, words: Wording) -> Iterator[str]:
    """Yield what an adult should know of a school's font: no order of strokes, and how it meets the lines."""
    if setter.school_font is None:
        return
    yield drawable(setter, words.say("page.summary.font", name=setter.school_font.name))
    heights = setter.school_font.line_up(settings.ruling)
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
            (message("page.summary.unsettled") if settings.hand is Hand.UNSETTLED
             else message("page.summary.hand", hand=settings.hand)),
            message("page.summary.lines", height=settings.ruling.line_height_mm))


def _details(chosen: SheetSettings, everyone: SheetSettings) -> Iterator[Message]:
    """Tell a child's own settings, those that everyone has left away; nothing where there are none."""
    usual = _settings_told(everyone)
    if abs(chosen.ruling.line_height_mm - everyone.ruling.line_height_mm) < _SAME_MM:
        chosen = chosen._replace(ruling=everyone.ruling)
    parts = tuple(each for each in _settings_told(chosen) if each not in usual)
    if parts:
        yield message("page.summary.own", settings=parts)


def not_made_said(setter: Typesetter, not_made: Sequence[NotMade], roster: Roster, words: Wording) -> Iterator[str]:
    """Yield of each child that was not made its line of the list and why, as far as our letters can say it."""
    for one in not_made:
        label, line, reason = one.child.label, roster.source_line(one.child.line), together(one.cause.message)
        if isinstance(one.cause, MissingLetters) and set(clusters(one.child.practice)) <= set(one.cause.characters):
            reason = message("page.summary.other_letters")  # not one by one: nobody could read what is lacking
        if as_far_as(setter, label):
            yield words.say("page.summary.not_made_line", name=label, line=line, reason=reason)
        else:
            yield words.say("page.summary.left_out_line", line=line, reason=reason)


def _left_out(roster: Roster, words: Wording) -> Iterator[str]:
    for report in left_out(roster):
        yield words.say("page.summary.left_out_line", line=report.source_line, reason=together(*report.notes))
