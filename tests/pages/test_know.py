"""Pages to know a name by, made from a list as anyone would and read again by PDFium."""

from __future__ import annotations

import re

import pypdfium2 as pdfium
import pytest

from namewright.geometry import boxes
from namewright.lines.ink import Ink
from namewright.lines.ruling import print_ruling
from namewright.making.account import NoFriends, NothingToWrite
from namewright.making.choices import Choices
from namewright.making.make import Making
from namewright.making.request import TO_KNOW, Kind, Request, listed
from namewright.pages.know.rows import mark_box, without_its_marks
from namewright.pages.know.signin import LATE
from namewright.pages.page import Row
from namewright.pages.typesetter import Typesetter
from namewright.practice.finding import finding
from namewright.practice.ordering import order_class
from namewright.roster.children import Child, Roster
from namewright.settings import Support
from printed import pdf_bytes

CLASS = ("Mira", "Tilo", "Noor", "Marek", "Ẹ̀bun", "Ana María", "Bo", "Zoë", "Christopherson", "Łucja")
ODD = ("O", "Mary-Kate", "Wilhelminaconstantinamariaevax", "Kealiʻi", "AJ")


def request(*names: str, kinds: tuple[Kind, ...] = TO_KNOW, support: Support = Support.FULL, shuffle: int = 0,
            ) -> Request:
    children = [Child(name, name, name, "", line) for line, name in enumerate(names, start=1)]
    members = tuple(map(listed, order_class(children)))
    return Request(kinds, members, Choices(support=support), roster=Roster(tuple(children), ()), shuffle=shuffle)


def texts(making: Making, *kinds: Kind) -> list[str]:
    """Return what PDFium reads on each page."""
    document = pdfium.PdfDocument(pdf_bytes(list(making.pages(*kinds))))
    return [page.get_textpage().get_text_bounded() for page in document]


def often(name: str, text: str) -> int:
    return len(re.findall(rf"(?<![\w-]){re.escape(name)}(?![\w-])", " ".join(text.split())))


@pytest.mark.parametrize("support", Support)
def test_the_name_stands_as_often_as_the_answers_say(setter: Typesetter, support: Support) -> None:
    """PDFium reads it in the owner's line, in the model, and once for each time to find: no more, no less."""
    asked = request(*CLASS, kinds=(Kind.FIND,), support=support)
    making = Making(asked, setter)
    pages = texts(making)
    answers = " ".join(" ".join(texts(making, Kind.ANSWERS)).split())
    for page, one in zip(pages, asked.members, strict=True):
        name = one.placed.child.practice
        (said,) = re.findall(rf"{re.escape(name)} Find: the own name (\d+) times", answers)
        assert often(name, page) == int(said) + 2, page


@pytest.mark.parametrize("support", Support)
@pytest.mark.parametrize("kind", TO_KNOW)
def test_odd_names_make_pages(setter: Typesetter, kind: Kind, support: Support) -> None:
    """One letter, thirty, a hyphen, a sign without case, and a class of one: a page that keeps inside its margins."""
    making = Making(request(*ODD, kinds=(kind,), support=support), setter)
    assert list(making.pages())
    assert [(one.child.practice, one.cause.message) for one in making.account.not_made] == []
    alone = Making(request("Mira", kinds=(kind,), support=support), setter)
    pages = list(alone.pages())
    lost = [type(one.cause) for one in alone.account.not_made]
    assert (bool(pages), lost) == ((False, [NoFriends]) if kind is Kind.FRIENDS else (True, []))


def test_a_name_without_letters_is_told(setter: Typesetter) -> None:
    making = Making(request("Mira", "-", kinds=(Kind.FIND,)), setter)
    assert len(list(making.pages())) == 1
    (lost,) = making.account.not_made
    assert isinstance(lost.cause, NothingToWrite)
    assert "-" in str(lost.cause.message)


def test_names_of_nobody_are_told(setter: Typesetter) -> None:
    """A child alone in its class finds its name among invented ones, and the adult is told which."""
    making = Making(request("Mira", kinds=(Kind.FIND,)), setter)
    list(making.pages())
    assert [note.key for note in making.account.notes] == ["account.invented"]
    answers = " ".join(texts(making, Kind.ANSWERS))
    assert all(other.name in answers for other in finding("Mira", [], Support.FULL, "find/1/Mira/0").others)


