"""``namewright order``: who could practise first, and why."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_class
from namewright.commands.common import closing, complain_of_beats, roster_options, unused_options
from namewright.commands.talk import Commands, explained, place, spoken
from namewright.commands.writing import write_text
from namewright.making.account import account_of_order
from namewright.making.request import Request
from namewright.output.order_tables import order_csv, order_json, order_table


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("order", help=explained("order.help"))
    roster_options(parser)
    parser.add_argument("--format", choices=["table", "csv", "json"], default="table",
                        help=explained("order.format", usual="table"))
    parser.add_argument("-o", "--output", metavar=place("file"), help=explained("order.output"))
    parser.add_argument("--captions", help=argparse.SUPPRESS)
    unused_options(parser, "--paper", "--ruling", "--line-height", "--support", "--hand")
    parser.add_argument("--landscape", dest="unused_landscape", action="store_true", help=argparse.SUPPRESS)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    with asked_for_class(options, grouped=options.format != "table") as asked:
        complain_of_beats(asked.roster)
        text = _in_words(options.format, asked.request)
    write_text(text, options)
    return closing(account_of_order(one.placed for one in asked.request.members), asked.roster)


def _in_words(form: str, request: Request) -> str:
    if form == "table":
        return order_table([one.placed for one in request.members], spoken().language)
    return {"csv": order_csv, "json": order_json}[form](request.planned, request.settings.language)
