"""Mails and payments about children: who writes or pays stands alone in a field, the child within the words of another.

``7:13 · Ana Vost · Leo Vost fehlt heute``, ``12.05. · Ana Vost · Ausflug Leo · +12,50 €``, in a line or some lines one
below another. That the words are about a child is told by what they say, by titles, or by sums for things of several
kinds. Where nothing tells it, both names are put side by side, which is asked about once. Who stands behind ``with`` or
a word for a grown-up is no child, and such a list is left as it is.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.roster.about_words import ABOUT, ABOUT_ENDINGS, BY, SENDERS, SUBJECTS
from namewright.roster.capitals import is_titled
from namewright.roster.care_words import CARE
from namewright.roster.chat_answers import asks_for_names
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.entry_fields import Entry, Field, cells, entries
from namewright.roster.event_words import EVENTS
from namewright.roster.free_text import SEVERAL
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import header_role
from namewright.roster.kin import GROWN_UPS
from namewright.roster.known import is_given
from namewright.roster.pasted import CHAT, PAIRED, Line
from namewright.roster.phrases import Phrase, are_joined, common_words, of_runs, phrase
from namewright.roster.prose import Aside
from namewright.roster.rows import ONE_EACH
from namewright.roster.shares import share
from namewright.roster.vocabulary import AND_WORDS, ATTENDANCE, DATES, LATE, NAME_ROLES, TITLES, fold
from namewright.roster.who_acts import from_doings

_BESIDE = message("roster.who_did")
_SAYS = ABOUT | CARE | DAY_WORDS | ATTENDANCE | LATE
_OF = frozenset(("von", "da", "dal", "van"))
_FAMILY = frozenset(("fam", "familie", "family", "familia", "famille", "famiglia", "&", "+"))
_BESIDE_A_NAME = GROWN_UPS | TITLES | AND_WORDS | _FAMILY
_FEWEST, _MOST_WORDS = 3, 5
_SOME, _HALF, _MOSTLY, _OFTEN = 0.3, 0.5, 0.6, 0.7


class _Told(NamedTuple):
    """An entry in which somebody stands alone and somebody within a phrase."""

    entry: Entry
    alone: Field
    about: Field
    said: Phrase


def from_doings_and_mails(lines: list[Line], typed: Sequence[str]) -> tuple[list[Line], list[Aside]]:
    """Return the children of a log, of mails or of payments, and their other lines; or the lines as they are.

    ``typed`` are the lines as they were pasted: a few of them may have been taken for those of a chat, and are none.
    """
    chat = sum(CHAT in line.notes for line in lines)
    if chat > _MOSTLY * len(lines):
        return lines, []
    raw = [Line(text, at) for at, text in enumerate(typed)] if chat else lines
    for take in (from_doings, without_senders):
        found, told = take(raw)
        if (told or found != raw) and not any(asks_for_names(line.text) for line in raw):  # a chat that is answered
            return found, told
    return lines, []


def without_senders(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the children whom mails or payments are about, and the lines of these that name none."""
    found = entries(lines)
    sides = _sides(found) if len(found) >= _FEWEST else None
    if sides is None:
        return lines, []
    told = [each for entry in found if (each := _told(entry, *sides))]
    titles = _titles(lines, found[0], told[0])
    if _tells_of_others(told, titles):
        return lines, []
    frames = Counter(each.said.frame for each in told)
    persons = share(_is_a_person(each) for each in told)
    if not _is_about_children(told, titles, frames, persons) :
        several = sum(count for count in frames.values() if count > 1) >= _HALF * len(told) and len(frames) > 1
        if persons < _MOSTLY and not several:
            return lines, []
        return _put_back(lines, found, {each.entry.lines: [_side_by_side(lines, each)] for each in told
                                        if len(each.said.runs) == 1})
    sure = [each for each in told if _is_sure(each, frames)]
    return _put_back(lines, found, {each.entry.lines: list(_children(lines, each)) for each in sure})


