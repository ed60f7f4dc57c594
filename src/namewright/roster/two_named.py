"""A list of which nearly every line names two people, and nothing tells who is the child: one question for all of it.

Whatever rule asks about the lines, it asks about each by itself; but whoever wrote ``Jo Vost: Ana Lind`` twenty times
named the child in the same place each time. The answer is said as that about columns is (``name,other``), and every
such line is read as the name that was asked for; two words may be one child's (``given,family``), where all lines are
so. Lines that name one person or three are left as they are.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.children import Outcome
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.free_text import SEVERAL
from namewright.roster.headers import titles_for
from namewright.roster.kin import GROWN_UPS
from namewright.roster.known import is_known
from namewright.roster.pasted import Line
from namewright.roster.row_drafts import Draft
from namewright.roster.rows import TWO_CHILDREN
from namewright.roster.unfolding import Unfolded
from namewright.roster.vocabulary import AND_WORDS, DATES, TITLES, fold

_FEWEST = 3  # lines
_TWO = 2  # people
_LONGEST = 300  # characters of a line
_OFTEN, _MOSTLY, _NEARLY_ALL = 0.25, 0.6, 0.8
_WORD = pattern(r"(?<!\w)[^\W\d_](?:[^\W\d_]|[’'-](?=[^\W\d_]))*(?!\w)(?:(?<=\b[^\W\d_])\.)?")
_NO_NAMES = GROWN_UPS | TITLES | DATES | DAY_WORDS
_JOINING = PARTICLES - AND_WORDS
_FIRST, _SECOND, _BOTH = "name,other", "other,name", "name,name"
_GIVEN, _FAMILY = "given,family", "family,given"


class Two(NamedTuple):
    """The names of two people on a line, as they stand there."""

    first: str
    second: str


def two_on_each(drafts: Sequence[Draft], found: Unfolded, typed: Sequence[str]) -> dict[int, Two]:
    """Return whom each line (0-based) names that is asked about, where nearly all lines name two; else nothing."""
    asked = [found.lines[draft.row.line].origin for draft in drafts if draft.outcome is Outcome.LEFT_OUT
             and not {SEVERAL, TWO_CHILDREN}.isdisjoint(draft.notes)]
    if len(asked) < _FEWEST:
        return {}
    made = sum(draft.entry is not None for draft in drafts)
    if len(asked) < _MOSTLY * (len(asked) + made):
        return {}
    texts = {at: strip_numbering(typed[at]) for at in asked if len(typed[at]) <= _LONGEST}
    named = {at: [*_names(text, common)] for common in [_common(texts.values())] for at, text in texts.items()}
    two = {at: Two(*names) for at, names in named.items() if len(names) == _TWO}
    return two if len(two) >= max(_FEWEST, _NEARLY_ALL * len(asked)) else {}


def _common(texts: Collection[str]) -> frozenset[str]:
    """Return the words that stand on many lines, folded: those of a form, or nearly all of them where it is a name."""
    counts = Counter(word for text in texts for word in {*map(fold, _WORD.findall(text))})
    return frozenset(word for word, count in counts.items() if count >= max(_FEWEST, len(texts) * (
        _MOSTLY if is_known(word) else _OFTEN)))


def _names(text: str, common: frozenset[str]) -> Iterator[str]:
    """Yield the runs of words with a capital between which nothing but spaces and particles stand."""
    start = end = seen = -1  # where a run begins and ends, and where what may go on with it does
    for match in _WORD.finditer(text):
        folded = fold(match[0])
        is_name = match[0][0].isupper() and folded not in common and folded not in _NO_NAMES
        goes_on = start >= 0 and not text[seen : match.start()].strip()
        if start >= 0 and not (goes_on and (is_name or folded in _JOINING)):
            yield text[start:end]
            start = -1
        if is_name:
            start, end = match.start() if start < 0 else start, match.end()
        seen = match.end()
    if start >= 0:
        yield text[start:end]


def question(two: Mapping[int, Two], typed: Sequence[str]) -> Message:
    """Return the question who is the child, by the first line, and what says each answer."""
    at = min(two)
    key, more = ("two_words", {"one_columns": _GIVEN, "turned_columns": _FAMILY}) if _are_words(two, typed) else (
        "two_named", {})
    return message(f"roster.{key}", count=len(two), line=at + 1, one=two[at].first, other=two[at].second,
                   columns=_FIRST, or_columns=_SECOND, all_columns=_BOTH, **more)


def _are_words(two: Mapping[int, Two], typed: Sequence[str]) -> bool:
    """Say whether each line is two words that may be one child's, and no line stands beside these."""
    return not any(" " in name for names in two.values() for name in names) and len(two) == sum(
        bool(text.strip()) for text in typed)


def answered(typed: Sequence[str], two: Mapping[int, Two], columns: str) -> list[Line] | None:
    """Return the lines as an answer says they are, None for what is none.

    The children stand alone on their lines, with what else stood there as a note; the parts of a name stand below
    titles.
    """
    said = columns.replace(" ", "").lower()
    if said in (_GIVEN, _FAMILY) and _are_words(two, typed):
        rows = (Line("\t".join(two[at]) if at in two else text, at) for at, text in enumerate(typed))
        return [Line("\t".join(titles_for(said)), min(two)), *rows]
    if said not in (_FIRST, _SECOND, _BOTH):
        return None
    kept = [word == "name" for word in said.split(",")]
    return [each for at, text in enumerate(typed) for each in (
        _children(Line(text, at), two[at], kept) if at in two else [Line(text, at)])]


def _children(line: Line, two: Two, kept: Sequence[bool]) -> list[Line]:
    names = [name for name, is_child in zip(two, kept, strict=True) if is_child]
    rest = line.text
    for name in names:
        rest = rest.replace(name, " ", 1)
    said = " ".join(rest.split()).strip(" :–—-([)]=/&,.→>")
    told = (message("roster.beside_child", words=said[:60]),) if any(map(str.isalnum, said)) else ()
    line = line._replace(notes=told)
    return [line.part(name) if len(names) > 1 else line._replace(text=name) for name in names]
