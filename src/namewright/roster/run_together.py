"""Names that stand together in a line of which one child was made: asked about where the line or its list tells.

Whichever rule read the line, and be its names on a list or on none: a sign or a word that no name has inside it, a gap
between whole names, more words than a list of single names has, and a group's label over a row of words may all stand
between two children. What a list of whole names writes alike on its lines, and a family name that is known, are none.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.commas import BRACKETS
from namewright.roster.kin import GROWN_UPS
from namewright.roster.known import ends_as_family, is_double, is_family, is_given, lean
from namewright.roster.row_drafts import Draft
from namewright.roster.shares import are_most, share
from namewright.roster.struck import struck_off
from namewright.roster.unfolding import Unfolded
from namewright.roster.vocabulary import GROUPS, TITLES, fold, word_set

_SIGN = pattern(r"\s*(?:[^\w\s'’‘`´ʼʻ.,:;/|&+·•()\[\]{}<\"“”„«»\-‐‑–—\u0300-\u036f\ufffd]|_|<(?!/))+\s*")
_GAP = pattern(r"\s{2,}|\t|\u2003")
_WORD = pattern(r"[^\W\d_][^\W_]*(?:[-‐‑'’‘`ʼʻ.][^\W\d_]+)*")
_LABEL = pattern(r"[^\w(]*([^:\t]{1,40}?)\s*:\s+(\S.*?)\s*", needs=":")
_TWO_EACH = pattern(r"(?:(?:[^\W\d_]+ [^\W\d_]+)?\n)*")  # most lists, which are read at each letter that is typed
_WITH = word_set("with, mit, avec, con, com, x, vs, versus, plus, sowie, und, and, et, ed, or, oder, ou")
"""Small words between two people, in six languages; ``y`` and ``e`` stand in family names as well."""
_JOINED = frozenset(("y", "e"))
_NOBODY = PARTICLES | TITLES | GROWN_UPS
_BOLD = ("*", "**", "_", "__")
_FEWEST, _SINGLE, _HALF, _SELDOM = 4, 0.75, 0.5, 0.1
_WHOLE, _MOST_WORDS, _ROW = 2, 3, 4


class _Line(NamedTuple):
    """A line without brackets, with the words of its child, those of the line, and what heads it."""

    text: str
    names: frozenset[str]
    words: tuple[str, ...]
    label: str


def asked_together(drafts: list[Draft], found: Unfolded, typed: Sequence[str]) -> list[Draft]:
    """Return the drafts, with a question for each child whose line may name several."""
    table = found.table
    if table.header is not None or (table.delimiter and sum(any(row.cells) for row in table.rows) > 1) or (
            _TWO_EACH.fullmatch("\n".join((*typed, "")))):
        return drafts
    lines = {draft.row.line: line for draft in drafts if draft.entry and (line := _line(draft, found, typed))}
    asked = {*_parted(lines), *_apart(lines), *_longer(lines), *_behind_labels(lines)}
    return [draft.asked_for_each() if draft.row.line in asked else draft for draft in drafts] if asked else drafts


def _line(draft: Draft, found: Unfolded, typed: Sequence[str]) -> _Line | None:
    if draft.entry is None:
        return None
    line = found.lines[draft.row.line]
    text = BRACKETS.sub(" ", strip_numbering(struck_off(line.text).text)).strip()
    middle = [str(word) for note in (*draft.notes, *draft.entry.notes) for _, word in note.fields
              if note.key in ("roster.middle", "roster.read_with_middle")]
    names = frozenset(_words(" ".join((*draft.entry.reading[:3], *middle))))
    labelled = _LABEL.fullmatch(typed[line.origin])
    label = labelled[1] if labelled and labelled[2] == line.text.strip() else ""
    return _Line(text, names, tuple(_WORD.findall(text)), label)


def _words(text: str) -> list[str]:
    return [fold(word) for word in _WORD.findall(text)]


def _parted(lines: Mapping[int, _Line]) -> Iterator[int]:
    """Yield the lines in whose name a sign stands, or a word, that no name has: ``Mira ~ Leo``, ``Mira mit Leo``."""
    opening = {line.words[:1] for line in lines.values()}
    for at, line in lines.items():
        signed = "" if line.text.replace(" ", "").isalpha() else _across_a_sign(line)
        merged = signed and fold(signed) in line.names and (signed,) not in opening  # else somebody has a line anyway
        if merged or _has_a_word_between(line):
            yield at


def _across_a_sign(line: _Line) -> str:
    """Return the word behind a sign, where a word of the child stands before it; a bold word is one of the name."""
    for sign in _SIGN.finditer(line.text):
        before, behind = line.text[: sign.start()], line.text[sign.end() :]
        named = len(before) > 1 and not line.names.isdisjoint(_words(before))
        bold = sign[0].strip() in _BOLD and sign[0][0].isspace() is not sign[0][-1].isspace()
        titled = behind and is_letter(behind[0]) and not begins_small(behind)
        if named and titled and not bold and is_letter(before[-1]):
            word = _WORD.match(behind)
            somebody = word and len(word[0]) > 1 and fold(word[0]) not in _NOBODY
            sides = _words(_SIGN.split(before)[-1]), _words(_SIGN.split(behind)[0])
            if word and somebody and _are_alike(*sides):
                return word[0]
    return ""


def _are_alike(before: Sequence[str], behind: Sequence[str]) -> bool:
    """Say whether a name each may stand before and behind a sign: no group behind a whole name, no family's alone."""
    return lean(behind[0]) > 0 or (len(before) == len(behind) and (len(behind) > 1 or lean(behind[0]) == 0))


