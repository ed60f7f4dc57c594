"""PDFs made in the background, one after another, with how far each is and what could not be made.

A finished PDF lies in an unnamed temporary file of this process, which the system removes when it is closed; only
the newest are kept, and none that is still to be made goes. A job is known by the form that asked for it, so that a
form sent twice makes one PDF.
"""

from __future__ import annotations

import tempfile
import traceback
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from dataclasses import dataclass, field
from itertools import chain
from pathlib import Path
from threading import Lock
from typing import IO, Any

from namewright.message import Field, Message, Problem
from namewright.pages.page import Page
from namewright.wording import wording

_KEPT = 64
_IN_MEMORY_BYTES = 500_000


@dataclass(frozen=True, slots=True)
class Missed:
    """A child that was not made, and why: on which line of the list, by which number of the class.

    ``letters`` says that our letters cannot draw the name: the way out is on the list.
    """

    label: str
    line: int
    child: int | None
    reason: Message
    letters: bool = False


@dataclass
class Job:
    """One PDF on its way: ``done`` of ``total`` steps, a step being a child or a page about the class.

    ``pages`` counts those that are made. ``problem`` is why there is no PDF.
    ``missed`` tells what could not be made, ``remarks`` what was made otherwise than asked. ``file_name`` is what a
    browser calls it where it saves it.
    """

    id: str
    total: int
    done: int = 0
    pages: int = 0
    finished: bool = False
    problem: Field = ""
    missed: list[Missed] = field(default_factory=list)
    remarks: list[Message] = field(default_factory=list)
    file_name: str = ""
    _file: IO[bytes] | None = None
    _reading: Lock = field(default_factory=Lock, repr=False)

    @property
    def pages_in_all(self) -> int:
        """Return how many pages there will be, as far as is known: one for each step that is still to do.

        How many pages a child needs shows when they are laid out; at the end this is ``pages``.
        """
        return self.pages + max(0, self.total - self.done)

    @property
    def ready(self) -> bool:
        """Say whether there is a PDF to fetch."""
        return self.finished and self._file is not None

    def pdf(self) -> bytes:
        """Return the PDF. Raises LookupError before there is one, and after it is gone."""
        with self._reading:  # two who fetch it at once would each find the other's place in the file
            if not self.ready or self._file is None:
                raise LookupError(self.id)
            self._file.seek(0)
            return self._file.read()

    def close(self) -> None:
        """Let the file go."""
        with self._reading:
            if self._file is not None:
                self._file.close()
                self._file = None


class BusyError(Exception):
    """So many PDFs wait to be made that no more are taken."""


Make = Callable[[Job], Iterable[Page]]


class WaitingJobs(Executor):
    """Work that waits until it is asked for, where there are no threads: inside a browser."""

    def __init__(self) -> None:
        self._waiting: deque[Callable[[], object]] = deque()

    def submit(self, work: Callable[..., Any], /, *given: Any, **named: Any) -> Future[Any]:
        """Let work wait; what it returns is of no interest here."""
        self._waiting.append(lambda: work(*given, **named))
        return Future()

    def do_next(self) -> bool:
        """Do what has waited longest; say whether anything was waiting."""
        if not self._waiting:
            return False
        self._waiting.popleft()()
        return True


@dataclass
class Jobs:
    """The jobs of one start of the program, the newest of those that are finished and all others."""

    language: str = "en"
    _jobs: dict[str, Job] = field(default_factory=dict)
    _lock: Lock = field(default_factory=Lock)
    _pool: Executor = field(default_factory=lambda: ThreadPoolExecutor(1, "pdf"))
    _hear: Callable[[Job], None] = lambda job: None

    def run_by(self, pool: Executor, hear: Callable[[Job], None]) -> None:
        """Have jobs done by ``pool``; ``hear`` is told of a job after each of its pages."""
        self._pool, self._hear = pool, hear

    def start(self, key: str, total: int, make: Make, language: str) -> Job:
        """Begin a job, or return the one that this key began before.

        Raises BusyError where as many as are kept wait already.
        """
        with self._lock:
            if key in self._jobs:
                return self._jobs[key]
            self._make_room()
            job = self._jobs[key] = Job(key, total)
        self._pool.submit(_run, job, make, language, self._hear)
        return job

    def _make_room(self) -> None:
        """Let go of the oldest job that is finished, if there is no room for one more."""
        if len(self._jobs) < _KEPT:
            return
        oldest = next((key for key, job in self._jobs.items() if job.finished), None)
        if oldest is None:
            raise BusyError
        self._jobs.pop(oldest).close()

    def forget(self) -> None:
        """Let every PDF go; one that is being made goes when it is finished, for nobody knows its key."""
        with self._lock:
            for job in self._jobs.values():
                job.close()
            self._jobs.clear()

    def get(self, key: str) -> Job | None:
        """Return a job; None where it is not, or no longer, known."""
        with self._lock:
            return self._jobs.get(key)


def _run(job: Job, make: Make, language: str, hear: Callable[[Job], None]) -> None:
    from namewright.output.pdf import write_pdf

    file = tempfile.SpooledTemporaryFile(max_size=_IN_MEMORY_BYTES)  # noqa: SIM115 - kept until fetched
    try:
        pages = iter(make(job))
        first = next(pages, None)
        if first is not None:
            title = wording(language).say("page.pdf_title")
            job.pages = write_pdf(_counted(first, pages, job, hear), file, title=title, lang=language)  # type: ignore[arg-type]
            job._file = file
    except Problem as error:
        job.problem = error.message
    except Exception as error:
        job.problem = where(error)
    finally:
        job.finished = True


def _counted(first: Page, rest: Iterator[Page], job: Job, hear: Callable[[Job], None]) -> Iterator[Page]:
    """Yield the pages, and count each when the next is asked for: then its step is counted, too."""
    for page in chain([first], rest):
        yield page
        job.pages += 1
        hear(job)


def where(error: BaseException) -> str:
    """Return the kind of an error and where it arose: its own message may hold a name and is left away."""
    frames = traceback.extract_tb(error.__traceback__)
    place = f" ({Path(frames[-1].filename).name}, line {frames[-1].lineno})" if frames else ""
    return f"{type(error).__name__}{place}"
