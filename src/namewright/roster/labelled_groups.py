"""Groups told in a line each, ``Red table (rug): Mia, Leo & Ava``, into a heading and a line for each child.

What stands before the sign is a label where the labels of the list share a frame (a word of theirs, a time of day), or
where none of them is a name and names stand behind. Told before columns are looked for: commas between the names of
groups cut none. Out of scope: one line of a group alone (``several``), and names that a table holds in cells.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import chain, pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_state, is_word_about
from namewright.roster.capitals import is_small_word
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.header_words import HEADER_WORDS
from namewright.roster.heading_words import HEADING_WORDS, OPENERS, PLACES
from namewright.roster.headings import heads_adults
from namewright.roster.known import is_given, lean, opens_with_given
from namewright.roster.liked import are_surely_told_of, may_like
from namewright.roster.names_between import (
    BRACKETS,
    MOST_WHOLE,
    PARTS,
    PLACE,
    are_names,
    names_between,
    parts_between,
)
from namewright.roster.no_names import says_nobody
from namewright.roster.pasted import Line
from namewright.roster.several import bracketed_label, is_titled_name, may_be_a_name
from namewright.roster.shares import are_in_a_row, given_share, share
from namewright.roster.sure_groups import (
    are_jobs,
    are_led_by_adults,
    are_surely_groups,
    is_a_job,
    is_of_adults,
    is_over_groups,
    may_be_jobs,
)
from namewright.roster.vocabulary import ANY_DAYS, GROUPS, MONTHS, fold

_LABEL = pattern(r"(.{2,60}?)(?:\s?:\s+|\s+=\s+)(?=\S)", needs=":=")
_WITHIN = pattern(r"(.{2,60}?(?:\s?:\s+|\s+=\s+)[^\s,;&+:][^,;&+:]{1,40}?)\s+[-–—]\s+(?=\S)")
_DASHED = pattern(r"([^,;&+:]{2,60})\s[-–—]\s+(?=\S)")
_COUNTED = pattern(r"([^\W\d_]{3,20} (?:\d{1,2}|[A-H]))[.)]?\s+(?=[^\W\d_]{2})")
_ARROWED = pattern(r"([^,;&+:→⇒>]{2,60}?)\s*(?:→|⇒|->|=>)\s*(?=\S)")
_TIMED = pattern(r"\s*\d{1,2}[:.h]\d\d(?!\d)")
_CLOCK = pattern(r"\D\d{1,2}[:.h]\d\d(?:\s?(?:Uhr|h|[AaPp][Mm]))?$")
_COMMA = pattern(r"[,;，、]")
_COUNT = pattern(r"\d{1,2}\s?[:=–—-]\s+(?=[^\W\d_])")
_ASIDE = pattern(r"\s[-–—]\s|,")
_BETWEEN = pattern(r"[\s:/]+")
_WORDS_OF_GROUPS = HEADING_WORDS | PLACES | GROUPS | ANY_DAYS
_LONGEST = 1_200  # characters of a line: a longer one is a text
_MOSTLY, _HALF, _NEARLY_ALL = 0.6, 0.5, 0.9
_SOME = 0.4
_FEW_GROUPS, _MOST_WORDS = 2, 4
_MOST_TITLES = 2
_TIME = ":"
_CROWD = 2.5  # names behind a label on the average: parents and pets come in twos


_HERE = frozenset(("da", "in"))
"""Short words that are a state only beside another."""


class _Head(NamedTuple):
    """What stands before the names of a line, and these; ``in_a_row`` with spaces alone between them."""

    label: str
    rest: str
    in_a_row: bool = False


class _Group(NamedTuple):
    label: str
    names: tuple[str, ...]


def from_labelled_groups(lines: Sequence[Line]) -> list[Line]:
    """Return a heading and the children of each group, or the lines as they are where they tell no groups."""
    heads = _in_rows({at: head for at, line in enumerate(lines)
                      if (head := head_of(line.text)) and not heads_adults(line.text)})
    labels = [head.label for head in heads.values()]
    if not may_be_jobs(labels) and not _are_states(labels) and not any(
            _TIMED.match(head.label) or _CLOCK.search(head.label) or head.in_a_row or PARTS.search(head.rest)
            or PLACE.match(head.rest) for head in heads.values()):
        return _below_heads(lines)
    empty = {at: _Group(head.label, ()) for at, head in heads.items() if _names_nobody(head)}
    found = {at: group for at, head in heads.items() if at not in empty and (group := _group(head))}
    if wishes := _wishes(heads) or _likings(heads):
        return [line.without(heads[at].rest, heads[at].label) if at in wishes else line
                for at, line in enumerate(lines)]
    placed = _placed(heads, found)
    found = ({} if _may_be_choices(placed) else placed) if placed else found
    told = found if placed else _told(found) if len(found) > 1 else {}
    told |= empty if told else {}
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    told = told if len(told) >= max(2, _HALF * len(filled)) else {}
    if len(told) < len(found):
        told = _surely(found, empty, filled) or told
    titles = _titles(lines, filled, told)
    return [each for at, line in enumerate(lines) for each in (
        _apart(line, told[at]) if at in told else (line.heading(line.text) if at in titles else line,))]


def _are_states(labels: Sequence[str]) -> bool:
    """Say whether each of two labels or more is a state, as in a register: ``Here``, ``Da`` beside ``Fehlt``."""
    states = list(map(is_state, labels))
    return len(labels) > 1 and any(states) and all(
        state or fold(label) in _HERE for state, label in zip(states, labels, strict=True))


def _wishes(heads: Mapping[int, _Head]) -> frozenset[int]:
    """Return the lines of known children with what, or whom of the class, they want first: ``Mia: 1. Leo, 2. Ava``."""
    counted = {at: head for at, head in heads.items() if PLACE.match(head.rest)}
    labels = [head.label for head in counted.values()]
    if len(counted) < max(_FEW_GROUPS, _MOSTLY * len(heads)) or share(map(opens_with_given, labels)) < _MOSTLY:
        return frozenset()
    wanted = [name for head in counted.values() for name in names_between(head.rest)]
    own = share(fold(name) in set(map(fold, labels)) for name in wanted) >= _HALF
    return frozenset(counted) if own or given_share(wanted) < _HALF else frozenset()


def _likings(heads: Mapping[int, _Head]) -> frozenset[int]:
    """Return the lines of children with what they like behind a colon, where some of them like several things."""
    own = {at: head for at, head in heads.items() if may_like(head.label)}
    parts = [names_between(head.rest) for head in own.values()]
    told = len(own) >= max(_FEW_GROUPS, _MOSTLY * len(heads)) and max(map(len, parts)) > 1 and are_surely_told_of(
        [head.label for head in own.values()], parts)
    return frozenset(own) if told else frozenset()


def _placed(heads: Mapping[int, _Head], found: Mapping[int, _Group]) -> dict[int, _Group]:
    """Return the groups that are counted, where nothing but a title with a dash above them is none."""
    counted = {at: group for at, group in found.items() if PLACE.match(heads[at].rest)}
    alone = len(counted) >= _FEW_GROUPS and all(at in counted or at < min(counted) for at in heads)
    return counted if alone else {}


def _may_be_choices(found: Mapping[int, _Group]) -> bool:
    """Say whether what is counted behind labels may be what a child wants first and second: no name known there.

    A label that has a figure or a small word is no child: ``30 m run: 1. Mira, 2. Leo``; a known name may be one, but
    not beside others that are none before names that are all known: ``Rose: 1. Mia, 2. Leo``, ``Bleu: 1. Anna``.
    """
    named = [opens_with_given(group.label) for group in found.values()]
    names = [name for group in found.values() for name in group.names]
    again = len(set(map(fold, names))) < len(names)
    if any(named):
        return again or all(named) or given_share(names) < _NEARLY_ALL
    return given_share(names) < _HALF and (again or not any(
        _is_a_phrase(group.label) or any(map(str.isdigit, group.label)) for group in found.values()))


def _surely(found: Mapping[int, _Group], empty: dict[int, _Group], filled: Sequence[int]) -> dict[int, _Group]:
    """Return the lines that are groups by counts, form or names, where all lines but a title are; none where unsure."""
    first = min(found, default=0)
    above = sum(at < first for at in filled)
    enough = above <= _MOST_TITLES and len(found) + len(empty) >= _MOSTLY * (len(filled) - above)
    labels, names = [group.label for group in found.values()], [group.names for group in found.values()]
    if enough and (are_led_by_adults(labels, names) or are_jobs(labels, names)):
        return {**found, **empty}
    groups = {at: group for at, group in found.items() if enough and not is_of_adults(group.label)
              and not all(is_of_adults(name.split()[0]) for name in group.names)}
    sure = are_surely_groups([group.label for group in groups.values()], [group.names for group in groups.values()])
    return {**groups, **empty} if sure else {}


def _titles(lines: Sequence[Line], filled: Sequence[int], told: Mapping[int, _Group]) -> frozenset[int]:
    """Return the lines over groups that are told, where nothing but groups stands below them."""
    first = min(told, default=0)
    above = [at for at in filled if at < first]
    alone = len(above) + len(told) == len(filled) and len(above) <= _MOST_TITLES
    return frozenset(at for at in above if alone and head_of(lines[at].text) is None and is_over_groups(lines[at].text))


def _names_nobody(head: _Head) -> bool:
    """Say whether a word for nobody stands where other lines have names: ``October: none :(``."""
    named = opens_with_given(head.label) and MONTHS.isdisjoint(_label_words(head.label))
    return says_nobody(head.rest) and not named


def _apart(line: Line, group: _Group) -> Iterator[Line]:
    yield line.heading(group.label)
    yield from map(line.part, group.names)


def _below_heads(lines: Sequence[Line]) -> list[Line]:
    """Return heads and children where nearly each line has the names of a group and stands below its head.

    ``Bluebirds (4)``, then ``Mira, Tilo, Anna`` on the next line.
    """
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    groups = {one: two for one, two in pairwise(filled) if two == one + 1 and _may_head(lines[one].text)
              and _are_known_names(_parts_of(lines[two].text))}
    if len(groups) < _FEW_GROUPS or 2 * len(groups) < _NEARLY_ALL * len(filled):
        return list(lines)
    below = set(groups.values())
    return [each for at, line in enumerate(lines) for each in _told_below(line, head=at in groups, names=at in below)]


def _told_below(line: Line, *, head: bool, names: bool) -> Iterator[Line]:
    if names:
        yield from map(line.part, _parts_of(line.text))
    else:
        yield line.heading(line.text) if head else line


def _parts_of(text: str) -> tuple[str, ...]:
    return parts_between(text) if len(text) <= _LONGEST else ()


def _may_head(text: str) -> bool:
    bare = BRACKETS.sub(" ", text).split()
    return 0 < len(bare) <= _MOST_WORDS and not _COMMA.search(text) and not is_given(bare[0])


def _are_known_names(parts: Sequence[str]) -> bool:
    return (len(parts) > 1 and all(map(may_be_a_name, parts)) and all(map(is_titled_name, parts))
            and given_share(parts) >= _HALF)


def head_of(text: str) -> _Head | None:
    """Return what stands before the first colon, or the last dash before names, and the names; None in a form."""
    if len(text) > _LONGEST or NAME_LABEL.match(text):
        return None
    label = _ARROWED.match(text) or _LABEL.match(text) or _DASHED.match(text)
    if label and (within := _WITHIN.match(text)) and _is_no_name(text[label.end() :], text[within.end() :]):
        label = within  # Mon: chess – Mia, Leo
    if label and (count := _COUNT.match(text, label.end())):  # Milk = 3: Mia, Leo, Ava
        return _Head(text[: count.end()].rstrip(" :–—=-"), text[count.end() :])
    if label is None:
        return _without_a_sign(text)
    rest = text[label.end() :]
    return _Head(label[1].strip(), rest, in_a_row=not opens_with_given(label[1]) and are_in_a_row(rest))


def _in_rows(heads: dict[int, _Head]) -> dict[int, _Head]:
    """Return heads whose names stand in a row all alike: where some do, who knows how many children the others are."""
    alone = {at: head for at, head in heads.items() if " " in head.rest and not PARTS.search(head.rest)}
    if not any(head.in_a_row for head in heads.values()) or all(head.in_a_row for head in alone.values()):
        return heads
    alike = all(head.in_a_row or all(map(is_given, head.rest.split())) for head in alone.values())
    return {at: head._replace(in_a_row=alike) if at in alone else head for at, head in heads.items()}


def _is_no_name(words: str, names: str) -> bool:
    """Say whether words before a second sign are small, or known as no given name where those behind it are."""
    return begins_small(words) or (is_given(names.split()[0].strip(",;")) and not opens_with_given(words))


def _without_a_sign(text: str) -> _Head | None:
    """Return a label in brackets (``Music (Tue) Mia, Leo``), or a word that counts (``Group 1 Mia Leo Ava``)."""
    if label := bracketed_label(text):
        return _Head(label[1], text[label.end() :])
    label = _COUNTED.match(text)
    names = text[label.end() :].split() if label else []
    known = len(names) >= _CROWD and all(lean(name) > 0 for name in names)
    return _Head(label[1], text[label.end() :], in_a_row=True) if label and known else None


def _group(head: _Head) -> _Group | None:
    """Return a label with the names behind it, None where something else stands there."""
    names = tuple(head.rest.split()) if head.in_a_row else names_between(head.rest)
    least = _HALF if _CLOCK.search(head.label) else MOST_WHOLE  # a stop with its time is no child
    return _Group(head.label, names) if are_names(names, least) else None


def _told(found: Mapping[int, _Group]) -> dict[int, _Group]:
    """Return the lines that are surely groups: those whose labels share a frame, or all of them."""
    for members, shared in _frames(found):
        groups = [found[at] for at in members]
        if len(members) >= max(2, _MOSTLY * len(found)) and _are_groups(groups, shared):
            return {at: group for at, group in found.items() if at in members or _is_a_phrase(group.label)}
    return {}


def _is_a_phrase(label: str) -> bool:
    """Say whether a label has a small word and none that is known of names: ``Not pictured``, or is ``Absent``."""
    if is_state(label):
        return True
    words = BRACKETS.sub(" ", label).split()
    if len(words) > 1 and fold(words[0]) in OPENERS and begins_small(words[1]):
        words = words[1:]  # Al centro, though Al is a name
    small = any(map(is_small_word, words))
    return small and not any(is_given(word) or lean(word) < 0 for word in words if not begins_small(word)) \
        and not _is_about_a_child(label)


def _frames(found: Mapping[int, _Group]) -> Iterator[tuple[list[int], str]]:
    """Yield lines that may belong together with what they share: a word of their labels, a time, nothing."""
    yield [at for at, group in found.items() if _TIMED.match(group.label)], _TIME
    words = {at: _label_words(group.label) for at, group in found.items()}
    for place in (0, -1):
        counts = Counter(of[place] for of in words.values() if of)
        if counts and (word := counts.most_common(1)[0][0]) and not is_given(word):
            yield [at for at, of in words.items() if of and of[place] == word], word
    yield [at for at in found if words[at]], ""


def _label_words(label: str) -> list[str]:
    """Return the words of a label without figures, and without what stands behind them in brackets or beside."""
    bare = _ASIDE.split(BRACKETS.sub(" ", label))[0]
    return [word for word in _BETWEEN.split(fold(bare))
            if not any(map(str.isdigit, word)) and any(map(is_letter, word))]


def _is_about_a_child(label: str) -> bool:
    """Say whether a label ends in a word about a child or somebody else, and tells no group: ``Mira's mom:``."""
    return is_word_about(label.split()[-1]) and _WORDS_OF_GROUPS.isdisjoint(fold(label).replace(".", " ").split())


def is_of_a_group_or_job(label: str) -> bool:
    """Say whether a word of a label tells a group, a day or what a child does: ``Lights``, ``Türdienst``."""
    return not _WORDS_OF_GROUPS.isdisjoint(_label_words(label)) or (
        is_a_job(label) and not opens_with_given(label))  # no Kai Licht


def _come_again(groups: Sequence[_Group], names: Sequence[str], shared: str) -> bool:
    """Say whether words come again and again as colours do; a child may, on another day: ``Mon: Mia, Leo``."""
    if len(set(map(fold, names))) >= _NEARLY_ALL * len(names):
        return False
    alone = all(len(set(map(fold, group.names))) == len(group.names) for group in groups)
    told = shared in _WORDS_OF_GROUPS or share(is_of_a_group_or_job(group.label) for group in groups) >= _MOSTLY
    return not (alone and told and given_share(names) >= _MOSTLY)


def _are_groups(groups: Sequence[_Group], shared: str) -> bool:
    """Say whether labels with something or nothing shared are surely no names, and names stand behind them."""
    names = list(chain.from_iterable(group.names for group in groups))
    if _are_states([group.label for group in groups]):
        return not _come_again(groups, names, shared)
    several = any(len(group.names) > 1 for group in groups)
    timed = shared == _TIME or (shared and all(_CLOCK.search(group.label) for group in groups))
    if not (several or timed) or _come_again(groups, names, shared):
        return False
    if any((fold(group.label) in HEADER_WORDS and fold(group.label) not in ANY_DAYS) or _is_about_a_child(group.label)
           for group in groups):
        return False
    if shared in _WORDS_OF_GROUPS:
        return True
    whole = share(" " in name for name in names) >= _MOSTLY
    if shared:
        return whole or given_share(names) >= _SOME
    if share(is_of_a_group_or_job(group.label) for group in groups) >= _MOSTLY:
        return True
    labels = [_label_words(group.label) for group in groups]
    if all(lean(name) > 0 for name in names) and not any(is_given(word) for words in labels for word in words):
        return True  # be they called as a family is: Robins – Noah, Ben
    phrases = share(_is_a_phrase(group.label) for group in groups)
    if phrases >= _SOME and given_share(names) >= (_HALF if phrases >= _MOSTLY else _NEARLY_ALL):
        return not any(is_given(words[0]) for words, group in zip(labels, groups, strict=True)
                       if not _is_a_phrase(group.label))
    if any(is_given(words[0]) or any(lean(word) < 0 for word in words) for words in labels):
        return False
    return len(names) >= _CROWD * len(groups)
