"""Each press on a line of a list gives what its button promised."""

from __future__ import annotations

import pytest
from webhelp import OTHERS, listed

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.web.list_questions import ways_on
from namewright.web.list_reading import Reading, read
from namewright.web.list_ways import after_all, as_one, typed_name, written

pytestmark = pytest.mark.usefixtures("at_the_desk")


def press(reading: Reading, key: str) -> list[tuple[str, str, str]]:
    """Press a way on the last line that has it; return the children that the list has then, besides the rest."""
    at, way = next((at, way) for at, line in reversed(list(enumerate(reading.lines)))
                   for way in ways_on(reading.lines, at, reading.cannot_draw(line)) if way.key == key)
    text = written(reading.lines, at, way, lambda tried: read(tried, NamePart.GIVEN).lines)
    assert text is not None
    assert text.splitlines()[:len(OTHERS)] == OTHERS
    return [(one.given, one.family, one.practice) for one in read_roster(text).children[len(OTHERS):]]


PRESSED = [
    ("Vexil & Quorra", "split", [("Vexil", "", "Vexil"), ("Quorra", "", "Quorra")]),
    ("Vexil / Quorra Brown", "split", [("Vexil", "Brown", "Vexil"), ("Quorra", "Brown", "Quorra")]),
    ("Ethan / Ella Brown", "share", [("Ethan", "Brown", "Ethan"), ("Ella", "Brown", "Ella")]),
    ("Ana / Bo / Zu", "split", [("Ana", "", "Ana"), ("Bo", "", "Bo"), ("Zu", "", "Zu")]),
    ("Mirel Vost (Kvothe)", "called", [("Mirel", "Vost", "Kvothe")]),
    ("Katla Pruner", "take", []),
    ("KIRRIN BRANE", "none", []),
    ("Tamsel, Ottilka Quen", "use1", [("Ottilka", "Tamsel", "Ottilka Quen")]),
    ("Ottilka Quen Tamsel", "use2", [("Ottilka", "Quen Tamsel", "Quen")]),
    ("Ricci - Giulia (sorella Emma)", "turn", [("Giulia", "Ricci", "Giulia")]),
    ("Anna Maria Schmidt", "use1", [("Anna Maria", "Schmidt", "Anna")]),
]


@pytest.mark.parametrize(("line", "key", "children"), PRESSED, ids=[f"{line}: {key}" for line, key, _ in PRESSED])
def test_a_press_gives_what_it_promised(line: str, key: str, children: list[tuple[str, str, str]]) -> None:
    """The list that is written then is read as these children, and nobody else is changed."""
    assert press(listed(line), key) == children


@pytest.mark.parametrize("line", ["wears glasses", "Ms. Rivera", "new child", "Teacher: Aldous", "Mon 30 Nov",
                                  "Alder Room 2026/27 - Ms. Ferrow", "Bluebirds - Ms. Ferrow", "Aula Girasoles"])
def test_a_line_passed_over_can_be_made_a_child(line: str) -> None:
    """Whatever it was taken for, one press makes a child of it."""
    reading = listed(line)
    assert reading.lines[-1].outcome is not Outcome.CHILD
    assert len(press(reading, "child")) == 1


def test_names_that_the_rest_of_a_list_makes_unlikely_are_children_all_the_same() -> None:
    """In a list that writes “Family, Given” a name of one word is doubted; where a person said so, it is a child."""
    rest = "Pruner, Katla\nDolt, Kasimir\nPraske, Wenna\nAshgrove, Theo\nMarsh, Ewan\nReed, Tilo"
    reading = read(f"{rest}\nQuorrel & Vexil", NamePart.GIVEN)
    at, way = next((at, way) for at, line in enumerate(reading.lines)
                   for way in ways_on(reading.lines, at, None) if way.key == "split")
    text = written(reading.lines, at, way, lambda tried: read(tried, NamePart.GIVEN).lines)
    assert text is not None
    assert [one.practice for one in read_roster(text).children[-2:]] == ["Quorrel", "Vexil"]


@pytest.mark.parametrize(("line", "name"), [
    ("Mira - Leo K.", "Mira"), ("2. Thure -> Kalle und Ole", "Thure"), ("Ana – Bo & Zu", "Ana"),
    ("Bo & Ana – table 1", None), ("Art: Wren, Tobin", None), ("Blocks - Ana & Bo", None),
    ("Bo & Ana Lindle", "Bo Ana Lindle"),
])
def test_no_name_of_one_child_goes_over_a_sign_that_parts_two(line: str, name: str | None) -> None:
    """A press on “One child: Mira - Leo K.” could only be refused."""
    way = as_one(line)
    assert (dict(way.said.fields)["name"] if way else None) == name


def test_a_remark_with_a_comma_is_never_turned_into_a_family_name() -> None:
    line = "(and Wren, starts in October - not on the office list yet)"
    report = read_roster("\n".join((*OTHERS, line))).lines[-1]
    assert report.outcome is Outcome.LEFT_OUT
    assert not any(text.startswith("Wren,") for way in after_all(report) for (text,) in way.tries)


SAID = [
    ("Please call Mrs. Vale about Ottilie Keller", [("Ottilie", "Keller", "Ottilie")]),
    ("Heute hat Frieda wieder Geburtstag", [("Frieda", "", "Frieda")]),
    ("Zoé mange chez sa mamie le mardi, merci", [("Zoé", "", "Zoé")]),
]


@pytest.mark.parametrize(("line", "children"), SAID)
def test_of_a_sentence_only_the_name_in_it_is_a_child(line: str, children: list[tuple[str, str, str]]) -> None:
    """The whole sentence is nobody’s name, so no press makes it one."""
    reading = listed(line)
    assert press(reading, "child1") == children
    assert not any(way.key == "child" for way in ways_on(reading.lines, len(reading.lines) - 1, None))


def test_where_a_sentence_names_nobody_known_the_name_is_typed() -> None:
    reading = listed("Reading buddies with the graders of Mr. Vale")
    at = len(reading.lines) - 1
    assert {way.offered for way in ways_on(reading.lines, at, None) if way.key == "typed"} == {""}
    text = written(reading.lines, at, typed_name("  Xobrel   Vost "), lambda tried: read(tried, NamePart.GIVEN).lines)
    assert text is not None
    assert text.splitlines()[-1] == "Xobrel Vost"
