"""``namewright open``: the page in the browser, on this machine."""

from __future__ import annotations

import argparse
import getpass
import sys
from pathlib import Path

from namewright.commands.talk import ALL_MADE, Commands, Refusal, complain, explained, place, spoken, worded

MIN_PASSPHRASE = 12


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("open", help=explained("open.help"))
    parser.add_argument("--class", dest="class_file", metavar=place("file"), help=explained("open.class"))
    parser.add_argument("--port", type=int, metavar=place("number"), help=explained("open.port"))
    parser.add_argument("--no-browser", action="store_true", help=explained("open.no_browser"))
    parser.add_argument("--share", action="store_true", help=explained("open.share"))
    parser.set_defaults(run=_run)


def _run(options: argparse.Namespace) -> int:
    try:
        from namewright.web.serve import default_class, serve
    except ImportError as error:  # the page's own libraries
        raise Refusal("command.open.library", library=str(error.name)) from error
    if options.port is not None and not 0 < options.port < 65536:
        raise Refusal("command.open.no_port", port=options.port)
    class_file = Path(options.class_file) if options.class_file else default_class()
    _check(class_file)
    passphrase = _passphrase() if options.share else ""
    try:
        serve(class_file, options.port, passphrase=passphrase, say=_say, browser=not options.no_browser,
              spoken=spoken().language)
    except KeyboardInterrupt:
        complain("command.open.stopped")
    except OSError as error:
        raise Refusal("command.open.cannot", detail=error.strerror or str(error)) from error
    return ALL_MADE


def _check(class_file: Path) -> None:
    from namewright.classbook import Classbook

    Classbook.open(class_file).close()


def _say(address: str) -> None:
    print(address, flush=True)


def _passphrase() -> str:
    """Ask for a passphrase, twice at a terminal. Raises Refusal for one that is short or mistyped."""
    print(worded("command.open.meaning"), file=sys.stderr)
    if not sys.stdin.isatty():
        typed = sys.stdin.readline().rstrip("\n")
    else:
        typed = getpass.getpass(f"{spoken().say('command.open.passphrase')} ")
        if getpass.getpass(f"{spoken().say('command.open.once_more')} ") != typed:
            raise Refusal("command.open.not_the_same")
    if len(typed) < MIN_PASSPHRASE:
        raise Refusal("command.open.short", count=len(typed), least=MIN_PASSPHRASE)
    return typed
