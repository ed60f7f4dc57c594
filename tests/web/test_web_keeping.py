"""Nothing lost, nothing doubled: forms sent twice, two windows at once, and what is kept of each."""

from __future__ import annotations

import io
import re
import time
from http.client import HTTPException
from pathlib import Path
from threading import Thread
from urllib.parse import urlencode

import pytest
from openpyxl import Workbook
from pypdf import PdfReader
from webhelp import HOST, MESSY, Program, Visitor, finished, mark_in, token_in

from namewright.classbook import Classbook
from namewright.pages.page import Page
from namewright.web import create_app
from namewright.web.desk import Member, close_book, members
from namewright.web.jobs import Job, Jobs

PT_PER_MM = 72 / 25.4


def labels(class_file: Path) -> list[str]:
    with Classbook.open(class_file) as book:
        return [one.child.label for one in book.children()]


def newest(visitor: Visitor) -> str:
    found = re.search(r'name="after" value="(\d+)"', visitor.get("/child/1/lines").text)
    assert found
    return found[1]


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


@pytest.mark.parametrize(("typed", "child"), [("ta", 2), ("tamsel", 1), ("ot", 1)])
def test_a_name_goes_before_a_family_name(visitor: Visitor, typed: str, child: int) -> None:
    """Two letters mean the child who is called so; a family name counts where nobody is."""
    visitor.keep("Ottilka Tamsel\nTavi Brane\nMirel Tamworth\n")
    answer = visitor.post("/now", {"letters": typed, "size": "sheet"})
    assert answer.headers["Location"].startswith(f"/child/{child}/card.pdf")


def test_the_aide_may_have_the_sheet(settled: Visitor) -> None:
    """The practice sheet can be made in place of a card, also for a name that is not in the class."""
    answer = settled.post("/now", {"letters": "ott", "size": "practice"})
    assert answer.headers["Location"] == "/child/1/sheet.pdf"
    typed = settled.post("/now", {"letters": "Zuriel", "size": "practice"})
    assert PdfReader(io.BytesIO(typed.data)).outline[0].title == "Zuriel"  # type: ignore[union-attr]
    assert "Make the practice sheet instead" not in settled.post("/now", {"letters": "春", "size": "sheet"}).text


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


def test_settings_are_kept_once_with_who_and_undone_once(settled: Visitor, class_file: Path) -> None:
    """Settings sent twice make one entry; undo sent twice takes back one."""
    form = {"line_height": "32", "letter_spacing": "2", "who": "RK", "after": "0"}
    for _ in range(2):
        assert settled.post("/child/1/lines", form).status_code == 302
    settled.post("/child/1/lines", {"line_height": "40", "after": newest(settled)})
    undo = {"after": newest(settled)}
    for _ in range(2):
        settled.post("/child/1/lines/undo", undo)
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "32", "letter_spacing": "2"}
        history = book.history(1)
        assert [save.who for save in history] == ["", "", "RK"]
        assert [save.undoes for save in history] == [history[1].id, None, None]
    page = settled.get("/child/1/lines").text
    assert "Line height: as the class became 32" in page
    assert "RK" in page


def test_settings_from_an_older_window_are_not_kept_unseen(settled: Visitor, class_file: Path) -> None:
    """Where another window has saved meanwhile, what was typed comes back and nothing is overwritten."""
    settled.post("/child/1/lines", {"line_height": "32", "after": "0"})
    answer = settled.post("/child/1/lines", {"line_height": "50", "after": "0"})
    assert answer.status_code == 409
    assert 'value="50"' in answer.text
    assert "another window" in answer.text
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "32"}


@pytest.mark.parametrize("form", [{"line_height": "900"}, {"dot_size": "a lot"}, {"hand": "third"}, {"rows": "-1"}])
def test_a_setting_that_cannot_be_is_said_and_not_kept(settled: Visitor, class_file: Path,
                                                       form: dict[str, str]) -> None:
    """Bad input gets a sentence, what was typed stays, and nothing is kept."""
    answer = settled.post("/child/1/lines", {**form, "after": "0"})
    assert answer.status_code == 409
    assert "Choose" in answer.text or "does not" in answer.text
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


