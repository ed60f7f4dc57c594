"""How fast pages are made and how much memory a large roster takes, beside two general-purpose libraries.

ReportLab's canvas draws the same strokes on the same pages, from numbers made ready outside its time; WeasyPrint
turns the same SVGs into a PDF. Contestants take turns in one process, medians are printed, in ms a page: for three
hundred names and for thirty, a large part of whose time goes into letters that are met for the first time. A cold start
is the command line in a fresh process.
CPU time is the fairer figure where other programs share the machine. ``--memory`` streams generated rosters
in a process each (add ``--full`` for ten thousand children). Nothing here is a test: time is not pass or fail.
"""

from __future__ import annotations

import argparse
import io
import os
import random
import re
import resource
import subprocess
import sys
import tempfile
import time
import zlib
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path
from statistics import median
from typing import TYPE_CHECKING

from rivals import PT_PER_MM, ready, reportlab, weasyprint

from namewright.cycles import look_seldom

if TYPE_CHECKING:
    from namewright.pages.page import Page
    from namewright.roster.children import Child

CHILDREN = 30
CLASSES = 300  # the children of a small school
CASES = ("all", "no outline", "no roster", "roster only")  # each but the last makes the sheets
NAMES = """Bo Tamsel, Ottilka Brane, Kirrin Vost, Mirel Ondway, Pelle Harrowin, Suvi Lindle, Jorun Esk, Anouk Tervane,
Dario Melk, Wenna Praske, Ilse Corvan, Tobin Yarrel, Zofka Nimm, Ewan Dulse, Lúa Ferrin, Oskar Bramlet, Quilla Sorn,
Hanneke Vree, Rafi Abenole, Nia Gwellan, Chidi Okorane, Maelle Dussin, Yara Solente, Björn Askle, Gwen Tallis, Fenna
Roke, Uma Pellarin, Vito Carsene, Xenia Morwen, Alexandrina Fjell-Okparande""".replace("\n", " ").replace(", ", "\n")
SYLLABLES = ("ba", "bel", "cho", "da", "dri", "el", "fa", "gri", "ha", "in", "jo", "ka", "lo", "lu", "ma", "mi", "na",
             "no", "o", "pe", "ri", "sa", "su", "ta", "ti", "u", "va", "wen", "ya", "zo")
_COMPILED = tempfile.TemporaryDirectory(prefix="compiled")


def pages_of(children: Iterable[Child], outline: bool = True) -> Iterator[Page]:
    """Yield the sheets of the children one by one, so that none is kept."""
    from namewright.lines.ruling import DEFAULT_RULING, preset
    from namewright.pages.sheet import practice_pages
    from namewright.pages.sheet_settings import SheetSettings
    from namewright.pages.typesetter import Typesetter

    setter, settings = Typesetter(), SheetSettings(preset(DEFAULT_RULING))
    for child in children:
        for page in practice_pages(setter, child.practice, child.label, settings):
            yield page if outline else page._replace(outline=None)


def ours(text: str) -> bytes:
    """Go from pasted text to PDF bytes with nothing ready but the imports: roster, class order, letters, pages."""
    from namewright.output.pdf import write_pdf
    from namewright.practice.ordering import order_class
    from namewright.roster.parsing import read_roster

    out = io.BytesIO()
    placed = order_class(read_roster(text).children)
    write_pdf(pages_of([one.child for one in placed]), out, title="Name practice", lang="en")
    return out.getvalue()


def timed(work: Callable[[], bytes]) -> tuple[float, float, int]:
    """Return wall seconds, CPU seconds and bytes of one go."""
    wall, cpu = time.perf_counter(), time.process_time()
    size = len(work())
    return time.perf_counter() - wall, time.process_time() - cpu, size


def packing_alone(made: bytes) -> Callable[[], bytes]:
    """Return the least work for a PDF's bytes: deflate its streams, ready to be packed, and write it to a file."""
    from namewright.output.pdf.objects import deflated

    streams = []
    for found in re.finditer(rb"stream\r?\n", made):
        try:
            streams.append(zlib.decompressobj().decompress(made[found.end():]))
        except zlib.error:
            continue  # the end of a stream, or one that is not packed

    def work() -> bytes:
        for stream in streams:
            deflated(stream)
        with tempfile.TemporaryFile() as out:
            out.write(made)
        return made
    return work


