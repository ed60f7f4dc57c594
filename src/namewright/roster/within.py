"""Names that stand in a line behind other words: ``Reading with Mia, Leo and Ava``, ``Speech (Mia, Leo)``.

The words end at the last one in small letters before the names, at a sign or at a bracket. Whether they are of a
school day, so that none of them is a child, is said by ``day_words``; else the line may be asked about.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.day_words import BESIDE_DAY, DAY_ENDINGS, DAY_PHRASES, DAY_WORDS, WITH
from namewright.roster.heading_words import HEADING_WORDS, NO_SCHOOL
from namewright.roster.known import is_family, is_given, is_known, lean, opens_with_given
from namewright.roster.names_in_text import BETWEEN_NAMES, EDGES, is_small
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.vocabulary import AND, NO_CHILD, OTHER_PEOPLE, TITLES, fold, word_set
from namewright.store import keeps_names

_SIGN = pattern(r"(?P<before>[^,;&+]{2,60}?)(?:\s?:\s+|\s+[-–—]\s+|\s*(?:→|⇒|->|=>)\s*)(?=[^\W\d_])")
_BRACKET = pattern(r"(?P<before>[^,;&+()]{2,60}?)\s*[(\[](?P<names>[^()\[\]]+)[)\]]\s*$", needs="([")
_CLAUSES = pattern(rf"[,;:&+/()→]|\s[-–—]\s|\s(?:{'|'.join(sorted(WITH))}|{AND})\s")
_INITIAL = pattern(r"\s[^\W\d_]\.$")
_PHRASES = DAY_PHRASES.union(words for words in NO_SCHOOL if " " in words)  # Holiday alone may be a family
_SUBJECTS = frozenset(("math",))
_OTHERS = TITLES | OTHER_PEOPLE
_LONGEST, _WHOLE = 200, 2
_COMES = word_set("""
    is coming, is in, comes, comes too, kommt, kommt mit, kommt auch, ist dabei, ist mit dabei, va, va tambien, viene,
    se apunta, vient, vient aussi, participe, sera la, partecipa, viene anche, vem, vai, participa, tambem vai""")
"""What a parent answers for a child, behind its name."""


class Within(NamedTuple):
    """The words before some names, and each name; ``led`` where the words are of a day and hold no child."""

    before: str
    parts: tuple[str, ...]
    led: bool

    def are_known(self) -> bool:
        """Say whether every part opens with a known given name."""
        return all(map(opens_with_given, self.parts))


@keeps_names(1024)
def behind_a_word(text: str) -> Within | None:
    """Return the names behind a word in small letters or in a bracket; None where none can be told."""
    text = text.strip()
    if len(text) > _LONGEST:
        return None
    if bracket := _BRACKET.fullmatch(text):
        return _within(bracket["before"], bracket["names"])
    opening = BETWEEN_NAMES.split(text)[0].split()
    small = [at for at, word in enumerate(opening) if at and is_small(word)]
    if not small or small[-1] + 1 == len(opening):
        return None
    end = sum(len(word) for word in opening[: small[-1] + 1])
    at = _place_behind(text, end)
    return _within(text[:at].strip(), text[at:])


@keeps_names(1024)
def behind_a_sign(text: str) -> Within | None:
    """Return the names behind a colon, a dash or an arrow."""
    text = text.strip()
    sign = _SIGN.match(text) if len(text) <= _LONGEST else None
    return _within(sign["before"], text[sign.end() :]) if sign else None


def behind_an_adult(text: str) -> Within | None:
    """Return the names behind a grown-up's and a sign, two or more: ``Mrs. Vost -> Mira, Tilo``.

    Behind a dash one of them is known; else it may tell what she teaches (``Frau Vost – Kunst, Sport``).
    """
    if fold(text.split()[0].rstrip(".")) not in TITLES or (found := behind_a_sign(text)) is None:
        return None
    shown = ":" in text or ">" in text or "→" in text or any(map(opens_with_given, found.parts))
    told = any(word in HEADING_WORDS or word in NO_CHILD for part in found.parts for word in fold(part).split())
    return found if len(found.parts) > 1 and shown and not told and len(found.before.split()) > 1 else None


@keeps_names(2048)
def is_of_a_day(text: str) -> bool:
    """Say whether a line tells what a class does and names nobody: ``Circle time``, ``Speech with Ms. Dale``.

    Every word with a capital is of a day, or an adult’s behind a title; and of the words in each part, one is of a day.
    What may be a child’s name alone or whole is none: ``Gita``, ``Saida Conte``.
    """
    words = [word for word in text.split() if any(map(is_letter, word))]
    if may_be_a_child(" ".join(words)) or _says_what_a_child_does(words):
        return False
    if fold(text.strip(EDGES)) in _PHRASES:
        return True
    parts = [list(_without_adults(part.split())) for part in _CLAUSES.split(text)]
    bare = [[fold(word.strip(EDGES)) for word in part] for part in parts]
    if not any(map(_is_day_word, chain.from_iterable(bare))):
        return False
    return all(_tells_nobody(part) for part in parts)


def may_be_a_child(text: str) -> bool:
    """Say whether words of a day are a name, too: a given name alone, or before another word with a capital."""
    first, *rest = text.split() or [""]
    word = fold(first.strip(EDGES))
    named = word not in _SUBJECTS and (lean(word) > 0 if not rest else is_given(word) and word not in BESIDE_DAY)
    of_day = word in DAY_WORDS and not (len(rest) == 1 and _is_a_family(rest[0]))  # saida, gita
    small = len(rest) == 1 and begins_small(first) and not of_day  # anton sonntag; Rose reads is a note
    return named and (not rest or small or not begins_small(rest[0])) and first[-1] not in ",:"


def _says_what_a_child_does(words: Sequence[str]) -> bool:
    """Say whether a given name that is a word of a day as well stands before words of coming: ``Saida ist dabei``."""
    bare = [fold(word.strip(EDGES)) for word in words]
    return len(bare) > 1 and lean(bare[0]) > 0 and " ".join(bare[1:]) in _COMES


def _is_a_family(word: str) -> bool:
    """Say whether a word is known as a family's name alone: ``gita rossi`` goes on no trip."""
    bare = fold(word.strip(EDGES))
    return is_family(bare) and bare not in DAY_WORDS | BESIDE_DAY


