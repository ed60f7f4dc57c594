"""What a line of a list asks of a person, and the ways to answer it with one press.

A note that only tells what was done asks nothing. A question has ways; a way says what the line becomes, written so
that reading the list again gives what the button promised: that is tried when it is pressed, and of several ways to
write it the first that holds is taken. A line that was saved before, or said to be right, asks no more. Pure.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from difflib import SequenceMatcher
from enum import StrEnum
from itertools import takewhile
from types import MappingProxyType

from namewright.classbook.enrol import NEW, Recognised
from namewright.classbook.going_on import is_other_script
from namewright.classbook.parting import COMMAS, Promise, parted, shared_family, ways_to_write
from namewright.classbook.who import Known
from namewright.message import Field, Message, message
from namewright.names.latin_spelling import latin_spelling
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.children import Child, LineReport, Outcome
from namewright.roster.columns import DELIMITERS, join_cells, split_cells
from namewright.roster.cut_short import may_stand_for
from namewright.roster.known import lean
from namewright.roster.rows import TWO_CHILDREN
from namewright.roster.vocabulary import fold

AS_KNOWN = "web.list.spelled"
"""Tells of a line that its child is called otherwise here than it says."""
KEEPS = "keeps"
"""How the key of a way begins that leaves a child’s name as the class has it."""
MEANT = "meant"
"""The way that takes the name on a line as it stands."""
_MANY = frozenset({TWO_CHILDREN.key, "roster.several"})
_NO_NAME_AT_ALL = frozenset({"roster.only_numbers", "roster.only_accents", "roster.no_letter"})
_WITH_MIDDLE = "roster.read_with_middle"
_READ = frozenset({"roster.read", _WITH_MIDDLE, "roster.read_by_comma", "roster.comma_with_middle",
                   "roster.family_stands_first"})
_CELLS = pattern(r"[\t;|]|\s{2,}")
_MOST_PARTS = 2
_HEARD_ALIKE = 0.6  # a family name as it was guessed and as the family spells it: Koval and Kowal, found by trying
NOBODY_KNOWN: Mapping[int, Recognised] = MappingProxyType({})


class Asked(StrEnum):
    """What a line asks; the words for it are ``web.list.asks_…``."""

    TWO = "two"
    SEVERAL = "several"
    FAMILY = "family"
    CHILD = "child"
    LONG = "long"
    LATIN = "latin"
    TWICE = "twice"
    CALLED = "called"
    SAME = "same"


_ANYBODY = Promise("")
_IS_CHILD = message("web.list.way_child")


@dataclass(frozen=True, slots=True)
class Way:
    """One way to answer. ``ways`` are texts to try in the line’s place, a line for each of ``promised`` children.

    Without texts it only says that the line is right as it is. ``takes`` is how many lines from this one on it
    replaces, ``offered`` what stands in a field to be changed first; ``ways`` are then made of what was typed.
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


@dataclass(frozen=True)
class Question:
    """A line that needs a person: what it asks, and the ways to answer; the first is the likeliest."""

    report: LineReport
    asked: Asked
    said: Message
    ways: tuple[Way, ...]

    @property
    def mark(self) -> str:
        """Return what stands for the line in a form."""
        return mark(self.report.text)


def mark(text: str) -> str:
    """Return a key for the words of a line: it tells nothing, and no other words have it."""
    return hashlib.sha256(text.strip().encode(errors="replace")).hexdigest()[:10]


