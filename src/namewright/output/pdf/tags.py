"""What a page means to a reader that speaks: its parts in reading order (ISO 32000-1, 14.7 and 14.8; ISO 14289-1).

All that is drawn belongs to a part or is an artifact (a guide mark, a fold line). The parts of a page are written with
it; of the whole document there stays in memory one number a page.
"""

from __future__ import annotations

from array import array
from collections.abc import Sequence
from typing import TypeAlias

from namewright.geometry.boxes import Box
from namewright.output.pdf.objects import ObjectFile, references, text_string

Tag: TypeAlias = "tuple[bytes, tuple[int, ...], bytes, tuple[Tag, ...]]"
"""A part of a page: its kind, the marked stretches of the page's content that it has, its other entries as they stand
in the file, and the parts in it. A plain tuple: drawn pages come from other processes, and a named one takes three
times as long on its way."""


def tag(kind: str, stretches: Sequence[int], says: str | None = None, box: Box | None = None,
        kids: tuple[Tag, ...] = (), scope: str | None = None) -> Tag:
    """Return a part.

    A figure says in words what it shows, and has a box in points, x from the left, y up. A part of other parts has
    ``kids`` in place of stretches; what heads a table's column or row has the ``scope`` Column or Row.
    """
    told = b"" if kids else b"/K[%s]" % b" ".join([b"%d" % one for one in stretches])
    if says:
        told += b"/Alt" + text_string(says)
    if box:
        told += b"/A<</O/Layout/BBox[%d %d %d %d]>>" % tuple(map(round, box))
    if scope:
        told += b"/A<</O/Table/Scope/%s>>" % scope.encode("ascii")
    return (kind.encode("ascii"), tuple(stretches), told, kids)


class Structure:
    """The structure tree of a document on its way into the file: a section a page."""

    def __init__(self, file: ObjectFile) -> None:
        self._file = file
        self.root, self._document, self._parents = file.reserve(), file.reserve(), file.reserve()
        self._sections = array("I")
        self._leaves = array("I")
        self._entries: list[bytes] = []

    def add(self, page: int, tags: Sequence[Tag]) -> int:
        """Write the parts of a page; return the page's key in the tree of parents."""
        key = len(self._sections)
        section = self._file.reserve()
        owner: dict[int, int] = {}
        numbers = [self._put(tag, section, page, owner) for tag in tags]
        self._file.put(b"<</S/Sect/P %d 0 R/K%s>>" % (self._document, references(numbers)), section)
        self._sections.append(section)
        self._entries.append(b"%d%s" % (key, references([owner[stretch] for stretch in range(len(owner))])))
        return key

    def _put(self, tag: Tag, parent: int, page: int, owner: dict[int, int]) -> int:
        """Write a part and the parts in it; note in ``owner`` whose each stretch is."""
        kind, stretches, told, inside = tag
        if not inside:
            number = self._file.put(b"<</S/%s/P %d 0 R/Pg %d 0 R%s>>" % (kind, parent, page, told))
            for stretch in stretches:
                owner[stretch] = number
            return number
        number = self._file.reserve()
        kids = references([self._put(kid, number, page, owner) for kid in inside])
        self._file.put(b"<</S/%s/P %d 0 R/K%s%s>>" % (kind, parent, kids, told), number)
        return number

    def close_leaf(self) -> None:
        """Write a leaf of the tree of parents: the pages added since the last one."""
        last = len(self._sections) - 1
        limits = (last - len(self._entries) + 1, last)
        self._leaves.append(self._file.put(b"<</Limits[%d %d]/Nums[%s]>>" % (*limits, b"".join(self._entries))))
        self._entries.clear()

    def finish(self, lang: str) -> None:
        """Write the trunk."""
        self._file.put(b"<</Kids%s>>" % references(self._leaves), self._parents)
        self._file.put(b"<</S/Document/P %d 0 R/Lang%s/K%s>>"
                       % (self.root, text_string(lang), references(self._sections)), self._document)
        self._file.put(b"<</Type/StructTreeRoot/K %d 0 R/ParentTree %d 0 R/ParentTreeNextKey %d>>"
                       % (self._document, self._parents, len(self._sections)), self.root)
