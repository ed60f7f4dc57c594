"""A name with a colon and nothing behind it is a child where others are counted; a group and a title are none."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster


def _made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("counts", [("3", "12", "7"), ("|||", "||||| ||", "|"), ("II", "IIIII I", "I"),
                                    ("✓✓", "✓", "–"), ("🦷", "🦷🦷", "0"), ("xxx", "x", "xx")])
@pytest.mark.parametrize("names", [("Mira Vost", "Xobrel Quix", "Zendar Pluum", "Leo Tarn"),
                                   ("Mira V.", "Xobrel Q.", "Zendar P.", "Leo T.")])
@pytest.mark.parametrize("title", ["", "Wackelzähne:\n\n", "Books read 2024/25\n"])
def test_who_has_nothing_is_a_child(counts: tuple[str, str, str], names: tuple[str, ...], title: str) -> None:
    text = title + "\n".join([f"{names[0]}: {counts[0]}", f"{names[1]}: {counts[1]}", f"{names[2]}:",
                              f"{names[3]}: {counts[2]}"])
    assert _made(text) == ["Mira", "Xobrel", "Zendar", "Leo"]


def test_a_heading_stays_one() -> None:
    assert _made("Table 1:\nMira: 3\nLeo: 2\nIda: 4\nAva: 1\nZoe:\nTotal: 9") == ["Mira", "Leo", "Ida", "Ava", "Zoe"]
    assert "Foxes" not in _made("Bears: 3\nFoxes:\nOwls: 2\nDucks: 7\n\nMira Vost\nLeo Tarn\nIda Moss\nZoe Fenn")
    assert _made("Bears: Mira, Leo\nFoxes:\nOwls: Ida, Zoe") == ["Mira", "Leo", "Ida", "Zoe"]


@pytest.mark.parametrize("names", [("Gaja Zaguła", "Julian Mazanek", "Jan Darłak", "Tomasz Błaż"),
                                   ("Vũ Đ.", "Vân M.", "Phương B.", "Minh N."), ("Mia", "Leo", "Ava", "Noah")])
@pytest.mark.parametrize("total", ["", "\nTotal: 8"])
def test_half_of_a_class_may_have_nothing(names: tuple[str, ...], total: str) -> None:
    """Each child without a count was a heading over the next one."""
    made = _made("{}:\n{}: I\n{}:\n{}: I".format(*names) + total)
    assert made == [name.split()[0] for name in names]
    assert _made("Bears: I\nFoxes:\nOwls: I\nDucks:\n\nMira Vost\nLeo Tarn") == ["Mira", "Leo"]