def question(report: LineReport, before: Sequence[LineReport], cannot_draw: Message | None,
             span: int = 1) -> Question | None:
    """Return what a line asks of a person, None where it asks nothing.

    ``before`` are lines that stand before it, from the same line of what was pasted; ``cannot_draw`` is why its name
    makes no page; ``span`` lines are one with it.
    """
    keys = {note.key for note in report.notes}
    if report.outcome is Outcome.LEFT_OUT and not keys & _NO_NAME_AT_ALL:
        return _of_left_out(report, keys)
    if report.child is None or not report.opens_child:
        return None
    if cannot_draw:
        return Question(report, Asked.LATIN, cannot_draw, (_latin(report, report.child), _gone("leave")))
    if "roster.split" in keys and (shared := _shares_family(report, before)):
        return shared
    if again := next((note for note in report.notes if note.key == "roster.repeat"), None):
        take = Way("take", message("web.list.way_take"), ((),), takes=span)
        return Question(report, Asked.TWICE, again, (_fine("both"), take))
    if remark := next((note for note in report.notes if note.key == "roster.remark"), None):
        return _of_remark(report, report.child, str(remark["words"]))
    return None


def _of_left_out(report: LineReport, keys: set[str]) -> Question:
    if keys & _MANY:
        parts = parted(report.text)
        two = len(parts) == 2
        one = _as_one(report.text)
        ways = [*([_split(parts)] if len(parts) > 1 else []), *([one] if two and one else []), _gone("drop")]
        return Question(report, Asked.TWO if two else Asked.SEVERAL, message("web.list.asks_several", count=len(parts)),
                        tuple(ways))
    if keys & {"roster.long_cell", "roster.long_name"}:
        return Question(report, Asked.LONG, report.notes[-1], (_gone("drop"),))
    if cut := next((note for note in report.notes if note.key == "roster.cut_short"), None):
        return Question(report, Asked.CALLED, cut, (*_written_out(report.text, str(cut["typed"])), _gone("drop")))
    yes = after_all(report, message("web.list.way_yes"))
    return Question(report, Asked.CHILD, message("web.list.asks_child"), (_gone("drop"), yes))


def _written_out(text: str, typed: str) -> Iterator[Way]:
    """Yield the names that a short form may stand for."""
    for number, name in enumerate(may_stand_for(typed, text), 1):
        whole = text.replace(typed, name, 1)
        yield Way(f"use{number}", message("web.list.way_use", name=name), ((whole,),), (_ANYBODY,))


def _fine(key: str) -> Way:
    return Way(key, message(f"web.list.way_{key}"))


_gone = _fine


def _no_child(span: int) -> Way:
    """Take out what was read as a child: its line, with those that a quoted cell of it runs over."""
    return Way("none", message("web.list.way_drop"), ((),), takes=span)


# --- several children in one line ----------------------------------------------------------------------


def _split(parts: Sequence[Promise]) -> Way:
    """Write a line for each child."""
    said = message("web.list.way_split", count=len(parts), names=tuple(one.name for one in parts))
    return Way("split", said, tuple(ways_to_write(parts)), tuple(parts))


def _as_one(text: str) -> Way | None:
    """Write two names without the sign between them, as one child’s."""
    whole = strip_numbering(text)
    before, comma, behind = whole.partition(",")
    first = shared_family(whole) or (before.strip() and lean(before.split()[0]) < 0)
    if comma and first and "," not in behind:  # a family name stands first
        whole = f"{behind} {before}"
    words = " ".join(COMMAS.sub(" ", whole).split())
    if " " not in words:
        return None
    given, _, family = words.rpartition(" ")
    return Way("one", message("web.list.way_one", name=words), ((words,), (f"{family}, {given}",), (f"Name: {words}",)),
               (_ANYBODY,))


def _shares_family(report: LineReport, before: Sequence[LineReport]) -> Question | None:
    """Ask of a child with a family name whether those of the same line who have none share it."""
    alone = [one for one in before if one.child and not one.child.family and " " not in one.text.strip()]
    if report.child is None or not report.child.family or not alone or len(alone) != len(before):
        return None
    family = report.child.family
    shared = tuple(Promise(one.child.given, family) for one in alone if one.child)
    everyone = (*shared, Promise(report.child.given, family))
    said = message("web.list.asks_family", family=family, names=tuple(one.name for one in everyone))
    share = Way("share", message("web.list.way_share", names=tuple(one.name for one in everyone)),
                tuple((*new, report.text) for new in ways_to_write(shared)), everyone, takes=-len(alone))
    return Question(report, Asked.FAMILY, said, (share, _fine("apart")))


