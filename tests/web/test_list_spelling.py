"""A name that is spelled anew in the list."""

from __future__ import annotations

import pytest
from webhelp import OTHERS

from namewright.roster.parsing import read_roster
from namewright.web.list_spelling import spelled
from namewright.web.list_ways import written


@pytest.mark.parametrize(("line", "typed", "child"), [
    ("Дарина Коваль", "Daryna", ("Дарина", "Коваль", "Daryna")),
    ("Дарина Коваль", "Daryna Koval", ("Daryna", "Koval", "Daryna")),
    ("Коваль, Дарина", "Daryna Kowal", ("Daryna", "Kowal", "Daryna")),
    ("ДАРИНА КОВАЛЬ - left", "Daryna", ("Дарина", "Коваль", "Daryna")),
    ("Дарина Коваль (goes by Даша)", "Dasha", ("Дарина", "Коваль", "Dasha")),
    ("Дарина", "Daryna", ("Daryna", "", "Daryna")),
    ("Rubio, Mª José", "María José", ("María José", "Rubio", "María José")),
    ("Rubio, Mª José", "María José Rubio", ("María José", "Rubio", "María José")),
    ("محمد Vost", "Muhamad", ("محمد", "Vost", "Muhamad")),
    ("山田 Hana", "Yamada", ("山田", "Hana", "Yamada")),
    ("山田 Hana", "Hana", ("山田", "Hana", "Hana")),
])
def test_a_spelling_goes_where_it_was_meant(line: str, typed: str, child: tuple[str, str, str]) -> None:
    """Whole or a part: what was not typed stays as it is, and nothing stands twice."""
    text = "\n".join([*OTHERS, line])
    lines = read_roster(text).lines
    one = lines[-1]
    assert one.child
    new = written(lines, len(OTHERS), spelled(one, one.child, typed), lambda tried: read_roster(tried).lines)
    assert new
    found = read_roster(new).children[-1]
    assert (found.given, found.family, found.practice) == child