def _tells_nobody(words: Sequence[str]) -> bool:
    """Say whether some words with nothing between them hold none that may be a name."""
    bare = [fold(word.strip(EDGES)) for word in words if any(map(is_letter, word))]
    small = [begins_small(word.strip(EDGES)) for word in words if any(map(is_letter, word))]
    of_day = [_is_day_word(word) or word in BESIDE_DAY for word in bare]
    return (any(of_day) or not bare) and all(
        day or (begins and not lean(word) > 0) for day, begins, word in zip(of_day, small, bare, strict=True))


@keeps_names(1024)
def named_behind_a_day(text: str) -> Within | None:
    """Return the children behind words of a day, by a word, a sign or a bracket: ``Snack → Mia``, ``OT: Mia, Leo``."""
    for named in (behind_a_sign(text), behind_a_word(text)):
        if named and named.led:
            return named
    return None


def is_led(before: str) -> bool:
    """Say whether words before names are of a day, or small, and open with no child’s name."""
    bare = [fold(word.strip(EDGES)) for word in before.split()]
    if any(lean(one) > 0 and not begins_small(word) and not _is_day_word(one) and one not in BESIDE_DAY
           for word, one in zip(before.split(), bare, strict=True)):
        return False
    if may_be_a_child(before) or not NO_CHILD.isdisjoint(bare):
        return False
    return any(map(_is_day_word, bare)) or _has_phrase(" ".join(bare))


def leads_to_names(before: str) -> bool:
    """Say whether words end in one that leads to those with whom something is done: ``Blocks with``."""
    return fold(before.split()[-1]) in WITH and not opens_with_given(before)


def _within(before: str, behind: str) -> Within | None:
    parts = tuple(_names(behind))
    if not parts or not before or not all(map(_is_name, parts)):
        return None
    return Within(before.strip(), parts, is_led(before))


def _names(text: str) -> Iterator[str]:
    """Yield the parts of a text that are no adults and nothing of a day."""
    for part in BETWEEN_NAMES.split(text.strip()):
        bare = part.strip(" !…")
        bare = bare if _INITIAL.search(bare) else bare.rstrip(".")
        words = [fold(word.strip(EDGES)) for word in bare.split()]
        adult = bool(words) and words[0] in _OTHERS and not is_given(words[0])
        if words and not adult and not is_of_a_day(bare):
            yield bare


def _is_name(part: str) -> bool:
    words = part.split()
    known = len(words) == _WHOLE and lean(words[0]) > 0 and is_family(words[1])  # Teresa English
    return (known or may_be_a_name(part)) and is_titled_name(part) and not any(map(is_small, words))


def _has_phrase(words: str) -> bool:
    return any(f" {phrase} " in f" {words} " for phrase in DAY_PHRASES)


def _is_day_word(word: str) -> bool:
    return word in DAY_WORDS or (word.endswith(DAY_ENDINGS) and not is_known(word))


def _without_adults(words: Sequence[str]) -> Iterator[str]:
    """Yield the words that are no title and do not stand behind one."""
    behind = False
    for word in words:
        titled = fold(word.strip(EDGES)) in TITLES
        if not titled and not (behind and not begins_small(word)):
            yield word
        behind = titled or (behind and not begins_small(word) and word[-1] not in ",;:")


def _place_behind(text: str, letters: int) -> int:
    """Return where a text goes on behind so many characters that are no spaces."""
    seen = 0
    for at, char in enumerate(text):
        if seen == letters and not char.isspace():
            return at
        seen += not char.isspace()
    return len(text)
