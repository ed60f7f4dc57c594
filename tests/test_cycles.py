"""Cycles are looked for seldom, which is no leak only as long as making pages leaves none behind."""

from __future__ import annotations

import gc
import io
from collections.abc import Iterator

import pytest

from namewright.cycles import look_seldom
from namewright.lines.ruling import preset
from namewright.output.pdf import write_pdf
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.parsing import read_roster

NAMES = "Mira Vost\nOtto Brane\nZoë Lindle\nAnne-Marie Quorn\nÍñigo Tamsel\n"


@pytest.fixture(autouse=True)
def _as_before() -> Iterator[None]:
    before = gc.get_threshold()
    yield
    gc.set_threshold(*before)
    gc.enable()


def test_a_class_from_its_list_to_its_pdf_leaves_no_cycles() -> None:
    """No object is left that only a search for cycles would find, however many children there are."""
    settings, setter = SheetSettings(preset("us-3/4")), Typesetter()

    def made() -> None:
        names = [one.child.practice for one in order_class(read_roster(NAMES).children)]
        pages = (page for name in names for page in practice_pages(setter, name, name, settings))
        write_pdf(pages, io.BytesIO(), title="Names", lang="en")

    made()  # what is loaded and worked out for the first time may leave some
    gc.collect()
    gc.disable()
    made()
    assert gc.collect() == 0


def test_cycles_are_looked_for_seldom_and_not_never() -> None:
    """A program that runs for a day finds what its screens leave."""
    look_seldom()
    new, *older = gc.get_threshold()
    assert new >= 100_000
    assert all(older)
    assert gc.isenabled()
