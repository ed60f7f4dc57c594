"""Whom a letter about a list is for, who signs it and the heads of what it quotes are no children in silence."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.letters import greetings
from namewright.roster.parsing import read_roster

NAMES = ["Mira Vost", "Tilo Tarn", "Anna Berg", "Ben Koch"]
LETTERS = [
    ("Cara {},", "segue a lista da turma:", "Cumprimentos,", ("De", "Enviada"), "podes mandar-me a lista da turma?"),
    ("Caro {},", "ecco l'elenco della sezione:", "Cordiali saluti", ("Da", "Inviato"), "mi mandi il mio elenco?"),
    ("Querida {}:", "te envío la lista:", "Un saludo,", ("De", "Enviado"), "¿me mandas la lista de mi clase?"),
    ("Chère {},", "voici la liste :", "Cordialement,", ("De", "Envoyé"), "peux-tu m'envoyer la liste ?"),
    ("Hallo {},", "anbei die Liste:", "Viele Grüße", ("Von", "Gesendet"), "kannst du mir die Liste schicken?"),
    ("Hi {},", "as promised, your class:", "Best wishes,", ("From", "Sent"), "could you send me my class list?"),
    ("Beste {},", "hierbij de lijst:", "Groeten,", ("Van", "Verzonden"), "kun je me mijn groepslijst sturen?"),
]


@pytest.mark.parametrize(("hi", "here", "bye", "heads", "ask"), LETTERS)
@pytest.mark.parametrize("headed", [True, False])
def test_only_the_list_of_a_thread_are_children(hi: str, here: str, bye: str, heads: tuple[str, str], ask: str,
                                                headed: bool) -> None:
    head = [f"{heads[0]}: Ida Lund <ida.lund@school.example>", f"{heads[1]}: 17.02.25", ""] if headed else []
    asks = f"{hi.format('Ida').rstrip(',:')}, {ask}"
    quoted = [f"{heads[0]}: Petra Moss", f"{heads[1]}: 16.02.25", "", asks, "Petra"]
    text = [*head, hi.format("Petra"), here, "", *NAMES, "", bye, "Ida Lund", "", *(f"> {line}" for line in quoted)]
    children = read_roster("\n".join(text)).children
    assert [(child.given, child.family) for child in children] == [tuple(name.split()) for name in NAMES]


@pytest.mark.parametrize("lines", [
    ["Cara Vost,", "Mira Tarn,", "Anna Berg,"], ["Cara Vost", "Mira Tarn"], ["Cara Vost, nuts", "Mira Tarn"],
    ["Mira Tarn", "Cara Vost,", "no nuts"], ["Cara Vost,", "Mira Tarn", "Anna Berg", "Ben Koch"], ["Van: nuts"],
    ["Liebe Kollegin, meine Kinder heißen Mira, Tilo und Anna.", "Viele Grüße"]])
def test_children_called_as_a_greeting_stay(lines: list[str]) -> None:
    assert list(greetings(lines)) == []


def test_a_greeting_that_stands_apart_is_asked_about() -> None:
    roster = read_roster("Cara Ana,\n\nSeguem os nomes das crianças.\n\nBruno Lima\nTeresa Dias\nRui Melo")
    assert [child.practice for child in roster.children] == ["Bruno", "Teresa", "Rui"]
    assert roster.lines[0].outcome is Outcome.LEFT_OUT


def test_a_name_with_a_comma_amid_others_is_a_child() -> None:
    roster = read_roster("Cara Lima,\nBruno Lima,\nTeresa Dias,\nRui Melo,")
    assert [child.practice for child in roster.children] == ["Cara", "Bruno", "Teresa", "Rui"]
