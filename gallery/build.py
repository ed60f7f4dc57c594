"""Rebuild every picture of the gallery: ``make gallery``. Names are invented. Look at each before committing it."""

from __future__ import annotations

import io
from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta
from itertools import chain, product
from pathlib import Path

from PIL import Image

from namewright.classbook.growing import growth_of
from namewright.classbook.records import Observation
from namewright.classbook.stages import Stage
from namewright.classbook.suggest import suggest
from namewright.lines.forms import Form
from namewright.lines.ruling import custom_ruling, preset
from namewright.lines.tile_boxes import LARGE_TILE_MM
from namewright.making.choices import Choices
from namewright.making.make import Making
from namewright.making.request import KNOW_EACH, Kind, Request, listed
from namewright.output.png import page_png
from namewright.pages import blocks
from namewright.pages.blocks import PageSettings
from namewright.pages.child_progress import ProgressSettings, progress_page
from namewright.pages.class_progress import ClassRow, class_progress_pages
from namewright.pages.group_sheet import group_page
from namewright.pages.name_card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import Item, Page
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.groups import shared_letters
from namewright.practice.ordering import completed, order_class
from namewright.practice.timetable import Lookout, timetable
from namewright.roster.parsing import load_roster
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering
from namewright.settings import Hand, Support

HERE = Path(__file__).parent
DEMO = HERE.parent / "src" / "namewright" / "demo.txt"
DPI, SMALL_DPI, ACROSS = 80, 32, 8
GENERAL_FONT = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")  # Debian's fonts-dejavu-core
SCHOOL_FORMS = (Form.SOLID, Form.DOTTED, Form.DASHED, Form.FAINT, Form.HOLLOW)
SCHOOL_ROWS = (*(("Marigold Fen", form) for form in SCHOOL_FORMS), ("Ẹ̀bun, Åsa, Ñuño", Form.DOTTED),
               ("abcdefghijklm", Form.DOTTED), ("nopqrstuvwxyz", Form.DOTTED), ("ABCDEFGHIJKL", Form.DOTTED),
               ("MNOPQRSTUV", Form.DOTTED), ("WXYZ 0123456789", Form.DOTTED))
SETTER = Typesetter()
PLAIN = SheetSettings(preset("us-3/4"))

SPECIMEN = (
    "AaBbCcDdEeFfGg", "HhIiJjKkLlMmNn", "OoPpQqRrSsTtUu", "VvWwXxYyZz", "0123456789",
    "ÀÁÂÃÄÅÇÉÊËÎÑŐ", "àáâãäåāăąçćčďđ", "éêëěęėğģħíîïıįķ", "ľļłńñňņŋóôõöőøơ", "ŕřśšşșťțúûůűũųư", "ẵếộữỵẹọṣ æœßþð",
)


def specimen() -> Page:
    """Return the whole alphabet on its lines."""
    return _rows([(row, Form.SOLID, "de-6") for row in SPECIMEN], Paper.A4)


def forms() -> Page:
    """Return one name in every form."""
    return _rows([("Marigold", form, "us-3/4") for form in Form], Paper.LETTER)


def _rows(rows: Iterable[tuple[str, Form, str]], paper: Paper) -> Page:
    sheet = sheet_of(paper)
    items: list[Item] = []
    y = sheet.top_mm
    for text, form, name in rows:
        ruling = preset(name)
        spacing = 0.2 * ruling.x_height_mm if form is Form.HOLLOW else 0.0
        line = SETTER.ruled(ruling, spacing).line(text)
        space = blocks.row_space(ruling, [line])
        items += [blocks.text_at(SETTER, str(form), sheet.left_mm, y + 4.0, 2.2)] if len(text) < 9 else []
        y += 5.5 if len(text) < 9 else 1.0
        baseline = y + space.rise_mm
        inks = blocks.letters_at(SETTER, line, form, sheet.left_mm + 4.0, baseline)
        items.append(blocks.ruled_row(text, form, ruling, sheet.left_mm, sheet.right_edge, baseline, inks))
        y += space.height_mm
    return Page(sheet.width_mm, sheet.height_mm, tuple(items))


