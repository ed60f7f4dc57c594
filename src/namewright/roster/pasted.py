"""Text that another program wrapped about a list: web pages, chats, address lines. Taken off before lines are read.

Out of scope: tables of Markdown and quoted mail, which the columns and the bullets of a list take as they are.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from html import unescape

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.patterns import pattern
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.shares import share
from namewright.roster.vocabulary import AND_WORDS, fold

COLUMN_SIGNS = ("\t", ";", "|")
"""What parts the columns of a line for sure: a comma may be part of a name or a remark."""
COLUMN_ENDS = " \t;|,"
"""What stands about the only filled cell of a row."""


class Line(NamedTuple):
    """One line to be read, the 0-based line of the source it was on, and what was done to it."""

    text: str
    origin: int
    notes: tuple[Message, ...] = ()

    def part(self, text: str) -> Line:
        """Return a line for one of several children of this one, which says so."""
        return self._replace(text=text, notes=(*self.notes, _SPLIT))

    def without(self, words: str, text: str) -> Line:
        """Return what is left of the line when words beside a name are taken off, which it tells."""
        remark = message("roster.remark", words=words.strip(" :–—-([")[:60])
        if not self.text.rstrip().endswith(":"):
            text = text.rstrip().removesuffix(":").rstrip()  # what stood behind its colon is gone: no heading
        return self._replace(text=text, notes=(*self.notes, remark))

    def heading(self, text: str, *notes: Message) -> Line:
        """Return a line of words that stand over others and are no child."""
        return self._replace(text=f"{text.strip().rstrip(' :')}:", notes=(*self.notes, *notes))


def most_words(text: str) -> int:
    """Return how many words the fullest cell of a line has, where signs part its columns."""
    for sign in COLUMN_SIGNS:
        text = text.replace(sign, "\t")
    return max(len(cell.split()) for cell in text.split("\t"))


def cells_run_on(texts: Iterable[str]) -> bool:
    """Say whether a quoted cell may run over several lines: they are a table, and none of them stands for itself."""
    return any(text.count('"') % 2 for text in texts)


_MAX_HTML = 2_000_000  # characters: a saved web page with its pictures inside is no list
_ENDS_A_LINE = r"</(?:li|td|th|tr|p|div|ul|ol|table|body|h\d)\s*>|<br\s*/?>|<(?:li|td|tr)\b"
_BLOCK = pattern(_ENDS_A_LINE, re.I)
"""Marks of a page that end a line; where there are none, its lines are those of the source."""
_MARKUP = pattern(rf"{_ENDS_A_LINE}|</(?:span|b|strong)\s*>", re.I)
_INLINE = pattern(r"</?(?:b|i|u|em|strong|span|font|a|small)(?:\s[^<>]*)?>", re.I)
_BOLD = pattern(r"\s*<(b|strong|u|em)>[^<>]*</\1>\s*", re.I, needs="<")
"""A title in bold on a line of its own ends there, though no mark says so: the child below it is none of it."""
_INSERT = pattern(r"\s*(INSERT\s+INTO\s[^()]{1,60}\([^()]*\)\s*VALUES)\s*(\(.*\))\s*(?:;\s*)?", re.I, needs="(")
_TITLE = pattern(r" {0,3}#{1,6} ([^\W\d_](?:[^\t|;\s]| (?! ))*)\s*", needs="#")
_MARKS = "-*+•|>"
_MARKED = pattern(rf"^[{_MARKS}\s]*(?:\[[ xX]?\])?[\s*_]*")
_QUOTED_WHOLE = pattern(r"[“„«]\s?[^“”„«»]+\s?[“”»][,;]?", needs="“„«")
_FONT_BULLET = pattern(r"\s*([üvlØ¨§nq])\s+(?=[^\W\d_a-z])")
"""What is left of a tick, a dot or a box of a font that draws signs in place of letters, before a name."""
_FEWEST_BULLETS, _NEARLY_ALL = 3, 0.8
_STATEMENTS = 2
_PLACE_AND_TIME = 2  # words
_MOSTLY = 0.6
_ENTITY = pattern(r"&(?:#\d{2,6}|#x[\da-f]{2,5}|[a-z]{2,8}\d?);", re.I)

_TIME = r"\d{1,2}[:.]\d\d(?:[:.]\d\d)?(?:\s?[AaPp]\.?\s?[Mm]\.?)?"
_DAY = r"\d{1,4}[./-]\d{1,2}[./-]\d{1,4}"
_STAMP = pattern(rf"\s*(?:\[(?:{_DAY},?\s+)?{_TIME}(?:,?\s+{_DAY})?\]|{_DAY},?\s+{_TIME})\s*(?:[-–]\s+)?")
_TIME_BEFORE = pattern(rf"\s*{_TIME}\s+[-–—]\s+(?=[^\W\d_][^:,;\d]{{1,38}}:\s)")  # 12:04 - Jo Reed: Ava too
_SENDER = pattern(r"([^:\t,;][^:\t]{0,39}):\s+(?=\S)")  # behind the time of a table stands its sign
_TIMED_SENDER = pattern(rf"\s*[^\W\d_](?:(?!\s[-–—]\s)[^:,;]){{0,38}}?,?\s+[(\[]?(?:{_DAY},?\s+)?{_TIME}[)\]]?:\s+"
                        r"(?=[¡¿]?[^\W\d_])")
_ADDRESS = pattern(r"<[^<>\s]*@[^<>\s]*>")
_TO = r"\s*(?:to|cc|bcc|from|an|von|para|de|cco|à|a|da|ccn|kopie|aan)\s*:\s*"
_LABEL = pattern(_TO, re.I)
_ADDRESSED = pattern(rf"(?:{_TO})?([^\t;|<>:]*[^\s\t,;|<>:])\s*<[^<>\s]*@[^<>\s]*>\s*(?:[;,]\s*)?", re.I, needs="@")
"""A name and its address alone on a line."""
CHAT = message("roster.chat")
_ADDRESSES = message("roster.addresses")
PAIRED = message("roster.two_beside")
"""Of a line of two names of which nothing tells who is the child: it is asked about as it is, and nothing else."""
_SPLIT = message("roster.split")
_WEB_PAGE = message("roster.from_web_page")


def are_paired(lines: Sequence[Line]) -> bool:
    """Say whether lines stand as such pairs, which no rule takes apart before it is answered."""
    return any(PAIRED in line.notes for line in lines)


def unwrapped(lines: Sequence[str]) -> list[Line]:
    """Return the lines without what a web page, a chat or an address line puts about names."""
    if any("<" in line for line in lines) and _BLOCK.search(text := "\n".join(lines)) and len(text) <= _MAX_HTML:
        from namewright.roster.web_page import shown_lines  # not at the top: few lists are web pages

        text = "\n".join(f"{line}<br>" if _BOLD.fullmatch(line) else line for line in lines)
        return [_without_rights(Line(_MARKUP.sub(" ", shown), at, (_WEB_PAGE,)))  # broken tags
                for shown, at in shown_lines(text)]
    shown = _without_font_bullets(_without_quotes([_shown(line, at) for at, line in enumerate(lines)]))
    plain = _with_titles(_without_statements(shown))
    return [each for line in _addresses_apart(plain) for each in _from_addresses(_from_chat(line))]


def _shown(text: str, at: int) -> Line:
    """Return a line as a page shows it where bold letters and signs are spelt as in its source: ``Nu&#241;ez``."""
    shown = _INLINE.sub("", text) if "</" in text else text
    if shown.strip().startswith("│") and shown.rstrip().endswith("│"):
        return Line(shown.replace("│", "|"), at)  # a table in a frame
    if "&" in shown and _ENTITY.search(shown):
        shown = _ENTITY.sub(lambda match: unescape(match[0]), shown).replace("\u00a0", " ")
    return Line(text, at) if shown == text else _without_rights(Line(shown, at, (_WEB_PAGE,)))