def _sides(found: Sequence[Entry]) -> tuple[int, int, frozenset[str]] | None:
    """Return which field of nearly all entries is a name alone and which a phrase, with the words common to these."""
    size, _ = Counter(len(entry.fields) for entry in found).most_common(1)[0]
    whole = [entry.fields for entry in found if len(entry.fields) == size]
    if size < 2 or len(whole) < max(_FEWEST, _MOSTLY * len(found)):
        return None
    columns = [[fields[at].text for fields in whole] for at in range(size)]
    several = [at for at in range(size) if len({*columns[at]}) > _SOME * len(whole)]
    words = {at: {fold(word) for text in columns[at] for word in text.split()} for at in several}
    alone, about = list[int](), list[tuple[int, frozenset[str]]]()
    for at in several:
        others = frozenset().union(*(words[other] for other in several if other != at))
        common = common_words(columns[at], others)
        said = [phrase(text, common) for text in columns[at]]
        if share(any(map(is_letter, each.rest)) and bool(each.runs) for each in said) >= _MOSTLY:
            about.append((at, common))
        elif share(map(_is_alone, columns[at])) >= _OFTEN:
            alone.append(at)
    return (alone[0], *about[0]) if len(alone) == 1 and len(about) == 1 else None


def _is_alone(text: str) -> bool:
    """Say whether a text is a name and nothing else, or two joined by and, in capitals."""
    words = [word.strip(".,()") for word in text.split()]
    return 0 < len(words) <= _MOST_WORDS + 1 and is_titled(" ".join(
        word for word in words if word and fold(word) not in _BESIDE_A_NAME)) and not any(map(str.isdigit, text)) and (
        ":" not in text) and not all(fold(word) in DATES for word in words)


def _is_one(said: Phrase) -> bool:
    """Say whether a phrase names one child, or several joined."""
    return bool(said.runs) and are_joined(said) and all(len(run.name.split()) <= _MOST_WORDS for run in said.runs)


def _told(entry: Entry, alone: int, about: int, common: frozenset[str]) -> _Told | None:
    if len(entry.fields) <= max(alone, about):
        return None
    said = phrase(entry.fields[about].text, common)
    if not _is_one(said):  # Leo braucht Schuhe
        family = frozenset(_words(entry.fields[alone].text))
        runs = tuple(run for run in said.runs
                     if is_given(run.name.split()[0]) or not family.isdisjoint(_words(run.name)))
        said = of_runs(said.text, runs)
    return _Told(entry, entry.fields[alone], entry.fields[about], said) if _is_one(said) else None


def _titles(lines: Sequence[Line], first: Entry, told: _Told) -> tuple[str, str]:
    """Return what stands over or before the name alone, and over or before the phrase; folded, empty where nothing."""
    above = next((cells(lines[at].text) for at in range(first.lines[0] - 1, -1, -1) if lines[at].text.strip()), [])
    same = len(first.lines) == 1 and len(above) == len(cells(lines[first.lines[0]].text)) > 1
    return tuple(each.label or (fold(above[each.cell]) if same else "")  # type: ignore[return-value]
                 for each in (told.alone, told.about))


def _tells_of_others(told: Sequence[_Told], titles: tuple[str, str]) -> bool:
    """Say whether the names within the phrases are somebody else's, as titles or words before them say."""
    if titles[1] not in SUBJECTS and (titles[0] in CHILD_WORDS or header_role(titles[1]) in NAME_ROLES):
        return True
    if len({fold(each.said.runs[0].name) for each in told}) < _HALF * len(told):
        return True
    return share(_names_another(each.said) for each in told) >= _SOME


def _names_another(said: Phrase) -> bool:
    before = said.before
    if before and (fold(before[-1]) in BY or not TITLES.isdisjoint(map(fold, before))):
        return True
    if len(before) > 1 and fold(before[-1]) in _OF and begins_small(before[-2]):  # abgeholt von
        return True
    return not GROWN_UPS.isdisjoint(_words(said.rest))


