"""Names as files have them: names of pictures and papers (``Mia_Vost.jpg``), and contact cards (vCard, RFC 6350).

In a list of files, what all of them share (a folder, ``portrait``, the year, a first or last word) is no part of a
name, and neither are the size and the day that stand behind.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.pasted import Line

_KINDS = r"(?:pdf|jpe?g|png|gif|heic|docx?|odt|pages|xlsx?|txt|mp[34]|mov|m4a|wav|pptx?|webp|svg|zip)"
_ENDING = pattern(rf"(?<=[^\W\d_])(?:[ _-]?\d{{1,4}})?\.{_KINDS}\s*$", re.I)
_FILE = pattern(rf"(\S.*?[^\W_])\.{_KINDS}(?:\t.*|\s{{2,}}.*)?", re.I, needs=".")
_PICTURE = pattern(r"^\s*(?:IMG|DSC|PXL|Scan|Photo|Foto)[ _-]+(?=[^\W\d_]+[ _.-])")
_OF_THE_SYSTEM = frozenset(("desktop.ini", "thumbs.db", ".ds_store", "folder.jpg", "index.html"))
_PARTS = pattern(r"[/\\]|_|\s-\s")
_NUMBER = pattern(r"\d{1,4}(?:-\d{2,4}){0,2}")
_CARD, _WHOLE = "begin:vcard", "fn:"
_FEWEST, _NEARLY_ALL = 3, 0.9


def from_file_names(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without endings of files; of contact cards the whole names, the rest as headings."""
    if any(line.text.strip().casefold() == _CARD for line in lines):
        return [_of_a_card(line) for line in lines]
    return _of_files(lines) or [
        line._replace(text=_PICTURE.sub("", line.text[: match.start()])) if (match := _ENDING.search(line.text))
        else line for line in lines]


def _of_files(lines: Sequence[Line]) -> list[Line]:
    """Return what is each file's own in a list of files, or nothing where the lines are none or share nothing."""
    worded = [at for at, line in enumerate(lines) if line.text.strip() and not _is_of_the_system(line)]
    found = {at: match[1].strip() for at in worded if (match := _FILE.fullmatch(lines[at].text.strip()))}
    if len(found) < max(_FEWEST, _NEARLY_ALL * len(worded)):
        return []
    rows = {at: [part.strip() for part in _PARTS.split(text) if part.strip()] for at, text in found.items()}
    shared = set[str].intersection(*(set(parts) for parts in rows.values()))
    own = {at: " ".join(part for part in parts if part not in shared and not _NUMBER.fullmatch(part))
           for at, parts in rows.items()}
    own = _without_shared_ends(own)
    if not all(own.values()):
        return []
    return [line.heading(line.text) if _is_of_the_system(line)
            else line._replace(text=_PICTURE.sub("", own[at])) if at in own else line for at, line in enumerate(lines)]


def _without_shared_ends(own: dict[int, str]) -> dict[int, str]:
    """Take off the word that all names open with, and the one that all end with, where names are left of all."""
    for end in (0, -1):
        words = {text.split()[end] for text in own.values() if text}
        rest = {at: " ".join(text.split()[1:] if end == 0 else text.split()[:-1]) for at, text in own.items()}
        if len(words) == 1 and all(any(map(is_letter, text)) for text in rest.values()):
            own = rest
    return own


def _is_of_the_system(line: Line) -> bool:
    return line.text.strip().casefold() in _OF_THE_SYSTEM


def _of_a_card(line: Line) -> Line:
    text = line.text.strip()
    if text.casefold().startswith(_WHOLE):
        return line._replace(text=text[len(_WHOLE) :].replace("\\,", ","))
    return line.heading(text) if text else line
