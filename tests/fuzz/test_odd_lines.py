"""Lists of odd lines are read without an error: signs without words, empty brackets, columns with nothing in them.

Changed bytes of a sound list hardly ever leave several lines of one make with a gap in one of them; pieces put
together do.
"""

from __future__ import annotations

import random

import pytest

from made_lists.many import READ_OTHERWISE, broken_promises

WORDS = (
    "Mia", "Leo Tarn", "Tarn, Leo", "Xobrel", "Vank Zuthe", "José", "Ana-Lu", "D'Ora", "李", "Nguyễn Thị Mai", "(Bo)",
    "né", "mom", "Mom", "Mrs. Vost", "twin", "new", "absent", "goes by", "left-handed", "apples", "peanut allergy",
    "vegetarisch", "yes", "x", "✓", "3", "8:30", "Monday", "555 0101", "a@b.org", "1st", "K", "Room 4", "Table 1",
    "Reds", "Group", "Name", "First", "Last", "Total", "Hi all", "Thank you", "and", "with", "y", "né le")
SIGNS = (
    ",", ", ", " – ", " - ", ": ", ":", " (", ")", "()", "[ ]", " / ", "; ", "\t", "  ", "•", "- ", "* ", "1. ", "2) ",
    "#", '"', "“", "”", "=", "→", " + ", "|", "...", "!", "?", "'", " & ", "\u00a0", "<", ">", "@", "_", "~", "½",
    "\u200b", "")
MAKES, LINES, PIECES = 4, 9, 8  # at most


def odd_list(rng: random.Random) -> str:
    """Return lines of a few makes, in some of which a piece is another or missing."""
    makes = [[rng.choice(WORDS if rng.random() < 0.55 else SIGNS) for _ in range(rng.randrange(1, PIECES))]
             for _ in range(rng.randrange(1, MAKES))]
    return "\n".join("".join(_piece(rng, piece) for piece in rng.choice(makes)) for _ in range(rng.randrange(1, LINES)))


def _piece(rng: random.Random, piece: str) -> str:
    chance = rng.random()
    if chance < 0.1:
        return ""
    return rng.choice(WORDS) if piece in WORDS and chance < 0.75 else rng.choice(SIGNS) if chance > 0.95 else piece


@pytest.mark.parametrize("text", [
    "new - : ", ': ”\nMom – _\n@',  # a place was looked for in signs alone
    '"“Total\t\n"“\n"“Room 4\t',  # a table's corner in rows that a quotation mark swallowed
    "né: né~newnew\nMia: ~LastName\nTarn, Leo: Group~vegetarisch>\n(Bo): 李~ + y",  # a label that is a bracket
    "Mrs. Vost & \n & \n - ...: - Totalleft-handed\n#D'Ora李\nTotal & ",  # a label of dots
    "|goes by_ –  + #'\n & \n1st\n\n – \nLast\nabsent",  # titles of cells with nothing below them
    "né le – , twin)left-handed\nleft-handed555 0101 – , Redsa@b.org\nAna-Luné, and)x\n"
    "Vank Zuthey – , apples)Table 1\nNguyễn Thị Mai555 0101 – , x)Group",  # nothing before a comma behind a dash
    "Mira  4  \t  D\nLeo  5  \t  G\nAva  5  x  D\nBo Elm  4    G",  # a tab alone between the spaces of a table
])
def test_what_once_ended_in_an_error_is_read(text: str) -> None:
    assert not broken_promises(text)


def tried(count: int, seed: int) -> tuple[list[tuple[str, str]], int]:
    """Return what is broken, with its list, of so many; and how many are read otherwise from what is kept of them."""
    texts = (odd_list(random.Random(f"{seed} {at}")) for at in range(count))
    found = [(broken, text) for text in texts if (broken := broken_promises(text))]
    others = [one for one in found if not one[0].startswith(READ_OTHERWISE)]
    return others, len(found) - len(others)


def test_odd_lines_are_read() -> None:
    assert tried(3_000, 1) == ([], 0)


@pytest.mark.long
def test_many_odd_lines_are_read() -> None:
    """Of ten thousand such lists, hardly one tells more once its first lines are out of the way."""
    broken, otherwise = tried(60_000, 2)
    assert not broken
    assert otherwise <= 6
