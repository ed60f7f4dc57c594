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
from namewright.message import message
from namewright.output.order import order_csv
from namewright.output.png import page_png
from namewright.pages.page import Page, leaves
from namewright.pages.paper import Paper
from namewright.pages.plan import pages as plan_module
from namewright.pages.plan.chart import _Field, chart
from namewright.pages.plan.flow import LEAST_MM, TEXT_MM, packed
from namewright.pages.plan.marks import LOOKS, formed_mark, point
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.plan.sentences import first_children, group_said, monday, weeks_said
from namewright.pages.press import Press
from namewright.practice.difficulty import MIDDLE_FROM, MIDDLE_TO, Band
from namewright.practice.ordering import Order, Planned, completed, order_class
from namewright.practice.weeks import Week, letter_weeks
from namewright.roster.children import Child
from namewright.wording import wording

NAMES = ("Bo", "Zoë", "Ava", "Noor", "Mira", "Íñigo", "Christopherson", "Ẹ̀bun", "Mary-Kate", "deShawn", "Łucja", "AJ")


def child(name: str, line: int) -> Child:
    return Child(name, name, name, "", line)


def placed_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE) -> tuple[Planned, ...]:
    return completed(order_class([child(name, line) for line, name in enumerate(names, start=1)], order))


def plan_of(press: Press, names: tuple[str, ...] | list[str], settings: PlanSettings | None = None,
            weeks: int = 10) -> tuple[Page, ...]:
    settings = settings or PlanSettings()
    placed = placed_of(names, settings.order)
    return plan_pages(press, placed, letter_weeks([each.child.practice for each in placed], weeks), settings)


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
    look = LOOKS[band]
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
    for look in LOOKS.values():
        channels = np.array([int(look.fill[at:at + 2], 16) / 255 for at in (1, 3, 5)])
        linear = np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
        seen = np.clip(np.array(SIGHTS[sight]) @ linear, 0, 1)
        lightness.append(116 * np.cbrt(float(seen @ [0.2126, 0.7152, 0.0722])) - 16)
    assert min(abs(a - b) for a, b in combinations(lightness, 2)) >= 12


def test_bands_differ_in_shape_and_weight_too() -> None:
    """With every colour taken away the three shapes are three, and the easier edge is the lightest."""
    outlines = {point(band, 0.0, 0.0, 4.0).path_data() for band in Band}
    assert len(outlines) == 3
    assert LOOKS[Band.EASIER].edge_mm < LOOKS[Band.MIDDLE].edge_mm


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("order", [Order.PRACTICE, Order.NEED, Order.FAMILY])
def test_a_class_of_thirty_takes_two_pages(press: Press, paper: Paper, language: str, order: Order) -> None:
    """On both papers, in both languages and in every order; each page is checked for its margins as it is made."""
    names = [f"{first}{rest}" for first in "BKLMNS" for rest in ("ari", "ora", "ido", "uke", "enn")]
    assert len(plan_of(press, names, PlanSettings(paper, order=order, language=language))) == 2


def test_every_letter_of_every_name_has_its_shape(press: Press) -> None:
    """Count filled shapes by colour: rows, groups, weeks, the legend's one and the chart's points."""
    placed = placed_of(NAMES)
    plan = letter_weeks([each.child.practice for each in placed])
    fills = [item.style.fill for page in plan_pages(press, placed, plan, PlanSettings()) for item in leaves(page.items)
             if isinstance(item, Ink)]
    for band, look in LOOKS.items():
        rows = sum(band is each for one in placed for _, each in one.letters)
        assert rows > 0, band
        assert fills.count(look.fill) >= rows + 1


@pytest.mark.parametrize("names", [[], ["Mira"], ["Mira", "Bo"], ["Mira"] * 7, ["-", "’"], ["李", "Боян", "Bo"],
                                   ["M" + "ioaeu" * 30], ["".join(map(chr, range(0x4E00, 0x4E40)))]])
def test_odd_classes_still_have_a_plan(press: Press, names: list[str]) -> None:
    """None, one, two, the same name seven times, nothing to write, letters we lack, a text that is no name."""
    assert plan_of(press, names)


def test_two_hundred_children_are_all_on_it(press: Press) -> None:
    """A large class takes more pages and leaves nobody out."""
    names = [f"{a}{b}{c}" for a in "BDFGKLMNRS" for b in "aeiou" for c in ("", "n", "so", "ri")]
    pages = plan_of(press, names)
    assert 4 <= len(pages) <= 12


PRESS = Press()
TEXTS = st.lists(st.text("AWMabdilmw’", min_size=1, max_size=30).map(lambda word: word + "-"), min_size=1, max_size=9)


@given(TEXTS, st.floats(12.0, 60.0))
def test_a_long_name_goes_on_below_and_nothing_of_it_is_lost(pieces: list[str], room: float) -> None:
    """Lines joined are the text, and each fits at the smallest size there is."""
    press = PRESS
    lines = packed(press, pieces, room, TEXT_MM)
    assert "".join(lines) == "".join(pieces)
    assert all(press.text_width(line, LEAST_MM) <= room for line in lines)


