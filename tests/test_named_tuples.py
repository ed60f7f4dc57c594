"""Our named tuples do what those of ``typing`` do."""

from __future__ import annotations

import copy
import inspect
import pickle
import typing
from collections.abc import Callable

import pytest

from namewright import named_tuples
from namewright.geometry.boxes import Box


class Ours(named_tuples.NamedTuple):
    """A value."""

    name: str
    box: Box
    height: float = 2.5
    tags: tuple[str, ...] = ()

    @property
    def tall(self) -> bool:
        """Return whether it is tall."""
        return self.height > 2

    @classmethod
    def of(cls, name: str) -> Ours:
        return cls(name, (0, 0, 1, 1))

    def __str__(self) -> str:
        return f"{self.name}!"


class Theirs(typing.NamedTuple):
    """A value."""

    name: str
    box: Box
    height: float = 2.5
    tags: tuple[str, ...] = ()

    @property
    def tall(self) -> bool:
        """Return whether it is tall."""
        return self.height > 2

    @classmethod
    def of(cls, name: str) -> Theirs:
        return cls(name, (0, 0, 1, 1))

    def __str__(self) -> str:
        return f"{self.name}!"


class Lone(named_tuples.NamedTuple):
    only: int


BOX = (0.0, 1.0, 2.0, 3.0)
Made = Callable[[type], object]
DONE: dict[str, Made] = {
    "by place": lambda kind: tuple(kind("Bo", BOX, 1.0, ("a",))),
    "by name": lambda kind: tuple(kind(box=BOX, name="Bo", tags=("b",))),
    "usual": lambda kind: (kind("Bo", BOX).height, kind("Bo", BOX).tags),
    "fields": lambda kind: (kind._fields, kind._field_defaults, kind.__match_args__),  # type: ignore[attr-defined]
    "as a dictionary": lambda kind: kind("Bo", BOX)._asdict(),
    "replaced": lambda kind: tuple(kind("Bo", BOX)._replace(name="Mira", height=1.0)),
    "of the same kind": lambda kind: isinstance(kind("Bo", BOX)._replace(name="Mira"), kind),
    "from a row": lambda kind: tuple(kind._make(["Bo", BOX, 1, ()])),  # type: ignore[attr-defined]
    "told": lambda kind: repr(kind("Bo", BOX)).replace(kind.__name__, "Kind"),
    "equal to a tuple": lambda kind: (kind("Bo", BOX) == ("Bo", BOX, 2.5, ()), hash(kind("Bo", BOX))),
    "methods": lambda kind: (kind("Bo", BOX).tall, tuple(kind.of("Mira")), str(kind("Bo", BOX))),  # type: ignore[attr-defined]
    "no other attributes": lambda kind: hasattr(kind("Bo", BOX), "__dict__"),
    "told about": lambda kind: (kind.__doc__, kind.__module__, kind.__mro__[-2:], type(kind)),
    "signature": lambda kind: [(one.name, one.kind, one.default)
                               for one in inspect.signature(kind).parameters.values()],
    "types": typing.get_type_hints,
    "copied": lambda kind: tuple(copy.deepcopy(kind("Bo", BOX))),
    "sent": lambda kind: tuple(pickle.loads(pickle.dumps(kind("Bo", BOX)))),
    "sent as": lambda kind: isinstance(pickle.loads(pickle.dumps(kind("Bo", BOX))), kind),
}
REFUSED: dict[str, Made] = {
    "too few": lambda kind: kind("Bo"),
    "too many": lambda kind: kind("Bo", BOX, 1.0, (), 5),
    "unknown": lambda kind: kind("Bo", BOX, width=1.0),
    "twice": lambda kind: kind("Bo", BOX, name="Mira"),
    "set": lambda kind: setattr(kind("Bo", BOX), "name", "Mira"),
    "a new one": lambda kind: setattr(kind("Bo", BOX), "width", 1.0),
    "replaced unknown": lambda kind: kind("Bo", BOX)._replace(width=1.0),
    "a short row": lambda kind: kind._make(["Bo"]),  # type: ignore[attr-defined]
}


@pytest.mark.parametrize("said", DONE)
def test_it_answers_as_theirs(said: str) -> None:
    assert DONE[said](Ours) == DONE[said](Theirs)


@pytest.mark.parametrize("said", REFUSED)
def test_it_refuses_what_theirs_refuses(said: str) -> None:
    for kind in (Theirs, Ours):
        with pytest.raises((TypeError, AttributeError, ValueError)):
            REFUSED[said](kind)


def test_it_is_matched_by_place() -> None:
    match Ours("Bo", BOX):
        case Ours(name, box, height=height):
            assert (name, box, height) == ("Bo", BOX, 2.5)


def test_one_field_and_no_two_classes_share_names() -> None:
    """Classes of as many fields share the code that makes them, not what it is called by."""
    assert (tuple(Lone(5)), Lone(only=5).only) == ((5,), 5)
    with pytest.raises(TypeError, match="name"):
        Lone(name=5)  # type: ignore[call-arg]
