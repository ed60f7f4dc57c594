"""The command line: parse, call one library function, write, and say in a sentence what went wrong.

Exit status 0: everyone made; 1: some children not made, the rest are; 2: nothing could be made.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Sequence

from namewright import __version__
from namewright.commands import book, card, fonts, listings, note, order, plan, progress, sheets, sizes, tiles
from namewright.commands import open as opening
from namewright.commands.common import ALL_MADE, NOTHING_MADE, Parser, Refusal, complain
from namewright.names.model import RosterError

_COMMANDS = (sheets, card, tiles, sizes, order, plan, book, note, progress, fonts, listings, opening)
_EXAMPLES = """\
For example:
  namewright sheets class.xlsx -o class.pdf        a practice sheet for every child in the list
  namewright sheets - -o class.pdf                 the same, from names you paste (end with Ctrl-D)
  namewright card Mira -o card.pdf                 one name card, now
  namewright tiles class.xlsx -o tiles.pdf         letter tiles to cut
  namewright order class.xlsx                      who could practise first, and why
  namewright open                                  all of this as a page in your browser
Nothing leaves this computer. “namewright sheets --help” tells more about sheets, and so on.
"""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; return its exit status."""
    options = _parser().parse_args(argv)
    run: Callable[[argparse.Namespace], int] = options.run
    try:
        return run(options)
    except (Refusal, RosterError) as error:
        complain(str(error))
    except BrokenPipeError:  # the reader of our output has had enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return ALL_MADE
    except OSError as error:
        complain(f"{error.filename or 'a file'} cannot be used: {error.strerror or error}. "
                  "Check the name and that you may write there.")
    except RuntimeError as error:  # the native library is missing
        complain(str(error))
    except KeyboardInterrupt:
        complain("stopped; nothing was left half written")
    return NOTHING_MADE


def _parser() -> Parser:
    parser = Parser(prog="namewright", description="Name practice for young writers: give it your class list, "
                     "get paper that fits every child’s name.", epilog=_EXAMPLES,
                     formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--version", action="version", version=f"namewright {__version__}")
    commands = parser.add_subparsers(title="what it can do", required=True, metavar="COMMAND")
    for command in _COMMANDS:
        command.add(commands)
    return parser


if __name__ == "__main__":
    sys.exit(main())
