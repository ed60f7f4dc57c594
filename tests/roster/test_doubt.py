"""Lists that name somebody else beside each child, of which nothing tells who is the child."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

_GROWN_UPS = ("Anna Berger", "Paula Winter", "Julia Sommer", "Martin Kraus", "Peter Lange", "Clara Fuchs")
_CHILDREN = ("Leo", "Mia", "Noah", "Emma", "Lucas", "Sofia")
_TIMES = ("8:14", "9:02", "10:45", "11:31", "12:08", "13:57")
_ASKED = ("roster.several", "roster.one_each")


def _each(form: str) -> str:
    return "\n".join(form.format(grown_up=one, child=child, time=time)
                     for one, child, time in zip(_GROWN_UPS, _CHILDREN, _TIMES, strict=True))


def _asked(text: str) -> int:
    """Return how many lines are asked about, where nobody is made."""
    with pytest.raises(RosterError) as error:
        read_roster(text)
    return sum(tuple(note.key for note in report.notes)[-2:] == _ASKED and report.outcome is Outcome.LEFT_OUT
               for report in error.value.lines)


@pytest.mark.parametrize("form", [
    "{grown_up} signed the form for {child} Vost",
    "{grown_up} hat das Formular für {child} Vost unterschrieben",
    "{grown_up} ha firmato il modulo di {child} Vost",
    "#12 {grown_up}: iPad of {child} Vost broken",
    "{time} {grown_up} llamó por {child}",
    "{grown_up} gostou do desenho de {child} Vost",
])
def test_a_line_that_names_two_people_is_asked_about(form: str) -> None:
    assert _asked(_each(form)) == len(_CHILDREN)


@pytest.mark.parametrize("form", [
    "{grown_up} signed the form for {child} {family}", "{child} {family} ({grown_up})", "{grown_up}: {child} {family}",
    "{grown_up} hat den Ausflug für {child} {family} bezahlt", "{child} {family} goes home with {grown_up}",
])
def test_a_grown_up_of_the_childs_family_is_asked_about(form: str) -> None:
    """As most are: the grown-up was practised without a word."""
    text = "\n".join(form.format(grown_up=one, child=child, family=one.split()[1])
                     for one, child in zip(_GROWN_UPS, _CHILDREN, strict=True))
    assert _asked(text) == len(_CHILDREN)


def test_a_line_that_is_a_name_alone_among_these_is_a_child() -> None:
    """It was told to hold several names."""
    roster = read_roster(f"{_each('{grown_up} signed the form for {child} Vost')}\n7. Tom Berg")
    assert [(child.given, child.line) for child in roster.children] == [("Tom", 7)]


def test_dates_and_sums_about_two_people_are_asked_about() -> None:
    assert _asked(_each("{time}\n{grown_up}\nLunch {child} Vost\n12.00")) >= len(_CHILDREN)


def test_names_with_the_same_word_within_are_asked_about() -> None:
    """What a bank wrote between two names made one name of both."""
    text = _each("03/04/2024 {grown_up} Trip Money {child} 7.50")
    assert _asked(text) == len(_CHILDREN)


@pytest.mark.parametrize("form", [
    "{child} Xobrel – fetched by {grown_up}",
    "{child} Vost (Mum: {grown_up})",
    "{child} Vost – takes the bus",
    "{child} Vost, 4.5.2019",
    "{time} {child} Vost",
])
def test_a_child_that_a_sign_parts_from_what_is_told_of_it_is_made(form: str) -> None:
    assert [child.given for child in read_roster(_each(form)).children] == list(_CHILDREN)


def test_a_list_of_names_that_nobody_knows_is_read() -> None:
    names = ["Xobrel Tarnul", "Vemka Oskin", "Drulo Pandrek", "Quilmo Zastrel", "Yantu Brovik"]
    assert len(read_roster("\n".join(names)).children) == len(names)
    assert len(read_roster("\n".join(f"{at}. {name} (5)" for at, name in enumerate(names, 1))).children) == len(names)


def test_a_child_of_its_father_is_one() -> None:
    text = "01 Martin bin Rolf\n02 Elena binti Omar\n03 Ana binti Otto\n04 Leo bin Ramiro"
    assert len(read_roster(text).children) == len(text.splitlines())