def _without_quotes(lines: list[Line]) -> list[Line]:
    """Return lines that each stand whole in quotation marks of print, without these: ``“Vost, Mira”``."""
    filled = [line.text.strip() for line in lines if line.text.strip()]
    if len(filled) < _STATEMENTS or not all(map(_QUOTED_WHOLE.fullmatch, filled)):
        return lines
    return [line._replace(text=line.text.strip(" \t“”„«»,;")) for line in lines]


def _without_font_bullets(lines: list[Line]) -> list[Line]:
    """Return lines without the letter that a sign of a font became, where nearly all have it: ``ü Mira``."""
    opened = Counter(match[1] for line in lines if (match := _FONT_BULLET.match(line.text)))
    sign, count = opened.most_common(1)[0] if opened else ("", 0)
    if count < _FEWEST_BULLETS or count < _NEARLY_ALL * sum(bool(line.text.strip()) for line in lines):
        return lines
    return [line._replace(text=line.text[match.end() :])
            if (match := _FONT_BULLET.match(line.text)) and match[1] == sign else line for line in lines]


def _without_statements(lines: list[Line]) -> list[Line]:
    """Return rows that each stand in a statement of their own below one of these: ``INSERT INTO … VALUES (…)``."""
    found = {at: match for at, line in enumerate(lines) if (match := _INSERT.fullmatch(line.text))}
    if len(found) < _STATEMENTS:
        return lines
    first = min(found)
    return [each for at, line in enumerate(lines) for each in (
        [*([line._replace(text=found[at][1])] if at == first else []), line._replace(text=found[at][2])]
        if at in found else [line])]


