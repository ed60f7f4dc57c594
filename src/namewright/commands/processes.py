"""Several processes at work on one class: each makes chunks of it, and the one that began them puts these together."""

from __future__ import annotations

import os
import signal
from collections import deque
from collections.abc import Callable, Generator, Iterable
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import parent_process
from multiprocessing.connection import wait
from threading import Thread

from namewright.commands.splitting import Part, part
from namewright.commands.talk import Refusal
from namewright.cycles import look_seldom
from namewright.making.request import Request
from namewright.pages.typesetter import Typesetter

_AHEAD = 2  # chunks a process may be ahead of the writer

_own: list[Typesetter] = []
"""The typesetter of a process that helps."""


def parts_by(jobs: int, asked: Iterable[Request], ready: Callable[[], Typesetter]) -> Generator[Part, None, None]:
    """Yield what becomes of chunks, in their order, made by several processes; ``ready`` makes each its typesetter.

    Raises Refusal where a process was ended from outside. Close the iterator to end them all.
    """
    pool = ProcessPoolExecutor(jobs, initializer=_begin, initargs=(ready,))
    waiting: deque[Future[Part]] = deque()
    try:
        for one in asked:
            waiting.append(pool.submit(_help, one))
            if len(waiting) > _AHEAD * jobs:
                yield waiting.popleft().result()
        while waiting:
            yield waiting.popleft().result()
    except BrokenProcessPool as error:
        raise Refusal("command.problem.helper_ended") from error
    finally:
        pool.shutdown(cancel_futures=True)


def _begin(ready: Callable[[], Typesetter]) -> None:
    """Make a process ready to help: Ctrl-C is answered by the one that writes, and no process outlives that one."""
    look_seldom()
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    Thread(target=_end_with_parent, daemon=True).start()
    _own.append(ready())


def _end_with_parent() -> None:
    parent = parent_process()
    if parent is not None:
        wait([parent.sentinel])
        os._exit(1)


def _help(request: Request) -> Part:
    return part(request, _own[-1])
