"""``namewright plan``: who practises what next, with whom, and which letters the weeks bring."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator, Sequence
from pathlib import Path

from namewright.classwork import Work
from namewright.commands.common import (
    Commands,
    Refusal,
    closing,
    complain_of_beats,
    letters_of,
    line_options,
    page_options,
    roster_of,
    roster_options,
    ruling_of,
    tuning_of,
    write,
)
from namewright.lines.tuned import tuned
from namewright.pages.groupsheet import GroupSettings, group_page
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.plan import PlanSettings, plan_pages
from namewright.pages.press import Press
from namewright.pages.summary import drawable
from namewright.practice.groups import shared_letters
from namewright.practice.order import Order, Placed, completed, order_class
from namewright.practice.weeks import DEFAULT_WEEKS, letter_weeks
from namewright.settings import Support

_ORDERS = {"easiest": Order.PRACTICE, "need": Order.NEED, "family": Order.FAMILY}


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("plan", help="one or two pages for you: who practises what next, and with whom",
                                 conflict_handler="resolve")
    roster_options(parser)
    page_options(parser)
    parser.add_argument("--order", choices=list(_ORDERS), default="easiest",
                        help="easiest: easier names first; need: most support and harder names first; "
                             "family: by how the own first letter is written (%(default)s)")
    parser.add_argument("--weeks", default=str(DEFAULT_WEEKS), metavar="N",
                        help="how many letters of the week to plan (%(default)s)")
    parser.add_argument("--groups-from", metavar="FILE",
                        help="keep the groups of an earlier “namewright order --format json -o FILE” as far as can be")
    parser.add_argument("--group-sheets", metavar="FILE",
                        help="also write a sheet for every group, with the letters its children share")
    line_options(parser)
    parser.add_argument("--hand", help=argparse.SUPPRESS)
    parser.add_argument("--landscape", action="store_true", help=argparse.SUPPRESS)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    weeks = _weeks(options.weeks)
    before = earlier_groups(Path(options.groups_from)) if options.groups_from else None
    roster, work = roster_of(options), Work()
    complain_of_beats(roster)
    order = _ORDERS[options.order]
    placed = completed(order_class(roster.children, order, Support(options.support)), options.captions, before)
    plan = letter_weeks([each.child.practice for each in placed], weeks)
    settings = PlanSettings(Paper(options.paper), options.binding, order, options.captions)
    write(plan_pages(work.press, placed, plan, settings), options)
    if options.group_sheets:
        sheets = GroupSettings(tuned(ruling_of(options), tuning_of(options)), Paper(options.paper), options.binding,
                               options.captions, letters_of(options))
        write(_group_pages(work.press, placed, sheets), options, options.group_sheets)
    return closing(work, roster)


def _group_pages(press: Press, placed: Sequence[Placed], settings: GroupSettings) -> Iterator[Page]:
    """Yield a sheet for every group, in the order of their numbers."""
    for number in sorted({each.group for each in placed}):
        children = [each.child for each in placed if each.group == number]
        shared = [letter for letter in shared_letters([child.practice for child in children])
                  if not press.alphabet.missing(letter)]
        named = [(drawable(press, child.label), child.practice) for child in children]
        yield group_page(press, number, named, shared, settings)


def _weeks(text: str) -> int:
    try:
        weeks = int(text)
    except ValueError:
        weeks = 0
    if not 1 <= weeks <= 60:
        raise Refusal(f"“{text}” is not a number of weeks; give one from 1 to 60, such as --weeks {DEFAULT_WEEKS}")
    return weeks


def earlier_groups(path: Path) -> dict[str, int]:
    """Return the group of each child, by label, from an earlier order in JSON. Raises Refusal or OSError."""
    try:
        entries = json.loads(path.read_text(encoding="utf-8"))
        return {str(entry["label"]): int(entry["group"]) for entry in entries}
    except (ValueError, KeyError, TypeError) as error:
        raise Refusal(f"{path} does not hold the groups of an earlier order; write such a file with "
                      "“namewright order ROSTER --format json -o FILE”, or leave --groups-from away") from error