def _with_titles(lines: list[Line]) -> list[Line]:
    """Return lines behind signs of a title, ``## Red table``, as headings, where others stand below that have none.

    What is said below a child in small letters leaves it one, as a known name is.
    """
    found = {at: match[1] for at, line in enumerate(lines) if (match := _TITLE.fullmatch(line.text))}
    if not found:
        return lines
    others = [line.text.strip() for at, line in enumerate(lines) if at not in found and line.text.strip()]
    signed = share(text[0] in _MARKS for text in others) >= _MOSTLY
    small = share(begins_small(text) for text in (_MARKED.sub("", text) for text in others) if text)
    if len(others) * (1 + signed) <= len(found) or small > 1 - _MOSTLY:
        return lines
    return [line.heading(found[at]) if at in found and not opens_with_given(found[at]) else line
            for at, line in enumerate(lines)]


def _without_rights(line: Line) -> Line:
    """Return who owns a page as a heading: ``© 2024 Birch Lane School``."""
    return line.heading(line.text) if line.text.lstrip().startswith("©") else line


def _from_chat(line: Line) -> Line:
    """Take times and senders off, all that stand before the words: one that was quoted has two."""
    while ":" in line.text and not line.text.rstrip().endswith(":"):  # a message that heads names stays whole
        stamp = _STAMP.match(line.text) or _before_a_name(line.text)
        said = _SENDER.match(line.text, stamp.end()) if stamp else _TIMED_SENDER.match(line.text)
        if said is None or (not stamp and _is_a_stop(said[0], line.text[said.end() :])):
            break
        notes = line.notes if CHAT in line.notes else (*line.notes, CHAT)
        line = line._replace(text=line.text[said.end() :], notes=notes)
    return line


def _is_a_stop(place: str, names: str) -> bool:
    """Say whether a place with its time stands before several names: ``Mill Lane 7:50: Orla, Jasper and Mina``."""
    words = names.replace(",", " , ").split()
    joined = [word == "," or fold(word) in AND_WORDS for word in words]
    capital = [word for word, joins in zip(words, joined, strict=True) if not joins]
    several = any(joined[1:-1]) and all(map(opens_as_a_name, capital))
    told = len(place.split()) > _PLACE_AND_TIME or all(map(is_given, capital))
    return several and told and "," not in place and not is_given(place.split()[0])


def _before_a_name(text: str) -> re.Match[str] | None:
    """Return a time and a dash before a known given name and a colon: a lesson has the same signs, and no such name."""
    stamp = _TIME_BEFORE.match(text)
    sender = text[stamp.end() :].partition(":")[0].split() if stamp else []
    return stamp if sender and is_given(sender[0]) and DAY_WORDS.isdisjoint(map(fold, sender)) else None


def is_markup(text: str) -> bool:
    """Say whether a line has a mark of a web page."""
    return "<" in text and _MARKUP.search(text) is not None


def has_stamp(text: str) -> bool:
    """Say whether a line begins with a day and a time, or a time in brackets, as chats write them."""
    return _STAMP.match(text) is not None


def _addresses_apart(lines: list[Line]) -> list[Line]:
    """Take addresses off lines of one each, where most lines have one: a message's may stand one below the other."""
    found = {at: match for at, line in enumerate(lines)
             if "@" in line.text and (match := _ADDRESSED.fullmatch(line.text))}
    if len(found) < max(_STATEMENTS, _MOSTLY * sum(bool(line.text.strip()) for line in lines)):
        return lines
    return [line._replace(text=_bare(found[at][1]), notes=(*line.notes, _ADDRESSES)) if at in found else line
            for at, line in enumerate(lines)]


def _bare(text: str) -> str:
    """Return the name that is left beside an address."""
    return text.strip(" ,;\t").strip("\"'“”")


def _from_addresses(line: Line) -> Iterator[Line]:
    """Yield a line for every address of a line that has two or more, with the name before it."""
    if line.text.count("@") < 2 or len(_ADDRESS.findall(line.text)) < 2:
        yield line
        return
    label = _LABEL.match(line.text)
    rest = line.text[label.end() :] if label else line.text
    for part in _ADDRESS.split(rest):
        if name := _bare(part):
            yield Line(name, line.origin, (*line.notes, _ADDRESSES))