def test_what_was_seen_is_noted_once(settled: Visitor, class_file: Path) -> None:
    """A form of letters has a key of its own: sent twice, even to a new start of the program, it is noted once."""
    form = {"day": "2026-03-02", "letter": ["0", "2"], "support": "partial", "stage": "4", "once": "k1", "who": "RK"}
    for _ in range(2):
        assert settled.post("/child/1/seen", form).status_code == 302
    with Classbook.open(class_file) as book:
        notes = book.observations(1)
    assert [(note.date, note.letters, note.who) for note in notes] == [("2026-03-02", (0, 2), "RK")]
    assert settled.post("/child/1/seen", {**form, "day": "yesterday", "once": "k2"}).status_code == 422
    settled.post(f"/child/1/seen/{notes[0].id}/back", {})
    with Classbook.open(class_file) as book:
        assert not book.observations(1)


def test_printing_twice_makes_one_pdf(settled: Visitor) -> None:
    """The same form sent twice leads to one PDF, and that PDF holds a page a child at the exact size of the paper."""
    form = {"what": ["sheets"], "who": "all", "paper": "a4", "ruling": "de-6", "support": "partial", "language": "en"}
    token = token_in(settled.get("/class").text)
    first, second = (settled.post("/print", form, token=token) for _ in range(2))
    assert first.headers["Location"] == second.headers["Location"]
    where = finished(settled, first)
    pages = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages
    assert len(pages) == 7
    for page in pages:
        assert sorted(float(side) / PT_PER_MM for side in page.mediabox[2:]) == pytest.approx([210, 297], abs=0.05)


def test_a_job_asked_for_twice_is_made_once() -> None:
    """The same key begins one job; what makes it is called once."""
    jobs, begun = Jobs(), []

    def make(job: Job) -> list[Page]:
        begun.append(job.id)
        return []

    first, second = (jobs.start("key", 1, make, "en") for _ in range(2))
    jobs.start("other", 1, make, "en")
    deadline = time.monotonic() + 20
    while len(begun) < 2 and time.monotonic() < deadline:
        time.sleep(0.01)
    assert first is second
    assert begun == ["key", "other"]


def test_what_is_typed_for_a_child_is_what_print_prints(settled: Visitor, class_file: Path) -> None:
    """On the page of a child's lines, Print sends the form: what is shown is kept and printed, and nothing else.

    Regression: 40 mm were typed and shown, and the 19 mm that were kept came out of the printer.
    """
    page = settled.get("/child/1/lines").text
    assert re.search(r'<button name="print" value="1">', page)
    assert "/child/1/sheet.pdf" not in page
    answer = settled.post("/child/1/lines", {"line_height": "40", "after": "0", "print": "1"})
    assert (answer.status_code, answer.headers["Location"]) == (302, "/child/1/sheet.pdf")
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "40"}
    wrong = settled.post("/child/1/lines", {"line_height": "900", "after": newest(settled), "print": "1"})
    assert wrong.status_code == 409
    assert 'value="900"' in wrong.text


@pytest.mark.parametrize("path", ["/print/pages?what=sheets&child=1", "/print/pages?what=cards&child=1",
                                  "/picture/1/row.svg"])
def test_a_childs_own_line_height_is_on_all_paper(settled: Visitor, path: str) -> None:
    """Sheet, card and the row at true size stand on the child's own lines, not on the class's."""
    settled.post("/child/1/lines", {"line_height": "23", "after": "0"})
    svg = settled.get(path).text
    heights = [{kind: float(y) for kind, y in re.findall(r'class="(topline|baseline)"[^>]* y1="([\d.]+)"', row)}
               for row in svg.split('class="row"')[1:]]
    assert heights
    for row in heights:
        assert row["baseline"] - row["topline"] == pytest.approx(23, abs=0.01)


def test_what_could_not_be_made_is_listed(visitor: Visitor) -> None:
    """A child whose letters we lack is named with the reason, and all others are made."""
    visitor.keep("Ottilka Tamsel\n春 Brane\nKirrin Vost\n")
    where = finished(visitor, visitor.post("/print", {"what": ["sheets", "cards", "tiles", "adult", "plan"],
                                                      "who": "all"}))
    page = visitor.get(where).text
    assert "What could not be made" in page
    assert page.count("<li>春: Our letters have no") == 1  # said once, though three kinds of page lack the child
    assert len(PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages) >= 7


