"""The list of names on the screen: every line as it was read, mended in place, kept once."""

from __future__ import annotations

import cProfile
import io
import pstats
import re
from html import unescape
from pathlib import Path

import pytest
from openpyxl import Workbook
from webhelp import HOST, MESSY, Visitor, labels, list_shown, list_typed, token_in

from namewright.classbook import Classbook
from namewright.store import forget_names
from namewright.web import list_reading
from namewright.web.desk import Member, close_book, members


def _members(visitor: Visitor) -> tuple[Member, ...]:
    with visitor.client.application.test_request_context("/"):
        found = members()
        close_book()
    return found


def test_every_line_is_shown_as_it_was_read(visitor: Visitor, class_file: Path) -> None:
    """What was tidied says before and after, the rest stands as it was written; nothing is kept by reading."""
    page = list_shown(visitor, MESSY)
    assert "7 children were found." in page
    assert "Nothing needs you." in page
    assert "What was tidied: 3 lines" in page
    assert "“KIRRIN” was typed all in one case; it is written “Kirrin” here." in page
    assert "a heading, not a child" in page
    rest = page.partition('id="rest"')[2]
    names = re.findall(r'<li><span class="own-letters">(\w+)</span>', rest)
    assert names == ["Miri", "Íñigo", "Katla", "Kasimir", "Bo"]
    assert labels(class_file) == []


def test_columns_not_used_are_said_once(visitor: Visitor) -> None:
    """A table with other columns, filled here and there, has one sentence about them, and no note on every line."""
    rows = ["\tLast\tFirst\tDOB\tNotes", "1\tTamsel\tOttilka\t3/4/2021\tglasses", "2\tBrane\tKirrin\t\tIEP",
            "3\tVost\tMirel\t5/6/2021\t", "4\tDolt\tKasimir\t\t"]
    page = list_shown(visitor, "\n".join(rows))
    assert page.count("not used for the pages: 1, “DOB”, “Notes”.") == 1
    assert "Left out: column" not in page
    assert "need you" not in page


def test_every_form_leads_to_a_page_that_can_be_loaded_again(settled: Visitor) -> None:
    """Back and reload never send a form: reading, pressing, refusing and saving all answer with another address."""
    forms = [("/class/list/read", {"text": MESSY}), ("/class/list/read", {"text": "Bo\nBo", "do": "back"}),
             ("/class/list/read", {"text": ""}), ("/class/list", {"text": ""}), ("/class/list", {"text": MESSY}),
             ("/class/list", {"text": "Wenna Praske"}), ("/class/list/back", {}), ("/class/list/discard", {})]
    for path, form in forms:
        answer = settled.post(path, {"based": "0", "practise": "given", **form})
        assert answer.status_code == 302, (path, form)
        assert settled.get(answer.headers["Location"]).status_code in (200, 302)


def test_a_spreadsheet_may_be_dropped(visitor: Visitor) -> None:
    """A spreadsheet is read like a pasted list; a file that is none is refused in a sentence, and the text stays."""
    book = Workbook()
    for row in (("Given", "Family"), ("Ottilka", "Tamsel"), ("Kirrin", "Brane")):
        book.active.append(row)
    data = io.BytesIO()
    book.save(data)
    form = {"based": "0", "text": "Bo", "file": (io.BytesIO(data.getvalue()), "class.xlsx")}
    answer = visitor.post("/class/list/read?part=lines", form)  # type: ignore[arg-type]
    assert "2 children were found." in answer.text
    assert "Ottilka\tTamsel" in list_typed(visitor)
    wrong = {"based": "0", "file": (io.BytesIO(b"%PDF-1.7 no names"), "class.csv")}
    refused = visitor.post("/class/list/read", wrong)  # type: ignore[arg-type]
    assert "is a PDF, not a list of names" in visitor.get(refused.headers["Location"]).text
    assert "Ottilka\tTamsel" in list_typed(visitor)
    list_shown(visitor, list_typed(visitor), do="back")
    assert list_typed(visitor) == "Bo"


