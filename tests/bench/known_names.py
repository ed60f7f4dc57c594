"""The reader's lists of known names (``roster/data/known-names.txt``), made anew from their sources.

Sources: the 1990 census of the United States (public domain; ``dist.*`` as in the Python package names 0.3.0, MIT) and
the person lists of Faker (MIT), typed by its contributors, many from statistics offices. ``python
tests/bench/known_names.py > src/namewright/roster/data/known-names.txt`` writes the file.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterable, Sequence
from importlib.metadata import version
from importlib.util import find_spec
from itertools import groupby
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from made_lists.people import names_of, places
from namewright.names.particles import PARTICLES
from namewright.roster.vocabulary import fold

SURNAMES = 15_000
_CLEARLY = 4
_CENSUS_CLEARLY = 8.0
_IBERIAN = ("es", "pt")
_HEAD = """\
# Names that say which part of a name a word is: most often a given name, most often a family name, or either; those
# of the given names that are family names, too; given and family names of Spain, Portugal and the Americas (two given
# names are often one there); pairs that are one.
# Folded: small letters without marks; a line holds a part, a tab, and the words with one opening of two letters. Made
# by tests/bench/known_names.py from
#   - the 1990 census of the United States, all first names and the {surnames:,} commonest surnames (public domain;
#     dist.female.first, dist.male.first and dist.all.last as in the Python package names 0.3.0, MIT);
#   - the person lists of Faker {faker} (copyright (c) 2012 Daniele Faraglia, MIT licence), typed by its contributors,
#     many of them from statistics offices: {places} places.
# The MIT licence: permission is hereby granted, free of charge, to any person obtaining a copy of this software and
# associated documentation files (the "Software"), to deal in the Software without restriction, including without
# limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the
# Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:
# the above copyright notice and this permission notice shall be included in all copies or substantial portions of
# the Software. THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT
# NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO
# EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN
# ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER
# DEALINGS IN THE SOFTWARE.
"""


def gathered(some: Sequence[str]) -> dict[str, set[str]]:
    """Return the sets of the file, from the census and the lists of these places."""
    given, family = _census()
    found: dict[str, set[str]] = {"iberian-given": set(), "iberian-family": set(), "pairs": set()}
    for place in some:
        firsts, lasts = names_of(place)
        given.update(_words(firsts))
        family.update(_words(lasts))
        found["pairs"].update(_pairs(firsts))
        if place.startswith(_IBERIAN):
            found["iberian-given"].update(_words(firsts))
            found["iberian-family"].update(_words(lasts))
    both = given.keys() & family.keys()
    mostly_given = {word for word in both if given[word] >= _CLEARLY * family[word]}
    mostly_family = {word for word in both if family[word] >= _CLEARLY * given[word]}
    found["seldom-family"] = mostly_given
    found["given"] = given.keys() - both | mostly_given
    found["family"] = family.keys() - both | mostly_family
    found["either"] = both - mostly_given - mostly_family
    return found


def _census() -> tuple[Counter[str], Counter[str]]:
    """Return how often the census has a word as each part: once or, where that is far the commoner, many times."""
    spec = find_spec("names")
    folder = Path(spec.origin).parent if spec and spec.origin else Path()
    firsts = Counter[str]()
    for sex in ("female", "male"):
        firsts.update({word: share / 2 for word, share in _shares(folder / f"dist.{sex}.first")})
    lasts = dict(_shares(folder / "dist.all.last"))
    common = set(list(lasts)[:SURNAMES])
    given = Counter({word: 1 for word, share in firsts.items() if share * _CENSUS_CLEARLY > lasts.get(word, 0.0)})
    family = Counter({word: 1 for word in common if lasts[word] * _CENSUS_CLEARLY > firsts[word]})
    return given, family


def _shares(path: Path) -> Iterable[tuple[str, float]]:
    for line in path.read_text().splitlines():
        word, share, *_ = line.split()
        yield word.lower(), float(share)


def _words(names: Iterable[str]) -> set[str]:
    """Return the words of names, without the particles."""
    return {word for name in names for word in fold(name).split() if len(word) > 1 and word not in PARTICLES}


def _pairs(names: Iterable[str]) -> set[str]:
    folded = (fold(name).split() for name in names)
    return {"_".join(words) for words in folded if len(words) == 2 and not PARTICLES.intersection(words)}


def main() -> None:
    """Print the file."""
    found = gathered(places())
    print(_HEAD.format(surnames=SURNAMES, faker=version("faker"), places=len(places())), end="")
    for part, words in sorted(found.items()):
        for _, of_one_opening in groupby(sorted(words), key=lambda word: word[:2]):
            print(f"{part}\t{' '.join(of_one_opening)}")


if __name__ == "__main__":
    main()
