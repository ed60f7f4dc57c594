"""The class's database: every change is one transaction, and only ``erase`` throws away what was kept.

Two programs that change it at once wait for each other; where a person's view may be out of date by then, the
``after…`` arguments refuse the change instead of guessing. Moments are ISO 8601; ``when=None`` is this computer's
clock, the only clock here. How the file is opened, read and changed is told in ``opened``.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping
from datetime import date, datetime

from namewright.classbook import answered, doubles, drafts, erasing, list_before, plans, rosters, saves
from namewright.classbook import observations as seen
from namewright.classbook.connect import told, transaction
from namewright.classbook.drafts import Draft
from namewright.classbook.erasing import Erased
from namewright.classbook.keys import check_beats
from namewright.classbook.needed import WORDS
from namewright.classbook.opened import Opened
from namewright.classbook.records import BookChild, ClassbookError, Observation, RosterUpdate, Save, called
from namewright.classbook.rosters import NO_ANSWERS, Answers
from namewright.classbook.stages import Stage
from namewright.classbook.traces import Trace
from namewright.classbook.who import Known
from namewright.roster.children import Roster
from namewright.settings import NamePart, Support

When = datetime | str | None


class Classbook(Opened):
    """An open class: what is kept of it, and every change of that."""

    # --- the roster and the children ------------------------------------------------------------------

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

    def update_roster(self, text: str, *, who: str = "", when: When = None, same: Mapping[int, int] | None = None,
                      after_roster: int | None = None, whole: bool = False, for_a_day: bool = False,
                      words: Mapping[str, str] = WORDS, answers: Answers = NO_ANSWERS) -> RosterUpdate:
        """Take a roster: children who stay keep their id and settings, missing ones are marked as left.

        What is needed of the text is kept in place of the roster before, with ``words`` over its columns; ``whole``
        keeps all of it.

        ``same`` says which child (id) stands on which line, where the caller knows; who stands in the class twice by
        it is one child then, with the notes of both. ``answers`` are what was said of lines besides. ``after_roster``
        refuses the change if the newest roster is not the one of this number, unless that says the same.
        ``for_a_day`` keeps the class as it was before, for ``undo_roster``, unless two children were made one. Raises
        RosterError, with nothing changed, for a text with no child in it.
        """
        with self.changing():
            before = list_before.held(self._db, self._settings_of_list()) if for_a_day else {}
            number = self.roster_id()
            update = rosters.take_roster(self._db, text, self._part(), who, when, same or {}, after_roster, whole=whole,
                                         joins=True, words=words, answers=answers)
            if not for_a_day:
                list_before.forget(self._db)
            elif self.roster_id() != number:
                list_before.keep(self._db, self.roster_id(), before, "", (), when)
            list_before.forget_if_joined(self._db)
            return update

    def save_list(self, text: str, settings: Mapping[str, str], *, same: Mapping[int, int] | None = None,
                  after_roster: int | None = None, whole: bool = False, settled: frozenset[str] = frozenset(),
                  words: Mapping[str, str] = WORDS, who: str = "", when: When = None,
                  answers: Answers = NO_ANSWERS, looked_at: Collection[str] = (),
                  mark: Callable[[str], str] = str) -> RosterUpdate:
        """Take a roster together with settings of the class, so that ``undo_roster`` can take both back for a day.

        The draft is done with, and comes back with an undoing, as do the answers in ``settled``. ``looked_at`` are
        hashes of lines of which no later list asks again, ``mark`` makes such a hash. Raises as ``update_roster``.
        """
        with self.changing():
            before, number = list_before.held(self._db, self._settings_of_list(settings)), self.roster_id()
            set_too = self.set_class_settings(settings, who=who, when=when)
            after = self.roster_id() if after_roster == number else after_roster  # read again, it may have a new one
            update = rosters.take_roster(self._db, text, self._part(), who, when, same or {}, after, whole=whole,
                                         words=words, answers=answers)
            if set_too or self.roster_id() != number:
                list_before.keep(self._db, self.roster_id(), before, self.roster_text(),
                                 self._on_kept_lines(settled, update.roster, mark), when)
            answered.keep(self._db, looked_at)
            drafts.discard(self._db)
            return update

    def _on_kept_lines(self, settled: Collection[str], typed: Roster, mark: Callable[[str], str]) -> list[str]:
        """Return answers about a list that was just saved by its lines as they are kept, a child in each."""
        if not settled:
            return []
        kept, as_typed = self.roster_text().splitlines(), {line.line: line.text for line in typed.lines}
        lines = sorted(one.child.line for one in self.children())
        pairs = zip((as_typed[child.line] for child in typed.children), (kept[at - 1] for at in lines), strict=False)
        return list_before.on_kept_lines(settled, pairs, mark)

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
                update = rosters.take_roster(self._db, text, part, "", None, same or {}, None, whole=True,
                                             answers=answers)
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
            saves.keep(self._db, None, back, "", None, None)
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

    def make_one(self, double: int, child_id: int, *, who: str = "", when: When = None) -> int:
        """Make a child of whom there is a double one again, with what is kept of both; return how many notes went over.

        There is no undo. Raises ClassbookError, with nothing changed, for a child we do not know, and for one child.
        """
        with self.changing():
            return doubles.make_one(self._db, double, child_id, self._part(), who, when)

    # --- settings -------------------------------------------------------------------------------------

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
            save = saves.keep(self._db, None, texts, who, when, after_save)
            if save:
                self._follow(save, who, when)
            return save

    def _follow(self, save: Save, who: str, when: When) -> None:
        """Read the roster again where the part of the name that the class practises is another now."""
        if any(change.key == "practise" for change in save.changes):
            rosters.read_again(self._db, self._part(), who, when)

    def set_settings(self, child_id: int, texts: Mapping[str, str], *, who: str = "", when: When = None,
                     after_save: int | None = None) -> Save | None:
        """Set settings of a child together, to be undone together; return the save, or None where nothing is new.

        ``after_save`` refuses the change if the child's newest save is another (0: none).
        """
        with self.changing():
            check_beats(self.child(child_id).child.practice, texts.get("beats", ""))
            return saves.keep(self._db, child_id, texts, who, when, after_save)

    def undo(self, child_id: int | None, *, who: str = "", when: When = None,
             after_save: int | None = None) -> Save | None:
        """Take back the newest save of a child (None: of the class) that was not taken back yet.

        Return the save that did it, or None where there is nothing to take back. ``after_save`` is as for
        ``set_settings``: with it a button pressed twice undoes once.
        """
        with self.changing():
            save = saves.undo(self._db, child_id, who, when, after_save)
            if save and child_id is None:
                self._follow(save, who, when)
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

    # --- what is kept of the plan ---------------------------------------------------------------------

    def groups(self) -> dict[int, int]:
        """Return the group, from 1, of each child who is here and was in one when they were kept last, by id."""
        with self._reading():
            return plans.groups(self._db)

    def keep_groups(self, groups: Mapping[int, int]) -> None:
        """Keep these groups, by id of child, in place of those of last time; the file is not touched by the same."""
        if self.groups() != groups:
            with self.changing():
                plans.keep_groups(self._db, groups)

    def taught(self) -> dict[date, tuple[str, ...]]:
        """Return the letters of each week that was planned, by its Monday, the earliest first."""
        with self._reading():
            return plans.taught(self._db)

    def keep_taught(self, monday: date, letters: Iterable[str]) -> None:
        """Keep the letters of a week in place of what it had; the file is not touched by the same."""
        wanted = tuple(letters)
        if self.taught().get(monday, ()) != wanted:
            with self.changing():
                plans.keep_taught(self._db, monday, wanted)

    def seats(self) -> tuple[tuple[int, int, bool], ...]:
        """Return who shall sit together (true) or apart, by ids, where both are here."""
        with self._reading():
            return plans.seats(self._db)

    def seat(self, one: int, other: int, together: bool | None) -> None:
        """Say that two children shall sit together or apart; None takes back what was said of them.

        Raises ClassbookError for a child we do not know, and for a child with itself.
        """
        pair = self.child(one).id, self.child(other).id
        if one == other:
            raise ClassbookError("classbook.one_seat")
        with self.changing():
            plans.seat(self._db, *pair, together)

    # --- erasing for good -----------------------------------------------------------------------------

    def traces(self, child_ids: Iterable[int]) -> tuple[Trace, ...]:
        """Return where names that may be these children's stand besides in what is kept of them.

        Raises ClassbookError for a child we do not know.
        """
        with self._reading():
            return erasing.traces(self._db, frozenset(child_ids), self._part())

    def erase(self, child_ids: Iterable[int], *, who: str = "", when: When = None,
              also: Iterable[str] = ()) -> Erased:
        """Erase children for good: their lines in the list, settings, history and notes. There is no undo.

        ``also`` are keys of ``traces`` from which the names go too. The file is packed afresh, so that no bytes of what
        was erased stay in it. Raises ClassbookError, with nothing changed, for a child we do not know.
        """
        with self.changing():
            erased = erasing.erase(self._db, frozenset(child_ids), self._part(), who, when, frozenset(also))
        self._pack()
        return erased

    @property
    def part(self) -> NamePart:
        """Return the part of the name that the class practises."""
        with self._reading():
            return self._part()

    def _part(self) -> NamePart:
        return NamePart(saves.class_settings(self._db).get("practise", NamePart.GIVEN))

    def erase_all(self) -> None:
        """Erase the class for good; what stays is an empty class with a new ``class_id``."""
        with self.changing():
            erasing.erase_all(self._db)
        self._pack()

    # --- what was seen --------------------------------------------------------------------------------

    def observe(self, child_id: int, day: date | str, letters: Iterable[int] | None = None, *,
                support: Support | None = None, stage: Stage | None = None, note: str = "", who: str = "",
                when: When = None, token: str | None = None,
                not_yet: Iterable[int] | None = None, in_place_of: Iterable[int] = ()) -> Observation:
        """Note what was seen on a day: positions in ``clusters(child.practice)``, None if not looked at.

        ``not_yet`` are letters said not to be formed yet, None all that ``letters`` leaves out. Several notes on one
        day add up (``looks``); all are kept. ``token`` is any text of the
        caller's own: a second call with the same one returns the first note and adds nothing. ``in_place_of`` are
        notes of this child and day that the new one was made from: they stay in the file and are shown no more, so
        that a letter can be taken away again.
        """
        with self.changing():
            name = self.child(child_id).child.practice
            noted = seen.observe(self._db, child_id, name, day, letters, support, stage, note, who, when, token,
                                 not_yet)
            seen.replace(self._db, noted, in_place_of)
            return noted

    def strike(self, observation_id: int, *, when: When = None) -> None:
        """Take a note back: it stays in the file and is shown no more."""
        with self.changing():
            seen.strike(self._db, observation_id, when)

    def observations(self, child_id: int) -> tuple[Observation, ...]:
        """Return what was seen of a child, by day and then as it was noted."""
        with self._reading():
            return seen.observations(self._db, child_id)
