"""``namewright sizes``: one child's name at six line heights, to find which fits."""

from __future__ import annotations

import argparse

from namewright.commands.asking import asked_for_one
from namewright.commands.common import name_options, write_one
from namewright.commands.talk import Commands, explained
from namewright.making.request import Kind


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sizes", help=explained("sizes.help"))
    name_options(parser)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    return write_one(asked_for_one(options, Kind.SIZES).request, options)
