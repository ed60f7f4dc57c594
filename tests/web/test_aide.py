"""One child, now: found by a few letters, with a card or a sheet."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from webhelp import Visitor


@pytest.mark.parametrize(("typed", "child"), [("ta", 2), ("tamsel", 1), ("ot", 1)])
def test_a_name_goes_before_a_family_name(visitor: Visitor, typed: str, child: int) -> None:
    """Two letters mean the child who is called so; a family name counts where nobody is."""
    visitor.keep("Ottilka Tamsel\nTavi Brane\nMirel Tamworth\n")
    answer = visitor.post("/now", {"letters": typed, "size": "sheet"})
    assert answer.headers["Location"].startswith(f"/child/{child}/card.pdf")


def test_the_aide_may_have_the_sheet(settled: Visitor) -> None:
    """The practice sheet can be made in place of a card, also for a name that is not in the class."""
    answer = settled.post("/now", {"letters": "ott", "size": "practice"})
    assert answer.headers["Location"] == "/child/1/sheet.pdf"
    typed = settled.post("/now", {"letters": "Zuriel", "size": "practice"})
    assert PdfReader(io.BytesIO(typed.data)).outline[0].title == "Zuriel"  # type: ignore[union-attr]
    assert "Make the practice sheet instead" not in settled.post("/now", {"letters": "春", "size": "sheet"}).text
