"""How the command line talks: exit statuses, sentences on stderr, and what it says to words it cannot use."""

from __future__ import annotations

import argparse
import re
import sys
from typing import Any, NoReturn, TypeAlias

from namewright.message import Message, Problem
from namewright.wording import wording

ALL_MADE, SOME_NOT_MADE, NOTHING_MADE = 0, 1, 2

HOW_TO_READ = (
    "Words in CAPITALS stand for your own: a file, a name, a measure. Put quotes round one that has spaces in it. "
    "What stands in brackets at the end of a line is what you get where you say nothing.")
_QUOTES = re.compile(r"<[\w.]+: '([^']*)'>|'([^']*)'")
_SENTENCES = (
    (r".*required: COMMAND", "say what to make, such as “card Mira -o mira.pdf”"),
    (r"argument COMMAND: invalid choice: (.*) \(choose from (.*)\)", r"there is no command “\1”; choose from \2"),
    (r"argument (\S+): invalid choice: (.*) \(choose from (.*)\)", r"\1 cannot be “\2”; choose from \3"),
    (r"argument (\S+): expected one argument", r"\1 needs a word or a number behind it"),
    (r"argument (\S+): invalid (?:float|int) value: (.*)", r"\1 needs a number, and “\2” is none"),
    (r"argument (\S+): not allowed with argument (\S+)", r"\1 and \2 cannot be said together; choose one"),
    (r"ambiguous option: (\S+) could match (.*)", r"\1 could mean \2; write it out"),
    (r"unrecognized arguments: (-.*)", r"there is no “\1” here"),
    (r"unrecognized arguments: (.*)", r"“\1” is one word too many; put quotes round a name that has spaces"),
    (r"one of the arguments (.*) is required", r"say one of these: \1"),
)
"""What the parser of the standard library says, and what we say instead."""
_REQUIRED = "the following arguments are required: "
_MISSING = {
    "ROSTER": "your class list (a file such as class.xlsx, or - to paste it)", "NAME": "the name to write",
    "CHILD": "the child", "FILE": "the file", "-o/--output": "where to write it, such as -o class.pdf",
    "--class": "the class’s file, such as --class room4.db",
}


class Refusal(Exception):
    """Nothing can be made; the message is for the person at the keyboard."""


class Parser(argparse.ArgumentParser):
    """A parser whose help reads well to someone who is new to this, and that says what was wrong in a sentence."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **{"epilog": HOW_TO_READ, **kwargs, "add_help": False})
        self.add_argument("-h", "--help", action="help", help="show this page")
        self._positionals.title = "what it works on"
        self._optionals.title = "what you can add"

    def format_usage(self) -> str:
        """Show what must be said, and leave the rest to the list below."""
        return f"usage: {self._shortest()}\n"

    def format_help(self) -> str:
        """Show the help with the short usage."""
        self.usage = self._shortest()
        return super().format_help()

    def _shortest(self) -> str:
        named = [action for action in self._actions if not action.option_strings]
        asked = [action for action in self._actions if action.option_strings and action.required]
        words = [self.prog, *(f"{action.metavar}" if action.required else f"[{action.metavar}]" for action in named),
                 *(f"{action.option_strings[0]} {action.metavar}" for action in asked)]
        more = len(self._actions) > len(named) + len(asked) + 1  # the one that is always there is this help
        return " ".join([*words, "…"] if more else words)

    def error(self, message: str) -> NoReturn:
        """Say it and leave."""
        self.exit(NOTHING_MADE, f"{self.prog}: {plainly(message)}. “{self.prog} --help” tells what can be said.\n")


Commands: TypeAlias = "argparse._SubParsersAction[Parser]"  # what argparse itself returns; it has no public name


def plainly(message: str) -> str:
    """Say in plain words what argparse says in its own; a message that is not known stays as it is."""
    bare = _QUOTES.sub(lambda match: match[1] or match[2] or "", message)
    if (words := bare.removeprefix(_REQUIRED)) != bare and words != "COMMAND":
        return f"this is missing: {'; '.join(_MISSING.get(word, word) for word in words.split(', '))}"
    for pattern, sentence in _SENTENCES:
        if match := re.fullmatch(pattern, bare, re.DOTALL):
            return match.expand(sentence).replace("-o/--output", "-o")
    return message


def complain(told: Message | Exception | str) -> None:
    """Say on stderr what is to be told."""
    print(f"namewright: {worded(told)}", file=sys.stderr)


def worded(told: Message | Exception | str) -> str:
    """Return what is to be told as a sentence."""
    if isinstance(told, Problem):
        return wording("en").sentence(told.message)
    return wording("en").sentence(told) if isinstance(told, Message) else str(told)
