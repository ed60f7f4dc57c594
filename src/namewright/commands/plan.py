"""``namewright plan``: who practises what next, with whom, and which letters the weeks bring.

From a list, or from the class's own file: then paper, lines and the like are as set for the class where the command
line says nothing, letters that were noted as formed are ticked, and the groups of one plan are kept for the next.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator, Mapping, Sequence
from contextlib import nullcontext
from dataclasses import replace
from pathlib import Path

from namewright.classbook import BookChild, Classbook, ClassbookError, grouping, keys
from namewright.classbook.growing import class_formed
from namewright.classwork import Work
from namewright.commands.book import opened
from namewright.commands.common import (
    closing,
    complain_of_beats,
    letters_of,
    line_options,
    page_options,
    roster_of,
    roster_options,
    ruling_of,
    tuning_of,
)
from namewright.commands.talk import Commands, Refusal, complain
from namewright.commands.writing import write
from namewright.lines.tuned import tuned
from namewright.pages.group_sheet import GroupSettings, group_page
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.plan.sentences import NOTHING_FORMED
from namewright.pages.press import Press
from namewright.pages.summary import drawable
from namewright.practice.groups import shared_letters
from namewright.practice.ordering import Order, Placed, completed, order_class
from namewright.practice.weeks import DEFAULT_WEEKS, letter_weeks
from namewright.roster.children import Roster
from namewright.settings import Support

_ORDERS = {"easiest": Order.PRACTICE, "need": Order.NEED, "family": Order.FAMILY}
_OF_CLASS = {"paper": "paper", "captions": "language", "support": "support", "ruling": "ruling", "order": "order"}
_SQLITE = b"SQLite format 3\x00"


class _Usual(str):
    """What holds where the command line says nothing: a class's own setting goes before it."""

    __slots__ = ()


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("plan", help="one or two pages for you: who practises what next, and with whom",
                                 conflict_handler="resolve",
                                 description="From your class list, or from the class’s own file (“namewright class” "
                                             "makes it): then pages look as set for the class, and children stay in "
                                             "their groups from one plan to the next.")
    roster_options(parser)
    page_options(parser)
    parser.add_argument("--order", choices=list(_ORDERS), default="easiest",
                        help="easiest: easier names first; need: most support and harder names first; "
                             "family: by how the own first letter is written (%(default)s)")
    parser.add_argument("--weeks", default=str(DEFAULT_WEEKS), metavar="N",
                        help="how many letters of the week to plan (%(default)s)")
    groups = parser.add_mutually_exclusive_group()
    groups.add_argument("--groups-from", metavar="FILE",
                        help="keep the groups of an earlier “namewright order --format json -o FILE” as far as can be; "
                             "a class’s file keeps them by itself")
    groups.add_argument("--new-groups", action="store_true",
                        help="make groups anew, and keep none of those that the class’s file has from last time")
    parser.add_argument("--group-sheets", metavar="FILE",
                        help="also write a sheet for every group, with the letters its children share")
    line_options(parser)
    parser.add_argument("--hand", help=argparse.SUPPRESS)
    parser.add_argument("--landscape", action="store_true", help=argparse.SUPPRESS)
    for word in (*_OF_CLASS, "practise"):
        parser.set_defaults(**{word: _Usual(parser.get_default(word))})
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    weeks = _weeks(options.weeks)
    before = earlier_groups(Path(options.groups_from)) if options.groups_from else None
    with opened(options.roster) if _is_class(options.roster) else nullcontext() as book:
        members = book.children() if book else ()
        kept = _settled(options, book) if book else {}
        roster, work = _roster_of(options.roster, members) if book else roster_of(options), Work()
        complain_of_beats(roster)
        order = _ORDERS[options.order]
        ordered = order_class(roster.children, order, Support(options.support))
        if book and before is None:
            placed = grouping.with_groups(book, members, ordered, options.captions, anew=options.new_groups)
        else:
            placed = completed(ordered, options.captions, before)
        plan = letter_weeks([each.child.practice for each in placed], weeks)
        settings = PlanSettings(Paper(options.paper), options.binding, order, options.captions)
        formed = class_formed(book, members) if book else NOTHING_FORMED
        write(plan_pages(work.press, placed, plan, settings, formed), options)
        if options.group_sheets:
            write(_group_pages(work.press, placed, _sheet_settings(options, kept)), options, options.group_sheets)
        if book:
            _keep(book, members, placed)
    return closing(work, roster)


# --- from the class's file ---------------------------------------------------------------------------


def _is_class(roster: str) -> bool:
    """Say whether a file is a class's: by how it begins, whatever it is called."""
    path = Path(roster)
    if roster == "-" or not path.is_file():
        return False
    with path.open("rb") as file:
        return file.read(len(_SQLITE)) == _SQLITE


def _roster_of(shown: str, members: Sequence[BookChild]) -> Roster:
    """Return the children of a class; how each line of its list was read was told when it was taken."""
    if not members:
        raise Refusal(f"there is no child in {shown} yet; “namewright class {shown} --from ROSTER” takes a list")
    return Roster(tuple(one.child for one in members), ())


def _settled(options: argparse.Namespace, book: Classbook) -> Mapping[str, str]:
    """Return the class's settings, those put into the options for which the command line says nothing."""
    if not isinstance(options.practise, _Usual):
        raise Refusal("the class’s file says which part of each name is practised; leave out --practise")
    kept = book.class_settings
    for word, key in _OF_CLASS.items():
        if isinstance(getattr(options, word), _Usual) and key in kept:
            setattr(options, word, kept[key])
    options.binding = options.binding or kept.get("binding") == "on"
    options.order = options.order if options.order in _ORDERS else "easiest"
    return kept


def _keep(book: Classbook, members: Sequence[BookChild], placed: Sequence[Placed]) -> None:
    """Keep the groups for next time; a file that cannot be changed is said, and the plan is there all the same."""
    try:
        grouping.keep(book, members, placed)
    except ClassbookError as error:
        complain(f"the plan is made, but its groups are not kept for next time: {error}")


# --- sheets for groups -------------------------------------------------------------------------------


def _sheet_settings(options: argparse.Namespace, kept: Mapping[str, str]) -> GroupSettings:
    """Return the settings of the sheets; what the command line says goes before what is set for the class."""
    of_class = keys.tuning_of(kept)
    if options.line_height is not None:
        of_class = replace(of_class, line_height=None)
    ruling = tuned(ruling_of(options), tuning_of(options).over(of_class))
    return GroupSettings(ruling, Paper(options.paper), options.binding, options.captions,
                         letters_of(options).over(keys.letters_of(kept)))


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
