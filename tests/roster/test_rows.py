"""One row into one child: what each column gives, and the name that is practised in the end."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.columns import Table, lay_out
from namewright.roster.rows import Entry, LeftOut, odd_marks, read_row, settle
from namewright.settings import Hand, NamePart, Support


def read(*lines: str) -> Entry | LeftOut:
    """Read the last of these lines, the ones before it being what it stands under."""
    table: Table = lay_out(lines)
    return read_row(table.rows[-1], table)


def settled(*lines: str, part: NamePart = NamePart.GIVEN) -> Entry | LeftOut:
    entry = read(*lines)
    return settle(entry, part) if isinstance(entry, Entry) else entry


COLUMNS = [  # header, row, given, family, goes by, why
    ("Given\tFamily", "Mira\tVost", "Mira", "Vost", "", "a part a column"),
    ("Family\tGiven", "Vost\tMira", "Mira", "Vost", "", "in either order"),
    ("Name\tHand", "Mira Vost\tL", "Mira", "Vost", "", "a whole name"),
    ("Family\tFamily\tGiven", "Brae\tvan der\tMira", "Mira", "van der Brae", "", "a column of particles comes first"),
    ("Last name, first name\tHand", "Vost Mira\tL", "Mira", "Vost", "", "the header says that families come first"),
    ("Apellidos y nombre\tMano", "Vost Brae Mira\tL", "Mira", "Vost Brae", "", "two of them in Spanish"),
    ("Full name\tFamily", "Mira Vost\tVost", "Mira", "Vost", "", "a whole name beside its part"),
    ("Name\tSurname", "Mira Vost\tVost", "Mira", "Vost", "", "under a header that need not say so"),
    ("Name\tSurname", "Mira\tVost", "Mira", "Vost", "", "where a given name is as well"),
    ("Given\tFamily\tGoes by", "Mirabel\tVost\tMira", "Mirabel", "Vost", "Mira", "what the child goes by"),
    ("Given\tFamily", "Mirabel (Mira)\tVost", "Mirabel", "Vost", "Mira", "in brackets in its column"),
    ("Given\tFamily", "=A1\tVost", "", "Vost", "", "a formula is no name"),
]


@pytest.mark.parametrize(("header", "row", "given", "family", "goes_by", "why"), COLUMNS,
                         ids=[row[5] for row in COLUMNS])
def test_the_parts_of_a_name_in_columns(header: str, row: str, given: str, family: str, goes_by: str,
                                             why: str) -> None:
    found = read(header, row)
    assert isinstance(found, Entry)
    assert (found.reading.given, found.reading.family, found.reading.goes_by) == (given, family, goes_by), why


def test_the_settings_of_a_row() -> None:
    """Each column of settings is read; what a column of letters or beats holds is kept as typed."""
    found = read("Given\tFamily\tHand\tSupport\tLine height (cm)\tPractise\tLetters\tBeats",
                 "Mira\tVost\tL\tlight\t1.5\tboth\ta=two-storey\tMi-ra")
    assert isinstance(found, Entry)
    choice = found.choice
    assert (choice.hand, choice.support, choice.line_height_mm, choice.part) == (
        Hand.LEFT, Support.LIGHT, 15.0, NamePart.BOTH)
    assert (choice.letters, choice.beats, choice.literal) == ("a=two-storey", "Mi-ra", "")
    assert found.notes == ()


@pytest.mark.parametrize("row", ["\tMira Vost\t", "Mira Vost\t\t"])
def test_a_whole_name_in_one_cell_of_a_table_is_read_as_free_text(row: str) -> None:
    """A late child typed into the one cell that was at hand is not lost, nor cut in the wrong place."""
    found = read("Given\tFamily\tHand", row)
    assert isinstance(found, Entry)
    assert (found.reading.given, found.reading.family) == ("Mira", "Vost")


@pytest.mark.parametrize("line", ["12", "…", "\u0301", "555-010-0199", "x" * 301])
def test_a_line_without_a_name_is_left_out(line: str) -> None:
    """Numbers, signs, a mark without its letter, and what is far too long to be a name."""
    found = read(line)
    assert isinstance(found, LeftOut)
    assert not found.heading


def test_a_heading_is_left_out_as_one() -> None:
    found = read("Ms. Ferrow’s class")
    assert isinstance(found, LeftOut)
    assert found.heading


PRACTISED = [  # line, class's part, practised, why
    ("Mira Vost", NamePart.GIVEN, "Mira", "the given name"), ("Mira Vost", NamePart.FAMILY, "Vost", "the family name"),
    ("Mira Vost", NamePart.BOTH, "Mira Vost", "both"),
    ("Mirabel (Mira) Vost", NamePart.GIVEN, "Mira", "what the child goes by"),
    ("Mirabel (Mira) Vost", NamePart.BOTH, "Mira Vost", "with the family name"),
    ("Mirabel (Mira) Vost", NamePart.FAMILY, "Vost", "which it does not touch"),
    ("Mira", NamePart.FAMILY, "Mira", "the part there is, where the other is missing"),
    ("MIRA VOST", NamePart.BOTH, "Mira Vost", "letters all of one case are mended"),
    ("mira vost", NamePart.GIVEN, "Mira", "small ones too"),
    ("Mira McVost", NamePart.FAMILY, "McVost", "mixed ones stay"),
]


@pytest.mark.parametrize(("line", "part", "practised", "why"), PRACTISED, ids=[row[3] for row in PRACTISED])
def test_the_name_to_practise(line: str, part: NamePart, practised: str, why: str) -> None:
    found = settled(line, part=part)
    assert isinstance(found, Entry)
    assert found.practice == practised, why


def test_the_row_goes_before_the_class() -> None:
    """A row's own wish, and a name written out in it, go before what the class practises."""
    for cell, practised in (("family", "Vost"), ("Mimi", "Mimi"), ("", "Mira")):
        found = settled("Given\tFamily\tPractise", f"Mira\tVost\t{cell}")
        assert isinstance(found, Entry)
        assert found.practice == practised


