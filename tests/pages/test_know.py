"""Pages to know a name by, made from a list as anyone would and read again by PDFium."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from itertools import pairwise

import pypdfium2 as pdfium
import pytest

from namewright.geometry import boxes
from namewright.lines.ink import FAINT, Ink
from namewright.lines.ruling import custom_ruling, preset, print_ruling
from namewright.making.account import NoFriends, NothingToWrite
from namewright.making.choices import Choices
from namewright.making.make import Making
from namewright.making.request import KNOW_EACH, SIGN_IN, TO_KNOW, Kind, Request, listed
from namewright.pages.know.rows import mark_boxes, without_its_marks
from namewright.pages.know.sign_in_place import LATE
from namewright.pages.know.week_list import DAYS
from namewright.pages.page import Furniture, Guide, Row, leaves
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.practice.finding import finding
from namewright.practice.ordering import order_class
from namewright.roster.children import Child, Roster
from namewright.settings import Hand, Support
from namewright.tuning import Tuning
from namewright.wording import languages, wording
from printed import pdf_bytes

CLASS = ("Mira", "Tilo", "Noor", "Marek", "Ẹ̀bun", "Ana María", "Bo", "Zoë", "Christopherson", "Łucja")
TWENTY_FOUR = ("Mira", "Milo", "Bo", "Ia", "Ottilka", "Ẹ̀bun", "Zoë", "Ana-Lou", "Søren", "Jonaska", "Jun", "Liv",
               "Christopherson", "Álma", "Tilo", "Tavish", "Noor", "Wren", "Pip", "Quillon", "Maëlys", "Ngân", "Fenja",
               "Oskari")
_BOX_MM = 0.35  # the line of a box to write a letter into
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
        (said,) = re.findall(rf"{re.escape(name)} Page \d+\. The child’s own name stands (\d+) times", answers)
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
    """A child alone in its class finds its name among those of open lists, and the adult is told which."""
    making = Making(request("Mira", kinds=(Kind.FIND,)), setter)
    list(making.pages())
    assert [note.key for note in making.account.notes] == ["account.added"]
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
    """Each name stands once in the order of the list, but that one waits for its neighbour where a wide name comes.

    Two places or more are left over, and the adult's count stands at the head.
    """
    names = ("Tilo", "Mira", "Bo", "Wilhelminaconstantina", "Noor", "Zoë")
    making = Making(request(*names, kinds=(Kind.SIGNIN,), support=Support.INDEPENDENT), setter)
    pages = list(making.pages())
    named = [item.name for page in pages for item in page.items if isinstance(item, Row) and item.form == "name"]
    blank = [item for page in pages for item in page.items if isinstance(item, Row) and item.form == "blank"]
    assert tuple(named) == ("Tilo", "Mira", "Wilhelminaconstantina", "Bo", "Noor", "Zoë")
    assert len(names) + LATE <= len(blank) <= len(names) + LATE + 1
    assert texts(making)[0].index("date") < texts(making)[0].index("Tilo")


def test_dots_are_kept_where_a_name_is_wider_than_the_sheet(setter: Typesetter) -> None:
    """With full support a name signs in over dots, on lower lines where its own do not take it."""
    making = Making(request("Mira", "Wilhelminaconstantinamaria", kinds=(Kind.SIGNIN,)), setter)
    dotted = [item.name for page in making.pages() for item in page.items
              if isinstance(item, Row) and item.form == "dotted"]
    assert sorted(dotted) == ["Mira", "Wilhelminaconstantinamaria"]


def test_children_side_by_side_sign_in_on_one_line(setter: Typesetter) -> None:
    """An accent beside no accent: both names, and both lines to write on, stand on the same height."""
    (page,) = Making(request("Íñigo", "Gigi", "Zoë", "Ẹ̀bun", kinds=(Kind.SIGNIN,)), setter).pages()
    lines = [item.items[0].y for item in page.items if isinstance(item, Row) and isinstance(item.items[0], Guide)]
    assert all(left == right for left, right in zip(lines[::2], lines[1::2], strict=True))


@pytest.mark.parametrize("kind", [Kind.MIXED, Kind.MISSING])
def test_no_tail_of_the_name_runs_into_the_caption_under_it(setter: Typesetter, kind: Kind) -> None:
    for page in Making(request("Gigi", "Ngân", "Łucjan", "Peggy", kinds=(kind,)), setter).pages():
        name = next(item for item in page.items if isinstance(item, Row))
        tail = boxes.joined([ink.bounds() for ink in name.items if isinstance(ink, Ink)])[3]
        words = [ink.bounds()[1] for item in page.items if isinstance(item, Furniture) for ink in item.items
                 if ink.spelled and ink.bounds()[3] > tail]
        assert min(words) - tail > 0.8


@pytest.mark.parametrize("support", Support)
def test_names_among_names_keep_off_the_caption_and_each_other(setter: Typesetter, support: Support) -> None:
    """An accent over a capital needs more than the two x-heights of a tall letter."""
    for page in Making(request("Íñigo", "Ísola", "Ẫva", "Gigi", "Ŷpp", kinds=(Kind.FIND,), support=support),
                       setter).pages():
        rows = [boxes.joined([ink.bounds() for ink in item.items if isinstance(ink, Ink)]) for item in page.items
                if isinstance(item, Row)][1:]
        caption = sorted(ink.bounds()[3] for item in page.items if isinstance(item, Furniture) for ink in item.items
                         if ink.spelled)[-2]
        assert min(row[1] for row in rows) > caption - 0.3
        assert all(one[3] < other[1] or other[3] < one[1] or one[2] < other[0] or other[2] < one[0]
                   for at, one in enumerate(rows) for other in rows[:at])


@pytest.mark.parametrize("ruling", ["us-3/4", "uk-4", "de-5"])
@pytest.mark.parametrize("hand", [Hand.LEFT, Hand.RIGHT])
def test_the_tail_of_a_friend_keeps_off_the_row_under_it(setter: Typesetter, hand: Hand, ruling: str) -> None:
    """Two millimetres of white, as on a child's sheet."""
    asked = request("Gigi", "Ngân", "Jagoda", "Peggy", kinds=(Kind.FRIENDS,))
    for page in Making(asked._replace(first=Choices(hand=hand, ruling=preset(ruling))), setter).pages():
        rows = [item for item in page.items if isinstance(item, Row)]
        for above, below in pairwise(rows):
            tail = max(ink.bounds()[3] for ink in above.items if isinstance(ink, Ink))
            assert below.items[0].bounds()[1] - tail > 1.5


