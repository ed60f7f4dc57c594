"""Where a long name may be broken over two rows: at a space or a hyphen, else between syllables.

Syllables come from pyphen, which holds hyphenation patterns. Patterns are made for breaking lines of print:
they miss many syllables and misplace some, in names above all, so they must not be used to count beats.
Indices count grapheme clusters (letters) of the name.
"""

from __future__ import annotations

from namewright.names.clusters import clusters, is_letter

_HYPHENS = frozenset("-‐‑")
_LEAST_LETTERS = 2


def breaks(name: str, language: str = "en") -> tuple[int, ...]:
    """Return where NFC ``name`` may be broken: index ``i`` puts the first ``i`` clusters on the first row.

    A name with a space or a hyphen is broken only behind one. Any other is broken between syllables, between
    two letters, with at least two letters on each side. ``language`` is a tag such as ``en`` or ``es-MX``.
    Raises ValueError for a language that has no patterns.
    """
    letters = clusters(name)
    whole = tuple(
        at + 1 for at, letter in enumerate(letters[:-1]) if at > 0 and (letter == " " or letter in _HYPHENS)
    )
    return whole or _syllable_breaks(letters, language)


def _syllable_breaks(letters: tuple[str, ...], language: str) -> tuple[int, ...]:
    import pyphen

    tag = pyphen.language_fallback(language)
    if tag is None:
        raise ValueError(
            f"there are no syllable patterns for the language “{language}”; use a tag such as en or es"
        )
    # Patterns are for small letters; a letter whose small form is longer (İ) stays, so that indices hold.
    small = "".join(low if len(low := char.lower()) == 1 else char for char in "".join(letters))
    starts: dict[int, int] = {}
    offset = 0
    for index, letter in enumerate(letters):
        starts[offset] = index
        offset += len(letter)
    dictionary = pyphen.Pyphen(lang=tag, left=1, right=1)
    found = (starts[at] for at in map(int, dictionary.positions(small)) if at in starts)
    return tuple(at for at in found if _may_break(letters, at))


def _may_break(letters: tuple[str, ...], at: int) -> bool:
    before, after = letters[:at], letters[at:]
    return (
        sum(map(is_letter, before)) >= _LEAST_LETTERS
        and sum(map(is_letter, after)) >= _LEAST_LETTERS
        and is_letter(before[-1])
        and is_letter(after[0])
    )
