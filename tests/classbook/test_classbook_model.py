"""Any sequence of rosters, settings, undos and reopenings, against a plain model of what must be there."""

from __future__ import annotations

import tempfile
from pathlib import Path

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from namewright.classbook import Classbook

NAMES = ("Mira Quill", "Tilo Reed", "Ava Finch", "Ava Moss", "Zoë Vale", "Bo")
CHILDREN = st.sampled_from(range(1, len(NAMES) + 1))
VALUES = {"support": ("", "full", "light"), "rows": ("", "2", "3"), "hand": ("", "left")}
SETTINGS = st.fixed_dictionaries({}, optional={key: st.sampled_from(texts) for key, texts in VALUES.items()})


class ClassModel(RuleBasedStateMachine):
    """The model: who is here, what is set, the saves that could be undone, and who is in which group."""

    @initialize()
    def begin(self) -> None:
        self.folder = tempfile.TemporaryDirectory()
        self.path = Path(self.folder.name) / "class.db"
        self.book = Classbook.open(self.path)
        self.book.update_roster("\n".join(NAMES))
        self.here = set(range(1, len(NAMES) + 1))
        self.set: dict[int, dict[str, str]] = {child: {} for child in self.here}
        self.done: dict[int, list[dict[str, str]]] = {child: [] for child in self.here}
        self.saves = dict.fromkeys(self.here, 0)
        self.groups: dict[int, int] = {}

    @rule(present=st.permutations(range(1, len(NAMES) + 1)), count=st.integers(1, len(NAMES)))
    def paste(self, present: list[int], count: int) -> None:
        update = self.book.update_roster("\n".join(NAMES[child - 1] for child in present[:count]))
        assert set(update.left) == self.here - set(present[:count])
        assert set(update.returned) == set(present[:count]) - self.here
        assert not update.joined
        self.here = set(present[:count])

    @rule(child=CHILDREN, texts=SETTINGS)
    def change(self, child: int, texts: dict[str, str]) -> None:
        after = {key: text for key, text in {**self.set[child], **texts}.items() if text}
        save = self.book.set_settings(child, texts)
        assert (save is None) == (after == self.set[child])
        if save:
            self.done[child].append(self.set[child])
            self.set[child] = after
            self.saves[child] += 1

    @rule(child=CHILDREN)
    def undo(self, child: int) -> None:
        save = self.book.undo(child)
        assert (save is None) == (not self.done[child])
        if save:
            self.set[child] = self.done[child].pop()
            self.saves[child] += 1

    @rule(numbers=st.lists(st.integers(1, 3), min_size=len(NAMES), max_size=len(NAMES)))
    def group(self, numbers: list[int]) -> None:
        self.groups = {child: numbers[child - 1] for child in self.here}
        self.book.keep_groups(self.groups)

    @precondition(lambda self: hasattr(self, "book"))
    @rule()
    def reopen(self) -> None:
        self.book.close()
        self.book = Classbook.open(self.path)

    @invariant()
    def all_is_there(self) -> None:
        if not hasattr(self, "book"):
            return
        everyone = self.book.children(left=True)
        assert sorted(one.id for one in everyone) == list(range(1, len(NAMES) + 1))
        assert {one.id for one in everyone if one.left is None} == self.here
        assert {one.id: dict(one.settings) for one in everyone} == self.set
        assert self.book.groups() == {child: number for child, number in self.groups.items() if child in self.here}

    def teardown(self) -> None:
        if hasattr(self, "book"):
            assert {child: len(self.book.history(child)) for child in self.saves} == self.saves
            self.book.close()
            self.folder.cleanup()


TestClassModel = ClassModel.TestCase
TestClassModel.settings = settings(max_examples=20, stateful_step_count=15)
