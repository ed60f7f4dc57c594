"""The adults who may fetch a child, behind its name or on lines below it: none of them is a child.

``Mira Vost: Ana Vost (mom) / Tom Oak (grandpa)``, or ``Mira Vost`` over ``Ana Vost (mom) 555-0104``. They are known by
a word for a grown-up of a family beside their own name, on most lines, and by what stands before or above them: a child
shares a family name with them, is known by its own, or is no less whole. Below the name of a group stand children, each
with who fetches it (``fetched``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.headings import heading_reason
from namewright.roster.kin import GROWN_UPS, SCHOOLS
from namewright.roster.known import is_given
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.prose import Aside
from namewright.roster.shares import share
from namewright.roster.vocabulary import TITLES, fold, word_set
from namewright.store import keeps_names

_SIGN = pattern(r"\s?:\s+|\s+[-–—=]\s+|\s?(?:->|→|⇒)\s?")
_PHONE = pattern(r"(?:\(\d{2,5}\)\s*)?[+]?\d[\d\s()./-]{4,}\d")
_PARTS = pattern(r"\s*[/,;&+•·]\s*")
_IN_BRACKETS = pattern(r"([^()\[\]]*[^\W\d_.][^()\[\]]*)[(\[]([^()\[\]]{2,40})[)\]]\s*")
_ENDED = pattern(r"(.*[^\W\d_.])(?:\s*,\s*|\s+[-–—]\s+|\s+)([^\W\d_][^\s,]*)")
_KIN = (GROWN_UPS - SCHOOLS) | word_set("""
    sitter, au pair, godmother, godfather, stepmum, neighbor, neighbour, canguro, cuidadora, ninera, madrina, padrino,
    vecina, vecino, marraine, parrain, baby-sitter, voisine, voisin, belle-mere, beau-pere,
    tagesmutter, patentante, patenonkel, stiefvater, stiefmutter, nachbarin, nachbar, kindermadchen,
    vicina, vicino, patrigno, matrigna, ama, baba, madrinha, padrinho, vizinha, vizinho, padrasto, madrasta""")
_BRACKETS = pattern(r"[(\[]([^()\[\]]{2,40})[)\]]")
_SAID = message("roster.said_below")
_FEWEST, _MOST_WORDS, _MOST_BELOW = 3, 5, 5
_SOME, _HALF, _MOSTLY, _NEARLY_ALL = 0.3, 0.5, 0.6, 0.8
_LONGEST = 200


class _Block(NamedTuple):
    """What may be a child, with the line it stands on (0-based), and the names of the adults beside or below it."""

    at: int
    child: str
    adults: Sequence[str]


def without_fetchers(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without adults behind children, and those that stand below these, where that is sure."""
    texts = ["" if len(line.text) > _LONGEST or any(sign in line.text for sign in COLUMN_SIGNS) else line.text
             for line in lines]
    filled = [at for at, text in enumerate(texts) if any(map(is_letter, text))]
    kin = _words_for_adults([texts[at] for at in filled])
    behind = [block for at in filled if (block := _with_adults(at, texts[at], kin))] if kin else []
    if len(behind) >= max(_FEWEST, _MOSTLY * len(filled)) and _belong(behind):
        found = {block.at: block.child for block in behind}
        return [line.without(line.text.partition(found[at])[2], found[at]) if at in found else line
                for at, line in enumerate(lines)], []
    below = _below(texts, filled, kin) if kin else {}
    if len(below) < _FEWEST or not _stand_below(texts, filled, below):
        return list(lines), []
    return ([line for at, line in enumerate(lines) if at not in below],
            [Aside(lines[at], (_SAID,)) for at in below])


def _words_for_adults(texts: Sequence[str]) -> frozenset[str]:
    """Return the words for adults that a list has: those known, and where most in brackets are, the small ones there.

    None are returned where too few are known.
    """
    if sum(map(_names_an_adult, texts)) < _FEWEST:
        return frozenset()
    inside = [words for text in texts for words in _BRACKETS.findall(text) if any(map(is_letter, words))]
    known = sum(_last(words) in _KIN for words in inside)
    often = Counter(map(fold, inside))
    if known < _HALF * len(inside):
        return _KIN
    return _KIN | {_last(words) for words in inside
                        if begins_small(words) or (often[fold(words)] > 1 and not is_given(words))}


@keeps_names(1024)
def _names_an_adult(text: str) -> bool:
    return any(fold(word.strip("()[],.;:")) in _KIN for word in text.split())


def _last(words: str) -> str:
    return fold(words.split()[-1].strip(".,")) if words.split() else ""


def _below(texts: Sequence[str], filled: Sequence[int], kin: frozenset[str]) -> dict[int, str]:
    """Return the adults by their lines; one by a word that nobody knows follows another and is set in or has a number.

    Elsewhere what stands beside it may be said of a child: ``Mira Vost (new)``.
    """
    found: dict[int, str] = {}
    for at in filled:
        follows = at - 1 in found and (texts[at][0].isspace() or _PHONE.search(texts[at]) is not None)
        if name := _adult(texts[at], kin if follows else _KIN):
            found[at] = name
    return found


