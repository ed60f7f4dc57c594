"""Sentences among the lines of a list, as a note for a substitute, a letter or an e-mail has them: no child is one.

A line is a sentence by its words in small letters or by its end, not by any list of verbs; and it tells of a child if
the name that it opens with has a line of its own. One whose name stands nowhere else is left to those who read names
with remarks beside them. Told in the same way are labels before such children (``Helpers: Mira and Tilo``), children
listed again under another label, and a day's times. All of these are taken out before anything else is looked at, so
that none of them sways what the lines have in common.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import takewhile

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import says_what_called, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import CHILDREN, OPENERS, OUR, PLEASE
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.labelled import Labelled, labelled
from namewright.roster.names_in_text import (
    BRACKETS,
    EDGES,
    OWNED,
    Children,
    Name,
    are_joined,
    bare_word,
    has_capital,
    holds,
    names_in,
    openers,
)
from namewright.roster.pasted import COLUMN_SIGNS, Line, cells_run_on
from namewright.roster.sentences import told_in_a_sentence
from namewright.roster.shares import given_share
from namewright.roster.unlike import is_closing
from namewright.roster.vocabulary import AND, ANY_DAYS, OTHER_PEOPLE, fold
from namewright.roster.within import behind_a_word, leads_to_names
from namewright.store import keeps_names

_TIME = pattern(r"\s*\d{1,2}[:.h]\d\d(?:\s?[-–]\s?\d{1,2}[:.h]\d\d)?(?:\s?(?:Uhr|h|[AaPp]\.?[Mm]\.?))?[\s:–-]+(?=\S)")
_END = pattern(r"(?:[^\W\d_]{3,}|\d|[)\]\"”»])\s?[.!?…]+[\"”»)]*\s*$")
_DATED = pattern(r"[0-9]\.\s?[0-9]{1,2}\.\s*$")
_CLAUSES = pattern(r"(?<=[^\W\d_]{3})[.!?…]+\s+(?=\S)")
_PARTS = pattern(rf"[,;&+/]|\s(?:{AND})\s")
_ASIDE = pattern(r"\s[-–—]\s.*|:\s.*")
_NO_CHILD = OTHER_PEOPLE | ANY_DAYS
_FEWEST = 3  # lines that may be children, among which a sentence is one
_SMALL, _CLOSED = 3, 2  # words in small letters that make a sentence, and with a full stop behind it
_LONGEST_NAME = 4  # words
_MOSTLY = 0.6
_LONGEST = 600
_LEADS = pattern(r"\s(?:=|->|→|⇒|=>)\s+([^\W\d_]\S*)$", needs="=>→⇒")
"""One word behind a sign at the end of a sentence, who may be on no list: ``Gives food to the fish = Xobrel``."""


class Aside(NamedTuple):
    """A line that is a sentence, with what is said of it; ``asked`` where somebody in it has no other line."""

    line: Line
    notes: tuple[Message, ...]
    asked: bool = False


def without_sentences(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children or stand over them, and those that are sentences about the class."""
    found: dict[int, Aside] = {}
    if texts := _sorted(lines):
        asides = (_sentences(lines, texts), _about_others(lines, texts), _listed_again(lines, texts),
                  _partly_about(lines, texts), _times_of_a_day(lines, texts))
        for more in asides:  # what was found first stands
            found = dict(more) | found
    return [line for at, line in enumerate(lines) if at not in found], [found[at] for at in sorted(found)]


class _Looked(NamedTuple):
    """A line without its number or its time, and what it is by itself."""

    text: str
    timed: bool
    sentence: bool
    label: Labelled | None


class _Texts(NamedTuple):
    """The texts of lines by their places (0-based), sorted by what each line is by itself.

    ``said`` are sentences, ``timed`` begin with a time, ``told`` are the children that a sentence tells of, ``plain``
    may be children; of those with ``labels`` the labels of ``alone`` may be, ``lists`` are names behind others, and
    ``ours`` those behind a word for the class.
    """

    said: Mapping[int, str]
    timed: Mapping[int, str]
    told: Mapping[int, str]
    plain: Mapping[int, str]
    labels: Mapping[int, Labelled]
    alone: Mapping[int, str]
    lists: Mapping[int, str]
    ours: Mapping[int, str]

    def anybody(self) -> Children:
        """Return everyone who may stand on a line."""
        return Children({**self.plain, **self.alone, **self.lists, **self.told}.items())

    def listed(self) -> Children:
        """Return those who have a line of their own, or stand behind a word for the class."""
        return Children({**self.plain, **self.ours, **self.told}.items())


