"""Children of one practised name are told apart: by as few letters as it takes, and never alike."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.labels import labels

ROWS = [
    ([("Ava", "Birn"), ("Bo", "Birn")], ["Ava", "Bo"], "a name that nobody shares is its own label"),
    ([("Ava", "Birn"), ("Ava", "Dunn")], ["Ava B.", "Ava D."], "one letter where one is enough"),
    ([("Ava", "Moran"), ("Ava", "Mottley")], ["Ava Mor.", "Ava Mot."], "more where it is not"),
    ([("Ava", "Moss"), ("Ava", "Mott")], ["Ava Moss", "Ava Mott"], "the whole where a dot saves nothing"),
    ([("Ava", "Moss"), ("Ava", "Moss")], ["Ava Moss 1", "Ava Moss 2"], "a number where both names are alike"),
    ([("Ava", ""), ("Ava", "")], ["Ava 1", "Ava 2"], "or where there is no other name"),
    ([("Ava", ""), ("Ava", "Moss")], ["Ava", "Ava M."], "one without another name stays bare"),
    ([("ava", "Birn"), ("Ava", "Dunn")], ["ava B.", "Ava D."], "names alike but for their case are shared"),
    ([("Ava", "Élanor"), ("Ava", "Eloywin")], ["Ava Éla.", "Ava Elo."], "letters alike but for a mark are heard alike"),
    ([("Ava", ""), ("Ava", ""), ("Ava 1", "")], ["Ava 2", "Ava 3", "Ava 1"], "a number passes over what is taken"),
    ([], [], "nobody"),
]


@pytest.mark.parametrize(("children", "told", "why"), ROWS, ids=[row[2] for row in ROWS])
def test_labels(children: list[tuple[str, str]], told: list[str], why: str) -> None:
    assert list(labels(children)) == told, why


NAMES = st.sampled_from(["Ava", "AVA", "Bo", "Ava 1", "Ava 2", "Ava M.", "Ava M", "Zoë"])
OTHERS = st.sampled_from(["", "M", "Mo", "Moss", "Mott", "moss", "Élan", "Elan", "de la Brae"])


@given(st.lists(st.tuples(NAMES, OTHERS), max_size=12))
def test_no_two_labels_are_alike_and_each_begins_with_its_name(children: list[tuple[str, str]]) -> None:
    """Said aloud, too: case and a last dot are not heard."""
    found = labels(children)
    assert len({label.casefold().rstrip(".") for label in found}) == len(found) == len(children)
    assert all(label.startswith(name) for label, (name, _) in zip(found, children, strict=True))
