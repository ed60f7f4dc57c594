"""Settings of a class and of its children, with who changed what and when, and undo.

What was changed together is one save. Undo is a save too, so the history only ever grows.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping, Sequence
from types import MappingProxyType

from namewright.classbook.keys import can_be_set, checked_setting
from namewright.classbook.records import (
    MAX_WHO,
    NO_SETTINGS,
    By,
    Change,
    ClassbookError,
    Save,
    checked_moment,
    checked_text,
)


def class_settings(db: sqlite3.Connection) -> Mapping[str, str]:
    """Return the class's settings by key."""
    return MappingProxyType(dict(db.execute("SELECT key, value FROM class_settings ORDER BY key")))


def all_settings(db: sqlite3.Connection) -> Mapping[int, Mapping[str, str]]:
    """Return every child's settings by id and key."""
    found: dict[int, dict[str, str]] = {}
    for child_id, key, value in db.execute("SELECT child_id, key, value FROM settings ORDER BY child_id, key"):
        found.setdefault(child_id, {})[key] = value
    return {child_id: MappingProxyType(settings) for child_id, settings in found.items()}


def _settings(db: sqlite3.Connection, child_id: int | None) -> Mapping[str, str]:
    return class_settings(db) if child_id is None else all_settings(db).get(child_id, NO_SETTINGS)


def settings_on(day: str, now: Mapping[str, str], saved: Sequence[Save], *, of_class: bool) -> Mapping[str, str]:
    """Return settings as they stood at the end of a day (ISO), from those of now and every save, the newest first.

    What no class, or no child, can have is left out: an older program may have had more, and a file may be damaged.
    """
    found = dict(now)
    for save in saved:
        if save.when[:10] > day:
            found |= {change.key: change.before or "" for change in save.changes}
    return {key: text for key, text in found.items() if text and can_be_set(key, text, of_class=of_class)}


def keep(db: sqlite3.Connection, child_id: int | None, texts: Mapping[str, str], by: By,
         after_save: int | None) -> Save | None:
    """Check and keep settings as one save; None where none of them is new. Inside a transaction."""
    wanted = {key: checked_setting(key, text, of_class=child_id is None) for key, text in texts.items()}
    _check_newest(db, child_id, after_save)
    before = _settings(db, child_id)
    changes = tuple(Change(key, before.get(key), value) for key, value in wanted.items() if before.get(key) != value)
    return _save(db, child_id, changes, by) if changes else None


def undo(db: sqlite3.Connection, child_id: int | None, by: By,
         after_save: int | None) -> Save | None:
    """Take back the newest save that still stands; None where there is none. Inside a transaction."""
    _check_newest(db, child_id, after_save)
    last = next((save for save in history(db, child_id) if save.undoes is None and not save.undone), None)
    if last is None:
        return None
    back = tuple(Change(change.key, change.after, _still(change, of_class=child_id is None)) for change in last.changes)
    return _save(db, child_id, back, by, last.id)


def _still(change: Change, *, of_class: bool) -> str | None:
    """Return what held before a change, nothing where that cannot be set: of a damaged file it would close the next."""
    return change.before if change.before and can_be_set(change.key, change.before, of_class=of_class) else None


def _check_newest(db: sqlite3.Connection, child_id: int | None, after_save: int | None) -> None:
    newest = db.execute("SELECT coalesce(max(id), 0) FROM saves WHERE child_id IS ?", (child_id,)).fetchone()[0]
    if after_save is not None and newest != after_save:
        raise ClassbookError("classbook.settings_meanwhile")


def _save(db: sqlite3.Connection, child_id: int | None, changes: tuple[Change, ...], by: By,
          undoes: int | None = None) -> Save:
    who, at = checked_text(by.who, MAX_WHO, "long_who"), checked_moment(by.when)
    save_id = db.execute("INSERT INTO saves (child_id, who, at, undoes) VALUES (?, ?, ?, ?)",
                         (child_id, who, at, undoes)).lastrowid
    db.executemany("INSERT INTO changes VALUES (?, ?, ?, ?)",
                   [(save_id, change.key, change.before, change.after) for change in changes])
    for change in changes:
        _put(db, child_id, change.key, change.after)
    return Save(int(save_id or 0), child_id, who, at, changes, undoes)


def _put(db: sqlite3.Connection, child_id: int | None, key: str, value: str | None) -> None:
    if child_id is None:
        db.execute("DELETE FROM class_settings WHERE key = ?", (key,))
        if value is not None:
            db.execute("INSERT INTO class_settings VALUES (?, ?)", (key, value))
    else:
        db.execute("DELETE FROM settings WHERE child_id = ? AND key = ?", (child_id, key))
        if value is not None:
            db.execute("INSERT INTO settings VALUES (?, ?, ?)", (child_id, key, value))


def history(db: sqlite3.Connection, child_id: int | None) -> tuple[Save, ...]:
    """Return every save of a child (None: of the class), the newest first."""
    changes: dict[int, list[Change]] = {}
    for save_id, key, before, after in db.execute(
            "SELECT save_id, key, before, after FROM changes JOIN saves ON saves.id = save_id WHERE child_id IS ? "
            "ORDER BY changes.rowid", (child_id,)):
        changes.setdefault(save_id, []).append(Change(key, before, after))
    rows = db.execute("SELECT id, who, at, undoes, id IN (SELECT undoes FROM saves) FROM saves WHERE child_id IS ? "
                      "ORDER BY id DESC", (child_id,)).fetchall()
    return tuple(Save(save_id, child_id, who, at, tuple(changes.get(save_id, ())), undoes, bool(undone))
                 for save_id, who, at, undoes, undone in rows)