def test_of_several_sheets_one_is_asked_for(visitor: Visitor) -> None:
    """A file with two classes offers each by its name, and the one that is pressed is read."""
    book = Workbook()
    for title, *rows in (("Wrens", ("Ottilka", "Tamsel"), ("Mirel", "Vost")), ("Finches", ("Kirrin", "Brane"))):
        sheet = book.create_sheet(str(title))
        for row in (("Given", "Family"), *rows):
            sheet.append(row)
    data = io.BytesIO()
    book.save(data)
    sent = {"based": "0", "text": ""}
    asked = visitor.post("/class/list/read?part=lines",
                         {**sent, "file": (io.BytesIO(data.getvalue()), "class.xlsx")}).text  # type: ignore[dict-item]
    assert "Which sheet is the class?" in asked
    assert 'name="sheet" value="Finches"' in asked
    visitor.post("/class/list/read?part=lines",
                 {**sent, "sheet": "Finches", "file": (io.BytesIO(data.getvalue()), "c.xlsx")})  # type: ignore[dict-item]
    assert "Kirrin\tBrane" in list_typed(visitor)
    assert "Ottilka" not in list_typed(visitor)


def test_a_list_sent_twice_is_kept_once(visitor: Visitor, class_file: Path) -> None:
    """A reload that sends the form again changes nothing and is not refused."""
    form = {"text": MESSY, "based": "0", "practise": "given"}
    token = token_in(visitor.get("/class/list").text)
    first, second = (visitor.post("/class/list", form, token=token) for _ in range(2))
    assert (first.status_code, second.status_code) == (302, 302)
    with Classbook.open(class_file) as book:
        assert book.roster_id() == 1
        assert len(book.children(left=True)) == 7
        assert book.draft() is None


def test_before_a_class_is_replaced_both_lists_are_shown(settled: Visitor, class_file: Path) -> None:
    """Where most would leave, nothing is saved until somebody has seen who; a few more or fewer are saved at once."""
    other = "Zorah Pell\nWenna Praske\nTobin Yarrel\nKatla Pruner\n"
    asked = settled.keep(other)
    assert asked.headers["Location"] == "/class/list/instead"
    assert len(labels(class_file)) == 7
    page = settled.get("/class/list/instead").text
    for words in ("6 children leave the class", "3 children join", "One child stays"):
        assert words in page
    assert list_typed(settled) == other
    kept = settled.post("/class/list", {"based": settled.based(), "sure": "1"})
    assert kept.headers["Location"].startswith("/class?")
    assert labels(class_file) == ["Zorah", "Wenna", "Tobin", "Katla"]
    assert settled.keep(other.replace("Zorah Pell\n", "")).headers["Location"].startswith("/class?")


def test_what_was_found_is_what_would_be_saved(visitor: Visitor) -> None:
    """The count and the button say one number, also while a line is asked about."""
    page = list_shown(visitor, "Katla Pruner\nKasimir Dolt\nBluebirds - AM")
    assert "3 children were found." in page
    assert "Save this class of 3" in page
    assert "One line is still to be answered." in page


def _pressed(visitor: Visitor, page: str, words: str) -> str:
    """Press a button of the list by its words; return the list then."""
    value = re.search(rf'value="([^"]+)"[^>]*>{re.escape(words)}<', page)
    assert value, words
    sent = {"based": visitor.based(), "practise": "given", "do": value[1]}
    return unescape(visitor.post("/class/list/read?part=lines", sent).text)


def test_saving_a_list_is_no_change_of_settings(visitor: Visitor, class_file: Path) -> None:
    """The history has what somebody changed: the part that is practised where it is another, and nothing as usual."""
    visitor.keep(MESSY)
    with Classbook.open(class_file) as book:
        assert book.history(None) == ()
    visitor.post("/class/list", {"text": MESSY, "based": visitor.based(), "practise": "both"})
    with Classbook.open(class_file) as book:
        assert [(one.key, one.after) for one in book.history(None)[0].changes] == [("practise", "both")]


