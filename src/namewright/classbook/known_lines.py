"""Lines that a list alone does not tell to be children, and the class does: somebody answered for them before.

``Lindle, Bo & Ana`` may be two children or one, and a word among whole names may be no name at all. Where the class has
Bo Lindle and Ana Lindle, or a child of just that name, nobody need be asked again: the line is read as who is known. In
one that may be several, half a name is enough where one child alone has it: ``Bo and Ana``.
Pure, but for the reading, which is handed in.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from namewright.classbook.going_on import whole_name, words
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
    told = dict(_known_lines(roster.lines, known)) if known else {}
    lines = [line.text for line in roster.lines]
    kept = _written(lines, told, read) if told else {}
    if not kept:
        if problem:
            raise problem
        return roster
    now = read("\n".join(_with(lines, kept)))
    told = {at: told[at] for at in kept}
    return _accounted(now, roster, told) if len(now.lines) == len(_with(lines, kept)) else now


def _written(lines: Sequence[str], told: Mapping[int, _Told], read: Reader) -> dict[int, tuple[str, ...]]:
    """Return what to write in the place of each line, so that who is told is read from it; all are tried together."""
    kept: dict[int, tuple[str, ...]] = {}
    for way in zip(*(ways_to_write(one.children) for one in told.values()), strict=True):
        tried = {at: new for at, new in zip(told, way, strict=True) if at not in kept}
        if not tried:
            break
        found, now = _read("\n".join(_with(lines, kept | tried)), read)[0].lines, 0
        for at in range(len(lines)):
            new = (kept | tried).get(at, ("",))
            if at in tried and _holds(found[now:now + len(new)], told[at].children):
                kept[at] = new
            now += len(new)
    return kept


def _with(lines: Sequence[str], new: Mapping[int, tuple[str, ...]]) -> list[str]:
    """Return the lines with others in the place of some."""
    return [each for at, line in enumerate(lines) for each in new.get(at, (line,))]


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
    if not left_out or len(left_out) * len(known) > _MOST_PAIRS:
        return
    people = _People(known)
    for at, line in left_out:
        typed = strip_numbering(line.text)
        parts = parted(line.text) if _SEVERAL & {note.key for note in line.notes} else ()
        whole = people.of_name(" ".join(COMMAS.sub(" ", typed).split()))
        found = [whole] if whole else [people.of_part(one) for one in parts]
        there = {one.id: one for one in found if one}
        if found and len(there) == len(found):
            yield at, _Told(typed, tuple(Promise(one.given, one.family) for one in there.values()))


class _People:
    """The children of a class by their names, in whatever order the words stand; made for one list."""

    def __init__(self, known: Sequence[Known]) -> None:
        self._by_words: dict[tuple[str, ...], list[Known]] = {}
        self._by_given: dict[str, list[Known]] = {}
        for one in known:
            for name in {whole_name(one), one.also} - {""}:
                self._by_words.setdefault(tuple(sorted(words(name))), []).append(one)
            for key in {"".join(words(one.given)), "".join(words(one.goes_by))} - {""} if one.here else ():
                self._by_given.setdefault(key, []).append(one)

    def of_name(self, name: str) -> Known | None:
        """Return the only child of just this name."""
        found = self._by_words.get(tuple(sorted(words(name))), [])
        return found[0] if len(found) == 1 else None

    def of_part(self, wanted: Promise) -> Known | None:
        """Return the child of a name, or of half of it the only one who has it, if that one is here."""
        if one := self.of_name(wanted.name):
            return one
        name = Named(wanted.given, wanted.family, wanted.given)
        alike = self._by_given.get("".join(words(wanted.given)), [])
        found = [one for one in alike if kin(name, named(one)) >= Kin.FITS]
        return found[0] if len(found) == 1 else None


def _holds(lines: Sequence[LineReport], children: Sequence[Promise]) -> bool:
    there = [(line.child.given, line.child.family) for line in lines if line.child and line.opens_child]
    return there == [(one.given, one.family) for one in children]


def _accounted(now: Roster, before: Roster, told: Mapping[int, _Told]) -> Roster:
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
