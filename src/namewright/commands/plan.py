"""``namewright plan``: who practises what next, with whom, and which letters the weeks bring.

From a list, or from the class's own file: then paper, lines and the like are as set for the class where the command
line says nothing, letters that were noted as formed are ticked, and the groups of one plan are kept for the next.
"""

from __future__ import annotations

import argparse
import json
from datetime import date
from pathlib import Path

from namewright.classbook import ClassbookError, grouping
from namewright.classbook.records import checked_day
from namewright.commands.asking import Asked, asked_for_class
from namewright.commands.common import (
    closing,
    complain_of_beats,
    hand_option,
    ladder_options,
    line_options,
    page_options,
    roster_options,
    same_for_all_option,
)
from namewright.commands.talk import Commands, Refusal, complain, explained, place
from namewright.commands.writing import write, write_text
from namewright.making.account import account_of_order
from namewright.making.make import Making
from namewright.making.planning import keep_plan, timetable_of
from namewright.making.request import Kind, Request
from namewright.message import message, together
from namewright.output.week import plan_csv, plan_json
from namewright.practice.ordering import Order, unmet
from namewright.practice.wishes import Wishes
from namewright.settings import DEFAULT_WEEKS
from namewright.wording import wording

_ORDERS = {"easiest": Order.PRACTICE, "need": Order.NEED, "family": Order.FAMILY, "roster": Order.ROSTER,
           "name": Order.NAME}


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("plan", help=explained("plan.help"), conflict_handler="resolve",
                                 description=explained("plan.about"))
    roster_options(parser)
    page_options(parser)
    parser.add_argument("-o", "--output", metavar=place("file"), help=explained("plan.output"))
    parser.add_argument("--format", choices=["pdf", "json", "csv"], default="pdf",
                        help=explained("plan.format", usual="pdf"))
    parser.add_argument("--order", choices=list(_ORDERS), help=explained("plan.order", usual="easiest"))
    parser.add_argument("--weeks", default=str(DEFAULT_WEEKS), metavar=place("number"),
                        help=explained("plan.weeks", usual=DEFAULT_WEEKS))
    parser.add_argument("--letters-per-week", choices=["1", "2", "3"],
                        help=explained("plan.letters_per_week", usual="1"))
    parser.add_argument("--groups", metavar=place("number"), help=explained("plan.groups"))
    parser.add_argument("--week", metavar=place("day"), help=explained("plan.week"))
    groups = parser.add_mutually_exclusive_group()
    groups.add_argument("--groups-from", metavar=place("file"), help=explained("plan.groups_from"))
    groups.add_argument("--new-groups", action="store_true", help=explained("plan.new_groups"))
    parser.add_argument("--group-sheets", metavar=place("file"), help=explained("plan.group_sheets"))
    line_options(parser)
    ladder_options(parser)  # these and the hand change how many pages a sheet has, and so the page numbers
    hand_option(parser)
    same_for_all_option(parser)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    if options.format == "pdf" and not options.output:
        raise Refusal("command.plan.no_output")
    weeks = _count(options.weeks, "weeks", 60)
    options.wishes = Wishes(_count(options.groups, "groups", 200) if options.groups else None)
    monday = grouping.monday_of(_day(options.week))
    options.earlier_groups = earlier_groups(Path(options.groups_from)) if options.groups_from else None
    options.order = _ORDERS[options.order] if options.order else None
    with asked_for_class(options, Kind.PLAN, grouped=True, notes=True) as asked:
        complain_of_beats(asked.roster)
        taught = grouping.taught_before(asked.book, monday) if asked.book else ()
        request = asked.request._replace(weeks=weeks, a_week=_a_week(options, asked), taught=taught,
                                         monday=monday if asked.book or options.week else None)
        making, language = Making(request, account=account_of_order(request.planned)), request.settings.language
        if options.format == "pdf":
            write(making.pages(), options, language)
        else:
            _write_text(options, making, asked)
        if options.group_sheets:
            write(making.pages(Kind.GROUPS), options, language, options.group_sheets)
        _complain_of_wishes(asked, request)
        _keep(asked, request, monday)
    return closing(making.account, asked.roster)


def _write_text(options: argparse.Namespace, making: Making, asked: Asked) -> None:
    """Write the plan for another program, to a file or to the screen."""
    as_text = plan_json if options.format == "json" else plan_csv
    ids = {one.child.line: one.id for one in asked.children}
    text = as_text(timetable_of(making.request), making.numbers(), ids,
                   wording(making.request.settings.language).sentence)
    write_text(text, options)


def _a_week(options: argparse.Namespace, asked: Asked) -> int:
    """Return how many letters a week takes up: as typed, else as is kept for the class, else one."""
    kept = asked.book.class_settings.get("letters_per_week") if asked.book else None
    return int(options.letters_per_week or kept or 1)


def _day(text: str | None) -> date:
    """Read a day; today where none is named. Raises ClassbookError for what is no day."""
    return date.fromisoformat(checked_day(text)) if text else date.today()


def _complain_of_wishes(asked: Asked, request: Request) -> None:
    if asked.book:
        for one, other in unmet(request.planned, grouping.wishes(asked.book, asked.children)):
            complain("command.plan.not_met", one=one, other=other)


def _keep(asked: Asked, request: Request, monday: date) -> None:
    """Keep tables and letters of a class for next time; where the file cannot be changed that is said."""
    if asked.book:
        try:
            keep_plan(asked.book, asked.children, request, monday)
        except ClassbookError as error:
            complain(together(message("command.plan.not_kept"), error.message))


def _count(text: str, what: str, most: int) -> int:
    """Read a number of weeks or groups. Raises Refusal."""
    try:
        count = int(text)
    except ValueError:
        count = 0
    if not 1 <= count <= most:
        raise Refusal(f"command.plan.no_number_of_{what}", text=text, most=most)
    return count


def earlier_groups(path: Path) -> dict[str, int]:
    """Return the group of each child, by label, from an earlier order in JSON. Raises Refusal or OSError."""
    try:
        entries = json.loads(path.read_text(encoding="utf-8"))
        return {str(entry["label"]): int(entry["group"]) for entry in entries}
    except (ValueError, KeyError, TypeError, ArithmeticError, RecursionError) as error:
        raise Refusal("command.plan.no_groups", file=str(path)) from error
