"""Names are written with capitals, particles aside."""

from __future__ import annotations

import pytest

from namewright.roster.capitals import is_titled


@pytest.mark.parametrize("text", ["Mira Vost", "Otta van der Brae", "Ana de la Cruz", "محمد Vost", "山田 Hana"])
def test_a_name_has_capitals_where_its_script_has_some(text: str) -> None:
    assert is_titled(text)


@pytest.mark.parametrize("text", ["Mira takes", "peanuts", "comes late", "Otta von zuhause"])
def test_what_has_a_small_word_is_none(text: str) -> None:
    assert not is_titled(text)
