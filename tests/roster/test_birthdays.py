"""Birthdays copied from a calendar hold the names of children; the words about them are nobody's."""

from __future__ import annotations

import pytest

from namewright.roster.birthdays import from_birthdays
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

FORMS = {
    "en": ("{}'s birthday", "{}’s 5th Birthday", "{} turns 5", "{} turns 5 years old", "Birthday: {}",
           "Happy Birthday {}", "{}'s bday (turning 5)", "Jan 12  {}'s birthday",
           "12 Jan 2027\tAll day\t{} turns 5", "{}'s birthday\tAll day",
           "Jan 12: {}'s birthday", "🎂 {}'s birthday, all day"),
    "es": ("Cumpleaños de {}", "Cumple de {}", "{} cumple 5 años", "Cumpleaños de {} - 12 de enero",
           "12/01 Cumpleaños {}",
           "12 ene\tTodo el día\tCumpleaños de {}"),
    "fr": ("Anniversaire de {}", "Anniversaire : {}", "{} fête ses 5 ans", "{} a 5 ans", "12/01 – Anniv de {}",
           "Toute la journée\tAnniversaire de {}"),
    "de": ("Geburtstag von {}", "Geburtstag {}", "{} hat Geburtstag", "{} wird 5", "{} wird 5 Jahre", "{} Geburtstag",
           "12.01. Geburtstag {}", "ganztägig\tGeburtstag {}"),
    "it": ("Compleanno di {}", "{} compie 5 anni", "Compleanno {}", "12 gennaio - Compleanno di {}"),
    "pt": ("Aniversário da {}", "Aniversário de {}", "{} faz 5 anos", "Niver da {}",
           "Aniversário do {}, 12 de janeiro"),
}
WHOLE = ("Mia Vost", "Leo Tarn", "Xobrel Menk", "Anouk Thal")
UNKNOWN = ("Zuthe Menkra", "Xobrel Vankis", "Ilvem Tarnul", "Dlöty Fensaw")
DAYS = {"en": ("Mon, Jan 12", "Thu, Mar 5"), "es": ("mar 20 ene", "mié 4 feb"), "fr": ("lun. 12 janv.", "mer. 4 févr."),
        "de": ("Mo 12. Jan.", "Mi 4. Feb."), "it": ("lun 12 gen", "gio 5 mar"), "pt": ("seg 12 jan", "qui 5 mar")}


@pytest.mark.parametrize("form", [form for forms in FORMS.values() for form in forms])
@pytest.mark.parametrize("names", [WHOLE, tuple(name.split()[0] for name in WHOLE), UNKNOWN])
def test_whose_birthday_it_is_is_the_child(form: str, names: tuple[str, ...]) -> None:
    children = read_roster("\n".join(map(form.format, names))).children
    assert [(child.given, child.family) for child in children] == [
        (given, family) for given, _, family in (name.partition(" ") for name in names)]


@pytest.mark.parametrize("language", FORMS)
@pytest.mark.parametrize("names", [WHOLE, UNKNOWN])
def test_days_in_lines_of_their_own(language: str, names: tuple[str, ...]) -> None:
    for form in FORMS[language]:
        lines = [line for day, name in zip(DAYS[language] * 2, names, strict=True) for line in (day, form.format(name))]
        assert [child.given for child in read_roster("\n".join(lines)).children] == [name.split()[0] for name in names]


def test_the_words_about_it_are_told() -> None:
    report = read_roster("Anniversaire de Mia\nAnniversaire de Bo").lines[0]
    assert [note.key for note in report.notes] == ["roster.remark"]


def test_a_german_ending_is_no_part_of_the_name() -> None:
    assert [child.given for child in read_roster("Mias Geburtstag\nLeos Geburtstag\nThomas Geburtstag").children] == [
        "Mia", "Leo", "Thomas"]


def test_birthdays_below_the_class_make_nobody_twice() -> None:
    roster = read_roster("Mia Vost\nLeo Tarn\nUna Elm\nMia's birthday\nLeo turns 5")
    assert [child.given for child in roster.children] == ["Mia", "Leo", "Una"]
    assert [report.outcome for report in roster.lines[-2:]] == [Outcome.HEADING] * 2


