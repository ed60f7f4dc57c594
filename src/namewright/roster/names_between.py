"""The names between signs and words that part, ``Mia, Leo & Ava``: as they stand behind a label, or in a line.

``names_told`` returns them where nothing else stands there; an allergy or a letter of a day is no name, and ``Ana Ruiz
y Gómez`` is one. Whether the names are children is judged by those who ask (``labelled_groups``, ``lines_of_names``).
Out of scope: lines of which all others tell what a comma parts (``commas``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.patterns import pattern
from namewright.roster.known import is_given
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.shares import share
from namewright.roster.vocabulary import AND

PARTS = pattern(rf"\s*[,;，、+&/]\s*(?:(?:{AND})\s+)?|\s+(?P<and>{AND})\s+")
"""What parts names: a sign, a word for and, or both."""
PLACE = pattern(r"(\d{1,2})[.)]\s*([^\W\d_].*)")
"""A number that counts a name among the others: ``2. Leo``."""
BRACKETS = pattern(r"[(\[][^()\[\]]*[)\]]")
_INITIAL = pattern(r"\s[^\W\d_]\.$")
_FAMILY_SIGNS = frozenset(("y", "e"))  # Ruiz y Gómez
MOST_WHOLE = 0.75  # of whole names beside one whose family's name means something else, too: Kashish Pai


def names_told(text: str) -> tuple[str, ...]:
    """Return the names that a text has between signs and words that part, none where it has something else."""
    names = names_between(text)
    return names if are_names(names) else ()


def names_between(text: str) -> tuple[str, ...]:
    """Return what stands between the signs, be it names or not, without the places that count them."""
    return _without_places(parts_between(text))


def parts_between(text: str) -> tuple[str, ...]:
    """Return what stands between the signs as it is written, without the full stop at the end."""
    return tuple(_parts(_without_stop(text)))


def _without_places(names: tuple[str, ...]) -> tuple[str, ...]:
    """Return names without the places that are counted before them: ``1. Mira, 2. Leo``."""
    placed = [match for name in names if (match := PLACE.match(name))]
    counted = len(placed) == len(names) and [int(match[1]) for match in placed] == [*range(1, len(names) + 1)]
    return tuple(match[2] for match in placed) if counted else names


def are_names(names: Sequence[str], least: float = MOST_WHOLE) -> bool:
    """Say whether all may be names; ``least`` is how many of them must be whole where one is another word, too."""
    if not names or not all(names) or not all(map(is_titled_name, names)) or any(map(_is_a_day_letter, names)):
        return False
    whole = share(may_be_a_name(name) and " " in name for name in names) >= least
    return all(may_be_a_name(name) or (whole and " " in name and may_be_a_name(name.split()[0])) for name in names)


def _is_a_day_letter(name: str) -> bool:
    """Say whether a part is one capital letter, as days of the week are cut: ``Mira Vost - M/W/F``."""
    return len(name) == 1 and name.isupper()


def _without_stop(text: str) -> str:
    """Return names without the full stop behind the last; that of an initial stays: ``Mira V., Zoe M.``."""
    bare = text.rstrip()
    return bare if _INITIAL.search(bare) else bare.rstrip(" .")


def _parts(text: str) -> Iterator[str]:
    """Yield the parts between signs and words that part; ``Ana Ruiz y Gómez`` is one name."""
    if ";" in text and "," in text:  # Chen, Mia; Park, Leo
        return
    masked, at = BRACKETS.sub(lambda match: "x" * len(match[0]), text), 0
    for sign in PARTS.finditer(masked):
        behind = masked[sign.end() :].partition(",")[0].split()
        joined = sign["and"] in _FAMILY_SIGNS and " " in text[at : sign.start()].strip()
        if joined and len(behind) == 1 and not is_given(behind[0]):
            continue
        yield text[at : sign.start()].strip()
        at = sign.end()
    yield text[at:].strip()