def test_long_beats_and_names_make_a_row_taller(press: Press) -> None:
    """Rows of names too long for their column push the next row down; a chart is for classes of five or more."""
    def rules(names: list[str]) -> list[float]:
        items = [item for page in plan_of(press, names) for item in leaves(page.items) if isinstance(item, Ink)]
        return sorted(item.bounds()[1] for item in items if item.style == Style(0.1, RULE))

    short, long = rules(["Bo", "Ana", "Abc"]), rules(["Wolfeschlegelsteinhausenberg", "Bo", "Ana"])
    assert len(short) == len(long) == 3
    assert long[2] - long[1] == pytest.approx(short[1] - short[0])
    assert rules(["Bo", "Wolfeschlegelsteinhausenberg", "Wolfeschlegelsteinhausenburg"])[2] - short[1] > 3


@pytest.mark.parametrize(("count", "lines"), [(4, 0), (5, 2), (13, 2)])
def test_a_chart_is_for_five_children_or_more(press: Press, count: int, lines: int) -> None:
    """Two dashed lines part the bands where there is a chart."""
    names = [f"{first}{rest}" for first in "BKLMN" for rest in ("ari", "ora", "ido")][:count]
    items = [item for page in plan_of(press, names) for item in leaves(page.items) if isinstance(item, Ink)]
    assert sum(bool(item.style.dash_mm) for item in items) == lines


