"""A list spoken to a device that wrote the signs as words: ``Mia Vost comma Leo Berg new line Ava Tarn full stop``.

Such words part the names, which then stand on lines of their own; lines between them may be broken anywhere. What leads
to the first name is a heading, and small words behind the last one come off. Out of scope: one or two such words.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import groupby
from statistics import median_low

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.pasted import Line

_SIGNS = (
    "semicolon", "comma", "new line", "newline", "next line", "new paragraph", "next paragraph", "line break",
    "punto y coma", "coma", "nueva línea", "siguiente línea", "nueva linea", "punto y aparte", "nuevo párrafo",
    "point-virgule", "point virgule", "virgule", "retour à la ligne", "à la ligne", "nouvelle ligne", "ligne suivante",
    "nouveau paragraphe", "Semikolon", "Strichpunkt", "Komma", "neue Zeile", "nächste Zeile", "neuer Absatz", "Absatz",
    "Zeilenumbruch", "punto e virgola", "virgola", "a capo", "nuova riga", "nuovo paragrafo", "ponto e vírgula",
    "vírgula", "nova linha", "próxima linha", "novo parágrafo", "parágrafo")
_SPOKEN = "|".join(re.escape(sign).replace(r"\ ", r"\s+") for sign in _SIGNS)
_CAPITAL = "|".join(sign[0].upper() + re.escape(sign[1:]).replace(r"\ ", r"\s+") for sign in _SIGNS if " " in sign)
_SIGN = pattern(rf"(?<!\S)(?:{_SPOKEN}|{_CAPITAL})(?=[\s.,;]|$)[.,;]?")
"""A sign as a word: with a capital only where it has two words, for Coma is a family name."""
_COLON = pattern(r"(?<!\S)(?:colon|dos\s+puntos|deux[\s-]points|Doppelpunkt|due\s+punti|dois\s+pontos)(?=[\s:]|$):?")
_LAST_WORDS = frozenset(("Punkt", "Ende", "Schluss", "Fertig", "Stop"))
_LINKS = frozenset(("de", "del", "la", "da", "do", "dos", "das", "di", "van", "von", "der", "den"))
_FEWEST, _LONGEST = 3, 20_000
_BY_LINE = 0.5


class _Piece(NamedTuple):
    """Words between two signs, on which line (0-based) each of them stands."""

    words: tuple[str, ...]
    lines: tuple[int, ...]


def from_spoken_signs(lines: list[Line]) -> list[Line]:
    """Return a line for each name between signs that are written as words, where there are at least three of these."""
    text = "\n".join([line.text for line in lines[: _LONGEST // 4]])
    if len(text) > _LONGEST or len(_SIGN.findall(text)) < _FEWEST:
        return lines
    found: list[Line] = []
    for filled, block in groupby(lines, key=lambda line: bool(line.text.strip())):
        some = list(block)
        found += _from_block(some) if filled else some
    return found


def _from_block(lines: list[Line]) -> list[Line]:
    above = next((at for at, line in enumerate(lines) if not line.text.rstrip().endswith(":")), len(lines))
    rest = lines[above:]
    text = "\n".join(line.text for line in rest)
    if len(_SIGN.findall(text)) < max(_FEWEST, _BY_LINE * len(rest)) or any(map(str.isdigit, text)):
        return lines
    found = lines[:above]
    if colon := _COLON.search(text):
        found.append(rest[0].heading(" ".join(text[: colon.end()].split())))
        text = "\n" * text[: colon.end()].count("\n") + text[colon.end() :]
    pieces = list(_pieces(text))
    if not colon and pieces and (before := _small_before(pieces[0])):
        found.append(rest[0].heading(" ".join(pieces[0].words[:before])))
        pieces[0] = _Piece(pieces[0].words[before:], pieces[0].lines[before:])
    broken = _are_broken_anywhere(pieces)
    apart = pieces if broken else [part for piece in pieces for part in _by_line(piece)]
    found += [rest[piece.lines[0]].part(" ".join(piece.words)) for piece in apart]
    if apart and (end := _name_ends(apart[-1].words)) < len(apart[-1].words):
        words = apart[-1].words
        found[-1] = found[-1].without(" ".join(words[end:]), " ".join(words[:end]))
    return found


def _pieces(text: str) -> Iterator[_Piece]:
    """Yield what stands between the signs."""
    start = 0
    for end, behind in [*((sign.start(), sign.end()) for sign in _SIGN.finditer(text)), (len(text), len(text))]:
        first = text.count("\n", 0, start)
        placed = [(word, first + at) for at, line in enumerate(text[start:end].split("\n")) for word in line.split()]
        if any(is_letter(sign) for word, _ in placed for sign in word):
            yield _Piece(tuple(word for word, _ in placed), tuple(at for _, at in placed))
        start = behind


def _are_broken_anywhere(pieces: Sequence[_Piece]) -> bool:
    """Say whether lines are broken within names: a child over a line's end has no twice as many words as others."""
    sizes = [_size(piece.words) for piece in pieces]
    across = [size for size, piece in zip(sizes, pieces, strict=True) if len({*piece.lines}) > 1]
    within = [size for size, piece in zip(sizes, pieces, strict=True) if len({*piece.lines}) == 1]
    return not across or not within or max(across) < 2 * median_low(within)


def _by_line(piece: _Piece) -> Iterator[_Piece]:
    for at, group in groupby(zip(piece.words, piece.lines, strict=True), key=lambda each: each[1]):
        words = tuple(word for word, _ in group)
        yield _Piece(words, (at,) * len(words))


def _size(words: Sequence[str]) -> int:
    """Return how many words make a name long: small ones beside others do not, nor parts of families as these."""
    capital = [word for word in words if not begins_small(word)]
    return sum(word.lower() not in _LINKS for word in capital) if capital else len(words)


def _small_before(piece: _Piece) -> int:
    """Return how many small words lead to the first name; none where nothing in it has a capital."""
    return next((at for at, word in enumerate(piece.words) if not begins_small(word)), 0)


def _name_ends(words: Sequence[str]) -> int:
    """Return where the last name ends, before small words; all of it is name where nothing has a capital."""
    return next((at + 1 for at in range(len(words) - 1, -1, -1)
                 if not begins_small(words[at]) and (words[at].rstrip(".") not in _LAST_WORDS or not at)), len(words))
