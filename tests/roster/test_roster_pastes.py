"""Pastes as schools print and people type them: the right child, the right name, and what was left out."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.children import Outcome, RosterError
from namewright.roster.headers import asked_hand, header_roles
from namewright.roster.labels import labels
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role
from namewright.settings import Hand
from namewright.wording import wording


def read(text: str) -> list[str]:
    """Read a roster and return each child as ``practice|given|family``."""
    return [f"{child.practice}|{child.given}|{child.family}" for child in read_roster(text).children]


HEADERS = [
    ("Child's First Name\tChild’s Last Name\tDOB", "Oren\tTavvy\t1/2/2021", "words about the child"),
    ("Legal First Name\tLegal Last Name", "Oren\tTavvy", "legal"),
    ("FNAME\tLNAME", "OREN\tTAVVY", "short forms"),
    ("StudentID,StudentLastName,StudentFirstName", "1044,Tavvy,Oren", "no spaces between words"),
    ("Student Full Name\tReading corner", "Oren Tavvy\tblue", "one column that can only be a header"),
    ("First/Last\tGrade", "Oren Tavvy\tK", "both parts in one column"),
    ('"Last Name, First Name",Grade', '"Tavvy, Oren",K', "both parts in a quoted header"),
    ("Last Name, First Name\tGrade", "Tavvy Oren\tK", "whole names that open with the family name"),
    ("Apellidos y nombre\tGrupo", "Tavvy Oren\tA", "so in Spanish"),
    ("Child First\tChild Last\tParent First Name\tParent Last Name", "Oren\tTavvy\tMaud\tGrell", "a parent's name"),
    ("Name\tMother's name\tFather's name", "Oren Tavvy\tMaud Tavvy\tPell Tavvy", "both parents'"),
    ("Teacher Last Name\tStudent First Name\tStudent Last Name", "Ferrow\tOren\tTavvy", "the teacher's"),
    ("Nombre del alumno\tFecha de nacimiento\tNombre de la madre", "Oren Tavvy\t01/02/2021\tMaud Pell", "in Spanish"),
    ("Nombre\tEdad", "Oren Tavvy\t4", "“Nombre” over whole names"),
    ("Nom\tPrénom", "Tavvy\tOren", "in French"),
    ("Nachname\tVorname\tGeburtsdatum", "Tavvy\tOren\t1.2.2021", "in German"),
    ("Cognome\tNome", "Tavvy\tOren", "in Italian"),
    ("Nome\tSobrenome", "Oren\tTavvy", "in Portuguese"),
    ("First Name,Last Name,Child First Name,Child Last Name", "Maud,Grell,Oren,Tavvy", "the child's beside a parent's"),
    ("Name,Child's name,Phone", "Maud Grell,Oren Tavvy,555-0100", "a parent's name before the child's"),
    ("Nom,Prénoms", "Tavvy,Oren", "several given names in French"), ("Name;Vorname", "Tavvy;Oren", "“Name” in German"),
    ("Familienname;Vornamen", "Tavvy;Oren", "several in German"), ("Nome,Apelido", "Oren,Tavvy", "in Portugal"),
    ("Kind\tGruppe", "Oren Tavvy\trot", "a German child"), ("Schüler/in\tKlasse", "Oren Tavvy\t1b", "a pupil"),
    ("Élève;Classe", "Oren Tavvy;CP", "a French pupil"), ("Alunno,Sezione", "Oren Tavvy,B", "an Italian one"),
    ("Nome do aluno;Turma", "Oren Tavvy;1.º A", "a Portuguese one"), ("Camper,Bunk", "Oren Tavvy,4", "a camper"),
    ("What is your child's first name?,What is your child's last name?", "Oren,Tavvy", "questions of a form"),
    ("Marca temporal;¿Cómo se llama su hijo o hija?", "3/9/2026;Oren Tavvy", "one in Spanish"),
    ("Wie heißt Ihr Kind?\tWer kommt?", "Oren Tavvy\tMaud", "one in German"),
    ("Quel est le prénom de votre enfant ?\tNom de famille", "Oren\tTavvy", "one in French"),
    ("Student name\tFirst name", "Tavvy, Oren\tOren", "a whole name beside one of its parts"),
]


@pytest.mark.parametrize(("header", "row", "why"), HEADERS, ids=[row[2] for row in HEADERS])
def test_headers_as_schools_print_them(header: str, row: str, why: str) -> None:
    """A header may say more than it must, or be about somebody else."""
    assert read(f"{header}\n{row}") == ["Oren|Oren|Tavvy"], why


def test_an_unknown_header_is_no_child() -> None:
    """A first row that is unlike all others heads them, whatever its words, and no neighbour's word is practised."""
    roster = read_roster("Cub,Den,Snack\nMia Chen,Owl,4\nLeo Park,Fox,5\nNoah Brown,Owl,6")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Noah"]
    assert roster.lines[0].outcome is Outcome.HEADER


@pytest.mark.parametrize("title", ["Preferred First Name", "Name child goes by", "Likes to be called", "Nickname"])
def test_headers_of_the_name_a_child_goes_by(title: str) -> None:
    """However the column is called, its name is the one to practise."""
    assert read(f"First Name\tLast Name\t{title}\nOrenthal\tTavvy\tOren") == ["Oren|Orenthal|Tavvy"]


