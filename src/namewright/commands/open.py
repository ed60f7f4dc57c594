"""``namewright open``: the page in the browser, on this machine."""

from __future__ import annotations

import argparse
import getpass
import sys
from pathlib import Path

from namewright.commands.talk import ALL_MADE, Commands, Refusal, complain

LEAST_PASSPHRASE = 12
_MEANING = (
    "Sharing: everyone on this school network who knows the passphrase can see and change this class, children’s names "
    "included, for as long as the program runs. What is sent over the network is not encrypted, so share only on a "
    "network that you trust. Stop the program (Ctrl-C) to end it.")


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("open", help="a page in the browser, to paste, look and print")
    parser.add_argument("--class", dest="class_file", metavar="FILE",
                        help="the class’s file (one in your own data folder unless said otherwise)")
    parser.add_argument("--port", type=int, metavar="N",
                        help="the number to answer at, where your network asks for a fixed one (a free one)")
    parser.add_argument("--no-browser", action="store_true", help="print the address and open no browser")
    parser.add_argument("--share", action="store_true", help="open the class to the school network, with a passphrase")
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    try:
        from namewright.web.serve import default_class, serve
    except ImportError as error:  # the page's own libraries
        raise Refusal(f"the page needs {error.name}, which is not installed; install Namewright again with "
                      "“pip install namewright”") from error
    if options.port is not None and not 0 < options.port < 65536:
        raise Refusal(f"there is no port {options.port}; choose one from 1024 to 65535, or leave it away")
    class_file = Path(options.class_file) if options.class_file else default_class()
    _check(class_file)
    passphrase = _passphrase() if options.share else ""
    try:
        serve(class_file, options.port, passphrase=passphrase, say=_say, browser=not options.no_browser)
    except KeyboardInterrupt:
        complain("stopped; the class is kept")
    except OSError as error:
        raise Refusal(f"the page cannot be opened there ({error.strerror or error}); another program may use that "
                      "port, or there is no network to share on. Leave --port away, or choose another.") from error
    return ALL_MADE


def _check(class_file: Path) -> None:
    from namewright.classbook import Classbook

    Classbook.open(class_file).close()


def _say(address: str) -> None:
    print(address, flush=True)


def _passphrase() -> str:
    """Ask for a passphrase, twice at a terminal. Raises Refusal for one that is short or mistyped."""
    print(_MEANING, file=sys.stderr)
    if not sys.stdin.isatty():
        typed = sys.stdin.readline().rstrip("\n")
    else:
        typed = getpass.getpass("Passphrase: ")
        if getpass.getpass("The same again: ") != typed:
            raise Refusal("the two were not the same, so nothing was shared; try again")
    if len(typed) < LEAST_PASSPHRASE:
        raise Refusal(f"the passphrase has {len(typed)} characters; take at least {LEAST_PASSPHRASE}, such as three "
                      "words that nobody would guess")
    return typed
