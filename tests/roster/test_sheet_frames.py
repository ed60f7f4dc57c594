"""Numbers of rows, letters of columns and tabs of a spreadsheet's screen are no part of the list."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

TITLES = [("Name", "Group", "Notes"), ("Nombre y apellidos", "Grupo", "Notas"), ("Name", "Gruppe", "Notizen"),
          ("Nome e cognome", "Gruppo", "Note")]
ROWS = [("Mira Vost", "Owls", "glasses"), ("Xobrel Quix", "Bears"), ("Leo Tarn", "Owls"), ("Zendar Pluum", "Foxes")]


@pytest.mark.parametrize("sign", ["\t", " | ", "   "])
@pytest.mark.parametrize("titles", TITLES)
@pytest.mark.parametrize("framed", [True, False])
def test_the_frame_of_a_sheet_is_nobody(titles: tuple[str, ...], sign: str, *, framed: bool) -> None:
    rows = [sign.join((str(at), *row)) for at, row in enumerate((titles, *ROWS), 1)]
    above = ["A1   fx   Name", sign.join(("", "A", "B", "C")).strip(" ")] if framed else []
    below = ["6", "7", "Tabelle1   Tabelle2   +"] if framed else []
    roster = read_roster("\n".join([*above, *rows, *below]))
    assert [(child.given, child.family) for child in roster.children] == [
        ("Mira", "Vost"), ("Xobrel", "Quix"), ("Leo", "Tarn"), ("Zendar", "Pluum")]


def test_given_and_family_names_in_columns() -> None:
    rows = ["1   First name   Last name   Group", "2   Mira   Vost   Owls", "3   Xobrel   Quix   Bears",
            "4   Leo   Tarn   Owls", "5   Zendar   Pluum   Bears"]
    roster = read_roster("\n".join(["A   B   C", *rows]))
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo", "Zendar"]


def test_numbers_of_children_stay() -> None:
    """They are under a title of their own, or count no further from line to line."""
    text = "No\tName\tBus\n1\tMira Vost\t4\n2\tLeo Tarn\t5\n3\tIda Moss\t4"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ida"]
    assert [child.practice for child in read_roster("1  Mira Vost\n2  Leo Tarn\n3  Ida Moss").children] == [
        "Mira", "Leo", "Ida"]
