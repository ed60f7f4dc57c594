"""Children said to have left: ``Mia Vost: Owls → left us``, a cell ``weggezogen``. Told, and not made.

The words stand alone in a cell or behind an arrow; behind another sign they are a remark on a child who is made, for
they may be about the day. Where more than one child may stand on the line, it is asked about; a list of hardly anybody
else is made as it is, for who pastes it wants it so.
"""

from __future__ import annotations

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.headers import header_role
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
    has left, gone, se ha ido, se fue, parti, partie, est parti, est partie, abgemeldet, saiu, ja saiu, foi embora""")
"""Which may be of the day alone, as in a column of who was fetched: asked about."""
_ANY = _GONE | _OF_A_DAY
_STEMS = tuple(sorted({max(words.split(), key=len)[:6] for words in _ANY}))
_PLAIN = str.maketrans("áàâãäéèêíìóòôõöúùüç", "aaaaaeeeiiooooouuuc")
_BETWEEN = pattern(r"\s*([\t;|→⇒]|[-=]>|(?<=\s)>\s| {3,})\s*")
_SMALL = word_set("in, on, since, en, el, desde, le, depuis, im, am, seit, il, dal, em, a, de, des, to, nach")
_LONGEST, _MOST = 300, 0.5


def without_leavers(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without those of children who have left, and these."""
    text = "\n".join([line.text for line in lines]).casefold().translate(_PLAIN)
    if not any([stem in text for stem in _STEMS]):
        return lines, []
    found = {at: aside for at, line in enumerate(lines) if (aside := _aside(line))}
    if not found or len(found) > _MOST * sum(any(map(is_letter, line.text)) for line in lines):
        return lines, []
    return [line for at, line in enumerate(lines) if at not in found], [found[at] for at in sorted(found)]


def _aside(line: Line) -> Aside | None:
    """Return what is told of a line of somebody who has left."""
    first, *rest = _BETWEEN.split(line.text) if len(line.text) <= _LONGEST else [""]
    signs, parts = rest[::2], [part.strip(" )].!\"”*") for part in rest[1::2]]
    gone = next((at for at, part in enumerate(parts) if _says_gone(part)), None)
    if gone is None or not any(map(is_letter, first)) or (gone < len(parts) - 1 and signs[gone] not in COLUMN_SIGNS):
        return None
    if any(header_role(part.strip()) in NAME_ROLES for part in (first, *parts)) or struck_off(first).reason:
        return None
    note = message("roster.has_left", words=parts[gone][:60])
    doubtful = _without_date(parts[gone]) in _OF_A_DAY or (signs[0] not in COLUMN_SIGNS and "," in first)
    return Aside(line, (note,), asked=doubtful)


def _says_gone(part: str) -> bool:
    """Say whether words say that a child has left, with a day behind them or none; ``Parti`` may be a name."""
    words = _without_date(part)
    if words not in _ANY:
        return False
    return " " in words or begins_small(part) or (part.isupper() and not is_known(words))


def _without_date(part: str) -> str:
    words = fold(part).split()
    while len(words) > 1 and " ".join(words) not in _ANY and _is_of_a_date(words[-1]):
        words.pop()
    return " ".join(words)


def _is_of_a_date(word: str) -> bool:
    return word.strip(".,") in MONTHS or word in _SMALL or any(map(str.isdigit, word))
