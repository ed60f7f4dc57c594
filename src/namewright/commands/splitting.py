"""A class's pages laid out and drawn in chunks of children, by one process or by several at once.

How a class falls into chunks follows from the class alone, and what a chunk becomes from its children alone. So the
file is the same bytes however many processes there are, and memory does not grow with the class.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable

from namewright.commands.talk import Refusal
from namewright.making.account import NotMade, Remark
from namewright.making.make import Making
from namewright.making.request import NOBODY, Kind, Request
from namewright.message import Message
from namewright.named_tuples import NamedTuple
from namewright.output.pdf import Batch, batches
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.wording import wording

CHUNK = 40
"""Children of a chunk: as many as pages that share their forms, for most children have one page."""
ENOUGH = 200
"""Children from which several processes pay: fewer are made in the time that a process needs to begin."""
MAX_JOBS = 60  # Windows waits for no more at once


class Part(NamedTuple):
    """What became of a chunk: its pages, drawn, and its part of the account.

    Who was ``made`` is told by the place in the chunk: a child that came back from another process would be a second
    one, and of a large class the account would take more room than all the rest.
    """

    batches: tuple[Batch, ...]
    made: tuple[tuple[Kind, int], ...]
    not_made: tuple[NotMade, ...]
    remarks: tuple[Remark, ...]
    notes: tuple[Message, ...]


def jobs_for(typed: int | None, children: int) -> int:
    """Return how many processes work: as typed, else the cores where there is enough to do. Raises Refusal."""
    if typed is not None:
        if not 1 <= typed <= MAX_JOBS:
            raise Refusal("command.problem.jobs", typed=typed, most=MAX_JOBS)
        return typed
    return min(_cores(), MAX_JOBS) if children >= ENOUGH else 1


def _cores() -> int:
    """Return the cores that this process may use, which may be fewer than there are."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def chunks(request: Request, size: int = CHUNK) -> list[Request]:
    """Return the request in pieces of ``size`` children, in their order."""
    return [request._replace(members=request.members[at:at + size], roster=NOBODY)
            for at in range(0, len(request.members), size)]


def part(request: Request, setter: Typesetter, seen: Callable[[Iterable[Page]], Iterable[Page]] = iter) -> Part:
    """Make the pages of a chunk; each passes through ``seen``."""
    making = Making(request, setter)
    drawn = tuple(batches(seen(making.pages()), wording(request.settings.language)))
    account, place = making.account, {id(one): at for at, one in enumerate(request.members)}
    return Part(drawn, tuple((kind, place[id(one)]) for kind, one in account.made), tuple(account.not_made),
                tuple(account.remarks), tuple(account.notes))
