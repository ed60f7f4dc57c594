"""Reading one name that was typed."""

from __future__ import annotations

from namewright.commands.talk import Refusal, complain
from namewright.message import message, together
from namewright.names.casing import mend_case
from namewright.patterns import pattern
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.rows import odd_marks
from namewright.roster.tidy import tidy
from namewright.settings import NamePart

_PLAIN = pattern(r"(?:[^\W\d_]|[\u0300-\u036f .\-‐‑'’ʻʼ·])+")
"""A name with nothing beside it: no comma, figure, bracket or quotation mark."""


def one_name(text: str, names_in: str = "") -> str:
    """Read a name as a roster of one line, so that both clean a name alike, and say what was changed.

    Every word of a plain name is written, a middle name too; ``names_in`` is its language by a tag, which letter case
    follows. Raises Refusal or RosterError.
    """
    shown = " ".join(text.split())
    try:
        roster = read_roster(text, message("roster.name"), NamePart.BOTH, names_in=names_in)
    except RosterError as error:
        notes = [note for report in error.lines for note in report.notes]
        if not notes:
            raise
        raise Refusal(together(message("command.problem.no_name", typed=shown[:40]), *notes)) from None
    if len(roster.children) != 1:
        raise Refusal("command.problem.several", typed=shown[:40], count=len(roster.children))
    if _PLAIN.fullmatch(clean := tidy(text).text):
        notes, name = list(tidy(text).notes), mend_case(clean, language=names_in)
        notes += [message("roster.case", typed=clean, written=name)] * (name != clean)
        notes += odd_marks(name)
    else:
        notes, name = [note for report in roster.lines for note in report.notes], roster.children[0].practice
    for note in notes:
        complain(note)
    return name
