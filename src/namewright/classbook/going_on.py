"""What a new list leaves out of a child whom the class knows goes on, unless somebody took it out by hand.

An office's list of next month says less than the class knows: a name without its accent, in the other script or with
the slip of last month, no word of what the child goes by, no column for the hand. Somebody answered or set that once,
so it goes on, part by part, until a list says something else. Where the list is the one that the class has, with a line
or two changed by hand, what was taken out is gone: for those lines all is meant as it stands. Pure.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from types import MappingProxyType

import unicodedata2

from namewright.classbook.who import Known
from namewright.named_tuples import NamedTuple
from namewright.names.latin_spelling import latin_spelling
from namewright.patterns import pattern
from namewright.roster.children import Child, Roster
from namewright.roster.labels import labels

LISTED = ("support", "hand", "line_height_mm", "letters", "beats", "names_in")
"""What a list may say of a child besides its names."""
_LATIN = ("LATIN", "MODIFIER LETTER", "FEMININE ORDINAL", "MASCULINE ORDINAL")  # ʻ and ª stand in Latin names
_ON_TOP = range(200, 241)  # combining classes of marks over and under letters; others are letters of their own scripts
_BETWEEN = pattern(r"[\s\-‐‑–—_.,/]+")
_APOSTROPHES = pattern(r"['’‘`´ʼʻ“”\"]")
_PARTED = pattern(r"[,;|\t，、:]")  # what tells parts of a name apart
_STRUCK = str.maketrans({"ł": "l", "đ": "d", "ð": "d", "ø": "o", "ħ": "h", "ı": "i", "ŧ": "t", "æ": "ae", "œ": "oe",
                         "þ": "th"})  # which Unicode does not take apart, as machines without them write them
_SPELT_OUT = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "å": "aa", "ø": "oe"})  # as is usual in German and Danish
_BY_HAND = 2  # lines of a list that are changed at once by hand; a list from elsewhere seldom differs by so few


def words(name: str) -> tuple[str, ...]:
    """Return the words of a name without case and marks, in Latin letters where its script allows a spelling."""
    letters = name.lower()
    if not name.isascii():
        spelled = (latin_spelling(name) or name).casefold().translate(_STRUCK)
        letters = "".join(char for char in unicodedata2.normalize("NFD", spelled)
                          if unicodedata2.combining(char) not in _ON_TOP)
    return tuple(word for word in _BETWEEN.split(_APOSTROPHES.sub("", letters)) if word)


def spelt_out(name: str) -> str:
    """Return a name as it is written where ä, ö, ü and å are not at hand: Juergen."""
    return str(unicodedata2.normalize("NFC", name)).casefold().translate(_SPELT_OUT)


def is_other_script(name: str) -> bool:
    """Say whether a name has a letter of a script that is not Latin."""
    return not name.isascii() and any(
        char.isalpha() and not unicodedata2.name(char, "").startswith(_LATIN) for char in name)


def whole_name(one: Child | Known) -> str:
    """Return given and family name."""
    return f"{one.given} {one.family}".strip() or one.practice


def called(child: Child | Known) -> str:
    """Return what a child is called besides the given name, by what is practised; empty where that is nothing else."""
    practice = child.practice
    if child.family and practice.endswith(f" {child.family}"):
        practice = practice[:-len(child.family) - 1]
    return "" if practice in (child.given, child.family) else practice


def by_hand(before: str, now: str) -> dict[str, str]:
    """Return the lines of a list that somebody changed by hand, and what stood there; none where it is another list."""
    old, new = ([line.strip() for line in text.splitlines() if line.strip()] for text in (before, now))
    if len(old) != len(new):
        return {}
    changed = {line: one for one, line in zip(old, new, strict=True) if one != line and line not in old}
    return changed if len(changed) <= _BY_HAND else {}


class Saying(NamedTuple):
    """What a list says, and what it does not.

    ``unsaid`` are the fields of ``LISTED`` that it says of nobody. ``changed`` are lines, by number, that were changed
    by hand in the list of before, with what stood there; ``meant`` are lines of which somebody said that the name is
    meant as it stands, and ``keeps`` those whose child goes on as the class writes the name. ``whole``: the list of
    before holds only what was typed, and not what goes on. ``families``: this one has family names, so that one that is
    not there is left out; a list of given names alone is taken to mean that. ``plain`` are lines on which nothing but
    their order tells given from family name, so that the order of the class goes before.
    """

    unsaid: frozenset[str] = frozenset()
    changed: Mapping[int, str] = MappingProxyType({})
    meant: frozenset[int] = frozenset()
    whole: bool = False
    families: bool = False
    keeps: frozenset[int] = frozenset()
    plain: frozenset[int] = frozenset()

    def as_known(self, child: Child, old: Known) -> Child:
        """Return a child of the list with what the class knows of it and the list leaves out."""
        line_before = self.changed.get(child.line)
        literally = line_before is not None or child.line in self.meant
        gone = child.line in self.meant or (line_before is not None and old.goes_by in line_before)
        is_turned = child.line in self.plain and not literally and _is_turned(child, old)
        is_known_so = child.line in self.keeps or is_turned or (child.line not in self.meant and _is_also(child, old))
        given, family = (old.given, old.family) if is_known_so else _names(child, old, literally=literally)
        if self.families and not family and not literally:
            family = old.family
        practice = _practised(child, old, given, family, literally=literally, called_no_more=gone)
        unsaid = frozenset() if line_before is not None and not self.whole else self.unsaid
        return _with_listed(child._replace(given=given, family=family, practice=practice), old, unsaid)


NOTHING_SAID = Saying()


def saying(roster: Roster, text: str, before: str, *, whole: bool, meant: frozenset[int] = frozenset(),
           keeps: frozenset[int] = frozenset()) -> Saying:
    """Return what a list, read from ``text``, says; ``before`` is that of the class, ``whole`` as it was typed."""
    changed = by_hand(before, text)
    lines = {line.line: changed[line.text.strip()] for line in roster.lines if line.text.strip() in changed}
    unsaid = frozenset(each for each in LISTED if not any(getattr(child, each) for child in roster.children))
    families = sum(bool(child.family) for child in roster.children)
    plain = frozenset(line.line for line in roster.lines if not _PARTED.search(line.text)
                      and "roster.family_stands_first" not in {note.key for note in line.notes})
    return Saying(unsaid, lines, meant, whole, 2 * families > len(roster.children), keeps, plain)


def _with_listed(child: Child, old: Known, unsaid: Collection[str]) -> Child:
    more = {each: old.listed[each] for each in unsaid if old.listed.get(each)}
    if child.practice != old.practice:
        more.pop("beats", None)  # which are those of the name
    return child._replace(**more)


def is_written_alike(one: str, other: str) -> bool:
    """Say whether two whole names have the same words, in whatever order."""
    return sorted(words(one)) == sorted(words(other))


def _is_turned(child: Child, old: Known) -> bool:
    """Say whether given and family name stand for each other."""
    now, before = ((words(one.given), words(one.family)) for one in (child, old))
    return all(before) and now == before[::-1]


def _is_also(child: Child, old: Known) -> bool:
    """Say whether a list writes a name as lists are known to."""
    return bool(old.also) and is_written_alike(whole_name(child), old.also)


def _names(child: Child, old: Known, *, literally: bool) -> tuple[str, str]:
    """Return given and family name."""
    if is_other_script(child.given) and not child.family and old.given and not is_other_script(old.given):
        return old.given, old.family  # both in one word: 王小明
    given, family = (_part(new, known, literally=literally) for new, known in
                     ((child.given, old.given), (child.family, old.family)))
    if not literally and old.goes_by and old.given and not is_other_script(old.given) and (
            words(given) == words(old.goes_by)):
        given = old.given  # the list has in its place what the child goes by
    return given, family


def _part(new: str, old: str, *, literally: bool) -> str:
    if is_other_script(new) and old and not is_other_script(old):
        return old
    return old if not literally and _says_less(new, old) else new


def _says_less(new: str, old: str) -> bool:
    """Say whether a name is another one, but without accents, hyphens or apostrophes that that has."""
    if new == old or not new or is_other_script(new) or is_other_script(old):
        return False
    if "".join(words(new)) not in ("".join(words(old)), "".join(words(spelt_out(old)))):
        return False
    less, more = (_signs(one) for one in (new, old))
    return less <= more and less != more


def _signs(name: str) -> Counter[str]:
    """Return what a name has besides plain letters and spaces; an apostrophe is one, however it looks."""
    plain = _APOSTROPHES.sub("'", unicodedata2.normalize("NFD", name))
    return Counter(char for char in plain if not (char.isalnum() and char.isascii()) and not char.isspace())


def _practised(child: Child, old: Known, given: str, family: str, *, literally: bool, called_no_more: bool) -> str:
    """Return the name to practise: the same part as in the list, by what the child is called."""
    if child.practice == child.family:
        return family
    goes_by = "" if called_no_more and not is_other_script(child.given) else old.goes_by
    typed = called(child)
    now = _part(typed, old.goes_by or old.given, literally=literally) if typed else goes_by or given
    is_whole = child.practice.endswith(f" {child.family}") if child.family else (
        bool(family) and old.practice.endswith(f" {old.family}"))
    return f"{now} {family}" if is_whole else now


def relabelled(children: Sequence[Child]) -> tuple[Child, ...]:
    """Return the children with labels that tell them apart by the names that they have now."""
    names = labels([(child.practice, _beside(child)) for child in children])
    return tuple(child._replace(label=label) for child, label in zip(children, names, strict=True))


def _beside(child: Child) -> str:
    """Return the part of the name that is not practised."""
    if child.practice == child.family:
        return child.given
    return "" if child.practice.endswith(child.family) else child.family