def _has_a_word_between(line: _Line) -> bool:
    for at, word in enumerate(line.words[1:-1], 1):
        behind = line.words[at + 1 :]
        if not word.islower() or begins_small(line.words[0]) or begins_small(behind[0]) or fold(word) not in line.names:
            continue
        if word in _WITH or (word in _JOINED and at > 1 and len(behind) > 1 and not is_family(behind[0])):
            return True
    return False


def _apart(lines: Mapping[int, _Line]) -> Iterator[int]:
    """Yield the lines with a gap between names: whole ones, or single ones where the others are single."""
    single = _are_single(lines)
    for at, line in lines.items():
        runs = [run.split() for run in _GAP.split(line.text)]
        if len(runs) < _WHOLE or not all(1 <= len(run) <= _MOST_WORDS and _are_titled(run) for run in runs):
            continue
        if sum(len(run) > 1 for run in runs) > 1 or (single and all(len(run) == 1 for run in runs)) or len(
                runs) >= _ROW:
            yield at


def _are_titled(words: Sequence[str]) -> bool:
    """Say whether words are written as a name is, and none tells something of a child."""
    return all(opens_as_a_name(word) or word.lower() in PARTICLES for word in words) and opens_as_a_name(
        words[0]) and not any(map(is_word_about, words)) and all(_WORD.fullmatch(word) for word in words)


def _are_single(lines: Mapping[int, _Line]) -> bool:
    return are_most((len(line.words) == 1 for line in lines.values()), _SINGLE, _FEWEST + 1)


def _longer(lines: Mapping[int, _Line]) -> Iterator[int]:
    """Yield the lines of more words than the list has otherwise, of which none is known as a family name."""
    if _are_single(lines):
        yield from _among_single(lines)
    elif len(lines) >= _FEWEST and are_most((len(line.words) == _WHOLE for line in lines.values()), _SINGLE):
        counts = {len(line.words) for line in lines.values()}
        more = [at for at, line in lines.items() if len(line.words) > _WHOLE]
        if counts <= {_WHOLE, 2 * _WHOLE, 3 * _WHOLE} and len(more) <= max(1, _SELDOM * len(lines)):
            yield from (at for at in more if _are_titled(lines[at].words) and _may_be_wholes(lines[at].words))


def _among_single(lines: Mapping[int, _Line]) -> Iterator[int]:
    """Yield the lines of two words and more among single names, unless one of them ends in a family's name."""
    more = {at: line.words for at, line in lines.items() if len(line.words) > 1 and line.text.replace(
        " ", "").isalpha() and _are_titled(line.words)}
    firsts = [fold(line.words[0]) for line in lines.values() if line.words]
    if any(_ends_in_a_family(words) or firsts.count(fold(words[0])) > 1 for words in more.values()):
        return
    yield from (at for at, words in more.items() if len(words) > _WHOLE or not is_double(*words))


def _ends_in_a_family(words: Sequence[str]) -> bool:
    """Say whether the last of some words is known as a family name alone, or by its end, or has a particle before."""
    particle = any(word.lower() in PARTICLES and begins_small(word) for word in words[1:])
    return particle or lean(words[-1]) < 0 or ends_as_family(words[-1]) or len(words[-1].strip(".")) == 1


def _may_be_wholes(words: Sequence[str]) -> bool:
    """Say whether words may be given and family names by turns: ``Mira Vost Xobrel Vank``; particles tell one name."""
    pairs = list(zip(words[::2], words[1::2], strict=False))
    whole = len(words) % 2 == 0 and not is_double(words[0], words[1]) and PARTICLES.isdisjoint(map(fold, words[1:]))
    return whole and all(
        lean(given) >= 0 and lean(family) <= 0 and not is_family(given) for given, family in pairs)


def _behind_labels(lines: Mapping[int, _Line]) -> Iterator[int]:
    """Yield the lines that hold several words behind labels of groups, days or jobs, where none tells a whole name."""
    labelled = {at: line.words for at, line in lines.items() if line.label and len(line.words) > 1
                and line.text.split() == [*line.words] and _are_titled(line.words)}
    labels = [fold(lines[at].label) for at in labelled]
    if len(labels) < _WHOLE or len({*labels}) < len(labels) or any(is_given(label.split()[0]) for label in labels
                                                                   if label.split()):
        return
    dated = any(char.isdigit() for label in labels for char in label)
    grouped = share(any(word in GROUPS for word in label.split()) for label in labels) >= _HALF
    told = grouped or (not dated and _are_given(labelled.values()))
    if told and not any(map(_ends_in_a_family, labelled.values())):
        yield from labelled
    else:
        yield from (at for at, words in labelled.items() if len(words) >= _ROW and _may_be_wholes(words))


def _are_given(rows: Collection[Sequence[str]]) -> bool:
    """Say whether the second words of most rows are known as given names."""
    return are_most((lean(words[1]) > 0 for words in rows), _HALF, _WHOLE)
