"""One request in, pages and an account out: for every kind of page, whoever cannot be made stops nobody else."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

import pytest

from namewright.classbook.records import Observation
from namewright.geometry.boxes import overlap
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.lines.ink import Ink
from namewright.making.account import NothingNoted
from namewright.making.choices import Choices, read_choices
from namewright.making.make import Making, made_at_once
from namewright.making.request import FOR_EACH_CHILD, Kind, Member, Request, all_listed, listed
from namewright.output.svg import page_svg
from namewright.pages.page import Page, Row, Tile, leaves
from namewright.pages.record import Held
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import completed, order_class
from namewright.roster.children import Child
from namewright.roster.parsing import read_roster
from namewright.settings import Support
from namewright.tuning import Tuning

NAMES = ("Mira", "Марко", "Tilo", "Wilhelminaconstantia-Maximiliana", "Bo")
UNWRITABLE = "Марко"
AT_FULL = Held(Support.FULL, noted=False, line_height_mm=19.05)
HUGE = Choices(tuning=Tuning(line_height=70))


@pytest.fixture(scope="module")
def setter() -> Typesetter:
    return Typesetter()


def note(name: str, day: int, letters: tuple[int, ...]) -> Observation:
    return Observation(day, 1, date(2026, 9, day).isoformat(), name, letters, None, None, "", "", "2026-09-01T10:00:00")


def members(*names: str, notes: bool = True) -> tuple[Member, ...]:
    children = [Child(name, name, name, "", line) for line, name in enumerate(names, start=1)]
    noted = {name: (note(name, 1, (0,)), note(name, 2, (0, 1))) for name in names} if notes else {}
    return tuple(Member(one, Choices(), told := noted.get(one.child.practice, ()), held=(AT_FULL,) * len(told))
                 for one in completed(order_class(children)))


@pytest.mark.parametrize("kind", Kind)
def test_who_cannot_be_made_stops_nobody(setter: Typesetter, kind: Kind) -> None:
    """With a name that our letters lack and one that is too wide for its lines, all others have their pages."""
    request = Request((kind,), members(*NAMES), HUGE if kind is Kind.SHEETS else Choices())
    making = Making(request, setter)
    pages = list(making.pages())
    assert pages
    account = making.account
    told = {(one.child.practice, one.kind) for one in account.not_made}
    if kind in (Kind.SHEETS, Kind.CARDS, Kind.TILES, Kind.SIZES):
        assert (UNWRITABLE, kind) in told
        assert all(isinstance(one.cause, MissingLetters | DoesNotFit) for one in account.not_made)
        outlines = " ".join(str(page.outline) for page in pages)
        assert "Bo" in outlines
        assert "Марко" not in outlines
    made = {one.placed.child.practice for one in account.of(kind)}
    assert made | {name for name, _ in told} == set(NAMES)
    assert "Bo" in made


@pytest.mark.parametrize("kind", [Kind.SHEETS, Kind.CARDS, Kind.SIZES, Kind.FIND])
def test_two_of_one_name_are_told_apart_for_the_adult_alone(setter: Typesetter, kind: Kind) -> None:
    """Each page is for the name as the child writes it; the outline of the PDF, which an adult reads, has the label."""
    twins = [Child("Ava", f"Ava {number}", "Ava", "Quill", number) for number in (1, 2)]
    request = Request((kind,), tuple(Member(one, Choices()) for one in completed(order_class(twins))))
    pages = [page for page in Making(request, setter).pages() if page.outline is not None]
    assert [page.outline for page in pages] == ["Ava 1", "Ava 2"]
    first, second = (page_svg(page._replace(outline=None)) for page in pages)
    if kind is not Kind.FIND:  # whose other names are drawn by lot
        assert first == second


@pytest.mark.parametrize("kind", [Kind.SHEETS, Kind.CARDS, Kind.FIND])
@pytest.mark.parametrize("everyone", [{}, {"sleeve": "on"}, {"language": "de", "paper": "a4", "landscape": "on"}])
def test_printed_pages_of_one_name_say_for_the_adult_whose_they_are(setter: Typesetter, kind: Kind,
                                                                    everyone: Mapping[str, str]) -> None:
    """At the foot, touching nothing else, and on no page of a child whose name nobody shares."""
    roster = read_roster("Ava Quill\nBo Lindle\nAva Reed\n")
    request = Request((kind,), all_listed(order_class(roster.children)), read_choices(everyone), roster=roster,
                      fill=True)
    of = "Für" if everyone.get("language") == "de" else "For"
    told = {}
    for page in Making(request, setter).pages():
        inks = [item for item in leaves(page.items) if isinstance(item, Ink) and item.spelled]
        mine = [ink for ink in inks if ink.spelled and ink.spelled.words.startswith(f"{of} Ava")]
        told[page.outline] = [ink.spelled.words for ink in mine if ink.spelled]
        others = [part.bounds() for item in leaves(page.items) if item not in mine
                  for part in (item.pieces if isinstance(item, Ink) else (item,))]
        assert not any(overlap(ink.bounds(), other) for ink in mine for other in others)
    assert told == {"Ava Q.": [f"{of} Ava Q."], "Ava R.": [f"{of} Ava R."], "Bo": []}


@pytest.mark.parametrize("kind", Kind)
def test_every_step_is_counted(setter: Typesetter, kind: Kind) -> None:
    """As many steps are told as were announced, whoever cannot be made."""
    done = []
    request = Request((kind,), members(*NAMES))
    making = Making(request, setter)
    making.account.step = lambda: done.append(None)
    list(making.pages())
    assert len(done) == request.steps == (len(NAMES) if kind in FOR_EACH_CHILD else 1)


def test_kinds_come_in_one_order_however_they_were_asked_for(setter: Typesetter) -> None:
    both = [page_svg(page) for page in Making(Request((Kind.CARDS, Kind.SHEETS), members("Mira")), setter).pages()]
    other = [page_svg(page) for page in Making(Request((Kind.SHEETS, Kind.CARDS), members("Mira")), setter).pages()]
    assert both == other


def test_pages_are_made_as_they_are_asked_for(setter: Typesetter) -> None:
    """Nobody is made before the page is taken, so a class of any size needs the memory of one page."""
    making = Making(Request((Kind.SHEETS,), members("Mira", "Tilo", "Bo")), setter)
    pages = making.pages()
    assert making.account.made == []
    next(pages)
    assert len(making.account.made) == 1


def line_heights(page: Page) -> set[float]:
    rows = [row for row in page.items if isinstance(row, Row)]
    ys = [{str(item.line): item.y for item in leaves(row.items) if hasattr(item, "line")} for row in rows]
    return {round(found["baseline"] - found["topline"], 2) for found in ys}


def test_a_childs_own_choice_goes_before_everyones_unless_something_goes_first(setter: Typesetter) -> None:
    """The three layers of a request, seen on the page: everyone's lines, a child's own, and what goes before both."""
    mira, tilo = members("Mira", "Tilo")
    mira = Member(mira.placed, Choices(tuning=Tuning(line_height=30)))
    everyone = Choices(tuning=Tuning(line_height=20))
    pages = list(Making(Request((Kind.SHEETS,), (mira, tilo), everyone), setter).pages())
    assert [line_heights(page) for page in pages] == [{30.0}, {20.0}]
    first = Choices(tuning=Tuning(line_height=24))
    pages = list(Making(Request((Kind.SHEETS,), (mira, tilo), everyone, first), setter).pages())
    assert [line_heights(page) for page in pages] == [{24.0}, {24.0}]


def test_tiles_have_the_forms_of_each_childs_letters(setter: Typesetter) -> None:
    """Two children on one page of tiles, each with its own a."""
    plain, own = members("Ada", "Ana")
    own = Member(own.placed, read_choices({"letters": "a=two-storey"}))
    (both,), (usual,) = (Making(Request((Kind.TILES,), some), setter).pages() for some in
                         ((plain, own), members("Ada", "Ana")))
    tiles = [[item for item in page.items if isinstance(item, Tile | Ink)] for page in (both, usual)]
    changed = [one != other for one, other in zip(*tiles, strict=True)]
    assert changed.count(True) == 1  # the small letter a of Ana, and nothing else


def test_letters_that_cannot_be_read_are_remarked_once_and_the_child_is_made(setter: Typesetter) -> None:
    child = Child("Mira", "Mira", "Mira", "", 1, letters="a=odd")
    member = listed(order_class([child])[0])
    making = Making(Request((Kind.SHEETS, Kind.CARDS, Kind.TILES), (member,)), setter)
    assert len(list(making.pages())) == 3
    assert [remark.child for remark in making.account.remarks] == [child]


def test_a_year_that_was_not_noted_is_a_reason_and_not_a_page(setter: Typesetter) -> None:
    making = Making(Request((Kind.GROWTH,), members("Mira", notes=False)), setter)
    assert list(making.pages()) == []
    assert isinstance(making.account.not_made[0].cause, NothingNoted)


@pytest.mark.parametrize("kind", [Kind.GROWTH, Kind.YEAR, Kind.RECORD])
def test_what_was_noted_of_a_name_in_other_letters_is_told_without_code_points(setter: Typesetter, kind: Kind) -> None:
    """Letters by their nearest in Latin, in their own case, or by their place in the name."""
    names = ("Ксю", "Mira") if kind is Kind.YEAR else ("Ксю", "李雷")
    making = Making(Request((kind,), members(*names), Choices()), setter)
    said = [leaf.spelled.words for page in making.pages() for leaf in leaves(page.items)
            if isinstance(leaf, Ink) and leaf.spelled]
    assert not [words for words in said if "U+" in words]
    assert {"K", "s", *("i" if "Mira" in names else "12")} <= set(said)
    assert not making.account.not_made


def test_made_at_once_raises_what_stood_in_the_way(setter: Typesetter) -> None:
    assert len(made_at_once(Request((Kind.CARDS,), members("Mira")), setter)) == 1
    with pytest.raises(MissingLetters):
        made_at_once(Request((Kind.CARDS,), members(UNWRITABLE)), setter)


def test_groups_and_plans_need_a_request_with_groups(setter: Typesetter) -> None:
    child = Child("Mira", "Mira", "Mira", "", 1, Support.LIGHT)
    with pytest.raises(ValueError, match="groups"):
        list(Making(Request((Kind.PLAN,), (listed(order_class([child])[0]),)), setter).pages())


@pytest.mark.parametrize("kind", [Kind.PLAN, Kind.GROUPS])
def test_a_name_in_other_letters_is_told_by_its_line(setter: Typesetter, kind: Kind) -> None:
    """Nobody could read its code points: not at a table, not among the days, and there are no beats of it."""
    making = Making(Request((kind,), members("Mira", "דוד", "Tilo", "李雷", "Марко"), Choices()), setter)
    said = " ".join(ink.spelled.words for page in making.pages() for ink in leaves(page.items)
                    if isinstance(ink, Ink) and ink.spelled)
    assert "U+" not in said
    together = said.replace(" ", "")
    assert all(told in together for told in ("line2ofthelist", "line4ofthelist", "(Marko)"))
