"""Who is meant by the beginning of a name. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.records import NO_SETTINGS, BookChild
from namewright.practice.ordering import completed, order_class
from namewright.roster.children import Child
from namewright.tuning import Tuning
from namewright.web.desk import Member
from namewright.web.finding import beginning

CHILDREN = [Child("Mimi", "Mimi", "Mirabel", "Quill", 1), Child("Zoë", "Zoë", "Zoë", "Mirow", 2),
            Child("Íñigo", "Íñigo", "Íñigo", "Quorn", 3), Child("Ava", "Ava B.", "Ava", "Birn", 4)]
EVERYONE = [Member(BookChild(each.child.line, each.child, Tuning(), NO_SETTINGS, ""), each)
            for each in completed(order_class(CHILDREN))]


@pytest.mark.parametrize(("typed", "found", "why"), [
    ("mi", {"Mimi"}, "what she goes by; a family name that begins so does not count beside it"),
    ("MIRA", {"Mimi"}, "the given name too"), ("ini", {"Íñigo"}, "marks and capitals aside"),
    ("zoe", {"Zoë"}, "so an aide need not find ë"), ("mirow", {"Zoë"}, "a family name, where no name begins so"),
    ("qu", {"Mimi", "Íñigo"}, "everyone of whom it is true"), ("ava b", {"Ava B."}, "the label"),
    ("x", set(), "nobody"),
])
def test_who_is_found(typed: str, found: set[str], why: str) -> None:
    assert {one.label for one in beginning(typed, EVERYONE)} == found, why
