"""``namewright class``: a class kept in one file, made from a list, copied out as CSV and back, and erased."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from pathlib import Path

from namewright.classbook import BookChild, Classbook, ClassbookError, Erased, RosterUpdate, Trace
from namewright.classbook.enrol import NEW
from namewright.classbook.export import export_csv, import_csv
from namewright.classbook.find import called_so, find_child
from namewright.classbook.going_on import whole_name
from namewright.classbook.mending import mend
from namewright.classbook.needed import list_words
from namewright.classbook.records import called as names_of
from namewright.classbook.rosters import Answers, NewList
from namewright.commands.talk import (
    ALL_MADE,
    SOME_NOT_MADE,
    Commands,
    Refusal,
    complain,
    explained,
    left_out_told,
    place,
    spoken,
    tell,
    worded,
)
from namewright.message import Message, message, together
from namewright.names.beats import NAMES_IN
from namewright.roster.children import Outcome
from namewright.roster.limits import MAX_BYTES
from namewright.roster.parsing import PASTED, read_roster
from namewright.roster.sources import decode, read_bytes
from namewright.tuning import called
from namewright.wording import languages


def add(commands: Commands) -> None:
    """Add the words of the command."""
    parser = commands.add_parser("class", help=explained("class.help"))
    parser.add_argument("file", metavar=place("file"), help=explained("class.file"))
    doing = parser.add_mutually_exclusive_group()
    doing.add_argument("--from", dest="source", metavar=place("roster"), help=explained("class.from"))
    doing.add_argument("--take-back", action="store_true", help=explained("class.take_back"))
    doing.add_argument("--export", metavar=place("folder"), help=explained("class.export"))
    doing.add_argument("--import", dest="restore", metavar=place("folder"), help=explained("class.import"))
    doing.add_argument("--erase", metavar=place("child"), action="append", help=explained("class.erase"))
    doing.add_argument("--mend", action="store_true", help=explained("class.mend"))
    doing.add_argument("--erase-class", action="store_true", help=explained("class.erase_class"))
    for word in ("together", "apart", "either"):
        doing.add_argument(f"--{word}", metavar=place("children"), help=explained(f"class.{word}"))
    doing.add_argument("--names-in", choices=list(NAMES_IN), metavar=place("language"),
                       help=explained("class.names_in", known=NAMES_IN))
    doing.add_argument("--home-language", choices=languages(), metavar=place("language"),
                       help=explained("class.home_language", known=languages()))
    doing.add_argument("--beats", metavar=place("words"), help=explained("class.beats"))
    parser.add_argument("--of", metavar=place("child"), help=explained("class.of"))
    parser.add_argument("--same", metavar=place("children"), action="append", default=[], help=explained("class.same"))
    parser.add_argument("--columns", metavar=place("columns"), help=explained("option.columns"))
    parser.add_argument("--sheet", metavar=place("sheet"), help=explained("option.sheet"))
    parser.add_argument("--yes", action="store_true", help=explained("class.yes"))
    parser.add_argument("--everywhere", action="store_true", help=explained("class.everywhere"))
    parser.add_argument("--whole-list", action="store_true", help=explained("class.whole"))
    parser.add_argument("--who", default="", metavar=place("words"), help=explained("class.who"))
    parser.set_defaults(run=_run)


def opened(file: str, *, create: bool = False) -> Classbook:
    """Open a class for a command, and let go of a list of before that is a day old. Raises ClassbookError."""
    book = Classbook.open(Path(file), create=create)
    with suppress(ClassbookError):  # of a file that can only be read
        book.roster_saved()
    return book


_OF_LIST = {"--same": "same", "--columns": "columns", "--sheet": "sheet", "--whole-list": "whole_list"}


def _run(options: argparse.Namespace) -> int:
    """Do what was asked. Raises Refusal, too, for a word about a list where none is given."""
    if not options.source and (typed := next((word for word, key in _OF_LIST.items() if getattr(options, key)), "")):
        raise Refusal("command.class.needs_list", option=typed)
    if options.source:
        return _take(options)
    if options.take_back:
        _take_back(options.file)
    elif options.export:
        written = export_csv(Path(options.file), Path(options.export))
        tell("command.class.exported", folder=options.export, files=tuple(path.name for path in written))
    elif options.restore:
        import_csv(Path(options.restore), Path(options.file))
        tell("command.class.imported", file=options.file)
    elif options.mend:
        _mend(options)
    elif options.erase or options.erase_class:
        _erase(options)
    elif options.together or options.apart or options.either:
        _seat(options)
    elif options.names_in and not options.of:
        with opened(options.file) as book:
            book.set_class_settings({"names_in": options.names_in}, who=options.who)
        tell("command.class.names_in_kept", language=options.names_in)
    elif options.names_in or options.home_language or options.beats:
        _say_of(options)
    else:
        _list(options.file)
    return ALL_MADE


def _take(options: argparse.Namespace) -> int:
    data, name = ((sys.stdin.buffer.read(MAX_BYTES + 1), PASTED) if options.source == "-" else
                  (read_bytes(Path(options.source)), Path(options.source).name))
    text, notes = decode(data, name, options.sheet or "")
    read = read_roster(text, name, columns=options.columns or "")  # a list that cannot be read makes no class
    text = read.text or text
    with opened(options.file, create=True) as book:
        typed = dict(_pair(book, text, words) for words in options.same)
        new = NewList(text, _same(book, text, options, typed), Answers(meant=_meant(book, text, typed)),
                      list_words(spoken().say), options.whole_list)
        update = book.update_roster(new, who=options.who, for_a_day=True)
        labels, may_go_back = names_of(book.children(left=True)), book.roster_saved() is not None
    _tell(update, labels)
    if may_go_back and not update.doubted.issuperset(update.left):
        tell("command.class.may_take_back", file=options.file)
    for note in (*notes, *read.notes, *update.notes, *_say_same(update)):
        complain(note)
    left_out = [report for report in update.roster.lines if report.outcome is Outcome.LEFT_OUT]
    for report in left_out:
        complain(left_out_told(report))
    return SOME_NOT_MADE if left_out else ALL_MADE


def _take_back(file: str) -> None:
    """Bring the class back as it was before its newest list. Raises Refusal where that is not kept."""
    with opened(file) as book:
        if book.roster_saved() is None:
            raise Refusal("command.class.nothing_to_take_back", file=file)
        book.undo_roster(after_roster=book.roster_id(), over_draft=False)
        labels = tuple(one.child.label for one in book.children())
    tell(f"command.class.taken_back{'' if labels else '_to_none'}", labels=labels)


def _same(book: Classbook, text: str, options: argparse.Namespace, typed: Mapping[int, int]) -> dict[int, int]:
    """Return who of the class stands on which line, as was typed, and as is answered where names leave it open."""
    same = dict(typed)
    if options.source == "-" or not sys.stdin.isatty():
        return same
    update, _ = book.trial(text, book.part, same=same)
    for one in update.recognised:
        if not one.sure:
            same[one.line] = next((each.id for each in one.known if each.id not in same.values() and _yes(
                message("command.class.ask_same", name=one.name, before=each.shown))), NEW)
    return same


def _meant(book: Classbook, text: str, typed: Mapping[int, int]) -> frozenset[int]:
    """Return the lines whose names are meant as they stand: whose they are was plain, and it was typed all the same."""
    plain = book.trial(text, book.part)[0].ids if typed else {}
    return frozenset(line for line, child_id in typed.items() if plain.get(line) == child_id)


def _pair(book: Classbook, text: str, typed: str) -> tuple[int, int]:
    """Return the line of the list and the number of the child that a typed pair of names means. Raises Refusal."""
    before, now = _two(typed)
    lines = [child.line for child in called_so(book.trial(text, book.part)[0].roster.children, now)]
    if len(lines) != 1:
        raise Refusal("command.class.no_line", typed=now)
    return lines[0], find_child(book.children(left=True), before).id


def _say_same(update: RosterUpdate) -> Iterator[Message]:
    """Say how a child who was taken for a new one is made one with the child of before."""
    names = {child.line: whole_name(child) for child in update.roster.children}
    for one in update.recognised:
        if one.taken is None:
            old = one.known[0]
            pair = f"{whole_name(old)}, {names[one.line]}"
            yield message("command.class.say_same", pair=pair)


def _tell(update: RosterUpdate, labels: dict[int, str]) -> None:
    for key, everyone in (("joined", update.joined), ("stayed", update.stayed), ("returned", update.returned),
                          ("left", update.left)):
        if ids := [one for one in everyone if one not in update.doubted]:
            tell(f"command.class.{key}", count=len(ids), labels=tuple(labels[one] for one in ids))


def _mend(options: argparse.Namespace) -> None:
    """Show what no class can hold, ask, and take it out."""
    found = mend(Path(options.file), really=False)
    if not found:
        tell("command.class.nothing_odd", file=options.file)
        return
    for odd in found:
        complain(odd.told)
    if not options.yes and not _yes(message("command.class.ask_mend", file=options.file)):
        raise Refusal("command.class.not_mended")
    mend(Path(options.file), really=True)
    tell("command.class.mended", file=options.file)


def _say_of(options: argparse.Namespace) -> None:
    """Keep what is said of one child: its beats, the language of its name or of its home. Raises Refusal."""
    if not options.of:
        raise Refusal("command.class.whose")
    ((key, value),) = [(key, getattr(options, key)) for key in ("names_in", "home_language", "beats")
                       if getattr(options, key)]
    with opened(options.file) as book:
        one = find_child(book.children(left=True), options.of)
        book.set_settings(one.id, {key: value}, who=options.who)
    tell("command.class.own_kept", label=one.child.label, setting=called(key), value=value)


def _seat(options: argparse.Namespace) -> None:
    """Keep who shall sit together or apart."""
    names = _two(options.together or options.apart or options.either)
    with opened(options.file, create=False) as book:
        one, other = (find_child(book.children(), name) for name in names)
        book.seat(one.id, other.id, None if options.either else bool(options.together))
    how = "either" if options.either else "together" if options.together else "apart"
    tell(f"command.class.sit_{how}", labels=(one.child.label, other.child.label))


def _two(typed: str) -> tuple[str, str]:
    """Return two names with a comma between them. Raises Refusal."""
    names = [name.strip() for name in typed.split(",") if name.strip()]
    if len(names) != 2:
        raise Refusal("command.class.not_two", typed=typed)
    return names[0], names[1]


def _erase(options: argparse.Namespace) -> None:
    """Ask, and erase children or the class for good."""
    with opened(options.file) as book:
        everyone = book.children(left=True)
        chosen = everyone if options.erase_class else tuple(
            {one.id: one for one in (find_child(everyone, name) for name in options.erase)}.values())
        traces = () if options.erase_class else book.traces([one.id for one in chosen])
        for trace in traces:
            complain("command.class.may_stand", where=trace.told)
        too = options.everywhere if options.yes else _asked(book, chosen, options.erase_class) and _asked_too(traces)
        if options.erase_class:
            book.erase_all()
            tell("command.class.all_erased", file=options.file)
        else:
            also = [trace.key for trace in traces if too]
            _tell_erased(book.erase([one.id for one in chosen], who=options.who, also=also))
    tell("command.class.copies")


def _asked(book: Classbook, chosen: Sequence[BookChild], everything: bool) -> bool:
    """Ask whether to erase. Raises Refusal for any answer but yes."""
    notes = sum(len(book.observations(one.id)) for one in chosen)
    names = names_of(book.children(left=True))
    whom = message("command.class.ask_all") if everything else message(
        "command.class.ask", labels=tuple(names[one.id] for one in chosen))
    if not _yes(together(whom, message("command.class.ask_notes", count=notes), message("command.class.ask_yes"))):
        raise Refusal("command.class.not_erased")
    return True


def _asked_too(traces: Sequence[Trace]) -> bool:
    """Ask whether the names shall go from other places, if there are any."""
    return bool(traces) and _yes(message("command.class.ask_too"))


def _yes(asked: Message) -> bool:
    print(worded(asked), end=" ", file=sys.stderr, flush=True)
    return sys.stdin.readline().strip().lower() in ("yes", spoken().say("command.class.yes_word"))


def _tell_erased(erased: Erased) -> None:
    tell("command.class.erased", count=erased.children)
    for trace in erased.standing:
        complain("command.class.still_stands", where=trace.told)


def _list(file: str) -> None:
    """Say who is in the class, what is set for each, and when each was seen last."""
    with opened(file) as book:
        for one in book.children(left=True):
            facts = [message("command.class.set", setting=called(key), value=text)
                     for key, text in one.settings.items()]
            days = [note.date for note in book.observations(one.id)]
            facts += [message("command.class.seen", day=days[-1])] if days else []
            facts += [message("command.class.gone")] if one.left else []
            print(spoken().say(f"command.class.child{'_with' if facts else ''}", label=one.child.label,
                               practice=one.child.practice, facts=tuple(facts)))
