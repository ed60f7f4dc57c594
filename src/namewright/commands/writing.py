"""Writing what was made: whole or not at all, and never over a file that is read in the same run or holds a class."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager, suppress
from itertools import chain
from pathlib import Path
from typing import TYPE_CHECKING, BinaryIO, TextIO, TypeVar

from namewright.commands.talk import Refusal
from namewright.pages.page import Page
from namewright.whole_files import whole_file
from namewright.wording import wording

if TYPE_CHECKING:
    from namewright.output.pdf import Batch

Thing = TypeVar("Thing")
_QUIET_S = 1.0  # work that takes less needs no bar
_READ = ("roster", "lists", "file", "class_file", "font", "groups_from")
_OTHERS_READ = ("font", "groups_from", "restore")
_NEVER_WRITTEN = (b"SQLite format 3\0", b"PK\x03\x04")  # how a class's file and a spreadsheet begin
_WRITTEN = ("output", "summary", "group_sheets")
"""What the words that name files are called; a command has some of them."""


def check_targets(options: argparse.Namespace) -> None:
    """Look at every file that will be written before any work is done. Raises Refusal as ``target`` does."""
    for read in (getattr(options, word, None) for word in _OTHERS_READ):
        if read and os.path.exists(read) and not os.path.isfile(read) and not os.path.isdir(read):
            raise Refusal("command.problem.no_ordinary_read", file=read)  # a pipe may never end
    if isinstance(getattr(options, "roster", None), list):  # several classes: each is looked at by itself
        return
    names = [name for name in (getattr(options, word, None) for word in _WRITTEN) if name is not None]
    places = [target(name, options).resolve() for name in names]
    if len(set(places)) < len(places):
        raise Refusal("command.problem.same_file", file=places[0].name)


def write(pages: Iterable[Page], options: argparse.Namespace, language: str, output: str | None = None) -> None:
    """Write the PDF whole or not at all, to ``--output`` unless told otherwise; no file where there is no page.

    ``language`` is that of the sentences on the pages.
    """
    from namewright.output.pdf import batches

    write_drawn(batches(pages, wording(language)), options, language, output)


def write_text(text: str, options: argparse.Namespace) -> None:
    """Write a text to ``--output``, whole or not at all, or to the screen where no file was named."""
    if options.output:
        with written(options.output, options) as file:
            file.write(text.encode())
    else:
        sys.stdout.write(text)


def write_drawn(batches: Iterable[Batch], options: argparse.Namespace, language: str,
                output: str | None = None) -> None:
    """Write pages that are drawn already, as ``write`` does."""
    from namewright.output.pdf import write_batches

    title = wording(language).say("page.pdf_title")  # general on purpose: print queues show it
    batches = iter(batches)
    first = next(batches, None)
    if first is not None:
        with written(output or options.output, options) as file:
            write_batches(chain([first], batches), file, title=title, lang=language)


@contextmanager
def written(path: str, options: argparse.Namespace) -> Iterator[BinaryIO]:
    """Open a file that is there when the block has ended well. Raises Refusal where it cannot be written."""
    place = target(path, options)
    try:
        with whole_file(place) as file:
            yield file
    except OSError as error:
        if error.filename and Path(str(error.filename)).parent != place.parent:
            raise
        raise Refusal("command.problem.folder_refuses", file=path, detail=error.strerror or str(error)) from error


def target(path: str, options: argparse.Namespace) -> Path:
    """Return the path of a file to write.

    Raises Refusal for a folder, for a file that is read in the same run, holds a class or a spreadsheet, is
    write-protected or is a device, and where there is no folder to write into.
    """
    place = Path(path)
    if not path.strip():
        raise Refusal("command.problem.unnamed")
    if place.is_dir():
        raise Refusal("command.problem.folder", file=path, example=f"{path.rstrip('/')}/class.pdf")
    if not place.parent.is_dir():
        raise Refusal("command.problem.no_folder", folder=str(place.parent), file=place.name)
    if place.exists():
        _check_standing(place, path, options)
    return place


def _check_standing(place: Path, path: str, options: argparse.Namespace) -> None:
    """Refuse to write over what must stay."""
    if not place.is_file():
        raise Refusal("command.problem.no_ordinary_file", file=path)
    if not place.stat().st_mode & 0o222:
        raise Refusal("command.problem.protected", file=path)
    named = [getattr(options, word, None) or () for word in _READ]
    for read in (name for names in named for name in ([names] if isinstance(names, str) else names)):
        if os.path.exists(read) and place.samefile(read):
            raise Refusal("command.problem.read_here", file=path)
    if _begins(place).startswith(_NEVER_WRITTEN):  # a slip of the hand must not cost a year of notes
        raise Refusal("command.problem.held", file=path)


def _begins(place: Path) -> bytes:
    """Return the first bytes of a file, none of one that may be written and not read."""
    with suppress(PermissionError), place.open("rb") as file:
        return file.read(max(map(len, _NEVER_WRITTEN)))
    return b""


def progress(things: Iterable[Thing], total: int | None, stream: TextIO | None = None, *,
             pages: Callable[[Thing], int] = lambda _: 1) -> Iterator[Thing]:
    """Pass pages on, or things of several ``pages``, and show how far the work is and what time is left.

    It shows on a terminal, and only there, after a second. ``total`` counts children, and a child may have several
    pages: past it, the bar counts on without an end.
    """
    stream = stream or sys.stderr
    if total is None or not stream.isatty():
        yield from things
        return
    from tqdm import tqdm  # not at the top: in a pipe nothing is shown

    with tqdm(total=total, file=stream, delay=_QUIET_S, leave=False, dynamic_ncols=True, ascii=" #",
              bar_format="{bar:30} {n_fmt}/{total_fmt} {remaining}") as bar:
        for one in things:
            yield one
            bar.update(pages(one))
