"""Where a line may be a child or something else: what is sure is read, what is not is asked, nothing is guessed."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.settings import Hand, Support

WHOLE = "Oren Tavvy\nMira Vost\nPell Ferrow\nTilo Grell\n"
"""Whole names, four of which tell how a list is written."""


def practised(text: str) -> list[str]:
    """Return the names that children practise, those of a list of none included."""
    try:
        return [child.practice for child in read_roster(text).children]
    except RosterError:
        return []


READ = [
    (f"{WHOLE}NEW! Ida Quill", "Ida", "a cry before a name"),
    (f"{WHOLE}¡NUEVA! Ida Quill", "Ida", "in another language"),
    (f"{WHOLE}*neu* Ida Quill", "Ida", "between stars"),
    (f"{WHOLE}Absent: Ida Quill", "Ida", "a label about who is here"),
    (f"{WHOLE}Nouveau : Ida Quill", "Ida", "a space before the colon"),
    (f"{WHOLE}7:36 Calle Sol – Ida Quill", "Ida", "a stop before a name"),
    (f"{WHOLE}Ida Quill (AL)", "Ida", "an abbreviation is no short form"),
    (f"{WHOLE}Ida Quill, kommt später", "Ida", "a remark in small letters behind a whole name"),
    ("I. Oren Tavvy\nII. Mira Vost\nIII. Pell Ferrow\nIV. Tilo Grell\nV. Ida Quill", "Ida", "Roman numbers"),
    ("l. Oren Tavvy\n2. Mira Vost\n3. Pell Ferrow\n4. Tilo Grell\nS. Ida Quill", "Ida", "figures read as letters"),
    (f"{WHOLE}QUILL Ida 12/05/2020 GS", "Ida", "an abbreviation behind a date"),
    (f"{WHOLE}QUILL Ida 12/05/2020 5 anni", "Ida", "an age in Italian"),
    (f"{WHOLE}Ida Quill [KAY-lah]", "Ida", "how a name is said"),
    ("Kwibra Lylos, Brotzeit\nTromva Zethes, Menü\nVashe Piras, Brotzeit\nRondi Melk, Menü\nIda Quill, Brotzeit", "Ida",
     "the same few words behind names on no list"),
    ("Oren.T\nMira.V\nPell.F\nTilo.G\nIda.Q", "Ida", "an initial behind a dot"),
    ("Blue table\tOren Tavvy, Mira Vost\nRed table\tPell Ferrow, Tilo Grell, Ida Quill", "Ida", "tables in columns"),
    ("Table,Children\n1,\"Oren, Mira\"\n2,\"Pell, Ida\"", "Ida", "each row is a group"),
    ("Hinten von links: Oren Tavvy, Mira Vost\nVorne: Pell Ferrow, Tilo Grell\nEs fehlt: Ida Quill", "Ida",
     "each line is a group, one of one child"),
]


@pytest.mark.parametrize(("text", "last", "why"), READ, ids=[row[2] for row in READ])
def test_all_five_children_are_read(text: str, last: str, why: str) -> None:
    names = practised(text)
    assert names[-1] == last, why
    assert len(names) == (4 if "Table," in text else 5), why


ASKED = [
    ("Seduti: Ida Quill", "an unknown word before a name"),
    ("Hinten links: Ida Quill", "a phrase before a name"),
    ("Scuolabus 1", "one word and a number"),
    ("Ruta 3 (Calle Sol)", "with a remark"),
    ("PEG", "capitals among whole names"),
    ("   bee stings", "small letters, set in"),
    ("asma", "a word of health in small letters that is a name, too"),
    ("September", "a month among whole names"),
    ("hoy", "a word of today"),
    ("Oren Tavvy / PEG", "a part in capitals"),
]


@pytest.mark.parametrize(("line", "why"), ASKED, ids=[row[1] for row in ASKED])
def test_a_line_that_may_be_no_child_is_asked_about(line: str, why: str) -> None:
    """Nobody is made from it, a note says so, and the others are read."""
    roster = read_roster(f"{WHOLE}Ida Quill\n{line}")
    assert [child.practice for child in roster.children] == ["Oren", "Mira", "Pell", "Tilo", "Ida"], why
    assert roster.lines[-1].notes, why


ROWS = [
    "Kwibra Lylos Tromva Zethes",
    "Kwibra, Lylos, Tromva y Zethes",
    "Kwibra\tLylos\tTromva\tZethes",
    "Kwibra Lylos, Tromva Zethes\nVashe Piras\nRondi Melk\nUlvo Sant\nKorp Denz, Vulti Rask",
]


@pytest.mark.parametrize("text", ROWS)
def test_names_on_no_list_in_one_row_are_never_one_child(text: str) -> None:
    assert not {"Kwibra", "Lylos", "Korp"}.intersection(practised(text))


TITLES = [
    "Ende der Liste", "Unsere Klasse", "La nostra classe", "Kids today", "¡Bienvenidos!", "Settembre", "My kids",
    "Our Group\n-----",
]


@pytest.mark.parametrize("title", TITLES)
def test_a_title_over_a_list_is_no_child(title: str) -> None:
    assert practised(f"{title}\n{WHOLE}") == ["Oren", "Mira", "Pell", "Tilo"]


def test_a_child_called_as_such_words_are_is_still_read() -> None:
    """Names that are words for other things too, in a name’s place."""
    names = ["Mia", "April", "Sol", "Peg", "Asma", "Nova", "June"]
    assert practised("\n".join(names)) == names
    assert practised("\n".join(f"{name} Tavvy" for name in names)) == names


HANDS = [
    ("Linkshänder", Hand.LEFT), ("Linkshänderin", Hand.LEFT), ("links", Hand.LEFT), ("Rechtshänder", Hand.RIGHT),
    ("gaucher", Hand.LEFT), ("gauchère", Hand.LEFT), ("droitier", Hand.RIGHT), ("main gauche", Hand.LEFT),
    ("mancino", Hand.LEFT), ("mano sinistra", Hand.LEFT), ("destrimano", Hand.RIGHT),
    ("canhoto", Hand.LEFT), ("canhota", Hand.LEFT), ("mão direita", Hand.RIGHT), ("zurda", Hand.LEFT),
    ("beidhändig", Hand.UNSETTLED), ("ambidextre", Hand.UNSETTLED), ("cambia mano", Hand.UNSETTLED),
]


@pytest.mark.parametrize(("said", "hand"), HANDS, ids=[said for said, _ in HANDS])
@pytest.mark.parametrize("form", ["{} ({})", "{} – {}", "{}, {}", "{}: {}", "{} [{}]"])
def test_a_hand_is_read_in_six_languages(said: str, hand: Hand, form: str) -> None:
    child = read_roster(f"{WHOLE}{form.format('Ida Quill', said)}").children[-1]
    assert (child.practice, child.hand) == ("Ida", hand)


SUPPORTS = [
    ("volle Hilfe", Support.FULL), ("aide complète", Support.FULL), ("aiuto parziale", Support.PARTIAL),
    ("apoio leve", Support.LIGHT), ("ohne Hilfe", Support.INDEPENDENT), ("sans aide", Support.INDEPENDENT),
]


@pytest.mark.parametrize(("said", "support"), SUPPORTS, ids=[said for said, _ in SUPPORTS])
def test_a_level_of_support_is_read_in_six_languages(said: str, support: Support) -> None:
    child = read_roster(f"{WHOLE}Ida Quill ({said})").children[-1]
    assert (child.practice, child.support) == ("Ida", support)


@pytest.mark.parametrize(("name", "family"), [
    ("Ana Pereda Quillon", "Pereda Quillon"), ("Kwibra Lylos Tromva", "Lylos Tromva"), ("Katie Rose Moss", "Moss"),
    ("Katie B. Moss", "Moss"), ("Ana García López", "García López"),
])
def test_a_word_that_is_no_known_given_name_stays_with_the_family_name(name: str, family: str) -> None:
    """A middle name is left out and told; what may be a first family name is kept."""
    assert read_roster(f"{name}\nMira Vost").children[0].family == family


def test_two_given_names_behind_a_familys_comma_are_one_child() -> None:
    """Where a list writes the family name first, a given name that is a family's too asks no question."""
    lines = ["Cano Rey, Ona", "Toro Vidal, Gael", "Yuste Mora, Zoe", "Soto Rey, María Ángeles",
             "Ruiz Marín, Juan Martín"]
    found = read_roster("\n".join(lines)).children
    assert [child.practice for child in found] == ["Ona", "Gael", "Zoe", "María Ángeles", "Juan Martín"]