def classes(rounds: int, count: int) -> None:
    """Print the time a child, beside what deflating and writing the same bytes take alone."""
    text = "\n".join(made_up(count))
    alone = packing_alone(ours(text))
    goes = [(timed(lambda: ours(text)), timed(alone)) for _ in range(rounds)]
    (wall, cpu, size), (_, least, _) = ([median(go[k] for go in side) for k in range(3)]
                                        for side in zip(*goes, strict=True))
    print(f"{count} made-up names, median of {rounds} rounds, a child:")
    print(f"  Namewright  {1000 * wall / count:8.2f} ms wall {1000 * cpu / count:8.2f} ms CPU"
          f" {size / count:9.0f} bytes")
    print(f"  zlib and writing alone {1000 * least / count:20.2f} ms CPU   Namewright: {cpu / least:.1f} times that")


def speed(rounds: int, text: str, children: int) -> None:
    """Let the contestants take turns and print the table; the others draw thirty of the pages, or six."""
    from namewright.output.svg import page_svg
    from namewright.roster.parsing import read_roster

    pages = list(pages_of(read_roster(text).children))
    some = pages[::max(1, len(pages) // CHILDREN)]
    numbers = [((page.width_mm * PT_PER_MM, page.height_mm * PT_PER_MM), ready(page)) for page in some]
    few = [page_svg(page) for page in some[::5]]
    size = (pages[0].width_mm, pages[0].height_mm)
    contestants: list[tuple[str, int, Callable[[], bytes]]] = [
        ("Namewright", len(pages), lambda: ours(text)), ("ReportLab", len(some), lambda: reportlab(numbers)),
        ("WeasyPrint", len(few), lambda: weasyprint(few, size))]
    goes: dict[str, list[tuple[float, float, int]]] = {name: [] for name, _, _ in contestants}
    for turn in range(rounds + 1):
        for name, _, work in contestants:
            go = timed(work)
            if turn:  # the first turn only warms up
                goes[name].append(go)
    table = {name: tuple(median(go[k] for go in goes[name]) * (1000, 1000, 1)[k] / count for k in range(3))
             for name, count, _ in contestants}
    print(f"{len(pages)} sheets of {children} children, median of {rounds} rounds, a page:")
    for name, (wall, cpu, size_bytes) in table.items():
        print(f"  {name:<12}{wall:8.2f} ms wall {cpu:8.2f} ms CPU {size_bytes:9.0f} bytes")
    our = table["Namewright"]
    for name, target in (("ReportLab", "at most 0.30"), ("WeasyPrint", "at most 0.06")):
        wall, cpu, _ = table[name]
        print(f"  Namewright : {name:<12}{our[0] / wall:6.2f} wall {our[1] / cpu:6.2f} CPU   (target: {target})")
    print(f"  bytes a page, Namewright {our[2]:.0f}   (target: at most 4200)")


def to_know(rounds: int) -> None:
    """Print how long laying out the pages to know a name by takes beside that of sheets, for three classes of 24.

    Three others, at other levels of support, are laid out before with the same letters.
    """
    from namewright.making.choices import Choices
    from namewright.making.make import Making
    from namewright.making.request import TO_KNOW, Kind, Request, listed
    from namewright.pages.typesetter import Typesetter
    from namewright.practice.ordering import completed, order_class
    from namewright.roster.parsing import read_roster
    from namewright.settings import Support

    names, asked = list(made_up(144)), []
    for at, start in enumerate(range(0, len(names), 24)):
        roster = read_roster("\n".join(names[start:start + 24]))
        members = tuple(map(listed, completed(order_class(roster.children))))
        asked.append(Request((), members, Choices(support=list(Support)[at % len(Support)]), roster=roster))

    def laid_out(kind: Kind) -> float:
        setter = Typesetter()
        ends = [(time.process_time(), 0)]
        for request in asked:
            count = sum(1 for _ in Making(request._replace(kinds=(kind,)), setter).pages())
            ends.append((time.process_time(), ends[-1][1] + count))
        return 1000 * (ends[-1][0] - ends[3][0]) / (ends[-1][1] - ends[3][1])

    took = {kind: min(laid_out(kind) for _ in range(rounds)) for kind in (Kind.SHEETS, *TO_KNOW)}
    print("laying out, CPU ms a page, and in times of a sheet:")
    for kind, each in took.items():
        print(f"  {kind:<12}{each:8.2f} ms {each / took[Kind.SHEETS]:6.1f}")


def cold_start() -> None:
    """Print how long the command line takes for a class in a fresh process, its modules compiled before.

    Beside it stand what loading them takes alone, and what a Python that does nothing takes, in turn.
    """
    with tempfile.TemporaryDirectory() as folder:
        names = Path(folder) / "class.txt"
        names.write_text(NAMES, encoding="utf-8")
        asked = {f"{CHILDREN} sheets": ("-m", "namewright", "sheets", str(names), "-o", f"{folder}/class.pdf"),
                 "loading": ("-c", "import namewright.commands.sheets"), "Python alone": ("-c", "pass")}
        goes = [{what: spent(words) for what, words in asked.items()} for _ in range(6)][1:]  # the first compiles
    took = {what: tuple(median(go[what][k] for go in goes) for k in range(2)) for what in asked}
    print("in a fresh process:")
    for what, (wall, cpu) in took.items():
        times = cpu / took["Python alone"][1]
        print(f"  {what:<13}{wall:8.2f} s wall {cpu:8.2f} s CPU   {times:6.1f} times Python alone")
    print("  (target for the sheets: at most 0.40 s)")


def made_up(count: int) -> Iterator[str]:
    """Yield names put together from syllables, the same for the same count."""
    dice = random.Random(count)

    def word() -> str:
        return "".join(dice.choices(SYLLABLES, k=dice.randint(2, 4))).capitalize()

    return (f"{word()} {word()}" for _ in range(count))


def child(count: int, case: str) -> None:
    """Make a roster's sheets into a temporary file, less what ``case`` leaves out; print the peak in MB."""
    from namewright.output.pdf import write_pdf
    from namewright.roster.children import Child
    from namewright.roster.parsing import read_roster

    children: Iterable[Child]
    if case == "no roster":
        parts = (name.partition(" ") for name in made_up(count))
        children = (Child(given, given, given, family, line) for line, (given, _, family) in enumerate(parts, 1))
    else:
        children = read_roster("\n".join(made_up(count))).children
    if case != "roster only":
        with tempfile.TemporaryFile() as out:
            write_pdf(pages_of(children, case == "all"), out, title="Name practice", lang="en")
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)  # Linux counts in KiB


def spawned(*arguments: str) -> float:
    """Run this file in a fresh process; return its peak in MB."""
    done = subprocess.run([sys.executable, str(Path(__file__)), *arguments], check=True, capture_output=True, text=True)
    return float(done.stdout)


def spent(words: Sequence[str]) -> tuple[float, float]:
    """Run Python in a fresh process; return its wall and its CPU seconds.

    Modules are compiled once for all, as an installed package's are.
    """
    wall, cpu = time.perf_counter(), _children_cpu()
    compiled = {word: value for word, value in os.environ.items() if word != "PYTHONDONTWRITEBYTECODE"}
    subprocess.run([sys.executable, *words], check=True, env={**compiled, "PYTHONPYCACHEPREFIX": _COMPILED.name})
    return time.perf_counter() - wall, _children_cpu() - cpu


def _children_cpu() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def memory(counts: Sequence[int]) -> None:
    """Print peak memory for growing rosters: all of it, without outline entries, without both, the roster alone."""
    for case in CASES:
        peaks = [spawned("--child", str(count), "--case", case) for count in counts]
        shown = "  ".join(f"{count}: {peak:.1f} MB" for count, peak in zip(counts, peaks, strict=True))
        slope = (peaks[-1] - peaks[0]) / (counts[-1] - counts[0]) * 1000
        print(f"  {case:<12}{shown}   {slope:.2f} MB a thousand children", flush=True)


def main() -> None:
    """Read the options and run."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--rounds", type=int, default=7)
    parser.add_argument("--memory", action="store_true")
    parser.add_argument("--full", action="store_true", help="with --memory: ten thousand children too")
    parser.add_argument("--child", type=int, help=argparse.SUPPRESS)
    parser.add_argument("--case", default="all", choices=CASES, help=argparse.SUPPRESS)
    options = parser.parse_args()
    look_seldom()  # as the program itself does
    if options.child:
        child(options.child, options.case)
    elif options.memory:
        memory([500, 3000, 10000] if options.full else [500, 3000])
    else:
        speed(options.rounds, "\n".join(made_up(CLASSES)), CLASSES)
        speed(options.rounds, NAMES, CHILDREN)
        to_know(min(3, options.rounds))
        cold_start()
        classes(options.rounds, CLASSES)


if __name__ == "__main__":
    main()
