"""``namewright class``: a class kept in one file, made from a list, copied out as CSV and back, and erased."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

from namewright.classbook import BookChild, Classbook, Erased, RosterUpdate
from namewright.classbook.export import export_csv, import_csv
from namewright.classbook.find import find_child
from namewright.commands.talk import ALL_MADE, SOME_NOT_MADE, Commands, Refusal, complain, worded
from namewright.message import together
from namewright.roster.children import Outcome
from namewright.roster.parsing import PASTED, read_roster
from namewright.roster.sources import decode, read_bytes


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("class", help="keep a class in a file: who is in it, their settings and notes")
    parser.add_argument("file", metavar="FILE", help="the class’s file, such as class.db")
    doing = parser.add_mutually_exclusive_group()
    doing.add_argument("--from", dest="source", metavar="ROSTER",
                       help="make the class from this list, or bring it up to date; this erases nobody (- to paste)")
    doing.add_argument("--export", metavar="DIR", help="copy all of the class as CSV into a new folder, or a .zip")
    doing.add_argument("--import", dest="restore", metavar="DIR", help="make a new FILE from what --export wrote")
    doing.add_argument("--erase", metavar="CHILD", action="append",
                       help="erase this child for good, from every list, with all settings and notes")
    doing.add_argument("--erase-class", action="store_true", help="erase everyone and everything in FILE for good")
    for word, what in (("together", "always sit together"), ("apart", "never sit together"),
                       ("either", "sit as the plan finds best, whatever was said before")):
        doing.add_argument(f"--{word}", metavar="CHILDREN", help=f"two children, with a comma, shall {what}")
    parser.add_argument("--yes", action="store_true", help="erase without asking again")
    parser.add_argument("--who", default="", help="who makes the change, such as “teacher”")
    parser.set_defaults(run=_run)


def opened(file: str, *, create: bool = False) -> Classbook:
    """Open a class for a command. Raises ClassbookError."""
    return Classbook.open(Path(file), create=create)


def _run(options: argparse.Namespace) -> int:
    if options.source:
        return _take(options)
    if options.export:
        written = export_csv(Path(options.file), Path(options.export))
        print(f"All of the class is in {options.export}: {', '.join(path.name for path in written)}.")
    elif options.restore:
        import_csv(Path(options.restore), Path(options.file))
        print(f"The class is in {options.file}.")
    elif options.erase or options.erase_class:
        _erase(options)
    elif options.together or options.apart or options.either:
        _seat(options)
    else:
        _list(options.file)
    return ALL_MADE


def _take(options: argparse.Namespace) -> int:
    data, name = ((sys.stdin.buffer.read(), PASTED) if options.source == "-" else
                  (read_bytes(Path(options.source)), Path(options.source).name))
    text, notes = decode(data, name)
    read_roster(text, name)  # a list that cannot be read makes no class
    with opened(options.file, create=True) as book:
        update = book.update_roster(text, who=options.who)
        labels = {one.id: one.child.label for one in book.children(left=True)}
    _tell(update, labels)
    for note in (*notes, *update.notes):
        complain(note)
    left_out = [report for report in update.roster.lines if report.outcome is Outcome.LEFT_OUT]
    for report in left_out:
        complain(f"left out: line {report.line}: {worded(together(*report.notes))}")
    return SOME_NOT_MADE if left_out else ALL_MADE


def _tell(update: RosterUpdate, labels: dict[int, str]) -> None:
    for word, ids in (("new", update.joined), ("as before", update.stayed), ("back again", update.returned),
                      ("left, and kept with all notes", update.left)):
        if ids:
            print(f"{word}: {', '.join(labels[one] for one in ids)}")


def _seat(options: argparse.Namespace) -> None:
    """Keep who shall sit together or apart."""
    said = options.together or options.apart or options.either
    names = [name.strip() for name in said.split(",") if name.strip()]
    if len(names) != 2:
        raise Refusal(f"“{said}” does not name two children; write both with a comma, such as “Mira, Bo”")
    with opened(options.file, create=False) as book:
        one, other = (find_child(book.children(), name) for name in names)
        book.seat(one.id, other.id, None if options.either else bool(options.together))
    how = "may sit anywhere" if options.either else "sit together" if options.together else "sit apart"
    print(f"{one.child.label} and {other.child.label} {how} from the next plan on.")


def _erase(options: argparse.Namespace) -> None:
    """Ask, and erase children or the class for good."""
    with opened(options.file) as book:
        everyone = book.children(left=True)
        chosen = everyone if options.erase_class else tuple(
            {one.id: one for one in (find_child(everyone, name) for name in options.erase)}.values())
        if not options.yes:
            _ask(book, chosen, options.erase_class)
        if options.erase_class:
            book.erase_all()
            print(f"Everyone and everything in {options.file} is erased for good.")
        else:
            _tell_erased(book.erase([one.id for one in chosen], who=options.who))
    print("Copies and exports of the file, and pages made before, are files of their own: delete those too.")


def _ask(book: Classbook, chosen: Sequence[BookChild], everything: bool) -> None:
    notes = sum(len(book.observations(one.id)) for one in chosen)
    whom = "the whole class, its list and its settings" if everything else ", ".join(one.child.label for one in chosen)
    print(f"Erase for good: {whom}; {notes} {'note' if notes == 1 else 'notes'} with it. There is no way back. "
          "Type “yes” to erase: ", end="", file=sys.stderr, flush=True)
    if sys.stdin.readline().strip().lower() != "yes":
        raise Refusal("nothing was erased; type “yes” when asked, or add --yes")


def _tell_erased(erased: Erased) -> None:
    print("Erased for good: " + ("1 child." if erased.children == 1 else f"{erased.children} children."))
    for label in erased.notes_about:
        complain(f"a note about {label} still holds a name that was erased; look at it")
    for line in erased.lines:
        complain(f"line {line} of the list still holds a name that was erased; mend it")


def _list(file: str) -> None:
    """Say who is in the class, what is set for each, and when each was seen last."""
    with opened(file) as book:
        for one in book.children(left=True):
            own = "".join(f", {key.replace('_', ' ')} {text}" for key, text in one.settings.items())
            days = [note.date for note in book.observations(one.id)]
            seen = f", seen {days[-1]}" if days else ""
            gone = ", left" if one.left else ""
            print(f"{one.child.label}, to practise “{one.child.practice}”{own}{seen}{gone}")
