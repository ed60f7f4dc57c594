"""The document around the pages: page tree, outline, what viewers are told, title and language."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import islice
from typing import BinaryIO

from namewright.output.pdf.drawing import Batch, DrawnPage, drawn
from namewright.output.pdf.font import Fonts
from namewright.output.pdf.forms import Form, form_name
from namewright.output.pdf.objects import ObjectFile, deflated, references, text_string
from namewright.output.pdf.tags import Structure
from namewright.pages.page import Page
from namewright.units import number
from namewright.wording import Wording, wording

BATCH = 40  # pages that share their forms: at 20 a class of thirty would have most forms twice
_PREFERENCES = b"/ViewerPreferences<</PrintScaling/None/DisplayDocTitle true/PickTrayByPDFSize true>>"
_ESCAPED = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;"})


def write_pdf(pages: Iterable[Page], out: BinaryIO, *, title: str, lang: str) -> int:
    """Write the pages to ``out`` (open for writing, empty) and return how many there were.

    ``title`` should be general: it is shown by viewers and print queues. ``lang`` is the language of what stands on
    them, a BCP 47 tag for which there is wording. Raises ValueError for no pages at all.
    """
    return write_batches(batches(pages, wording(lang)), out, title=title, lang=lang)


def batches(pages: Iterable[Page], words: Wording) -> Iterator[Batch]:
    """Draw pages in batches, which may be done by several processes; ``words`` describe figures."""
    rest = iter(pages)
    while batch := tuple(islice(rest, BATCH)):
        yield drawn(batch, words)


def write_batches(batches: Iterable[Batch], out: BinaryIO, *, title: str, lang: str) -> int:
    """Write pages that are drawn already; all else as ``write_pdf``."""
    document = _Document(out)
    for batch in batches:
        document.add(batch)
    if not document.count:
        raise ValueError("there is no page to write")
    document.finish(title, lang)
    return document.count


class _Document:
    """A PDF to which batches of pages are added; each is a node of the page tree, with its own resources."""

    def __init__(self, out: BinaryIO) -> None:
        self.file = ObjectFile(out)
        self.count = 0
        self._tree = self.file.reserve()
        self._nodes: list[int] = []
        self._forms: dict[Form, int] = {}
        self._outline = _Outline(self.file)
        self._structure = Structure(self.file)
        self._fonts = Fonts()
        self._font_names = self.file.reserve()

    def add(self, batch: Batch) -> None:
        """Write the pages of a batch, and those of its forms that no batch had before."""
        node = self.file.reserve()
        numbers = [self._page(page, node) for page in batch.pages]
        named = b"".join(b"/%s %d 0 R" % (form_name(at).encode("ascii"), self._form(form))
                         for at, form in enumerate(batch.forms))
        self.file.put(b"<</Type/Pages/Parent %d 0 R/Count %d/Kids%s/Resources<</XObject<<%s>>/Font %d 0 R>>>>"
                      % (self._tree, len(numbers), references(numbers), named, self._font_names), node)
        self._structure.close_leaf()
        self._fonts.use(batch.seen, batch.laid_over)
        self._nodes.append(node)
        self.count += len(numbers)

    def _page(self, page: DrawnPage, node: int) -> int:
        content = self.file.put_stream(b"", page.content)
        box = f"[0 0 {number(page.width_pt, 4)} {number(page.height_pt, 4)}]".encode("ascii")
        leaf = self.file.reserve()
        key = self._structure.add(leaf, page.tags)
        self.file.put(b"<</Type/Page/Parent %d 0 R/MediaBox%s/Contents %d 0 R/StructParents %d>>"
                      % (node, box, content, key), leaf)
        if page.outline is not None:
            self._outline.add(page.outline, leaf)
        return leaf

    def _form(self, form: Form) -> int:
        if form not in self._forms:
            entries = b"/Type/XObject/Subtype/Form/BBox[%d %d %d %d]" % form.box
            if form.is_text:
                entries += b"/Resources<</Font %d 0 R>>" % self._font_names
            self._forms[form] = self.file.put_stream(entries, deflated(form.content))
        return self._forms[form]

    def finish(self, title: str, lang: str) -> None:
        """Write what holds the pages together."""
        self.file.put(b"<</Type/Pages/Count %d/Kids%s>>" % (self.count, references(self._nodes)), self._tree)
        outline = self._outline.finish()
        self._structure.finish(lang)
        self._fonts.write(self.file, self._font_names)
        outlined = b"/Outlines %d 0 R" % outline if outline else b""
        metadata = self.file.put_stream(b"/Type/Metadata/Subtype/XML", _metadata(title), plain=True)
        root = self.file.put(b"<</Type/Catalog/Pages %d 0 R%s/PageMode/UseNone/Lang%s%s/MarkInfo<</Marked true>>"
                             b"/StructTreeRoot %d 0 R/Metadata %d 0 R>>"
                             % (self._tree, outlined, text_string(lang), _PREFERENCES, self._structure.root, metadata))
        self.file.finish(root, self.file.put(b"<</Title%s>>" % text_string(title)))


def _metadata(title: str) -> bytes:
    """Return the title, and that the file is meant to be PDF/UA-1, as XMP (ISO 16684-1); no date, no name."""
    shown = title.translate(_ESCAPED)
    return ('<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/">'
            '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about=""'
            ' xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">'
            f'<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{shown}</rdf:li></rdf:Alt></dc:title>'
            "<pdfuaid:part>1</pdfuaid:part></rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end=\"r\"?>").encode()


class _Outline:
    """The outline, an entry a child, in one level (12.3.3). One entry is held back: it has to name the next."""

    def __init__(self, file: ObjectFile) -> None:
        self._file = file
        self._root = self._first = self._last = self._count = 0
        self._held: tuple[bytes, int] = (b"", 0)  # the entry's own words, and the number of the one before it

    def add(self, title: str, page: int) -> None:
        """Add an entry that leads to the top of a page."""
        self._root = self._root or self._file.reserve()
        entry = self._file.reserve()
        self._put_held(b"/Next %d 0 R" % entry)
        self._first = self._first or entry
        self._held = (b"/Title%s/Dest[%d 0 R/Fit]" % (text_string(title), page), self._last)
        self._last = entry
        self._count += 1

    def _put_held(self, following: bytes) -> None:
        words, before = self._held
        if self._last:
            previous = b"/Prev %d 0 R" % before if before else b""
            self._file.put(b"<<%s/Parent %d 0 R%s%s>>" % (words, self._root, previous, following), self._last)

    def finish(self) -> int:
        """Write the last entry and the root; return the root's number, 0 where there is no entry."""
        self._put_held(b"")
        if self._root:
            self._file.put(b"<</Type/Outlines/First %d 0 R/Last %d 0 R/Count %d>>"
                           % (self._first, self._last, self._count), self._root)
        return self._root
