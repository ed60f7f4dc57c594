"""What is kept in a class's file reaches the paper of every command, and both edges make the same page.

A setting that is kept must give the same bytes as the same setting in a list or typed; so nothing is read off the
page by our own measure. Names are invented.
"""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO
from pathlib import Path

import pytest
from flask.testing import FlaskClient
from pypdf import PdfReader

from namewright.classbook import Classbook
from namewright.cli import main

LIST = "Mira\nTilo\nJonquil\nOtto\nNoor\n"
OF_CLASS = {"paper": "a4", "language": "es", "line_height": "16", "order": "name"}
TYPED = ("--paper", "a4", "--captions", "es", "--line-height", "16")
OF_MIRA = {"line_height": "24", "support": "light", "letters": "a=two-storey", "hand": "left"}
SAME_IN_A_LIST = ("Name,Line height,Support,Letters,Hand\nMira,24,light,a=two-storey,left\n"
                  "Tilo,,,,\nJonquil,,,,\nOtto,,,,\nNoor,,,,\n")
Run = Callable[..., bytes]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a list, the class made from it with settings kept, and a list that says the same by itself."""
    (tmp_path / "list.txt").write_text(LIST)
    (tmp_path / "own.csv").write_text(SAME_IN_A_LIST)
    with Classbook.open(tmp_path / "room4.db") as book:
        book.update_roster(LIST)
        book.set_class_settings(OF_CLASS)
        book.set_settings(book.children()[0].id, OF_MIRA)
    return tmp_path


@pytest.fixture
def made(folder: Path, capsys: pytest.CaptureFixture[str]) -> Run:
    def run(command: str, subject: str, *more: str) -> bytes:
        """Return what a command writes; a file is named by its place in the folder."""
        out = folder / "out.pdf"
        out.unlink(missing_ok=True)
        there = str(folder / subject) if (folder / subject).exists() else subject
        words = [str(folder / word) if word.endswith(".db") else word for word in more]
        assert main([command, there, "-o", str(out), *words]) == 0, capsys.readouterr().err
        return out.read_bytes()
    return run


def test_sheets(made: Run) -> None:
    kept = made("sheets", "room4.db")
    assert kept == made("sheets", "own.csv", *TYPED, "--order", "name")
    assert kept != made("sheets", "list.txt", *TYPED, "--order", "name")


def test_tiles(made: Run) -> None:
    kept = made("tiles", "room4.db")
    assert kept == made("tiles", "own.csv", *TYPED, "--order", "name")
    assert kept != made("tiles", "list.txt", *TYPED, "--order", "name")


def test_order(made: Run) -> None:
    """The order that is kept for the class; and by need, the level of support that is kept for a child."""
    assert made("order", "room4.db") == made("order", "own.csv", "--order", "name")
    by_need = made("order", "room4.db", "--order", "need")
    assert by_need == made("order", "own.csv", "--order", "need")
    assert by_need != made("order", "list.txt", "--order", "need")


def under_the_heading(pdf: bytes) -> list[str]:
    """Return the lines of a plan but for its heading, which tells a kept class's week by its date."""
    return [line for page in PdfReader(BytesIO(pdf)).pages for line in page.extract_text().splitlines()][1:]


def test_plan(made: Run) -> None:
    """The class's paper, language, order and support of its children."""
    kept = under_the_heading(made("plan", "room4.db"))
    assert kept == under_the_heading(made("plan", "own.csv", *TYPED, "--order", "name"))
    by_need = under_the_heading(made("plan", "room4.db", "--order", "need"))
    assert by_need == under_the_heading(made("plan", "own.csv", *TYPED, "--order", "need"))
    assert by_need != under_the_heading(made("plan", "list.txt", *TYPED, "--order", "need"))


def test_group_sheets(made: Run, folder: Path) -> None:
    sheets = folder / "groups.pdf"
    made("plan", "room4.db", "--group-sheets", str(sheets))
    kept = sheets.read_bytes()
    made("plan", "own.csv", *TYPED, "--order", "name", "--group-sheets", str(sheets))
    assert kept == sheets.read_bytes()