def test_a_changed_nickname_is_the_same_child(settled: Visitor, class_file: Path) -> None:
    """A list pasted anew with another name to practise takes over what is kept, and says so before and after."""
    settled.post("/child/5/lines", {"line_height": "30", "after": "0"})
    text = MESSY.replace("Katla Pruner", 'Katla "Kat" Pruner')
    page = list_shown(settled, text)
    assert "This is Katla Pruner of the class." in page
    assert "Leaving the class" not in page
    told = settled.get(settled.keep(text).headers["Location"]).text
    assert "Katla Pruner → Katla “Kat” Pruner" in unescape(told)
    with Classbook.open(class_file) as book:
        assert book.child(5).child.practice == "Kat"
        assert book.settings_of(5) == {"line_height": "30"}
        assert len(book.children(left=True)) == len(book.children())


def test_a_changed_family_name_is_asked_about(settled: Visitor, class_file: Path) -> None:
    """One press says that it is the same child, or another; the answer is kept with the draft and can be taken back."""
    settled.post("/child/5/lines", {"line_height": "30", "after": "0"})
    text = MESSY.replace("Katla Pruner", "Katla Vost")
    page = list_shown(settled, text)
    assert "Until you say so, it counts as a new child." in page
    assert "Leaving the class once you save this list: Katla Pruner." in page  # another Katla is on the list
    same = _pressed(settled, page, "The same child: Katla Pruner")
    assert "Leaving the class" not in same
    assert "counts as a new child" not in same
    back = unescape(settled.post("/class/list/read?part=lines", {"based": settled.based(), "do": "back"}).text)
    assert "counts as a new child" in back
    _pressed(settled, back, "The same child: Katla Pruner")
    settled.keep(text)
    with Classbook.open(class_file) as book:
        assert book.child(5).child.family == "Vost"
        assert book.settings_of(5) == {"line_height": "30"}
        assert book.child(5).left is None


def test_another_child_of_nearly_the_same_name_is_said_to_be_one(settled: Visitor, class_file: Path) -> None:
    """What was recognised can be denied with one press; then the child is new, and the other has left."""
    text = MESSY.replace("Katla Pruner", "Katlä Pruner")
    page = _pressed(settled, list_shown(settled, text), "Another child")
    assert "Leaving the class once you save this list: Katla." in page
    settled.keep(text)
    with Classbook.open(class_file) as book:
        assert book.child(5).left
        assert next(one for one in book.children() if one.child.given == "Katlä").id > 7


def test_a_spelling_in_latin_letters_keeps_the_child(settled: Visitor, class_file: Path) -> None:
    """Whatever is typed for a name on the list page, it is still the child that the line was."""
    settled.keep(f"{MESSY}محمد Vost\n")
    with Classbook.open(class_file) as book:
        child = book.children()[-1].id
        kept = book.roster_text()
    page = list_shown(settled, kept)
    field, value = re.search(r'name="(as-\w+)"', page)[1], re.search(r'value="(\w+\.latin)"', page)[1]
    settled.post("/class/list/read?part=lines", {"based": settled.based(), "practise": "given", "do": value,
                                                 field: "Muhamad"})
    settled.keep(list_typed(settled))
    with Classbook.open(class_file) as book:
        assert book.child(child).child.practice == "Muhamad"
        assert book.child(child).left is None


def test_a_saved_name_without_a_page_is_named_on_the_list(visitor: Visitor) -> None:
    """It was answered once and asks no more, and still nobody may think that all is well."""
    visitor.keep("Katla Pruner\nАнна Петрова\n")
    page = unescape(visitor.get("/class/list").text)
    assert "No page can be made yet for Анна" in page
    assert "Nothing needs you." not in page


def test_a_saved_list_is_taken_back_with_one_press(settled: Visitor, class_file: Path) -> None:
    """Right after saving the page offers it; what had been saved is a draft again, and an old press does nothing."""
    settled.post("/child/5/lines", {"line_height": "30", "after": "0"})
    before = labels(class_file)
    page = settled.get(settled.keep(MESSY.replace("Katla Pruner\n", "Wenna Praske\n")).headers["Location"]).text
    assert "Take it back" in page
    based = settled.based()
    answer = settled.post("/class/list/back", {"based": based})
    assert "as it was before" in settled.get(answer.headers["Location"]).text
    assert labels(class_file) == before
    with Classbook.open(class_file) as book:
        assert book.settings_of(5) == {"line_height": "30"}
    assert "Wenna,Praske" in list_typed(settled)
    again = settled.post("/class/list/back", {"based": based})
    assert again.status_code == 302
    assert labels(class_file) == before


