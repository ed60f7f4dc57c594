"""The week, the wishes, the beats and next month in the browser: what is said there is in the class's file."""

from __future__ import annotations

import io
from datetime import date, timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader
from webhelp import Visitor, finished

from namewright.classbook import Classbook, Seen, grouping
from namewright.settings import Support

LIST = "Mirel\nBo\nOttilka\nTavo\nKirrin\nWenna\nZofia\nIris\n"


@pytest.fixture
def class_of_eight(visitor: Visitor) -> Visitor:
    """A class of eight at two tables."""
    visitor.keep(LIST)
    return visitor


def kept(class_file: Path) -> Classbook:
    return Classbook.open(class_file, create=False)


def test_a_wish_is_kept_shown_followed_and_taken_back(class_of_eight: Visitor, class_file: Path) -> None:
    """Two who share a table part at a tap, the page says so, and another tap takes it back."""
    with kept(class_file) as book:
        groups = book.groups()
        one, other = [child for child in groups if groups[child] == 1][:2]
        labels = {each.id: each.child.label for each in book.children()}
    answer = class_of_eight.post("/class/week/seats", {"one": str(one), "other": str(other), "wish": "apart"})
    page = class_of_eight.get(answer.headers["Location"]).text
    first, second = sorted((one, other))
    assert f"{labels[first]} and {labels[second]} sit apart." in page
    with kept(class_file) as book:
        assert book.seats() == ((first, second, False),)
    assert class_of_eight.post("/class/week/plan", {}).status_code == 302
    with kept(class_file) as book:
        assert book.groups()[one] != book.groups()[other]
    class_of_eight.post("/class/week/seats", {"one": str(one), "other": str(other), "wish": "either"})
    with kept(class_file) as book:
        assert book.seats() == ()


@pytest.mark.parametrize(("one", "other", "wish"), [
    ("1", "1", "apart"), ("", "2", "apart"), ("1", "99", "together"), ("1", "2", "x")])
def test_what_is_no_wish_is_said_and_not_kept(class_of_eight: Visitor, class_file: Path, one: str, other: str,
                                              wish: str) -> None:
    answer = class_of_eight.post("/class/week/seats", {"one": one, "other": other, "wish": wish})
    assert answer.status_code == 422
    assert 'role="alert"' in answer.text
    with kept(class_file) as book:
        assert book.seats() == ()


def test_wishes_that_cannot_be_met_are_told(class_of_eight: Visitor) -> None:
    class_of_eight.post("/class/week", {"tables": "1", "letters_per_week": "1"})
    class_of_eight.post("/class/week/seats", {"one": "1", "other": "2", "wish": "apart"})
    assert "What was said about Mirel and Bo could not be met" in class_of_eight.get("/class/week").text


def test_tables_and_letters_a_week_are_kept_for_screen_and_command(class_of_eight: Visitor, class_file: Path) -> None:
    """As many tables as was said stand on the page; a number that cannot be is said."""
    class_of_eight.post("/class/week", {"tables": "4", "letters_per_week": "2"})
    page = class_of_eight.get("/class/week").text
    assert "Table 4:" in page
    assert "Table 5:" not in page
    assert "The letters of this week:" in page
    with kept(class_file) as book:
        assert grouping.wishes(book, book.children()).tables == 4
    assert class_of_eight.post("/class/week", {"tables": "0", "letters_per_week": "1"}).status_code == 422


@pytest.mark.parametrize(("path", "form"), [("/class/week/plan", {"sheets": "1"}),
                                            ("/print", {"what": "plan", "who": "all"})])
def test_a_plan_keeps_what_was_taught(class_of_eight: Visitor, class_file: Path, path: str, form: dict[str, str],
                                      ) -> None:
    """Made from either screen, the letters of this week are in the file; next week brings others."""
    job = finished(class_of_eight, class_of_eight.post(path, form))
    text = "".join(page.extract_text() for page in PdfReader(io.BytesIO(
        class_of_eight.get(job + "/pages.pdf").data)).pages)
    with kept(class_file) as book:
        ((monday, letters),) = book.taught().items()
        assert monday == grouping.monday_of(date.today())
        assert f"Theletterofthisweek:{letters[0].upper()}{letters[0]}." in "".join(text.split())
        assert set(book.groups()) == {one.id for one in book.children()}
        assert grouping.taught_before(book, monday + timedelta(days=7)) == (letters,)


def test_a_plan_of_some_children_is_not_the_classs(class_of_eight: Visitor, class_file: Path) -> None:
    class_of_eight.post("/print", {"what": "plan", "who": "ticked", "child": ["1", "2"]})
    with kept(class_file) as book:
        assert book.taught() == {}


