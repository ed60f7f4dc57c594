"""What stands behind the names of a list and is no part of them, known by the other lines."""

from __future__ import annotations

import pytest

from namewright.roster.remarks import has_a_remark, parted_tail, remarks_by_comma, says_the_same_by_comma, with_remarks

NAMES = ["Mira", "Gaspar", "Nuno", "Lotte", "Ivo", "Senta"]


def lines(sign: str, *behind: str) -> list[str]:
    return [f"{name}{sign}{behind[at % len(behind)]}" for at, name in enumerate(NAMES)]


@pytest.mark.parametrize("sign", [" – ", ": ", " ("])
def test_few_words_that_come_again_behind_a_sign_are_remarks(sign: str) -> None:
    texts = lines(sign, "Äpfel", "Trauben")
    texts = [f"{text})" for text in texts] if "(" in sign else texts
    assert with_remarks(texts) == frozenset(texts)


@pytest.mark.parametrize("behind", [("Mia", "Leo"), ("Vost", "Tarn", "Quill", "Rey", "Elm", "Drun")])
def test_given_names_and_words_of_each_child_are_none(behind: tuple[str, ...]) -> None:
    assert with_remarks(lines(" – ", *behind)) == frozenset()
    assert not says_the_same_by_comma(lines(", ", *behind))


def test_the_last_sign_parts_what_stands_behind_a_name() -> None:
    assert parted_tail("Mira Vost – at home: Arabic") == ("Mira Vost – at home", ":", "arabic")
    assert parted_tail("Mira Vost (Äpfel)") == ("Mira Vost", "(", "apfel")
    assert parted_tail("Mira Vost") is None


def test_the_same_words_or_small_ones_behind_commas_are_remarks() -> None:
    assert says_the_same_by_comma(lines(", ", "Äpfel", "Trauben"))
    assert says_the_same_by_comma(lines(", ", "takes the bus", "walks", "nut allergy", "new", "with Oma", "late"))


def test_a_comma_behind_whole_names_parts_remarks_where_others_have_none() -> None:
    whole = ["Katla Pruner", "Kasimir Dolt", "Wenna Praske", "Theo Ashgrove"]
    assert remarks_by_comma([*whole, "Mirel Vost, Kvothe"])
    assert not remarks_by_comma(["Pruner, Katla", "Dolt, Kasimir", "Praske, Wenna"])


@pytest.mark.parametrize(("text", "is_one"), [("Mira, Äpfel", True), ("Mira, nuts", True), ("Mira, Leo", False),
                                              ("Mira Vost, nuts", False), ("Mira", False)])
def test_a_remark_behind_one_name(text: str, is_one: bool) -> None:
    assert has_a_remark(text) is is_one