def test_a_list_that_a_command_took_in_is_taken_back_too(settled: Visitor, class_file: Path) -> None:
    """It waits nowhere, and that is not said."""
    before = labels(class_file)
    with Classbook.open(class_file) as book:
        book.update_roster("Wenna Praske\nSuri Vale\n", for_a_day=True)
    answer = settled.post("/class/list/back", {"based": settled.based()})
    page = settled.get(answer.headers["Location"]).text
    assert "The class is as it was before." in page
    assert "waits on the list screen" not in page
    assert labels(class_file) == before


def test_what_was_answered_is_told_and_comes_back_with_the_list(settled: Visitor) -> None:
    """Who stays under another family name is told once saved; a list that is taken back is not asked about anew."""
    text = MESSY.replace("Katla Pruner", "Katla Vost")
    _pressed(settled, list_shown(settled, text), "The same child: Katla Pruner")
    told = unescape(settled.get(settled.keep(text).headers["Location"]).text)
    assert "The same child under a changed name, with all that is kept: Katla Pruner → Katla Vost." in told
    settled.post("/class/list/back", {"based": settled.based()})
    page = unescape(settled.get("/class/list").text)
    assert "Katla,Vost" in page
    assert "counts as a new child" not in page
    assert "Leaving the class" not in page


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
    answer = visitor.post("/class/list", {"text": "Mirel\t" * 100_000, "based": "0", "practise": "given"})
    for page in (visitor.get(answer.headers["Location"]).text, list_shown(visitor, "Mirel\t" * 40_000)):
        assert "longer than 200000 characters" in page
    assert list_typed(visitor) == ""


def test_a_list_of_many_children_in_each_line_is_refused_as_their_lines_would_be(visitor: Visitor) -> None:
    """A page of tens of thousands of lines would keep everybody waiting, and could not be sent again."""
    text = "\n".join("/".join(["Bo"] * 30) for _ in range(20))
    answer = visitor.post("/class/list/read?part=lines", {"text": text, "based": "0", "practise": "given"})
    assert "The page takes up to 400" in answer.text
    assert len(answer.text) < 20_000


def test_while_two_long_lists_are_read_a_third_is_sent_again_later(visitor: Visitor,
                                                                   monkeypatch: pytest.MonkeyPatch) -> None:
    """A list of the usual length is read meanwhile, and what was typed of the long one is kept."""
    monkeypatch.setattr(list_reading, "_PATIENCE_S", 0.0)
    text = "\n".join(f"Mirel, {'a long remark ' * 20}" for _ in range(200))
    assert len(text) > list_reading.LONG
    with list_reading._places, list_reading._places:
        assert "Two other long lists" in list_shown(visitor, text)
        assert list_typed(visitor) == text
        assert "Two other long lists" not in list_shown(visitor, "Mirel\nTilo")
    assert "Two other long lists" not in list_shown(visitor, text)


@pytest.mark.parametrize("shape", SHAPES.values(), ids=SHAPES)
def test_four_times_the_lines_are_about_four_times_the_work(visitor: Visitor, shape: str) -> None:
    """Regression: every line counted the notes of all lines, so that four hundred took over a minute."""
    few, many = ("\n".join(shape.format(n=n) for n in range(count)) for count in (20, 80))
    calls(visitor, few)  # what is kept of the program from the first time on; of names nothing is
    forget_names()
    work = calls(visitor, few)
    forget_names()
    assert calls(visitor, many) < 5 * work