def test_a_class_signs_in_on_three_sheets(setter: Typesetter) -> None:
    """Twenty-four children on 3/4 inch; no page is nearly empty, and no line is lower than the child's."""
    asked = request(*TWENTY_FOUR, kinds=(Kind.SIGNIN,))
    pages = list(Making(asked, setter).pages())
    assert len(pages) <= 3
    ruled = [item for page in pages for item in page.items if isinstance(item, Row) and item.form != "name"]
    heights = {round(max(guide.y for guide in guides) - min(guide.y for guide in guides), 3)
               for row in ruled if (guides := [one for one in row.items if isinstance(one, Guide)])}
    assert heights == {round(asked.settings.ruling.line_height_mm, 3)}
    assert all(sum(isinstance(item, Row) for item in page.items) >= 8 for page in pages)


@pytest.mark.parametrize("support", Support)
def test_a_week_has_five_places_for_each_name(setter: Typesetter, support: Support) -> None:
    """In one row where the name fits five times, in more where it does not, and none of them too narrow for it."""
    names = ("Bo", "Mira", "Christopherson", "Wilhelminaconstantina", "Zoë")
    making = Making(request(*names, kinds=(Kind.SIGNIN_WEEK,), support=support), setter)
    pages = list(making.pages())
    rows = [item for page in pages for item in page.items if isinstance(item, Row)]
    starts = [at for at, row in enumerate(rows) if row.form == "name"]
    assert sorted(rows[at].name for at in starts) == sorted(names)
    assert len(rows) - len(starts) == DAYS * (len(names) + LATE)
    places = {rows[at].name: rows[at + 1:at + 1 + DAYS] for at in starts}
    lines = {name: len({row.items[0].y for row in own if isinstance(row.items[0], Guide)})
             for name, own in places.items()}
    assert lines == {"Bo": 1, "Mira": 1, "Zoë": 1, "Christopherson": 5, "Wilhelminaconstantina": 5}
    said = " ".join(texts(making))
    assert all(said.count(day) == len(names) + LATE for day in ("Monday", "Wednesday", "Friday"))


