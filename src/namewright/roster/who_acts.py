"""Logs of who did what to whom: ``Ana Berg added Leo Vost``, ``Mia Zell wurde von Ana Berg hinzugefügt · 9:40``.

Who comes again and again did it, and who is named once is the child. That the doing is a list-keeper's is told by its
word; a child that was taken off is told to have left. By other words nothing tells that a child comes again, as who
pushes others may: such a list asks once which of the two are the children.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.about_words import DONE_TO, TAKEN_OFF
from namewright.roster.beside import strip_numbering
from namewright.roster.entry_fields import bare, cells
from namewright.roster.free_text import SEVERAL
from namewright.roster.known import is_given
from namewright.roster.pasted import PAIRED, Line
from namewright.roster.phrases import Phrase, has_further_capitals, phrase
from namewright.roster.prose import Aside
from namewright.roster.rows import ONE_EACH
from namewright.roster.shares import share
from namewright.roster.vocabulary import DATES, fold

_SMALL = pattern(r"\S\s+[a-zß-ÿ]")
_BEFORE_A_NAME = pattern(r"\S\s+[a-zß-ÿ].*\s[^\W\d_a-zß-ÿ]")
_OWN = message("roster.who_did")
_SIGN = pattern(r"[:,;/–—→=&+]|\s[(\[]")
_FEWEST, _LONGEST, _MOST_WORDS, _MOST_ABOVE = 3, 300, 5, 3
_SOME, _FEW, _MOSTLY, _NEARLY_ALL = 0.3, 0.4, 0.6, 0.8


class _Doing(NamedTuple):
    """A line of a log: what it says, and which of the names in it is the child's; -1 where nothing tells."""

    said: Phrase
    child: int


