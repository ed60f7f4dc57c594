"""Children said to have left: ``Mia Vost: Owls → left us``, ``Leo Berg (moved away Sept)``, a cell ``weggezogen``.

Told, and not made, where the words stand alone in a cell or behind an arrow. In brackets, behind another sign or in
small letters at the end of a line they are a remark, and it is asked what they mean, as it is of words that may be of
the day alone or of a new home, and of a line on which more than one child may stand. A list of hardly anybody else is
made as it is, for who pastes it wants it so. Out of scope: who stands under a word for leavers (``leaver_blocks``).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.headers import header_role
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_known
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.prose import Aside
from namewright.roster.struck import struck_off
from namewright.roster.vocabulary import MONTHS, NAME_ROLES, fold, word_set

_GONE = word_set("""
    left us, has left, left school, left the school, left the class, left our school, moved away,
    has moved away, moved out of town, moved to another school, moved schools, changed schools, no longer here,
    no longer with us, no longer in class, withdrawn, unenrolled, disenrolled, transferred out,
    se ha mudado, se mudo, se ha ido, se fue, baja, dado de baja, dada de baja, ya no esta, ya no viene,
    cambio de escuela, cambio de colegio, trasladado, trasladada,
    a demenage, parti, partie, est parti, est partie, nous a quittes, a quitte l'ecole,
    a quitte l’ecole, a quitte la classe, radie, radiee, a change d'ecole, a change d’ecole, n'est plus la,
    n’est plus la,
    weggezogen, ist weggezogen, verzogen, abgemeldet, ausgetreten, nicht mehr da, nicht mehr dabei,
    hat gewechselt, schule gewechselt, schulwechsel, hat uns verlassen,
    trasferito, trasferita, si e trasferito, si e trasferita, ritirato, ritirata, ha cambiato scuola, non c'e piu,
    non c’e piu, ha lasciato la scuola,
    mudou de cidade, mudou de escola, mudou-se, saiu, saiu da escola, saiu da turma, ja nao esta, ja saiu,
    transferido, transferida, foi transferido, foi transferida, foi embora""")
_OF_A_DAY = word_set("""
    has left, gone, se ha ido, se fue, parti, partie, est parti, est partie, abgemeldet, saiu, ja saiu, foi embora,
    umgezogen, ist umgezogen, ha traslocato, moved, moved on, moved house, moved home, transferred""")
"""Which may be of the day alone, as in a column of who was fetched, or of a new home: asked about."""
_ANY = _GONE | _OF_A_DAY
_PLAIN = str.maketrans("áàâãäéèêíìóòôõöúùüç", "aaaaaeeeiiooooouuuc")
_BETWEEN = pattern(r"\s*([\t;|→⇒]|[-=]>|(?<=\s)>\s| {3,})\s*")
_SMALL = word_set("in, on, since, en, el, desde, le, depuis, im, am, seit, il, dal, em, a, de, des, to, nach")
_IN_BRACKETS = pattern(r"(?P<name>[^()\[\]]*[^\W\d_]\.?)\s*[(\[](?P<words>[^()\[\]]+)[)\]]\s*", needs="([")
_BY_A_SIGN = pattern(r"(?P<name>[^()\[\]:]*[^\W\d_]\.?)(?:\s+[-–—]\s*|\s[-–—]|,\s*|:\s)(?P<words>[^,:()]+)")
_TO_A_PLACE = pattern(r"\s(?:to|nach|à|a|ad|para|en|em|in|zu)\s+[^\W\d_a-zß-ÿ][^\s]*(?:\s+\S+){0,3}$")
_LONGEST, _MOST, _MOST_WORDS = 300, 0.5, 8


def stems_of(phrases: Iterable[str]) -> tuple[str, ...]:
    """Return the front of the longest word of each phrase: a text without any of them has none of the phrases."""
    return tuple(sorted({max(words.split(), key=len)[:6] for words in phrases}))


def have_a_stem(lines: Sequence[Line], stems: Sequence[str]) -> bool:
    """Say whether one of the stems is anywhere in the lines."""
    text = "\n".join([line.text for line in lines]).casefold().translate(_PLAIN)
    return any([stem in text for stem in stems])


_STEMS = stems_of(_ANY)


def without_leavers(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without those of children who have left, and these."""
    if not have_a_stem(lines, _STEMS):
        return lines, []
    found = {at: aside for at, line in enumerate(lines) if (aside := _aside(line))}
    if not found or len(found) > _MOST * sum(any(map(is_letter, line.text)) for line in lines):
        return lines, []
    return [line for at, line in enumerate(lines) if at not in found], [found[at] for at in sorted(found)]


def _aside(line: Line) -> Aside | None:
    """Return what is told of a line of somebody who has left."""
    if len(line.text) > _LONGEST:
        return None
    first, *rest = _BETWEEN.split(line.text)
    signs, parts = rest[::2], [part.strip(" )].!\"”*") for part in rest[1::2]]
    if not parts:
        return _beside(line)
    gone = next((at for at, part in enumerate(parts) if _says_gone(part)), None)
    if gone is None or not any(map(is_letter, first)) or (gone < len(parts) - 1 and signs[gone] not in COLUMN_SIGNS):
        return None
    if any(header_role(part.strip()) in NAME_ROLES for part in (first, *parts)) or struck_off(first).reason:
        return None
    doubtful = without_date(parts[gone]) in _OF_A_DAY or (signs[0] not in COLUMN_SIGNS and "," in first)
    return _told(line, parts[gone], asked=doubtful)


def _beside(line: Line) -> Aside | None:
    """Return what is told of a line with such words in brackets, behind a sign, or in small letters at its end."""
    match = _IN_BRACKETS.fullmatch(line.text) or _BY_A_SIGN.fullmatch(line.text)
    name, said = (match["name"], match["words"].strip(" .!*")) if match else _at_the_end(line.text)
    bare = strip_numbering(name)
    if not said or not _says_gone(said) or not is_titled(bare) or len(bare.split()) > _MOST_WORDS:
        return None
    if struck_off(name).reason or heading_reason(bare):
        return None
    return _told(line, said, asked=True)


def _at_the_end(text: str) -> tuple[str, str]:
    """Return the name of a line and the small words that end it, both empty where it has not both."""
    words = text.rstrip(" .!").split()
    at = next((at for at, word in enumerate(words) if at and _says_gone(" ".join(words[at:]))), 0)
    small = at > 1 and at < len(words) - 1 and begins_small(words[at])  # one word alone may be a name of its own
    return (" ".join(words[:at]), " ".join(words[at:])) if small else ("", "")


def _told(line: Line, said: str, *, asked: bool) -> Aside:
    return Aside(line, (message("roster.has_left", words=said[:60]),), asked=asked)


def _says_gone(part: str) -> bool:
    """Say whether words say that a child has left, with a day behind them or none; ``Parti`` may be a name."""
    words = without_date(part)
    if words not in _ANY or fold(part).startswith("moved in"):  # to the street of the school, as likely
        return False
    return " " in words or begins_small(part) or (part.isupper() and not is_known(words))


def without_date(part: str) -> str:
    """Return folded words without the day, or the place, behind them: ``weggezogen im März``, ``moved to Texas``."""
    words = fold(_TO_A_PLACE.sub("", part)).split()
    while len(words) > 1 and " ".join(words) not in _ANY and _is_of_a_date(words[-1]):
        words.pop()
    return " ".join(words)


def _is_of_a_date(word: str) -> bool:
    return word.strip(".,") in MONTHS or word in _SMALL or any(map(str.isdigit, word))