def test_pages_to_know_the_name_are_printed_for_a_child(settled: Visitor) -> None:
    """One child's pages among names of the whole class, and the answers on a page of their own at the end."""
    form = {"what": ["find", "missing", "signin", "answers"], "who": "ticked", "child": ["1"]}
    where = finished(settled, settled.post("/print", form))
    texts = [page.extract_text() for page in PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages]
    assert len(texts) == 4
    assert "among other names" in texts[0]
    assert "Katla" in texts[0]  # a classmate, though no page was asked for her
    assert "For the adult" in texts[-1]
    assert "times among" not in " ".join(texts[:-1])


def test_the_plan_knows_what_was_formed(settled: Visitor, class_file: Path) -> None:
    """Once every letter of a name was noted as formed, the plan ticks them and is another."""
    plans = []
    for _ in range(2):
        where = finished(settled, settled.post("/print", {"what": ["plan"], "who": "all"}))
        plans.append(settled.get(where + "/pages.pdf").data)
        with Classbook.open(class_file) as book:
            for one in book.children():
                book.observe(one.id, "2026-11-20", range(len(one.child.practice)), who="RK")
    assert plans[0] != plans[1]


def test_forms_and_rungs_are_kept_for_the_class(settled: Visitor, class_file: Path) -> None:
    """Chosen in several places of a form, kept as the words that the command line reads, and chosen again next time."""
    form = {"paper": "a4", "letters": "", "letters.a": "a=two-storey", "letters.t": "", "letters.slant": "6",
            "letters.exit-strokes": "exit-strokes", "ladder": ["", "dots", "first-letter"], "keep_dots": "k"}
    assert settled.post("/class/choices", form).status_code == 302
    with Classbook.open(class_file) as book:
        kept = book.class_settings
    assert (kept["letters"], kept["ladder"]) == ("a=two-storey slant=6 exit-strokes", "dots first-letter")
    page = settled.get("/class").text
    for chosen in ('value="a=two-storey" data-live checked', 'value="exit-strokes" data-live checked',
                   'value="first-letter" data-live checked', 'name="letters.slant" type="number" inputmode="decimal" '
                   'min="0" max="15" step="any" value="6"'):
        assert chosen in page
    assert 'value="wide-dots" data-live checked' not in page
    settled.post("/class/choices", {"paper": "a4", "letters": "", "letters.a": "", "ladder": ""})
    with Classbook.open(class_file) as book:
        assert set(book.class_settings) == {"paper", "practise"}


def test_forms_of_the_class_are_on_its_paper(settled: Visitor) -> None:
    """What is drawn, before and after it is kept, has the chosen forms and as many rows as rungs."""
    asked = "letters=&letters.a=a%3Dtwo-storey&ladder=&ladder=dots&ladder=wide-dots&ladder=start-dots"
    usual, trial = (settled.get(f"/picture/1/page.svg{query}").text for query in ("", f"?trial=class&{asked}"))
    settled.post("/class/choices", {"letters.a": "a=two-storey", "ladder": ["dots", "wide-dots", "start-dots"]})
    assert settled.get("/picture/1/page.svg").text == trial != usual
    assert _forms(trial)[1:4] == ["dotted", "wide-dots", "start-dots"]
    assert not {"wide-dots", "start-dots"} & set(_forms(usual))
    assert settled.get("/art/a/two-storey.svg").text != settled.get("/art/a/one-storey.svg").text
    assert settled.get("/art/a/three-storey.svg").status_code == 404


def _forms(svg: str) -> list[str]:
    return re.findall(r'data-form="([a-z-]+)"', svg)


def test_a_child_may_have_other_forms_than_the_class(settled: Visitor, class_file: Path) -> None:
    """The usual form is a choice too, so that a child can have it where the class has another; the history says so."""
    settled.post("/class/choices", {"letters.a": "a=two-storey"})
    settled.post("/child/1/lines", {"letters": "", "letters.a": "a=one-storey", "ladder": ["", "dots"], "after": "0"})
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"letters": "a=one-storey", "ladder": "dots"}
    page = settled.get("/child/1/lines").text
    assert 'value="a=one-storey" data-live checked' in page
    assert "Forms of letters: as the class became a with one storey" in page
    assert "a one-storey" not in page
    settled.post("/child/1/lines", {"letters": "", "letters.a": "", "ladder": "", "after": newest(settled)})
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


