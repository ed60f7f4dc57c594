"""``namewright open``: the page in the browser, on this machine."""

from __future__ import annotations

import argparse
import getpass
import sys
from pathlib import Path

from namewright.commands.talk import ALL_MADE, Commands, Refusal, complain, explained, place, spoken, worded

MIN_PASSPHRASE = 12
MIN_GUESSES = 1e10  # at thirty tries a minute (``web.gate``) more than six hundred years
MAX_JUDGED = 72  # characters, by the estimator's own limit
_MAX_TYPED = 1000  # characters that are read of what is piped in
_SHORTEST_NAME = 3  # letters of a name that counts for nothing in a passphrase


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
        from namewright.web.serve import default_class, serve, show_again
    except ImportError as error:  # the page's own libraries
        raise Refusal("command.open.library", library=str(error.name)) from error
    if options.port is not None and not 0 < options.port < 65536:
        raise Refusal("command.open.no_port", port=options.port)
    class_file = Path(options.class_file) if options.class_file else default_class()
    _check(class_file)
    if not options.share and show_again(class_file, _say, browser=not options.no_browser):
        complain("command.open.already")
        return ALL_MADE
    passphrase = _passphrase(class_file) if options.share else ""
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


def _passphrase(class_file: Path) -> str:
    """Ask for a passphrase, twice at a terminal. Raises Refusal for one that is mistyped, short or easily guessed."""
    print(worded("command.open.meaning"), file=sys.stderr)
    try:
        typed = _typed()
    except UnicodeDecodeError as error:
        raise Refusal("command.open.no_text") from error
    if not typed.isprintable():  # of bytes that are no text, or a control character: no browser could send it
        raise Refusal("command.open.no_text")
    if len(typed) < MIN_PASSPHRASE:
        raise Refusal("command.open.short", count=len(typed), least=MIN_PASSPHRASE)
    if _guesses(typed, class_file) < MIN_GUESSES:
        raise Refusal("command.open.weak")
    return typed


def _typed() -> str:
    if not sys.stdin.isatty():
        return sys.stdin.readline(_MAX_TYPED).rstrip("\r\n")
    typed = getpass.getpass(f"{spoken().say('command.open.passphrase')} ")
    if getpass.getpass(f"{spoken().say('command.open.once_more')} ") != typed:
        raise Refusal("command.open.not_the_same")
    return typed


def _guesses(passphrase: str, class_file: Path) -> float:
    """Return how many guesses a passphrase would take of who knows the class's file and the names in it.

    Those names count for nothing: several in a row are many guesses for a stranger, and few for who is in the room.
    """
    from zxcvbn import zxcvbn  # not at the top: its lists of words take a while to read

    from namewright.classbook import Classbook

    with Classbook.open(class_file) as book:
        names = {name for one in book.children(left=True) for name in (one.child.given, one.child.family) if name}
        title = book.class_settings.get("title", "")
    known = [*sorted(names), *title.split(), class_file.stem, "namewright"]
    rest = passphrase.casefold()
    for name in sorted({name.casefold() for name in known if len(name) >= _SHORTEST_NAME}, key=len, reverse=True):
        rest = rest.replace(name, " ")
    judged = " ".join(rest.split())[:MAX_JUDGED]
    return float(zxcvbn(judged, user_inputs=known)["guesses"]) if judged else 0.0
