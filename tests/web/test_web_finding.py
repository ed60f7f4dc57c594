"""Who is meant by the beginning of a name. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.records import NO_SETTINGS, BookChild
from namewright.practice.ordering import completed, order_class
from namewright.roster.children import Child
from namewright.tuning import Tuning
from namewright.web.desk import Member
from namewright.web.finding import beginning, by_alphabet, by_initial

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


def test_a_letter_with_a_stroke_stands_with_its_base_letter() -> None:
    """Ł with L, Ø with O, Đ with D, as Ç with C; found by the base letter, and as it is written."""
    names = ["Zara", "Łucja", "Lumi", "Lyra", "Søren", "Sunna", "Çağla", "Cora", "Đura", "Dulce", "Ørn"]
    children = [Child(name, name, name, "", line) for line, name in enumerate(names, start=1)]
    everyone = [Member(BookChild(each.child.line, each.child, Tuning(), NO_SETTINGS, ""), each)
                for each in completed(order_class(children))]
    shown = by_alphabet(everyone)
    assert [(letter, [one.label for one in some]) for letter, some in by_initial(shown)] == [
        ("C", ["Çağla", "Cora"]), ("D", ["Dulce", "Đura"]), ("L", ["Łucja", "Lumi", "Lyra"]), ("O", ["Ørn"]),
        ("S", ["Søren", "Sunna"]), ("Z", ["Zara"])]
    assert [[one.label for one in beginning(typed, everyone)] for typed in ("luc", "Łuc", "so")] == [
        ["Łucja"], ["Łucja"], ["Søren"]]
