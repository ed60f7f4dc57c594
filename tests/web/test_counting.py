"""How many pages there will be: the same number as in the PDF, part by part, each part counted once."""

from __future__ import annotations

import io
import re

import pytest
from flask import Flask
from pypdf import PdfReader
from test_printing import _made
from webhelp import Visitor, finished

from namewright.making.request import Kind
from namewright.web.class_pdf import parted, request_for
from namewright.web.counting import tally
from namewright.web.desk import desk, members


def counted_for(visitor: Visitor, form: dict[str, str | list[str]]) -> str:
    """Ask for the count of an order until it is whole."""
    told = ""
    for _ in range(50):
        told = visitor.post("/print/count", form).text  # type: ignore[arg-type]
        if 'data-tally="whole"' in told:
            break
    return told


@pytest.mark.parametrize("kinds", [["sheets"], ["tiles", "cards"],
                                   ["groups", "find", "plan", "answers"]])
def test_as_many_are_counted_as_are_printed(settled: Visitor, kinds: list[str]) -> None:
    """All that the PDFs hold together, adult's and children's."""
    form: dict[str, str | list[str]] = {"what": kinds, "who": "all"}
    counted = int(re.findall(r"(\d+) pages", counted_for(settled, form))[0])
    answer = settled.post("/print", form)  # type: ignore[arg-type]
    if "and_" in answer.headers["Location"]:
        keys = _made(settled, answer.headers["Location"])
    else:
        keys = [finished(settled, answer).removeprefix("/print/")]
    assert counted == sum(len(PdfReader(io.BytesIO(settled.get(f"/print/{key}/pages.pdf").data)).pages)
                          for key in keys)


def test_counting_stops_after_a_moment_and_goes_on(app: Flask) -> None:
    """At least one part each time, and no part twice."""
    asked = parted(request_for((Kind.SHEETS,), members()))
    done = [tally(asked, {}, for_s=0.0).done for _ in range(8)]
    assert done == [1, 2, 3, 4, 5, 6, 7, 7]
    assert tally(asked, {}, for_s=0.0).whole
    assert len(desk()._counts) == 7


def test_who_cannot_be_made_is_told(visitor: Visitor) -> None:
    """By the name as it was typed, with the way to the line of the list."""
    visitor.keep("Kirrin Vost\nАнна Dolt\n")
    told = counted_for(visitor, {"what": "sheets", "who": "all"})
    assert "One page" in told
    assert "Анна" in told
    assert "U+" not in told
    assert "/class/list#line-2" in told
