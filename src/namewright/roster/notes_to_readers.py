"""Lines that speak to whoever reads the list: a greeting, a note, a wish, a cry.

``Hi Jo,``, ``Subs: please note``, ``Bitte nicht verteilen``, ``Bon courage !``. Some of these words are names, too
(Ola, Bitte), so signs and small letters tell. A child may stand before a wish: ``Mira Vost – no photos please``.
``words`` are those of the line, folded. Out of scope: greetings that may be a child (``letters``).
"""

from __future__ import annotations

from namewright.names.casing import begins_small
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.class_words import is_heading_word
from namewright.roster.heading_words import CLOSINGS, DEARS, GREETING_PHRASES, GREETINGS, NOTE_WORDS, PLEASE
from namewright.roster.known import is_family, is_given, is_known, lean
from namewright.roster.vocabulary import OF_THE, OTHER_PEOPLE, STATES, fold

_ASKED = tuple(f" {word} " for word in PLEASE)
_MARKED_GREETING = pattern(r"\s*Ol[áÁ](?:(?:\s+[^\W\d_]+)?\s*[,!]*\s*$|!|,?\s+[a-zß-ÿ])")  # no Ola writes it so
_IN_BRACKETS = pattern(r"\([^()]*\)")
SIGN = pattern(r"\s[-–—]\s|[:,;(\t]")
"""What parts a name from what is said behind it."""
_FEW, _MOST_OF_A_CRY = 2, 4


def greets(words: list[str], text: str) -> bool:
    """Say whether a line opens a letter: ``Hi Jo,``, ``Ciao Rita, ecco la mia classe``, ``Olá!``."""
    if " ".join(words[:2]).strip(",!") in GREETING_PHRASES or _MARKED_GREETING.match(text):
        return True
    if _greets_with_a_small_word(text):
        return True
    if words[0].strip(".,!¡") not in GREETINGS or (is_given(words[0].strip(".,!¡")) and not _greets_by_a_name(text)):
        return False
    alone = len(words) == 1 or (len(words) == _FEW and lean(words[1].strip(".,!")) >= 0 and is_known(words[1]))
    return alone or text.rstrip()[-1] in ",!" or any(word.islower() for word in text.split()[1:])


def _greets_with_a_small_word(text: str) -> bool:
    """``Chère collègue,``, ``Cari genitori,``: no name behind a word that greets, which may be one itself."""
    typed = text.strip().rstrip(",!: ").split()
    closed = text.rstrip()[-1:] in (",", "!")
    return len(typed) == _FEW and closed and fold(typed[0]) in DEARS and typed[1].islower() and (
        fold(typed[1]) not in PARTICLES and not is_given(typed[1]))


def _greets_by_a_name(text: str) -> bool:
    """Say whether a word that is a name too greets: ``Olá, segue a lista``, and not ``Ola Berntsen, no pork``."""
    typed = _IN_BRACKETS.sub(" ", text).split()
    if not typed[0].strip("¡>* ")[:1].isupper() or sum(word.islower() for word in typed[1:]) < _FEW:
        return False
    named = len(typed[0].strip("¡>* ")) > 1 and typed[0][-1].isalpha() and typed[1][:1].isupper()
    return not named or (is_given(typed[1].strip(",")) and not is_family(typed[1].strip(",")) and typed[1][-1] == ",")


def may_greet(words: list[str]) -> bool:
    """Say whether two words may be a greeting or a rare name: ``Ola Xobrelsen``."""
    return len(words) == _FEW and words[0] in GREETINGS and not is_given(words[0]) and not is_known(words[1])


def is_note(words: list[str], text: str) -> bool:
    """Say whether a line is a note: ``Subs: please note``, ``Note: bring a hat``, ``Bitte nicht verteilen``."""
    if is_given(words[0].strip(".,!")):
        return False
    typed = text.split()
    small = sum(map(begins_small, typed[1:]))
    opening = words[0].strip(".,!") in NOTE_WORDS and (":" in words[1:2] or "!" in text or small > 0)
    return opening or (small > 0 and len(words) > _FEW and asks_kindly(" ".join(words))
                       and before_a_request(text) is None)


def may_be_a_cry(text: str) -> bool:
    """Say whether a line ends as a cry does and nothing in it is known of names: ``Viel Spaß!``; ``Mira NEU!`` is none.

    A word in small letters behind the first tells it, too: ``Bon courage !``.
    """
    if not text.rstrip().endswith("!"):
        return False
    words = [bare for word in text.split() if (bare := word.strip("!¡.,"))]
    if not 0 < len(words) <= _MOST_OF_A_CRY or fold(words[-1]) in STATES:
        return False
    if len(words) == 1:  # in a chat children are called so: Xobrel!
        return text.lstrip().startswith("¡") or fold(words[0]) in CLOSINGS
    small = any(map(begins_small, words[1:]))
    return not is_given(words[0]) if small else not any(map(is_known, words))


def asks_kindly(words: str) -> bool:
    """Say whether folded words have one that asks: ``please``, ``bitte``."""
    said = f" {words} ".replace(",", " ").replace("!", " ")
    return any([word in said for word in _ASKED])


def before_a_request(text: str) -> str | None:
    """Return what stands before a sign and a request, if it is written as a name: ``Mira Vost – no photos please``."""
    text = strip_numbering(text)
    signs = [match for match in SIGN.finditer(text) if not asks_kindly(fold(text[: match.start()]))]
    before = text[: signs[-1].start()].replace(",", " ").split() if signs else []
    if len(before) < _FEW or any(begins_small(word) and fold(word) not in OF_THE for word in before):
        return None
    about = any(is_heading_word(fold(word)) or fold(word) in OTHER_PEOPLE for word in before)
    return None if about else " ".join(before)