def test_which_column_holds_the_names_is_asked_and_answered_by_a_button(visitor: Visitor) -> None:
    """Of two columns that nothing tells apart, each is shown once; the answer becomes a line of titles."""
    text = "Zorb\tQuix\nVexil\tQuorra"
    page = list_shown(visitor, text)
    assert page.count("Which column has the names to practise?") == 1
    assert "Zorb, Vexil" in page
    assert "Quix, Quorra" in page
    assert 'value="given,family"' in page
    assert "Nothing tells which column" not in page
    answered = list_shown(visitor, text, columns="family,given")
    assert "2 children were found." in answered
    assert list_typed(visitor) == "Family name\tGiven name\nZorb\tQuix\nVexil\tQuorra"


def test_who_saves_before_the_answer_is_told_what_to_press(visitor: Visitor) -> None:
    """No option of a command line; that all are children is one of the buttons."""
    text = "Acorns\tOaks\nWilf Sturrock\tPippa Lorne\nOrla Fentwick\tJasper Mole\nMina Vost\tZayd Almasri"
    page = list_shown(visitor, text)
    assert page.count("All of these are children") == 1
    answer = visitor.get(visitor.post("/class/list", {"text": text}).location).get_data(as_text=True)
    assert "--columns" not in answer
    assert "press the right one below" in answer


def test_two_classes_side_by_side_are_all_made_by_one_button(visitor: Visitor) -> None:
    """Either answer kept the children of one class alone."""
    text = "Acorns\tOaks\nWilf Sturrock\tPippa Lorne\nOrla Fentwick\tJasper Mole\nMina Vost\tZayd Almasri"
    assert 'value="name,name"' in list_shown(visitor, text)
    assert "6 children were found." in list_shown(visitor, text, columns="name,name")
    assert list_shown(visitor, list_typed(visitor)).count("Which column") == 0


def test_which_of_two_people_is_the_child_is_answered_by_a_button(visitor: Visitor) -> None:
    text = "Mia,Smith,Anna,Smith\nLeo,Jones,Ben,Jones\nNoah,Brown,Sara,Brown"
    page = list_shown(visitor, text)
    assert page.count("Which column has the names to practise?") == 1
    assert "Mia, Leo, Noah" in page
    assert "Anna, Ben, Sara" in page
    assert 'value="given,family"' in page
    answered = list_shown(visitor, text, columns="other,other,given,family")
    assert "3 children were found." in answered
    assert list_shown(visitor, list_typed(visitor)).count("Which column") == 0


TWO = ("Jo Vost: Ana Lind\nMira Tarn: Petra Groß\nLeo Zell: Karl Wick\nAva Oskin: Hugo Pell\n"
       "Noah Birk: Nora Senn")


@pytest.mark.parametrize(("columns", "kept"), [
    ("name,other", ["Jo", "Mira", "Leo", "Ava", "Noah"]), ("other,name", ["Ana", "Petra", "Karl", "Hugo", "Nora"]),
    ("name,name", ["Jo", "Ana", "Mira", "Petra", "Leo", "Karl", "Ava", "Hugo", "Noah", "Nora"])])
def test_two_names_on_each_line_are_one_question_with_a_button_for_all(visitor: Visitor, columns: str,
                                                                       kept: list[str], class_file: Path) -> None:
    """The answer is saved, and the list asks no more when it is opened again."""
    page = list_shown(visitor, TWO)
    assert page.count("On 5 lines there are two names. Who is the child?") == 1
    assert "One answer settles 5 lines" in page
    assert "Or answer line by line" in page
    assert f'value="{columns}"' in page
    assert f"{', '.join(kept[:4])} …" in page
    answered = list_shown(visitor, TWO, columns=columns)
    assert f"{len(kept)} children were found." in answered
    assert "Who is the child?" not in answered
    visitor.keep(list_typed(visitor))
    with Classbook.open(class_file) as book:
        assert [one.child.practice for one in book.children()] == kept
    assert "Who is the child?" not in unescape(visitor.get("/class/list").text)


def test_the_rule_under_the_titles_of_a_table_is_not_told_as_no_child(visitor: Visitor) -> None:
    """Saved, a table said that “|---|---|” was not read as a child; a line with words is told as ever."""
    table = "| Student | Grade |\n|---|---|\n| Mateo Villaseñor | 1 |\n| Jay Han | 1 |"
    saved = visitor.arrive(visitor.keep(table))
    assert "The class is saved: 2 children." in saved
    assert "Not in the class" not in saved
    assert "Not in the class" in visitor.arrive(visitor.keep("Mateo Villaseñor\nJay Han\n123 456"))