def test_a_particle_column_opens_the_family_name() -> None:
    """Dutch lists keep ``van der`` in a column of its own, before or behind the family name."""
    assert read("Voornaam\tTussenvoegsel\tAchternaam\nKim\tvan der\tWold") == ["Kim|Kim|van der Wold"]
    assert read("Voornaam\tAchternaam\tTussenvoegsel\nKim\tWold\tvan der") == ["Kim|Kim|van der Wold"]


def test_a_whole_name_beside_its_parts_is_not_dropped_in_silence() -> None:
    """Where a whole name says more than its parts, the rest is named as left out."""
    report = read_roster("Student\tFirst\tLast\nTavvy, Oren James\tOren\tTavvy").lines[1]
    assert message("roster.whole_name", words="Tavvy, Oren James") in report.notes


@pytest.mark.parametrize(("title", "cell", "hand"), [
    ("Left-handed?", "yes", Hand.LEFT), ("Left-handed?", "x", Hand.LEFT), ("Left-handed?", "no", Hand.RIGHT),
    ("¿Zurdo?", "sí", Hand.LEFT), ("Right handed", "n", Hand.LEFT), ("L/R", "L", Hand.LEFT), ("Lefty?", "", None)])
def test_a_hand_asked_about_with_yes_or_no(title: str, cell: str, hand: Hand | None) -> None:
    """A column may ask for one hand; an empty cell says nothing."""
    assert read_roster(f"Name\t{title}\nOren Tavvy\t{cell}").children[0].hand is hand


def test_only_a_header_that_names_a_hand_asks_for_one() -> None:
    """Yes under a plain “Hand” is no hand."""
    assert asked_hand("Hand") is None
    note = message("roster.no_hand", cell="yes", known=tuple(Hand))
    assert read_roster("Name\tHand\nOren Tavvy\tyes").lines[1].notes == (note,)


def test_a_row_of_names_is_no_header() -> None:
    """Nina is a name, and a hand beside it is no header word."""
    assert header_roles(["Nina", "left"]) is None
    assert header_roles(["Name", "left-handed"]) == (Role.FULL, Role.HAND)


TABLES = [
    ("Oren Tavvy\tK\nLumi Brask\tK\nNia Kell\tPK", "a grade"),
    ("Oren Tavvy\tM\nLumi Brask\tF\nNia Kell\tF", "boy or girl"),
    ("M\tOren\tTavvy\nF\tLumi\tBrask\nF\tNia\tKell", "the same in front"),
    ("Oren Tavvy\tMs. Ferrow\nLumi Brask\tMs. Ferrow\nNia Kell\tMs. Ferrow", "the teacher"),
    ("Tavvy, Oren\tMaud Tavvy\nBrask, Lumi\tInge Brask\nKell, Nia\tUlf Kell", "a parent beside “Family, Given”"),
    ("Oren Tavvy\tMaud Tavvy\t555-0142\nLumi Brask\tInge Brask\t555-0143\nNia Kell\tUlf Kell\t555-0144",
     "a parent of the same family name and a telephone"),
    ('"Tavvy, Oren",K\n"Brask, Lumi",K\n"Kell, Nia",PK', "quoted cells, two columns"),
    ("Oren Tavvy\nLumi Brask\tnew\nNia Kell", "a word behind one tab"),
    ("1. Oren Tavvy\n2. Lumi Brask\tmoved in May\n3. Nia Kell", "several words behind one tab"),
    ("Oren Tavvy   new\nLumi Brask\nNia Kell   IEP", "words behind wide spaces"),
    ("a.\tOren Tavvy\nb.\tLumi Brask\nc.\tNia Kell", "an outline with tabs"),
    ("Oren\tTavvy\nLumi Brask\nNia\tKell\tK", "rows of different lengths"),
]


@pytest.mark.parametrize(("text", "why"), TABLES, ids=[row[1] for row in TABLES])
def test_columns_without_a_header(text: str, why: str) -> None:
    """What stands in a column beside the names is no part of them."""
    assert read(text) == ["Oren|Oren|Tavvy", "Lumi|Lumi|Brask", "Nia|Nia|Kell"], why


def test_spreadsheet_errors_are_no_names() -> None:
    """A formula or an error in a cell is left out and named."""
    reports = read_roster("First Name\tLast Name\n#REF!\tTavvy\nLumi\t=A2\nNia\tKell").lines
    assert [report.child.practice for report in reports if report.child] == ["Tavvy", "Lumi", "Nia"]
    assert reports[1].notes[0] == message("roster.sheet_sign", cell="#REF!")
    assert reports[2].notes[0] == message("roster.sheet_sign", cell="=A2")


CALLED = [
    "Orenthal Tavvy (goes by Oren)", "Orenthal Tavvy - goes by Oren", 'Tavvy, Orenthal (goes by "Oren")',
    "Orenthal Tavvy (nickname: Oren)", "Orenthal Tavvy aka Oren", "Orenthal Tavvy (le dicen Oren)",
    "Orenthal Tavvy, goes by Oren", "Orenthal ''Oren'' Tavvy", "Orenthal ``Oren'' Tavvy", "Orenthal (Oren) Tavvy (IEP)",
]


@pytest.mark.parametrize("line", CALLED)
def test_ways_to_say_what_a_child_goes_by(line: str) -> None:
    """In brackets, quotation marks or words: that name is practised."""
    assert read(line) == ["Oren|Orenthal|Tavvy"]