@pytest.mark.parametrize("count", range(20, 36))
def test_no_child_stands_alone_at_the_top_of_a_page(press: Press, count: int) -> None:
    """Rows that go on over a page take at least three children with them: one alone there is overlooked."""
    pages = plan_of(press, [NAMES[at % len(NAMES)] + "abcde"[at // len(NAMES)] for at in range(count)], weeks=1)
    rows = [sum(isinstance(item, Ink) and item.style == Style(0.1, RULE) for item in leaves(page.items))
            for page in pages]
    assert sum(rows) == count
    assert all(number == 0 or number >= 3 for number in rows)


def test_a_number_on_the_chart_is_explained(press: Press) -> None:
    """Where names stand too near each other a number stands for one, and only then a sentence says what it is."""
    words = wording("en")
    said = press.text(words.say("page.plan.chart_numbers"), 1.3)
    for names, told in ((NAMES[:6], False), ([*NAMES, *(name + "a" for name in NAMES), "Anna", "Nola", "Tova"], True)):
        inks = list(chart(press, placed_of(names), words, (10, 10, 200, 56)))
        assert (said.pieces[0].fragment in [ink.pieces[0].fragment for ink in inks
                                            if len(ink.pieces) == len(said.pieces)]) is told


def test_a_group_ends_in_one_full_stop() -> None:
    """A label may end in a full stop itself."""
    placed = [replace(each, child=replace(each.child, label=f"{each.child.label} F.")) for each in placed_of(["Ava"])]
    assert wording("en").say(group_said(3, placed)) == "Group 3: Ava F."


def test_a_week_that_completes_a_whole_class_stays_on_the_page(press: Press) -> None:
    """Sixty children of one name are ready in one week; most are counted, not listed."""
    assert plan_of(press, [f"Bo{' ' * (at % 2)}" for at in range(60)])


def test_monday_tells_what_is_true() -> None:
    """The letter is that of the first week with the names that have it; the first children are the first placed."""
    placed = placed_of(NAMES)
    plan = letter_weeks([each.child.practice for each in placed])
    letter, first, table = map(wording("en").say, monday(placed, plan, Order.PRACTICE))
    having = sum(plan.weeks[0].letter in each.child.practice.casefold() for each in placed)
    assert f"{having} of your {len(NAMES)} children" in letter
    assert all(each.child.label in first for each in placed[:3])
    number = int(table.split("group ")[1].split(")")[0])
    assert all(each.child.label in table for each in placed if each.group == number)


def test_monday_in_family_order_names_one_family() -> None:
    """Only children whose own initial is of the first family are named."""
    placed = placed_of(["Lia", "Oska", "Ada"], Order.FAMILY)
    sentences = [wording("en").say(each) for each in monday(placed, letter_weeks(["Lia"]), Order.FAMILY)]
    assert "Lia" in sentences[1]
    assert "Oska" not in sentences[1]
    assert "straight" in sentences[1]


def test_under_a_week_stand_all_its_names_or_how_many_more() -> None:
    """Twelve names are listed, of thirteen the first eleven and that two more are ready."""
    for count, last in ((1, "Bo 1"), (12, "Bo 12"), (13, wording("en").say("page.plan.more", count=2))):
        placed = order_class([child(f"Bo {at}", at) for at in range(1, count + 1)], Order.ROSTER)
        column = plan_module._column(Week("b", tuple(range(count))), placed, wording("en"))
        assert (len(column), column[0], column[-1]) == (min(count, 12), "Bo 1", last)


@pytest.mark.parametrize("names", [NAMES, [f"{first}{rest}" for first in "BKLMNS" for rest in ("ari", "ora", "ido")]])
def test_the_chart_is_to_scale_inside_a_band_and_no_word_hides_another(
        press: Press, names: tuple[str, ...] | list[str]) -> None:
    """Points stand on their side of the lines between bands, and labels touch neither points nor labels."""
    placed, words = placed_of(names), wording("en")
    items = list(chart(press, placed, words, (10.0, 20.0, 200.0, 70.0)))
    upper, lower = sorted(item.bounds()[1] for item in items if item.style.dash_mm)
    boxes = {band: [item.bounds() for item in items if item.style.fill == LOOKS[band].fill] for band in Band}
    middles = {band: [(box[1] + box[3]) / 2 for box in found] for band, found in boxes.items()}
    assert max(middles[Band.HARDER], default=0.0) < upper < min(middles[Band.MIDDLE])
    assert max(middles[Band.MIDDLE]) < lower < min(middles[Band.EASIER])
    marks = [box for found in boxes.values() for box in found]
    last = max(at for at, item in enumerate(items) if item.style.fill)
    labels = [item.bounds() for item in items[last + 1:]]
    assert len(labels) >= len(marks) - 3
    for at, one in enumerate(labels):
        assert not any(one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
                       for other in (*labels[:at], *marks))


@given(st.floats(-3.0, 3.0), st.floats(-3.0, 3.0))
def test_harder_is_higher(one: float, other: float) -> None:
    """The place of a difficulty falls from the top to the foot without a jump, and the cuts are where bands meet."""
    field = _Field(0.0, 0.0, 100.0, 100.0, 9, -3.0, 3.0)
    assert (one < other) == (field.up(one) > field.up(other)) or one == pytest.approx(other, abs=1e-9)
    places = {3.0: 0.0, MIDDLE_TO: 26.0, (MIDDLE_TO + MIDDLE_FROM) / 2: 49.0, MIDDLE_FROM: 72.0, -3.0: 100.0}
    assert {value: field.up(value) for value in places} == pytest.approx(places)


def test_nobody_is_begun_with_whose_letters_all_stand() -> None:
    """The first in order with letters still to come are named; where there is none, another sentence stands there."""
    placed = placed_of(["Bo", "Zoë", "Ava", "Noor", "Mira"])
    formed = {each.child.line: frozenset(letter for letter, _ in each.letters) for each in placed}
    some = {placed[0].child.line: formed[placed[0].child.line], placed[1].child.line: frozenset("Z")}
    assert [each.position for each in first_children(placed, Order.PRACTICE, some)] == [2, 3, 4]
    assert first_children(placed, Order.PRACTICE, formed) == []
    plan = letter_weeks([each.child.practice for each in placed])
    assert message("page.plan.monday_all_formed") in monday(placed, plan, Order.PRACTICE, formed)
    assert message("page.plan.monday_all_formed") not in monday(placed, plan, Order.PRACTICE, some)
    assert message("page.plan.monday_all_formed") not in monday((), letter_weeks([]), Order.PRACTICE)


@pytest.mark.parametrize(("formed", "ticks"), [({}, 0), ({1: frozenset()}, 0), ({1: frozenset("Mx")}, 2),
                                               ({1: frozenset("Mira"), 2: frozenset("o")}, 6)])
def test_letters_that_stand_are_ticked(press: Press, formed: dict[int, frozenset[str]], ticks: int) -> None:
    """One tick a letter that is in the name, and one in the legend where there is any; the page passes its check."""
    placed = placed_of(["Mira", "Bo"])
    pages = plan_pages(press, placed, letter_weeks(["Mira", "Bo"]), PlanSettings(), formed)
    style = formed_mark(0.0, 0.0).style
    assert sum(item.style == style for page in pages for item in leaves(page.items) if isinstance(item, Ink)) == ticks


def test_how_the_weeks_were_found_is_said() -> None:
    """A proved plan says so, and so does one that is not."""
    names = list(NAMES)
    exact, greedy = letter_weeks(names), letter_weeks(names, most_steps=0)
    words = wording("en")
    assert "ruled out" in words.text(*weeks_said(exact, len(names)))
    assert "may exist" in words.text(*weeks_said(greedy, len(names)))


def test_the_page_has_ink_where_a_grey_printer_shows_three_tones(press: Press) -> None:
    """Drawn and turned grey, the three fills are three well parted tones on the page."""
    from PIL import Image

    page = plan_of(press, NAMES)[0]
    pixels = np.array(Image.open(io.BytesIO(page_png(page, 150))).convert("L"))
    tones = [round(0.299 * int(f[1:3], 16) + 0.587 * int(f[3:5], 16) + 0.114 * int(f[5:7], 16))
             for f in (look.fill for look in LOOKS.values())]
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
