"""``namewright note``: what was seen of a child's name writing today, and what may help next."""

from __future__ import annotations

import argparse
from datetime import date

from namewright.classbook import BookChild, Classbook, ClassbookError, Observation, Seen
from namewright.classbook.find import find_child, find_letters
from namewright.classbook.records import checked_day, letter_positions
from namewright.classbook.stages import STAGES, Stage, read_stage, stage_said
from namewright.classbook.suggest import suggest
from namewright.commands.book import opened
from namewright.commands.talk import ALL_MADE, Commands, explained, place, tell
from namewright.making.from_book import holds_for_child
from namewright.message import Message, message, together
from namewright.names.clusters import clusters
from namewright.settings import Support


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("note", help=explained("note.help"))
    parser.add_argument("child", metavar=place("child"), help=explained("option.child"))
    parser.add_argument("--class", dest="file", metavar=place("file"), required=True,
                        help=explained("option.class_file"))
    letters = parser.add_mutually_exclusive_group()
    letters.add_argument("--letters", metavar=place("letters"), help=explained("note.letters"))
    letters.add_argument("--all", action="store_true", help=explained("note.all"))
    parser.add_argument("--not-yet", metavar=place("letters"), help=explained("note.not_yet"))
    parser.add_argument("--support", choices=list(Support), help=explained("note.support"))
    parser.add_argument("--stage", metavar=place("stage"), help=explained("note.stage", known=STAGES))
    parser.add_argument("--date", metavar=place("day"), help=explained("note.date"))
    parser.add_argument("--note", default="", metavar=place("words"), help=explained("note.note"))
    parser.add_argument("--who", default="", metavar=place("words"), help=explained("note.who"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with opened(options.file) as book:
        one = find_child(book.children(left=True), options.child)
        before = [note for note in book.observations(one.id) if note.date == _day(options)]
        seen = Seen(_letters(options, one.child.practice), _support(options), _stage(options), options.note,
                    _not_yet(options, one.child.practice))
        note = book.observe(one.id, _day(options), seen, who=options.who)
        tell(_noted(one, note))
        if note.letters is not None and any(earlier.letters is not None for earlier in before):
            tell("command.note.again")
        tell(_next(book, one))
    return ALL_MADE


def _day(options: argparse.Namespace) -> str:
    today = date.today().isoformat()
    day = checked_day(options.date) if options.date else today
    if day > today:
        raise ClassbookError("classbook.day_to_come", day=day)
    return day


def _letters(options: argparse.Namespace, name: str) -> tuple[int, ...] | None:
    if options.all:
        return letter_positions(name)
    return None if options.letters is None else find_letters(name, options.letters)


def _not_yet(options: argparse.Namespace, name: str) -> tuple[int, ...] | None:
    """Return the letters said not to be formed yet; None, all others, where it was said that none is formed."""
    if options.not_yet is not None:
        return find_letters(name, options.not_yet)
    return () if options.letters else None


def _support(options: argparse.Namespace) -> Support | None:
    return Support(options.support) if options.support else None


def _stage(options: argparse.Namespace) -> Stage | None:
    return read_stage(options.stage) if options.stage else None


def _noted(one: BookChild, note: Observation) -> Message:
    """Return what was noted."""
    told = [message("command.note.noted", label=one.child.label, day=note.date)]
    letters = clusters(note.name)
    if note.letters:
        told.append(message("command.note.formed", letters=tuple(letters[at] for at in note.letters)))
    if note.not_yet:
        told.append(message("command.note.formed_not_yet", letters=tuple(letters[at] for at in note.not_yet)))
    if note.letters is not None and not note.letters and note.not_yet is None:
        told.append(message("command.note.no_letter"))
    if note.support:
        told.append(message("command.note.with_support", support=note.support))
    if note.stage:
        told.append(message("command.note.at_step", step=note.stage.value, what=stage_said(note.stage)))
    if note.note:
        told.append(message("command.note.in_words", words=note.note))
    return together(*told)


def _next(book: Classbook, one: BookChild) -> Message:
    support = holds_for_child(one, book.class_settings).support
    thought = suggest(support, book.observations(one.id), one.child.practice).reason
    return together(message("page.progress.class_support", support=support), thought)
