"""Each row of a list becomes one thing, which the others may settle."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.row_drafts import draft_rows, note_repeats, one_of_each, settled
from namewright.roster.unfolding import unfold
from namewright.settings import NamePart

LISTS = [
    (["Room 6", "", "Mira Vost", "123"], [Outcome.HEADING, Outcome.BLANK, Outcome.CHILD, Outcome.LEFT_OUT]),
    (["Class of Ms. Ferrow,", "Given,Family", "Mira,Vost"], [Outcome.HEADING, Outcome.HEADER, Outcome.CHILD]),
    (["Kind", "Mira", "Leo"], [Outcome.HEADER, Outcome.CHILD, Outcome.CHILD]),
    (["Kind", "Kern", "Wolf", "Berg"], [Outcome.LEFT_OUT, Outcome.CHILD, Outcome.CHILD, Outcome.CHILD]),
]


@pytest.mark.parametrize(("lines", "outcomes"), LISTS)
def test_every_row_becomes_something(lines: list[str], outcomes: list[Outcome]) -> None:
    assert [draft.outcome for draft in draft_rows(unfold(lines))] == outcomes


def test_a_row_for_each_grown_up_makes_a_child_once() -> None:
    lines = ["Mira\tVost\tmother\tAda Vost", "Mira\tVost\tfather\tIvo Vost", "Leo\tTarn\tmother\tUna Tarn"]
    found = unfold(lines)
    drafts = one_of_each([settled(draft, NamePart.GIVEN, "") for draft in draft_rows(found)], found, lines)
    assert [draft.outcome for draft in drafts] == [Outcome.CHILD, Outcome.FURTHER, Outcome.CHILD]
    assert drafts[1].of == 0


def test_a_name_that_stands_there_twice_is_told_and_kept() -> None:
    found = unfold(["Ava Moss", "Ben Oak", "Ava Moss"])
    drafts = note_repeats([settled(draft, NamePart.GIVEN, "") for draft in draft_rows(found)], found.lines)
    assert [draft.outcome for draft in drafts] == [Outcome.CHILD] * 3
    assert [[note.key for note in draft.notes] for draft in drafts] == [[], [], ["roster.repeat"]]


def test_a_family_called_as_a_title_in_a_row_of_figures_is_no_second_header() -> None:
    """Below Kind, Vanessa and her mother the columns were read by that row: families were practised."""
    text = ("Student ID,Student Last Name,Student First Name,Contact First Name,Contact Last Name,Relationship,Phone\n"
            "40103,Nigg,Frieda,Lars,Nigg,Mother,555-0124\n40104,Kind,Vanessa,Fabio,Kind,Mother,555-0142\n"
            "40105,Foser,Eileen,Noam,Foser,Father,555-0127\n")
    assert [child.practice for child in read_roster(text).children] == ["Frieda", "Vanessa", "Eileen"]


def test_titles_that_come_again_with_their_figures_are_titles() -> None:
    text = "Family name,First name,1,2\nVost,Mira,x,\nTarn,Leo,,x\nFamily name,First name,1,2\nQuill,Bo,x,x\n"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Bo"]


@pytest.mark.parametrize("line", ["Tischdienst hat Xobrel. Vemka braucht Hilfe beim Anziehen.", "Viel Spaß!",
                                  "¡Suerte!",
                                  "El encargado es Xobrel. Vemka necesita ayuda.",
                                  "Could I have the cards by Monday please?"])
def test_a_sentence_among_few_lines_is_asked_about(line: str) -> None:
    found = unfold([line, "Jelbru Odel", "Pesku Nift"])
    assert [draft.outcome for draft in draft_rows(found)] == [Outcome.LEFT_OUT, Outcome.CHILD, Outcome.CHILD]


@pytest.mark.parametrize("line", ["Mira!", "Xobrel, needs help with shoes", "Xobrel Vemka, Mi Do Fr ab 3.11.",
                                  "Xobrel Vemka geb. 3.4.2021", "¡NUEVA! Xobrel Vemka"])
def test_a_name_with_something_beside_it_is_no_sentence(line: str) -> None:
    assert draft_rows(unfold([line, "Jelbru Odel", "Pesku Nift"]))[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("word", ["free", "libre", "libero", "livre", "break", "festivo", "férié", "feriado"])
@pytest.mark.parametrize("sign", ["\t", ";", " | "])
def test_a_slot_in_small_letters_is_nobody(word: str, sign: str) -> None:
    slots = [f"8:{at}0{sign}{name}" for at, name in enumerate(["Mira Vost", word, "Leo Tarn", "Xobrel Quix", word])]
    roster = read_roster("\n".join(slots))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Xobrel"]
    assert [roster.lines[at].outcome for at in (1, 4)] == [Outcome.HEADING] * 2


def test_an_unknown_word_in_small_letters_is_asked_about_and_a_given_name_made() -> None:
    rows = "8:00\tMira Vost\n8:10\t{}\n8:20\tLeo Tarn\n8:30\tXobrel Quix"
    roster = read_roster(rows.format("ledig"))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Xobrel"]
    assert roster.lines[1].outcome is Outcome.LEFT_OUT
    assert [child.practice for child in read_roster(rows.format("anna")).children] == ["Mira", "Anna", "Leo", "Xobrel"]
    small = read_roster("8:00\tmira\n8:10\txobrel\n8:20\tleo\n8:30\ttarnul")
    assert [child.practice for child in small.children] == ["Mira", "Xobrel", "Leo", "Tarnul"]


@pytest.mark.parametrize(("titles", "rows"), [
    ("Sexo|Comedor|Mano|Nombres|Apellidos", ["Niña|no|diestro|Mira|Vost", "Niño|sí|zurdo|Xobrel|Tarn"]),
    ("Sexe|No|Main|Prénom|Nom", ["Fille|no|droitier|Mira|Vost", "Enfant|no|gaucher|Xobrel|Tarn"])])
def test_a_row_with_words_of_titles_beside_its_name_is_a_child(titles: str, rows: list[str]) -> None:
    assert [one.given for one in read_roster("\n".join((titles, *rows))).children] == ["Mira", "Xobrel"]


@pytest.mark.parametrize(("one", "two"), [("Leo Hort", "Leo Milk"), ("Leo Speech", "Leo"), ("Ana Leche", "Ana")])
def test_a_word_that_tells_two_apart_is_kept(one: str, two: str) -> None:
    """Of two Leos the second word is what the teacher tells them by; of one it is a remark, as before."""
    children = read_roster(f"{one}\n{two}\nMia").children
    assert [f"{child.given} {child.family}".strip() for child in children] == [one, two, "Mia"]
    assert children[0].label != children[1].label
    assert [child.family for child in read_roster(f"{one}\nMia").children] == ["", ""]


def test_a_name_typed_in_haste_under_titles_is_a_child() -> None:
    """Its family’s name stands beside it, or capitals stand within it: no word for a free slot is written so."""
    read = read_roster("First name,Family name\nMia,Vost\nxobrel,tarn\nAva,Berg\nOtis,Quill").children
    assert [(child.given, child.family) for child in read][1] == ("Xobrel", "Tarn")
    read = read_roster("First name,Family name\nMia,\nfRanquel,\nAva,\nOtis,").children
    assert [child.practice for child in read] == ["Mia", "fRanquel", "Ava", "Otis"]


def test_initials_behind_a_job_make_no_child_of_it() -> None:
    roster = read_roster("Board: M.K.\nMia Kell\nLeo Berg")
    assert [child.practice for child in roster.children] == ["Mia", "Leo"]
    assert roster.lines[0].outcome is Outcome.LEFT_OUT


def test_two_words_far_apart_are_asked_about_as_those_of_another_line() -> None:
    """Labels stood two in a row; of one row the second child was taken for a family's name without a word."""
    roster = read_roster("Mailbox labels\nDrago     Pavel\nPetra     Gregor\nJelka")
    outcomes = {line.text: line.outcome for line in roster.lines}
    assert outcomes["Drago     Pavel"] is outcomes["Petra     Gregor"] is Outcome.LEFT_OUT
    assert read_roster("Mia     Vost\nLeo     Tarn\nAva     Berg").children[0].family == "Vost"


@pytest.mark.parametrize("title", ["Middaggroep", "Xobrelgroep", "Tarde", "Owls"])
def test_a_cell_alone_over_titles_that_come_again_is_a_title(title: str) -> None:
    rows = "Voornaam\tAchternaam\tNummer\nMia\tVost\t71578\nLeo\tTarn\t71585"
    roster = read_roster(f"Klassenlijst\n{rows}\n\n{title}\n{rows.replace('Mia', 'Ava').replace('Leo', 'Ida')}")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Ida"]


@pytest.mark.parametrize("names", ["ტატიანა,რუსუდან,ჟუჟუნა,გიგა,ვიქტორ", "Xobrel,Vemka,Tulmo,Quanda,Zirre"])
def test_rows_of_two_words_over_one_are_asked_about(names: str) -> None:
    """Labels to cut out stand so; of two on no list the second may be a family's name, or a child."""
    one, two, three, four, five = names.split(",")
    roster = read_roster(f"Mailbox labels\n\n{one}     {two}\n{three}     {four}\n{five}")
    assert not any(child.family for child in roster.children if child.line > 1)
    made = " ".join(line.text for line in roster.lines if line.child or line.outcome is Outcome.LEFT_OUT)
    assert all(name in made for name in names.split(","))
