"""Who stands under “Waiting list”: the words are a heading, and each child below or behind them tells so.

The children are made, for a teacher may want their pages ready; she is told where they stood, and takes out whom she
does not teach yet. The part below such a heading ends at the next heading, or at an empty line below a name.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.heading_words import WAITING
from namewright.roster.headings import heading_reason
from namewright.roster.pasted import Line
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.vocabulary import fold

_ASIDE = pattern(r"\s*[(\[][^()\[\]]*[)\]]|[\d*#=~_-]+")
_SIGN = pattern(r"\s?[:–—]\s*|\s-\s+")
_COMMA = pattern(r"\s*[,;]\s*")
_LONGEST = 400


def from_waiting_lists(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with their waiting lists told, each child on a line that says so."""
    if not any(_parted(line.text) for line in lines):
        return list(lines)
    return list(_told(lines))


def _told(lines: Sequence[Line]) -> Iterator[Line]:
    above, met = "", False
    for line in lines:
        parted = _parted(line.text)
        if parted:
            above, names = parted
            met = False
            yield line.heading(above)
            for name in names:
                yield under(line.part(name) if len(names) > 1 else line._replace(text=name), above)
            above = "" if names else above
            continue
        named = any(map(is_letter, line.text))
        if (met and not named) or (named and heading_reason(line.text)):
            above = ""
        met = bool(above) and (met or named)
        yield under(line, above) if above and named else line


def under(line: Line, above: str) -> Line:
    """Return a line that tells which heading of a waiting list it stands under."""
    return line._replace(notes=(*line.notes, message("roster.under", words=above[:60])))


def _parted(text: str) -> tuple[str, tuple[str, ...]] | None:
    """Return the words for a waiting list that a line has, and the names behind them; None where it has none."""
    if len(text) > _LONGEST:
        return None
    label, *rest = _SIGN.split(strip_numbering(text), maxsplit=1)
    if fold(_ASIDE.sub(" ", label).replace("’", "'")) not in WAITING:
        return None
    names = tuple(filter(None, _COMMA.split(rest[0].strip()))) if rest else ()
    if not all(may_be_a_name(name) and is_titled_name(name) for name in names):
        return None
    return label.strip(" *#=~_-"), names
