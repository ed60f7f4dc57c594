"""A spreadsheet read in a process of its own, so that whoever answers many people at once goes on answering.

Two are read at a time and none for longer than ``LONGEST_S`` seconds; what is text is read where it is.
"""

from __future__ import annotations

import signal
from multiprocessing import get_context
from multiprocessing.connection import Connection
from threading import BoundedSemaphore

from namewright.message import Message
from namewright.roster.children import RosterError
from namewright.roster.sources import decode, is_workbook

LONGEST_S = 20.0
_places = BoundedSemaphore(2)


def decode_in_a_process(data: bytes, source: Message | str, sheet: str = "") -> tuple[str, tuple[Message, ...]]:
    """Return what ``decode`` does. Raises RosterError as it does, and where reading takes too long or none is free."""
    if not is_workbook(data):
        return decode(data, source, sheet)
    if not _places.acquire(blocking=False):
        raise RosterError("roster.busy", source=source)
    try:
        found = _found(data, source, sheet)
    finally:
        _places.release()
    if isinstance(found, Message):
        raise RosterError(found)
    return found


def _found(data: bytes, source: Message | str, sheet: str) -> tuple[str, tuple[Message, ...]] | Message:
    context = get_context("spawn")  # a fork would take the locks of other threads along
    ours, theirs = context.Pipe(duplex=False)
    reader = context.Process(target=_read, args=(data, source, sheet, theirs), daemon=True)
    reader.start()
    theirs.close()
    try:
        if not ours.poll(LONGEST_S):
            raise RosterError("roster.many_rows", source=source)
        found: tuple[str, tuple[Message, ...]] | Message = ours.recv()
        return found
    except EOFError:  # the reader is gone: out of memory, as a rule
        raise RosterError("roster.no_sheet", source=source) from None
    finally:
        reader.kill()
        reader.join()
        ours.close()


def _read(data: bytes, source: Message | str, sheet: str, out: Connection) -> None:
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl-C is for the one who started us
    try:
        out.send(decode(data, source, sheet))
    except RosterError as error:
        out.send(error.message)
