"""``namewright order``: who could practise first, and why."""

from __future__ import annotations

import argparse
import sys

from namewright.classwork import Work
from namewright.commands.common import Commands, closing, complain_of_beats, roster_of, roster_options, target
from namewright.output.files import whole_file
from namewright.practice.order import Order, order_class, order_csv, order_json, order_table


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("order", help="the class in an order to practise, and why")
    roster_options(parser)
    parser.add_argument("--format", choices=["table", "csv", "json"], default="table", help="(%(default)s)")
    parser.add_argument("-o", "--output", metavar="FILE", help="write to this file, not to the screen")
    for word in ("--paper", "--ruling", "--line-height", "--support", "--hand", "--captions"):
        parser.add_argument(word, help=argparse.SUPPRESS)
    parser.add_argument("--landscape", action="store_true", help=argparse.SUPPRESS)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    roster = roster_of(options)
    complain_of_beats(roster)
    written = {"table": order_table, "csv": order_csv, "json": order_json}[options.format]
    text = written(order_class(roster.children, Order(options.order)))
    if options.output:
        with whole_file(target(options.output)) as file:
            file.write(text.encode())
    else:
        sys.stdout.write(text)
    return closing(Work(), roster)