def _sorted(lines: Sequence[Line]) -> _Texts | None:
    """Return what the lines are; None where no sentence, label or time is among them, or too few may be children."""
    seen = {at: looked for at, line in enumerate(lines) if (looked := _looked_at(line.text))}
    timed = {at: looked.text for at, looked in seen.items() if looked.timed}
    said = {at: looked.text for at, looked in seen.items() if looked.sentence}
    labels = {at: looked.label for at, looked in seen.items() if looked.label}
    if not (said or labels or timed) or len(seen) < _FEWEST or cells_run_on(line.text for line in lines):
        return None
    plain = {at: looked.text for at, looked in seen.items() if at not in said and at not in labels
             and not looked.timed and not heading_reason(looked.text)}
    lists = {at: label.rest for at, label in labels.items() if at not in said and _PARTS.search(label.rest)}
    ours = {at: names for at, names in lists.items() if _heads_the_class(labels[at].label)}
    alone = {at: label.bare for at, label in labels.items() if at not in said and _may_be_whole(label.bare)}
    own = Children(plain.items())
    told = {at: " ".join(named.parts) for at in said if (named := told_in_a_sentence(said[at]))
            and not all(own.hold([bare_word(word) for word in part.split()]) for part in named.parts)}
    if len(plain) + len(alone) < _FEWEST and not lists and not told:
        return None
    return _Texts(said, timed, told, plain, labels, alone, lists, ours)


@keeps_names(1024)
def _looked_at(line: str) -> _Looked | None:
    """Return what a line is by itself, None where it has no letters, is a text or has columns."""
    if len(line) > _LONGEST or not any(map(is_letter, line)) or any(sign in line for sign in COLUMN_SIGNS):
        return None
    time = _TIME.match(line)
    text = line[time.end() :] if time else strip_numbering(line)
    return _Looked(text, bool(time), is_sentence(text) and not is_closing(text),
                   labelled(text) or _as_label(text))


def _as_label(text: str) -> Labelled | None:
    """Return words that lead to names, as a label of them: ``Reading with Mia, Leo``."""
    within = behind_a_word(text)
    days = within is not None and all(len(part) == 1 for part in within.parts)  # comedor M y J
    led = within is not None and not days and (within.led or leads_to_names(within.before))
    return Labelled(within.before, within.before, ", ".join(within.parts)) if within and led else None


def is_sentence(text: str) -> bool:
    """Say whether a line has the words in small letters of a sentence, or some and the end of one.

    What stands behind a name and a sign is a remark beside it; who is called what is told with a name.
    """
    words = BRACKETS.sub(" ", text).split()
    if _is_cry(words):
        return True
    if len(words) < _CLOSED + 1 or begins_small(words[0]) or NAME_LABEL.match(text) or says_what_called(text):
        return False
    if _is_name_before_a_sign(text.split()):
        return False
    label = labelled(text)
    if label and not _CLAUSES.search(text) and (is_titled(label.bare) or all(map(_may_be_a_name, _parts(label.rest)))):
        return False
    small = sum(map(_is_small, words))
    return small >= _SMALL or (small > 0 and bool(_END.search(text) or _CLAUSES.search(text)))


def _is_cry(words: Sequence[str]) -> bool:
    """``Have fun!``, ``To my aide,``: a small word for no child opens it, small words follow, and a sign ends it."""
    return (len(words) > 1 and words[-1][-1] in "!," and bare_word(words[0]) in OPENERS
            and all(map(_is_small, words[1:])) and not begins_small(words[0]))


