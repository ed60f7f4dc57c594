"""PDFs made in the background: one for a form, the newest few kept, and no name in what went wrong."""

from __future__ import annotations

import io
import threading
import time
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest

from namewright.lines.ruling import preset
from namewright.pages.page import Page
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.web.jobs import BusyError, Job, Jobs, where


@pytest.fixture(scope="module")
def page() -> Page:
    return practice_pages(Typesetter(), "Bo", "Bo", SheetSettings(preset("us-1/2")))[0]


def made(jobs: Jobs, key: str, make: Callable[[Job], Iterable[Page]], total: int = 1) -> Job:
    """Start a job and wait for it."""
    job = jobs.start(key, total, make, "en")
    deadline = time.monotonic() + 60
    while not job.finished and time.monotonic() < deadline:
        time.sleep(0.01)
    assert job.finished
    return job


def test_pages_become_a_pdf_that_can_be_fetched_again(page: Page) -> None:
    job = made(Jobs(), "one", lambda _: [page, page])
    assert (job.ready, job.pages, job.problem) == (True, 2, "")
    assert job.pdf().startswith(b"%PDF")
    assert job.pdf() == job.pdf()


def test_pages_are_counted_of_pages_in_all(page: Page) -> None:
    """A child still to come counts as one page, one that has two as two, one that is not made as none."""
    seen: list[tuple[int, int]] = []

    def make(job: Job) -> Iterator[Page]:
        for pages in (1, 2, 0, 1):
            for _ in range(pages):
                seen.append((job.pages, job.pages_in_all))
                yield page
            job.done += 1

    jobs = Jobs()
    job = made(jobs, "count", make, total=4)
    assert seen == [(0, 4), (1, 4), (2, 5), (3, 4)]
    assert (job.pages, job.pages_in_all) == (4, 4)


def test_no_page_is_no_pdf() -> None:
    """Where nobody could be made there is nothing to fetch, and that is no fault of the program."""
    job = made(Jobs(), "none", lambda _: [])
    assert (job.ready, job.problem) == (False, "")
    with pytest.raises(LookupError):
        job.pdf()


def test_what_goes_wrong_is_told_without_a_name() -> None:
    """The kind of the error and its place; its own message may hold a child's name."""
    def fail(job: Job) -> list[Page]:
        raise KeyError("Ottilka")

    job = made(Jobs(), "bad", fail)
    assert not job.ready
    assert "KeyError" in job.problem
    assert "Ottilka" not in job.problem
    assert where(ValueError("Ottilka")) == "ValueError"


def test_a_job_after_one_that_failed_is_made(page: Page) -> None:
    jobs = Jobs()
    made(jobs, "bad", lambda _: [][0])
    assert made(jobs, "good", lambda _: [page]).ready


def test_twenty_at_once_are_all_made(page: Page) -> None:
    """None that waits has to make room, and each can be fetched when it is made."""
    jobs, begin = Jobs(), threading.Event()

    def waiting(_: Job) -> Iterator[Page]:
        begin.wait(60)
        yield page

    started = [jobs.start(f"job {at}", 1, waiting, "en") for at in range(20)]
    begin.set()
    assert made(jobs, "last", lambda _: [page]).ready
    assert [jobs.get(f"job {at}") for at in range(20)] == started
    assert all(job.pdf().startswith(b"%PDF") for job in started)


def test_more_than_can_wait_are_refused(page: Page, monkeypatch: pytest.MonkeyPatch) -> None:
    """And nothing of what waits is lost by it."""
    monkeypatch.setattr("namewright.web.jobs._KEPT", 3)
    jobs, begin = Jobs(), threading.Event()

    def waiting(_: Job) -> Iterator[Page]:
        begin.wait(60)
        yield page

    started = [jobs.start(f"job {at}", 1, waiting, "en") for at in range(3)]
    with pytest.raises(BusyError):
        jobs.start("one more", 1, waiting, "en")
    begin.set()
    while not started[-1].finished:
        time.sleep(0.01)
    assert all(job.ready for job in started)


def test_only_the_newest_are_kept(page: Page, monkeypatch: pytest.MonkeyPatch) -> None:
    """A ninth lets the first go, with its file; forgetting lets all go."""
    monkeypatch.setattr("namewright.web.jobs._KEPT", 8)
    jobs = Jobs()
    kept = [made(jobs, f"job {at}", lambda _: [page]) for at in range(9)]
    assert jobs.get("job 0") is None
    assert not kept[0].ready
    assert [jobs.get(f"job {at}") for at in range(1, 9)] == kept[1:]
    jobs.forget()
    assert jobs.get("job 8") is None
    assert not any(job.ready for job in kept)


def test_jobs_are_made_one_after_another(page: Page) -> None:
    """Two at once would share a typesetter; the second waits until the first is done."""
    jobs, inside, most = Jobs(), threading.Semaphore(1), []

    def alone(job: Job) -> list[Page]:
        most.append(inside.acquire(blocking=False))
        time.sleep(0.02)
        inside.release()
        return [page]

    started = [jobs.start(str(at), 1, alone, "en") for at in range(4)]
    deadline = time.monotonic() + 60
    while not all(job.finished for job in started) and time.monotonic() < deadline:
        time.sleep(0.01)
    assert most == [True] * 4


def test_a_job_asked_for_twice_is_made_once() -> None:
    """The same key begins one job; what makes it is called once."""
    jobs, begun = Jobs(), []

    def make(job: Job) -> list[Page]:
        begun.append(job.id)
        return []

    first, second = (jobs.start("key", 1, make, "en") for _ in range(2))
    jobs.start("other", 1, make, "en")
    deadline = time.monotonic() + 60
    while len(begun) < 2 and time.monotonic() < deadline:
        time.sleep(0.01)
    assert first is second
    assert begun == ["key", "other"]


class Slow(io.BytesIO):
    """A file whose place others may move before it is read, as threads do with a large one."""

    def seek(self, offset: int, whence: int = 0) -> int:
        """Go there, and let others go on."""
        place = super().seek(offset, whence)
        time.sleep(0.01)
        return place


def test_a_pdf_fetched_by_many_at_once_is_whole_for_each() -> None:
    """A browser shows it and saves it in the same moment: one of them had an empty file."""
    job = Job("key", 1, finished=True, _file=Slow(b"a PDF"))
    with ThreadPoolExecutor(8) as many:
        fetched = list(many.map(lambda _: job.pdf(), range(32)))
    assert set(fetched) == {b"a PDF"}
    job.close()
    with pytest.raises(LookupError):
        job.pdf()
