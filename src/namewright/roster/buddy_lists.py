"""Pairs below a title that names another class, ``Reading buddies with Ms. Vale's 4th graders``: who is ours is asked.

In ``Kian - Theo & Milo`` one side is of the class and the other is not; nothing in the line tells which, so nobody is
made of either side before somebody says, once for all pairs. The title is a heading. Pairs without such a title are
two children each (``several``), and a table of buddies has titles of its own (``buddies``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.buddies import BETWEEN, is_of_buddies
from namewright.roster.commas import BRACKETS
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import CLASS_OPENINGS, PLACES
from namewright.roster.known import is_given
from namewright.roster.names_in_text import BETWEEN_NAMES
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.vocabulary import TITLES, fold, word_set

_PARTNERS = word_set("""
    partner, partners, companeros, companeras, parejas, binome, binomes, tandem, tandems, compagni, compagne, coppie,
    companheiros, companheiras, pares, duplas, parrainage, patenschaft, patenschaften, apadrinamiento, tutorat,
    lesepartner, lesefreunde""")
"""Further words for children who do something two by two; beside a word for another class only."""
_YOUNG = word_set("buddy, buddies") | _PARTNERS
_OF_A_CLASS = CLASS_OPENINGS | PLACES | TITLES | word_set("""
    grade, grader, graders, year, years, class, classes, klassler, klassen, jahrgang, stufe, curso, cursos, ano, anno,
    anni, niveau, quinta, quarta, terza, seconda, cuarto, quinto, sexto, tercero, segundo, terceiro, fourth, fifth,
    sixth, third, second, cp, ce1, ce2, cm1, cm2, vierten, dritten, zweiten, quarto, primaria""")
_PAIRED = pattern(r"(?P<before>[^\d\t|:]{2,60}?)\s*(?:\s[-–—=]\s|→|⇒|->|=>|&|\+|:\s|/)\s*(?P<behind>[^\t|:]{2,80})")
_LABELLED = pattern(r":\s*\S|\s[-–—=]\s.*[,;&]")  # Tutor: Kian
_OF_A_BAKER = "pâte"  # à modeler
_TWO = (message("roster.two_children"),)
_MORE = (message("roster.several"), message("roster.one_each"))
_LONGEST_TITLE = 100  # characters
_OVER_PAIRS = "Name\tFull name"
"""Over two columns of whole names of which nothing tells who is of the class."""
_FEWEST = 2  # pairs
_MOST_TITLES = 3  # lines above the first pair


class _Pair(NamedTuple):
    """What stands on both sides of the sign of a line."""

    before: str
    behind: str


def from_buddy_lists(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that stand for themselves, and the title; pairs are a table of two columns, which is asked.

    Where other lines stand between them, each pair is a question of its own.
    """
    filled = [at for at, line in enumerate(lines) if line.text.strip()]
    title = next((at for at in filled[:_MOST_TITLES] if _names_another_class(lines[at].text)), None)
    if title is None:
        return list(lines), []
    pairs = {at: found for at in filled if at > title and (found := _pair(lines[at].text))}
    if not pairs:
        return list(lines), []
    told = Aside(lines[title], (message("roster.heading_title"),))
    others = [line for at, line in enumerate(lines) if at not in pairs and at != title]
    if len(pairs) >= _FEWEST and not any(line.text.strip() for line in others):
        rows = [lines[at]._replace(text="\t".join(found)) for at, found in pairs.items()]
        return [rows[0]._replace(text=_OVER_PAIRS), *rows], [told]
    asides = [Aside(lines[at], _TWO if len(BETWEEN_NAMES.split(found.behind)) == 1 else _MORE, asked=True)
              for at, found in pairs.items()]
    return others, [told, *asides]


def _names_another_class(text: str) -> bool:
    """Say whether a line speaks of buddies, and of a class, a grade or a teacher, and holds no pair itself."""
    words = [word for word in BETWEEN.split(fold(strip_numbering(text))) if word]
    named = bool(words) and is_given(words[0]) and not _is_a_partner(words[0])  # Emma Pate
    if len(text) > _LONGEST_TITLE or _OF_A_BAKER in text.lower() or named or _pair(text) or _LABELLED.search(text):
        return False
    of_class = any(word in _OF_A_CLASS or any(map(str.isdigit, word)) for word in words)
    older = any(is_of_buddies(word) and word not in _YOUNG for word in words)
    return older or (of_class and any(map(_is_a_partner, words)))


def _is_a_partner(word: str) -> bool:
    return is_of_buddies(word) or word in _PARTNERS


def _pair(text: str) -> _Pair | None:
    """Return what stands on both sides of a sign, None where no name stands on either."""
    match = None if NAME_LABEL.match(text) else _PAIRED.fullmatch(strip_numbering(text))
    if match is None:
        return None
    pair = _Pair(match["before"].strip(), match["behind"].strip())
    names = [BRACKETS.sub(" ", name).strip() for name in (pair.before, *BETWEEN_NAMES.split(pair.behind))]
    return pair if all(may_be_a_name(name) and is_titled_name(name) for name in names) else None
