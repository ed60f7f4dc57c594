"""What one folded word of a line may be: it opens the name of a class, stands in one, or stands in a heading.

``aula`` and ``vorschulgruppe`` open one; a level, a month or a letter stands beside, as in ``infantil b``. What
a line of such words is, is judged in ``headings`` and ``notes_to_readers``.
"""

from __future__ import annotations

from namewright.roster.header_words import HEADER_WORDS
from namewright.roster.heading_words import BESIDE_CLASS, CLASS_ENDINGS, CLASS_OPENINGS, HEADING_WORDS, LEVELS, TODAY
from namewright.roster.known import is_known
from namewright.roster.numbers import figure_inside
from namewright.roster.vocabulary import ANY_DAYS, MONTHS, OF_THE, SEASONS


def opens_as_class(word: str) -> bool:
    """Say whether a folded word may open the name of a class: ``Aula``, ``Vorschulgruppe``."""
    return word in CLASS_OPENINGS or is_compound(word)


def is_compound(word: str) -> bool:
    """Say whether a German word in one is a class or its room, and no family: ``Bärengruppe``, ``Erlenraum``."""
    return word.endswith(CLASS_ENDINGS) and word not in CLASS_ENDINGS and not is_known(word)


def is_heading_word(word: str) -> bool:
    """Say whether a word can stand in a heading; so can a number or a sign beside it."""
    counted = not any(map(str.isalpha, word)) or (any(map(str.isdigit, word)) and figure_inside(word) is None)
    return counted or word in HEADER_WORDS or word in HEADING_WORDS or word in TODAY


def is_beside_class(word: str) -> bool:
    """Say whether a folded word may stand in the name of a class or list: it is known, a number, a sign or a letter."""
    return (is_heading_word(word) or word in LEVELS or word in BESIDE_CLASS or word in OF_THE or len(word) == 1
            or word in MONTHS or word in ANY_DAYS or word in SEASONS or is_compound(word))
