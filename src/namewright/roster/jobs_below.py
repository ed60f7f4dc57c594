"""Things to buy or to do beside a list, in a teacher’s notes: ``To buy:`` and below it ``☐ glue sticks`` are nobody.

They stand up to the next empty line. What begins small is a thing; a known name with a capital stays a child, and
whatever else may be one (``Xobrel Quix``, ``mia``) is asked about.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.labelled import labelled
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import fold, word_set

_OVER = word_set("""
    to buy, shopping, shopping list, to do, to-do, todo, to get, to order, to print, to bring, errands, supplies,
    don't forget, don’t forget, reminders, comprar, compras, lista de la compra, pendiente, pendientes, por hacer,
    tareas, recados, recordatorios, a acheter, achats, courses, a faire, a commander, a imprimer, rappels,
    einkaufen, einkaufsliste, besorgen, zu besorgen, noch zu tun, zu tun, zu erledigen, erledigen, aufgaben, nicht
    vergessen, da comprare, spesa, lista della spesa, da fare, da stampare, promemoria, cose da fare, por fazer, a
    fazer, para comprar, lista de compras, tarefas, lembretes""")
_TOLD = (message("roster.sentence"), message("roster.if_child"))


def without_jobs(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children, and those of jobs: told, or asked about where one may be a child."""
    kept: list[Line] = []
    asides: list[Aside] = []
    below = False
    for line in lines:
        bare = strip_numbering(line.text)
        if fold(bare) in _OVER:
            below = True
            asides.append(Aside(line, _TOLD))
        elif not below or not any(map(is_letter, bare)) or _is_a_child(bare):
            below = below and bool(line.text.strip())
            kept.append(line)
        elif begins_small(bare) and not is_given(bare.split()[0]):
            asides.append(Aside(line, _TOLD))
        else:
            asides.append(Aside(line, (message("roster.unlike", words=bare[:60]),), asked=True))
    return kept, asides


def _is_a_child(text: str) -> bool:
    """Say whether a known name opens a line, or stands behind what it has to do for the class: ``Plants: Mia V.``."""
    label = labelled(text)
    names = label.rest if label else ""
    return (opens_with_given(text) and not begins_small(text)) or (opens_with_given(names) and is_titled(names))
