"""Who is named in a line that says something."""

from __future__ import annotations

import pytest

from namewright.roster.said import is_said, names_said

SAID = [
    ("Leo was picked up by Grandma Rose at noon", [("Leo", "")]),
    ("Please call Mrs. Vale about Ottilie Keller", [("Ottilie", "Keller")]),
    ("Heute hat Frieda Geburtstag", [("Frieda", "")]),
    ("La mochila de Lucía está en el aula", [("Lucía", "")]),
    ("Chloé mange chez sa mamie le mardi", [("Chloé", "")]),
    ("Giulia esce prima il venerdì", [("Giulia", "")]),
    ("Beatriz sai mais cedo com a avó", [("Beatriz", "")]),
    ("Mateo's jacket is in the hall", [("Mateo", "")]),
    ("going to be absent friday mateo", [("mateo", "")]),
    ("GOES HOME WITH GRANDMA", []), ("Leaves early on Mondays with grandma", []), ("Remember library books", []),
]


@pytest.mark.parametrize(("text", "names"), SAID)
def test_known_names_are_found_in_what_is_said(text: str, names: list[tuple[str, str]]) -> None:
    """Grown-ups, days and nouns with a capital are none; a family name stands behind its given name."""
    assert is_said(text)
    assert names_said(text) == names


@pytest.mark.parametrize("text", ["Mia Lange", "mia rose lange", "Ana de la Cruz", "wears glasses", "Juan y Medio",
                                  "LENA VOST", "Bluebirds - Ms. Ferrow"])
def test_names_and_short_remarks_are_not_said(text: str) -> None:
    assert not is_said(text)
