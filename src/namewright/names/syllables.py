"""Where a long name may be broken over two rows: at a space or a hyphen, else where the child claps the next beat.

Only a name of one beat is broken by hyphenation patterns (pyphen's). Those are made for lines of print and misplace
syllables, in names above all: they would break Christopherson as Christoph-erson. Indices count grapheme clusters
(letters) of the name.
"""

from __future__ import annotations

from namewright.names.beats import UNSAID, Spoken, spoken_beats
from namewright.names.clusters import is_letter

_HYPHENS = frozenset("-‐‑")
_MIN_LETTERS = 2


def breaks(letters: tuple[str, ...], spoken: Spoken = UNSAID) -> tuple[int, ...]:
    """Return where a name, cut into ``letters``, may be broken: ``i`` puts the first ``i`` on the first row.

    A name with a space or a hyphen is broken only behind one. Any other is broken between beats, between two
    letters, with at least two letters on each side; a teacher's own beats are among what is ``spoken``. In a language
    that has no patterns a name of one beat is not broken.
    """
    between_words = tuple(
        at + 1 for at, letter in enumerate(letters[:-1]) if at > 0 and (letter == " " or letter in _HYPHENS)
    )
    return between_words or beat_breaks(letters, spoken) or _syllable_breaks(letters, spoken.language or spoken.around)


def beat_breaks(letters: tuple[str, ...], spoken: Spoken = UNSAID) -> tuple[int, ...]:
    """Return where a word may be broken between two of its beats, nowhere for a word of one."""
    if not any(map(is_letter, letters)):
        return ()
    return tuple(at for at in spoken_beats(letters, spoken).starts if at and _may_break(letters, at))


def _syllable_breaks(letters: tuple[str, ...], language: str) -> tuple[int, ...]:
    if sum(map(is_letter, letters)) < 2 * _MIN_LETTERS:
        return ()  # before the patterns are read, which takes a tenth of a second
    import pyphen

    tag = pyphen.language_fallback(language)
    if tag is None:
        return ()
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
        sum(map(is_letter, before)) >= _MIN_LETTERS
        and sum(map(is_letter, after)) >= _MIN_LETTERS
        and is_letter(before[-1])
        and is_letter(after[0])
    )
