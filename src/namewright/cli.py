"""The command line: parse, run the one command that was typed, and say in a sentence what went wrong.

Exit status 0: everyone made; 1: some children not made, the rest are; 2: nothing could be made.
"""

from __future__ import annotations

import argparse
import atexit
import os
import signal
import sys
from collections.abc import Callable, Sequence
from importlib import import_module

from namewright import __version__
from namewright.commands.streams import open_streams
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, Parser, complain, explained, place, speak, told_of_file
from namewright.cycles import look_seldom
from namewright.message import Problem

# Each word and the module of ``commands`` that knows it. Only the module of the word that was said is loaded:
# an aide who prints one card does not wait for the web server.
_COMMANDS = {
    "sheets": "sheets", "card": "card", "tiles": "tiles", "sizes": "sizes", "order": "order", "plan": "plan",
    "class": "book", "note": "note", "next": "next", "progress": "progress", "know": "know", "open": "open",
    "fonts": "fonts", "roster": "listings", "settings": "listings", "rulings": "listings",
}

def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; return its exit status."""
    look_seldom()
    open_streams()
    if argv is not None:
        return _answer(list(argv))
    status: list[int] = []
    atexit.register(_end, status)  # the first that is told of is the last that is called
    status.append(_answer(sys.argv[1:]))
    return status[0]


def _end(status: Sequence[int]) -> None:
    """End the process, with threads and other handlers done and all said: freeing object by object takes time.

    Where ``main`` was left otherwise there is no status, and Python ends as it does.
    """
    if status:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status[0])


def _answer(words: Sequence[str]) -> int:
    """Run what was typed; return the exit status, and say in a sentence what went wrong."""
    try:
        speak(words, os.environ)
        return _run(words)
    except Problem as error:
        complain(error)
    except BrokenPipeError:  # the reader of our output has had enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return ALL_MADE
    except OSError as error:
        complain(told_of_file(error))
        if error.filename is None:
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except KeyboardInterrupt:
        signal.signal(signal.SIGINT, signal.SIG_IGN)  # a second one finds nothing more to stop
        complain("command.stopped")
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


def _parser(word: Sequence[str]) -> Parser:
    """Return the parser for a command word; with every command where the word is not one of them."""
    known = [_COMMANDS[name] for name in word if name in _COMMANDS]
    parser = Parser(prog="namewright", description=explained("about"), epilog=explained("examples"))
    parser.add_argument("--version", action="version", version=f"namewright {__version__}", help=explained("version"))
    commands = parser.add_subparsers(title=explained("can_do"), required=True, metavar=place("command"))
    for module in known or dict.fromkeys(_COMMANDS.values()):
        import_module(f"namewright.commands.{module}").add(commands)
    return parser


if __name__ == "__main__":
    sys.exit(main())
