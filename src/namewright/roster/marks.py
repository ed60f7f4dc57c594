"""Days, marks and letters for girl and boy behind the names of a list without columns: ``Mira Vost P A P P``.

Most lines must end in them, and what is left must be a name: two words, or one where a comma, or three marks, stand
behind it. A name that ends in such a word (``Kim Do``) keeps it where other lines do not end so.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import ANY_DAYS, DAY_LETTER, LATE, MONTHS, STATES, fold
from namewright.store import keeps_names

_BETWEEN = pattern(r"[-–/+&,.;]+")
_WEEK = pattern(rf"{DAY_LETTER}(?:[-–/]?{DAY_LETTER}){{1,4}}")  # MWF, TTh, M-F
_ONE_DAY = pattern(DAY_LETTER)
_SHORTEST = frozenset(("tu", "th"))
_SEXED = pattern(r"(?P<name>\S.*[^\W\d_])[\s,]+(?P<letter>[^\W\d_])(?P<date>[\s,]+\d{1,4}[./-]\d{1,2}[./-]\d{1,4})?")
_SEXES = ("fm", "fg", "wm", "fh", "bg", "jm", "vm", "mh")
"""Letters for girl and boy: female and male, fille and garçon, weiblich and männlich, femme and homme, and so on."""
_PRONOUN = ("(?:she|he|they|hers?|him|them|his|theirs|ella|él|elle|il|iel|lui|lei|loro|ela|ele|elu|dela|dele|sie|er|"
            "ihr|ihm)")
_CALLED_BY = pattern(rf"(?P<name>\S.*?[^\W\d_]\.?[\s,:;–—-]+)[(\[]?(?P<words>{_PRONOUN}(?:\s?/\s?{_PRONOUN})*)[)\]]?")
_IN_A_MONTH = pattern(r"\s*(?P<words>(?P<month>[^\W\d_]{3,10})\.?)(?:\s+[-–—]|:)\s+(?P<name>[^\W\d_].*)")
_STARRED = pattern(r"(?P<name>.*[^\W\d_]\.?)\s+\*+(?P<said>[^\s*][^*()]{0,60})\*+", needs="*")
_MOSTLY, _NEARLY_ALL = 0.6, 0.8
_FEW, _MANY = 2, 3
_LONGEST = 200


class _Sexed(NamedTuple):
    """A whole name, the letter for girl or boy behind it, if a date follows, and all that is taken off."""

    name: str
    letter: str
    dated: bool
    taken: str


def without_marks(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the days or marks that most of them end in; each tells what was taken from it."""
    found = [_parted(line.text) if len(line.text) <= _LONGEST else None for line in lines]
    filled = [parted for line, parted in zip(lines, found, strict=True) if any(map(is_letter, line.text))]
    if not are_most((parted is not None for parted in filled), _MOSTLY, _FEW):
        return list(lines)
    return [line.without(parted[1], parted[0]) if parted else line for line, parted in zip(lines, found, strict=True)]


