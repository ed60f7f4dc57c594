"""Who is who when a new roster comes: children who stay keep their id, and with it all that is kept about them.

Pure. A line of the new roster is given to a child we know in this order: as the caller says; the same given name,
family name and practised name; the same written name, or names that say nothing against each other (``same_child``),
where there is one such line and one such child. The first three also bring back a child who had left. Where names leave
it open, or say nothing while a birthday or the place in the list does, the line and whom it may be are handed out, to
be asked of a person; until that is answered a slip is taken for the same child, and all else for another, so that
nobody gets what is kept of somebody else. Where most of the class would be others, and most of the list are, too, it is
another class, and nobody is found by half a name.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from namewright.classbook.going_on import NOTHING_SAID, Saying, is_other_script, is_written_alike, whole_name
from namewright.classbook.same_child import Kin, kindred, named
from namewright.classbook.who import Known, written
from namewright.message import Field, Message, message
from namewright.roster.children import Child

NEW = 0
"""In place of an id: the child on a line is none that we know."""
_FEW, _MOSTLY = 3, 0.75  # lines, and how many of them must be children of the class, for a list to be a part of it
_MOST_PAIRS = 40_000  # of lines and children compared one by one: past that it is no class


@dataclass(frozen=True, slots=True)
class Recognised:
    """A line that is a child we know under another name, or may be.

    ``known`` are the children that it may be, the likeliest first; ``taken`` is the id that it was given, None for a
    new child. ``sure`` says that no other answer is likely, so that nobody need be asked.
    """

    line: int
    name: Field
    known: tuple[Known, ...]
    taken: int | None
    sure: bool


@dataclass
class Enrolment:
    """The id for each line of the roster that is a known child, what was guessed, and what a person may be asked."""

    ids: dict[int, int] = field(default_factory=dict)
    notes: list[Message] = field(default_factory=list)
    recognised: list[Recognised] = field(default_factory=list)
    more: dict[int, Child] = field(default_factory=dict)
    """By line, children of whom the class knows more than the list says, with that."""
    typed: dict[int, str] = field(default_factory=dict)
    """By line, the whole names as the list has them."""


def enrol(children: Sequence[Child], known: Sequence[Known], same: Mapping[int, int],
          facts: Collection[tuple[int, int]] = (), saying: Saying = NOTHING_SAID) -> Enrolment:
    """Match the children of a new roster with those known.

    ``same`` gives ids by line where the caller knows, ``NEW`` for a child whom we do not know. ``facts`` are lines and
    ids that have something in common besides a name, such as a birthday; ``saying`` is what the list leaves out.
    """
    matching = _Matching(children, known, same, facts, saying)
    here, gone = [one for one in known if one.here], [one for one in known if not one.here]
    matching.by_all_names(here)
    matching.by_kin(here, Kin.SAME)
    matching.by_all_names(gone)
    matching.by_kin(gone, Kin.SAME)
    matching.by_half_names(here)
    return matching.told()


def doubles(children: Sequence[Child], leaving: Sequence[Known], known: Sequence[Known],
            same: Mapping[int, int]) -> dict[int, Known]:
    """Return those who leave because their line was said to be a child whom the class has under another name: this one.

    By the number of the double.
    """
    said = {_names(child): same[child.line] for child in children if same.get(child.line, NEW) != NEW}
    by_id = {one.id: one for one in known}
    return {one.id: by_id[other] for one in leaving
            if (other := said.get(_names(one))) and _names(by_id[other]) != _names(one)}


class _Matching:
    """The lines and children that are still to be matched; made for one roster."""

    def __init__(self, children: Sequence[Child], known: Sequence[Known], same: Mapping[int, int],
                 facts: Collection[tuple[int, int]], saying: Saying) -> None:
        self._children, self._known, self._facts, self._saying = children, known, facts, saying
        self._said = {child.line for child in children if child.line in same}
        self._ids = {child.line: same[child.line] for child in children if same.get(child.line, NEW) != NEW}
        self._kindred = {here: kindred(one for one in known if one.here == here) for here in (True, False)}
        self._by_id = {one.id: one for one in known}
        self._unsure: set[int] = set()
        self._is_same_class = True
        self._over: list[Known] = []

    def by_all_names(self, known: Iterable[Known]) -> None:
        """Match those alike in every name, in roster order."""
        free = defaultdict[tuple[str, str, str], list[int]](list)
        for one in self._free(known):
            free[_names(one)].append(one.id)
        for child in self._open():
            if alike := free.get(_names(child)):
                self._ids[child.line] = alike.pop(0)

    def by_kin(self, known: Iterable[Known], least: Kin) -> list[int]:
        """Match those of whom each is the only one for the other; return the lines."""
        pairs = self._pairs(known, least)
        lines, ids = (Counter(pair[side] for pair in pairs) for side in (0, 1))
        only = [(line, id_) for line, id_, _ in pairs if lines[line] == ids[id_] == 1]
        self._ids.update(only)
        return [line for line, _ in only]

    def by_half_names(self, here: Sequence[Known]) -> None:
        """Match by names that say nothing against each other, and by slips, unless it is another class."""
        fitting = self.by_kin(here, Kin.FITS)
        stay = len({one.id for one in here} & set(self._ids.values()))
        is_part = len(self._children) >= _FEW and stay >= _MOSTLY * len(self._children)
        self._is_same_class = is_part or 2 * stay + 1 >= len(here)  # one more, for a class of one child renamed
        if self._is_same_class:
            self._unsure.update(self.by_kin(here, Kin.SLIP))
            return
        for line in fitting:
            del self._ids[line]

    def _pairs(self, known: Iterable[Known], least: Kin) -> list[tuple[int, int, Kin]]:
        lines, free = self._open(), self._free(known)
        if len(lines) * len(free) > _MOST_PAIRS:
            return []
        return [(child.line, one.id, level) for child in lines for level, one in self._kin_of(child, free)
                if level >= least]

    def _open(self) -> list[Child]:
        return [child for child in self._children if child.line not in self._ids and child.line not in self._said]

    def _free(self, known: Iterable[Known]) -> list[Known]:
        taken = set(self._ids.values())
        return [one for one in known if one.id not in taken]

    def told(self) -> Enrolment:
        """Return who is who, with what a person may be asked and what is to be said."""
        self._over = self._free(self._known)
        if len(self._over) * len(self._children) > _MOST_PAIRS:
            self._over = []
        self._as_known = {child.line: self._known_as(child) for child in self._children}
        self._in_place = dict(_in_place(self._children, self._known, self._likeliest())) if self._is_same_class else {}
        recognised = [one for child in self._children if (one := self._recognised(child))]
        notes = [*_guesses(self._children, self._known), *_said(recognised, self._answered()), *self._going_on()]
        more = {child.line: now for child in self._children if (now := self._as_known[child.line]) != child}
        return Enrolment(self._ids, notes, recognised, more,
                         {child.line: whole_name(child) for child in self._children})

    def _likeliest(self) -> dict[int, int]:
        """Return who is on which line, with those, too, of whom names leave one alone open."""
        may = {child.line: self._alike(child) for child in self._open()}
        return {line: found[0].id for line, found in may.items() if len(found) == 1} | self._ids

    def _known_as(self, child: Child) -> Child:
        old = self._by_id.get(self._ids.get(child.line, NEW))
        return self._saying.as_known(child, old) if old else child

    def _going_on(self) -> Iterator[Message]:
        """Say whose name goes on as the class has it; one in another script was told when it was answered."""
        pairs = [(child, self._as_known[child.line]) for child in self._children]
        less = tuple(message("classbook.now", before=_written(child), name=_written(now)) for child, now in pairs
                     if not is_other_script(child.practice) and (
                         child.practice != now.practice or not is_written_alike(whole_name(child), whole_name(now))))
        yield from ((message("classbook.goes_on", names=less),) if less else ())

    def _answered(self) -> Iterator[tuple[Field, Field]]:
        """Yield the names before and now of those whom the caller knew under another name."""
        for child in self._children:
            old = self._by_id.get(self._ids.get(child.line, NEW)) if child.line in self._said else None
            now = self._as_known[child.line]
            if old and _changed(now, old):
                yield old.shown, _written(now)

    def _recognised(self, child: Child) -> Recognised | None:
        """Return whom a line may be, None where it is the child of all its names, or nobody like any."""
        if child.line in self._said:
            return None
        taken = self._by_id.get(self._ids.get(child.line, NEW))
        unsure = child.line in self._unsure
        may = self._alike(child) if taken is None or unsure else self._rivals(child, taken)
        now = self._as_known[child.line]
        name = _written(now)
        if taken is None:
            may = may or self._by_facts(child)
            return Recognised(child.line, name, tuple(may), None, sure=False) if may else None
        if may or unsure or _changed(now, taken):
            return Recognised(child.line, name, (taken, *may), taken.id, sure=not (may or unsure))
        return None

    def _alike(self, child: Child) -> list[Known]:
        """Return those on no line who may be the child, the likeliest first; of who has left only by fitting names."""
        least = Kin.MAYBE if self._is_same_class else Kin.FITS
        fitting = [(level, one) for level, one in self._kin_of(child, self._over)
                   if level >= (least if one.here else Kin.FITS)]
        return [one for _, one in sorted(fitting, key=lambda pair: (not pair[1].here, -pair[0]))]

    def _by_facts(self, child: Child) -> list[Known]:
        """Return those who are gone and whom something else than a name tells to be the child: both names changed."""
        if not self._facts and child.line not in self._in_place:
            return []
        return [one for one in self._over if one.here
                and ((child.line, one.id) in self._facts or self._in_place.get(child.line) == one.id)]

    def _rivals(self, child: Child, taken: Known) -> list[Known]:
        """Return others on no line who a line that was matched may be just as well.

        Children of the same names of whom fewer are left, and one who is here where the line was given to one who left.
        """
        free = [one for one in self._over if one.here]
        if taken.here:
            return [one for one in free if _names(one) == _names(taken) == _names(child)]
        return [one for level, one in self._kin_of(child, free) if level >= Kin.FITS]

    def _kin_of(self, child: Child, known: Sequence[Known]) -> list[tuple[Kin, Known]]:
        """Return those of some children who may be the one on a line, in their order; here and gone apart."""
        kins: dict[int, Kin] = {}
        for here in {one.here for one in known}:
            kins |= self._kindred[here].of(named(child))
        return [(kins[one.id], one) for one in known if one.id in kins] if kins else []


def _in_place(children: Sequence[Child], known: Sequence[Known],
              ids: Mapping[int, int]) -> Iterator[tuple[int, int]]:
    """Yield lines and ids: a new child between the same two as one who is gone, or at the same end of the list."""
    before = [None, *(one.id for one in known if one.here), None]
    now = [None, *(ids.get(child.line, NEW) for child in children), None]
    between = {(one, other): id_ for one, id_, other in zip(before, before[1:], before[2:], strict=False) if id_}
    there = set(ids.values())
    for child, one, other in zip(children, now, now[2:], strict=False):
        gone = between.get((one, other)) if one or other else None
        if gone and gone not in there and child.line not in ids:
            yield child.line, gone


def _written(child: Child) -> Field:
    return written(child.given, child.family, child.practice)


def _names(one: Child | Known) -> tuple[str, str, str]:
    return (one.given.casefold(), one.family.casefold(), one.practice.casefold())


def _changed(child: Child, old: Known) -> bool:
    """Say whether a name is another, and not only longer than it was, or in other letter case."""
    if child.practice.casefold() != old.practice.casefold():
        return True
    now = f"{child.given} {child.family}".casefold().split()
    return not set(f"{old.given} {old.family}".casefold().split()) <= set(now)


def _guesses(children: Sequence[Child], known: Sequence[Known]) -> list[Message]:
    """Say where children alike in every name are fewer than before, so that which of them stayed was guessed."""
    before = Counter(_names(one) for one in known if one.here)
    now = Counter(_names(child) for child in children)
    shown = {_names(one): one.shown for one in known}
    return [message("classbook.guess", before=before[key], name=shown[key], count=count)
            for key, count in now.items() if before[key] > count and before[key] > 1]


def _said(recognised: Sequence[Recognised], answered: Iterable[tuple[Field, Field]]) -> list[Message]:
    """Say who is a child we know, by our reading or the caller's, and who was taken for a new one in doubt."""
    found = [(one.known[0].shown, one.name) for one in recognised if one.taken]
    same = [message("classbook.now", before=before, name=name) for before, name in (*found, *answered)
            if name != before]
    new = [message("classbook.new_beside", before=tuple(each.shown for each in one.known), name=one.name)
           for one in recognised if not one.taken]
    return [*([message("classbook.same_children", names=tuple(same))] if same else ()), *new]
