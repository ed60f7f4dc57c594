"""Names in a sentence: runs of words with capitals that are no adults, and the lines that hold them."""

from __future__ import annotations

import pytest

from namewright.roster.names_in_text import Children, are_joined, bare_word, has_capital, holds, names_in, openers

SAID = [
    ("Please seat Leo away from Zoe.", ["Leo", "Zoe"]),
    ("Mira Vost and Tilo help", ["Mira Vost", "Tilo"]),
    ("Call Mrs. Ferrow if Leo runs", ["Leo"]),
    ("Bei Fragen hilft Anna am Montag", ["Fragen", "Anna"]),
    ("Anna (EpiPen) leaves", ["Anna"]),
]


@pytest.mark.parametrize(("text", "names"), SAID, ids=[row[0] for row in SAID])
def test_runs_of_capitals_without_adults_and_days(text: str, names: list[str]) -> None:
    assert [name.typed for name in names_in(text)] == names


def test_who_has_a_line_is_known_by_the_words_that_stand_on_it_together() -> None:
    children = Children([(0, "Mira Vost"), (1, "Tilo Tarn"), (2, "Anna")])
    assert children.hold(["mira", "vost"])
    assert not children.hold(["mira", "tarn"])
    assert children.are(["anna"])
    assert not children.are(["mira"])
    assert [holds(children, name) for name in names_in("seat Mira Tarn by Xobrel Tarn")] == [True, False]


def test_and_alone_joins_two_names() -> None:
    for text, joined in (("Mira und Tilo helfen", True), ("Mira hilft Tilo heute", False)):
        one, two = list(names_in(text))[:2]
        assert are_joined(one, two, text.split()) is joined


def test_words_are_bare_of_signs_and_of_whose_they_are() -> None:
    assert [bare_word(word) for word in ("“Mira’s", "Zoë,", "(Leo)")] == ["mira", "zoe", "leo"]
    assert [has_capital(word) for word in ("“Mira", "leo", "3", "")] == [True, False, False, False]
    assert openers("If the Leo runs") == len(["If", "the"])


def test_a_child_called_as_a_month_is_named_in_a_sentence() -> None:
    """August with an initial was taken for the month, and the child was lost."""
    assert [name.words[0] for name in names_in("August T. comes with big brother")] == ["august"]
    assert list(names_in("In August we have a party")) == []