def test_card(made: Run) -> None:
    mine = ("--captions", "es", "--line-height", "24", "--support", "light", "--letters", "a=two-storey")
    kept = made("card", "Mira", "--class", "room4.db")
    assert kept == made("card", "Mira", *mine)
    assert kept != made("card", "Mira", "--captions", "es", "--line-height", "16")


def test_sizes(made: Run) -> None:
    mine = ("--paper", "a4", "--captions", "es", "--letters", "a=two-storey")
    kept = made("sizes", "Mira", "--class", "room4.db")
    assert kept == made("sizes", "Mira", *mine)
    assert kept != made("sizes", "Mira", *mine[:-2])


# --- what is typed ------------------------------------------------------------------------------------


def test_what_is_typed_goes_before_what_is_kept_for_the_class_and_not_before_a_childs_own(made: Run) -> None:
    kept = made("sheets", "room4.db", "--line-height", "20", "--paper", "letter", "--order", "roster")
    assert kept == made("sheets", "own.csv", "--line-height", "20", "--captions", "es", "--order", "roster")


def test_same_for_all_goes_before_a_childs_own_too(made: Run) -> None:
    alike = ("--line-height", "20", "--support", "full", "--hand", "right", "--letters", "a=one-storey",
             "--same-for-all")
    plain = made("sheets", "list.txt", "--captions", "es", "--paper", "a4", "--line-height", "20", "--order", "name",
                 "--letters", "a=one-storey")
    assert made("sheets", "room4.db", *alike) == plain
    assert made("sheets", "own.csv", "--captions", "es", "--paper", "a4", "--order", "name", *alike) == plain


def test_for_one_child_what_is_typed_goes_first(made: Run) -> None:
    """A card speaks of this very child."""
    typed = made("card", "Mira", "--class", "room4.db", "--line-height", "20", "--support", "full")
    assert typed == made("card", "Mira", "--captions", "es", "--line-height", "20", "--support", "full",
                         "--letters", "a=two-storey")


def test_a_switch_that_is_kept_can_be_typed_off(made: Run, folder: Path) -> None:
    with Classbook.open(folder / "room4.db") as book:
        book.set_class_settings({"landscape": "on", "binding": "on"})
    off = made("sheets", "room4.db", "--no-landscape", "--no-binding")
    assert off == made("sheets", "own.csv", *TYPED, "--order", "name")
    assert off != made("sheets", "room4.db")


# --- both edges ---------------------------------------------------------------------------------------


def known_client(class_file: Path) -> FlaskClient:
    """Return a client that has the key of a page for a class."""
    from namewright.web import create_app
    from namewright.web.key import cookie_name

    app = create_app({"CLASS": str(class_file), "HOSTS": ["localhost"]})
    client = app.test_client()
    client.set_cookie(cookie_name("localhost"), app.config["KEY"])
    return client


def test_both_edges_make_the_same_sheet(made: Run, folder: Path) -> None:
    """The first page of a child's sheet on the screen is the drawing that the command line writes, but for its mark."""
    made("sheets", "room4.db", "--order", "roster", "--svg", str(folder / "drawings"))
    client = known_client(folder / "room4.db")
    with Classbook.open(folder / "room4.db") as book:
        ids = [one.id for one in book.children()]
    drawn = sorted((folder / "drawings").iterdir())
    assert len(drawn) == len(ids) == 5
    for child_id, path in zip(ids, drawn, strict=True):
        answer = client.get(f"/picture/{child_id}/page.svg", headers={"Host": "localhost"})
        assert answer.data == path.read_bytes().removesuffix(b"\n<!-- Namewright -->\n")


@pytest.mark.parametrize(("kind", "command"), [("cards", "card"), ("sizes", "sizes")])
def test_both_edges_make_the_same_page_for_one_child(made: Run, folder: Path, kind: str, command: str) -> None:
    """The PDF of the browser is the one of the command line."""
    path = "sizes.pdf" if kind == "sizes" else "card.pdf?size=4x6"
    with Classbook.open(folder / "room4.db") as book:
        mira = book.children()[0].id
    client = known_client(folder / "room4.db")
    answer = client.get(f"/child/{mira}/{path}", headers={"Host": "localhost"})
    assert answer.data == made(command, "Mira", "--class", "room4.db")
