"""What a line asks of a person, and that each press gives what its button promised."""

from __future__ import annotations

from collections import Counter
from typing import Any

import pytest

from namewright.roster.children import Outcome, Roster
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.web import create_app
from namewright.web.list_reading import Reading, read
from namewright.web.list_ways import mark, parted, sorted_lines, spelled, ways_on, written

REST = ["Katla Pruner", "Kasimir Dolt", "Wenna Praske", "Theo Ashgrove"]


@pytest.fixture(autouse=True)
def _at_the_desk(tmp_path_factory: pytest.TempPathFactory):  # type: ignore[no-untyped-def]
    """A reading asks the desk's letters what can be drawn."""
    app = create_app({"CLASS": str(tmp_path_factory.mktemp("ways") / "class.db"), "HOSTS": ["127.0.0.1:1"]})
    with app.app_context():
        yield


def listed(line: str, *more: str) -> Reading:
    return read("\n".join([*REST, line, *more]), NamePart.GIVEN)


def needs(reading: Reading, *settled: str) -> list[tuple[str, list[str]]]:
    found = sorted_lines(reading.lines, reading.notes_of, reading.cannot_draw, frozenset(settled)).needs
    return [(str(one.asked), [way.key for way in one.ways]) for one in found]


def press(reading: Reading, key: str) -> list[tuple[str, str, str]]:
    """Press a way on the last line that has it; return the children that the list has then, besides the rest."""
    at, way = next((at, way) for at, line in reversed(list(enumerate(reading.lines)))
                   for way in ways_on(reading.lines, at, reading.cannot_draw(line)) if way.key == key)
    text = written(reading.lines, at, way, lambda tried: read(tried, NamePart.GIVEN).lines)
    assert text is not None
    assert text.splitlines()[:len(REST)] == REST
    return [(one.given, one.family, one.practice) for one in read_roster(text).children[len(REST):]]


ASKS = {
    "Vexil & Quorra": ("two", ["split", "one", "drop"]),
    "Ana / Bo / Zu": ("several", ["split", "drop"]),
    "Ethan / Ella Brown": ("family", ["share", "apart"]),
    "wears glasses": ("child", ["drop", "child"]),
    "Анна Петрова": ("latin", ["latin", "leave"]),
    "Katla Pruner": ("twice", ["both", "take"]),
    "Mirel Vost (Kvothe)": ("called", ["called", "remark", "none"]),
    "Bluebirds - AM": ("child", ["drop", "child"]),
    "Bluebirds - Ms. Ferrow": ("child", ["drop", "child"]),
    "Aula Girasoles": ("child", ["drop", "child"]),
}


@pytest.mark.parametrize(("line", "asked"), ASKS.items(), ids=ASKS)
def test_a_line_that_needs_a_person_asks_one_question(line: str, asked: tuple[str, list[str]]) -> None:
    """Each has ways to answer, and asks no more once it was said to be right."""
    reading = listed(line)
    assert needs(reading) == [asked]
    on = next(one for one in sorted_lines(reading.lines, reading.notes_of, reading.cannot_draw, frozenset()).needs)
    assert needs(reading, mark(on.report.text)) == []


@pytest.mark.parametrize("line", ["KIRRIN BRANE", "Tamsel, Ottilka L", "• Mirel Vost (goes by Miri)", "Room 9", "12",
                                  "", "Bo Lindle - peanut allergy", "Ms. Rivera", "Jordan Taylor 4/3/2021",
                                  "Anna Maria Schmidt", "Nia Wren - left"])
def test_a_note_asks_nothing(line: str) -> None:
    """What was only tidied is told and needs nobody."""
    assert needs(listed(line)) == []


@pytest.mark.parametrize("line", ["KIRRIN BRANE", "Bo Lindle - peanut allergy", "Anna Maria Schmidt", "Nia Wren 4"])
def test_every_child_that_was_tidied_can_be_said_to_be_none(line: str) -> None:
    """However sure the reading was, a heading may have been taken for a child."""
    found = sorted_lines((reading := listed(line)).lines, reading.notes_of, reading.cannot_draw, frozenset())
    assert [[way.key for way in found.ways[one.line]][-1] for one in found.tidied] == ["none"]


def test_a_list_is_read_once_in_a_request(monkeypatch: pytest.MonkeyPatch) -> None:
    """Four hundred lines take time: what was read for an answer is what is shown."""
    counted = Counter[str]()

    def counting(text: str, *more: Any) -> Roster:
        counted[text] += 1
        return read_roster(text, *more)

    monkeypatch.setattr("namewright.web.list_reading.read_roster", counting)
    for _ in range(2):
        assert listed("Mirel Vost").children == len(REST) + 1
    assert set(counted.values()) == {1}


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
    ("Anna Maria Schmidt", "use1", [("Anna Maria", "Schmidt", "Anna")]),
]


@pytest.mark.parametrize(("line", "key", "children"), PRESSED, ids=[f"{line}: {key}" for line, key, _ in PRESSED])
def test_a_press_gives_what_it_promised(line: str, key: str, children: list[tuple[str, str, str]]) -> None:
    """The list that is written then is read as these children, and nobody else is changed."""
    assert press(listed(line), key) == children


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
    text = "\n".join([*REST, line])
    lines = read_roster(text).lines
    one = lines[-1]
    assert one.child
    new = written(lines, len(REST), spelled(one, one.child, typed), lambda tried: read_roster(tried).lines)
    assert new
    found = read_roster(new).children[-1]
    assert (found.given, found.family, found.practice) == child


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


def test_a_family_name_that_stands_once_is_everybodys() -> None:
    """Two children of one house are written so; where each has a family name, or none has, nothing is lent."""
    assert [one.name for one in parted("Ethan and Ella Brown")] == ["Ethan Brown", "Ella Brown"]
    assert [one.name for one in parted("3) Ana, Bo & Zu de la Cruz")] == [
        "Ana de la Cruz", "Bo de la Cruz", "Zu de la Cruz"]
    assert [one.name for one in parted("Ana Reed / Bo Quill")] == ["Ana Reed", "Bo Quill"]
    assert [one.name for one in parted("Ana / Bo")] == ["Ana", "Bo"]
    assert [one.name for one in parted("8. Lindle, Bo & Ana")] == ["Bo Lindle", "Ana Lindle"]
    assert [one.name for one in parted("Anna, Leo & Mia")] == ["Anna", "Leo", "Mia"]
