"""What a child says of itself, likes or lives with, on the line of its name: ``My name is Mia. I like red.`` is Mia.

Three kinds, each known by many lines alike: most open as that one does; or ``Mia – week A: Ana (mum), week B: dad``
names nobody but grown-ups behind the sign; or ``Mia Vost: red / tiger / rice`` has as many words behind each name, and
the same ones again. Out of scope: tables, and what stands on lines of its own (``said_below``).
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping

from namewright.names.casing import begins_small
from namewright.patterns import pattern
from namewright.roster.capitals import is_small_word, is_titled
from namewright.roster.heading_words import PLACES
from namewright.roster.kin import GROWN_UPS
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import ANY_DAYS, GROUPS, MONTHS, fold

_I_AM = pattern(
    r"\s*(?:[-–*•]\s*)?(?:(?:hi|hello|hola|salut|bonjour|hallo|ciao|olá|oi)\s*[,!]*\s+)?(?:"
    r"my name is|i am|i['’]m|me llamo|yo me llamo|mi nombre es|yo soy|soy|je m['’]appelle|moi,? c['’]est|mon nom est|"
    r"mon prénom est|je suis|ich hei(?:ß|ss)e|ich bin|mein name ist|mi chiamo|io mi chiamo|il mio nome è|io sono|"
    r"(?:eu )?chamo-me|(?:eu )?me chamo|o meu nome é|meu nome é|eu sou)\s+(?=[^\W\d_])", re.I)
_ENDS = pattern(r"[.!?;:,]+(?:\s|$)|\s[-–—]\s")
_BESIDE = pattern(r"([^:;\t|]{2,60}?)(?::\s+|\s[–—-]\s)([^;\t|]*)", needs=":–—-")
_SAID = pattern(r"\s+[/·]\s+|,\s+")
_LABEL = pattern(r"[^:()]{2,30}:\s+", needs=":")
_IN_BRACKETS = pattern(r"[^()]*\(([^()]{2,20})\)", needs="(")
_LABELS = PLACES | ANY_DAYS | MONTHS | GROUPS
_FEWEST, _LONGEST = 3, 200
_HALF, _MOSTLY, _NEARLY_ALL = 0.5, 0.6, 0.8


def from_said_beside(lines: list[Line]) -> list[Line]:
    """Return the lines without what is said of the children beside their names, where many say the like."""
    filled = {at: line.text for at, line in enumerate(lines) if line.text.strip() and len(line.text) <= _LONGEST}
    found = _of_themselves(filled) or _before_a_sign(filled)
    return [line.without(_rest(line.text, found[at]), found[at]) if at in found else line
            for at, line in enumerate(lines)] if found else lines


def _rest(text: str, name: str) -> str:
    before, _, behind = text.partition(name)
    return f"{before.strip()} {behind.strip(' .:–—-')}".strip()


def _of_themselves(filled: dict[int, str]) -> dict[int, str]:
    """Return the names of those who say who they are, by their lines (0-based)."""
    found = {at: match.end() for at, text in filled.items() if (match := _I_AM.match(text))}
    if len(found) < max(_FEWEST, _MOSTLY * len(filled)):
        return {}
    return {at: name for at, start in found.items() if (name := _name(filled[at][start:]))}


def _name(text: str) -> str:
    """Return what is named before a sign or words in small letters."""
    words = _ENDS.split(text, maxsplit=1)[0].split()
    end = next((at for at, word in enumerate(words) if is_small_word(word)), len(words))
    return " ".join(words[: end or 1])


def _before_a_sign(filled: dict[int, str]) -> dict[int, str]:
    """Return the names before a colon or a dash and what is said behind it: with whom they live, or what they like."""
    said = {at: (match[1].strip(), match[2].strip()) for at, text in filled.items()
            if (match := _BESIDE.fullmatch(text)) and match[1].strip() and match[2].strip()}
    return _of_grown_ups(said) or _of_what_they_like(said, len(filled))


def _of_grown_ups(said: Mapping[int, tuple[str, str]]) -> dict[int, str]:
    """Return the names before a sign and nobody but kin: ``mum / dad``, ``week A: Ana (mum), week B: Leo (dad)``."""
    found = {at: name for at, (name, told) in said.items() if all(map(_is_kin, _SAID.split(told)))}
    if len(found) < _FEWEST or any(begins_small(name) or _is_a_label(name) for name in found.values()):
        return {}
    return found


def _is_kin(said: str) -> bool:
    label = _LABEL.match(said)
    words = said[label.end() if label else 0 :].strip(" .")
    within = _IN_BRACKETS.fullmatch(words)
    return fold(within[1] if within else words) in GROWN_UPS


def _of_what_they_like(said: Mapping[int, tuple[str, str]], lines: int) -> dict[int, str]:
    """Return the names before as many words on each line, which are small or come again from line to line."""
    parted = {at: parts for at, (_, told) in said.items() if all(parts := _SAID.split(told))}
    sizes = Counter(map(len, parted.values()))
    size, count = sizes.most_common(1)[0] if sizes else (0, 0)
    if size < 2 or count < max(_FEWEST + 1, _NEARLY_ALL * lines - 1):
        return {}
    found = {at: said[at][0] for at, parts in parted.items() if len(parts) == size}
    told = [part for at in found for part in parted[at]]
    words = Counter(map(fold, told))
    again = share(words[fold(part)] > 1 for part in told) >= _NEARLY_ALL
    sure = all(map(begins_small, told)) or (again and given_share(told) < _HALF)
    differ = len(set(map(fold, found.values()))) >= _NEARLY_ALL * len(found)
    named = all(is_titled(name) and not _is_a_label(name) for name in found.values())
    return found if sure and differ and named else {}


def _is_a_label(text: str) -> bool:
    """Say whether words before a sign are a day, a place or a group: ``Monday: maths / art``, ``Table 2: …``."""
    return any(map(str.isdigit, text)) or not _LABELS.isdisjoint(fold(text).split())