@pytest.mark.parametrize(("count", "fits"), [(60, True), (61, False)])
def test_a_name_has_a_greatest_length(count: int, fits: bool) -> None:
    """Counted in letters as a reader sees them: a mark is no letter of its own."""
    found = settled("A" + "e\u0301\u0323" * (count - 1))
    assert isinstance(found, Entry) is fits


def test_several_names_in_a_line_are_nobody() -> None:
    assert isinstance(settled("Mira, Tilo, Oda"), LeftOut)


@pytest.mark.parametrize(("name", "odd"), [
    ("Keali'i", True), ("Ka‘ena", True), ("Keali’i", True), ("Kealiʻi", False), ("O'Ennis", False), ("D’Arro", False),
    ("Mary-A'Ida", False), ("Mira", False)])
def test_a_mark_between_vowels_may_be_an_okina(name: str, odd: bool) -> None:
    """A note asks about it; the opening of O'Ennis is no such mark, and a real ʻokina needs no question."""
    assert bool(odd_marks(name)) is odd


@given(st.text(st.characters(codec="utf-8", exclude_categories=["Cc", "Cs", "Cf"]), min_size=1, max_size=40))
def test_any_line_is_a_child_with_a_name_or_is_left_out_with_a_reason(text: str) -> None:
    """A child has a name to practise with a letter in it; whoever has none is told why."""
    line = " ".join(text.split())
    if line:
        found = settled(line)
        if isinstance(found, Entry):
            assert any(char.isalpha() for char in found.practice)
            assert found.practice == found.practice.strip()
        else:
            assert found.notes


@pytest.mark.parametrize("row", ["\tHOMBRES\t4\tMUJERES\t5\tTOTAL\t9", "\tBoys:\t4\tGirls:\t5",
                                 "\tGarçons\t4\tFilles\t5", "\tJungen\t4\tMädchen\t5",
                                 "HOMBRES: 4\t\tMUJERES: 5\t\tTOTAL: 9", "Mädchen 4\t\tJungen 5", "\tØ\t\t\t\t9",
                                 "\t\u03a3\t\t\t\t9",
                                 "\tMaschi\t4\tFemmine\t5", "\tMeninos\t4\tMeninas\t5"])
def test_a_row_that_counts_boys_and_girls_is_a_heading(row: str) -> None:
    table = lay_out(["No.\tLast name\tMiddle name\tFirst name\tSex\tBus\tRoom", "1\tVost\t\tMira\tF\t4\t2", row])
    read = read_row(table.rows[-1], table)
    assert isinstance(read, LeftOut)
    assert read.heading
