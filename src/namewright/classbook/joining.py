"""One child who stands in the file twice, made one: an adult said so of a child taken for a new one under another name.

Notes go over, each with its day and the name that was practised then; settings and table wishes where the first has
none of its own. How the double's settings came about over time is not kept. Inside a transaction.
"""

from __future__ import annotations

import sqlite3

from namewright.classbook import saves
from namewright.classbook.records import By

FORGETTING = (
    "DELETE FROM seats WHERE ?1 IN (one, other)",
    "DELETE FROM groups WHERE child_id = ?",
    "DELETE FROM observations WHERE child_id = ?",
    "DELETE FROM settings WHERE child_id = ?",
    "DELETE FROM changes WHERE save_id IN (SELECT id FROM saves WHERE child_id = ?)",
    "DELETE FROM saves WHERE child_id = ?",
    "DELETE FROM children WHERE id = ?",
)
"""Takes all out that is kept of a child."""


def join(db: sqlite3.Connection, double: int, child_id: int, by: By) -> int:
    """Give a child what is kept of its double, and take the double out; return how many notes went over."""
    notes = db.execute("UPDATE observations SET child_id = ? WHERE child_id = ?", (child_id, double)).rowcount
    settings = saves.all_settings(db)
    own = settings.get(child_id, {})
    if more := {key: text for key, text in settings.get(double, {}).items() if key not in own}:
        saves.keep(db, child_id, more, by, None)
    db.execute("INSERT OR IGNORE INTO seats SELECT min(?1, friend), max(?1, friend), together FROM "
               "(SELECT CASE one WHEN ?2 THEN other ELSE one END AS friend, together FROM seats "
               "WHERE ?2 IN (one, other)) WHERE friend <> ?1", (child_id, double))
    for statement in FORGETTING:
        db.execute(statement, (double,))
    return notes
