"""The command line: parse, call one library function, write, and say in a sentence what went wrong.

Exit status 0: everyone made; 1: some children not made, the rest are; 2: nothing could be made.
"""

from __future__ import annotations

import argparse
import gc
import os
import sys
from collections.abc import Callable, Sequence
from importlib import import_module

from namewright import __version__
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, Parser, Refusal, complain
from namewright.message import Problem

# Each word and the module of ``commands`` that knows it. Only the module of the word that was said is loaded:
# an aide who prints one card does not wait for the web server.
_COMMANDS = {
    "sheets": "sheets", "card": "card", "tiles": "tiles", "sizes": "sizes", "order": "order", "plan": "plan",
    "class": "book", "note": "note", "next": "next", "progress": "progress", "open": "open", "fonts": "fonts",
    "roster": "listings", "settings": "listings", "rulings": "listings",
}
_EXAMPLES = """\
For example:
  namewright sheets class.xlsx -o class.pdf        a practice sheet for every child in the list
  namewright sheets - -o class.pdf                 the same, from names you paste (end with Ctrl-D)
  namewright card Mira -o card.pdf                 one name card, now
  namewright tiles class.xlsx -o tiles.pdf         letter tiles to cut
  namewright order class.xlsx                      who could practise first, and why
  namewright open                                  all of this as a page in your browser
Type one of these lines, with the name of your own file, and press Enter. “namewright sheets --help” tells
more about sheets, and so on. Nothing leaves this computer.
"""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; return its exit status."""
    gc.set_threshold(50_000, 20, 20)  # few cycles are made here: looking for them 700 objects apart costs a tenth
    _open_streams()
    try:
        return _run(sys.argv[1:] if argv is None else list(argv))
    except (Refusal, Problem) as error:
        complain(error)
    except BrokenPipeError:  # the reader of our output has had enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return ALL_MADE
    except OSError as error:
        complain(_said(error))
        if error.filename is None:
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except RuntimeError as error:  # the native library is missing
        complain(str(error))
    except KeyboardInterrupt:
        complain("stopped; nothing was left half written")
    return NOTHING_MADE


def _run(words: Sequence[str]) -> int:
    parser = _parser(words[:1])
    if not words:
        parser.print_help()
        return NOTHING_MADE
    options = parser.parse_args(words)
    from namewright.commands.writing import check_targets  # not at the top: Ctrl-C may come while all this is loaded

    check_targets(options)
    run: Callable[[argparse.Namespace], int] = options.run
    status = run(options)
    sys.stdout.flush()  # a full disk shows here, and not when nobody listens any more
    return status


def _open_streams() -> None:
    """Put an empty stream in the place of one that the caller has closed."""
    sys.stdin = sys.stdin or os.fdopen(os.open(os.devnull, os.O_RDONLY))
    sys.stdout = sys.stdout or os.fdopen(os.open(os.devnull, os.O_WRONLY), "w")
    sys.stderr = sys.stderr or os.fdopen(os.open(os.devnull, os.O_WRONLY), "w")


def _said(error: OSError) -> str:
    """Say in a sentence what is wrong with a file."""
    if isinstance(error, FileNotFoundError):
        return f"there is no file {error.filename}; check its name and its folder"
    if isinstance(error, PermissionError):
        return f"{error.filename} is not yours to use; choose another file or folder, or ask for leave"
    if error.filename is None:
        return f"the answer could not be written: {error.strerror or error}; choose another place for it"
    return f"{error.filename} cannot be used: {error.strerror or error}; choose another file or folder"


def _parser(word: Sequence[str]) -> Parser:
    """Return the parser for a command word; with every command where the word is not one of them."""
    known = [_COMMANDS[name] for name in word if name in _COMMANDS]
    parser = Parser(prog="namewright", description="Name practice for young writers: give it your class list, "
                     "get paper that fits every child’s name.", epilog=_EXAMPLES,
                     formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--version", action="version", version=f"namewright {__version__}",
                        help="show which version this is")
    commands = parser.add_subparsers(title="what it can do", required=True, metavar="COMMAND")
    for module in known or dict.fromkeys(_COMMANDS.values()):
        import_module(f"namewright.commands.{module}").add(commands)
    return parser


if __name__ == "__main__":
    sys.exit(main())