def test_saving_two_names_a_line_unanswered_says_what_to_press(visitor: Visitor) -> None:
    answer = visitor.get(visitor.post("/class/list", {"text": TWO}).location).get_data(as_text=True)
    assert "--columns" not in answer
    assert "Please press below who is the child." in answer


def test_two_names_a_line_that_were_looked_at_are_asked_about_no_more(visitor: Visitor, class_file: Path) -> None:
    """Saved as no children beside those who are: the same list opened again has no question."""
    text = f"{TWO}\nTom Berg\nIda Wren"
    assert "On 5 lines there are two names. Who is the child?" in list_shown(visitor, text)
    visitor.post("/class/list", {"text": text, "based": visitor.based(), "practise": "given", "whole": "1"})
    assert labels(class_file) == ["Tom", "Ida"]
    page = unescape(visitor.get("/class/list").text)
    assert "Jo Vost: Ana Lind" in page
    assert "Who is the child?" not in page
    assert "One answer settles" not in page


ROWS = """ID,First name,Last name,Birthday,Guardian First Name
40100,Katla,Pruner,3/4/2021,Orla
40100,Katla,Pruner,3/4/2021,Ned
40200,Bo,"Lin
dle",5/6/2021,Ann
"""


def test_a_further_row_is_told_and_can_be_another_child(visitor: Visitor) -> None:
    """A row a guardian is no heading; one press makes a child of the name alone, and nothing else of the row."""
    page = list_shown(visitor, ROWS)
    assert "2 children were found." in page
    assert "one more row of Katla" in page
    assert "a heading, not a child" not in page
    page = _pressed(visitor, page, "Another child")
    assert "3 children were found." in page
    assert list_typed(visitor).splitlines()[2] == ",Katla,Pruner,,"
    assert "The same name stands on line 2" in page


def test_a_further_row_of_a_name_in_another_script_asks_nothing(visitor: Visitor) -> None:
    """The spelling is asked for once, on the child's own line."""
    page = list_shown(visitor, ROWS.replace("Katla,Pruner", "Мила,Боева"))
    assert page.count("Use this spelling") == 1


def test_a_cell_of_two_lines_is_one_child_and_goes_as_one(visitor: Visitor) -> None:
    """The count, the button and what is saved agree; taken out, no half of the row stays."""
    page = list_shown(visitor, ROWS)
    assert "Save this class of 2" in page
    value = re.findall(r'value="([^"]+)"[^>]*>Not a child<', page)[-1]
    page = unescape(visitor.post("/class/list/read?part=lines", {
        "based": visitor.based(), "practise": "given", "do": value}).text)
    assert list_typed(visitor).strip() == "\n".join(ROWS.splitlines()[:3])


def test_an_answer_leaves_the_numbers_of_a_list(visitor: Visitor) -> None:
    """What is pressed for one line changes no other, and the line keeps its own number."""
    text = "Room 9\n1. Mira Quill\n2. Quorrel & Vexil\n3. Bo Lindle (Kvothe)\n"
    page = _pressed(visitor, list_shown(visitor, text), "The child goes by Kvothe")
    assert list_typed(visitor).splitlines() == [*text.splitlines()[:3], "3. Bo Lindle (goes by Kvothe)"]
    _pressed(visitor, page, "Split in 2: Quorrel and Vexil")
    assert list_typed(visitor).splitlines() == ["Room 9", "1. Mira Quill", "2. Quorrel", "Vexil",
                                           "3. Bo Lindle (goes by Kvothe)"]


