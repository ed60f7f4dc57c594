"""The children of a class's file and what is set for them and for the class, with its history."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import datetime

from namewright.classbook import rosters, saves
from namewright.classbook.keys import check_beats
from namewright.classbook.opened import Opened
from namewright.classbook.records import BookChild, By, ClassbookError, Save
from namewright.settings import NamePart

When = datetime | str | None


class KeptSettings(Opened):
    """An open class: who is in it, and every setting."""

    def children(self, *, left: bool = False) -> tuple[BookChild, ...]:
        """Return the children in roster order; with ``left`` also those who have left, after the others."""
        with self._reading():
            return rosters.children(self._db, left=left)

    def child(self, child_id: int) -> BookChild:
        """Return one child, also one who has left. Raises ClassbookError where there is none of this id."""
        with self._reading():
            found = [one for one in rosters.children(self._db, left=True) if one.id == child_id]
        if not found:
            raise ClassbookError("classbook.no_child")
        return found[0]

    @property
    def part(self) -> NamePart:
        """Return the part of the name that the class practises."""
        with self._reading():
            return self._part()

    def _part(self) -> NamePart:
        return NamePart(saves.class_settings(self._db).get("practise", NamePart.GIVEN))

    @property
    def class_settings(self) -> Mapping[str, str]:
        """Return what was set for the class, as text by key."""
        with self._reading():
            return saves.class_settings(self._db)

    def settings_of(self, child_id: int) -> Mapping[str, str]:
        """Return what was set for a child, as text by key."""
        return self.child(child_id).settings

    def set_class_setting(self, key: str, text: str, *, who: str = "", when: When = None) -> Save | None:
        """Set one setting of the class; empty text unsets it. See ``set_class_settings``."""
        return self.set_class_settings({key: text}, who=who, when=when)

    def set_class_settings(self, texts: Mapping[str, str], *, who: str = "", when: When = None,
                           after_save: int | None = None) -> Save | None:
        """Set settings of the class together; return the save, or None where nothing is new.

        ``after_save`` refuses the change if the newest save of the class is another (0: none).
        """
        with self.changing():
            save = saves.keep(self._db, None, texts, By(who, when), after_save)
            if save:
                self._follow(save, By(who, when))
            return save

    def _follow(self, save: Save, by: By) -> None:
        """Read the roster again where the part of the name that the class practises is another now."""
        if any(change.key == "practise" for change in save.changes):
            rosters.read_again(self._db, self._part(), by)

    def set_settings(self, child_id: int, texts: Mapping[str, str], *, who: str = "", when: When = None,
                     after_save: int | None = None) -> Save | None:
        """Set settings of a child together, to be undone together; return the save, or None where nothing is new.

        ``after_save`` refuses the change if the child's newest save is another (0: none).
        """
        with self.changing():
            check_beats(self.child(child_id).child.practice, texts.get("beats", ""))
            return saves.keep(self._db, child_id, texts, By(who, when), after_save)

    def undo(self, child_id: int | None, *, who: str = "", when: When = None,
             after_save: int | None = None) -> Save | None:
        """Take back the newest save of a child (None: of the class) that was not taken back yet.

        Return the save that did it, or None where there is nothing to take back. ``after_save`` is as for
        ``set_settings``: with it a button pressed twice undoes once.
        """
        with self.changing():
            save = saves.undo(self._db, child_id, By(who, when), after_save)
            if save and child_id is None:
                self._follow(save, By(who, when))
            return save

    def history(self, child_id: int | None) -> tuple[Save, ...]:
        """Return every save of a child (None: of the class), the newest first."""
        with self._reading():
            return saves.history(self._db, child_id)

    def on_days(self, child_id: int, days: Iterable[str]) -> dict[str, tuple[BookChild, Mapping[str, str]]]:
        """Return a child and the class's settings as they stood at the end of each day (ISO); the list is that of now.

        Raises ClassbookError for a child we do not know.
        """
        with self._reading():
            own, of_class = self.history(child_id), self.history(None)
            settings, class_settings = self.child(child_id).settings, self.class_settings
            row = self._db.execute("SELECT * FROM children WHERE id = ?", (child_id,)).fetchone()
            return {day: (rosters.book_child(row, saves.settings_on(day, settings, own, of_class=False)),
                          saves.settings_on(day, class_settings, of_class, of_class=True))
                    for day in dict.fromkeys(days)}
