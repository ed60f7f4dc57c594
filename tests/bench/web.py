"""How fast the web page answers: first paint, a slider's picture, a long list as it is typed, fifty clients at once.

The program runs in a process of its own. First paint is the browser's own ``first-contentful-paint`` (W3C Paint
Timing), the median of nine fresh visits; it needs Chromium. A slider's picture is timed at the client, each at a line
height not asked for before. Fifty clients ask for a mix of pages, each pausing a second between two as a quick person
would; ``--pause 0`` leaves the pause away. Nothing here is a test: time is not pass or fail.
"""

from __future__ import annotations

import argparse
import http.client
import os
import shutil
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from random import Random
from statistics import median, quantiles
from urllib.parse import urlencode

from run import NAMES

from namewright.classbook import Classbook
from namewright.roster.parsing import read_roster
from namewright.web.key import cookie_name

FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync"]
PATHS = ("/class", "/class?child={child}&part=panel", "/now", "/picture/{child}/page.svg", "/picture/{child}/row.svg",
         "/child/{child}/seen", "/child/{child}/card.pdf")
PAINTED = """() => new Promise(done => new PerformanceObserver(list => {
    const one = list.getEntriesByName('first-contentful-paint')[0]; if (one) done(one.startTime);
}).observe({type: 'paint', buffered: true}))"""
ANSWERED = "performance.getEntriesByType('navigation')[0].responseEnd"
MOVED = """(value) => new Promise(done => {
    const picture = document.querySelector('#preview'), slider = document.querySelector('[data-turns=own-line_height]');
    const start = performance.now();
    const seen = () => requestAnimationFrame(() => done(performance.now() - start));
    picture.addEventListener('load', seen, { once: true });
    slider.value = value;
    slider.dispatchEvent(new Event('input', { bubbles: true }));
})"""
FAMILIES = ("Vost", "Quill", "Reed", "Moss", "Finch", "Dolt", "Lindle")
VISITS, SLIDES, CLIENTS = 9, 60, 50
LINES, TYPED = 400, 15
BEATS = ("ba", "de", "fi", "go", "ku", "la", "me", "ni", "po", "ru", "sa", "te", "vi", "zo")  # of made-up names
_IN_CYRILLIC = str.maketrans("abdefgiklmnoprstuvz", "абдефгиклмнопрстувз")
KEY: dict[str, str] = {}  # the cookie that lets in, once the program runs


@contextmanager
def program(class_file: Path) -> Iterator[int]:
    """Run the program; yield its port."""
    running = subprocess.Popen([sys.executable, "-m", "namewright.cli", "open", "--class", str(class_file),
                                "--no-browser"], stdout=subprocess.PIPE, text=True,
                               env={**os.environ, "XDG_DATA_HOME": f"{class_file.parent}-own"})
    try:
        assert running.stdout is not None
        address, _, key = running.stdout.readline().strip().partition("/?key=")
        port = int(address.rpartition(":")[2])
        KEY.update({"Cookie": f"{cookie_name(address)}={key}"})
        yield port
    finally:
        running.kill()
        running.wait()


def asked(connection: http.client.HTTPConnection, path: str) -> tuple[int, float]:
    """Ask for a path; return the status and the time in ms."""
    start = time.perf_counter()
    connection.request("GET", path, headers=KEY)
    answer = connection.getresponse()
    answer.read()
    return answer.status, (time.perf_counter() - start) * 1000


def first_paint(port: int, children: int) -> None:
    """Print how long until the class is painted first, beside a page that holds next to nothing."""
    where = shutil.which("chromium")
    if not where:
        print("first paint: not measured, Chromium is not installed here")
        return
    from playwright.sync_api import sync_playwright

    times: dict[str, list[tuple[float, float]]] = {"/class": [], "/nowhere": []}
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=where, args=FLAGS)
        for path in [path for _ in range(VISITS) for path in times]:
            context = browser.new_context(viewport={"width": 1360, "height": 900})
            name, _, key = KEY["Cookie"].partition("=")
            context.add_cookies([{"name": name, "value": key, "url": f"http://127.0.0.1:{port}"}])
            page = context.new_page()
            page.goto(f"http://127.0.0.1:{port}{path}")
            times[path].append((page.evaluate(PAINTED), page.evaluate(ANSWERED)))
            page.context.close()
        browser.close()
    for path, what in (("/class", f"a class of {children}"), ("/nowhere", "the smallest page, as a yardstick")):
        painted, answered = zip(*times[path], strict=True)
        print(f"first paint of {what}: median {median(painted):.0f} ms, worst of {VISITS} {max(painted):.0f} ms, "
              f"of which the program’s answer takes {median(answered):.0f} ms")


