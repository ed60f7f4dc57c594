"""``namewright know``: pages to recognise, spell and build the name, for every child of a class."""

from __future__ import annotations

import argparse
from itertools import count

from namewright.commands.asking import asked_for_class, typesetter_of
from namewright.commands.common import (
    closing,
    font_option,
    hand_option,
    line_options,
    page_options,
    roster_options,
    same_for_all_option,
)
from namewright.commands.pictures import with_pictures
from namewright.commands.talk import Commands, Refusal, explained, place
from namewright.commands.writing import progress, write
from namewright.lines.tile_boxes import LARGE_TILE_MM, TILE_MM
from namewright.making.account import account_in
from namewright.making.make import Making
from namewright.making.request import TO_KNOW, Kind
from namewright.settings import AT_ONCE


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("know", help=explained("know.help"))
    roster_options(parser)
    page_options(parser)
    parser.add_argument("--pages", metavar=place("kinds"), help=explained("know.pages", known=tuple(map(str, TO_KNOW))))
    parser.add_argument("--shuffle", type=int, default=0, metavar=place("number"), help=explained("know.shuffle"))
    parser.add_argument("--at-once", type=int, default=AT_ONCE, metavar=place("number"),
                        help=explained("know.at_once", usual=str(AT_ONCE)))
    parser.add_argument("--week", action="store_true", help=explained("know.week"))
    parser.add_argument("--tile", choices=["25", "38"], default="25", metavar=place("mm"),
                        help=explained("tiles.tile", usual="25"))
    line_options(parser)
    font_option(parser)
    hand_option(parser)
    same_for_all_option(parser)
    parser.add_argument("--summary", metavar=place("file"), help=explained("know.summary"))
    parser.add_argument("--svg", metavar=place("folder"), help=explained("sheets.svg"))
    parser.add_argument("--png", metavar=place("folder"), help=explained("sheets.png"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    kinds = _kinds(options.pages, week=options.week)
    if options.at_once < 1:
        raise Refusal("command.problem.at_once", count=options.at_once)
    with asked_for_class(options, *kinds, grouped=Kind.FRIENDS in kinds, notes=True) as asked:
        request = asked.request._replace(shuffle=options.shuffle, at_once=options.at_once,
                                         tile_mm=LARGE_TILE_MM if options.tile == "38" else TILE_MM)
        setter, language = typesetter_of(options), request.settings.language
        making = Making(request, setter, account_in(setter))
        pages = progress(making.pages(), len(request.members) * len(kinds))
        write(with_pictures(pages, options, count(1)), options, language)
        if options.summary and making.account.made:
            write(making.pages(Kind.ANSWERS), options, language, options.summary)
    return closing(making.account, asked.roster)


def _kinds(typed: str | None, *, week: bool) -> tuple[Kind, ...]:
    """Return the kinds of page that were typed, all of them where none was. Raises Refusal for another word.

    With ``week`` the list to sign in on is for a week; else it is for a day, unless both were typed.
    """
    asked = _typed(typed)
    if week:
        return tuple(dict.fromkeys(Kind.SIGNIN_WEEK if kind is Kind.SIGNIN else kind for kind in asked))
    return asked if typed else tuple(kind for kind in asked if kind is not Kind.SIGNIN_WEEK)


def _typed(typed: str | None) -> tuple[Kind, ...]:
    if typed is None:
        return TO_KNOW
    words, known = typed.replace(",", " ").split(), {str(kind): kind for kind in TO_KNOW}
    for word in words:
        if word not in known:
            raise Refusal("command.problem.know_pages", text=word, known=tuple(known))
    return tuple(known[word] for word in known if word in words) or TO_KNOW