@pytest.mark.parametrize("line", ['"Oren" Tavvy', "(Oren) Tavvy", "“Oren Tavvy”", '"Oren Tavvy" <maud@quill.example>',
                                  "(Oren Tavvy)"])
def test_a_name_in_quotation_marks_that_is_the_only_one(line: str) -> None:
    """With no other given name, a name in quotation marks or brackets is the given name; whole, it is read inside."""
    assert read(line) == ["Oren|Oren|Tavvy"]


REMARKS = [
    "Oren Tavvy (allergies)", "Oren Tavvy (Monday)", "Oren Tavvy (Spanish)", "Oren Tavvy (glasses)", "Oren Tavvy (L)",
    "Oren Tavvy (Ms. Ferrow)", "Oren Tavvy (TK)", "Oren Tavvy (niño)", "Oren Tavvy - new", "Oren Tavvy- new",
    "Oren Tavvy -- moved", "Oren Tavvy, K", "Oren Tavvy, new student", "Oren Tavvy # new", "Oren Tavvy // moved",
    "Oren Tavvy: twin", "Oren Tavvy new",
]


@pytest.mark.parametrize("line", REMARKS)
def test_remarks_are_no_names(line: str) -> None:
    """Words about the child are left out and said, wherever they stand."""
    assert read(line) == ["Oren|Oren|Tavvy"]
    assert "roster.remark" in [note.key for note in read_roster(line).lines[0].notes]


@pytest.mark.parametrize("remark", ["Peanuts", "EpiPen", "Autism", "Mom: Jo", "Zyrtec", "Milch", "asma", "Quillwort",
                                    "frutos secos", "Dad", "Down syndrome", "Blue Whales"])
@pytest.mark.parametrize("line", ["Katie Moss ({})", "Katie Moss [{}]", "Katie ({}) Moss", "Moss, Katie ({})",
                                  "Katie ({})"])
def test_a_remark_in_brackets_is_never_practised(line: str, remark: str) -> None:
    """A bracket holds the name a child goes by where it says so or is known as a given name; the rest is told."""
    assert read(line.format(remark))[0].split("|")[0] == "Katie"
    assert "roster.remark" in [note.key for note in read_roster(line.format(remark)).lines[0].notes]


@pytest.mark.parametrize("line", ["Will Tarn, Asthma", "Will Tarn – Peanuts", "Will Tarn, Quillwort", "Will - Peanuts",
                                  "Will, peanuts", "Will Tarn peanuts", "Will: EpiPen", "Will Tarn / Peanuts"])
def test_a_remark_behind_a_name_is_never_practised(line: str) -> None:
    assert [one.split("|")[0] for one in read(line)] == ["Will"]
    assert "roster.remark" in [note.key for note in read_roster(line).lines[0].notes]


@pytest.mark.parametrize("name", ["Peanut", "Milch", "Quillwort", "Asthma"])
def test_a_rare_name_in_a_name_s_place_is_never_refused(name: str) -> None:
    """Words for remarks are looked for beside a name only."""
    assert read(f"{name} Moss") == [f"{name}|{name}|Moss"]
    assert read(f"First,Last\n{name},Moss") == [f"{name}|{name}|Moss"]


@pytest.mark.parametrize("line", ["Oren Tavvy left-handed", "Oren Tavvy, left", "Oren Tavvy: left-handed",
                                  "Oren - left-handed", "Oren Tavvy (zurdo)"])
def test_a_hand_in_words(line: str) -> None:
    """A hand beside the name is the child's hand and no part of the name."""
    child = read_roster(line).children[0]
    assert (child.practice, child.hand) == ("Oren", Hand.LEFT)


HYPHENS = ["Mary - Kate Tavvy", "Mary – Kate Tavvy", "Mary -Kate Tavvy", "Mary- Kate Tavvy", "Mary–Kate Tavvy",
           "Mary−Kate Tavvy"]


@pytest.mark.parametrize("line", HYPHENS)
def test_hyphens_as_programs_make_them(line: str) -> None:
    """A dash or stray spaces about it are a hyphen where a name goes on."""
    assert read(line) == ["Mary-Kate|Mary-Kate|Tavvy"]


@pytest.mark.parametrize(("line", "family"), [
    ("O`Neil, Oren", "O’Neil"), ("O´Neil, Oren", "O’Neil"), ("O' Neil, Oren", "O'Neil")])
def test_apostrophes_as_people_type_them(line: str, family: str) -> None:
    """A grave or acute accent between letters is an apostrophe, which we can write."""
    assert read(line) == [f"Oren|Oren|{family}"]


DATED = [
    ("Jan 2, 2021", "date"), ("2 January 2021", "date"), ("2nd January", "date"), ("2021-02-01", "date"),
    ("01-02-21", "date"), ("1.2.2021", "date"), ("1 / 2 / 2021", "date"), ("2-Jan-21", "date"),
    (", 2 de enero de 2021", "date"), ("born 1/2/2021", "date"), ("DOB: 1/2/2021", "date"),
    ("b. 1/2/2021", "date"),
    ("age 4", "number"), ("4 yrs 3 mos", "number"), ("4;3", "number"), ("Room 4", "number"),
    ("ID 104432", "number"), ("ph 555-010-0199", "phone"),
    ("cell: 555-010-0199", "phone"),
]


