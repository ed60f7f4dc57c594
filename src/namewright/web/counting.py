"""How many pages an order has, found without making a PDF: counted part by part, each part once.

A part is a child's pages of one kind, or a kind that is the class's. Laying out is most of the work of making, so an
answer stops after a moment and is asked for again. Out of scope: what is asked (``printing``).
"""

from __future__ import annotations

import time
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from namewright.making.make import Making
from namewright.making.request import FOR_EACH_CHILD, NOBODY, TO_KNOW, Kind, Request
from namewright.pages.typesetter import Typesetter
from namewright.web.class_pdf import made_aloud, missed
from namewright.web.desk import Counted, desk
from namewright.web.jobs import Missed

A_MOMENT_S = 0.12


@dataclass(frozen=True, slots=True)
class Tally:
    """Pages counted so far, in ``done`` of ``parts``; who cannot be made."""

    pages: int
    done: int
    parts: int
    missed: tuple[Missed, ...] = ()

    @property
    def whole(self) -> bool:
        """Say whether nothing is left to count."""
        return self.done == self.parts


def tally(asked: Iterable[tuple[Request, Sequence[Kind]]], ids: Mapping[int, int],
          for_s: float = A_MOMENT_S) -> Tally:
    """Count for a moment, at least one part that was not counted before. Raises Problem for lines that cannot be."""
    parts = [part for request, silent in asked for part in _parts(request, silent)]
    until = time.monotonic() + for_s
    found: list[Counted] = []
    fresh = 0
    for part in parts:
        counted = desk().counted(part)
        if counted is None:
            if fresh and time.monotonic() > until:
                break
            counted, fresh = desk().count(part, lambda asked, setter: _count(asked, setter, ids)), fresh + 1
        found.append(counted)
    told = dict.fromkeys(each for counted in found for each in counted.missed)
    return Tally(sum(counted.pages for counted in found), len(found), len(parts), tuple(told))


def _parts(asked: Request, silent: Sequence[Kind]) -> Iterator[Request]:
    """Yield the parts of a request; the last of a part's kinds is what is counted."""
    for kind in asked.kinds:
        if kind not in FOR_EACH_CHILD or kind is Kind.TILES:  # tiles of several children share a page
            yield asked._replace(kinds=(*(silent if kind is Kind.ANSWERS else ()), kind))
        elif kind in TO_KNOW:
            yield from (asked._replace(kinds=(kind,), members=(one,)) for one in asked.members)
        else:
            alone = asked._replace(kinds=(kind,), roster=NOBODY, taught=())
            yield from (alone._replace(members=(one,)) for one in asked.members)


def _count(asked: Request, setter: Typesetter, ids: Mapping[int, int]) -> Counted:
    making = Making(asked, setter)
    *silent, kind = asked.kinds
    pages = sum(1 for _ in made_aloud(making, (kind,), silent))
    return Counted(pages, tuple(missed(making.account, ids, (kind,))))
