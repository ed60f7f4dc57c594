"""The plan: everyone on it, readable in grey and for every eye, and a sentence for whatever cannot be."""

from __future__ import annotations

import csv
import io
import json
from dataclasses import replace
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pypdf import PdfReader

from namewright.cli import main
from namewright.lines.ink import RULE, Ink, Style
from namewright.output.order_tables import order_csv
from namewright.output.png import page_png
from namewright.pages.page import Page, leaves
from namewright.pages.paper import Paper
from namewright.pages.plan import pages as plan_module
from namewright.pages.plan.band_shapes import SHAPE_STYLES, band_shape, formed_tick
from namewright.pages.plan.flow import MIN_MM, TEXT_MM, packed
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.plan.sentences import account_said, begin_said, next_week_said, table_said, weeks_said
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band
from namewright.practice.ordering import Order, Planned, completed, order_class
from namewright.practice.timetable import Lookout, Timetable, timetable
from namewright.practice.weeks import Week
from namewright.roster.children import Child
from namewright.wording import wording

NAMES = ("Bo", "Zoë", "Ava", "Noor", "Mira", "Íñigo", "Christopherson", "Ẹ̀bun", "Mary-Kate", "deShawn", "Łucja", "AJ")


def child(name: str, line: int) -> Child:
    return Child(name, name, name, "", line)


def placed_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE) -> tuple[Planned, ...]:
    return completed(order_class([child(name, line) for line, name in enumerate(names, start=1)], order))


def table_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE, **asked: object) -> Timetable:
    children = [child(name, line) for line, name in enumerate(names, start=1)]
    return timetable(completed(order_class(children, order)), Lookout(**asked))  # type: ignore[arg-type]


def plan_of(setter: Typesetter, names: tuple[str, ...] | list[str], settings: PlanSettings | None = None,
            weeks: int = 10) -> tuple[Page, ...]:
    settings = settings or PlanSettings()
    return plan_pages(setter, table_of(names, settings.order, weeks=weeks), settings)


