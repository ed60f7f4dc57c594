"""``namewright progress``: how a child's name has grown over the year, for the family; and the class, for the adult."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence

from namewright.classbook import BookChild, Classbook
from namewright.classbook.find import find_child
from namewright.classbook.growing import growth_of
from namewright.classbook.suggest import suggest
from namewright.commands.book import opened
from namewright.commands.note import support_now
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, SOME_NOT_MADE, Commands, complain
from namewright.commands.writing import write
from namewright.pages.child_progress import ProgressSettings, progress_page
from namewright.pages.class_progress import ClassRow, class_progress_pages
from namewright.pages.growth import Growth
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.press import Press
from namewright.wording import languages


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("progress", help="a page that shows how a name has grown")
    who = parser.add_mutually_exclusive_group(required=True)
    who.add_argument("child", metavar="CHILD", nargs="?", help="the child, as the class’s list calls them")
    who.add_argument("--all", action="store_true",
                     help="the class on a page for the adult, then a page for every child with a note")
    parser.add_argument("--class", dest="file", metavar="FILE", required=True, help="the class’s file")
    parser.add_argument("-o", "--output", metavar="FILE", required=True, help="the PDF to write")
    parser.add_argument("--paper", choices=list(Paper), help="the paper, if not as set for the class")
    parser.add_argument("--binding", action="store_true", help="keep a wide margin for holes")
    parser.add_argument("--captions", choices=languages(), help="the language of the sentences on the page")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with opened(options.file) as book:
        settings = _settings(options, book)
        options.captions = settings.language
        chosen = book.children() if options.all else (find_child(book.children(left=True), options.child),)
        growths = [growth_of(one.child.label, one.child.practice, book.observations(one.id)) for one in chosen]
        rows = _rows(book, chosen, growths) if options.all else []
    write(_pages(growths, rows, settings), options)
    without = [growth.label for growth in growths if not growth.days]
    for label in without:
        complain(f"nothing is noted about {label} yet; “namewright note” does")
    if len(without) == len(growths) and not rows:
        return NOTHING_MADE
    return SOME_NOT_MADE if without else ALL_MADE


def _settings(options: argparse.Namespace, book: Classbook) -> ProgressSettings:
    kept = book.class_settings
    return ProgressSettings(Paper(options.paper or kept.get("paper", Paper.LETTER)),
                            options.binding or kept.get("binding") == "on",
                            options.captions or kept.get("language", "en"))


def _rows(book: Classbook, children: Sequence[BookChild], growths: Sequence[Growth]) -> list[ClassRow]:
    rows = []
    for one, growth in zip(children, growths, strict=True):
        support = support_now(book, one)
        made = suggest(support, book.observations(one.id), one.child.practice)
        rows.append(ClassRow(growth, support, made.reason))
    return rows


def _pages(growths: Sequence[Growth], rows: Sequence[ClassRow], settings: ProgressSettings) -> Iterator[Page]:
    press = Press()
    if rows:
        yield from class_progress_pages(press, rows, settings)
    for growth in growths:
        if growth.days:
            yield progress_page(press, growth, settings)
