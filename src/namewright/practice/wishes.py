"""What an adult asks of a class's tables (``groups``)."""

from __future__ import annotations

from namewright.named_tuples import NamedTuple


class Wishes(NamedTuple):
    """What an adult asks of the tables: how many (None: three to five children each), and pairs of labels."""

    tables: int | None = None
    together: tuple[tuple[str, str], ...] = ()
    apart: tuple[tuple[str, str], ...] = ()


NO_WISHES = Wishes()