def test_family_names_alone_before_a_familys_comma_are_one_child() -> None:
    """Given names behind it that are families' too ask nothing where the list writes so."""
    found = read_roster("Rubio Cano, Ona\nGil Toro, Juan Cruz\nCano Rey, Gael").children
    assert [child.practice for child in found] == ["Ona", "Juan Cruz", "Gael"]


def test_a_row_among_lines_that_is_turned_is_told() -> None:
    report = read_roster("Katie Moss\nLeo Marsh\nMoss\tBo\nAva Reed").lines[2]
    assert report.child
    assert report.child.practice == "Bo"
    assert [note.key for note in report.notes] == ["roster.read_by_comma"]


def test_figures_before_a_colon_count_and_are_no_label() -> None:
    assert practised("1st: ანა კახაძე\n2nd: მანანა ზედგინიძე") == ["ანა", "მანანა"]


def test_remarks_among_whole_names_are_asked_about_where_several_stand_alone() -> None:
    text = "Vladimir Aguilar\nSingulair\nBeatriz Orozco\nCarol Posada\n  * PEG\nSonia Romero\nJeferson Guerra"
    assert practised(text) == ["Vladimir", "Beatriz", "Carol", "Sonia", "Jeferson"]


@pytest.mark.parametrize("line", ["Rowan, Oliver/Ollie", "Rowan, Oliver & Ida", "Rowan, Oliver and Ida"])
def test_a_family_before_two_given_names_is_no_third_child(line: str) -> None:
    """Two children of one family, or two names of one child: asked, and nobody is called by the family name."""
    read = practised(f"Marsh, Juniper\n{line}\nVance, Mateo\nReed, Tilo\nFinch, Anna")
    assert read == ["Juniper", "Mateo", "Tilo", "Anna"]


def test_a_word_of_health_behind_a_whole_name_is_asked_about_where_it_is_a_name_too() -> None:
    """In a list of ``Family, Given``, where Asma may be the child of a family called Nuria Peral."""
    roster = read_roster("Vost, Mira\nBrae, Tilo\nMarn, Oda\nNuria Peral, Asma")
    assert "Asma" not in [child.practice for child in roster.children]
    assert roster.lines[-1].notes
    assert practised("Vost, Mira\nBrae, Tilo\nMarn, Oda\nPeral, Asma")[-1] == "Asma"


def test_given_names_before_family_names_by_comma_are_not_turned() -> None:
    """``Lucía, Romero`` on most lines: nobody practises a family name without being told."""
    roster_names = practised("Lucía, Romero\nHugo, Ortega\nMartina, Molina\nVega, Sanz")
    assert not {"Romero", "Ortega", "Molina"}.intersection(roster_names)