def test_one_tap_sets_a_doubtful_beat_right(class_of_eight: Visitor, class_file: Path) -> None:
    """A name in doubt comes first with a button a reading; the tap is kept and the doubt is gone."""
    page = class_of_eight.get("/class/beats").text
    assert page.index("Ot · til · ka ?") < page.index("These are known")
    assert 'name="beats" value="Ot-til-ka"' in page
    answer = class_of_eight.post("/child/3/beats", {"beats": "Ot-til-ka"})
    after = class_of_eight.get(answer.headers["Location"]).text
    assert after.index("Ot · til · ka (as you said)") > after.index("These are known")
    with kept(class_file) as book:
        assert book.child(3).child.beats == "Ot-til-ka"


def test_beats_of_another_name_are_said_and_not_kept(class_of_eight: Visitor, class_file: Path) -> None:
    answer = class_of_eight.post("/child/3/beats", {"beats": "Ot-til"})
    assert answer.status_code == 422
    assert "do not make the name" in answer.text
    with kept(class_file) as book:
        assert not book.child(3).settings


def test_the_language_of_names_is_said_for_the_class_and_for_one(class_of_eight: Visitor, class_file: Path) -> None:
    """With a language nothing is in doubt any more, and a child's own goes before the class's."""
    class_of_eight.post("/class/beats", {"names_in": "pl"})
    assert " ?</span>" not in class_of_eight.get("/class/beats").text
    class_of_eight.post("/child/6/beats", {"names_in": "en"})
    with kept(class_file) as book:
        assert (book.class_settings["names_in"], book.child(6).child.names_in) == ("pl", "en")


@pytest.fixture
def a_month_of_notes(class_of_eight: Visitor, class_file: Path) -> Visitor:
    """Two children who form every letter, and one for whom the adult chose the level."""
    with kept(class_file) as book:
        for child in (1, 2, 3):
            for day in ("2026-11-16", "2026-11-19"):
                name = book.child(child).child.practice
                book.observe(child, day, Seen(range(len(name)), support=Support.FULL))
        book.set_settings(3, {"support": "full"}, who="RK", when="2026-11-01T08:00:00")
    return class_of_eight


def test_next_month_changes_what_is_left_ticked(a_month_of_notes: Visitor, class_file: Path) -> None:
    """One change is refused, one made, the adult's own choice stands, and the PDF has everyone."""
    page = a_month_of_notes.get("/class/next").text
    assert page.count('name="change"') == 2
    assert "Ottilka stays at full support, which you chose" in page
    sent = {"shown": ["1:partial", "2:partial"], "change": ["2"]}
    job = finished(a_month_of_notes, a_month_of_notes.post("/class/next", sent))
    assert len(PdfReader(io.BytesIO(a_month_of_notes.get(job + "/pages.pdf").data)).pages) >= 8
    with kept(class_file) as book:
        levels = [one.settings.get("support") for one in book.children()]
    assert levels == [None, "partial", "full", *[None] * 5]
    assert 'name="change"' not in a_month_of_notes.get("/class/next").text  # what was refused is not asked again


def test_a_change_that_was_not_shown_is_not_made(a_month_of_notes: Visitor, class_file: Path) -> None:
    a_month_of_notes.post("/class/next", {"shown": ["1:light"], "change": ["1", "2"]})
    with kept(class_file) as book:
        assert [one.settings.get("support") for one in book.children()] == [None, None, "full", *[None] * 5]


def test_the_changes_are_a_page_for_the_adult(a_month_of_notes: Visitor) -> None:
    """Before any is made: every child stands on it with the reason."""
    answer = a_month_of_notes.get("/class/next/list.pdf")
    text = " ".join(PdfReader(io.BytesIO(answer.data)).pages[0].extract_text().split())
    assert "Mirel: from full to partial support. Every letter was formed on each of the last 2 days" in text
    assert "Not enough notes yet: Tavo, Kirrin, Wenna, Zofia and Iris." in text


def test_pages_for_family_and_specialist(a_month_of_notes: Visitor) -> None:
    """From where writing is noted: a talk in the language of the home, the record as pages and as CSV."""
    page = a_month_of_notes.get("/child/1/seen").text
    for where in ("talk.pdf", "record.pdf", "record.csv"):
        assert f"/child/1/{where}" in page
    answer = a_month_of_notes.post("/child/1/home", {"in": "es"})
    assert "remembered for Mirel" in a_month_of_notes.get(answer.headers["Location"]).text

    def text(path: str) -> str:
        return "".join(PdfReader(io.BytesIO(a_month_of_notes.get(path).data)).pages[0].extract_text().split())

    assert "paraverlojuntos" in text("/child/1/talk.pdf")
    assert "Forthespecialist" in text("/child/1/record.pdf")  # for the adult here, in the language of the class
    assert a_month_of_notes.get("/child/1/record.csv").text.count("Mirel,2026-11-16") == 5
    assert a_month_of_notes.get("/child/8/talk.pdf").status_code == 404
    assert a_month_of_notes.post("/child/1/home", {"in": "xx"}).status_code == 409


@pytest.mark.parametrize("path", ["/class/week", "/class/beats"])
def test_without_a_class_one_is_led_to_the_place_to_paste_one(visitor: Visitor, path: str) -> None:
    assert visitor.get(path).headers["Location"].startswith("/class/list")
