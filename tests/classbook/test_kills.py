"""Five hundred programs killed while they save or erase: the file holds together, and no save is half there."""

from __future__ import annotations

import os
import random
import signal
import sqlite3
import time
from pathlib import Path

import pytest

from namewright.classbook import Classbook, Seen

KILLS = 500
STAYS = ("Mira", "Tilo")


def save_on_and_on(path: Path) -> None:
    """Take lists, keep settings, note and erase, until somebody ends it."""
    while True:
        with Classbook.open(path) as book:
            book.update_roster("Mira Quill\nTilo Reed\nZaphrelle Quorndike\n")
            child = book.children()[2].id
            with book.changing():
                book.set_settings(child, {"line_height": "30", "support": "light"})
                book.observe(child, "2026-09-14", Seen([0], note="Zaphrelle wrote"))
            book.erase([child])


@pytest.mark.long
@pytest.mark.skipif(not hasattr(os, "fork"), reason="Windows cannot split a program in two")
def test_the_file_holds_together_after_five_hundred_kills(tmp_path: Path) -> None:
    """SQLite's own check finds nothing, who stays is always there, and what was saved together is there together."""
    path, chance = tmp_path / "class.db", random.Random(11)
    with Classbook.open(path) as book:
        book.update_roster("Mira Quill\nTilo Reed\n")
    for _ in range(KILLS):
        running = os.fork()
        if not running:
            save_on_and_on(path)
        time.sleep(chance.uniform(0.0, 0.06))
        os.kill(running, signal.SIGKILL)
        os.waitpid(running, 0)
        with sqlite3.connect(path) as raw:
            assert raw.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        raw.close()
        with Classbook.open(path) as book:
            everyone = {one.child.label: one for one in book.children(left=True)}
            assert set(STAYS) <= set(everyone) <= {*STAYS, "Zaphrelle"}
            for one in set(everyone) - set(STAYS):
                kept = len(everyone[one].settings), len(book.observations(everyone[one].id))
                assert kept[0] in (0, 2)
                assert (kept[0] == 0) == (kept[1] == 0)
    with Classbook.open(path) as book:
        book.set_class_settings({"title": "The Alder class"})  # a save takes away the journal of one that never began
    assert [file.name for file in tmp_path.iterdir()] == ["class.db"]