# --- who may be a child, and who is called what --------------------------------------------------------


def after_all(report: LineReport, said: Message = _IS_CHILD) -> Way:
    """Write a line that was passed over so that it is read as a child."""
    words = strip_numbering(report.text).strip(" \t.,:;!?-–—").split()
    name = " ".join(words)
    turned = [(f"{' '.join(words[1:])}, {words[0]}",)] if len(words) > 1 else []
    return Way("child", said, ((f"Name: {name}",), *turned, (f"“{name}”",)), (_ANYBODY,))


def _of_remark(report: LineReport, child: Child, words: str) -> Question | None:
    """Ask what words beside a name are that could be one: each begins with a capital and has letters alone."""
    said = words.strip(" ()[]“”\"'")
    if not said.replace(" ", "").replace("-", "").isalpha() or not all(word[0].isupper() for word in said.split()):
        return None
    rest = " ".join(re.sub(rf"[(\[“\"]?{re.escape(said)}[)\]”\"]?", " ", report.text).split()).rstrip(" -–—,:")
    called = Way("called", message("web.list.way_called", name=said),
                 ((f"{rest} (goes by {said})",),), (Promise(child.given, child.family, said),))
    asks = message("web.list.asks_called", words=said)
    return Question(report, Asked.CALLED, asks, (called, _fine("remark"), _no_child(1)))


def asks_latin(letters: Iterable[str]) -> Message:
    """Ask for letters that can be drawn in place of these."""
    return message("web.list.asks_latin",
                   letters=tuple(message("quoted", words=letter) for letter in dict.fromkeys(letters)))


def _latin(report: LineReport, child: Child) -> Way:
    """Offer a spelling in letters that can be drawn, to be changed as the family spells it."""
    called = child.practice not in (child.given, child.family, _whole(child))
    offered = latin_spelling("" if called else _whole(child)) or latin_spelling(child.practice)
    return Way("latin", message("web.list.way_latin"), offered=offered)


def _whole(child: Child) -> str:
    return f"{child.given} {child.family}".strip() or child.practice


def spelled(report: LineReport, child: Child, typed: str) -> Way:
    """Write the name of a line as somebody spelled it: whole, or the part that was meant; the rest stays as it is."""
    new, text, given = " ".join(typed.split()), report.text.rstrip(), _given_as_written(report, child)
    heard, family_heard = _alike(new, given), _alike(new, child.family)
    if fold(child.family).isascii() and not fold(given).isascii():
        family_heard = -1.0  # written in our letters already: the given name is what was asked for
    if _is_whole(child, new):
        tries, promise = _whole_name(text, given, child.family, new)
    elif family_heard > heard or (family_heard == heard and child.practice == child.family):
        tries, promise = ((_put(text, child.family, new),),), Promise(child.given, new)
    elif child.family and child.family in child.practice:
        tries, promise = ((_put(text, given, new),),), Promise(new, child.family)
    else:
        tries, promise = ((f"{text} (goes by {new})",), (_put(text, child.practice, new),)), Promise("", practice=new)
    return Way("latin", message("web.list.way_latin"), tries, (promise,))


def _given_as_written(report: LineReport, child: Child) -> str:
    """Return the given name with what was taken for a middle name, where both stand together."""
    middle = next((str(note["middle"]) for note in report.notes if note.key == _WITH_MIDDLE), "")
    both = f"{child.given} {middle}".strip()
    return both if both.casefold() in report.text.casefold() else child.given


