"""The ways to answer what a line of a list asks, with one press each.

A way says what the line becomes, written so that reading the list again gives what the button promised: that is tried
when it is pressed, and of several ways to write it the first that holds is taken. Pure.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from namewright.classbook.going_on import is_other_script, whole_name
from namewright.classbook.parting import COMMAS, Promise, shared_family, ways_to_write
from namewright.message import Message, message
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.children import Child, LineReport
from namewright.roster.columns import DELIMITERS, join_cells, split_cells
from namewright.roster.commas import BRACKETS
from namewright.roster.cut_short import may_stand_for
from namewright.roster.known import is_family, lean, opens_with_given
from namewright.roster.said import is_said, names_said
from namewright.roster.vocabulary import OR, fold

AS_KNOWN = "web.list.spelled"
"""Tells of a line that its child is called otherwise here than it says."""
KEEPS = "keeps"
"""How the key of a way begins that leaves a child’s name as the class has it."""
MEANT = "meant"
"""The way that takes the name on a line as it stands."""
WITH_MIDDLE = "roster.read_with_middle"
_READ = frozenset({"roster.read", WITH_MIDDLE, "roster.read_by_comma", "roster.comma_with_middle",
                   "roster.family_stands_first"})
_CELLS = pattern(r"[\t;|]|\s{2,}")
_MOST_PARTS = 2
_BETWEEN = pattern(r"\s(?:[-–—=]|[-=]*>|→)\s|:\s")
"""Signs that part a child from another, or a label from names: no name goes over one."""
_OR = pattern(rf"\s(?:{OR})\s")
_DASHES = frozenset("-–—")
ANYBODY = Promise("")
"""That there will be one child, whoever."""
_IS_CHILD = message("web.list.way_child")


@dataclass(frozen=True, slots=True)
class Way:
    """One way to answer. ``tries`` are texts for the line’s place, a line for each of ``promised`` children.

    Without texts it only says that the line is right as it is. ``takes`` is how many lines from this one on it
    replaces, ``offered`` what stands in a field to be changed first; ``tries`` are then made of what was typed.
    ``child`` is the number of the child of the class that the line is said to be, ``NEW`` for none of them.
    """

    key: str
    said: Message
    tries: tuple[tuple[str, ...], ...] = ()
    promised: tuple[Promise, ...] = ()
    takes: int = 1
    offered: str | None = None
    child: int | None = None

    @property
    def settles(self) -> bool:
        """Say whether the text stays as it is."""
        return not self.tries and self.offered is None and self.child is None


def mark(text: str) -> str:
    """Return a key for the words of a line: it tells nothing, and no other words have it."""
    return hashlib.sha256(text.strip().encode(errors="replace")).hexdigest()[:10]


def fine(key: str) -> Way:
    """Return a way that leaves the text as it is; a key has its words."""
    return Way(key, message(f"web.list.way_{key}"))


def no_child(span: int) -> Way:
    """Take out what was read as a child: its line, with those that a quoted cell of it runs over."""
    return Way("none", message("web.list.way_drop"), ((),), takes=span)


# --- several children in one line ----------------------------------------------------------------------


def split(parts: Sequence[Promise]) -> Way:
    """Write a line for each child."""
    said = message("web.list.way_split", count=len(parts), names=tuple(one.name for one in parts))
    return Way("split", said, tuple(ways_to_write(parts)), tuple(parts))


def as_one(text: str) -> Way | None:
    """Write two names without the sign between them, as one child’s; of ``Mira - Leo K.`` the one child is Mira.

    Of two that “or” stands between nobody is called by both.
    """
    whole = strip_numbering(text)
    if _OR.search(whole):
        return None
    if sign := _BETWEEN.search(whole):
        name = whole[: sign.start()].strip()
        alone = opens_with_given(name) and sign[0].strip() != ":" and not COMMAS.search(name)
        return _first_of(name) if alone else None
    before, comma, behind = whole.partition(",")
    first = shared_family(whole) or (before.strip() and lean(before.split()[0]) < 0)
    if comma and first and "," not in behind:  # a family name stands first
        whole = f"{behind} {before}"
    words = " ".join(COMMAS.sub(" ", whole).split())
    if " " not in words:
        return None
    given, _, family = words.rpartition(" ")
    return Way("one", message("web.list.way_one", name=words), ((words,), (f"{family}, {given}",), (f"Name: {words}",)),
               (ANYBODY,))


def with_family_first(text: str) -> Way | None:
    """Take two names about a dash as one child’s, where the first may be the family’s: ``Ricci - Giulia``."""
    whole = BRACKETS.sub(" ", strip_numbering(text)).strip()
    sign = _BETWEEN.search(whole)
    family, given = (whole[: sign.start()].strip(), whole[sign.end() :].strip()) if sign else ("", "")
    if not sign or sign[0].strip() not in _DASHES or not family or not is_family(family.split()[-1]) or (
            not opens_with_given(given) or _BETWEEN.search(given) or COMMAS.search(given)):
        return None
    return Way("turn", message("web.list.way_one", name=f"{given} {family}"),
               ((f"{family}, {given}",), (f"{given} {family}",), (f"Name: {given} {family}",)),
               (Promise(given, family),))


def _first_of(name: str) -> Way:
    return Way("one", message("web.list.way_one", name=name), ((name,), (f"Name: {name}",)), (ANYBODY,))


# --- who may be a child, and a name that may be read otherwise -----------------------------------------


def after_all(report: LineReport, said: Message = _IS_CHILD) -> tuple[Way, ...]:
    """Write a line that was passed over so that it is read as a child; of a sentence only a name in it can be one."""
    words = strip_numbering(report.text).strip(" \t.,:;!?-–—").split()
    name = " ".join(words)
    if is_said(name):
        named = (_named(f"child{number}", *parts) for number, parts in enumerate(names_said(name), 1))
        return (*named, Way("typed", message("web.list.way_typed"), offered=""))
    turned = [(f"{' '.join(words[1:])}, {words[0]}",)] if len(words) > 1 and "," not in name else []
    return (Way("child", said, ((f"Name: {name}",), *turned, (f"“{name}”",)), (ANYBODY,)),)


def _named(key: str, given: str, family: str) -> Way:
    name = f"{given} {family}".strip()
    return Way(key, message("web.list.way_one", name=name), ((name,), (f"Name: {name}",)), (Promise(given, family),))


def typed_name(typed: str) -> Way:
    """Write the name that somebody typed in place of a line that says more."""
    name = " ".join(typed.split())
    return Way("typed", message("web.list.way_typed"), ((name,), (f"Name: {name}",)), (ANYBODY,))


def of_its_own(text: str, child: Child) -> Way:
    """Make a child of a further row: of the name alone, for all else in the row is the child’s above."""
    name = fold(whole_name(child))
    rows = ((delimiter, split_cells(text, delimiter)) for delimiter in DELIMITERS)
    tries = tuple((join_cells([cell if cell and fold(cell) in name else "" for cell in cells], delimiter),)
                  for delimiter, cells in rows if cells and len(cells) > 1)
    return Way("child", message("web.list.way_new"), tries, (ANYBODY,))


def written_out(text: str, typed: str) -> Iterator[Way]:
    """Yield the names that a short form may stand for."""
    for number, name in enumerate(may_stand_for(typed, text), 1):
        whole = text.replace(typed, name, 1)
        yield Way(f"use{number}", message("web.list.way_use", name=name), ((whole,),), (ANYBODY,))


def other_parts(report: LineReport) -> tuple[Way, ...]:
    """Return other parts of a name that may be what the child practises, where a note says how it was read."""
    note = next((note for note in report.notes if note.key in _READ), None)
    child, text = report.child, report.text.strip()
    if note is None or child is None or _CELLS.search(text) or child.practice not in (child.given, child.family):
        return ()
    left = next((str(other["name"]) for other in report.notes if other.key == "roster.middle"), "")
    parts = dict.fromkeys((*_before_last(child, left), *_parts(child, str(dict(note.fields).get("middle", "")))))
    return tuple(Way(f"use{number}", message("web.list.way_use", name=name), ((f"{text} (goes by {name})",),),
                     (Promise("", practice=name),)) for number, name in enumerate(list(parts)[:_MOST_PARTS], 1))


def _before_last(child: Child, middle: str) -> Iterator[str]:
    """Yield a Vietnamese given name of two parts, where more stands before the last than Thị or Văn: ``Minh Anh``."""
    words = [word for word in middle.split() if fold(word) not in ("thi", "van")]
    if words:
        yield " ".join((*words, child.given))


def _parts(child: Child, middle: str) -> Iterator[str]:
    """Yield the likeliest first."""
    if middle:
        yield f"{child.given} {middle}"
        yield middle
    if " " in child.given:
        yield from child.given.split()
    elif " " in child.family and (first := child.family.split()[0]).lower() not in PARTICLES:
        # which may be a second given name
        yield f"{child.given} {first}"
        yield first
    elif child.family:
        yield child.family


def as_it_stands(report: LineReport) -> Iterator[Way]:
    """Yield the way to take a name as the list has it, where the class knows it otherwise."""
    typed = next((str(note["typed"]) for note in report.notes if note.key == AS_KNOWN), "")
    if typed and not is_other_script(typed):
        yield Way(MEANT, message("web.list.way_use", name=typed))


# --- a way that was taken -----------------------------------------------------------------------------


def written(lines: Sequence[LineReport], at: int, way: Way,
            read: Callable[[str], Sequence[LineReport]]) -> str | None:
    """Return the list with a way taken at a line, None where no way to write it holds what the button promised."""
    texts = [report.text for report in lines]
    start, end = (at + way.takes, at + 1) if way.takes < 0 else (at, at + way.takes)
    for new in _numbered_too(texts[start], way.tries):
        tried = "\n".join([*texts[:start], *new, *texts[end:]])
        if not new or _holds(read(tried)[start:start + len(new)], way.promised):
            return tried
    return None


def _numbered_too(text: str, tries: Sequence[tuple[str, ...]]) -> Iterator[tuple[str, ...]]:
    """Yield each way to write a line first with the number or bullet that stands before it."""
    number = text[:len(text) - len(strip_numbering(text))]
    for new in tries:
        if new and number.strip() and not new[0].startswith(number):
            yield (number + new[0], *new[1:])
        yield new


def _holds(found: Iterable[LineReport], promised: Sequence[Promise]) -> bool:
    there = [report.child for report in found]
    return len(there) == len(promised) and all(
        child is not None and _is(child, one) for child, one in zip(there, promised, strict=True))


def _is(child: Child, one: Promise) -> bool:
    given, promised = f"{child.given} ".casefold(), f"{one.given} ".casefold()  # a middle name is promised, too
    same = not one.given or (promised.startswith(given) and child.family.casefold() == one.family.casefold())
    return same and (not one.practice or child.practice.casefold() == one.practice.casefold())
