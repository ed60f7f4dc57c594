"""Names as files have them: names of pictures and papers (``Mia_Vost.jpg``), and contact cards (vCard, RFC 6350)."""

from __future__ import annotations

from collections.abc import Sequence

from namewright.patterns import pattern
from namewright.roster.pasted import Line

_ENDING = pattern(r"(?<=[^\W\d_])(?:[ _-]?\d{1,4})?\."
                  r"(?:pdf|jpe?g|png|gif|heic|docx?|odt|pages|xlsx?|txt|mp[34]|mov|m4a|wav)\s*$")
_PICTURE = pattern(r"^\s*(?:IMG|DSC|PXL|Scan|Photo|Foto)[ _-]+(?=[^\W\d_]+[ _.-])")
_CARD, _WHOLE = "begin:vcard", "fn:"


def from_file_names(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without endings of files; of contact cards the whole names, the rest as headings."""
    if any(line.text.strip().casefold() == _CARD for line in lines):
        return [_of_a_card(line) for line in lines]
    return [line._replace(text=_PICTURE.sub("", line.text[: match.start()])) if (match := _ENDING.search(line.text))
            else line for line in lines]


def _of_a_card(line: Line) -> Line:
    text = line.text.strip()
    if text.casefold().startswith(_WHOLE):
        return line._replace(text=text[len(_WHOLE) :].replace("\\,", ","))
    return line.heading(text) if text else line