def _whole_name(text: str, old_given: str, old_family: str, new: str) -> tuple[tuple[tuple[str, ...], ...], Promise]:
    """Put given and family name in the place of each where it stands, else write them anew."""
    words = new.split()
    before = len(words) - len(old_family.split())
    given, family = " ".join(words[:before]), " ".join(words[before:])
    anew = f"{family}, {given}" if family else given
    tries = (_put(_put(text, old_given, given), old_family, family),), (anew,), (f"Name: {new}",)
    if not family and len(words) > 1:  # 王小明 is both, and Wang Xiaoming is read by the rules for such names
        return tries, _ANYBODY
    return tries, Promise(given, family)


def _is_whole(child: Child, typed: str) -> bool:
    """Say whether a spelling has the family name, too: one like it, or where none can be guessed, as many words."""
    families = child.family.split()
    if len(typed.split()) <= len(families):
        return False
    if _in_latin(child.family).isascii():
        return not families or _alike(" ".join(typed.split()[-len(families):]), child.family) >= _HEARD_ALIKE
    return len(typed.split()) >= len(_whole(child).split())


def _alike(typed: str, part: str) -> float:
    """Return how alike a spelling and a part of a name are, of 1."""
    return SequenceMatcher(None, _in_latin(typed), _in_latin(part), autojunk=False).ratio()


def _in_latin(name: str) -> str:
    return fold(latin_spelling(name) or name)


def _put(text: str, old: str, new: str) -> str:
    """Put words in place of others that stand once in a line, however their letters are cased."""
    return re.sub(rf"(?<!\w){re.escape(old)}(?!\w)", lambda _: new, text, count=1, flags=re.IGNORECASE) if old else text


# --- a child whom the class knows under another name ---------------------------------------------------


def same_child(report: LineReport, one: Recognised) -> Question:
    """Ask which child of the class a line is; what it counts as until that is said stands there."""
    told = "asks_same_taken" if one.taken else "asks_same_new"
    return Question(report, Asked.SAME, message(f"web.list.{told}", before=_told_apart(one.known)[0]), _ways_same(one))


def _ways_same(one: Recognised) -> tuple[Way, ...]:
    if one.taken and not one.sure and len(one.known) == 1:  # a slip, on this list or on that of before
        old = one.known[0]
        return (Way(f"{KEEPS}{old.id}", message("web.list.way_still", name=old.shown), child=old.id),
                Way(f"is{old.id}", message("web.list.way_now", name=one.name), child=old.id),
                Way("new", message("web.list.way_new"), child=NEW))
    names = _told_apart(one.known)
    known = tuple(Way(f"is{each.id}", message("web.list.way_same", name=name), child=each.id)
                  for each, name in zip(one.known, names, strict=True))
    return (*known, Way("new", message("web.list.way_new"), child=NEW))


def _told_apart(known: Sequence[Known]) -> list[Field]:
    """Return the names of children, by their labels where they are written alike."""
    names = [one.shown for one in known]
    return [one.label if names.count(name) > 1 else name for one, name in zip(known, names, strict=True)]


# --- a name that may be read otherwise -----------------------------------------------------------------


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


# --- the whole list ------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Sorted:
    """The lines of a list by what they want: a person, a look, or nothing; in each the lines keep their order.

    ``ways`` are those of lines that ask nothing, ``same`` tells of such a line which child of the class it is.
    """

    needs: tuple[Question, ...] = ()
    tidied: tuple[LineReport, ...] = ()
    rest: tuple[LineReport, ...] = ()
    ways: Mapping[int, tuple[Way, ...]] = field(default_factory=dict)
    same: Mapping[int, Message] = field(default_factory=dict)


