"""The list of names on the screen: every line as it was read, mended in place, kept once."""

from __future__ import annotations

import cProfile
import io
import pstats
import re
from pathlib import Path

import pytest
from openpyxl import Workbook
from webhelp import MESSY, Visitor, token_in

from namewright.classbook import Classbook
from namewright.web.desk import Member, close_book, members


def labels(class_file: Path) -> list[str]:
    with Classbook.open(class_file) as book:
        return [one.child.label for one in book.children()]


def _members(visitor: Visitor) -> tuple[Member, ...]:
    with visitor.client.application.test_request_context("/"):
        found = members()
        close_book()
    return found


def test_every_line_is_shown_as_it_was_read(visitor: Visitor) -> None:
    """Each pasted line comes back in a field of its own with what became of it; nothing is kept by reading."""
    answer = visitor.post("/class/list/read", {"text": MESSY, "based": "0", "practise": "given"})
    assert answer.status_code == 200
    assert answer.text.count("data-line>") == len(MESSY.splitlines()) + 1
    for said in ("Ottilka will practise “Ottilka”", "Kirrin will practise “Kirrin”", "An empty line.", "A heading"):
        assert said in answer.text
    assert visitor.get("/class").status_code == 302


def test_columns_not_used_are_said_once(visitor: Visitor) -> None:
    """A table with other columns, filled here and there, has one sentence about them, and no note on every line."""
    rows = ["\tLast\tFirst\tDOB\tNotes", "1\tTamsel\tOttilka\t3/4/2021\tglasses", "2\tBrane\tKirrin\t\tIEP",
            "3\tVost\tMirel\t5/6/2021\t", "4\tDolt\tKasimir\t\t"]
    page = visitor.post("/class/list/read", {"text": "\n".join(rows), "based": "0", "practise": "given"}).text
    assert page.count("not used for the pages: 1, “DOB”, “Notes”.") == 1
    assert "Left out: column" not in page
    assert 'class="child look"' not in page


def test_letters_that_we_lack_are_told_when_the_list_is_read(visitor: Visitor) -> None:
    """A name that cannot be drawn is told beside its line, with what to do, and doing that helps."""
    read = {"based": "0", "practise": "given"}
    page = visitor.post("/class/list/read", {"text": "Ottilka Tamsel\n春 Brane\n", **read}).text
    assert page.count("Our letters have no “春”") == 1
    assert "(goes by Bo)" in page
    mended = visitor.post("/class/list/read", {"text": "Ottilka Tamsel\n春 Brane (goes by Haru)\n", **read}).text
    assert "Our letters have no" not in mended
    assert "will practise “Haru”" in mended


def test_lines_mended_in_place_are_one_list(visitor: Visitor, class_file: Path) -> None:
    """What is kept is the fields put together, in their order."""
    lines = [*MESSY.splitlines()[:2], "Wenna Praske", ""]
    assert visitor.post("/class/list", {"line": lines, "based": "0", "practise": "given"}).status_code == 302
    assert labels(class_file) == ["Ottilka", "Wenna"]


def test_a_spreadsheet_may_be_dropped(visitor: Visitor) -> None:
    """A spreadsheet is read like a pasted list; a file that is none is refused in a sentence."""
    book = Workbook()
    for row in (("Given", "Family"), ("Ottilka", "Tamsel"), ("Kirrin", "Brane")):
        book.active.append(row)
    data = io.BytesIO()
    book.save(data)
    form = {"based": "0", "text": "", "file": (io.BytesIO(data.getvalue()), "class.xlsx")}
    answer = visitor.post("/class/list/read", form)  # type: ignore[arg-type]
    assert "Kirrin will practise" in answer.text
    wrong = {"based": "0", "text": "", "file": (io.BytesIO(b"%PDF-1.7 no names"), "class.csv")}
    refused = visitor.post("/class/list/read", wrong)  # type: ignore[arg-type]
    assert refused.status_code == 422
    assert "is a PDF, not a list of names" in refused.text


def test_a_list_sent_twice_is_kept_once(visitor: Visitor, class_file: Path) -> None:
    """A reload that sends the form again changes nothing and is not refused."""
    form = {"text": MESSY, "based": "0", "practise": "given"}
    token = token_in(visitor.get("/").text)
    first, second = (visitor.post("/class/list", form, token=token) for _ in range(2))
    assert (first.status_code, second.status_code) == (302, 302)
    with Classbook.open(class_file) as book:
        assert book.roster_id() == 1
        assert len(book.children(left=True)) == 7


def test_two_windows_do_not_overwrite_each_other(settled: Visitor, class_file: Path) -> None:
    """A list based on an older one is not kept unseen: it comes back whole, and counts once it was looked at."""
    assert settled.keep(MESSY + "Tobin Yarrel\n").status_code == 302
    mine = settled.post("/class/list", {"text": MESSY + "Wenna Praske\n", "based": "1", "practise": "given"})
    assert mine.status_code == 409
    assert "another window" in mine.text
    assert "Wenna Praske" in mine.text
    assert "Tobin" in labels(class_file)
    based = re.search(r'name="based" value="(\d+)"', mine.text)
    assert based
    assert settled.post("/class/list", {"text": MESSY + "Wenna Praske\n", "based": based[1], "practise": "given"},
                        token=token_in(mine.text)).status_code == 302
    assert "Wenna" in labels(class_file)


