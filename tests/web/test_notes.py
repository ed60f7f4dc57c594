"""What a child's writing showed: noted once, and known to the plan."""

from __future__ import annotations

from pathlib import Path

from webhelp import Visitor, finished

from namewright.classbook import Classbook


def test_what_was_seen_is_noted_once(settled: Visitor, class_file: Path) -> None:
    """A form of letters has a key of its own: sent twice, even to a new start of the program, it is noted once."""
    form = {"day": "2026-03-02", "letter": ["0", "2"], "support": "partial", "stage": "4", "once": "k1", "who": "RK"}
    for _ in range(2):
        assert settled.post("/child/1/seen", form).status_code == 302
    with Classbook.open(class_file) as book:
        notes = book.observations(1)
    assert [(note.date, note.letters, note.who) for note in notes] == [("2026-03-02", (0, 2), "RK")]
    assert settled.post("/child/1/seen", {**form, "day": "yesterday", "once": "k2"}).status_code == 422
    settled.post(f"/child/1/seen/{notes[0].id}/back", {})
    with Classbook.open(class_file) as book:
        assert not book.observations(1)


def test_the_plan_knows_what_was_formed(settled: Visitor, class_file: Path) -> None:
    """Once every letter of a name was noted as formed, the plan ticks them and is another."""
    plans = []
    for _ in range(2):
        where = finished(settled, settled.post("/print", {"what": ["plan"], "who": "all"}))
        plans.append(settled.get(where + "/pages.pdf").data)
        with Classbook.open(class_file) as book:
            for one in book.children():
                book.observe(one.id, "2026-11-20", range(len(one.child.practice)), who="RK")
    assert plans[0] != plans[1]


def test_the_year_of_no_class_is_not_there(visitor: Visitor) -> None:
    """Without a child there is no page to make, and no error."""
    assert visitor.get("/class/year.pdf").status_code == 404
