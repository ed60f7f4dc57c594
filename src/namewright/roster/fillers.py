"""Words in a name's place that say that nobody is there, or show how a row is filled in.

``EMPTY``, ``noch frei``, ``(libre)`` hold a place that nobody has yet; ``Example Student`` is the first row of a form.
No child is called by such words alone. A word that is a name as well (``Free``, ``Frei``) is told where it is written
as no other name of the list is, in capitals or small letters alone, and asked about where it is written as a name.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.roster.beside import Reading
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import header_role
from namewright.roster.heading_words import EXAMPLES, FREE_SEATS
from namewright.roster.known import is_given, is_known
from namewright.roster.unlike import Unlike, perhaps_unlike
from namewright.roster.vocabulary import NAME_ROLES, fold

_SIGNS = " .,:;!?()[]<>*-–—_"
_SHORTEST = 2  # letters: X alone may be the first of a name


def is_filler(reading: Reading) -> bool:
    """Say whether nothing but such words stands where a child's name would."""
    parts = [fold(part).strip(_SIGNS) for part in (reading.given, reading.family, reading.goes_by) if part]
    whole = " ".join(parts)
    if len(whole) < _SHORTEST:
        return False
    free = FREE_SEATS.issuperset(parts) or whole in FREE_SEATS
    if free or _is_of_titles(reading):
        return True
    words = whole.split()
    return not EXAMPLES.isdisjoint(words) and (_is_an_example(words) or _is_called_an_example(reading))


def why_nobody(reading: Reading, others: Sequence[Reading]) -> Unlike:
    """Return why nobody was made of such words; those that are a name, too, and written as others are, are asked about.

    ``Frei`` is one in a list of ``Mira`` and ``Leo``, ``FREI`` is none there.
    """
    words = f"{reading.given} {reading.family}".split()
    if _is_called_an_example(reading):
        return perhaps_unlike(" ".join(words))
    named = len(words) == 1 and is_known(words[0]) and words[0].istitle()
    alike = named and any(part.istitle() for other in others for part in (other.given, other.family))
    return perhaps_unlike(words[0]) if alike else Unlike((message("roster.sentence"), message("roster.if_child")))


def _is_an_example(words: Sequence[str]) -> bool:
    """Say whether words, one of them for an example, are those of a row that shows how to write."""
    return all(word in EXAMPLES or word in CHILD_WORDS for word in words)


def _is_called_an_example(reading: Reading) -> bool:
    """Say whether a given name stands before such a word that is no family's: ``Max Beispiel``."""
    return is_given(reading.given) and fold(reading.family) in EXAMPLES and not is_known(reading.family)


def _is_of_titles(reading: Reading) -> bool:
    """Say whether titles stand where both parts of a name would: ``First``, ``Last``."""
    parts = (reading.given, reading.family)
    return all(header_role(part) in NAME_ROLES and not is_known(part) for part in parts)

