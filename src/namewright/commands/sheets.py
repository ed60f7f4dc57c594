"""``namewright sheets``: a practice sheet for every child of a class."""

from __future__ import annotations

import argparse
import itertools
from collections.abc import Generator
from contextlib import closing
from functools import partial

from namewright.commands import splitting
from namewright.commands.asking import asked_for_class, typesetter_of
from namewright.commands.classes import Told, make_each, several
from namewright.commands.common import (
    font_option,
    hand_option,
    ladder_options,
    line_options,
    page_options,
    roster_options,
    same_for_all_option,
    status_of,
    told_at_the_end,
)
from namewright.commands.pictures import with_pictures
from namewright.commands.splitting import ENOUGH, Part
from namewright.commands.talk import Commands, complain, explained, place
from namewright.commands.writing import check_targets, progress, write, write_drawn
from namewright.making.account import Account, account_in
from namewright.making.make import Making
from namewright.making.request import Kind, Request
from namewright.output.pdf import Batch
from namewright.pages.typesetter import Typesetter


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sheets", help=explained("sheets.help"), conflict_handler="resolve")
    roster_options(parser, several=True)
    page_options(parser)
    parser.add_argument("-o", "--output", metavar=place("file"), required=True, help=explained("sheets.output"))
    line_options(parser)
    ladder_options(parser)
    font_option(parser)
    hand_option(parser)
    parser.add_argument("--sleeve", action=argparse.BooleanOptionalAction, help=explained("sheets.sleeve"))
    same_for_all_option(parser)
    parser.add_argument("--summary", metavar=place("file"), help=explained("sheets.summary"))
    parser.add_argument("--svg", metavar=place("folder"), help=explained("sheets.svg"))
    parser.add_argument("--png", metavar=place("folder"), help=explained("sheets.png"))
    parser.add_argument("--jobs", type=int, metavar=place("number"), help=explained("sheets.jobs", usual=ENOUGH))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    if several(options):
        setter = typesetter_of(options)
        return make_each(options, lambda one: _made(one, setter))
    (options.roster,) = options.roster
    status, told = _made(options)
    for each in told:
        complain(each)
    return status


def _made(options: argparse.Namespace, setter: Typesetter | None = None) -> Told:
    """Write the sheets of one class; return its exit status and what is to be said of it."""
    check_targets(options)
    with asked_for_class(options, Kind.SHEETS) as asked:
        request, language = asked.request, asked.request.settings.language
        setter = setter or typesetter_of(options)
        account = account_in(setter)
        with closing(_drawn(request, options, setter, account)) as drawn:
            shown = progress(drawn, len(request.members), pages=lambda batch: len(batch.pages))
            write_drawn(shown, options, language)
        if options.summary and account.made:
            write(Making(request, setter, account).pages(Kind.ADULT), options, language, options.summary)
    return status_of(account, asked.roster), list(told_at_the_end(account, asked.roster))


def _drawn(request: Request, options: argparse.Namespace, setter: Typesetter, account: Account,
           ) -> Generator[Batch, None, None]:
    """Yield the pages, drawn, and fill the account. Pictures are numbered page by page, so one process makes them."""
    asked = splitting.chunks(request)
    jobs = min(splitting.jobs_for(options.jobs, len(request.members)), len(asked))
    if jobs > 1 and not (options.svg or options.png):
        from namewright.commands.processes import parts_by  # not at the top: most classes are made by one

        parts: Generator[Part, None, None] = parts_by(jobs, asked, partial(typesetter_of, options))
    else:
        count = itertools.count(1)
        parts = (splitting.part(one, setter, lambda pages: with_pictures(pages, options, count)) for one in asked)
    with closing(parts):
        for chunk, part in zip(asked, parts, strict=True):
            account.made += [(kind, chunk.members[at]) for kind, at in part.made]
            account.not_made += part.not_made
            account.remarks += part.remarks
            account.notes += [note for note in part.notes if note not in account.notes]
            yield from part.batches