@pytest.mark.parametrize("text", [
    "Birthday list", "Geburtstage", "Mia Vost (birthday 3/4)", "Mia Vost, birthday 3/4", "Birthday 12.3.2019",
    "Mia Vost – Geburtstag 3.4.2020", "It is Mia's birthday on Friday!", "Birthday", "Mia Vost", "7 Mia Vost",
])
def test_what_tells_nobody_s_birthday_stays(text: str) -> None:
    assert from_birthdays([Line(text, 0)]) == [Line(text, 0)]


def test_what_else_a_calendar_has_is_told() -> None:
    roster = read_roster("12.1. Geburtstag Zuthe\n20.1. Fasching\n4.2. Geburtstag Xobrel\nMia Vost")
    assert [child.given for child in roster.children] == ["Zuthe", "Xobrel", "Mia"]
    assert roster.lines[1].outcome is Outcome.HEADING


BELOW = {
    "en": ("{}'s birthday", ("April 7", "January 23", "June 2", "March 5"), "All day"),
    "es": ("Cumpleaños de {}", ("7 de abril", "23 de abril", "2 de abril", "5 de junio"), "Todo el día"),
    "fr": ("Anniversaire de {}", ("7 avril", "23 mai", "2 mars", "5 avril"), "Toute la journée"),
    "de": ("Geburtstag von {}", ("7. April", "23. Juni", "2. April", "5. Mai"), "Den ganzen Tag"),
    "it": ("Compleanno di {}", ("7 aprile", "23 aprile", "2 marzo", "5 aprile"), "Tutta la giornata"),
    "pt": ("Aniversário de {}", ("7 de maio", "23 de maio", "2 de maio", "5 de abril"), "Dia todo"),
}


@pytest.mark.parametrize("language", BELOW)
@pytest.mark.parametrize("names", [WHOLE, tuple(name.split()[0] for name in WHOLE), UNKNOWN,
                                   tuple(name.split()[0] for name in UNKNOWN)])
@pytest.mark.parametrize("all_day", [True, False])
def test_a_day_below_a_birthday_is_nobody(language: str, names: tuple[str, ...], all_day: bool) -> None:
    form, days, whole = BELOW[language]
    lines = [line for day, name in zip(days, names, strict=True)
             for line in (form.format(name), day, whole)[: 2 + all_day]]
    assert [child.given for child in read_roster("\n".join(lines)).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("language", ["en", "de", "fr"])  # Cumpleaños de April is a title, too
def test_a_month_s_name_is_a_child_s_where_it_is_the_birthday_s(language: str) -> None:
    form, days, _ = BELOW[language]
    names = ("April", "June", "Marco", "Mia")
    lines = [line for day, name in zip(days, names, strict=True) for line in (form.format(name), day)]
    assert [child.given for child in read_roster("\n".join(lines)).children] == list(names)


def test_a_child_with_an_age_below_two_birthdays_stays() -> None:
    roster = read_roster("Mia Vost 5\nLeo Tarn 6\nMia's birthday\nLeo's birthday\nApril 5")
    assert [child.given for child in roster.children] == ["Mia", "Leo", "April"]


@pytest.mark.parametrize("form", ["Cumpleaños de {}", "{}'s birthday", "Anniversaire de {}", "Geburtstag von {}"])
@pytest.mark.parametrize("name", ["Jan", "Sam", "June", "April"])
@pytest.mark.parametrize("day", ["", "\nMarch 3", "\nMarch 3\nAll day"])
def test_a_child_called_as_a_month_or_day_has_a_birthday_among_others(form: str, name: str, day: str) -> None:
    text = "\n".join(form.format(one) + day for one in ("Nikol", name, "Otis", "Xobrel"))
    assert [child.practice for child in read_roster(text).children] == ["Nikol", name, "Otis", "Xobrel"]


@pytest.mark.parametrize("word", ["Cumpleaños", "Birthday", "Geburtstag", "Anniversaire", "Compleanno", "Aniversário"])
def test_a_family_name_that_is_a_word_of_ours_stands_in_a_calendar(word: str) -> None:
    """Tao He was an event of the class, and lost."""
    names = ("Ping Shao", "Qiang Yao", "Ana Dai", "Tao He", "Lou Lei")
    roster = read_roster("\n".join(f"{word}: {name}" for name in names))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
