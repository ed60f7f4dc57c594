"""Lines about the class rather than a child: a modest guess, always reported and never silent."""

from __future__ import annotations

from namewright.names.beside import strip_numbering
from namewright.names.words import HEADER_WORDS, HEADING_WORDS, TITLES, fold


def heading_reason(text: str) -> str:
    """Say why a line is about the class and not a child, or return an empty string.

    A modest guess: a line that ends in a colon, one that opens with a title (Ms., Sra.), one made of
    nothing but header words, ``…'s class``, or a heading word followed by a number, a sign or nothing.
    """
    words = fold(strip_numbering(text)).replace(":", " : ").split()
    if not words:
        return ""
    if text.rstrip().endswith(":"):
        return "It ends in a colon, so it was read as a heading."
    first, rest = words[0].strip(".,"), words[1:]
    if first in TITLES and rest:
        return "It opens with a title, so it was read as an adult’s name."
    if (
        len(words) > 1
        and words[-1] in ("class", "roster", "students", "kindergarten")
        and words[-2].endswith(("'s", "’s", "s'", "s’"))
    ):
        return "It names a class, so it was read as a heading."
    if first == "the" and words[-1] in ("class", "room", "group"):
        return "It names a class, so it was read as a heading."
    if first == "class" and rest and rest[0] in ("list", "of", "roster"):
        return "It names a class, so it was read as a heading."
    if first == "page" and rest and rest[0].isdigit():
        return "It reads as a page number."
    if first in HEADING_WORDS and (not rest or _opens_heading(rest[0])):
        return f"It opens with the word “{first}”, so it was read as a heading."
    if text.split() != [text.strip()] and all(
        word in HEADER_WORDS or word in HEADING_WORDS for word in words
    ):
        return "It holds nothing but words of a heading."
    return ""


def _opens_heading(word: str) -> bool:
    return (
        not word[0].isalpha() or len(word) == 1 or word.strip(".,") in TITLES or any(map(str.isdigit, word))
    )
