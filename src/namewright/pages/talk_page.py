"""A page for a talk with a child's family: the name then and now, what stands, what comes, and lines to write on.

In the family's language, with nothing in it that needs a teacher to read it: no level of support by a number, no step,
nobody compared. Letters that were formed stand in full, the others in dots, so that it reads in grey. What an adult
noted in words is shown only where that is asked for. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Ink, Role, Style, line
from namewright.lines.ruling import Ruling, custom_ruling
from namewright.message import Message, message
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.child_progress import ProgressSettings
from namewright.pages.growth import Growth, day_said, summary
from namewright.pages.page import Item, Page, checked
from namewright.pages.paper import sheet_of
from namewright.pages.plan.flow import Flow
from namewright.pages.typesetter import Typesetter
from namewright.wording import Wording, wording

_TITLE_MM, _HEAD_MM, _TEXT_MM, _SMALL_MM = 2.8, 2.2, 1.9, 1.6  # x-heights
_HEIGHTS_MM = (18.0, 15.0, 12.0, 10.0, 8.0)  # of the lines that the name stands on: the first that it fits
_WRITE_MM = 9.5
_WRITE_RULE = Style(0.25, RULE)
_MIN_WRITTEN, _MAX_WRITTEN = 2, 5


@dataclass(frozen=True, slots=True)
class Talk:
    """What a talk is about: a year, the name, the letters to come, and words of an adult by their days."""

    growth: Growth
    name: str
    coming: tuple[str, ...] = ()
    words: tuple[tuple[date, str], ...] = ()


def talk_pages(setter: Typesetter, talk: Talk, settings: ProgressSettings) -> tuple[Page, ...]:
    """Return the page, and a further one where many words were noted.

    Raises ValueError where no day was noted, MissingLetters for a name that cannot be drawn.
    """
    if not talk.growth.days:
        raise ValueError(f"nothing was noted about {talk.growth.label} yet")
    words, sheet = wording(settings.language), sheet_of(settings.paper, binding=settings.binding)
    flow = Flow(setter, sheet)
    flow.say(words.say("page.talk.title", name=talk.growth.label), _TITLE_MM, role=Role.TITLE)
    _add_names(flow, talk, words)
    for key, told in _told(talk):
        _head(flow, words.say(f"page.talk.{key}"))
        for each in told:
            flow.say(words.say(each), _TEXT_MM)
    _add_lines(flow, words)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(items), talk.growth.label if at == 0 else None))
                 for at, items in enumerate(flow.pages))


def _head(flow: Flow, text: str) -> None:
    flow.y += 3.2
    flow.say(text, _HEAD_MM, role=Role.HEADING)


def _told(talk: Talk) -> Iterator[tuple[str, tuple[Message, ...]]]:
    """Yield each part of the page: its heading, and what is told under it."""
    name, growth = talk.growth.label, talk.growth
    yield "stands", (summary(growth), *_help(growth))
    if talk.coming:
        yield "comes", (message("page.talk.coming", letters=talk.coming, count=len(talk.coming)),)
        shown = [message("page.talk.home_shown", name=name, letter=track.letter) for track in growth.formed[-1:]]
        yield "home", (*shown, message("page.talk.home_letter", letter=talk.coming[0]))
    else:
        yield "comes", (message("page.talk.whole_name"),)
        yield "home", (message("page.talk.home_name", name=name),)
    if talk.words:
        yield "noted", tuple(message("page.talk.noted_line", day=day_said(day), words=text) for day, text in talk.words)


def _help(growth: Growth) -> tuple[Message, ...]:
    """Return how the help on the page has changed, where it has."""
    levels = [level for _, level in growth.support]
    if not levels or levels[0] is levels[-1]:
        return ()
    return (message("page.talk.help", before=levels[0], after=levels[-1]),)


# --- the name, then and now ---------------------------------------------------------------------------


def _add_names(flow: Flow, talk: Talk, words: Wording) -> None:
    """Set the name as it was on the first day on which letters were looked at, and as it is now."""
    ruling = _ruling(flow, talk.name)
    looked = sorted({day for track in talk.growth.tracks for day, _ in track.days})
    if ruling is None or not looked:
        return
    first = [(looked[0], True) in track.days for track in talk.growth.tracks]
    now = [track.stands for track in talk.growth.tracks]
    flow.y += 2.0
    if looked[1:]:
        _add_name(flow, talk, ruling, first, words.say("page.talk.then", day=day_said(looked[0])))
    latest = words.say(f"page.talk.{'now' if looked[1:] else 'once'}", day=day_said(looked[-1]))
    _add_name(flow, talk, ruling, now, latest)
    flow.say(words.say("page.talk.key"), _SMALL_MM)


def _ruling(flow: Flow, name: str) -> Ruling | None:
    """Return the tallest lines on which a name fits the sheet, None where it fits none."""
    for height in _HEIGHTS_MM:
        ruling = custom_ruling(height)
        if flow.setter.ruled(ruling).line(name).width_mm + ruling.x_height_mm <= flow.sheet.room_width:
            return ruling
    return None


def _add_name(flow: Flow, talk: Talk, ruling: Ruling, formed: Sequence[bool], caption: str) -> None:
    set_line = flow.setter.ruled(ruling).line(talk.name)
    space = blocks.row_space(ruling, [set_line])
    flow.say(caption, _TEXT_MM)
    flow.y += 1.0
    baseline = flow.y + space.rise_mm
    inks = blocks.letters_at(flow.setter, set_line, _forms(talk.name, formed), flow.sheet.left_mm + 2.0, baseline)
    row = blocks.ruled_row(talk.name, "grown", ruling, flow.sheet.left_mm, flow.sheet.right_edge, baseline, inks)
    flow.put([row], space.height_mm + 1.5)


def _forms(name: str, formed: Sequence[bool]) -> list[Form]:
    """Return a form for every letter that is set: in full where it was formed; marks between words in full, too."""
    known = iter(formed)
    letters = [cluster for cluster in clusters(name) if not cluster.isspace()]
    return [Form.SOLID if not cluster[0].isalnum() or next(known, True) else Form.DOTTED for cluster in letters]


# --- lines to write on --------------------------------------------------------------------------------


def _add_lines(flow: Flow, words: Wording) -> None:
    """Set two questions with lines to write on, as many as there is room for, and the foot of the page."""
    asks = ("seen_at_home", "together")
    head_mm = 3.2 + _HEAD_MM * 2.9
    foot_mm = 7.0
    spare = flow.sheet.foot - foot_mm - flow.y - len(asks) * head_mm
    count = max(_MIN_WRITTEN, min(_MAX_WRITTEN, int(spare / (len(asks) * _WRITE_MM))))
    for ask in asks:
        if flow.y + head_mm + _WRITE_MM > flow.sheet.foot - foot_mm:
            break
        _head(flow, words.say(f"page.talk.{ask}"))
        for _ in range(count):
            if flow.y + _WRITE_MM > flow.sheet.foot - foot_mm:
                break
            y = flow.y + _WRITE_MM
            ruled: list[Item] = [Ink.of(_WRITE_RULE, (line(flow.sheet.left_mm, y, flow.sheet.right_edge, y),))]
            flow.put(ruled, _WRITE_MM)
    flow.y = flow.sheet.foot - 5.0  # a line of the foot, and a hair
    flow.say(words.say("page.progress.foot"), _SMALL_MM)
