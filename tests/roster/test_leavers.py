"""Who is said to have left is told and not made, in six languages; names, titles and lists of leavers stay."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

GONE = ["left us", "moved away", "se ha mudado", "baja", "a déménagé", "weggezogen", "ausgetreten",
        "trasferito", "mudou de cidade", "left us in May", "weggezogen im März", "moved away 3/4"]
FORMS = ["{}: Owls → {}", "{} – Owls -> {}", "{} > {}", "{} => {}", "{}\tOwls\t{}", "{};Owls;{}", "{} | {} | 3"]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("gone", GONE)
def test_who_has_left_is_told(gone: str, form: str) -> None:
    names = [("Mira Vost", "Owls"), ("Xobrel Quix", gone), ("Leo Tarn", "Bears"), ("Ida Moss", "Bears")]
    roster = read_roster("\n".join(form.format(name, what) for name, what in names))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
    assert [(line.outcome, line.notes[0].key) for line in roster.lines if "Xobrel" in line.text] == [
        (Outcome.HEADING, "roster.has_left")]


@pytest.mark.parametrize("text", ["Mira;Parti\nLeo;Tarn\nIda;Moss", "Mira Vost\nLeo Parti\nIda Moss",
                                  "Parti, Mira\nTarn, Leo\nMoss, Ida", "Name;Left us\nMira Vost;\nLeo Tarn;\nIda Moss;",
                                  "Mira Vost (moved away)\nLeo Tarn – baja\nIda Moss",
                                  "Mira Vost → left us\nLeo Tarn → left us\nIda Moss → left us"])
def test_names_titles_and_a_list_of_leavers_stay(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ida"]


def test_where_two_may_stand_it_is_asked() -> None:
    roster = read_roster("Mira Vost, Ida Moss → moved away\nLeo Tarn\nXobrel Quix")
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [
        "Mira Vost, Ida Moss → moved away"]


@pytest.mark.parametrize("gone", ["gone", "parti", "abgemeldet", "saiu", "se fue"])
def test_what_may_be_of_the_day_is_asked(gone: str) -> None:
    roster = read_roster(f"Mira Vost\tbus 2\nXobrel Quix\t{gone}\nLeo Tarn\twalks")
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [f"Xobrel Quix\t{gone}"]
