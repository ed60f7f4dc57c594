"""What is fuzzed: each target takes any bytes and ends well, or with a problem that is told in a sentence.

Everything else that a target raises is a finding. Each has seeds: a few small, sound inputs to change bytes of.
"""

from __future__ import annotations

import atexit
import io
import re
import shutil
import sqlite3
import sys
import tempfile
import zipfile
from collections.abc import Callable, Mapping
from contextlib import closing, suppress
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from urllib.parse import parse_qsl

from flask import Flask
from flask.testing import FlaskClient
from openpyxl import Workbook

from namewright.classbook import Classbook, Seen
from namewright.classbook.mending import mend
from namewright.message import Problem
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.sources import decode
from namewright.settings import NamePart
from namewright.web import create_app
from namewright.web.desk import KEY
from namewright.web.key import cookie_name

sys.path.append(str(Path(__file__).parents[1] / "schoolfont"))

HOST = "127.0.0.1:4999"
_SHEET = "xl/worksheets/sheet1.xml"
LISTS = (
    b"Mira Quill\nTilo Reed, left\n3) Brane, KIRRIN (goes by Kiri)\nRoom 9\n",
    "First name,Family name,Goes by,Hand,Lines\nZo\u00eb,\"Quill\",,L,5/8 in\nJos\u00e9 \u0301,Moss,P,,20\n".encode(),
    b"Katie Moss (Peanuts)\t3/4/2021\tmom@example.org\nMia, Leo\nBo - Al\n",
    "\u5c0f\u96e8\nPe-ne-lo-pe \u200b\n\ufeff<li>Ana Mar\u00eda</li>\n".encode(),
)
FORMS = (
    b"/class/list?text=Mira+Quill%0ATilo+Reed&based=0&practise=given",
    b"/class/choices?paper=a4&ruling=us-3/4&line_height=20&support=light&hand=left&language=es",
    b"/child/1/lines?line_height=30&letter_spacing=2&after=0&who=RK",
    b"/child/1/seen?day=2026-03-02&letter=0&once=a&note=proud",
    b"/class/list/read?part=lines&text=Mira%0ATilo+and+Bo&do=back",
    b"/class/list/read?text=A+%26+B&do=ab.split&as-ab=x",
    b"/class/erase?child=1", b"/class/erase/yes?child=1&also=x", b"/now?letters=mi&size=4x6",
    b"/class/choices?order=need", b"/class/list?text=Mira&based=0&practise=x",
)


ODD: tuple[object, ...] = (
    "", " ", "x", "0", -1, 0, 1, 2, 7, 10**6, 2**62, 1.5, "1e999", "2026-02-30", "2026-09-14", "9999-12-31", "full",
    "left", "us-3/4", "{}", "[]", "0 1 2 3 4 5 6", "a=b", "zz", "\u0301", "A" * 3000, "\n", "\u202e", "<b>x</b>", None)


@dataclass(frozen=True)
class Target:
    """A function to fuzz and the inputs to begin from."""

    run: Callable[[bytes], None]
    seeds: Callable[[], tuple[bytes, ...]]


def read_list(data: bytes) -> None:
    """Read a list, as pasted and as a file; every line is accounted for, in order."""
    for text in (data.decode("utf-8", "replace"), _decoded(data)):
        for part in NamePart:
            try:
                reports = read_roster(text, "it", part).lines
            except RosterError as error:
                reports = error.lines
            lines = list(dict.fromkeys(one.line for one in reports))  # two children of one line have a report each
            assert lines == list(range(1, len(lines) + 1))


def _decoded(data: bytes) -> str:
    try:
        return decode(data, "it")[0]
    except RosterError:
        return ""


def read_workbook(data: bytes) -> None:
    """Read a spreadsheet: one as it is, or one with these bytes as its first sheet."""
    _decoded(data if data.startswith(b"PK") else _with_sheet(data))


def _with_sheet(data: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(workbooks()[0])) as sound, zipfile.ZipFile(out, "w") as changed:
        for name in sound.namelist():
            changed.writestr(name, data if name == _SHEET else sound.read(name))
    return out.getvalue()


def use_font(data: bytes) -> None:
    """Read a font and set a name in it."""
    from namewright.lines.ruling import preset
    from namewright.schoolfont.reading import load_font
    from namewright.schoolfont.shaping import Lettering

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "school.ttf"
        path.write_bytes(data)
        with suppress(Problem):
            Lettering(load_font(path)).ruled(preset("us-3/4")).line("Hib p")


