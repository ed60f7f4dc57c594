"""Folders drawn as a tree (``├── Mira Vost/``): each branch is a line of its own, without what draws it.

What comes again in one folder after another (``portrait.pdf``) is in the folder of each child and is no child.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from namewright.message import message
from namewright.patterns import pattern
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import fold

_BRANCH = pattern(r"([\s│|]*)(?:[├└]─*|\|--+|`--+|\+---?|\\---?)\s*(\S.*?)/?\s*", needs="├└-")
_COUNTED = pattern(r"\s*\d+\s+[^\W\d_]+,\s*\d+\s+[^\W\d_]+\s*")
_ENDING = pattern(r"\.\w{2,4}$")
_FEWEST = 2
_MOSTLY = 0.6


def from_a_folder_tree(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the branches of a tree as lines, and what is in the folders of all; other lines as they are."""
    found = {at: match for at, line in enumerate(lines) if (match := _BRANCH.fullmatch(line.text))}
    worded = sum(bool(line.text.strip()) for line in lines)
    if len(found) < _FEWEST or len(found) < _MOSTLY * worded:
        return list(lines), []
    deep = {at: len(match[1].expandtabs(4)) for at, match in found.items()}
    first, top = min(found), min(deep.values())
    inside = {at: fold(_ENDING.sub("", match[2])) for at, match in found.items() if deep[at] > top}
    names = Counter(inside.values())
    again = {at for at, name in inside.items() if names[name] >= _FEWEST}
    told = inside.keys() if len(again) >= _MOSTLY * len(inside) else again
    bare = [line._replace(text=match[2].replace("_", " ")) if (match := found.get(at)) else
            line.heading(line.text) if at < first or _COUNTED.fullmatch(line.text) else line
            for at, line in enumerate(lines)]
    return ([line for at, line in enumerate(bare) if at not in told],
            [Aside(bare[at], (message("roster.said_below"),)) for at in sorted(told)])
