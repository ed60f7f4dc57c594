"""A child as the class has it when a list comes, and a name as an adult writes it."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from namewright.message import Field, message
from namewright.named_tuples import NamedTuple

NOTHING_LISTED: Mapping[str, Any] = MappingProxyType({})


class Known(NamedTuple):
    """A child as the database has it; ``here`` is false for one who has left.

    ``goes_by`` is what the child is called where that is not the given name, ``also`` the whole name as lists have it,
    in another script or with a slip; both are empty where there is none. ``listed`` is what a list said of
    the child besides its names, by the fields of ``Child``.
    """

    id: int
    given: str
    family: str
    practice: str
    label: str
    here: bool
    goes_by: str = ""
    also: str = ""
    listed: Mapping[str, Any] = NOTHING_LISTED

    @property
    def shown(self) -> Field:
        """Return the name as an adult knows it: whole, with what the child is called where that is something else."""
        return written(self.given, self.family, self.practice)


def written(given: str, family: str, practice: str) -> Field:
    """Return a name as an adult writes it: ``Katherine “Katie” Moss``, with the quotation marks of a language."""
    whole = " ".join(part for part in (given or practice, family) if part)
    if not given or practice in (given, family, whole):
        return whole
    called = message("quoted", words=practice)
    if not family:
        return message("classbook.called", given=given, called=called)
    return message("classbook.called_whole", given=given, called=called, family=family)
