"""What stands around a name in a line or a cell: numbering, brackets, e-mails, dates, stray signs.

Everything taken away is named in a note, except the numbering of a list. Out of scope: which word of the
name itself is given or family (see ``freetext``).
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

import unicodedata2

from namewright.names.clusters import is_letter
from namewright.names.words import HANDS, REMARKS, fold
from namewright.settings import Hand

_NUMBERING = re.compile(
    r"\s*(?:[-*•‣◦·–—▪■●○✓✔☐☑►>]\s+|\[[ xX]?\]\s*|\(\d{1,4}\)\s*|[#№]\s?\d{1,4}[.):]?\s*|\d{1,4}\s*[.):]\s*|"
    r"\d{1,4}\s*[-–]\s+|\d{1,4}\s+|[a-zA-Z]\)\s+)"
)
_BRACKETED = re.compile(r"\(([^()]*)\)|\[([^\[\]]*)\]|\{([^{}]*)\}|（([^（）]*)）")
_QUOTED = re.compile(r"[\"“”„«]([^\"“”„«»]*)[\"“”»]|(?<!\S)['‘]([^\s'’‘]{2,})['’](?!\S)")
_SPACED_DASH = re.compile(r" +([-‐–—]) +")
_EMAIL = re.compile(r"\S+@\S+")
_PHONE = re.compile(r"\+?\(?\d[\d\s().-]{6,}\d")
_DIGITS = re.compile(r"\S*\d\S*")
_EDGE_KEEP = frozenset("'’‘`ʼʻ")
_STRAY_SIGN = re.compile(r"[^\w\s'’‘`´ʼʻ.,·\-‐‑\u0300-\u036f]|_")


@dataclass(frozen=True, slots=True)
class Reading:
    """The parts of one name, NFC and in the case they were typed in, with notes in whole sentences."""

    given: str = ""
    family: str = ""
    goes_by: str = ""
    hand: Hand | None = None
    notes: tuple[str, ...] = ()


def strip_numbering(text: str) -> str:
    """Take off a number, a bullet or a tick box in front of a name, if a name follows."""
    match = _NUMBERING.match(text)
    if not match or not any(is_letter(char) for char in text[match.end() :]):
        return text.strip()
    return text[match.end() :].strip()


def take_beside(text: str) -> tuple[str, Reading]:
    """Take out what stands beside a name; return the bare text, and what was found, with its notes."""
    if text.replace(" ", "").isalpha():
        return text, Reading()
    notes: list[str] = []
    found = Reading()
    for pattern in (_BRACKETED, _QUOTED):
        for match in pattern.finditer(text):
            inside = next((group for group in match.groups() if group is not None), "").strip()
            found = _judge_bracket(inside, found, notes)
        text = pattern.sub(" ", text)
    text, found = _cut_remark(text, found, notes)
    text = _drop(text, _EMAIL, "an e-mail address", notes)
    text = _drop(text, _PHONE, "a telephone number", notes)
    text = _drop(text, _DIGITS, "a number beside the name", notes)
    signs = "".join(sign for sign in dict.fromkeys(_STRAY_SIGN.findall(text)) if not _is_mark(sign))
    if signs:
        notes.append(f"Signs that are no letters were left out: {signs[:20]}")
        text = text.translate(dict.fromkeys(map(ord, signs), " "))
    return " ".join(text.split()), replace(found, notes=tuple(notes))


def trim(text: str) -> str:
    """Take punctuation and lone marks off both ends; apostrophes, the ʻokina and a closing dot stay."""
    start, end = 0, len(text)
    while start < end and not (is_letter(text[start]) or text[start] in _EDGE_KEEP):
        start += 1
    while end > start and not (
        is_letter(text[end - 1])
        or text[end - 1] in _EDGE_KEEP
        or text[end - 1] == "."
        or _is_mark(text[end - 1])
    ):
        end -= 1
    return text[start:end]


def _is_mark(char: str) -> bool:
    """Say whether ``char`` attaches to the letter before it."""
    return not char.isascii() and str(unicodedata2.category(char))[0] == "M"


def _cut_remark(text: str, found: Reading, notes: list[str]) -> tuple[str, Reading]:
    """``Katie Moss – new`` ends in a remark; ``Mary - Kate`` is one name with spaces about its hyphen."""
    match = _SPACED_DASH.search(text)
    before = text[: match.start()].strip() if match else ""
    if not match or not any(map(is_letter, before)):
        return text, found
    if match[1] == "-" and " " not in before:
        return f"{before}-{text[match.end() :]}", found
    remark = text[match.end() :].strip()
    if len(fold(remark)) > 1 and fold(remark) in HANDS:
        return before, replace(found, hand=HANDS[fold(remark)])
    notes.append(f"Left out: “{remark[:60]}”, which was read as a remark.")
    return before, found


def _drop(text: str, pattern: re.Pattern[str], what: str, notes: list[str]) -> str:
    if not pattern.search(text):
        return text
    notes.append(f"Left out: {what}.")
    return pattern.sub(" ", text)


def _judge_bracket(inside: str, found: Reading, notes: list[str]) -> Reading:
    """Decide whether bracketed words are a name to go by, a writing hand, or a remark to leave out."""
    folded = fold(inside)
    if len(folded) > 1 and folded in HANDS:
        return replace(found, hand=HANDS[folded])
    words = inside.split()
    name_like = (
        bool(words)
        and len(words) <= 3
        and "/" not in inside
        and "," not in inside
        and not any(char.isdigit() for char in inside)
        and any(map(is_letter, inside))
        and not any(fold(word) in REMARKS for word in words)
        and (len(words) == 1 or all(not word[0].islower() for word in words))
    )
    if name_like and not found.goes_by:
        return replace(found, goes_by=trim(inside))
    if inside:
        notes.append(f"Left out: “{inside[:60]}”, which was read as a remark.")
    return found
