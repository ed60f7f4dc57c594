"""Next month's level of support: one step, on new notes, never against an adult's choice. The class is invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from kept_class import levels, three_months
from namewright.classbook import Classbook, Seen
from namewright.classbook.moving import WHO, Kind, keep, moves
from namewright.cli import main
from namewright.settings import Support


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return three_months(tmp_path / "room4.db")


def test_one_level_and_never_two(path: Path) -> None:
    """Mira and Ana go one level on; made again at once, nothing changes, for the same notes lead to one change."""
    with Classbook.open(path) as book:
        for move in moves(book, book.children()):
            if move.kind is Kind.CHANGED:
                keep(book, move, when="2026-11-26T12:00:00")
    assert levels(path) == ["partial", "full", "light", "light"]
    with Classbook.open(path) as book:
        assert [move.kind for move in moves(book, book.children())] == [Kind.STAYS] * 4
        book.observe(1, "2026-12-03", Seen(range(4), support=Support.PARTIAL))
        book.observe(1, "2026-12-10", Seen(range(4), support=Support.PARTIAL))
        assert moves(book, book.children())[0].after is Support.LIGHT


def test_a_level_that_an_adult_set_is_not_changed(path: Path) -> None:
    """What is set for a child goes before the notes, until it is taken back; rows chosen one by one do as well."""
    with Classbook.open(path) as book:
        book.set_settings(1, {"support": "full"}, who="teacher", when="2026-10-01T08:00:00")
        book.set_settings(3, {"ladder": "dots"}, who="teacher", when="2026-10-01T08:00:00")
        assert [move.kind for move in moves(book, book.children())] == [Kind.CHOSEN, Kind.STAYS, Kind.ROWS, Kind.STAYS]
        book.undo(1, who="teacher")
        assert moves(book, book.children())[0].kind is Kind.CHANGED


def test_what_is_refused_is_not_proposed_again_on_the_same_notes(path: Path) -> None:
    """Refused here or taken back in the browser, a change waits for new notes."""
    with Classbook.open(path) as book:
        mira, _, ana, _ = moves(book, book.children())
        keep(book, mira, refused=True, when="2026-11-26T12:00:00")
        keep(book, ana, when="2026-11-26T12:00:00")
        book.undo(3, who="teacher")
        assert [one.child.support for one in book.children()] == ["full", "full", "partial", "light"]
        assert [move.kind for move in moves(book, book.children())] == [Kind.STAYS] * 4
        assert [save.who for save in book.history(3)] == ["teacher", WHO]


def test_a_change_made_before_is_taken_back_by_refusing_it(path: Path) -> None:
    """The pack is made, read, and made again without the change that the adult does not want."""
    december = str(path.with_name("december.pdf"))
    assert main(["next", str(path), "-o", december]) == 0
    assert levels(path) == ["partial", "full", "light", "light"]
    assert main(["next", str(path), "-o", december, "--refuse", "Mira"]) == 0
    assert levels(path) == ["full", "full", "light", "light"]
