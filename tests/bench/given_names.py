"""The given names a page may add to those of a class (``practice/given_names.txt``), made anew from their source.

Source: the person lists of Faker (MIT), typed by its contributors, many from statistics offices. ``python
tests/bench/given_names.py > src/namewright/practice/given_names.txt`` writes the file. A name is taken where
the more places have it the longer the lists of its language are (``_LANGUAGES``; an obscure name is on few), and where
it is easy to read: one word of three to eight letters, at most three beats, no three consonants together, no unkind
word in it, and no second meaning or heavy history (``_NEVER``, by hand).
"""

from __future__ import annotations

import re
import sys
from collections import Counter
from importlib.metadata import version
from pathlib import Path
from unicodedata import normalize

sys.path.insert(0, str(Path(__file__).parents[1]))

from made_lists.people import names_of, places
from namewright.names.beats import Spoken, spoken_beats
from namewright.names.clusters import clusters
from namewright.practice.unkind import is_unkind
from namewright.roster.known import lean

_SHORTEST, _LONGEST, _BEATS = 3, 8, 3
_LANGUAGES = {
    "de": (5, "äöü"), "en": (5, ""), "es": (3, "áéíóúüñ"), "fr": (3, "àâçèéêëîïôûü"), "it": (2, "àèéìòù"),
    "nl": (5, "ë"), "pl": (1, "ąćęłńóśźż"), "pt": (2, "áâãàçéêíóôõú"), "sv": (5, "åäö"),
    "vi": (1, "ăâđêôơưàảãáạằẳẵắặầẩẫấậèẻẽéẹềểễếệìỉĩíịòỏõóọồổỗốộờởỡớợùủũúụừửữứựỳỷỹýỵ"),
}
"""In how many places a name of a language is known, at the least, and which letters it may have beside a to z."""
_NEVER = frozenset([
    "Adolf", "Adolfo", "Alexa", "Arian", "Arianne", "Bambi", "Benito", "Brandi", "Brandy", "Candy", "Che", "Dick",
    "Donald", "Elmo", "Elvis", "Fanny", "Fidel", "Gay", "Gian", "Ginger", "Isis", "Ísis", "Jane", "Jesus", "Jesús",
    "John", "Junior", "Karen", "Lenin", "Mercedes", "Messiah", "Osama", "Randi", "Randy", "Saddam", "Siri",
    "Socorro", "Stalin", "Thi", "Vladimir", "Willy",
])
_BARE = ("vi",)  # where a family name is often a given name as well
_HARD = re.compile("[bcdfghjklmnpqrstvwxzçñğşćłńśźż]{3}", re.IGNORECASE)
_HEAD = """\
# Given names that a page may add to those of a class, by language: known in several places, short and easy to read.
# Made by tests/bench/given_names.py from the person lists of Faker {faker} (copyright (c) 2012 Daniele Faraglia, MIT
# licence, whose whole text stands in roster/data/known-names.txt), typed by its contributors, many of them from
# statistics offices. Looked over by a native speaker: no.
"""


def names(language: str, known: Counter[str]) -> list[str]:
    """Return the names of a language, of its places."""
    own = {normalize("NFC", name) for place in places() if place.split("_")[0] == language
           for name in names_of(place)[0]}
    return sorted(name for name in own if known[name] >= _LANGUAGES[language][0] and name not in _NEVER
                  and (lean(name) > 0 or language in _BARE) and _is_easy(name, language))


def _is_easy(name: str, language: str) -> bool:
    letters = clusters(name)
    marked = _LANGUAGES[language][1]
    plain = re.fullmatch(f"[A-Z{marked.upper()}][a-z{marked}]+", name)
    beats = spoken_beats(tuple(letters), Spoken(language)).starts
    return (bool(plain) and _SHORTEST <= len(letters) <= _LONGEST and len(beats) <= _BEATS
            and not _HARD.search(name) and not is_unkind(name))


def main() -> None:
    """Print the file."""
    known = Counter(name for place in places() for name in names_of(place)[0])
    print(_HEAD.format(faker=version("faker")), end="")
    for language in sorted(_LANGUAGES):
        print(f"{language}\t{' '.join(names(language, known))}")


if __name__ == "__main__":
    main()
