"""How the command line talks: exit statuses, sentences on stderr, and what it says to words it cannot use."""

from __future__ import annotations

import argparse
import re
import sys
from typing import NoReturn, TypeAlias

ALL_MADE, SOME_NOT_MADE, NOTHING_MADE = 0, 1, 2

_QUOTES = re.compile(r"<[\w.]+: '([^']*)'>|'([^']*)'")
_SENTENCES = (
    (r"the following arguments are required: COMMAND", "say what to make, such as “card Mira -o mira.pdf”"),
    (r"the following arguments are required: (.*)", r"something is missing: \1"),
    (r"argument COMMAND: invalid choice: (\S+) \(choose from (.*)\)", r"there is no command “\1”; choose from \2"),
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


class Refusal(Exception):
    """Nothing can be made; the message is for the person at the keyboard."""


class Parser(argparse.ArgumentParser):
    """A parser that says what was wrong in a sentence."""

    def error(self, message: str) -> NoReturn:
        """Say it and leave."""
        self.exit(NOTHING_MADE, f"{self.prog}: {plainly(message)}. “{self.prog} --help” tells what can be said.\n")


Commands: TypeAlias = "argparse._SubParsersAction[Parser]"  # what argparse itself returns; it has no public name


def plainly(message: str) -> str:
    """Say in plain words what argparse says in its own; a message that is not known stays as it is."""
    bare = _QUOTES.sub(lambda match: match[1] or match[2] or "", message)
    for pattern, sentence in _SENTENCES:
        if match := re.fullmatch(pattern, bare, re.DOTALL):
            return match.expand(sentence)
    return message


def complain(sentence: str) -> None:
    """Say a sentence on stderr."""
    print(f"namewright: {sentence}", file=sys.stderr)
