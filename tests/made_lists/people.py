"""Invented children of many countries, from the first and last names of Faker's lists."""

from __future__ import annotations

import importlib
import pkgutil
import random
from dataclasses import dataclass
from functools import cache

import faker.providers.person as lists

from namewright.roster.known import is_known
from namewright.roster.vocabulary import fold

TUNED = (
    "en_US", "en_GB", "en_IE", "en_NZ", "es_ES", "es_MX", "es_CO", "fr_FR", "fr_CA", "fr_CH", "de_DE", "de_AT", "de_CH",
    "it_IT", "pt_BR", "pt_PT", "nl_NL", "cs_CZ", "da_DK", "fi_FI", "id_ID", "en_PK", "en_KE", "ro_RO", "bg_BG", "el_GR",
)
"""Places whose names were looked at while the reader was written."""
HELD = (
    "en_IN", "en_NG", "es_AR", "es_CL", "fr_BE", "nl_BE", "de_LI", "de_LU", "sv_SE", "no_NO", "is_IS", "et_EE", "hr_HR",
    "sk_SK", "sl_SI", "tr_TR", "az_AZ", "uz_UZ", "zu_ZA", "yo_NG", "sw", "tw_GH", "lt_LT", "lv_LV", "ru_RU", "uk_UA",
    "hy_AM", "ka_GE", "ar_SA", "he_IL",
)
"""Places kept apart until the end."""
FURTHER = ("vi_VN", "pl_PL", "tr_TR", "fr_DZ", "hu_HU", "zh_CN", "ja_JP", "ig_NG", "ha_NG", "ga_IE", "fr_QC", "es_CA")
"""Places looked at with the shapes that came last: Vietnamese, Polish, Turkish, Arabic and others in Latin letters."""


@dataclass(frozen=True, slots=True)
class Person:
    """One child: a given name of one word or of a known pair, and a family name."""

    given: str
    family: str
    place: str = ""


@cache
def names_of(place: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the first and the last names of a place, each once, sorted."""
    provider = importlib.import_module(f"faker.providers.person.{place}").Provider
    firsts, lasts = _gathered(provider, "first"), _gathered(provider, "last")
    return firsts, lasts if len(lasts) > 1 else _gathered(provider, "unisex_last") or lasts


def places() -> tuple[str, ...]:
    """Return every place that Faker has person lists of."""
    return tuple(sorted(module.name for module in pkgutil.iter_modules(lists.__path__)))


def _gathered(provider: object, part: str) -> tuple[str, ...]:
    found = {name for key in dir(provider) if key.startswith(part) and "name" in key
             for name in _strings(getattr(provider, key))}
    return tuple(sorted(name for name in found if _is_plain(name)))


def _strings(value: object) -> list[str]:
    return [one for one in value if isinstance(one, str)] if isinstance(value, (tuple, list, dict)) else []


def _is_plain(name: str) -> bool:
    """Leave out what is no name by itself: templates, initials and slips of the lists."""
    words = name.split(" ")
    return len(name) > 1 and all(word and word.replace("-", "").replace("'", "").replace("’", "").isalpha()
                                 and not word.isupper() for word in words) and name[0] == name[0].title()


INVENTED = "invented"
"""Stands for a place: names made of syllables that are on no list, as a list of names can never be whole."""
_ONSETS = (*"bdfghjklmnprstvyzx", "", "sh", "ch", "th", "kw", "br", "tr", "dl", "ny")
_VOWELS = ("a", "e", "i", "o", "u", "ai", "ei", "ou", "á", "é", "ö", "ã", "ia", "y")
_CODAS = ("", "", "n", "l", "r", "s", "m", "th")
_ENDINGS = ("", "", "ov", "ski", "sen", "ian", "wala", "berg", "ström", "oğlu", "aitis", "escu")


def invented(rng: random.Random) -> tuple[str, str]:
    """Return a given and a family name that are on no list."""
    return _unlisted(rng, ("",)), _unlisted(rng, _ENDINGS)


def _unlisted(rng: random.Random, endings: tuple[str, ...]) -> str:
    while True:
        syllables = (rng.choice(_ONSETS) + rng.choice(_VOWELS) + rng.choice(_CODAS) for _ in range(rng.randrange(2, 4)))
        name = "".join(syllables).capitalize() + rng.choice(endings)
        if len(name) > 3 and not is_known(name):  # shorter ones may be anything
            return name


def people(rng: random.Random, place: str, count: int, *, single: bool = True) -> list[Person]:
    """Draw children of a place, no word of a name twice among them; ``single`` leaves out given names of two words."""
    givens, families = names_of(place) if place != INVENTED else ((), ())
    drawn: list[Person] = []
    seen: set[str] = set()
    for _ in range(count * 50):
        if len(drawn) == count:
            break
        given, family = (rng.choice(givens), rng.choice(families)) if givens else invented(rng)
        words = fold(f"{given} {family}").split()
        if len(words) != len(set(words)) or not seen.isdisjoint(words) or (single and " " in given):
            continue
        seen.update(words)
        drawn.append(Person(given, family, place))
    return drawn
