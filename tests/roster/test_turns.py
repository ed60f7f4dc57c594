"""In a list of turns by date, a name in brackets beside each child is a helper’s; a child’s own stays."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

FOOD = [("grapes", "apple slices"), ("uvas", "pan con queso"), ("compotes", "gâteau au yaourt"),
        ("Trauben", "Brezeln"), ("mele a fette", "yogurt"), ("bolachas", "maçã cortada")]
ROWS = [("Mira Vost", "Ana"), ("Xobrel Quix", "Geraud"), ("Leo Tarn", "Jean-Paul"), ("Ida Moss", "Sonia")]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("food", FOOD)
@pytest.mark.parametrize("form", ["{}/9: {} ({}) – {}", "{}.9. {} ({}): {}", "{:02}/09: {} [{}] - {}",
                                  "{:02}.09.24: {} ({} Berg) – {}"])
def test_a_helper_beside_each_child_is_told(food: tuple[str, str], form: str) -> None:
    text = "\n".join(form.format(2 + 7 * at, *row, food[at % 2]) for at, row in enumerate(ROWS))
    assert practised(text) == ["Mira", "Xobrel", "Leo", "Ida"]
    assert all(len(report.notes) > 1 for report in read_roster(text).lines)


def test_what_children_go_by_stays() -> None:
    assert practised("2/9: Katherine Moss (Katie) – grapes\n9/9: Isabella Tarn (Bella) – buns\n"
                     "16/9: Thomas Vost (Tom) – uvas\n23/9: Ida Quix – nuts") == ["Katie", "Bella", "Tom", "Ida"]
