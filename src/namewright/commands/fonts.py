"""``namewright fonts``: our letters as fonts, to type with elsewhere."""

from __future__ import annotations

import argparse
from pathlib import Path

from namewright.commands.talk import ALL_MADE, Commands, Refusal
from namewright.letters.alphabet import upright
from namewright.output.files import whole_file


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("fonts", help="our letters as fonts, to type with elsewhere")
    parser.add_argument("-o", "--output", metavar="FOLDER", required=True, dest="folder",
                        help="the folder to write the fonts into")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    folder = Path(options.folder)
    if not folder.is_dir():
        raise Refusal(f"there is no folder {folder} to write the fonts into; make it first")
    try:
        from namewright.truetype.build import build_fonts
    except ModuleNotFoundError as error:
        raise Refusal(f"building fonts needs {error.name}; install it with: pip install 'namewright[fonts]'") from error
    for name, data in build_fonts(upright()):
        with whole_file(folder / name) as file:
            file.write(data)
    return ALL_MADE
