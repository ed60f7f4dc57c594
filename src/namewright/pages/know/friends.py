"""Friends' names: each to read, then to write, on the child's own lines.

With more support the letters that the child's own name has, too, are black and the others grey. A right-hander writes
beside the name where there is room, a left-hander under it, for the hand covers what is left of the pencil.
Millimetres, y down. Whose names they are is ``practice.friends``.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress

from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.pages import blocks
from namewright.pages.know.frame import HEADER_MM, LINE_MM, Frame, framed
from namewright.pages.know.rows import Spread, blank, height_of, spread
from namewright.pages.page import Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.weeks import letters_of
from namewright.settings import Hand, Support

_BESIDE = 2.25  # names wide a row must be, for one to read and room to write another
_MAX_AIR_MM = 14.0


def friends_pages(setter: Typesetter, label: str, name: str, friends: Sequence[str], settings: SheetSettings,
                  ) -> tuple[Page, ...]:
    """Return the pages for a child with the names of its friends, at least one. Raises MissingLetters, DoesNotFit."""
    setter = setter.lettering(settings.letters)
    wide = [spread(setter, friend, settings) for friend in friends]
    turned = any(one.turned for one in wide)
    frame = framed(setter, label, settings, turned=turned)
    helped = settings.support in (Support.FULL, Support.PARTIAL)
    frame.caption("page.know.friends_shared" if helped else "page.know.friends", Task.LOOK)
    heights = [_height(frame, one) for one in wide]
    air = min(_MAX_AIR_MM, max(0.0, frame.room - sum(heights)) / len(heights))
    pages: list[Page] = []
    for one, height in zip(wide, heights, strict=True):
        if height > frame.room:
            pages.append(frame.page(None if pages else label))
            frame = framed(setter, label, settings, turned=turned)
        _friend(frame, one, letters_of(name) if helped else None)
        frame.y += air
    return (*pages, frame.page(None if pages else label))


def has_room(setter: Typesetter, name: str, settings: SheetSettings) -> bool:
    """Say whether a friend's name has room on a child's lines: if not, another friend's is taken."""
    setter = setter.lettering(settings.letters)
    with suppress(DoesNotFit):
        wide = spread(setter, name, settings)
        frame = framed(setter, None, settings, turned=wide.turned)
        return 2 * height_of(frame, wide.lines) <= frame.room - HEADER_MM - 2 * LINE_MM
    return False


def _height(frame: Frame, one: Spread) -> float:
    return height_of(frame, one.lines) * (1 if _is_beside(frame, one) else 2)


def _is_beside(frame: Frame, one: Spread) -> bool:
    return (frame.settings.hand is Hand.RIGHT and len(one.lines) == 1
            and _BESIDE * one.lines[0].width_mm <= frame.right - frame.left)


def _friend(frame: Frame, one: Spread, own: frozenset[str] | None) -> None:
    space = blocks.row_space(frame.settings.ruling, one.lines)
    for line in one.lines:
        baseline, x = frame.y + space.rise_mm, frame.left + pen_width_mm(line.ruling) / 2
        inks = blocks.letters_at(frame.setter, line, _forms(line, own), x, baseline)
        frame.items.append(frame.row(line, Form.SOLID, baseline, inks))
        frame.y += space.height_mm
    if not _is_beside(frame, one):
        blank(frame, one.lines)


def _forms(line: SetLine, own: frozenset[str] | None) -> Form | list[Form]:
    """Return black for letters of the own name and grey for others; black for all without an ``own`` name."""
    if own is None:
        return Form.SOLID
    return [Form.SOLID if letters_of(one.letter.cluster) <= own else Form.FAINT for one in line.letters]
