"""Names behind words to the parents are the class; these words, the letter below and whoever signs it are not."""

from __future__ import annotations

import pytest

from namewright.roster.parents_of import from_parents_of
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

OPENINGS = [("Dear parents of", "and"), ("To the families of", "and"), ("Dear parents and carers of", "and"),
            ("A las familias de", "y"), ("Chers parents de", "et"), ("Aux familles de", "et"),
            ("Liebe Eltern von", "und"),
            ("An die Eltern von", "und"), ("Alle famiglie di", "e"), ("Cari genitori di", "e"), ("Caros pais de", "e"),
            ("Às famílias de", "e")]
NAMES = [["Mia Vost", "Leo Berg", "Ava Tarn", "Tom Reed"], ["Xobrel V.", "Tarnul D.", "Mogat L.", "Outhna P."],
         ["Xobrel Vemkassen", "Tarnul Dofrinov", "Mogat Lenviberg"], ["Xobrel", "Tarnul", "Mogat", "Outhna", "Zirm"]]


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize(("opening", "and_"), OPENINGS)
def test_each_child_named_in_a_letter_s_opening(opening: str, and_: str, names: list[str]) -> None:
    letter = f"{opening} {', '.join(names[:-1])} {and_} {names[-1]},\n\nsee you.\n\nBest wishes,\nLeonor Cunha"
    assert [child.practice for child in read_roster(letter).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("text", [
    "Dear parents of Mia Vost and Leo Berg,", "Dear parents of the class, Mia is new",
    "Dear parents of the children in Room 4, Room 5 and Room 6,", "Parents of Mia – Ana Vost, Jo Vost, Al Vost",
    "Parents of Mia: Ana Vost, Jo Vost, Al Vost",
    "The parents of Mia, who are called Ana and Jo, will help"])
def test_lines_that_may_name_others_stay(text: str) -> None:
    assert from_parents_of([Line(text, 0)]) == [Line(text, 0)]
