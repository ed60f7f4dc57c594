"""How fast the whole program is inside a browser: visits, a class to its PDF, a picture, memory, transfer.

The site is built (or named: ``site.py FOLDER``) and handed out by Python's own file server on loopback, so a visit's
time is that of the device alone. Each first visit has a fresh profile, each later one a browser that was started anew.
A first visit has a place to paste before the program is there, which is told apart from the first screen, with its
heading and its fields. Seconds of processor are those of the browser with all its processes: on a machine that others
use, they say more than the clock. Nothing here is a test.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from statistics import median
from typing import Any

from playwright.sync_api import BrowserContext, Playwright, sync_playwright
from run import NAMES

sys.path.insert(0, str(Path(__file__).parents[1] / "site"))
from sitehelp import FLAGS, Host, image_made, opened, ready, save_class, sheets

ROUNDS, PICTURES = 3, 25
PLACE, FIRST, LATER = "first visit, to a place to paste", "first visit, to the first screen", "later visit"
PDF = "thirty children, from pasting to the PDF"
TICKS_PER_S = os.sysconf("SC_CLK_TCK")
PICTURE = """async ([root, from, count]) => {
  const times = [];
  for (let at = 0; at < count; at += 1) {
    const begin = performance.now();
    const answer = await fetch(`${root}/app/picture/7/row.svg?line_height=${from + at / 4}`);
    if (!answer.ok) throw new Error(`a picture was answered by ${answer.status}`);
    await answer.text();
    times.push(performance.now() - begin);
  }
  return times;
}"""


def family() -> dict[int, float]:
    """Return the processes below this one (Linux), each with the seconds of processor it has taken."""
    parents: dict[int, tuple[int, float]] = {}
    for entry in Path("/proc").iterdir():
        try:
            fields = (entry / "stat").read_text().rpartition(") ")[2].split() if entry.name.isdigit() else []
        except OSError:
            continue  # it ended meanwhile
        if fields:
            parents[int(entry.name)] = int(fields[1]), (int(fields[11]) + int(fields[12])) / TICKS_PER_S
    ours, fresh = set[int](), {os.getpid()}
    while fresh:
        fresh = {pid for pid, (parent, _) in parents.items() if parent in fresh}
        ours |= fresh
    return {pid: parents[pid][1] for pid in ours}


def memory_mb() -> float:
    """Return the memory of the browser's largest page process, which is the tab: its share of shared pages (PSS)."""
    sizes = [0.0]
    for pid in family():
        try:
            if b"--type=renderer" in Path(f"/proc/{pid}/cmdline").read_bytes():
                told = Path(f"/proc/{pid}/smaps_rollup").read_text().splitlines()
                sizes += [int(line.split()[1]) / 1024 for line in told if line.startswith("Pss:")]
        except OSError:
            continue
    return max(sizes)


def timed(work: Callable[[], Any]) -> tuple[Any, float, float]:
    """Return what work returns, with its seconds by the clock and of processor."""
    clock, used = time.perf_counter(), sum(family().values())
    done = work()
    return done, time.perf_counter() - clock, sum(family().values()) - used


@contextmanager
def device(playwright: Playwright, profile: str) -> Iterator[BrowserContext]:
    """Start Chromium with a profile of its own."""
    context = playwright.chromium.launch_persistent_context(
        profile, executable_path=shutil.which("chromium"), args=FLAGS, accept_downloads=True)
    yield context
    context.close()


def begun(device: BrowserContext, host: Host) -> Any:
    """Open the site for the first time and wait for a place to paste."""
    page = device.new_page()
    page.goto(host.address)
    page.locator("#list").wait_for(timeout=60_000)
    return page


def pasted_to_pdf(page: Any, frame: Any) -> bytes:
    """Paste thirty names, save the class, and return the PDF of its sheets."""
    save_class(frame, NAMES)
    return sheets(page, frame)


def visits(playwright: Playwright, host: Host, rounds: int) -> dict[str, list[tuple[float, float]]]:
    """Visit with fresh profiles, each once more later; then make a class's PDF and pictures; return times by what."""
    found: dict[str, list[tuple[float, float]]] = {}
    for _ in range(rounds):
        with tempfile.TemporaryDirectory() as profile:
            with device(playwright, profile) as one:
                page, *took = timed(partial(begun, one, host))
                _, *more = timed(partial(ready, page))
                found.setdefault(PLACE, []).append((took[0], took[1]))
                found.setdefault(FIRST, []).append((took[0] + more[0], took[1] + more[1]))
                image_made(page)
            with device(playwright, profile) as one:
                (page, frame), *took = timed(partial(opened, one, host))
                found.setdefault(LATER, []).append((took[0], took[1]))
                _, *took = timed(partial(pasted_to_pdf, page, frame))
                found.setdefault(PDF, []).append((took[0], took[1]))
                inside = next(each for each in page.frames if "/app" in each.url)
                times = inside.evaluate(PICTURE, [f"/{host.name}", 12, PICTURES])
                found.setdefault("a slider’s picture", []).append((median(times) / 1000, 0.0))
                found.setdefault("memory", []).append((memory_mb(), 0.0))
    return found


def main() -> None:
    """Measure and print, with what is aimed at beside."""
    if not (shutil.which("chromium") and shutil.which("npm")):
        print("the site inside a browser: not measured, Chromium or npm is not installed here")
        return
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright:
        folder = Path(sys.argv[1]) if sys.argv[1:] else Path(scratch) / "names"
        if not sys.argv[1:]:
            subprocess.run([sys.executable, "-m", "namewright.site.build", "-o", folder], check=True)
        host = Host(folder)
        try:
            found = visits(playwright, host, ROUNDS)
        finally:
            host.stop()
        sent = sum(each.stat().st_size for each in folder.rglob("*") if each.is_file()) / 1e6
    print(f"the program inside a browser, median of {ROUNDS}; others kept {os.getloadavg()[0]:.1f} processors busy:")
    for what, aim in ((PLACE, 4.0), (FIRST, 4.0), (LATER, 2.5), (PDF, 1.5)):
        clock, used = zip(*found[what], strict=True)
        print(f"  {what}: {median(clock):.1f} s, least {min(clock):.1f}; of processor {median(used):.1f} s, "
              f"least {min(used):.1f}   (target: at most {aim} s)")
    picture, memory = (median(figure for figure, _ in found[what]) for what in ("a slider’s picture", "memory"))
    print(f"  a slider’s picture: {1000 * picture:.0f} ms   (target: at most 60 ms)")
    print(f"  memory of the tab: {memory:.0f} MB   (target: at most 350 MB)")
    print(f"  sent at a first visit: {sent:.1f} MB   (target: at most 12 MB)")


if __name__ == "__main__":
    main()