@pytest.mark.parametrize(("words", "kind"), DATED)
def test_dates_ages_and_numbers(words: str, kind: str) -> None:
    """What has to do with a number goes with the words that belong to it, and the note says what kind it was."""
    for name in ("Oren Tavvy", "Tavvy, Oren"):
        assert read(f"{name} {words}") == ["Oren|Oren|Tavvy"]
        assert message(f"roster.{kind}") in read_roster(f"{name} {words}").lines[0].notes


@pytest.mark.parametrize(("line", "called"), [
    ("Tavvy, April 12", "April"), ("3. April", "April"), ("April Tavvy", "April"), ("May", "May")])
def test_a_child_may_be_called_as_a_month(line: str, called: str) -> None:
    """A month is kept where it is the only given name."""
    assert read_roster(line).children[0].practice == called


NUMBERED = ["1-Oren Tavvy", "Nº 1 Oren Tavvy", "No. 2 Oren Tavvy", "b. Oren Tavvy", "ii. Oren Tavvy", "o Oren Tavvy",
            "➢ Oren Tavvy", "\uf0b7 Oren Tavvy", "１．Ｏｒｅｎ　Ｔａｖｖｙ", "Ｔａｖｖｙ，Ｏｒｅｎ",
            "Name: Oren Tavvy", "Student: Tavvy, Oren"]


@pytest.mark.parametrize("line", NUMBERED)
def test_numbers_bullets_and_labels_in_front(line: str) -> None:
    """What an editor or a form puts before a name is taken off."""
    assert read(line) == ["Oren|Oren|Tavvy"]


def test_a_word_that_runs_into_a_number() -> None:
    """A number at the end of a word leaves the word; one inside takes the word, which is then named."""
    assert read("Oren2 Tavvy") == ["Oren|Oren|Tavvy"]
    assert read_roster("Oren Tavvy room4b").lines[0].notes[0] == message("roster.word_with_number", word="room4b")


@pytest.mark.parametrize(("line", "expected"), [
    ("J.P. Tavvy", "J.P.|J.P.|Tavvy"), ("Tavvy, Oren, III", "Oren|Oren|Tavvy III"),
    ("Tavvy, Oren Jr.", "Oren|Oren|Tavvy Jr."),
    ("Oren Tavvy iii", "Oren|Oren|Tavvy III"), ("Oren III", "Oren|Oren|")])
def test_initials_and_suffixes(line: str, expected: str) -> None:
    """Initials are a given name and no shouted family name; a suffix is never a name to practise."""
    assert read(line) == [expected]


SURE = [  # a line, the children on it, why
    ("Mia, Leo", "Mia Leo", "two given names and no family name"), ("Mia; Leo", "Mia Leo", "a semicolon"),
    ("Sam / Jo", "Sam Jo", "a slash"), ("Bo - Al", "Bo Al", "a dash"), ("Mia & Leo", "Mia Leo", "a sign"),
    ("Mia and Leo", "Mia Leo", "a word"), ("Mia y Leo", "Mia Leo", "in Spanish"),
    ("Mia und Leo", "Mia Leo", "in German"),
    ("Mia, Leo, Noah and Ava", "Mia Leo Noah Ava", "a row of them"),
    ("Mia, Leo, and Ava", "Mia Leo Ava", "a last comma"),
    ("Mia Chen, Leo Park", "Mia Leo", "whole names"), ("Mia & Leo Park", "Mia Leo", "brother and sister"),
    ("Mia Leo Noah Ava Emma", "Mia Leo Noah Ava Emma", "with spaces alone"),
    ("Mia\tLeo\tNoah", "Mia Leo Noah", "tabs"),
    ("Mia Chen <m@quill.example>, Leo Park <l@quill.example>", "Mia Leo", "an address line"),
    ("To: \"Chen, Mia\" <m@quill.example>; Leo Park <l@quill.example>", "Mia Leo", "one with a label"),
    ("Red table: Mia, Leo and Ava", "Mia Leo Ava", "behind a label"),
    ("Mia (twin), Leo [IEP]", "Mia Leo", "remarks beside"),
]


@pytest.mark.parametrize(("line", "names", "why"), SURE, ids=[row[2] for row in SURE])
def test_several_known_given_names_on_a_line_are_several_children(line: str, names: str, why: str) -> None:
    """They are parted, told so, and read the same again from the text that is kept."""
    roster = read_roster(line)
    assert [child.practice for child in roster.children] == names.split(), why
    assert all(report.notes and report.source_line == 1 for report in roster.lines if report.child)
    assert [child.practice for child in read_roster(roster.text).children] == names.split()
    assert [child.line for child in read_roster(roster.text).children] == [child.line for child in roster.children]


@pytest.mark.parametrize("line", ["Mia, Thomas", "Mia Chen, Leo", "Oren and Lumi", "Oren / Lumi Brask", "Anna - Lena"])
def test_what_may_be_two_children_is_asked_about(line: str) -> None:
    """It is left out, and never made into one child."""
    reports = read_roster(f"{line}\nPia").lines
    assert [report.outcome for report in reports] == [Outcome.LEFT_OUT, Outcome.CHILD]
    assert reports[0].notes == (message("roster.two_children"),)


@pytest.mark.parametrize("line", ["Mary - Kate", "Moss, Katie", "García López, Sofía", "Ruiz y Gómez, Ana",
                                  "Quorra Vexil, Jr.", "Anna Maria", "Emma Grace Miller", "Ana Ortega y Gasset"])
def test_one_child_is_not_taken_for_two(line: str) -> None:
    assert len(read_roster(f"{line}\nPia").children) == 2


