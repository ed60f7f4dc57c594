"""Adults who stand in a block of their own beside the class, as on a list for a fire drill: told, and not made.

A word for adults stands alone over them (``Staff``, ``Erwachsene:``, ``Adultos (2)``), and the block ends at an empty
line or the next heading; or it stands before their names (``Adults: Jo, Ana``). Others must stand outside of it, for a
list of nothing else is what was pasted to be made. Out of scope: rows of a table (``grown_up_rows``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.columns import has_titles
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.heading_words import JOBS, MANY_ADULTS
from namewright.roster.headings import heading_reason, heads_adults
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.leavers import have_a_stem
from namewright.roster.pasted import COLUMN_ENDS, Line, most_words
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import AND_WORDS, TEACHERS, fold, word_set

_BESIDE = AND_WORDS | word_set("""
    the, our, school, teaching, present, on, duty, here, escolar, docente, presentes, de, presents, anwesende, scolaire,
    presenti, scolastico, escolares""")
_STEMS = tuple(sorted({word[:5] for word in MANY_ADULTS | TEACHERS}))
_FRAME = pattern(r"\s*[(\[][^()\[\]]*[)\]]|[\d*#=~_•–—|/&+,-]+")
_LONGEST, _MOST_WORDS = 40, 6
_LONGEST_TOLD = 200
_FEWEST = 2  # others than the adults, and no fewer than these
_FEW_ADULTS = 4


def without_staff(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without the adults who stand under a word for them, and these."""
    if not have_a_stem(lines, _STEMS):
        return lines, []
    heads = {at: many for at, line in enumerate(lines) if (many := _heads_adults(line.text)) is not None}
    blocks = {at: block for at, many in heads.items() if (block := _block(lines, at, many=many))}
    adults = {at: head for head, block in blocks.items() for at in block}
    others = sum(any(map(is_letter, line.text)) and at not in adults and at not in heads
                 and not heading_reason(line.text) for at, line in enumerate(lines))
    if not adults or others < max(_FEWEST, min(len(adults), _FEW_ADULTS)):
        return _without_labelled(lines)
    kept, told = _told(lines, adults, blocks)
    rest, labelled = _without_labelled(kept)
    return rest, [*told, *labelled]


def _without_labelled(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without those of several adults behind a word for them, ``Adults: Jo, Ana``, and these."""
    found = [at for at, line in enumerate(lines) if ":" in line.text and len(line.text) <= _LONGEST_TOLD
             and heads_adults(line.text) and heads_many_adults(line.text) and not NAME_LABEL.match(line.text)]
    others = sum(any(map(is_letter, line.text)) and at not in found for at, line in enumerate(lines))
    if not found or others < _FEWEST:
        return lines, []
    return ([line for at, line in enumerate(lines) if at not in found],
            [Aside(lines[at], (message("roster.adult"),)) for at in found])


def heads_many_adults(text: str) -> bool:
    """Say whether a word for several adults stands before a colon: ``Adults: Jo, Ana``; helpers may be children."""
    return fold(text.partition(":")[0]).strip() in MANY_ADULTS - JOBS


def _told(lines: Sequence[Line], adults: Mapping[int, int],
          heads: Mapping[int, object]) -> tuple[list[Line], list[Aside]]:
    asides = [Aside(lines[at], (message("roster.among_adults", words=lines[head].text.strip(" :*=#_~-")[:60]),))
              for at, head in sorted(adults.items())]
    kept = [line.heading(line.text.strip(COLUMN_ENDS)) if at in heads else line
            for at, line in enumerate(lines) if at not in adults]
    return kept, asides


def _heads_adults(text: str) -> bool | None:
    """Say whether a line is a word for adults alone, and one for several; None where it is no such line.

    A word for one teacher must have a colon behind it, and so must a word that is a given name, too.
    """
    text = text.strip(COLUMN_ENDS)  # the first cell of a row that has no other
    if len(text) > _LONGEST or "\t" in text:
        return None
    label = fold(_FRAME.sub(" ", strip_numbering(text)))
    words = [word.strip(":.") for word in label.split()]
    known = [word for word in words if word in MANY_ADULTS or word in TEACHERS]
    if label not in MANY_ADULTS and (not known or not all(word in known or word in _BESIDE for word in words)):
        return None
    many = label in MANY_ADULTS or not MANY_ADULTS.isdisjoint(known)
    return None if (not many or (len(words) == 1 and is_given(label))) and ":" not in text else many


def _block(lines: Sequence[Line], head: int, *, many: bool) -> list[int]:
    """Return the lines below such a word up to an empty line or a heading; a word for one adult stands over one."""
    found: list[int] = []
    for at in range(head + 1, len(lines)):
        text = lines[at].text
        if not found and has_titles(text):
            continue
        named = any(map(is_letter, text))
        reason = heading_reason(text.strip(COLUMN_ENDS)) if named else None
        headed = (reason is not None and reason.key != "roster.adult") or _heads_adults(text) is not None
        if (not text.strip(COLUMN_ENDS) and found) or headed:
            break
        if named:
            if most_words(text) > _MOST_WORDS or NAME_LABEL.match(text):
                return []
            found.append(at)
    bare = strip_numbering(lines[head].text).strip()
    doubtful = is_known(bare) and not any(" " in lines[at].text.strip() or opens_with_given(lines[at].text)
                                          for at in found)  # of the families Staff, Vost and Tarn nobody is an adult
    return found if not doubtful and (many or len(found) == 1) else []
