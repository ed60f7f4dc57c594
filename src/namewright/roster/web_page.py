"""What a web page shows, line by line; the cells of a row are parted by tabs. The standard library reads its marks."""

from __future__ import annotations

from html.parser import HTMLParser

_BLOCKS = frozenset(("li", "tr", "p", "div", "br", "ul", "ol", "table", "h1", "h2", "h3", "h4", "h5", "h6", "dt", "dd",
                     "section", "article", "header", "footer", "option", "caption", "body", "blockquote", "pre"))
_UNSEEN = frozenset(("script", "style", "title", "template", "noscript", "svg"))
_CELLS = frozenset(("td", "th"))
_STRUCK = frozenset(("s", "del", "strike"))


def shown_lines(text: str) -> list[tuple[str, int]]:
    """Return the lines that a page shows, each with the 0-based line of the source that it was on."""
    reader = _Page()
    reader.feed(text)
    reader.close()
    reader.end_line()
    return reader.lines


class _Page(HTMLParser):
    """Collects the lines that a web page shows; the cells of a row are parted by tabs."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.lines: list[tuple[str, int]] = []
        self._cells: list[str] = [""]
        self._in_row = self._unseen = 0
        self._origin = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._unseen += tag in _UNSEEN
        self._add("~~" * (tag in _STRUCK))  # as it is struck off in a text
        if tag in _CELLS and self._in_row:
            self._cells.append("")
        elif tag in _BLOCKS and not (self._in_row and tag != "tr"):
            self.end_line()
        elif tag in _BLOCKS:
            self._add(" ")
        if tag == "tr":
            self._in_row, self._cells = 1, []

    def handle_endtag(self, tag: str) -> None:
        self._unseen = max(0, self._unseen - (tag in _UNSEEN))
        self._add("~~" * (tag in _STRUCK))
        if tag in ("tr", "table") or (tag in _BLOCKS and not self._in_row):
            self.end_line()

    def handle_data(self, data: str) -> None:
        if self._unseen or not data.strip():
            self._add(" " * bool(data))
            return
        if not any(cell.strip() for cell in self._cells):
            self._origin = self.getpos()[0] - 1 + len(data[: len(data) - len(data.lstrip())].splitlines() or [1]) - 1
        self._add(data)

    def _add(self, data: str) -> None:
        if self._cells:
            self._cells[-1] += data

    def end_line(self) -> None:
        """Close the line that is being collected, if it shows anything."""
        cells = [" ".join(cell.split()) for cell in self._cells]
        if any(cells):
            self.lines.append(("\t".join(cells), self._origin))
        self._cells, self._in_row = [""], 0
