"""Who stands under a word for leavers is told or asked about, in six languages; a list of attendance stays."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

LEFT = ["Leavers:", "Leavers", "LEAVERS (2)", "Left us", "Moved away:", "Withdrawn:", "No longer in our class",
        "Abgänge:", "Abgänge 2025", "Ehemalige", "Nicht mehr in der Klasse:", "Ont quitté l'école :", "Élèves partis",
        "Radiés :", "Bajas:", "Bajas", "Ya no están", "Trasladados:", "Trasferiti:", "Non più in classe", "Ritirati",
        "Transferidos:", "Já não estão", "Desistentes", "** Leavers **", "--- Leavers ---"]
OF_A_DAY = ["Left:", "Gone", "Sorties", "Départs :", "Abgemeldet:", "Salidas", "Usciti", "Saídas:", "Saíram"]
NAMES = [("Mira Vost", "Leo Tarn", "Ida Moss", "Tom Hill", "Ava Berg"),
         ("Xobrel Quix", "Vemka Dofri", "Outhna Jel", "Mogat Lenvi", "Tarnul Zeb"),
         ("Mira", "Leo", "Ida", "Tom", "Ava")]


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize("word", LEFT)
def test_who_stands_below_is_told(word: str, names: tuple[str, ...]) -> None:
    """They were made as all others."""
    roster = read_roster("\n".join((*names[:3], "", word, *names[3:])))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names[:3]]
    assert [(line.outcome, line.notes[0].key) for line in roster.lines[-2:]] == [
        (Outcome.HEADING, "roster.among_leavers")] * 2


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize("word", OF_A_DAY)
def test_below_a_word_that_may_be_of_the_day_each_is_asked_about(word: str, names: tuple[str, ...]) -> None:
    roster = read_roster("\n".join((*names[:3], "", word, *names[3:])))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names[:3]]
    assert [line.outcome for line in roster.lines[-2:]] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("line", ["Leavers: Tom Hill, Ava Berg", "Bajas: Tom Hill", "Départs : Tom, Ava"])
def test_who_stands_behind_the_word_is_asked_about(line: str) -> None:
    roster = read_roster(f"Mira Vost\nLeo Tarn\nIda Moss\n{line}")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
    assert [report.outcome for report in roster.lines][-1] is Outcome.LEFT_OUT


def test_the_part_ends_at_the_next_heading_and_at_an_empty_line() -> None:
    for end in ("New:", "", "Neu"):
        roster = read_roster(f"Mira Vost\nLeo Tarn\nIda Moss\nLeavers:\nTom Hill\n{end}\nAva Berg")
        assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida", "Ava"]


def test_a_table_has_such_a_row_too() -> None:
    roster = read_roster("Name\tGroup\nMira Vost\tRed\nLeo Tarn\tBlue\nIda Moss\tRed\nLeavers\t\nTom Hill\tRed")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "Present: Mira Vost, Leo Tarn\nAbsent: Ida Moss\nLeft: Tom Hill",
    "Leavers:\nMira Vost\nLeo Tarn\nIda Moss\nTom Hill",
    "Mira\nLeo\nIda\nTom", "Mira Left\nLeo Tarn\nIda Moss\nTom Hill", "Mira Baja\nLeo Tarn\nIda Moss\nTom Hill"])
def test_attendance_lists_of_leavers_and_names_stay(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ida", "Tom"]


@pytest.mark.parametrize("word", ["Leavers", "Salidas", "Sorties", "Abgänge", "Uscite", "Saídas"])
@pytest.mark.parametrize("row", ["\t{}\t\t\t\t", ",{},,,,"])
def test_the_word_may_stand_in_any_cell_of_its_row_and_rows_may_be_long(word: str, row: str) -> None:
    rows = ["1\tMira Vost\tx\ta\tb\tc", "2\tLeo Tarn\tx\ta\tb\tc", "3\tIda Moss\tx\ta\tb\tc"]
    sign = row[0]
    gone = "9\tTom Hill\tgone to Oak Hill\tby bus\tin May\tor June".replace("\t", sign)
    titles = "No.\tName\tA\tB\tC\tD"
    roster = read_roster("\n".join([*(each.replace("\t", sign) for each in (titles, *rows)),
                                    row.format(word), gone]))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
