"""Text that another program wrapped about a list: web pages, chats, address lines. Taken off before lines are read.

Out of scope: tables of Markdown and quoted mail, which the columns and the bullets of a list take as they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from html.parser import HTMLParser

from namewright.message import Message, message


@dataclass(frozen=True, slots=True)
class Line:
    """One line to be read, the 0-based line of the source it was on, and what was done to it."""

    text: str
    origin: int
    notes: tuple[Message, ...] = ()


_MAX_HTML = 2_000_000  # characters: a saved web page with its pictures inside is no list
_MARKUP = re.compile(r"</(?:li|td|th|tr|p|div|ul|ol|table|body|span|b|strong|h\d)\s*>|<br\s*/?>|<(?:li|td|tr)\b", re.I)
_BLOCKS = frozenset(("li", "tr", "p", "div", "br", "ul", "ol", "table", "h1", "h2", "h3", "h4", "h5", "h6", "dt", "dd",
                     "section", "article", "header", "footer", "option", "caption", "body", "blockquote", "pre"))
_UNSEEN = frozenset(("script", "style", "title", "template", "noscript", "svg"))
_CELLS = frozenset(("td", "th"))

_TIME = r"\d{1,2}[:.]\d\d(?:[:.]\d\d)?(?:\s?[AaPp]\.?\s?[Mm]\.?)?"
_DAY = r"\d{1,4}[./-]\d{1,2}[./-]\d{1,4}"
_STAMP = re.compile(rf"\s*(?:\[(?:{_DAY},?\s+)?{_TIME}\]|{_DAY},?\s+{_TIME})\s*(?:[-–]\s+)?")
_SENDER = re.compile(r"([^:]{1,40}):\s+(?=\S)")
_TIMED_SENDER = re.compile(rf"\s*[^\W\d_][^:,;]{{0,38}}?\s+{_TIME}:\s+(?=[^\W\d_])")
_ADDRESS = re.compile(r"<[^<>\s]*@[^<>\s]*>")
_LABEL = re.compile(r"\s*(?:to|cc|bcc|from|an|von|para|de|cco|à|a|da|ccn|kopie)\s*:\s*", re.I)
_CHAT = message("roster.chat")
_ADDRESSES = message("roster.addresses")
_WEB_PAGE = message("roster.from_web_page")


def unwrapped(lines: Sequence[str]) -> list[Line]:
    """Return the lines without what a web page, a chat or an address line puts about names."""
    if any("<" in line for line in lines) and _MARKUP.search(text := "\n".join(lines)) and len(text) <= _MAX_HTML:
        return _from_web_page(text)
    plain = [Line(line, at) for at, line in enumerate(lines)]
    return [each for line in plain for each in _from_addresses(_from_chat(line))]


def is_stamp_alone(text: str) -> bool:
    """Say whether a line begins with day and time as a chat writes them, and nobody says anything in it."""
    return bool(_STAMP.match(text)) and not _SENDER.match(text[_STAMP.match(text).end() :])  # type: ignore[union-attr]


def _from_chat(line: Line) -> Line:
    stamp = _STAMP.match(line.text)
    if stamp and (said := _SENDER.match(line.text, stamp.end())):
        return replace(line, text=line.text[said.end() :], notes=(*line.notes, _CHAT))
    timed = None if stamp else _TIMED_SENDER.match(line.text)
    return replace(line, text=line.text[timed.end() :], notes=(*line.notes, _CHAT)) if timed else line


def _from_addresses(line: Line) -> Iterator[Line]:
    """Yield a line for every address of a line that has two or more, with the name before it."""
    if line.text.count("@") < 2 or len(_ADDRESS.findall(line.text)) < 2:
        yield line
        return
    label = _LABEL.match(line.text)
    rest = line.text[label.end() :] if label else line.text
    for part in _ADDRESS.split(rest):
        if name := part.strip(" ,;\t").strip("\"'“”"):
            yield Line(name, line.origin, (*line.notes, _ADDRESSES))


def _from_web_page(text: str) -> list[Line]:
    reader = _Page()
    reader.feed(text)
    reader.close()
    reader.end_line()
    return reader.lines


class _Page(HTMLParser):
    """Collects the lines that a web page shows; the cells of a row are parted by tabs."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.lines: list[Line] = []
        self._cells: list[str] = [""]
        self._in_row = self._unseen = 0
        self._origin = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._unseen += tag in _UNSEEN
        if tag in _CELLS and self._in_row:
            self._cells.append("")
        elif tag in _BLOCKS and not (self._in_row and tag != "tr"):
            self.end_line()
        elif tag in _BLOCKS:
            self._cells[-1] += " "
        if tag == "tr":
            self._in_row, self._cells = 1, []

    def handle_endtag(self, tag: str) -> None:
        self._unseen = max(0, self._unseen - (tag in _UNSEEN))
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
            self.lines.append(Line("\t".join(cells), self._origin, (_WEB_PAGE,)))
        self._cells, self._in_row = [""], 0
