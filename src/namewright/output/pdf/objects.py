"""The file itself: numbered objects, packed and deflated as they come, and the table of where each begins.

ISO 32000-1, 7.5.7 (object streams) and 7.5.8 (cross-reference streams). Objects go to the file at once; what stays in
memory is where each one lies, 13 bytes an object.
"""

from __future__ import annotations

import zlib
from array import array
from collections.abc import Sequence
from typing import BinaryIO

_HEADER = b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n"  # four bytes above 127 mark the file as binary (7.5.2)
_PACKED = 200  # objects to an object stream: at 50 a class of thirty is 1 % larger, at 1,000 no smaller
_LEVEL = 9  # on a page's stream 4 % smaller than zlib's usual 6, for a tenth of the time of writing the page
_HIGH, _ALL = 0x8080808080808080, 0xFFFFFFFFFFFFFFFF
_FREE, _PLAIN, _IN_STREAM = 0, 1, 2  # the types of a cross-reference entry (7.5.8.3)


def deflated(data: bytes) -> bytes:
    """Return data as a FlateDecode stream holds them."""
    return zlib.compress(data, _LEVEL)


def text_string(text: str) -> bytes:
    """Return a text string (7.9.2.2): as it is where it is plain ASCII, else UTF-16 with its mark, in hexadecimals."""
    if text.isascii() and text.isprintable():
        return b"(%s)" % text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)").encode("ascii")
    return b"<%s>" % (b"\xfe\xff" + text.encode("utf-16-be")).hex().encode("ascii")


def references(numbers: Sequence[int]) -> bytes:
    """Return an array of references to objects."""
    return b"[%s]" % b" ".join(b"%d 0 R" % number for number in numbers)


class ObjectFile:
    """A PDF on its way into a file. Numbers are given first to last; an object may be referred to before it is put."""

    def __init__(self, out: BinaryIO) -> None:
        self._out = out
        self._place = 0
        self._kinds = array("B", [_FREE])
        self._where = array("Q", [0])  # the offset, or the number of the object stream
        self._index = array("I", [0])  # the place in the object stream
        self._pending: list[tuple[int, bytes]] = []
        self._write(_HEADER)

    def reserve(self) -> int:
        """Return a number for an object that is put later."""
        self._kinds.append(_FREE)
        self._where.append(0)
        self._index.append(0)
        return len(self._kinds) - 1

    def put(self, body: bytes, number: int | None = None) -> int:
        """Put an object that is no stream, packed with others; return its number."""
        number = self.reserve() if number is None else number
        self._pending.append((number, body))
        if len(self._pending) == _PACKED:
            self._flush()
        return number

    def put_stream(self, entries: bytes, data: bytes, number: int | None = None, *, plain: bool = False) -> int:
        """Put a stream, its data deflated already unless ``plain``, and its dictionary's entries; return its number."""
        number = self.reserve() if number is None else number
        self._kinds[number], self._where[number] = _PLAIN, self._place
        self._write(b"%d 0 obj<<%s%s/Length %d>>stream\n%s\nendstream endobj\n"
                    % (number, entries, b"" if plain else b"/Filter/FlateDecode", len(data), data))
        return number

    def finish(self, root: int, info: int) -> None:
        """Write what is pending, the cross-reference stream and the end."""
        self._flush()
        number, place = self.reserve(), self._place
        self._kinds[number], self._where[number] = _PLAIN, place
        self.put_stream(b"/Type/XRef/Size %d/W[1 5 2]/Root %d 0 R/Info %d 0 R" % (number + 1, root, info)
                        + b"/DecodeParms<</Predictor 12/Columns 8>>", deflated(self._table()), number)
        self._write(b"startxref\n%d\n%%%%EOF\n" % place)

    def _flush(self) -> None:
        if not self._pending:
            return
        stream = self.reserve()
        heads, bodies, at = [], [], 0
        for index, (number, body) in enumerate(self._pending):
            self._kinds[number], self._where[number], self._index[number] = _IN_STREAM, stream, index
            heads.append(b"%d %d" % (number, at))
            bodies.append(body)
            at += len(body) + 1
        head = b" ".join(heads) + b"\n"
        self.put_stream(b"/Type/ObjStm/N %d/First %d" % (len(heads), len(head)),
                        deflated(head + b"\n".join(bodies)), stream)
        self._pending.clear()

    def _table(self) -> bytes:
        """Return the cross-reference rows, each as what differs from the row above: PNG's filter Up (7.4.4.4)."""
        rows, above = bytearray(), 0
        for kind, where, index in zip(self._kinds, self._where, self._index, strict=True):
            row = kind << 56 | where << 16 | index
            # Eight subtractions of bytes at once: the highest bit of each is set first, so that none borrows from the
            # next, and put right afterwards.
            less = ((row | _HIGH) - (above & ~_HIGH)) ^ ((row ^ ~above) & _HIGH)
            rows += b"\2" + (less & _ALL).to_bytes(8, "big")
            above = row
        return bytes(rows)

    def _write(self, data: bytes) -> None:
        self._out.write(data)
        self._place += len(data)
