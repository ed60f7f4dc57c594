"""What the engine says comes in the language of the screen. Each reason is made by the engine, none is written here."""

from __future__ import annotations

import string
from importlib import resources

import pytest
from webhelp import Visitor, finished

from namewright.classbook.keys import checked_setting
from namewright.web.said import in_tongue, sentences

TONGUES = tuple(file.name.removesuffix(".toml") for file in
                resources.files("namewright.web").joinpath("words", "said").iterdir())
ENGLISH = ("Left out", "choose", "needs", "was read", "Read “", "class default", "no letter", "our letters", "nothing")
WRONG = (("line_height", "900"), ("letter_spacing", "40"), ("rows", "99"), ("letters", "a=purple"),
         ("letters", "b=old"), ("letters", "slant=40"), ("hand", "third"),
         ("ladder", "dots wide-dots start-dots marked-dots first-letter"),
         ("bold_baseline", "perhaps"))
MESSY = """Room 9 - the Alder class
Tamsel, Ottilka (wears glasses)
BRANE, KIRRIN
Íñigo Ondway Marsh
Íñigo Ondway Marsh
Kasimir Dolt 555-0134-77
Mirel Vost & Bo Vost
1234
Page 2
"""


@pytest.mark.parametrize("tongue", TONGUES)
def test_a_sentence_keeps_what_it_is_about(tongue: str) -> None:
    """A translation names nothing that its English does not have, so that filling it in can never fail."""
    for english, own in sentences(tongue).items():
        fields, given = ({name for _, name, _, _ in string.Formatter().parse(text) if name} for text in (own, english))
        assert fields <= given, english


@pytest.mark.parametrize("tongue", TONGUES)
@pytest.mark.parametrize(("key", "text"), WRONG)
def test_a_setting_that_cannot_be_is_said_in_every_language(tongue: str, key: str, text: str) -> None:
    """The class file’s own words are in the table as they are said, with the numbers kept."""
    with pytest.raises(ValueError, match=r"\w") as error:
        checked_setting(key, text, of_class=False)
    own = in_tongue(str(error.value), tongue)
    assert own != str(error.value)
    assert not any(word in own for word in ENGLISH)
    assert all(number in own for number in ("900", "80") if number in str(error.value))


@pytest.fixture
def spanish(visitor: Visitor) -> Visitor:
    """Somebody who has chosen Spanish."""
    visitor.post("/language", {"tongue": "es", "back": "/"})
    return visitor


def test_reasons_on_spanish_screens_are_spanish(spanish: Visitor) -> None:
    """A letter that we lack, a name too wide and a wrong setting are told in Spanish wherever they are met."""
    long = "Maximiliana" * 4
    spanish.keep(f"春 Brane\n{long} Vost\nKirrin Dolt\n")
    answers = [spanish.get(finished(spanish, spanish.post("/print", {"what": ["sheets", "cards"], "who": "all",
                                                                     "line_height": "30"}))),
               spanish.get("/child/1/card.pdf"), spanish.get("/picture/1/page.svg"), spanish.get("/child/1/sheet.pdf"),
               spanish.post("/now", {"letters": "天", "size": "sheet"}),
               spanish.post("/class/choices", {"letters.slant": "40"}),
               spanish.post("/child/3/lines", {"line_height": "900", "after": "0"}),
               spanish.post("/child/3/seen", {"day": "ayer", "letter": "0", "once": "a"})]
    for answer, words in zip(answers, (*["Nuestras letras no tienen"] * 5, "elija de 0 a 15", "elija de 8 a 80",
                                       "no es un día"), strict=True):
        assert words in answer.text
        assert not any(english in answer.text for english in ENGLISH)
    assert "elija una línea menos alta" in answers[0].text


def test_notes_about_lines_are_spanish(spanish: Visitor) -> None:
    """How each line of a messy list was read is told in Spanish."""
    page = spanish.post("/class/list/read", {"text": MESSY, "based": "0", "practise": "given"}).text
    for words in ("así que se leyó como título.", "Si es un niño, escríbalo", "todo con el mismo tipo de letra",
                  "Tiene varios nombres",
                  "El mismo nombre está en la línea 4", "un número de teléfono", "Solo tiene números",
                  "«Íñigo» como nombre, «Ondway» como segundo nombre (no se usó) y «Marsh» como apellido"):
        assert words in page
    assert not any(english in page for english in ENGLISH)


def test_what_has_no_words_is_said_in_english() -> None:
    """A sentence that is not in the table, and a language without one, keep the engine’s own."""
    assert in_tongue("Nobody has translated this yet.", "es") == "Nobody has translated this yet."
    assert in_tongue("It reads as a page number.", "xx") == "It reads as a page number."