def test_neighbours_have_other_places_and_reprints_the_same(setter: Typesetter) -> None:
    """Two children of one name have different pages; the same request makes the same bytes; a shuffle makes others."""
    def made(shuffle: int) -> list[bytes]:
        making = Making(request("Ava", "Ava", *CLASS, kinds=(Kind.FIND,), shuffle=shuffle), setter)
        return [pdf_bytes([page]) for page in making.pages() if page.outline == "Ava"]
    one, other = made(0)
    assert one != other
    assert made(0) == [one, other]
    assert made(1) != [one, other]


def test_signing_in_has_everybody_and_room_for_more(setter: Typesetter) -> None:
    """Each name stands once in the order of the list, namesakes by what the list calls them, and rows are left over."""
    names = ("Tilo", "Mira", "Bo", "Wilhelminaconstantina")
    making = Making(request(*names, kinds=(Kind.SIGNIN,), support=Support.INDEPENDENT), setter)
    pages = list(making.pages())
    named = [item.name for page in pages for item in page.items if isinstance(item, Row) and item.form == "name"]
    blank = [item for page in pages for item in page.items if isinstance(item, Row) and item.form == "blank"]
    assert tuple(named) == names
    assert len(blank) == len(names) + LATE
    assert "here" in texts(making)[-1]


def test_a_hidden_name_is_not_on_the_page_of_gaps(setter: Typesetter) -> None:
    """What a reader hears of a row with gaps is what is seen, not the whole name."""
    making = Making(request("Marek", kinds=(Kind.MISSING,), support=Support.FULL), setter)
    (page,) = making.pages()
    shown = [item.name for item in page.items if isinstance(item, Row)]
    assert shown[0] == "Marek"
    assert all("–" in name for name in shown[1:])
    assert often("Marek", texts(making)[0]) == 2


def test_the_last_rows_stand_in_another_typeface(setter: Typesetter) -> None:
    """At the hardest level they are filled outlines, and the adult is told; a name that it lacks stays in our print."""
    making = Making(request("Marek", "Ẹ̀bun", *CLASS[:3], kinds=(Kind.FIND,), support=Support.INDEPENDENT), setter)
    filled = {page.outline: [item.name for item in page.items if isinstance(item, Row)
                             and all(isinstance(ink, Ink) and ink.style.fill for ink in item.items)]
              for page in making.pages()}
    assert filled["Marek"].count("Marek") == 2
    assert len(filled["Marek"]) == 4
    assert filled["Ẹ̀bun"] == []
    assert " ".join(" ".join(texts(making, Kind.ANSWERS)).split()).count("in another typeface") == 4


@pytest.mark.parametrize(("cluster", "lost"), [("í", 1), ("ï", 2), ("ĵ", 1), ("á", 1), ("į", 1), ("ñ", 1), ("ǟ", 3)])
def test_a_letter_that_lacks_its_marks_lacks_the_dot_under_them(setter: Typesetter, cluster: str, lost: int) -> None:
    """Unicode's Soft_Dotted: i and j have no dot under a mark over them; with a mark under them they keep it."""
    (placed,) = setter.ruled(print_ruling(6.0)).line(cluster).letters
    bare, marks = without_its_marks(placed.letter)
    assert len(marks) == lost
    dotted = any(stroke.is_dot for stroke in bare.strokes)
    assert dotted == (cluster == "į")


def test_the_box_for_an_accent_is_empty_and_over_the_middle_of_its_letter(setter: Typesetter) -> None:
    """In the row that lacks the accents, no ink stands over the midline in the place of í but the box itself."""
    (placed,) = setter.ruled(print_ruling(6.0)).line("í").letters
    bare, _ = without_its_marks(placed.letter)
    x0, y0, x1, y1 = mark_box(placed.letter)
    left, top, right, _ = boxes.joined(stroke.bounds() for stroke in bare.strokes)
    assert (x0 + x1) / 2 == pytest.approx((left + right) / 2)
    assert y0 < y1 <= top + 0.8
    assert x1 - x0 >= 1.6