def test_two_given_names_in_a_list_of_family_names_before_commas_are_asked_about() -> None:
    roster = read_roster("Moss, Katie\nBrown, Will\nMia, Leo")
    assert [(child.given, child.family) for child in roster.children] == [("Katie", "Moss"), ("Will", "Brown")]
    assert roster.lines[2].notes == (message("roster.two_children"),)


def test_a_list_of_family_names_before_commas_stays_one() -> None:
    """In such a list a family name that is better known as a given name is no child."""
    assert read("Moss, Katie\nBrown, Will\nRobert, Leo") == ["Katie|Katie|Moss", "Will|Will|Brown", "Leo|Leo|Robert"]


def test_remarks_behind_commas_do_not_make_a_list_of_family_names_first() -> None:
    """Nothing speaks for ``Family, Given`` there, so a line that may be two children is still asked about."""
    roster = read_roster("Mia, Thomas\nWill Tarn, Asthma\nKatie Moss, Quillwort\nPia")
    assert [child.practice for child in roster.children] == ["Will", "Katie", "Pia"]
    assert roster.lines[0].notes == (message("roster.two_children"),)


MIXED = [  # a text, its children, why
    ("1.\tMia Chen\n2. Noah Brown", "Mia Noah", "a tab behind a number"),
    ("Mia Chen\nLeo\tPark\nNoah Brown", "Mia Leo Noah", "one row with a tab"),
    ("Mia Chen\nPark\tLeo\nNoah Brown", "Mia Leo Noah", "family name first in it"),
    ("Mia Chen\nLeo Park\tnew\nNoah Brown", "Mia Leo Noah", "a remark behind a tab"),
    ("Mia\tLeo\nNoah\tAva\nEmma\tLiam", "Mia Leo Noah Ava Emma Liam", "a grid of given names"),
    ("Mia Chen          Leo Park\nNoah Brown        Ava Moss", "Mia Leo Noah Ava", "two columns of a page"),
    ("<ul><li>Mia Chen</li>\n<li>Leo Park</li></ul>", "Mia Leo", "a list of a web page"),
    ("<table><tr><td>Mia</td><td>Chen</td></tr>\n<tr><td>Leo</td><td>Park</td></tr></table>", "Mia Leo", "its table"),
    ("[9/3/26, 8:10] Ms Tarn: Mia Chen\n[9/3/26, 8:11] Pat: Leo Park", "Mia Leo", "a chat"),
    ("Pat 8:10: Mia Chen\nPat 8:12: Leo Park", "Mia Leo", "a chat without days"),
]


@pytest.mark.parametrize(("text", "names", "why"), MIXED, ids=[row[2] for row in MIXED])
def test_mixed_rows_and_pastes_from_elsewhere(text: str, names: str, why: str) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == names.split(), why
    again = read_roster(roster.text or text)
    assert [(child.practice, child.line) for child in again.children] == [
        (child.practice, child.line) for child in roster.children]


def test_lines_are_told_as_they_stood_in_what_was_pasted() -> None:
    """Unfolding a line moves those below it; what is said of them names the line as it was typed."""
    reports = read_roster("Mia; Leo; Noah\n12\nMia").lines
    assert [(report.line, report.source_line) for report in reports] == [(1, 1), (2, 1), (3, 1), (4, 2), (5, 3)]
    assert reports[4].notes == (message("roster.repeat", line=1),)


SEVERAL = ["Oren, Lumi, Nia", "Oren Tavvy, Lumi Brask, Nia Kell", "Oren; Lumi; Nia"]


@pytest.mark.parametrize("line", SEVERAL)
def test_several_children_on_a_line(line: str) -> None:
    """Of names on no list nobody is picked out: the line is left out, and the sentence says what to do, once."""
    with pytest.raises(RosterError) as caught:
        read_roster(line)
    assert caught.value.lines[0].notes == (message("roster.several"), message("roster.one_each"))
    assert wording("en").say(caught.value.message).count("one name on each line") == 1


def test_a_line_of_several_leaves_the_others() -> None:
    """A line of several among lines of one is left out alone."""
    outcomes = [report.outcome for report in read_roster("Oren; Lumi; Nia\nPia").lines]
    assert outcomes == [Outcome.LEFT_OUT, Outcome.CHILD]


HEADINGS = ["Fall 2026", "September 2026", "Pre-K AM", "TK/K Combo", "Total students: 24", "24 kids", "Boys",
            "Boys: 12", "Printed 9/1/2026", "Confidential", "Pre-K 3", "Roster as of 9/1/2026", "Morning Session",
            "Rainbow Room", "Niñas", "Ciclo escolar 2026-2027", "Faro Elementary School",
            "Principal Pell", "Aide: Nia Kell", "Date: 9/1"]


@pytest.mark.parametrize("line", HEADINGS)
def test_lines_about_the_class(line: str) -> None:
    """What a list is headed with is no child, and is accounted for as a heading."""
    assert [report.outcome for report in read_roster(f"{line}\nOren Tavvy").lines] == [Outcome.HEADING, Outcome.CHILD]


@pytest.mark.parametrize("name", ["Grace Hall", "Page Tull", "June", "Nina", "Walker", "Rosa Mar", "Class Tavvy"])
def test_names_that_look_like_headings(name: str) -> None:
    """A word that can head a list can also be a name."""
    assert [child.given for child in read_roster(f"{name}\nOren Tavvy").children] == [name.split()[0], "Oren"]