def sheets() -> Iterator[tuple[str, Page]]:
    """Yield a sheet for each level of support, and for each kind of name and hand."""
    for support in Support:
        yield f"sheet-{support}", _sheet("Tamsin", support=support)
    yield "sheet-left-handed", _sheet("Fen", hand=Hand.LEFT, support=Support.PARTIAL, ruling=preset("us-5/8"))
    yield "sheet-two-letters", _sheet("Bo", ruling=preset("us-1"))
    yield "sheet-fourteen-letters", _sheet("Christopherson", support=Support.LIGHT)
    yield "sheet-accents-a4", _sheet("Ẹ̀bunolúwa", ruling=preset("de-5"), paper=Paper.A4)
    yield "sheet-double-name-spanish", _sheet("Ana María", language="es", paper=Paper.A4, ruling=preset("fr-3"))
    yield "sheet-unlined", _sheet("Wren", ruling=preset("unlined"))
    yield "sheet-binding-landscape", _sheet("Isolde", landscape=True, binding=True)


def _sheet(name: str, **changes: object) -> Page:
    return practice_pages(SETTER, name, name, PLAIN._replace(**changes))[0]  # type: ignore[arg-type]


def cards() -> Iterator[tuple[str, Page]]:
    """Yield a card, and a sheet of them."""
    yield "card", card_page(SETTER, "Marigold", "Marigold", CardSettings(PLAIN.ruling))
    yield "cards-a6", card_sheet(SETTER, "Tilo", "Tilo", CardSettings(PLAIN.ruling, CardSize.A6), Paper.A4)


def class_pages() -> Iterator[tuple[str, Page]]:
    """Yield what goes with a class: the adult's page and the tiles."""
    roster = load_roster(DEMO)
    members = tuple(listed(one) for one in order_class(roster.children))
    everyone = Choices(PLAIN.ruling)
    making = Making(Request((Kind.SHEETS, Kind.ADULT), members, everyone, roster=roster), SETTER)
    for _ in making.pages(Kind.SHEETS):
        pass
    yield "order", next(making.pages(Kind.ADULT))
    yield "tiles", next(Making(Request((Kind.TILES,), members), SETTER).pages())
    large = Request((Kind.TILES,), members, Choices(paper=Paper.A4), tile_mm=LARGE_TILE_MM)
    yield "tiles-large", next(Making(large, SETTER).pages())


def to_know() -> Iterator[tuple[str, Page]]:
    """Yield the pages to know a name by of one child of the demo class, from easy to hard, and those of the class."""
    roster = load_roster(DEMO)
    members = tuple(listed(one) for one in completed(order_class(roster.children)))
    one = next(each for each in members if each.placed.child.practice == "Saoirse")
    for kind, support in product(KNOW_EACH, (Support.FULL, Support.INDEPENDENT)):
        request = Request((kind,), members, Choices(support=support), Choices(support=support), roster)
        child = request._replace(members=(one,)) if kind is not Kind.FRIENDS else request
        pages = Making(child, SETTER).pages()
        yield f"know-{kind}-{support}", next(page for page in pages if page.outline == one.placed.child.label)
    for kind in (Kind.BUILD, Kind.CHANT, Kind.SIGNIN):
        yield f"know-{kind}", next(Making(Request((kind,), members, roster=roster), SETTER).pages())
    week = Request((Kind.SIGNIN_WEEK,), members, Choices(support=Support.PARTIAL), roster=roster)
    yield "know-signin-week", next(Making(week, SETTER).pages())


def to_know_together() -> Iterator[tuple[str, bytes]]:
    """Yield, for each kind, the pages of all 24 children side by side, those with most support first."""
    roster = load_roster(DEMO)
    members = tuple(listed(one) for one in completed(order_class(roster.children)))
    for kind in KNOW_EACH:
        request = Request((kind,), members, roster=roster)
        by_support = sorted(members, key=lambda one: list(Support).index(request.settings_of(one).support))
        pages = [page for page in Making(request._replace(members=tuple(by_support)), SETTER).pages() if page.outline]
        yield f"know-{kind}-class", _side_by_side(pages)