def test_words_of_a_list_stand_in_the_quotation_marks_of_the_screen(visitor: Visitor) -> None:
    """In Spanish: letters that cannot be written, lines that are no child, and what a child is called."""
    visitor.client.set_cookie("language", "es", domain=HOST.partition(":")[0])
    text = MESSY.replace("Katla Pruner", 'Katla "Kat" Pruner')
    page = unescape(visitor.arrive(visitor.keep(f"{text}Quorrel & Vexil\n")))
    assert "«Quorrel & Vexil»" in page
    page = unescape(visitor.arrive(visitor.keep(f"{text.replace('Kat', 'Kati')}محمد\n")))
    assert "Katla «Kat» Pruner → Katila «Kati» Pruner" in page
    assert "«م»" in list_shown(visitor, "محمد\nMira")
    assert not re.search("[“”]", page)


def test_who_may_be_one_child_is_told_once(settled: Visitor) -> None:
    """Saved with the question open: neither among the new ones nor among those who left a second time."""
    told = unescape(settled.arrive(settled.keep(MESSY.replace("Katla Pruner", "Katla Vost"))))
    said = told.partition('role="status"')[2].partition("</main>")[0] or told
    assert "Katla Vost counts as a new child" in said
    assert "New in the class" not in told
    assert "No longer on the list" not in told


def test_a_spelling_that_was_answered_is_not_asked_for_again(settled: Visitor, class_file: Path) -> None:
    """Next month's list has the register's letters again: the class goes on as the family spells the name."""
    text = f"{MESSY}12. Мила Боева\n"
    page = list_shown(settled, text)
    field, value = re.search(r'name="(as-\w+)"', page)[1], re.search(r'value="(\w+\.latin)"', page)[1]
    settled.post("/class/list/read?part=lines", {"based": settled.based(), "practise": "given", "do": value,
                                                 field: "Myla Boeva"})
    settled.keep(list_typed(settled))
    page = list_shown(settled, text + "Wenna Praske\n")
    assert "Nothing needs you." in page
    assert "“Мила” is written “Myla” here, as you said before." in page
    assert "No page can be made yet" not in page
    for whole in ({}, {"whole": "1"}):
        settled.post("/class/list", {"text": text, "based": settled.based(), "practise": "given", **whole})
        assert "Myla" in labels(class_file)
        assert "No page can be made yet" not in settled.get("/class/list").text


def test_a_whole_name_in_chinese_is_asked_for_once(settled: Visitor, class_file: Path) -> None:
    """No rule spells it: what a teacher typed goes on, as the same child, whichever script a later list is in."""
    text = f"{MESSY}王小明\n"
    page = _pressed(settled, list_shown(settled, text), "Yes, a child")
    field, value = re.search(r'name="(as-\w+)"', page)[1], re.search(r'value="(\w+\.latin)"', page)[1]
    settled.post("/class/list/read?part=lines", {"based": settled.based(), "practise": "given", "do": value,
                                                 field: "Xiaoming Wang"})
    settled.keep(list_typed(settled))
    with Classbook.open(class_file) as book:
        child = next(one for one in book.children() if one.child.practice == "Xiaoming")
        assert child.child.family == "Wang"
    for again in (text, f"{MESSY}Wang, Xiaoming\n", f"{text}Wenna Praske\n"):
        page = list_shown(settled, again)
        assert "Nothing needs you." in page
        assert "New in the class: Xiaoming" not in settled.arrive(settled.keep(again))
        with Classbook.open(class_file) as book:
            assert book.child(child.id).child.practice == "Xiaoming"
            assert book.child(child.id).left is None


def test_a_name_that_the_list_has_without_its_mark_can_be_meant_so(settled: Visitor, class_file: Path) -> None:
    """The accent stays, which is told; one press takes the list’s word for it, and that is asked no more."""
    text = "Ondway Inigo\nVost Mirel\nTamsel Ottilka\nBrane Kirrin\nPruner Katla\nDolt Kasimir\nLindle Bo\n"
    page = list_shown(settled, text)
    assert "“Inigo” is written “Íñigo” here, as you said before." in page
    assert "“Mirel” is written “Miri” here, as you said before." in page
    assert "Nothing needs you." in page
    page = _pressed(settled, page, "Practise Inigo")
    assert "“Inigo” is written" not in page
    settled.keep(list_typed(settled))
    assert {"Inigo", "Miri"} <= set(labels(class_file))
    assert "is written “Íñigo”" not in list_shown(settled, f"{text}Wenna Praske\n")


