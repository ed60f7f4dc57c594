"""What a class's file keeps of a list: the children's names and settings, and nothing else that stood beside them.

A list as it is pasted may hold birthdays, addresses, guardians, allergies, and lines that are no child of the class.
None of it is needed to make a page, so none of it is kept, unless an adult asks for the whole list. What is kept is a
list too: a name a line where that says all, else columns with titles. It is read again before it is kept, and must
give the same children whatever part of the name is practised; where it would not, the lines of the children stay as
they were typed. Pure.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from namewright.roster.children import Child, Outcome, Roster, RosterError
from namewright.roster.parsing import LIST, read_roster
from namewright.roster.written import WORDS, as_table, written
from namewright.settings import Hand, NamePart, Support

_PARTS = (NamePart.GIVEN, NamePart.FAMILY)  # what reads alike for each of them does so for both together


def list_words(say: Callable[[str], str]) -> dict[str, str]:
    """Return the titles and the choices in the words of a language: lists are read by each of them."""
    choices = {choice.value: say(f"word.{choice.value}") for choice in (*Hand, *Support)}
    return {key: say(f"classbook.title.{key}") for key in WORDS} | choices


def needed(text: str, roster: Roster, part: NamePart, names_in: str = "",
           words: Mapping[str, str] = WORDS,
           as_known: Callable[[Child], Child] = lambda child: child) -> tuple[str, tuple[int, ...]]:
    """Return what is kept of a list that was read as ``roster`` for a part, and where its children stand in that.

    ``names_in`` is the language of the names that it was read in; what is kept has their letter case already.
    ``words`` are titles of the columns, by the keys of ``WORDS``, and choices in them in a language that lists are in.
    ``as_known`` gives a child of the list with what the class knows besides; those of ``roster`` are given so.
    """
    wanted = {each: tuple(map(as_known, _read(text, each, names_in))) for each in _PARTS} | {part: roster.children}
    for tried in _tries(roster, wanted[NamePart.GIVEN], wanted[NamePart.FAMILY], words):
        found = {each: _read(tried, each, names_in) for each in wanted}
        if all(_alike(found[each], wanted[each]) for each in wanted):
            return tried, tuple(one.line for one in found[part])
    return text, tuple(one.line for one in roster.children)


def _read(text: str, part: NamePart, names_in: str) -> tuple[Child, ...]:
    try:
        return read_roster(text, LIST, part, names_in=names_in).children
    except RosterError:
        return ()


def _alike(one: Sequence[Child], other: Sequence[Child]) -> bool:
    """Say whether two readings give the same children, on whatever lines."""
    return ([child._replace(line=0, label="") for child in one]
            == [child._replace(line=0, label="") for child in other])


def _tries(roster: Roster, by_given: Sequence[Child], by_family: Sequence[Child],
           words: Mapping[str, str]) -> Iterator[str]:
    """Yield ways to write the list, the one that says least first."""
    if len(by_given) == len(by_family):  # a sign alone is a name of one part only
        kept = [written(*pair) for pair in zip(by_given, by_family, strict=True)]
        yield _text(" ".join(name for name in (one.child.given, one.child.family) if name) for one in kept)
        yield as_table(kept, words)
        yield as_table(kept, WORDS)  # which are known in every list
    yield _text(report.text for report in roster.lines if report.child or report.outcome is Outcome.HEADER)


def _text(lines: Iterator[str]) -> str:
    return "".join(f"{line}\n" for line in lines)