@pytest.mark.parametrize("count", range(1, 9))
@pytest.mark.parametrize("kind", SIGN_IN)
def test_no_page_is_for_those_alone_who_come_later(setter: Typesetter, kind: Kind, count: int) -> None:
    """On every page of a list to sign in on stands the name of somebody."""
    names = ("Bo", "Mira", "Zoë", "Christopherson", "Wilhelminaconstantina", "Åsa", "Ned", "Ida")[:count]
    asked = request(*names, kinds=(kind,))
    for ruling in ("us-3/4", "us-1-1/8"):
        making = Making(asked._replace(everyone=Choices(ruling=preset(ruling))), setter)
        assert all(any(isinstance(item, Row) and item.form == "name" for item in page.items)
                   for page in making.pages())


@pytest.mark.parametrize("height_mm", [12.0, 19.05, 30.0, 38.0, 45.0])
@pytest.mark.parametrize("support", Support)
def test_no_page_holds_one_row_with_gaps_alone(setter: Typesetter, support: Support, height_mm: float) -> None:
    """A page after the first has two rows to write or more, and says again what is to be done."""
    names = ("Bo", "Åsa", "ʻAlohi", "Christina", "Maximilian-Leo")
    asked = request(*names, kinds=(Kind.MISSING,), support=support)
    making = Making(asked._replace(everyone=Choices(ruling=custom_ruling(height_mm))), setter)
    head = wording("en").say("page.know.missing_boxes" if support in (Support.FULL, Support.PARTIAL)
                             else "page.know.missing")[:24]
    pages, said = list(making.pages()), texts(making)
    for page, words in zip(pages, said, strict=True):
        assert head in words
        assert page.outline or sum(isinstance(item, Row) for item in page.items) > 1


@pytest.mark.parametrize("support", [Support.FULL, Support.PARTIAL])
def test_no_box_for_a_letter_meets_a_neighbour(setter: Typesetter, support: Support) -> None:
    """The tail of j goes under the letter before it; the place for j stands clear of that letter."""
    making = Making(request("Łucja", "Cajus", kinds=(Kind.MISSING,), support=support), setter)
    rows = [item for page in making.pages() for item in page.items
            if isinstance(item, Row) and item.form == "gaps" and "j" not in item.name]
    assert rows
    for row in rows:
        inks = sorted((ink for ink in row.items if isinstance(ink, Ink)), key=lambda ink: ink.bounds())
        for left, right in pairwise(inks):
            if _BOX_MM in (left.style.width_mm, right.style.width_mm):
                assert right.bounds()[0] - left.bounds()[2] > 0.2


@pytest.mark.parametrize("ruling", ["us-3/4", "de-5", "us-1/2"])
def test_no_ring_meets_another_or_a_letter_of_another_row(setter: Typesetter, ruling: str) -> None:
    """Each letter of a name is ringed once as an example; a g over a G has its tail, and its ring, to itself."""
    names = ("Gigi", "Mattheus", "Łucjan", "Bartholomewina", "Jagg", "Ẹ̀bun", "Ngỹ")
    asked = request(*names, kinds=(Kind.LETTERS,))
    for page in Making(asked._replace(everyone=Choices(ruling=preset(ruling))), setter).pages():
        rings = [item.bounds() for item in page.items if isinstance(item, Ink) and item.style.width_mm == 0.7]
        rows = [boxes.joined([ink.bounds() for ink in item.items if isinstance(ink, Ink)]) for item in page.items
                if isinstance(item, Row)]
        assert all(below[1] - above[3] > 1.0 for above, below in pairwise(rings))
        heads, shown = rows[::2][:len(rings)], rows[1::2][:len(rings)]
        assert all(ring[0] < head[0] and ring[2] > head[2] and ring[1] < head[1] and ring[3] > head[3] - 0.2
                   for ring, head in zip(rings, heads, strict=True))
        assert all(below[1] - above[3] > 1.0 for above, below in pairwise(shown))


