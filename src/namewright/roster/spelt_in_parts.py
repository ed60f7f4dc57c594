"""Names that stand with their own parts for clapping, ``Mira: Mi · ra``, ``Tilo  Ti-lo  2``: the name alone is kept.

What stands behind the sign has the letters of the name, cut into parts, so it is no family name and no second child.
Names of one part stand there twice (``Ruth: Ruth``). A column with a title is left as it is (``Role.BEATS``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.patterns import pattern
from namewright.roster.arrows import names_alone
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import fold

_CUTS = ("·", "-", "•", "‐", "–", " / ", "|", "·")
_SPELT = pattern(r"(?:\d{1,2}[.)]\s*)?(?P<name>[^\W\d_][^\t:=→\d]{0,40}?)(?:\s*[:=→]\s*|\s+[-–—]\s+|\s{2,}|\t\s*)"
                 r"(?P<parts>[^\W\d_][^\d]*?)[\s,(]*(?:\d{1,2}\)?)?")
_FEWEST, _MOSTLY = 2, 0.6
_LONGEST = 120  # characters of a line


def from_parts(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with the names alone, where most lines have a name and its own letters in parts."""
    text = "\n".join([line.text for line in lines])
    if sum(map(text.count, _CUTS)) < _FEWEST:
        return list(lines)
    filled = [at for at, line in enumerate(lines) if line.text.strip()]
    found = {at: told for at in filled if (told := _spelt(lines[at].text))}
    cut = [name for name, parts in found.values() if name != parts]
    if len(cut) < _FEWEST or len(found) < _MOSTLY * len(filled) or (
            "\t" in lines[filled[0]].text and filled[0] not in found):
        return list(lines)
    return names_alone(lines, found)


def _spelt(text: str) -> tuple[str, str] | None:
    """Return the name of a line and its parts, None where what stands behind it has other letters."""
    match = _SPELT.fullmatch(text.strip()) if len(text) <= _LONGEST else None
    if match is None or _letters(match["name"]) != _letters(match["parts"]):
        return None
    return match["name"].strip(), match["parts"].strip()


def _letters(text: str) -> str:
    return "".join(filter(str.isalpha, fold(text)))
