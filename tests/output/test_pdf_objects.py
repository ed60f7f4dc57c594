"""Numbered objects, packed into streams, and the table of where each lies: read by QPDF (pikepdf) and pypdf."""

from __future__ import annotations

import io

import pikepdf
import pypdf
import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.output.pdf.objects import ObjectFile, deflated, references, text_string


def written(objects: int) -> bytes:
    """Return a file of one empty page and so many integers in the catalogue, each an object of its own."""
    out = io.BytesIO()
    file = ObjectFile(out)
    root, pages = file.reserve(), file.reserve()
    content = file.put_stream(b"", deflated(b"q Q"))
    page = file.put(b"<</Type/Page/Parent %d 0 R/MediaBox[0 0 100 200]/Resources<<>>/Contents %d 0 R>>"
                    % (pages, content))
    file.put(b"<</Type/Pages/Count 1/Kids%s>>" % references([page]), pages)
    numbers = [file.put(b"%d" % (7 * at)) for at in range(objects)]
    info = file.put(b"<</Title%s>>" % text_string("Zoë (4)"))
    file.put(b"<</Type/Catalog/Pages %d 0 R/Test%s>>" % (pages, references(numbers)), root)
    file.finish(root, info)
    return out.getvalue()


@pytest.mark.parametrize("objects", [0, 1, 199, 200, 201, 1000])
def test_every_object_is_found_where_the_table_says(objects: int) -> None:
    """However many streams they fill; one that was referred to first and put last, too."""
    with pikepdf.open(io.BytesIO(written(objects))) as read:
        assert [int(each) for each in read.Root.Test] == [7 * at for at in range(objects)]
        assert read.pages[0].Contents.read_bytes() == b"q Q"
        assert read.docinfo["/Title"] == "Zoë (4)"
        assert read.check_pdf_syntax() == []
    assert pypdf.PdfReader(io.BytesIO(written(objects))).metadata["/Title"] == "Zoë (4)"  # type: ignore[index]


def test_a_file_is_what_it_says_it_is() -> None:
    """Version 1.7, four bytes above 127 in its second line (ISO 32000-1, 7.5.2), an end of file."""
    data = written(1)
    first, second = data.split(b"\n")[:2]
    assert first == b"%PDF-1.7"
    assert sum(byte > 127 for byte in second) == 4
    assert data.endswith(b"%%EOF\n")


@given(st.text(st.characters(codec="utf-8", exclude_categories=("Cs", "Cc")), max_size=20))
def test_any_text_is_read_back(text: str) -> None:
    """Brackets, backslashes, letters of every script and beyond the basic plane."""
    assert str(pikepdf.Object.parse(text_string(text))) == text


def test_references_are_an_array() -> None:
    """Of indirect references, in order; none is an empty one."""
    assert references([3, 12]) == b"[3 0 R 12 0 R]"
    assert references([]) == b"[]"
