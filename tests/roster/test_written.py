"""Children written as a table with titles are read as they are meant."""

from __future__ import annotations

from namewright.roster.children import Child, Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.written import NOT_READ, WORDS, as_table, line_by_line, written
from namewright.settings import Hand, NamePart


def child(practice: str, given: str, family: str, **more: object) -> Child:
    """Return a child on no line."""
    return Child(practice, practice, given, family, 0)._replace(**more)


def test_a_name_that_is_gone_by_and_a_name_that_is_always_practised_are_told_apart() -> None:
    """Who goes by a name practises the family name where the class does; a name that is chosen stays."""
    goes_by = written(child("Zaffy", "Zaphrelle", "Quorn"), child("Quorn", "Zaphrelle", "Quorn"))
    chosen = written(child("Zaffy", "Zaphrelle", "Quorn"), child("Zaffy", "Zaphrelle", "Quorn"))
    assert (goes_by.goes_by, goes_by.practise, chosen.goes_by, chosen.practise) == ("Zaffy", "", "", "Zaffy")
    for each, family in ((goes_by, "Quorn"), (chosen, "Zaffy")):
        text = as_table([each], WORDS)
        assert [read_roster(text, part=part).children[0].practice for part in (NamePart.GIVEN, NamePart.FAMILY)] == [
            "Zaffy", family]


def test_a_table_has_no_column_in_which_nothing_stands() -> None:
    mira = child("Mira", "Mira", "Vost", hand=Hand.LEFT)
    table = as_table([written(mira, mira._replace(practice="Vost"))], WORDS)
    assert table == "First name,Family name,Hand\nMira,Vost,left\n"


def test_line_by_line_words_that_are_no_child_stay_none() -> None:
    """Names among them make nobody, whatever parts them."""
    mira = child("Mira", "Mira", "")
    lines = ["Sun group:", written(mira, mira), "", "Leo / Bo, Ana", "Otta Quill"]
    roster = read_roster(line_by_line(lines))
    assert roster.lines[0].text == f"First name,Family name,{NOT_READ}"
    assert [line.outcome for line in roster.lines] == [
        Outcome.HEADER, Outcome.HEADING, Outcome.CHILD, Outcome.BLANK, Outcome.LEFT_OUT, Outcome.LEFT_OUT]
    assert [one.practice for one in roster.children] == ["Mira"]
