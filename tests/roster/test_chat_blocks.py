"""Messages copied from a screen: who writes and when stand above each, and neither is a child."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

ASKS = "Liebe Familien, schreibt bitte hier den Vornamen eures Kindes für die Fächer."
HEADS = ["{}\n17:0{}\n", "{}\n3/10/25, 5:0{} PM\n", "{}  17:0{}\n", "{} · 17.0{} Uhr\n", "{}\nGestern 17:0{}\n"]


def screen(head: str, messages: list[tuple[str, str]], *, gap: str = "\n") -> str:
    return gap.join(f"{head.format(who, at)}{what}\n" for at, (who, what) in enumerate(messages))


CHAT = [("Frau Sand", ASKS), ("Ruth", "Mira Vost"), ("Paul Berg", "Unser Sohn heißt Leo 🎈"),
        ("Mama von Ada", "Ada Tarn"), ("Olga", "Guten Abend!\nTim Moor")]


@pytest.mark.parametrize("gap", ["\n", ""])
@pytest.mark.parametrize("head", HEADS)
def test_each_message_names_a_child_and_who_writes_is_none(head: str, gap: str) -> None:
    read = read_roster(screen(head, CHAT, gap=gap))
    assert [child.practice for child in read.children] == ["Mira", "Leo", "Ada", "Tim"]
    assert not [line.text for line in read.lines if line.child and line.text.startswith(("Ruth", "Paul", "Olga"))]


def test_names_over_times_are_children_where_nobody_asks() -> None:
    text = screen(HEADS[0], [("Mira", "Bus 4"), ("Leo", "Bus 3"), ("Ada", "Bus 4")])
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ada"]