@pytest.mark.parametrize(("form", "words"), [({"ladder": ["dots", "wide-dots", "start-dots", "marked-dots",
                                                          "first-letter"]}, "Choose at most 4"),
                                             ({"letters.slant": "40"}, "Choose from 0 to 15"),
                                             ({"line_height": "900"}, "Choose")])
@pytest.mark.parametrize("path", ["/class/choices", "/print"])
def test_a_choice_that_cannot_be_is_said_where_it_was_made(settled: Visitor, class_file: Path, path: str, words: str,
                                                           form: dict[str, str]) -> None:
    """The screen comes back with the reason and with all that was chosen, and nothing is kept or printed."""
    answer = settled.post(path, {**form, "paper": "a4", "what": "tiles", "child": "2", "who": "ticked"})
    assert answer.status_code == 422
    assert words in answer.text
    for chosen in ('value="a4" selected', 'value="tiles" checked', 'name="child" value="2" checked',
                   'value="ticked" checked'):
        assert chosen in answer.text
    with Classbook.open(class_file) as book:
        assert "paper" not in book.class_settings


def test_columns_of_the_list_are_on_the_paper(visitor: Visitor) -> None:
    """Forms that a list gives one child are drawn for that child; what cannot be read is said, and all are made."""
    visitor.keep("name,letters\nKatla Pruner,a=two-storey\nKatla Dolt,\nMirel Vost,a=purple\n")
    first, second = (visitor.get(f"/picture/{child}/page.svg").text for child in (1, 2))
    assert _inks(first) != _inks(second)
    where = finished(visitor, visitor.post("/print", {"what": "sheets", "who": "all"}))
    said = visitor.get(where).text
    assert "3 pages are ready" in said
    assert "Please look at these" in said
    assert "no form called “purple”" in said


def _inks(svg: str) -> list[str]:
    return re.findall(r'data-name="Katla".*?</g>', svg, re.DOTALL)


def test_groups_and_the_year_are_printed_too(settled: Visitor) -> None:
    """A sheet a group of those who were chosen, and the year of the class, also from where writing is noted."""
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    where = finished(settled, settled.post("/print", {"what": ["groups", "year"], "who": "all"}))
    pdf = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data))
    groups = len({one.placed.group for one in _members(settled)})
    assert len(pdf.pages) == groups + 1
    assert sum("Table" in str(getattr(one, "title", "")) for one in pdf.outline) == groups
    assert "/class/year.pdf" in settled.get("/seen").text
    assert len(PdfReader(io.BytesIO(settled.get("/class/year.pdf").data)).pages) == 1


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


def _members(visitor: Visitor) -> tuple[Member, ...]:
    with visitor.client.application.test_request_context("/"):
        found = members()
        close_book()
    return found


def test_the_year_of_no_class_is_not_there(visitor: Visitor) -> None:
    """Without a child there is no page to make, and no error."""
    assert visitor.get("/class/year.pdf").status_code == 404


def test_only_the_ticked_are_printed(settled: Visitor) -> None:
    """A group or single children are printed alone; nobody ticked is said and nothing is begun."""
    where = finished(settled, settled.post("/print", {"what": "sheets", "who": "ticked", "child": ["2", "5"]}))
    assert len(PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages) == 2
    below = finished(settled, settled.post("/print", {"what": "sheets", "who": "all", "child": "2", "only": "ticked"}))
    assert len(PdfReader(io.BytesIO(settled.get(below + "/pages.pdf").data)).pages) == 1
    none = settled.post("/print", {"what": "tiles", "who": "ticked", "paper": "a4"})
    assert none.status_code == 422
    assert "tick at least one child" in none.text
    assert 'value="tiles" checked' in none.text  # what was chosen is still chosen
    assert 'value="sheets" checked' not in none.text


