"""Several classes in one run: lists, class's files or folders of them; a PDF for each, and one account at the end.

A class that cannot be made is told with the name of its list and stops no other. No list is ever written over, and no
two classes are written into one file. Out of scope: how a class is made (the command hands that in).
"""

from __future__ import annotations

import argparse
import os
import unicodedata
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from pathlib import Path

from namewright.commands.asking import is_class, typed_choices
from namewright.commands.talk import ALL_MADE, NOTHING_MADE, SOME_NOT_MADE, Refusal, complain, tell, told_of_file
from namewright.making.choices import Choices
from namewright.message import Message, Problem, message
from namewright.whole_files import folder_for_files

Told = tuple[int, Sequence[Message]]
"""The exit status that a class alone would have, and what is to be said of it."""

_LISTS = (".txt", ".csv", ".tsv", ".xlsx", ".html", ".htm")
_NEVER_LISTS = (".pdf", "-wal", "-shm", "-journal")  # what we write, and what SQLite lays beside a class's file
_PASTED = "-"


def several(options: argparse.Namespace) -> bool:
    """Say whether each class gets a PDF of its own: more than one list, a folder of them, or a folder to write into."""
    return (len(options.roster) > 1 or options.output.endswith(("/", os.sep))
            or (bool(options.roster[0]) and Path(options.roster[0]).is_dir()))


def make_each(options: argparse.Namespace, make: Callable[[argparse.Namespace], Told]) -> int:
    """Make every class by itself, then tell of all; return the exit status. Raises Refusal where none can be begun."""
    for word in (options.output, options.summary):
        if word is not None and word.lower().endswith(".pdf"):
            raise Refusal("command.problem.one_pdf", file=word)
    typed_choices(options, Choices())  # what cannot be chosen is said once and not for every class
    lists, no_lists = lists_in(options.roster)
    names = distinct([Path(one).stem if one != _PASTED else "class" for one in lists])
    with ExitStack() as folders:
        for word in filter(None, (options.output, options.summary)):
            folders.enter_context(folder_for_files(Path(word)))
        made = [_one(_options_of(options, lists, one, name), make) for one, name in zip(lists, names, strict=True)]
    for one, (_, told) in zip(lists, made, strict=True):
        for each in told:
            complain(_named(one, each))
    if no_lists:
        complain("command.told.no_lists", files=tuple(no_lists))
    _tell_names(options.output, lists, names, [status for status, _ in made])
    return _together([status for status, _ in made], bool(no_lists))


def lists_in(words: Sequence[str]) -> tuple[list[str], list[str]]:
    """Return the lists that are named or stand in a folder that is, each once, and the files there that are none.

    A folder without any stands for itself: reading it says what it is.
    """
    found, others = [], []
    for word in words:
        inside = _files(Path(word)) if word and Path(word).is_dir() else []
        lists = [path for path in inside if path.suffix.lower() in _LISTS or is_class(str(path))]
        others += [str(path) for path in inside if path not in lists]
        found += [str(path) for path in lists] or [word]
    once = {one if one == _PASTED else str(Path(one).resolve()): one for one in reversed(found)}
    return list(reversed(once.values())), others


def _files(folder: Path) -> list[Path]:
    """Return the ordinary files of a folder by name, without hidden ones and what a spreadsheet program leaves open."""
    return sorted(path for path in folder.iterdir() if path.is_file() and not path.name.startswith((".", "~$"))
                  and not path.name.lower().endswith(_NEVER_LISTS))


def distinct(names: Sequence[str]) -> list[str]:
    """Return names of which no two are one file, on any system: a later one that is taken gets a number."""
    taken: set[str] = set()
    given = []
    for name in names:
        free, number = name, 1
        while _key(free) in taken:
            number += 1
            free = f"{name}-{number}"
        taken.add(_key(free))
        given.append(free)
    return given


def _key(name: str) -> str:
    return unicodedata.normalize("NFC", unicodedata.normalize("NFC", name).casefold())


def _options_of(options: argparse.Namespace, lists: Sequence[str], one: str, name: str) -> argparse.Namespace:
    """Return the words for one class alone; ``lists`` are those that it must not write over."""
    places = {word: Path(folder) / ending for word, folder, ending in (
        ("output", options.output, f"{name}.pdf"), ("summary", options.summary, f"{name}.pdf"),
        ("svg", options.svg, name), ("png", options.png, name)) if folder is not None}
    return argparse.Namespace(**{**vars(options), "roster": one, "lists": lists,
                                 **{word: str(place) for word, place in places.items()}})


def _one(options: argparse.Namespace, make: Callable[[argparse.Namespace], Told]) -> Told:
    try:
        return make(options)
    except Problem as error:
        return NOTHING_MADE, [error.message]
    except BrokenPipeError:
        raise
    except OSError as error:
        return NOTHING_MADE, [told_of_file(error)]


def _named(one: str, told: Message) -> Message:
    """Return what is told of a class with the name of its list, unless that stands in it already."""
    if one == _PASTED:
        return told
    names = {one, Path(one).name}
    return told if any(value in names for _, value in told.fields) else message("command.told.of_list", file=one,
                                                                                told=told)


def _tell_names(folder: str, lists: Sequence[str], names: Sequence[str], status: Sequence[int]) -> None:
    made = [(one, name) for one, name, each in zip(lists, names, status, strict=True) if each != NOTHING_MADE]
    for one, name in made:
        if one != _PASTED and name != Path(one).stem:
            tell("command.told.renamed", file=one, output=f"{name}.pdf")
    if made:
        tell("command.told.folder", count=len(made), folder=folder)


def _together(status: Sequence[int], left_out: bool) -> int:
    if all(each == NOTHING_MADE for each in status):
        return NOTHING_MADE
    return SOME_NOT_MADE if any(status) or left_out else ALL_MADE