def _is_about_children(told: Sequence[_Told], titles: tuple[str, str], frames: Counter[str], persons: float) -> bool:
    """Say whether what is said beside the names, or how, tells that they are children's."""
    if titles[1] in SUBJECTS or titles[0] in SENDERS:
        return True
    if share(_says_something(each.said) for each in told) >= _SOME:
        return True
    if share(not GROWN_UPS.isdisjoint(_words(each.alone.text)) for each in told) >= _HALF:
        return True
    paid = share(each.entry.paid for each in told) >= _MOSTLY
    return paid and len(frames) > 1 and persons >= _HALF


def _says_something(said: Phrase) -> bool:
    words = _words(said.rest)
    return any(word in _SAYS or word.endswith(ABOUT_ENDINGS) or word.startswith(EVENTS) for word in words)


def _words(text: str) -> list[str]:
    return [word for each in text.split() if (word := fold(each.strip(".,;:!?()-–—\"'")))]


def _is_a_person(each: _Told) -> bool:
    """Say whether a name within a phrase opens as a known one, or shares a word with the one alone."""
    names = {fold(word) for run in each.said.runs for word in run.name.split() if len(word) > 1}
    return is_given(each.said.runs[0].name.split()[0]) or not names.isdisjoint(_words(each.alone.text))


def _is_sure(each: _Told, frames: Counter[str]) -> bool:
    """Say whether a phrase surely names a child: others are put alike, or it is known or named like its family."""
    if not any(map(is_letter, each.said.rest)):  # a word that nobody knows may stand before a name: Ballett Leo
        return is_given(each.said.runs[0].name.split()[0])
    return (frames[each.said.frame] > 1 or _is_a_person(each)) and not _names_another(each.said)


def _children(lines: Sequence[Line], each: _Told) -> Iterator[Line]:
    line = lines[each.about.at]
    left = " ".join(each.said.left.split()).strip(" :–—-,")
    said = f"{each.alone.text} · {left}".strip(" ·")
    runs = [run.name for run in each.said.runs]
    if len(runs) == 2 and _is_turned(each):
        runs = [" ".join(reversed(runs))]
    for name in runs:
        yield (line.part(name) if len(runs) > 1 else line).without(said, name)


def _is_turned(each: _Told) -> bool:
    """Say whether a comma parts a family and a given name: ``Absence: Vost, Leo``, from Ana Vost."""
    one, two = (run.name for run in each.said.runs)
    between = each.said.text[each.said.runs[0].end : each.said.runs[1].start]
    family = not {*_words(one)}.isdisjoint(_words(each.alone.text)) or (is_given(two.split()[0]) and not is_given(one))
    return between.strip() == "," and family


def _side_by_side(lines: Sequence[Line], each: _Told) -> Line:
    line = lines[each.about.at]
    return line._replace(text=f"{each.alone.text}\t{each.said.runs[0].name}", notes=(*line.notes, PAIRED))


def _put_back(lines: Sequence[Line], found: Sequence[Entry], made: dict[tuple[int, ...], list[Line]]
              ) -> tuple[list[Line], list[Aside]]:
    """Return the lines with what was made of the entries; of an entry without a child its names are asked about."""
    first, children, asides = found[0].lines[0], list[Line](), list[Aside]()
    of = {at: entry for entry in found for at in entry.lines}
    for at, line in enumerate(lines):
        entry = of.get(at)
        if entry is None:
            heading = line.heading(" · ".join(filter(None, cells(line.text))))
            children.append(heading if at < first and any(map(is_letter, line.text)) else line)
        elif entry.lines in made:
            own = [child for child in made[entry.lines] if child.origin == line.origin]
            children += own
            asides += [] if own else [Aside(line, (_BESIDE,))]
        elif any(map(is_letter, line.text)):
            asides.append(Aside(line, (SEVERAL, ONE_EACH), asked=True))
        else:
            asides.append(Aside(line, (_BESIDE,)))
    return children, asides