def from_doings(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the children of a log of what somebody did to them, and its other lines; or the lines as they are."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    small = [at for at in filled if len(lines[at].text) <= _LONGEST and _SMALL.search(lines[at].text)]
    acting = sum(_BEFORE_A_NAME.search(lines[at].text) is not None for at in small)  # most lists have none
    if acting < max(_FEWEST, _MOSTLY * len(filled)):
        return lines, []
    said = {at: phrase(text) for at in small if (text := _doing(lines[at].text))}
    pairs = {at: each for at, each in said.items() if 1 < len(each.runs) <= _FEWEST and _is_said_in_words(each)}
    if len(pairs) < max(_FEWEST, _MOSTLY * len(filled)) or min(pairs) > filled[min(_MOST_ABOVE, len(filled) - 1)]:
        return lines, []
    doings = _doings(pairs)
    asked = share(map(_is_a_keepers, pairs.values())) < _SOME
    if doings is None or (asked and not _may_act(_actors(doings))):
        return lines, []
    return _made(lines, said, doings, min(pairs), asked=asked)


def _may_act(actors: set[str]) -> bool:
    """Say whether those who come again may be people: one unknown word may be of each line: ``I``, ``Parc``."""
    people = {name for name in actors if name.strip(".") not in DATES}
    return len(people) > 1 or any(" " in name or is_given(name) for name in people)


def _actors(doings: dict[int, _Doing]) -> set[str]:
    return {fold(run.name) for each in doings.values() for to, run in enumerate(each.said.runs)
            if to != each.child and each.child >= 0}


def _doing(text: str) -> str:
    """Return what a line tells was done, without the day and time beside it; empty where it has further fields."""
    parts = [part for cell in cells(strip_numbering(text)) if any(map(is_letter, part := bare(cell)[0]))]
    return parts[0] if len(parts) == 1 else ""


def _is_said_in_words(said: Phrase) -> bool:
    """Say whether words alone stand between the names, some of them small: behind a sign stands what a label tells."""
    between = said.text[said.runs[0].end : said.runs[-1].start]
    return any(map(is_letter, said.rest)) and ". " not in between and not _SIGN.search(between)


def _doings(pairs: dict[int, Phrase]) -> dict[int, _Doing] | None:
    """Return who is the child of each line: in nearly all, somebody who comes again did it to somebody who does not."""
    counts = Counter(fold(run.name) for each in pairs.values() for run in each.runs)
    places: dict[str, Counter[int]] = {}
    seen: dict[int, int] = {}
    for at, each in pairs.items():
        often = [counts[fold(run.name)] for run in each.runs]
        fewest = min(often)
        if often.count(fewest) == 1 and sorted(often)[1] > max(1, fewest):
            seen[at] = often.index(fewest)
            places.setdefault(each.frame, Counter())[seen[at]] += 1
    actors = {fold(run.name) for at, child in seen.items() for to, run in enumerate(pairs[at].runs) if to != child}
    children = [fold(pairs[at].runs[child].name) for at, child in seen.items()]
    if len(seen) < max(_FEWEST, _MOSTLY * len(pairs)) or len(actors) > max(1, _FEW * len(pairs)):
        return None
    if not actors.isdisjoint(children) or len({*children}) < _NEARLY_ALL * len(children):
        return None
    if share(len(name.split()) > _MOST_WORDS for name in children) > 0 or any(
            place.most_common(1)[0][1] < _NEARLY_ALL * place.total() for place in places.values()):
        return None
    return {at: _Doing(each, seen.get(at, places[each.frame].most_common(1)[0][0] if each.frame in places else -1))
            for at, each in pairs.items()}


def _is_a_keepers(said: Phrase) -> bool:
    return _has(said, DONE_TO) or _has(said, TAKEN_OFF)


def _has(said: Phrase, stems: Sequence[str]) -> bool:
    return any(word.startswith(tuple(stems)) for word in said.rest.replace("(", " ").split())


def _made(lines: Sequence[Line], said: dict[int, Phrase], doings: dict[int, _Doing], first: int, *, asked: bool
          ) -> tuple[list[Line], list[Aside]]:
    found, told = list[Line](), list[Aside]()
    actors = _actors(doings)
    left = _left(doings)
    for at, line in enumerate(lines):
        doing = doings.get(at) or _lone(said.get(at), actors)
        if not any(map(is_letter, line.text)):  # a time below what was done
            told += [Aside(line, (_OWN,))] if line.text.strip() else []
            found += [] if line.text.strip() else [line]
        elif doing is None and at < first:
            found.append(line.heading(" · ".join(filter(None, cells(line.text)))))
        elif doing is None or doing.child < 0:
            own = at in said and {fold(run.name) for run in said[at].runs} <= actors and (
                not has_further_capitals(said[at]))
            told.append(Aside(line, (_OWN,) if own else (SEVERAL, ONE_EACH), asked=not own))
        elif (name := doing.said.runs[doing.child].name) and fold(name) in left:
            words = " ".join(word for word in doing.said.text.split() if word not in name.split())
            told.append(Aside(line, (message("roster.has_left", words=words[:60]),)))
        elif asked:
            others = [run.name for to, run in enumerate(doing.said.runs) if to != doing.child]
            found.append(line._replace(text="\t".join((*others[:1], name)), notes=(*line.notes, PAIRED)))
        else:
            run = doing.said.runs[doing.child]
            rest = f"{doing.said.text[: run.start]} {doing.said.text[run.end :]}"
            found.append(line.without(" ".join(rest.split()), name))
    return found, told


def _left(doings: dict[int, _Doing]) -> set[str]:
    """Return who was taken off the list and not put on it again below."""
    left = set[str]()
    for _, each in sorted(doings.items()):
        if each.child >= 0:
            name = fold(each.said.runs[each.child].name)
            if _has(each.said, TAKEN_OFF):
                left.add(name)
            else:
                left.discard(name)
    return left


def _lone(said: Phrase | None, actors: set[str]) -> _Doing | None:
    """Return a line that names one person alone, a known child: ``Mia Vost joined``."""
    if said is None or len(said.runs) != 1 or fold(said.runs[0].name) in actors:
        return None
    return _Doing(said, 0) if is_given(said.runs[0].name.split()[0]) else None
