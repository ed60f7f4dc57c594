"""Any number of made lists, plain and spoilt, each held to what must hold for every list.

Of a plain list nobody is lost, and nobody is merged, misnamed or made of a remark without a word about it. A spoilt one
(characters lost, doubled, swapped) is read without an error, every line is accounted for, and each name stands in it.
"""

from __future__ import annotations

import random
from collections.abc import Iterator

from made_lists.judging import Made, judge
from made_lists.people import FURTHER, HELD, INVENTED, TUNED, people
from made_lists.sets import SETS
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold

_READ = (
    "tuned", "held", "fresh", "late", "further", "last", "apart", "back", "open", "seen", "spring", "kept", "unseen",
    "summer", "office", "autumn", "winter", "desk", "porch", "pocket", "cellar", "loft")
SHAPES = {f"{of} {name}": shape for of in _READ for name, shape in SETS[of].SHAPES.items()}
_NAMES = sorted(SHAPES)
_PLACES = (*TUNED, *HELD, *FURTHER, *(INVENTED,) * 7)
_STRAYS = " \t\n,;:-–|/()[]\"“”'’.*#@<>&+=0123456789\u00a0\u200b\u0301\u202e\ufeff\x00İßĳ名"
_MOST_SLIPS = 6
RAISED = "raised "  # what tells an exception, whatever it is called
READ_OTHERWISE = "read otherwise from what is kept"
SILENT = ("lost", "unsaid", "untold")


def failures(count: int, seed: int) -> Iterator[tuple[str, str]]:
    """Yield what is wrong, with the list, for each of so many lists that something is wrong with."""
    for at in range(count):
        rng = random.Random(f"{seed} {at}")
        shape = rng.choice(_NAMES)
        made = SHAPES[shape](rng, people(rng, rng.choice(_PLACES), rng.randrange(4, 9)))
        text = _spoilt(rng, made.text) if at % 2 else made.text
        wrong = broken_promises(text) or ("" if at % 2 else _silent(made))
        if wrong:
            yield f"{shape}: {wrong}", text


def _silent(made: Made) -> str:
    found = judge(made)
    return ", ".join(f"{key} {found[key]}" for key in SILENT if found[key])


def _spoilt(rng: random.Random, text: str) -> str:
    """Return a text with some slips in it."""
    signs = list(text)
    for _ in range(rng.randrange(1, _MOST_SLIPS)):
        at = rng.randrange(len(signs) + 1)
        kind = rng.randrange(4)
        if kind == 0:
            signs.insert(at, rng.choice(_STRAYS))
        elif kind == 1:
            del signs[at : at + rng.randrange(1, 4)]
        elif kind == 2:
            signs[at:at] = signs[max(0, at - rng.randrange(1, 20)) : at]
        else:
            signs[at : at + 8] = [sign.swapcase() for sign in signs[at : at + 8]]
    return "".join(signs)


def broken_promises(text: str) -> str:
    """Say what does not hold for a text: no error, an account of every line, names that stand in it."""
    try:
        roster = read_roster(text)
    except RosterError:
        return ""
    except Exception as error:
        return f"{RAISED}{type(error).__name__}: {error}"
    if [report.line for report in roster.lines] != list(range(1, len(roster.lines) + 1)):
        return "lines that are not accounted for"
    typed = set(fold(text)) | {"ı", "i"}  # which of these a capital I is follows from the language
    spelt = {line.child.practice for line in roster.lines if line.child
             and any(note.key == "roster.written_out" for note in line.notes)}  # Chas. is Charles, as is told
    for child in roster.children:
        letters = {char for char in fold(child.practice) if char.isalpha()}
        if child.practice not in spelt and not letters <= typed:
            return f"a name that nobody typed: {child.practice}"
    again = _practised(roster.text or text)
    if again != [one.practice for one in roster.children]:
        return f"{READ_OTHERWISE}: {again}"
    return ""


def _practised(text: str) -> list[str]:
    try:
        return [one.practice for one in read_roster(text).children]
    except RosterError as error:
        return [error.message.key]