def _is_name_before_a_sign(words: Sequence[str]) -> bool:
    """Say whether a line opens with words that may be a whole name, and a sign: ``Mira Vost = nuts``."""
    head = next((words[: at + 1] for at, word in enumerate(words[:_LONGEST_NAME]) if word[-1] in ":,"), [])
    if len(head) > _CLOSED and has_capital(head[0]) and sum(map(_is_small, head)) < _CLOSED and len(head) < len(words):
        return True  # Paulette De jesus: nuts
    run = list(takewhile(has_capital, words))
    behind = words[len(run)] if len(run) < len(words) else ""
    parted = not any(map(is_letter, behind)) or behind[0] == "(" or (run and run[-1][-1] in ",:;")
    return bool(run) and bool(parted) and bool(behind) and (len(run) > 1 or is_given(run[0].strip(EDGES)))


def with_sentences(lines: Sequence[Line], asides: Sequence[Aside]) -> Iterator[Line | Aside]:
    """Yield the lines with the sentences where they stood, by the line of the source."""
    rest = list(asides)
    for line in lines:
        while rest and rest[0].line.origin <= line.origin:
            yield rest.pop(0)
        yield line
    yield from rest


def _sentences(lines: Sequence[Line], texts: _Texts) -> Iterator[tuple[int, Aside]]:
    """Yield the lines that are sentences and may not be all that stands of a child."""
    anybody = texts.anybody()
    for at, text in texts.said.items():
        if at not in texts.told and (aside := _told(lines[at], text, anybody)):
            yield at, aside


def _told(line: Line, text: str, children: Children) -> Aside | None:
    """Return what is said of a sentence, None where it may be all that stands of a child."""
    if reason := heading_reason(text):
        kindly = fold(text).startswith(tuple(PLEASE))
        unheld = [name for name in names_in(text) if is_given(name.words[0]) and not children.hold(name.words[:1])
                  and (kindly or (name.at > 1 and len(name.words) > 1))]  # Hi Jo, is to an adult
        return _asked(line, unheld) if unheld else Aside(line, (reason,))
    dated = _DATED.search(text) is not None  # Per Vost starts 3.11.
    names, size = list(names_in(text)), openers(text)
    ended = (bool(_END.search(text)) and not dated) or _is_cry(text.split())
    opening = names[0] if not size and names and not names[0].at else None
    if opening and children.hold(opening.words):
        if children.are(opening.words) and not ended:  # two of one name, told apart by what they do
            return _asked(line, [opening])
    elif opening:
        joined = len(names) > 1 and are_joined(opening, names[1], text.split())
        if not joined and (not ended or len(opening.words) > 1 or is_given(opening.words[0])):
            return None
        if not any(holds(children, name) for name in names):
            return None if joined else _asked(line, [opening])
    elif size and is_given(text.split()[0].strip(EDGES)) and not ended:
        return None
    led = _LEADS.search(text)
    missing = [name for name in names if not children.hold(name.words[:1])
               and (is_given(name.words[0]) or (led and name.typed == led[1]))]
    return _asked(line, missing) if missing else Aside(line, (message("roster.sentence"),))


def _asked(line: Line, names: Sequence[Name]) -> Aside:
    typed = ", ".join(dict.fromkeys(name.typed for name in names))
    return Aside(line, (message("roster.sentence_names", names=typed[:60]),), asked=True)


def _about_others(lines: Sequence[Line], texts: _Texts) -> Iterator[tuple[int, Aside]]:
    """Yield the lines with a label that tell of children who have lines, where there is a list of them."""
    if len(texts.plain) >= _FEWEST or texts.ours or texts.told:
        listed = texts.listed()
        for at, label in texts.labels.items():
            if at not in texts.ours and at not in texts.told and _is_about(label, listed):
                yield at, _about(lines[at], asked=_tells_whose(label))


def _partly_about(lines: Sequence[Line], texts: _Texts) -> Iterator[tuple[int, Aside]]:
    """Yield the lines behind whose label some stand who have a line, and some who have none: these are asked about."""
    if len(texts.plain) < _FEWEST:
        return
    own = Children(texts.plain.items())
    for at, label in texts.labels.items():
        parts = [part for part in _parts(label.rest) if opens_with_given(part) and _may_be_a_child(part)]
        missing = [part for part in parts if not own.hold([bare_word(word) for word in part.split()])]
        if 0 < len(missing) < len(parts) and not opens_with_given(label.bare):
            note = message("roster.sentence_names", names=", ".join(missing)[:60])
            yield at, Aside(lines[at], (note,), asked=True)


