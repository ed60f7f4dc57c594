"""What the page for the adult says: everyone with a reason, whoever has no page, every line left out."""

from __future__ import annotations

from collections.abc import Iterator

from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.making.account import NotMade
from namewright.making.adult import adult_pages, left_out, why
from namewright.making.choices import Choices
from namewright.making.request import Kind, Request, listed
from namewright.names.clusters import clusters
from namewright.pages.page import Page, leaves
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band
from namewright.practice.ordering import order_class
from namewright.roster.parsing import read_roster
from namewright.settings import Hand, Support
from namewright.wording import wording

ROSTER = read_roster("name,support\nMira Quill,\nTilo Reed,light\n123,\n")
PLACED = order_class(ROSTER.children)


def said(pages: tuple[Page, ...]) -> Iterator[str]:
    """Yield the words of a page, as they are spelled for a reader."""
    for page in pages:
        for item in leaves(page.items):
            spelled = getattr(item, "spelled", None)
            if spelled is not None:
                yield spelled.words


def test_everyone_stands_there_with_what_is_its_own(setter: Typesetter) -> None:
    """Tilo has less help than everyone, and that is told of Tilo alone; who is not made and what is left out follow."""
    members = tuple(map(listed, PLACED))
    request = Request((Kind.ADULT,), members, Choices(support=Support.FULL), roster=ROSTER)
    missed = [NotMade(Kind.SHEETS, PLACED[0].child, DoesNotFit("Mira", 300, 200))]
    text = " ".join(said(adult_pages(setter, request, members[1:], missed)))
    words = wording("en")
    assert words.say("page.summary.not_made") in text
    assert words.say("page.summary.left_out") in text
    assert "300" in text
    light = words.say("page.summary.support", support=Support.LIGHT)
    assert text.lower().count(light.lower()) == 1
    hand = words.say("page.summary.hand", hand=Hand.RIGHT)
    assert text.lower().count(hand.lower()) == 1, "what everyone has is not told of a child again"


def test_names_in_other_letters_are_told_by_their_line(setter: Typesetter) -> None:
    """No code points: nobody could read them. A name that passports spell in our letters is told in these."""
    roster = read_roster("Mira\nדוד\nМила\n李雷\n")
    members = tuple(map(listed, order_class(roster.children)))
    request = Request((Kind.ADULT,), members, Choices(), roster=roster)
    missed = [NotMade(Kind.SHEETS, one, MissingLetters(clusters(one.practice))) for one in roster.children[1:]]
    text = " ".join(said(adult_pages(setter, request, members[:1], missed)))
    assert "U+" not in text
    assert all(start in text for start in ("Line 2: Our", "(Mila) (line 3 of the roster): Our", "Line 4: Our"))
    assert text.count("such as (goes by Bo)") == 3


def test_a_childs_own_lines_are_told_where_they_differ(setter: Typesetter) -> None:
    """Lines of 19.05 mm are those of three quarters of an inch."""
    roster = read_roster("name,line height\nMira,19.05\nTilo,22\n")
    members = tuple(map(listed, order_class(roster.children)))
    text = " ".join(said(adult_pages(setter, Request((Kind.ADULT,), members, Choices(), roster=roster), members, [])))
    assert text.count("lines of") == 2
    assert "lines of 22 mm" in text


def test_lines_left_out_are_those_that_became_nobody() -> None:
    """A header or a blank line is none of them."""
    assert [report.line for report in left_out(ROSTER)] == [4]


def test_a_reason_is_true_of_the_name() -> None:
    """How many letters, the band, the first letter to practise; nothing but the name's own letters."""
    for one in PLACED:
        told = why(one)
        assert told["count"] == len(one.child.practice)
        assert told["band"] is one.band
        assert isinstance(told["band"], Band)
        assert told["first"] == one.letters[0][0]
        assert set(told["letters"]) <= set(one.child.practice)  # type: ignore[arg-type]
    nobody = order_class(read_roster("李\nBo").children)[-1]
    assert why(nobody).key == "page.summary.no_letters"