@pytest.mark.parametrize("kind", [Kind.FRIENDS, Kind.MIXED])
def test_names_without_gaps_have_the_spacing_of_the_sheets(setter: Typesetter, kind: Kind) -> None:
    """A name to read and to write has its shape as a word: only one with gaps is set wider."""
    asked = request("Theodore", "Mary-Kate", kinds=(kind,))
    (page, *_) = Making(asked, setter).pages()
    row = next(item for item in page.items if isinstance(item, Row) and item.form == "solid")
    inks = boxes.joined([item.bounds() for item in row.items if isinstance(item, Ink)])
    natural = setter.ruled(asked.settings.ruling).line(row.name)
    assert inks[2] - inks[0] == pytest.approx(natural.width_mm, abs=0.5)


def test_days_of_a_week_go_on_from_the_name(setter: Typesetter) -> None:
    """A child looks right of its name, then down: the first row has the name, and no row after it has fewer days."""
    making = Making(request("Sofía", "Wilhelmina", kinds=(Kind.SIGNIN_WEEK,)), setter)
    places = [item for page in making.pages() for item in page.items if isinstance(item, Row) and item.form != "name"]
    lines = [Counter(row.items[0].y for row in places[start:start + DAYS] if isinstance(row.items[0], Guide))
             for start in (0, DAYS)]
    assert [list(one.values()) for one in lines] == [[2, 3], [1, 2, 2]]


FOREIGN = ("Златко", "محمد", "Ξένια", "明", "M\u0331ira")


@pytest.mark.parametrize("kind", SIGN_IN)
def test_nobody_is_missing_from_a_list_to_sign_in_on(setter: Typesetter, kind: Kind) -> None:
    """Who cannot be drawn has lines to sign on under as much of the name as there is, and the adult is told."""
    names = ("Mira", *FOREIGN, "Tilo")
    making = Making(request(*names, kinds=(kind,)), setter)
    pages = list(making.pages())
    named = [item.name for page in pages for item in page.items if isinstance(item, Row) and item.form == "name"]
    ruled = [item for page in pages for item in page.items if isinstance(item, Row) and item.form != "name"]
    assert sorted(named) == ["Mira", "Mira", "Tilo", "Zlatko"]
    assert len(ruled) >= (len(names) + LATE) * (DAYS if kind is Kind.SIGNIN_WEEK else 1)
    said = " ".join(texts(making))
    assert [number for number in range(1, 8) if f"Line {number} of your list" in said] == [3, 4, 5]
    assert re.search(r"of (the )?7\b", said)
    assert making.account.not_made == []
    assert [one.child.practice for one in making.account.remarks] == list(FOREIGN)


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("kind", SIGN_IN)
def test_a_line_of_the_list_has_room_in_every_language(setter: Typesetter, kind: Kind, language: str, paper: Paper,
                                                       ) -> None:
    """Regression: in French and Italian it ran off the page at the right, and nobody had a list to sign in on."""
    asked = request(*FOREIGN, *FOREIGN, kinds=(kind,))
    making = Making(asked._replace(everyone=Choices(language=language, paper=paper)), setter)
    assert list(making.pages())


@pytest.mark.parametrize("kind", SIGN_IN)
def test_no_lines_or_pens_keep_a_child_from_signing_in(setter: Typesetter, kind: Kind) -> None:
    """High lines, a pen that fills letters, a name that no page takes: each child has a place; it is told."""
    asked = request("Ẫva", "Noor" * 30, kinds=(kind,), support=Support.INDEPENDENT)
    heights = Choices(ruling=preset("us-3/4").scaled_to(80.0), tuning=Tuning(model_pen=3.0))
    making = Making(asked._replace(everyone=heights.over(asked.everyone)), setter)
    assert list(making.pages())
    thick = Making(asked._replace(everyone=Choices(tuning=Tuning(line_height=8.0, model_pen=3.0))), setter)
    assert list(thick.pages())
    assert making.account.not_made == thick.account.not_made == []
    assert len(making.account.remarks) == len(thick.account.remarks) == 2


