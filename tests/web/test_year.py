"""What was noted of a child, on paper and as a table."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from webhelp import Visitor

PATHS = ("/child/1/year.pdf", "/child/1/talk.pdf", "/child/1/record.pdf", "/child/1/record.csv")


@pytest.mark.parametrize("path", PATHS)
def test_there_is_a_page_once_something_was_noted(settled: Visitor, path: str) -> None:
    """Its file's name tells what it is and of which day, and nothing about the child."""
    assert settled.get(path).status_code == 404
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "note": "proud"})
    answer = settled.get(path)
    assert answer.status_code == 200
    assert "ottilka" not in str(answer.headers).lower()
    named = answer.headers["Content-Disposition"].partition('filename="')[2]
    assert named.startswith(path.rpartition("/")[2].partition(".")[0])


def test_words_are_on_the_page_for_a_talk_only_where_they_are_asked_for(settled: Visitor) -> None:
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "note": "sang each letter"})
    texts = [PdfReader(io.BytesIO(settled.get(path).data)).pages[0].extract_text()
             for path in ("/child/1/talk.pdf", "/child/1/talk.pdf?words=1")]
    assert ["sangeachletter" in text.replace(" ", "") for text in texts] == [False, True]


def test_the_year_of_the_class(settled: Visitor) -> None:
    assert settled.get("/class/year.pdf").data.startswith(b"%PDF")
