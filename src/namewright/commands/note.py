"""``namewright note``: what was seen of a child's name writing today, and what may help next."""

from __future__ import annotations

import argparse
from datetime import date

from namewright.classbook import BookChild, Classbook, ClassbookError, Observation
from namewright.classbook.find import find_child, find_letters
from namewright.classbook.records import checked_day, letter_positions
from namewright.classbook.stages import Stage, read_stage, stage_said
from namewright.classbook.suggest import suggest
from namewright.commands.book import opened
from namewright.commands.talk import ALL_MADE, Commands
from namewright.making.from_book import holds_for_child
from namewright.message import message
from namewright.names.clusters import clusters
from namewright.settings import Support
from namewright.wording import FIRST, wording

_STAGES = "; ".join(f"{stage.value} {stage.word}" for stage in Stage)


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("note", help="note what a child formed today")
    parser.add_argument("child", metavar="CHILD", help="the child, as the class’s list calls them")
    parser.add_argument("--class", dest="file", metavar="FILE", required=True, help="the class’s file")
    letters = parser.add_mutually_exclusive_group()
    letters.add_argument("--letters", metavar="LETTERS",
                         help="the letters of the name that were formed, such as Mra; \"\" for none yet")
    letters.add_argument("--all", action="store_true", help="every letter was formed")
    parser.add_argument("--not-yet", metavar="LETTERS",
                        help="the letters that were looked at and not formed yet; a letter that you name nowhere is "
                             "not looked at")
    parser.add_argument("--support", choices=list(Support), help="the level of support of what was seen")
    parser.add_argument("--stage", metavar="STAGE", help=f"where the whole name stands: {_STAGES}")
    parser.add_argument("--date", metavar="DAY", help="the day, such as 2026-09-14 (today)")
    parser.add_argument("--note", default="", metavar="WORDS", help="a few words")
    parser.add_argument("--who", default="", help="who saw it, such as “aide”")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with opened(options.file) as book:
        one = find_child(book.children(left=True), options.child)
        before = [note for note in book.observations(one.id) if note.date == _day(options)]
        note = book.observe(one.id, _day(options), _letters(options, one.child.practice), support=_support(options),
                            stage=_stage(options), note=options.note, who=options.who,
                            not_yet=_not_yet(options, one.child.practice))
        print(_said(one, note))
        if note.letters is not None and any(earlier.letters is not None for earlier in before):
            print("There was a note on this day already: the two add up, and a letter that either has is formed.")
        print(_next(book, one))
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


def _said(one: BookChild, note: Observation) -> str:
    """Return what was noted in a sentence."""
    parts = []
    if note.letters is not None:
        letters = clusters(note.name)
        said = not note.letters and note.not_yet is None
        parts += [f"formed {', '.join(letters[at] for at in note.letters)}"] if note.letters else []
        parts += [f"not yet {', '.join(letters[at] for at in note.not_yet)}"] if note.not_yet else []
        parts += ["no letter yet"] if said else []
    if note.support:
        parts.append(f"with {note.support} support")
    if note.stage:
        parts.append(f"step {note.stage.value}, {wording(FIRST).say(stage_said(note.stage))}".rstrip("."))
    if note.note:
        parts.append(f"“{note.note}”")
    return f"Noted for {one.child.label} on {note.date}: {'; '.join(parts)}."


def _next(book: Classbook, one: BookChild) -> str:
    support = holds_for_child(one, book.class_settings).support
    thought = suggest(support, book.observations(one.id), one.child.practice).reason
    return wording(FIRST).text(message("page.progress.class_support", support=support), thought)
