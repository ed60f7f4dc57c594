"""A list that names somebody else beside each child, of which nothing tells who is the child: asked about at the end.

Whatever rule read it: a mail box, a bank or a log has two names to each child, in a line or in lines that come again
and again, and what was made of them is a guess. This looks at what was typed and at what came of it alone.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from itertools import pairwise

from namewright.message import Message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.care_words import CARE
from namewright.roster.children import Outcome
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.heading_words import COLOURS, HEADING_WORDS, JOBS, LEVELS, PLACES
from namewright.roster.kin import GROWN_UPS
from namewright.roster.known import is_given, lean
from namewright.roster.names_in_text import BRACKETS
from namewright.roster.pasted import CHAT, Line
from namewright.roster.row_drafts import Draft
from namewright.roster.shares import are_most
from namewright.roster.unfolding import Unfolded
from namewright.roster.vocabulary import (
    DATES,
    GROUPS,
    STATES,
    STREETS,
    TITLES,
    Role,
    fold,
)
from namewright.store import keeps_names

_FEWEST = 3  # lines
_OFTEN, _MOSTLY, _ALIKE, _NEARLY_ALL = 0.25, 0.6, 0.8, 0.9
_LONGEST = 300  # characters
_WHOLE = 2  # words
_LONG_NAME = 4  # words
_PARTICLE = 4  # letters
_MOST, _LARGEST = 3, 8  # people and lines in a block
_TOLD = GROWN_UPS | TITLES
_NOBODY = (DATES | COLOURS | HEADING_WORDS | JOBS | LEVELS | PLACES | CARE | DAY_WORDS | STATES | GROUPS
           | STREETS)
_PLAIN = pattern(r"(?:(?:[^\W\d_]+(?: [^\W\d_]+){0,3})?\n)*")  # lines with no more than a name has, as in most lists
_WORD = pattern(r"[^\W_][\w’'-]*")
_RUN = pattern(r"[^\W\d_a-zß-ÿ][\w’'-]*\.?(?: +[^\W\d_a-zß-ÿ][\w’'-]*\.?)*")
_REMARK = pattern(r"\s*[-–—(,]\s*[a-zß-ÿ]")
_LETTERS = pattern(r"[^\W\d_]{3,}")
_QUOTED = pattern(r"[\"“”„«][^\"“”„«»]*[\"“”»]", needs='"“”„«')


class _Made(NamedTuple):
    """The words of the names that were made of a typed line, those to go by last; its last name; how many children."""

    words: tuple[str, ...]
    name: tuple[str, ...]
    children: int


def doubted(drafts: list[Draft], found: Unfolded, typed: Sequence[str]) -> list[Draft]:
    """Return the drafts, with a question for each child of whom nothing tells that it is not the other one named."""
    table = found.table
    settled = table.header is not None or table.delimiter or table.doubt or table.beside is not None
    if settled or {Role.GIVEN, Role.FAMILY} <= set(table.roles) or _PLAIN.fullmatch("\n".join((*typed, ""))):
        return drafts
    made = _made(drafts, found, typed)
    entries = sum(draft.entry is not None for draft in drafts)
    if len(made) < max(_FEWEST, _MOSTLY * entries):
        return drafts
    unsure = {found.lines[draft.row.line].origin for draft in drafts if draft.outcome is Outcome.LEFT_OUT}
    if _repeat(made, typed) or _are_blocks(made, unsure, typed):
        asked = {*made}
    elif _name_others(made, typed) or _are_parted(made, typed):
        asked = {at for at, of in made.items() if not _is_whole(of, typed[at])}
    else:
        return drafts
    return [draft.asked_for_each() if draft.entry and found.lines[draft.row.line].origin in asked else draft
            for draft in drafts]


def _made(drafts: Sequence[Draft], found: Unfolded, typed: Sequence[str]) -> dict[int, _Made]:
    """Return what was made of each line that was typed and read as it stands: else a rule knew who is the child."""
    made: dict[int, _Made] = {}
    for draft in drafts:
        line = found.lines[draft.row.line]
        if draft.entry and line.text in typed[line.origin] and not (
                _is_told((*line.notes, *draft.notes)) or _took_somebody_off(line)):
            given, family, called = ([*_WORD.findall(part)] for part in draft.entry.reading[:3])
            before = made.get(line.origin, _Made((), (), 0))
            middle = [word for note in draft.notes for key, words in note.fields
                      if note.key == "roster.middle" or key == "middle" for word in _WORD.findall(str(words))]
            made[line.origin] = _Made((*before.words, *given, *family, *called), (*given, *middle, *family),
                                      before.children + 1)
    return made


def _is_told(notes: Sequence[Message]) -> bool:
    """Say whether a rule told who else stands on a line: who writes in a chat, somebody's mother."""
    return CHAT in notes or any(not _TOLD.isdisjoint(_words(str(word))) for note in notes
                                for _, word in note.fields)


def _took_somebody_off(line: Line) -> bool:
    """Say whether what a rule took off a line names somebody: it knew who is the child."""
    return any(note.key == "roster.remark" and any(map(str.isupper, str(word))) for note in line.notes
               for _, word in note.fields)


def _is_whole(of: _Made, text: str) -> bool:
    """Say whether a line is one name and nothing else, one to go by neither: nobody stands beside it."""
    return {*_words(strip_numbering(text))} <= {*map(fold, of.name)}


def _common(lines: Collection[int], typed: Sequence[str], made: int) -> frozenset[str]:
    """Return the words that stand on many of these lines, folded: they are of a form or a program."""
    counts = Counter(word for at in lines for word in {*_words(typed[at])})
    return frozenset(word for word, count in counts.items() if count >= max(_FEWEST, _OFTEN * made))


