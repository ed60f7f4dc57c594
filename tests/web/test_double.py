"""A child who stands in the class twice is made one in the browser, too. All names are invented."""

from __future__ import annotations

from pathlib import Path

from webhelp import Visitor

from namewright.classbook import Classbook, Seen


def test_two_are_made_one_when_an_adult_says_so(settled: Visitor, class_file: Path) -> None:
    """Chosen, told what changes, confirmed; sent twice it is done once, and without two nothing is asked."""
    with Classbook.open(class_file) as book:
        katla, bo = (next(one.id for one in book.children() if one.child.practice == name) for name in ("Katla", "Bo"))
        book.observe(bo, "2026-10-14", Seen([0], note="proud"))
    assert 'href="/class/double"' in settled.get("/class/list").text
    assert f'<option value="{bo}">Bo</option>' in settled.get("/class/double").text
    for two in ({"child": str(bo)}, {"child": str(bo), "double": str(bo)}, {"child": "x", "double": str(bo)}):
        answer = settled.post("/class/double", two)
        assert answer.status_code == 422
        assert "Please choose two who are one child." in answer.text
    before = class_file.read_bytes()
    two = {"child": str(katla), "double": str(bo)}
    sure = settled.post("/class/double", two).text
    assert "What is kept of Bo goes to Katla" in sure
    assert class_file.read_bytes() == before
    assert "Katla is one child now" in settled.arrive(settled.post("/class/double/yes", two))
    assert "is one child now" not in settled.arrive(settled.post("/class/double/yes", two))
    with Classbook.open(class_file) as book:
        assert [note.note for note in book.observations(katla)] == ["proud"]
        assert bo not in {one.id for one in book.children(left=True)}
