"""How the command line talks: its language, exit statuses, sentences on stderr, and what it says to odd words.

The language is ``--language``, else that of the machine (LC_ALL, LC_MESSAGES, LANG; POSIX.1-2017, 8.2) where the
command line has words for it, else English. Out of scope: the language on a page (``--captions``).
"""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextvars import ContextVar
from typing import Any, NoReturn, TypeAlias

from namewright.message import Field, Message, Problem, message, together
from namewright.patterns import pattern
from namewright.roster.children import LineReport
from namewright.wording import FIRST, Wording, has_table, languages, wording

ALL_MADE, SOME_NOT_MADE, NOTHING_MADE = 0, 1, 2

_ORDERS = dict.fromkeys({*range(32), *range(127, 160)} - {ord("\t"), ord("\n")}, "\ufffd")  # control characters
_LANGUAGE = "--language"
_OF_THE_MACHINE = ("LC_ALL", "LC_MESSAGES", "LANG")
_spoken: ContextVar[str] = ContextVar("the language that this run speaks", default=FIRST)

_QUOTES = pattern(r"<[\w.]+: '([^']*)'>|'([^']*)'")
_REQUIRED = "the following arguments are required: "
_PARSED = (
    (r"argument (?P<option>\S+): invalid choice: (?P<text>.*) \(choose from (?P<known>.*)\)", "choice"),
    (r"argument (?P<option>\S+): expected one argument", "needs_word"),
    (r"argument (?P<option>\S+): invalid (?:float|int) value: (?P<text>.*)", "needs_number"),
    (r"argument (?P<option>\S+): not allowed with argument (?P<other>\S+)", "not_together"),
    (r"ambiguous option: (?P<option>\S+) could match (?P<known>.*)", "ambiguous"),
    (r"unrecognized arguments: (?P<option>-.*)", "unknown_option"),
    (r"unrecognized arguments: (?P<text>.*)", "one_too_many"),
    (r"one of the arguments (?P<known>.*) is required", "one_of"),
)
"""What the parser of the standard library says, and the key of what we say instead; it tells no other way."""


# --- the language --------------------------------------------------------------------------------------


def speak(words: Sequence[str], environment: Mapping[str, str]) -> None:
    """Settle the language of this run, from what was typed and from the machine. Raises Refusal for an unknown one."""
    _spoken.set(_of_the_machine(environment))
    typed = next(_typed(words), None)
    if typed is not None and typed not in known_languages():
        raise Refusal("problem.language", language=typed, known=known_languages())
    _spoken.set(typed or _spoken.get())


def known_languages() -> tuple[str, ...]:
    """Return the languages that have words for the command line, sorted."""
    return tuple(language for language in languages() if has_table(language, "command"))


def spoken() -> Wording:
    """Return the words of the language that this run speaks."""
    return wording(_spoken.get())


def _typed(words: Sequence[str]) -> Iterator[str]:
    for at, word in enumerate(words):
        option, equals, value = word.partition("=")
        if len(option) > len("--lan") and _LANGUAGE.startswith(option):  # as short as it is told from --landscape
            yield from [value] if equals else words[at + 1:at + 2]


def _of_the_machine(environment: Mapping[str, str]) -> str:
    said = next((environment[key] for key in _OF_THE_MACHINE if environment.get(key)), "")
    language = re.split(r"[_.@-]", said)[0].lower()
    return language if language in languages() and has_table(language, "command") else FIRST


# --- saying it -----------------------------------------------------------------------------------------


class Refusal(Problem):
    """Nothing can be made; the message is for the person at the keyboard."""


def complain(told: Message | Problem | str, /, **fields: Field) -> None:
    """Say on stderr what is to be told: a message, what a problem tells, or a key with its fields."""
    print(f"namewright: {worded(told, **fields)}", file=sys.stderr)


def tell(told: Message | Problem | str, /, **fields: Field) -> None:
    """Say the same on stdout, where it is what was asked for."""
    print(worded(told, **fields))


def worded(told: Message | Problem | str, /, **fields: Field) -> str:
    """Return what is to be told as a sentence, without what would order a terminal about (in a file's name, a note)."""
    return spoken().sentence(told, **fields).translate(_ORDERS)


def left_out_told(report: LineReport) -> Message:
    """Return what is said of a line from which nobody was made: where it stands, its words, and why."""
    return message("command.told.left_out", line=report.source_line, text=report.opening,
                   reason=together(*report.notes))