def _name_others(made: Mapping[int, _Made], typed: Sequence[str]) -> bool:
    """Say whether most lines name somebody, most often somebody else, of whom nobody was made."""
    names = {at: frozenset(map(fold, of.words)) for at, of in made.items()}
    used = _common(made, typed, len(made)).union(*names.values())
    others = [" ".join(_persons(typed[at], names[at], used)) for at in made]
    return are_most(map(bool, others), _MOSTLY, _FEWEST) and len({*filter(None, others)}) > _MOSTLY * len(
        [*filter(None, others)])


def _persons(text: str, names: Collection[str], used: Collection[str]) -> Iterator[str]:
    """Yield who is named in a line beside its child, where no word tells who that is."""
    if len(text) > _LONGEST or "→" in text or not _TOLD.isdisjoint(_words(text)):
        return
    bare = strip_numbering(text)
    if _goes_on_with_a_remark(bare, names):
        return
    for match in _RUN.finditer(bare):
        run = _words(match[0])
        rest = [word for word in run if word not in used and not any(map(str.isdigit, word))]  # TAB-01
        touches = not frozenset(names).isdisjoint(run)
        related = len(rest) == 1 < len(run) and run[0] == rest[0]  # Anna Berger beside Leo Berger
        cased = match[0][0].isupper()  # letters that know no capitals tell nothing
        if not rest or not cased or not _NOBODY.isdisjoint(rest) or any(map(is_word_about, rest)) or (
                touches and len(rest) < _WHOLE and not related):
            continue
        known = is_given(rest[0]) and (lean(rest[0]) > 0 or len(rest) >= _WHOLE)
        if known or (len(rest) == _WHOLE and not touches and match[0].istitle() and match[0].replace(
                " ", "").replace("-", "").isalpha()):
            yield " ".join(rest)


def _goes_on_with_a_remark(text: str, names: Collection[str]) -> bool:
    """Say whether a line opens with its child, and goes on with a sign and a word in small letters."""
    match = _RUN.match(text)
    return match is not None and frozenset(names).issuperset(_words(match[0])) and (
        _REMARK.match(text, match.end()) is not None)


def _repeat(made: Mapping[int, _Made], typed: Sequence[str]) -> bool:
    """Say whether most names have the same word within them: ``Mia Vost Trip Leo``, or a small one: ``Mia edited``.

    Only names that stand in one piece count: what stands apart, as behind a comma, was taken for a family's.
    """
    least = max(_FEWEST + 1, _MOSTLY * len(made))
    whole = (of.name for at, of in made.items() if " ".join(of.name) in typed[at])
    words = Counter(word for name in whole for word in {*name[1:-1], *filter(begins_small, name)})
    often = {fold(word) for word, count in words.items() if count >= least} - PARTICLES
    return any(len(word) > _PARTICLE for word in often) or sum(len(word) > _WHOLE for word in often) >= _WHOLE


def _are_parted(made: Mapping[int, _Made], typed: Sequence[str]) -> bool:
    """Say whether most names were put together of words between which something else stands."""
    return are_most((of.children == 1 and _is_parted(of.name, typed[at]) for at, of in made.items()),
                    _MOSTLY, _FEWEST)


def _is_parted(name: Sequence[str], text: str) -> bool:
    bare = _QUOTED.sub(" ", BRACKETS.sub(" ", text))
    places = sorted((bare.find(word), word) for word in {*name} if len(word) > 1 and not begins_small(word))
    if len(name) > _LONG_NAME or not places or places[0][0] < 0:
        return False
    return any(len(each) > _WHOLE and each not in name for (at, word), (to, _) in pairwise(places)
               for each in _WORD.findall(bare[at + len(word) : to]))


def _are_blocks(made: Collection[int], unsure: Collection[int], typed: Sequence[str]) -> bool:
    """Say whether dates, times or sums part the lines into blocks of as many, of which several name people."""
    filled = [at for at, text in enumerate(typed) if text.strip()]
    if len(made) == len(filled) or any("</" in typed[at] for at in filled):
        return False
    common = _common(filled, typed, len(made))
    people = {at for at in filled if (at in made and any(map(str.isupper, typed[at]))) or any(
        _persons(typed[at], (), common)) or (at in unsure and _has_a_capital_within(typed[at], common))}
    rest = [typed[at] for at in filled if at not in people]
    kinds = [at in people for at in filled]
    runs = sum(here and not before for before, here in pairwise((False, *kinds)))
    size = next((size for size in range(1, min(_LARGEST, len(filled) // _FEWEST) + 1) if are_most(
        (one == two for one, two in zip(kinds, kinds[size:], strict=False)), _ALIKE)), 0)
    if not size or len(people) < _WHOLE * runs or not _WHOLE <= sum(kinds[-size:]) <= min(_MOST, size - 1) or (
            len(rest) * size < _NEARLY_ALL * len(filled)):
        return False
    counts = Counter(rest)
    return are_most((not _LETTERS.search(text) or any(map(str.isdigit, text)) or counts[text] >= _FEWEST
                     for text in rest), _MOSTLY)


def _has_a_capital_within(text: str, common: Collection[str]) -> bool:
    return any(word[0].isupper() and fold(word) not in common for word in _WORD.findall(text)[1:])


@keeps_names(1024)
def _words(text: str) -> tuple[str, ...]:
    return tuple(map(fold, _WORD.findall(text)))
