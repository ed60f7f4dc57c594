"""What a register says of the day behind names, or before them: ``Mia Late``, ``Leo Berg Left``, ``Sick Ava Tarn``.

Told and left out. Behind a name of one word it may be the family's, so several lines must say such a word, or hardly
a name of the list have two. Out of scope: cells of a table, words behind a sign (``beside``), rows of marks
(``marks``).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.roster.beside import said_by_a_register, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.vocabulary import ATTENDANCE, ON_A_REGISTER, fold
from namewright.store import keeps_names

_WHOLE, _FEW = 2, 2
_MOSTLY = 0.6
_LONGEST = 100  # characters of a line that is looked at: a longer one is a text
_LONGEST_NAME = 5  # words


def without_attendance(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without what a register says of the day; each tells what was taken from it."""
    found = {at: parted for at, line in enumerate(lines) if (parted := _parted(line.text))}
    sure = {at for at, (_, said, _) in found.items() if fold(said) in ATTENDANCE}
    if not sure:
        return list(lines)
    several, alone = len(found) >= _FEW, _are_alone([line.text for at, line in enumerate(lines) if at not in found])
    taken = {at: parts for at, parts in found.items()
             if several or (parts[2] and (len(parts[0].split()) >= _WHOLE or alone))}
    return [line.without(taken[at][1], taken[at][0]) if at in taken else line for at, line in enumerate(lines)]


@keeps_names(1024)
def _parted(line: str) -> tuple[str, str, bool] | None:
    """Return the name of a line, the words of a register beside it, and whether these stand behind it."""
    if len(line) > _LONGEST or any(sign in line for sign in COLUMN_SIGNS):
        return None
    bare = strip_numbering(line)
    if "  " in bare.strip():  # João  Inês  Giulia malade: of whom a gap parts the others
        return None
    words = bare.split()
    if size := said_by_a_register(words, ON_A_REGISTER):
        name, said = words[:-size], words[-size:]
        return (" ".join(name).rstrip(" ,"), " ".join(said).strip(",;()!"), True) if _is_a_name(line, name) else None
    if len(words) > _WHOLE and fold(words[0]) in ON_A_REGISTER and not is_given(words[0]) and (
            _is_a_name(line, words[1:])):
        return " ".join(words[1:]), words[0], False
    return None


def _is_a_name(line: str, words: Sequence[str]) -> bool:
    """Say whether words are written as a name, and the line is no title of the class."""
    named = len(words) <= _LONGEST_NAME and is_titled(" ".join(words)) and all(is_letter(word[0]) for word in words)
    return named and words[-1][-1] not in ":;-–—(" and heading_reason(line) is None


def _are_alone(texts: Sequence[str]) -> bool:
    """Say whether most names are of one word."""
    filled = [strip_numbering(text) for text in texts if any(map(is_letter, text))]
    return len(filled) >= _FEW and sum(" " not in text for text in filled) >= _MOSTLY * len(filled)