def luminance(colour: str) -> float:
    """Return the relative luminance of WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance)."""
    channels = [int(colour[at:at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("band", Band)
def test_letters_and_edges_stand_out(band: Band) -> None:
    """A letter has 4.5 to 1 on its shape (WCAG 2.2, 1.4.3), an edge 3 to 1 on the paper (1.4.11)."""
    look = SHAPE_STYLES[band]
    assert contrast(look.letter, look.fill) >= 4.5
    assert contrast(look.edge, "#ffffff") >= 3.0


# Machado, Oliveira & Fernandes (2009), doi:10.1109/TVCG.2009.113, severity 1.0; from memory. They work on linear RGB.
SIGHTS = {
    "protan": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "deutan": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    "tritan": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    "grey": [[0.2126, 0.7152, 0.0722]] * 3,
}


@pytest.mark.parametrize("sight", SIGHTS)
def test_fills_stay_apart_for_every_eye_and_in_grey(sight: str) -> None:
    """Any two fills differ by 12 of CIELAB's lightness or more, whoever looks and with no colour at all."""
    lightness = []
    for look in SHAPE_STYLES.values():
        channels = np.array([int(look.fill[at:at + 2], 16) / 255 for at in (1, 3, 5)])
        linear = np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
        seen = np.clip(np.array(SIGHTS[sight]) @ linear, 0, 1)
        lightness.append(116 * np.cbrt(float(seen @ [0.2126, 0.7152, 0.0722])) - 16)
    assert min(abs(a - b) for a, b in combinations(lightness, 2)) >= 12


def test_bands_differ_in_shape_and_weight_too() -> None:
    """With every colour taken away the three shapes are three, and the easier edge is the lightest."""
    outlines = {band_shape(band, 0.0, 0.0, 4.0).path_data() for band in Band}
    assert len(outlines) == 3
    assert SHAPE_STYLES[Band.EASIER].edge_mm < SHAPE_STYLES[Band.MIDDLE].edge_mm


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("order", [Order.PRACTICE, Order.NEED, Order.FAMILY])
def test_a_week_of_thirty_takes_one_page_and_what_explains_it_two(
        setter: Typesetter, paper: Paper, language: str, order: Order) -> None:
    """On both papers, in both languages and in every order; each page is checked for its margins as it is made."""
    names = [f"{first}{rest}" for first in "BKLMNS" for rest in ("ari", "ora", "ido", "uke", "enn")]
    pages = plan_of(setter, names, PlanSettings(paper, order=order, language=language))
    assert len(pages) == 3
    boxes = [sum(isinstance(item, Ink) and item.style == Style(0.25, RULE) for item in leaves(page.items))
             for page in pages]
    assert boxes == [30, 0, 0]


def test_every_letter_of_every_name_has_its_shape(setter: Typesetter) -> None:
    """Count filled shapes by colour: rows, weeks, and the legend's one."""
    fills = [item.style.fill for page in plan_of(setter, NAMES) for item in leaves(page.items) if isinstance(item, Ink)]
    for band, look in SHAPE_STYLES.items():
        rows = sum(band is each for one in placed_of(NAMES) for _, each in one.letters)
        assert fills.count(look.fill) >= rows + 1
        assert rows > 0, band


@pytest.mark.parametrize("names", [[], ["Mira"], ["Mira", "Bo"], ["Mira"] * 7, ["-", "’"], ["李", "Боян", "Bo"],
                                   ["M" + "ioaeu" * 30], ["".join(map(chr, range(0x4E00, 0x4E40)))]])
def test_odd_classes_still_have_a_plan(setter: Typesetter, names: list[str]) -> None:
    """None, one, two, the same name seven times, nothing to write, letters we lack, a text that is no name."""
    assert plan_of(setter, names)


def test_two_hundred_children_are_all_on_it(setter: Typesetter) -> None:
    """A large class takes more pages and leaves nobody out."""
    names = [f"{a}{b}{c}" for a in "BDFGKLMNRS" for b in "aeiou" for c in ("", "n", "so", "ri")]
    pages = plan_of(setter, names)
    assert 4 <= len(pages) <= 12


SETTER = Typesetter()
TEXTS = st.lists(st.text("AWMabdilmw’", min_size=1, max_size=30).map(lambda word: word + "-"), min_size=1, max_size=9)


@given(TEXTS, st.floats(12.0, 60.0))
def test_a_long_name_goes_on_below_and_nothing_of_it_is_lost(pieces: list[str], room: float) -> None:
    """Lines joined are the text, and each fits at the smallest size there is."""
    setter = SETTER
    lines = packed(setter, pieces, room, TEXT_MM)
    assert "".join(lines) == "".join(pieces)
    assert all(setter.text_width(line, MIN_MM) <= room for line in lines)


def test_long_beats_and_names_make_a_row_taller(setter: Typesetter) -> None:
    """Rows of names too long for their column push the next row down."""
    def rules(names: list[str]) -> list[float]:
        items = [item for item in leaves(plan_of(setter, names)[1].items) if isinstance(item, Ink)]
        return sorted(item.bounds()[1] for item in items if item.style == Style(0.1, RULE))

    short, long = rules(["Bo", "Ana", "Abc"]), rules(["Wolfeschlegelsteinhausenberg", "Bo", "Ana"])
    assert len(short) == len(long) == 3
    assert long[2] - long[1] == pytest.approx(short[1] - short[0])
    assert rules(["Bo", "Wolfeschlegelsteinhausenberg", "Wolfeschlegelsteinhausenburg"])[2] - short[1] > 3


@pytest.mark.parametrize("count", range(20, 36))
def test_no_child_stands_alone_at_the_top_of_a_page(setter: Typesetter, count: int) -> None:
    """Rows that go on over a page take at least three children with them: one alone there is overlooked."""
    pages = plan_of(setter, [NAMES[at % len(NAMES)] + "abcde"[at // len(NAMES)] for at in range(count)], weeks=1)
    rows = [sum(isinstance(item, Ink) and item.style == Style(0.1, RULE) for item in leaves(page.items))
            for page in pages[1:]]
    assert sum(rows) == count
    assert all(number == 0 or number >= 3 for number in rows)


def test_a_table_ends_in_one_full_stop() -> None:
    """A label may end in a full stop itself."""
    children = [replace(child(name, at), label=f"{name} F.") for at, name in enumerate(("Ava", "Bo"), start=1)]
    plan = timetable(completed(order_class(children)), Lookout())
    assert ".." not in wording("en").say(table_said(plan, plan.tables[0]))


def test_a_week_that_completes_a_whole_class_stays_on_the_page(setter: Typesetter) -> None:
    """Sixty children of one name are ready in one week; most are counted, not listed."""
    assert plan_of(setter, [f"Bo{' ' * (at % 2)}" for at in range(60)])


def test_monday_and_next_week_tell_what_is_true() -> None:
    """Monday names the first child with letters it still needs; next week its letters and whom it completes."""
    plan, words = table_of(NAMES), wording("en")
    first = plan.children[plan.days[0].children[0]]
    said = words.say(begin_said(plan))
    assert first.placed.child.label in said
    assert all(letter in said for letter in first.next)
    week = plan.weeks.weeks[1]
    coming = words.say(next_week_said(plan, week))
    assert all(letter in coming for letter in week.letters)
    assert all(plan.children[at].placed.child.label in coming for at in week.completes)


def test_who_has_no_letters_is_counted_and_named() -> None:
    """29 of 30: what cannot be drawn is told, and where all can be nothing is."""
    said = account_said(table_of([*NAMES, "李"]))
    assert said is not None
    assert "12 of 13" in wording("en").say(said)
    assert "李" in wording("en").say(said)
    assert account_said(table_of(NAMES)) is None


def test_under_a_week_stand_all_its_names_or_how_many_more() -> None:
    """Eight names are listed, of nine the first seven and that two more are complete."""
    for count, last in ((1, "Bo 1"), (8, "Bo 8"), (9, wording("en").say("page.plan.more", count=2))):
        children = [child(f"Bo {at}", at) for at in range(1, count + 1)]
        plan = timetable(completed(order_class(children, Order.ROSTER)), Lookout())
        column = plan_module._column(Week(("b",), (), tuple(range(count))), plan, wording("en"))
        assert (len(column), column[0], column[-1]) == (min(count, 8), "Bo 1", last)


def test_where_every_letter_stands_the_page_says_so(setter: Typesetter) -> None:
    """No letter of the week, no child to begin beside: the whole name from memory."""
    formed = {1: frozenset("Bo"), 2: frozenset("Ana")}
    plan = table_of(["Bo", "Ana"], formed=formed)
    assert plan.weeks.weeks == ()
    assert all(each.next == () for each in plan.children)
    assert plan_pages(setter, plan, PlanSettings())


@pytest.mark.parametrize(("formed", "ticks"), [({}, 0), ({1: frozenset()}, 0), ({1: frozenset("Mx")}, 2),
                                               ({1: frozenset("Mira"), 2: frozenset("o")}, 6)])
def test_letters_that_stand_are_ticked(setter: Typesetter, formed: dict[int, frozenset[str]], ticks: int) -> None:
    """One tick a letter that is in the name, and one in the legend where there is any; the page passes its check."""
    pages = plan_pages(setter, table_of(["Mira", "Bo"], formed=formed), PlanSettings())
    style = formed_tick(0.0, 0.0).style
    assert sum(item.style == style for page in pages for item in leaves(page.items) if isinstance(item, Ink)) == ticks


def test_how_far_the_weeks_go_is_said() -> None:
    """How many names are complete by the end, of how many, and that a better order may exist."""
    said = wording("en").say(weeks_said(table_of(["Bo", "Ana", "李"])))
    assert "2 of 2 names" in said
    assert "may exist" in said


def test_the_page_has_ink_where_a_grey_printer_shows_three_tones(setter: Typesetter) -> None:
    """Drawn and turned grey, the three fills are three well parted tones on the page."""
    from PIL import Image

    page = plan_of(setter, NAMES)[1]
    pixels = np.array(Image.open(io.BytesIO(page_png(page, 150))).convert("L"))
    tones = [round(0.299 * int(f[1:3], 16) + 0.587 * int(f[3:5], 16) + 0.114 * int(f[5:7], 16))
             for f in (look.fill for look in SHAPE_STYLES.values())]
    assert all(int((abs(pixels.astype(int) - tone) <= 2).sum()) > 300 for tone in tones)


# --- the command -------------------------------------------------------------------------------------


def written(tmp_path: Path, text: str, *more: str) -> tuple[int, Path]:
    roster, out = tmp_path / "class.txt", tmp_path / "plan.pdf"
    roster.write_text(text, encoding="utf-8")
    return main(["plan", str(roster), "-o", str(out), *more]), out


@pytest.mark.parametrize("order", ["easiest", "need", "family"])
def test_the_command_writes_a_plan(tmp_path: Path, order: str) -> None:
    """pypdf opens the file; the page is A4 where asked for; the same list gives the same bytes."""
    status, out = written(tmp_path, "Bo\nMira\nZoë\nNoor\n", "--order", order, "--paper", "a4", "--weeks", "3")
    assert status == 0
    box = PdfReader(out).pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx((210 / 25.4 * 72, 297 / 25.4 * 72), abs=0.1)
    first = out.read_bytes()
    written(tmp_path, "Bo\nMira\nZoë\nNoor\n", "--order", order, "--paper", "a4", "--weeks", "3")
    assert out.read_bytes() == first


@pytest.mark.parametrize("weeks", ["0", "-3", "ten", "61", "2.5"])
def test_weeks_that_make_no_sense_are_refused_in_a_sentence(
        tmp_path: Path, capsys: pytest.CaptureFixture[str], weeks: str) -> None:
    """What was given, what may be given, and no file."""
    status, out = written(tmp_path, "Bo\n", f"--weeks={weeks}")
    assert status == 2
    assert not out.exists()
    assert f"“{weeks}” is not a number of weeks" in capsys.readouterr().err


@pytest.mark.parametrize("groups", ["0", "many"])
def test_tables_that_make_no_sense_are_refused_in_a_sentence(
        tmp_path: Path, capsys: pytest.CaptureFixture[str], groups: str) -> None:
    """What was given, and what may be given."""
    assert written(tmp_path, "Bo\n", f"--groups={groups}")[0] == 2
    assert f"“{groups}” is not a number of tables" in capsys.readouterr().err


def test_sheets_are_named_by_their_page_in_the_class_pdf(tmp_path: Path) -> None:
    """The pages in the plan are those of the PDF that “sheets” makes: the outline of that file says whose they are."""
    roster = tmp_path / "class.txt"
    roster.write_text("Bo\nMira\nZoë\nChristopherson\n", encoding="utf-8")
    big = ["--line-height", "30"]
    main(["sheets", str(roster), "-o", str(tmp_path / "class.pdf"), *big])
    main(["plan", str(roster), "--format", "json", "-o", str(tmp_path / "plan.json"), *big])
    reader = PdfReader(tmp_path / "class.pdf")
    starts = {str(entry.title): reader.get_destination_page_number(entry) + 1 for entry in reader.outline}
    found = json.loads((tmp_path / "plan.json").read_text(encoding="utf-8"))
    assert {page for day in found["days"] for page in day["pages"]} == set(range(1, len(reader.pages) + 1))
    for day in found["days"]:
        (name,) = day["with"]
        assert any(day["pages"][0] == start for title, start in starts.items() if name in title)


def test_groups_of_an_earlier_order_are_kept(tmp_path: Path) -> None:
    """``order --format json`` is what ``plan --groups-from`` reads; another file is refused in a sentence."""
    roster, earlier = tmp_path / "class.txt", tmp_path / "earlier.json"
    roster.write_text("\n".join(("Bo", "Mira", "Zoë", "Noor", "Rami", "Obed", "Lia")), encoding="utf-8")
    assert main(["order", str(roster), "--format", "json", "-o", str(earlier)]) == 0
    assert {entry["group"] for entry in json.loads(earlier.read_text(encoding="utf-8"))} == {1, 2}
    plan = ["plan", str(roster), "-o", str(tmp_path / "plan.pdf"), "--groups-from"]
    assert main([*plan, str(earlier)]) == 0
    assert main([*plan, str(roster)]) == 2
    assert main([*plan, str(tmp_path / "none.json")]) == 2


def test_a_list_without_names_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """No child, no plan, one sentence."""
    status, out = written(tmp_path, "1\n2\n")
    assert status == 2
    assert not out.exists()
    assert "No child’s name" in capsys.readouterr().err


def test_a_group_is_in_the_csv_as_well() -> None:
    """The group of each child can be sorted by in a spreadsheet."""
    rows = list(csv.DictReader(io.StringIO(order_csv(placed_of(NAMES)), newline="")))
    groups = {int(row["group"]) for row in rows}
    assert groups == set(range(1, len(groups) + 1))
    assert 3 <= len(groups) <= 4