def _side_by_side(pages: Sequence[Page]) -> bytes:
    """Return pages as one picture, eight in a row, each on its paper."""
    drawn = [Image.open(io.BytesIO(page_png(page, SMALL_DPI))).convert("L") for page in pages]
    wide, high = (max(size) + 4 for size in zip(*(one.size for one in drawn), strict=True))
    whole = Image.new("L", (ACROSS * wide, -(-len(drawn) // ACROSS) * high), 200)
    for at, one in enumerate(drawn):
        whole.paste(one, (at % ACROSS * wide + 2, at // ACROSS * high + 2))
    written = io.BytesIO()
    whole.quantize(16).save(written, "PNG", optimize=True)
    return written.getvalue()


def plans() -> Iterator[tuple[str, Page]]:
    """Yield the adult's plan of the demo class, page by page."""
    planned = completed(order_class(load_roster(DEMO).children))
    plan, request = timetable(planned, Lookout()), Request((Kind.PLAN,), tuple(map(listed, planned)), Choices())
    pages = plan_pages(SETTER, plan, PlanSettings(), Making(request, SETTER).numbers())
    for number, page in enumerate(pages, start=1):
        yield f"plan-{number}", page
    placed = [each.placed for each in plan.children]
    group = [each for each in placed if each.group == placed[4].group]
    names = [each.child.practice for each in group]
    yield "group", group_page(SETTER, group[0].group, [(each.child.label, each.child.practice) for each in group],
                              shared_letters(names), PageSettings(PLAIN.ruling))


def progress() -> Iterator[tuple[str, Page]]:
    """Yield a child's year in English and Spanish, and a class in the middle of its year."""
    years = [("Marigold", (4, 8, 14, 6, 22, 10, 18, 28)), ("Zoë", (4, 12, 60)), ("Bo", (2, 2)),
             ("Isolde", (0, 14, 6) * 2), ("Tilo", (0, 2, 10, 18)), ("Wren", ()),
             ("Christopher", (0, 20) + (8, 30, 12) * 3)]
    for (name, joins), language, paper in zip(years, ("en", "es"), Paper, strict=False):
        growth = growth_of(name, name, _year(name, joins, 38))
        yield (f"progress-{language}", progress_page(SETTER, growth, ProgressSettings(paper, False, language)))
    rows = []
    for weeks, (name, joins) in zip((12, 20, 30, 16, 24, 0, 22), years, strict=True):
        notes = _year(name, joins, weeks)
        support = notes[-1].support or Support.FULL if notes else Support.FULL
        rows.append(ClassRow(growth_of(name, name, notes), support, suggest(support, notes, name).reason))
    yield "progress-class", class_progress_pages(SETTER, rows, ProgressSettings())[0]


def _year(name: str, joins: Sequence[int], weeks: int) -> list[Observation]:
    """Return invented notes, every other week: ``joins`` is the week in which each letter was first formed."""
    notes = []
    for week in range(0, weeks, 2):
        day = date(2026, 9, 7) + timedelta(weeks=week, days=week % 5)
        formed = tuple(at for at, join in enumerate(joins) if week >= join and (week == join or (week + at) % 11))
        support = tuple(Support)[min(3, week // 10)]
        whole = week >= max(joins)
        stage = Stage(5 + (week > 30) + (week > 34) if whole else 4 if formed else 2 + (week > 0))
        notes.append(Observation(week + 1, 1, day.isoformat(), name, formed, support, stage, "", "", ""))
    return notes


def school_font() -> Iterator[tuple[str, Page]]:
    """Yield names in a general-purpose font, on a ruling whose midline suits it, where the font is installed."""
    if not GENERAL_FONT.exists():
        print(f"school-font: left as it is, there is no {GENERAL_FONT}")
        return
    setter, sheet = Typesetter(school_font=Lettering(load_font(GENERAL_FONT))), sheet_of(Paper.LETTER)
    ruling = custom_ruling(13, midline=0.75, descender_mm=5, gap_mm=4)
    items: list[Item] = []
    y = sheet.top_mm
    for text, form in SCHOOL_ROWS:
        baseline = y + 3.0 + ruling.line_height_mm
        inks = blocks.letters_at(setter, setter.ruled(ruling).line(text), form, sheet.left_mm + 3.0, baseline)
        items.append(blocks.ruled_row(text, form, ruling, sheet.left_mm, sheet.right_edge, baseline, inks))
        y += ruling.pitch_mm
    yield "school-font", Page(sheet.width_mm, sheet.height_mm, tuple(items))


def main() -> None:
    """Write every picture."""
    pictures = [("specimen", specimen()), ("forms", forms()), *sheets(), *cards(), *class_pages(), *to_know(),
                *plans(), *progress(), *school_font()]
    drawn = ((name, page_png(page, DPI)) for name, page in pictures)
    for name, picture in chain(drawn, to_know_together()):
        (HERE / f"{name}.png").write_bytes(picture)
        print(name)


if __name__ == "__main__":
    main()
