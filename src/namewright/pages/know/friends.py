"""Friends' names: each to read, then to write, on the child's own lines, where a dot shows the place to begin.

With more support letters that are written just so in the child's own name are black and the others grey, if there are
any. Where every name has room for it, each is written on a line of its own under the name; else a right-hander writes a
short one beside it, and a left-hander under it, for the hand covers what is left of the pencil. Names are as many as
one page holds. Millimetres, y down. Whose names they are is ``practice.friends``.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass

from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.know.frame import LINE_MM, Frame, framed
from namewright.pages.know.rows import Spread, height_of, spread, under_tails
from namewright.pages.page import Furniture, Page
from namewright.pages.paper import HEADER_MM
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.friends import HELPED, is_shared
from namewright.settings import Hand

_BESIDE = 2.25  # names wide a row must be, for one to read and room to write another
_BEFORE_MM = 8.0  # white between a name and the dot where the same is written beside it
_MAX_AIR_MM = 14.0


@dataclass(frozen=True, slots=True)
class _Layout:
    """Which names are written beside themselves, where that begins, and how high each stands."""

    beside: tuple[bool, ...]
    begin_x: float
    heights: tuple[float, ...]


def friends_page(setter: Typesetter, label: str, name: str, friends: Sequence[str], settings: SheetSettings) -> Page:
    """Return the page for a child with names of its friends (``on_one_page``). Raises MissingLetters, DoesNotFit."""
    setter = setter.lettering(settings.letters)
    wide = [spread(setter, friend, settings) for friend in friends]
    shared = settings.support in HELPED and any(is_shared(one, name) for one in clusters(" ".join(friends)))
    own = name if shared else None
    frame, layout = _begun(setter, label, wide, settings, shared=shared)
    air = min(_MAX_AIR_MM, max(0.0, frame.room - sum(layout.heights)) / len(layout.heights))
    for one, beside in zip(wide, layout.beside, strict=True):
        _friend(frame, one, own, layout.begin_x if beside else None)
        frame.y += air
    return frame.page(label)


def on_one_page(setter: Typesetter, friends: Sequence[str], settings: SheetSettings) -> tuple[str, ...]:
    """Return those of a child's friends, at least one, whose names one page holds.

    One long name would turn the page for all: it stands on it only where it is the first and no more fit without it.
    """
    setter = setter.lettering(settings.letters)
    wide = {friend: spread(setter, friend, settings) for friend in friends}
    upright = {friend: one for friend, one in wide.items() if not one.turned}
    if not wide[friends[0]].turned:
        return _held(setter, upright, settings)
    turned = _held(setter, wide, settings)
    return max(turned, _held(setter, upright, settings), key=len) if upright else turned


def _held(setter: Typesetter, wide: Mapping[str, Spread], settings: SheetSettings) -> tuple[str, ...]:
    """Return the first of these names, as many as one page holds, and at least one."""
    held = dict(wide)
    while len(held) > 1:
        frame, layout = _begun(setter, next(iter(held)), list(held.values()), settings,
                               shared=settings.support in HELPED)
        if sum(layout.heights) <= frame.room:
            break
        held.popitem()
    return tuple(held)


def _begun(setter: Typesetter, label: str, wide: Sequence[Spread], settings: SheetSettings, *, shared: bool,
           ) -> tuple[Frame, _Layout]:
    frame = framed(setter, label, settings, turned=any(one.turned for one in wide))
    frame.caption("page.know.friends_shared" if shared else "page.know.friends", Task.LOOK)
    return frame, _layout(frame, wide)


def has_room(setter: Typesetter, name: str, settings: SheetSettings) -> bool:
    """Say whether a friend's name has room on a child's lines: if not, another friend's is taken."""
    setter = setter.lettering(settings.letters)
    with suppress(DoesNotFit):
        wide = spread(setter, name, settings)
        frame = framed(setter, None, settings, turned=wide.turned)
        return _below_itself(frame, wide) <= frame.room - HEADER_MM - 2 * LINE_MM
    return False


def _layout(frame: Frame, wide: Sequence[Spread]) -> _Layout:
    """Return how the names stand: all over their own lines where that has room, else short ones beside them."""
    below = frame.settings.hand is not Hand.RIGHT or sum(_below_itself(frame, one) for one in wide) <= frame.room
    beside = [not below and _is_short(frame, one) for one in wide]
    widest = max((one.lines[0].width_mm for one, aside in zip(wide, beside, strict=True) if aside), default=0.0)
    begin = max(frame.left + widest + _BEFORE_MM, (frame.left + frame.right) / 2)
    heights = [_shown(frame, one) if aside else _below_itself(frame, one)
               for one, aside in zip(wide, beside, strict=True)]
    return _Layout(tuple(beside), begin, tuple(heights))


def _shown(frame: Frame, one: Spread) -> float:
    """Return the height of a name to read, with the white that keeps its tails off the row under it."""
    return height_of(frame, one.lines) + len(one.lines) * under_tails(frame, one.lines)


def _below_itself(frame: Frame, one: Spread) -> float:
    """Return the height of a name with rows under it to write it on."""
    return _shown(frame, one) + height_of(frame, one.lines)


def _is_short(frame: Frame, one: Spread) -> bool:
    return len(one.lines) == 1 and _BESIDE * one.lines[0].width_mm + _BEFORE_MM <= frame.right - frame.left


def _friend(frame: Frame, one: Spread, own: str | None, beside_x: float | None) -> None:
    """Set a friend's name and where it is written: from ``beside_x`` on in its own row, else on rows under it."""
    space = blocks.row_space(frame.settings.ruling, one.lines)
    x = frame.left + pen_width_mm(frame.settings.ruling) / 2
    for line in one.lines:
        baseline = frame.y + space.rise_mm
        inks = blocks.letters_at(frame.setter, line, _forms(line, own), x, baseline)
        frame.items.append(frame.row(line, Form.SOLID, baseline, inks))
        if beside_x is not None:
            frame.items.append(Furniture((blocks.name_start(frame.setter, line, beside_x, baseline),)))
        frame.y += space.height_mm + under_tails(frame, one.lines)
    for line in one.lines if beside_x is None else ():
        baseline = frame.y + space.rise_mm
        frame.items.append(frame.row(line, Form.BLANK, baseline, (blocks.name_start(frame.setter, line, x, baseline),)))
        frame.y += space.height_mm


def _forms(line: SetLine, own: str | None) -> Form | list[Form]:
    """Return black for letters of the own name and grey for others; black for all without an ``own`` name."""
    if own is None:
        return Form.SOLID
    return [Form.SOLID if is_shared(one.letter.cluster, own) else Form.FAINT for one in line.letters]