def sorted_lines(lines: Sequence[LineReport], noted: Callable[[LineReport], Sequence[Message]],
                 cannot_draw: Callable[[LineReport], Message | None], settled: frozenset[str],
                 known: Mapping[int, Recognised] = NOBODY_KNOWN, there: Collection[int] = ()) -> Sorted:
    """Sort the lines of a list. ``noted`` gives a line’s notes, ``settled`` are marks of lines that ask no more.

    ``known`` says which lines are, or may be, a child that the class has under another name; ``there`` are lines of
    children whom the class has: that two of them have one name was answered when they came.
    """
    needs: list[Question] = []
    tidied: list[LineReport] = []
    rest: list[LineReport] = []
    ways: dict[int, tuple[Way, ...]] = {}
    for at, report in enumerate(lines):
        asked = question(report, _siblings(lines, at), cannot_draw(report), span_of(lines, at))
        one = known.get(report.line)
        answered = asked and asked.asked is Asked.TWICE and report.line in there
        if asked and not answered and mark(report.text) not in settled:
            needs.append(asked)
            continue
        if one and not one.sure:
            needs.append(same_child(report, one))
            continue
        if report.outcome is Outcome.BLANK or (report.outcome is Outcome.HEADER and mark(report.text) in settled):
            continue
        looked = one or noted(report) or report.outcome is not Outcome.CHILD
        (tidied if looked else rest).append(report)
        ways[report.line] = (*_ways_of(report, cannot_draw(report), span_of(lines, at)),
                             *(_ways_same(one)[-1:] if one else ()))
    same = {line: message("web.list.same_as", before=one.known[0].shown) for line, one in known.items() if one.sure}
    return Sorted(tuple(needs), tuple(tidied), tuple(rest), ways, same)


def _siblings(lines: Sequence[LineReport], at: int) -> Sequence[LineReport]:
    """Return the lines before one that came from the same line of what was pasted."""
    start = at
    while start and lines[start - 1].source_line == lines[at].source_line:
        start -= 1
    return lines[start:at]


def span_of(lines: Sequence[LineReport], at: int) -> int:
    """Return over how many lines what begins on one runs, by a cell in quotation marks."""
    behind = takewhile(lambda one: one.outcome is Outcome.CHILD and not one.opens_child, lines[at + 1:])
    return 1 + sum(1 for _ in behind)


def _ways_of(report: LineReport, cannot_draw: Message | None, span: int) -> tuple[Way, ...]:
    """Return what may be done with a line that asks nothing, or no more; ``span`` lines are one with it."""
    keys = {note.key for note in report.notes}
    if report.outcome is Outcome.FURTHER and report.child:
        return (_of_its_own(report.text, report.child),)
    if report.outcome in (Outcome.HEADING, Outcome.LEFT_OUT) and not keys & _NO_NAME_AT_ALL:
        return (after_all(report),)
    if report.child is None or not report.opens_child:
        return ()
    if cannot_draw:
        return (_latin(report, report.child), _no_child(span))
    return (*_as_it_stands(report), *other_parts(report), _no_child(span))


def _as_it_stands(report: LineReport) -> Iterator[Way]:
    """Yield the way to take a name as the list has it, where the class knows it otherwise."""
    typed = next((str(note["typed"]) for note in report.notes if note.key == AS_KNOWN), "")
    if typed and not is_other_script(typed):
        yield Way(MEANT, message("web.list.way_use", name=typed))


def _of_its_own(text: str, child: Child) -> Way:
    """Make a child of a further row: of the name alone, for all else in the row is the child’s above."""
    name = fold(_whole(child))
    rows = ((delimiter, split_cells(text, delimiter)) for delimiter in DELIMITERS)
    tries = tuple((join_cells([cell if cell and fold(cell) in name else "" for cell in cells], delimiter),)
                  for delimiter, cells in rows if cells and len(cells) > 1)
    return Way("child", message("web.list.way_new"), tries, (_ANYBODY,))


def ways_on(lines: Sequence[LineReport], at: int, cannot_draw: Message | None,
            known: Mapping[int, Recognised] = NOBODY_KNOWN) -> tuple[Way, ...]:
    """Return every way that a line has, asked for or not."""
    asked = question(lines[at], _siblings(lines, at), cannot_draw, span_of(lines, at))
    one = known.get(lines[at].line)
    return (*(asked.ways if asked else ()), *_ways_of(lines[at], cannot_draw, span_of(lines, at)),
            *(_ways_same(one) if one else ()))


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
