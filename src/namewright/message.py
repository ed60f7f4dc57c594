"""What is told to a person, as a value: a key and its fields. Words are chosen last, by ``wording``.

A field keeps its meaning until then: a number stays a number, a choice stays a member of its enumeration, a list
stays a tuple, and a message may stand inside another. Nothing in the house reads a worded sentence back.
"""

from __future__ import annotations

from typing import Final, Union

Field = Union[str, int, float, "Message", tuple["Field", ...]]


class Message:
    """A key of ``wording/*.toml`` and the fields that its template names, sorted by name.

    A field that is a str is said as it is (a name, a file, something typed); a StrEnum is said by the word for it.
    A message is no tuple, as other values are: a field that is a tuple is a list.
    """

    __slots__ = ("fields", "key")

    def __init__(self, key: str, fields: tuple[tuple[str, Field], ...] = ()) -> None:
        self.key: Final = key
        self.fields: Final = fields

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Message) and (self.key, self.fields) == (other.key, other.fields)

    def __hash__(self) -> int:
        return hash((self.key, self.fields))

    def __repr__(self) -> str:
        return f"Message({self.key!r}, {self.fields!r})"

    def __getitem__(self, name: str) -> Field:
        """Return a field. Raises KeyError where the message has none of that name."""
        return dict(self.fields)[name]

    def __str__(self) -> str:
        """Show key and fields, for whoever develops; a person reads what ``wording`` makes of it."""
        inside = ", ".join(f"{name}={value!s}" for name, value in self.fields)
        return f"{self.key}({inside})" if inside else self.key


def message(key: str, /, **fields: Field) -> Message:
    """Return the message of a key with these fields."""
    return Message(key, tuple(sorted(fields.items())))


def together(*told: Message) -> Message:
    """Return messages said one after another, each a sentence of its own, as one."""
    return told[0] if len(told) == 1 else message("together", told=told)


class Problem(ValueError):
    """An error that a person can do something about: it carries the message that says what, where and what to do."""

    def __init__(self, told: Message | str, /, **fields: Field) -> None:
        """Take a message, or a key and its fields."""
        self.message = message(told, **fields) if isinstance(told, str) else told
        super().__init__(self.message)

    def __reduce__(self) -> tuple[object, ...]:
        """Tell how it goes from process to process: as it is, for what it was made from is no longer known."""
        return _again, (type(self), self.args, self.__dict__)


def _again(kind: type[Problem], args: tuple[object, ...], inside: dict[str, object]) -> Problem:
    problem = kind.__new__(kind, *args)
    problem.__dict__.update(inside)
    return problem
