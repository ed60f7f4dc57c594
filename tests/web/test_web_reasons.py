"""What the engine says comes in the language of the screen. Each reason is made by the engine, none is written here."""

from __future__ import annotations

import pytest
from webhelp import Visitor, finished

ENGLISH = ("Not used", "hoose", "needs", "was read", "as the class", "no letter", "ur letters", "othing")
MESSY = """Room 9 - the Alder class
Tamsel, Ottilka (wears glasses)
BRANE, KIRRIN
Íñigo Ondway Marsh
Íñigo Ondway Marsh
Kasimir Dolt 555-0134-77
Mirel / Bo
1234
Page 2
"""


@pytest.fixture
def spanish(visitor: Visitor) -> Visitor:
    """Somebody who has chosen Spanish."""
    visitor.post("/language", {"language": "es", "back": "/"})
    return visitor


def test_reasons_on_spanish_screens_are_spanish(spanish: Visitor) -> None:
    """A letter that we lack, a name too wide and a wrong setting are told in Spanish wherever they are met."""
    long = "Maximiliana" * 4
    spanish.keep(f"春 Brane\n{long} Vost\nKirrin Dolt\n")
    answers = [spanish.get(finished(spanish, spanish.post("/print", {"what": ["sheets", "cards"], "who": "all",
                                                                     "draft-class": "line_height=30"}))),
               spanish.get("/child/1/card.pdf"), spanish.get("/picture/1/page.svg"), spanish.get("/child/1/sheet.pdf"),
               spanish.post("/now", {"letters": "天", "size": "sheet"}),
               spanish.post("/class/choices", {"letters.slant": "40"}),
               spanish.post("/child/3/lines", {"line_height": "900", "after": "0"}),
               spanish.post("/child/3/seen", {"day": "ayer", "letter": "0", "once": "a"})]
    for answer, words in zip(answers, ("Nuestras letras no pueden escribir",
                                       *["Nuestras letras no"] * 4, "Elija de 0 a 15", "Elija de 8 a 80",
                                       "no es un día"), strict=True):
        assert words in answer.text
        assert not any(english in answer.text for english in ENGLISH)
    assert "Elija una línea menos alta" in answers[0].text


def test_notes_about_lines_are_spanish(spanish: Visitor) -> None:
    """How each line of a messy list was read is told in Spanish."""
    page = spanish.post("/class/list/read?part=lines", {"text": MESSY, "based": "0", "practise": "given"}).text
    for words in ("así que se leyó como título.", "Si es un niño o una niña, escriba",
                  "todo con el mismo tipo de letra", "Hay 2 nombres en esta línea. ¿Son niños?", "Separar en 2",
                  "El mismo nombre está en la línea 4", "un número de teléfono", "Solo tiene números",
                  "«Íñigo» como nombre y «Ondway Marsh» como apellido"):
        assert words in page
    assert not any(english in page for english in ENGLISH)