def test_labels_that_sound_alike_are_numbered() -> None:
    """A dot alone does not tell two children apart."""
    assert labels([("Ava", "T."), ("Ava", "T")]) == ("Ava T. 1", "Ava T 2")


@pytest.mark.parametrize("name", ["Ella", "Nina", "Nino", "Si", "Mon"])
def test_a_name_that_is_also_a_word_about_a_child(name: str) -> None:
    """Behind two family names, in quotation marks or in a column, such a name is a name."""
    assert read(f"Tavvy Pell, {name}") == [f"{name}|{name}|Tavvy Pell"]
    assert read(f"Gabriela “{name}” Tavvy") == [f"{name}|Gabriela|Tavvy"]
    assert read(f"{name}\tTavvy\nOren\tBrask\nLumi\tKell")[0] == f"{name}|{name}|Tavvy"


def test_a_broken_tag_is_not_taken_for_a_web_page_when_what_is_kept_is_read_again() -> None:
    """A tag without its end is text of the page; of what is kept the same children are read."""
    rows = "".join(f"<tr><td>{given}</td><td class='b'>Vost</td></tr>" for given in ("Mirel", "Katla", "Ottilka"))
    roster = read_roster(f"<table><tr><th>First name</th><th>Last name</th></tr>{rows}<tr><td>Bo</td><td SS='>Dolt</TD>"
                         "</tr></table>")
    assert [one.practice for one in read_roster(roster.text).children] == [one.practice for one in roster.children]
    assert "<td" not in roster.text


@pytest.mark.parametrize("remark", ["no nuts", "quillworts", "green table", "Blaue Gruppe"])
def test_a_remark_by_comma_behind_one_name_is_no_given_name(remark: str) -> None:
    assert [one.split("|")[0] for one in read(f"Bo Tarn\nWill, {remark}\nUna Grell")] == ["Bo", "Will", "Una"]


def test_what_most_lines_have_by_comma_is_a_remark() -> None:
    """Few words that come again behind the commas are no names, and nobody has to be asked about them."""
    brought = ("Äpfel", "Möhren", "Äpfel", "Joghurt", "Möhren", "Äpfel")
    names = ("Xobrel", "Mia", "Tarnul", "Leo", "Odelo", "Noah")
    lines = "\n".join(f"{name}, {what}" for name, what in zip(names, brought, strict=True))
    assert [one.split("|")[0] for one in read(lines)] == list(names)


@pytest.mark.parametrize("sign", ["y", "and", "und", "&", "e"])
def test_two_names_on_most_lines_are_two_children(sign: str) -> None:
    names = ["Xobrel", "Tarnul", "Vemka", "Odelo", "Elmir", "Yulka", "Ilva"]
    lines = f"Xobrel {sign} Tarnul\nVemka {sign} Odelo\nElmir {sign} Yulka\nIlva"
    assert [one.split("|")[0] for one in read(lines)] == names


def test_what_most_cells_have_behind_a_dash_is_a_remark() -> None:
    rows = "Mo 1.12.\tXobrel – Äpfel\nMi 3.12.\tTarnul – Möhren\nFr 5.12.\tVemka – Äpfel\nMo 8.12.\tOdelo – Möhren"
    assert [one.split("|")[0] for one in read(rows)] == ["Xobrel", "Tarnul", "Vemka", "Odelo"]


@pytest.mark.parametrize("sign", [": ", " – "])
def test_one_name_before_words_about_others_is_not_odd_beside_such_lines(sign: str) -> None:
    others = ("mum Ada, grandma Ida", "walks with Yul", "mum Ada, grandma Ida", "walks with Yul", "dad Yul only")
    names = ("Xobrel", "Tarnul", "Vemka", "Odelo", "Elmir")
    lines = "\n".join(f"{name}{sign}{said}" for name, said in zip(names, others, strict=True))
    assert [one.split("|")[0] for one in read(lines)] == list(names)


def test_a_particle_before_a_comma_tells_that_family_names_stand_first() -> None:
    lines = "Semtrski, Nainzun\nvon Shoseich, Dothlys\nFasfobwala, Zemfos\nShindlawala, Lyssus"
    assert [one.split("|")[0] for one in read(lines)] == ["Nainzun", "Dothlys", "Zemfos", "Lyssus"]


def test_small_words_by_comma_behind_all_names_are_remarks() -> None:
    assert [one.split("|")[0] for one in read("Xobrel, yogur\nTarnul, galletas\nVemka, manzanas")] == [
        "Xobrel", "Tarnul", "Vemka"]


def test_days_by_comma_are_no_given_name() -> None:
    assert read("Xobrel Tarn, Mi Do Fr ab 3.11.\nMia Elm")[0] == "Xobrel|Xobrel|Tarn"


def test_a_few_words_that_come_again_by_comma_are_remarks() -> None:
    lines = "Visno, Joghurt\nThusny, Möhren\nRanur, Äpfel\nNalja, Möhren\nSepum, Äpfel"
    assert [one.split("|")[0] for one in read(lines)] == ["Visno", "Thusny", "Ranur", "Nalja", "Sepum"]


def test_one_name_before_a_grown_up_is_not_odd_where_some_have_a_capital() -> None:
    said = ("Mama Ada, Oma Ida", "nur Papa Yul", "Tante Ida", "nur Papa Ino", "Mama Uta")
    names = ("Xobrel", "Tarnul", "Vemka", "Odelo", "Elmir")
    lines = "\n".join(f"{name} – {words}" for name, words in zip(names, said, strict=True))
    assert [one.split("|")[0] for one in read(lines)] == list(names)


