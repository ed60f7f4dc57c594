"""Lines that a list alone does not tell to be children, and the class does: somebody answered for them before.

``Lindle, Bo & Ana`` may be two children or one, and a word among whole names may be no name at all. Where the class has
Bo Lindle and Ana Lindle, or a child of just that name, nobody need be asked again: the line is read as who is known. In
one that may be several, half a name is enough where one child alone has it: ``Bo and Ana``.
Pure, but for the reading, which is handed in.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from namewright.classbook.parting import COMMAS, Promise, parted, ways_to_write
from namewright.classbook.same_child import Kin, Named, kin, named
from namewright.classbook.who import Known
from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.roster.beside import strip_numbering
from namewright.roster.children import LineReport, Outcome, Roster, RosterError

Reader = Callable[[str], Roster]
KNOWN_LINE = "classbook.known_line"
"""Tells that a line was read as children whom the class has."""
_SEVERAL = frozenset({"roster.two_children", "roster.several"})
_OPEN = _SEVERAL | {"roster.unlike"}  # what somebody can answer; a name that is struck off is not among it
_MOST_PAIRS = 40_000  # of lines left out and children: past that it is no class


class _Told(NamedTuple):
    """A line as somebody known stands on it: as typed, and who is on it."""

    typed: str
    children: tuple[Promise, ...]


def read_known(text: str, read: Reader, known: Sequence[Known]) -> Roster:
    """Read a list, with the lines of children whom the class knows as those children, each with a word about it.

    Raises RosterError as ``read`` does.
    """
    roster, problem = _read(text, read)
    told = dict(_known_lines(roster.lines, known))
    if not told:
        if problem:
            raise problem
        return roster
    lines = [line.text for line in roster.lines]
    for at in sorted(told, reverse=True):
        for new in ways_to_write(told[at].children):
            tried = [*lines[:at], *new, *lines[at + 1:]]
            if _holds(_read("\n".join(tried), read)[0].lines[at:at + len(new)], told[at].children):
                lines = tried
                break
        else:
            del told[at]
    if not told and problem:
        raise problem
    now = read("\n".join(lines))
    return _accounted(now, roster, told) if len(now.lines) == len(lines) else now


def _read(text: str, read: Reader) -> tuple[Roster, RosterError | None]:
    try:
        roster = read(text)
    except RosterError as error:
        return Roster((), error.lines), error
    return roster, None


def _known_lines(lines: Sequence[LineReport], known: Sequence[Known]) -> Iterator[tuple[int, _Told]]:
    """Yield the place of each line that was left out and is children of the class, with who they are."""
    left_out = [(at, line) for at, line in enumerate(lines) if line.outcome in (Outcome.LEFT_OUT, Outcome.HEADING)
                and not _OPEN.isdisjoint(note.key for note in line.notes)]
    if len(left_out) * len(known) > _MOST_PAIRS:
        return
    old = [(one, named(one)) for one in known if one.here] + [(one, named(one)) for one in known if not one.here]
    for at, line in left_out:
        typed = strip_numbering(line.text)
        whole = Promise(" ".join(COMMAS.sub(" ", typed).split()))
        parts = parted(line.text) if _SEVERAL & {note.key for note in line.notes} else ()
        for wanted, least in ((((whole,), Kin.SAME), (parts, Kin.FITS)) if parts else (((whole,), Kin.SAME),)):
            found = {one.id: one for each in wanted if (one := _of_name(each, old, least))}
            if len(found) == len(wanted):
                yield at, _Told(typed, tuple(Promise(one.given, one.family) for one in found.values()))
                break


def _of_name(wanted: Promise, old: Sequence[tuple[Known, Named]], least: Kin) -> Known | None:
    """Return the child of just this name; of half a name the only one who has it, if that one is here."""
    name = Named(wanted.given, wanted.family, wanted.given)
    levels = [(kin(name, names), one) for one, names in old]
    found = [one for level, one in levels if level is Kin.SAME] or [one for level, one in levels
                                                                    if level >= least and one.here]
    return found[0] if len(found) == 1 else None


def _holds(lines: Sequence[LineReport], children: Sequence[Promise]) -> bool:
    there = [(line.child.given, line.child.family) for line in lines if line.child and line.opens_child]
    return there == [(one.given, one.family) for one in children]


def _accounted(now: Roster, before: Roster, told: dict[int, _Told]) -> Roster:
    """Return a list that was written anew, each line with the place where it stood, and a word where it was known."""
    reports = iter(now.lines)
    lines = []
    for at, line in enumerate(before.lines):
        one = told.get(at)
        notes = (message(KNOWN_LINE, typed=one.typed,
                         names=tuple(child.name for child in one.children)),) if one else ()
        for _ in range(len(one.children) if one else 1):
            report = next(reports)
            lines.append(report._replace(origin=line.source_line, notes=(*report.notes, *notes)))
    return now._replace(lines=tuple(lines), text="\n".join(line.text for line in lines))