def test_a_mended_line_is_the_same_child_and_a_new_name_is_not(settled: Visitor, class_file: Path) -> None:
    """A slip that is mended keeps the child's settings; another name on the same line does not inherit them."""
    lines = Classbook.open(class_file).roster_text().splitlines()
    ids = {one.child.line: str(one.id) for one in Classbook.open(class_file).children()}
    katla = next(at for at, line in enumerate(lines) if "Katla" in line)
    settled.post("/child/5/lines", {"line_height": "30", "after": "0"})
    sent = {"based": "1", "practise": "given", "who": [ids.get(at, "") for at in range(1, len(lines) + 1)]}
    mended = [*lines[:katla], lines[katla].replace("Katla", "Katlä"), *lines[katla + 1:]]
    settled.post("/class/list", {**sent, "line": mended})
    with Classbook.open(class_file) as book:
        assert {one.child.label: one.id for one in book.children()}["Katlä"] == 5
        assert book.settings_of(5) == {"line_height": "30"}
    other = [*lines[:katla], "Ewan,Dulse", *lines[katla + 1:]]
    settled.post("/class/list", {**sent, "line": other, "based": "2"})
    with Classbook.open(class_file) as book:
        ewan = next(one for one in book.children() if one.child.label == "Ewan")
        assert ewan.id not in ids.values()
        assert not ewan.settings


def test_children_stay_together_when_another_joins(settled: Visitor, class_file: Path) -> None:
    """The groups on the screen are kept with the list; a child who joins moves nobody who need not move."""
    before = {one.label: one.placed.group for one in _members(settled)}
    with Classbook.open(class_file) as book:
        assert sorted(book.groups().values()) == sorted(group for group in before.values() if group)
        swapped = {child_id: 3 - group for child_id, group in book.groups().items()}
        book.keep_groups(swapped)
    assert {one.label: one.placed.group for one in _members(settled)} == {
        label: 3 - (group or 0) for label, group in before.items()}
    settled.keep(MESSY + "Wenna Praske\n")
    after = {one.label: one.placed.group for one in _members(settled)}
    assert {label: after[label] for label in before} == {label: 3 - (group or 0) for label, group in before.items()}


# Invented lines of which each has notes of its own, a column beside the name, or a letter that cannot be drawn.
SHAPES = {
    "notes": "Mirel{n} Vost (wears glasses {n})", "columns": "Mirel{n}\tVost\t{n}/4/2021\tglasses {n}",
    "letters": "Жора{n} Vost", "spaces": "  Mirel    Vost{n}  , ,,  x", "remarks": "KIRRIN BRANE {n} {n}{n}{n}",
}


def calls(visitor: Visitor, text: str) -> int:
    """Return how many functions are called to read a list and show it."""
    counting = cProfile.Profile()
    counting.enable()
    answer = visitor.post("/class/list/read?part=lines", {"text": text, "based": "0", "practise": "given"})
    counting.disable()
    assert answer.status_code == 200
    return int(pstats.Stats(counting).total_calls)  # type: ignore[attr-defined]


def test_a_list_of_endless_lines_is_refused_before_it_is_read(visitor: Visitor) -> None:
    """A few lines of a great many characters are no class list: that is said at once."""
    answer = visitor.post("/class/list/read", {"text": "Mirel\t" * 100_000, "based": "0", "practise": "given"})
    assert answer.status_code == 422
    assert "longer than 200000 characters" in answer.text


@pytest.mark.parametrize("shape", SHAPES.values(), ids=SHAPES)
def test_four_times_the_lines_are_about_four_times_the_work(visitor: Visitor, shape: str) -> None:
    """Regression: every line counted the notes of all lines, so that four hundred took over a minute."""
    few, many = ("\n".join(shape.format(n=n) for n in range(count)) for count in (20, 80))
    calls(visitor, few)  # what is kept from the first time on
    assert calls(visitor, many) < 6 * calls(visitor, few)


def test_which_column_holds_the_names_is_asked_and_answered_by_a_button(visitor: Visitor) -> None:
    """Of two columns that nothing tells apart, each is offered; the answer becomes a line of titles."""
    sent = {"based": "0", "practise": "given", "text": "Zorb\tQuix\nVexil\tQuorra"}
    asked = visitor.post("/class/list/read", sent)
    assert asked.status_code == 422
    assert 'value="given,family"' in asked.text
    assert 'value="family,given"' in asked.text
    answered = visitor.post("/class/list/read", {**sent, "columns": "family,given"})
    assert answered.status_code == 200
    assert 'value="Family name\tGiven name"' in answered.text