def test_names_of_one_word_before_days_with_a_date_are_not_odd() -> None:
    days = ("Monday", "Tuesday", "Thursday")
    names = ("Xobrel", "Tarnul", "Vemka", "Odelo", "Elmir")
    lines = "\n".join(f"{name} – {days[at % 3]} {at + 1}/12" for at, name in enumerate(names))
    assert [one.split("|")[0] for one in read(lines)] == list(names)


@pytest.mark.parametrize("said", ["Ava T. new", "no nuts", "Ava (4) absent", "Ava allergic to nuts"])
@pytest.mark.parametrize("others", ["", "Mira Vost\n"])
def test_a_remark_among_several_names_makes_them_no_family(said: str, others: str) -> None:
    """Mia is no family of Leo, with three given names in the line: it is asked about."""
    line = f"Mia, Leo, {said}, Joy, Bo"
    if not others:
        with pytest.raises(RosterError):
            read_roster(line)
        return
    roster = read_roster(others + line)
    assert [child.practice for child in roster.children] == ["Mira"]
    assert [report.outcome for report in roster.lines][-1] is Outcome.LEFT_OUT


def test_a_semicolon_before_an_empty_place_ends_nothing() -> None:
    """It ended the program; the line is read or left out, and the child below it is there."""
    roster = read_roster("Tarn, Mia; , Bo & Leo\nElm, Ana")
    assert [report.line for report in roster.lines] == [1, 2]
    assert roster.children[-1].practice == "Ana"


def test_two_families_before_a_comma_are_one_child() -> None:
    """Be the second of them a given name as well, in a list of families first."""
    text = "Wanjala Mwangi, Faraja\nd'Kitumaini, Sungara\nvon Kimani, Marjani\nKipsang y Mumbi, Farhiya"
    assert [child.practice for child in read_roster(text).children] == ["Faraja", "Sungara", "Marjani", "Farhiya"]


@pytest.mark.parametrize("form", [
    "{}&nbsp;{}&nbsp;|&nbsp;13.06.2019", "{}&nbsp;{}&nbsp;&nbsp;13.06.2019", "{} {}&nbsp;&nbsp;&nbsp;", "<i>{}</i> {}",
    "{at}.&nbsp;{} {}", "{} {}<br>"])
@pytest.mark.parametrize("head", ["", "<b>Liste des &#233;l&#232;ves</b>\n"])
def test_signs_spelt_as_in_the_source_of_a_page_keep_a_child_a_line(head: str, form: str) -> None:
    """Without marks that end lines, the lines of the source are those of the list."""
    names = [("Mira", "Vost"), ("M&#225;ximo", "Tarn"), ("Am&eacute;lie", "Ruiz"), ("Leo", "Brevin")]
    rows = [form.format(*name, at=at) for at, name in enumerate(names, 1)]
    children = read_roster(head + "\n".join((*rows, "&copy; 2024 Birch School"))).children
    assert [child.practice for child in children] == ["Mira", "Máximo", "Amélie", "Leo"]


DRAWN = ["┌────┬───────┐", "│ id │ first │ surname │", "├────┼───────┤", "│ 10 │ {} │ {} │", "└────┴───────┘"]


def test_a_table_in_a_drawn_frame_is_read_by_its_titles() -> None:
    names = [("Mira", "Vost"), ("Dlunyil", "Kwapson"), ("Leo", "Tarn"), ("Tarnul", "Brevin")]
    text = "\n".join((*DRAWN[:3], *(DRAWN[3].format(*name) for name in names), DRAWN[4]))
    assert [(child.given, child.family) for child in read_roster(text).children] == names


def test_rows_in_statements_of_their_own_are_a_child_each() -> None:
    names = [("Mira", "Vost"), ("Dlunyil", "Kwapson"), ("Leo", "Tarn")]
    text = "\n".join(f"INSERT INTO pupils (id, first_name, last_name) VALUES ({at}, '{given}', '{family}');"
                     for at, (given, family) in enumerate(names, 1))
    assert [child.practice for child in read_roster(text).children] == [given for given, _ in names]


@pytest.mark.parametrize("label", ["", "To: ", "Para: ", "À : ", "An: ", "A: ", "Aan: "])
@pytest.mark.parametrize("form", ['"{1}, {0}" <{0}@x.example>', "{0} {1} <{0}@x.example>", "{1}, {0} <{0}@x.example>"])
@pytest.mark.parametrize("names", [("Mira", "Tilo", "Ada"), ("Xobrel", "Vemka", "Outhna")])
def test_addresses_one_below_the_other(label: str, form: str, names: tuple[str, ...]) -> None:
    whole = zip(names, ("Vost", "Tarn", "Lind"), strict=True)
    text = label + ";\n".join(form.format(name, family) for name, family in whole)
    assert [child.practice for child in read_roster(text).children] == list(names)


def test_an_address_in_a_column_leaves_the_columns() -> None:
    rows = ("Mira,Vost,<m@x.example>", "Leo,Tarn,<l@x.example>", "Ada,Lind,<a@x.example>")
    text = "\n".join(("Given,Family,Mail", *rows))
    assert [(one.given, one.family) for one in read_roster(text).children] == [
        ("Mira", "Vost"), ("Leo", "Tarn"), ("Ada", "Lind")]