def test_a_slip_of_an_office_is_answered_once(settled: Visitor, class_file: Path) -> None:
    """The child may go on as the class has the name, or as this list has it; either way it is asked no more."""
    text = MESSY.replace("Katla", "Katlla")
    page = _pressed(settled, list_shown(settled, text), "The same child, still Katla Pruner")
    assert "Nothing needs you." in page
    settled.keep(text)
    assert "Katla" in labels(class_file)
    for again in (f"{text}Wenna Praske\n", f"{MESSY}Wenna Praske\n", text):
        assert "to be answered" not in list_shown(settled, again)
        settled.keep(again)
        assert "Katla" in labels(class_file)
    shown = list_shown(settled, text.replace("Kasimir", "Kasimirr"))
    page = _pressed(settled, shown, "The same child, now Kasimirr Dolt")
    assert "to be answered" not in page


@pytest.mark.parametrize("line", ["Praske", "wears glasses", "Wenna and Oona Praske"])
def test_what_is_no_child_is_asked_about_once(settled: Visitor, class_file: Path, line: str) -> None:
    """The office’s list has the line next month, too: it is told and can be turned, and asks no more."""
    text = f"{MESSY}{line}\n"
    page = list_shown(settled, text)
    assert "One line needs you" in page
    assert "Nothing needs you." in _pressed(settled, page, "Not a child")
    settled.keep(text)
    here = labels(class_file)
    page = list_shown(settled, f"{text}Suri Vale\n")
    assert "Nothing needs you." in page
    assert line in page
    settled.keep(f"{text}Suri Vale\n")
    assert labels(class_file) == [*here, "Suri"]
    text = f"{text}Suri Vale\n"
    assert "Nothing needs you." in list_shown(settled, f"{text}Ava Finch\n")
    settled.keep(f"{text}Ava Finch\n")
    with Classbook.open(class_file) as book:
        book.erase([book.children()[-1].id])
    assert "One line needs you" in list_shown(settled, f"{text}Oona Hale\n")


def test_what_nobody_answered_is_asked_again(settled: Visitor) -> None:
    """A list that was saved with a question is no answer to it."""
    settled.keep(f"{MESSY}Praske\n")
    assert "One line needs you" in list_shown(settled, f"{MESSY}Praske\nSuri Vale\n")


def test_two_children_of_one_name_are_asked_about_once(settled: Visitor) -> None:
    """A second of a name is; next month both are known, so nobody is asked again."""
    settled.keep(f"{MESSY}Oona Hale\n")
    text = f"{MESSY}Oona Hale\nOona Hale\n"
    assert "One line needs you" in list_shown(settled, text)
    settled.keep(text)
    assert "Nothing needs you." in list_shown(settled, f"Room 9\n{text}Wenna Praske\n")


def test_a_family_name_before_two_given_names_is_of_both(visitor: Visitor) -> None:
    """Split, the line gives two children of one family, not three."""
    text = "Vance, Mateo\nReed, Tilo\nLindle, Bo & Ana\nPraske, Wenna\n"
    page = _pressed(visitor, list_shown(visitor, text), "Split in 2: Bo Lindle and Ana Lindle")
    assert "5 children were found." in page


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


def test_a_name_typed_for_a_sentence_is_the_child(visitor: Visitor) -> None:
    """A line that says more than a name asks for the name; what it says is nobody’s."""
    typed = "Mirel Vost\nKatla Dolt\nKirrin Brane\nWenna Praske\nPlease send the reading folder home"
    page = list_shown(visitor, typed)
    field, value = re.search(r'name="(as-\w+)"', page)[1], re.search(r'value="(\w+\.typed)"', page)[1]
    assert "The child’s name" in unescape(page)
    visitor.post("/class/list/read?part=lines", {"based": visitor.based(), "practise": "given", "do": value,
                                                 field: " Ottilka  Tamsel "})
    assert list_typed(visitor).splitlines()[-1] == "Ottilka Tamsel"
    assert "5 children were found." in visitor.get("/class/list").text
