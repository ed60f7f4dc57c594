"""Adults who may fetch a child, behind its name or below it, are told and never practised; children are."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

KIN = [("mum", "grandad", "godmother"), ("madre", "abuelo", "madrina"), ("mère", "papi", "marraine"),
       ("Mutter", "Opa", "Patentante"), ("mamma", "nonno", "vicina"), ("mãe", "avô", "madrinha")]
ROWS = [("Mira Vost", "Rosa Vost", "Tom Oak"), ("Xobrel Quix", "Marta Quix", "Zorin Pell"),
        ("Leo Tarn", "Anna Tarn", "Ulmo Orn"), ("Ida Moss", "Julia Moss", "Bela Lund")]
CHILDREN = ["Mira", "Xobrel", "Leo", "Ida"]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("kin", KIN)
@pytest.mark.parametrize("form", [
    "{0}: {1} ({3}) / {2} ({4})", "{0} – {1} ({3}), {2} ({5})", "{0}: {1} ({3}) 555-0104", "{0} → {1}, {3} / {2}, {4}"])
def test_adults_behind_a_child_are_told(kin: tuple[str, str, str], form: str) -> None:
    text = "\n".join(form.format(*row, *kin) for row in ROWS)
    assert practised(text) == CHILDREN
    assert all(report.notes for report in read_roster(text).lines)


@pytest.mark.parametrize("kin", KIN)
@pytest.mark.parametrize("form", [
    "{0}\n   {1} ({3}) 555-0104\n   {2} ({5}) 555-0117\n", "{0}\n- {1}, {3}\n- {2}, {4}",
    "{0}\n{1} ({3})\n{2} ({4})\n"])
def test_adults_below_a_child_are_told(kin: tuple[str, str, str], form: str) -> None:
    text = "\n".join(form.format(*row, *kin) for row in ROWS)
    assert practised(text) == CHILDREN
    assert not any(report.child for report in read_roster(text).lines if any(word in report.text for word in kin))


def test_a_word_that_is_said_of_a_child_makes_no_adult_of_it() -> None:
    assert practised("Mira Vost (new)\n  Rosa Vost (mum)\nLeo Tarn\n  Anna Tarn (mum)\n  Bo Lund (coach) 555-0104\n"
                     "Ida Moss\n  Julia Moss (aunt)") == ["Mira", "Leo", "Ida"]
    assert practised("Katherine Moss (Katie): Julia Moss (mum)\nMira Vost: Rosa Vost (aunt)\n"
                     "Leo Tarn: Anna Tarn (mum)\nIda Bell") == ["Katie", "Mira", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "Owls\nMira Vost (Oma)\nLeo Tarn (Mama)\n\nFoxes\nAva Lind (Papa)\nKian Moss (Oma)\n\nBears\nIda Moll (Oma)",
    "Eulen:\nMira Vost (Oma)\nLeo Tarn (Mama)\n\nFüchse:\nAva Lind (Papa)\nKian Moss (Oma)\n\nBären:\nIda Moll (Oma)",
    "Violet\n  Mira Vost (mum)\n  Leo Tarn (dad)\nRose\n  Ava Lind (aunt)\n  Kian Moss (dad)\nIris\n  Ida Moll (mum)",
    "Rote Gruppe: Mira (Mama), Leo (Oma)\nBlaue Gruppe: Ava (Papa), Kian (Oma)\nGrüne Gruppe: Ida (Mama)"])
def test_children_below_a_group_stay_with_who_fetches_them(text: str) -> None:
    assert {"Mira", "Leo", "Ava", "Kian", "Ida"} <= set(practised(text))
