"""Labels for letters are read as the names on them: no street, no town and no parent is a child."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

KNOWN = [("Mira", "Vost"), ("Leo", "Tarn"), ("Ana", "Ruiz"), ("Tilo", "Menk")]
UNKNOWN = [("Dlunyil", "Kwapson"), ("Xairfön", "Gaskwom"), ("Tarnul", "Brevin"), ("Jybrith", "Zoumel")]
ADDRESSES = [
    ("To the parents of", "{} Mill Road", "{} Millbrook"), ("Parents of", "{} Oak Lane", "Easton, {}"),
    ("A los padres de", "Calle Mayor {}", "{} Villanueva"), ("Aux parents de", "{} rue des Lilas", "{} Beaulieu"),
    ("An die Eltern von", "Bachgasse {}", "{} Altdorf"), ("Ai genitori di", "Via del Mulino, {}", "{} Vinci"),
    ("Aos pais de", "Rua da Fonte n.º {}", "{}-123 Tavira"),
]


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("form", ["{phrase} {given} {family}", "{phrase}\n{given} {family}", "{given} {family}"])
@pytest.mark.parametrize("between", ["\n", "\n\n"])
@pytest.mark.parametrize(("phrase", "street", "town"), ADDRESSES)
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_a_label_is_the_child_on_it(
    names: list[tuple[str, str]], phrase: str, street: str, town: str, between: str, form: str
) -> None:
    text = between.join("\n".join((form.format(phrase=phrase, given=given, family=family),
                                   street.format(7 + 9 * at), town.format(20417 + 310 * at)))
                        for at, (given, family) in enumerate(names))
    assert made(text) == [given for given, _ in names]


def test_numbers_beside_children_are_no_addresses() -> None:
    assert made("12 Mira Vost\n4123 Leo Tarn\n14 Ana Ruiz\n4125 Tilo Menk\n") == ["Mira", "Leo", "Ana", "Tilo"]
    assert made("Mira Vost 12\nLeo Tarn 4123\nAna Ruiz 14\nTilo Menk 4125") == ["Mira", "Leo", "Ana", "Tilo"]
