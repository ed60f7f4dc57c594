"""The children of a line that may be several. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.parting import Promise, parted, ways_to_write


@pytest.mark.parametrize(("line", "names"), [
    ("8. Lindle, Bo & Ana", ["Bo Lindle", "Ana Lindle"]),
    ("Bo & Ana Lindle", ["Bo Lindle", "Ana Lindle"]),
    ("Vexil & Quorra", ["Vexil", "Quorra"]),
    ("Bo Lindle / Ana Reed", ["Bo Lindle", "Ana Reed"]), ("Ana / Bo", ["Ana", "Bo"]),
    ("3) Ana, Bo & Zu de la Cruz", ["Ana de la Cruz", "Bo de la Cruz", "Zu de la Cruz"]),
    ("Anna, Leo & Mia", ["Anna", "Leo", "Mia"]),
    ("Hugo → Sara y Bo", ["Hugo", "Sara", "Bo"]), ("Bo (new) - Ana (twins!)", ["Bo", "Ana"]),
    ("Comedor: Ana, Bo y Zu", ["Ana", "Bo", "Zu"]), ("A: Bo, Ana", ["Bo", "Ana"]),
    ("Bo & Ana – table 1", ["Bo", "Ana"]),
    ("Probably Jan or Max", ["Jan", "Max"]), ("Jan Vost oder Max Tarn", ["Jan Vost", "Max Tarn"]),
    ("Bo - Ana L.", ["Bo", "Ana L."]), ("Bo & Ana L.", ["Bo L.", "Ana L."]),
])
def test_a_family_name_that_stands_once_is_everybodys(line: str, names: list[str]) -> None:
    """Each child has a whole name; where each has a family name, or none has, nothing is lent."""
    assert [one.name for one in parted(line)] == names


def test_each_way_has_a_line_a_child() -> None:
    """As it is, family first, and under the word for names."""
    found = list(ways_to_write([Promise("Bo", "Lindle"), Promise("Ana")]))
    assert found == [("Bo Lindle", "Ana"), ("Lindle, Bo", "Ana"), ("Name: Bo Lindle", "Name: Ana")]
