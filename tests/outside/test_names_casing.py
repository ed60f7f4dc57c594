"""Letter case by the language of a name, held against Unicode's SpecialCasing.txt (its part that depends on language).

For Dutch, Italian, French and the names with Mc there is no such table: these rows are common practice, from memory.
"""

from __future__ import annotations

import unicodedata
from pathlib import Path

import pytest

from namewright.names.casing import mend_case
from namewright.roster.parsing import read_roster

TABLE = Path(__file__).parents[1] / "data" / "special-casing-by-language.txt"
_ACCENT_ABOVE = "\u0301"


def _rows() -> list[tuple[str, str, str, str, str]]:
    """Return a letter, its small form, its form in a title, the language, and the condition of every row."""
    rows = []
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        code, _, _ = line.partition("#")
        if ";" in code:
            upper, lower, title, _, condition, *_ = (cell.strip() for cell in code.split(";"))
            language, _, where = condition.partition(" ")
            rows.append((*("".join(chr(int(one, 16)) for one in cell.split()) for cell in (upper, lower, title)),
                         language, where))
    return rows


ROWS = [row for row in _rows() if row[0].isalpha()]


def test_the_table_has_the_three_languages() -> None:
    assert {row[3] for row in ROWS} == {"lt", "tr", "az"}
    assert len(ROWS) == 12


@pytest.mark.parametrize(("letter", "lower", "title", "language", "where"), ROWS,
                         ids=[f"{row[3]} {unicodedata.name(row[0])}" for row in ROWS])
def test_each_row_holds_in_a_name(letter: str, lower: str, title: str, language: str, where: str) -> None:
    """Inside a name in capitals a letter takes its small form, at the front of one in small letters its title form."""
    above = _ACCENT_ABOVE if where == "More_Above" else ""
    if letter.isupper():
        written = mend_case(f"A{letter}{above}RA", language=language)
        assert unicodedata.normalize("NFD", written) == unicodedata.normalize("NFD", f"A{lower}{above}ra")
    else:
        assert mend_case(f"{letter}ra", language=language) == f"{title}ra"


PRACTICE = [
    ("SAYIN", "", "tr", "Sayın"), ("IRMAK", "", "az", "Irmak"), ("SAYIN", "", "", "Sayin"),
    ("IJSBRAND", "", "nl", "IJsbrand"), ("IJE", "", "nl", "IJe"), ("IJEOMA", "", "", "Ijeoma"),
    ("IJSBRAND", "", "de", "Ijsbrand"),
    ("MIRA", "MCKAY", "", "McKay"), ("MIRA", "MCKAY", "en", "McKay"), ("MIRA", "MCISZEWSKI", "pl", "Mciszewski"),
    ("MIRA", "MACKENZIE", "en", "Mackenzie"), ("MIRA", "O'NEIL", "", "O'Neil"),
    ("MIRA", "DE LA CRUZ", "es", "de la Cruz"), ("MIRA", "VAN DER BERG", "nl", "van der Berg"),
    ("MIRA", "D'ANGELO", "it", "D'Angelo"), ("MIRA", "DE LUCA", "it", "De Luca"),
    ("MIRA", "DELL'ORTO", "it", "Dell'Orto"), ("MIRA", "DE LA FONTAINE", "fr", "de La Fontaine"),
    ("MIRA", "VON DER HEIDE", "de", "von der Heide"), ("MIRA", "DOS SANTOS", "pt", "dos Santos"),
    ("ÅSE", "", "nb", "Åse"), ("JĖ ÍRA", "", "", "Jė Íra"),
]


@pytest.mark.parametrize(("given", "family", "language", "expected"), PRACTICE,
                         ids=[f"{row[2] or 'unsaid'} {row[1] or row[0]}" for row in PRACTICE])
def test_names_as_people_of_a_language_write_them(given: str, family: str, language: str, expected: str) -> None:
    assert mend_case(family or given, family=bool(family), language=language) == expected


@pytest.mark.parametrize("title", ["Language", "Idioma", "Sprache", "Langue", "Lingua", "Língua"])
@pytest.mark.parametrize("said", ["tr", "tr-TR"])
def test_a_column_tells_the_language_of_a_name(title: str, said: str) -> None:
    """Case follows it, child by child."""
    children = read_roster(f"First name,Last name,{title}\nSAYIN,IRMAK,{said}\nSAYIN,IRMAK,").children
    assert [(child.given, child.family) for child in children] == [("Sayın", "Irmak"), ("Sayin", "Irmak")]


def test_what_holds_for_the_class_is_followed_where_a_row_says_nothing() -> None:
    text = "First name,Last name,Language\nSAYIN,YILMAZ,\nIJSBRAND,VAN DER BERG,nl"
    children = read_roster(text, names_in="tr").children
    assert [(child.given, child.family) for child in children] == [
        ("Sayın", "Yılmaz"), ("IJsbrand", "van der Berg")]