def told_of_file(error: OSError) -> Message:
    """Return what is wrong with a file, or with what was to be written."""
    detail = error.strerror or str(error)
    if error.filename is None:
        return message("command.problem.not_written", detail=detail)
    key = {FileNotFoundError: "no_file", PermissionError: "not_yours"}.get(type(error), "unusable")
    return message(f"command.problem.{key}", file=str(error.filename), detail=detail)


def explained(key: str, **fields: Field) -> str:
    """Return words for a page of help."""
    return spoken().say(f"command.{key}", **fields).replace("%", "%%")


def place(name: str) -> str:
    """Return the word in capitals that stands for somebody's own, such as FILE."""
    return spoken().say(f"command.place.{name}")


# --- what was typed ------------------------------------------------------------------------------------


class _Formatter(argparse.RawDescriptionHelpFormatter):
    """Lines of help as the standard library sets them, with our own word before the usage."""

    def add_usage(self, usage: Any, actions: Any, groups: Any, prefix: str | None = None) -> None:
        """Show what must be said."""
        super().add_usage(usage, actions, groups, f"{explained('usage')} " if prefix is None else prefix)

    def _fill_text(self, text: str, width: int, indent: str) -> str:
        """Fold running text, and leave as it is what has lines of its own."""
        if "\n" in text:
            return super()._fill_text(text, width, indent)
        return argparse.HelpFormatter._fill_text(self, text, width, indent)


class Parser(argparse.ArgumentParser):
    """A parser whose help reads well to someone who is new to this, and that says what was wrong in a sentence."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        usual = {"epilog": explained("how_to_read"), "formatter_class": _Formatter}
        super().__init__(*args, **{**usual, **kwargs, "add_help": False})
        self.add_argument("-h", "--help", action="help", help=explained("help"))
        known = known_languages()
        self.add_argument(_LANGUAGE, choices=known, metavar=place("language"), help=explained("language", known=known))
        self._positionals.title = explained("works_on")
        self._optionals.title = explained("can_add")

    def format_usage(self) -> str:
        """Show what must be said, and leave the rest to the list below."""
        return f"{explained('usage')} {self._shortest()}\n"

    def format_help(self) -> str:
        """Show the help with the short usage."""
        self.usage = self._shortest()
        return super().format_help()

    def _shortest(self) -> str:
        named = [action for action in self._actions if not action.option_strings]
        asked = [action for action in self._actions if action.option_strings and action.required]
        words = [self.prog, *(f"{action.metavar}" if action.required else f"[{action.metavar}]" for action in named),
                 *(f"{action.option_strings[0]} {action.metavar}" for action in asked)]
        more = len(self._actions) > len(named) + len(asked) + 2  # help and language are always there
        return " ".join([*words, "…"] if more else words)

    def error(self, said: str) -> NoReturn:
        """Say it and leave."""
        told = together(self._plainly(said), message("command.parse.way_on", program=self.prog))
        self.exit(NOTHING_MADE, f"{self.prog}: {worded(told)}\n")

    def _plainly(self, said: str) -> Message:
        """Return in plain words what the standard library's parser says in its own."""
        bare = _QUOTES.sub(lambda match: match[1] or match[2] or "", said)
        if (names := bare.removeprefix(_REQUIRED)) != bare:
            return self._missing(names.split(", "))
        for told, key in _PARSED:
            if match := re.fullmatch(told, bare, re.DOTALL):
                fields = {name: text.replace("-o/--output", "-o") for name, text in match.groupdict().items()}
                if fields.get("option") == place("command"):
                    return message("command.parse.unknown_command", text=fields["text"], known=fields["known"])
                return message(f"command.parse.{key}", **fields)
        return message("command.parse.not_understood", detail=said)

    def _missing(self, names: Sequence[str]) -> Message:
        if names == [place("command")]:
            return message("command.parse.no_command")
        called = {"/".join(action.option_strings) or str(action.metavar): action.dest for action in self._actions}
        keys = [f"command.missing.{called.get(name, name)}" for name in names]
        return message("command.parse.missing", names=tuple(
            message(key) if spoken().has(key) else name for key, name in zip(keys, names, strict=True)))


Commands: TypeAlias = "argparse._SubParsersAction[Parser]"  # what argparse itself returns; it has no public name