MARKED_UP = ["Carpet by the door", "Los del fondo", "Groupe du matin", "Bunter Teppich", "Angolo morbido",
             "Canto calmo", "Kwelda rombu"]


@pytest.mark.parametrize("title", MARKED_UP)
@pytest.mark.parametrize("names", [("Mira Vost", "Tilo Tarn"), ("Xobrel Vost", "Vemka Tarn")])
def test_a_title_behind_its_signs_is_no_child(title: str, names: tuple[str, str]) -> None:
    roster = read_roster(f"# {title}\n\n## {title} 1\n- [x] **{names[0]}**\n## {title} 2\n- [ ] {names[1]}")
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert [roster.lines[at].outcome for at in (0, 2, 4)] == [Outcome.HEADING] * 3


@pytest.mark.parametrize("text", [
    "# Mira Vost\n# Xobrel Tarn\n# Anna Lind",
    "## Mira Vost\n- no nuts\n- naps\n## Xobrel Tarn\n- left-handed\n- naps"])
def test_a_child_behind_signs_of_a_title_stays_one(text: str) -> None:
    assert {"Mira", "Xobrel"} <= {child.practice for child in read_roster(text).children}


@pytest.mark.parametrize("titles", [
    "Name | slip | badge", "Nombre | permiso | gorra", "Élève | mot signé | badge", "Kind | Zettel | Mütze",
    "Nome | tessera | foto",
    "Criança | bilhete | chapéu"])
@pytest.mark.parametrize("rule", ["--- | --- | ---", "|:---|:-:|---|", "=====+=====+====="])
def test_what_stands_over_a_drawn_line_are_titles(titles: str, rule: str) -> None:
    roster = read_roster(f"{titles}\n{rule}\nMira Vost | x | \nXobrel Tarn |  | x\nAnna Lind | x | x")
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Anna"]
    assert roster.lines[0].outcome is Outcome.HEADER


@pytest.mark.parametrize("end", [
    "*** END OF REPORT ***", "--- Ende der Liste ---", "=== Fin ===", "*** FINE ELENCO ***", "~~~ fim da lista ~~~",
    "*** EOF ***"])
def test_where_a_printed_list_ends_is_no_child(end: str) -> None:
    rows = "Family   Given   ID\nVOST     MIRA    01\nTARN     ENDE    02"
    assert read(f"{rows}\n{end}") == ["Mira|Mira|Vost", "Ende|Ende|Tarn"]


def test_a_number_sign_over_a_column_of_numbers_is_no_sign_of_a_title() -> None:
    assert read("#   Given    Family\n------------------\n1   Mira     Vost\n2   Xobrel   Tarn") == [
        "Mira|Mira|Vost", "Xobrel|Xobrel|Tarn"]


@pytest.mark.parametrize("sign", ["ü", "v", "l", "Ø", "§"])
@pytest.mark.parametrize("names", [["Olivier", "Simone", "Xobrel"], ["Olivier Landry", "Simone Roy", "Xobrel Tarn"]])
def test_the_letter_a_sign_of_a_font_became_is_no_name(sign: str, names: list[str]) -> None:
    for gap in (" ", "\t"):
        roster = read_roster("\n".join(f"{sign}{gap}{name}" for name in names))
        assert [child.practice for child in roster.children] == ["Olivier", "Simone", "Xobrel"]


def test_a_column_in_brackets_is_no_name_and_no_question() -> None:
    roster = read_roster("Arno\t(Heuschnupfen)\nYusuf\t(Asthma)\nBjörn\t(Milch)\nEdwin\t(Erdnüsse)")
    assert [child.practice for child in roster.children] == ["Arno", "Yusuf", "Björn", "Edwin"]


@pytest.mark.parametrize("called", ["called", "detto", "genannt", "dit", "goes by"])
def test_a_family_name_behind_what_a_child_goes_by_stays_one(called: str) -> None:
    roster = read_roster(f"Ethan {called} Tom Vost\nMona Gray")
    assert [(child.practice, child.family) for child in roster.children] == [("Tom", "Vost"), ("Mona", "Gray")]


@pytest.mark.parametrize("marks", ["“”", "„“", "«»"])
def test_lines_that_stand_whole_in_quotation_marks_are_read_without(marks: str) -> None:
    names = ["Vost, Xobrel", "Tarn, Mira", "Elm, Odrel"]
    roster = read_roster("\n".join(f"{marks[0]}{name}{marks[1]}" for name in names))
    assert [child.practice for child in roster.children] == ["Xobrel", "Mira", "Odrel"]


def test_a_birthday_in_words_is_no_name_beside_one_on_no_list() -> None:
    roster = read_roster("a@mail.example,1. Juni,Xobrel Vost\nb@example.org,17. Oktober,Yandu Tarn\n"
                         "c@mail.example,8. April,Odrel Elm")
    assert [child.practice for child in roster.children] == ["Xobrel", "Yandu", "Odrel"]


def test_a_rare_name_before_a_date_and_a_grown_up_is_asked_about() -> None:
    with pytest.raises(RosterError) as asked:
        read_roster("Jiamnit | 9/28/2020 | Sónia Nyim\nSherxou | 9/14/2020 | Carla Seth\nGukerh | 6/1/2019 | Rita Nyur")
    assert asked.value.message.key == "roster.two_wholes"