def seen(port: int) -> None:
    """Print how long after a slider’s move the page is seen anew in a browser."""
    where = shutil.which("chromium")
    if not where:
        return
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=where, args=FLAGS)
        context = browser.new_context(viewport={"width": 1360, "height": 900})
        name, _, key = KEY["Cookie"].partition("=")
        context.add_cookies([{"name": name, "value": key, "url": f"http://127.0.0.1:{port}"}])
        page = context.new_page()
        page.goto(f"http://127.0.0.1:{port}/class?child=8")
        page.wait_for_load_state("networkidle")
        times = [page.evaluate(MOVED, 10 + count / 2) for count in range(SLIDES)][5:]  # none was drawn before
        browser.close()
    print(f"seen after a slider’s move: median {median(times):.0f} ms, "
          f"95 of 100 under {quantiles(times, n=20)[-1]:.0f} ms")


def slider(port: int) -> None:
    """Print how long a slider's picture takes."""
    connection = http.client.HTTPConnection("127.0.0.1", port)
    for what, path in (("row", "/picture/7/row.svg?draft-7=line_height%3D{}"),
                       ("whole page", "/picture/7/page.svg?draft-7=line_height%3D{}")):
        times = [asked(connection, path.format(12 + count / 4))[1] for count in range(SLIDES)][5:]
        print(f"a slider’s picture ({what}): median {median(times):.1f} ms, "
              f"95 of 100 under {quantiles(times, n=20)[-1]:.1f} ms")


def typing(port: int) -> None:
    """Print how long a list of four hundred lines takes from a change of it to how it is read, draft kept and all."""
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
    connection.request("GET", "/class/list", headers=KEY)
    page = connection.getresponse().read().decode()
    fields = {name: page.partition(f'name="{name}" value="')[2].partition('"')[0]
              for name in ("token", "class", "based")}
    given = [child.given for child in read_roster(NAMES).children]
    near = [f"{given[at % len(given)]} {FAMILIES[at // len(given) % 7]}{'aeo'[at // len(given) // 7]}"
            for at in range(LINES - 6)]
    near += ["Vexil & Quorra", "Анна Петрова", "MIREL VOST", "Room 9", "wears glasses"]
    dice = Random(3)
    other = [" ".join("".join(dice.choices(BEATS, k=count)).title() for count in dice.choices((2, 3), k=2))
             for _ in range(LINES - 1)]
    cyrillic = [line.lower().translate(_IN_CYRILLIC).title() for line in other]
    unfolded = [f"{line} Mo/Mi" for line in other]
    for what, rest in (("with the names of the class", near), ("of another class", other),
                       ("of another class in Cyrillic", cyrillic),
                       ("of another class, days behind the names,", unfolded)):
        times = []
        for count in range(TYPED):
            body = urlencode({**fields, "practise": "given", "text": "\n".join([*rest, f"Wenna Praske{'e' * count}"])})
            start = time.perf_counter()
            connection.request("POST", "/class/list/read?part=lines", body,
                               {**KEY, "Content-Type": "application/x-www-form-urlencoded"})
            assert connection.getresponse().read()
            times.append((time.perf_counter() - start) * 1000)
        print(f"a list of {LINES} lines {what} read as it is typed: median {median(times):.0f} ms, "
              f"worst {max(times):.0f} ms, best {min(times):.0f} ms")


def crowd(port: int, seconds: float, pause: float) -> None:
    """Print what fifty clients meet."""
    times: list[float] = []
    wrong: list[str] = []
    until = time.monotonic() + seconds

    def client(number: int) -> None:
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
        time.sleep(pause * number / CLIENTS)
        count = number
        while time.monotonic() < until:
            path = PATHS[count % len(PATHS)].format(child=count % 30 + 1)
            try:
                status, took = asked(connection, path)
            except OSError as error:
                wrong.append(type(error).__name__)
                connection.close()
                continue
            times.append(took)
            if status != 200:
                wrong.append(f"{status} {path}")
            count += 1
            time.sleep(pause)

    threads = [threading.Thread(target=client, args=(number,)) for number in range(CLIENTS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    print(f"{CLIENTS} clients for {seconds:g} s, a pause of {pause:g} s: {len(times)} answers, {len(wrong)} errors, "
          f"median {median(times):.0f} ms, 95 of 100 under {quantiles(times, n=20)[-1]:.0f} ms")
    for kind in sorted(set(wrong)):
        print("  ", kind)


def class_of(children: int) -> str:
    """Return a list of so many: the thirty names, then the same with other families."""
    names = [child.given for child in read_roster(NAMES).children]
    return "\n".join(f"{names[at % len(names)]} {FAMILIES[at // len(names) % len(FAMILIES)]}" for at in range(children))


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=float, default=10.0, help="how long fifty clients ask (%(default)s)")
    parser.add_argument("--pause", type=float, default=1.0, help="seconds between two requests of one (%(default)s)")
    parser.add_argument("--children", type=int, default=30, help="how many are in the class (%(default)s)")
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        class_file = Path(folder) / "class.db"
        with Classbook.open(class_file) as book:
            book.update_roster(class_of(options.children))
        with program(class_file) as port:
            first_paint(port, options.children)
            slider(port)
            typing(port)
            seen(port)
            crowd(port, options.seconds, options.pause)


if __name__ == "__main__":
    main()