def _with_adults(at: int, text: str, kin: frozenset[str]) -> _Block | None:
    """Return the child of a line behind whose sign stand adults alone, None where others do."""
    sign = _SIGN.search(text)
    child = text[: sign.start()].strip() if sign else ""
    if not sign or not _may_be_a_child(child):
        return None
    adults = _adults(text[sign.end() :], kin)
    return _Block(at, child, adults) if adults else None


def _adults(text: str, kin: frozenset[str]) -> list[str]:
    """Return the names of adults that a text holds and nothing else: ``Ana Vost (mom) / Tom Oak, grandpa``."""
    found: list[str] = []
    waiting = ""  # a name behind which the word for it may follow a comma
    for part in filter(None, _PARTS.split(_PHONE.sub(" ", text).strip(" .,;"))):
        if waiting and fold(part) in kin:
            found.append(waiting)
            waiting = ""
        elif waiting:
            return []
        elif named := _adult(part, kin):
            found.append(named)
        elif is_titled(part) and "(" not in part:
            waiting = part
        else:
            return []
    return [] if waiting else found


def _adult(text: str, kin: frozenset[str]) -> str:
    """Return the name of an adult that is all of a text, with the word for it, empty where it is something else."""
    bare = _PHONE.sub(" ", strip_numbering(text)).strip(" ,;–—-")
    match = _IN_BRACKETS.fullmatch(bare) or _ENDED.fullmatch(bare)
    if not match or not _is_kin(match[2], kin, in_brackets=bare.endswith((")", "]"))):
        return ""
    name = match[1].strip(" ,–—-")
    words = name.split()
    return name if 0 < len(words) <= _MOST_WORDS and is_titled(name) and not any(
        char in ":/;" or char.isdigit() for char in name) and kin.isdisjoint(map(fold, words)) else ""


def _is_kin(words: str, kin: frozenset[str], *, in_brackets: bool) -> bool:
    """Say whether words are for a grown-up of a family; out of brackets they are small, or no name."""
    return _last(words) in kin and len(words.split()) < _FEWEST and (
        in_brackets or begins_small(words) or not is_given(words))


def _may_be_a_child(text: str) -> bool:
    """Say whether words may be a child, with something beside it in brackets perhaps: ``Mira Vost (new)``."""
    if any(_last(words) in _KIN for words in _BRACKETS.findall(text)):
        return False
    bare = _BRACKETS.sub(" ", text).strip()
    words = bare.split()
    return (0 < len(words) <= _MOST_WORDS and is_titled(bare) and not any(map(str.isdigit, bare))
            and not any(char in "()[]:/;" for char in bare) and (_KIN | TITLES).isdisjoint(map(fold, words))
            and any(map(is_letter, bare)) and heading_reason(bare) is None)


def _belong(blocks: Sequence[_Block], *, called: bool = False) -> bool:
    """Say whether adults belong to those before them, who are children and no groups of children.

    Below Violet and Rose may stand children, unless most have a number that they are ``called`` by.
    """
    children = [block.child for block in blocks]
    words = [frozenset(fold(block.child).replace(",", " ").split()) for block in blocks]
    shared = share(not own.isdisjoint(fold(" ".join(block.adults)).replace(",", " ").split())
                   for own, block in zip(words, blocks, strict=True))
    if shared >= _SOME:
        return True
    known, whole = share(map(_is_known, children)), share(len(own) > 1 for own in words)
    adults = share(_is_known(adult) for block in blocks for adult in block.adults)
    if whole < _HALF and not called:
        return False
    return known >= _HALF or (whole >= _NEARLY_ALL and known >= adults)


def _is_known(name: str) -> bool:
    return any(is_given(word) for word in name.replace(",", " ").split())


def _stand_below(texts: Sequence[str], filled: Sequence[int], below: Mapping[int, str]) -> bool:
    """Say whether adults stand below nearly all other lines, a few of them below each."""
    blocks: list[_Block] = []
    lone = 0
    for at in (at for at in filled if at not in below):
        following: list[str] = []
        while (here := at + 1 + len(following)) in below:
            following.append(below[here])
        child = strip_numbering(texts[at])
        if 0 < len(following) <= _MOST_BELOW and _may_be_a_child(child):
            blocks.append(_Block(at, child, following))
        elif following or blocks:  # what stands above the first may be a title
            lone += 1
    held = sum(len(block.adults) for block in blocks)
    if len(blocks) < _FEWEST or held < len(below) or lone > (1 - _NEARLY_ALL) * len(blocks):
        return False
    set_in = share(texts[at][0].isspace() or strip_numbering(texts[at]) != texts[at] for at in below)
    called = share(bool(_PHONE.search(texts[at])) for at in below)
    parted = share(not texts[block.at - 1].strip() for block in blocks[1:])
    return max(set_in, called, parted) >= _NEARLY_ALL and _belong(blocks, called=called >= _NEARLY_ALL)
