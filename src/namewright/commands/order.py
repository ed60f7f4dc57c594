"""``namewright order``: who could practise first, and why."""

from __future__ import annotations

import argparse
import sys

from namewright.classwork import NotMade, Work
from namewright.commands.common import closing, complain_of_beats, roster_of, roster_options
from namewright.commands.talk import Commands
from namewright.commands.writing import written
from namewright.practice.order_text import order_csv, order_json, order_table
from namewright.practice.ordering import Order, completed, order_class
from namewright.wording import FIRST, wording


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("order", help="the class in an order to practise, and why")
    roster_options(parser)
    parser.add_argument("--format", choices=["table", "csv", "json"], default="table",
                        help="a table to read, csv for a spreadsheet, json for another program (%(default)s)")
    parser.add_argument("-o", "--output", metavar="FILE", help="write to this file, not to the screen")
    for word in ("--paper", "--ruling", "--line-height", "--support", "--hand", "--captions"):
        parser.add_argument(word, help=argparse.SUPPRESS)
    parser.add_argument("--landscape", action="store_true", help=argparse.SUPPRESS)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    roster = roster_of(options)
    complain_of_beats(roster)
    placed, language = order_class(roster.children, Order(options.order)), options.captions or FIRST
    if options.format == "table":
        text = order_table(placed)
    else:
        text = {"csv": order_csv, "json": order_json}[options.format](completed(placed, language), language)
    if options.output:
        with written(options.output, options) as file:
            file.write(text.encode())
    else:
        sys.stdout.write(text)
    without = [NotMade(one.child, wording(FIRST).text(*one.reason)) for one in placed if one.band is None]
    return closing(Work(not_made=without), roster)
