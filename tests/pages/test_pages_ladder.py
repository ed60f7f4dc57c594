"""The ladder of support: what each rung gives, and that a child's sheet holds the rungs that were chosen."""

from __future__ import annotations

import pytest

from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import preset
from namewright.message import Problem
from namewright.pages.ladder import MAX_TRACED, RUNGS, TRACED, Chain, Ladder, Part, given, read_rungs, repeats
from namewright.pages.page import Row
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

B, D, S = Form.BLANK, Form.DOTTED, Form.SOLID


def forms(setter: Typesetter, name: str, part: Part, ladder: Ladder, time: int = 0, times: int = 1) -> list[Form]:
    return given(setter.ruled(preset("de-6")).line(name), part, ladder, time, times)


@pytest.mark.parametrize(("part", "wanted"), [
    (Part.MARKED, [D] * 4), (Part.DOTS, [D] * 4), (Part.WIDE, [Form.WIDE] * 4), (Part.STARTS, [Form.STARTS] * 4),
    (Part.FIRST, [S, B, B, B])])
def test_each_rung_gives_what_it_says(setter: Typesetter, part: Part, wanted: list[Form]) -> None:
    """All dots, dots twice as far apart, only where strokes begin, or the first letter alone."""
    assert forms(setter, "Wren", part, Ladder()) == wanted


def test_a_backward_chain_leaves_the_last_letters_first(setter: Typesetter) -> None:
    """From name to name in a row fewer letters are dotted; the first letter is given longest, never all are."""
    row = [forms(setter, "Jonquil", Part.RUN_OUT, Ladder(), time, 3) for time in range(3)]
    assert row == [[D] * 5 + [B] * 2, [D] * 4 + [B] * 3, [D] * 2 + [B] * 5]


def test_a_forward_chain_leaves_the_first_letters_first(setter: Typesetter) -> None:
    """The same from the other end: the last letter is given longest."""
    ladder = Ladder(chain=Chain.FORWARD)
    row = [forms(setter, "Jonquil", Part.RUN_OUT, ladder, time, 3) for time in range(3)]
    assert row == [[B] * 2 + [D] * 5, [B] * 3 + [D] * 4, [B] * 5 + [D] * 2]


@pytest.mark.parametrize("part", [Part.RUN_OUT, Part.WIDE, Part.STARTS, Part.FIRST])
def test_a_hard_letter_keeps_its_dots(setter: Typesetter, part: Part) -> None:
    """Letters that are to keep their dots have them on every rung, wherever they stand; no other letter changes."""
    usual, kept = (forms(setter, "Abigail", part, Ladder(keep=keep)) for keep in ("", "ag"))
    for letter, one, other in zip("Abigail", usual, kept, strict=True):
        assert other == (D if letter in "ag" else one)


def test_rungs_are_read_in_any_order_and_stand_in_theirs() -> None:
    """However they are typed, rungs go from the most given to the least."""
    assert read_rungs("first-letter, dots wide-dots") == (Part.DOTS, Part.WIDE, Part.FIRST)


@pytest.mark.parametrize(("text", "said"), [
    ("dots stars", "unknown.*dots-run-out.*stars"), ("copy", "unknown.*copy"),
    (" ".join(TRACED[:MAX_TRACED + 1]), "many")])
def test_rungs_that_cannot_be(text: str, said: str) -> None:
    """An unknown rung is told with those there are; so many that writing would have no room are refused."""
    with pytest.raises(Problem, match=rf"ladder\.{said}"):
        read_rungs(text)


def test_every_rung_says_its_evidence() -> None:
    """Each rung has a whole sentence that says where it comes from, or that it is common practice or ours."""
    for told in RUNGS.values():
        assert told.endswith(".")
        assert any(word in told for word in ("abstract", "common practice", "ours"))


def test_names_stand_in_a_row_as_often_as_they_fit() -> None:
    """One to three times by rung and room: three where dots run out, two to trace, one where little is given."""
    assert repeats(Part.RUN_OUT, 5, 180, 40, 10) == 3
    assert repeats(Part.RUN_OUT, 5, 139.9, 40, 10) == 2
    assert repeats(Part.DOTS, 5, 180, 40, 10) == 2
    assert repeats(Part.FIRST, 5, 180, 40, 10) == repeats(Part.STARTS, 5, 180, 40, 10) == 1
    assert repeats(Part.DOTS, 5, 30, 40, 10) == 1


def test_a_short_name_is_traced_as_often_as_gives_as_many_letters() -> None:
    """Eight letters or so stand in a row to trace: two letters four times, three three times, four and more twice."""
    assert [repeats(Part.DOTS, letters, 180, 20, 10) for letters in (1, 2, 3, 4, 5, 9)] == [6, 4, 3, 2, 2, 2]
    assert [repeats(Part.RUN_OUT, letters, 180, 20, 10) for letters in (2, 3, 4)] == [4, 3, 3]
    assert repeats(Part.FIRST, 2, 180, 20, 10) == 1


@pytest.mark.parametrize(("rungs", "wanted"), [
    ((Part.WIDE,), ["wide-dots"]), ((Part.DOTS, Part.FIRST), ["dotted", "solid"]),
    ((Part.MARKED, Part.STARTS), ["dotted", "start-dots"]), ((), [])])
def test_a_sheet_has_the_rungs_that_were_chosen(setter: Typesetter, rungs: tuple[Part, ...], wanted: list[str]) -> None:
    """After the model come the chosen rungs in their order, then copying and memory, whatever the level of support."""
    for support in Support:
        settings = SheetSettings(preset("us-1/2"), Paper.A4, support=support, ladder=Ladder(rungs))
        (page,) = practice_pages(setter, "Wren", "Wren", settings)
        rows = [str(item.form) for item in page.items if isinstance(item, Row)]
        assert rows[1:1 + len(wanted)] == wanted
        rest = rows[1 + len(wanted):]
        copies = rest.count("solid")
        assert copies >= 1
        assert rest[:2 * copies] == ["solid", "blank"] * copies
        assert rest[2 * copies:] == ["blank"] * (len(rest) - 2 * copies)
        assert len(rest) > 2 * copies


@pytest.mark.parametrize(("name", "dotted"), [("Wu", [4]), ("Noor", [6]), ("Oskar", [7]), ("Thorwaldmunda", [13, 6]),
                                              ("O", [5])])
def test_dots_run_out_on_every_sheet_with_full_support(setter: Typesetter, name: str, dotted: list[int]) -> None:
    """In the row of dots itself where the page has room for no other; a name that stands there once is all dots."""
    pages = practice_pages(setter, name, name, SheetSettings(preset("us-3/4")))
    assert [letters_dotted(row) for page in pages for row in page.items
            if isinstance(row, Row) and row.form == "dotted"] == dotted


def test_a_row_of_dots_is_all_dots_beside_one_where_they_run_out(setter: Typesetter) -> None:
    """So it is on low lines, where both have room, and where somebody asked for dots alone."""
    for ruling, ladder, dotted in (("us-1/2", Ladder(), [8, 6]), ("us-3/4", Ladder((Part.DOTS,)), [8])):
        pages = practice_pages(setter, "Wren", "Wren", SheetSettings(preset(ruling), ladder=ladder))
        assert [letters_dotted(row) for page in pages for row in page.items
                if isinstance(row, Row) and row.form == "dotted"] == dotted


def letters_dotted(row: Row) -> int:
    return sum(len(item.pieces) for item in row.items if isinstance(item, Ink))
