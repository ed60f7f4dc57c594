"""The lists of a class's file: the newest, one on trial, the one before for a day, and one that is being worked on."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from datetime import datetime

from namewright.classbook import answered, drafts, list_before, rosters, saves
from namewright.classbook.connect import told, transaction
from namewright.classbook.drafts import Draft
from namewright.classbook.kept_settings import KeptSettings, When
from namewright.classbook.records import By, ClassbookError, RosterUpdate, called
from namewright.classbook.rosters import NO_ANSWERS, Answers, NewList
from namewright.classbook.who import Known
from namewright.named_tuples import NamedTuple
from namewright.roster.children import Roster
from namewright.settings import NamePart


class Marks(NamedTuple):
    """What was said of lines of a list, each line by a hash of it, which ``of`` makes.

    ``settled`` are answers that come back with the list where its saving is taken back, ``looked_at`` lines of which no
    later list asks again.
    """

    settled: frozenset[str] = frozenset()
    looked_at: Collection[str] = ()
    of: Callable[[str], str] = str


NO_MARKS = Marks()


class KeptLists(KeptSettings):
    """An open class: its lists, and every change of them."""

    def roster_text(self) -> str:
        """Return what is kept of the newest roster; empty where there is none yet."""
        with self._reading():
            return rosters.newest_roster(self._db)[1]

    def roster_id(self) -> int:
        """Return the number of the newest roster, 0 where there is none: what ``after_roster`` is checked against."""
        with self._reading():
            return rosters.newest_roster(self._db)[0]

    def roster_is_whole(self) -> bool:
        """Say whether the roster is kept with all that stands in it, as an adult asked."""
        with self._reading():
            return rosters.is_whole(self._db)

    def saved_list(self) -> Draft:
        """Return the newest roster as a draft that changes nothing of it."""
        with self._reading():
            number, text = rosters.newest_roster(self._db)
            return Draft(text, self._part(), whole=rosters.is_whole(self._db), roster=number)

    def known(self) -> tuple[Known, ...]:
        """Return everyone as a list is compared with them, those who are here first, in roster order."""
        with self._reading():
            return tuple(rosters.everyone(self._db))

    def answered(self) -> frozenset[str]:
        """Return the hashes of lines of earlier lists that somebody said to be right, which ask no more."""
        with self._reading():
            return answered.marks(self._db)

    def on_lines(self) -> Mapping[int, int]:
        """Return who of those who are here, by id, stands on which line of the roster."""
        with self._reading():
            return rosters.on_lines(self._db)

    def update_roster(self, new: NewList | str, *, who: str = "", when: When = None,
                      for_a_day: bool = False) -> RosterUpdate:
        """Take a roster: children who stay keep their id and settings, missing ones are marked as left.

        A text alone is a list of which nothing else is said. Who stands in the class twice by ``new.same`` is one child
        then, with the notes of both. ``for_a_day`` keeps the class as it was before, for ``undo_roster``, unless two
        children were made one. Raises RosterError, with nothing changed, for a text with no child in it.
        """
        new = NewList(new) if isinstance(new, str) else new
        with self.changing():
            before = list_before.held(self._db, self._settings_of_list()) if for_a_day else {}
            number = self.roster_id()
            update = rosters.take_roster(self._db, new, self._part(), By(who, when), joins=True)
            if not for_a_day:
                list_before.forget(self._db)
            elif self.roster_id() != number:
                list_before.keep(self._db, self.roster_id(), before, "", (), when)
            list_before.forget_if_joined(self._db)
            return update

    def save_list(self, new: NewList, settings: Mapping[str, str], marks: Marks = NO_MARKS, *, who: str = "",
                  when: When = None) -> RosterUpdate:
        """Take a roster together with settings of the class, so that ``undo_roster`` can take both back for a day.

        The draft is done with, and comes back with an undoing. Raises as ``update_roster``.
        """
        with self.changing():
            before, number = list_before.held(self._db, self._settings_of_list(settings)), self.roster_id()
            set_too = self.set_class_settings(settings, who=who, when=when)
            if new.after_roster == number:  # read again for those settings, it may have a new number
                new = new._replace(after_roster=self.roster_id())
            update = rosters.take_roster(self._db, new, self._part(), By(who, when))
            if set_too or self.roster_id() != number:
                list_before.keep(self._db, self.roster_id(), before, self.roster_text(),
                                 self._on_kept_lines(marks, update.roster), when)
            answered.keep(self._db, marks.looked_at)
            drafts.discard(self._db)
            return update

    def _on_kept_lines(self, marks: Marks, typed: Roster) -> list[str]:
        """Return answers about a list that was just saved by its lines as they are kept, a child in each."""
        if not marks.settled:
            return []
        kept, as_typed = self.roster_text().splitlines(), {line.line: line.text for line in typed.lines}
        lines = sorted(one.child.line for one in self.children())
        pairs = zip((as_typed[child.line] for child in typed.children), (kept[at - 1] for at in lines), strict=False)
        return list_before.on_kept_lines(marks.settled, pairs, marks.of)

    def _settings_of_list(self, too: Collection[str] = ()) -> Mapping[str, str]:
        """Return the settings that go back with a list: the part of the name, and those that are set with it."""
        now = self.class_settings
        return {key: now.get(key, "") for key in ("practise", *too)}

    def trial(self, text: str, part: NamePart, *, same: Mapping[int, int] | None = None,
              answers: Answers = NO_ANSWERS) -> tuple[RosterUpdate, dict[int, str]]:
        """Say what a roster would do, read for a part of the name, and what everyone would be called, by id.

        Nothing is changed, so what of the text would be kept is not worked out. Raises as ``update_roster``.
        """
        with told(self.path), transaction(self._db, "IMMEDIATE"):
            self._db.execute("SAVEPOINT trial")
            try:
                update = rosters.take_roster(self._db, NewList(text, same or {}, answers, whole=True), part, By())
                return update, called(rosters.children(self._db, left=True))
            finally:
                self._db.execute("ROLLBACK TO trial")
                self._db.execute("RELEASE trial")

    def roster_saved(self) -> str | None:
        """Return when the newest roster was saved, where it can still be taken back; what is too old is let go."""
        now = datetime.now().astimezone()
        with self._reading():
            over, saved = list_before.is_over(self._db, now), list_before.saved_at(self._db, now)
        if over:
            with self.changing():
                list_before.forget(self._db)
        return saved

    def undo_roster(self, *, after_roster: int, over_draft: bool = True) -> None:
        """Bring back the roster before the newest, with who was on it, the tables, and the part that was practised.

        ``after_roster`` refuses it unless the newest roster is the one of this number. What was noted or set for a
        child meanwhile stays. A list that had been typed is a draft again, as the class kept it, with what was
        answered of it; a list that somebody is working on gives way to it only with ``over_draft``.
        """
        with self.changing():
            if self.roster_id() != after_roster:
                raise ClassbookError("classbook.list_meanwhile")
            before = list_before.bring_back(self._db)
            back = {key: str(before.settings[key]) for key in ("practise", "language") if key in before.settings}
            tried = Draft(before.tried, self._part(), before.settled, roster=self.roster_id())
            saves.keep(self._db, None, back, By(), None)
            if before.tried and (over_draft or drafts.draft(self._db) is None):
                drafts.discard(self._db)
                drafts.keep(self._db, tried, typed=False)

    # --- a list that is being worked on ---------------------------------------------------------------

    def draft(self) -> Draft | None:
        """Return the list that is being worked on, None where there is none."""
        with self._reading():
            return drafts.draft(self._db)

    def keep_draft(self, draft: Draft, *, typed: bool = True) -> None:
        """Keep a draft as it is now, as a step that can be taken back; what is ``typed`` on is one step."""
        with self.changing():
            drafts.keep(self._db, draft, typed=typed)

    def step_back(self) -> None:
        """Take back the newest step of the draft."""
        with self.changing():
            drafts.step_back(self._db)

    def discard_draft(self) -> None:
        """Give the draft up; a class without one is not touched."""
        if self.draft() is not None:
            with self.changing():
                drafts.discard(self._db)
