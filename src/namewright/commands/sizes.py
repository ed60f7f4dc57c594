"""``namewright sizes``: one child's name at six line heights, to find which fits."""

from __future__ import annotations

import argparse

from namewright.commands.card import one_name
from namewright.commands.common import (
    ALL_MADE,
    Commands,
    Refusal,
    font_option,
    letters_of,
    line_options,
    page_options,
    press_of,
    ruling_of,
    write,
)
from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.pages.paper import Paper
from namewright.pages.sizes import SizeSettings, size_page


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("sizes", help="one child’s name at six line heights, to find by trying which fits")
    parser.add_argument("name", metavar="NAME", help="the name to write; put quotes round one with spaces")
    page_options(parser)
    line_options(parser)
    font_option(parser)
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    name = one_name(options.name)
    settings = SizeSettings(ruling_of(options), Paper(options.paper), options.binding, options.captions,
                            letters_of(options))
    try:
        page = size_page(press_of(options), name, name, settings)
    except (MissingLetters, DoesNotFit) as error:
        raise Refusal(f"{name}: {error}.") from error
    write([page], options)
    return ALL_MADE