@pytest.mark.parametrize("ruling", ["us-1-1/8", "us-1", "us-3/4", "us-1/2", "fr-3", "de-6"])
def test_a_week_keeps_over_the_foot_of_its_page(setter: Typesetter, ruling: str) -> None:
    """Friday's tail, too: nothing of a place comes nearer than 2 mm to the check bar."""
    asked = request("Christopherson", "Wilhelminajacoby", "Ẹ̀yp", kinds=(Kind.SIGNIN_WEEK,))
    pages = list(Making(asked._replace(everyone=Choices(ruling=preset(ruling))), setter).pages())
    for page in pages:
        bar = max(ink.bounds()[3] for ink in leaves(page.items) if isinstance(ink, Ink)) - 2.8
        lowest = max(guide.bounds()[3] for row in page.items if isinstance(row, Row) for guide in row.items)
        tails = max(row.items[0].y + preset(ruling).pitch_mm - preset(ruling).gap_mm for row in page.items
                    if isinstance(row, Row) and isinstance(row.items[0], Guide))
        assert max(lowest, tails) <= bar - 2.0


def test_a_week_for_a_class_takes_eleven_sheets_with_places_clear_of_each_other(setter: Typesetter) -> None:
    """Twenty-four children at full support on 3/4 inch; between two days of a row the lines break for all to see."""
    asked = request(*TWENTY_FOUR, kinds=(Kind.SIGNIN_WEEK,))
    pages = list(Making(asked, setter).pages())
    assert len(pages) <= 11
    for page in pages:
        lines = [row.items[0] for row in page.items if isinstance(row, Row) and isinstance(row.items[0], Guide)]
        assert all(right.x0 - left.x1 >= 3.9 for left, right in pairwise(lines) if left.y == right.y)


def test_a_chant_of_a_class_is_on_few_pages_with_as_many_names_on_each(setter: Typesetter) -> None:
    """Twenty-four children: two pages of twelve; one more child: three pages of eight or nine."""
    def named(names: Sequence[str]) -> list[int]:
        pages = Making(request(*names, kinds=(Kind.CHANT,)), setter).pages()
        return [sum(isinstance(item, Row) for item in page.items) for page in pages]
    assert named(TWENTY_FOUR) == [12, 12]
    assert named((*TWENTY_FOUR, "Quigley")) == [8, 9, 8]


@pytest.mark.parametrize("kind", [Kind.BUILD, Kind.CHANT])
def test_who_cannot_be_drawn_is_told_on_the_pages_of_the_class(setter: Typesetter, kind: Kind) -> None:
    """The others are made, and the adult reads who is not there: in Latin letters, or by the line of the list."""
    making = Making(request("Mira", "Ксения", "Bo", "美咲", kinds=(kind,)), setter)
    words = wording("en")
    key = f"page.know.{kind}_without"
    told = words.say(key, count=2, names=("(Kseniia)", words.say("page.of_list", line=4)))
    assert told in " ".join(" ".join(texts(making)).split())
    assert "cannot draw" not in " ".join(texts(Making(request("Mira", "Bo", kinds=(kind,)), setter)))


def test_the_answers_say_who_has_no_page(setter: Typesetter) -> None:
    """Once, though a child lacks a page of every kind."""
    making = Making(request("Mira", "Ксения", "Bo", kinds=(*KNOW_EACH, Kind.CHANT)), setter)
    list(making.pages())
    said = " ".join(" ".join(texts(making, Kind.ANSWERS)).split())
    words = wording("en")
    assert words.say("page.answers.head_not_made") in said
    assert said.count("(Kseniia) (line 2") == 1


def test_a_hidden_name_is_not_on_the_page_of_gaps(setter: Typesetter) -> None:
    """What a reader hears of a row with gaps is what is seen, not the whole name."""
    making = Making(request("Marek", kinds=(Kind.MISSING,), support=Support.FULL), setter)
    (page,) = making.pages()
    shown = [item.name for item in page.items if isinstance(item, Row)]
    assert shown[0] == "Marek"
    assert all("_" in name for name in shown[1:])
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
    assert " ".join(" ".join(texts(making, Kind.ANSWERS)).split()).count("in another typeface") == 1


