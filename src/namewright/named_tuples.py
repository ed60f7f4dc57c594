"""``NamedTuple`` as ``typing`` has it, but quickly defined: in a seventh of the time.

``typing`` compiles what each field is annotated with, a string in our modules, to see whether it is a type, and makes
every class methods of its own: with more than a hundred classes that was two fifths of loading the program. Type
checkers see ``typing``'s own and look themselves.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import NamedTuple as NamedTuple
else:
    from collections import _tuplegetter
    from functools import cache
    from types import CodeType, FunctionType

    class _Values(tuple):
        """What all named tuples can do."""

        __slots__ = ()

        @classmethod
        def _make(cls, values):
            return cls(*values)

        def _asdict(self):
            return dict(zip(self._fields, self, strict=True))

        def _replace(self, /, **changes):
            changed = tuple.__new__(type(self), map(changes.pop, self._fields, self))
            if changes:
                raise ValueError(f"{type(self).__name__} has no {', '.join(changes)}")
            return changed

        def __repr__(self):
            told = ", ".join(f"{field}={value!r}" for field, value in self._asdict().items())
            return f"{type(self).__name__}({told})"

        def __getnewargs__(self):
            return tuple(self)

    @cache
    def _code(count: int) -> CodeType:
        """Return the code that makes a tuple of so many arguments: compiled once, for classes name them differently."""
        given = ", ".join(f"_{at}" for at in range(count))
        return eval(f"lambda cls, {given}: new(cls, ({given},))").__code__

    class _Defining(type):
        """Makes a class whose body annotates fields a named tuple with these fields, and with all else of the body."""

        def __new__(cls, name, _, body):
            fields = tuple(body["__annotations__"])
            defaults = {field: body.pop(field) for field in fields if field in body}
            code = _code(len(fields)).replace(co_varnames=("cls", *fields))
            new = FunctionType(code, {"new": tuple.__new__}, "__new__", tuple(defaults.values()))
            new.__annotations__ = body["__annotations__"]
            return type(name, (_Values,), {
                **body, **{field: _tuplegetter(at, field) for at, field in enumerate(fields)}, "__new__": new,
                "__slots__": (), "__match_args__": fields, "_fields": fields, "_field_defaults": defaults})

    NamedTuple = type.__new__(_Defining, "NamedTuple", (), {})
