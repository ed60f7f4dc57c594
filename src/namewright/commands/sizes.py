"""``namewright sizes``: one child's name at six line heights, to find which fits."""

from __future__ import annotations

import argparse

from namewright.commands.common import letters_of, press_of, ruling_of
from namewright.commands.one import name_options, one_name, write_one
from namewright.commands.talk import Commands
from namewright.pages.paper import Paper
from namewright.pages.size_finder import SizeSettings, size_page


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sizes", help="one child’s name at six line heights, to find by trying which fits")
    name_options(parser)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    name = one_name(options.name)
    settings = SizeSettings(ruling_of(options), Paper(options.paper), options.binding, options.captions,
                            letters_of(options))
    press = press_of(options)
    return write_one(name, lambda: size_page(press, name, name, settings), press, options)