def test_answers_lead_and_name_the_pages_on_which_they_are(setter: Typesetter) -> None:
    """By PDFium each answer's page is the child's; reasons come last, and what is missing stands in brackets."""
    asked = request(*CLASS)
    making = Making(asked, setter)
    pages = texts(making)
    answers = " ".join(" ".join(texts(making, Kind.ANSWERS)).split())
    told = re.findall(r"(\S+ \S+) Pages? (\d+)", answers)
    assert len(told) == len(KNOW_EACH) * len(CLASS) + len(TO_KNOW) - len(KNOW_EACH)
    for said, number in told[:len(KNOW_EACH) * len(CLASS)]:
        name = next(name for name in sorted(CLASS, key=len, reverse=True) if said.endswith(name))
        assert f"This page is for {name}." in " ".join(pages[int(number) - 1].split()), (said, number)
    assert answers.rindex("Page") < answers.index("Why the pages are made so") < answers.index("Simpson")
    assert "B(o), (B)o, (Bo), (Bo)." in answers


def test_answers_made_alone_name_no_pages(setter: Typesetter) -> None:
    assert "Page " not in " ".join(texts(Making(request("Mira", "Tilo"), setter), Kind.ANSWERS))


@pytest.mark.parametrize(("kind", "said"), [
    (Kind.FIND, "I found my name on"), (Kind.LETTERS, "I found my letters on"), (Kind.MISSING, "I wrote this on"),
    (Kind.MIXED, "I built my name on"), (Kind.FRIENDS, "I wrote this on")])
def test_the_date_follows_what_the_child_did(setter: Typesetter, kind: Kind, said: str) -> None:
    (page, *_) = texts(Making(request("Mira", "Tilo", kinds=(kind,)), setter))
    assert said in page


@pytest.mark.parametrize("hand", Hand)
@pytest.mark.parametrize("support", Support)
def test_a_dot_shows_where_each_friend_is_written(setter: Typesetter, support: Support, hand: Hand) -> None:
    """One page; a row to write on, or a place beside the name, for each friend that the answers name."""
    asked = request(*CLASS, kinds=(Kind.FRIENDS,), support=support)
    making = Making(asked._replace(first=Choices(hand=hand)), setter)
    for page in making.pages():
        read = [item for item in page.items if isinstance(item, Row) and item.form == "solid"]
        dots = [item for item in page.items if is_start(item)]
        assert len({row.name for row in read}) == len(read) <= len(dots)
    assert making.account.not_made == []
    assert len({page.outline for page in making.pages()}) == len(CLASS)


def is_start(item: object) -> bool:
    """Say whether an item is a start dot, beside a name or in a row of its own."""
    if isinstance(item, Row):
        return item.form == "blank" and any(isinstance(one, Ink) and len(one.pieces) == 1 for one in item.items)
    return isinstance(item, Furniture) and len(item.items) == 1 and item.items[0].style.width_mm >= 1.2


def test_black_letters_are_written_just_so_in_the_own_name(setter: Typesetter) -> None:
    """On Ana's page Álma has one black letter, her a: Á is not A, and no small letter is a capital."""
    making = Making(request("Ana", "Álma", "Nan", kinds=(Kind.FRIENDS,)), setter)
    page = next(page for page in making.pages() if page.outline == "Ana")
    grey = {row.name: sum(len(ink.pieces) for ink in row.items if isinstance(ink, Ink) and ink.style.colour == FAINT)
            for row in page.items if isinstance(row, Row) and row.form == "solid"}
    assert grey == {"Álma": 3, "Nan": 1}
    assert "Black are the letters" in " ".join(" ".join(texts(making, Kind.ANSWERS)).split())


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
    ((x0, y0, x1, y1),) = mark_boxes(placed.letter)
    left, top, right, _ = boxes.joined(stroke.bounds() for stroke in bare.strokes)
    assert (x0 + x1) / 2 == pytest.approx((left + right) / 2)
    assert y0 < y1 <= top + 0.8
    assert x1 - x0 >= 1.6


def test_where_no_letter_is_shared_nothing_is_said_of_black_ones(setter: Typesetter) -> None:
    making = Making(request("Bo", "Pip", kinds=(Kind.FRIENDS,)), setter)
    assert all("black" not in text for text in texts(making))
    assert "black" in texts(Making(request("Bo", "Zoë", kinds=(Kind.FRIENDS,)), setter))[0]
