"""What a line says to whoever reads the list is told from children whose names are such words elsewhere."""

from __future__ import annotations

import pytest

from namewright.roster.notes_to_readers import asks_kindly, before_a_request, greets, is_note, may_be_a_cry, may_greet
from namewright.roster.vocabulary import fold


def _words(text: str) -> list[str]:
    return fold(text).replace(":", " : ").split()


@pytest.mark.parametrize("text", ["Hi Jo,", "Ciao Rita, ecco la mia classe", "Olá!", "Olá, segue a lista", "Bonjour"])
def test_a_greeting(text: str) -> None:
    assert greets(_words(text), text)


@pytest.mark.parametrize("text", ["Ola Berntsen, no pork", "Mira Vost", "Ola Antonsen"])
def test_a_child_called_like_a_greeting(text: str) -> None:
    assert not greets(_words(text), text)


def test_a_greeting_before_a_word_that_is_no_known_name_is_asked_about() -> None:
    assert may_greet(["hallo", "leute"])
    assert not may_greet(["hallo", "mira"])


@pytest.mark.parametrize(("text", "note"), [
    ("Subs: please note", True), ("Note: bring a hat", True), ("Bitte nicht verteilen", True),
    ("Nota: no compartir", True), ("Bitte Hansen", False), ("Nota Kallis", False),
    ("Mira Vost – no photos please", False)])
def test_a_note_and_a_child(text: str, note: bool) -> None:
    assert is_note(_words(text), text) is note


@pytest.mark.parametrize(("text", "cry"), [
    ("Viel Spaß!", True), ("Bon courage !", True), ("Mira NEU!", False), ("Xobrel!", False), ("Viel Spaß", False)])
def test_a_cry_and_a_child_who_is_called(text: str, cry: bool) -> None:
    assert may_be_a_cry(text) is cry


def test_who_stands_before_a_wish_is_a_child() -> None:
    assert before_a_request("3. Mira Vost – no photos please") == "Mira Vost"
    assert before_a_request("Parents: no photos please") is None
    assert asks_kindly("no photos please")
    assert not asks_kindly("mira pleasence")
