"""Several processes make what one makes, and one that is ended is told."""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest

from namewright.commands.processes import parts_by
from namewright.commands.splitting import Part, chunks, part
from namewright.commands.talk import Refusal
from namewright.making.choices import Choices
from namewright.making.request import Kind, Request, listed
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.parsing import read_roster

CLASS = "Mira\nTilo\nМарко\nZoë\nJonquil\nFenwick\nBo\nWren\nÍñigo\nRook\n"


def asked() -> Request:
    placed = order_class(read_roster(CLASS).children)
    return Request((Kind.SHEETS,), tuple(map(listed, placed)), Choices(), Choices())


def plain(parts: Iterator[Part]) -> list[object]:
    """Return parts as what can be compared: two problems are equal when they say the same."""
    return [(one._replace(not_made=()), [(no.kind, no.child, type(no.cause), no.cause.message) for no in one.not_made])
            for one in parts]


def _ended() -> Typesetter:
    os._exit(3)


@pytest.mark.parametrize("jobs", [1, 2])
def test_processes_make_what_one_makes(jobs: int) -> None:
    """Drawn pages and the account of every chunk, in the order of the class."""
    alone = plain(part(one, Typesetter()) for one in chunks(asked(), 3))
    assert len(alone) == 4
    assert plain(parts_by(jobs, chunks(asked(), 3), Typesetter)) == alone
    assert sum(len(missed) for _, missed in alone) >= 1  # type: ignore[misc]


def test_a_process_that_is_ended_is_told() -> None:
    """In a sentence, with a way on."""
    with pytest.raises(Refusal, match="helper_ended"):
        list(parts_by(2, chunks(asked(), 3), _ended))
