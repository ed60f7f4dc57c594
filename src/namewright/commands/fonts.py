"""``namewright fonts``: our letters as fonts, to type with elsewhere."""

from __future__ import annotations

import argparse
from pathlib import Path

from namewright.commands.talk import ALL_MADE, Commands, Refusal, explained, place
from namewright.letters.alphabet import upright
from namewright.whole_files import whole_file


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("fonts", help=explained("fonts.help"))
    parser.add_argument("-o", "--output", metavar=place("folder"), required=True, dest="folder",
                        help=explained("fonts.output"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    folder = Path(options.folder)
    try:
        from namewright.truetype.build import build_fonts
    except ModuleNotFoundError as error:
        raise Refusal("command.fonts.library", library=str(error.name)) from error
    folder.mkdir(parents=True, exist_ok=True)
    for name, data in build_fonts(upright()):
        with whole_file(folder / name) as file:
            file.write(data)
    return ALL_MADE