def use_class(data: bytes) -> None:
    """Open a class's file, use all of it, and mend it."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "class.db"
        path.write_bytes(data)
        for step in (_use, lambda at: mend(at, really=True), _use):
            with suppress(Problem):
                step(path)


def _use(path: Path) -> None:
    with Classbook.open(path, create=False) as book:
        for one in book.children(left=True):
            book.history(one.id), book.observations(one.id)
        book.groups(), book.seats(), book.taught(), book.class_settings, book.history(None)
        book.update_roster(book.roster_text() + "Bo Oak\n")
        ids = [one.id for one in book.children()][:1]
        book.traces(ids)
        book.erase(ids)


def meddle(data: bytes) -> None:
    """Put an odd value into a column of a class's file: it is refused, or each page asked for is no failure of ours.

    The first byte says which column, the second which value (past the list: the rest as text), the others which pages.
    """
    which, value, *asked = (*data[:8], 0, 0)
    app, class_file, _, _ = _application()
    class_file.write_bytes(classes()[0])
    with closing(sqlite3.connect(class_file, isolation_level=None)) as raw:
        raw.execute("PRAGMA ignore_check_constraints = ON")
        columns = [(table, row[1]) for (table,) in raw.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'").fetchall()
            for row in raw.execute(f"PRAGMA table_info({table})")]
        table, column = columns[which % len(columns)]
        odd = ODD[value] if value < len(ODD) else data[2:].decode("utf-8", "replace")
        with suppress(sqlite3.Error):  # what the table itself does not take
            raw.execute(f"UPDATE {table} SET {column} = ?", (odd,))
    app.extensions[KEY].turn_to(class_file)
    client, shown = app.test_client(), [path.partition(b"?")[0].decode() for path in paths()]
    client.set_cookie(cookie_name(HOST), "fuzz", domain="127.0.0.1")
    for at in asked:
        answer = client.get(shown[at % len(shown)], headers={"Host": HOST})
        assert answer.status_code < 500, (table, column, odd, shown[at % len(shown)])


def send_form(data: bytes) -> None:
    """Send a form: a path, a question mark, and fields as in an address. No answer may be a failure of ours."""
    path, _, fields = data.decode("utf-8", "replace").partition("?")
    path = "/" + "".join(char for char in path if char.isprintable() and char not in " #?%\\").strip("/")
    form: dict[str, list[str]] = {}
    for name, text in parse_qsl(fields, keep_blank_values=True)[:50]:
        form.setdefault(name, []).append(text)
    client, base = _asked_anew()
    for answer in (client.post(path, data={**form, **base}, headers={"Host": HOST}),
                   client.get(path, query_string=form, headers={"Host": HOST})):
        assert answer.status_code < 500, (path, answer.status_code)


def _asked_anew() -> tuple[FlaskClient, Mapping[str, str]]:
    """Return a client of the one application, its class as at first, and what every form carries."""
    app, class_file, begun, base = _application()
    class_file.write_bytes(begun)
    app.extensions[KEY].turn_to(class_file)
    client = app.test_client()
    client.set_cookie(cookie_name(HOST), "fuzz", domain="127.0.0.1")
    return client, base


@cache
def _application() -> tuple[Flask, Path, bytes, Mapping[str, str]]:
    class_file = Path(tempfile.mkdtemp()) / "class.db"
    atexit.register(shutil.rmtree, class_file.parent, ignore_errors=True)
    with Classbook.open(class_file) as book:
        book.update_roster("Mira Quill\nTilo Reed\n")
    app = create_app({"CLASS": str(class_file), "HOSTS": [HOST], "KEY": "fuzz"})
    asked = {"Host": HOST, "Cookie": f"{cookie_name(HOST)}=fuzz"}
    page = app.test_client().get("/class/list", headers=asked).text
    base = {name: page.partition(f'name="{name}" value="')[2].partition('"')[0] for name in ("token", "class")}
    return app, class_file, class_file.read_bytes(), base


@cache
def paths() -> tuple[bytes, ...]:
    """Return a form for every path there is, with a field of each kind."""
    rules = {str(rule) for rule in _application()[0].url_map.iter_rules() if "static" not in rule.endpoint}
    found = sorted(re.sub(r"<(?:int:)?\w+>", "1", rule) for rule in rules)
    return tuple(f"{path}?child=1&what=sheets&one=1&other=2&week=2026-09-14&letters=a&beats=Mi-ra&in=es".encode()
                 for path in found)


@cache
def workbooks() -> tuple[bytes, ...]:
    """Return small spreadsheets."""
    book = Workbook()
    for row in (("First name", "Family name", "Hand"), ("Mira", "Quill", "L"), ("Tilo", "Reed", None), (2, 3.5, True)):
        book.active.append(row)
    book.create_sheet("Staff").append(["Ms Vost"])
    out = io.BytesIO()
    book.save(out)
    with zipfile.ZipFile(out) as archive:
        return (out.getvalue(), archive.read(_SHEET))


@cache
def fonts() -> tuple[bytes, ...]:
    """Return a small font."""
    from fontmaking import font_bytes

    return (font_bytes(),)


@cache
def classes() -> tuple[bytes, ...]:
    """Return a class's file with something in every table."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "class.db"
        with Classbook.open(path) as book:
            book.update_roster("Mira Quill\nTilo Reed, left\n")
            book.set_settings(1, {"line_height": "22", "letters": "a=two-storey"}, who="RK")
            book.observe(1, "2026-09-14", Seen([0, 1], note="good"))
            book.keep_groups({1: 1, 2: 2})
            book.seat(1, 2, True)
        return (path.read_bytes(),)


TARGETS: Mapping[str, Target] = {
    "list": Target(read_list, lambda: LISTS), "workbook": Target(read_workbook, workbooks),
    "font": Target(use_font, fonts), "class": Target(use_class, classes),
    "values": Target(meddle, lambda: tuple(bytes((at * 3, at, *range(at, at + 4))) for at in range(0, 60, 7))),
    "form": Target(send_form, lambda: (*FORMS, *paths())),
}