def _is_about(label: Labelled, children: Children) -> bool:
    """Say whether a line with a sign tells of children who have lines: ``Helpers: Mira, Tilo``, ``Anna: nuts``."""
    words = [bare_word(word) for word in label.bare.split()]
    if children.hold(words):
        return is_titled(label.bare) and not children.are(words) and begins_small(label.rest)
    if labelled(label.rest) or (is_titled(label.bare) and opens_with_given(label.bare)):
        return False  # Stop 7 – Elm St: Mira
    names = [[bare_word(word) for word in part.split() if has_capital(word)] for part in _parts(label.rest)]
    return any(names) and all(children.hold(name) for name in names if name) and not begins_small(label.rest)


def _tells_whose(label: Labelled) -> bool:
    """Say whether somebody of a child stands behind a label, which then may be a child: ``Xobrel – Mira's cousin``."""
    return any(word.strip(EDGES).endswith(OWNED) for word in label.rest.split())


def _parts(rest: str) -> list[str]:
    """Return what stands between the signs behind a label, without brackets and remarks."""
    return [bare for part in _PARTS.split(BRACKETS.sub(" ", rest)) if (bare := _ASIDE.sub("", part).strip(" .!"))]


def _may_be_whole(label: str) -> bool:
    """Say whether what stands before a sign may be a child: a given name, or a whole name on no list."""
    return opens_with_given(label) or (_may_be_a_name(label) and len(label.split()) > 1)


def _may_be_a_name(part: str) -> bool:
    return len(part.split()) <= _LONGEST_NAME and is_titled(part) and not any(map(str.isdigit, part))


def _may_be_a_child(part: str) -> bool:
    """Say whether words may be a name, are no days (``M/W/F``) and nobody who is a child’s (``Tante Ada``)."""
    long = sum(map(is_letter, part)) >= _FEWEST or is_given(part)
    return long and _may_be_a_name(part) and _NO_CHILD.isdisjoint(map(fold, part.split()))


def _listed_again(lines: Sequence[Line], texts: _Texts) -> Iterator[tuple[int, Aside]]:
    """Yield the lines whose label is of another kind and whose children all stand in lists above or in lines."""
    own = frozenset(map(fold, texts.plain.values()))
    seen = set(own)
    for at, label in texts.labels.items():
        parts = _parts(label.rest)
        if opens_with_given(label.bare) or labelled(label.rest) or not parts or not all(map(_may_be_a_child, parts)):
            continue
        names = set(map(fold, parts))
        whole = all(" " in part for part in parts)
        if names <= seen and (whole or len(parts) > 1):
            sure = whole or (len(parts) >= _FEWEST and names <= own)  # else two children with the same remark
            yield at, _about(lines[at], asked=not sure)
        seen |= names if len(parts) > 1 else set()  # one name behind another may be somebody else’s, or a place


def _times_of_a_day(lines: Sequence[Line], texts: _Texts) -> Iterator[tuple[int, Aside]]:
    """Yield the lines of a day's plan (``11:00 Recess``), where known names stand on others and no time before them."""
    timed, children = texts.timed, texts.anybody()
    others = [*texts.plain.values(), *(names for at, names in texts.lists.items() if at not in timed)]
    names = [name.words for text in timed.values() for name in names_in(text)]
    children_only = all(children.hold(name) or not any(map(is_given, name)) for name in names)
    if len(timed) > 1 and len(others) > 1 and given_share(others) >= _MOSTLY and children_only:
        yield from ((at, Aside(lines[at], (message("roster.sentence"),))) for at in timed)


def _about(line: Line, *, asked: bool = False) -> Aside:
    return Aside(line, (message("roster.about_children"),), asked)


def _heads_the_class(label: str) -> bool:
    words = [bare_word(word) for word in label.split()]
    return words[0] in OUR or not CHILDREN.isdisjoint(words)


def _is_small(word: str) -> bool:
    letters = word.strip(EDGES)
    return len(letters) > 1 and letters.islower() and begins_small(letters) and letters not in PARTICLES
