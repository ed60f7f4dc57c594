"""Texts of keys and values are read as trees, however they are written; others are told from them."""

from __future__ import annotations

import time

import pytest

from namewright.roster.structured import Node, Value, tree_of


def plain(part: Value | Node) -> object:
    """Write a tree as the words, lists and pairs that it holds."""
    if isinstance(part, Value):
        return part.text
    if part.keyed:
        return {key: plain(one) for key, one in part.pairs()}
    return [plain(one) for one in part.parts]


def of(text: str) -> object:
    tree = tree_of(text.split("\n"))
    return None if tree is None else plain(tree)


RECORDS = [[{"first": "Mira", "last": "O'Neil", "bus": "4"}, {"first": "Tilo", "last": "Tarn", "bus": ""}]]


@pytest.mark.parametrize("text", [
    '[{"first": "Mira", "last": "O\'Neil", "bus": 4}, {"first": "Tilo", "last": "Tarn", "bus": null}]',
    "const list = [\n {first: 'Mira', last: \"O'Neil\", bus: 4}, // one\n"
    " {first: 'Tilo', last: 'Tarn', bus: null,},\n];",
    "[{'first': 'Mira', 'last': \"O'Neil\", 'bus': 4},\n {'first': 'Tilo', 'last': 'Tarn', 'bus': None}]",
    '[{"first" => "Mira", "last" => "O\'Neil", "bus" => 4}, {"first" => "Tilo", "last" => "Tarn", "bus" => nil}]',
    '[{"first": "Mira", "last": "O\'Neil", "bus": 4}, {"first": "Tilo", "last": "Tarn", "bus": ""',
])
def test_braces_are_read_however_a_program_writes_them(text: str) -> None:
    assert of(text) == RECORDS


@pytest.mark.parametrize("text", [
    '{"first": "Mira", "last": "O\'Neil", "bus": "4"}\n{"first": "Tilo", "last": "Tarn", "bus": null}',
    "- first: Mira\n  last: O'Neil\n  bus: 4\n- first: Tilo\n  last: \"Tarn\"\n  bus: ~",
    "first=Mira last=O'Neil bus=4\nfirst='Tilo' last=\"Tarn\" bus=\"\"",
])
def test_a_record_after_the_other_needs_no_list(text: str) -> None:
    assert of(text) == RECORDS[0]


@pytest.mark.parametrize("text", [
    '{"teacher": "Jo Vost", "children": [{"name": "Mira"}, {"name": "Tilo"}]}',
    "teacher: Jo Vost\nchildren:\n  - name: Mira\n  - name: Tilo",
    "children:\n- name: Mira\n- name: Tilo\nteacher: Jo Vost",
    "<children><name>Mira</name></children>\n<children><name>Tilo</name></children>\n<teacher>Jo Vost</teacher>",
])
def test_what_stands_within_stays_within(text: str) -> None:
    found = of(text)
    [found] = found if isinstance(found, list) else [found]
    assert found == {"teacher": "Jo Vost", "children": [{"name": "Mira"}, {"name": "Tilo"}]}


def test_attributes_are_values() -> None:
    assert of('<all>\n<child first="Mira" last="Vost &amp; Tarn"/>\n<child first="Tilo" last="Moss"/>\n</all>') == {
        "all": {"child": [{"first": "Mira", "last": "Vost & Tarn"}, {"first": "Tilo", "last": "Moss"}]}}


def test_a_value_knows_its_line() -> None:
    for text in ('[\n {\n  "name": "Mira"\n },\n {\n  "name": "Tilo"\n }\n]',
                 "# list\n\n- name: Mira\n  bus: 1\n\n- name: Tilo\n  bus: 2",
                 "<all>\n <of>\n  <name>Mira</name>\n  </of><of>\n\n<name>Tilo</name>\n</of>\n</all>"):
        tree, lines = tree_of(text.split("\n")), list[int]()
        waiting: list[Value | Node] = [] if tree is None else [tree]
        while waiting:
            one = waiting.pop()
            if isinstance(one, Value):
                lines += [one.line] * (one.text in ("Mira", "Tilo"))
            else:
                waiting += one.parts
        assert sorted(lines) == [2, 5]


@pytest.mark.parametrize("text", [
    "", "Mira {she}\nTilo", "Mira (goes by: Mi)", "- Mira: nuts\n- Tilo: milk\n- Bo: none",
    "- Bears: Mira, Tilo\n- Owls: Bo",
    "[Mira]\n[Tilo]", "Mira = left\nTilo = right",
    "Mira <3\nTilo </3", "{Mira, Tilo}", "Mira: 4\nTilo: 5",
])
def test_lists_of_people_are_none(text: str) -> None:
    assert of(text) is None


@pytest.mark.parametrize("text", [
    f'[{{"a": 1}},{"[" * 100_000}', f'[{{"a": 1}},{"[{" * 100_000}', '{"a":' * 100_000, "<a>\n</b>" * 100_000,
    "\n".join(f"{'  ' * at}- a:" for at in range(200)),
])
def test_text_that_goes_deeper_and_deeper_is_given_up(text: str) -> None:
    assert tree_of(text.split("\n")) is None


@pytest.mark.parametrize("line", [
    r'{"a": "' + r'\"' * 40_000, '{"a": 1' + " " * 40_000 + "/ 2}", "a=b" + " " * 40_000 + "c=d",
])
def test_what_never_ends_is_looked_at_once(line: str) -> None:
    start = time.process_time()
    tree_of([line, line])
    assert time.process_time() - start < 4
