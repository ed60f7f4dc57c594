"""Days and marks behind names are told and practised by nobody; names that are such words stay."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

NAMES = ["Xobrel Vank", "Zuthe Menk", "Rin Tovel", "Mira Vost"]
BEHIND = [
    " P P A P P| P P P P P| A x P x P| P P P P tardy", ", Mi Do Fr|, Mo Di|, Mo Di Mi|, Mi Do Fr",
    " Mo-Fr Mo| Mo, Di| Di/Do| Mo Mi Fr", " MWF| TTh| M-F| MWF", ", lun mar mié|, jue vie|, lun mié|, mar jue",
    ", lun. mer.|, mar. jeu.|, lun. ven.|, mer. jeu.", ", lun gio|, mar mer|, gio ven|, lun ven",
    ", seg qua|, ter qui|, seg sex|, qua sex", " ✓ ✓ – ✓| ✓ – – ✓| ✓ ✓ ✓ ✓| – ✓ ✓ ✓",
]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("known", [True, False])
@pytest.mark.parametrize("behind", BEHIND)
def test_days_and_marks_are_taken_off_and_told(behind: str, known: bool) -> None:
    names = ["Mira Vost", "Tilo Tarn", "Anna Rey", "Ben Quill"] if known else NAMES
    roster = read_roster("\n".join(map("".join, zip(names, behind.split("|"), strict=True))))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert all(report.notes for report in roster.lines)


def test_a_given_name_alone_before_a_comma() -> None:
    assert practised("Xobrel, Mi Do Fr\nZuthe, Mo Di\nRin, Mo Di Mi") == ["Xobrel", "Zuthe", "Rin"]


@pytest.mark.parametrize("text", ["Kim So Do\nPark Mi Mar\nLee Do Mi", "Mira V T\nTilo A B\nAnna M R",
                                  "Mira Do\nTilo So\nAnna Mar", "Mira Vost\nTilo Tarn\nAnna Rey\nKim Do So"])
def test_names_that_are_such_words_stay(text: str) -> None:
    roster = read_roster(text)
    assert len(roster.children) == len(text.splitlines())
    assert not any(note.key == "roster.remark" for report in roster.lines for note in report.notes)


@pytest.mark.parametrize("days", ["Mon Tue Wed", "lun mar mié", "lun. mar. mer.", "Mo Di Mi", "lun mar mer",
                                  "seg ter qua"])
@pytest.mark.parametrize("sign", ["\t", ","])
def test_days_over_the_columns_of_a_table_are_titles(days: str, sign: str) -> None:
    """With nothing over the names, and few rows; columns of names under days are of helpers."""
    roster = read_roster("\n".join(sign.join(row) for row in (
        ["", *days.split()], ["Xobrel Vank", "x", "", "x"], ["Zuthe Menk", "x", "x", "x"])))
    assert [child.practice for child in roster.children] == ["Xobrel", "Zuthe"]
    assert roster.lines[0].outcome is Outcome.HEADER


@pytest.mark.parametrize("text", ["Xobrel Vank | Chess Mon\nZuthe Menk | Music Tue",
                                  "Xobrel | Schach Mo\nZuthe | Musik Di\nRin | Kunst Mi",
                                  "Mia Vost | Ajedrez lun\nLeo Tarn | Arte mar"])
def test_what_is_done_on_a_day_is_no_name(text: str) -> None:
    assert practised(text) == [line.split()[0] for line in text.splitlines()]


@pytest.mark.parametrize("pair", ["FM", "wm", "FG", "HF"])
@pytest.mark.parametrize("date", ["", " 26/04/2020", " 26.4.2020", " 2020-04-26"])
def test_a_letter_for_girl_or_boy_is_no_part_of_a_name(pair: str, date: str) -> None:
    """Be the family in front in capitals, and a title with such a letter above."""
    lines = [f"VANK Xobrel {pair[0]}{date}", f"MENK Zuthe {pair[1]}{date}", f"TOVEL Rin {pair[0]}{date}",
             f"VOST Mira {pair[1]}{date}"]
    assert practised("\n".join(lines)) == ["Xobrel", "Zuthe", "Rin", "Mira"]
    assert practised("\n".join(("Gruppe M", *lines))) == ["Xobrel", "Zuthe", "Rin", "Mira"]


@pytest.mark.parametrize("letters", ["FFFF", "FKFM", "ABAB"])
def test_letters_that_may_be_of_a_name_stay(letters: str) -> None:
    """One letter alone without a date, or letters that are no pair for girls and boys."""
    names = ["Xobrel Ada", "Zuthe Una", "Rin Ola", "Mira Ida"]
    roster = read_roster("\n".join(f"{name} {letter}" for name, letter in zip(names, letters, strict=True)))
    assert not any(note.key == "roster.remark" for report in roster.lines for note in report.notes)


@pytest.mark.parametrize("said", ["starts Monday", "moved 2/3", "arrive lundi", "abgemeldet", "saiu da escola"])
def test_what_stands_between_stars_is_a_remark(said: str) -> None:
    roster = read_roster(f"1. Mira Vost\n2. Xobrel Quill *{said}*\n3. Tilo Tarn\n4. Anna Berg")
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Tilo", "Anna"]
    assert any(said in str(note) for note in roster.lines[1].notes)


def test_a_name_between_stars_stays_as_it_is_typed() -> None:
    assert "*Mia*" in read_roster("Mirabel Vost *Mia*\nTilo Tarn").lines[0].text


@pytest.mark.parametrize("said", [
    ("she/her", "he/him"), ("ela/dela", "ele/dele"), ("sie/ihr", "er/ihm"), ("lei", "lui"), ("elle", "il"),
    ("ella", "él"), ("(él)", "ella")])
@pytest.mark.parametrize("sign", [" ", ", ", ": ", " - "])
@pytest.mark.parametrize("names", [
    ("Zoé", "Xobrel", "Prince", "Mira"), ("Zoé Vost", "Xobrel Tarn", "Li Elm", "Mira Moss")])
def test_what_a_child_is_called_by_is_no_name(said: tuple[str, str], sign: str, names: tuple[str, ...]) -> None:
    roster = read_roster("\n".join(f"{name}{sign}{said[at % 2]}" for at, name in enumerate(names)))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert all(any(note.key in ("roster.remark", "roster.signs") for note in line.notes) for line in roster.lines)


@pytest.mark.parametrize("months", [("juin", "mai", "avril"), ("June", "May", "April"), ("enero", "mayo", "abril")])
@pytest.mark.parametrize("sign", [" - ", " – ", ": "])
@pytest.mark.parametrize("names", [("Zoé", "Luc", "Xobrel"), ("Zoé Vost", "Luc Tarn", "Xobrel Elm")])
def test_the_month_of_a_birthday_before_a_name_is_no_child(
        months: tuple[str, ...], sign: str, names: tuple[str, ...]) -> None:
    text = "\n".join(f"{month}{sign}{name}" for month, name in zip(months, names, strict=True))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


def test_a_month_over_several_children_heads_them() -> None:
    roster = read_roster("juin - Zoé, Luc\nmai - Luca\navril - Mia, Tom")
    assert [child.practice for child in roster.children] == ["Zoé", "Luc", "Luca", "Mia", "Tom"]
