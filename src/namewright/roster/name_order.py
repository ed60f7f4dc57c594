"""Names whose family name stands first: Vietnamese, Chinese and Korean ones in Latin letters.

A line is read so where its first word is a family name common there and all others are syllables of that language
and no given name known elsewhere. The lists and the syllables are common practice, written down by hand: fourteen of
the Vietnamese names alone are said to cover nine families in ten. Whole lists in that order (Hungarian ones too) are
known by the lists of names (``unfolding``).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from enum import StrEnum

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.known import ends_as_family, is_given, is_known, lean
from namewright.roster.vocabulary import fold, word_set

BOTH_BY_COMMA = pattern(r"(?:[^\w,]|[\d_])*[^\W\d_][^,]*,(?:[^\w,]|[\d_])*[^\W\d_][^,]*")
"""Both parts of a name and one comma between them: ``Family, Given``."""


class Order(StrEnum):
    """Which part of a name stands first in a list without columns."""

    UNSAID = "unsaid"
    GIVEN = "given"
    MOSTLY_GIVEN = "mostly given"
    ALWAYS_GIVEN = "given, of Vietnamese names too"
    FAMILY = "family"


class Habits(NamedTuple):
    """How a list writes its names: which part stands first, what a comma parts, where marks are left out."""

    order: Order = Order.UNSAID
    family_by_comma: bool = False
    remarks_by_comma: bool = False
    same_by_comma: bool = False
    """That the same remarks come again behind its commas: they are remarks behind one name, too."""
    surely_given: bool = False
    """That the given name stands first by the names themselves, though a title may promise the family name."""
    comma_guessed: bool = False
    """That a comma parts family and given name is how such lists are mostly written, and no name of it tells."""
    plain: frozenset[str] = frozenset()
    """Names it writes without marks, where one that is cut short is written out."""


UNSAID = Habits()

_VIETNAMESE = word_set("""
    nguyen, tran, le, pham, huynh, hoang, phan, vu, vo, dang, bui, do, ho, ngo, duong, ly, dinh, truong, trinh,
    doan, luong, luu, trieu, quach, vuong, lam, mai, dao, cao, thai, chau, ta, kieu, phung, tang, la, khuu, than""")
_CHINESE = word_set("""
    wang, li, zhang, liu, chen, yang, huang, zhao, wu, zhou, xu, sun, ma, zhu, hu, guo, he, lin, gao, luo, zheng,
    liang, xie, song, tang, deng, han, feng, cao, peng, zeng, xiao, tian, dong, pan, yuan, cai, jiang, yu, du, ye,
    cheng, wei, su, lu, ding, ren, shen, yao, zhong, cui, tan, fan, shi, liao, wan, jia, xia, fu, bai, zou, xiong,
    meng, qin, qiu""")
_KOREAN = word_set("""
    kim, lee, yi, park, bak, choi, choe, jung, jeong, chung, kang, gang, cho, jo, yoon, yun, jang, chang, lim, im,
    han, oh, seo, suh, shin, sin, kwon, gwon, hwang, ahn, an, song, ryu, yoo, yu, hong, jeon, jun, ko, go, moon,
    mun, yang, son, bae, baek, paik, heo, hur, nam, shim, noh, roh, ha, kwak, sung, cha, joo, ju, woo, koo, gu, min,
    jin, na, ji, eom""")
_STANDING_FIRST = _VIETNAMESE | _CHINESE | _KOREAN
_SYLLABLE_VI = (  # this and the next are compiled by re, which keeps them, where a list first has such a family name
    r"(?:ngh|ng|nh|ch|gh|gi|kh|ph|qu|th|tr|[bcdghklmnprstvxđ])?[aeiouy]{1,3}(?:ch|ng|nh|[cmnptiuoy])?")
_SYLLABLE_ZH = (
    r"(?:zh|ch|sh|[bpmfdtnlgkhjqxrzcsyw])?"
    r"(?:iang|iong|uang|ang|eng|ing|ong|iao|ian|uai|uan|ai|ei|ao|ou|an|en|in|un|ia|ie|iu|ua|ue|ui|uo|er|[aeiouv])"
)
_SYLLABLE_KO = (r"(?:ch|kk|tt|pp|ss|jj|sh|[gkndtrlmbpsjhyw])?"
                r"(?:yeo|yae|eo|ae|oo|ee|eu|ui|ya|ye|yo|yu|wa|wi|wo|oe|ou|u|a|e|i|o)(?:ng|[kgntlmp])?")
_GIVEN_ZH = f"(?:{_SYLLABLE_ZH}){{1,2}}"
_GIVEN_KO = f"{_SYLLABLE_KO}[- ]?{_SYLLABLE_KO}"
_MAX_WORDS = 4
_CLEARLY, _TURNED = 3, 0.3  # times as many names must say so as say otherwise, and this share of all of them
_HALF, _MOSTLY = 0.5, 0.6  # of the names, where many or only two tell
_LONGEST_SYLLABLE = 4
_ONLY_FAMILY = word_set("nguyen, tran, pham, huynh, truong, hoang, phan, trinh, ngo, duong")


def order_of(names: Sequence[str]) -> Order:
    """Return what the names of a list tell of their order by their first and last words, where the lists know both.

    Where few are known whole, a family name before a word that may be given tells, or a given name behind one.
    """
    wholes = [words for words in map(str.split, names) if 1 < len(words) <= _MAX_WORDS
              and all(word[0].isalpha() for word in words)]
    leads = _leads(wholes)
    turned = sum(one < 0 < two for one, two in leads)
    straight = sum(one > 0 > two for one, two in leads)
    if turned > 1 and turned > _CLEARLY * straight and turned >= _TURNED * len(leads):
        return Order.FAMILY
    native = any(_stands_first(words) for words in wholes)
    if straight > 1 and straight > _CLEARLY * turned:
        return Order.MOSTLY_GIVEN if native else Order.ALWAYS_GIVEN
    if not native and sum(map(_stands_last, wholes)) > 1:
        return Order.ALWAYS_GIVEN
    back, on = sum(one < two for one, two in leads), sum(one > two for one, two in leads)
    if back > 1 and back > _CLEARLY * on and back >= (_HALF if back >= _CLEARLY else _MOSTLY) * len(leads):
        return Order.FAMILY
    return Order.UNSAID


def are_surely_given_first(names: Sequence[str]) -> bool:
    """Say whether most names of a list tell by both of their ends that the given name stands first."""
    wholes = [words for words in map(str.split, names) if 1 < len(words) <= _MAX_WORDS]
    leads = [(lean(words[0]), lean(words[-1])) for words in wholes if all(word[0].isalpha() for word in words)]
    turned = sum(one < 0 < two for one, two in leads)
    straight = sum(one > 0 > two for one, two in leads)
    return straight > _CLEARLY * max(1, turned) and 2 * straight >= len(leads)


def _leads(wholes: Sequence[list[str]]) -> list[tuple[int, int]]:
    """Return what the first and last words of names lean to.

    Where some are read family first by themselves and the others rather the other way round, or are most of the list,
    the others alone tell.
    """
    leads = [(_lean(words[0]), _lean(words[-1])) for words in wholes]
    others = [lead for lead, words in zip(leads, wholes, strict=True) if family_standing_first(words) is None]
    given = sum(one > two for one, two in others) > sum(one < two for one, two in others)
    most = len(others) > len(leads) - len(others)
    return others if given or most else leads


def _lean(word: str) -> int:
    """Return what a word leans to: a family name, too, where it is on no list and ends as one."""
    return -1 if ends_as_family(word) else lean(word)


def _stands_first(words: Sequence[str]) -> bool:
    """Say whether a name has a Vietnamese family name in front, and none behind."""
    return _plain(words[-1]) not in _VIETNAMESE and _is_vietnamese(words, *_folded(words))


def _stands_last(words: Sequence[str]) -> bool:
    """Say whether a name has a Vietnamese family name behind, with its marks, and none in front."""
    return _plain(words[0]) not in _VIETNAMESE and _plain(words[-1]) in _VIETNAMESE and _is_marked(words[-1])


def are_both_families(words: Sequence[str]) -> bool:
    """Say whether both words of a name are Vietnamese family names, so that only its list tells its order."""
    return len(words) == 2 and all(_plain(word) in _VIETNAMESE for word in words)


def _folded(words: Sequence[str]) -> tuple[str, list[str]]:
    return _plain(words[0]), [_plain(word) for word in words[1:]]


def _plain(word: str) -> str:
    """Return a word folded, the Vietnamese letter đ, which is no d with a mark, as a d."""
    return fold(word).replace("đ", "d")


def may_be_turned(words: Sequence[str]) -> bool:
    """Say whether two words are no more a family name and a given one than the other way round: ``Li Wen``."""
    sure = any("-" in word or _is_marked(word) for word in words)
    return len(words) == 2 and lean(words[0]) >= lean(words[1]) and not sure


def family_standing_first(words: Sequence[str]) -> tuple[str, str, str] | None:
    """Return given, middle and family name of a name whose family name stands first, None for any other.

    In Vietnamese the last word is the given name, and those between are told as left out.
    """
    if not 2 <= len(words) <= _MAX_WORDS or _plain(words[0]) not in _STANDING_FIRST:
        return None
    first, rest = _folded(words)
    if _is_vietnamese(words, first, rest):
        return words[-1], " ".join(words[1:-1]), words[0]
    elsewhere = any(_is_known_elsewhere(word) for word in words[1:] if "-" not in word)
    if elsewhere or rest[-1] in _VIETNAMESE | _CHINESE | _KOREAN:
        return None
    together = " ".join(rest)
    two = "-" in together or " " in together or len(together) > _LONGEST_SYLLABLE
    if first in _KOREAN and two and re.fullmatch(_GIVEN_KO, together):
        return " ".join(words[1:]), "", words[0]
    if first in _CHINESE and len(words) < _MAX_WORDS and all(re.fullmatch(_GIVEN_ZH, word) for word in rest):
        return " ".join(words[1:]), "", words[0]
    return None


def _is_vietnamese(words: Sequence[str], first: str, rest: Sequence[str]) -> bool:
    if first not in _VIETNAMESE or not all(re.fullmatch(_SYLLABLE_VI, word) for word in rest):
        return False
    if first in _ONLY_FAMILY:
        return len(words) > 2 or _is_marked(" ".join(words)) or not is_given(words[1])
    if len(words) > 2 and _is_marked(words[0]):
        return True
    return rest[-1] not in _ONLY_FAMILY and (_is_marked(words[0]) or (len(words) > 2 and rest[0] in ("van", "thi")))


def _is_known_elsewhere(word: str) -> bool:
    return lean(word) > 0 or (len(word) > _LONGEST_SYLLABLE and is_known(word))


def _is_marked(word: str) -> bool:
    """Say whether a word is written with marks or letters of Vietnamese."""
    return any(char in "ăâđêôơưĂÂĐÊÔƠƯ" or 0x1EA0 <= ord(char) <= 0x1EF9 for char in word)