def with_brackets(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with what stands between stars behind a name in brackets, as other remarks: ``Mira *new*``."""
    found = (_STARRED.fullmatch(line.text.strip()) if len(line.text) <= _LONGEST else None for line in lines)
    return [line._replace(text=f"{match['name']} ({match['said']})") if match and not opens_with_given(match["said"])
            else line for line, match in zip(lines, found, strict=True)]


def without_pronouns(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without what a child is called by in its place: ``Mira Vost she/her``, ``Ana, ela/dela``.

    Words in small letters behind a name with a capital are no name's. One word alone may be typed by chance.
    """
    found = {at: match for at, line in enumerate(lines) if len(line.text) <= _LONGEST
             and (match := _CALLED_BY.fullmatch(line.text.strip())) and any(map(str.isupper, match["name"]))}
    pairs = sum("/" in match["words"] for match in found.values())
    if not pairs and len(found) < _FEW:
        return list(lines)
    return [line.without(found[at]["words"], found[at]["name"].rstrip(" ,:;–—-"))
            if at in found else line for at, line in enumerate(lines)]


def without_months(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the month of a birthday before a dash, where all lines have one: ``avril - Mia``.

    A month that heads several children comes but once, and has commas behind it.
    """
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    found = {at: match for at in filled if len(lines[at].text) <= _LONGEST
             and (match := _IN_A_MONTH.fullmatch(lines[at].text)) and fold(match["month"]) in MONTHS}
    above = [at for at in filled if at not in found]
    months = {fold(match["month"]) for match in found.values()}
    if len(found) < _MANY or len(above) > 1 or (above and above[0] != filled[0]):
        return list(lines)
    if len(months) == len(found) and any("," in match["name"] for match in found.values()):
        return list(lines)
    return [line.without(found[at]["words"], found[at]["name"]) if at in found else line
            for at, line in enumerate(lines)]


def without_sexes(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the letter for a girl or a boy that nearly all whole names end in, and a date behind.

    Both letters stand in the list, or a date behind each: else they may be the first of another name.
    """
    ends = {at: end for at, line in enumerate(lines) if (end := _sexed(line.text))}
    pair = max(_SEXES, key=lambda pair: sum(end.letter.lower() in pair for end in ends.values())) if ends else ""
    found = {at: end for at, end in ends.items() if end.letter.lower() in pair}
    told = len({end.letter for end in found.values()}) > 1 or all(end.dated for end in found.values())
    if len(found) < _MANY or not told:
        return list(lines)
    if not are_most((at in found for at, line in enumerate(lines) if any(map(is_letter, line.text))), _NEARLY_ALL):
        return list(lines)
    return [line.without(found[at].taken, found[at].name) if at in found else line for at, line in enumerate(lines)]


@keeps_names(1024)
def _sexed(line: str) -> _Sexed | None:
    """Return the whole name of a line, the letter behind it and what is taken off; None where it does not end so."""
    match = _SEXED.fullmatch(line.strip()) if len(line) <= _LONGEST else None
    if match is None or len(strip_numbering(match["name"]).split()) < _FEW:
        return None
    return _Sexed(match["name"], match["letter"], bool(match["date"]), match[0][match.start("letter") :])


@keeps_names(1024)
def _parted(line: str) -> tuple[str, str] | None:
    """Return the name of a line and the marks behind it; None where there are too few to be sure of."""
    words = strip_numbering(line).split()
    at = len(words)
    while at and _is_mark(words[at - 1]):
        at -= 1
    marks = words[at:]
    if not at or not marks or not any(map(is_letter, "".join(words[:at]))):
        return None
    apart = words[at - 1].endswith(",")
    several = sum(len(list(filter(None, _BETWEEN.split(mark)))) for mark in marks) + any(map(_WEEK.fullmatch, marks))
    if several < _FEW or (not apart and at < _FEW and several < _MANY):
        return None
    if all(len(mark) == 1 for mark in marks) and len(marks) < _MANY:  # two initials
        return None
    return " ".join(words[:at]).rstrip(" ,:–—-"), " ".join(marks)


def _is_mark(word: str) -> bool:
    """Say whether a word is a sign or one letter, a day or several, or tells that a child is there."""
    bare = word.strip(",.;")
    if len(bare) <= 1:
        return not word.endswith(".") or not bare.isalpha()  # an initial
    if _WEEK.fullmatch(bare) or fold(bare) in STATES | LATE:
        return True
    days = [part for part in _BETWEEN.split(bare) if part]
    return bool(days) and all(map(is_a_day, days))


def opens_with_days(text: str) -> bool:
    """Say whether a text begins with days that a child comes on: ``M-F``, ``Tu W Th starts Nov 3``."""
    days = [word.strip(",.;") for word in text.split()[:2]]
    return any(map(_WEEK.fullmatch, days[:1])) or (
        len(days) > 1 and is_a_day(days[0]) and (is_a_day(days[1]) or _ONE_DAY.fullmatch(days[1]) is not None))


def is_a_day(word: str) -> bool:
    """Say whether a word is a day of the week, whole or cut short."""
    folded = fold(word)
    return folded in ANY_DAYS or folded in _SHORTEST