def test_a_page_shown_is_the_page_printed(settled: Visitor) -> None:
    """The preview has the paper's own proportion and follows the choices that are not kept yet."""
    letter = settled.get("/picture/1/page.svg").text
    turned = settled.get("/picture/1/page.svg?trial=class&paper=a4&landscape=on&ruling=de-6").text
    assert 'viewBox="0 0 215.9 279.4"' in letter
    assert 'viewBox="0 0 297 210"' in turned
    tall = settled.get("/picture/1/page.svg?trial=own&line_height=900")
    assert tall.status_code == 422
    assert "Choose" in tall.text


def test_a_page_of_another_class_changes_nothing_here(class_file: Path, settled: Visitor) -> None:
    """Every form of a page that was opened for class A is refused by a program that has class B open.

    What was typed stands on the page to copy, and the form comes back as it was, so that class A takes it later.
    """
    other_file = class_file.with_name("other.db")
    other = Visitor(create_app({"CLASS": str(other_file), "HOSTS": [HOST]}))
    assert other.keep("Wenna Praske\nTobin Yarrel\n").status_code == 302
    page = settled.get("/class/list?new=1").text
    token, mark, before = token_in(other.get("/").text), mark_in(page), other_file.read_bytes()
    forms: list[tuple[str, dict[str, str]]] = [
        ("/class/list", {"text": MESSY, "based": "1"}), ("/child/1/lines", {"line_height": "30", "after": "0"}),
        ("/child/1/seen", {"day": "2026-03-02", "letter": "0", "note": "MESSY", "once": "k"}),
        ("/class/choices", {"paper": "a4"}), ("/class/order", {"order": "name"}),
        ("/print", {"what": "sheets", "who": "all", "paper": "a4"}), ("/child/1/lines/undo", {"after": "0"})]
    for path, form in forms:
        for sent in (token, token_in(page)):  # of this start of the program, and of the other's
            answer = other.post(path, form, token=sent, mark=mark)
            assert (answer.status_code, "belongs to another class" in answer.text) == (409, True), path
            assert mark_in(answer.text.partition("<main")[2]) == mark
    assert other_file.read_bytes() == before
    back = other.post("/class/list", {"text": MESSY, "based": "1"}, mark=mark).text.partition("<main")[2]
    assert "KIRRIN" in back.partition("readonly")[2].partition("</textarea>")[0]
    assert settled.post("/class/list", {"text": MESSY, "based": "1"}, mark=mark_in(back)).status_code == 302


def test_a_copy_of_a_class_is_another_class(class_file: Path, settled: Visitor) -> None:
    """A copied file has the same random name, but children may differ by now, so its forms are its own."""
    copy = class_file.with_name("copy.db")
    copy.write_bytes(class_file.read_bytes())
    other = Visitor(create_app({"CLASS": str(copy), "HOSTS": [HOST]}))
    mark = mark_in(settled.get("/class").text)
    assert other.post("/class/order", {"order": "name"}, mark=mark).status_code == 409
    again = Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST]}))
    assert again.post("/class/order", {"order": "name"}, mark=mark).status_code == 302


def send(program: Program, form: dict[str, str], first_page: str) -> bool:
    """Send a list from outside; return whether it was taken."""
    data = urlencode({**form, "token": token_in(first_page), "class": mark_in(first_page)}).encode()
    try:
        program.ask("/class/list", data)
    except (OSError, HTTPException):  # cut off in the middle of an answer
        return False
    return True


@pytest.mark.parametrize("after_s", [0.0, 0.004, 0.012, 0.03])
def test_killed_during_a_save(class_file: Path, after_s: float) -> None:
    """A program killed while it saves leaves the old list or the new one, whole; sent again it is there once."""
    form = {"text": MESSY + "Wenna Praske\n", "based": "1", "practise": "given"}
    with Program(class_file) as first:
        page = first.ask()
        assert send(first, {**form, "text": MESSY, "based": "0"}, page)
        sending = Thread(target=send, args=(first, form, page))
        sending.start()
        time.sleep(after_s)
        first.kill()
        sending.join()
    assert len(labels(class_file)) in (7, 8)
    with Program(class_file) as second:
        assert send(second, form, second.ask())
    with Classbook.open(class_file) as book:
        assert len(book.children(left=True)) == 8
        assert book.roster_id() == 2
